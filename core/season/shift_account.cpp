#include "core/season/shift_account.h"

#include "core/boil/cords.h"
#include "core/boil/repeated_check.h"
#include "core/boil/repeated_draw.h"
#include "core/boil/sap_sugar.h"
#include "core/boil/state.h"

#include <algorithm>

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr auto lookEvery = 60s;     // at the picture
constexpr auto lookAtDraw = 10s;    // while the draw is open
constexpr auto hole = 15min;        // where nothing came for longer, nothing is known of the time between
constexpr int fewestLooks = 30;     // half an hour
constexpr double aTankIsRead = 0.5; // of the shift, before what left it is said

struct Mean {
    double sum = 0;
    int count = 0;
    void add(std::optional<double> value) {
        if (!value)
            return;
        sum += *value;
        ++count;
    }
    std::optional<double> value(int fewest) const {
        return count >= fewest ? std::optional{sum / count} : std::nullopt;
    }
};

template <class Quantity>
std::optional<Quantity> quantityOf(const Mean& mean) {
    const auto si = mean.value(fewestLooks);
    return si ? std::optional{Quantity::ofSi(*si)} : std::nullopt;
}

std::optional<double> believed(const Picture& picture, Series series) {
    const auto& reading = picture.reading(series);
    return reading && reading->trust == Trust::good ? reading->si : std::nullopt;
}

} // namespace

struct ShiftAccountant::Inside {
    State state;
    ShiftAccount account;
    bool any = false;
    Instant looked{};
    Mean evaporation, efficiency, stack, depth, pressure; // SI
    AlarmRecorder alarms;
    std::optional<Instant> scored;

    // The draw that is open.
    Mean rise;
    std::optional<double> legal, heavy;

    double sugar = 0, sugarKnown = 0;
    LoadsOfShift loads;
    struct Level {
        Instant at;
        double litre;
    };
    std::optional<Level> tankFirst, tankLast;
    double inSinceTank = 0; // litres
    std::map<std::string, Instant> on;
    RepeatedDraw repeatedDraw;
    RepeatedCheck repeatedCheck;

    void lookUntil(Instant at);
    void look(Instant at);
    void score();
    void lookAtDrawing(const Picture& picture);
    void count(const Fact& fact);
    void burn();
    void closed(const DrawClosed& draw, bool first);
    void sap(const SapIn& sap);
    void crew(const Crew& crew, const Fact& fact);
    void leave(const std::string& name, Instant at);
    void finish();
};

// Before a fact is taken: the pictures of the time up to it.
void ShiftAccountant::Inside::lookUntil(Instant at) {
    if (at - looked > hole) {
        looked = at;
        return;
    }
    for (;;) {
        const Instant next = looked + (state.course.drawing() ? lookAtDraw : lookEvery);
        if (next >= at)
            return;
        looked = next;
        look(next);
    }
}

void ShiftAccountant::Inside::look(Instant at) {
    const Picture shown = panside::picture(state, at);
    if (shown.drawing) {
        lookAtDrawing(shown);
        return; // looked at more often: the means below are of even minutes
    }
    if (!state.course.firing())
        return;
    evaporation.add(shown.evaporation ? std::optional{shown.evaporation->si()} : std::nullopt);
    efficiency.add(shown.efficiency);
    stack.add(believed(shown, Series::stack));
    depth.add(believed(shown, Series::pan_level));
    pressure.add(shown.pressure ? std::optional{shown.pressure->si()} : std::nullopt);
}

void ShiftAccountant::Inside::score() {
    const auto& score = state.forecast.lastScore();
    if (!score || score->at == scored || score->forecasts == 0)
        return;
    scored = score->at;
    ForecastTally& tally = account.forecast;
    ++tally.draws;
    tally.underP10 += score->underP10;
    tally.underP50 += score->underP50;
    tally.underP90 += score->underP90;
    tally.inside += score->inside;
}

void ShiftAccountant::Inside::lookAtDrawing(const Picture& shown) {
    if (!shown.rise || !shown.legalRise || !shown.heavyRise || !believed(shown, Series::syrup_pan))
        return;
    rise.add(shown.rise->kelvin());
    legal = shown.legalRise->kelvin();
    heavy = shown.heavyRise->kelvin();
}

void ShiftAccountant::Inside::count(const Fact& fact) {
    const auto told = repeatedDraw.hear(fact);
    if (const auto* draw = std::get_if<DrawClosed>(&fact.what); draw && RepeatedDraw::counts(told))
        closed(*draw, told == RepeatedDraw::Telling::first);
    else if (told == RepeatedDraw::Telling::first) // nobody keyed that it was shut
        closed({}, true);
    else if (const auto* came = std::get_if<SapIn>(&fact.what))
        sap(*came);
    else if (const auto* change = std::get_if<Crew>(&fact.what))
        crew(*change, fact);
    else if (std::holds_alternative<DensityCheck>(fact.what))
        account.checks += repeatedCheck.isFirst(std::get<DensityCheck>(fact.what), fact.at);
    else if (std::holds_alternative<Lit>(fact.what) && !account.lit)
        account.lit = fact.at;
    else if (const auto* reading = std::get_if<Reading>(&fact.what); reading && reading->series == Series::tank_level)
        if (const auto& level = state.sensors.of(Series::tank_level).value(fact.at)) {
            tankLast = Level{fact.at, Volume::ofSi(level->si).litre()};
            if (!tankFirst)
                tankFirst = tankLast;
        }
}

