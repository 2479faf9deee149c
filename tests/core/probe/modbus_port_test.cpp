#include "core/probe/modbus_port.h"

#include "pty.h"

#include <QFile>
#include <QProcess>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <random>

namespace panside {
namespace {

FieldRule field(int slave, int function, int address, RegisterType type, double scale, Series reads,
                Unit unit = Unit::degC) {
    return {.is = "",
            .place =
                RegisterPlace{.slave = slave, .function = function, .address = address, .type = type, .scale = scale},
            .reads = reads,
            .unit = unit};
}

struct Polling {
    explicit Polling(PortRule rule, PortFinder finder = PortFinder{"/nowhere"})
        : port{std::move(rule),
               {.now = [] { return Instant{}; },
                .deliver =
                    [this](const Fact& fact) {
                        const auto& reading = std::get<Reading>(fact.what);
                        ++readings;
                        celsius[reading.series] = reading.si - 273.15;
                        si[reading.series] = reading.si;
                    },
                .changed = [] {},
                .heard = {}},
               std::move(finder)} {}
    std::map<Series, double> celsius, si;
    int readings = 0;
    ModbusPort port;
};

PortRule rig(std::string device, std::vector<FieldRule> fields) {
    return {.name = "rig",
            .device = std::move(device),
            .protocol = Protocol::modbusRtu,
            .baud = 19200,
            .every = 0.1,
            .fields = std::move(fields)};
}

// Two ends of one cable, one for us and one for a slave in another program.
class ModbusPortTest : public testing::Test {
protected:
    ModbusPortTest() { needEventLoop(); }
    void SetUp() override {
        cable_.start("socat", {"pty,raw,echo=0,link=" + ours(), "pty,raw,echo=0,link=" + theirs()});
        ASSERT_TRUE(cable_.waitForStarted());
        ASSERT_TRUE(waitFor([&] { return QFile::exists(ours()) && QFile::exists(theirs()); }));
    }
    void TearDown() override {
        for (auto* process : {&slave_, &cable_}) {
            process->kill();
            process->waitForFinished();
        }
    }
    void startSlave(const QStringList& numbers) {
        slave_.start("/usr/bin/python3",
                     QStringList{PANSIDE_SOURCE "/tests/core/probe/modbus_slave.py", theirs()} + numbers);
        ASSERT_TRUE(slave_.waitForReadyRead(20000)) << slave_.readAllStandardError().toStdString();
    }
    QString ours() const { return QString::fromStdString(folder_ / "ours"); }
    QString theirs() const { return QString::fromStdString(folder_ / "theirs"); }
    std::string device() const { return folder_ / "ours"; }

