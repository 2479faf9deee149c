// Nights on end into one journal, far faster than life, with the season opened each hour: nothing grows but the
// journal.
#include "core/rehearsal/rehearsal.h"
#include "core/rehearsal/rehearse.h"
#include "core/shift/session.h"
#include "tests/battery/console/program.h"
#include "ui/console/console.h"

#include "core/probe/probe_source.h"

#include <QApplication>
#include <QTest>
#include <algorithm>
#include <ctime>
#include <fstream>
#include <unistd.h>

namespace battery {
namespace {

using namespace panside;
namespace fs = std::filesystem;

struct Load {
    double megabytes = 0; // resident
    int files = 0;        // open
    double pictureMs = 0; // to work it out, on a processor
};

double processorMs() {
    timespec time{};
    ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

Load loadNow(Session& session) {
    Load load;
    long whole = 0, resident = 0;
    std::ifstream{"/proc/self/statm"} >> whole >> resident;
    load.megabytes = static_cast<double>(resident) * static_cast<double>(::sysconf(_SC_PAGESIZE)) / 1e6;
    std::error_code error;
    load.files =
        static_cast<int>(std::distance(fs::directory_iterator{"/proc/self/fd", error}, fs::directory_iterator{}));
    const double began = processorMs();
    for (int i = 0; i < 5; ++i)
        session.picture();
    load.pictureMs = (processorMs() - began) / 5;
    return load;
}

Load median(std::vector<Load> loads) {
    const auto middle = [&](auto member) {
        std::nth_element(loads.begin(), loads.begin() + static_cast<std::ptrdiff_t>(loads.size() / 2), loads.end(),
                         [&](const Load& a, const Load& b) { return a.*member < b.*member; });
        return loads[loads.size() / 2].*member;
    };
    return {middle(&Load::megabytes), middle(&Load::files), middle(&Load::pictureMs)};
}

std::string judged(const std::vector<Load>& hours) {
    const auto third = static_cast<std::ptrdiff_t>(hours.size() / 3);
    const Load before = median({hours.begin(), hours.begin() + third}),
               after = median({hours.end() - third, hours.end()});
    const std::string figures = std::to_string(before.megabytes) + " to " + std::to_string(after.megabytes) + " MB, " +
                                std::to_string(before.files) + " to " + std::to_string(after.files) + " files, " +
                                std::to_string(before.pictureMs) + " to " + std::to_string(after.pictureMs) +
                                " ms a picture";
    std::fprintf(stderr, "soak: %s\n", figures.c_str());
    const bool level = after.megabytes < before.megabytes * 1.15 + 10 && after.files <= before.files + 2 &&
                       after.pictureMs < before.pictureMs * 1.5 + 0.3;
    return level ? "" : "not level: " + figures;
}

} // namespace

std::string soaked(const Case& c) {
    const std::uint64_t dice = c.random();
    const int hours = c.brief ? 3 : 72;
    return inAProcessOfItsOwn(c, [&](Program&) {
        std::int64_t wallUs = 1'772'215'200'000'000, bootUs = 5'000'000;
        const fs::path place = c.folder / "house.journal";
        Session session{keeperIn(Journal::open(place)), ShiftClock{[&] { return ShiftClock::Ticks{wallUs, bootUs}; }}};
        ProbeSource watch{[&] { return session.now(); }};
        Choices choices;
        choices.cautioned = true;
        Console console{{.session = session,
                         .journal = place,
                         .probeFile = c.folder / "probe.toml",
                         .probes = &watch,
                         .notice = {},
                         .advance = {}},
                        choices};
        console.resize(1366, 768);
        console.show();
        std::vector<Load> loads;
        int minutes = 0;
        for (std::uint64_t night = 0; minutes < hours * 60; ++night) {
            RehearsalOptions options = anEvening(dice + night);
            options.begins = Instant{std::chrono::microseconds{wallUs}};
            Rehearsal rehearsal{options, dice + night};
            for (; !rehearsal.ended() && minutes < hours * 60; ++minutes) {
                wallUs += 60'000'000, bootUs += 60'000'000;
                session.follow(rehearsal.advance(Instant{std::chrono::microseconds{wallUs}}));
                session.tick();
                if (minutes % 60 == 30)
                    console.act(Action::season);
                else if (minutes % 60 == 32)
                    console.act(Action::review);
                else if (minutes % 60 == 34)
                    console.showBoard();
                console.refreshSoon();
                QTest::qWait(45); // a picture comes 40 ms after it was asked for
                if (minutes % 20 == 0 && minutes % 60 != 30 && minutes >= 60)
                    loads.push_back(loadNow(session));
            }
            wallUs += 8 * 3'600'000'000LL, bootUs += 8 * 3'600'000'000LL; // the crew sleeps
        }
        return session.flush() ? judged(loads) : std::string{"not kept in the end"};
    });
}

} // namespace battery
