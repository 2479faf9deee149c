#include "ui/paperlog/paper_row.h"

#include "core/boil/detail.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "ui/words/fact_words.h"
#include "ui/words/fault_words.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <tuple>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Paper", text); }

// What a row can tell, how the log calls it, what its figure measures and what stands under "more".
enum class More { nothing, wood, to, cup, from, gathered, note };
struct What {
    const char* word; // the person's; several may mean the same, the first is offered
    const char* log;
    Dimension figure;
    More more;
};
constexpr std::array<What, 21> whats{{
    {QT_TR_NOOP("fire lit"), "lit", Dimension::none, More::nothing},
    {QT_TR_NOOP("fired"), "fired", Dimension::mass, More::wood},
    {QT_TR_NOOP("draw opened"), "draw_open", Dimension::none, More::nothing},
    {QT_TR_NOOP("draw closed"), "draw_close", Dimension::volume, More::to},
    {QT_TR_NOOP("drawn"), "draw_close", Dimension::volume, More::to},
    {QT_TR_NOOP("hydrometer"), "density_check", Dimension::sugar, More::cup},
    {QT_TR_NOOP("refractometer"), "density_check", Dimension::sugar, More::cup},
    {QT_TR_NOOP("water boiled"), "water_check", Dimension::temperature, More::nothing},
    {QT_TR_NOOP("sap in"), "sap_in", Dimension::volume, More::from},
    {QT_TR_NOOP("pan swapped"), "pan_swapped", Dimension::none, More::nothing},
    {QT_TR_NOOP("defoamer"), "defoamer", Dimension::none, More::nothing},
    {QT_TR_NOOP("comes on"), "crew", Dimension::none, More::nothing},
    {QT_TR_NOOP("firing stopped"), "shutdown", Dimension::none, More::nothing},
    {QT_TR_NOOP("end of shift"), "shift_end", Dimension::none, More::nothing},
    {QT_TR_NOOP("note"), "note", Dimension::none, More::note},
    {QT_TR_NOOP("gathered"), "gathered", Dimension::volume, More::gathered},
    {QT_TR_NOOP("lit"), "lit", Dimension::none, More::nothing},
    {QT_TR_NOOP("load"), "fired", Dimension::mass, More::wood},
    {QT_TR_NOOP("sap"), "sap_in", Dimension::volume, More::from},
    {QT_TR_NOOP("check"), "density_check", Dimension::sugar, More::cup},
    {QT_TR_NOOP("swapped"), "pan_swapped", Dimension::none, More::nothing},
}};
constexpr std::size_t offered = 16;

struct Meant {
    std::string log;
    Dimension figure;
    More more;
    bool refractometer = false, reading = false;
    std::optional<Series> series = {};
};

// The word, or as much of its beginning as only one kind of row has; the log's own names too.
std::optional<Meant> meantBy(const QString& typed) {
    const QString word = typed.simplified().toLower();
    if (word.isEmpty())
        return std::nullopt;
    std::vector<Meant> beginning;
    const auto look = [&](const QString& name, const Meant& meant) {
        if (name == word)
            return true;
        if (name.startsWith(word) && (beginning.empty() || beginning.back().log != meant.log))
            beginning.push_back(meant);
        return false;
    };
    for (const What& what : whats) {
        const Meant meant{what.log, what.figure, what.more, std::string_view{what.word} == "refractometer"};
        if (look(tr(what.word).toLower(), meant) || look(QString::fromLatin1(what.log), meant))
            return meant;
    }
    for (const ReadingRow& row : allReadings()) {
        const Meant meant{std::string{row.name}, row.dimension, More::nothing, false, true, row.series};
        if (look(readingName(row.series).toLower(), meant) ||
            look(QString::fromLatin1(row.name.data(), static_cast<qsizetype>(row.name.size())), meant))
            return meant;
    }
    return beginning.size() == 1 ? std::optional{beginning.front()} : std::nullopt;
}

