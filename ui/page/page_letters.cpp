#include "ui/page/page_letters.h"

#include <QScrollBar>
#include <QTextBrowser>
#include <algorithm>

namespace panside {

void letterToFit(QTextBrowser& text, const Dress& dress, double tallest) {
    constexpr double step = 0.5;
    const int place = text.verticalScrollBar()->value();
    for (double letters = tallest;; letters = std::max(letters - step, mm::smallWords)) {
        text.setFont(dress.letters(letters));
        text.document()->setTextWidth(text.viewport()->width());
        if (letters <= mm::smallWords || text.document()->size().height() <= text.viewport()->height())
            break;
    }
    text.verticalScrollBar()->setValue(place);
}

} // namespace panside
