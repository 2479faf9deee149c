#include "app/commands.h"
#include "app/exit_status.h"
#include "core/files/text_file.h"
#include "core/journal/log_import.h"
#include "ui/importing/map_view.h"
#include "ui/importing/table_maps.h"

#include <QTimeZone>
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

ReadIn readFrom(Journal& journal, std::istream& log, const std::string& place, const std::string& mapping) {
    if (mapping.empty())
        return {importLog(journal, log), {}};
    const auto beginning = beginningOf(log);
    if (isShiftLog(beginning))
        return {importLog(journal, log), {}};
    const ForeignMap map = mapNamed(mapping, beginning, place);
    ForeignRows rows{log, map, zoneClock(QTimeZone{QByteArray::fromStdString(map.zone)})};
    ReadIn read{importLog(journal, rows), {}};
    read.blanks = rows.blanks();
    return read;
}

ReadIn importFrom(Journal& journal, const std::string& place, const std::string& mapping) {
    if (place == "-" && mapping.empty())
        return {importLog(journal, std::cin), {}};
    // A table is looked at before it is read: what comes through a pipe is kept until then.
    const auto kept = [&](std::istream& stream) {
        std::stringstream text;
        text << stream.rdbuf();
        return readFrom(journal, text, calledPlace(place), mapping);
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
    return readFrom(journal, log, place, mapping);
}

void say(const Imported& imported, const std::string& place, std::ostream& out, std::ostream& err) {
    for (const auto& fault : imported.faults)
        err << sentence(fault, place) << '\n';
    if (imported.faultCount > imported.faults.size())
        err << place << ": and " << imported.faultCount - imported.faults.size() << " faults more.\n";
    for (const auto& warning : imported.warnings)
        err << sentence(warning, place) << '\n';
    (isGood(imported) ? out : err) << sentence(imported, place) << '\n';
}

nlohmann::json answerFor(const Imported& imported, const std::string& place) {
    nlohmann::json answer{{"log", place},
                          {"outcome", nameOf(imported.outcome)},
                          {"facts", imported.facts},
                          {"faults", imported.faultCount},
                          {"warnings", imported.warningCount}};
    answer["shift"] = isGood(imported) ? nlohmann::json(Shift{imported.shift, false, true}.name()) : nlohmann::json();
    return answer;
}

} // namespace

// Each log stands for itself: a faulty one does not keep the others out.
int importCommand(const ImportRequest& request, std::ostream& out, std::ostream& err) {
    int result = status::done;
    auto answers = nlohmann::json::array();
    try {
        auto journal = journalToWrite(request.journal);
        for (const auto& log : request.logs) {
            const auto place = calledPlace(log);
            try {
                const auto [imported, blanks] = importFrom(journal, log, request.mapping);
                if (!isGood(imported))
                    result = std::max(result, status::refused);
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
    } catch (const JournalError& trouble) {
        err << trouble.what() << '\n';
        result = statusOf(trouble.trouble());
    }
    if (request.json)
        out << nlohmann::json{{"logs", answers}}.dump(2) << '\n';
    return result;
}

} // namespace panside
