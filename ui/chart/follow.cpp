#include "ui/chart/shift_trace.h"

namespace panside {

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
