#include "ui/sap/tonight_view.h"

#include "ui/look/wall_clock.h"
#include "ui/sap/tanks_view.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("TonightPage", text); }

// No range is good to the minute.
QString clockText(Instant at) {
    constexpr std::chrono::minutes five{5};
    return WallClock{}.hourAndMinute(
        Instant{std::chrono::round<std::chrono::minutes>(at.time_since_epoch()) / five * five});
}
Instant later(Instant at, Duration span) { return at + std::chrono::round<std::chrono::microseconds>(span); }
QString cordText(double cords) { return QLocale{}.toString(cords, 'f', 2); }

QString lackText(TonightLack lack) {
    switch (lack) {
    case TonightLack::noSap:
        return tr("There is no sap in any tank. Enter what was gathered.");
    case TonightLack::noNight:
        return tr("Nothing is known of this rig yet. It takes one night with the fire entered and the tank read.");
    case TonightLack::allKeptBack:
        return tr("All the sap on hand is needed to cover the pans while the fire burns out. Do not light for it.");
    case TonightLack::none:
        break;
    }
    return {};
}

class Rows {
public:
    Rows(ListView& view, const TonightAsk& ask, Units units) : view_{view}, ask_{ask}, units_{units} {}
    void clock(const QString& what, const Likely<Duration>& span, const QString& words, const QString& notes) {
        const auto at = [&](Duration after) { return clockText(later(ask_.light, after)); };
        add(what, at(span.p50), at(span.p10), at(span.p90), words, notes);
    }
    void add(const QString& what, const QString& likely, const QString& low, const QString& high, const QString& words,
             const QString& notes = {}) {
        view_.rows.push_back({{what, likely, low, high}, view_.rows.empty(), false});
        view_.said.push_back({words, notes});
    }
    QString volume(Volume volume) const { return figure(volume, units_).text(); }

private:
    ListView& view_;
    const TonightAsk& ask_;
    Units units_;
};

QString groundOf(const Tonight& rig, const TonightPlan& plan, Units units) {
    const auto rate = rig.rate();
    return tr("Nights of this rig learned from: %1. It boils off %2 of water (%3 to %4) and takes %5 to warm up. Of "
              "ten "
              "such nights one ends before the range, one after. Sap that still runs in or other wood is not in it.")
        .arg(QString::number(plan.nights), figure(rate->p50, units).text(), figure(rate->p10, units).text(),
             figure(rate->p90, units).text(), spanText(*rig.warmUp()));
}

void addConcentrate(Rows& rows, const Tonight& rig, const TonightPlan& plan, std::span<const SapStanding> stands,
                    Brix to) {
    const auto other = rig.plan(concentratedTo(stands, to));
    if (!other)
        return rows.add(tr("concentrated to %1").arg(figure(to).text()), tr("no boil"), {}, {},
                        tr("Concentrated to %1, no more is left than covers the pans.").arg(figure(to).text()));
    const auto saved = [](Duration less) { return spanText(std::max(Duration{0}, less)); };
    const auto& mine = plan.lastLoad;
    const auto& its = other->lastLoad;
    const QString words =
        tr("Concentrated to %1 first, the boil is %2 shorter.").arg(figure(to).text(), saved(mine.p50 - its.p50));
    const QString wood = plan.cords && other->cords ? tr("It saves %1 cord. The sweeter the feed, the more often the "
                                                         "draws come. Concentrate spoils sooner than sap.")
                                                          .arg(cordText(plan.cords->p50 - other->cords->p50))
                                                    : tr("Concentrate spoils sooner than sap: boil it at once.");
    rows.add(tr("concentrated to %1: saves").arg(figure(to).text()), saved(mine.p50 - its.p50),
             saved(mine.p10 - its.p10), saved(mine.p90 - its.p90), words, wood);
}

void addKeepBack(Rows& rows, const TonightPlan& plan) {
    if (!plan.keepKnown)
        rows.add(tr("keep back"), tr("not known"), {}, {},
                 tr("What covers the pans while the fire burns out is not in it: stop that much sooner."),
                 tr("The pans' areas and the running depth, entered with the rig, tell how much."));
    else
        rows.add(tr("keep back"), rows.volume(plan.keepBack), {}, {},
                 tr("Keep %1 of sap for the pans while the fire burns out.").arg(rows.volume(plan.keepBack)),
                 plan.keepLearned ? tr("As it was kept on the nights before.")
                                  : tr("By the pans' area, depth and rate."));
}

} // namespace

