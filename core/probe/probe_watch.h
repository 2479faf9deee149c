#pragma once
#include "core/probe/probe_source.h"

#include <QObject>
#include <functional>
#include <memory>

namespace panside {

// The ports that are being read, and how they change from one probe file to another while the console runs.
class ProbeWatch : public QObject {
    Q_OBJECT
public:
    explicit ProbeWatch(std::function<Instant()> now) : now_{std::move(now)} {}
    void read(const ProbeFile& file);
    const ProbeFile& file() const { return file_; }

signals:
    void fact(const panside::Fact& fact);
    void status(std::size_t port, const panside::PortStatus& status);
    void heard(std::size_t port, const panside::HeardLine& line);

private:
    std::function<Instant()> now_;
    ProbeFile file_;
    std::unique_ptr<ProbeSource> source_;
};

} // namespace panside
