#include "ui/console/screens.h"

#include "ui/frame/desks.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Screens", text); }

} // namespace

std::span<const ScreenRow> allScreens() {
    static constexpr ScreenRow rows[] = {
        {Action::tank, Place::sap, 1, QT_TR_NOOP("Tank and wood"), false, &tankDesk},
        {Action::tonight, Place::sap, 2, QT_TR_NOOP("Tonight"), false, &tonightDesk},
        {Action::tanks, Place::sap, 3, QT_TR_NOOP("Tanks"), false, &tanksDesk},
        {Action::board, Place::boil, 1, QT_TR_NOOP("Board"), false, nullptr},
        {Action::fuel, Place::boil, 2, QT_TR_NOOP("Fire and wood"), false, &fuelDesk},
        {Action::handover, Place::boil, 3, QT_TR_NOOP("Hand over"), true, &handoverDesk},
        {Action::rehearsal, Place::boil, 4, QT_TR_NOOP("Rehearsal"), false, &rehearsalDesk, &isRehearsal},
        {Action::vessels, Place::syrup, 1, QT_TR_NOOP("Vessels"), false, &vesselsDesk},
        {Action::filter, Place::syrup, 2, QT_TR_NOOP("Filter"), false, &filterDesk, &hasFilter},
        {Action::pack, Place::syrup, 3, QT_TR_NOOP("Pack"), false, &packDesk},
        {Action::lots, Place::syrup, 4, QT_TR_NOOP("Lots"), false, &lotsDesk},
        {Action::trace, Place::syrup, 5, QT_TR_NOOP("Trace"), false, &traceDesk},
        {Action::book, Place::syrup, 6, QT_TR_NOOP("Book"), false, &bookDesk},
        {Action::review, Place::nights, 1, QT_TR_NOOP("Nights"), true, &reviewDesk},
        {Action::nightAlarms, Place::nights, 2, QT_TR_NOOP("Alarms"), true, nullptr, nullptr, Action::review},
        {Action::nightEntries, Place::nights, 3, QT_TR_NOOP("Entries"), true, nullptr, nullptr, Action::review},
        {Action::paper, Place::nights, 4, QT_TR_NOOP("From paper"), true, &paperDesk},
        {Action::importing, Place::nights, 5, QT_TR_NOOP("From files"), true, &importDesk},
        {Action::season, Place::season, 1, QT_TR_NOOP("The season"), true, &seasonDesk},
        {Action::sugar, Place::season, 2, QT_TR_NOOP("Sugar"), false, &sugarDesk},
        {Action::account, Place::season, 3, QT_TR_NOOP("House account"), false, &accountDesk},
        {Action::tells, Place::season, 4, QT_TR_NOOP("Trends"), false, &tellsDesk},
        {Action::whatPays, Place::season, 5, QT_TR_NOOP("What pays"), true, nullptr, nullptr, Action::season},
        {Action::forecastKept, Place::season, 6, QT_TR_NOOP("Forecast kept"), true, nullptr, nullptr, Action::season},
        {Action::rig, Place::rig, 1, QT_TR_NOOP("Pans and fire"), false, &rigDesk},
        {Action::start, Place::rig, 2, QT_TR_NOOP("First questions"), false, &startDesk},
        {Action::probes, Place::rig, 3, QT_TR_NOOP("Probes"), true, &probesDesk, nullptr, {}, true},
        {Action::sound, Place::rig, 4, QT_TR_NOOP("Sound"), false, &soundDesk},
        {Action::keeping, Place::rig, 5, QT_TR_NOOP("Back-ups"), true, &keepingDesk, nullptr, {}, true},
        {Action::lookIn, Place::rig, 6, QT_TR_NOOP("Look in"), false, &lookDesk},
        {Action::reckoner, Place::sums, 1, QT_TR_NOOP("Sums of the trade"), false, &reckonerDesk},
        {Action::help, Place::help, 1, QT_TR_NOOP("All keys"), false, nullptr},
        {Action::cautions, Place::help, 2, QT_TR_NOOP("Before the fire"), false, nullptr},
        {Action::manual, Place::help, 3, QT_TR_NOOP("Manual"), false, &manualDesk},
    };
    return rows;
}

const ScreenRow* screenRow(Action screen) {
    const auto rows = allScreens();
    const auto found = std::ranges::find(rows, screen, &ScreenRow::screen);
    return found == rows.end() ? nullptr : &*found;
}

QString wordOf(const ScreenRow& row) { return tr(row.word); }

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
