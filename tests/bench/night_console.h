#pragma once
// The console as the program has it, on a shift of 12 h that ends now and is kept nowhere.
#include "core/shift/keeper.h"
#include "core/shift/session.h"
#include "tests/bench/night.h"
#include "ui/console/console.h"

namespace panside::bench {

constexpr int hours = 12;
constexpr QSize screen{1366, 768};

struct NightConsole {
    Session session{keeperOfNothing()};
    std::unique_ptr<Console> console;
    explicit NightConsole(Choices choices = {}) {
        auto facts = readLog(night(hours)).facts;
        const auto later = session.now() - facts.back().at;
        for (Fact& fact : facts)
            fact.at += later;
        session.follow(std::move(facts));
        choices.cautioned = true;
        console = std::make_unique<Console>(
            Console::Behind{
                .session = session, .journal = {}, .probeFile = {}, .probes = {}, .notice = {}, .advance = {}},
            choices);
        console->resize(screen);
        console->show();
    }
};

} // namespace panside::bench
