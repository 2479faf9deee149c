#include "ui/season/tuning_view.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Tuning", text, comment, n);
}

double percentOf(double logarithm) { return 100 * std::expm1(logarithm); }

QString signedPercent(double percent) {
    const QString sign = percent >= 0.5 ? QStringLiteral("+") : QString{};
    const double shown = std::abs(percent) < 0.5 ? 0 : percent;
    return sign + QLocale{}.toString(shown, 'f', 0).replace(u'-', QChar{0x2212});
}

QString percentText(double middle, double low, double high) {
    return tr("%1 %, between %2 and %3")
        .arg(signedPercent(percentOf(middle)), signedPercent(percentOf(low)), signedPercent(percentOf(high)));
}

// What is done with its step taken: "2 min sooner".
QString causeWords(const Effect& effect, Units units) {
    const double step = std::abs(effect.step);
    switch (effect.cause) {
    case Cause::smallerOftener:
        return tr("smaller and more often: %1 sooner, the wood an hour the same").arg(spanText(Duration{step}));
    case Cause::fireInterval:
        return tr("firing %1 sooner, the load the same").arg(spanText(Duration{step}));
    case Cause::loadMass:
        return tr("%1 less a load, as often").arg(figure(Mass::ofSi(step), units).text());
    case Cause::moisture:
        return tr("wood drier by %1 points of moisture").arg(100 * step);
    case Cause::depth:
        return tr("syrup pan %1 deeper").arg(figure(Length::ofSi(step), units).text());
    case Cause::stack:
        return tr("stack %1 hotter").arg(figure(TemperatureDifference::kelvin(step), units, 0).text());
    case Cause::sapSugar:
        return tr("sap %1 sweeter").arg(figure(Brix::ofSi(step)).text());
    case Cause::pressure:
        return tr("air pressure %1 higher").arg(figure(Pressure::ofSi(step), units).text());
    case Cause::advance:
        return tr("%1 days later in the season").arg(step);
    case Cause::species:
        return tr("%1 for other wood").arg(QString::fromStdString(effect.what));
    case Cause::hand:
        return tr("%1 on the crew").arg(QString::fromStdString(effect.what));
    }
    return {};
}

// The cause by name, for lists.
QString causeName(Cause cause, const std::string& what) {
    switch (cause) {
    case Cause::smallerOftener:
        return tr("smaller and more often");
    case Cause::fireInterval:
        return tr("the firing interval");
    case Cause::loadMass:
        return tr("the load");
    case Cause::moisture:
        return tr("the wood's moisture");
    case Cause::depth:
        return tr("the depth of the pan");
    case Cause::stack:
        return tr("the stack's temperature");
    case Cause::sapSugar:
        return tr("the sap's sugar");
    case Cause::pressure:
        return tr("the air pressure");
    case Cause::advance:
        return tr("how late in the season");
    case Cause::species:
    case Cause::hand:
        return QString::fromStdString(what);
    }
    return {};
}

QString entangledWords(const Tuning& tuning, const Entangled& group) {
    QStringList names;
    for (const std::size_t i : group.effects)
        names << causeName(tuning.effects[i].cause, tuning.effects[i].what);
    return tr("These changed together, so which of them did what is not known: %1. All at once, by one usual swing: "
              "%2: %3.")
        .arg(names.join(QStringLiteral(", ")), percentText(group.middle, group.low, group.high),
             verdictWord(group.verdict));
}

void addLeftOut(const Tuning& tuning, QStringList& notes) {
    QStringList unknown, same;
    for (const LeftOut& one : tuning.leftOut)
        (one.same ? same : unknown) << causeName(one.cause, one.what);
    if (!unknown.isEmpty())
        notes << tr("Known on too few nights to be judged: %1.").arg(unknown.join(QStringLiteral(", ")));
    if (!same.isEmpty())
        notes << tr("Much the same every night, so it tells nothing: %1.").arg(same.join(QStringLiteral(", ")));
}

QString tomorrowWords(const Tuning& tuning, Units units) {
    if (!tuning.next)
        return tuning.effects.empty() ? tr("No comparison can be named yet: boil some nights first, and do one thing "
                                           "differently on some of them.")
                                      : tr("Nothing that a crew can choose is still open.");
    const Effect& effect = tuning.effects[tuning.next->effect];
    const QString pairs =
        tuning.next->pairs == 1 ? tr("One such pair of nights would show a difference of 5 %.")
        : tuning.next->pairs > 0
            ? tr("About %1 such pairs of nights would show a difference of 5 %.").arg(tuning.next->pairs)
            : tr("It would take more than 20 such pairs of nights to show a difference of 5 %: nights vary too much.");
    return tr("To learn the most: one night with %1, one night without, all else alike.")
               .arg(causeWords(effect, units)) +
           QStringLiteral(" ") + pairs;
}

} // namespace

QString verdictWord(Verdict verdict) {
    switch (verdict) {
    case Verdict::pays:
        return tr("more with it");
    case Verdict::costs:
        return tr("less with it");
    case Verdict::hardlyMatters:
        return tr("hardly matters");
    case Verdict::tooLittle:
        return tr("too little to tell");
    case Verdict::entangled:
        return tr("changed with others");
    }
    return {};
}

TuningWords tuningWords(const Tuning& tuning, Units units) {
    TuningWords words;
    const bool evaporation = tuning.outcome == Outcome::evaporation;
    words.title = evaporation ? tr("What changes the evaporation") : tr("What changes the syrup a cord gives");
    words.basis = tuning.nights == 0   ? tr("It rests on no night")
                  : tuning.nights == 1 ? tr("It rests on 1 night")
                                       : tr("It rests on %1 nights").arg(tuning.nights);
    if (tuning.nights < tuning.withOutcome)
        words.basis += tr(" of %1 that know it").arg(tuning.withOutcome);
    if (tuning.nights < fewestNights)
        words.basis += tr(": too little to tell anything. Six are the fewest.");
    else
        words.basis += tr(". A night varies by %1 % for reasons not seen here.")
                           .arg(QLocale{}.toString(percentOf(tuning.scatter), 'f', 0));
    for (const Effect& effect : tuning.effects)
        words.lines.push_back({.cause = causeWords(effect, units),
                               .figure = percentText(effect.middle, effect.low, effect.high),
                               .verdict = verdictWord(effect.verdict),
                               .middle = percentOf(effect.middle),
                               .low = percentOf(effect.low),
                               .high = percentOf(effect.high),
                               .claimed = effect.verdict == Verdict::pays || effect.verdict == Verdict::costs});
    for (const Entangled& group : tuning.entangled)
        words.notes << entangledWords(tuning, group);
    addLeftOut(tuning, words.notes);
    words.tomorrow = tomorrowWords(tuning, units);
    words.caution =
        tr("What changed together is no proof of what did it. Nothing here is worth a low pan or an overfired arch.");
    return words;
}

} // namespace panside
