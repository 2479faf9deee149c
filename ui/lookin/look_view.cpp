#include "ui/lookin/look_view.h"

#include "core/boil/loads.h"
#include "ui/sound/tone.h"
#include "ui/sound/voice.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("LookIn", text); }

QByteArray line(const QJsonObject& object) { return QJsonDocument{object}.toJson(QJsonDocument::Compact); }

QString nameOf(Tone tone) {
    switch (tone) {
    case Tone::high:
        return QStringLiteral("high");
    case Tone::medium:
        return QStringLiteral("medium");
    case Tone::low:
        return QStringLiteral("low");
    case Tone::calm:
        break;
    }
    return QStringLiteral("calm");
}

QJsonObject cardIn(const CardView& card) {
    QJsonArray chief;
    for (const Piece& piece : card.chief)
        chief << QJsonArray{piece.text, piece.small};
    const QString below = !card.doubt.isEmpty() ? card.doubt : !card.reason.isEmpty() ? card.reason : card.beside;
    return {{"title", card.title},           {"chief", chief},
            {"order", card.order},           {"beside", below},
            {"under", card.under},           {"figure", card.figure},
            {"tone", nameOf(card.tone)},     {"due", card.due},
            {"insistence", card.insistence}, {"quiet", !card.doubt.isEmpty() || !card.reason.isEmpty()}};
}

// The sound of the alarm that nobody has seen, as the console makes it.
QJsonValue callIn(const Picture& picture) {
    const AlarmPicture* alarm = Voice::urgent(picture);
    if (!alarm)
        return {};
    const AlarmTone& tone = alarmTone(alarm->priority);
    QJsonArray pitches;
    for (const double pitch : tone.pitches)
        pitches << pitch;
    return QJsonObject{{"tone", nameOf(toneOf(alarm->priority))},
                       {"pitches", pitches},
                       {"pulse", tone.pulse},
                       {"rest", tone.rest},
                       {"every", tone.every}};
}

QString tankLine(const LookShown& shown) {
    const Picture& picture = shown.picture;
    if (!picture.fuel.tank)
        return tr("Sap tank: not read");
    const QString holds = figure(*picture.fuel.tank, shown.units).text();
    return picture.sapLeft ? tr("Sap tank: %1, for %2").arg(holds, spanText(*picture.sapLeft))
                           : tr("Sap tank: %1").arg(holds);
}

QJsonObject words() {
    return {
        {"touch", tr("Touch here once: then this phone can call you")},
        {"calls", tr("This phone calls while this page is open")},
        {"mute", tr("Mute this phone")},
        {"gone", tr("No word from the console. Go and look at the pan.")},
        {"since", tr("last heard %1 ago")},
        {"awake", tr("This phone may switch its screen off: set it to stay on.")},
        {"guard", tr("A look in, not a guard: a phone that is locked or in a pocket cannot call. Somebody stays with a "
                     "lit fire.")},
        {"look", tr("light or dark")},
        {"chart", tr("Rise above boiling water, %1")},
    };
}

double unitsOf(TemperatureDifference step, Units units) {
    return units == Units::us ? step.fahrenheit() : step.kelvin();
}

qint64 secondOf(Instant at) { return std::chrono::duration_cast<std::chrono::seconds>(at.time_since_epoch()).count(); }

double hundredths(double value) { return std::round(value * 100) / 100; }

QJsonValue maybe(const std::optional<TemperatureDifference>& step, Units units) {
    return step ? QJsonValue{hundredths(unitsOf(*step, units))} : QJsonValue{};
}

constexpr qint64 past = 3 * 3600, future = 3600; // seconds

// [second, least, greatest, gap before]: a peak is not lost between two columns.
QJsonArray curveIn(const Thinned& rise, qint64 from, Units units) {
    QJsonArray curve;
    const auto step = std::chrono::duration_cast<std::chrono::seconds>(lookColumn).count();
    qint64 bucket = -1;
    double least = 0, greatest = 0;
    bool gap = false;
    const auto flush = [&] {
        if (bucket >= 0)
            curve << QJsonArray{bucket * step, hundredths(least), hundredths(greatest), gap ? 1 : 0};
        gap = false;
    };
    for (const auto& column : rise.columns()) {
        const auto at = std::chrono::duration_cast<std::chrono::seconds>(rise.column() * column.index).count();
        if (at < from || column.trust == Trust::gone)
            continue;
        const double low = unitsOf(TemperatureDifference::kelvin(column.least), units);
        const double high = unitsOf(TemperatureDifference::kelvin(column.greatest), units);
        if (at / step != bucket) {
            flush();
            bucket = at / step;
            least = low;
            greatest = high;
        }
        least = std::min(least, low);
        greatest = std::max(greatest, high);
        gap = gap || column.gapBefore;
    }
    flush();
    return curve;
}

