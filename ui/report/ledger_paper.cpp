#include "ui/report/ledger_paper.h"

#include "core/boil/law_rules.h"
#include "core/ledger/doubt.h"
#include "ui/words/book_words.h"
#include "ui/words/place_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QRegularExpression>
#include <map>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("LedgerPaper", text); }
QString moment(Instant at) {
    const auto ms = std::chrono::floor<std::chrono::milliseconds>(at).time_since_epoch().count();
    return QDateTime::fromMSecsSinceEpoch(ms).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}
QString brixText(Brix sugar) { return sugar.si() > 0 ? QString::number(sugar.degrees(), 'f', 1) : QString{}; }
QString volumeText(Volume volume, Units units) { return figure(volume, units).text(); }
QString heatText(const std::optional<Temperature>& heat, Units units) {
    return heat ? figure(*heat, units).text() : QString{};
}
QString lightText(const std::optional<double>& light, const std::string& word) {
    if (light)
        return QString::number(*light * 100, 'f', 1) + QStringLiteral(" %");
    return choiceWord(word);
}
// The core's names.
constexpr const char* kindWords[] = {
    QT_TR_NOOP("gathered"), QT_TR_NOOP("bought"),          QT_TR_NOOP("tank"),       QT_TR_NOOP("night"),
    QT_TR_NOOP("draw"),     QT_TR_NOOP("check"),           QT_TR_NOOP("vessel"),     QT_TR_NOOP("press"),
    QT_TR_NOOP("aid"),      QT_TR_NOOP("defoamer"),        QT_TR_NOOP("lot"),        QT_TR_NOOP("buyer"),
    QT_TR_NOOP("hole"),     QT_TR_NOOP("nothing written"), QT_TR_NOOP("hydrometer"), QT_TR_NOOP("refractometer"),
    QT_TR_NOOP("pan probe")};
// What the core says of itself in English, in the person's language; a name stays a name.
QString coreWord(std::string_view word) {
    for (const char* one : kindWords)
        if (word == one)
            return tr(one);
    return utf8(word);
}
QString count(long long number) { return QString::number(number); }

QString found(const Lot& lot) {
    QStringList words;
    if (lot.held)
        words << tr("held");
    if (lot.taint.milk)
        words << tr("milk: belongs on the label");
    if (lot.taint.lead)
        words << tr("lead over the limit");
    if (lot.taint.ropy)
        words << tr("ropy sap");
    if (!lot.taint.off.empty())
        words << choiceWord(lot.taint.off);
    return words.join(QStringLiteral(", "));
}

PaperTable lotTable(const Ledger& ledger, Units units, std::optional<std::size_t> only = {}) {
    PaperTable table{tr("Lots"),
                     {tr("lot"), tr("packed"), tr("from"), tr("size"), tr("made"), tr("broken"), tr("sold"),
                      tr("came back"), tr("destroyed"), tr("here"), tr("°Brix"), tr("grade"), tr("coolest when capped"),
                      tr("who"), tr("found")},
                     {},
                     {}};
    for (std::size_t i = 0; i < ledger.lots().size(); ++i) {
        const Lot& lot = ledger.lots()[i];
        if (only && *only != i)
            continue;
        for (const LotSize& size : lot.sizes)
            table.rows.push_back({utf8(lot.code), moment(lot.packed), utf8(ledger.vessels()[lot.vessel].name),
                                  sizeWord(size.written), count(size.made), count(size.broken), count(size.shipped),
                                  count(size.back), count(size.destroyed), count(size.here()),
                                  brixText(lot.read.value_or(lot.book)), lightText(lot.light, lot.lightClass),
                                  heatText(lot.coolest, units), utf8(lot.by), found(lot)});
    }
    return table;
}

PaperTable buyerTable(const Ledger& ledger, std::optional<std::size_t> only = {}) {
    PaperTable table{
        tr("Buyers"), {tr("buyer"), tr("lot"), tr("size"), tr("first"), tr("sold"), tr("came back")}, {}, {}};
    for (const Delivery& one : ledger.tables().deliveries)
        if (!only || *only == one.lot)
            table.rows.push_back({buyerWord(one.buyer), utf8(ledger.lots()[one.lot].code),
                                  one.sizeKnown ? sizeWord(ledger.lots()[one.lot].sizes[one.size].written) : QString{},
                                  moment(one.first), count(one.sent), count(one.back)});
    return table;
}

