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

TEST(ProbeSource, LetsGoOfItsPortsForThoseOfAnotherFile) {
    needEventLoop();
    const Pty before, after;
    ProbeSource source{[] { return Instant{}; }};
    std::vector<std::string> read;
    QObject::connect(&source, &ProbeSource::fact,
                     [&](const Fact& fact) { read.push_back(std::get<Reading>(fact.what).probe); });
    source.read({{box(before.path(), "before", Series::syrup_pan)}});
    ASSERT_TRUE(before.send("\nt=103.4\n"));
    ASSERT_TRUE(waitFor([&] { return read.size() == 1; }));
    source.read({{box(after.path(), "after", Series::syrup_pan)}});
    EXPECT_EQ(source.file().ports.at(0).name, "after");
    before.send("t=103.5\n"); // nobody listens any more
    ASSERT_TRUE(after.send("\nt=103.6\n"));
    ASSERT_TRUE(waitFor([&] { return read.size() == 2; }));
    source.read({});
    after.send("t=103.7\n");
    QCoreApplication::processEvents();
    EXPECT_EQ(read, (std::vector<std::string>{"before", "after"}));
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
