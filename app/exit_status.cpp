#include "app/exit_status.h"

#include "app/commands.h"

#include "core/journal/day_books.h"
#include "core/ledger/trace.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace panside {

void writeOut(const std::string& place, const std::string& text, std::ostream& out) {
    if (place.empty())
        out << text;
    else
        writeText(place, text);
}

std::optional<ProbeFile> probeIn(const std::filesystem::path& place, std::ostream& err) {
    auto read = loadProbeFile(place);
    if (auto* file = std::get_if<ProbeFile>(&read))
        return std::move(*file);
    tell(std::get<std::vector<ProbeFault>>(read), place.string(), err);
    return std::nullopt;
}

int statusOf(JournalTrouble trouble) {
    switch (trouble) {
    case JournalTrouble::noSuchFile:
    case JournalTrouble::notSqlite:
    case JournalTrouble::notOurs:
    case JournalTrouble::newer:
    case JournalTrouble::noSuchShift:
        return status::refused;
    case JournalTrouble::noFolder:
    case JournalTrouble::noPermission:
    case JournalTrouble::heldByOther:
    case JournalTrouble::locked:
    case JournalTrouble::diskFull:
    case JournalTrouble::readOnly:
    case JournalTrouble::damaged:
    case JournalTrouble::gone:
    case JournalTrouble::cannotWrite:
    case JournalTrouble::cannotRead:
        break;
    }
    return status::machineFailed;
}

int statusOf(FileTrouble trouble) { return trouble == FileTrouble::named ? status::refused : status::machineFailed; }

Journal journalToWrite(const std::filesystem::path& place) {
    auto journal = Journal::open(place);
    if (journal.readOnly())
        throw JournalError{*journal.readOnly()};
    return journal;
}

std::optional<Shift> shiftAsked(const Journal& journal, const std::string& name, bool json, std::ostream& out,
                                std::ostream& err) {
    if (!name.empty())
        return journal.shiftNamed(name);
    const auto shifts = journal.shifts();
    if (shifts.size() == 1)
        return shifts.front();
    if (json) {
        auto list = nlohmann::json::array();
        for (const auto& shift : shifts)
            list.push_back({{"shift", shift.name()}, {"open", shift.open}, {"imported", shift.imported}});
        for (const int year : bookYears(journal))
            list.push_back({{"shift", std::to_string(year)}, {"open", false}, {"book", true}});
        out << nlohmann::json{{"shifts", list}}.dump() << '\n';
    }
    if (shifts.empty()) {
        err << journal.place().string() << ": holds no shift yet. Import a log, or tend a boil.\n";
    } else {
        err << journal.place().string() << ": holds " << shifts.size()
            << " shifts. Say which with --shift and one of these (its beginning is enough where only one has it):\n";
        for (const auto& shift : shifts)
            err << "  " << shift.name() << (shift.open ? "  still open" : "") << '\n';
        for (const int year : bookYears(journal))
            err << "  " << year << "  the day book\n";
    }
    return std::nullopt;
}

std::optional<int> bookAsked(const Journal& journal, const std::string& name) {
    const auto years = bookYears(journal);
    for (const int year : years)
        if (name == std::to_string(year))
            return year;
    if (name.empty() && years.size() == 1 && journal.shifts().empty())
        return years.front();
    return std::nullopt;
}

int refuseName(const std::vector<std::string>& like, const std::string& name, std::string_view why, std::ostream& err) {
    err << '"' << name << "\": " << why;
    for (const auto& one : like)
        err << (&one == &like.front() ? " Was one of these meant? " : ", ") << one;
    err << (like.empty() ? "\n" : ".\n");
    return status::refused;
}

} // namespace panside
