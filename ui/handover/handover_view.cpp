#include "ui/handover/handover_view.h"

#include "core/boil/repeated_draw.h"
#include "ui/look/wall_clock.h"
#include "ui/words/alarm_words.h"
#include "ui/words/fact_words.h"
#include "ui/words/reading_words.h"
#include "ui/words/said.h"
#include "ui/words/sap_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>

namespace panside {
namespace {

constexpr double checkBelongsFor = 1800; // seconds after a draw was closed

QString tr(const char* text) { return QCoreApplication::translate("Handover", text); }
QString escaped(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }
QString dash() { return QStringLiteral("–"); }

class Words {
public:
    Words(const HandoverSource& source, Units units) : from_{source}, now_{source.picture}, units_{units} {
        for (const auto* facts : {&source.before, &source.shift})
            for (const Fact& fact : *facts)
                if (const auto* step = std::get_if<ClockStep>(&fact.what))
                    clock_.moved(fact.at, step->by);
    }
    QString all() const {
        return head() + alarms() + standing() + side() + target() + barrels() + notes() + made() + caution();
    }

private:
    static QString heading(const QString& words) {
        return QStringLiteral("<h3>") + words.toHtmlEscaped() + QStringLiteral("</h3>");
    }
    static QString row(const QString& name, const QString& value) {
        return QStringLiteral("<tr><td>") + name.toHtmlEscaped() + QStringLiteral("&nbsp;&nbsp;</td><td><b>") + value +
               QStringLiteral("</b></td></tr>");
    }
    static QString table(const QString& rows) {
        return QStringLiteral("<table cellpadding=\"2\">") + rows + QStringLiteral("</table>");
    }
    QString when(Instant at) const { return QLocale{}.toString(clock_.at(at), QStringLiteral("ddd d MMMM, HH:mm")); }
    QString ago(Instant at) const { return spanText(Duration{std::max(0.0, secondsBetween(at, now_.at))}); }
    QString hourAndAgo(Instant at) const {
        if (secondsBetween(at, now_.at) < 60) // as of now
            return clock_.hourAndMinute(at);
        return tr("%1, %2 ago").arg(clock_.hourAndMinute(at), ago(at));
    }
    QString range(const Range& range) const {
        const QString late = range.p90 ? spanText(*range.p90) : tr("perhaps never");
        return tr("in %1 (%2 to %3)").arg(spanText(range.p50), spanText(range.p10), late);
    }
    QString head() const {
        QString words = QStringLiteral("<h2>") + tr("For the next crew") + QStringLiteral("</h2><p>") + when(now_.at) +
                        QStringLiteral("</p>");
        if (!from_.started)
            return words + QStringLiteral("<p>") + tr("No shift is going on, and none went before.") +
                   QStringLiteral("</p>");
        QStringList crew;
        for (const std::string& name : now_.crew)
            crew << escaped(name);
        return words +
               table(
                   row(from_.goesOn ? tr("shift going on since") : tr("the last shift began"), when(*from_.started)) +
                   row(tr("on the shift"), crew.isEmpty() ? tr("nobody signed on") : crew.join(QStringLiteral(", "))));
    }
    QString alarms() const {
        QString list;
        for (const AlarmPicture& alarm : now_.alarms)
            list += QStringLiteral("<li>") +
                    namedAs(QStringLiteral("<b>") + alarmLine(alarm).toHtmlEscaped() + QStringLiteral("</b>"),
                            alarmFirst(alarm, now_.drawing).toHtmlEscaped()) +
                    QStringLiteral(" (") + stateWord(alarm.state) + QStringLiteral(")</li>");
        for (std::size_t i = 0; i < seriesCount; ++i)
            if (const auto& reading = now_.readings[i]; reading && reading->trust != Trust::good)
                list +=
                    QStringLiteral("<li>") +
                    namedAs(readingName(static_cast<Series>(i)).toHtmlEscaped(),
                            trustWord(reading->trust) + QStringLiteral(", ") + reasonWords(*reading).toHtmlEscaped()) +
                    QStringLiteral("</li>");
        return heading(tr("What to watch")) +
               (list.isEmpty() ? QStringLiteral("<p>") + tr("No alarm is on.") + QStringLiteral("</p>")
                               : QStringLiteral("<ul>") + list + QStringLiteral("</ul>"));
    }
    QString draw() const {
        if (now_.drawing)
            return now_.drawOpenedAt ? tr("OPEN since %1").arg(hourAndAgo(*now_.drawOpenedAt)) : tr("OPEN");
        return now_.drawEta ? tr("shut; the next draw %1").arg(range(*now_.drawEta))
                            : tr("shut; too early to say when the next draw comes");
    }
    QString fire() const {
        if (!now_.litAt)
            return tr("not lit in this shift");
        if (now_.shutdownAt)
            return tr("no more wood since %1; it burns out: stay with it").arg(hourAndAgo(*now_.shutdownAt));
        QStringList parts;
        if (now_.lastFired)
            parts << tr("last fired %1").arg(hourAndAgo(*now_.lastFired));
        if (now_.fireDue)
            parts << (now_.fireDue->count() >= 0 ? tr("next in %1").arg(spanText(*now_.fireDue))
                                                 : tr("overdue by %1").arg(spanText(-*now_.fireDue)));
        parts << tr("every %1").arg(spanText(now_.fireInterval));
        if (!now_.turn.empty())
            parts << tr("%1's turn").arg(escaped(now_.turn));
        return parts.join(QStringLiteral(", "));
    }
    QString sap() const {
        QStringList parts;
        if (const auto& tank = now_.reading(Series::tank_level); tank && tank->si)
            parts << tr("%1 in the feed tank (%2)")
                         .arg(figure(Volume::cubicMetre(*tank->si), units_).text(), hourAndAgo(tank->last));
        if (now_.sapLeft)
            parts << tr("lasts %1").arg(spanText(*now_.sapLeft));
        if (now_.keepBack)
            parts << tr("keep %1 back for the shutdown").arg(figure(*now_.keepBack, units_).text());
        if (parts.isEmpty())
            return tr("not entered: look into the tank");
        QStringList sentences{parts.join(QStringLiteral(", ")) + u'.'};
        for (const QString& words : {tankFullWords(now_.store), sapAgeWords(now_.store, units_)})
            if (!words.isEmpty())
                sentences << words.toHtmlEscaped();
        return sentences.size() == 1 ? parts.join(QStringLiteral(", ")) : sentences.join(u' ');
    }
    QString depths() const {
        QStringList parts;
        for (const Series series : {Series::pan_level, Series::flue_level})
            if (const auto& level = now_.reading(series); level && level->si)
                parts << readingName(series).toHtmlEscaped() + u' ' + figure(Length::metre(*level->si), units_).text() +
                             QStringLiteral(" (") + hourAndAgo(level->last) + u')';
        return parts.isEmpty() ? tr("not read: look into the pans") : parts.join(QStringLiteral(", "));
    }
    QString standing() const {
        if (!from_.started)
            return {};
        QString rows = row(tr("draw-off"), draw()) + row(tr("fire"), fire());
        if (now_.lastLoad)
            rows += row(tr("the last load"), range(*now_.lastLoad));
        return heading(tr("How things are")) + table(rows + row(tr("sap"), sap()) + row(tr("depths"), depths()));
    }
    QString side() const {
        const Fact* last = nullptr;
        for (const auto* facts : {&from_.before, &from_.shift})
            for (const Fact& fact : *facts)
                if (std::holds_alternative<PanSwapped>(fact.what))
                    last = &fact;
        int draws = 0;
        for (const auto* facts : {&from_.before, &from_.shift}) {
            RepeatedDraw repeated;
            for (const Fact& fact : *facts)
                draws += repeated.hear(fact) == RepeatedDraw::Telling::first && last && fact.at > last->at ? 1 : 0;
        }
        QString words = tr("The log shows no switch of pan or side.");
        if (last)
            words = tr("Last switched %1 (%2 ago)%3; draws since: %4.")
                        .arg(when(last->at), ago(last->at),
                             last->by.empty() ? QString{} : tr(", by %1").arg(escaped(last->by)))
                        .arg(draws);
        return heading(tr("Which side")) + QStringLiteral("<p>") + words + QStringLiteral("</p>");
    }
    QString target() const {
        QString rows =
            row(tr("open the draw at"), now_.target ? figure(*now_.target, units_).text()
                                                    : dash() + u' ' + whyNot(now_, Shown::targetC).toHtmlEscaped());
        if (now_.target && now_.targetUncertainty)
            rows += row(tr("known to"), QStringLiteral("± ") + figure(*now_.targetUncertainty, units_, 2).text());
        rows += row(tr("based on"),
                    now_.checks == 0 ? tr("no hydrometer check yet: make one")
                    : now_.lastCheck ? tr("checks: %1, the last %2").arg(now_.checks).arg(hourAndAgo(*now_.lastCheck))
                                     : tr("checks: %1").arg(now_.checks));
        if (now_.questionedChecks > 0)
            rows += row(tr("checks not believed"), QString::number(now_.questionedChecks));
        if (now_.markCrept)
            rows += row(tr("crept up since the first checks"),
                        figure(*now_.markCrept, units_, 2).text() + u' ' + tr("(niter? look at the pan)"));
        if (now_.waterBoils)
            rows += row(tr("water boils at"), now_.pressure ? figure(*now_.waterBoils, units_).text()
                                                            : tr("%1, checked %2 ago")
                                                                  .arg(figure(*now_.waterBoils, units_).text(),
                                                                       spanText(now_.waterBoilsAge)));
        return heading(tr("The target")) + table(rows);
    }
    QString barrels() const {
        auto facts = from_.before;
        facts.insert(facts.end(), from_.shift.begin(), from_.shift.end());
        QString rows;
        for (const Barrel& barrel : barrelsOf(facts)) {
            const QString volume = barrel.measured == 0 ? dash() : figure(barrel.volume, units_).text();
            const QString counted = barrel.measured < barrel.draws
                                        ? tr("draws measured: %1 of %2").arg(barrel.measured).arg(barrel.draws)
                                        : tr("draws: %1").arg(barrel.draws);
            const QString name = barrel.name.empty() ? tr("(nobody said where to)") : escaped(barrel.name);
            QString check;
            if (barrel.check)
                check = factWords({barrel.last, *barrel.check}, units_).toHtmlEscaped();
            rows += QStringLiteral("<tr><td><b>%1</b></td><td align=\"right\"><b>%2</b></td><td>%3</td><td>%4</td>"
                                   "<td>%5</td></tr>")
                        .arg(name, volume, counted, tr("last %1").arg(when(barrel.last)), check);
        }
        QString words = heading(tr("What each drum holds"));
        if (rows.isEmpty())
            return words + QStringLiteral("<p>") + tr("Nothing has been drawn.") + QStringLiteral("</p>");
        return words + QStringLiteral("<table cellpadding=\"3\">") + rows + QStringLiteral("</table><p>") +
               tr("As drawn in the last two weeks. What was emptied or packed since is not in the log: look before you "
                  "fill.") +
               QStringLiteral("</p>");
    }
    QString notes() const {
        QString list;
        for (const Fact& fact : from_.shift)
            if (const auto* note = std::get_if<Note>(&fact.what))
                list += QStringLiteral("<li>") + clock_.hourAndMinute(fact.at) + u' ' + escaped(note->text) +
                        (fact.by.empty() ? QString{} : QStringLiteral(" (") + escaped(fact.by) + u')') +
                        QStringLiteral("</li>");
        return heading(tr("Notes of this shift")) + (list.isEmpty()
                                                         ? QStringLiteral("<p>") + dash() + QStringLiteral("</p>")
                                                         : QStringLiteral("<ul>") + list + QStringLiteral("</ul>"));
    }
    QString made() const {
        QStringList parts;
        parts << tr("draws %1").arg(now_.draws) << tr("firings %1").arg(now_.loads);
        if (now_.syrupOut)
            parts << tr("syrup %1").arg(figure(*now_.syrupOut, units_).text());
        if (now_.sapIn)
            parts << tr("sap in %1").arg(figure(*now_.sapIn, units_).text());
        if (now_.wood)
            parts << tr("wood %1").arg(figure(*now_.wood, units_).text());
        return heading(tr("So far")) + QStringLiteral("<p>") + parts.join(QStringLiteral(" · ")) +
               QStringLiteral("</p>");
    }
    static QString caution() {
        return QStringLiteral("<p>") +
               tr("Before the other one goes: look into both pans, at the fire and up at the roof, together. This page "
                  "advises; the instruments on the pan and the hydrometer come first.") +
               QStringLiteral("</p>");
    }

