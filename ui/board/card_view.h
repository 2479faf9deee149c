#pragma once
// What a card shows. Pure values: an unchanged card compares equal and is not drawn again.
#include "core/boil/picture.h"
#include "ui/keys/actions.h"
#include "ui/look/units.h"

#include <QString>
#include <vector>

namespace panside {

enum class Tone { calm, low, medium, high }; // colour means abnormal and nothing else

// The chief number, in pieces: digits as large as they go, the words between them small ("1" h "45").
struct Piece {
    QString text;
    bool small = false;
    bool operator==(const Piece&) const = default;
};

struct CardView {
    QString title;              // TO THE DRAW
    std::vector<Piece> chief;   // 12 min; a dash when it is not known
    QString beside;             // 9 to 16: as large as the other figures
    QString reason;             // instead of `beside`, when the number is a dash
    QString doubt;              // strikes the number: stuck for 40 s
    QString figure;             // rise 6.6 of 7.1 °F
    std::vector<QString> lines; // for the hand's distance; the first to go when there is no room
    std::vector<Action> actions;
    Tone tone = Tone::calm; // when what the card counts is itself abnormal
    int insistence = 0;     // grows while it stays undone: 0, its title inverted, the whole card inverted
    QString spoken() const; // the whole for a screen reader
    bool operator==(const CardView&) const = default;
};

CardView drawCard(const Picture& picture, Units units);
CardView fireCard(const Picture& picture, Units units);
CardView lastLoadCard(const Picture& picture, Units units);

// The number of a count-down: "3:40" under ten minutes, "12 min", "1 h 45".
std::vector<Piece> countdownPieces(Duration left, bool toTheSecond);
// "9 to 16 min"; "9 min or more" where more than one future in ten never gets there.
QString rangeText(const Range& range);
inline const std::vector<Piece> dash{{QStringLiteral("–")}};

} // namespace panside