    Folder folder_;
    QProcess cable_, slave_;
};

TEST_F(ModbusPortTest, ReadsEveryTypeFromASlaveOfAnotherMake) {
    startSlave({"1", "2"});
    auto little = field(1, 4, 4, RegisterType::float32, 1, Series::air);
    little.place->order = WordOrder::little;
    Polling polling{rig(device(), {field(1, 4, 0, RegisterType::int16, 0.1, Series::syrup_pan),
                                   field(1, 4, 1, RegisterType::int16, 0.1, Series::feed),
                                   field(1, 4, 2, RegisterType::float32, 1, Series::flue_pan), little,
                                   field(1, 4, 6, RegisterType::int32, 1, Series::tank_level, Unit::L),
                                   field(1, 3, 10, RegisterType::uint16, 0.1, Series::stack),
                                   field(2, 4, 8, RegisterType::int16, 1, Series::pan_level, Unit::mm)})};
    polling.port.start();
    ASSERT_TRUE(waitFor([&] { return polling.si.size() == 7; })) << sentence(polling.port.status());
    EXPECT_NEAR(polling.celsius[Series::syrup_pan], 103.4, 1e-9);
    EXPECT_NEAR(polling.celsius[Series::feed], -10.0, 1e-9);
    EXPECT_NEAR(polling.celsius[Series::flue_pan], 103.42, 1e-5);
    EXPECT_NEAR(polling.celsius[Series::air], 103.42, 1e-5);
    EXPECT_NEAR(polling.si[Series::tank_level], -0.1, 1e-12);
    EXPECT_NEAR(polling.celsius[Series::stack], 318.5, 1e-9);
    EXPECT_NEAR(polling.si[Series::pan_level], 0.002, 1e-12); // the second slave gives its own number
    const auto fields = polling.port.status().fields;
    EXPECT_EQ(fields[0].registers, std::vector<std::uint16_t>{1034}); // as it stands there, for the set-up screen
    EXPECT_NEAR(*fields[0].number, 103.4, 1e-9);
    EXPECT_EQ(fields[4].registers, (std::vector<std::uint16_t>{0xFFFF, 0xFF9C}));
    EXPECT_EQ(polling.port.status().state, PortState::reading);
}

TEST_F(ModbusPortTest, ASilentSlaveAndAnExceptionAreNamedAndTheOthersGoOn) {
    startSlave({"1"});
    Polling polling{rig(device(), {field(1, 4, 0, RegisterType::int16, 0.1, Series::syrup_pan),
                                   field(1, 4, 100, RegisterType::int16, 0.1, Series::air),
                                   field(7, 4, 0, RegisterType::int16, 0.1, Series::stack)})};
    polling.port.start();
    ASSERT_TRUE(waitFor([&] {
        const auto polls = polling.port.status().polls;
        return polling.readings >= 3 && polls.timedOut >= 1 && !polls.exceptions.empty();
    })) << sentence(polling.port.status());
    const auto status = polling.port.status();
    EXPECT_EQ(status.polls.exceptions.begin()->first, 2); // illegal data address
    EXPECT_EQ(status.fields[1].why, NoReading::noAnswer);
    EXPECT_EQ(status.fields[1].fault, PollFault::exception);
    EXPECT_EQ(status.fields[1].exception, 2);
    EXPECT_EQ(status.fields[2].fault, PollFault::noAnswer);
    EXPECT_FALSE(status.fields[2].number);
    EXPECT_EQ(polling.si.size(), 1U);
}

TEST_F(ModbusPortTest, NobodyThereIsSaidSoAndASlaveThatComesLaterIsRead) {
    Polling polling{rig(device(), {field(1, 4, 0, RegisterType::int16, 0.1, Series::syrup_pan)})};
    polling.port.start();
    ASSERT_TRUE(waitFor([&] { return polling.port.status().state == PortState::noAnswer; }));
    EXPECT_EQ(
        sentence(polling.port.status()),
        "rig: no answer (slave 1, function 4, register 0: no answer). Check address, speed, parity and the two wires.");
    startSlave({"1"});
    EXPECT_TRUE(waitFor([&] { return polling.port.status().state == PortState::reading; }));
}

// mbpoll, a client of another make, asks for the same registers: what goes over the line must be the same bytes.
TEST_F(ModbusPortTest, AsksAsAClientOfAnotherMakeDoes) {
    const auto asked = [](const std::string& path, const std::function<void()>& ask) {
        const int end = ::open(path.c_str(), O_RDWR | O_NONBLOCK | O_NOCTTY);
        ask();
        std::string bytes;
        waitFor([&] {
            char buffer[64];
            const auto n = ::read(end, buffer, sizeof buffer);
            if (n > 0)
                bytes.append(buffer, size_t(n));
            return bytes.size() >= 8;
        });
        ::close(end);
        return bytes.substr(0, 8);
    };
    QProcess other;
    const auto theirBytes = asked(theirs().toStdString(), [&] {
        other.start("mbpoll", {"-m", "rtu", "-a", "5", "-t", "3", "-0", "-r", "12", "-c", "3", "-b", "19200", "-P",
                               "none", "-1", "-o", "0.2", ours()});
    });
    other.waitForFinished();
    Polling polling{rig(device(), {field(5, 4, 12, RegisterType::int16, 1, Series::air),
                                   field(5, 4, 13, RegisterType::float32, 1, Series::feed)})};
    const auto ourBytes = asked(theirs().toStdString(), [&] { polling.port.start(); });
    EXPECT_EQ(theirBytes.size(), 8U);
    EXPECT_EQ(ourBytes, theirBytes);
}

// Modbus over Serial Line V1.02, 6.2.2: CRC-16, polynomial 0xA001, begun at 0xFFFF.
std::string framed(std::string bytes) {
    std::uint16_t crc = 0xFFFF;
    for (const char c : bytes) {
        crc = std::uint16_t(crc ^ static_cast<unsigned char>(c));
        for (int bit = 0; bit < 8; ++bit)
            crc = crc & 1 ? std::uint16_t((crc >> 1) ^ 0xA001) : std::uint16_t(crc >> 1);
    }
    return bytes + char(crc & 0xFF) + char(crc >> 8);
}

// Answers with bytes gone wrong, cut short or too long: nothing is read that was not sent whole.
TEST_F(ModbusPortTest, AGarbledAnswerIsNoReading) {
    const Pty pty;
    Polling polling{rig(pty.path(), {field(1, 4, 0, RegisterType::int16, 0.1, Series::syrup_pan)})};
    polling.port.start();
    std::mt19937 random{3};
    const std::string right = framed(std::string("\x01\x04\x02\x04\x0A", 5));
    int asked = 0;
    const auto answer = [&](const std::string& bytes) {
        ASSERT_TRUE(waitFor([&] { return !pty.received().empty(); })) << asked;
        ASSERT_TRUE(pty.send(bytes));
        ++asked;
    };
    for (int round = 0; round < 12; ++round) {
        std::string wrong = right;
        if (round % 3 == 0)
            wrong.resize(random() % right.size() + 1);
        if (round % 3 != 0 || wrong.size() == right.size())
            wrong[random() % wrong.size()] ^= char(1 << random() % 8);
        if (round % 3 == 2)
            wrong += "\x55\x55";
        answer(wrong);
    }
    EXPECT_EQ(polling.readings, 0);
    waitFor([&] { return !pty.received().empty(); });
    for (int i = 0; i < 20 && polling.readings == 0; ++i)
        answer(right);
    ASSERT_TRUE(waitFor([&] { return polling.readings > 0; }));
    EXPECT_NEAR(polling.celsius[Series::syrup_pan], 103.4, 1e-9);
}

// A slave on which every second register is another reading, and which answers each question so much later than it
// was asked, in order, as slow gateways do. What is asked for is read off the question.
class SlowSlave {
public:
    SlowSlave(const Pty& pty, std::function<int(int asked)> lateMs) : pty_{pty}, lateMs_{std::move(lateMs)} {
        clock_.start();
    }
    void work() {
        bytes_ += pty_.received();
        for (; bytes_.size() >= 8; bytes_.erase(0, 8)) {
            const int address = static_cast<unsigned char>(bytes_[3]);
            const int value = 1000 + address; // tenths: register 20 holds 102.0
            due_.push_back({clock_.elapsed() + lateMs_(asked_++),
                            framed(std::string("\x01\x04\x02", 3) + char(value >> 8) + char(value & 0xFF))});
        }
        while (!due_.empty() && clock_.elapsed() >= due_.front().first) {
            pty_.send(due_.front().second);
            due_.erase(due_.begin());
        }
    }
    int asked() const { return asked_; }

private:
    const Pty& pty_;
    std::function<int(int)> lateMs_;
    QElapsedTimer clock_;
    std::string bytes_;
    int asked_ = 0;
    std::vector<std::pair<qint64, std::string>> due_;
};

// Three readings of one slave, each with a value of its own. Never must one be read as another, however late answers
// come: always 0.4 s, now and then, or later than anybody waits.
TEST_F(ModbusPortTest, ALateAnswerIsNeverTakenForTheNextQuestions) {
    const std::vector<std::function<int(int)>> slowness{
        [](int) { return 450; },
        [](int asked) { return asked % 3 == 1 ? 450 : 0; },
        [](int asked) { return asked % 4 == 1 ? 1700 : 5; },
    };
    for (std::size_t kind = 0; kind < slowness.size(); ++kind) {
        const Pty pty;
        SlowSlave slave{pty, slowness[kind]};
        Polling polling{rig(pty.path(), {field(1, 4, 20, RegisterType::int16, 0.1, Series::syrup_pan),
                                         field(1, 4, 40, RegisterType::int16, 0.1, Series::flue_pan),
                                         field(1, 4, 60, RegisterType::int16, 0.1, Series::stack)})};
        polling.port.start();
        std::map<Series, int> right;
        int seen = 0;
        ASSERT_TRUE(waitFor([&] {
            slave.work();
            if (polling.readings == seen)
                return false;
            seen = polling.readings;
            for (const auto& [series, celsius] : polling.celsius) {
                const double expected = series == Series::syrup_pan  ? 102.0
                                        : series == Series::flue_pan ? 104.0
                                                                     : 106.0;
                EXPECT_NEAR(celsius, expected, 1e-9) << "kind " << kind << ", reading " << seen;
            }
            return (polling.celsius.size() == 3 && seen >= 9) || testing::Test::HasFailure();
        })) << kind
            << ' ' << seen << ' ' << sentence(polling.port.status());
    }
}

// A slave in a box: it hears a request for register 0 and answers with so many tenths of a degree.
std::string tenths(int value) { return framed(std::string("\x01\x04\x02", 3) + char(value >> 8) + char(value & 0xFF)); }

// Pulled out and put back a hundred times, each time as another device under another number: the box's own name finds
// it, and it is read again. In each third round the plug is pulled while an answer is on its way, and in
// each tenth the box has not booted yet and leaves the first question unanswered.
TEST_F(ModbusPortTest, ComesBackAHundredTimesUnderAnotherNumber) {
    namespace fs = std::filesystem;
    const auto byId = folder_.path() / "by-id";
    fs::create_directory(byId);
    auto pty = std::make_unique<Pty>();
    const auto plug = [&](int number) {
        const auto path = folder_ / fmt::format("ttyUSB{}", number);
        fs::create_symlink(pty->path(), path);
        fs::create_symlink(pty->path(), byId / "usb-rig");
        return path;
    };
    auto path = plug(0);
    Polling polling{rig(path, {field(1, 4, 0, RegisterType::int16, 0.1, Series::syrup_pan)}), PortFinder{byId}};
    polling.port.start();
    for (int i = 0; i < 100; ++i) {
        const int before = polling.readings;
        bool boots = i % 10 == 0;
        ASSERT_TRUE(waitFor([&] {
            if (!pty->received().empty()) {
                if (!boots)
                    pty->send(tenths(1000 + i));
                boots = false;
            }
            return polling.readings > before;
        })) << i
            << ' ' << sentence(polling.port.status());
        EXPECT_NEAR(polling.celsius[Series::syrup_pan], 100 + i / 10.0, 1e-9);
        if (i % 3 == 0) {
            ASSERT_TRUE(waitFor([&] { return !pty->received().empty(); })) << i;
            pty->send(tenths(5000).substr(0, 4));
        }
        auto next = std::make_unique<Pty>(); // before the other goes, so that the system gives it another name
        fs::remove(path);
        fs::remove(byId / "usb-rig");
        pty.reset();
        ASSERT_TRUE(waitFor([&] { return polling.port.status().state == PortState::lost; })) << i;
        pty = std::move(next);
        path = plug(i + 1);
    }
    EXPECT_EQ(polling.port.status().returns, 99U);
    EXPECT_LT(polling.celsius[Series::syrup_pan], 110) << "the half answer was never read";
}

} // namespace
} // namespace panside
