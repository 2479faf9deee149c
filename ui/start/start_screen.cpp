#include "ui/start/start_screen.h"

#include "ui/look/pad.h"
#include "ui/look/parts.h"
#include "ui/look/refocus.h"
#include "ui/page/action_keys.h"
#include "ui/start/place_pick.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <algorithm>

namespace panside {
namespace {

constexpr double lowQuestion = 118; // mm: lower, the pad has four rows, and no key of the page is scrolled to

} // namespace

StartScreen::StartScreen(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("start"));
    setAutoFillBackground(true);
    setFocusPolicy(Qt::TabFocus); // a press on the pad leaves the field that has the keys
    new QVBoxLayout{this};
}

void StartScreen::display(const StartView& view, Units units, const Dress& dress) {
    if (inside_ && view == view_ && units == units_ && dress == dress_)
        return;
    const bool same = view.question == view_.question;
    const Focused focused = same ? focusedIn(inside_) : Focused{};
    view_ = view;
    units_ = units;
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    build();
    if (!focused.name.isEmpty())
        refocus(*inside_, focused);
}

void StartScreen::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // The page's own room: inside a page that is scrolled it would be as high as what it holds.
    const int room = parentWidget() ? std::min(height(), parentWidget()->height()) : height();
    const bool low = room < dress_.px(lowQuestion);
    if (low == low_)
        return;
    low_ = low;
    if (!inside_)
        return;
    const Focused focused = focusedIn(inside_);
    build();
    if (!focused.name.isEmpty())
        refocus(*inside_, focused);
}

void StartScreen::build() {
    discard(inside_);
    choices_.clear();
    lines_.clear();
    place_ = nullptr;
    inside_ = new QWidget;
    layout()->addWidget(inside_);
    auto* column = new QVBoxLayout{inside_};
    column->setContentsMargins(0, 0, 0, 0);
    if (low_)
        column->setSpacing(dress_.px(1));
    auto* head = new QHBoxLayout;
    auto* title = labelOf(dress_, QStringLiteral("title"), low_ ? mm::lead : mm::act, true);
    title->setText(view_.title);
    auto* count = new QLabel{
        tr("%1 of %2").arg(static_cast<int>(view_.question) + 1).arg(static_cast<int>(startQuestions().size()))};
    count->setFont(dress_.letters(mm::words));
    count->setForegroundRole(QPalette::PlaceholderText);
    head->addWidget(title, 1);
    head->addWidget(count);
    column->addLayout(head);
    auto* why = new QLabel{view_.why};
    why->setFont(dress_.letters(low_ ? mm::smallWords : mm::words));
    why->setWordWrap(true);
    column->addWidget(why);
    QWidget* answer = nullptr;
    if (view_.question == StartQuestion::place) {
        answer = place_ = new PlacePick{view_.place, units_, dress_, low_};
        connect(place_, &PlacePick::picked, this, &StartScreen::accept);
        column->addWidget(answer, 1);
    } else {
        answer = view_.fields.empty() ? choiceKeys() : fieldsAndPad();
        column->addWidget(answer);
        column->addStretch();
    }
    said_ = labelOf(dress_, QStringLiteral("said"), mm::words);
    column->addWidget(said_);
    if (low_) // its place is kept where there is room
        said_->hide();
    keys_ = new ActionKeys;
    keys_->wear(dress_);
    keys_->display(
        {{Qt::Key_PageUp, QStringLiteral("startBack"), tr("Back"), false, view_.question != startQuestions().front()},
         {Qt::Key_PageDown, QStringLiteral("startSkip"), tr("Leave it out")},
         {Qt::Key_Return, QStringLiteral("startOn"), tr("Go on"), true},
         wayToBoard()});
    connect(keys_, &ActionKeys::pressed, this, &StartScreen::act);
    column->addWidget(keys_);
    setFocusProxy(answer);
    inside_->show();
    if (isVisible())
        answer->setFocus();
}

