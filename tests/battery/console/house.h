#pragma once
// A console on a journal with some nights in it, and a probe that goes on reading.
#include "core/journal/log_import.h"
#include "core/probe/probe_source.h"
#include "core/rehearsal/rehearsal.h"
#include "core/rehearsal/rehearse.h"
#include "core/shift/session.h"
#include "ui/console/console.h"

#include <memory>
#include <random>
#include <sstream>

namespace battery {

inline void putNightsInto(const std::filesystem::path& place, int nights) {
    using namespace panside;
    Journal journal = Journal::open(place);
    for (int night = 0; night < nights; ++night) {
        // A day apart: two shifts cannot begin at one moment.
        RehearsalOptions options = anEvening(static_cast<std::uint64_t>(night));
        options.begins += std::chrono::days{night};
        options.spacing = Duration{15};
        options.crew.boilFor = std::chrono::hours{2};
        Rehearsal rehearsal{options, static_cast<std::uint64_t>(night)};
        std::istringstream log{writeLog(rehearsal.advance(options.begins + std::chrono::hours{4}))};
        importLog(journal, log);
    }
}

struct House {
    House(const std::filesystem::path& folder, std::uint64_t dice) : random{dice}, place{folder / "house.journal"} {
        using namespace panside;
        session = std::make_unique<Session>(keeperIn(Journal::open(place)));
        watch = std::make_unique<ProbeSource>([this] { return session->now(); });
        Choices choices;
        choices.cautioned = random() % 2 == 0;
        console = std::make_unique<Console>(Console::Behind{.session = *session,
                                                            .journal = place,
                                                            .probeFile = folder / "probe.toml",
                                                            .probes = watch.get(),
                                                            .notice = {},
                                                            .advance = {}},
                                            choices);
        QObject::connect(&probe, &QTimer::timeout, console.get(), [this] { read(); });
        probe.start(100);
    }
    // A pan that wanders over its mark, a stack that dies now and then: alarms come and go.
    void read() {
        using namespace panside;
        std::normal_distribution<double> step{0, 0.05};
        celsius = std::clamp(celsius + step(random), 99.0, 107.0);
        const Instant now = session->now();
        session->read({now, Reading{Series::syrup_pan, celsius + 273.15, Unit::degC, "pan box"}});
        session->read({now, Reading{Series::stack, random() % 400 == 0 ? 1100.0 : 650.0, Unit::degC, "stack box"}});
        console->refreshSoon();
    }
    std::mt19937_64 random;
    std::filesystem::path place;
    double celsius = 103;
    std::unique_ptr<panside::Session> session;
    std::unique_ptr<panside::ProbeSource> watch;
    std::unique_ptr<panside::Console> console;
    QTimer probe;
};

} // namespace battery
