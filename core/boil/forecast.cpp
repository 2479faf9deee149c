#include "core/boil/forecast.h"

#include "core/boil/square.h"
#include "core/boil/state.h"
#include "core/physics/sugar.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double readEvery = 10; // seconds
constexpr double settlesIn = 20; // after a draw the probe still shows what is gone
constexpr double settleBrix = 6, settleSeconds = 25;
constexpr double turns = 45;                          // seconds into a draw before what follows makes the reading turn
constexpr double gradientBrix = 25;                   // under it nothing has begun to climb
constexpr double doubtfulFor = 90, staleAfter = 1200; // seconds that the model may run on alone
constexpr double recent = 60;                         // seconds: older readings no longer say what is at the draw-off
// What is freed of its noise is as late again: half the ten seconds of a mean, and what the filter needs to believe a
// faster climb.
constexpr auto sugarLag = 2 * probeLag;
constexpr double followedFor = 330; // seconds: entries by hand come each five minutes
// The reading swings with the fire by some 0.04 K: a crest touches the mark before the middle of the swing does.
constexpr double crest = 0.2;        // brix
constexpr double notYet = 5;         // seconds: what is not called is not now
constexpr int watchWorth = 3;        // waits that are a forecast by themselves
constexpr double followedWithin = 2; // standard deviations, faded over some readings
// A draw takes a gradient's worth away within a minute or two; an open door, foam or a ladle of cold sap less.
constexpr double fallsBrix = 1.5, drawnBrix = 3, drawnWithin = 120, drawnFor = 600;
constexpr double otherWater = 0.15;       // K
constexpr int worthLearning = 4;          // waits
constexpr double farOff = 7200;           // seconds
constexpr double fastestClimb = 1.2 / 60; // brix a second: steeper is a pan that comes to the boil
constexpr int quietMinutes = 2;
constexpr double boilsKelvin = 373, stackSeconds = 15, stackMemory = 2400, stackStale = 120;
// The boil heaves a reading for some seconds on end, so that ten of them in ten seconds are worth two or three; spray
// and the fire's own swing are in it too.
constexpr double modelBrix = 0.13, slowNoise = 0.07, leastNoise = 0.05, noiseOfMean = 1.8; // K; of the sample's noise

// Kelvin a brix.
std::optional<double> slopeAt(double brix, Pressure pressure) {
    const auto over = boilingRise(Brix::degrees(std::min(75.0, brix + 0.5)), pressure);
    const auto under = boilingRise(Brix::degrees(std::max(0.0, brix - 0.5)), pressure);
    if (!over || !under)
        return std::nullopt;
    return std::max(0.01, (*over - *under).kelvin());
}

Range rangeOf(const Quantiles& q) {
    const double p50 = std::max(q.p10, q.p50);
    Range range{Duration{q.p10}, Duration{p50}, {}};
    if (q.p90)
        range.p90 = Duration{std::max(p50, *q.p90)};
    return range;
}

// While the gradient builds, sugar climbs as a power of time, so that a straight line says too much: by a factor that
// depends on the power and on how far it has to go.
double bend(double power, double ratio) { return power * (std::pow(ratio, 1 / power) - 1) / (ratio - 1); }

} // namespace

void DrawForecast::absorb(const State& state, const Fact& fact) {
    followOffset(state, fact.at);
    std::visit(Overloaded{
                   [&](const Reading& reading) {
                       if (reading.series == Series::syrup_pan)
                           readPan(state, fact.at);
                       else if (reading.series == Series::stack)
                           readStack(state, fact.at);
                   },
                   [&](const Lit&) { fire_.light(); },
                   [&](const Fired&) {
                       if (state.fire.loads().newlyTold())
                           fire_.fired(fact.at);
                   },
                   [&](const Shutdown&) { fire_.stopFiring(); },
                   [&](const Set& set) { expect(state, set); },
                   [&](const DrawOpened&) { open(state, fact.at); },
                   [&](const DrawClosed&) { close(state, fact.at); },
                   [&](const PanSwapped&) {
                       if (end_.started())
                           end_.start(fact.at, end_.sugar(), 8);
                       record_.forgetCycle();
                       unkeyed_ = {};
                       heard_ = {};
                       below_ = {};
                   },
                   [](const auto&) {},
               },
               fact.what);
}