struct Spelling {
    const char* written;
    Unit unit;
};
constexpr std::array<Spelling, 46> spellings{{
    {"f", Unit::degF},      {"°f", Unit::degF},      {"degf", Unit::degF}, {"c", Unit::degC},
    {"°c", Unit::degC},     {"degc", Unit::degC},    {"gal", Unit::gal},   {"gals", Unit::gal},
    {"gallon", Unit::gal},  {"gallons", Unit::gal},  {"g", Unit::gal},     {"l", Unit::L},
    {"litre", Unit::L},     {"litres", Unit::L},     {"liter", Unit::L},   {"liters", Unit::L},
    {"in", Unit::in},       {"inch", Unit::in},      {"inches", Unit::in}, {"\"", Unit::in},
    {"po", Unit::in},       {"mm", Unit::mm},        {"lb", Unit::lb},     {"lbs", Unit::lb},
    {"#", Unit::lb},        {"kg", Unit::kg},        {"brix", Unit::brix}, {"°brix", Unit::brix},
    {"bx", Unit::brix},     {"°bx", Unit::brix},     {"%", Unit::brix},    {"baume", Unit::baume},
    {"baumé", Unit::baume}, {"bé", Unit::baume},     {"°bé", Unit::baume}, {"inhg", Unit::inHg},
    {"kpa", Unit::kPa},     {"hpa", Unit::hPa},      {"mbar", Unit::hPa},  {"psi", Unit::psi},
    {"gal/h", Unit::galph}, {"gph", Unit::galph},    {"l/h", Unit::Lph},   {"lph", Unit::Lph},
    {"drops", Unit::none},  {"gouttes", Unit::none},
}};

QString scaleWord() { return tr("scale"); }
std::string numberText(double number) { return QString::number(number, 'g', 12).toStdString(); }

// One row on its way to the five fields of a log.
class Row {
public:
    Row(const PaperRow& typed, const PaperDay& day, std::optional<Instant> above)
        : typed_{typed}, day_{day}, above_{above} {}

    PaperRead read() {
        const auto time = paperTimeIn(typed_.time);
        if (!time)
            return wrong(paperTime, tr("“%1” is not a time. Write it as 9:40p, 940 or 21:40.").arg(typed_.time));
        const auto moment = paperMoment(*time, day_.date, day_.zone, above_);
        if (!std::holds_alternative<Instant>(moment))
            return wrong(
                paperTime,
                tr("There was no %1 that night: clocks went forward over it. Write what the clock showed after that.")
                    .arg(typed_.time));
        if (typed_.what.trimmed().isEmpty())
            return wrong(paperWhat, tr("Write beside the time what was done then."));
        const auto meant = meantBy(typed_.what);
        if (!meant)
            return wrong(paperWhat,
                         tr("“%1” is not something a log records. Choose one of those offered, or write it as a note.")
                             .arg(typed_.what));
        if (auto slip = figureInto(*meant))
            return *slip;
        if (auto slip = moreInto(*meant))
            return *slip;
        if (!typed_.who.trimmed().isEmpty() && meant->log != "note")
            appendPair(detail_, "by", typed_.who.trimmed().toStdString());
        if (meant->reading)
            appendPair(detail_, "probe", "hand");
        return made(meant->log, std::get<Instant>(moment));
    }

private:
    static PaperRead wrong(int column, const QString& words) { return {std::nullopt, column, words}; }

