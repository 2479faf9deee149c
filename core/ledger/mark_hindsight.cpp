#include "core/ledger/mark_hindsight.h"

#include "core/boil/mark_belief.h"
#include "core/boil/square.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double farOff = 2; // standard deviations off the others, from which on a check counts less
constexpr int rounds = 4;    // in which that is found out
constexpr double beforeAny = 1 / square(uncheckedSd);

} // namespace

void MarkHindsight::add(Kind kind, Instant at, double kelvin, double variance) {
    events_.push_back({kind, at, drift_, grows_, kelvin, variance});
    drift_ = grows_ = 0;
}

void MarkHindsight::begin(Instant at, Offset known) { add(Kind::begins, at, known.kelvin, square(known.sd)); }

void MarkHindsight::drift(double kelvin, double variance) {
    drift_ += kelvin;
    grows_ += std::max(0.0, variance);
}

void MarkHindsight::check(Instant at, Offset seen, double alike) {
    add(Kind::seen, at, seen.kelvin, square(seen.sd));
    const double weight = 1 / square(seen.sd);
    weight_ += weight;
    untoldWeight_ += alike > 0 ? weight : 0;
    alike_ += weight * alike;
}

void MarkHindsight::ask(Instant at) { add(Kind::asked, at, 0, 0); }

// Forward, each event on those before it; then backward, each on those after it too (Rauch, Tung and Striebel, AIAA
// Journal 3, 1965: from memory).
std::vector<MarkHindsight::Belief> MarkHindsight::smoothed() const {
    std::vector<Belief> ahead(events_.size()), all(events_.size());
    Belief now{0, 1 / beforeAny};
    for (std::size_t i = 0; i < events_.size(); ++i) {
        const Event& event = events_[i];
        now = {now.mean + event.drift, now.variance + event.grows};
        if (event.kind == Kind::begins) {
            now = {event.kelvin, event.variance};
        } else if (event.kind == Kind::seen) {
            const double gain = now.variance / (now.variance + event.variance * event.less);
            now = {now.mean + gain * (event.kelvin - now.mean), now.variance * (1 - gain)};
        }
        ahead[i] = now;
    }
    for (std::size_t i = events_.size(); i-- > 0;) {
        all[i] = ahead[i];
        if (i + 1 == events_.size() || events_[i + 1].kind == Kind::begins)
            continue;
        const Event& next = events_[i + 1];
        const double then = ahead[i].variance + next.grows;
        const double gain = then > 0 ? ahead[i].variance / then : 0;
        all[i].mean += gain * (all[i + 1].mean - ahead[i].mean - next.drift);
        all[i].variance += square(gain) * (all[i + 1].variance - then);
    }
    return all;
}

std::vector<MarkHindsight::Offset> MarkHindsight::answers() const {
    MarkHindsight weighed = *this;
    auto all = weighed.smoothed();
    for (int round = 1; round < rounds; ++round) {
        for (std::size_t i = 0; i < all.size(); ++i) {
            Event& event = weighed.events_[i];
            if (event.kind != Kind::seen)
                continue;
            const double off = std::abs(event.kelvin - all[i].mean) / std::sqrt(event.variance + all[i].variance);
            event.less = off > farOff ? square(off / farOff) : 1;
        }
        all = weighed.smoothed();
    }
    const double common =
        untoldWeight_ > 0 ? alike_ / untoldWeight_ * square(untoldWeight_ / (weight_ + beforeAny)) : 0;
    std::vector<Offset> answers;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (events_[i].kind == Kind::asked)
            answers.push_back({all[i].mean, std::sqrt(all[i].variance + common)});
    return answers;
}

} // namespace panside
