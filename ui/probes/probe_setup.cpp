#include "ui/probes/probe_setup.h"

#include "core/boil/vocabulary.h"
#include "ui/words/fact_words.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Probes", text); }

constexpr std::array speeds{1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200};
constexpr std::size_t linesShown = 5;

// The usual unit first: what a probe of this reading most often sends.
Unit firstUnit(Series series) { return rowOf(series).exported; }

QString unitWords(const FieldRule& rule) {
    if (rule.unit == Unit::mV && rule.thermocouple)
        return symbolOf(rule.unit) +
               QStringLiteral(" (%1)").arg(QChar::fromLatin1("KJT"[static_cast<int>(*rule.thermocouple)]));
    return symbolOf(rule.unit);
}

} // namespace

void ProbeSetup::choose(const PortInfo& info) {
    for (std::size_t i = 0; i < file_.ports.size(); ++i)
        if (file_.ports[i].device == info.device || file_.ports[i].device == info.best())
            return show(i);
    const std::string name = info.description.empty() ? info.device : info.description;
    PortRule rule{.name = name, .device = info.best()};
    // Readings are told apart by their port's name.
    for (int n = 2; std::any_of(file_.ports.begin(), file_.ports.end(),
                                [&](const PortRule& other) { return other.name == rule.name; });
         ++n)
        rule.name = name + " " + std::to_string(n);
    file_.ports.push_back(std::move(rule));
    show(file_.ports.size() - 1);
}

void ProbeSetup::show(std::size_t port) {
    shown_ = port;
    parts_.clear();
    lines_.clear();
    status_.reset();
}

void ProbeSetup::forget() {
    if (!shown_)
        return;
    file_.ports.erase(file_.ports.begin() + static_cast<std::ptrdiff_t>(*shown_));
    shown_.reset();
    parts_.clear();
    lines_.clear();
    status_.reset();
}

bool ProbeSetup::turnBaud() {
    if (!shown_)
        return false;
    int& baud = file_.ports[*shown_].baud;
    const auto found = std::find(speeds.begin(), speeds.end(), baud);
    baud = found == speeds.end() || found + 1 == speeds.end() ? speeds.front() : *(found + 1);
    return true;
}

bool ProbeSetup::turnEncoding() {
    if (!shown_)
        return false;
    auto& encoding = file_.ports[*shown_].encoding;
    if (!encoding)
        encoding = Encoding::columns;
    else if (*encoding == Encoding::json)
        encoding.reset();
    else
        encoding = static_cast<Encoding>(static_cast<int>(*encoding) + 1);
    return true;
}

bool ProbeSetup::turnChecksum() {
    if (!shown_)
        return false;
    bool& checksum = file_.ports[*shown_].checksum;
    checksum = !checksum;
    return true;
}

const FieldRule* ProbeSetup::ruleFor(const std::string& is) const {
    if (!shown_)
        return nullptr;
    const auto& fields = file_.ports[*shown_].fields;
    const auto found = std::find_if(fields.begin(), fields.end(), [&](const FieldRule& rule) { return rule.is == is; });
    return found == fields.end() ? nullptr : &*found;
}

FieldRule* ProbeSetup::ruleFor(const std::string& is) {
    return const_cast<FieldRule*>(static_cast<const ProbeSetup*>(this)->ruleFor(is));
}

bool ProbeSetup::turnReading(std::size_t field) {
    if (!shown_ || field >= parts_.size())
        return false;
    auto& fields = file_.ports[*shown_].fields;
    const std::string& is = parts_[field].is;
    FieldRule* rule = ruleFor(is);
    const std::size_t next = rule && rule->reads ? static_cast<std::size_t>(*rule->reads) + 1 : 0;
    if (next == seriesCount) { // after the last reading: none
        std::erase_if(fields, [&](const FieldRule& other) { return other.is == is; });
        return true;
    }
    if (!rule) {
        fields.push_back({.is = is});
        rule = &fields.back();
    }
    const auto series = static_cast<Series>(next);
    // A unit that still fits stays: all temperatures of one probe are in the same.
    const auto units = unitsFor(series);
    if (std::find(units.begin(), units.end(), rule->unit) == units.end())
        rule->unit = firstUnit(series);
    rule->reads = series;
    return true;
}

bool ProbeSetup::turnUnit(std::size_t field) {
    if (field >= parts_.size())
        return false;
    FieldRule* rule = ruleFor(parts_[field].is);
    if (!rule || !rule->reads)
        return false;
    const auto units = unitsFor(*rule->reads);
    // A raw thermocouple goes through its types before the next unit.
    if (rule->unit == Unit::mV && rule->thermocouple && *rule->thermocouple != Thermocouple::T) {
        rule->thermocouple = static_cast<Thermocouple>(static_cast<int>(*rule->thermocouple) + 1);
        return true;
    }
    const auto found = std::find(units.begin(), units.end(), rule->unit);
    rule->unit = found == units.end() || found + 1 == units.end() ? units.front() : *(found + 1);
    const bool raw = rule->unit == Unit::mV;
    rule->thermocouple = raw ? std::optional{Thermocouple::K} : std::nullopt;
    rule->junction =
        raw ? std::optional<Junction>{Said<Temperature>{Temperature::celsius(25), Unit::degC}} : std::nullopt;
    return true;
}

void ProbeSetup::heard(std::size_t port, const HeardLine& line) {
    if (port != shown_)
        return;
    lines_.push_back(QString::fromStdString(line.text));
    if (lines_.size() > linesShown)
        lines_.erase(lines_.begin());
    if (line.refusal == Refusal::none)
        parts_ = line.parts;
}

void ProbeSetup::status(std::size_t port, const PortStatus& status) {
    if (port == shown_)
        status_ = status;
}

QString ProbeSetup::valueOf(std::size_t field, Units units) const {
    if (!status_ || field >= status_->fields.size())
        return {};
    const FieldStatus& now = status_->fields[field];
    if (now.last)
        return factWords({.at = {}, .what = *now.last}, units);
    return now.readings == 0 && now.why == NoReading::none ? QString{}
                                                           : QString::fromUtf8(noReadingText(now.why).data());
}

std::vector<ProbeFieldRow> ProbeSetup::rows(Units units) const {
    std::vector<ProbeFieldRow> rows;
    for (const HeardLine::Part& part : parts_) {
        const FieldRule* rule = ruleFor(part.is);
        ProbeFieldRow row{.is = part.is,
                          .shown = QString::fromStdString(part.text),
                          .reads = rule && rule->reads ? readingName(*rule->reads)
                                                       : tr(QT_TRANSLATE_NOOP("Probes", "not used")),
                          .unit = rule ? unitWords(*rule) : QString{},
                          .value = {}};
        if (rule)
            row.value = valueOf(static_cast<std::size_t>(rule - file_.ports[*shown_].fields.data()), units);
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace panside
