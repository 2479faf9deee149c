#include "core/journal/shift_summary.h"

#include "core/boil/loads.h"
#include "core/boil/repeated_check.h"
#include "core/boil/repeated_draw.h"
#include "core/journal/fact_stream.h"
#include "core/journal/inside.h"

#include <algorithm>

namespace panside {
namespace {

constexpr char between = '\n'; // names in a row of the table

std::string joined(const std::vector<std::string>& names) {
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : std::string{between}) + name;
    return text;
}

std::vector<std::string> split(const std::string& text) {
    std::vector<std::string> names;
    for (std::size_t from = 0; from < text.size();) {
        const auto to = std::min(text.find(between, from), text.size());
        names.push_back(text.substr(from, to - from));
        from = to + 1;
    }
    return names;
}

// Counts the facts that are no plain readings, by time.
class Count {
public:
    explicit Count(ShiftSummary& summary) : summary_{summary} {}
    void add(const Fact& fact) {
        ++summary_.facts;
        const auto told = repeatedDraw_.hear(fact);
        summary_.draws -= told == RepeatedDraw::Telling::measured ? 1 : 0; // it is counted again, with its volume
        summary_.draws += told == RepeatedDraw::Telling::first && !std::holds_alternative<DrawClosed>(fact.what);
        if (told == RepeatedDraw::Telling::none || RepeatedDraw::counts(told))
            std::visit([this](const auto& what) { count(what); }, fact.what);
        if (const auto* check = std::get_if<DensityCheck>(&fact.what))
            summary_.checks += repeatedCheck_.isFirst(*check, fact.at);
        if (std::holds_alternative<Lit>(fact.what) && !summary_.lit)
            summary_.lit = fact.at;
        auto& crew = summary_.crew;
        if (std::holds_alternative<Crew>(fact.what) && !fact.by.empty() &&
            std::ranges::find(crew, fact.by) == crew.end())
            crew.push_back(fact.by);
    }

private:
    template <class Other>
    void count(const Other&) {}
    void count(const DrawClosed& draw) {
        ++summary_.draws;
        summary_.drawsMeasured += draw.volume.has_value();
        if (draw.volume)
            summary_.syrup += draw.volume->value;
    }
    void count(const SapIn& sap) { summary_.sap += sap.volume.value; }