// How the shifts before went, until this one has shown its own.
void DrawForecast::expect(const State& state, const Set& set) {
    if (set.key == Setting::learned_cycle)
        if (const auto cycle = state.settings.learnedCycle())
            waits_.expect(cycle->count());
    if (set.key == Setting::learned_brix)
        if (const auto brix = state.settings.learnedBrix())
            end_.expect(1 / brix->count());
}

DrawForecast::Rhythm DrawForecast::learned() const {
    if (waits_.seen() < worthLearning || !end_.started())
        return {};
    return {Duration{*waits_.usual()}, Duration{1 / end_.usualRate()}};
}

void DrawForecast::followOffset(const State& state, Instant at) {
    const double offset = state.mark.offset(at).kelvin();
    if (offset == offset_)
        return;
    if (const auto water = state.weather.boiling(at); water && end_.started())
        if (const auto slope = slopeAt(end_.sugar(), water->forModel)) {
            const double by = -(offset - offset_) / *slope;
            end_.shift(by);
            unkeyed_.shift(by);
        }
    offset_ = offset;
}

void DrawForecast::readStack(const State& state, Instant at) {
    const auto read = state.sensors.of(Series::stack).value(at);
    if (!read || read->at != at)
        return;
    if (!stack_.at) {
        stack_ = {at, read->si, read->si};
        return;
    }
    const double dt = std::max(0.0, secondsBetween(*stack_.at, at));
    stack_.now += (read->si - stack_.now) * (1 - std::exp(-dt / stackSeconds));
    stack_.usual += (read->si - stack_.usual) * (1 - std::exp(-dt / stackMemory));
    stack_.at = at;
}

// What the stack says and what the loads say, evenly.
double DrawForecast::excess(Instant now, const FireHeat& fire) const {
    const bool stack = stack_.at && secondsBetween(*stack_.at, now) < stackStale && stack_.usual > boilsKelvin + 50;
    if (!stack)
        return fire.excess();
    const double seen = std::clamp((stack_.now - boilsKelvin) / (stack_.usual - boilsKelvin) - 1, -1.0, 1.0);
    return fire.known() ? (seen + fire.excess()) / 2 : seen;
}

void DrawForecast::open(const State& state, Instant at) {
    if (openAt_) {
        // The one before was shut unseen; how long nobody knows.
        fallen_ = fallen_ && openAt_ == state.course.openedAt;
        openAt_ = state.course.openedAt;
        return;
    }
    fire_.passTo(at);
    end_.passTo(at);
    // Read by hand, the mark is mostly passed between two entries: they open because it was.
    if (shutAt_ && !passed_)
        happened(at, passedAgo(state, at, readAt_ ? secondsBetween(*readAt_, at) : 0));
    openAt_ = at;
    fallen_ = false;
    unkeyed_ = {};
    heard_ = {};
}

// How long ago the mark was passed by what the model says, at most as long as nobody looked.
double DrawForecast::passedAgo(const State& state, Instant at, double unread) const {
    DrawEnd end = end_;
    end.passTo(at);
    const double over = end.sugar() - state.settings.targetDensity().degrees();
    return std::clamp(over / std::max(end.rate(), 0.5 * end.usualRate()), 0.0, std::max(0.0, unread));
}

void DrawForecast::close(const State& state, Instant at) {
    if (openAt_ && !fallen_)
        falls_.add(secondsBetween(*openAt_, at));
    openAt_.reset();
    record_.forgetCycle();
    shutAt_ = at;
    under_ = passed_ = false;
    below_ = {};
    unkeyed_ = {};
    heard_ = {}; // another liquid
    // What runs in after the last reading is thinner; one from before the draw says nothing of it.
    double sugar = state.settings.targetDensity().degrees() - 3, sd = 3;
    if (const auto water = state.weather.boiling(at))
        if (const auto pan = state.sensors.of(Series::syrup_pan).value(at); pan && secondsBetween(pan->at, at) < recent)
            if (const auto read = sugarAtRise(
                    TemperatureDifference::kelvin(pan->si - offset_ - water->waterBoils.kelvin()), water->forModel)) {
                sugar = read->degrees() - 1;
                sd = 2;
            }
    fire_.passTo(at);
    end_.start(at, sugar, sd);
    surprise_ = 0;
}

