#include "ui/account/account_view.h"

#include "core/ledger/concentrator.h"
#include "core/ledger/rig_tells.h"
#include "ui/look/wall_clock.h"
#include "ui/words/counted.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Account", text, comment, n);
}

QString decimals(double value, int count) { return QLocale{}.toString(value, 'f', count); }
QString signedPercent(double share) {
    return (share > 0   ? QStringLiteral("+")
            : share < 0 ? QString{QChar{0x2212}}
                        : QString{}) +
           decimals(std::abs(share) * 100, 0) + QStringLiteral(" %");
}
QString dateText(Instant at) { return QLocale{}.toString(WallClock{}.at(at).date(), QLocale::ShortFormat); }

class Lines {
public:
    explicit Lines(ListView& view) : view_{view} {}
    void head(const QString& words) {
        view_.rows.push_back({{words, QString{}, QString{}}, true, false});
        view_.said.push_back({});
    }
    void line(const QString& what, const QString& amount, const QString& note, const QString& said = {},
              const QString& notes = {}) {
        view_.rows.push_back({{what, amount, note}, false, false});
        view_.said.push_back({said.isEmpty() ? namedAs(what, amount) : said, notes});
    }

private:
    ListView& view_;
};

void addRuns(Lines& lines, const HouseAccount& account, Units units) {
    if (account.runs.empty())
        return;
    lines.head(tr("Runs"));
    for (const RunAccount& run : account.runs) {
        const auto tap = run.syrupPerTap();
        lines.line(
            QString::fromStdString(run.name), figure(run.syrup, units).text(),
            tap ? tr("%1 a tap").arg(figure(*tap, units).text()) : tr("taps not entered"),
            tr("%1: sap for %2 of syrup.").arg(QString::fromStdString(run.name), figure(run.syrup, units).text()),
            run.sugarAssumed ? tr("Not all of its sugar was measured: 2 °Brix is assumed there.") : QString{});
    }
    if (account.syrupPerTap)
        lines.line(tr("a tap, all runs with their taps entered"), figure(*account.syrupPerTap, units).text(), {});
}

void addNights(Lines& lines, const HouseAccount& account, const Ledger& ledger, Units units) {
    if (account.nights.empty())
        return;
    lines.head(tr("Nights"));
    for (const NightAccount& one : account.nights) {
        const Night& night = ledger.nights()[one.night];
        const QString cord =
            one.perCord && one.cords
                ? tr("%1 cord, %2 a cord").arg(decimals(*one.cords, 2), figure(*one.perCord, units).text())
                : tr("wood or draws not all known");
        QString worth;
        if (account.pricePerLitre)
            worth = tr("At the mean of what was sold that is %1 by price.")
                        .arg(decimals(one.syrup.litre() * *account.pricePerLitre, 0));
        lines.line(dateText(night.first), figure(one.syrup, units).text(), cord,
                   tr("%1: %2 of syrup%3.")
                       .arg(dateText(night.first), figure(one.syrup, units).text(),
                            one.fired ? tr(" in %1 of fire").arg(spanText(*one.fired)) : QString{}),
                   worth);
    }
}

void addHeavy(Lines& lines, const HouseAccount& account, Units units) {
    const HeavyDraws& heavy = account.heavy;
    if (heavy.draws == 0)
        return;
    lines.head(tr("Heavy draws"));
    lines.line(
        tr("given away"), figure(heavy.givenAway, units).text(),
        tr("draws surely over %3: %1 of %2").arg(heavy.heavy).arg(heavy.draws).arg(figure(account.wanted).text()),
        tr("Heavy draws gave away %1 of syrup.").arg(figure(heavy.givenAway, units).text()),
        tr("That much more there would be at %1. Draws that are not surely over it do not count.")
            .arg(figure(account.wanted).text()));
}

void addStock(Lines& lines, const HouseAccount& account, Units units) {
    if (account.stock.empty())
        return;
    lines.head(tr("In stock"));
    for (const StockLine& one : account.stock) {
        const QString light =
            one.light.empty() ? tr("not graded") : QCoreApplication::translate("reckon", one.light.c_str());
        lines.line(QString::fromStdString(one.size) + QStringLiteral(", ") + light, QLocale{}.toString(one.count),
                   figure(one.volume, units).text() +
                       (one.held > 0 ? tr(", %1 of them held").arg(one.held) : QString{}));
    }
}

