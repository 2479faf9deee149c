#include "core/boil/last_digit.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double stuckFor = 60;           // seconds, by fineStep steps or where nothing else is known of coarse ones
constexpr double unknownHabit = 5;        // times that, until the habit of coarse steps is known
constexpr double fineStep = 0.025;        // degrees: the boil itself moves more in any second
constexpr std::uint32_t enoughMoves = 6;  // moves that tell the step; samples that a hold is made of
constexpr double blockFor = 300;          // seconds of boil
constexpr std::uint16_t fewestBlocks = 4; // blocks that tell a habit
constexpr double overHabit = 4;           // a hold so many times as long as is usual for the longest of a block is none
constexpr double missedSamples = 3;       // usual spacings without a sample: a silence, and no hold

} // namespace

// The middle one of the longest holds: a freeze that was too short to be noticed lengthens one of them and no more.
double LastDigit::limit() const {
    if (moves_ >= enoughMoves && step_ <= fineStep)
        return stuckFor;
    if (blocks_ < fewestBlocks)
        return unknownHabit * stuckFor;
    auto sorted = longest_;
    const std::size_t count = std::min<std::size_t>(blocks_, blocksKept);
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(count / 2);
    std::nth_element(sorted.begin(), middle, sorted.begin() + static_cast<std::ptrdiff_t>(count));
    return std::max(stuckFor, overHabit * static_cast<double>(*middle));
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

void LastDigit::take(double shown, Instant at, double spacing, const Around& around) {
    const bool silence = unchanged_ > 0 && secondsBetween(heardAt_, at) > std::max(5.0, missedSamples * spacing);
    heardAt_ = at;
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
