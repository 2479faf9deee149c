#include "ui/console/screens.h"

#include "ui/account/account_desks.h"
#include "ui/book/book_desk.h"
#include "ui/filter/filter_desk.h"
#include "ui/fuel/fuel_desk.h"
#include "ui/handover/handover_desk.h"
#include "ui/importing/import_desk.h"
#include "ui/keeping/keeping_desk.h"
#include "ui/lookin/look_desk.h"
#include "ui/manual/manual_desk.h"
#include "ui/pack/pack_desk.h"
#include "ui/paperlog/paper_desk.h"
#include "ui/probes/probes_desk.h"
#include "ui/reckoner/reckoner_desk.h"
#include "ui/rehearsal/rehearsal_desk.h"
#include "ui/review/review_desk.h"
#include "ui/rig/rig_desk.h"
#include "ui/sap/sap_desks.h"
#include "ui/season/season_desk.h"
#include "ui/sound/sound_desk.h"
#include "ui/start/start_desk.h"
#include "ui/tank/tank_desk.h"
#include "ui/trace/trace_desk.h"
#include "ui/vessels/vessels_desk.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {

std::span<const ScreenRow> allScreens() {
    static constexpr ScreenRow rows[] = {
        {Action::tank, Place::sap, 1, QT_TRANSLATE_NOOP("Screens", "Tank and wood"), false, &tankDesk},
        {Action::tonight, Place::sap, 2, QT_TRANSLATE_NOOP("Screens", "Tonight"), false, &tonightDesk},
        {Action::tanks, Place::sap, 3, QT_TRANSLATE_NOOP("Screens", "Tanks"), false, &tanksDesk},
        {Action::board, Place::boil, 1, QT_TRANSLATE_NOOP("Screens", "Board"), false, nullptr},
        {Action::fuel, Place::boil, 2, QT_TRANSLATE_NOOP("Screens", "Fire and wood"), false, &fuelDesk},
        {Action::handover, Place::boil, 3, QT_TRANSLATE_NOOP("Screens", "Hand over"), true, &handoverDesk},
        {Action::rehearsal, Place::boil, 4, QT_TRANSLATE_NOOP("Screens", "Rehearsal"), false, &rehearsalDesk,
         &isRehearsal},
        {Action::vessels, Place::syrup, 1, QT_TRANSLATE_NOOP("Screens", "Vessels"), false, &vesselsDesk},
        {Action::filter, Place::syrup, 2, QT_TRANSLATE_NOOP("Screens", "Filter"), false, &filterDesk, &hasFilter},
        {Action::pack, Place::syrup, 3, QT_TRANSLATE_NOOP("Screens", "Pack"), false, &packDesk},
        {Action::lots, Place::syrup, 4, QT_TRANSLATE_NOOP("Screens", "Lots"), false, &lotsDesk},
        {Action::trace, Place::syrup, 5, QT_TRANSLATE_NOOP("Screens", "Trace"), false, &traceDesk},
        {Action::book, Place::syrup, 6, QT_TRANSLATE_NOOP("Screens", "Book"), false, &bookDesk},
        {Action::review, Place::nights, 1, QT_TRANSLATE_NOOP("Screens", "Nights"), true, &reviewDesk},
        {Action::nightAlarms, Place::nights, 2, QT_TRANSLATE_NOOP("Screens", "Alarms"), true, nullptr, nullptr,
         Action::review},
        {Action::nightEntries, Place::nights, 3, QT_TRANSLATE_NOOP("Screens", "Entries"), true, nullptr, nullptr,
         Action::review},
        {Action::paper, Place::nights, 4, QT_TRANSLATE_NOOP("Screens", "From paper"), true, &paperDesk},
        {Action::importing, Place::nights, 5, QT_TRANSLATE_NOOP("Screens", "From files"), true, &importDesk},
        {Action::season, Place::season, 1, QT_TRANSLATE_NOOP("Screens", "The season"), true, &seasonDesk},
        {Action::sugar, Place::season, 2, QT_TRANSLATE_NOOP("Screens", "Sugar"), false, &sugarDesk},
        {Action::account, Place::season, 3, QT_TRANSLATE_NOOP("Screens", "House account"), false, &accountDesk},
        {Action::tells, Place::season, 4, QT_TRANSLATE_NOOP("Screens", "Trends"), false, &tellsDesk},
        {Action::whatPays, Place::season, 5, QT_TRANSLATE_NOOP("Screens", "What pays"), true, nullptr, nullptr,
         Action::season},
        {Action::forecastKept, Place::season, 6, QT_TRANSLATE_NOOP("Screens", "Forecast kept"), true, nullptr, nullptr,
         Action::season},
        {Action::rig, Place::rig, 1, QT_TRANSLATE_NOOP("Screens", "Pans and fire"), false, &rigDesk},
        {Action::start, Place::rig, 2, QT_TRANSLATE_NOOP("Screens", "First questions"), false, &startDesk},
        {Action::probes, Place::rig, 3, QT_TRANSLATE_NOOP("Screens", "Probes"), true, &probesDesk, nullptr, {}, true},
        {Action::sound, Place::rig, 4, QT_TRANSLATE_NOOP("Screens", "Sound"), false, &soundDesk},
        {Action::keeping,
         Place::rig,
         5,
         QT_TRANSLATE_NOOP("Screens", "Back-ups"),
         true,
         &keepingDesk,
         nullptr,
         {},
         true},
        {Action::lookIn, Place::rig, 6, QT_TRANSLATE_NOOP("Screens", "Look in"), false, &lookDesk},
        {Action::reckoner, Place::sums, 1, QT_TRANSLATE_NOOP("Screens", "Sums of the trade"), false, &reckonerDesk},
        {Action::help, Place::help, 1, QT_TRANSLATE_NOOP("Screens", "All keys"), false, nullptr},
        {Action::cautions, Place::help, 2, QT_TRANSLATE_NOOP("Screens", "Before the fire"), false, nullptr},
        {Action::manual, Place::help, 3, QT_TRANSLATE_NOOP("Screens", "Manual"), false, &manualDesk},
    };
    return rows;
}

const ScreenRow* screenRow(Action screen) {
    const auto rows = allScreens();
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const ScreenRow& row) { return row.screen == screen; });
    return found == rows.end() ? nullptr : &*found;
}

QString wordOf(const ScreenRow& row) { return QCoreApplication::translate("Screens", row.word); }

std::vector<FrameTab> tabsOf(Place place, bool withJournal, Shell* shell) {
    std::vector<FrameTab> tabs;
    for (const ScreenRow& row : allScreens())
        if (row.place == place && (withJournal || !row.ofTheJournal) && (!shell || !row.shown || row.shown(*shell)))
            tabs.push_back({row.screen, row.digit, wordOf(row)});
    return tabs;
}

std::vector<Place> placesWithScreens(bool withJournal) {
    std::vector<Place> places;
    for (const PlaceRow& row : railPlaces())
        if (!tabsOf(row.place, withJournal).empty())
            places.push_back(row.place);
    return places;
}

} // namespace panside
