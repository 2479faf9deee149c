#include "app/commands.h"
#include "app/exit_status.h"
#include "core/files/text_file.h"
#include "core/journal/day_books.h"
#include "core/journal/log_import.h"
#include "core/shift/book_marks.h"
#include "ui/importing/map_view.h"
#include "ui/importing/table_maps.h"

#include <QTimeZone>
#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>
#include <optional>
#include <sstream>

namespace panside {
namespace {

std::string_view nameOf(ImportOutcome outcome) {
    switch (outcome) {
    case ImportOutcome::added:
        return "added";
    case ImportOutcome::alreadyThere:
        return "alreadyThere";
    case ImportOutcome::faulty:
        return "faulty";
    case ImportOutcome::differs:
        return "differs";
    case ImportOutcome::twoShifts:
        return "twoShifts";
    case ImportOutcome::cancelled:
        return "cancelled";
    case ImportOutcome::unreadable:
        return "unreadable";
    }
    return {};
}

bool isGood(const Imported& imported) {
    return imported.outcome == ImportOutcome::added || imported.outcome == ImportOutcome::alreadyThere;
}

// A log or a table, read in; of a table, how many cells held no reading.
struct ReadIn {
    Imported imported;
    std::optional<std::uint64_t> blanks;
};

ReadIn readFrom(Journal& journal, std::istream& log, const std::string& place, const std::string& mapping,
                const ImportOptions& options) {
    if (mapping.empty())
        return {importLog(journal, log, options), {}};
    const auto beginning = beginningOf(log);
    if (isShiftLog(beginning))
        return {importLog(journal, log, options), {}};
    const ForeignMap map = mapNamed(mapping, beginning, place);
    ForeignRows rows{log, map, zoneClock(QTimeZone{QByteArray::fromStdString(map.zone)})};
    ReadIn read{importLog(journal, rows), {}};
    read.blanks = rows.blanks();
    return read;
}

ReadIn importFrom(Journal& journal, const std::string& place, const std::string& mapping,
                  const ImportOptions& options) {
    if (place == "-" && mapping.empty())
        return {importLog(journal, std::cin, options), {}};
    // A table is looked at before it is read: what comes through a pipe is kept until then.
    const auto kept = [&](std::istream& stream) {
        std::stringstream text;
        text << stream.rdbuf();
        return readFrom(journal, text, calledPlace(place), mapping, options);
    };
    if (place == "-")
        return kept(std::cin);
    if (std::error_code none; std::filesystem::is_directory(place, none))
        throw FileFault{FileTrouble::named, place + ": is a folder. Name the log in it."};
    std::ifstream log{place, std::ios::binary};
    if (!log && errno == ENOENT)
        throw FileFault{FileTrouble::named, place + ": there is no such file. Look at the name and the folder."};
    if (!log)
        throw FileFault{FileTrouble::machine, place + ": cannot be read: " + std::strerror(errno) + "."};
    if (std::error_code none; !mapping.empty() && !std::filesystem::is_regular_file(place, none))
        return kept(log);
    return readFrom(journal, log, place, mapping, options);
}

void say(const Imported& imported, const std::string& place, std::ostream& out, std::ostream& err) {
    tell(imported.faults, place, err);
    if (imported.faultCount > imported.faults.size())
        err << place << ": and " << imported.faultCount - imported.faults.size() << " faults more.\n";
    tell(imported.warnings, place, err);
    (isGood(imported) ? out : err) << sentence(imported, place) << '\n';
}

nlohmann::json answerFor(const Imported& imported, const std::string& place) {
    nlohmann::json answer{{"log", place},
                          {"outcome", nameOf(imported.outcome)},
                          {"facts", imported.facts},
                          {"faults", imported.faultCount},
                          {"warnings", imported.warningCount}};
    answer["marks"] = nlohmann::json::array();
    answer["shift"] = isGood(imported) ? nlohmann::json(Shift{imported.shift, false, true}.name()) : nlohmann::json();
    return answer;
}

using NamedLog = std::pair<std::string, std::optional<std::string>>; // its text, where it is a day book

std::vector<std::string> booksOf(const std::vector<NamedLog>& logs) {
    std::vector<std::string> books;
    for (const auto& [log, text] : logs)
        if (text)
            books.push_back(*text);
    return books;
}

// A shift that came in, for the marks at its rows, which rest on the day book too.
struct Added {
    std::string place;
    ShiftId shift;
    std::vector<std::pair<FactId, std::uint32_t>> lines;
    std::size_t answer; // of the JSON
};

void sayMarks(const Added& one, const HouseLedger& house, nlohmann::json* answer, std::ostream& out) {
    const auto lineOf = [&one](FactId id) -> std::size_t {
        const auto at = std::lower_bound(one.lines.begin(), one.lines.end(), std::pair{id, std::uint32_t{0}});
        return at != one.lines.end() && at->first == id ? at->second : 0;
    };
    for (const LineMark& mark : shiftMarks(house, one.shift, lineOf)) {
        out << one.place << ':' << mark.line << ": " << mark.says << '\n';
        if (answer)
            (*answer)["marks"].push_back({{"line", mark.line}, {"says", mark.says}});
    }
}

// Of a house that keeps no day book: nothing of other shifts bears on it, nor what the engine says of its draws.
std::shared_ptr<const HouseLedger> alone(const Journal& journal, ShiftId id) {
    auto shift = std::make_shared<HouseShift>();
    shift->id = id;
    shift->facts = journal.deeds(id);
    return std::make_shared<const HouseLedger>(HouseLedger::Parts{nullptr, {std::move(shift)}}, std::vector<Fact>{});
}

constexpr std::size_t beginningSize = 1U << 16;

// The text of a file that is a day book; nullopt for all else, which is read as a stream.
std::optional<std::string> bookText(const std::string& place) {
    if (std::error_code none; place == "-" || !std::filesystem::is_regular_file(place, none))
        return std::nullopt;
    std::ifstream file{place, std::ios::binary};
    std::string begin(beginningSize, '\0');
    file.read(begin.data(), static_cast<std::streamsize>(begin.size()));
    begin.resize(static_cast<std::size_t>(file.gcount()));
    return beginsAsBook(begin) ? std::optional{readText(place)} : std::nullopt;
}

// A day book: refused whole with its lines, or taken in with its marks. False if it is no day book after all.
bool importAsBook(Journal& journal, const std::string& text, const std::string& place, bool json,
                  nlohmann::json& answers, int& result, std::ostream& out, std::ostream& err) {
    const ReadLog book = readLog(text);
    if (book.shiftRows > 0)
        return false;
    const BookJudged judged = judgedBook(book, &journal);
    tell(judged.faults, place, err);
    tell(book.warnings, place, err);
    nlohmann::json answer{{"log", place},
                          {"facts", book.facts.size()},
                          {"faults", judged.faults.size()},
                          {"warnings", book.warnings.size()},
                          {"marks", nlohmann::json::array()},
                          {"outcome", "faulty"},
                          {"shift", nullptr}};
    for (const LineMark& mark : judged.marks) {
        (json ? err : out) << place << ':' << mark.line << ": " << mark.says << '\n';
        answer["marks"].push_back({{"line", mark.line}, {"says", mark.says}});
    }
    if (!judged.faults.empty()) {
        err << place << ": " << judged.faults.size() << " fault" << (judged.faults.size() == 1 ? "" : "s")
            << ", nothing was imported.\n";
        result = std::max(result, status::refused);
    } else {
        const BookImported imported = importBook(journal, book.facts);
        const int year = yearOf(book.facts.front().at);
        answer["outcome"] = imported.added > 0 ? "added" : "alreadyThere";
        answer["shift"] = std::to_string(year);
        if (!json && imported.added > 0)
            out << place << ": added to the day book of " << year << ", " << imported.added << " of " << imported.rows
                << " rows.\n";
        else if (!json)
            out << place << ": already there in the day book of " << year << "; nothing was added.\n";
    }
    answers.push_back(std::move(answer));
    return true;
}

} // namespace

// Each log stands for itself: a faulty one does not keep the others out.
int importCommand(const ImportRequest& request, std::ostream& out, std::ostream& err) {
    int result = status::done;
    auto answers = nlohmann::json::array();
    std::vector<std::string> changed;
    try {
        auto journal = journalToWrite(request.journal);
        // A day book may name vessels that only a shift named: the shifts come first.
        std::vector<NamedLog> logs;
        for (const auto& log : request.logs)
            logs.emplace_back(log, request.mapping.empty() ? bookText(log) : std::nullopt);
        std::stable_partition(logs.begin(), logs.end(), [](const auto& log) { return !log.second; });
        const auto books = booksOf(logs);
        ImportOptions options;
        options.judge = [&](const ReadLog& rows) { return bookFaults(rows, knownWith(&journal, books)); };
        options.placed = isOfTheHouse;
        HouseReader reader;
        std::vector<Added> added;
        const auto before = anyPacked(journal) ? reader.read(journal, {}) : nullptr;
        for (const auto& [log, book] : logs) {
            const auto place = calledPlace(log);
            try {
                if (book && importAsBook(journal, *book, place, request.json, answers, result, out, err))
                    continue;
                const auto [imported, blanks] = importFrom(journal, log, request.mapping, options);
                if (!isGood(imported))
                    result = std::max(result, status::refused);
                if (imported.outcome == ImportOutcome::added)
                    added.push_back({place, imported.shift, imported.lines, answers.size()});
                if (request.json) {
                    answers.push_back(answerFor(imported, place));
                    if (blanks)
                        answers.back()["blanks"] = *blanks;
                }
                std::ostream silent{nullptr};
                say(imported, place, request.json ? silent : out, err);
                if (blanks.value_or(0) > 0 && isGood(imported) && !request.json)
                    out << place << ": cells without a reading: " << *blanks << ".\n";
            } catch (const FileFault& fault) {
                err << fault.what() << '\n';
                result = std::max(result, statusOf(fault.trouble()));
            }
        }
        const bool keepsBook = !bookYears(journal).empty();
        for (const Added& one : added) {
            const auto house = keepsBook ? reader.read(journal, {}) : alone(journal, one.shift);
            sayMarks(one, *house, request.json ? &answers[one.answer] : nullptr, request.json ? err : out);
        }
        // What it changes for what was packed before.
        if (before)
            changed = newlyMarked(*before, *reader.read(journal, {}));
    } catch (const JournalError& trouble) {
        err << trouble.what() << '\n';
        result = statusOf(trouble.trouble());
    }
    for (const std::string& says : changed)
        (request.json ? err : out) << says << '\n';
    if (request.json)
        out << nlohmann::json{{"logs", answers}, {"changed", changed}}.dump(2, ' ', false,
                                                                            nlohmann::json::error_handler_t::replace)
            << '\n';
    return result;
}

} // namespace panside
