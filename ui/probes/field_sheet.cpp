#include "ui/probes/field_sheet.h"

#include "ui/look/pad.h"
#include "ui/look/parts.h"
#include "ui/look/press.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace panside {

FieldSheet::FieldSheet(std::vector<FieldFormRow> rows, bool canBeTakenOut, const Dress& dress, QWidget* parent)
    : QWidget{parent}, rows_{std::move(rows)}, live_{new QLabel{this}}, problem_{new QLabel{this}} {
    setObjectName(QStringLiteral("fieldSheet"));
    setFocusPolicy(Qt::StrongFocus);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    live_->setObjectName(QStringLiteral("live"));
    live_->setFont(dress.letters(mm::words * 1.25, true));
    live_->setWordWrap(true);
    problem_->setObjectName(QStringLiteral("fieldProblem"));
    problem_->setFont(dress.letters(mm::words));
    problem_->setWordWrap(true);
    column->addWidget(live_);
    auto* halves = new QHBoxLayout;
    auto* grid = new QGridLayout;
    for (std::size_t i = 0; i < rows_.size(); ++i)
        addRow(grid, i, dress);
    grid->setRowStretch(static_cast<int>(rows_.size()), 1);
    grid->setColumnStretch(1, 1);
    halves->addLayout(grid, 2);
    auto* pad = new Pad{dress};
    connect(pad, &Pad::typed, this, [this](const QString& face) {
        auto* line = qobject_cast<QLineEdit*>(focusWidget());
        for (auto* first : lines_)
            line = line ? line : first;
        if (line)
            Pad::type(*line, face);
    });
    connect(pad, &Pad::next, this, [this] { focusNextChild(); });
    halves->addWidget(pad, 1, Qt::AlignTop);
    column->addLayout(halves);
    column->addWidget(problem_);
    column->addStretch();
    auto* keys = new QHBoxLayout;
    const auto key = [&](const QString& word, const QString& shortcut, const char* name) {
        Press* made = pressOf(dress, word, shortcut, QString::fromLatin1(name));
        keys->addWidget(made, 1);
        return made;
    };
    connect(key(tr("Done"), tr("Esc"), "fieldDone"), &Press::clicked, this, &FieldSheet::leave);
    if (canBeTakenOut)
        connect(key(tr("Take this register out"), tr("Del"), "takeOut"), &Press::clicked, this, &FieldSheet::takeOut);
    column->addLayout(keys);
}

void FieldSheet::addRow(QGridLayout* grid, std::size_t index, const Dress& dress) {
    const FieldFormRow& row = rows_[index];
    const int line = static_cast<int>(index);
    QLabel* label = wordOf(dress, row.label);
    grid->addWidget(label, line, 0);
    const QString name = QStringLiteral("part_%1").arg(static_cast<int>(row.part));
    lines_.push_back(nullptr);
    if (!row.choices.isEmpty()) {
        Press* turn = pressOf(dress, row.answer, {}, name);
        turn->setAccessibleDescription(row.label);
        connect(turn, &Press::clicked, this, [this, index] {
            const auto& [part, words, answer, unit, choices] = rows_[index];
            emit answered(part, choices[(choices.indexOf(answer) + 1) % choices.size()]);
        });
        grid->addWidget(turn, line, 1);
        return;
    }
    TypedLine* edit = lineOf(dress, name, row.label, row.answer, mm::lead);
    label->setBuddy(edit);
    connect(edit, &QLineEdit::editingFinished, this, [this, index, edit] {
        if (edit->text() == rows_[index].answer)
            return;
        rows_[index].answer = edit->text();
        emit answered(rows_[index].part, edit->text());
    });
    grid->addWidget(edit, line, 1);
    grid->addWidget(wordOf(dress, row.unit), line, 2);
    lines_.back() = edit;
    if (!focusProxy()) {
        setFocusProxy(edit);
        edit->selectAll();
    }
}

// A line that still has the focus has said nothing yet; what cannot be taken is said first, and leaving again leaves
// it.
void FieldSheet::leave() {
    problem_->clear();
    for (std::size_t i = 0; i < lines_.size(); ++i)
        if (lines_[i] && lines_[i]->text() != rows_[i].answer) {
            rows_[i].answer = lines_[i]->text();
            emit answered(rows_[i].part, rows_[i].answer);
        }
    if (problem_->text().isEmpty())
        emit left();
}

void FieldSheet::showLive(const QString& words) { live_->setText(words); }
void FieldSheet::showProblem(const QString& words) { problem_->setText(words); }

void FieldSheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        leave();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        focusNextChild();
    } else if (event->key() == Qt::Key_Delete) {
        emit takeOut();
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace panside
