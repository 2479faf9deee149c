#pragma once
// One serial port that stays open as well as it can: it opens, names what is wrong, and comes back by itself within 2 s
// of the port's return, also under another USB number. What is read from it is the business of LinePort and ModbusPort.
#include "core/probe/port_list.h"
#include "core/probe/port_status.h"

#include <QElapsedTimer>
#include <QObject>
#include <QSerialPort>
#include <QTimer>

namespace panside {

class SerialPort : public QObject {
    Q_OBJECT
public:
    struct Wiring {
        std::function<Instant()> now;                // stamps what arrives
        std::function<void(const Fact&)> deliver;    // every reading, as it arrives
        std::function<void()> changed;               // the status has another state
        std::function<void(const ProbeLine&)> heard; // every line, good or refused; may be empty
    };
    SerialPort(PortRule rule, Wiring wiring, PortFinder finder, QObject* parent);

    // Opens the port now, or as soon as it is there.
    void start();
    PortStatus status() const;

protected:
    // Opens at this path: QSerialPort::NoError, or what failed and in `words` how the system says it.
    virtual QSerialPort::SerialPortError open(const QString& path, QString& words) = 0;
    virtual void close() = 0;
    // What was opened, while it is.
    virtual const QSerialPort* device() const = 0;
    // Once a second while open: the state that its traffic shows. `silentFor` in seconds since anything came.
    virtual PortState judge(double silentFor) const = 0;
    virtual void describe(PortStatus&) const {}

    void heardSomething() { sinceHeard_.restart(); }
    // A good line or answer: its readings go out.
    void heardWell();
    void record(const FieldOutcome& outcome, Instant at);
    // The port is no longer there. May be called from within its own signals.
    void lost();
    double secondsOpen() const { return static_cast<double>(sinceOpen_.elapsed()) / 1e3; }
    // Since the last good line or answer, or since the port was opened.
    double secondsSinceGood() const { return static_cast<double>(sinceGood_.elapsed()) / 1e3; }
    const Mapping& mapping() const { return mapping_; }
    const PortRule& rule() const { return mapping_.port(); }
    const Wiring& wiring() const { return wiring_; }
    static constexpr double silence = 10; // seconds after which a port counts as silent

private:
    void tryToOpen();
    void settle(PortState state, std::string words = {});
    void look();

    Mapping mapping_;
    Wiring wiring_;
    PortFinder finder_;
    PortIdentity identity_;
    PortStatus status_;
    QTimer timer_;
    QElapsedTimer sinceOpen_, sinceHeard_, sinceGood_, sinceJudged_;
    bool wasLost_ = false;
};

// Sets speed, parity and stop bits as the rule says; eight data bits, no flow control.
void setUp(QSerialPort& port, const PortRule& rule);
// The state that a failure to open means. `words` then holds the group that may open it, for noPermission.
PortState stateAfter(QSerialPort::SerialPortError error, const std::string& path, std::string& words);

} // namespace panside
