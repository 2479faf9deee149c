// Rows about Modbus slaves: three registers of one slave, each with a number of its own, and what the slave answers.
#include "core/probe/modbus_port.h"
#include "tests/battery/ears.h"

#include <fmt/format.h>

namespace battery {
namespace {

using namespace panside;

// Modbus over Serial Line V1.02, 6.2.2: CRC-16, polynomial 0xA001, begun at 0xFFFF.
std::string framed(std::string bytes) {
    std::uint16_t crc = 0xFFFF;
    for (const char c : bytes) {
        crc = static_cast<std::uint16_t>(crc ^ static_cast<unsigned char>(c));
        for (int bit = 0; bit < 8; ++bit)
            crc = static_cast<std::uint16_t>(crc & 1 ? (crc >> 1) ^ 0xA001 : crc >> 1);
    }
    return bytes + static_cast<char>(crc & 0xFF) + static_cast<char>(crc >> 8);
}
std::string bytesOf(std::initializer_list<int> values) {
    std::string bytes;
    for (const int value : values)
        bytes += static_cast<char>(value);
    return bytes;
}

// Tenths of a degree: register 20 holds 102.0.
int valueAt(int address) { return 1000 + address; }
std::string answerTo(int address) { return framed(bytesOf({1, 4, 2, valueAt(address) >> 8, valueAt(address) & 0xFF})); }

PortRule rig(const std::string& device, double every) {
    PortRule rule{.name = "rig", .device = device, .protocol = Protocol::modbusRtu, .baud = 19200, .every = every};
    const std::array series{Series::syrup_pan, Series::flue_pan, Series::stack};
    for (int i = 0; i < 3; ++i)
        rule.fields.push_back({.is = "",
                               .place = RegisterPlace{.slave = 1, .function = 4, .address = 20 * (i + 1), .scale = 0.1},
                               .reads = series[static_cast<std::size_t>(i)],
                               .unit = Unit::degC});
    return rule;
}
const Truth truth{{Series::syrup_pan, {102}}, {Series::flue_pan, {104}}, {Series::stack, {106}}};

// Answers in the order it was asked, each so many milliseconds after its question; an empty answer is none.
class Slave {
public:
    struct Answer {
        int afterMs;
        std::string bytes;
    };
    using Manner = std::function<Answer(int address)>;
    explicit Slave(const Pty& pty) : pty_{pty} { clock_.start(); }
    void work(const Manner& manner) {
        heard_ += pty_.received();
        for (; heard_.size() >= 8; heard_.erase(0, 8)) {
            const Answer answer = manner(static_cast<unsigned char>(heard_[3]));
            due_.emplace_back(clock_.elapsed() + answer.afterMs, answer.bytes);
        }
        while (!due_.empty() && clock_.elapsed() >= due_.front().first) {
            if (!due_.front().second.empty())
                pty_.send(due_.front().second);
            due_.erase(due_.begin());
        }
    }

private:
    const Pty& pty_;
    QElapsedTimer clock_;
    std::string heard_;
    std::vector<std::pair<qint64, std::string>> due_;
};

Slave::Answer well(int address) { return {0, answerTo(address)}; }

// So many seconds of a slave that answers in its manner; then it answers well, and is read again.
std::string after(const Case& c, const Slave::Manner& manner, int milliseconds, int within) {
    const Pty pty;
    auto ears = Ears::at<ModbusPort>(rig(pty.path(), 0.1), truth);
    Slave slave{pty};
    if (auto wrong = resumes(c, *ears, [&] { slave.work(well); }); !wrong.empty())
        return wrong;
    goOnFor(milliseconds, [&] { slave.work(manner); });
    if (!ears->wrong().empty())
        return ears->wrong();
    return resumes(
        c, *ears, [&] { slave.work(well); }, within);
}
// What is owed from before may still come, and is waited for before another question is asked: a number that is late is
// better than another register's.
constexpr int soonAfterAnswersOwed = soon + static_cast<int>(LateAnswers::latest.count());

} // namespace

std::string slowSlave(const Case& c) {
    const int often = 1 + c.upTo(5), late = 250 + c.upTo(1800);
    return after(
        c,
        [&](int address) {
            return Slave::Answer{c.upTo(often) == 0 ? late : c.upTo(8), answerTo(address)};
        },
        5000, soonAfterAnswersOwed);
}

// Bits turned, bytes missing or too many, another slave, another function, another count, somebody else's echo.
std::string wrongSlave(const Case& c) {
    return after(
        c,
        [&](int address) {
            const std::string right = answerTo(address);
            std::string bytes = right;
            switch (c.upTo(7)) {
            case 0:
                bytes[c.random() % bytes.size()] ^= static_cast<char>(1 << c.upTo(8));
                break;
            case 1:
                bytes.resize(c.random() % bytes.size());
                break;
            case 2:
                bytes += bytesOf({c.upTo(256), c.upTo(256)});
                break;
            case 3:
                bytes = framed(bytesOf({2 + c.upTo(9), 4, 2, 19, 136}));
                break;
            case 4:
                bytes = framed(bytesOf({1, 3, 2, 19, 136}));
                break;
            case 5:
                bytes = framed(bytesOf({1, 4, 4, 19, 136, 19, 136}));
                break;
            default:
                for (char& byte : bytes)
                    byte = static_cast<char>(c.upTo(256));
            }
            return Slave::Answer{c.upTo(8), bytes};
        },
        4000, soonAfterAnswersOwed);
}

// The codes of the standard and some that are none (Modbus Application Protocol V1.1b3, 7).
std::string exceptingSlave(const Case& c) {
    return after(
        c,
        [&](int address) {
            return c.upTo(4) == 0
                       ? well(address)
                       : Slave::Answer{c.upTo(8),
                                       framed(bytesOf({1, 0x84, c.upTo(3) == 0 ? c.upTo(256) : 1 + c.upTo(11)}))};
        },
        3000, soon);
}

} // namespace battery
