#include "ui/fuel/fuel_screen.h"

#include "ui/fuel/fuel_strips.h"
#include "ui/fuel/plan_picture.h"
#include "ui/look/each_language.h"
#include "ui/look/press.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <utility>

namespace panside {
namespace {

constexpr double edgeOf = mm::frame + 0.5; // the frame of an alarm lies over the edge

constexpr double rowOfLetters = 1.73, closeRow = 1.55; // of its letters

// As close as the rows of a low page must stand, so that none is lost.
double rowFor(const Dress& dress, double letters, double rows, int height) {
    return rows * dress.px(rowOfLetters * letters) <= height ? rowOfLetters : closeRow;
}

// As tall as the rows of a column and the widest of them allow: a large screen is read from further away.
double lettersFor(const Dress& dress, const std::vector<FuelLine>& lines, const QSize& size) {
    constexpr double tallest = 5, step = 0.25;
    for (double letters = tallest; letters > mm::smallWords; letters -= step) {
        const QFontMetrics metrics{dress.letters(letters)};
        const auto fits = [&](const FuelLine& line) {
            return metrics.horizontalAdvance(line.label) + metrics.horizontalAdvance(line.value) + dress.px(3) <=
                   size.width();
        };
        if (static_cast<int>(lines.size()) * dress.px(rowOfLetters * letters) <= size.height() &&
            std::ranges::all_of(lines, fits))
            return letters;
    }
    return mm::smallWords;
}

// Label and value beneath each other in rows; what has no room is left away. Returns where the next row would begin.
// A label has what its value leaves, and no less than a third.
int drawLines(QPainter& painter, const Dress& dress, double letters, const std::vector<FuelLine>& lines, QRect area,
              double row = rowOfLetters) {
    const int height = dress.px(row * letters);
    const QFont font = dress.letters(letters);
    const QFontMetrics metrics{font};
    for (const FuelLine& line : lines) {
        if (area.top() + height > area.bottom())
            break;
        const QRect place{area.left(), area.top(), area.width(), height};
        const int cut =
            std::max(place.width() / 3, place.width() - metrics.horizontalAdvance(line.value) - dress.px(1));
        painter.setPen(dress.inks().quiet);
        drawFitted(painter, QRect{place.left(), place.top(), cut - dress.px(1), height},
                   Qt::AlignLeft | Qt::AlignVCenter, font, line.label);
        painter.setPen(dress.inks().word);
        drawFitted(painter, place.adjusted(cut, 0, 0, 0), Qt::AlignRight | Qt::AlignVCenter, font, line.value);
        area.setTop(area.top() + height);
    }
    return area.top();
}

} // namespace

FuelScreen::FuelScreen(QWidget* parent)
    : QWidget{parent}, turn_{new Press{this}}, stepKeys_{new Press{this}, new Press{this}, new Press{this},
                                                         new Press{this}} {
    setObjectName(QStringLiteral("fuelScreen"));
    setAutoFillBackground(true);
    turn_->setObjectName(QStringLiteral("turnFuel"));
    connect(turn_, &Press::clicked, this, [this] { turnTo(face_ == Face::plan ? Face::account : Face::plan); });
    const char* const names[] = {"lessSap", "moreSap", "softerFire", "harderFire"};
    constexpr std::array<std::pair<int, int>, 4> moves{{{-1, 0}, {1, 0}, {0, -1}, {0, 1}}};
    for (std::size_t i = 0; i < stepKeys_.size(); ++i) {
        stepKeys_[i]->setObjectName(QString::fromLatin1(names[i]));
        connect(stepKeys_[i], &Press::clicked, this, [this, move = moves[i]] { step(move.first, move.second); });
    }
    setFocusPolicy(Qt::StrongFocus);
    name();
    inEachLanguage(*this, [this] {
        name();
        resizeEvent(nullptr);
    });
}

void FuelScreen::name() {
    turn_->say(face_ == Face::plan ? tr("Account") : tr("End of the boil"), QStringLiteral("P"));
    stepKeys_[0]->say(tr("Less sap"), QStringLiteral("↓"));
    stepKeys_[1]->say(tr("More sap"), QStringLiteral("↑"));
    stepKeys_[2]->say(tr("Softer fire"), QStringLiteral("←"));
    stepKeys_[3]->say(tr("Harder fire"), QStringLiteral("→"));
}

void FuelScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    turn_->wear(dress);
    for (Press* press : stepKeys_)
        press->wear(dress);
    resizeEvent(nullptr);
    update();
}

