#pragma once
// The probe file in the making: which port, which field is which reading, in which unit. Pure: the screen shows it and
// turns its choices, tests drive it without one.
#include "core/probe/port_list.h"
#include "core/probe/probe_file.h"
#include "core/probe/probe_source.h"
#include "ui/look/units.h"

#include <QString>
#include <optional>
#include <vector>

namespace panside {

// One field that arrives, and what a person said of it.
struct ProbeFieldRow {
    std::string is;
    QString shown; // as it last arrived
    QString reads; // the reading it is, or a dash
    QString unit;
    QString value; // what the console makes of it, or why it makes nothing
    bool operator==(const ProbeFieldRow&) const = default;
};

class ProbeSetup {
public:
    explicit ProbeSetup(ProbeFile file = {}) : file_{std::move(file)} {}

    const ProbeFile& file() const { return file_; }
    // The port that is shown; none while the file has none.
    std::optional<std::size_t> shown() const { return shown_; }
    const PortRule* rule() const { return shown_ ? &file_.ports[*shown_] : nullptr; }
    // Shows the port of this device, new in the file if it was not yet there.
    void choose(const PortInfo& info);
    void show(std::size_t port);
    // Takes the shown port out of the file.
    void forget();

    // Each turns a choice to its next; true when the file changed.
    bool turnBaud();
    bool turnEncoding();
    bool turnChecksum();
    bool turnReading(std::size_t field);
    bool turnUnit(std::size_t field);

    void heard(std::size_t port, const HeardLine& line);
    void status(std::size_t port, const PortStatus& status);
    // The last lines that came, the newest last.
    const std::vector<QString>& lines() const { return lines_; }
    const std::optional<PortStatus>& status() const { return status_; }
    std::vector<ProbeFieldRow> rows(Units units) const;

private:
    FieldRule* ruleFor(const std::string& is);
    const FieldRule* ruleFor(const std::string& is) const;
    QString valueOf(std::size_t field, Units units) const;

    ProbeFile file_;
    std::optional<std::size_t> shown_;
    std::vector<HeardLine::Part> parts_; // of the newest good line
    std::vector<QString> lines_;
    std::optional<PortStatus> status_;
};

} // namespace panside