    std::optional<PaperRead> figureInto(const Meant& meant) {
        const QString typed = typed_.figure.trimmed();
        if (typed.isEmpty() || meant.more == More::note)
            return std::nullopt;
        const auto figure = paperFigureIn(typed);
        if (!figure)
            return wrong(paperFigure,
                         tr("“%1” is not a number. Write a number and its unit, as in 2.5 gal.").arg(typed));
        Unit unit = figure->unit;
        if (unit == Unit::none && meant.figure != Dimension::none)
            unit = meant.figure == Dimension::sugar ? Unit::brix
                   : meant.series                   ? readingUnit(*meant.series, day_.units)
                                                    : unitOf(meant.figure, day_.units);
        value_ = numberText(figure->number);
        unit_ = unit == Unit::none ? std::string{} : std::string{nameOf(unit)};
        return std::nullopt;
    }
    std::optional<PaperRead> moreInto(const Meant& meant) {
        const QString more = typed_.more.simplified();
        if (meant.log == "density_check")
            appendPair(detail_, "with", meant.refractometer ? "refractometer" : "hydrometer");
        if (meant.more == More::note) {
            const QString text = (typed_.figure.simplified() + u' ' + more).trimmed();
            detail_ = noteDetail({text.toStdString(), typed_.who.trimmed().toStdString(), {}});
            return std::nullopt;
        }
        if (more.isEmpty())
            return std::nullopt;
        switch (meant.more) {
        case More::wood:
            appendPair(detail_, "wood", more.toStdString());
            break;
        case More::to:
            appendPair(detail_, "to", more.toStdString());
            break;
        case More::from:
        case More::gathered:
            sapInto(more, meant.more == More::gathered);
            break;
        case More::cup: {
            auto cup = paperFigureIn(more);
            if (cup && cup->unit == Unit::none)
                cup->unit = unitOf(Dimension::temperature, day_.units);
            if (!cup || dimensionOf(cup->unit) != Dimension::temperature)
                return wrong(
                    paperMore,
                    tr("Beside a check goes the temperature of the cup, as in 205 F; “%1” is not one.").arg(more));
            appendPair(detail_, "temp", numberText(cup->number) + std::string{nameOf(cup->unit)});
            break;
        }
        case More::nothing:
        case More::note:
            return wrong(paperMore,
                         tr("Nothing goes here beside “%1”. Write it as a note in a row of its own.").arg(typed_.what));
        }
        return std::nullopt;
    }
    // Sugar, temperature, the scale's temperature, taps, how clear, and names, any of them, with ; between. Of what was
    // gathered the first name is the tank it went into, the second where it came from.
    void sapInto(const QString& more, bool gathered) {
        static const QRegularExpression taps{QStringLiteral("^(\\d+)\\s*(?:taps|entailles)$")};
        QStringList names;
        for (const QString& raw : more.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
            const QString part = raw.trimmed();
            if (part.isEmpty())
                continue;
            const auto figure = paperFigureIn(part);
            const bool heat = figure && dimensionOf(figure->unit) == Dimension::temperature;
            const auto tapped = taps.match(part.toLower());
            if (const auto scale = scaleIn(part))
                appendPair(detail_, "cal", numberText(scale->number) + std::string{nameOf(scale->unit)});
            else if (figure && figure->unit == Unit::brix)
                appendPair(detail_, "brix", numberText(figure->number));
            else if (heat)
                appendPair(detail_, "temp", numberText(figure->number) + std::string{nameOf(figure->unit)});
            else if (gathered && tapped.hasMatch())
                appendPair(detail_, "taps", tapped.captured(1).toStdString());
            else if (const char* clear = gathered ? clearIn(part) : nullptr)
                appendPair(detail_, "clear", clear);
            else
                names << part;
        }
        if (gathered && !names.isEmpty())
            appendPair(detail_, "to", names.takeFirst().toStdString());
        for (const QString& name : names)
            appendPair(detail_, "from", name.toStdString());
    }
    // "scale 38 F", "cal 3 C": what the sap hydrometer was made for.
    std::optional<PaperFigure> scaleIn(const QString& part) const {
        for (const QString& word : {scaleWord(), QStringLiteral("scale"), QStringLiteral("cal")})
            if (part.startsWith(word, Qt::CaseInsensitive)) {
                auto figure = paperFigureIn(part.mid(word.size()).remove(u'='));
                if (figure && figure->unit == Unit::none)
                    figure->unit = unitOf(Dimension::temperature, day_.units);
                if (figure && dimensionOf(figure->unit) == Dimension::temperature)
                    return figure;
            }
        return std::nullopt;
    }
    static const char* clearIn(const QString& part) {
        for (const char* word : {"clear", "cloudy", "ropy"})
            if (part.compare(QLatin1String(word), Qt::CaseInsensitive) == 0 ||
                part.compare(QCoreApplication::translate("BookWords", word), Qt::CaseInsensitive) == 0)
                return word;
        return nullptr;
    }
    PaperRead made(const std::string& log, Instant at) const {
        auto read = factOf(textOf(at), log, value_, unit_, detail_);
        if (const auto* fault = std::get_if<Fault>(&read)) {
            const int column = fault->field == "time"                              ? paperTime
                               : fault->field == "value" || fault->field == "unit" ? paperFigure
                               : fault->field == "by"                              ? paperWho
                                                                                   : paperMore;
            return wrong(column, faultWords(*fault));
        }
        auto& fact = std::get<Fact>(read);
        const auto millis = std::chrono::floor<std::chrono::milliseconds>(at).time_since_epoch().count();
        const QString shown =
            QLocale{}.toString(QDateTime::fromMSecsSinceEpoch(millis, day_.zone), QStringLiteral("ddd d MMM HH:mm"));
        return {fact, -1, shown + QStringLiteral(" · ") + factWords(fact, day_.units)};
    }

