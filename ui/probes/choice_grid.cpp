#include "ui/probes/choice_grid.h"

#include "ui/look/parts.h"
#include "ui/look/typing.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>

namespace panside {
namespace {

constexpr int columns = 3;

// 1 to 9, then A, B …: one key for each choice.
int keyFor(int index) { return index < 9 ? Qt::Key_1 + index : Qt::Key_A + index - 9; }

} // namespace

ChoiceGrid::ChoiceGrid(const QString& title, const QStringList& choices, int now, const Dress& dress, QWidget* parent)
    : QWidget{parent}, count_{static_cast<int>(choices.size())} {
    setObjectName(QStringLiteral("choices"));
    setFocusPolicy(Qt::StrongFocus);
    giveKeysOfItsOwn(*this);
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    QLabel* above = labelOf(dress, {}, mm::words, true);
    above->setText(title);
    grid->addWidget(above, 0, 0, 1, columns);
    for (int i = 0; i < count_; ++i) {
        Press* choice =
            pressOf(dress, choices[i], QKeySequence{keyFor(i)}.toString(), QStringLiteral("choice_%1").arg(i));
        connect(choice, &Press::clicked, this, [this, i] { emit chosen(i); });
        grid->addWidget(choice, 1 + i / columns, i % columns);
        if (i == now)
            setFocusProxy(choice);
    }
    Press* leave = pressOf(dress, tr("Leave as it is"), tr("Esc"), QStringLiteral("leaveChoice"));
    connect(leave, &Press::clicked, this, &ChoiceGrid::left);
    const int last = 2 + (count_ - 1) / columns;
    grid->addWidget(leave, last, 0, 1, columns);
    grid->setRowStretch(last + 1, 1);
}

void ChoiceGrid::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        emit left();
        return;
    }
    for (int i = 0; i < count_; ++i)
        if (event->key() == keyFor(i)) {
            emit chosen(i);
            return;
        }
    QWidget::keyPressEvent(event);
}

} // namespace panside