    const HandoverSource& from_;
    const Picture& now_;
    Units units_;
    WallClock clock_;
};

// A draw that was told twice stands where it was told first, with all that was said of it.
std::vector<Fact> eachDrawOnce(const std::vector<Fact>& facts) {
    std::vector<Fact> once;
    std::size_t draw = 0; // the place of the last one shut
    RepeatedDraw repeated;
    for (const Fact& fact : facts) {
        const auto told = repeated.hear(fact);
        if (told == RepeatedDraw::Telling::first)
            draw = once.size();
        if (told == RepeatedDraw::Telling::none || told == RepeatedDraw::Telling::first)
            once.push_back(fact);
        else
            once[draw].what = repeated.draw();
    }
    return once;
}

} // namespace

std::vector<Barrel> barrelsOf(const std::vector<Fact>& facts) {
    std::vector<Barrel> barrels;
    std::optional<DensityCheck> checked;
    std::optional<std::size_t> filled; // the barrel of the last draw
    Instant closedAt{};
    for (const Fact& fact : eachDrawOnce(facts)) {
        if (std::holds_alternative<DrawOpened>(fact.what)) {
            checked.reset();
            filled.reset();
        }
        if (const auto* check = std::get_if<DensityCheck>(&fact.what)) {
            checked = *check;
            if (filled && secondsBetween(closedAt, fact.at) <= checkBelongsFor)
                barrels[*filled].check = *check;
        }
        const auto* closed = std::get_if<DrawClosed>(&fact.what);
        if (!closed)
            continue;
        auto barrel = std::ranges::find_if(barrels, [&](const Barrel& b) { return b.name == closed->to; });
        if (barrel == barrels.end()) {
            barrels.push_back({.name = closed->to, .first = fact.at});
            barrel = barrels.end() - 1;
        }
        ++barrel->draws;
        if (closed->volume) {
            barrel->volume = barrel->volume + closed->volume->value;
            ++barrel->measured;
        }
        if (checked)
            barrel->check = checked;
        barrel->last = closedAt = fact.at;
        filled = static_cast<std::size_t>(barrel - barrels.begin());
    }
    std::ranges::stable_sort(barrels, [](const Barrel& a, const Barrel& b) { return a.last > b.last; });
    return barrels;
}

QString handoverWords(const HandoverSource& source, Units units) { return Words{source, units}.all(); }

} // namespace panside
