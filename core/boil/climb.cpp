#include "core/boil/climb.h"

#include "core/boil/state.h"
#include "core/physics/sugar.h"

#include <algorithm>

namespace panside {
namespace {

constexpr double meanOver = 10, fewestSeconds = 50, longestGap = 90, beginsOver = 25; // seconds
constexpr std::size_t fewestPoints = 6; // read each minute, a line through two of them is noise
constexpr double settles = 20;          // after a draw the probe still shows what is gone
constexpr double underMark = 20;        // brix: what lies further below is foam, or thickens by other rules

constexpr double drawnThin = 120;   // seconds after a draw in which thin sap is what the draw has brought,
constexpr double pouredIn = 35;     // but not if it lies so many brix under the mark
constexpr double floodedAfter = 60; // seconds so thin: somebody has poured sap in
// In 1800 h of harmless boil on made-up rigs nothing was called falsely by this; of 133 pans drawn empty, 132 were
// called, 61 s and more before they were dry (alarm_table --full, --others 0 to 14000).
constexpr double steep = 1.65, soonAgain = 0.65, calm = 1.2;
constexpr double verySteep = 2.5;          // however long it took
constexpr double thin = 2.5, atOnce = 0.3; // brix under the mark; of the usual wait
constexpr double calmFor = 150; // seconds: a splash, or thin sap that a draw has brought, makes it calm for less
// What is odd already is no measure of what is usual, unless it goes on for longer than a pan takes to be emptied.
constexpr double odder = 1.3;
constexpr int believedAfter = 4; // draws

std::optional<Brix> sugarOf(const State& state, double kelvin, Instant at) {
    const auto water = state.weather.boiling(at);
    if (!water)
        return std::nullopt;
    const double rise = kelvin - state.mark.offset(at).kelvin() - water->waterBoils.kelvin();
    return sugarAtRise(TemperatureDifference::kelvin(std::max(0.0, rise)), water->forModel);
}

} // namespace

void Climb::forgetLine() {
    count_ = latestCount_ = 0;
    calmSince_.reset();
    summed_ = 0;
}

void Climb::absorb(const State& state, const Fact& fact) {
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        const Sensor& sensor = state.sensors.of(Series::syrup_pan);
        const Probe* probe = sensor.active(fact.at);
        if (reading->series != Series::syrup_pan || !probe || probe->name() != reading->probe ||
            probe->believedAt() != fact.at)
            return;
        // What looks like steam for more than a minute is thin sap.
        const Reason reason = probe->reason(fact.at);
        if (reason != Reason::none && reason != Reason::inSteamOrFoam)
            return;
        if (drawing_ || !shutAt_ || secondsBetween(*shutAt_, fact.at) > settles)
            read(state, sensor.value(fact.at)->sample, fact.at);
    } else if (std::holds_alternative<DrawOpened>(fact.what)) {
        learn(fact.at);
        drawing_ = true;
    } else if (std::holds_alternative<DrawClosed>(fact.what)) {
        shutAt_ = fact.at;
        lowest_ = 0;
        drawing_ = false;
        forgetLine();
    } else if (std::holds_alternative<PanSwapped>(fact.what)) {
        *this = Climb{};
    }
}

void Climb::read(const State& state, double kelvin, Instant at) {
    if (summed_ > 0 && secondsBetween(summedFrom_, at) >= meanOver) {
        if (const auto sugar = sugarOf(state, sum_ / summed_, at))
            judgeMean(sugar->degrees() - state.settings.targetDensity().degrees(), sugar->degrees(), at);
        summed_ = 0;
    }
    if (summed_ == 0) {
        summedFrom_ = at;
        sum_ = 0;
    }
    sum_ += kelvin;
    ++summed_;
}

void Climb::judgeMean(double overMark, double brix, Instant at) {
    if (overMark > -underMark) {
        thinSince_.reset();
        backAtMark(overMark, at);
        add(brix, summedFrom_);
        return;
    }
    const bool drawn = drawing_ || (shutAt_ && secondsBetween(*shutAt_, at) < drawnThin);
    if (drawn && overMark > -pouredIn)
        thinSince_.reset();
    else
        thinSince_ = thinSince_.value_or(at);
    if (thinSince_ && secondsBetween(*thinSince_, at) > floodedAfter)
        races_ = false;
}

