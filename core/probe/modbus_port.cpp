#include "core/probe/modbus_port.h"

#include <QModbusReply>
#include <QModbusRtuSerialClient>
#include <QVariant>

namespace panside {
namespace {

constexpr int patience = 3;     // time-outs on end before a slave is asked less often,
constexpr int restRounds = 5;   // only each so many rounds, so that a dead one does not slow down others on its line
constexpr int thinkingMs = 300; // what slaves need to answer, beside the time on the line; common practice, no source

// Twice the time that the longest request and answer need on the line, and the slave's own.
int timeoutMs(const PortRule& rule, const std::vector<RegisterRead>& requests) {
    int most = 1;
    for (const auto& request : requests)
        most = std::max(most, request.count);
    const double bytes = 8 + 5 + 2 * most, bitsEach = 11;
    return thinkingMs + static_cast<int>(2e3 * bytes * bitsEach / rule.baud);
}

std::map<int, int> questionsOf(const std::vector<RegisterRead>& requests) {
    std::map<int, int> questions;
    for (const auto& request : requests)
        ++questions[request.slave];
    return questions;
}

} // namespace

ModbusPort::ModbusPort(const PortRule& rule, Wiring wiring, PortFinder finder, QObject* parent)
    : SerialPort{rule, std::move(wiring), std::move(finder), parent}, requests_{requestsFor(rule.fields)},
      slaves_{questionsOf(requests_).size()}, every_{this}, polled_(rule.fields.size()),
      seen_(rule.fields.size()), late_{std::chrono::milliseconds{timeoutMs(rule, requests_)}, questionsOf(requests_)} {
    clock_.start();
    every_.setTimerType(Qt::PreciseTimer);
    connect(&every_, &QTimer::timeout, this, &ModbusPort::poll);
}

ModbusPort::~ModbusPort() {
    if (client_ && client_->device())
        client_->device()->disconnect(this);
    // A client that goes finishes its replies; by then it must not be ours any more.
    delete client_.release();
}

QSerialPort::SerialPortError ModbusPort::open(const QString& path, QString& words) {
    client_ = std::make_unique<QModbusRtuSerialClient>();
    client_->setConnectionParameter(QModbusDevice::SerialPortNameParameter, path);
    client_->setConnectionParameter(QModbusDevice::SerialBaudRateParameter, rule().baud);
    client_->setConnectionParameter(QModbusDevice::SerialDataBitsParameter, static_cast<int>(QSerialPort::Data8));
    QSerialPort settings;
    setUp(settings, rule());
    client_->setConnectionParameter(QModbusDevice::SerialParityParameter, static_cast<int>(settings.parity()));
    client_->setConnectionParameter(QModbusDevice::SerialStopBitsParameter, static_cast<int>(settings.stopBits()));
    client_->setTimeout(timeoutMs(rule(), requests_));
    client_->setNumberOfRetries(0); // the next round is the retry
    auto* port = qobject_cast<QSerialPort*>(client_->device());
    auto error = QSerialPort::NoError;
    const auto noting = connect(port, &QSerialPort::errorOccurred, this, [&](QSerialPort::SerialPortError which) {
        if (error == QSerialPort::NoError)
            error = which;
    });
    const bool opened = client_->connectDevice();
    QObject::disconnect(noting);
    if (!opened) {
        words = client_->errorString();
        return error == QSerialPort::NoError ? QSerialPort::UnknownError : error;
    }
    connect(port, &QSerialPort::errorOccurred, this, [this](QSerialPort::SerialPortError which) {
        if (which != QSerialPort::NoError && which != QSerialPort::TimeoutError)
            lost();
    });
    connect(port, &QSerialPort::readyRead, this, [this] {
        if (!waiting_)
            late_.heardUnasked(moment());
    });
    polling_ = exceptionsOnly_ = waiting_ = false;
    silentRounds_.clear();
    late_.forget();
    every_.start(std::chrono::milliseconds{static_cast<int>(rule().every * 1e3)});
    QMetaObject::invokeMethod(this, &ModbusPort::poll, Qt::QueuedConnection);
    return QSerialPort::NoError;
}

void ModbusPort::close() {
    every_.stop();
    polling_ = false;
    if (!client_)
        return;
    if (client_->device())
        client_->device()->disconnect(this);
    client_->disconnect(this);
    client_.release()->deleteLater(); // it may be in the middle of one of its own signals
}

const QSerialPort* ModbusPort::device() const {
    return client_ ? qobject_cast<const QSerialPort*>(client_->device()) : nullptr;
}

void ModbusPort::poll() {
    if (!client_)
        return;
    if (polling_) {
        ++counts_.skipped;
        return;
    }
    polling_ = true;
    next_ = 0;
    ++round_;
    polled_.assign(polled_.size(), Polled{});
    ask();
}

void ModbusPort::ask() {
    if (!client_)
        return;
    const auto rests = [&](const RegisterRead& read) {
        return slaves_ > 1 && silentRounds_[read.slave] >= patience && round_ % restRounds != 0;
    };
    const auto mayAsk = [&](const RegisterRead& read) {
        if (rests(read))
            return false;
        if (late_.mayAsk(read.slave, next_, moment()))
            return true;
        blame(read, PollFault::noAnswer);
        return false;
    };
    while (next_ < requests_.size() && !mayAsk(requests_[next_]))
        ++next_;
    if (next_ == requests_.size()) {
        polling_ = false;
        mapWhatIsComplete(true);
        return;
    }
    const auto question = next_++;
    const auto& read = requests_[question];
    const auto kind = read.function == 3 ? QModbusDataUnit::HoldingRegisters : QModbusDataUnit::InputRegisters;
    client_->setTimeout(static_cast<int>(late_.patience(read.slave).count()));
    auto* reply =
        client_->sendReadRequest(QModbusDataUnit{kind, read.first, static_cast<quint16>(read.count)}, read.slave);
    if (!reply) { // the client is shutting down
        polling_ = false;
        return;
    }
    waiting_ = true;
    late_.asked(read.slave, question, moment());
    // A client that was closed meanwhile is no longer ours, nor are its replies.
    connect(reply, &QModbusReply::finished, this, [this, reply, &read, client = client_.get()] {
        reply->deleteLater();
        if (client != client_.get())
            return;
        waiting_ = false;
        answered(reply, read);
        ask();
    });
}

void ModbusPort::answered(QModbusReply* reply, const RegisterRead& read) {
    if (reply->error() != QModbusDevice::NoError) {
        failed(reply, read);
        return;
    }
    const auto registers = reply->result().values();
    heardSomething();
    silentRounds_[read.slave] = 0;
    if (registers.size() != read.count) { // of another question
        late_.timedOut(read.slave, moment());
        ++counts_.garbled;
        counts_.lastFault = say("slave %1: answer of another length", {std::to_string(read.slave)});
        blame(read, PollFault::garbled);
        return;
    }
    late_.answered(read.slave, moment());
    ++counts_.answered;
    exceptionsOnly_ = false;
    heardWell();
    fill(read, registers);
    mapWhatIsComplete(false);
}

void ModbusPort::failed(QModbusReply* reply, const RegisterRead& read) {
    const auto tell = [&](Sentence what) {
        counts_.lastFault =
            sayWith(say("slave %1, function %2, register %3: %4",
                        {std::to_string(read.slave), std::to_string(read.function), std::to_string(read.first)}),
                    {std::move(what)});
    };
    switch (reply->error()) {
    case QModbusDevice::TimeoutError:
        late_.timedOut(read.slave, moment());
        ++counts_.timedOut;
        ++silentRounds_[read.slave];
        tell(told(PollFault::noAnswer, 0));
        blame(read, PollFault::noAnswer);
        break;
    case QModbusDevice::ProtocolError: {
        heardSomething();
        late_.answered(read.slave, moment());
        silentRounds_[read.slave] = 0;
        exceptionsOnly_ = true;
        const int code = reply->rawResult().exceptionCode();
        ++counts_.exceptions[code];
        tell(told(PollFault::exception, code));
        blame(read, PollFault::exception, code);
        break;
    }
    default:
        late_.timedOut(read.slave, moment());
        ++counts_.garbled;
        tell(asWritten(reply->errorString().toStdString()));
        blame(read, PollFault::garbled);
    }
}

void ModbusPort::fill(const RegisterRead& read, const QList<quint16>& registers) {
    const std::span<const std::uint16_t> words{registers.constData(), static_cast<std::size_t>(registers.size())};
    for (const auto i : read.rules) {
        const auto& place = *rule().fields[i].place;
        polled_[i] = {.filled = true, .mapped = false, .number = numberAt(place, read, words)};
        const auto own = words.subspan(static_cast<std::size_t>(place.address - read.first),
                                       static_cast<std::size_t>(registersIn(place.type)));
        seen_[i] = {{own.begin(), own.end()}, polled_[i].number};
    }
}

void ModbusPort::blame(const RegisterRead& read, PollFault fault, int exception) {
    for (const auto i : read.rules)
        seen_[i] = {{}, std::nullopt, fault, exception};
}

// A field is mapped as soon as it and the field of its junction are there; at the round's end, the rest is without.
void ModbusPort::mapWhatIsComplete(bool roundIsOver) {
    const auto at = wiring().now();
    for (std::size_t i = 0; i < polled_.size(); ++i) {
        auto& mine = polled_[i];
        const auto junction = mapping().junctionOf(i);
        const bool ready = mine.filled && (!junction || polled_[*junction].filled);
        if (!rule().fields[i].reads || mine.mapped || !(ready || roundIsOver))
            continue;
        mine.mapped = true;
        if (mine.filled)
            record(mapping().outcome(i, mine.number, junction ? polled_[*junction].number : std::nullopt), at);
        else
            record(FieldOutcome{i, std::nullopt, NoReading::noAnswer}, at);
    }
}

PortState ModbusPort::judge(double) const {
    if (counts_.answered > 0 && secondsSinceGood() < std::max(silence, 3 * rule().every))
        return PortState::reading;
    if (exceptionsOnly_)
        return PortState::refused;
    return counts_.timedOut + counts_.garbled > 0 ? PortState::noAnswer : PortState::listening;
}

void ModbusPort::describe(PortStatus& status) const {
    status.polls = counts_;
    for (std::size_t i = 0; i < seen_.size(); ++i) {
        status.fields[i].registers = seen_[i].registers;
        status.fields[i].number = seen_[i].number;
        status.fields[i].fault = seen_[i].fault;
        status.fields[i].exception = seen_[i].exception;
    }
}

} // namespace panside
