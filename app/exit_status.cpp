#include "app/exit_status.h"

#include "app/commands.h"

#include <nlohmann/json.hpp>
#include <ostream>

namespace panside {

int statusOf(JournalTrouble trouble) {
    switch (trouble) {
    case JournalTrouble::noSuchFile:
    case JournalTrouble::notSqlite:
    case JournalTrouble::notOurs:
    case JournalTrouble::newer:
    case JournalTrouble::noSuchShift:
    case JournalTrouble::noSuchFact:
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
        out << nlohmann::json{{"shifts", list}}.dump() << '\n';
    }
    if (shifts.empty()) {
        err << journal.place().string() << ": holds no shift yet. Import a log, or tend a boil.\n";
    } else {
        err << journal.place().string() << ": holds " << shifts.size()
            << " shifts. Say which with --shift and one of these (its beginning is enough where only one has it):\n";
        for (const auto& shift : shifts)
            err << "  " << shift.name() << (shift.open ? "  still open" : "") << '\n';
    }
    return std::nullopt;
}

} // namespace panside
