#include "ui/words/fact_words.h"

#include "core/boil/loads.h"
#include "core/boil/picture.h"
#include "core/boil/vocabulary.h"
#include "ui/words/alarm_words.h"
#include "ui/words/book_words.h"
#include "ui/words/reading_words.h"
#include "ui/words/said.h"
#include "ui/words/setting_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("FactWords", text); }

// "fired" and what is known besides, with commas between.
QString withDetails(const QString& what, QStringList details) {
    details.removeAll(QString{});
    details.prepend(what);
    return details.join(QStringLiteral(", "));
}

QString alarmOf(const std::string& name) {
    const auto alarm = alarmNamed(name);
    return alarm ? alarmName(*alarm) : utf8(name);
}

QString firedWords(const Fired& fired, Units units) {
    if (deniesLoad(fired))
        return tr("no load, though the stack looked like one");
    return withDetails(
        fired.inferred ? tr("fired, noticed from the stack") : tr("fired"),
        {fired.load ? figure(fired.load->value, units).text() : QString{}, utf8(fired.wood), utf8(fired.fire)});
}

QString closedWords(const DrawClosed& closed, Units units) {
    return withDetails(tr("draw closed"),
                       {closed.volume ? figure(closed.volume->value, units).text() : QString{}, utf8(closed.to)});
}

QString checkWords(const DensityCheck& check, Units units) {
    const QString read = QLocale{}.toString(check.reading, 'f', 1) + QChar{0x00a0} + symbolOf(check.unit);
    const QString cup = check.cup ? tr("cup %1").arg(figure(check.cup->value, units).text()) : QString{};
    return withDetails(
        check.with == Instrument::hydrometer ? tr("hydrometer %1").arg(read) : tr("refractometer %1").arg(read), {cup});
}

QString sapWords(const SapIn& sap, Units units) {
    return withDetails(tr("sap in, %1").arg(figure(sap.volume.value, units).text()),
                       {sap.sugar ? figure(*sap.sugar).text() : QString{},
                        sap.temperature ? figure(sap.temperature->value, units).text() : QString{}, utf8(sap.from)});
}

QString crewWords(const Crew& crew, const std::string& by) {
    if (crew.off.empty())
        return tr("%1 comes on").arg(utf8(by));
    if (by.empty())
        return tr("%1 leaves").arg(utf8(crew.off));
    return tr("%1 comes on, %2 leaves").arg(utf8(by), utf8(crew.off));
}

QString defoamerWords(const Defoamer& defoamer) {
    if (!defoamer.drops)
        return tr("defoamer");
    if (*defoamer.drops == 1)
        return tr("defoamer, one drop");
    return QCoreApplication::translate("FactWords", "defoamer, %n drops", nullptr, qRound(*defoamer.drops));
}

} // namespace

QString readingValue(const Reading& reading, Units units) {
    const auto& row = rowOf(reading.series);
    switch (row.dimension) {
    case Dimension::temperature:
        return figure(reading.temperature(), units).text();
    case Dimension::length:
        return figure(reading.level(), units).text();
    case Dimension::volume:
        return figure(reading.volume(), units).text();
    case Dimension::volumeFlow:
        return figure(reading.flow(), units).text();
    default:
        return reading.series == Series::filter_pressure ? gaugeFigure(reading.pressure(), units).text()
                                                         : figure(reading.pressure(), units).text();
    }
}

QString factWords(const Fact& fact, Units units) {
    return std::visit(Overloaded{
                          [&](const Reading& reading) {
                              return tr("%1 %2").arg(readingName(reading.series), readingValue(reading, units));
                          },
                          [](const Lit&) { return tr("fire lit"); },
                          [&](const Fired& fired) { return firedWords(fired, units); },
                          [](const DrawOpened&) { return tr("draw opened"); },
                          [&](const DrawClosed& closed) { return closedWords(closed, units); },
                          [&](const DensityCheck& check) { return checkWords(check, units); },
                          [&](const WaterCheck& check) {
                              return tr("water boiled at %1").arg(figure(check.boiledAt.value, units).text());
                          },
                          [&](const SapIn& sap) { return sapWords(sap, units); },
                          [](const PanSwapped&) { return tr("pan swapped"); },
                          [](const Defoamer& defoamer) { return defoamerWords(defoamer); },
                          [&](const Crew& crew) { return crewWords(crew, fact.by); },
                          [](const Shutdown&) { return tr("firing stopped"); },
                          [](const ShiftEnd&) { return tr("end of shift"); },
                          [](const AlarmSeen& seen) { return tr("alarm seen: %1").arg(alarmOf(seen.name)); },
                          [](const AlarmShelved& shelved) {
                              return tr("alarm shelved for %1: %2").arg(spanText(shelved.span), alarmOf(shelved.name));
                          },
                          [](const ClockStep& step) {
                              return (step.by.count() < 0 ? tr("clock moved back by %1") : tr("clock moved on by %1"))
                                  .arg(spanText(step.by));
                          },
                          [](const Note& note) { return tr("note: %1").arg(utf8(note.text)); },
                          [](const Set& set) { return tr("%1 set").arg(settingName(set.key)); },
                          [](const Unknown& unknown) { return utf8(unknown.what); },
                          [&](const DayRow& day) { return dayRowWords(day, units); },
                      },
                      fact.what);
}

} // namespace panside