void addTrades(Lines& lines, const HouseAccount& account, Units units) {
    if (account.trades.empty())
        return;
    lines.head(tr("Sap bought and sold"));
    for (const SapTrade& one : account.trades)
        lines.line((one.bought ? tr("bought from %1, %2") : tr("sold to %1, %2"))
                       .arg(QString::fromStdString(one.who), dateText(one.at)),
                   figure(one.sap, units).text(),
                   one.syrup ? tr("%1, for %2 of syrup").arg(figure(one.sugar).text(), figure(*one.syrup, units).text())
                             : figure(one.sugar).text(),
                   {}, tr("By the revised rule (University of Vermont) at 66.9 °Brix."));
}

void addPrices(Lines& lines, const HouseAccount& account, Units units) {
    if (account.prices.empty())
        return;
    const Unit weight = unitOf(Dimension::mass, units);
    const double each = account.prices.front().price / account.prices.front().content.kilogram() * toSi(1, weight);
    const QString mean = tr("At the mean of what was sold, %1 a %2.").arg(decimals(each, 2), symbolOf(weight));
    lines.head(tr("Price list by weight"));
    for (const PriceLine& one : account.prices)
        lines.line(figure(one.size, units).text(), decimals(one.price, 2),
                   tr("holds %1").arg(figure(one.content, units).text()), {}, mean);
}

// What was run through the membrane, and what that saves the boil.
void addConcentrator(Lines& lines, const Ledger& ledger, Units units) {
    const auto savings = concentratorSavings(ledger);
    if (savings.empty())
        return;
    lines.head(tr("Concentrator"));
    for (const ConcentratorSaving& saving : savings) {
        const ConcentratorRun& run = ledger.tables().concentrated[saving.run];
        QString ran = tr("%1 at %2 from %3 at %4")
                          .arg(figure(run.out.volume(), units).text(), figure(run.out.brix()).text(),
                               figure(run.in.volume(), units).text(), figure(run.in.brix()).text());
        if (run.took)
            ran += QStringLiteral(", ") + hoursText(std::llround(run.took->count() / 60));
        QString saves = tr("What that saves the boil is not known: no night with the fire entered and the tank read.");
        if (saving.boil)
            saves = tr("It saves the boil %1 of fire (%2 to %3).")
                        .arg(spanText(saving.boil->p50), spanText(saving.boil->p10), spanText(saving.boil->p90));
        if (saving.cords)
            saves += QLatin1Char(' ') + tr("And about %1 of a full cord.").arg(decimals(*saving.cords, 2));
        if (!run.washed.empty())
            saves += QLatin1Char(' ') + tr("Washed: %1.").arg(QString::fromStdString(run.washed));
        lines.line(dateText(run.at), tr("%1 of water out").arg(figure(saving.water, units).text()), ran, {}, saves);
    }
}

QString windowOf(const RigTrend& trend) {
    return tr("From the first of %1 nights to the last it changed by %2, surely between %3 and %4.")
        .arg(QString::number(trend.nights), signedPercent(trend.last / trend.first - 1), signedPercent(trend.changeLow),
             signedPercent(trend.changeHigh));
}

void addTrend(Lines& lines, const RigTrend& trend) {
    const QString what = tr("water by the weight of the wood");
    const QString likeNights =
        counted(trend.nights, tr("1 night of like wood"), tr("%n nights of like wood", nullptr, trend.nights));
    switch (trend.verdict) {
    case RigVerdict::tooLittle:
        return lines.line(what, tr("too little to tell"), likeNights,
                          tr("Too little to tell whether the wood gives less than it did."),
                          trend.nights < 5 ? tr("Five nights of one wood, weighed, with the tank read, are the least.")
                                           : windowOf(trend));
    case RigVerdict::steady:
        return lines.line(what, tr("steady"), likeNights, tr("The same wood boils off as much as it did."),
                          windowOf(trend));
    case RigVerdict::falling:
        return lines.line(what, signedPercent(trend.last / trend.first - 1), likeNights,
                          tr("The same wood boils off less each night: flues or grate? Brush them and see."),
                          windowOf(trend) + QLatin1Char(' ') + tr("Only cold, and with the ash out."));
    case RigVerdict::rising:
        return lines.line(what, signedPercent(trend.last / trend.first - 1), likeNights,
                          tr("The same wood boils off more than it did: drier wood, or cleaner flues."),
                          windowOf(trend));
    }
}

