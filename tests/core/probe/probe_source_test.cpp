#include "core/probe/probe_source.h"

#include "pty.h"

#include <QThread>
#include <gmock/gmock.h>

namespace panside {
namespace {

PortRule box(const std::string& device, const std::string& name, Series series) {
    return {.name = name, .device = device, .fields = {{.is = "t", .reads = series, .unit = Unit::degC}}};
}

TEST(ProbeSource, ReadsAllItsPortsAndTellsHowTheyAre) {
    needEventLoop();
    const Pty pan, stack;
    ProbeSource source{{{box(pan.path(), "pan", Series::syrup_pan), box(stack.path(), "stack", Series::stack),
                         box("/nowhere/tty", "air", Series::air)}},
                       [] { return Instant{}; }};
    std::vector<Reading> readings;
    std::vector<HeardLine> lines;
    std::map<std::size_t, PortState> states;
    QObject::connect(&source, &ProbeSource::fact,
                     [&](const Fact& fact) { readings.push_back(std::get<Reading>(fact.what)); });
    QObject::connect(&source, &ProbeSource::heard, [&](std::size_t, const HeardLine& line) { lines.push_back(line); });
    QObject::connect(&source, &ProbeSource::status,
                     [&](std::size_t port, const PortStatus& status) { states[port] = status.state; });
    source.start();
    ASSERT_TRUE(pan.send("\nt=103.4 u=open\n"));
    ASSERT_TRUE(stack.send("\nt=318\n"));
    ASSERT_TRUE(waitFor([&] { return readings.size() == 2; }));
    std::ranges::sort(readings, {}, &Reading::series);
    EXPECT_EQ(readings[0].probe, "pan");
    EXPECT_EQ(readings[1].probe, "stack");
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(states[0], PortState::reading);
    EXPECT_EQ(states[1], PortState::reading);
    EXPECT_EQ(states[2], PortState::noSuchPort);
}

TEST(ProbeSource, MayLiveInAThreadOfItsOwn) {
    needEventLoop();
    const Pty pan;
    QThread thread;
    auto* source = new ProbeSource{{{box(pan.path(), "pan", Series::syrup_pan)}}, [] { return Instant{}; }};
    source->moveToThread(&thread);
    QObject::connect(&thread, &QThread::started, source, &ProbeSource::start);
    QObject::connect(&thread, &QThread::finished, source, &QObject::deleteLater);
    QObject here;
    std::vector<Fact> facts;
    PortState state{};
    QObject::connect(source, &ProbeSource::fact, &here, [&](const Fact& fact) { facts.push_back(fact); });
    QObject::connect(source, &ProbeSource::status, &here,
                     [&](std::size_t, const PortStatus& status) { state = status.state; });
    thread.start();
    ASSERT_TRUE(waitFor([&] { return state == PortState::listening; }));
    ASSERT_TRUE(pan.send("\nt=103.4\n"));
    EXPECT_TRUE(waitFor([&] { return facts.size() == 1; }));
    thread.quit();
    EXPECT_TRUE(thread.wait(5000));
}

} // namespace
} // namespace panside
