#include "ui/vessels/vessels_view.h"

#include "core/physics/pack.h"
#include "ui/look/wall_clock.h"
#include "ui/words/book_words.h"
#include "ui/words/place_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Vessels", text); }
constexpr Brix usualSap = Brix::degrees(2.0); // common practice, no source
constexpr std::chrono::hours justDrawn{8};

bool isSyrup(const Vessel& vessel) { return !vessel.out && !isTankKind(vessel.kind); }

QString plusMinus(const Liquid& content) {
    const QString is = QLocale{}.toString(content.brix().degrees(), 'f', 1);
    const double error = content.error().degrees();
    return error > 0 ? is + QStringLiteral("\u00a0±\u00a0") + QLocale{}.toString(std::max(0.1, error), 'f', 1) : is;
}

QString kindWord(VesselKind kind) {
    static constexpr std::string_view words[] = {"",     "gather", "truck", "hold",  "feed", "concentrate",
                                                 "pail", "filter", "drum",  "canner"};
    const auto word = words[static_cast<std::size_t>(kind)];
    return word.empty() ? QString{} : choiceWord(word);
}

QString dayOf(const std::string& date) {
    const QDate day = QDate::fromString(utf8(date), Qt::ISODate);
    return day.isValid() ? QLocale{}.toString(day, QStringLiteral("d MMM")) : utf8(date);
}

QString nightsOf(const Vessel& vessel, const Ledger& ledger) {
    QStringList days;
    for (const Night& night : ledger.nights())
        if (std::ranges::find(vessel.shifts, night.shift) != vessel.shifts.end())
            days << dayOf(night.date);
    if (days.size() > 3)
        return tr("%1 nights").arg(days.size());
    return days.join(QStringLiteral(", "));
}

QString marksOf(const Vessel& vessel) {
    QStringList words;
    if (const QString taint = taintWords(vessel.taint); !taint.isEmpty())
        words << taint;
    if (vessel.lead == "suspect" && !vessel.taint.lead)
        words << tr("lead suspect");
    return words.join(QStringLiteral(", "));
}

QString shortRemedy(const Remedy& remedy, Units units) {
    switch (remedy.kind) {
    case Remedy::Kind::empty:
        return {};
    case Remedy::Kind::notSyrup:
        return tr("no syrup yet");
    case Remedy::Kind::good:
        return tr("good as it is");
    case Remedy::Kind::tooThin:
        return tr("boil %1 off").arg(handAmount(remedy.boilOff, units, remedy.within).text);
    case Remedy::Kind::maybeThin:
        return tr("test before you pack it");
    case Remedy::Kind::tooHeavy:
    case Remedy::Kind::heavy:
        return tr("stir in %1 of sap").arg(handAmount(remedy.stirIn, units, remedy.within).text);
    }
    return {};
}

LostDraw lostDraw(const HouseLedger& house, std::size_t row, Units units) {
    const LedgerRow& its = house.rows()[row];
    LostDraw draw;
    draw.shift = its.shift >= 0 ? house.parts().shifts[static_cast<std::size_t>(its.shift)]->id : ShiftId{};
    draw.id = its.id;
    draw.fact = *its.fact;
    const auto* closed = std::get_if<DrawClosed>(&its.fact->what);
    draw.words =
        namedAs(QLocale{}.toString(WallClock{}.at(its.fact->at), QStringLiteral("d MMM HH:mm")),
                closed && closed->volume ? figure(closed->volume->value, units).text() : tr("nobody said how much"));
    return draw;
}

} // namespace

QString taintWords(const Taint& taint) {
    QStringList words;
    if (taint.milk)
        words << tr("milk (%1)").arg(choiceWord(taint.milkOf));
    if (taint.lead)
        words << tr("lead over the limit");
    if (taint.ropy)
        words << tr("ropy sap");
    if (!taint.off.empty())
        words << tr("off: %1").arg(utf8(taint.off));
    return words.join(QStringLiteral(", "));
}

