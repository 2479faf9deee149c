#pragma once
// The screens of the console: one row each says where it stands in the frame, what its tab says, and whose desk it is.
#include "ui/frame/desk.h"
#include "ui/frame/frame_view.h"

#include <span>
#include <vector>

namespace panside {

struct ScreenRow {
    Action screen;
    Place place;
    int digit; // its name within the place: it stays where others are missing
    const char* word;
    bool ofTheJournal;                     // it reads or writes the journal or the probe file: none in a rehearsal
    Desk* (*make)(Shell& shell);           // nullptr: the console has it itself
    bool (*shown)(Shell& shell) = nullptr; // its tab is there when this says so; nullptr: always
    std::optional<Action> leafOf = {};     // a leaf of that screen, whose desk turns to it
    bool unseen = false;                   // it does something before it is first opened
};
std::span<const ScreenRow> allScreens();
const ScreenRow* screenRow(Action screen);
QString wordOf(const ScreenRow& row);
// The tabs of a place, by their digits; without a shell also those that show only when a house has use for them.
std::vector<FrameTab> tabsOf(Place place, bool withJournal, Shell* shell = nullptr);
std::vector<Place> placesWithScreens(bool withJournal);

} // namespace panside