// As the pans come to the boil the reading climbs faster than any sugar does, and what a quiet minute ago was heat must
// not be taken for a rate: until it climbs as sugar can, nothing is learned. In thin liquid the boil's own noise is
// brixes, and no climb.
bool DrawForecast::comesToBoil(Instant at, double sugar, double noise) {
    if (shutAt_ || quiet_.minutes >= quietMinutes)
        return true;
    const double dt = quiet_.at ? secondsBetween(*quiet_.at, at) : 0;
    if (quiet_.at && dt < 60)
        return quiet_.minutes > 0;
    quiet_.minutes = quiet_.at && (sugar - quiet_.sugar) < dt * fastestClimb + noise ? quiet_.minutes + 1 : 0;
    quiet_.at = at;
    quiet_.sugar = sugar;
    if (quiet_.minutes == 1)
        end_.forget();
    return quiet_.minutes > 1;
}

// The mark was passed so many seconds before it was seen.
void DrawForecast::happened(Instant seen, double ago) {
    const Instant at = seen - std::chrono::round<std::chrono::microseconds>(Duration{ago});
    const double wait = secondsBetween(*shutAt_, at);
    passed_ = true;
    if (const DrawScore score = record_.judge(wait, at); score.forecasts > 0)
        lastScore_ = score;
    waits_.add(wait);
}

void DrawForecast::watchMark(const State& state, Instant at, double rise, double unread) {
    const auto water = state.weather.boiling(at);
    const auto target = water->targetRise;
    if (!target)
        return;
    if (openAt_) {
        if (!fallen_ && rise < target->kelvin() && secondsBetween(*openAt_, at) > settlesIn) {
            fallen_ = true;
            falls_.add(secondsBetween(*openAt_, at));
        }
        return;
    }
    const double wanted = state.settings.targetDensity().degrees();
    if (end_.sugar() < wanted - 0.2)
        under_ = true;
    if (!shutAt_ || !under_ || passed_ || rise <= target->kelvin())
        return;
    // One reading of many may be noise; one of few is all there is.
    if (unread > 2 * readEvery)
        happened(at, passedAgo(state, at, unread));
    else if (end_.sugar() > wanted - crest)
        happened(at);
}

void DrawForecast::Under::addSample(double brix, Instant taken) {
    const double dt = at ? secondsBetween(*at, taken) : 1e6;
    at = taken;
    fast += (brix - fast) * (1 - std::exp(-dt / 30));
    slow += (brix - slow) * (1 - std::exp(-dt / 90));
}

void DrawForecast::readPan(const State& state, Instant at) {
    const Sensor& sensor = state.sensors.of(Series::syrup_pan);
    const auto pan = sensor.value(at);
    const auto water = state.weather.boiling(at);
    if (!pan || !water || pan->at != at || sensor.trust(at) != Trust::good)
        return;
    heard_.addSample(pan->sample, at);
    if (readAt_ && secondsBetween(*readAt_, at) < readEvery)
        return;
    const double spacing = readAt_ ? secondsBetween(*readAt_, at) : readEvery;
    const bool slow = spacing > 2 * readEvery;
    const double rise = heard_.mean - offset_ - water->waterBoils.kelvin();
    heard_ = {};
    const auto sugar = sugarAtRise(TemperatureDifference::kelvin(std::max(0.0, rise)), water->forModel);
    if (!sugar)
        return;
    readAt_ = at;
    // Sweeter sap thickens as much faster: what was learned of this pan goes on.
    const auto fed = state.balance.feedSugar().pans(at);
    if (fed && fed_ && *fed != *fed_) {
        end_.hasten(*fed / *fed_);
        waits_.hasten(*fed / *fed_);
    }
    fed_ = fed;
    watchMark(state, at, rise, spacing);
    if (openAt_ || ((!slow || unkeyed_.falls) && drawnUnkeyed(state, at, sugar->degrees(), *water)))
        return;
    const auto slope = slopeAt(sugar->degrees(), water->forModel);
    const auto markSlope = slopeAt(state.settings.targetDensity().degrees(), water->forModel);
    if (!slope || !markSlope)
        return;
    markSlope_ = *markSlope;
    fire_.passTo(at);
    if (!end_.started() && sugar->degrees() < gradientBrix)
        return;
    const double noise = slow ? slowNoise : std::max(leastNoise, noiseOfMean * pan->noise);
    if (!end_.started() || !comesToBoil(at, sugar->degrees(), noise / *slope))
        end_.start(at, sugar->degrees(), 1);
    const double since = shutAt_ ? secondsBetween(*shutAt_, at) : 1e6;
    end_.passTo(at);
    if (since >= settlesIn) {
        const double variance = square(noise / *slope) + square(settleBrix * std::exp(-since / settleSeconds));
        const double off = (sugar->degrees() - end_.sugar()) / std::sqrt(end_.sugarVariance() + variance);
        surprise_ += 0.3 * (off - surprise_);
        end_.read(at, sugar->degrees(), variance);
    }
    end_.heat(excess(at, fire_));
    if (since >= settlesIn)
        below_.addSample(state.settings.targetDensity().degrees() - crest - sugar->degrees(), at);
    if (shutAt_ && !passed_ && record_.wants(since))
        if (const auto model = byPanAndWaits(state, at))
            record_.keep(since, grounds(at, *model), shown(state, at, *model));
}

