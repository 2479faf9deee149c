#include "ui/probes/chain.h"

#include "core/boil/vocabulary.h"
#include "ui/probes/row_words.h"
#include "ui/words/fact_words.h"
#include "ui/words/port_words.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Chain", text); }

constexpr double silentAfter = 10; // seconds, as the alarm has it

class Chain {
public:
    Chain(const ChainEvidence& evidence, Units units) : is_{evidence}, units_{units} {}

    std::vector<ChainRow> rows() {
        for (const ReadingRow& reading : allReadings())
            addReading(reading);
        rows_.push_back({is_.journalTrouble.isEmpty() ? ChainMark::well : ChainMark::broken,
                         tr("kept on the disk"),
                         {},
                         {},
                         {},
                         is_.journalTrouble.isEmpty() ? tr("yes") : is_.journalTrouble});
        rows_.push_back(
            {is_.canBeHeard ? ChainMark::well : ChainMark::look,
             tr("loudspeaker"),
             {},
             {},
             {},
             is_.canBeHeard ? tr("there is one; hear it with H") : tr("none: alarms only show on the screen")});
        return std::move(rows_);
    }

private:
    void addReading(const ReadingRow& reading) {
        bool any = false;
        for (std::size_t p = 0; p < is_.file.ports.size(); ++p)
            for (std::size_t f = 0; f < is_.file.ports[p].fields.size(); ++f)
                if (is_.file.ports[p].fields[f].reads == reading.series) {
                    rows_.push_back(rowOfField(reading, p, f));
                    any = true;
                }
        const auto& shown = is_.picture.reading(reading.series);
        if (!any && shown && shown->byHand)
            rows_.push_back(byHand(reading, *shown));
        else if (!any && reading.series == Series::syrup_pan)
            rows_.push_back({ChainMark::broken,
                             readingName(reading.series),
                             {},
                             {},
                             {},
                             tr("no probe: point at its field, or type readings in")});
        else if (!any && reading.series == Series::pressure && !is_.picture.waterBoils)
            rows_.push_back({ChainMark::look,
                             readingName(reading.series),
                             {},
                             {},
                             {},
                             tr("none: do a water check, or type in the reported pressure")});
    }

    ChainRow byHand(const ReadingRow& reading, const ReadingPicture& shown) const {
        return {ChainMark::well, readingName(reading.series),
                tr("typed in"),  shown.si ? valueOf(reading, *shown.si) : QString{},
                ago(shown.last), shown.trust == Trust::good ? trustWord(Trust::good) : reasonWords(shown)};
    }

    ChainRow rowOfField(const ReadingRow& reading, std::size_t p, std::size_t f) const {
        const PortRule& port = is_.file.ports[p];
        const QString name = QString::fromStdString(probeNameOf(port, f));
        ChainRow row{ChainMark::broken, readingName(reading.series), name, {}, {}, {}};
        const PortStatus* status = is_.ports[p];
        if (!status || f >= status->fields.size()) {
            row.verdict = tr("the port is being opened");
            return row;
        }
        const FieldStatus& now = status->fields[f];
        if (now.lastAt)
            row.age = ago(*now.lastAt);
        if (!status->isOpen() || (!now.lastAt && now.why == NoReading::none && now.fault == PollFault::none)) {
            row.verdict = portSentence(*status);
            return row;
        }
        if (!now.last) {
            row.verdict =
                now.fault == PollFault::none ? noReadingWords(now.why) : pollFaultWords(now.fault, now.exception);
            return row;
        }
        row.value = valueOf(reading, now.last->si);
        judge(row, reading, now, name.toStdString());
        return row;
    }

    void judge(ChainRow& row, const ReadingRow& reading, const FieldStatus& now, const std::string& probe) const {
        const double silent = secondsBetween(*now.lastAt, is_.now);
        const auto& shown = is_.picture.reading(reading.series);
        const bool gives = shown && shown->probe == probe;
        if (silent >= silentAfter) {
            row.verdict = tr("stopped: silent for %1").arg(spanText(Duration{silent}));
            return;
        }
        row.mark = ChainMark::look;
        if (now.last->si < reading.lowest || now.last->si > reading.highest)
            row.verdict = tr("arrives, but cannot be true: wrong field or unit?");
        else if (gives && shown->trust != Trust::good)
            row.verdict = tr("arrives, but is %1: %2").arg(trustWord(shown->trust), reasonWords(*shown));
        else {
            row.mark = ChainMark::well;
            row.verdict = gives && shown->standsIn ? tr("arrives, good; in use for the first")
                          : gives                  ? tr("arrives, good")
                                                   : tr("arrives, good; on standby");
        }
    }

    QString ago(Instant at) const {
        return tr("%1 ago").arg(spanText(Duration{std::max(0.0, secondsBetween(at, is_.now))}));
    }
    QString valueOf(const ReadingRow& reading, double si) const {
        return readingValue({reading.series, si, reading.exported, {}}, units_);
    }

    const ChainEvidence& is_;
    Units units_;
    std::vector<ChainRow> rows_;
};

} // namespace

std::vector<ChainRow> chainRows(const ChainEvidence& evidence, Units units) { return Chain{evidence, units}.rows(); }

QString chainSentence(const std::vector<ChainRow>& rows) {
    const auto count = std::ranges::count_if(rows, [](const ChainRow& row) { return row.mark != ChainMark::well; });
    if (count == 0)
        return tr("The whole chain works, from each probe to the disk and the ear.");
    return QCoreApplication::translate("Chain", "%n to look at; the rest works.", nullptr, static_cast<int>(count));
}

} // namespace panside
