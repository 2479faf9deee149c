#include "core/boil/shift_log.h"
#include "core/journal/fact_stream.h"
#include "core/journal/inside.h"
#include "core/journal/reading_stream.h"
#include "core/journal/schema.h"

#include <algorithm>

namespace panside {

Fact factIn(const std::string& row, std::int64_t at) {
    auto read = factOfLine(row);
    if (auto* fact = std::get_if<Fact>(&read))
        return std::move(*fact);
    return Fact{instantOf(at), Note{row}};
}

bool isAsKept(const Journal::Inside& inside, Derived what, ShiftId shift) {
    return inside.version < firstSealed || isAsDerived(*inside.db, what, microsOf(shift));
}

std::unordered_set<FactId> withdrawnIds(SQLite::Database& db, ShiftId shift) {
    SQLite::Statement query{db, "SELECT fact FROM withdrawal WHERE shift=?"};
    query.bind(1, microsOf(shift));
    std::unordered_set<FactId> ids;
    while (query.executeStep())
        ids.insert(query.getColumn(0).getInt64());
    return ids;
}

Beginning beginningOf(const Journal::Inside& inside, ShiftId shift) {
    SQLite::Statement query{*inside.db,
                            "SELECT opening, ifnull((SELECT min(at) FROM fact WHERE shift=?1), id),"
                            " ifnull((SELECT min(earliest) FROM block WHERE shift=?1), id) FROM shift WHERE id=?1"};
    query.bind(1, microsOf(shift));
    if (!query.executeStep())
        throw JournalError{JournalTrouble::noSuchShift, inside.place, asWritten(textOf(shift))};
    return {std::min(query.getColumn(1).getInt64(), query.getColumn(2).getInt64()), query.getColumn(0).getInt()};
}

namespace {

// How a shift came into the journal: its `live`.
enum class Begun : std::uint8_t { elsewhere, here, asBook };

// The shifts that were begun here, as they followed each other, whatever the clock said; or those that were imported,
// by time; or the day books, by time.
std::vector<Shift> shiftsOf(const Journal::Inside& inside, Begun how) {
    const bool byBegun = how == Begun::here && inside.version >= firstSealed;
    SQLite::Statement query{*inside.db,
                            std::string{"SELECT id, (SELECT open FROM turn WHERE shift=shift.id ORDER BY number DESC"
                                        " LIMIT 1) FROM shift WHERE live=? ORDER BY "} +
                                (byBegun ? "begun" : "id")};
    query.bind(1, static_cast<int>(how));
    std::vector<Shift> shifts;
    while (query.executeStep())
        shifts.push_back(
            {instantOf(query.getColumn(0).getInt64()), query.getColumn(1).getInt() != 0, how != Begun::here});
    return shifts;
}

} // namespace

std::vector<Shift> Journal::shifts() const {
    return guarded(place(), [&] {
        const auto begun = shiftsOf(*inside_, Begun::here), imported = shiftsOf(*inside_, Begun::elsewhere);
        std::vector<Shift> shifts;
        auto other = imported.begin();
        for (const Shift& shift : begun) {
            for (; other != imported.end() && other->id < shift.id; ++other)
                shifts.push_back(*other);
            shifts.push_back(shift);
        }
        shifts.insert(shifts.end(), other, imported.end());
        return shifts;
    });
}

ShiftId freeName(const Journal& journal, Instant first) {
    auto taken = journal.shifts();
    const auto books = journal.books();
    taken.insert(taken.end(), books.begin(), books.end());
    ShiftId name = first;
    while (std::ranges::any_of(taken, [&](const Shift& shift) { return shift.id == name; }))
        name += std::chrono::microseconds{1};
    return name;
}

std::vector<Shift> Journal::books() const {
    return guarded(place(), [&] { return shiftsOf(*inside_, Begun::asBook); });
}

std::optional<Shift> Journal::openShift() const {
    return guarded(place(), [&] {
        const auto begun = shiftsOf(*inside_, Begun::here);
        return begun.empty() || !begun.back().open ? std::nullopt : std::optional{begun.back()};
    });
}

std::optional<Instant> Journal::latest() const {
    return guarded(place(), [&]() -> std::optional<Instant> {
        SQLite::Statement query{*inside_->db,
                                "SELECT max(at) FROM (SELECT max(at) AS at FROM fact WHERE shift IN (SELECT id FROM "
                                "shift WHERE live=1) UNION ALL SELECT max(latest) FROM block WHERE shift IN (SELECT id "
                                "FROM shift WHERE live=1))"};
        if (!query.executeStep() || query.isColumnNull(0))
            return std::nullopt;
        return instantOf(query.getColumn(0).getInt64());
    });
}

Shift Journal::shiftNamed(std::string_view name) const {
    std::vector<Shift> fitting;
    const auto instant = instantIn(name);
    for (const Shift& shift : shifts()) {
        if (shift.id == instant || shift.name() == name)
            return shift;
        if (!name.empty() && shift.name().starts_with(name))
            fitting.push_back(shift);
    }
    if (fitting.size() != 1)
        throw JournalError{JournalTrouble::noSuchShift, place(), asWritten(std::string{name})};
    return fitting.front();
}

void visitFacts(const Journal::Inside& inside, ShiftId shift, const std::function<bool(FactId, const Fact&)>& visitor,
                std::optional<Series> only) {
    FactStream rows{inside, shift};
    ReadingStream readings{inside, shift};
    const auto nextReading = [&] {
        while (readings.next())
            if ((!only || readings.series() == *only) && !rows.isWithdrawn(readings.id()))
                return true;
        return false;
    };
    bool row = rows.next();
    bool reading = nextReading();
    while (row || reading) {
        const bool rowFirst =
            row && (!reading || std::pair{rows.fact.at, rows.id} < std::pair{readings.at(), readings.id()});
        if (!(rowFirst ? visitor(rows.id, rows.fact) : visitor(readings.id(), readings.fact())))
            return;
        (rowFirst ? row : reading) = rowFirst ? rows.next() : nextReading();
    }
}

void Journal::visit(ShiftId shift, const std::function<bool(FactId, const Fact&)>& visitor,
                    std::optional<Series> only) const {
    guarded(place(), [&] {
        const Snapshot snapshot{*inside_->db};
        visitFacts(*inside_, shift, visitor, only);
    });
}

Facts Journal::facts(ShiftId shift) const {
    Facts facts;
    visit(shift, [&](FactId id, const Fact& fact) {
        facts.add(id, fact);
        return true;
    });
    return facts;
}

Facts Journal::openFacts() const {
    const auto open = openShift();
    return open ? facts(open->id) : Facts{};
}

std::vector<Boil::Entry> Journal::deeds(ShiftId shift) const {
    return guarded(place(), [&] {
        const Snapshot snapshot{*inside_->db};
        std::vector<Boil::Entry> deeds;
        FactStream rows{*inside_, shift};
        while (rows.next())
            deeds.push_back({rows.id, rows.fact});
        return deeds;
    });
}

std::vector<Journal::Withdrawn> Journal::withdrawn(ShiftId shift) const {
    return guarded(place(), [&] {
        const Snapshot snapshot{*inside_->db};
        std::vector<Withdrawn> withdrawn;
        SQLite::Statement query{*inside_->db, "SELECT w.fact, w.at, w.by, f.row, f.at FROM withdrawal w JOIN fact f"
                                              " ON f.shift=w.shift AND f.id=w.fact WHERE w.shift=? ORDER BY w.id"};
        query.bind(1, microsOf(shift));
        while (query.executeStep())
            withdrawn.push_back(
                {{query.getColumn(0).getInt64(), factIn(query.getColumn(3).getString(), query.getColumn(4).getInt64())},
                 instantOf(query.getColumn(1).getInt64()),
                 query.getColumn(2).getString()});
        return withdrawn;
    });
}

Standing Journal::standing() const {
    return guarded(place(), [&] {
        const Snapshot snapshot{*inside_->db};
        Standing standing;
        for (const Shift& book : books())
            standing.taken.push_back(book.id);
        for (const Shift& shift : shifts()) {
            standing.taken.push_back(shift.id);
            if (!shift.imported) {
                standing.shift = shift.id;
                standing.open = shift.open;
            }
        }
        if (standing.shift) {
            standing.next = nextId(*inside_->db, *standing.shift);
            FactStream rows{*inside_, *standing.shift};
            while (rows.next()) {
                if (const auto* set = std::get_if<Set>(&rows.fact.what))
                    standing.settings.push_back({rows.fact.at, rows.id, *set});
                if (std::holds_alternative<ShiftEnd>(rows.fact.what))
                    standing.endedBy = rows.id;
            }
        }
        // What was carried before the shift began is in its opening. What was carried since comes after that, also
        // where a clock set back says otherwise.
        const bool ordered = inside_->version >= firstSealed;
        SQLite::Statement query{*inside_->db, std::string{"SELECT row, at FROM carried WHERE "} +
                                                  (ordered ? "after" : "at") + ">=? ORDER BY id"};
        query.bind(1, ordered ? latestBegun(*inside_->db) : standing.shift ? microsOf(*standing.shift) : INT64_MIN);
        while (query.executeStep()) {
            const Fact fact = factIn(query.getColumn(0).getString(), query.getColumn(1).getInt64());
            if (const auto* set = std::get_if<Set>(&fact.what))
                standing.carried.push_back({standing.shift ? std::max(fact.at, *standing.shift) : fact.at, 0, *set});
        }
        return standing;
    });
}

} // namespace panside
