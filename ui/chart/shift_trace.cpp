#include "ui/chart/shift_trace.h"

#include <algorithm>

namespace panside {

void ShiftTrace::add(const Fact& fact) {
    if (!begun_)
        begun_ = fact.at;
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        if (reading->series == Series::stack)
            takeStack(fact.at, *reading);
        return;
    }
    if (std::holds_alternative<Set>(fact.what) || std::holds_alternative<Unknown>(fact.what))
        return;
    if (const auto* step = std::get_if<ClockStep>(&fact.what))
        clock_.moved(fact.at, step->by);
    if (std::holds_alternative<Lit>(fact.what) && !litAt_)
        litAt_ = fact.at;
    if (std::holds_alternative<DrawOpened>(fact.what) && (draws_.empty() || draws_.back().closed))
        draws_.push_back({fact.at, std::nullopt});
    if (std::holds_alternative<DrawClosed>(fact.what) && !draws_.empty() && !draws_.back().closed)
        draws_.back().closed = fact.at;
    events_.push_back(fact);
}

void ShiftTrace::add(const RisePoint& point) {
    // What boils stands at the boiling point of water or above it, but for what a barometer and a probe may be off.
    if (!boiledAt_ && point.trust == Trust::good && point.rise > -0.5F)
        boiledAt_ = point.at;
    rise_.add({point.at, point.rise, point.trust, point.gapBefore});
}

std::optional<Instant> ShiftTrace::momentOf(LaidFrom from) const {
    switch (from) {
    case LaidFrom::lit:
        return litAt_ ? litAt_ : begun_;
    case LaidFrom::boil:
        return boiledAt_;
    case LaidFrom::lastDraw:
        return draws_.empty() ? std::nullopt : std::optional{draws_.back().opened};
    }
    return std::nullopt;
}

void ShiftTrace::add(const SteamPoint& point) {
    evaporation_.add({point.at, point.rate, Trust::good, point.gapBefore});
}

// A probe that was silent for 10 s or 3 of its usual spacings leaves a gap; readings typed in are joined up to 20 min.
void ShiftTrace::takeStack(Instant at, const Reading& reading) {
    const double since = lastStack_ ? secondsBetween(*lastStack_, at) : 0;
    const double allowed = reading.byHand() ? 1200.0 : std::max(10.0, 3 * stackSpacing_);
    const bool gap = lastStack_ && since > allowed;
    if (lastStack_ && !gap)
        stackSpacing_ = stackSpacing_ == 0 ? since : 0.9 * stackSpacing_ + 0.1 * since;
    stack_.add({at, static_cast<float>(reading.si), Trust::good, gap});
    lastStack_ = at;
}

void ShiftTrace::forgetFacts() {
    ++takenAnew_;
    rise_.clear();
    stack_.clear();
    evaporation_.clear();
    events_.clear();
    draws_.clear();
    begun_.reset();
    litAt_.reset();
    boiledAt_.reset();
    lastStack_.reset();
    stackSpacing_ = 0;
    clock_.forget();
    factsTaken_ = risesTaken_ = steamTaken_ = 0;
}

void ShiftTrace::clear() {
    forgetFacts();
    rewritten_.reset();
}

void ShiftTrace::setColumn(std::chrono::microseconds span) {
    rise_.setColumn(span);
    stack_.setColumn(span);
    evaporation_.setColumn(span);
}

bool ShiftTrace::follow(const Boil& boil) {
    const auto& facts = boil.facts();
    const auto& rises = boil.rise();
    const auto& steam = boil.steam();
    if (rewritten_ != boil.rewritten() || facts.size() < factsTaken_ || rises.size() < risesTaken_ ||
        steam.size() < steamTaken_) {
        forgetFacts();
        rewritten_ = boil.rewritten();
    }
    const bool any = facts.size() > factsTaken_ || rises.size() > risesTaken_;
    Fact scratch{};
    for (; factsTaken_ < facts.size(); ++factsTaken_)
        add(facts.fact(factsTaken_, scratch));
    for (; risesTaken_ < rises.size(); ++risesTaken_)
        add(rises[risesTaken_]);
    for (; steamTaken_ < steam.size(); ++steamTaken_)
        add(steam[steamTaken_]);
    return any;
}

} // namespace panside
