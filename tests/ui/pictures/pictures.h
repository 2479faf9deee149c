#pragma once
// The pictures of the README and the manual. One command makes them, beside what each says (see said_by.h); a test
// tells which are out of date.
#include "ui/look/inks.h"
#include "ui/look/units.h"

#include <QString>
#include <functional>
#include <vector>

class QWidget;

namespace panside {

struct PictureOf {
    QString name; // "board_day", as the pages call it
    // Puts the screen up in the language that is spoken and hands it on.
    std::function<void(Units, const std::function<void(QWidget&)>&)> put;
};
std::vector<PictureOf> allPictures();

// Where a picture lies in resources/pictures, and where in tests/reference/pictures stands what it says.
QString picturePath(const PictureOf& picture, bool french); // "fr/board_day.png"
QString saidPath(const PictureOf& picture, bool french);    // "fr_board_day.txt"

// What is kept beside a picture: the sum of its file (SHA-256), then a line for each thing that it says.
QString keptBeside(const QString& pictureFile, const QStringList& said);

// Paints them all; says on the error stream what could not be written, and returns whether all were.
bool paintPictures(const QString& pictures, const QString& saids, bool french);

} // namespace panside
