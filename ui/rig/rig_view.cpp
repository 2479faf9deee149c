#include "ui/rig/rig_view.h"

#include "core/boil/settings.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "ui/words/fault_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>
#include <fmt/format.h>
#include <ranges>

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

} // namespace

QString settingUsual(Setting key, Units units) {
    switch (key) {
    case Setting::fire_interval:
        return tr(QT_TRANSLATE_NOOP("Rig", "learned; %1 until then")).arg(withUnit(key, 480, Unit::min));
    case Setting::burn_out:
        return tr(QT_TRANSLATE_NOOP("Rig", "learned; %1 until then")).arg(withUnit(key, 2700, Unit::min));
    case Setting::filter_limit:
        return tr(QT_TRANSLATE_NOOP("Rig", "no alarm"));
    case Setting::stack_limit:
        return tr(QT_TRANSLATE_NOOP("Rig", "learned; %1 until then"))
            .arg(withUnit(key, 873.15, settingUnit(key, units)));
    default:
        break;
    }
    const auto si = Settings{}.si(key);
    return si ? tr(QT_TRANSLATE_NOOP("Rig", "usually %1")).arg(withUnit(key, *si, settingUnit(key, units)))
              : tr(QT_TRANSLATE_NOOP("Rig", "unknown"));
}

Unit settingUnit(Setting key, Units units) {
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

std::vector<RigRow> rigRows(const std::vector<Boil::Entry>& facts, Units units) {
    std::vector<RigRow> rows;
    for (const SettingRow& setting : allSettings() | std::views::filter([](const SettingRow& row) {
                                         return !isOfTheHouse(row.key) && !isLearned(row.key);
                                     }))
        rows.push_back({.key = setting.key,
                        .label = settingName(setting.key),
                        .answer = {},
                        .unit = settingUnit(setting.key, units),
                        .usual = settingUsual(setting.key, units)});
    for (const Boil::Entry& entry : facts)
        if (const auto* set = std::get_if<Set>(&entry.fact.what))
            for (RigRow& row : rows)
                if (row.key == set->key)
                    row.answer = numberText(row.key, set->si, row.unit);
    return rows;
}

std::variant<Fact, QString> settingFact(const RigRow& row, const QString& typed, Instant now) {
    QString number = typed.trimmed();
    number.replace(u',', u'.').replace(u'\u2212', u'-');
    const std::string key{rowOf(row.key).name};
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
    auto made = factOf({}, "set", written, nameOf(unit), "key=" + key, now);
    if (const auto* fault = std::get_if<Fault>(&made))
        return faultWords(*fault, row.label);
    return std::get<Fact>(std::move(made));
}

} // namespace panside
