#include "ui/frame/roll.h"

#include <QApplication>
#include <QKeyEvent>
#include <QScrollBar>
#include <algorithm>

namespace panside {

Roll::Roll(QWidget* page, QWidget* parent) : QScrollArea{parent} {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus); // the page has it
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWidgetResizable(true);
    setWidget(page);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (!now || now == widget() || !widget()->isAncestorOf(now))
            return;
        // Of a list its head is enough: what stands over it is worth more than its end.
        const int step = verticalScrollBar()->singleStep(), top = now->mapTo(widget(), QPoint{}).y();
        ensureVisible(0, top + std::min(now->height(), 3 * step), 0, step / 4);
        ensureVisible(0, top, 0, 0);
    });
}

void Roll::wear(const Dress& dress) { verticalScrollBar()->setSingleStep(dress.px(mm::target)); }

void Roll::resizeEvent(QResizeEvent* event) {
    widget()->setMaximumWidth(viewport()->width()); // it rolls up and down; words break where it is narrow
    QScrollArea::resizeEvent(event);
}

void Roll::keyPressEvent(QKeyEvent* event) {
    // What the page did not take. Arrows and letters belong to the console.
    QScrollBar& bar = *verticalScrollBar();
    if (event->key() == Qt::Key_PageDown || event->key() == Qt::Key_PageUp)
        bar.setValue(bar.value() + (event->key() == Qt::Key_PageDown ? bar.pageStep() : -bar.pageStep()));
    else
        event->ignore();
}

} // namespace panside
