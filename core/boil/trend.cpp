#include "core/boil/trend.h"

#include "core/boil/state.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// How quickly the past fades in a line: long enough for the noise, short enough for the harm (seconds).
constexpr double panFade = 25, levelFade = 60, tankFade = 240, tankLately = 100;

std::optional<std::size_t> lineOf(Series series) {
    switch (series) {
    case Series::syrup_pan:
        return 0;
    case Series::pan_level:
        return 1;
    case Series::flue_level:
        return 2;
    case Series::tank_level:
        return 3;
    default:
        return std::nullopt;
    }
}

double fadeOf(Series series, double spacing) {
    const double least = series == Series::syrup_pan ? panFade : series == Series::tank_level ? tankFade : levelFade;
    return std::max(least, 5 * spacing);
}

} // namespace

void Trend::addSample(double value, Instant at, double fadeSeconds) {
    if (count_ == 0) {
        base_ = value;
        first_ = last_ = at;
    }
    const double dt = secondsBetween(last_, at);
    const double keep = std::exp(-dt / fadeSeconds);
    // The origin moves to the new reading: t' = t - dt for all that came before.
    const double tt = wtt_ - 2 * dt * wt_ + dt * dt * w_;
    wtx_ = keep * (wtx_ - dt * wx_);
    wtt_ = keep * tt;
    wt_ = keep * (wt_ - dt * w_);
    const double x = value - base_;
    w_ = keep * w_ + 1;
    ww_ = keep * keep * ww_ + 1;
    wx_ = keep * wx_ + x;
    wxx_ = keep * wxx_ + x * x;
    last_ = at;
    ++count_;
}

std::optional<Trend::Line> Trend::line() const {
    const double determinant = w_ * wtt_ - wt_ * wt_;
    if (count_ < 4 || determinant <= 1e-9 * w_ * wtt_)
        return std::nullopt;
    const double slope = (w_ * wtx_ - wt_ * wx_) / determinant;
    const double value = (wx_ - slope * wt_) / w_;
    const double scatter = std::max(0.0, (wxx_ - value * wx_ - slope * wtx_) / w_);
    const double effective = w_ * w_ / ww_;
    const double slopeSd = std::sqrt(scatter / std::max(1.0, effective - 2) * w_ * w_ / determinant);
    return Line{base_ + value, slope, slopeSd, secondsBetween(first_, last_), last_};
}

std::optional<Trend::Line> Trends::of(Series series, Instant now, double after) const {
    const auto index = lineOf(series);
    const auto line = index ? lines_[*index].line() : std::nullopt;
    // A line is about now only while readings come.
    if (!line || secondsBetween(line->at, now) > std::max(after, line->span))
        return std::nullopt;
    return line;
}

std::optional<Length> Trends::usualLevel(Series series) const {
    const std::size_t index = series == Series::pan_level ? 0 : 1;
    return usualFor_[index] > 600 ? std::optional{Length::metre(usual_[index])} : std::nullopt;
}

std::optional<Trends::Inflow> Trends::inflow() const {
    if (feedFor_ < 600 || feedUsual_ <= 0)
        return std::nullopt;
    return Inflow{VolumeFlow::ofSi(feedUsual_), stoodSince_, feedAt_};
}

std::optional<Temperature> Trends::hottestStack() const {
    if (!stackFrom_ || secondsBetween(*stackFrom_, stackAt_) < 3600)
        return std::nullopt;
    return Temperature::kelvin(hottest_);
}

void Trends::standsOrRuns(bool stands, Instant since) {
    if (!stands)
        stoodSince_ = Instant::max();
    else
        stoodSince_ = std::min(stoodSince_, since);
}

void Trends::takeFeed(double flow, Instant at) {
    const double dt = feedIsRead_ ? std::min(60.0, secondsBetween(feedAt_, at)) : 0;
    const bool stands = feedFor_ > 600 && flow < 0.1 * feedUsual_;
    standsOrRuns(stands, at);
    // What runs in while it runs, floats opening and shutting included; a feed that has stopped is not usual.
    if (stoodSince_ == Instant::max() || secondsBetween(stoodSince_, at) < 120) {
        feedFor_ = std::min(1800.0, feedFor_ + dt);
        if (feedFor_ > 0)
            feedUsual_ += dt / feedFor_ * (std::max(0.0, flow) - feedUsual_);
    }
    feedAt_ = at;
    feedIsRead_ = true;
}

void Trends::takeTank(const Trend::Line& line, double fade, Instant at) {
    if (feedIsRead_)
        return;
    const double dt = std::min(60.0, secondsBetween(feedAt_, at));
    feedAt_ = at;
    const double flow = -line.slope;
    if (line.span < fade)
        return;
    // For as long as its line remembers that it was filled, it tells nothing of what runs out.
    constexpr double forgets = 3;
    if (secondsBetween(filledAt_, at) < forgets * fade)
        return;
    // The tank stands when its line is sure to be far flatter than it used to be. So many fades after the flow stopped
    // the line has flattened to a quarter: (1 + n) exp(-n) = 0.25 for n = 2.7.
    constexpr double flattens = 2.7;
    const bool sure = line.slopeSd < 0.1 * feedUsual_;
    const bool stands = feedFor_ > 600 && sure && flow < 0.25 * feedUsual_;
    if (stands || sure)
        standsOrRuns(stands, at - std::chrono::seconds{static_cast<int>(flattens * fade)});
    if (stoodSince_ == Instant::max() && flow > 0) {
        feedFor_ = std::min(1800.0, feedFor_ + dt);
        feedUsual_ += dt / std::max(1.0, feedFor_) * (flow - feedUsual_);
    }
}

