#include "ui/board/alarm_frame.h"

#include "ui/board/sentence_bar.h"

#include <QPainter>

namespace panside {
namespace {

constexpr int frameFlash = 500; // milliseconds, as the board's

} // namespace

AlarmFrame::AlarmFrame(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("alarmFrame"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    flashing_.setInterval(frameFlash);
    connect(&flashing_, &QTimer::timeout, this, [this] {
        on_ = !on_;
        update();
    });
    hide();
}

void AlarmFrame::wear(const Dress& dress) {
    dress_ = dress;
    update();
}

void AlarmFrame::display(const SentenceView& said, bool covered) {
    const bool shown = covered && said.tone != Tone::calm;
    said_ = said;
    if (shown && said.flashing && !flashing_.isActive())
        flashing_.start();
    if (!shown || !said.flashing) {
        flashing_.stop();
        on_ = true;
    }
    setVisible(shown);
    if (shown) {
        raise();
        update();
    }
}

void AlarmFrame::paintEvent(QPaintEvent*) {
    if (!on_)
        return;
    QPainter painter{this};
    const int wide = said_.flashing ? dress_.px(mm::frame) : dress_.px(mm::frame) / 3;
    const QColor ink = inkOf(said_.tone, dress_.inks());
    painter.fillRect(QRect{0, 0, width(), wide}, ink);
    painter.fillRect(QRect{0, height() - wide, width(), wide}, ink);
    painter.fillRect(QRect{0, 0, wide, height()}, ink);
    painter.fillRect(QRect{width() - wide, 0, wide, height()}, ink);
}

} // namespace panside
