// From the last byte of a probe line to the board painted with it: pseudo-terminal, port, session, engine, console and
// chart, as the program has them, with a shift of 12 h on the screen. Painted means: the chart has drawn that reading's
// point and the cards their numbers. usage: board_latency [seconds]
#include "core/probe/probe_source.h"
#include "ui/board/board.h"
#include "ui/chart/rise_chart.h"

#include "../core/probe/pty.h"
#include "night_console.h"

#include <QApplication>
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <memory>
#include <mutex>
#include <thread>

namespace {

using namespace panside;
using Clock = std::chrono::steady_clock;

constexpr auto spacing = std::chrono::milliseconds{263}; // under four a second, and never in step with the second
// The night ends at another reading: until the engine believes the step to these, it rightly shows none of them.
constexpr auto believed = std::chrono::seconds{15};

// Tells when the chart has painted, and of which reading: what an event filter sees comes before the painting.
class Painted : public QObject {
public:
    Painted(Console& console, std::function<void(Instant)> shown) : console_{console}, shown_{std::move(shown)} {
        console.board().chart().installEventFilter(this);
    }
    bool eventFilter(QObject* what, QEvent* event) override {
        if (event->type() != QEvent::Paint)
            return false;
        what->event(event);
        if (const auto& pan = console_.board().picture().reading(Series::syrup_pan))
            shown_(pan->last);
        return true;
    }

private:
    Console& console_;
    std::function<void(Instant)> shown_;
};

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application{argc, argv};
    const double seconds = argc > 1 ? std::stod(argv[1]) : 60;
    bench::NightConsole night;
    Session& session = night.session;
    Console& console = *night.console;
    for (int i = 0; i < 8; ++i)
        console.board().chart().zoom(1 / 1.25); // until all twelve hours stand on the screen

    const Pty cable;
    ProbeSource watch{[&session] { return session.now(); }};
    std::mutex sending;
    std::map<double, Clock::time_point> sentAt;  // by the line's own number
    std::map<Instant, Clock::time_point> folded; // by the fact's time: taken, not yet painted
    std::vector<double> milliseconds;
    QObject::connect(&watch, &ProbeSource::fact, &console, [&](const Fact& fact) {
        session.read(fact);
        console.refreshSoon();
        const double number = std::round((std::get<Reading>(fact.what).si - 273.15) * 1e4) / 1e4;
        const std::lock_guard lock{sending};
        if (const auto sent = sentAt.find(number); sent != sentAt.end())
            folded[fact.at] = sent->second;
    });
    const auto counts = Clock::now() + believed;
    const Painted painted{
        console, [&](Instant last) {
            for (auto one = folded.begin(); one != folded.end() && one->first <= last; one = folded.erase(one))
                if (one->second >= counts)
                    milliseconds.push_back(
                        std::chrono::duration<double, std::milli>(Clock::now() - one->second).count());
        }};
    watch.read({{{.name = "pan",
                  .device = cable.path(),
                  .fields = {{.is = "syrup", .reads = Series::syrup_pan, .unit = Unit::degC}}}}});
    cable.send("\n");
    std::jthread probe{[&](const std::stop_token& stop) {
        for (int count = 0; !stop.stop_requested(); ++count) {
            // A pan that climbs slowly; the last digits number the line.
            const double number = 103.0 + std::round(count * 7 % 1000) / 1e4;
            const auto line = fmt::format("syrup={:.4f}\r\n", number);
            {
                const std::lock_guard lock{sending};
                sentAt[std::round(number * 1e4) / 1e4] = Clock::now();
                cable.send(line);
            }
            std::this_thread::sleep_for(spacing);
        }
    }};
    const int before = console.board().chart().paintings();
    QTimer::singleShot(static_cast<int>(seconds * 1e3), &application, &QCoreApplication::quit);
    QApplication::exec();
    probe.request_stop();
    probe.join();
    if (milliseconds.empty()) {
        fmt::print("no line was painted\n");
        return 1;
    }
    std::ranges::sort(milliseconds);
    const auto at = [&](double share) { return milliseconds[size_t(share * double(milliseconds.size() - 1))]; };
    fmt::print("{} lines, {} paintings of {} h: median {:.1f} ms, 99th percentile {:.1f} ms, worst {:.1f} ms\n",
               milliseconds.size(), console.board().chart().paintings() - before, bench::hours, at(0.5), at(0.99),
               at(1));
    return at(0.99) <= 100 ? 0 : 1;
}