    ShiftSummary& summary_;
    RepeatedDraw repeatedDraw_;
    RepeatedCheck repeatedCheck_;
};

// Readings need not be unpacked for this: the blocks say how many they hold and from when to when.
void countBlocks(const Journal::Inside& inside, ShiftSummary& summary) {
    SQLite::Statement query{*inside.db,
                            "SELECT ifnull(sum(count), 0), min(earliest), max(latest) FROM block WHERE shift=?"};
    query.bind(1, microsOf(summary.shift.id));
    query.executeStep();
    summary.readings = query.getColumn(0).getInt64();
    if (query.isColumnNull(1))
        return;
    summary.first = std::min(summary.first, instantOf(query.getColumn(1).getInt64()));
    summary.last = std::max(summary.last, instantOf(query.getColumn(2).getInt64()));
}

void countLoads(const Journal::Inside& inside, ShiftSummary& summary) {
    LoadsOfShift loads;
    // They rest on what was done and said, and on the stack.
    const auto add = [&loads](FactId, const Fact& fact) {
        loads.add(fact);
        return true;
    };
    visitFacts(inside, summary.shift.id, add, Series::stack);
    for (const Load& load : loads.all()) {
        ++summary.loads;
        summary.loadsWeighed += load.mass.has_value();
        summary.wood += load.mass.value_or(Mass::kilogram(0));
    }
}

ShiftSummary counted(const Journal::Inside& inside, const Shift& shift) {
    ShiftSummary summary;
    summary.shift = shift;
    Count count{summary};
    FactStream rows{inside, shift.id};
    summary.first = summary.last = shift.id;
    bool any = false;
    while (rows.next()) {
        summary.first = any ? std::min(summary.first, rows.fact.at) : rows.fact.at;
        summary.last = any ? std::max(summary.last, rows.fact.at) : rows.fact.at;
        any = true;
        count.add(rows.fact);
    }
    countBlocks(inside, summary);
    countLoads(inside, summary);
    summary.readings -= static_cast<std::int64_t>(rows.withdrawals() - rows.leftOut());
    return summary;
}

// Every row of a shift has a number, so the next free one tells whether anything came since.
std::optional<ShiftSummary> kept(const Journal::Inside& inside, const Shift& shift) {
    constexpr std::int32_t countedSo = 8; // the form from which summaries are counted as here
    if (inside.version < countedSo)
        return std::nullopt;
    SQLite::Statement query{*inside.db,
                            "SELECT first, last, readings, facts, draws, drawsMeasured, loads, loadsWeighed, "
                            "checks, sap, syrup, wood, lit, crew FROM summary WHERE shift=? AND seen=?"};
    SQLite::bind(query, microsOf(shift.id), nextId(*inside.db, shift.id));
    if (!query.executeStep() || !isAsKept(inside, Derived::summary, shift.id))
        return std::nullopt;
    ShiftSummary summary;
    summary.shift = shift;
    summary.first = instantOf(query.getColumn(0).getInt64());
    summary.last = instantOf(query.getColumn(1).getInt64());
    summary.readings = query.getColumn(2).getInt64();
    summary.facts = query.getColumn(3).getInt64();
    summary.draws = query.getColumn(4).getInt();
    summary.drawsMeasured = query.getColumn(5).getInt();
    summary.loads = query.getColumn(6).getInt();
    summary.loadsWeighed = query.getColumn(7).getInt();
    summary.checks = query.getColumn(8).getInt();
    summary.sap = Volume::ofSi(query.getColumn(9).getDouble());
    summary.syrup = Volume::ofSi(query.getColumn(10).getDouble());
    summary.wood = Mass::ofSi(query.getColumn(11).getDouble());
    if (!query.isColumnNull(12))
        summary.lit = instantOf(query.getColumn(12).getInt64());
    summary.crew = split(query.getColumn(13).getString());
    return summary;
}

struct Counted {
    ShiftSummary summary;
    FactId seen; // the shift's next free number when it was counted
};

void keep(const Journal::Inside& inside, const std::vector<Counted>& summaries) {
    SQLite::Transaction transaction{*inside.db, SQLite::TransactionBehavior::IMMEDIATE};
    for (const auto& [summary, seen] : summaries) {
        SQLite::Statement insert{*inside.db,
                                 "INSERT OR REPLACE INTO summary(shift, seen, first, last, readings, facts, draws, "
                                 "drawsMeasured, loads, loadsWeighed, checks, sap, syrup, wood, crew, lit) "
                                 "VALUES(?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)"};
        SQLite::bind(insert, microsOf(summary.shift.id), seen, microsOf(summary.first), microsOf(summary.last),
                     summary.readings, summary.facts, summary.draws, summary.drawsMeasured, summary.loads,
                     summary.loadsWeighed, summary.checks, summary.sap.si(), summary.syrup.si(), summary.wood.si(),
                     joined(summary.crew));
        if (summary.lit)
            insert.bind(16, microsOf(*summary.lit));
        insert.exec();
        sealDerived(*inside.db, Derived::summary, microsOf(summary.shift.id));
    }
    transaction.commit();
}

// An open shift changes every second: it is not worth keeping.
void keepWhereAllowed(const Journal& journal, std::vector<Counted> counted) {
    std::erase_if(counted, [](const Counted& one) { return one.summary.shift.open; });
    if (counted.empty() || !journal.inside().lock)
        return;
    try {
        keep(journal.inside(), counted);
    } catch (const SQLite::Exception&) {
        return; // another is writing, or the disk is full: they are counted again next time
    }
}

} // namespace

std::vector<ShiftSummary> summaries(Journal& journal) {
    return guarded(journal.place(), [&] {
        std::vector<ShiftSummary> all;
        std::vector<Counted> fresh;
        {
            const Snapshot snapshot{*journal.inside().db};
            for (const Shift& shift : journal.shifts()) {
                if (auto summary = kept(journal.inside(), shift)) {
                    all.push_back(std::move(*summary));
                } else {
                    all.push_back(counted(journal.inside(), shift));
                    fresh.push_back({all.back(), nextId(*journal.inside().db, shift.id)});
                }
            }
        }
        keepWhereAllowed(journal, std::move(fresh));
        return all;
    });
}

ShiftSummary summaryOf(Journal& journal, ShiftId shift) {
    return guarded(journal.place(), [&] {
        const Snapshot snapshot{*journal.inside().db};
        for (const Shift& one : journal.shifts())
            if (one.id == shift)
                return counted(journal.inside(), one);
        beginningOf(journal.inside(), shift); // throws: there is none
        return ShiftSummary{};
    });
}

} // namespace panside
