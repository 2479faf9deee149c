#include "ui/words/setting_words.h"

#include <QCoreApplication>

namespace panside {
namespace {
QString tr(const char* text) { return QCoreApplication::translate("Rig", text); }
} // namespace

QString settingName(Setting key) {
    switch (key) {
    case Setting::target_density:
        return tr("density wanted");
    case Setting::legal_minimum:
        return tr("legal minimum");
    case Setting::too_heavy:
        return tr("too heavy");
    case Setting::elevation:
        return tr("elevation");
    case Setting::flue_pan_area:
        return tr("flue pan, area");
    case Setting::syrup_pan_area:
        return tr("syrup pan, area");
    case Setting::running_depth:
        return tr("running depth");
    case Setting::feed_tank_volume:
        return tr("feed tank holds");
    case Setting::load_mass:
        return tr("a usual load of wood");
    case Setting::wood_moisture:
        return tr("moisture of the wood, wet basis");
    case Setting::fire_interval:
        return tr("fire every");
    case Setting::burn_out:
        return tr("fire burns out in");
    case Setting::filter_limit:
        return tr("filter press, at most");
    case Setting::pressure_offset:
        return tr("barometer reads too high by");
    case Setting::probe_offset:
        return tr("pan probe reads too high by");
    case Setting::probe_offset_sd:
        return tr("that error is known to within");
    case Setting::place:
        return tr("where the syrup is sold");
    case Setting::lot_scheme:
        return tr("how lot codes are made");
    case Setting::capped_least:
        return tr("coolest when capped");
    case Setting::kept_for:
        return tr("records are kept for");
    case Setting::stack_limit:
        return tr("stack, at most");
    case Setting::learned_hottest_stack:
        return tr("hottest the stack has run");
    case Setting::learned_pans_sugar:
        return tr("sugar left in the pans");
    case Setting::overflow_rim:
        return tr("a tank calls when so much is left");
    case Setting::overflow_calls:
        return tr("whom it calls");
    case Setting::learned_cycle:
        return tr("from one draw to the next, as shifts before went");
    case Setting::learned_brix:
        return tr("a Brix at the draw-off takes, as shifts before went");
    }
    return {};
}

} // namespace panside