DensityLimits limitsOf(const Ledger& ledger, std::span<const Set> settings) {
    DensityLimits limits{ledger.tables().least, ledger.tables().most, Brix::degrees(66.9), usualSap};
    for (const Set& set : settings) {
        if (set.key == Setting::target_density)
            limits.aim = Brix::ofSi(set.si);
        if (set.key == Setting::legal_minimum)
            limits.least = Brix::ofSi(set.si);
        if (set.key == Setting::too_heavy)
            limits.most = Brix::ofSi(set.si);
    }
    const auto& gathered = ledger.tables().gathered;
    for (auto row = gathered.rbegin(); row != gathered.rend(); ++row)
        if (!row->bought && !row->sugarAssumed && row->liquid.brix().si() > 0) {
            limits.sap = row->liquid.brix();
            break;
        }
    return limits;
}

bool isApart(const Vessel& vessel) { return !vessel.taint.off.empty() || vessel.taint.lead; }

QString leavesSentence(const Ledger& ledger, const BookForm& form, Units units) {
    const auto from = ledger.vesselNamed(form.answer(Key::from).toStdString());
    if (!from)
        return {};
    const Vessel& of = ledger.vessels()[*from];
    if (of.content.isEmpty())
        return tr("%1 is empty.").arg(utf8(of.name));
    const auto into = ledger.vesselNamed(form.answer(Key::to).toStdString());
    if (form.deed != Deed::moved || !into || into == from || ledger.vessels()[*into].content.isEmpty())
        return tr("%1: %2 at %3").arg(utf8(of.name), figure(of.content.volume(), units).text(), plusMinus(of.content));
    const auto typed = siOf(form, std::nullopt);
    const Vessel& target = ledger.vessels()[*into];
    const Liquid part = of.content.part(typed ? std::clamp(*typed / of.content.volume().si(), 0.0, 1.0) : 1.0);
    Liquid blend = target.content;
    blend += part;
    const QString says =
        tr("A blend. %1: %2 at %3").arg(utf8(target.name), figure(blend.volume(), units).text(), plusMinus(blend));
    if (!of.light || !target.light)
        return says;
    const LitPart lit[] = {{target.content.volume(), *target.light}, {part.volume(), *of.light}};
    const auto light = lightThrough(lit);
    return light ? says + QStringLiteral(". ") +
                       tr("Its color is an estimate: %1 % of light, %2. Measure it before it is labeled.")
                           .arg(QLocale{}.toString(*light * 100, 'f', 0), classOf(*light, ledger.tables().law()))
                 : says;
}

QString remedySentence(const Vessel& vessel, const DensityLimits& limits, Units units) {
    const Liquid& content = vessel.content;
    const Remedy remedy = remedyOf(content, limits);
    if (remedy.kind == Remedy::Kind::empty)
        return tr("%1 is empty.").arg(utf8(vessel.name));
    const QString holds =
        tr("%1: %2 at %3").arg(utf8(vessel.name), figure(content.volume(), units).text(), plusMinus(content));
    if (isApart(vessel))
        return tr("%1: keep it apart").arg(holds);
    const QString least = QLocale{}.toString(limits.least.degrees(), 'f', 1);
    const QString most = QLocale{}.toString(limits.most.degrees(), 'f', 1);
    const QString aim = QLocale{}.toString(remedy.aim.degrees(), 'f', 1);
    const QString sap = handAmount(remedy.stirIn, units, remedy.within).text;
    const QString water = handAmount(remedy.boilOff, units, remedy.within).text;
    switch (remedy.kind) {
    case Remedy::Kind::tooThin:
        return tr("%1, under the %2 for this place: do not pack; boil %3 off for %4").arg(holds, least, water, aim);
    case Remedy::Kind::maybeThin:
        return tr("%1: perhaps under the %2 for this place. Test it before you pack it").arg(holds, least);
    case Remedy::Kind::tooHeavy:
        return tr("%1, over the %2 for this place: do not pack; stir in %3 of sap, heat, test").arg(holds, most, sap);
    case Remedy::Kind::heavy:
        return tr("%1: stir in %2 of sap, heat, test").arg(holds, sap);
    case Remedy::Kind::good:
        return tr("%1: good as it is").arg(holds);
    default:
        return holds;
    }
}

