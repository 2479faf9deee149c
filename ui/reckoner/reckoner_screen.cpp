#include "ui/reckoner/reckoner_screen.h"

#include "ui/look/each_language.h"
#include "ui/look/pad.h"
#include "ui/look/parts.h"
#include "ui/look/refocus.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace panside {

ReckonerScreen::ReckonerScreen(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("reckoner"));
    setAutoFillBackground(true);
    new QVBoxLayout{this};
    layout()->setContentsMargins(0, 0, 0, 0);
    form_ = reckonerForm(0, 0, units_);
    build();
    inEachLanguage(*this, [this] {
        const ReckonerForm old = form_;
        form_ = reckonerForm(old.sum, old.way, units_);
        for (std::size_t i = 0; i < form_.fields.size(); ++i) {
            form_.fields[i].text = old.fields[i].text;
            form_.fields[i].unit = old.fields[i].unit;
        }
        build();
    });
}

void ReckonerScreen::display(Units units, const Dress& dress) {
    if (units != units_)
        form_ = reckonerForm(form_.sum, form_.way, units);
    units_ = units;
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    build();
}

void ReckonerScreen::choose(std::size_t sum, std::size_t way) {
    form_ = reckonerForm(sum, way, units_);
    build();
    if (!lines_.empty())
        lines_.front()->setFocus();
}

void ReckonerScreen::build() {
    discard(inside_);
    lines_.clear();
    narrow_ = isNarrow();
    inside_ = new QWidget{this};
    layout()->addWidget(inside_);
    auto* columns = new QHBoxLayout{inside_};
    columns->setSpacing(dress_.px(2 * mm::gap));
    columns->addWidget(sumColumn());
    columns->addWidget(fieldColumn());
    columns->addWidget(answerColumn(), 1);
    reckonAgain();
}

bool ReckonerScreen::isNarrow() const { return dress_.measure.millimetres(width()) < 270; }

void ReckonerScreen::resizeEvent(QResizeEvent*) {
    if (inside_ && narrow_ != isNarrow())
        build();
}

Press* ReckonerScreen::key(const QString& text, const QString& name, const QString& shortcut) {
    return pressOf(dress_, text, shortcut, name, Qt::TabFocus);
}

QLabel* ReckonerScreen::label(const QString& name, double millimetres, bool bold) {
    QLabel* text = labelOf(dress_, name, millimetres, bold);
    text->setTextFormat(Qt::PlainText);
    return text;
}

QWidget* ReckonerScreen::sumColumn() {
    auto* column = new QWidget;
    column->setFixedWidth(dress_.px(isNarrow() ? 78 : 92));
    auto* keys = new QGridLayout{column};
    keys->setContentsMargins(0, 0, 0, 0);
    keys->setSpacing(dress_.px(1));
    const QStringList titles = reckonerSums();
    const int rows = (static_cast<int>(titles.size()) + 1) / 2;
    for (int i = 0; i < titles.size(); ++i) {
        const auto sum = static_cast<std::size_t>(i);
        const bool chosen = sum == form_.sum;
        // The chosen one is told by a mark, not by colour alone.
        Press* press = key(chosen ? QStringLiteral("▸ ") + titles[i] : titles[i], QStringLiteral("sum_%1").arg(i));
        connect(press, &Press::clicked, this, [this, sum] { choose(sum); });
        keys->addWidget(press, i % rows, i / rows);
    }
    keys->setRowStretch(rows, 1);
    return column;
}

QWidget* ReckonerScreen::fieldColumn() {
    auto* column = new QWidget;
    column->setFixedWidth(dress_.px(isNarrow() ? 78 : 106));
    auto* rows = new QVBoxLayout{column};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(dress_.px(1));
    const QStringList ways = waysOf(form_.sum);
    if (ways.size() > 1) {
        Press* way = key(ways[static_cast<int>(form_.way)], QStringLiteral("way"), tr("other way"));
        connect(way, &Press::clicked, this,
                [this, count = static_cast<std::size_t>(ways.size())] { choose(form_.sum, (form_.way + 1) % count); });
        rows->addWidget(way);
    }
    for (std::size_t i = 0; i < form_.fields.size(); ++i)
        rows->addWidget(fieldRow(i));
    rows->addStretch();
    rows->addWidget(pad());
    return column;
}