PaperTable bookRows(const QString& title, const std::vector<BookRow>& rows, Units units) {
    PaperTable table{title, {tr("when"), tr("of"), tr("what"), tr("result"), tr("who")}, {}, {}};
    const auto add = [&table](const BookRow& row, const QString& what, const QString& result) {
        table.rows.push_back({moment(row.at), nameKey(row.subject) == "press" ? choiceWord("press") : utf8(row.subject),
                              what, result, utf8(row.by)});
    };
    for (const BookRow& one : rows) {
        const DayRow& row = one.row;
        if (row.deed == Deed::graded)
            add(one, detailWords(row, units, true, {Key::light_class, Key::flavour, Key::off}),
                detailWords(row, units, false, {Key::sample}));
        else if (row.deed == Deed::cleaned)
            add(one, choiceWord(row.text(Key::with)), detailWords(row, units, false, {Key::rinsed, Key::checked}));
        else
            add(one, choiceWord(row.text(Key::tested_for)), detailWords(row, units, true, {}));
    }
    return table;
}

PaperTable lawTable(const Ledger& ledger) {
    const LedgerTables& tables = ledger.tables();
    PaperTable table{tr("The place and its limits"), {tr("what"), tr("limit"), tr("source")}, {}, {}};
    const PlaceLaw& law = tables.law();
    if (!tables.place)
        table.note = tr("No place was set: the federal rule of the US stands here.");
    const QString at = QStringLiteral(" (") + QString::number(law.statedAt.celsius(), 'f', 1) + QStringLiteral(" °C)");
    table.rows.push_back({tr("place"), placeName(law), QString{}});
    table.rows.push_back(
        {tr("least °Brix"), QString::number(law.least.degrees(), 'f', 1) + at, sourceText(law.density)});
    if (law.most)
        table.rows.push_back(
            {tr("most °Brix"), QString::number(law.most->degrees(), 'f', 1) + at, sourceText(law.density)});
    table.rows.push_back({tr("lot code"), ruleWords(lotRule(law).text), sourceText(lotRule(law).source)});
    for (const LawRule& rule : packingRules(law))
        table.rows.push_back({tr("packing"), ruleWords(rule.text), sourceText(rule.source)});
    if (const auto keeping = keepingRule(law))
        table.rows.push_back({tr("to keep"), ruleWords(keeping->text), sourceText(keeping->source)});
    table.rows.push_back(
        {tr("lead, ppb"), QString::number(leadLimit(law).partsPerBillion), sourceText(leadLimit(law).source)});
    return table;
}

// Glasses, prisms and probes: when they were last used, and what the last look at them found.
PaperTable instrumentTable(const LedgerTables& tables, Units units) {
    PaperTable table{tr("Instruments"),
                     {tr("instrument"), tr("last used"), tr("last checked"), tr("found")},
                     {},
                     tr("A check is a row tested of the instrument; of a probe, boiling water.")};
    for (const InstrumentRow& row : tables.instruments)
        table.rows.push_back(
            {coreWord(row.name), row.used ? moment(*row.used) : QString{},
             row.checked ? moment(*row.checked) : QString{},
             row.boiled ? tr("water boiled at %1").arg(figure(*row.boiled, units).text()) : utf8(row.found)});
    return table;
}

