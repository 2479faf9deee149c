// The filter press: its runs, its gauge, what it holds back, and that it is cleaned.
#include "core/ledger/fold.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace panside {
namespace {

constexpr double atRest = 20e3; // Pa: what a gauge may show of a press at rest (our judgement)
constexpr Duration slowKey{180};
constexpr double heelSlack = 0.02; // of a volume, as it is measured (our judgement)

} // namespace

// New papers, or a press that was cleaned: what it held back is lost, and joins nothing that follows.
void Ledger::Fold::cutPress() {
    if (press.heel.sugar > 0) {
        const std::array<Strand, 1> strand{strandOf(press.last, press.heel.sugar)};
        lose("press heel", "press", press.heel, strand);
    }
    press.heel = {};
    press.last = noKnot;
    press.taint = {};
}

void Ledger::Fold::pressOn(const DayRow& row) {
    if (press.open) { // and the run before was never ended: something went through
        mark(MarkKind::pressNotEnded, {}, {}, {}, press.run.at);
        pressEnds({});
    }
    if (row.text(Key::papers) == "new")
        cutPress();
    press.open = true;
    press.pressed.reset();
    press.run = {};
    press.run.at = now;
    press.run.from = row.text(Key::from);
    press.run.to = row.text(Key::to);
    press.run.aid = row.text(Key::aid);
    press.run.temperature = row.temperature();
}

// Pressure where no run goes on: the key that begins it was forgotten, or the pump is off and the press is still full.
void Ledger::Fold::gauge(const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading || reading->series != Series::filter_pressure || !press.told)
        return;
    if (reading->si <= atRest || press.open) {
        press.pressed.reset();
        press.asked = false;
        return;
    }
    press.pressed = press.pressed.value_or(fact.at);
    // A key is pressed a minute late, and a gauge sinks slowly.
    if (press.asked || fact.at - *press.pressed < slowKey)
        return;
    press.asked = true;
    mark(MarkKind::pressureWithoutRun, {}, reading->si / 1000, {}, press.pressed);
}

// What goes through takes the heel of the run before with it and leaves its own behind.
void Ledger::Fold::pressOff(const DayRow& row) {
    if (!press.open) {
        mark(MarkKind::pressNotOpen);
        pressOn(row);
    }
    if (!row.value)
        mark(MarkKind::noVolume);
    pressEnds(row);
}

void Ledger::Fold::pressEnds(const DayRow& row) {
    PressRow run = press.run;
    press.open = false;
    for (const auto& [key, into] :
         {std::pair{Key::from, &run.from}, {Key::to, &run.to}, {Key::aid, &run.aid}, {Key::result, &run.result}})
        if (row.of(key))
            *into = row.text(key);
    if (run.from.empty() || run.to.empty())
        return;
    const std::size_t from = vessel(run.from, false), to = vessel(run.to, false);
    run.from = vessels[from].name;
    run.to = vessels[to].name;
    pressed(std::move(run), row, from, to);
}

// Without a volume nobody knows how much, and yet it went through.
void Ledger::Fold::pressed(PressRow run, const DayRow& row, std::size_t from, std::size_t to) {
    run.through = row.value ? at20(row, vessels[from].content.brix()) : Volume{};
    Taken taken;
    if (row.value) {
        taken = pour(from, run.through);
    } else {
        const Vessel& vessel = vessels[from];
        taken.strands = {unmeasured(vessel.knot != noKnot ? vessel.knot : vessel.last)};
        taken.taint = vessel.taint;
    }
    std::vector<Strand> strands = taken.strands;
    Liquid all = taken.liquid;
    if (press.heel.sugar > 0) {
        strands.push_back(strandOf(press.last, press.heel.sugar));
        all += press.heel;
    } else if (press.last != noKnot) {
        strands.push_back(unmeasured(press.last));
    }
    if (press.last != noKnot)
        taken.taint |= press.taint;
    run.knot = thread.tie(KnotKind::press, static_cast<std::uint32_t>(tables.presses.size()), now, all.sugar, strands);
    const auto heel = row.si(Key::heel);
    const double held = heel && all.mass > 0 ? std::min(1.0, *heel / all.volume().si()) : 0;
    if (heel && *heel > all.volume().si() * (1 + heelSlack) + 1e-6)
        mark(MarkKind::heelTooMuch, {}, Volume::ofSi(*heel).litre(), all.volume().litre());
    press.heel = all.part(held);
    press.last = heel && *heel <= 0 ? noKnot : run.knot;
    press.taint = taken.taint;
    taken.liquid = all.part(1 - held);
    taken.strands = {taken.liquid.sugar > 0 ? strandOf(run.knot, taken.liquid.sugar) : unmeasured(run.knot)};
    tables.presses.push_back(std::move(run));
    if (!vessels[to].content.isEmpty())
        offComesIn(to, taken);
    put(to, taken);
    markTaint(vessels[to].name, taken.taint);
}

void Ledger::Fold::cleaned(const DayRow& row) {
    const std::string_view name = row.text(Key::vessel);
    const auto which = known(name);
    const bool isPress = nameKey(name) == "press" || nameKey(name) == "filterpress" ||
                         (which && vessels[*which].kind == VesselKind::filter && vessels[*which].content.isEmpty());
    if (isPress)
        cutPress();
    if (which) {
        // A clean vessel holds nothing of what was in it; what the book still has in it says itself.
        vessels[*which].joinsLast = false;
        vessels[*which].touched = now;
    }
    tables.cleaned.push_back({now, row, std::string{name}, in.rows[line].fact->by});
}

} // namespace panside
