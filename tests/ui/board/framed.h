#pragma once
// The board in its frame, as the console puts them together, without a session behind it.
#include "ui/board/board.h"
#include "ui/console/screens.h"
#include "ui/frame/frame_view.h"
#include "ui/frame/sentence_bar.h"

namespace panside {

struct Framed {
    FrameView frame;
    Board* board = new Board;
    explicit Framed(const QSize& size = {1366, 768}, const Dress& dress = {}, Units units = Units::us) {
        frame.addPage(board);
        frame.setPlaces({Place::sap, Place::boil, Place::syrup, Place::nights, Place::season, Place::rig, Place::sums,
                         Place::help});
        frame.resize(size);
        std::vector<Action> row;
        for (const ActionRow& one : allActions())
            if (one.seat == Seat::boardRow)
                row.push_back(one.action);
        frame.showPage(board, &board->cards(), row);
        frame.showTabs(Place::boil, tabsOf(Place::boil, true), Action::board);
        wear(dress);
        board->setUnits(units);
    }
    void wear(Dress dress) {
        dress.measure = dress.measure.grownTo(frame.width(), frame.height());
        frame.wear(dress);
        board->wear(dress);
    }
    void show(const Picture& picture) {
        board->display(picture);
        frame.display(board->sentenceShown(), board->numbersLine());
    }
};

} // namespace panside
