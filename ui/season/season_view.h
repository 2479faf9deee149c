#pragma once
// The season as a table: a line a shift, what a person chose to see of each, and what it comes to. Pure words over the
// season's model; a hole is a dash, what was only partly measured says "at least".
#include "core/season/season.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace panside {

// What the person chose to see.
struct SeasonChoice {
    std::optional<int> year; // none: all seasons
    std::vector<SeasonFigure> columns = {
        SeasonFigure::hours,      SeasonFigure::sapIn,        SeasonFigure::sapSugar, SeasonFigure::syrup,
        SeasonFigure::draws,      SeasonFigure::inBand,       SeasonFigure::wood,     SeasonFigure::evaporation,
        SeasonFigure::efficiency, SeasonFigure::syrupPerCord, SeasonFigure::alarms};
    std::optional<SeasonFigure> sortBy; // none: by date
    bool falling = true;                // the greatest, or the latest, first
    QString filter;                     // in the date, the crew, the wood, or the name of an alarm
    bool operator==(const SeasonChoice&) const = default;
};

struct SeasonLine {
    Instant shift{};
    QStringList cells; // one a heading
    bool operator==(const SeasonLine&) const = default;
};

// A figure over the season, by date: what the picture above the table shows.
struct SeasonBar {
    Instant shift{};
    std::optional<double> value; // in the person's unit; none: a hole
    bool atLeast = false;
    bool operator==(const SeasonBar&) const = default;
};

struct SeasonTable {
    QString title;        // "Season 2026: 31 shifts"
    QStringList headings; // the shift, a column each, the crew
    std::vector<SeasonLine> lines;
    QStringList totals;
    int working = 0; // shifts that are still being worked out
    bool operator==(const SeasonTable&) const = default;
};

SeasonTable seasonTable(const std::vector<SeasonShift>& shifts, const SeasonChoice& choice, Units units);
// The shifts that the choice leaves, by date.
std::vector<SeasonShift> chosenShifts(const std::vector<SeasonShift>& shifts, const SeasonChoice& choice);
std::vector<SeasonBar> seasonBars(const std::vector<SeasonShift>& chosen, SeasonFigure figure, Units units);

// Two shifts' accounts side by side: a line a figure, what the second has more or less of it.
struct BesideLine {
    QString what, first, second, difference;
    bool operator==(const BesideLine&) const = default;
};
std::vector<BesideLine> besideLines(const SeasonShift& first, const SeasonShift& second, Units units);

} // namespace panside
