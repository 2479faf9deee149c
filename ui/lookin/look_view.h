#pragma once
// What a phone is shown: the board's own sentence and cards, and the rise of the last hours, as JSON. Nothing is
// reckoned anew, so that a phone cannot say what the board does not.
#include "core/boil/picture.h"
#include "ui/board/card_view.h"
#include "ui/board/sentence.h"
#include "ui/chart/shift_trace.h"

#include <QByteArray>
#include <array>

namespace panside {

struct LookShown {
    const Picture& picture; // as the board shows it
    SentenceView sentence;
    std::array<CardView, 3> cards;
    Units units;
};
// One line of JSON each.
QByteArray lookPicture(const LookShown& shown, const WallClock& clock, bool rehearsal);
// The last three hours of the trace and the hour to come, no finer than lookColumn.
QByteArray lookChart(const LookShown& shown, const ShiftTrace& trace);
inline constexpr std::chrono::seconds lookColumn{30};

// The page itself, its colours the console's. One file: its script and its style are in it.
QByteArray lookPage();

} // namespace panside
