#include "core/probe/line_port.h"

#include "pty.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <numeric>

namespace panside {
namespace {

namespace fs = std::filesystem;

PortRule panBox(std::string device) {
    return {.name = "pan box",
            .device = std::move(device),
            .fields = {{.is = "syrup", .reads = Series::syrup_pan, .unit = Unit::degC}}};
}

// A port with all it gave.
struct Listening {
    explicit Listening(PortRule rule, PortFinder finder = PortFinder{"/nowhere"})
        : port{std::move(rule),
               {.now = [] { return Instant{} + Duration{1}; },
                .deliver = [this](Fact fact) { facts.push_back(std::move(fact)); },
                .changed = [this] { ++changes; },
                .heard = {}},
               std::move(finder)} {}
    std::vector<Fact> facts;
    int changes = 0;
    LinePort port;

    double last() const { return facts.empty() ? 0 : std::get<Reading>(facts.back().what).temperature().celsius(); }
    bool is(PortState state) const { return port.status().state == state; }
};

class SerialPortTest : public testing::Test {
protected:
    SerialPortTest() { needEventLoop(); }
    Folder folder_;
    // The device's name, as the system gives it, leads to this cable.
    std::string plug(const Pty& pty, std::string_view name) const {
        const auto path = folder_ / name;
        fs::remove(path);
        fs::create_symlink(pty.path(), path);
        return path;
    }
};

TEST_F(SerialPortTest, ReadsLinesAsTheyCome) {
    const Pty pty;
    Listening listening{panBox(pty.path())};
    listening.port.start();
    ASSERT_TRUE(listening.is(PortState::listening)) << sentence(listening.port.status());
    ASSERT_TRUE(pty.send("rup=1.5\r\nsyrup=103.42\r\nsyrup=103."));
    ASSERT_TRUE(waitFor([&] { return listening.facts.size() == 1; }));
    EXPECT_DOUBLE_EQ(listening.last(), 103.42);
    EXPECT_EQ(std::get<Reading>(listening.facts[0].what).probe, "pan box");
    EXPECT_EQ(listening.facts[0].at, Instant{} + Duration{1});
    ASSERT_TRUE(pty.send("43\r\n"));
    ASSERT_TRUE(waitFor([&] { return listening.facts.size() == 2; }));
    EXPECT_DOUBLE_EQ(listening.last(), 103.43);
    const auto status = listening.port.status();
    EXPECT_EQ(status.state, PortState::reading);
    EXPECT_EQ(status.lastLine, "syrup=103.43");
    EXPECT_EQ(status.lines.good, 2U);
    EXPECT_EQ(status.lines.refused[std::size_t(Refusal::cutOff)], 1U);
    EXPECT_EQ(status.fields[0].readings, 2U);
}

TEST_F(SerialPortTest, APortThatIsNotThereIsReadAsSoonAsItIs) {
    Listening listening{panBox(folder_ / "ttyUSB0")};
    listening.port.start();
    EXPECT_EQ(sentence(listening.port.status()),
              "pan box: there is no port " + folder_ / "ttyUSB0" +
                  ". Plug the probe in, or choose another port; reading begins by itself.");
    const Pty pty;
    plug(pty, "ttyUSB0");
    EXPECT_TRUE(waitFor([&] { return listening.is(PortState::listening); }));
}

TEST_F(SerialPortTest, APortWithoutPermissionNamesTheGroupThatGivesIt) {
    const Pty pty;
    ASSERT_EQ(chmod(pty.path().c_str(), 0), 0);
    const bool root = geteuid() == 0;
    if (root) {
        ASSERT_EQ(seteuid(65534), 0); // nobody
    }
    Listening listening{panBox(pty.path())};
    listening.port.start();
    const auto status = listening.port.status();
    if (root) {
        ASSERT_EQ(seteuid(0), 0);
    }
    EXPECT_EQ(status.state, PortState::noPermission);
    EXPECT_EQ(sentence(status),
              fmt::format("pan box: you may not open {}: it belongs to the group {}. Run `sudo adduser $USER {}`, "
                          "log out and in.",
                          pty.path(), status.words, status.words));
}

// Debian's group for serial ports is dialout; a port of root's own group tells nothing, and dialout is named then too.
TEST_F(SerialPortTest, TheGroupOfARootPortIsDialout) {
    if (geteuid() != 0)
        return; // only root makes a file that belongs to root
    const auto path = folder_ / "ttyUSB0";
    fclose(fopen(path.c_str(), "w"));
    ASSERT_EQ(chmod(path.c_str(), 0), 0);
    ASSERT_EQ(chmod(folder_.path().c_str(), 0755), 0);
    ASSERT_EQ(seteuid(65534), 0);
    std::string words;
    const auto state = stateAfter(QSerialPort::PermissionError, path, words);
    ASSERT_EQ(seteuid(0), 0);
    EXPECT_EQ(state, PortState::noPermission);
    EXPECT_EQ(words, "dialout");
}

TEST_F(SerialPortTest, APortThatAnotherProgramHasIsSaidSoAndReadWhenItIsFree) {
    const Pty pty;
    Listening other{panBox(pty.path())}, listening{panBox(pty.path())};
    {
        Listening first{panBox(pty.path())};
        first.port.start();
        ASSERT_TRUE(first.is(PortState::listening));
        listening.port.start();
        EXPECT_EQ(sentence(listening.port.status()),
                  "pan box: another program has " + pty.path() + " open. Close it; reading begins by itself.");
    }
    EXPECT_TRUE(waitFor([&] { return listening.is(PortState::listening); }));
}

TEST_F(SerialPortTest, AFileIsNoSerialPort) {
    const auto path = folder_ / "notes.txt";
    fclose(fopen(path.c_str(), "w"));
    Listening listening{panBox(path)};
    listening.port.start();
    EXPECT_FALSE(listening.port.status().isOpen());
    EXPECT_THAT(sentence(listening.port.status()), testing::HasSubstr(path));
}

// The first line after the port is opened is most often half a line: that is no fault of the probe's.
TEST_F(SerialPortTest, TellsThatNoLineIsBelievedOnlyAtTheSecond) {
    const Pty pty;
    Listening listening{panBox(pty.path())};
    listening.port.start();
    const auto refused = [&] {
        const auto counts = listening.port.status().lines.refused;
        return std::accumulate(counts.begin(), counts.end(), std::uint64_t{0});
    };
    ASSERT_TRUE(pty.send("rup=1.5\r\n"));
    ASSERT_TRUE(waitFor([&] { return refused() == 1; }));
    EXPECT_FALSE(waitFor([&] { return !listening.is(PortState::listening); }, 1500)); // it is judged each second
    ASSERT_TRUE(pty.send("syrup 103,5; stack 250,2\r\n"));
    EXPECT_TRUE(waitFor([&] { return listening.is(PortState::refused); }));
}

TEST_F(SerialPortTest, NoiseIsTakenForAWrongSpeed) {
    const Pty pty;
    Listening listening{panBox(pty.path())};
    listening.port.start();
    std::string noise;
    for (int i = 0; i < 200; ++i)
        noise += char(0x80 + i % 97);
    ASSERT_TRUE(pty.send(noise));
    ASSERT_TRUE(waitFor([&] { return listening.is(PortState::wrongSpeed); }));
    EXPECT_EQ(sentence(listening.port.status()),
              "pan box: what arrives is not text. Wrong speed? Set the speed (baud) that the probe uses.");
    EXPECT_TRUE(listening.facts.empty());
}

// Pulled out and put back a hundred times, each time as another device under the same name.
TEST_F(SerialPortTest, ComesBackAHundredTimes) {
    auto pty = std::make_unique<Pty>();
    const auto path = plug(*pty, "ttyUSB0");
    Listening listening{panBox(path)};
    listening.port.start();
    for (int i = 0; i < 100; ++i) {
        ASSERT_TRUE(waitFor([&] { return listening.port.status().isOpen(); })) << i;
        // In one round the plug is pulled in the middle of a line.
        ASSERT_TRUE(pty->send(fmt::format("\nsyrup={}\nsyrup=99", 100 + i)));
        ASSERT_TRUE(waitFor([&] { return listening.last() == toSi(100 + i, Unit::degC) - 273.15; }))
            << i << ' ' << listening.last();
        auto next = std::make_unique<Pty>();
        fs::remove(path);
        pty.reset();
        ASSERT_TRUE(waitFor([&] { return listening.is(PortState::lost); })) << i;
        pty = std::move(next);
        plug(*pty, "ttyUSB0");
    }
    EXPECT_EQ(listening.facts.size(), 100U);
    EXPECT_EQ(listening.port.status().returns, 99U);
}

// It was ttyUSB0 and is ttyUSB1 now, and ttyUSB0 is another adapter: the system's name for it tells which it is.
TEST_F(SerialPortTest, IsFoundUnderAnotherNumber) {
    const auto byId = folder_.path() / "by-id";
    fs::create_directory(byId);
    auto pty = std::make_unique<Pty>();
    const auto path = plug(*pty, "ttyUSB0");
    fs::create_symlink(pty->path(), byId / "usb-pan-box");
    Listening listening{panBox(path), PortFinder{byId}};
    listening.port.start();
    ASSERT_TRUE(listening.is(PortState::listening));

    const Pty returned, stranger;
    fs::remove(byId / "usb-pan-box");
    plug(stranger, "ttyUSB0");
    fs::create_symlink(stranger.path(), byId / "usb-stack-box");
    pty.reset();
    ASSERT_TRUE(waitFor([&] { return listening.is(PortState::lost); }));
    fs::create_symlink(returned.path(), byId / "usb-pan-box");
    plug(returned, "ttyUSB1");
    ASSERT_TRUE(waitFor([&] { return listening.is(PortState::listening); }));
    EXPECT_EQ(fs::canonical(listening.port.status().at), returned.path());
    ASSERT_TRUE(returned.send("\nsyrup=104\n"));
    EXPECT_TRUE(waitFor([&] { return listening.facts.size() == 1; }));
}

// The same a hundred times, each time another number, with the stranger under the number that was ours; the box greets
// as it boots, and is cut off in its greeting in each third round.
TEST_F(SerialPortTest, IsFoundAHundredTimesUnderAnotherNumberWhileTheBoxBoots) {
    const auto byId = folder_.path() / "by-id";
    fs::create_directory(byId);
    const Pty stranger;
    auto pty = std::make_unique<Pty>();
    auto path = plug(*pty, "ttyUSB0");
    fs::create_symlink(pty->path(), byId / "usb-pan-box");
    Listening listening{panBox(path), PortFinder{byId}};
    listening.port.start();
    for (int i = 0; i < 100; ++i) {
        ASSERT_TRUE(waitFor([&] { return listening.port.status().isOpen(); })) << i;
        ASSERT_TRUE(pty->send(i % 3 == 0 ? "ok\xff\x80 pan bo" : "pan box 1.2 ready\r\n"));
        ASSERT_TRUE(pty->send(fmt::format("\nsyrup={}\nsyrup=99", 100 + i)));
        stranger.send("\nsyrup=20\n");
        ASSERT_TRUE(waitFor([&] { return listening.last() == toSi(100 + i, Unit::degC) - 273.15; }))
            << i << ' ' << listening.last();
        auto next = std::make_unique<Pty>();
        fs::remove(byId / "usb-pan-box");
        fs::remove(path);
        fs::create_symlink(stranger.path(), path); // another adapter has the number now
        pty.reset();
        ASSERT_TRUE(waitFor([&] { return listening.is(PortState::lost); })) << i;
        pty = std::move(next);
        path = plug(*pty, fmt::format("ttyUSB{}", i + 1));
        fs::create_symlink(pty->path(), byId / "usb-pan-box");
    }
    EXPECT_EQ(listening.facts.size(), 100U);
    EXPECT_EQ(listening.port.status().returns, 99U);
}

} // namespace
} // namespace panside
