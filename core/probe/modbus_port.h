#pragma once
// A serial port with Modbus RTU slaves on it, polled without ever waiting: Qt's own client frames, checks and times the
// requests from the event loop, so that neither the screen nor another port stands still while a slave is silent. A
// library that blocks would need a thread for each port.
#include "core/probe/late_answers.h"
#include "core/probe/modbus_map.h"
#include "core/probe/serial_port.h"

#include <memory>

class QModbusReply;
class QModbusRtuSerialClient;

namespace panside {

class ModbusPort : public SerialPort {
    Q_OBJECT
public:
    ModbusPort(const PortRule& rule, Wiring wiring, PortFinder finder = PortFinder{}, QObject* parent = nullptr);
    ~ModbusPort() override;

protected:
    QSerialPort::SerialPortError open(const QString& path, QString& words) override;
    void close() override;
    const QSerialPort* device() const override;
    PortState judge(double silentFor) const override;
    void describe(PortStatus& status) const override;

private:
    LateAnswers::Moment moment() const { return LateAnswers::Moment{clock_.elapsed()}; }
    void poll(); // a new round, unless one is under way
    void ask();  // the round's next request, or its end
    void answered(QModbusReply* reply, const RegisterRead& read);
    void failed(QModbusReply* reply, const RegisterRead& read);
    void fill(const RegisterRead& read, const QList<quint16>& registers);
    void mapWhatIsComplete(bool roundIsOver);

    // What a field's registers held when they were last asked for, whether it reads something or not.
    struct Seen {
        std::vector<std::uint16_t> registers;
        std::optional<double> number;
        PollFault fault = PollFault::none;
        int exception = 0;
    };
    void blame(const RegisterRead& read, PollFault fault, int exception = 0);

    struct Polled {
        bool filled = false, mapped = false;
        std::optional<double> number;
    };
    std::vector<RegisterRead> requests_;
    std::size_t slaves_; // on this line
    std::unique_ptr<QModbusRtuSerialClient> client_;
    QTimer every_;
    bool polling_ = false;
    std::size_t next_ = 0; // request of this round
    std::uint64_t round_ = 0;
    std::vector<Polled> polled_;      // this round's numbers, one a field
    std::vector<Seen> seen_;          // one a field
    std::map<int, int> silentRounds_; // by slave: time-outs on end
    QElapsedTimer clock_;
    LateAnswers late_;
    bool waiting_ = false; // for an answer
    PollCounts counts_;
    bool exceptionsOnly_ = false; // what came since the last good answer
};

} // namespace panside
