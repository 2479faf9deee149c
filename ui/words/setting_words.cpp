#include "ui/words/setting_words.h"

#include <QCoreApplication>

namespace panside {
namespace {
QString tr(const char* text) { return QCoreApplication::translate("Rig", text); }
} // namespace

QString settingName(Setting key) {
    switch (key) {
    case Setting::target_density:
        return tr(QT_TRANSLATE_NOOP("Rig", "density wanted"));
    case Setting::legal_minimum:
        return tr(QT_TRANSLATE_NOOP("Rig", "legal minimum"));
    case Setting::too_heavy:
        return tr(QT_TRANSLATE_NOOP("Rig", "too heavy"));
    case Setting::elevation:
        return tr(QT_TRANSLATE_NOOP("Rig", "elevation"));
    case Setting::flue_pan_area:
        return tr(QT_TRANSLATE_NOOP("Rig", "flue pan, area"));
    case Setting::syrup_pan_area:
        return tr(QT_TRANSLATE_NOOP("Rig", "syrup pan, area"));
    case Setting::running_depth:
        return tr(QT_TRANSLATE_NOOP("Rig", "running depth"));
    case Setting::feed_tank_volume:
        return tr(QT_TRANSLATE_NOOP("Rig", "feed tank holds"));
    case Setting::load_mass:
        return tr(QT_TRANSLATE_NOOP("Rig", "a usual load of wood"));
    case Setting::wood_moisture:
        return tr(QT_TRANSLATE_NOOP("Rig", "moisture of the wood, wet basis"));
    case Setting::fire_interval:
        return tr(QT_TRANSLATE_NOOP("Rig", "fire every"));
    case Setting::burn_out:
        return tr(QT_TRANSLATE_NOOP("Rig", "fire burns out in"));
    case Setting::filter_limit:
        return tr(QT_TRANSLATE_NOOP("Rig", "filter press, at most"));
    case Setting::pressure_offset:
        return tr(QT_TRANSLATE_NOOP("Rig", "barometer reads too high by"));
    case Setting::probe_offset:
        return tr(QT_TRANSLATE_NOOP("Rig", "pan probe reads too high by"));
    case Setting::probe_offset_sd:
        return tr(QT_TRANSLATE_NOOP("Rig", "that error is known to within"));
    case Setting::place:
        return tr(QT_TRANSLATE_NOOP("Rig", "where the syrup is sold"));
    case Setting::lot_scheme:
        return tr(QT_TRANSLATE_NOOP("Rig", "how lot codes are made"));
    case Setting::capped_least:
        return tr(QT_TRANSLATE_NOOP("Rig", "coolest when capped"));
    case Setting::kept_for:
        return tr(QT_TRANSLATE_NOOP("Rig", "records are kept for"));
    case Setting::stack_limit:
        return tr(QT_TRANSLATE_NOOP("Rig", "stack, at most"));
    case Setting::learned_hottest_stack:
        return tr(QT_TRANSLATE_NOOP("Rig", "hottest the stack has run"));
    case Setting::learned_pans_sugar:
        return tr(QT_TRANSLATE_NOOP("Rig", "sugar left in the pans"));
    case Setting::overflow_rim:
        return tr(QT_TRANSLATE_NOOP("Rig", "a tank calls when so much is left"));
    case Setting::overflow_calls:
        return tr(QT_TRANSLATE_NOOP("Rig", "whom it calls"));
    case Setting::learned_cycle:
        return tr(QT_TRANSLATE_NOOP("Rig", "from one draw to the next, as shifts before went"));
    case Setting::learned_brix:
        return tr(QT_TRANSLATE_NOOP("Rig", "a Brix at the draw-off takes, as shifts before went"));
    }
    return {};
}

} // namespace panside
