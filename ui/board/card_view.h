#pragma once
// What a card shows. Pure values: an unchanged card compares equal and is not drawn again.
#include "core/boil/picture.h"
#include "ui/keys/actions.h"
#include "ui/look/key_shape.h"
#include "ui/look/units.h"
#include "ui/look/urgency.h"

#include <QString>
#include <vector>

namespace panside {

// The chief number, in pieces: digits as large as they go, the words between them small ("1" h "45").
struct Piece {
    QString text;
    bool small = false;
    bool operator==(const Piece&) const = default;
};

struct CardKey {
    Action action;
    KeyShape shape = KeyShape::plain;
    QString word = {}; // where it is another than the action's own
    QString said() const { return word.isEmpty() ? wordOf(action) : word; }
    bool operator==(const CardKey&) const = default;
};

struct CardView {
    QString title;              // TO THE DRAW
    std::vector<Piece> chief;   // 12 min; a dash when it is not known
    QString order;              // in the number's place while an alarm forbids the call: "keep shut"
    QString beside;             // 9 to 16: as large as the other figures
    QString under;              // beneath it, smaller: rise 6.6 of 7.1
    QString reason;             // instead of `beside`, when the number is a dash
    QString doubt;              // beside the number, which is quiet then: stuck for 40 s
    QString figure;             // 217.6, open at 218.5 °F
    std::vector<QString> lines; // for the hand's distance; the first to go when there is no room
    std::vector<CardKey> keys;
    Tone tone = Tone::calm; // when what the card counts is itself abnormal, or forbidden
    bool due = false;       // its moment is now
    int insistence = 0;     // grows while it stays undone: 0, its title inverted, the whole card inverted
    QString spoken() const; // the whole for a screen reader
    bool operator==(const CardView&) const = default;
};

CardView drawCard(const Picture& picture, Units units);
CardView fireCard(const Picture& picture, Units units);
CardView lastLoadCard(const Picture& picture, Units units);

// The number of a wait: "12 min", "1 h 45"; "under 2 min" where it is nearer than that.
std::vector<Piece> waitPieces(Duration left);
// How long ago, or how late: seconds are left away from two minutes on.
std::vector<Piece> pastPieces(Duration span);
// "9 to 16 min"; "9 min or more" where more than one future in ten never gets there; empty where all of it is near.
QString rangeText(const Range& range);
inline const std::vector<Piece> dash{{QStringLiteral("–")}};

} // namespace panside
