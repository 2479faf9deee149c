#include "ui/sap/tanks_view.h"

#include "ui/look/wall_clock.h"
#include "ui/words/book_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Tanks", text); }

QString nameOf(const Ledger& ledger, const TankPicture& tank) {
    return QString::fromStdString(ledger.vessels()[tank.vessel].name);
}

QString reasonWord(BoilReason reason) {
    switch (reason) {
    case BoilReason::onlyOne:
        return tr("the only one");
    case BoilReason::concentrate:
        return tr("concentrate before sap");
    case BoilReason::warm:
        return tr("warm before cold");
    case BoilReason::old:
        return tr("old before new");
    case BoilReason::like:
        return tr("no difference");
    case BoilReason::ropy:
        return tr("ropy: look and smell before it is boiled");
    }
    return {};
}

QString roomText(const TankPicture& tank, Units units) {
    if (!tank.room)
        return tr("size not entered");
    if (tank.room->si() < 0)
        return tr("%1 over").arg(figure(-*tank.room, units).text());
    if (tank.filling)
        return tr("full in %1").arg(leftText(tank.filling->soonest));
    return tr("%1 left").arg(figure(*tank.room, units).text());
}

QString headline(const Ledger& ledger, const TankPicture& tank, const BoilFirst& turn, std::size_t place, Units units) {
    const QString name = nameOf(ledger, tank);
    if (turn.reason == BoilReason::ropy)
        return tr("%1: ropy sap. Look and smell before any of it is boiled.").arg(name);
    if (tank.room && tank.room->si() < 0)
        return tr("%1: over its rim by the book. Dip it.").arg(name);
    if (place == 0 && turn.reason == BoilReason::like)
        return tr("No difference which is boiled first. %1: %2 at %3.")
            .arg(name, figure(tank.volume, units).text(), figure(tank.sugar).text());
    if (place == 0)
        return tr("Boil %1 first: %2. %3 at %4.")
            .arg(name, reasonWord(turn.reason), figure(tank.volume, units).text(), figure(tank.sugar).text());
    return tr("%1: %2 at %3. The oldest part came in %4 ago.")
        .arg(name, figure(tank.volume, units).text(), figure(tank.sugar).text(),
             tank.oldest ? spanText(*tank.oldest) : tr("nobody knows when"));
}

QString heatNote(const TankPicture& tank, Units units) {
    if (!tank.coldest || !tank.warmest)
        return tr("Its temperature was not entered: how warm it is is not known.");
    QString words = tr("Coldest %1, warmest %2 as entered; now %3, entered %4 ago.")
                        .arg(figure(*tank.coldest, units, 0).text(), figure(*tank.warmest, units, 0).text(),
                             figure(*tank.now, units, 0).text(), spanText(tank.toldAgo.value_or(Duration{0})));
    if (tank.atFreezing)
        words += QLatin1Char(' ') + tr("At the freezing point: ice holds little sugar, so the liquid reads sweeter. "
                                       "How much is ice cannot be told from here.");
    return words;
}

bool isNone(Duration span) { return span < Duration{1}; }

// How long it was warm, and the published limits, in the person's own degrees.
QString limitNote(const TankPicture& tank, Units units) {
    const bool us = units == Units::us;
    QString words;
    if (isNone(tank.over40F))
        words =
            us ? tr("Never over 40 °F, as far as it was entered.") : tr("Never over 4 °C, as far as it was entered.");
    else if (isNone(tank.over50F))
        words = (us ? tr("Over 40 °F for %1, never over 50 °F, as far as it was entered.")
                    : tr("Over 4 °C for %1, never over 10 °C, as far as it was entered."))
                    .arg(spanText(tank.over40F));
    else
        words = (us ? tr("Over 40 °F for %1, over 50 °F for %2, as far as it was entered.")
                    : tr("Over 4 °C for %1, over 10 °C for %2, as far as it was entered."))
                    .arg(spanText(tank.over40F), spanText(tank.over50F));
    words += QLatin1Char(' ');
    if (tank.concentrate)
        words += us ? tr("Limit for concentrate over 4 °Brix: 41 °F (Wisconsin, as quoted).")
                    : tr("Limit for concentrate over 4 °Brix: 5 °C (Wisconsin, as quoted).");
    else
        words += us ? tr("Under 40 °F bacteria grow slowly, over 50 °F fast (Ohio State University, 2020).")
                    : tr("Under 4 °C bacteria grow slowly, over 10 °C fast (Ohio State University, 2020).");
    return words + QLatin1Char(' ') + tr("Nose and eye decide.");
}