// Thin when the draw was shut, and syrup again before a line through it can be drawn: there is next to nothing in it.
void Climb::backAtMark(double overMark, Instant at) {
    const auto waits = middle(waits_, 1);
    if (drawing_ || !shutAt_ || !waits)
        return;
    lowest_ = std::min(lowest_, overMark);
    if (overMark > 0 && lowest_ < -thin && secondsBetween(*shutAt_, at) < atOnce * *waits)
        races_ = true;
}

// The highest that the middle one of three means came to: a dip into foam or spray, and the way out of it, leave it
// where it was.
void Climb::add(double brix, Instant at) {
    std::shift_right(latest_.begin(), latest_.end(), 1);
    latest_[0] = static_cast<float>(brix);
    latestCount_ = std::min(latestCount_ + 1, latest_.size());
    if (latestCount_ < latest_.size())
        return;
    const float median =
        std::max(std::min(latest_[0], latest_[1]), std::min(std::max(latest_[0], latest_[1]), latest_[2]));
    const float high = count_ > 0 ? std::max(median, points_[0].brix) : median;
    // Out of foam it comes up fast, and no faster than it went in: what it comes back to is where the line begins.
    if (count_ == 0)
        begunAt_ = at;
    else if (secondsBetween(begunAt_, at) < beginsOver)
        count_ = 0;
    std::shift_right(points_.begin(), points_.end(), 1);
    points_[0] = {at, high};
    count_ = std::min(count_ + 1, size);
    const double over = secondsBetween(points_[count_ - 1].at, at);
    if (over < fewestSeconds || count_ < fewestPoints)
        return;
    // Out of foam it comes up at first and then stands; what thickens goes on.
    const Point& half = points_[count_ / 2];
    const double lately = (high - half.brix) / secondsBetween(half.at, at);
    rate_ = std::min<double>((high - points_[count_ - 1].brix) / over, lately);
    if (drawing_)
        return;
    steepest_ = std::max(steepest_, rate_);
    judge(at);
}

void Climb::learn(Instant opened) {
    const auto often = usual(), waited = middle(waits_, 1);
    const double waits = shutAt_ ? secondsBetween(*shutAt_, opened) : 0;
    const bool odd = often && waited && shutAt_ && steepest_ > odder * *often && waits < soonAgain * *waited;
    oddOnes_ = odd ? oddOnes_ + 1 : 0;
    if (!odd || oddOnes_ > believedAfter) {
        if (steepest_ > 0)
            keep(steeps_, steepest_);
        if (shutAt_)
            keep(waits_, waits);
    }
    steepest_ = 0;
}

void Climb::judge(Instant at) {
    const auto often = usual(), waits = middle(waits_, 1);
    if (!often || !waits || !shutAt_)
        return;
    const bool early = secondsBetween(*shutAt_, at) < soonAgain * *waits;
    if (rate_ >= calm * *often || !early)
        calmSince_.reset();
    else if (!calmSince_)
        calmSince_ = at;
    if ((early && rate_ > steep * *often) || rate_ > verySteep * *often)
        races_ = true;
    else if (!early || (calmSince_ && secondsBetween(*calmSince_, at) > calmFor))
        races_ = false;
}

std::optional<double> Climb::rate(Instant now) const {
    if (count_ < fewestPoints || secondsBetween(points_[count_ - 1].at, points_[0].at) < fewestSeconds ||
        secondsBetween(points_[0].at, now) > longestGap)
        return std::nullopt;
    return rate_;
}

void Climb::keep(Past& past, double value) {
    past.values[past.count++ % past.values.size()] = static_cast<float>(value);
}

std::optional<double> Climb::middle(const Past& past, std::size_t fewest) {
    if (past.count < fewest)
        return std::nullopt;
    auto sorted = past.values;
    const auto n = static_cast<std::ptrdiff_t>(std::min(past.count, sorted.size()));
    std::nth_element(sorted.begin(), sorted.begin() + n / 2, sorted.begin() + n);
    return sorted[static_cast<std::size_t>(n / 2)];
}

std::optional<double> Climb::usual() const { return middle(steeps_, 2); }

} // namespace panside