QWidget* ReckonerScreen::fieldRow(std::size_t index) {
    const ReckonerField& field = form_.fields[index];
    const QString name = QString::fromStdString(field.argument);
    auto* row = new QWidget;
    auto* line = new QHBoxLayout{row};
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(dress_.px(1));
    QLabel* before = label(QStringLiteral("label_") + name, mm::smallWords);
    before->setText(field.optional ? tr("%1 (or leave empty)").arg(field.label) : field.label);
    before->setFixedWidth(dress_.px(42));
    line->addWidget(before);
    if (!field.choices.isEmpty()) {
        Press* turn = key(choiceInWords(field.text), name);
        turn->setAccessibleName(field.label);
        connect(turn, &Press::clicked, this, [this, index, turn] {
            ReckonerField& turned = form_.fields[index];
            turned.text = turned.choices[(turned.choices.indexOf(turned.text) + 1) % turned.choices.size()];
            turn->say(choiceInWords(turned.text), {});
            reckonAgain();
        });
        line->addWidget(turn, 1);
        return row;
    }
    TypedLine* edit = lineOf(dress_, name, field.label, field.text, mm::lead);
    edit->takeNumbers(true);
    edit->setMinimumWidth(dress_.px(24));
    connect(edit, &QLineEdit::textChanged, this, [this, index](const QString& text) {
        form_.fields[index].text = text;
        reckonAgain();
    });
    line->addWidget(edit, 1);
    lines_.push_back(edit);
    if (!field.units.empty()) {
        Press* unit = key(symbolOf(field.units[field.unit]), QStringLiteral("unit_") + name);
        unit->setFixedWidth(dress_.px(24));
        unit->setEnabled(field.units.size() > 1);
        connect(unit, &Press::clicked, this, [this, index, unit] {
            ReckonerField& turned = form_.fields[index];
            turned.unit = (turned.unit + 1) % turned.units.size();
            unit->say(symbolOf(turned.units[turned.unit]), {});
            reckonAgain();
        });
        line->addWidget(unit);
    }
    return row;
}

QWidget* ReckonerScreen::pad() {
    auto* pad = new Pad{dress_, Pad::Rows::four};
    connect(pad, &Pad::typed, this, &ReckonerScreen::typeInto);
    connect(pad, &Pad::next, this, [this] { focusNextChild(); });
    return pad;
}

QWidget* ReckonerScreen::answerColumn() {
    auto* column = new QWidget;
    auto* rows = new QVBoxLayout{column};
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(dress_.px(mm::gap));
    name_ = label(QStringLiteral("answerName"), mm::words);
    value_ = label(QStringLiteral("answer"), mm::fromAfar, true);
    others_ = label(QStringLiteral("others"), mm::words, true);
    sum_ = label(QStringLiteral("sum"), mm::words);
    foot_ = label(QStringLiteral("foot"), mm::smallWords);
    for (QLabel* text : {name_, value_, others_, sum_})
        rows->addWidget(text);
    rows->addStretch();
    rows->addWidget(foot_);
    return column;
}

void ReckonerScreen::typeInto(const QString& text) {
    auto* line = qobject_cast<QLineEdit*>(focusWidget());
    if (!line)
        line = lines_.empty() ? nullptr : lines_.front();
    if (line)
        Pad::type(*line, text);
}

void ReckonerScreen::reckonAgain() {
    const ReckonerAnswer answer = reckonerAnswer(form_);
    const bool done = answer.state == ReckonerAnswer::State::done;
    QStringList others;
    for (const auto& [name, value] : answer.others)
        others << tr("%1: %2").arg(name, value);
    name_->setText(done ? answer.name : reckonerSums()[static_cast<int>(form_.sum)]);
    value_->setText(done ? answer.value : QStringLiteral("—"));
    others_->setText(others.join(QLatin1Char('\n')));
    others_->setVisible(done && !others.isEmpty());
    sum_->setText(done ? answer.sum.join(QLatin1Char('\n')) : answer.words);
    foot_->setText(done ? answer.uncertainty + QLatin1Char('\n') + tr("Source: %1.").arg(answer.source) +
                              QLatin1Char('\n') + answer.caution
                        : QString{});
}

void ReckonerScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit left();
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        focusNextChild();
    else
        QWidget::keyPressEvent(event);
}

// One can type at once.
void ReckonerScreen::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!lines_.empty())
        lines_.front()->setFocus();
}

} // namespace panside
