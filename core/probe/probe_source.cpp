#include "core/probe/probe_source.h"

#include "core/probe/line_port.h"
#include "core/probe/modbus_port.h"

#include <QMetaMethod>

namespace panside {
namespace {

constexpr int refreshMs = 500;

HeardLine keep(const ProbeLine& line) {
    HeardLine heard{withoutControls(line.text), line.refusal, line.encoding};
    std::size_t column = 0;
    for (const Field& field : line.fields) {
        ++column;
        auto is = line.encoding == Encoding::columns ? std::to_string(column) : std::string{field.name};
        heard.parts.push_back({std::move(is), std::string{field.text}, field.number});
    }
    return heard;
}

} // namespace

ProbeSource::ProbeSource(ProbeFile file, Clock now, PortFinder finder, QObject* parent)
    : QObject{parent}, file_{std::move(file)}, now_{std::move(now)}, finder_{std::move(finder)}, refresh_{
                                                                                                     new QTimer{this}} {
    connect(refresh_, &QTimer::timeout, this, [this] {
        for (std::size_t i = 0; i < ports_.size(); ++i)
            emit status(i, ports_[i]->status());
    });
}

ProbeSource::~ProbeSource() = default;

void ProbeSource::start() {
    if (!ports_.empty() || file_.ports.empty())
        return;
    for (std::size_t i = 0; i < file_.ports.size(); ++i)
        build(i);
    for (auto* port : ports_)
        port->start();
    refresh_->start(refreshMs);
}

void ProbeSource::read(const ProbeFile& file) {
    refresh_->stop();
    qDeleteAll(ports_);
    ports_.clear();
    file_ = file;
    start();
}

void ProbeSource::build(std::size_t index) {
    SerialPort::Wiring wiring{.now = now_,
                              .deliver = [this](const Fact& one) { emit fact(one); },
                              .changed = [this, index] { emit status(index, ports_[index]->status()); },
                              .heard = {}};
    const auto& rule = file_.ports[index];
    if (rule.protocol == Protocol::modbusRtu) {
        ports_.push_back(new ModbusPort{rule, std::move(wiring), finder_, this});
        return;
    }
    wiring.heard = [this, index](const ProbeLine& line) {
        static const auto signal = QMetaMethod::fromSignal(&ProbeSource::heard);
        if (isSignalConnected(signal)) // nobody looks at raw lines but the set-up screen
            emit heard(index, keep(line));
    };
    ports_.push_back(new LinePort{rule, std::move(wiring), finder_, this});
}

} // namespace panside
