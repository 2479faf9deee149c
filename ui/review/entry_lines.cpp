#include "ui/review/entry_lines.h"

#include "ui/paperlog/paper_row.h"
#include "ui/words/fact_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Review", text); }

bool isSomebodys(const Fact& fact, Instant first) {
    if (std::holds_alternative<ClockStep>(fact.what))
        return false;
    if (const auto* reading = std::get_if<Reading>(&fact.what))
        return reading->byHand();
    return !std::holds_alternative<Set>(fact.what) || fact.at > first;
}

EntryLine lineOf(FactId id, const Fact& fact, const WallClock& clock, Units units) {
    EntryLine line{.id = id,
                   .fact = fact,
                   .time = clock.hourAndMinute(fact.at),
                   .words = factWords(fact, units),
                   .who = QString::fromStdString(fact.by),
                   .fate = {},
                   .stands = true,
                   .written = paperRowOf(fact, clock).has_value()};
    if (fact.entered)
        line.fate = tr("entered at %1").arg(clock.hourAndMinute(*fact.entered));
    return line;
}

// A correction is entered in the moment in which the old entry is withdrawn.
const Fact* insteadOf(const Journal::Withdrawn& old, const std::vector<Boil::Entry>& deeds) {
    const auto found = std::ranges::find_if(
        deeds, [&](const Boil::Entry& deed) { return deed.fact.entered == old.at && deed.id > old.entry.id; });
    return found == deeds.end() ? nullptr : &found->fact;
}

} // namespace

std::vector<EntryLine> entryLines(const std::vector<Boil::Entry>& deeds,
                                  const std::vector<Journal::Withdrawn>& withdrawn, const WallClock& clock,
                                  Units units) {
    std::vector<EntryLine> lines;
    const Instant first = deeds.empty() ? Instant{} : deeds.front().fact.at;
    for (const auto& [id, fact] : deeds)
        if (isSomebodys(fact, first))
            lines.push_back(lineOf(id, fact, clock, units));
    for (const auto& old : withdrawn) {
        if (!isSomebodys(old.entry.fact, first))
            continue;
        EntryLine line = lineOf(old.entry.id, old.entry.fact, clock, units);
        line.stands = line.written = false;
        const QString when = clock.hourAndMinute(old.at);
        const Fact* now = insteadOf(old, deeds);
        line.fate = now ? tr("corrected at %1: %2, %3").arg(when, clock.hourAndMinute(now->at), factWords(*now, units))
                        : tr("taken back at %1").arg(when);
        lines.push_back(std::move(line));
    }
    // What was put right stands right after what it was.
    std::ranges::stable_sort(lines, [](const EntryLine& a, const EntryLine& b) {
        return std::tuple{a.fact.at, a.stands, a.id} < std::tuple{b.fact.at, b.stands, b.id};
    });
    return lines;
}

} // namespace panside
