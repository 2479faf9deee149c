#include "ui/fuel/plan_view.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Plan", text); }

QString clockRange(const PlanView& view, const Range& range) {
    const auto at = [&](Duration from) {
        return view.clock.hourAndMinute(view.now + std::chrono::round<std::chrono::microseconds>(from));
    };
    return tr("%1 (%2 to %3)").arg(at(range.p50), at(range.p10), at(range.p90.value_or(range.p50)));
}

// "1 h 40 later", "12 min sooner".
QString apart(Duration change) {
    if (std::abs(change.count()) < 30)
        return tr("no change");
    return (change.count() > 0 ? tr("%1 later") : tr("%1 sooner")).arg(spanText(change));
}

QString changed(const PlanView& view, const EndPlan& other) {
    return tr("last load %1, %2; keep back %3")
        .arg(view.clock.hourAndMinute(view.now + std::chrono::round<std::chrono::microseconds>(other.lastLoad.p50)),
             apart(other.lastLoad.p50 - view.plan.lastLoad.p50), figure(other.keepBack, view.units).text());
}

QString sapWords(Volume more, Units units) {
    return (more < Volume{} ? tr("%1 less sap") : tr("%1 more sap"))
        .arg(figure(more < Volume{} ? -more : more, units).text());
}

QString fireWords(double harder) {
    return (harder < 0 ? tr("fired %1 % softer") : tr("fired %1 % harder")).arg(std::lround(100 * std::abs(harder)));
}

void addLines(PlanView& view, const Picture& picture) {
    const auto add = [&](const char* label, const QString& value) { view.lines.push_back({tr(label), value}); };
    add(QT_TR_NOOP("sap in the tank"), figure(view.plan.tank, view.units).text());
    add(QT_TR_NOOP("leaves it, an hour"), figure(view.plan.use, view.units).text());
    add(QT_TR_NOOP("last load"), clockRange(view, view.plan.lastLoad));
    add(QT_TR_NOOP("keep back for the pans"), figure(view.plan.keepBack, view.units).text());
    add(QT_TR_NOOP("fire burnt out"), clockRange(view, view.plan.coldFire));
    add(QT_TR_NOOP("tank empty, if you fire on"), clockRange(view, view.plan.runsOut));
    if (picture.fuel.syrupExpected)
        add(QT_TR_NOOP("syrup still in the tank"), figure(*picture.fuel.syrupExpected, view.units).text());
    if (picture.fuel.allSyrup)
        add(QT_TR_NOOP("all syrup, if nobody draws"), tr("in about %1").arg(spanText(*picture.fuel.allSyrup)));
}

} // namespace

Volume sapStep(Units units) { return units == Units::us ? Volume::gallon(50) : Volume::litre(200); }

std::optional<PlanView> planView(const Picture& picture, Units units, const WallClock& clock, PlanSteps steps) {
    if (!picture.fuel.end)
        return std::nullopt;
    const auto plan = planEnd(*picture.fuel.end);
    if (!plan)
        return std::nullopt;
    PlanView view{.now = picture.at, .clock = clock, .units = units, .plan = *plan};
    view.lastIsNext = std::ranges::any_of(
        picture.alarms, [](const AlarmPicture& one) { return one.alarm == Alarm::last_load && one.stands(); });
    view.headline = view.lastIsNext
                        ? tr("The next load is the last, or one too many.")
                        : tr("The last load in %1, at %2")
                              .arg(spanText(plan->lastLoad.p50),
                                   clock.hourAndMinute(
                                       picture.at + std::chrono::round<std::chrono::microseconds>(plan->lastLoad.p50)));
    addLines(view, picture);
    const Volume more = sapStep(units) * steps.sap;
    const double harder = fireStep * steps.fire;
    if (steps.sap != 0)
        view.withSap = planEnd(*picture.fuel.end, {.moreSap = more});
    if (steps.fire != 0)
        view.withFire = planEnd(*picture.fuel.end, {.harder = harder});
    const auto say = [&](const QString& what, int asked, const std::optional<EndPlan>& other) {
        view.changes.push_back({what, asked == 0 ? tr("as it is")
                                      : other    ? changed(view, *other)
                                                 : tr("more than the tank holds")});
    };
    say(sapWords(more, units), steps.sap, view.withSap);
    say(fireWords(harder), steps.fire, view.withFire);
    return view;
}

} // namespace panside