// Which other lots have something of the same vessels: whoever recalls one asks about them.
PaperTable sharedTable(const Ledger& ledger, const Trace& trace) {
    PaperTable table{
        tr("Other lots of the same vessels"), {tr("lot"), tr("share"), tr("made"), tr("sold"), tr("here")}, {}, {}};
    std::map<std::string, QStringList> vesselsOf;
    for (const TraceEntry& one : trace.behind) {
        if (one.kind != TraceKind::vessel)
            continue;
        const auto forward = traceOf(ledger, one.name);
        for (const TraceEntry& lot : forward ? forward->before : std::vector<TraceEntry>{})
            if (lot.kind == TraceKind::lot && lot.name != trace.of && !vesselsOf[lot.name].contains(utf8(one.name)))
                vesselsOf[lot.name] << utf8(one.name);
    }
    for (const auto& [code, vessels] : vesselsOf) {
        const Lot& lot = ledger.lots()[ledger.lotNamed(code).value()];
        long long made = 0, sold = 0, here = 0;
        for (const LotSize& size : lot.sizes) {
            made += size.made;
            sold += size.shipped - size.back;
            here += size.here();
        }
        table.rows.push_back({utf8(code), vessels.join(QStringLiteral(", ")), QString::number(made),
                              QString::number(sold), QString::number(here)});
    }
    return table;
}

PaperTable pressTable(const Ledger& ledger, Units units) {
    PaperTable table{tr("Filter runs"),
                     {tr("when"), tr("from"), tr("to"), tr("through"), tr("aid"), tr("temperature"), tr("result")},
                     {},
                     {}};
    for (const PressRow& run : ledger.tables().presses)
        table.rows.push_back({moment(run.at), utf8(run.from), utf8(run.to),
                              run.through.si() > 0 ? volumeText(run.through, units) : QString{}, utf8(run.aid),
                              heatText(run.temperature, units), choiceWord(run.result)});
    return table;
}

PaperTable vesselTable(const Ledger& ledger, Units units) {
    PaperTable table{tr("Vessels"),
                     {tr("vessel"), tr("material"), tr("lead"), tr("holds now"), tr("°Brix"), tr("sugar, kg"),
                      QStringLiteral("±"), tr("nothing written, not measured since")},
                     {},
                     {}};
    const auto kilograms = [](double kg) { return QString::number(std::max(0.0, kg), 'f', 2); };
    const auto silence = [](const std::optional<Silence>& span) {
        return span ? moment(span->from) + QStringLiteral(" – ") + moment(span->to) : QString{};
    };
    for (const Vessel& vessel : ledger.vessels())
        table.rows.push_back({utf8(vessel.name), utf8(vessel.material),
                              vessel.leadOver ? tr("lead over the limit") : choiceWord(vessel.lead),
                              vessel.volumeUntold ? QString{} : volumeText(vessel.content.volume(), units),
                              vessel.volumeUntold ? QString{} : brixText(vessel.content.brix()),
                              kilograms(vessel.content.sugar), kilograms(sugarDoubt(vessel)),
                              silence(vessel.unwritten)});
    const PansNow& pans = ledger.tables().pans;
    table.rows.push_back({tr("the pans"),
                          {},
                          {},
                          {}, // how much water boiled away nobody wrote: only their sugar is known
                          {},
                          kilograms(pans.content.sugar),
                          kilograms(sugarDoubt(pans)),
                          silence(pans.unwritten)});
    return table;
}

PaperTable defoamerTable(const Ledger& ledger) {
    PaperTable table{tr("Against foam"), {tr("when"), tr("what"), tr("found")}, {}, {}};
    for (const DefoamerRow& row : ledger.tables().defoamers)
        table.rows.push_back({moment(row.at), utf8(row.name), row.milk ? tr("milk: belongs on the label") : QString{}});
    return table;
}

PaperTable balanceTable(const Ledger& ledger) {
    const Balance20& balance = ledger.balance();
    PaperTable table{tr("Sugar of the season, kg"), {tr("what"), QStringLiteral("kg")}, {}, {}};
    const auto add = [&table](const QString& what, double kg) {
        table.rows.push_back({what, QString::number(kg, 'f', 1)});
    };
    add(tr("gathered"), balance.gathered);
    add(tr("bought"), balance.bought);
    add(tr("packed"), balance.packed);
    add(tr("sold in bulk"), balance.sold);
    for (const auto& [why, kg] : balance.lost)
        add(tr("lost: %1").arg(causeWord(why)), kg);
    add(tr("in the vessels"), balance.inVessels);
    if (balance.nowhere > 0)
        add(tr("drawn or bought with no vessel named"), balance.nowhere);
    add(tr("in the pans"), balance.inPans);
    table.rows.push_back({tr("does not close"), QString::number(balance.doesNotClose, 'f', 1) + QStringLiteral(" ± ") +
                                                    QString::number(balance.doesNotCloseSd, 'f', 1)});
    return table;
}