void Trends::takeStack(double si, Instant at) {
    if (!stackFrom_) {
        stackFrom_ = blockFrom_ = stackAt_ = at;
        stackMean_ = si;
    }
    const double dt = std::min(30.0, secondsBetween(stackAt_, at));
    stackMean_ += (1 - std::exp(-dt / 30)) * (si - stackMean_);
    stackAt_ = at;
    hottestLately_ = std::max(hottestLately_, stackMean_);
    if (secondsBetween(blockFrom_, at) > 600) {
        // A climb that has just begun must not count as usual because a block ends in its midst.
        hottest_ = std::max(hottest_, hottestBefore_);
        hottestBefore_ = hottestLately_;
        hottestLately_ = stackMean_;
        blockFrom_ = at;
    }
}

void Trends::takePan(double si, Instant at) {
    if (secondsBetween(panBlockFrom_, at) > 30) {
        std::shift_right(panHighs_.begin(), panHighs_.end(), 1);
        panHighs_[0] = 0;
        panBlockFrom_ = at;
    }
    panHighs_[0] = std::max(panHighs_[0], si);
}

// Twice its running depth and a hand's breadth is no wave of the boil, and no draw that was let rise (no source). The
// pans are filled up before the fire is lit and when it is let go out: then it is meant.
void Trends::takeDepth(const State& state, double si, Instant at) {
    constexpr double times = 2, over = 0.02; // metre
    const auto depth = state.settings.runningDepth();
    if (!depth || si < times * depth->metre() + over || !state.course.firing() || !state.sensors.boiling(state, at))
        overfullFrom_.reset();
    else if (!overfullFrom_)
        overfullFrom_ = at;
}

bool Trends::overfull(Instant now) const {
    constexpr double lasts = 120; // seconds
    return overfullFrom_ && secondsBetween(*overfullFrom_, now) >= lasts;
}

std::optional<Temperature> Trends::panHighBefore() const {
    const double highest = *std::max_element(panHighs_.begin() + 1, panHighs_.end());
    return highest > 0 ? std::optional{Temperature::kelvin(highest)} : std::nullopt;
}

void Trends::absorb(const State& state, const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading) {
        // What a person pours in or lets out is no trend.
        if (std::holds_alternative<SapIn>(fact.what))
            resetTank();
        if (std::holds_alternative<DrawClosed>(fact.what))
            lines_[1].reset();
        return;
    }
    const Sensor& sensor = state.sensors.of(reading->series);
    const Probe* probe = sensor.active(fact.at);
    if (!probe || probe->name() != reading->probe || probe->believedAt() != fact.at)
        return;
    if (reading->series == Series::feed_flow && probe->trust(fact.at) == Trust::good)
        takeFeed(probe->accepted(), fact.at);
    if (reading->series == Series::stack && state.course.litAt && probe->trust(fact.at) == Trust::good)
        takeStack(probe->value(), fact.at);
    const auto index = lineOf(reading->series);
    if (!index)
        return;
    if (reading->series == Series::syrup_pan)
        takePan(probe->value(), fact.at);
    if (reading->series == Series::pan_level)
        takeDepth(state, probe->value(), fact.at);
    const bool tank = reading->series == Series::tank_level;
    if (probe->startedAt() == fact.at)
        tank ? resetTank() : lines_[*index].reset();
    if (tank)
        tankLately_.addSample(probe->accepted(), fact.at, tankLately);
    lines_[*index].addSample(probe->accepted(), fact.at, fadeOf(reading->series, probe->spacing()));
    if (tank && state.course.firing()) {
        // The last minutes, where they tell the flow well enough; a coarse probe takes longer.
        const auto lately = tankLately_.line();
        // It rises: it is being filled. On the way to that it seemed to stand.
        if (lately && feedFor_ > 600 && lately->slope > std::max(0.25 * feedUsual_, 3 * lately->slopeSd)) {
            filledAt_ = fact.at;
            stoodSince_ = Instant::max();
        }
        if (lately && probe->spacing() < tankLately / 10 && lately->slopeSd < 0.1 * feedUsual_)
            takeTank(*lately, tankLately, fact.at);
        else if (const auto line = lines_[3].line())
            takeTank(*line, tankFade, fact.at);
    }
    if ((*index == 1 || *index == 2) && state.course.litAt && probe->trust(fact.at) == Trust::good) {
        const std::size_t i = *index - 1;
        const float dt = static_cast<float>(std::clamp(secondsBetween(usualAt_[i], fact.at), 0.0, 60.0));
        usualFor_[i] = std::min(3600.0F, usualFor_[i] + dt);
        if (usualFor_[i] > 0)
            usual_[i] += dt / usualFor_[i] * (probe->value() - usual_[i]);
        usualAt_[i] = fact.at;
    }
}

} // namespace panside
