#include "ui/entry/unit_slip.h"

#include "core/boil/vocabulary.h"
#include "core/boil/water_boil.h"
#include "core/physics/sap.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Slip", text); }

// Between which values a number can be, and between which it is usual; SI. Limits of readings are the log's own.
struct Span {
    QString what;
    double lowest, highest;
    double usualLow, usualHigh;
    bool holds(double si) const { return si >= lowest && si <= highest; }
    bool isUsual(double si) const { return si >= usualLow && si <= usualHigh; }
};

constexpr double zero = 273.15;

std::optional<Series> seriesOf(const EntryForm& form) {
    const EntryField* kind = form.field(QStringLiteral("reading"));
    if (form.action != Action::handReading || !kind)
        return std::nullopt;
    const auto index = kind->choices.indexOf(kind->answer);
    return index < 0 ? std::nullopt : std::optional{allReadings()[static_cast<std::size_t>(index)].series};
}

Span spanOf(Series series) {
    const ReadingRow& row = rowOf(series);
    Span span{readingName(series), row.lowest, row.highest, row.lowest, row.highest};
    // A pan that is read by hand boils; what was meant in the other scale is far from that (common practice, no
    // source).
    if (series == Series::syrup_pan || series == Series::flue_pan) {
        span.usualLow = zero + 60;
        span.usualHigh = zero + 130;
    }
    if (series == Series::feed) // sap, not yet boiling
        span.highest = span.usualHigh = zero + 100;
    return span;
}

std::optional<Span> spanOf(const EntryForm& form, const EntryField& field) {
    if (const auto series = seriesOf(form); series && field.name == QLatin1String("value"))
        return spanOf(*series);
    if (field.name == QLatin1String("cup")) // between ice and boiling syrup
        return Span{tr("cup"), zero - 5, zero + 115, zero - 5, zero + 115};
    if (field.name == QLatin1String("temperature")) // of sap (common practice, no source)
        return Span{tr("sap"), zero - 5, zero + 60, zero - 5, zero + 25};
    if (field.name == QLatin1String("boiled"))
        return Span{tr("boiling water"), coldestBoil.kelvin() - 5, hottestBoil.kelvin() + 10, coldestBoil.kelvin() - 5,
                    hottestBoil.kelvin() + 10};
    return std::nullopt;
}

// With as many digits as were typed: nobody knows more.
QString shown(const QString& digits, Unit unit) { return digits + QChar{0x00a0} + symbolOf(unit); }

// none: no unit makes sense of it.
Unit meantUnit(const Span& span, double number, Unit typed) {
    for (const Unit other : {Unit::degF, Unit::degC, Unit::kPa, Unit::hPa, Unit::inHg, Unit::psi})
        if (other != typed && dimensionOf(other) == dimensionOf(typed) && span.isUsual(toSi(number, other)))
            return other;
    return Unit::none;
}

// 22 for 2.2: a point that the glove missed.
std::optional<UnitSlip> pointSlip(const EntryField& field) {
    if (field.name != QLatin1String("brix"))
        return std::nullopt;
    const auto sugar = numberIn(QString{field.answer.trimmed()}.replace(u',', u'.').toStdString());
    if (!sugar || Brix::degrees(*sugar) <= sweetestConcentrate)
        return std::nullopt;
    const QString typed = shown(field.answer.trimmed(), Unit::brix), meant = QLocale{}.toString(*sugar / 10, 'g', 4);
    return UnitSlip{.field = field.name,
                    .words = tr("Sap of %1 is unusual. Did you mean %2?").arg(typed, meant),
                    .asTyped = tr("It is %1").arg(typed),
                    .asMeant = tr("It is %1").arg(shown(meant, Unit::brix)),
                    .unit = Unit::brix,
                    .digits = meant};
}

} // namespace

std::optional<UnitSlip> slipOf(const EntryForm& form) {
    for (const EntryField& field : form.fields) {
        if (auto slip = pointSlip(field))
            return slip;
        const auto span = field.kind == EntryField::Kind::number ? spanOf(form, field) : std::nullopt;
        QString digits = field.answer.trimmed();
        const auto number = numberIn(QString{digits}.replace(u',', u'.').replace(u'\u2212', u'-').toStdString());
        if (!span || !number)
            continue;
        const double si = toSi(*number, field.unit);
        const bool can = span->holds(si);
        const Unit other = span->isUsual(si) ? Unit::none : meantUnit(*span, *number, field.unit);
        const bool meant = other != Unit::none;
        if (can && !meant)
            continue;
        UnitSlip slip{.field = field.name, .words = {}, .asTyped = {}, .asMeant = {}};
        const QString typed = shown(digits, field.unit);
        slip.words = (!can && meant ? tr("%1: %2 is not possible. Did you mean another unit?")
                      : !can        ? tr("%1: %2 is not possible. Look at the digits.")
                                    : tr("%1: %2 is unusual. Did you mean another unit?"))
                         .arg(span->what, typed);
        if (can)
            slip.asTyped = tr("It is %1").arg(typed);
        if (meant) {
            slip.unit = other;
            slip.asMeant = tr("It is %1").arg(shown(digits, other));
        }
        return slip;
    }
    return std::nullopt;
}

void takeAsMeant(EntryForm& form, const UnitSlip& slip) {
    for (EntryField& field : form.fields)
        if (field.name == slip.field) {
            field.unit = slip.unit;
            field.answer = slip.digits.isEmpty() ? field.answer : slip.digits;
        }
}

} // namespace panside
