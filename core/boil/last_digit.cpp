#include "core/boil/last_digit.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double stuckFor = 60;    // seconds, by fineStep steps or where nothing else is known of coarse ones
constexpr double unknownHabit = 5; // times that, until the habit of coarse steps is known
constexpr double fineStep = 0.025; // degrees: the boil itself moves more in any second
constexpr double wholeStep = 0.9;  // degrees: no habit tells anything of such
constexpr double coarseStep = 0.4; // degrees: no boil's noise moves it from one to the next,
constexpr double slowestFirstClimb = 0.00015; // (of thin sap that begins to thicken)
constexpr double slowestClimb = 0.00025;      // only a pan that climbs, by so much a second at the least
constexpr std::uint32_t enoughMoves = 6;      // moves that tell the step; samples that a hold is made of
constexpr double blockFor = 300;              // seconds of boil
constexpr std::uint16_t fewestBlocks = 4;     // blocks that tell a habit
constexpr double overLongest = 1.5;           // the same of the longest of all, where steps are coarse
constexpr double overHabit = 4;     // a hold so many times as long as is usual for the longest of a block is none
constexpr double missedSamples = 3; // usual spacings without a sample: a silence, and no hold

bool isWhole(double number) { return std::abs(number - std::round(number)) < 1e-6; }

} // namespace

// The middle one of the longest holds: a freeze that was too short to be noticed lengthens one of them and no more.
double LastDigit::limit() const {
    if (moves_ >= enoughMoves && step_ <= fineStep)
        return stuckFor;
    // One that never moved yet shows by its figure that its steps may be whole or half ones.
    const double step = step_ > 0 ? step_ : isWhole(last_) ? 1 : isWhole(2 * last_) ? 0.5 : 0;
    const bool coarse = step >= coarseStep && !flickers_;
    if (blocks_ < fewestBlocks || (step >= wholeStep && coarse))
        return coarse ? step / slowestFirstClimb : unknownHabit * stuckFor;
    // A noise that flickers between two coarse steps makes stretches of short holds: the longest of all counts there.
    const double atRest =
        coarse ? std::max(step / slowestClimb, overLongest * *std::max_element(longest_.begin(), longest_.end())) : 0;
    auto sorted = longest_;
    const std::size_t count = std::min<std::size_t>(blocks_, blocksKept);
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(count / 2);
    std::nth_element(sorted.begin(), middle, sorted.begin() + static_cast<std::ptrdiff_t>(count));
    return std::max({atRest, stuckFor, overHabit * static_cast<double>(*middle)});
}

void LastDigit::holdEnds(double held, Instant at) {
    longestNow_ = std::max(longestNow_, static_cast<float>(held));
    if (secondsBetween(blockFrom_, at) < blockFor)
        return;
    longest_[blocks_ % blocksKept] = longestNow_;
    blocks_ = static_cast<std::uint16_t>(blocks_ < 2 * blocksKept ? blocks_ + 1 : blocks_ + 1 - blocksKept);
    longestNow_ = 0;
    blockFrom_ = at;
}

void LastDigit::addSample(double shown, Instant at, double spacing, const Around& around) {
    const bool silence = unchanged_ > 0 && secondsBetween(heardAt_, at) > std::max(5.0, missedSamples * spacing);
    heardAt_ = at;
    flickers_ = around.flickers;
    const bool frozenOn = stuck_ && shown == last_ && silence; // it speaks again, and says the same
    if (unchanged_ == 0 || ((silence || !around.boiling) && !frozenOn)) {
        // A hold with a silence or a cold pan in it tells no habit, nor does the stretch it is in.
        stuck_ = false;
        since_ = blockFrom_ = at;
        longestNow_ = 0;
        last_ = shown;
        unchanged_ = 1;
        return;
    }
    if (const double by = std::abs(shown - last_); by > 1e-6) {
        step_ = step_ > 0 ? std::min(step_, static_cast<float>(by)) : static_cast<float>(by);
        ++moves_;
        if (!stuck_)
            holdEnds(secondsBetween(since_, at), at);
        else
            blockFrom_ = at;
        since_ = at;
        unchanged_ = 0;
        last_ = shown;
    }
    ++unchanged_;
    const bool byFineSteps = moves_ >= enoughMoves && step_ <= fineStep;
    stuck_ = unchanged_ >= enoughMoves && secondsBetween(since_, at) >= limit() && (byFineSteps || around.othersMove);
}

} // namespace panside
