#include "core/probe/serial_port.h"

#include <algorithm>
#include <fcntl.h>
#include <grp.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

namespace panside {
namespace {

constexpr int lookMs = 100;  // is the port there? It is to be read again within 2 s of its return
constexpr int retryMs = 500; // it is there and does not open
constexpr int judgedMs = 1000;

// The group that the port belongs to. Debian gives serial ports to dialout.
std::string groupOf(const std::string& path) {
    struct stat about {};
    if (stat(path.c_str(), &about) != 0 || about.st_gid == 0)
        return "dialout";
    const auto* group = getgrgid(about.st_gid);
    return group ? group->gr_name : "dialout";
}

bool mayOpen(const std::string& path) { return faccessat(AT_FDCWD, path.c_str(), R_OK | W_OK, AT_EACCESS) == 0; }

// The plug was pulled. QSerialPort of Qt 6.4 says so; that of 6.8 reads nothing, again and again, and says nothing.
bool hungUp(const QSerialPort* port) {
    if (!port || !port->isOpen())
        return false;
    pollfd device{.fd = port->handle(), .events = 0, .revents = 0};
    return ::poll(&device, 1, 0) == 1;
}

} // namespace

void setUp(QSerialPort& port, const PortRule& rule) {
    port.setBaudRate(rule.baud);
    port.setParity(rule.parity == Parity::even  ? QSerialPort::EvenParity
                   : rule.parity == Parity::odd ? QSerialPort::OddParity
                                                : QSerialPort::NoParity);
    port.setStopBits(rule.stopBits == 2 ? QSerialPort::TwoStop : QSerialPort::OneStop);
}

PortState stateAfter(QSerialPort::SerialPortError error, const std::string& path, std::string& words) {
    if (error == QSerialPort::DeviceNotFoundError)
        return PortState::noSuchPort;
    if (!mayOpen(path)) {
        words = groupOf(path);
        return PortState::noPermission;
    }
    // Qt says "permission" for a lock file or an exclusive terminal of another program too.
    if (error == QSerialPort::PermissionError && mayOpen("/var/lock"))
        return PortState::taken;
    if (error == QSerialPort::UnsupportedOperationError)
        return PortState::notSerial;
    return PortState::failed;
}

SerialPort::SerialPort(PortRule rule, Wiring wiring, PortFinder finder, QObject* parent)
    : QObject{parent}, mapping_{std::move(rule)}, wiring_{std::move(wiring)}, finder_{std::move(finder)}, timer_{this} {
    status_.name = this->rule().name;
    status_.device = this->rule().device;
    status_.fields.resize(this->rule().fields.size());
    connect(&timer_, &QTimer::timeout, this, [this] { status_.isOpen() ? look() : tryToOpen(); });
}

void SerialPort::start() {
    timer_.start(lookMs);
    tryToOpen();
}

PortStatus SerialPort::status() const {
    auto status = status_;
    describe(status);
    return status;
}

void SerialPort::tryToOpen() {
    const auto path = finder_.find(rule().device, identity_);
    timer_.setInterval(path ? retryMs : lookMs);
    if (!path)
        return settle(wasLost_ ? PortState::lost : PortState::noSuchPort);
    QString said;
    const auto error = open(QString::fromStdString(*path), said);
    if (error != QSerialPort::NoError) {
        std::string words = said.toStdString();
        const auto state = stateAfter(error, *path, words);
        close();
        return settle(state, words);
    }
    // A path that says nothing of the adapter may lead to another one next time; what is known of this one is
    // remembered.
    if (const auto identity = finder_.identityOf(*path); identity.known())
        identity_ = identity;
    status_.at = *path;
    status_.returns += wasLost_ ? 1 : 0;
    wasLost_ = false;
    sinceOpen_.start();
    sinceHeard_.start();
    sinceGood_.start();
    sinceJudged_.start();
    timer_.start(lookMs);
    settle(PortState::listening);
}

void SerialPort::lost() {
    if (!status_.isOpen())
        return;
    wasLost_ = true;
    status_.at.clear();
    close();
    settle(PortState::lost);
}

void SerialPort::look() {
    if (hungUp(device()))
        return lost();
    if (!sinceJudged_.hasExpired(judgedMs))
        return;
    sinceJudged_.restart();
    settle(judge(static_cast<double>(sinceHeard_.elapsed()) / 1e3));
}

void SerialPort::heardWell() {
    status_.lastHeard = wiring_.now();
    sinceGood_.restart();
    settle(PortState::reading);
}

void SerialPort::record(const FieldOutcome& outcome, Instant at) {
    auto& field = status_.fields[outcome.rule];
    field.last = outcome.reading;
    field.why = outcome.why;
    field.number = outcome.number;
    if (!outcome.reading)
        return;
    field.lastAt = at;
    ++field.readings;
    wiring_.deliver(Fact{.at = at, .what = *outcome.reading});
}

void SerialPort::settle(PortState state, std::string words) {
    if (state == status_.state && words == status_.words)
        return;
    status_.state = state;
    status_.words = std::move(words);
    wiring_.changed();
}

} // namespace panside