// An automatic valve, or a hand that forgot the key: what falls away is not how this pan boils, and must not be taken
// for its rate. True while it falls; when it turns the draw is over.
bool DrawForecast::drawnUnkeyed(const State& state, Instant at, double sugar, const Weather::Boiling& water) {
    // Another boiling point (a check, a barometer that came or went) moves the sugar at once, and no pan.
    if (std::abs((water.waterBoils - unkeyed_.water).kelvin()) > otherWater)
        unkeyed_ = {};
    unkeyed_.water = water.waterBoils;
    if (!unkeyed_.falls) {
        const bool atMark = sugar > state.settings.targetDensity().degrees() - crest;
        if (unkeyed_.high > 0 && secondsBetween(unkeyed_.highAt, at) > drawnWithin)
            unkeyed_.high = 0;
        if (atMark && sugar >= unkeyed_.high && end_.started()) {
            unkeyed_.before = end_;
            unkeyed_.high = sugar;
            unkeyed_.highAt = at;
        }
        if (unkeyed_.high == 0 || sugar > unkeyed_.high - fallsBrix)
            return false;
        end_ = unkeyed_.before;
        unkeyed_.falls = true;
        unkeyed_.low = sugar;
        return true;
    }
    unkeyed_.turned = sugar < unkeyed_.low ? 0 : unkeyed_.turned + 1;
    unkeyed_.low = std::min(unkeyed_.low, sugar);
    if (unkeyed_.turned < 2 && secondsBetween(unkeyed_.highAt, at) < drawnFor)
        return true;
    if (unkeyed_.low < unkeyed_.high - drawnBrix)
        close(state, at);
    unkeyed_ = {};
    unkeyed_.water = water.waterBoils;
    return false;
}

bool DrawForecast::drawnByItself(Instant now) const {
    return unkeyed_.falls && secondsBetween(unkeyed_.highAt, now) < drawnFor;
}

void DrawForecast::Heard::addSample(double kelvin, Instant at) {
    if (samples > 0 && secondsBetween(last, at) > readEvery)
        *this = {};
    last = at;
    ++samples;
    mean += (kelvin - mean) / samples;
}

std::optional<Quantiles> DrawForecast::byPan(const State& state, Instant now) const {
    const auto water = state.weather.boiling(now);
    const double wanted = state.settings.targetDensity().degrees() - crest;
    if (!water || !end_.started())
        return std::nullopt;
    constexpr double markVariance = square(modelBrix);
    DrawEnd end = end_;
    end.passTo(now);
    FireHeat fire = fire_;
    fire.passTo(now);
    // The crew fires when the load is due; one that is overdue may be forgotten for as long again and more.
    const double late = seconds(fire.overdue(now)), beside = excess(now, fire) - fire.excess();
    const auto heat = [&](double whenDue, double whenLate) {
        HeatAhead ahead{fire.ahead(Duration{late > 0 ? whenLate : -late + whenDue}), beside};
        // With no fire at all nothing boils, however little of the rate went with the fire while it burned.
        if (fire.stopped()) {
            ahead.after = -1;
            ahead.scale = 1 / std::clamp(end.answer(), 0.2, 1.0);
        }
        return ahead;
    };
    constexpr double tenth = 1.2816;
    const HeatAhead inTime = heat(0, 0);
    const auto p10 = end.until(wanted, markVariance, -tenth, inTime);
    const auto p50 = end.until(wanted, markVariance, 0, late > 0 ? heat(0, 20 + 0.5 * late) : inTime);
    const auto p90 = end.until(wanted, markVariance, tenth, heat(0.15 * seconds(fire.interval()), 60 + 1.5 * late));
    if (!p10 || !p50)
        return std::nullopt;
    Quantiles q{*p10, *p50, p90};
    if (mayNeverCome(now))
        q.p90.reset();
    if (!shutAt_ && end.sugar() > gradientBrix && end.sugar() < wanted - 1) {
        const double ratio = wanted / end.sugar();
        q.p10 *= bend(4, ratio);
        q.p50 *= bend(2, ratio);
    }
    return q;
}

