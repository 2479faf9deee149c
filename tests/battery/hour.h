#pragma once
// A scripted hour: what is kept in it, one write after the other, and whether a journal holds it.
#include "core/boil/shift_log.h"
#include "core/journal/backup.h"
#include "core/journal/journal.h"

#include <string>
#include <vector>

namespace battery {

inline panside::Fact factFrom(const std::string& row) { return std::get<panside::Fact>(panside::factOfLine(row)); }

// Sixty writes: readings gathered by the second, firings, draws, notes; the shift ends in the midst of them and another
// begins.
inline std::vector<std::vector<panside::Fact>> scriptedHour() {
    using namespace panside;
    std::vector<std::vector<Fact>> writes;
    const Instant begin = *instantIn("2025-03-14T18:00:00Z");
    for (int i = 0; i < 60; ++i) {
        std::vector<Fact> facts;
        const std::string at = textOf(begin + std::chrono::minutes{i});
        if (i == 0 || i == 36)
            facts.push_back(factFrom(at + ",lit,,,by=Odile"));
        for (int k = 0; k < 8 && i != 35; ++k) {
            Fact reading = factFrom(at + ",syrup_pan,10" + std::to_string(i % 4) + "." + std::to_string(k) + ",degC,");
            reading.at += std::chrono::seconds{k + 1};
            facts.push_back(reading);
        }
        if (i % 7 == 3)
            facts.push_back(factFrom(at + ",fired,18,kg,"));
        if (i % 11 == 5)
            facts.push_back(factFrom(at + ",note,,," + std::string(static_cast<std::size_t>(100 * i), 'n')));
        if (i == 35)
            facts.push_back(factFrom(at + ",shift_end,,,"));
        writes.push_back(std::move(facts));
    }
    return writes;
}

inline std::vector<std::string> rowsOf(const panside::Journal& journal) {
    std::vector<std::string> rows;
    for (const auto& shift : journal.shifts()) {
        const auto kept = journal.facts(shift.id);
        std::vector facts(kept.begin(), kept.end());
        std::sort(facts.begin(), facts.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
        for (const auto& entry : facts)
            rows.push_back(panside::rowOf(entry.fact));
    }
    return rows;
}

inline std::vector<std::string> rowsOf(const std::vector<std::vector<panside::Fact>>& writes) {
    std::vector<std::string> rows;
    for (const auto& facts : writes)
        for (const auto& fact : facts)
            rows.push_back(panside::rowOf(fact));
    return rows;
}

// The journal is sound and holds the first rows of the hour, at least so many of them.
inline std::string holds(const std::filesystem::path& place, const std::vector<std::string>& rows, std::size_t least) {
    using namespace panside;
    const Journal journal = Journal::open(place);
    if (const auto health = fullCheck(journal); !health.sound())
        return "not sound: " + english(health.findings.front());
    const auto there = rowsOf(journal);
    if (there.size() < least)
        return std::to_string(there.size()) + " rows there, " + std::to_string(least) + " acknowledged";
    if (there.size() > rows.size() || !std::equal(there.begin(), there.end(), rows.begin()))
        return "other rows than were kept, or in another order";
    return {};
}

} // namespace battery
