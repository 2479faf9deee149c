#include "ui/frame/roll.h"

#include <QApplication>
#include <QKeyEvent>
#include <QScrollBar>

namespace panside {

Roll::Roll(QWidget* page, QWidget* parent) : QScrollArea{parent} {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus); // the page has it
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setWidgetResizable(true);
    setWidget(page);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        if (now && now != widget() && widget()->isAncestorOf(now))
            ensureWidgetVisible(now, 0, verticalScrollBar()->singleStep());
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
