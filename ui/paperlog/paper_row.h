#pragma once
// A log on paper, typed row by row: what each row would become, or what is wrong with it and in which field. Pure.
#include "core/boil/fact.h"
#include "ui/look/units.h"
#include "ui/look/wall_clock.h"
#include "ui/paperlog/paper_time.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace panside {

struct PaperRow {
    QString time, what, figure, more, who;
    bool isEmpty() const { return (time + what + figure + more + who).trimmed().isEmpty(); }
    bool operator==(const PaperRow&) const = default;
};
enum PaperColumn { paperTime, paperWhat, paperFigure, paperMore, paperWho, paperColumns };

struct PaperDay {
    QDate date; // of the first row
    QTimeZone zone;
    Units units; // of a figure without a unit
};

struct PaperRead {
    std::optional<Fact> fact;
    int column = -1; // where it is wrong
    QString words;   // what will be written, or what is wrong and what to do; empty for an empty row
};
// All rows: each in the light of those above it.
std::vector<PaperRead> readPaper(const std::vector<PaperRow>& rows, const PaperDay& day);

// What may stand under "what", in the person's words.
QStringList paperWhats();
// A fact as it would stand on paper, by the clock that hung there then: to be corrected. Of what no paper log tells,
// nothing.
std::optional<PaperRow> paperRowOf(const Fact& fact, const WallClock& clock);
// What the row says now, in place of the fact that it was made from: the moment near the old one, to the second where
// the time was left as it was; what no paper row shows stays as it was.
PaperRead readCorrection(const PaperRow& row, const Fact& old, const WallClock& clock, Units units);

// A figure as written, with its unit as written: "2,5 gal", "40#", "210.5 °F". The unit is none where none was written.
struct PaperFigure {
    double number;
    Unit unit;
    bool operator==(const PaperFigure&) const = default;
};
std::optional<PaperFigure> paperFigureIn(const QString& text);

} // namespace panside
