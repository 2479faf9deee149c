#include "ui/page/page.h"

#include "ui/look/press.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QScrollBar>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

Page::Page(QWidget* parent) : QWidget{parent}, text_{new QTextBrowser{this}}, leave_{new Press{this}} {
    setAutoFillBackground(true);
    text_->setObjectName(QStringLiteral("pageText"));
    text_->setFrameShape(QFrame::NoFrame);
    text_->setOpenLinks(false);
    leave_->setObjectName(QStringLiteral("leavePage"));
    auto* column = new QVBoxLayout{this};
    column->addWidget(text_);
    column->addWidget(leave_, 0, Qt::AlignRight);
    connect(leave_, &Press::clicked, this, &Page::left);
    setFocusProxy(leave_);
}

void Page::wear(const Dress& dress) {
    setPalette(paletteOf(dress.look));
    text_->setPalette(paletteOf(dress.look));
    dress_ = dress;
    letter();
    leave_->wear(dress);
    const int gap = dress.px(2 * mm::gap);
    layout()->setContentsMargins(gap, gap, gap, gap);
}

void Page::show(const QString& words, const QString& leaving) {
    text_->setHtml(words);
    letter();
    leave_->say(leaving, tr("Enter"));
    setFocus();
}

void Page::letter() { letterToFit(*text_, dress_, 6); }

void Page::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layout()->activate(); // the words' own place first
    letter();
}

QString Page::words() const { return text_->toPlainText(); }

void Page::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Escape:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit left();
        break;
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
    case Qt::Key_Home:
    case Qt::Key_End:
        QCoreApplication::sendEvent(text_->verticalScrollBar(), event);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

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