std::optional<Brix> DrawForecast::sugar(Instant now) const {
    if (openAt_ || drawnByItself(now) || !readAt_ || !end_.started() || secondsBetween(*readAt_, now) > followedFor ||
        std::abs(surprise_) > followedWithin)
        return std::nullopt;
    DrawEnd end = end_;
    end.passTo(now + sugarLag);
    return Brix::degrees(std::clamp(end.sugar(), 0.0, 85.0));
}

std::optional<DrawForecast::Expected> DrawForecast::expected(Instant at, Pressure pressure) const {
    if (!end_.started() || at < *end_.at() || (openAt_ && secondsBetween(*openAt_, at) > turns))
        return std::nullopt;
    DrawEnd end = end_;
    end.passTo(at);
    const auto rise = boilingRise(Brix::degrees(end.sugar()), pressure);
    const auto slope = slopeAt(end.sugar(), pressure);
    if (!rise || !slope)
        return std::nullopt;
    const double sd = *slope * std::sqrt(end.sugarVariance());
    // They opened because they saw it pass the mark: the upper half of what the last reading leaves open, which has
    // this mean and this spread.
    constexpr double upperMean = 0.798, upperSd = 0.603;
    if (openAt_)
        return Expected{TemperatureDifference::kelvin(rise->kelvin() + offset_ + upperMean * sd),
                        TemperatureDifference::kelvin(upperSd * sd)};
    return Expected{TemperatureDifference::kelvin(rise->kelvin() + offset_), TemperatureDifference::kelvin(sd)};
}

std::optional<Quantiles> DrawForecast::byWaits(Instant now) const {
    return shutAt_ ? waits_.rest(secondsBetween(*shutAt_, now)) : std::nullopt;
}

DrawGrounds DrawForecast::grounds(Instant now, const Quantiles& pan) const {
    DrawGrounds out{pan, {}, {}};
    if (const auto waits = byWaits(now))
        out.waits = waits->p50;
    if (below_.at)
        out.under = std::max(0.0, (below_.fast + below_.slow) / 2);
    return out;
}

// A load so late that it may have been forgotten for good.
bool DrawForecast::mayNeverCome(Instant now) const {
    return fire_.stopped() || fire_.overdue(now) > 2 * fire_.interval() + Duration{300};
}

// How far the mark itself is uncertain widens the range last of all: what was learned of the waits was learned from
// this same mark, and knows nothing of its error.
Quantiles DrawForecast::shown(const State& state, Instant now, const Quantiles& pan) const {
    Quantiles q = shutAt_ && !fire_.stopped() ? record_.weighed(grounds(now, pan)) : pan;
    if (mayNeverCome(now))
        q.p90.reset();
    const auto water = state.weather.boiling(now);
    const double kelvin = std::hypot(state.mark.offsetSd(now).kelvin(), water ? water->uncertainty().kelvin() : 0);
    const double tenth = 1.2816 * kelvin / markSlope_ / end_.usualRate();
    q.p10 = std::max(0.0, q.p50 - std::hypot(q.p50 - q.p10, tenth));
    if (q.p90)
        q.p90 = q.p50 + std::hypot(*q.p90 - q.p50, tenth);
    return q;
}

// The model of the pan, or where it sees no end but the waits do, as if it saw one in hours.
std::optional<Quantiles> DrawForecast::byPanAndWaits(const State& state, Instant now) const {
    const auto pan = byPan(state, now);
    if (pan || !end_.started() || !byWaits(now) || mayNeverCome(now))
        return pan;
    return Quantiles{farOff, 2 * farOff, {}};
}

