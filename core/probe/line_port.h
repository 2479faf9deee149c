#pragma once
// A serial port on which a probe sends lines of text.
#include "core/probe/serial_port.h"

#include <memory>

namespace panside {

class LinePort : public SerialPort {
    Q_OBJECT
public:
    LinePort(const PortRule& rule, Wiring wiring, PortFinder finder = PortFinder{}, QObject* parent = nullptr);
    ~LinePort() override;

protected:
    QSerialPort::SerialPortError open(const QString& path, QString& words) override;
    void close() override;
    const QSerialPort* device() const override { return port_.get(); }
    PortState judge(double silentFor) const override;
    void describe(PortStatus& status) const override;

private:
    void arrived();
    void hear(const ProbeLine& line, Instant at);

    std::unique_ptr<QSerialPort> port_;
    LineDecoder decoder_;
    std::string lastLine_;
    bool began_ = false; // bytes have come since the port was opened
    bool goodSinceOpen_ = false;
    int refusedSinceOpen_ = 0;
};

} // namespace panside
