#include "core/probe/line_port.h"

namespace panside {
namespace {

// A pause that no probe makes within a line: what comes after it begins one.
constexpr double pauseBetweenLines = 1.5;
constexpr qint64 bite = 65536; // bytes taken at once, so that a flood leaves room for the other ports

} // namespace

LinePort::LinePort(const PortRule& rule, Wiring wiring, PortFinder finder, QObject* parent)
    : SerialPort{rule, std::move(wiring), std::move(finder), parent}, decoder_{LineRules{
                                                                          .encoding = rule.encoding,
                                                                          .checksumDemanded = rule.checksum,
                                                                          .leastColumns = mapping().lastColumn()}} {}

LinePort::~LinePort() {
    if (port_)
        port_->disconnect(this);
}

QSerialPort::SerialPortError LinePort::open(const QString& path, QString& words) {
    port_ = std::make_unique<QSerialPort>();
    port_->setPortName(path);
    setUp(*port_, rule());
    if (!port_->open(QIODevice::ReadOnly)) {
        words = port_->errorString();
        return port_->error();
    }
    decoder_.restart();
    began_ = goodSinceOpen_ = false;
    refusedSinceOpen_ = 0;
    connect(port_.get(), &QSerialPort::readyRead, this, &LinePort::arrived);
    connect(port_.get(), &QSerialPort::errorOccurred, this, [this](QSerialPort::SerialPortError error) {
        if (error != QSerialPort::NoError && error != QSerialPort::TimeoutError)
            lost();
    });
    return QSerialPort::NoError;
}

void LinePort::close() {
    if (!port_)
        return;
    port_->disconnect(this);
    if (port_->isOpen())
        port_->close();
    port_.release()->deleteLater(); // it may be in the middle of one of its own signals
}

void LinePort::arrived() {
    const auto at = wiring().now();
    while (port_ && port_->bytesAvailable() > 0) {
        const auto bytes = port_->read(bite);
        if (bytes.isEmpty())
            return;
        if (!began_ && secondsOpen() >= pauseBetweenLines)
            decoder_.restart(false);
        began_ = true;
        heardSomething();
        decoder_.feed({bytes.constData(), static_cast<std::size_t>(bytes.size())},
                      [&](const ProbeLine& line) { hear(line, at); });
    }
}

void LinePort::hear(const ProbeLine& line, Instant at) {
    lastLine_.assign(line.text.substr(0, 200));
    if (wiring().heard)
        wiring().heard(line);
    if (line.refusal != Refusal::none) {
        ++refusedSinceOpen_;
        return;
    }
    goodSinceOpen_ = true;
    heardWell();
    mapping().map(line, [&](const FieldOutcome& outcome) { record(outcome, at); });
}

PortState LinePort::judge(double silentFor) const {
    if (decoder_.looksLikeWrongSpeed())
        return PortState::wrongSpeed;
    if (decoder_.looksUnended())
        return PortState::unended;
    if (silentFor >= silence)
        return PortState::silent;
    if (goodSinceOpen_ && secondsSinceGood() < silence)
        return PortState::reading;
    return refusedSinceOpen_ > 1 ? PortState::refused : PortState::listening;
}

void LinePort::describe(PortStatus& status) const {
    status.encoding = decoder_.encoding();
    status.lines = decoder_.counts();
    status.lastLine = withoutControls(lastLine_);
}

} // namespace panside