QWidget* StartScreen::choiceKeys() {
    auto* place = new QWidget;
    auto* row = new QHBoxLayout{place};
    row->setContentsMargins(0, 0, 0, 0);
    for (int i = 0; i < view_.choices.size(); ++i) {
        Press* choice = pressOf(dress_, view_.choices[i], {}, QStringLiteral("startChoice_%1").arg(i));
        choice->setCheckable(true);
        choice->setChecked(i == view_.chosen);
        choice->setMinimumHeight(dress_.px(1.5 * mm::target));
        connect(choice, &Press::clicked, this, [this, i] { emit chose(i); });
        row->addWidget(choice, 1);
        choices_.push_back(choice);
        if (i == view_.chosen)
            place->setFocusProxy(choice);
    }
    return place;
}

QWidget* StartScreen::fieldsAndPad() {
    auto* place = new QWidget;
    auto* row = new QHBoxLayout{place};
    row->setContentsMargins(0, 0, 0, 0);
    auto* grid = new QGridLayout;
    for (const RigRow& field : view_.fields) {
        QLabel* label = wordOf(dress_, field.label);
        TypedLine* edit = lineOf(dress_, QStringLiteral("setting_%1").arg(static_cast<int>(field.key)), field.label,
                                 field.answer, mm::act);
        edit->takeNumbers(field.key == Setting::elevation);
        edit->setUnit(symbolOf(field.unit));
        edit->setMinimumHeight(dress_.px((low_ ? 1 : 1.3) * mm::target));
        label->setBuddy(edit);
        const int line = static_cast<int>(lines_.size());
        grid->addWidget(label, line, 0);
        grid->addWidget(edit, line, 1);
        lines_.push_back(edit);
    }
    grid->setRowStretch(static_cast<int>(lines_.size()), 1);
    row->addLayout(grid, 1);
    auto* pad = new Pad{dress_, low_ ? Pad::Rows::four : Pad::Rows::five};
    connect(pad, &Pad::typed, this, [this](const QString& face) {
        auto* line = qobject_cast<TypedLine*>(focusWidget());
        Pad::type(line ? *line : *lines_.front(), face);
    });
    connect(pad, &Pad::next, this, &StartScreen::accept);
    row->addWidget(pad);
    place->setFocusProxy(lines_.front());
    return place;
}

void StartScreen::refuse(const QString& words, std::size_t field) {
    said_->setText(words);
    said_->show();
    if (field < lines_.size()) {
        lines_[field]->setDoubted(true);
        lines_[field]->setFocus();
        lines_[field]->selectAll();
    }
}

// Enter goes from field to field, and from the last one on.
void StartScreen::accept() {
    const auto here = std::ranges::find(lines_, focusWidget());
    if (here != lines_.end() && here + 1 != lines_.end()) {
        (*(here + 1))->setFocus(Qt::TabFocusReason);
        return;
    }
    if (place_) {
        if (place_->isUnknown()) // what is nearest stands there
            return;
        return place_->chosen() ? emit picked(*place_->chosen()) : emit wentOn();
    }
    if (!lines_.empty()) {
        QStringList answers;
        for (std::size_t i = 0; i < lines_.size(); ++i) {
            const QString text = lines_[i]->text().trimmed();
            answers << (text == view_.fields[i].answer ? QString{} : text);
        }
        emit typed(answers);
        return;
    }
    const auto focused = std::ranges::find(choices_, focusWidget());
    emit chose(focused == choices_.end() ? view_.chosen : static_cast<int>(focused - choices_.begin()));
}

void StartScreen::act(int key) {
    switch (key) {
    case Qt::Key_Escape:
        emit left();
        break;
    case Qt::Key_PageUp:
        emit wentBack();
        break;
    case Qt::Key_PageDown:
        emit wentOn();
        break;
    default:
        accept();
    }
}

void StartScreen::keyPressEvent(QKeyEvent* event) {
    if (!keys_ || !keys_->answer(*event))
        QWidget::keyPressEvent(event);
}

} // namespace panside
