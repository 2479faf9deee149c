#include "ui/words/setting_words.h"

#include "core/quantity/enum_count.h"

#include <QCoreApplication>
#include <array>

namespace panside {
namespace {
QString tr(const char* text) { return QCoreApplication::translate("Rig", text); }
} // namespace

QString settingName(Setting key) {
    struct Row {
        Setting of;
        const char* words;
    };
    static constexpr std::array rows{
        Row{Setting::target_density, QT_TR_NOOP("density wanted")},
        Row{Setting::legal_minimum, QT_TR_NOOP("legal minimum")},
        Row{Setting::too_heavy, QT_TR_NOOP("too heavy")},
        Row{Setting::elevation, QT_TR_NOOP("elevation")},
        Row{Setting::flue_pan_area, QT_TR_NOOP("flue pan, area")},
        Row{Setting::syrup_pan_area, QT_TR_NOOP("syrup pan, area")},
        Row{Setting::running_depth, QT_TR_NOOP("running depth")},
        Row{Setting::feed_tank_volume, QT_TR_NOOP("feed tank holds")},
        Row{Setting::load_mass, QT_TR_NOOP("a usual load of wood")},
        Row{Setting::wood_moisture, QT_TR_NOOP("moisture of the wood, wet basis")},
        Row{Setting::fire_interval, QT_TR_NOOP("fire every")},
        Row{Setting::burn_out, QT_TR_NOOP("fire burns out in")},
        Row{Setting::filter_limit, QT_TR_NOOP("filter press, at most")},
        Row{Setting::pressure_offset, QT_TR_NOOP("barometer reads too high by")},
        Row{Setting::probe_offset, QT_TR_NOOP("pan probe reads too high by")},
        Row{Setting::probe_offset_sd, QT_TR_NOOP("that error is known to within")},
        Row{Setting::place, QT_TR_NOOP("where the syrup is sold")},
        Row{Setting::lot_scheme, QT_TR_NOOP("how lot codes are made")},
        Row{Setting::capped_least, QT_TR_NOOP("coolest when capped")},
        Row{Setting::kept_for, QT_TR_NOOP("records are kept for")},
        Row{Setting::stack_limit, QT_TR_NOOP("stack, at most")},
        Row{Setting::learned_hottest_stack, QT_TR_NOOP("hottest the stack has run")},
        Row{Setting::overflow_rim, QT_TR_NOOP("a tank calls when so much is left")},
        Row{Setting::overflow_calls, QT_TR_NOOP("whom it calls")},
        Row{Setting::learned_pans_sugar, QT_TR_NOOP("sugar left in the pans")},
        Row{Setting::learned_cycle, QT_TR_NOOP("from one draw to the next, as shifts before went")},
        Row{Setting::learned_brix, QT_TR_NOOP("a Brix at the draw-off takes, as shifts before went")}};
    static_assert(inOrder(rows, &Row::of) && hasCount<Setting, rows.size()>());
    const auto row = static_cast<std::size_t>(key);
    return row < rows.size() ? tr(rows[row].words) : QString{};
}

} // namespace panside
