#include "ui/words/check_words.h"

#include <QCoreApplication>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("CheckWords", text); }

constexpr double newsFor = 180; // seconds

QString weightWords(CheckWeight weight) {
    switch (weight) {
    case CheckWeight::underLegal:
        return tr("too light to sell");
    case CheckWeight::perhapsUnderLegal:
        return tr("perhaps too light to sell");
    case CheckWeight::light:
        return tr("light");
    case CheckWeight::heavy:
        return tr("heavy");
    case CheckWeight::tooHeavy:
        return tr("too heavy, it may crystallize");
    case CheckWeight::right:
        break;
    }
    return tr("right");
}

QString remarkWords(CheckRemark remark) {
    switch (remark) {
    case CheckRemark::none:
        break;
    case CheckRemark::hotPrism:
        return tr(" Too hot for a refractometer: let the sample cool, or use a glass.");
    case CheckRemark::cupNotTaken:
        return tr(" Take the cup's temperature: it counts for more.");
    case CheckRemark::inBaume:
        return tr(" Was that Baumé?");
    case CheckRemark::hotScale:
        return tr(" Is the glass made for a hot cup?");
    }
    return {};
}

QString fateWords(const Picture& picture, Units units) {
    const CheckPicture& check = *picture.check;
    if (check.fate == CheckFate::doubted)
        return tr("Far off: kept, the target stays. Check once more.");
    if (check.fate == CheckFate::unplaced || !picture.target)
        return tr("Kept; no reading to compare it with.");
    const QString target = figure(*picture.target, units).text();
    // What does not show in the figure is no move.
    const Figure moved = figure(TemperatureDifference::kelvin(std::abs(check.moved.kelvin())), units);
    if (moved.number == figure(TemperatureDifference::kelvin(0), units).number)
        return tr("Open at %1, as before.").arg(target);
    if (check.moved.kelvin() > 0)
        return tr("Open at %1 now, %2 higher.").arg(target, moved.text());
    return tr("Open at %1 now, %2 lower.").arg(target, moved.text());
}

} // namespace

QString checkWords(const Picture& picture, Units units) {
    if (!picture.check || secondsBetween(picture.check->at, picture.at) > newsFor)
        return {};
    if (!picture.check->sugar || picture.check->fate == CheckFate::unreadable)
        return tr("That check cannot be syrup: wrong unit or digit? Kept; correct it.");
    // What is not believed is not judged by: nobody is to boil on towards a scorch for it.
    if (picture.check->fate == CheckFate::doubted)
        return tr("%1? %2").arg(figure(*picture.check->sugar).text(), fateWords(picture, units)) +
               remarkWords(picture.check->remark);
    return tr("%1: %2. %3")
               .arg(figure(*picture.check->sugar).text(), weightWords(picture.check->weight),
                    fateWords(picture, units)) +
           remarkWords(picture.check->remark);
}

} // namespace panside
