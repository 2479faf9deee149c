#pragma once
// The screens behind the console's keys: one row each.
#include "ui/frame/desk.h"

#include <span>

namespace panside {

struct ScreenRow {
    Action opens;
    bool ofTheJournal; // it reads or writes the journal or the probe file: none in a rehearsal
    Desk* (*make)(Shell& shell);
};
std::span<const ScreenRow> allScreens();

} // namespace panside
