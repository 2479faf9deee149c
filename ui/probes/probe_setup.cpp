#include "ui/probes/probe_setup.h"

#include "core/boil/vocabulary.h"
#include "core/probe/modbus_map.h"
#include "ui/probes/row_words.h"

#include <algorithm>
#include <array>

namespace panside {
namespace {

constexpr std::array speeds{1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200};
constexpr std::array pollings{0.25, 0.5, 1.0, 2.0, 5.0, 10.0};
constexpr std::size_t linesShown = 4, samplesKept = 30;

// The next of a row of choices, and from the last, or from one that is none of them, to the first.
template <class T, std::size_t n>
T after(const std::array<T, n>& all, const T& now) {
    const auto found = std::ranges::find(all, now);
    return found == all.end() || found + 1 == all.end() ? all.front() : *(found + 1);
}

bool servesAsJunction(const PortRule& port, const std::string& name) {
    return !name.empty() && std::ranges::any_of(port.fields, [&](const FieldRule& field) {
        const auto* other = field.junction ? std::get_if<std::string>(&*field.junction) : nullptr;
        return other && *other == name;
    });
}

} // namespace

ProbeFile ProbeSetup::fileToKeep() const {
    ProbeFile kept = file_;
    for (PortRule& port : kept.ports)
        std::erase_if(port.fields,
                      [&](const FieldRule& field) { return !field.reads && !servesAsJunction(port, field.is); });
    std::erase_if(kept.ports, [](const PortRule& port) { return port.fields.empty(); });
    return kept;
}

void ProbeSetup::choose(const PortInfo& info) {
    for (std::size_t i = 0; i < file_.ports.size(); ++i)
        if (file_.ports[i].device == info.device || file_.ports[i].device == info.best())
            return show(i);
    const std::string name = info.description.empty() ? info.device : info.description;
    PortRule rule{.name = name, .device = info.best()};
    // Readings are told apart by their port's name.
    for (int n = 2; std::ranges::any_of(file_.ports, [&](const PortRule& other) { return other.name == rule.name; });
         ++n)
        rule.name = name + " " + std::to_string(n);
    file_.ports.push_back(std::move(rule));
    show(file_.ports.size() - 1);
}

void ProbeSetup::forgetWhatCame() {
    parts_.clear();
    lines_.clear();
    samples_.clear();
}

void ProbeSetup::show(std::size_t port) {
    shown_ = port;
    forgetWhatCame();
}

void ProbeSetup::forget() {
    if (!shown_)
        return;
    file_.ports.erase(file_.ports.begin() + static_cast<std::ptrdiff_t>(*shown_));
    shown_.reset();
    statuses_.clear(); // they come again, under the numbers that the ports now have
    forgetWhatCame();
}

bool ProbeSetup::turnProtocol() {
    PortRule* port = shownRule();
    if (!port)
        return false;
    std::swap(port->fields, otherWay_[port->device]);
    const bool toModbus = port->protocol == Protocol::lines;
    *port = {.name = port->name,
             .device = port->device,
             .protocol = toModbus ? Protocol::modbusRtu : Protocol::lines,
             .baud = port->baud,
             .parity = port->parity,
             .stopBits = port->stopBits,
             .fields = std::move(port->fields)};
    statuses_.erase(*shown_);
    forgetWhatCame();
    return true;
}

bool ProbeSetup::turnBaud() {
    if (PortRule* port = shownRule())
        port->baud = after(speeds, port->baud);
    return shown_.has_value();
}

bool ProbeSetup::turnFraming() {
    using Framing = std::pair<Parity, int>;
    constexpr std::array framings{Framing{Parity::none, 1}, Framing{Parity::even, 1}, Framing{Parity::odd, 1},
                                  Framing{Parity::none, 2}};
    if (PortRule* port = shownRule())
        std::tie(port->parity, port->stopBits) = after(framings, Framing{port->parity, port->stopBits});
    return shown_.has_value();
}

bool ProbeSetup::turnEncoding() {
    using Way = std::optional<Encoding>;
    constexpr std::array ways{Way{}, Way{Encoding::columns}, Way{Encoding::pairs}, Way{Encoding::json}};
    if (PortRule* port = shownRule())
        port->encoding = after(ways, port->encoding);
    return shown_.has_value();
}

bool ProbeSetup::turnChecksum() {
    if (PortRule* port = shownRule())
        port->checksum = !port->checksum;
    return shown_.has_value();
}

bool ProbeSetup::turnEvery() {
    if (PortRule* port = shownRule())
        port->every = after(pollings, port->every);
    return shown_.has_value();
}

// The fields that arrive, then those that the file names and the line has not.
std::vector<std::string> ProbeSetup::lineFields() const {
    std::vector<std::string> names;
    for (const auto& part : parts_)
        names.push_back(part.is);
    if (rule())
        for (const FieldRule& field : rule()->fields)
            if (std::ranges::find(names, field.is) == names.end())
                names.push_back(field.is);
    return names;
}

std::size_t ProbeSetup::rowCount() const { return isModbus() ? rule()->fields.size() : lineFields().size(); }

std::optional<std::size_t> ProbeSetup::ruleIndex(std::size_t row) const {
    if (!rule() || row >= rowCount())
        return std::nullopt;
    if (isModbus())
        return row;
    const auto& fields = rule()->fields;
    const auto found = std::ranges::find(fields, lineFields()[row], &FieldRule::is);
    return found == fields.end() ? std::nullopt : std::optional{static_cast<std::size_t>(found - fields.begin())};
}

const FieldRule* ProbeSetup::ruleOf(std::size_t row) const {
    const auto index = ruleIndex(row);
    return index ? &rule()->fields[*index] : nullptr;
}

bool ProbeSetup::replaceRule(std::size_t row, const FieldRule& changed) {
    const auto index = ruleIndex(row);
    if (!index || rule()->fields[*index] == changed)
        return false;
    shownRule()->fields[*index] = changed;
    return true;
}

std::vector<UnitChoice> ProbeSetup::unitChoices(std::size_t row) const {
    const FieldRule* field = ruleOf(row);
    if (!field)
        return {};
    std::vector<UnitChoice> choices;
    for (const Unit unit : unitsFor(field->reads.value_or(Series::syrup_pan))) {
        if (unit != Unit::mV)
            choices.push_back({unit});
        else
            for (const auto wire : {Thermocouple::K, Thermocouple::J, Thermocouple::T})
                choices.push_back({unit, wire});
    }
    return choices;
}

bool ProbeSetup::setReading(std::size_t row, std::optional<Series> reads) {
    if (row >= rowCount())
        return false;
    auto& fields = shownRule()->fields;
    const auto index = ruleIndex(row);
    if (index && fields[*index].reads == reads)
        return false;
    if (!reads && !isModbus()) { // a field of text that is not used has no rule; a register keeps its place
        if (index)
            fields.erase(fields.begin() + static_cast<std::ptrdiff_t>(*index));
        return index.has_value();
    }
    if (!index)
        fields.push_back({.is = lineFields()[row]});
    FieldRule& field = index ? fields[*index] : fields.back();
    field.reads = reads;
    if (!reads)
        return true;
    // A unit that still fits stays; else the one that a probe of this reading most often sends.
    const auto units = unitsFor(*reads);
    if (std::ranges::find(units, field.unit) == units.end()) {
        field.unit = rowOf(*reads).exported;
        field.thermocouple.reset();
        field.junction.reset();
    }
    return true;
}

bool ProbeSetup::setUnit(std::size_t row, const UnitChoice& choice) {
    const auto index = ruleIndex(row);
    if (!index)
        return false;
    FieldRule& field = shownRule()->fields[*index];
    if (field.unit == choice.unit && field.thermocouple == choice.wire)
        return false;
    field.unit = choice.unit;
    field.thermocouple = choice.wire;
    if (!choice.wire)
        field.junction.reset();
    else if (!field.junction)
        field.junction = Said<Temperature>{Temperature::celsius(25), Unit::degC};
    return true;
}

bool ProbeSetup::addRegister() {
    if (!isModbus())
        return false;
    auto& fields = shownRule()->fields;
    FieldRule added{.is = {}, .place = RegisterPlace{}, .unit = Unit::degC};
    if (!fields.empty()) {
        added.place = fields.back().place;
        added.unit = dimensionOf(fields.back().unit) == Dimension::temperature ? fields.back().unit : Unit::degC;
        added.place->address =
            std::min(added.place->address + registersIn(added.place->type), 65536 - registersIn(added.place->type));
    }
    fields.push_back(std::move(added));
    return true;
}

bool ProbeSetup::removeRow(std::size_t row) {
    const auto index = ruleIndex(row);
    if (!index)
        return false;
    auto& fields = shownRule()->fields;
    fields.erase(fields.begin() + static_cast<std::ptrdiff_t>(*index));
    return true;
}

void ProbeSetup::heard(std::size_t port, const HeardLine& line) {
    if (port != shown_ || isModbus())
        return;
    lines_.push_back(QString::fromStdString(line.text));
    if (lines_.size() > linesShown)
        lines_.erase(lines_.begin());
    if (line.refusal != Refusal::none)
        return;
    parts_ = line.parts;
    for (const auto& part : parts_)
        if (part.number) {
            auto& numbers = samples_[part.is];
            numbers.push_back(*part.number);
            if (numbers.size() > samplesKept)
                numbers.erase(numbers.begin());
        }
}

void ProbeSetup::status(std::size_t port, const PortStatus& status) {
    if (port < file_.ports.size())
        statuses_.insert_or_assign(port, status);
}

const PortStatus* ProbeSetup::statusOf(std::size_t port) const {
    const auto found = statuses_.find(port);
    return found == statuses_.end() ? nullptr : &found->second;
}

std::vector<ProbeFieldRow> ProbeSetup::rows(Units units) const {
    std::vector<ProbeFieldRow> rows;
    const auto names = isModbus() ? std::vector<std::string>(rowCount()) : lineFields();
    for (std::size_t i = 0; i < names.size(); ++i) {
        const auto index = ruleIndex(i);
        const FieldRule* field = index ? &rule()->fields[*index] : nullptr;
        const FieldStatus* now =
            index && status() && *index < status()->fields.size() ? &status()->fields[*index] : nullptr;
        ProbeFieldRow row{.name = field && field->place ? registerName(*field) : QString::fromStdString(names[i]),
                          .shown = now && field->place ? registersShown(*now) : QString{},
                          .reads = readsWords(field),
                          .unit = field ? unitChoiceWords({field->unit, field->thermocouple}) : QString{},
                          .value = {}};
        if (!isModbus() && i < parts_.size())
            row.shown = QString::fromStdString(parts_[i].text);
        if (field)
            row.value = valueWords(now, units) + secondWords(file_, *shown_, *index);
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace panside