// With no reading of the pan, or no boiling point to hold it against, a watch and some draws are ground enough.
std::optional<Quantiles> DrawForecast::byWatch(const State& state, Instant now, Reason silent) const {
    const bool blind = silent == Reason::noPanReading || silent == Reason::panReadingDoubtful ||
                       (!state.weather.boiling(now) && silent == state.weather.why());
    if (!blind || fire_.stopped() || waits_.seen() < watchWorth)
        return std::nullopt;
    auto q = byWaits(now);
    if (q && mayNeverCome(now))
        q->p90.reset();
    return q;
}

Reason DrawForecast::unreached(Instant now) const {
    if (fire_.stopped())
        return Reason::stoppedFiring;
    return fire_.overdue(now) > fire_.interval() ? Reason::fireDying : Reason::notReached;
}

// Why there can be no forecast; none where there can.
Reason DrawForecast::silence(const State& state, Instant now) const {
    if (state.course.endedAt)
        return Reason::shiftEnded;
    if (openAt_ || drawnByItself(now))
        return Reason::drawing;
    if (!state.weather.boiling(now))
        return state.weather.why();
    const Probe* probe = state.sensors.of(Series::syrup_pan).active(now);
    if (!probe || !probe->hasValue())
        return Reason::noPanReading;
    const double unread = readAt_ ? secondsBetween(*readAt_, now) : 0;
    if (probe->trust(now) == Trust::gone && unread > doubtfulFor)
        return Reason::noPanReading;
    if (probe->trust(now) == Trust::doubtful && unread > doubtfulFor)
        return Reason::panReadingDoubtful;
    if (unread > staleAfter)
        return Reason::noPanReading;
    if (!state.course.litAt && state.fire.loads().count() == 0 && !shutAt_ && !end_.started())
        return Reason::notLit;
    if (!end_.started() || (!shutAt_ && end_.rate() <= 0))
        return Reason::noGradient;
    return Reason::none;
}

void DrawForecast::show(const State& state, Instant now, Picture& picture) const {
    picture.lastScore = lastScore_;
    showClose(state, now, picture);
    const Reason silent = silence(state, now);
    const bool drawn = shutAt_ && readAt_ && *readAt_ <= *shutAt_; // since it was read
    const bool above = !openAt_ && !drawn && state.call.due(state, now) && picture.rise && picture.targetRise;
    if (above && (silent == Reason::none || silent == Reason::noGradient)) {
        picture.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
        return;
    }
    if (const auto watch = byWatch(state, now, silent)) {
        picture.drawEta = rangeOf(*watch);
    } else if (silent != Reason::none) {
        picture.why.push_back({Shown::drawEta, silent});
        return;
    } else if (const auto pan = byPanAndWaits(state, now)) {
        picture.drawEta = rangeOf(shown(state, now, *pan));
        picture.drawEta->p50 = std::max(picture.drawEta->p50, Duration{notYet});
        if (picture.drawEta->p90)
            picture.drawEta->p90 = std::max(*picture.drawEta->p90, picture.drawEta->p50);
    }
    if (!picture.drawEta || !picture.drawEta->p90)
        picture.why.push_back({Shown::drawEta, unreached(now)});
}

void DrawForecast::showClose(const State& state, Instant now, Picture& picture) const {
    if (!openAt_) {
        picture.why.push_back({Shown::closeEta, Reason::notDrawing});
        return;
    }
    const auto pan = state.sensors.of(Series::syrup_pan).value(now);
    if (!pan || !picture.rise || !picture.targetRise) {
        picture.why.push_back({Shown::closeEta, pan ? state.weather.why() : Reason::noPanReading});
        return;
    }
    const double over = (*picture.rise - *picture.targetRise).kelvin();
    if (over <= 0) {
        picture.closeEta = Range{Duration{0}, Duration{0}, Duration{0}};
        return;
    }
    auto q = falls_.rest(secondsBetween(*openAt_, now));
    // The fall slows as thin liquid mixes in, so a straight line says too little.
    constexpr double steady = 0.0005; // K a second
    if (pan->slope < -steady) {
        const double line = over / -pan->slope;
        const Quantiles fall{0.6 * line, 1.2 * line, 2.5 * line};
        q = q ? Quantiles{(q->p10 + fall.p10) / 2, (q->p50 + fall.p50) / 2, (*q->p90 + *fall.p90) / 2} : fall;
    }
    if (q)
        picture.closeEta = rangeOf(*q);
    else
        picture.why.push_back({Shown::closeEta, Reason::tooFewDraws});
}

} // namespace panside
