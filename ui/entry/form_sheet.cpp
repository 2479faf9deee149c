#include "ui/entry/form_sheet.h"

#include "ui/look/pad.h"
#include "ui/look/parts.h"

#include <QHBoxLayout>
#include <QKeyEvent>

namespace panside {

FormSheet::FormSheet(const QString& name, QWidget* parent) : QFrame{parent} {
    setObjectName(name);
    setAutoFillBackground(true);
    setFrameShape(QFrame::Box);
    // No focus of its own: a key of the pad that is pressed would hand it over, and the digits leave their field.
    new QVBoxLayout{this};
    layout()->setContentsMargins(0, 0, 0, 0);
    hide();
}

void FormSheet::putAside() {
    aside_ = true;
    hide();
}

Press* FormSheet::key(const QString& text, const QString& name, const QString& shortcut) {
    return pressOf(dress_, text, shortcut, name, Qt::TabFocus); // a finger leaves the focus in its field
}

QHBoxLayout* FormSheet::whenRow(std::span<const std::pair<QString, Duration>> steps) {
    auto* line = new QHBoxLayout;
    auto* label = labelOf(dress_, {}, mm::words);
    label->setText(tr("It happened"));
    label->setWordWrap(false);
    line->addWidget(label);
    now_ = key(tr("now"), QStringLiteral("happenedNow"));
    now_->setCheckable(true);
    const auto put = [this](Press* press, Duration by) {
        connect(press, &Press::clicked, this, [this, press, by] {
            earlier() = press == now_ ? Duration{} : earlier() + by;
            sayWhen();
            say();
        });
    };
    put(now_, {});
    line->addWidget(now_);
    for (const auto& [words, by] : steps) {
        Press* step = key(words, QStringLiteral("earlier%1").arg(static_cast<int>(by.count() / 60)));
        put(step, by);
        line->addWidget(step, 1);
    }
    sayWhen();
    return line;
}

void FormSheet::sayWhen() { now_->setChecked(earlier() == Duration{}); }

QHBoxLayout* FormSheet::endRow() {
    auto* end = new QHBoxLayout;
    leave_ = key(tr("Leave"), QStringLiteral("leave"), tr("Esc"));
    keep_ = key({}, QStringLiteral("keep"));
    keep_->setShape(KeyShape::due);
    keep_->installEventFilter(this);
    connect(leave_, &Press::clicked, this, &FormSheet::leave);
    connect(keep_, &Press::clicked, this, [this] { keep(); });
    end->addWidget(leave_);
    end->addWidget(keep_, 1);
    return end;
}

Pad* FormSheet::makePad() { return new Pad{dress_, isLow() ? Pad::Rows::four : Pad::Rows::five}; }

void FormSheet::leave() {
    hide();
    emit left();
}

void FormSheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        leave();
    else if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter)
        QFrame::keyPressEvent(event);
    else if (!event->isAutoRepeat())
        keep();
}

} // namespace panside
