// Taking back and putting right what was entered.
#include "core/boil/loads.h"
#include "core/shift/session.h"

#include <algorithm>

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr auto seenIsTakenBackFor = 30s;
constexpr auto sameLoad = 250s; // a load that is corrected by less is still the one that the stack showed

bool isNoticed(const Fact& fact) {
    const auto* fired = std::get_if<Fired>(&fact.what);
    return fired && fired->inferred;
}

} // namespace

const Session::Undoable* Session::lastOfShift() {
    for (std::size_t i = entered_.size(); i-- > 0;)
        if (const Fact& fact = entered_[i].fact;
            !std::holds_alternative<AlarmSeen>(fact.what) || now() - fact.at <= seenIsTakenBackFor)
            return &entered_[i];
    return nullptr;
}

bool Session::bookIsNext(const Undoable* ofShift) const {
    return book_.last() && (!ofShift || book_.last()->order > ofShift->order);
}

const Fact* Session::lastEntered() {
    const Undoable* last = lastOfShift();
    if (bookIsNext(last))
        return &book_.last()->fact;
    return last ? &last->fact : nullptr;
}

std::optional<Fact> Session::undo() {
    const Undoable* last = lastOfShift();
    const bool inBook = bookIsNext(last);
    if (!last && !inBook)
        return std::nullopt;
    ++told_;
    Fact fact = inBook ? book_.undo(*keeper_, now()) : last->fact;
    if (!inBook) {
        const FactId id = last->id;
        entered_.erase(entered_.begin() + (last - entered_.data()));
        keeper_->withdraw(id, now());
        boil_.withdraw(id);
        if (isNoticed(fact) && shift_)
            deny(*shift_, fact);
    }
    keeper_->flush(patience);
    takenBack_.push_back(fact);
    return fact;
}

Session::Answer Session::correct(ShiftId shift, FactId fact, std::optional<Fact> instead) {
    if (onlyWatches_)
        return Refused{*onlyWatches_};
    const Instant at = now();
    if (auto ahead = instead ? tooFarAhead(*instead, at) : std::nullopt)
        return Refused{std::move(*ahead)};
    if (instead)
        instead->entered = at;
    ++told_;
    const auto before = factOf(shift, fact);
    if (before)
        takenBack_.push_back(*before);
    book_.forget(shift, fact);
    const bool goesOn = shift == openShift();
    const bool shown = shift == shift_;
    if (goesOn)
        keeper_->withdraw(fact, at);
    else
        keeper_->withdrawFrom(shift, fact, at);
    if (shown) {
        boil_.withdraw(fact);
        std::erase_if(entered_, [&](const auto& entry) { return entry.id == fact; });
    }
    if (before && isNoticed(*before) && (!instead || std::chrono::abs(instead->at - before->at) > sameLoad))
        deny(shift, *before);
    FactId id = fact;
    if (instead && goesOn) {
        id = keep(std::move(*instead), true);
    } else if (instead) {
        id = keeper_->keepIn(shift, *instead);
        if (shown)
            boil_.add(id, std::move(*instead));
    }
    return Entered{id, keeper_->flush(patience)};
}

// Taken back, the stack would show it again when the log is folded anew.
void Session::deny(ShiftId shift, const Fact& noticed) {
    auto denial = denialOf(noticed, now());
    if (shift == openShift()) {
        keep(std::move(denial), true);
        return;
    }
    const FactId id = keeper_->keepIn(shift, denial);
    if (shift == shift_)
        boil_.add(id, std::move(denial));
}

std::optional<Fact> Session::factOf(ShiftId shift, FactId id) const {
    const auto in = [id](const Facts& facts) {
        const auto place = facts.placeOf(id);
        return place ? std::optional{facts[*place].fact} : std::nullopt;
    };
    if (shift == shift_)
        return in(boil_.facts());
    const auto journal = keeper_->beside();
    return journal ? in(journal->deeds(shift)) : std::nullopt;
}

} // namespace panside