QJsonArray hoursIn(qint64 from, qint64 until, const WallClock& clock) {
    QJsonArray hours;
    constexpr qint64 half = 1800;
    for (qint64 at = (from / half + 1) * half; at < until; at += half)
        hours << QJsonArray{at, clock.hourAndMinute(Instant{std::chrono::seconds{at}})};
    return hours;
}

} // namespace

QByteArray lookPicture(const LookShown& shown, const WallClock& clock, bool rehearsal) {
    QJsonArray cards;
    for (const CardView& card : shown.cards)
        cards << cardIn(card);
    const SentenceView& said = shown.sentence;
    const bool due = said.state == SentenceView::State::due;
    return line({{"at", clock.hourAndMinute(shown.picture.at)},
                 {"second", secondOf(shown.picture.at)},
                 {"language", QLocale{}.name().left(2)},
                 {"rehearsal", rehearsal ? tr("rehearsal") : QString{}},
                 {"said", said.wrong},
                 {"steps", said.first()},
                 {"next", said.next},
                 {"others", said.others},
                 {"tone", due ? QStringLiteral("due") : nameOf(said.tone)},
                 {"flashing", said.flashing},
                 {"cards", cards},
                 {"tank", tankLine(shown)},
                 {"lit", shown.picture.litAt.has_value() && !shown.picture.endedAt},
                 {"call", callIn(shown.picture)},
                 {"words", words()}});
}

QByteArray lookChart(const LookShown& shown, const ShiftTrace& trace) {
    const Picture& picture = shown.picture;
    const qint64 now = secondOf(picture.at), from = now - past;
    QJsonArray draws, loads;
    for (const auto& draw : trace.draws())
        if (secondOf(draw.closed.value_or(picture.at)) >= from)
            draws << QJsonArray{secondOf(draw.opened), secondOf(draw.closed.value_or(picture.at))};
    for (const Fact& fact : trace.events())
        if (const auto* fired = std::get_if<Fired>(&fact.what);
            fired && !deniesLoad(*fired) && secondOf(fact.at) >= from)
            loads << secondOf(fact.at);
    const auto& eta = picture.drawing ? picture.closeEta : picture.drawEta;
    QJsonValue fan;
    if (eta && picture.rise && eta->p50.count() > 0)
        fan = QJsonArray{hundredths(unitsOf(*picture.rise, shown.units)), std::round(eta->p10.count()),
                         std::round(eta->p50.count()),
                         eta->p90 ? QJsonValue{std::round(eta->p90->count())} : QJsonValue{}};
    return line({{"now", now},
                 {"from", from},
                 {"until", now + future},
                 {"unit", figure(TemperatureDifference{}, shown.units).unit},
                 {"target", maybe(picture.targetRise, shown.units)},
                 {"mark", picture.targetRise ? figure(*picture.targetRise, shown.units).text() : QString{}},
                 {"legal", maybe(picture.legalRise, shown.units)},
                 {"heavy", maybe(picture.heavyRise, shown.units)},
                 {"fan", fan},
                 {"curve", curveIn(trace.rise(), from, shown.units)},
                 {"draws", draws},
                 {"loads", loads},
                 {"hours", hoursIn(from, now + future, trace.clock())}});
}

QByteArray lookPage() {
    QFile file{QStringLiteral(":/lookin/page.html")};
    file.open(QIODevice::ReadOnly);
    QByteArray page = file.readAll();
    for (const Look look : {Look::day, Look::night}) {
        const Inks& inks = inksOf(look);
        QByteArray colours;
        const std::pair<const char*, QColor> all[] = {
            {"ground", inks.ground}, {"panel", inks.panel},   {"key", inks.key},   {"word", inks.word},
            {"quiet", inks.quiet},   {"line", inks.line},     {"ink", inks.trace}, {"shade", inks.shade},
            {"high", inks.high},     {"medium", inks.medium}, {"low", inks.low},   {"over", inks.onAlarm}};
        for (const auto& [name, colour] : all)
            colours += QByteArray{"--"} + name + ':' + colour.name().toLatin1() + ';';
        page.replace(look == Look::day ? "/*DAY*/" : "/*NIGHT*/", colours);
    }
    return page;
}

} // namespace panside