bool isUnsure(const SweetInPans& sweet) { return sweet.unknown || sweet.sugar < 2 * sweet.sd; }

// The day of the week, as people say it, or where that could be another week's its date.
QString dayText(Duration since, Instant now) {
    const QDateTime then = WallClock{}.at(now - std::chrono::round<std::chrono::microseconds>(since));
    const qint64 days = then.date().daysTo(WallClock{}.at(now).date());
    if (days == 0)
        return tr("today");
    return QLocale{}.toString(then.date(), days < 7 ? QStringLiteral("dddd") : QStringLiteral("d MMMM"));
}

} // namespace

QString sweetWords(const SweetInPans& sweet, Instant now, Units units) {
    const QString day = sweet.since ? dayText(*sweet.since, now) : tr("nobody knows when");
    return isUnsure(sweet) ? tr("The pans hold sweet since %1; the book does not know how much.").arg(day)
                           : tr("The pans hold about %1 of sugar since %2, ± %3: boil or drain them.")
                                 .arg(figure(sweet.sugar, units).text(), day, figure(sweet.sd, units).text());
}

std::vector<std::size_t> tanksShown(const Ledger& ledger, Instant now) {
    std::vector<std::size_t> shown;
    const SapPage page = sapPage(ledger, now);
    for (const BoilFirst& one : page.order)
        shown.push_back(page.tanks[one.tank].vessel);
    return shown;
}

ListView tanksView(const Ledger* ledger, Instant now, Units units) {
    ListView view;
    view.columns = {{tr("tank"), false, 0},       {tr("volume"), true, 0},
                    {tr("sugar"), true, 0},       {tr("oldest"), true, 0},
                    {tr("warmest"), true, 3},     {tr("over 50 °F"), true, 4},
                    {tr("to the rim"), false, 1}, {tr("why in this order"), false, 2}};
    if (units == Units::metric)
        view.columns[5].head = tr("over 10 °C");
    if (!ledger) {
        view.head = tr("Reading the book …");
        return view;
    }
    const SapPage page = sapPage(*ledger, now);
    if (page.tanks.empty())
        view.head = tr("There is no sap in any tank. Enter what was gathered.");
    for (std::size_t place = 0; place < page.order.size(); ++place) {
        const BoilFirst& turn = page.order[place];
        const TankPicture& tank = page.tanks[turn.tank];
        TableRow row;
        row.cells = {nameOf(*ledger, tank),
                     figure(tank.volume, units).text() +
                         (ledger->vessels()[tank.vessel].unwritten ? QStringLiteral(" ?") : QString{}),
                     figure(tank.sugar).text() + (tank.sugarAssumed ? QStringLiteral(" ?") : QString{}),
                     tank.oldest ? spanText(*tank.oldest) : QStringLiteral("—"),
                     tank.warmest ? figure(*tank.warmest, units, 0).text() : QStringLiteral("—"),
                     !tank.warmest          ? QStringLiteral("—")
                     : isNone(tank.over50F) ? tr("never")
                                            : spanText(tank.over50F),
                     roomText(tank, units),
                     reasonWord(turn.reason)};
        row.strong = place == 0 && turn.reason != BoilReason::ropy;
        view.rows.push_back(std::move(row));
        QString notes = heatNote(tank, units) + QLatin1Char('\n') + limitNote(tank, units);
        if (tank.sugarAssumed)
            notes += QLatin1Char(' ') + tr("Not all of its sugar was measured: 2 °Brix is assumed for the rest.");
        if (const auto& silence = ledger->vessels()[tank.vessel].unwritten)
            notes += QLatin1Char(' ') + unwrittenWords(*silence);
        view.said.push_back({headline(*ledger, tank, turn, place, units), notes});
    }
    if (const auto sweet = sweetInPans(*ledger, now)) {
        const bool unsure = isUnsure(*sweet);
        TableRow row;
        row.cells = {tr("the pans"),
                     QStringLiteral("—"),
                     unsure ? QStringLiteral("?") : figure(sweet->sugar, units).text(),
                     !sweet->since                  ? QStringLiteral("—")
                     : *sweet->since < Duration{90} ? tr("now")
                                                    : spanText(*sweet->since),
                     QStringLiteral("—"),
                     QStringLiteral("—"),
                     QString{},
                     tr("boil or drain them")};
        row.quiet = true;
        view.rows.push_back(std::move(row));
        view.said.push_back({sweetWords(*sweet, now, units),
                             tr("Sweet in the pans spoils in a warm spell, and freezes only to slush in a cold one. If "
                                "you drain it into numbered pails, enter the pails' names.")});
    }
    return view;
}

} // namespace panside
