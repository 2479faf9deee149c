#include "ui/rig/rig_view.h"

#include "core/boil/settings.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "ui/words/fault_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Rig", text); }

QString numberText(double si, Unit unit) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(fromSi(si, unit), 'g', 6);
}

QString withUnit(double si, Unit unit) { return numberText(si, unit) + QChar{0x00a0} + symbolOf(unit); }

} // namespace

QString settingUsual(Setting key, Units units) {
    switch (key) {
    case Setting::fire_interval:
        return tr(QT_TRANSLATE_NOOP("Rig", "learned; %1 until then")).arg(withUnit(480, Unit::min));
    case Setting::burn_out:
        return tr(QT_TRANSLATE_NOOP("Rig", "learned; %1 until then")).arg(withUnit(2700, Unit::min));
    case Setting::filter_limit:
        return tr(QT_TRANSLATE_NOOP("Rig", "no alarm"));
    default:
        break;
    }
    const auto si = Settings{}.si(key);
    return si ? tr(QT_TRANSLATE_NOOP("Rig", "usually %1")).arg(withUnit(*si, settingUnit(key, units)))
              : tr(QT_TRANSLATE_NOOP("Rig", "unknown"));
}

Unit settingUnit(Setting key, Units units) {
    // A barometer's error is too small for inches of mercury; the filter's gauge is in psi.
    if (key == Setting::pressure_offset)
        return Unit::hPa;
    if (key == Setting::filter_limit && units == Units::us)
        return Unit::psi;
    const Dimension dimension = rowOf(key).dimension;
    if (key == Setting::elevation)
        return units == Units::us ? Unit::ft : Unit::m;
    if (dimension == Dimension::time)
        return Unit::min;
    if (dimension == Dimension::temperatureDifference)
        return Unit::K;
    return unitOf(dimension, units);
}

std::vector<RigRow> rigRows(const std::vector<Boil::Entry>& facts, Units units) {
    std::vector<RigRow> rows;
    for (const SettingRow& setting : allSettings())
        rows.push_back({.key = setting.key,
                        .label = settingName(setting.key),
                        .answer = {},
                        .unit = settingUnit(setting.key, units),
                        .usual = settingUsual(setting.key, units)});
    for (const Boil::Entry& entry : facts)
        if (const auto* set = std::get_if<Set>(&entry.fact.what))
            for (RigRow& row : rows)
                if (row.key == set->key)
                    row.answer = numberText(set->si, row.unit);
    return rows;
}

std::variant<Fact, QString> settingFact(const RigRow& row, const QString& typed, Instant now) {
    QString number = typed.trimmed();
    number.replace(u',', u'.').replace(u'\u2212', u'-');
    const std::string key{rowOf(row.key).name};
    auto made = factOf({}, "set", number.toStdString(), nameOf(row.unit), "key=" + key, now);
    if (const auto* fault = std::get_if<Fault>(&made))
        return faultWords(*fault, row.label);
    return std::get<Fact>(std::move(made));
}

} // namespace panside