    const PaperRow& typed_;
    const PaperDay& day_;
    std::optional<Instant> above_;
    std::string value_, unit_, detail_;
};

// "1,200" would be read back as one and a fifth.
QString written(double number, Unit unit) {
    QLocale plain;
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    return plain.toString(number, 'g', 7) + u' ' + symbolOf(unit);
}

Instant shownThen(Instant at, const WallClock& clock) {
    return Instant{} + std::chrono::milliseconds{clock.at(at).toMSecsSinceEpoch()};
}

// What a row of paper has no room for.
void keepTheRest(Fact& fact, const Fact& old) {
    if (fact.what.index() != old.what.index())
        return;
    fact.extra = old.extra;
    std::visit(Overloaded{[&](Reading& now) { now.probe = std::get<Reading>(old.what).probe; },
                          [&](Fired& now) {
                              const auto& then = std::get<Fired>(old.what);
                              now.moisture = then.moisture;
                              now.fire = then.fire;
                          },
                          [&](DensityCheck& now) {
                              const auto& then = std::get<DensityCheck>(old.what);
                              now.drawn = then.drawn;
                              if (now.with == then.with)
                                  now.scale = then.scale;
                          },
                          [&](WaterCheck& now) { now.probe = std::get<WaterCheck>(old.what).probe; },
                          [&](SapIn& now) {
                              const auto& then = std::get<SapIn>(old.what);
                              if (then.sugar && now.sugar && now.from.empty())
                                  now.from = then.from;
                          },
                          [](auto&) {}},
               fact.what);
}

// What a fact says, as a row of the paper log, kind by kind.
struct PaperRowOf {
    PaperRow row;
    bool has = true; // false: the paper log has no such row

    void operator()(const Reading& reading) {
        row.what = readingName(reading.series);
        figure(reading.si, reading.unit);
    }
    void operator()(const Lit&) { is("lit"); }
    void operator()(const Fired& fired) {
        is("fired");
        if (fired.load)
            figure(fired.load->value.si(), fired.load->unit);
        row.more = QString::fromStdString(fired.wood);
    }
    void operator()(const DrawOpened&) { is("draw_open"); }
    void operator()(const DrawClosed& closed) {
        is("draw_close");
        if (closed.volume)
            figure(closed.volume->value.si(), closed.volume->unit);
        row.more = QString::fromStdString(closed.to);
    }
    void operator()(const DensityCheck& check) {
        is("density_check", check.with == Instrument::hydrometer ? 0 : 1);
        row.figure = written(check.reading, check.unit);
        if (check.cup)
            row.more = said(*check.cup);
    }
    void operator()(const WaterCheck& check) {
        is("water_check");
        figure(check.boiledAt.value.kelvin(), check.boiledAt.unit);
    }
    void operator()(const SapIn& sap) {
        is("sap_in");
        figure(sap.volume.value.si(), sap.volume.unit);
        QStringList more;
        if (sap.sugar)
            more << written(sap.sugar->degrees(), Unit::brix);
        if (sap.temperature)
            more << said(*sap.temperature);
        if (sap.scale)
            more << scaleWord() + u' ' + said(*sap.scale);
        if (!sap.from.empty())
            more << QString::fromStdString(sap.from);
        row.more = more.join(QStringLiteral("; "));
    }
    void operator()(const PanSwapped&) { is("pan_swapped"); }
    void operator()(const Defoamer& defoamer) {
        is("defoamer");
        if (defoamer.drops)
            row.figure = QString::number(*defoamer.drops);
    }
    void operator()(const Crew& crew) {
        is("crew");
        has = crew.off.empty();
    }
    void operator()(const Shutdown&) { is("shutdown"); }
    void operator()(const ShiftEnd&) { is("shift_end"); }
    void operator()(const Note& note) {
        is("note");
        row.more = QString::fromStdString(note.text);
    }
    void operator()(const auto&) { has = false; }

private:
    // By the log's name for it; of several words the first, or so many after it.
    void is(std::string_view log, std::ptrdiff_t after = 0) {
        const auto found = std::ranges::find(whats, log, &What::log);
        row.what = tr((found + after)->word);
    }
    void figure(double si, Unit unit) { row.figure = written(fromSi(si, unit), unit); }
    static QString said(const Said<Temperature>& at) { return written(fromSi(at.value.kelvin(), at.unit), at.unit); }
};

} // namespace

