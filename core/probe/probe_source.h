#pragma once
// All ports of a probe file, read at once: facts as they arrive, and how each port is doing. Lives in one thread with
// an event loop; in a thread of its own its signals reach the others queued, as values. The file may be another while
// it runs.
#include "core/probe/port_list.h"
#include "core/probe/port_status.h"

#include <QObject>

class QTimer;

namespace panside {

class SerialPort;

// A line as it came, for the set-up screen, kept apart from the decoder's buffers.
struct HeardLine {
    std::string text; // what is not ASCII as a point
    Refusal refusal = Refusal::none;
    std::optional<Encoding> encoding = {};
    struct Part {
        std::string is;   // the name, or the column's number
        std::string text; // as it stood there
        std::optional<double> number;
    };
    std::vector<Part> parts = {};
};

class ProbeSource : public QObject {
    Q_OBJECT
public:
    using Clock = std::function<Instant()>;
    // `now` is asked from the thread that this lives in.
    ProbeSource(ProbeFile file, Clock now, PortFinder finder = PortFinder{}, QObject* parent = nullptr);
    explicit ProbeSource(Clock now) : ProbeSource{{}, std::move(now)} {}
    ~ProbeSource() override;

    const ProbeFile& file() const { return file_; }

public slots:
    // Opens the ports; in the thread that this lives in.
    void start();
    // Lets go of its ports and opens those of this file.
    void read(const panside::ProbeFile& file);

signals:
    void fact(const panside::Fact& fact);
    // When a port's state changes, at once; while it reads, twice a second.
    void status(std::size_t port, const panside::PortStatus& status);
    void heard(std::size_t port, const panside::HeardLine& line);

private:
    void build(std::size_t index);
    ProbeFile file_;
    Clock now_;
    PortFinder finder_;
    std::vector<SerialPort*> ports_; // children
    QTimer* refresh_;
};

} // namespace panside
