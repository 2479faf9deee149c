#pragma once
// The probe file in the making: which port, which field or register is which reading, in which unit. Pure: the screen
// shows it and makes its choices, tests drive it without one.
#include "core/probe/port_list.h"
#include "core/probe/probe_file.h"
#include "core/probe/probe_source.h"
#include "ui/look/units.h"

#include <QString>
#include <map>
#include <optional>
#include <vector>

namespace panside {

// One field or register, what came from it, and what a person said of it.
struct ProbeFieldRow {
    QString name;  // the pair's name, the column's number, the register
    QString shown; // as it last arrived
    QString reads; // the reading it is, or that it is not used
    QString unit;
    QString value; // what the console makes of it, or why it makes nothing
    bool operator==(const ProbeFieldRow&) const = default;
};

// A raw thermocouple is a choice for each type of wire.
struct UnitChoice {
    Unit unit;
    std::optional<Thermocouple> wire = {};
    bool operator==(const UnitChoice&) const = default;
};
QString unitChoiceWords(const UnitChoice& choice);

class ProbeSetup {
public:
    explicit ProbeSetup(ProbeFile file = {}) : file_{std::move(file)} {}

    const ProbeFile& file() const { return file_; }
    // The file without what says nothing yet: registers that read nothing, ports without a field.
    ProbeFile fileToKeep() const;
    // The port that is shown; none while the file has none.
    std::optional<std::size_t> shown() const { return shown_; }
    const PortRule* rule() const { return shown_ ? &file_.ports[*shown_] : nullptr; }
    // Shows the port of this device, new in the file if it was not yet there.
    void choose(const PortInfo& info);
    void show(std::size_t port);
    // The file with other rules for the same ports, as a question's yes makes it.
    void rewrite(ProbeFile file) { file_ = std::move(file); }
    // Takes the shown port out of the file.
    void forget();

    // Each turns a choice of the shown port to its next; true when the file changed.
    bool turnProtocol(); // text or Modbus; the fields of the other one come back with it
    bool turnBaud();
    bool turnFraming(); // parity and stop bits
    bool turnEncoding();
    bool turnChecksum();
    bool turnEvery();

    // What a row may be set to, and setting it; true when the file changed.
    std::vector<UnitChoice> unitChoices(std::size_t row) const;
    bool setReading(std::size_t row, std::optional<Series> reads);
    bool setUnit(std::size_t row, const UnitChoice& choice);
    bool addRegister(); // after the last one, and like it
    bool removeRow(std::size_t row);
    // The rule of a row; nullptr for a field that is not used.
    const FieldRule* ruleOf(std::size_t row) const;
    bool replaceRule(std::size_t row, const FieldRule& rule);

    void heard(std::size_t port, const HeardLine& line);
    void status(std::size_t port, const PortStatus& status);
    // The last lines that came, the newest last.
    const std::vector<QString>& lines() const { return lines_; }
    const PortStatus* status() const { return shown_ ? statusOf(*shown_) : nullptr; }
    const PortStatus* statusOf(std::size_t port) const;
    // The last numbers from a field of text of the shown port, oldest first.
    const std::map<std::string, std::vector<double>>& samples() const { return samples_; }
    std::vector<ProbeFieldRow> rows(Units units) const;
    std::size_t rowCount() const;

private:
    PortRule* shownRule() { return shown_ ? &file_.ports[*shown_] : nullptr; }
    bool isModbus() const { return rule() && rule()->protocol == Protocol::modbusRtu; }
    std::vector<std::string> lineFields() const;
    std::optional<std::size_t> ruleIndex(std::size_t row) const;
    void forgetWhatCame();

    ProbeFile file_;
    std::optional<std::size_t> shown_;
    std::map<std::size_t, PortStatus> statuses_;             // by port
    std::map<std::string, std::vector<FieldRule>> otherWay_; // by device: the fields of the protocol not in use
    std::vector<HeardLine::Part> parts_;                     // of the newest good line
    std::vector<QString> lines_;
    std::map<std::string, std::vector<double>> samples_;
};

} // namespace panside
