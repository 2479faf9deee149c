// Rows about the clock on the wall: whatever is done to it, a boil is told as if nobody had touched it.
#include "core/boil/shift_log.h"
#include "core/journal/backup.h"
#include "core/rehearsal/rehearsal.h"
#include "core/shift/session.h"
#include "tests/battery/rows.h"

#include <cmath>
#include <ctime>

namespace battery {
namespace {

using namespace panside;
using namespace std::chrono_literals;
namespace fs = std::filesystem;

// Two clocks that a case winds: the wall's, and the one that only runs.
struct Clocks {
    std::int64_t wallUs = 0, bootUs = 5'000'000;
    void run(std::int64_t seconds) {
        wallUs += seconds * 1'000'000;
        bootUs += seconds * 1'000'000;
    }
    void step(std::int64_t seconds) { wallUs += seconds * 1'000'000; }
    ShiftClock clock() {
        return ShiftClock{[this] { return ShiftClock::Ticks{wallUs, bootUs}; }};
    }
};
Clocks startingAt(const char* time) { return {.wallUs = instantIn(time)->time_since_epoch().count()}; }

void moveTo(const char* zone) {
    ::setenv("TZ", zone, 1);
    ::tzset();
}

Session takenUp(const fs::path& place, Clocks& clocks) {
    Journal journal = Journal::open(place);
    const auto open = journal.openShift();
    auto facts = open ? journal.facts(open->id) : Facts{};
    Session session{keeperIn(std::move(journal)), clocks.clock()};
    session.resume(std::move(facts));
    return session;
}

// All that is shown, but for the alarm that says that the clock was moved.
std::string shown(Session& session) {
    Picture picture = session.picture();
    std::erase_if(picture.alarms, [](const AlarmPicture& alarm) { return alarm.alarm == Alarm::clock_changed; });
    std::string text;
    appendJson(text, picture);
    return text;
}

std::string differences(const std::string& here, const std::string& there) {
    const auto [a, b] = std::mismatch(here.begin(), here.end(), there.begin(), there.end());
    const auto from = [](const std::string& text, auto at) {
        const auto index = static_cast<std::size_t>(at - text.begin());
        return text.substr(index > 60 ? index - 60 : 0, 120);
    };
    return a == here.end() && b == there.end() ? "" : "\n  " + from(here, a) + "\n  " + from(there, b);
}

// What happens to the clock, at which second of the boil.
struct Event {
    enum class Kind : std::uint8_t { ahead, back, spring, autumn, zone, sleep } kind;
    int at;
};
Event eventOf(const Case& c) {
    const auto kind = static_cast<Event::Kind>((c.number - 1) % 6);
    const bool turn = kind == Event::Kind::spring || kind == Event::Kind::autumn;
    return {kind, turn ? 3600 : 1800 + c.upTo(5000)};
}
// In New York the clocks go forward on 14 March 2027 at 07:00 UTC and back on 7 November 2027 at 06:00 UTC (15 USC
// 260a).
Clocks clocksFor(const Event& event) {
    if (event.kind == Event::Kind::spring)
        return startingAt("2027-03-14T06:00:00Z");
    return startingAt(event.kind == Event::Kind::autumn ? "2027-11-07T05:00:00Z" : "2027-03-20T18:00:00Z");
}
void happen(const Event& event, Clocks& clocks) {
    if (event.kind == Event::Kind::ahead)
        clocks.step(3600);
    else if (event.kind == Event::Kind::back)
        clocks.step(-3600);
    else if (event.kind == Event::Kind::zone)
        moveTo("Europe/Paris");
}

// The killed session's journal, taken up: the same shift, going on from its last fact.
std::string goesOn(const fs::path& place, Clocks& clocks, ShiftId shift, Instant last) {
    Session again = takenUp(place, clocks);
    if (again.openShift() != shift)
        return "another shift was taken up";
    const Duration gap = again.now() - last;
    return gap < Duration{-1e-6} || gap > 5s ? "taken up " + std::to_string(gap.count()) + " s after its last fact"
                                             : "";
}

} // namespace

// A boil of two hours and a half is told twice: to a session whose clock is meddled with, and to one that is left
// alone. Each minute the same must be shown, alarms and all; and after a kill the shift goes on.
std::string clockMoved(const Case& c) {
    const Event event = eventOf(c);
    moveTo("America/New_York");
    Clocks clocks = clocksFor(event), left = clocks;
    RehearsalOptions options = anyBoil(c.random());
    options.begins = Instant{std::chrono::microseconds{clocks.wallUs}};
    options.spacing = std::max(options.spacing, Duration{4});
    Rehearsal rehearsal{options, c.random()};
    const fs::path place = c.folder / "j";
    Session session{keeperIn(Journal::open(place)), clocks.clock()};
    Session twin{keeperOfNothing(), left.clock()};
    for (int second = 0; second < 9000; ++second) {
        const bool asleep = event.kind == Event::Kind::sleep && second >= event.at && second < event.at + 600;
        clocks.run(1);
        left.run(1);
        if (second == event.at)
            happen(event, clocks);
        std::vector<Fact> facts = rehearsal.advance(options.begins + std::chrono::seconds{second + 1});
        if (asleep)
            continue; // nobody is told anything, and nothing is shown
        session.tick();
        twin.tick();
        session.follow(facts);
        twin.follow(std::move(facts));
        if (second % 60 == 59)
            if (const auto wrong = differences(shown(session), shown(twin)); !wrong.empty())
                return "at second " + std::to_string(second) + " other than with the clock left alone:" + wrong;
    }
    const auto shift = session.openShift();
    const Instant last = session.now();
    if (!shift || !session.flush())
        return "no shift was kept";
    session = Session{keeperOfNothing(), clocks.clock()};
    clocks.run(2);
    return goesOn(place, clocks, *shift, last);
}

// A small computer without a battery clock: it starts under 1970, and a time server puts it right some minutes later.
std::string clockLost(const Case& c) {
    const fs::path place = c.folder / "j";
    Clocks clocks = startingAt("2027-03-14T23:00:00Z");
    const bool fresh = c.number % 2 == 0; // the shift itself begins under 1970
    const auto lose = [&] { clocks.wallUs = 20'000'000 + c.upTo(60'000'000), clocks.bootUs = 20'000'000; };
    const auto enter = [](Session& session, What what) { session.enter(Fact{session.now(), std::move(what)}); };
    {
        Session before = takenUp(place, clocks);
        enter(before, Lit{});
        clocks.run(3600);
        enter(before, ShiftEnd{});
    }
    clocks.run(16 * 3600);
    const std::int64_t right = clocks.wallUs;
    if (fresh)
        lose();
    std::optional<ShiftId> shift;
    std::optional<Duration> due;
    {
        Session night = takenUp(place, clocks);
        enter(night, Lit{});
        night.enter(Fact{night.now(), Set{.key = Setting::target_density, .si = 0.65, .unit = Unit::brix}});
        enter(night, Fired{});
        clocks.run(60 + c.upTo(200));
        night.tick();
        enter(night, Note{"by the fire"});
        shift = night.openShift();
        due = night.picture().fireDue;
    }
    // Killed, and started again under 1970.
    lose();
    for (int start = 0; start < 2; ++start) {
        Session night = takenUp(place, clocks);
        if (night.openShift() != shift)
            return "another shift was taken up";
        const auto now = night.picture().fireDue;
        if (!due || !now || std::abs((*now - *due).count()) > 10)
            return "the fire's clock jumped";
        clocks.run(30);
        night.tick();
        const auto before = night.picture().fireDue;
        clocks.wallUs = right + clocks.bootUs; // the time server answers
        night.tick();
        const auto after = night.picture();
        if (!before || !after.fireDue || std::abs((*after.fireDue - *before).count()) > 1)
            return "the fire's clock jumped as the clock was put right";
        enter(night, Note{"right again"});
        due = night.picture().fireDue;
    }
    Session night = takenUp(place, clocks);
    if (night.openShift() != shift)
        return "another shift was taken up in the end";
    enter(night, ShiftEnd{});
    clocks.run(3600);
    enter(night, Lit{});
    for (const Set& set : night.settings())
        if (set.key == Setting::target_density && std::abs(set.si - 0.65) < 1e-9)
            return fullCheck(Journal::open(place, Journal::Access::read)).sound() ? "" : "not sound";
    return "the target that was set is forgotten";
}

} // namespace battery
