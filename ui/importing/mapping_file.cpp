#include "core/boil/vocabulary.h"
#include "core/files/text_file.h"
#include "core/probe/probe_table.h"
#include "core/probe/probe_words.h"
#include "ui/importing/table_maps.h"
#include "ui/look/local_time.h"

#include <QTimeZone>
#include <algorithm>
#include <array>

namespace panside {
namespace {

using probe_words::Word;
constexpr std::array mappingDelimiters{Word{",", ','}, Word{";", ';'}, Word{"|", '|'}, Word{"tab", '\t'}};
constexpr std::array mappingDecimals{Word{".", false}, Word{",", true}};
constexpr std::array mappingTimes{Word{"year-first", TimeForm::yearFirst}, Word{"month-first", TimeForm::monthFirst},
                                  Word{"day-first", TimeForm::dayFirst}, Word{"unix-seconds", TimeForm::unixSeconds},
                                  Word{"unix-milliseconds", TimeForm::unixMilliseconds}};

class MappingReader {
public:
    MappingReader(const toml::table& table, const std::string& beginning, std::vector<ProbeFault>& faults)
        : root_{table, faults}, beginning_{beginning}, faults_{faults} {}

    ForeignMap read() {
        map_.delimiter = root_.word("delimiter", mappingDelimiters).value_or(',');
        map_.decimalComma = root_.word("decimal", mappingDecimals).value_or(false);
        map_.heading = root_.whole("heading", 0, 1000).value_or(1);
        map_.form = root_.word("times", mappingTimes).value_or(TimeForm::yearFirst);
        heading_ = sampleOf(beginning_, map_.delimiter, map_.heading).heading;
        map_.time = columnAt(root_, "time").value_or(0);
        if (root_.has("date"))
            map_.date = columnAt(root_, "date");
        readZone();
        map_.probe = root_.text("probe").value_or("");
        // A remembered map has | between its parts.
        if (root_.has("probe") && (!probe_words::isName(map_.probe) || map_.probe.find('|') != std::string::npos))
            root_.fault(ProbeSlip::notAllowed, "probe", say("a short name without ; | and quotes, and not \"hand\""));
        for (const auto* column : root_.tables("column"))
            readColumn(*column);
        if (!root_.has("column"))
            root_.missing("column", say("a [[column]] for each reading, with is, reads and unit"));
        root_.finish("delimiter, decimal, heading, times, time, date, zone, probe, column");
        return map_;
    }

private:
    // By its name in the heading, or by its number from 1.
    std::optional<int> columnAt(ProbeTable& table, std::string_view key) {
        if (!table.has(key)) {
            table.missing(key, say("a column's name in the heading, or its number from 1"));
            return std::nullopt;
        }
        const auto said = table.textOrNumber(key);
        if (!said)
            return std::nullopt;
        const auto count = std::ranges::count(heading_, *said);
        if (count == 1)
            return static_cast<int>(std::ranges::find(heading_, *said) - heading_.begin());
        const auto number = numberIn(*said);
        if (count == 0 && number && *number >= 1 && *number <= static_cast<double>(heading_.size()) &&
            *number == static_cast<int>(*number))
            return static_cast<int>(*number) - 1;
        if (count > 1) {
            table.fault(ProbeSlip::twice, key, say("its number from 1: the heading has the name twice"));
            return std::nullopt;
        }
        std::vector<std::string> names;
        for (const std::string& name : heading_)
            names.push_back('"' + name + '"');
        table.fault(ProbeSlip::notAllowed, key, sayOneOf(std::move(names), "%1, as in the table, or a number from 1"));
        return std::nullopt;
    }

    void readZone() {
        map_.zone = root_.text("zone").value_or(QTimeZone::systemTimeZoneId().toStdString());
        if (!zoneNamed(QString::fromStdString(map_.zone)))
            root_.fault(ProbeSlip::notAllowed, "zone", say("a zone's name as in \"America/New_York\""));
    }

    static void wanted(ProbeTable& table, std::string_view key, std::vector<std::string> names) {
        Sentence one = sayOneOf(std::move(names));
        table.has(key) ? table.fault(ProbeSlip::notAllowed, key, std::move(one)) : table.missing(key, std::move(one));
    }
    static std::optional<Series> seriesIn(ProbeTable& table) {
        std::optional<Series> series;
        if (const auto reads = table.text("reads"))
            series = seriesNamed(*reads);
        std::vector<std::string> names;
        for (const auto& row : allReadings())
            names.push_back('"' + std::string{row.name} + '"');
        if (!series)
            wanted(table, "reads", std::move(names));
        return series;
    }
    static std::optional<Unit> unitIn(ProbeTable& table, Series series) {
        const auto given = table.text("unit");
        std::vector<std::string> names;
        for (int i = 1; i < unitCount; ++i) {
            if (!takesUnit(series, static_cast<Unit>(i)))
                continue;
            names.push_back('"' + std::string{nameOf(static_cast<Unit>(i))} + '"');
            if (given == nameOf(static_cast<Unit>(i)))
                return static_cast<Unit>(i);
        }
        wanted(table, "unit", std::move(names));
        return std::nullopt;
    }

    void readColumn(const toml::table& toml) {
        ProbeTable table{toml, faults_};
        const auto column = columnAt(table, "is");
        const auto series = seriesIn(table);
        if (!series)
            return table.finish("is, reads, unit");
        const auto unit = unitIn(table, *series);
        table.finish("is, reads, unit");
        if (!column || !unit)
            return;
        const auto same = [&](const ForeignColumn& other) { return other.series == *series; };
        if (std::ranges::any_of(map_.columns, same))
            table.fault(ProbeSlip::twice, "reads", say("another reading: one column is to read each"));
        map_.columns.push_back({*column, *series, *unit});
    }

    ProbeTable root_;
    const std::string& beginning_;
    std::vector<ProbeFault>& faults_;
    std::vector<std::string> heading_;
    ForeignMap map_;
};

} // namespace

ForeignMap mapIn(std::string_view mappingFile, const std::string& place, const std::string& beginning) {
    std::vector<ProbeFault> faults;
    ForeignMap map;
    try {
        const auto toml = toml::parse(mappingFile);
        map = MappingReader{toml, beginning, faults}.read();
    } catch (const toml::parse_error& error) {
        const auto& at = error.source().begin;
        faults.push_back({ProbeSlip::syntax, at.line, at.column, "", std::string{error.description()}});
    }
    if (faults.empty())
        return map;
    std::string said;
    for (const ProbeFault& fault : faults)
        said += (said.empty() ? "" : "\n") + sentence(fault, place);
    throw FileFault{FileTrouble::named, said};
}

} // namespace panside
