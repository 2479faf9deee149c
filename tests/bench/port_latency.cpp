// From the last byte of a probe line to its fact, through a pseudo-terminal: median, 99th percentile, worst; and the
// share of a core that 16 ports at 10 lines a second take. usage: port_latency [seconds]
#include "core/probe/probe_source.h"

#include "../core/probe/pty.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <ctime>
#include <fmt/format.h>
#include <memory>
#include <mutex>
#include <thread>

namespace {

using namespace panside;

Instant now() { return std::chrono::time_point_cast<std::chrono::microseconds>(std::chrono::system_clock::now()); }

double threadSeconds() {
    timespec used{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &used);
    return double(used.tv_sec) + double(used.tv_nsec) * 1e-9;
}

} // namespace

int main(int argc, char** argv) {
    needEventLoop();
    const double seconds = argc > 1 ? std::stod(argv[1]) : 10;
    constexpr int ports = 16, linesASecond = 10;
    std::vector<std::unique_ptr<Pty>> cables;
    ProbeFile file;
    for (int i = 0; i < ports; ++i) {
        cables.push_back(std::make_unique<Pty>());
        file.ports.push_back({.name = fmt::format("box {}", i),
                              .device = cables.back()->path(),
                              .fields = {{.is = "syrup", .reads = Series::syrup_pan, .unit = Unit::degC}}});
    }
    ProbeSource source{file, now};
    std::vector<double> milliseconds;
    std::mutex sending;
    std::map<double, Instant> sentAt; // a line's own number tells when it was sent
    QObject::connect(&source, &ProbeSource::fact, [&](const Fact& fact) {
        const auto number = std::round((std::get<Reading>(fact.what).si - 273.15) * 1e4) / 1e4;
        const std::lock_guard lock{sending};
        if (const auto sent = sentAt.find(number); sent != sentAt.end())
            milliseconds.push_back(secondsBetween(sent->second, now()) * 1e3);
    });
    source.start();
    for (const auto& cable : cables)
        cable->send("\n");
    std::jthread probes{[&](const std::stop_token& stop) {
        for (int count = 0; !stop.stop_requested(); ++count) {
            const double number = (1000000 + count) / 1e4;
            const auto line = fmt::format("syrup={:.4f} stack=318.5\r\n", number);
            {
                const std::lock_guard lock{sending};
                sentAt[number] = now();
                cables[size_t(count % ports)]->send(line);
            }
            std::this_thread::sleep_for(std::chrono::microseconds{1000000 / (ports * linesASecond)});
        }
    }};
    const double before = threadSeconds();
    const auto begun = now();
    QTimer::singleShot(int(seconds * 1e3), qApp, &QCoreApplication::quit);
    QCoreApplication::exec();
    const double core = (threadSeconds() - before) / secondsBetween(begun, now());
    probes.request_stop();
    probes.join();
    if (milliseconds.empty()) {
        fmt::print("no line arrived\n");
        return 1;
    }
    std::ranges::sort(milliseconds);
    const auto at = [&](double share) { return milliseconds[size_t(share * double(milliseconds.size() - 1))]; };
    fmt::print(
        "{} lines from {} ports: median {:.3f} ms, 99th percentile {:.3f} ms, worst {:.3f} ms; {:.2f} % of a core\n",
        milliseconds.size(), ports, at(0.5), at(0.99), at(1), core * 100);
}
