#include "core/rehearsal/crew.h"
#include "core/rehearsal/digits.h"
#include "core/rehearsal/liquid.h"

#include <algorithm>
#include <cmath>

namespace panside::rehearsal {
namespace {
// A person's number: rounded in the unit it is written in.
template <class Quantity>
Said<Quantity> said(double si, Unit unit, double step) {
    return {Quantity::ofSi(toSi(rounded(fromSi(si, unit), step), unit)), unit};
}
Said<Temperature> saidCelsius(double celsius, Unit unit, double step) {
    return {Temperature::kelvin(toSi(rounded(fromSi(celsius + 273.15, unit), step), unit)), unit};
}
constexpr Duration usualBurnOut = std::chrono::minutes{45};
constexpr double brixPerKelvin = 4.4; // near the mark, what the old hands know as two and a half to a degree Fahrenheit
} // namespace

CrewOnShift::CrewOnShift(const RehearsalOptions& options, std::uint64_t seed)
    : options_{options}, fire_{options.fire}, crew_{options.crew}, dice_{seed, 41}, keyDice_{seed, 42} {
    for (std::size_t i = 0; i < std::max<std::size_t>(1, crew_.names.size()); ++i)
        hands_.push_back(std::max(0.5, dice_.normal(1, fire_.handScatter)));
    on_ = std::min<std::size_t>(2, hands_.size());
}

const std::string& CrewOnShift::hand() const {
    static const std::string nobody;
    return crew_.names.empty() ? nobody : crew_.names[turn_ % crew_.names.size()];
}

void CrewOnShift::tellRig(const Plant& plant, Instant at, std::vector<Fact>& facts) const {
    const auto tell = [&](Setting key, double si, Unit unit, double step) {
        facts.push_back({at, Set{key, toSi(rounded(fromSi(si, unit), step), unit), unit}});
    };
    const auto& rig = options_.rig;
    const bool us = options_.us;
    tell(Setting::target_density, 0.669, Unit::brix, 0.1);
    tell(Setting::elevation, rig.elevation.si(), us ? Unit::ft : Unit::m, 1);
    if (!options_.tellsRig)
        return;
    tell(Setting::flue_pan_area, rig.flueArea.si(), us ? Unit::ft2 : Unit::m2, 0.01);
    tell(Setting::syrup_pan_area, rig.syrupArea.si(), us ? Unit::ft2 : Unit::m2, 0.01);
    tell(Setting::running_depth, rig.depth.si(), us ? Unit::in : Unit::mm, us ? 0.1 : 1);
    tell(Setting::feed_tank_volume, rig.tank.si(), us ? Unit::gal : Unit::L, 1);
    tell(Setting::load_mass, plant.nominalLoad(), us ? Unit::lb : Unit::kg, us ? 1 : 0.5);
    tell(Setting::wood_moisture, fire_.moisture, Unit::percent, 1);
    if (crew_.burnOut)
        tell(Setting::burn_out, seconds(*crew_.burnOut), Unit::min, 1);
}

void CrewOnShift::tellSap(double litres, double sugar, Instant at, std::vector<Fact>& facts) {
    SapIn sap{said<Volume>(litres / 1000, options_.us ? Unit::gal : Unit::L, 1), {}, {}, {}};
    sap.sugar = Brix::degrees(rounded(sugar * 100 + dice_.normal(0, 0.05), 0.1));
    sap.temperature = saidCelsius(4, options_.us ? Unit::degF : Unit::degC, 1);
    facts.push_back({at, sap, hand()});
}

void CrewOnShift::begin(Plant& plant, Instant at, std::vector<Fact>& facts) {
    tellRig(plant, at, facts);
    for (std::size_t i = 0; i < on_ && i < crew_.names.size(); ++i)
        facts.push_back({at, Crew{}, crew_.names[i]});
    tellSap(plant.tankLitres(), plant.tankSugar(), at, facts);
    const double water = waterBoils(plant.sky().pascal());
    // A pot of boiling water, or what the house has always gone by.
    double boils = water + options_.probe.bias.kelvin() + dice_.normal(0, crew_.waterCheck ? 0.05 : 0.25);
    if (crew_.waterCheck) {
        const bool fahrenheit = options_.probe.unit == Unit::degF;
        const auto read =
            saidCelsius(boils, options_.probe.unit, std::max(options_.probe.step, fahrenheit ? 0.1 : 0.05));
        facts.push_back({at + Duration{40}, WaterCheck{read, {}}, hand()});
        boils = read.value.celsius();
    }
    boiledAt_ = water;
    mark_ = boils + 4.06; // seven degrees and three tenths Fahrenheit, as the charts say
    nextLoad_ = 60;
    nextOil_ = 3000;
}

void CrewOnShift::meet(const RehearsalOptions& options, Trouble trouble) {
    constexpr double forgotten = 420; // seconds: a load made that late has let the fire down
    options_ = options;
    fire_ = options.fire;
    crew_ = options.crew;
    if (trouble == Trouble::forgottenLoads)
        nextLoad_ += forgotten;
}

void CrewOnShift::look(const Now& now) {
    if (!now.shown)
        return;
    // The eye passes over a wild figure and evens out a restless one.
    if (looked_ && std::abs(*now.shown - seen_) > 3 && dice_.chance(0.9))
        return;
    seen_ = looked_ ? seen_ + (*now.shown - seen_) / 6 : *now.shown;
    looked_ = true;
}

void CrewOnShift::step(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds) {
    if (ended_)
        return;
    look(now);
    press(now.at, facts);
    if (std::fmod(now.since, 1800) < 0.5)
        followWeather(plant);
    tendSap(now, plant, facts);
    if (away_)
        return;
    tendFire(now, plant, facts, deeds);
    if (now.since < seconds(crew_.blindAfter) || plant.drawing()) {
        tendDraw(now, plant, facts, deeds);
        tendCup(now, plant, facts);
        tendPan(now, plant, facts);
    }
    tendShift(now, plant, facts, deeds);
}

// Twice an hour they look at the barometer, or dip a pot, and move their mark with the boiling point of water.
void CrewOnShift::followWeather(const Plant& plant) {
    const double boils = waterBoils(plant.sky().pascal());
    mark_ += boils - boiledAt_;
    boiledAt_ = boils;
}

void CrewOnShift::tendFire(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds) {
    if (shut_ || now.since < nextLoad_)
        return;
    if (!lit_) {
        lit_ = true;
        plant.loadWood(0.5 * plant.nominalLoad(), 60); // kindling
        facts.push_back({now.at, Lit{}, hand()});
        nextLoad_ = now.since + 150;
        return;
    }
    const double kilogram =
        plant.nominalLoad() * hands_[turn_ % hands_.size()] * std::max(0.3, dice_.normal(1, fire_.loadScatter));
    plant.loadWood(kilogram, dice_.uniform(18, 40));
    const bool pressed = !dice_.chance(fire_.unpressed);
    deeds.push_back({RehearsalDeed::Kind::fired, now.at, Mass::kilogram(kilogram), pressed});
    if (pressed) {
        Fired fired;
        if (crew_.weighs)
            fired.load = said<Mass>(kilogram, options_.us ? Unit::lb : Unit::kg, options_.us ? 1 : 0.5);
        Fact fact{now.at, fired, hand()};
        if (dice_.chance(fire_.pressedLate))
            fact.entered = now.at + Duration{std::floor(dice_.uniform(60, 400))};
        facts.push_back(fact);
    }
    turn_ = handedOver_ ? (turn_ == 1 ? 2 : 1) : (turn_ + 1) % on_;
    const bool up = plant.pans().boilsOff() > 0.5;
    nextLoad_ =
        now.since + seconds(fire_.interval) * (up ? 1.0 : 0.75) * std::max(0.5, dice_.normal(1, fire_.intervalScatter));
    if (dice_.chance(fire_.forgets))
        nextLoad_ += dice_.uniform(240, 600);
}

void CrewOnShift::tendDraw(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds) {
    if (plant.drawing()) {
        const double open = now.since - openedAt_;
        const bool under = looked_ && seen_ < mark_ - crew_.closesUnder && open > 10;
        if (!closeAt_ && (under || open > 900)) {
            closeAt_ = now.since + dice_.uniform(2, 12);
            if (dice_.chance(crew_.forgetsToClose))
                *closeAt_ += dice_.uniform(60, 240);
        }
        // The whole front pan is turning: thin sap at the draw end.
        if (open > 150 && seen_ > mark_ + 1.2 && now.since > calmUntil_) {
            plant.pourBucket(4);
            calmUntil_ = now.since + 60;
        }
        if (closeAt_ && now.since >= *closeAt_)
            close(now, plant, facts, deeds);
        return;
    }
    if (shut_ || !looked_ || plant.pans().boilsOff() < 0.2)
        return;
    if (seen_ >= mark_ + crew_.heavy) {
        if (!openAt_)
            openAt_ = now.since + seconds(crew_.slow) * dice_.uniform(0.4, 2.0);
    } else if (seen_ < mark_) {
        openAt_.reset();
    }
    if (openAt_ && now.since >= *openAt_)
        open(now, plant, facts, deeds);
}

// A draw's key: pressed at once, or late, or by two of them, or by nobody.
void CrewOnShift::key(const Now& now, Fact fact) {
    if (!keyed_)
        return;
    const double late = seconds(crew_.keysLate);
    if (late > 0)
        fact.at = now.at + Duration{std::floor(std::min(240.0, -late * std::log(1 - keyDice_.uniform())))};
    toKey_.push_back(fact);
    if (!twice_)
        return;
    fact.at = fact.at + Duration{std::floor(keyDice_.uniform(2, 25))};
    fact.by = crew_.names.empty() ? fact.by : crew_.names[(turn_ + 1) % crew_.names.size()];
    toKey_.push_back(std::move(fact));
}

void CrewOnShift::press(Instant now, std::vector<Fact>& facts) {
    const auto due = std::stable_partition(toKey_.begin(), toKey_.end(), [now](const Fact& f) { return f.at > now; });
    facts.insert(facts.end(), due, toKey_.end());
    toKey_.erase(due, toKey_.end());
}

void CrewOnShift::open(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds) {
    plant.openDraw();
    openAt_.reset();
    openedAt_ = now.since;
    keyed_ = crew_.drawsUnkeyed <= 0 || !keyDice_.chance(crew_.drawsUnkeyed);
    twice_ = crew_.drawsTwice > 0 && keyDice_.chance(crew_.drawsTwice);
    key(now, {now.at, DrawOpened{}, hand()});
    press(now.at, facts);
    deeds.push_back({RehearsalDeed::Kind::opened, now.at});
    if (!cup_ && (draws_ == 0 || dice_.chance(crew_.checks))) {
        const double taken = now.since + std::floor(dice_.uniform(5, 25));
        cup_ = Cup{taken, taken + std::floor(dice_.uniform(40, 110)), 0, 0, now.at + Duration{taken - now.since}};
    }
}

void CrewOnShift::close(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds) {
    DrawClosed closed;
    if (!dice_.chance(crew_.noVolume)) {
        const double cubic = plant.drawnLitres() / 1000 * dice_.normal(1, 0.02);
        closed.volume = said<Volume>(cubic, options_.us ? Unit::gal : Unit::L, options_.us ? 0.02 : 0.1);
    }
    closed.to = "pail";
    plant.closeDraw();
    closeAt_.reset();
    ++draws_;
    key(now, {now.at, closed, hand()});
    press(now.at, facts);
    deeds.push_back({RehearsalDeed::Kind::closed, now.at});
}

void CrewOnShift::tendCup(const Now& now, Plant& plant, std::vector<Fact>& facts) {
    if (!cup_)
        return;
    if (cup_->shown == 0 && now.since >= cup_->taken) {
        cup_->brix = plant.pans().drawOffSugar() * 100;
        cup_->shown = seen_;
    }
    if (now.since < cup_->read)
        return;
    const double cooled = 20 + (96 - 20) * std::exp(-(cup_->read - cup_->taken) / 700);
    const double reads = hydrometerReads(cup_->brix + crew_.glassBias + dice_.normal(0, crew_.glassScatter), cooled);
    DensityCheck check{rounded(reads, 0.1), Unit::brix, Instrument::hydrometer, {}, {}, {}};
    check.cup = saidCelsius(cooled + dice_.normal(0, crew_.cupScatter), options_.us ? Unit::degF : Unit::degC,
                            options_.us ? 1 : 0.5);
    check.scale = Said<Temperature>{Temperature::fahrenheit(60), Unit::degF};
    if (crew_.tellsDip)
        check.drawn = cup_->takenAt;
    facts.push_back({now.at, check, hand()});
    // What they make of it: the chart's line, and most of the difference.
    const double brix = check.reading - hydrometerReads(0, check.cup->value.celsius());
    mark_ += 0.65 * (cup_->shown + (66.9 - brix) / brixPerKelvin - mark_);
    cup_.reset();
}

void CrewOnShift::tendSap(const Now& now, Plant& plant, std::vector<Fact>& facts) {
    const auto& deliveries = options_.sap.deliveries;
    if (delivered_ >= deliveries.size() || now.since < seconds(deliveries[delivered_].after))
        return;
    const auto& load = deliveries[delivered_++];
    plant.addSap(load.volume.litre(), load.sugar.massFraction());
    tellSap(load.volume.litre(), load.sugar.massFraction(), now.at, facts);
}

void CrewOnShift::tendPan(const Now& now, Plant& plant, std::vector<Fact>& facts) {
    if (!shut_ && plant.pans().boilsOff() > 0.5 && now.since > nextOil_) {
        facts.push_back({now.at, Defoamer{2.0}, hand()});
        nextOil_ = now.since + dice_.uniform(900, 2400);
    }
    const double depth = options_.rig.depth.metre();
    const bool wrong = plant.pans().syrupDepth() < 0.45 * depth || plant.pans().flueDepth() < 0.3 * depth ||
                       plant.pans().flueDepth() > 2.2 * depth;
    if (!wrong || !options_.crewSavesPan || shut_) {
        lowSince_ = -1;
        return;
    }
    if (lowSince_ < 0)
        lowSince_ = now.since + dice_.uniform(120, 300);
    if (now.since > lowSince_ && plant.feedFails(now.since)) {
        plant.mendFeed();
        if (plant.pans().syrupDepth() < depth)
            plant.pourBucket(options_.rig.syrupArea.squareMetre() * 0.5 * depth * 1000);
        facts.push_back({now.at, Note{"float freed, feed runs again"}, hand()});
    }
}

void CrewOnShift::seeShutdown(double since, Plant& plant) {
    shut_ = true;
    shutAt_ = since;
    plant.floodPans(options_.rig.depth.metre());
}

void CrewOnShift::tendShift(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds) {
    if (!handedOver_ && crew_.names.size() > 2 && now.since > 0.5 * seconds(crew_.boilFor)) {
        handedOver_ = true;
        facts.push_back({now.at, Crew{crew_.names[0]}, crew_.names[2]});
    }
    if (!shut_ && lit_) {
        const auto& rig = options_.rig;
        const double area = (rig.flueArea + rig.syrupArea).squareMetre();
        const double keep = area * rig.depth.millimetre() +
                            0.5 * rig.rate.litrePerHour() * seconds(crew_.burnOut.value_or(usualBurnOut)) / 3600;
        const bool noMoreSap = plant.tankLitres() < keep && delivered_ >= options_.sap.deliveries.size();
        if (now.since > seconds(crew_.boilFor) || noMoreSap) {
            if (plant.drawing())
                close(now, plant, facts, deeds);
            seeShutdown(now.since, plant);
            facts.push_back({now.at, Shutdown{}, hand()});
            deeds.push_back({RehearsalDeed::Kind::shutDown, now.at});
        }
    }
    if (shut_ && now.since > shutAt_ + 4500) {
        facts.push_back({now.at, ShiftEnd{}, hand()});
        ended_ = true;
    }
}

} // namespace panside::rehearsal
