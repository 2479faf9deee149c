#pragma once
// The words of the shift log: one table of readings and one of settings, shared by log, probe, engine, export and
// check.
#include "core/boil/fact.h"

#include <span>
#include <string_view>

namespace panside {

// A reading: its name in the log, what it measures, and between which values it can be true at all in a sugarhouse.
// Plausible limits are generous (common practice, no source): outside them the reading is doubted, never refused.
struct ReadingRow {
    Series series;
    std::string_view name;
    Dimension dimension;
    Unit exported;          // the unit an export or a new probe line is written in
    double lowest, highest; // SI of the row's dimension
    double fastest;         // SI a second, the quickest change that is believed for 5 s on end; 0: any
};
const ReadingRow& rowOf(Series series);
std::span<const ReadingRow> allReadings();
std::optional<Series> seriesNamed(std::string_view name);
// May this unit stand beside this reading in a log? (tank levels take L and gal, not mm)
bool takesUnit(Series series, Unit unit);

// A setting: its name, what it measures, and between which values it is taken; outside them the row is a fault.
struct SettingRow {
    Setting key;
    std::string_view name;
    Dimension dimension;
    Unit exported;
    double lowest, highest; // SI of the row's dimension
};
const SettingRow& rowOf(Setting key);
std::span<const SettingRow> allSettings();
// Written by the program at a shift's beginning, from the shifts before; nobody types it.
bool isLearned(Setting key);
std::optional<Setting> settingNamed(std::string_view name);
bool takesUnit(Setting key, Unit unit);
// A setting that is words: it has no unit, and its value is the fact's text.
inline bool isWords(Setting key) { return rowOf(key).dimension == Dimension::none; }
// A setting of the house and not of the rig: what stands before and after the boil.
inline bool isOfTheHouse(Setting key) { return key >= Setting::place && key <= Setting::kept_for; }

} // namespace panside