void FuelScreen::turnTo(Face face) {
    face_ = face;
    name();
    resizeEvent(nullptr);
    update();
}

void FuelScreen::step(int sap, int fire) {
    steps_.sap = std::clamp(steps_.sap + sap, leastSap, mostSap);
    steps_.fire = std::clamp(steps_.fire + fire, leastFire, mostFire);
    emit stepsChanged();
}

void FuelScreen::display(const FuelView& view, const ShiftTrace& trace, Instant now) {
    view_ = view;
    trace_ = &trace;
    now_ = now;
    QStringList spoken{view.call, view.doubt, view.caution};
    std::vector<const std::vector<FuelLine>*> all{&view.rates, &view.heat, &view.yield};
    if (view.plan) {
        spoken << view.plan->headline;
        all.push_back(&view.plan->lines);
        all.push_back(&view.plan->changes);
    }
    for (const auto* lines : all)
        for (const FuelLine& line : *lines)
            spoken << line.label + QStringLiteral(": ") + line.value;
    spoken.removeAll(QString{});
    setAccessibleDescription(spoken.join(QStringLiteral(". "))); // its name is the tab's
    update();
}

double FuelScreen::larger() const {
    return std::clamp(std::min(dress_.measure.millimetres(width()) / 361, dress_.measure.millimetres(height()) / 198),
                      1.0, 1.4);
}

int FuelScreen::foot() const { return turn_->height() + dress_.px(mm::gap); }

void FuelScreen::resizeEvent(QResizeEvent*) {
    const int gap = dress_.px(mm::gap), edge = dress_.px(edgeOf), high = dress_.px(mm::target);
    const int top = height() - high - edge;
    int right = width() - edge;
    const int turn = turn_->sizeHint().width();
    turn_->setGeometry(right - turn, top, turn, high);
    right -= turn + gap;
    const int room = std::max(0, right - edge);
    int wanted = 0;
    for (Press* press : stepKeys_)
        wanted += press->sizeHint().width() + gap;
    int left = edge;
    for (Press* press : stepKeys_) {
        const int wide = std::min(press->sizeHint().width(), room * press->sizeHint().width() / std::max(wanted, 1));
        press->setGeometry(left, top, wide, high);
        left += wide + gap;
        press->setVisible(face_ == Face::plan);
    }
}

void FuelScreen::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const int gap = dress_.px(mm::gap), edge = dress_.px(edgeOf), words = dress_.px(7 * larger());
    QRect room = rect().adjusted(edge, edge, -edge, -edge);
    QString title = view_.call.isEmpty() ? tr("Fire and fuel") : view_.call;
    if (face_ == Face::plan)
        title = view_.plan ? view_.plan->headline : tr("End of the boil");
    painter.setPen(face_ == Face::plan && view_.plan && view_.plan->lastIsNext ? dress_.inks().medium
                                                                               : dress_.inks().word);
    const QFont bold = dress_.letters(mm::words * larger(), true);
    const int head = fits(bold, title, {room.width(), words}) ? words : words * 3 / 2; // or two lines
    drawFitted(painter, QRect{room.left(), room.top(), room.width(), head}, Qt::AlignLeft | Qt::AlignVCenter, bold,
               title, 2);
    room.setTop(room.top() + head + (head > words ? dress_.px(1) : gap));
    room.setBottom(room.bottom() - foot());
    if (face_ == Face::plan)
        paintPlan(painter, room);
    else
        paintAccount(painter, room);
}