// Hours of fire are no days.
QString fireHours(Duration span) { return hoursText(std::llround(span.count() / 60)); }

void addNiter(Lines& lines, const NiterTell& niter) {
    const QString what = tr("hours of fire to a switch of sides");
    const QString entered =
        counted(niter.switches, tr("1 switch entered"), tr("%n switches entered", nullptr, niter.switches));
    if (!niter.usual)
        return lines.line(what, tr("too little to tell"), entered,
                          tr("Too little to tell after how many hours the sides are switched."),
                          tr("Press the key for a swapped pan each time: three are enough to tell."));
    const QString range =
        tr("Between two switches it was %1 to %2.").arg(fireHours(niter.shortest), fireHours(niter.longest));
    lines.line(what, fireHours(*niter.usual), entered,
               niter.since && *niter.since > *niter.usual
                   ? tr("%1 of fire since the last switch, usually %2: look for niter.")
                         .arg(fireHours(*niter.since), fireHours(*niter.usual))
                   : tr("The sides are switched every %1 of fire.").arg(fireHours(*niter.usual)),
               range + QLatin1Char(' ') + tr("Scale under the syrup insulates and scorches."));
}

void addGlass(Lines& lines, const GlassTell& glass, Units units) {
    const QString what = tr("hydrometer against physics");
    const QString ground = counted(glass.draws, tr("1 checked draw"), tr("%n checked draws", nullptr, glass.draws)) +
                           QStringLiteral(", ") +
                           counted(glass.pans, tr("one pan or side"), tr("%n pans or sides", nullptr, glass.pans));
    if (glass.draws < leastGlassDraws || glass.pans < leastGlassPans)
        return lines.line(what, tr("too little to tell"), ground,
                          tr("Too little to tell whether hydrometer and physics differ."),
                          tr("Six checked draws from three pans or sides are the least."));
    const QString apart =
        tr("%1 apart on average, ± %2.").arg(figure(glass.apart, units, 2).text(), figure(glass.sd, units, 2).text());
    if (glass.verdict != RigVerdict::steady)
        return lines.line(what, tr("nothing to tell"), ground,
                          tr("Hydrometer and physics do not surely differ by the same amount on every pan."), apart);
    lines.line(
        what, figure(glass.apart, units, 2).text(), ground,
        tr("Hydrometer and physics differ by the same %1 on every pan: it may be the hydrometer. Try another.")
            .arg(figure(glass.apart, units, 2).text()),
        apart + QLatin1Char(' ') +
            tr("About %1 °Brix in the hydrometer, ± %2. A probe that reads wrong looks the same: boil water and see.")
                .arg(decimals(std::abs(glass.brix), 1), decimals(glass.sd.kelvin() * 4.4, 1)));
}

} // namespace

ListView accountView(const Ledger* ledger, Units units) {
    ListView view;
    view.columns = {{tr("what"), false, 0}, {tr("how much"), true, 0}, {tr("by"), false, 0}};
    if (!ledger) {
        view.head = tr("Reading the book …");
        return view;
    }
    const HouseAccount account = houseAccount(*ledger);
    Lines lines{view};
    addRuns(lines, account, units);
    addNights(lines, account, *ledger, units);
    addHeavy(lines, account, units);
    addStock(lines, account, units);
    addPrices(lines, account, units);
    addTrades(lines, account, units);
    addConcentrator(lines, *ledger, units);
    if (view.rows.empty())
        view.head = tr("The book is still empty.");
    return view;
}

ListView tellsView(const Ledger* ledger, Units units) {
    ListView view;
    view.columns = {{tr("what"), false, 0}, {tr("finding"), true, 0}, {tr("based on"), false, 0}};
    if (!ledger) {
        view.head = tr("Reading the book …");
        return view;
    }
    const RigTells tells = rigTells(*ledger);
    Lines lines{view};
    addTrend(lines, tells.trend);
    addNiter(lines, tells.niter);
    addGlass(lines, tells.glass, units);
    return view;
}

} // namespace panside