void ShiftAccountant::Inside::burn() {
    const auto all = loads.all();
    account.loads = static_cast<int>(all.size());
    account.loadsWeighed = 0;
    account.wood = {};
    account.woods.clear();
    account.cords = 0;
    double moist = 0, known = 0;
    for (const Load& load : all) {
        if (!load.mass)
            continue;
        ++account.loadsWeighed;
        account.wood += *load.mass;
        account.woods[load.wood] += *load.mass;
        account.cords += cordsOf(load).value_or(0);
        if (load.moistureSaid) {
            moist += load.moisture.share * load.mass->kilogram();
            known += load.mass->kilogram();
        }
    }
    account.moisture = known > 0 ? std::optional{moist / known} : std::nullopt;
    if (account.loads > 2)
        account.fireInterval = Duration{secondsBetween(all.front().at, all.back().at) / (account.loads - 1)};
}

void ShiftAccountant::Inside::closed(const DrawClosed& draw, bool first) {
    account.draws += first ? 1 : 0;
    if (draw.volume) {
        ++account.drawsMeasured;
        account.syrup += draw.volume->value;
    }
    if (const auto mean = rise.value(1)) {
        ++account.drawsJudged;
        account.drawsInBand += *mean >= *legal && *mean <= *heavy;
    }
    rise = {};
}

void ShiftAccountant::Inside::sap(const SapIn& sap) {
    const double litre = sap.volume.value.litre();
    account.sapIn = account.sapIn.value_or(Volume{}) + sap.volume.value;
    inSinceTank += tankFirst ? litre : 0;
    if (const auto read = panside::sapSugar(sap)) {
        sugar += read->massFraction() * litre;
        sugarKnown += litre;
    }
}

void ShiftAccountant::Inside::crew(const Crew& crew, const Fact& fact) {
    if (!crew.off.empty())
        leave(crew.off, fact.at);
    else if (!fact.by.empty())
        on.emplace(fact.by, fact.at);
}

void ShiftAccountant::Inside::leave(const std::string& name, Instant at) {
    const auto found = on.find(name);
    if (found == on.end())
        return;
    account.crew[name] += Duration{secondsBetween(found->second, at)};
    on.erase(found);
}

void ShiftAccountant::Inside::finish() {
    lookUntil(account.last + Duration{1});
    account.alarms.clear();
    for (const AlarmSpan& span : alarms.history(state).spans)
        ++account.alarms[span.alarm];
    while (!on.empty())
        leave(std::string{on.begin()->first}, account.last);
    account.evaporation = quantityOf<VolumeFlow>(evaporation);
    account.efficiency = efficiency.value(fewestLooks);
    if (const auto kelvin = stack.value(fewestLooks))
        account.stack = Temperature::kelvin(*kelvin);
    account.depth = quantityOf<Length>(depth);
    account.pressure = quantityOf<Pressure>(pressure);
    if (sugarKnown > 0)
        account.sapSugar = Brix::massFraction(sugar / sugarKnown);
    burn();
    if (tankFirst &&
        secondsBetween(tankFirst->at, tankLast->at) > aTankIsRead * secondsBetween(account.first, account.last)) {
        const double taken = tankFirst->litre + inSinceTank - tankLast->litre;
        if (taken > 0)
            account.sapTaken = Volume::litre(taken);
    }
}

ShiftAccountant::ShiftAccountant() : inside_{std::make_unique<Inside>()} {}
ShiftAccountant::~ShiftAccountant() = default;

void ShiftAccountant::add(const Fact& fact) {
    Inside& in = *inside_;
    if (!in.any) {
        in.account.first = in.looked = fact.at;
        in.any = true;
    }
    in.account.last = std::max(in.account.last, fact.at);
    in.lookUntil(fact.at);
    // The mark learns, and the band moves, as the draw is opened: what it was then is looked at too.
    in.alarms.absorb(in.state, fact);
    if (std::holds_alternative<DrawOpened>(fact.what)) {
        in.rise = {};
        in.lookAtDrawing(picture(in.state, fact.at));
    }
    in.score();
    in.count(fact);
    in.loads.follow(in.state.fire.loads());
}

AlarmHistory ShiftAccountant::alarms() const { return inside_->alarms.history(inside_->state); }

ShiftAccount ShiftAccountant::account() {
    if (inside_->any)
        inside_->finish();
    return inside_->account;
}

} // namespace panside
