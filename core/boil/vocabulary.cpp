#include "core/boil/vocabulary.h"

#include "core/quantity/enum_count.h"
#include "core/quantity/quantity.h"

#include <array>

namespace panside {
namespace {

constexpr double c0 = 273.15;
constexpr double lph = 1 / 3.6e6;

// Limits and fastest changes: common practice, no source. A rate is what the thing itself can do, not the noise on it.
constexpr std::array<ReadingRow, seriesCount> readings{{
    {Series::syrup_pan, "syrup_pan", Dimension::temperature, Unit::degC, c0 - 30, c0 + 160, 2.0},
    {Series::flue_pan, "flue_pan", Dimension::temperature, Unit::degC, c0 - 30, c0 + 130, 2.0},
    {Series::stack, "stack", Dimension::temperature, Unit::degC, c0 - 50, c0 + 1100, 60},
    {Series::feed, "feed", Dimension::temperature, Unit::degC, c0 - 15, c0 + 105, 5},
    {Series::air, "air", Dimension::temperature, Unit::degC, c0 - 50, c0 + 55, 2},
    {Series::pressure, "pressure", Dimension::pressure, Unit::kPa, 60e3, 110e3, 50},
    {Series::sea_level_pressure, "sea_level_pressure", Dimension::pressure, Unit::kPa, 87e3, 109e3, 0},
    {Series::pan_level, "pan_level", Dimension::length, Unit::mm, -0.02, 0.6, 0.05},
    {Series::flue_level, "flue_level", Dimension::length, Unit::mm, -0.02, 0.8, 0.05},
    {Series::tank_level, "tank_level", Dimension::volume, Unit::L, -0.05, 100, 0},
    {Series::feed_flow, "feed_flow", Dimension::volumeFlow, Unit::Lph, -20 * lph, 10000 * lph, 0},
    {Series::filter_pressure, "filter_pressure", Dimension::pressure, Unit::kPa, -50e3, 2000e3, 0},
}};

constexpr std::array<SettingRow, settingCount> settings{{
    {Setting::target_density, "target_density", Dimension::sugar, Unit::brix, 0.40, 0.75},
    {Setting::legal_minimum, "legal_minimum", Dimension::sugar, Unit::brix, 0.40, 0.75},
    {Setting::too_heavy, "too_heavy", Dimension::sugar, Unit::brix, 0.40, 0.75},
    {Setting::elevation, "elevation", Dimension::length, Unit::m, -430, 3000},
    {Setting::flue_pan_area, "flue_pan_area", Dimension::area, Unit::m2, 0.01, 100},
    {Setting::syrup_pan_area, "syrup_pan_area", Dimension::area, Unit::m2, 0.01, 50},
    {Setting::running_depth, "running_depth", Dimension::length, Unit::mm, 0.003, 0.5},
    {Setting::feed_tank_volume, "feed_tank_volume", Dimension::volume, Unit::L, 0.001, 100},
    {Setting::load_mass, "load_mass", Dimension::mass, Unit::kg, 0.1, 400},
    {Setting::wood_moisture, "wood_moisture", Dimension::share, Unit::percent, 0, 0.80},
    {Setting::fire_interval, "fire_interval", Dimension::time, Unit::min, 60, 7200},
    {Setting::burn_out, "burn_out", Dimension::time, Unit::min, 60, 28800},
    {Setting::filter_limit, "filter_limit", Dimension::pressure, Unit::kPa, 1e3, 2000e3},
    {Setting::pressure_offset, "pressure_offset", Dimension::pressure, Unit::kPa, -10e3, 10e3},
    {Setting::probe_offset, "probe_offset", Dimension::temperatureDifference, Unit::K, -30, 30},
    {Setting::probe_offset_sd, "probe_offset_sd", Dimension::temperatureDifference, Unit::K, 0, 10},
    {Setting::place, "place", Dimension::none, Unit::none, 0, 0},
    {Setting::lot_scheme, "lot_scheme", Dimension::none, Unit::none, 0, 0},
    {Setting::capped_least, "capped_least", Dimension::temperature, Unit::degC, c0 + 50, c0 + 100},
    {Setting::kept_for, "kept_for", Dimension::age, Unit::years, 0, 100 * 31557600.0},
    {Setting::stack_limit, "stack_limit", Dimension::temperature, Unit::degC, 373.15, 1573.15},
    {Setting::learned_hottest_stack, "learned_hottest_stack", Dimension::temperature, Unit::degC, 273.15, 1573.15},
    {Setting::overflow_rim, "overflow_rim", Dimension::volume, Unit::L, 0, 100},
    {Setting::overflow_calls, "overflow_calls", Dimension::none, Unit::none, 0, 0},
    {Setting::learned_pans_sugar, "learned_pans_sugar", Dimension::mass, Unit::kg, 0, 5000},
    {Setting::learned_cycle, "learned_cycle", Dimension::time, Unit::min, 60, 28800},
    {Setting::learned_brix, "learned_brix", Dimension::time, Unit::min, 20, 3600},
}};

// A reading or a setting without its row does not compile.
static_assert(hasCount<Series, seriesCount>());
static_assert(hasCount<Setting, settingCount>());
static_assert(inOrder(readings, &ReadingRow::series));
static_assert(inOrder(settings, &SettingRow::key));

// What stands in the shift log's tables: a tank is not read in millimetres, a barometer not in psi.
constexpr bool tableHas(Dimension dimension, Unit exported, Unit unit) {
    switch (unit) {
    case Unit::degC:
    case Unit::degF:
        return dimension == Dimension::temperature;
    case Unit::K:
        return dimension == Dimension::temperatureDifference;
    case Unit::kPa:
        return dimension == Dimension::pressure;
    case Unit::mm:
    case Unit::in:
        return dimension == Dimension::length && exported == Unit::mm;
    case Unit::m:
    case Unit::ft:
        return dimension == Dimension::length && exported == Unit::m;
    case Unit::m2:
    case Unit::ft2:
        return dimension == Dimension::area;
    case Unit::L:
    case Unit::gal:
    case Unit::impgal:
    case Unit::qt:
    case Unit::pt:
    case Unit::cup:
    case Unit::mL:
        return dimension == Dimension::volume;
    case Unit::Lph:
    case Unit::galph:
        return dimension == Dimension::volumeFlow;
    case Unit::kg:
    case Unit::lb:
        return dimension == Dimension::mass;
    case Unit::brix:
        return dimension == Dimension::sugar;
    case Unit::percent:
        return dimension == Dimension::share;
    case Unit::min:
        return dimension == Dimension::time;
    case Unit::years:
        return dimension == Dimension::age;
    default:
        return false;
    }
}

} // namespace

const ReadingRow& rowOf(Series series) { return readings[static_cast<std::size_t>(series)]; }
std::span<const ReadingRow> allReadings() { return readings; }

std::optional<Series> seriesNamed(std::string_view name) {
    for (const ReadingRow& row : readings)
        if (row.name == name)
            return row.series;
    return std::nullopt;
}

bool takesUnit(Series series, Unit unit) {
    if (series == Series::filter_pressure)
        return unit == Unit::kPa || unit == Unit::psi;
    if (unit == Unit::hPa || unit == Unit::inHg)
        return rowOf(series).dimension == Dimension::pressure;
    return tableHas(rowOf(series).dimension, rowOf(series).exported, unit);
}

const SettingRow& rowOf(Setting key) { return settings[static_cast<std::size_t>(key)]; }
std::span<const SettingRow> allSettings() { return settings; }

std::optional<Setting> settingNamed(std::string_view name) {
    for (const SettingRow& row : settings)
        if (row.name == name)
            return row.key;
    return std::nullopt;
}

bool isLearned(Setting key) { return rowOf(key).name.starts_with("learned_"); }

bool takesUnit(Setting key, Unit unit) {
    if (key == Setting::filter_limit)
        return unit == Unit::kPa || unit == Unit::psi;
    if (key == Setting::pressure_offset)
        return unit == Unit::kPa || unit == Unit::hPa;
    return tableHas(rowOf(key).dimension, rowOf(key).exported, unit);
}

} // namespace panside
