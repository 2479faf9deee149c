#pragma once
// What the sources mark for translation, read from the sources themselves: Qt's own collector misses a mark within a
// function or a macro of ours that stands between.
#include <QString>
#include <vector>

namespace panside {

struct MarkedText {
    QString context, text;
    bool counted = false; // its number chooses the form
    QString place;        // ui/board/card.cpp:12
};

// Of every .cpp and .h below these folders of the source tree.
std::vector<MarkedText> markedTexts(const QStringList& folders);
// The same of one file's text; `path` names it in the places.
std::vector<MarkedText> markedIn(const QString& source, const QString& path);

} // namespace panside
