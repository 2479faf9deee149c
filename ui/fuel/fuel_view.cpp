#include "ui/fuel/fuel_view.h"

#include "ui/board/card_view.h"
#include "ui/words/fire_words.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Fuel", text, comment, n);
}

QString percent(double share) { return QStringLiteral("%1\u00a0%").arg(std::lround(100 * share)); }
QString give(const std::optional<QString>& value) { return value.value_or(QStringLiteral("–")); }

QString wayName(EvaporationWay way) {
    switch (way) {
    case EvaporationWay::massBalance:
        return tr("tank less draws");
    case EvaporationWay::tankAlone:
        return tr("tank alone");
    case EvaporationWay::draws:
        return tr("draws and sugar");
    case EvaporationWay::heat:
        return tr("heat of the wood");
    }
    return {};
}

QString disagreement(Disagreement doubt) {
    switch (doubt) {
    case Disagreement::none:
        return {};
    case Disagreement::tankSaysMore:
        return tr("The tank falls faster than the wood can boil: look for a leak, a wrong tank shape, or loads heavier "
                  "than entered.");
    case Disagreement::tankSaysLess:
        return tr("The tank falls slower than the wood should boil: sap came in that was not entered, the tank shape "
                  "is wrong, or the wood is wetter or lighter than entered.");
    case Disagreement::drawsSayMore:
        return tr("More syrup than the sap's sugar allows: measure the sap's sugar and the draws again.");
    case Disagreement::drawsSayLess:
        return tr(
            "Less syrup than the sap's sugar promises: measure the sap's sugar again, or a draw was not entered.");
    case Disagreement::tankRises:
        return tr("The tank rises and no sap was entered: enter it, or look at the gauge.");
    }
    return {};
}

QString standingWords(FireStanding standing) {
    switch (standing) {
    case FireStanding::unknown:
        return {};
    case FireStanding::catching:
        return tr("the load is catching");
    case FireStanding::burning:
        return tr("the fire burns well");
    case FireStanding::low:
        return tr("the fire is low: a load sets it right");
    case FireStanding::dying:
        return tr("the fire is dying: small dry wood first, then a load");
    }
    return {};
}

QString callWords(const Picture& picture) {
    QStringList words;
    if (picture.fireDue)
        words << tr("fire every %1").arg(spanText(picture.fireInterval));
    if (const auto standing = standingWords(picture.fireStanding); !standing.isEmpty())
        words << standing;
    if (picture.callMoved) {
        const QString to = spanText(picture.callMoved->to);
        words << (picture.callMoved->sagsAfter ? tr("boil sags %1 after loading; call moved to %2")
                                                     .arg(spanText(*picture.callMoved->sagsAfter), to)
                                               : tr("call moved to %1, by the rhythm of the last loads").arg(to));
    }
    if (picture.fireDue && !picture.turn.empty())
        words << tr("%1's turn").arg(QString::fromStdString(picture.turn));
    if (picture.fires.size() > 1)
        for (const FirePicture& fire : picture.fires)
            words << QStringLiteral("%1 %2").arg(fireName(fire.name), fire.due.count() < 0
                                                                          ? tr("overdue by %1").arg(spanText(-fire.due))
                                                                          : leftText(fire.due));
    return words.join(QStringLiteral(" · "));
}

void addHeat(std::vector<FuelLine>& lines, const QString& title, const HeatAccount& account) {
    const auto part = [&](Energy energy) {
        return QStringLiteral("%1\u00a0MJ, %2")
            .arg(std::lround(energy.joule() / 1e6))
            .arg(percent(energy / account.fuel));
    };
    lines.push_back(
        {title, tr("wood %1 MJ in %2").arg(std::lround(account.fuel.joule() / 1e6)).arg(spanText(account.over))});
    lines.push_back({tr("into the sap"), part(account.boiling)});
    if (account.stackLoss)
        lines.push_back({tr("up the stack"), part(*account.stackLoss)});
    lines.push_back({tr("the rest and the error"), part(account.rest())});
}

std::vector<FuelLine> rateLines(const Picture& picture, Units units) {
    std::vector<FuelLine> lines;
    QString together = QStringLiteral("–");
    if (picture.evaporation) {
        together = figure(*picture.evaporation, units).text();
        if (picture.fuel.evaporationSd)
            together += QStringLiteral(" ± ") + figure(*picture.fuel.evaporationSd, units).number;
    } else if (const auto why = whyNot(picture, Shown::evaporationLph); !why.isEmpty()) {
        together += QStringLiteral(" ") + why;
    }
    lines.push_back({tr("boiled off, together"), together});
    for (const WayPicture& way : picture.fuel.ways)
        lines.push_back(
            {wayName(way.way), figure(way.rate, units).text() + QStringLiteral(" ± ") + figure(way.sd, units).number});
    return lines;
}

QString sugarWords(const SugarAccount& sugar, Units units) {
    const Figure in = figure(sugar.in, units), out = figure(sugar.out, units);
    // More out than in: the sap was sweeter than entered. That is said by its sign, not hidden.
    const Figure left = figure(sugar.inPans(), units);
    const QString words = QStringLiteral("%1, %2, %3").arg(in.number, out.number, left.text());
    return sugar.before > Mass{}
               ? words + tr("; %1 stood in them from the night before").arg(figure(sugar.before, units).text())
               : words;
}

