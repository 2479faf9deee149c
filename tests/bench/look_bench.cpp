// What 32 phones that look in cost the board: a probe line a second on a shift of 12 h, by turns with nobody and with
// 32 phones on the stream, in one run. A board second is all that the console's own thread does in it; a frame is from
// the line to the chart painted with it. usage: look_bench [minutes with phones, 10]; 0: half a minute with
// nobody and the look in off, for instructions.py
#include "core/lookin/door.h"
#include "tests/ui/lookin/phones.h"
#include "ui/board/board.h"
#include "ui/chart/rise_chart.h"
#include "ui/lookin/looked_at.h"

#include "night_console.h"

#include <QApplication>
#include <QTest>
#include <QUrl>
#include <ctime>
#include <fmt/format.h>
#include <memory>

namespace {

using namespace panside;

constexpr int phones = 32, turn = 30; // seconds, then the others
constexpr double allowed = 1.1;       // of a board second with nobody

double seconds(clockid_t clock) {
    timespec now{};
    clock_gettime(clock, &now);
    return double(now.tv_sec) + double(now.tv_nsec) / 1e9;
}

struct Measured {
    std::vector<double> cpu, frame; // milliseconds
    static double median(std::vector<double> values) {
        std::ranges::sort(values);
        return values[values.size() / 2];
    }
};

// One line, one second.
void boardSecond(Console& console, Session& session, int count, Measured& into) {
    const double cpu = seconds(CLOCK_THREAD_CPUTIME_ID), wall = seconds(CLOCK_MONOTONIC);
    const int before = console.board().chart().paintings();
    session.read(Fact{session.now(), Reading{Series::syrup_pan, 376.15 + 0.01 * (count % 9), Unit::degC, "pan box"}});
    console.refreshSoon();
    [[maybe_unused]] const bool shown =
        QTest::qWaitFor([&] { return console.board().chart().paintings() > before; }, 900);
    into.frame.push_back(1e3 * (seconds(CLOCK_MONOTONIC) - wall));
    while (seconds(CLOCK_MONOTONIC) - wall < 1)
        QTest::qWait(20);
    into.cpu.push_back(1e3 * (seconds(CLOCK_THREAD_CPUTIME_ID) - cpu));
}

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application{argc, argv};
    const int minutes = argc > 1 ? std::stoi(argv[1]) : 10;
    Choices choices;
    choices.lookIn = {
        .on = minutes > 0, .address = QStringLiteral("127.0.0.1"), .port = 0, .key = QString::fromStdString(newKey())};
    bench::NightConsole night{choices};
    Session& session = night.session;
    Console& console = *night.console;

    Measured alone, looked;
    int count = 0, fewest = -1;
    for (int second = 0; second < 20; ++second) { // until all is warm
        Measured none;
        boardSecond(console, session, ++count, none);
    }
    if (minutes == 0) {
        for (int second = 0; second < turn; ++second)
            boardSecond(console, session, ++count, alone);
        fmt::print("{} board seconds: {:.2f} ms of the console's thread each (median)\n", alone.cpu.size(),
                   Measured::median(alone.cpu));
        return 0;
    }
    const QUrl link{console.lookedAt().link()};
    for (int round = 0; round * turn < minutes * 60; ++round) {
        for (int second = 0; second < turn; ++second)
            boardSecond(console, session, ++count, alone);
        const auto looking = std::make_unique<Phones>(phones, link.port(), link.path().toStdString());
        for (int second = 0; second < turn; ++second)
            boardSecond(console, session, ++count, looked);
        fewest = fewest < 0 ? looking->fewest() : std::min(fewest, looking->fewest());
    }
    const double ratio = Measured::median(looked.cpu) / Measured::median(alone.cpu);
    fmt::print("{} board seconds with {} phones: {:.2f} ms of the console's thread each (median), {:.2f} with nobody, "
               "ratio {:.3f}; "
               "a frame {:.1f} ms, {:.1f} with nobody; each phone heard at least {} pictures in {} s\n",
               looked.cpu.size(), phones, Measured::median(looked.cpu), Measured::median(alone.cpu), ratio,
               Measured::median(looked.frame), Measured::median(alone.frame), fewest, turn);
    return ratio <= allowed && fewest >= turn - 2 ? 0 : 1;
}