QStringList cautions() {
    return {tr("This is advice: the inspector decides. No scale here is legal for trade."),
            tr("A gap in the book stays a gap: what nobody wrote is shown as missing.")};
}

} // namespace

LedgerPaper lotsOnPaper(const Ledger& ledger, Units units) {
    return {tr("Lots"), {lotTable(ledger, units), buyerTable(ledger)}, cautions()};
}

LedgerPaper bookOnPaper(const Ledger& ledger, Units units) {
    LedgerPaper paper{tr("The inspector's book"), {}, cautions()};
    const LedgerTables& tables = ledger.tables();
    PaperTable bad = lotTable(ledger, units);
    bad.title = tr("Lots held, come back or destroyed");
    std::vector<QStringList> rows;
    std::size_t at = 0;
    for (const Lot& lot : ledger.lots())
        for (const LotSize& size : lot.sizes) {
            if (lot.held || size.back > 0 || size.destroyed > 0)
                rows.push_back(bad.rows[at]);
            ++at;
        }
    bad.rows = std::move(rows);
    paper.tables = {lawTable(ledger),
                    lotTable(ledger, units),
                    buyerTable(ledger),
                    std::move(bad),
                    pressTable(ledger, units),
                    bookRows(tr("Graded"), tables.graded, units),
                    bookRows(tr("Cleaned"), tables.cleaned, units),
                    bookRows(tr("Tested"), tables.tested, units),
                    instrumentTable(tables, units),
                    defoamerTable(ledger),
                    vesselTable(ledger, units),
                    balanceTable(ledger)};
    return paper;
}

LedgerPaper recallOnPaper(const Ledger& ledger, std::size_t index, Units units) {
    const Lot& lot = ledger.lots()[index];
    LedgerPaper paper{tr("Recall of lot %1").arg(utf8(lot.code)), {}, cautions()};
    PaperTable behind{tr("What it came from"), {tr("what"), tr("name"), tr("when"), tr("share of its sugar")}, {}, {}};
    const auto trace = traceOf(ledger, lot.code);
    if (trace)
        for (const TraceEntry& entry : trace->behind)
            behind.rows.push_back(
                {coreWord(nameOf(entry.kind)), entry.kind == TraceKind::hole ? coreWord(entry.name) : utf8(entry.name),
                 moment(entry.at),
                 entry.share ? QString::number(*entry.share * 100, 'g', 4) + QStringLiteral(" %") : tr("not known")});
    paper.tables = {lotTable(ledger, units, index), buyerTable(ledger, index)};
    if (trace)
        paper.tables.push_back(sharedTable(ledger, *trace));
    paper.tables.push_back(std::move(behind));
    return paper;
}

QString asPrinted(const QString& cell) {
    static const QRegularExpression number{
        QStringLiteral("^-?\\d+\\.\\d+(\\s?%| \\(-?\\d+\\.\\d+ °C\\)| ± \\d+\\.\\d+)?$")};
    return number.match(cell).hasMatch() ? QString{cell}.replace(u'.', QLocale{}.decimalPoint()) : cell;
}

std::string paperAsCsv(const LedgerPaper& paper) {
    std::string out;
    const auto field = [&out](const QString& words) {
        std::string plain = words.toStdString();
        const bool quoted = plain.find_first_of(",\"\n") != std::string::npos;
        out += quoted ? "\"" : "";
        for (const char c : plain)
            out += c == '"' ? std::string{"\"\""} : std::string{c};
        out += quoted ? "\"" : "";
    };
    const auto row = [&](const QStringList& cells) {
        for (qsizetype i = 0; i < cells.size(); ++i) {
            out += i > 0 ? "," : "";
            field(cells[i]);
        }
        out += '\n';
    };
    for (const PaperTable& table : paper.tables) {
        row({table.title});
        row(table.headings);
        for (const QStringList& cells : table.rows)
            row(cells);
        out += '\n';
    }
    return out;
}

} // namespace panside
