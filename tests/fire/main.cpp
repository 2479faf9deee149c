// fire_table: the call of the firing and the account of the fire against the truth of made-up boils. Exit 1 if a limit
// is not kept.
#include "core/boil/state.h"
#include "tests/judge/watched.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <optional>
#include <string_view>

using namespace panside;
using namespace panside::judge;

namespace {
int broken = 0;
std::uint64_t more = 0; // other seeds: other rigs, wood, hands and probes

void row(const char* what, std::size_t times, const std::string& got, const char* wanted, bool kept) {
    fmt::print("{:<48}{:>6}  {:<34}{:<22}{}\n", what, times, got, wanted, kept ? "kept" : "NOT KEPT");
    broken += kept ? 0 : 1;
}

// Three kinds of boil: a plain one, one whose crew forgets the key, one whose wood goes over a scale.
RehearsalOptions plain(std::uint64_t seed) {
    auto options = anyBoil(seed);
    options.fire.forgets = 0;
    options.fire.unpressed = 0;
    options.fire.pressedLate = 0;
    options.crew.boilFor = std::chrono::hours{9};
    return options;
}

std::vector<RehearsalDeed> loads(Watched& boil) {
    std::vector<RehearsalDeed> all;
    for (const auto& deed : boil.plant().deeds())
        if (deed.kind == RehearsalDeed::Kind::fired)
            all.push_back(deed);
    return all;
}

// Crews fire every 5 to 12 min, each by its own habit and as evenly as people can.
void interval(int rigs) {
    std::vector<double> misses;
    std::string detail;
    for (int i = 1; i <= rigs; ++i) {
        const std::uint64_t seed = 30000 + more + static_cast<std::uint64_t>(i);
        auto options = plain(seed);
        options.fire.interval = std::chrono::minutes{5 + seed % 8};
        Watched boil{options, seed};
        std::size_t hot = 0;
        while (boil.second() && boil.since() < 5 * 3600) {
            if (!boil.truth().boiling)
                hot = loads(boil).size();
            if (loads(boil).size() >= hot + 9) // eight whole cycles since the boil was up
                break;
        }
        const double learned = seconds(boil.picture().fireInterval), own = seconds(options.fire.interval);
        misses.push_back(std::abs(learned / own - 1) * 100);
        detail += fmt::format("{}{:.1f}/{:.1f}", i > 1 ? " " : "", learned / 60, own / 60);
    }
    row("learned interval against the crew's, %", misses.size(),
        fmt::format("median {:.0f}, most {:.0f}", quantile(misses, 0.5), quantile(misses, 1)), "at most 15",
        quantile(misses, 1) <= 15);
    fmt::print("  learned/crew's, min: {}\n", detail);
}

void inferred(int rigs) {
    int unpressed = 0, found = 0, said = 0, wrong = 0;
    for (int i = 1; i <= rigs; ++i) {
        const std::uint64_t seed = 31000 + more + static_cast<std::uint64_t>(i);
        auto options = plain(seed);
        options.fire.unpressed = 0.4;
        options.crew.boilFor = std::chrono::hours{5};
        Watched boil{options, seed};
        std::vector<Instant> inferredAt;
        while (boil.second() && boil.since() < 5 * 3600) {
            if (std::fmod(boil.since(), 5) > 0.5)
                continue;
            const auto picture = boil.picture();
            if (picture.lastFired && picture.lastFiredInferred &&
                (inferredAt.empty() || std::abs(secondsBetween(inferredAt.back(), *picture.lastFired)) > 60))
                inferredAt.push_back(*picture.lastFired);
        }
        // What counts: loads into a fire that was burning steadily, from the second hour on.
        const auto counts = [&](Instant at) { return secondsBetween(options.begins, at) > 3600; };
        for (const auto& load : loads(boil)) {
            if (load.pressed || !counts(load.at))
                continue;
            ++unpressed;
            found += std::any_of(inferredAt.begin(), inferredAt.end(),
                                 [&](Instant at) { return std::abs(secondsBetween(at, load.at)) < 90; });
        }
        for (const auto at : inferredAt) {
            if (!counts(at))
                continue;
            ++said;
            const auto all = loads(boil);
            wrong += std::none_of(all.begin(), all.end(), [&](const RehearsalDeed& load) {
                return !load.pressed && std::abs(secondsBetween(at, load.at)) < 90;
            });
        }
    }
    row("loads that nobody keyed, found", static_cast<std::size_t>(unpressed),
        fmt::format("{:.1f} %", 100.0 * found / std::max(1, unpressed)), "at least 95 %", found >= 0.95 * unpressed);
    row("loads inferred that were none", static_cast<std::size_t>(said),
        fmt::format("{:.1f} %", 100.0 * wrong / std::max(1, said)), "under 5 %", wrong < 0.05 * said);
}

void overdue(int rigs) {
    std::vector<double> late;
    for (int i = 1; i <= rigs; ++i) {
        const std::uint64_t seed = 32000 + more + static_cast<std::uint64_t>(i);
        Watched boil{plain(seed), seed};
        double due = -1;
        bool called = false, waiting = false; // waiting: it was not due yet when the crew went
        while (boil.second() && boil.since() < 3 * 3600) {
            if (boil.since() < 2 * 3600)
                continue;
            if (boil.since() == 2 * 3600)
                boil.plant().sendCrewAway();
            const auto picture = boil.picture();
            if (!picture.fireDue)
                continue;
            waiting = waiting || seconds(*picture.fireDue) > 0;
            if (!waiting)
                continue;
            if (due < 0 && seconds(*picture.fireDue) <= 0)
                due = boil.since() + seconds(*picture.fireDue);
            if (!called && stands(picture, Alarm::fire_overdue)) {
                called = true;
                // Called once it is later than a crew's own scatter, or sooner where the fire sags.
                const double scatter = std::max(60.0, seconds(picture.fireInterval) / 4);
                late.push_back(due < 0 ? -1 : boil.since() - due - scatter);
                break;
            }
        }
        if (waiting && !called)
            late.push_back(1e4);
    }
    row("overdue firing called after a crew's scatter, s", late.size(),
        fmt::format("least {:.1f}, most {:.1f}", quantile(late, 0), quantile(late, 1)), "at most 2",
        quantile(late, 1) <= 2);
}

struct Account {
    std::vector<double> lastLoad, reserve, steam, efficiency, burnOut, crew;
    int held = 0; // times that the range held the truth
};

// What was boiled off by the time of the last load of all.
double boiledAtLastLoad(Watched& boil, std::vector<double>& eachMinute) {
    double atLoad = 0;
    std::size_t seen = 0;
    while (boil.second()) {
        const auto fed = loads(boil).size();
        if (fed > seen)
            atLoad = boil.truth().boiledOff.litre();
        seen = fed;
        if (std::fmod(boil.since(), 60) < 0.5)
            eachMinute.push_back(boil.truth().boiledOff.litre());
    }
    return atLoad;
}

// An arch known from earlier nights: as long as, at half the rate, it boils off what it does after the last load.
Duration burnOut(const RehearsalOptions& options, std::uint64_t seed) {
    Watched boil{options, seed};
    std::vector<double> minutes;
    const double atLoad = boiledAtLastLoad(boil, minutes);
    const auto load =
        static_cast<std::size_t>(std::lower_bound(minutes.begin(), minutes.end(), atLoad) - minutes.begin());
    const double perMinute = (minutes[load] - minutes[load - 60]) / 60;
    return Duration{60 * std::round(2 * (boil.truth().boiledOff.litre() - atLoad) / perMinute)};
}

// What was really needed after the last load: to raise the pans by their running depth, and what boiled off after it.
// `even`: the crew feeds the fire as evenly as people can, so that the coming hour is no other than the last.
void endOfBoil(std::uint64_t seed, bool even, Account& account) {
    auto options = plain(seed);
    if (even)
        options.fire.intervalScatter = options.fire.loadScatter = options.fire.handScatter = 0.02;
    options.crew.weighs = true;
    options.sap.atStart = Volume::litre(options.rig.rate.litrePerHour() * 4.5);
    options.crew.burnOut = burnOut(options, seed);
    Watched boil{options, seed};
    struct Minute {
        double tank, boiledOff, heatTaken, burnt;
        Picture picture;
    };
    std::vector<Minute> minutes;
    double shutAt = -1, boiledThen = 0, boilsFrom = -1;
    std::size_t fed = 0;
    while (boil.second()) {
        const auto& truth = boil.truth();
        if (truth.boiling && boilsFrom < 0)
            boilsFrom = boil.since();
        if (shutAt < 0 && !boil.plant().deeds().empty() &&
            boil.plant().deeds().back().kind == RehearsalDeed::Kind::shutDown)
            shutAt = boil.since();
        if (const auto now = loads(boil).size(); now > fed) {
            fed = now;
            boiledThen = truth.boiledOff.litre();
        }
        if (shutAt < 0 && std::fmod(boil.since(), 60) < 0.5)
            minutes.push_back({truth.tank.litre(), truth.boiledOff.litre(), truth.heatTaken.joule(),
                               truth.woodBurnt.kilogram(), boil.picture()});
    }
    State state;
    for (const auto& entry : boil.facts())
        absorb(state, entry.fact);
    const auto out = state.balance.burnOutSeen(state);
    account.burnOut.push_back(out ? 100 * std::abs(*out / *options.crew.burnOut - 1) : 999);
    const auto& rig = options.rig;
    const double needed = (rig.flueArea + rig.syrupArea).squareMetre() * rig.depth.millimetre() +
                          boil.truth().boiledOff.litre() - boiledThen;
    std::size_t enough = minutes.size();
    while (enough > 1 && minutes[enough - 1].tank < needed)
        --enough;
    const double perMinute = (minutes[minutes.size() - 61].tank - minutes.back().tank) / 60;
    const double truly =
        static_cast<double>(enough) + (enough == minutes.size() ? (minutes.back().tank - needed) / perMinute : 0);
    const auto hourBefore = static_cast<std::size_t>(std::max(0.0, truly - 60));
    const auto& then = minutes[std::min(hourBefore, minutes.size() - 1)].picture;
    const double ahead = truly - static_cast<double>(hourBefore);
    account.lastLoad.push_back(then.lastLoad ? std::abs(seconds(then.lastLoad->p50) / 60 - ahead) : 999);
    // How far the crew's coming hour differs from the two and a half before it: nobody can know that beforehand.
    const std::size_t earlier = hourBefore > 150 ? hourBefore - 150 : 0,
                      after = std::min(hourBefore + 60, minutes.size() - 1);
    const double was = (minutes[earlier].tank - minutes[hourBefore].tank) / static_cast<double>(hourBefore - earlier);
    const double came = (minutes[hourBefore].tank - minutes[after].tank) / static_cast<double>(after - hourBefore);
    account.crew.push_back(60 * std::abs(came / was - 1));
    account.held += then.lastLoad && seconds(then.lastLoad->p10) / 60 <= ahead &&
                    (!then.lastLoad->p90 || seconds(*then.lastLoad->p90) / 60 >= ahead);
    account.reserve.push_back(then.keepBack ? 100 * std::abs(then.keepBack->litre() / needed - 1) : 999);
    const double heating = options.fire.moisture * -2.44e6 + (1 - options.fire.moisture) * 18.618e6;
    for (std::size_t m = static_cast<std::size_t>(boilsFrom / 60) + 40; m < minutes.size(); m += 10) {
        const auto& now = minutes[m];
        if (now.picture.evaporation)
            account.steam.push_back(100 * std::abs(now.picture.evaporation->litrePerHour() /
                                                       (2 * (now.boiledOff - minutes[m - 30].boiledOff)) -
                                                   1));
        if (now.picture.efficiency && m > static_cast<std::size_t>(boilsFrom / 60) + 75) {
            const auto& before = minutes[m - 60];
            const double truth = (now.heatTaken - before.heatTaken) / ((now.burnt - before.burnt) * heating);
            account.efficiency.push_back(100 * std::abs(*now.picture.efficiency - truth));
        }
    }
}

void accounts(int rigs) {
    Account account, evenly;
    for (int i = 1; i <= rigs; ++i) {
        endOfBoil(33000 + more + static_cast<std::uint64_t>(i), true, evenly);
        endOfBoil(33000 + more + static_cast<std::uint64_t>(i), false, account);
    }
    const auto say = [](const std::vector<double>& errors) {
        return fmt::format("median {:.1f}, 90 % {:.1f}, most {:.1f}", quantile(errors, 0.5), quantile(errors, 0.9),
                           quantile(errors, 1));
    };
    row("last load an hour before, fed evenly, min", evenly.lastLoad.size(), say(evenly.lastLoad), "at most 5",
        quantile(evenly.lastLoad, 0.9) <= 5);
    row("the same, fed as crews do, min", account.lastLoad.size(), say(account.lastLoad), "half at most 5",
        quantile(account.lastLoad, 0.5) <= 5);
    row("  of it the crew: their next hour was other, min", account.crew.size(), say(account.crew), "what it is", true);
    row("  its range (10 to 90 %) holds the truth", account.lastLoad.size(), fmt::format("{} times", account.held),
        "7 of 10 or more", 10 * account.held >= 7 * rigs);
    row("sap to keep back, fed evenly, %", evenly.reserve.size(), say(evenly.reserve), "at most 10",
        quantile(evenly.reserve, 0.9) <= 10);
    row("sap to keep back, %", account.reserve.size(), say(account.reserve), "at most 10",
        quantile(account.reserve, 0.9) <= 10);
    row("burn-out of the arch as its stack shows it, %", account.burnOut.size(), say(account.burnOut), "at most 25",
        quantile(account.burnOut, 0.9) <= 25);
    row("evaporation after half an hour, %", account.steam.size(), say(account.steam), "at most 5",
        quantile(account.steam, 0.9) <= 5);
    row("efficiency over an hour, points", account.efficiency.size(), say(account.efficiency), "at most 5",
        quantile(account.efficiency, 0.9) <= 5);
}
} // namespace

int main(int argc, char** argv) {
    const bool full = argc >= 2 && std::string_view{argv[1]} == "--full";
    if (argc == 2 && std::string_view{argv[1]} == "--short") {
        interval(2);
        overdue(3);
        inferred(1);
        return broken > 0 ? 1 : 0;
    }
    if (argc > 3 || (argc > 1 && !full)) {
        fmt::print(
            "fire_table [--full [SEED] | --short]\n  --full   ten rigs a row; else three\n  SEED     other rigs\n"
            "  --short  one rig, the call and the loads that nobody keyed\n");
        return 2;
    }
    if (argc == 3)
        more = std::strtoull(argv[2], nullptr, 10);
    const int rigs = full ? 10 : 3;
    fmt::print("{:<48}{:>6}  {:<34}{:<22}\n", "", "times", "got", "wanted");
    interval(rigs);
    inferred(rigs);
    overdue(rigs);
    accounts(rigs);
    return broken > 0 ? 1 : 0;
}