TonightAsk usualAsk(Instant now) {
    TonightAsk ask;
    constexpr std::chrono::minutes quarter{15};
    ask.light = Instant{(std::chrono::floor<std::chrono::minutes>(now.time_since_epoch()) / quarter + 1) * quarter};
    QDateTime bed = WallClock{}.at(now);
    bed.setTime(QTime{23, 0});
    const auto seconds = bed.toSecsSinceEpoch() - WallClock{}.at(now).toSecsSinceEpoch();
    ask.cold =
        seconds > 3600 ? later(now, Duration{static_cast<double>(seconds)}) : later(ask.light, std::chrono::hours{6});
    ask.cold = Instant{std::chrono::round<std::chrono::minutes>(ask.cold.time_since_epoch())};
    return ask;
}

ListView tonightView(const Ledger* ledger, const TonightAsk& ask, Units units) {
    ListView view;
    view.columns = {{tr("lit at %1").arg(clockText(ask.light)), false, 0},
                    {tr("likely"), true, 0},
                    {tr("one in ten under"), true, 0},
                    {tr("one in ten over"), true, 0}};
    if (!ledger) {
        view.head = tr("Reading the book …");
        return view;
    }
    const Tonight rig{tonightBasis(*ledger)};
    const auto stands = standing(*ledger);
    const auto plan = rig.plan(stands);
    if (!plan) {
        view.head = lackText(rig.lack(stands));
        return view;
    }
    Rows rows{view, ask, units};
    const auto sweet = sweetInPans(*ledger, ask.light);
    const QString ground = groundOf(rig, *plan, units);
    const auto at = [&](Duration after) { return clockText(later(ask.light, after)); };
    rows.clock(tr("last load"), plan->lastLoad,
               tr("Lit at %1, the last load goes in about %2; the fire is cold about %3.")
                   .arg(clockText(ask.light), at(plan->lastLoad.p50), at(plan->cold.p50)),
               ground);
    rows.clock(tr("cold fire"), plan->cold,
               tr("The fire is cold about %1. Stay until the pans are covered; look again an hour later.")
                   .arg(at(plan->cold.p50)),
               ground);
    // What must be known before the match is struck comes first: a page of a low screen has few rows.
    if (const auto may = rig.mayStart(stands, Duration{secondsBetween(ask.light, ask.cold)})) {
        const QString bed = clockText(ask.cold);
        rows.add(tr("start, to be cold by %1").arg(bed), rows.volume(may->likely), rows.volume(may->surely), {},
                 may->all ? tr("Cold by %1: all of it may be started.").arg(bed)
                          : tr("Cold by %1: start %2 (nine nights in ten), %3 at the most (five in ten).")
                                .arg(bed, rows.volume(may->surely), rows.volume(may->likely)),
                 tr("All of it: light by %1, or by %2 to be sure.")
                     .arg(clockText(later(ask.cold, -plan->cold.p50)), clockText(later(ask.cold, -plan->cold.p90))));
    }
    if (ask.concentrate)
        addConcentrate(rows, rig, *plan, stands, *ask.concentrate);
    if (plan->firstDraw)
        rows.clock(tr("first draw"), *plan->firstDraw,
                   tr("The first draw comes about %1.").arg(at(plan->firstDraw->p50)),
                   tr("When the pans hold as much sugar as at the first draws before.") +
                       (sweet ? u' ' + sweetWords(*sweet, ask.light, units) : QString{}));
    rows.add(tr("syrup"), rows.volume(plan->syrup.p50), rows.volume(plan->syrup.p10), rows.volume(plan->syrup.p90),
             tr("About %1 of syrup, from %2 of sap.").arg(rows.volume(plan->syrup.p50), rows.volume(plan->sap)),
             tr("By the sugar on hand and what came of it on the nights before; what the pans hold may shift it.") +
                 (sweet ? u' ' + sweetWords(*sweet, ask.light, units) : QString{}));
    if (plan->cords)
        rows.add(tr("wood, cords"), cordText(plan->cords->p50), cordText(plan->cords->p10), cordText(plan->cords->p90),
                 tr("About %1 of a full cord.").arg(cordText(plan->cords->p50)));
    addKeepBack(rows, *plan);
    return view;
}

} // namespace panside
