#include "ui/fuel/fuel_screen.h"

#include "ui/fuel/fuel_strips.h"
#include "ui/look/press.h"

#include <QKeyEvent>
#include <QPainter>

namespace panside {
namespace {

int drawLines(QPainter& painter, const Dress& dress, const std::vector<FuelLine>& lines, QRect area) {
    const int height = dress.px(5.2);
    const QFont font = dress.letters(mm::smallWords);
    for (const FuelLine& line : lines) {
        if (area.top() + height > area.bottom())
            break;
        const QRect row{area.left(), area.top(), area.width(), height};
        painter.setPen(dress.inks().quiet);
        drawFitted(painter, row.adjusted(0, 0, -row.width() * 45 / 100, 0), Qt::AlignLeft | Qt::AlignVCenter, font,
                   line.label);
        painter.setPen(dress.inks().word);
        drawFitted(painter, row.adjusted(row.width() * 56 / 100, 0, 0, 0), Qt::AlignRight | Qt::AlignVCenter, font,
                   line.value);
        area.setTop(area.top() + height);
    }
    return area.top();
}

} // namespace

FuelScreen::FuelScreen(QWidget* parent) : QWidget{parent}, back_{new Press{this}} {
    setObjectName(QStringLiteral("fuelScreen"));
    setAutoFillBackground(true);
    back_->setObjectName(QStringLiteral("leaveFuel"));
    connect(back_, &Press::clicked, this, &FuelScreen::left);
    setFocusPolicy(Qt::StrongFocus);
    name();
}

void FuelScreen::name() { back_->say(tr("Back"), QStringLiteral("Esc")); }

void FuelScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    back_->wear(dress);
    resizeEvent(nullptr);
    update();
}

void FuelScreen::display(const FuelView& view, const ShiftTrace& trace, Instant now, Units units) {
    view_ = view;
    trace_ = &trace;
    now_ = now;
    units_ = units;
    QStringList spoken{view.call, view.doubt, view.caution};
    for (const auto* lines : {&view.rates, &view.heat, &view.yield})
        for (const FuelLine& line : *lines)
            spoken << line.label + QStringLiteral(": ") + line.value;
    spoken.removeAll(QString{});
    setAccessibleName(spoken.join(QStringLiteral(". ")));
    update();
}

void FuelScreen::resizeEvent(QResizeEvent*) {
    const QSize size = back_->sizeHint();
    const int gap = dress_.px(mm::gap);
    back_->setGeometry(width() - size.width() - gap, height() - size.height() - gap, size.width(), size.height());
}

void FuelScreen::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const int gap = dress_.px(mm::gap), words = dress_.px(7);
    QRect room = rect().adjusted(gap, gap, -gap, -gap);
    painter.setPen(dress_.inks().word);
    drawFitted(painter, QRect{room.left(), room.top(), room.width(), words}, Qt::AlignLeft | Qt::AlignVCenter,
               dress_.letters(mm::words, true), view_.call.isEmpty() ? tr("Fire and fuel") : view_.call);
    room.setTop(room.top() + words + gap);
    const int foot = back_->height() + gap;
    const QRect strips{room.left(), room.top(), room.width(), (room.height() - foot) * 42 / 100};
    if (trace_)
        drawFuelStrips(painter, *trace_, now_, units_, dress_, strips);
    const QRect below{room.left(), strips.bottom() + gap, room.width(), room.bottom() - foot - strips.bottom() - gap};
    const int third = (below.width() - 2 * gap) / 3;
    QRect first{below.left(), below.top(), third, below.height()};
    first.setTop(drawLines(painter, dress_, view_.rates, first) + gap);
    first.setTop(drawLines(painter, dress_, view_.yield, first) + gap);
    const QRect second{below.left() + third + gap, below.top(), third, below.height()};
    const int end = drawLines(painter, dress_, view_.heat, second) + gap;
    painter.setPen(dress_.inks().word);
    drawFitted(painter, QRect{second.left(), end, second.width(), second.bottom() - end}, Qt::AlignLeft | Qt::AlignTop,
               dress_.letters(mm::smallWords, true), view_.doubt, 4);
    const QRect last{second.right() + gap, below.top(), below.right() - second.right() - gap, below.height()};
    painter.setPen(dress_.inks().quiet);
    if (view_.plan)
        drawPlan(painter, *view_.plan, dress_, last);
    else
        drawFitted(painter, last, Qt::AlignCenter, dress_.letters(mm::smallWords), view_.noPlan, 4);
    painter.setPen(dress_.inks().word);
    drawFitted(painter,
               QRect{room.left(), room.bottom() - back_->height(), back_->x() - room.left() - gap, back_->height()},
               Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::smallWords), view_.caution, 2);
}

void FuelScreen::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Escape:
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_B:
        emit left();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void FuelScreen::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        name();
}

} // namespace panside