std::vector<PaperRead> readPaper(const std::vector<PaperRow>& rows, const PaperDay& day) {
    std::vector<PaperRead> reads;
    std::optional<Instant> above;
    for (const PaperRow& row : rows) {
        reads.push_back(row.isEmpty() ? PaperRead{} : Row{row, day, above}.read());
        if (reads.back().fact)
            above = reads.back().fact->at;
    }
    return reads;
}

QStringList paperWhats() {
    QStringList words;
    for (std::size_t i = 0; i < offered; ++i)
        words << tr(whats[i].word);
    for (const ReadingRow& row : allReadings())
        words << readingName(row.series);
    return words;
}

std::optional<PaperFigure> paperFigureIn(const QString& text) {
    static const QRegularExpression form{QStringLiteral("^([+-]?\\d+(?:[.,]\\d+)?)\\s*(.*)$")};
    const auto match = form.match(text.trimmed());
    if (!match.hasMatch())
        return std::nullopt;
    bool good = false;
    const double number = match.captured(1).replace(u',', u'.').toDouble(&good);
    const QString unit = match.captured(2).trimmed().toLower();
    if (!good)
        return std::nullopt;
    if (unit.isEmpty())
        return PaperFigure{number, Unit::none};
    for (const Spelling& spelling : spellings)
        if (unit == QString::fromUtf8(spelling.written))
            return PaperFigure{number, spelling.unit};
    return std::nullopt;
}

std::optional<PaperRow> paperRowOf(const Fact& fact, const WallClock& clock) {
    PaperRowOf of;
    of.row.time = clock.hourAndMinute(fact.at);
    of.row.who = QString::fromStdString(fact.by);
    std::visit(of, fact.what);
    return of.has ? std::optional{std::move(of.row)} : std::nullopt;
}

PaperRead readCorrection(const PaperRow& row, const Fact& old, const WallClock& clock, Units units) {
    using namespace std::chrono_literals;
    const auto was = paperRowOf(old, clock);
    // "near" is half a day either way, or six hours where a or p was left away.
    const auto time = paperTimeIn(row.time);
    const Instant shown = shownThen(old.at, clock), above = shown - (time && time->half ? 4h : 6h);
    const PaperDay day{clock.at(old.at).date(), QTimeZone::systemTimeZone(), units};
    PaperRead read = Row{row, day, above}.read();
    if (!read.fact || !was)
        return read;
    Fact& fact = *read.fact;
    const bool sameMoment = row.time.trimmed() == was->time;
    fact.at = sameMoment ? old.at : fact.at - (shown - old.at);
    if (std::tie(row.what, row.figure, row.more) == std::tie(was->what, was->figure, was->more)) {
        fact.what = old.what;
        fact.extra = old.extra;
    } else {
        keepTheRest(fact, old);
    }
    if (const auto* fired = std::get_if<Fired>(&old.what); fired && fired->inferred)
        if (auto* now = std::get_if<Fired>(&fact.what))
            now->inferred = false; // a person has looked at it
    return read;
}

} // namespace panside