QString money(double amount) { return QLocale{}.toCurrencyString(amount); }

QString costWords(const Picture& picture, Units units, const FuelBeside& beside) {
    const double cost = *picture.fuel.cords * *beside.pricePerCord;
    if (!picture.syrupOut || picture.syrupOut->litre() <= 0)
        return money(cost);
    const Unit unit = unitOf(Dimension::volume, units);
    return tr("%1, %2 a %3 of syrup")
        .arg(money(cost), money(cost / fromSi(picture.syrupOut->si(), unit)), symbolOf(unit));
}

// How many nights of tonight's length, from lighting to the last load where that is foreseen.
QString pileWords(const Picture& picture, std::optional<double> pile) {
    if (!pile)
        return tr("not known: no journal to count from");
    const FuelPicture& fuel = picture.fuel;
    const QLocale locale;
    const double left = std::max(0.0, *pile);
    const auto whole = [](double amount) { return static_cast<int>(amount + 0.05); }; // French: 1.9 is still singular
    QString words = tr("%1 cords", nullptr, whole(left)).arg(locale.toString(left, 'f', 1));
    if (!fuel.cordPerHour || *fuel.cordPerHour <= 0)
        return words;
    if (!fuel.cords || !picture.lastLoad)
        return words + tr(", for %1").arg(spanText(Duration{left / *fuel.cordPerHour * 3600}));
    const double night = *fuel.cords + *fuel.cordPerHour * seconds(picture.lastLoad->p50) / 3600;
    return words + tr(", %1 nights like this", nullptr, whole(left / night)).arg(locale.toString(left / night, 'f', 1));
}

std::vector<FuelLine> yieldLines(const Picture& picture, Units units, const FuelBeside& beside) {
    const FuelPicture& fuel = picture.fuel;
    const QLocale locale;
    std::vector<FuelLine> lines;
    std::optional<QString> wood, cord, each, expected;
    if (picture.wood)
        wood = figure(*picture.wood, units).text();
    if (fuel.cordPerHour)
        cord = locale.toString(*fuel.cordPerHour, 'f', 2);
    if (fuel.syrupPerCord)
        each = figure(Volume::litre(*fuel.syrupPerCord), units).text();
    if (fuel.syrupExpected)
        expected = figure(*fuel.syrupExpected, units).text();
    lines.push_back({tr("wood so far"), give(wood)});
    lines.push_back({tr("cords an hour"), give(cord)});
    lines.push_back({tr("syrup a full cord"), give(each)});
    lines.push_back({tr("syrup still in the tank"), give(expected)});
    if (fuel.sugar)
        lines.push_back({tr("sugar in, out, in the pans"), sugarWords(*fuel.sugar, units)});
    if (beside.pricePerCord && fuel.cords)
        lines.push_back({tr("what the wood cost"), costWords(picture, units, beside)});
    if (beside.pile)
        lines.push_back({tr("left of the pile"), pileWords(picture, beside.pileCords)});
    return lines;
}

QString cautionNow(const Picture& picture) {
    const FuelPicture& fuel = picture.fuel;
    if (fuel.lastLook) {
        if (fuel.watchPans)
            return tr("Firing has stopped, the arch is hot: watch the pans for %1 more, never let one run dry. A last "
                      "look at roof, fire and pans in %2.")
                .arg(spanText(*fuel.watchPans), spanText(*fuel.lastLook));
        if (fuel.lastLook->count() > 0)
            return tr("A last look at roof, fire and pans in %1. The arch stays hot for hours.")
                .arg(spanText(*fuel.lastLook));
        return tr("Take the last look now: roof, fire, pans.");
    }
    return tr("Gloves and a face shield at the door. Keep the house open: flue gas kills without a smell. Look up at "
              "the roof. Local codes and the fire marshal come first.");
}

} // namespace

FuelView fuelView(const Picture& picture, Units units, const FuelBeside& beside) {
    FuelView view;
    view.call = callWords(picture);
    view.doubt = disagreement(picture.fuel.doubt);
    view.rates = rateLines(picture, units);
    if (picture.fuel.hour)
        addHeat(view.heat, tr("the last hour"), *picture.fuel.hour);
    if (picture.fuel.shift)
        addHeat(view.heat, tr("the shift so far"), *picture.fuel.shift);
    if (view.heat.empty())
        view.heat.push_back({tr("heat"), [&] {
                                 const QString why = whyNot(picture, Shown::efficiency);
                                 return why.isEmpty() ? QStringLiteral("–") : QStringLiteral("– ") + why;
                             }()});
    view.yield = yieldLines(picture, units, beside);
    view.plan = planView(picture, units, beside.clock, beside.steps);
    if (!view.plan) {
        view.noPlan = whyNot(picture, Shown::sapLeftS);
        if (view.noPlan.isEmpty())
            view.noPlan = picture.shutdownAt
                              ? tr("firing has stopped")
                              : tr("the end of the boil needs tank level, pan areas, running depth and a lit fire");
    }
    view.endCaution =
        tr("An estimate, and advice: the person at the pans decides. Never let a pan run dry while the arch is hot.");
    view.caution = cautionNow(picture);
    return view;
}

} // namespace panside
