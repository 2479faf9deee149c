#include "ui/board/falling_clock.h"

#include <algorithm>

namespace panside {
namespace {

Instant after(Instant at, Duration span) { return at + std::chrono::round<std::chrono::microseconds>(span); }

} // namespace

void FallingClock::steady(Picture& picture) {
    const std::string fire = picture.fires.empty() ? std::string{} : picture.fires.front().name;
    if (!picture.fireDue || picture.lastFired != lastFired_ || fire != fire_)
        due_.reset();
    lastFired_ = picture.lastFired;
    fire_ = fire;
    if (!picture.fireDue)
        return;
    const Instant told = after(picture.at, *picture.fireDue);
    due_ = due_ ? std::min(*due_, told) : told;
    const Duration left{secondsBetween(picture.at, *due_)};
    // It waits at its end rather than call before its time.
    *picture.fireDue = picture.fireDue->count() > 0 ? std::max(left, Duration{1}) : *picture.fireDue;
    if (!picture.fires.empty())
        picture.fires.front().due = *picture.fireDue;
}

} // namespace panside