VesselsView vesselsView(const HouseLedger* house, std::span<const Set> settings, Units units) {
    VesselsView view;
    if (!house) {
        view.nothing = tr("Reading the book …");
        return view;
    }
    const Ledger& ledger = house->ledger();
    const DensityLimits limits = limitsOf(ledger, settings);
    view.columns = {{tr("vessel")},           {tr("kind"), false, 4},       {tr("holds"), true},    {tr("°Brix"), true},
                    {tr("nights"), false, 3}, {tr("also in it"), false, 2}, {tr("needs"), false, 1}};
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < ledger.vessels().size(); ++i)
        if (isSyrup(ledger.vessels()[i]))
            order.push_back(i);
    // What holds something first, the one that was touched last before the others.
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        const Vessel &x = ledger.vessels()[a], &y = ledger.vessels()[b];
        return std::pair{x.content.isEmpty(), y.touched} < std::pair{y.content.isEmpty(), x.touched};
    });
    for (const std::size_t i : order) {
        const Vessel& vessel = ledger.vessels()[i];
        const bool empty = vessel.content.isEmpty();
        const Remedy remedy = remedyOf(vessel.content, limits);
        const QString marks = empty ? QString{} : marksOf(vessel);
        view.rows.push_back(
            {{utf8(vessel.name), kindWord(vessel.kind),
              empty ? tr("empty") : figure(vessel.content.volume(), units).text(),
              empty ? QString{} : plusMinus(vessel.content), empty ? QString{} : nightsOf(vessel, ledger), marks,
              !empty && isApart(vessel) ? tr("keep it apart") : shortRemedy(remedy, units)},
             false,
             empty});
        QStringList notes;
        if (!empty && vessel.sugarAssumed)
            notes << tr("Not all of it was measured: its density is calculated.");
        if (vessel.unwritten)
            notes << unwrittenWords(*vessel.unwritten);
        if (!empty && vessel.taint.milk)
            notes << tr("Milk is in it: it belongs on every label.");
        if (!empty && (vessel.taint.lead || vessel.lead == "suspect"))
            notes << tr("Lead: have it tested before it is sold.");
        if (!empty && !vessel.taint.off.empty())
            notes << tr("Keep it apart: for processing only.");
        if (remedy.stirIn.si() > 0 || remedy.boilOff.si() > 0)
            notes << tr("Hot syrup burns deeply: carry it covered.");
        view.lines.push_back({i, utf8(vessel.name), remedySentence(vessel, limits, units), notes.join(u' ')});
    }
    for (const LedgerMark& mark : ledger.marks())
        if (mark.kind == MarkKind::noVessel && !house->moreOf(mark.row))
            view.whereTo.push_back(lostDraw(*house, mark.row, units));
    if (view.rows.empty())
        view.nothing = tr(
            "No vessel for syrup has a name yet. Name the first one, or say at the end of a draw what it went into.");
    return view;
}

int lastDrawn(const VesselsView& view, const HouseLedger& house, Instant now) {
    const auto& draws = house.ledger().tables().draws;
    if (draws.empty() || draws.back().to.empty() || now < draws.back().at || now - draws.back().at > justDrawn)
        return -1;
    for (std::size_t i = 0; i < view.lines.size(); ++i)
        if (nameKey(house.ledger().vessels()[view.lines[i].vessel].name) == nameKey(draws.back().to))
            return static_cast<int>(i);
    return -1;
}

} // namespace panside