void FuelScreen::paintAccount(QPainter& painter, QRect room) {
    const int gap = dress_.px(mm::gap);
    const bool low = room.height() < dress_.px(75); // the figures come first
    const QRect strips{room.left(), room.top(), room.width(), room.height() * (low ? 30 : 42) / 100};
    if (trace_)
        drawFuelStrips(painter, *trace_, now_, dress_, mm::smallWords * larger(), strips);
    const QRect below{room.left(), strips.bottom() + gap, room.width(), room.bottom() - strips.bottom() - gap};
    const int third = (below.width() - 2 * gap) * (low ? 36 : 33) / 100; // the curve gives way to the words
    QRect first{below.left(), below.top(), third, below.height()};
    std::vector<FuelLine> both = view_.rates;
    both.insert(both.end(), view_.yield.begin(), view_.yield.end());
    // One size for both columns; under the second the doubt has its room.
    const double letters = std::min(lettersFor(dress_, both, {third, below.height() - gap}),
                                    lettersFor(dress_, view_.heat, {third, below.height() - dress_.px(22)}));
    const double rowed = rowFor(dress_, letters, static_cast<double>(both.size()), below.height() - gap);
    first.setTop(drawLines(painter, dress_, letters, view_.rates, first, rowed) + (low ? 0 : gap));
    drawLines(painter, dress_, letters, view_.yield, first, rowed);
    const QRect second{below.left() + third + gap, below.top(), third, below.height()};
    const int end = drawLines(painter, dress_, letters, view_.heat, second, rowed) + gap;
    painter.setPen(dress_.inks().word);
    drawFitted(painter, QRect{second.left(), end, second.width(), second.bottom() - end}, Qt::AlignLeft | Qt::AlignTop,
               dress_.letters(letters, true), view_.doubt, 4);
    const QRect last{second.right() + gap, below.top(), below.right() - second.right() - gap, below.height()};
    painter.setPen(dress_.inks().quiet);
    if (view_.plan)
        drawPlan(painter, *view_.plan, dress_, mm::smallWords * larger(), last, false);
    else
        drawFitted(painter, last, Qt::AlignCenter, dress_.letters(letters), view_.noPlan, 4);
    painter.setPen(dress_.inks().word);
    const QRect foot{room.left(), turn_->y(), turn_->x() - room.left() - gap, turn_->height()};
    drawFitted(painter, foot, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::words), view_.caution, 2);
}

void FuelScreen::paintPlan(QPainter& painter, QRect room) {
    if (!view_.plan) {
        painter.setPen(dress_.inks().quiet);
        drawFitted(painter, room, Qt::AlignCenter, dress_.letters(mm::words), view_.noPlan, 4);
        return;
    }
    const int gap = dress_.px(mm::gap), half = (room.width() - 2 * gap) * 45 / 100;
    const PlanView& plan = *view_.plan;
    // The picture keeps more than half of the page.
    const double letters = lettersFor(dress_, plan.lines, {half, room.height() * 45 / 100});
    const int row = dress_.px(rowOfLetters * letters);
    const int below = static_cast<int>(std::max(plan.lines.size(), std::size_t{7})) * row + gap;
    drawPlan(painter, plan, dress_, mm::smallWords * larger(),
             QRect{room.left(), room.top(), room.width(), room.height() - below}, true);
    const QRect under{room.left(), room.bottom() - below + gap, room.width(), below - gap};
    drawLines(painter, dress_, letters, plan.lines, QRect{under.left(), under.top(), half, under.height() + 1});
    QRect right{under.left() + half + 3 * gap, under.top(), under.right() - under.left() - half - 3 * gap,
                under.height()};
    // The line of each, as it is drawn above, before its words.
    const Qt::PenStyle styles[] = {Qt::DotLine, Qt::DashDotLine};
    const int sample = dress_.px(10);
    for (std::size_t i = 0; i < plan.changes.size(); ++i) {
        const double at = right.top() + (static_cast<double>(i) + 0.5) * row;
        painter.setPen(QPen{dress_.inks().quiet, 1.6, styles[i % 2]});
        painter.drawLine(QPointF{right.left() * 1.0, at}, QPointF{right.left() + sample - gap * 1.0, at});
    }
    right.setTop(drawLines(painter, dress_, letters, plan.changes, right.adjusted(sample, 0, 0, 0)) + gap);
    painter.setPen(dress_.inks().word);
    drawFitted(painter, right, Qt::AlignLeft | Qt::AlignTop, dress_.letters(letters), view_.endCaution, 4);
}

void FuelScreen::keyPressEvent(QKeyEvent* event) {
    const bool plan = face_ == Face::plan;
    switch (event->key()) {
    case Qt::Key_Escape:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit left();
        return;
    case Qt::Key_P:
        turnTo(plan ? Face::account : Face::plan);
        return;
    case Qt::Key_Up:
    case Qt::Key_Down:
        if (plan)
            step(event->key() == Qt::Key_Up ? 1 : -1, 0);
        return;
    case Qt::Key_Left:
    case Qt::Key_Right:
        if (plan)
            step(0, event->key() == Qt::Key_Right ? 1 : -1);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace panside
