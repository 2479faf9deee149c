#include "tests/ui/board/scenes.h"

#include <cmath>

namespace panside::scenes {
namespace {

constexpr double nowAfterLit = 3 * 3600;

ReadingPicture good(double si) { return {.si = si, .last = evening(nowAfterLit)}; }

void put(Picture& picture, Series series, const ReadingPicture& reading) {
    picture.readings[static_cast<std::size_t>(series)] = reading;
}

Range range(double p10, double p50, std::optional<double> p90) {
    Range made{Duration{p10}, Duration{p50}, std::nullopt};
    if (p90)
        made.p90 = Duration{*p90};
    return made;
}

AlarmPicture alarm(Alarm which, Priority priority, AlarmState state, double ago) {
    return {.alarm = which, .priority = priority, .state = state, .since = evening(nowAfterLit - ago)};
}

} // namespace

Instant evening(double secondsAfterLit) {
    using namespace std::chrono;
    return Instant{sys_days{year{2026} / 3 / 14} + 17h + 30min} + Duration{secondsAfterLit};
}

Picture fresh() {
    Picture picture;
    picture.at = evening(0);
    picture.why = {
        {Shown::drawEta, Reason::notLit}, {Shown::fireDueS, Reason::notLit}, {Shown::sapLeftS, Reason::noTankLevel}};
    return picture;
}

Picture calm() {
    Picture picture;
    picture.at = evening(nowAfterLit);
    picture.pressure = Pressure::inchesOfMercury(29.12);
    picture.waterBoils = Temperature::fahrenheit(210.7);
    picture.probeOffset = TemperatureDifference::fahrenheit(0.3);
    picture.rise = TemperatureDifference::fahrenheit(5.8);
    picture.syrupPan = *picture.waterBoils + *picture.rise + picture.probeOffset;
    picture.targetRise = TemperatureDifference::fahrenheit(7.25);
    picture.legalRise = TemperatureDifference::fahrenheit(6.95);
    picture.heavyRise = TemperatureDifference::fahrenheit(7.95);
    picture.target = *picture.waterBoils + *picture.targetRise + picture.probeOffset;
    picture.targetUncertainty = TemperatureDifference::fahrenheit(0.3);
    picture.brix = Brix::degrees(64.8);
    picture.checks = 2;
    picture.lastCheck = evening(nowAfterLit - 2400);
    picture.drawEta = range(9 * 60, 12 * 60, 16 * 60);
    picture.draws = 5;
    picture.litAt = evening(0);
    picture.lastFired = evening(nowAfterLit - 260);
    picture.fireDue = Duration{220};
    picture.fireInterval = Duration{480};
    picture.fireIntervalLearned = true;
    picture.loads = 22;
    picture.turn = "Odile";
    picture.crew = {"Odile", "Hank"};
    picture.evaporation = VolumeFlow::gallonPerHour(62);
    picture.sapLeft = Duration{2 * 3600 + 40 * 60};
    picture.lastLoad = range(95 * 60, 105 * 60, 118 * 60);
    picture.keepBack = Volume::gallon(52);
    picture.efficiency = 0.47;
    picture.sapIn = Volume::gallon(340);
    picture.syrupOut = Volume::gallon(4.6);
    picture.wood = Mass::pound(880);
    put(picture, Series::syrup_pan, good(picture.syrupPan->kelvin()));
    put(picture, Series::stack, good(Temperature::fahrenheit(742).kelvin()));
    put(picture, Series::pressure, good(picture.pressure->pascal()));
    return picture;
}

Picture drawing() {
    Picture picture = calm();
    picture.drawing = true;
    picture.drawOpenedAt = evening(nowAfterLit - 45);
    picture.rise = TemperatureDifference::fahrenheit(7.7);
    picture.syrupPan = *picture.waterBoils + *picture.rise + picture.probeOffset;
    picture.drawEta.reset();
    picture.closeEta = range(50, 80, 130);
    return picture;
}

Picture scorching() {
    Picture picture = calm();
    AlarmPicture scorch = alarm(Alarm::scorch_risk, Priority::high, AlarmState::unseen, 3);
    scorch.left = Duration{240};
    picture.alarms = {scorch, alarm(Alarm::sap_low, Priority::medium, AlarmState::seen, 400),
                      alarm(Alarm::clock_changed, Priority::low, AlarmState::shelved, 300)};
    return picture;
}

Picture seenAlarm() {
    Picture picture = calm();
    picture.fireDue = Duration{-75};
    picture.alarms = {alarm(Alarm::fire_overdue, Priority::medium, AlarmState::seen, 75)};
    return picture;
}

Picture late() {
    Picture picture = seenAlarm();
    picture.fireDue = Duration{-330};
    return picture;
}

Picture goneUnseen() {
    Picture picture = calm();
    AlarmPicture stuck = alarm(Alarm::probe_stuck, Priority::medium, AlarmState::goneUnseen, 200);
    stuck.series = Series::stack;
    picture.alarms = {stuck};
    return picture;
}

Picture doubt() {
    Picture picture = calm();
    auto& pan = picture.readings[static_cast<std::size_t>(Series::syrup_pan)];
    pan->trust = Trust::doubtful;
    pan->reason = Reason::stuck;
    pan->forSoLong = Duration{40};
    return picture;
}

Picture blind() {
    Picture picture = calm();
    auto& pan = picture.readings[static_cast<std::size_t>(Series::syrup_pan)];
    pan = ReadingPicture{.si = std::nullopt, .trust = Trust::gone, .reason = Reason::silent, .forSoLong = Duration{25}};
    picture.syrupPan.reset();
    picture.rise.reset();
    picture.brix.reset();
    picture.drawEta.reset();
    picture.why = {{Shown::drawEta, Reason::noPanReading}, {Series::syrup_pan, Reason::silent, 25}};
    AlarmPicture silent = alarm(Alarm::probe_silent, Priority::high, AlarmState::unseen, 15);
    silent.series = Series::syrup_pan;
    picture.alarms = {silent};
    return picture;
}

Picture handOnly() {
    Picture picture = calm();
    for (auto& reading : picture.readings)
        reading.reset();
    ReadingPicture typed = good(picture.syrupPan->kelvin());
    typed.byHand = true;
    typed.last = evening(nowAfterLit - 200);
    put(picture, Series::syrup_pan, typed);
    picture.pressure.reset();
    picture.waterBoilsAge = Duration{5400};
    picture.drawEta = range(6 * 60, 14 * 60, std::nullopt);
    picture.targetUncertainty = TemperatureDifference::fahrenheit(0.6);
    picture.turn.clear();
    picture.fireIntervalLearned = false;
    picture.evaporation.reset();
    picture.efficiency.reset();
    picture.sapLeft.reset();
    picture.lastLoad.reset();
    picture.keepBack.reset();
    picture.wood.reset();
    picture.why = {{Shown::sapLeftS, Reason::noTankLevel}, {Shown::lastLoadS, Reason::noTankLevel}};
    return picture;
}

Picture burningOut() {
    Picture picture = calm();
    picture.shutdownAt = evening(nowAfterLit - 1500);
    picture.fireDue.reset();
    picture.lastLoad.reset();
    picture.drawEta.reset();
    picture.why = {{Shown::fireDueS, Reason::stoppedFiring}, {Shown::drawEta, Reason::fireDying}};
    return picture;
}

void fillTrace(ShiftTrace& trace) {
    const auto say = [&](double at, What what, const char* by = "") {
        trace.add(Fact{evening(at), std::move(what), by});
    };
    double rise = -0.3, fromDraw = 0, sinceFired = 0;
    say(0, Lit{});
    say(30, Crew{}, "Odile");
    say(40, WaterCheck{{Temperature::fahrenheit(211), Unit::degF}, ""});
    bool open = false;
    for (int t = 0; t < static_cast<int>(nowAfterLit); ++t) {
        if (t % 480 == 300) {
            say(t, Fired{});
            sinceFired = 0;
        }
        sinceFired += 1;
        const double heat = std::exp(-std::pow((sinceFired - 150) / 260, 2));
        if (t < 1500)
            rise = -0.3 + 1.3 * std::max(0, t - 700) / 800.0;
        else if (!open)
            rise += (0.0006 + 0.0016 * heat) * (1.15 - 0.02 * (fromDraw / 600));
        else
            rise -= 0.011;
        fromDraw += 1;
        if (!open && rise > 4.12) {
            say(t, DrawOpened{});
            open = true;
        } else if (open && rise < 3.0) {
            rise -= 0.7;
            say(t, DrawClosed{Said<Volume>{Volume::gallon(0.9), Unit::gal}, "pail"});
            open = false;
            fromDraw = 0;
        }
        if (t == 5000)
            say(t, SapIn{{Volume::gallon(120), Unit::gal}, Brix::degrees(2.1), {}, "upper bush"});
        if (t == 6200)
            say(t, DensityCheck{66.2,
                                Unit::brix,
                                Instrument::hydrometer,
                                Said<Temperature>{Temperature::fahrenheit(209), Unit::degF},
                                {},
                                {}});
        if (t == 7000)
            say(t, Note{"switched to slabs"});
        if (t == 8100)
            say(t, Defoamer{4});
        const double noise = 0.03 * std::sin(t * 12.9898) * std::cos(t * 78.233);
        const bool silent = t > 4000 && t < 4300;
        const bool stuck = t > 9000 && t < 9200;
        if (!silent)
            trace.add(RisePoint{evening(t), static_cast<float>(rise + noise), stuck ? Trust::doubtful : Trust::good,
                                t == 4300});
        const double flue = Temperature::fahrenheit(560 + 230 * heat + 8 * noise / 0.03).kelvin();
        say(t, Reading{Series::stack, flue, Unit::degF, ""});
        if (t > 1800 && t % 60 == 0)
            trace.add(
                SteamPoint{evening(t), static_cast<float>(VolumeFlow::gallonPerHour(48 + 20 * heat).si()), false});
    }
}

} // namespace panside::scenes
