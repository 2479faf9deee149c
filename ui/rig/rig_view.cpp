#include "ui/rig/rig_view.h"

#include "core/boil/settings.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "core/ledger/lot_code.h"
#include "ui/words/fault_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>
#include <fmt/format.h>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Rig", text); }

bool isStep(Setting key) { return rowOf(key).dimension == Dimension::temperatureDifference; }

// A step on the temperature scale is never shifted by 32.
double valueIn(Setting key, double si, Unit unit) {
    return isStep(key) ? si / differenceToSi(1, unit) : fromSi(si, unit);
}

QString numberText(Setting key, double si, Unit unit) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    // As many digits as a person would write: 820 ft, 18 ft², 0.56 m², 66.9 °Brix.
    const double value = valueIn(key, si, unit);
    const double size = std::abs(value);
    // An error in inches of mercury is a small number.
    const int decimals = size >= 100 ? 0 : size >= 10 ? 1 : unit == Unit::inHg && size < 1 ? 4 : 2;
    const double power = std::pow(10.0, decimals);
    return locale.toString(std::round(value * power) / power, 'g', 12);
}

QString withUnit(Setting key, double si, Unit unit) {
    return numberText(key, si, unit) + QChar{0x00a0} + symbolOf(unit);
}

QString sourceOf(const PlaceLaw& law) {
    const QString text = utf8(law.density.text);
    return law.density.quoted ? tr("by %1 (read only as quoted)").arg(text) : tr("by %1").arg(text);
}

QString ofTheLaw(Setting key, const PlaceLaw& law) {
    const auto brix = key == Setting::legal_minimum ? std::optional{law.least} : law.most;
    const QString at = figure(law.statedAt, law.country == Country::canada ? Units::metric : Units::us, 0).text();
    return brix ? tr("%1 in %2, at %3").arg(withUnit(key, brix->si(), Unit::brix), utf8(law.name), at)
                : tr("none is known of %1").arg(utf8(law.name));
}

} // namespace

QString settingUsual(Setting key, Units units, const PlaceLaw* law) {
    switch (key) {
    case Setting::legal_minimum:
    case Setting::too_heavy:
        if (law)
            return ofTheLaw(key, *law);
        break;
    case Setting::place:
        return law ? sourceOf(*law) : tr("a state or a province; US or Canada until then");
    case Setting::lot_scheme:
        return tr("usually %1; {yyyy} {mm} {dd}: its day, {v}: the vessel, {n}: counted").arg(utf8(usualLotScheme));
    case Setting::fire_interval:
        return tr("learned; %1 until then").arg(withUnit(key, 480, Unit::min));
    case Setting::burn_out:
        return tr("learned; %1 until then").arg(withUnit(key, 2700, Unit::min));
    case Setting::filter_limit:
        return tr("no alarm");
    case Setting::stack_limit:
        return tr("learned; %1 until then").arg(withUnit(key, 873.15, settingUnit(key, units)));
    case Setting::overflow_rim:
        return tr("15 min before it runs over");
    case Setting::overflow_calls:
        return tr("nobody is named");
    default:
        break;
    }
    const auto si = Settings{}.si(key);
    return si ? tr("usually %1").arg(withUnit(key, *si, settingUnit(key, units))) : tr("unknown");
}

Unit settingUnit(Setting key, Units units) {
    if (isWords(key))
        return Unit::none;
    // The filter's gauge is in psi, the barometer in inches of mercury.
    if (key == Setting::filter_limit && units == Units::us)
        return Unit::psi;
    const Dimension dimension = rowOf(key).dimension;
    if (key == Setting::elevation)
        return units == Units::us ? Unit::ft : Unit::m;
    if (dimension == Dimension::time)
        return Unit::min;
    return unitOf(dimension, units);
}

RigRow rigRow(Setting key, const std::vector<Set>& inForce, Units units, const PlaceLaw* law) {
    RigRow row{.key = key,
               .label = settingName(key),
               .answer = {},
               .unit = settingUnit(key, units),
               .usual = settingUsual(key, units, law)};
    for (const Set& set : inForce)
        if (set.key == key)
            row.answer = isWords(key) ? utf8(set.text) : numberText(key, set.si, row.unit);
    return row;
}

std::vector<RigRow> rigRows(const Facts& facts, Units units) {
    Settings inForce;
    for (const Boil::Entry& entry : facts)
        if (const auto* set = std::get_if<Set>(&entry.fact.what))
            inForce.put(*set);
    std::vector<RigRow> rows;
    for (const bool house : {false, true})
        for (const SettingRow& setting : allSettings())
            if (isOfTheHouse(setting.key) == house && !isLearned(setting.key))
                rows.push_back(rigRow(setting.key, {}, units, inForce.law()));
    for (const Boil::Entry& entry : facts)
        if (const auto* set = std::get_if<Set>(&entry.fact.what))
            for (RigRow& row : rows)
                if (row.key == set->key)
                    row.answer = isWords(row.key) ? utf8(set->text) : numberText(row.key, set->si, row.unit);
    return rows;
}

std::variant<Fact, QString> settingFact(const RigRow& row, const QString& typed, Instant now) {
    const std::string key{rowOf(row.key).name};
    const auto asFact = [&](const std::string& value, Unit its) -> std::variant<Fact, QString> {
        auto made = factOf({}, "set", value, nameOf(its), "key=" + key, now);
        if (const auto* fault = std::get_if<Fault>(&made))
            return faultWords(*fault, row.label);
        return std::get<Fact>(std::move(made));
    };
    if (isWords(row.key))
        return asFact(typed.trimmed().toStdString(), Unit::none);
    QString number = typed.trimmed();
    number.replace(u',', u'.').replace(u'\u2212', u'-');
    std::string written = number.toStdString();
    Unit unit = row.unit;
    // The log has these in one unit only.
    const bool mercury = row.key == Setting::pressure_offset && unit == Unit::inHg;
    if (const auto value = numberIn(written); value && (isStep(row.key) || mercury)) {
        unit = mercury ? Unit::kPa : Unit::K;
        written =
            fmt::format("{:.6g}", mercury ? fromSi(toSi(*value, Unit::inHg), unit) : differenceToSi(*value, row.unit));
    }
    if (isStep(row.key))
        unit = Unit::K;
    return asFact(written, unit);
}

} // namespace panside
