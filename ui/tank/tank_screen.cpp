#include "ui/tank/tank_screen.h"

#include "ui/look/each_language.h"
#include "ui/look/parts.h"
#include "ui/look/refocus.h"
#include "ui/words/sap_words.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

namespace panside {

TankScreen::TankScreen(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("tankScreen"));
    setAutoFillBackground(true);
    new QVBoxLayout{this};
    inEachLanguage(*this, [this] {
        if (!inside_)
            return;
        form_ = formOf(yard_, units_);
        build();
    });
}

void TankScreen::display(const Yard& yard, Units units, const Dress& dress) {
    if (inside_ && yard == yard_ && units == units_ && dress == dress_)
        return;
    // Another light or other units leave what is typed of the tank; another yard does not.
    if (!inside_ || yard != yard_ || units != units_)
        form_ = formOf(yard, units);
    yard_ = yard;
    units_ = units;
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    build();
}

void TankScreen::follow(const Picture& picture, bool sapSince, Instant now) {
    picture_ = picture;
    sapSince_ = sapSince;
    now_ = now;
    sayDip();
}

void TankScreen::build() {
    const QString dipped = dip_ ? dip_->text() : QString{};
    const Focused focused = focusedIn(inside_);
    discard(inside_);
    inside_ = new QWidget;
    layout()->addWidget(inside_);
    auto* column = new QVBoxLayout{inside_};
    column->addWidget(titleOf(dress_, tr("Tank and woodpile")));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(dress_.px(mm::gap));
    grid->setVerticalSpacing(dress_.px(mm::gap));
    grid->setColumnStretch(1, 1);
    addDip(grid);
    addTank(grid);
    addPile(grid);
    column->addLayout(grid);
    stands_ = labelOf(dress_, QStringLiteral("stands"), mm::words);
    column->addWidget(stands_);
    said_ = labelOf(dress_, QStringLiteral("said"), mm::words);
    column->addWidget(said_);
    column->addStretch();
    auto* caution = labelOf(dress_, QStringLiteral("caution"), mm::words);
    caution->setText(tr("Real tanks bulge and lean: the volume is good to about 3 %. Keep off the rim of a tank and "
                        "off a wet ladder."));
    column->addWidget(caution);
    dip_->setText(dipped);
    handOn(*this, dip_);
    refocus(*inside_, focused);
    sayDip();
}

TypedLine* TankScreen::field(const QString& name, const QString& label, const QString& answer, Unit unit,
                             QHBoxLayout* row, bool wide) {
    auto* before = new QLabel{label};
    const double letters = width() > dress_.px(300) ? mm::words : mm::smallWords; // a row holds four of them
    before->setFont(dress_.letters(letters));
    before->setWordWrap(true); // a long name takes two lines beside its field
    TypedLine* edit = lineOf(dress_, name, label, answer);
    if (!wide) {
        edit->takeNumbers(false);
        edit->setMaximumWidth(dress_.px(30));
    }
    edit->setUnit(symbolOf(unit));
    before->setBuddy(edit);
    row->addWidget(before);
    row->addWidget(edit, wide ? 1 : 0);
    return edit;
}

void TankScreen::addDip(QGridLayout* grid) {
    auto* label = labelOf(dress_, {}, mm::words, true);
    label->setText(tr("Dip"));
    auto* row = new QHBoxLayout;
    dip_ = field(QStringLiteral("dip"), tr("depth of sap in the tank"), {}, unitOf(Dimension::length, units_), row);
    comes_ = labelOf(dress_, QStringLiteral("comesTo"), mm::words * 1.25, true);
    comes_->setWordWrap(false);
    row->addWidget(comes_, 1);
    Press* keep = pressOf(dress_, tr("Keep it"), tr("Enter"), QStringLiteral("keepDip"));
    row->addWidget(keep);
    odd_ = labelOf(dress_, QStringLiteral("odd"), mm::words);
    connect(dip_, &QLineEdit::textChanged, this, [this] { sayDip(); });
    connect(dip_, &QLineEdit::returnPressed, this, &TankScreen::keepDip);
    connect(keep, &Press::clicked, this, &TankScreen::keepDip);
    grid->addWidget(label, 0, 0);
    grid->addLayout(row, 0, 1);
    grid->addWidget(odd_, 1, 1);
}

void TankScreen::addTank(QGridLayout* grid) {
    auto* label = labelOf(dress_, {}, mm::words, true);
    label->setText(tr("Tank"));
    auto* row = new QHBoxLayout;
    Press* turn = pressOf(dress_, kindName(form_.kind), {}, QStringLiteral("kind"));
    connect(turn, &Press::clicked, this, &TankScreen::turnKind);
    row->addWidget(turn);
    const QStringList labels = sizeLabels(form_.kind);
    for (qsizetype i = 0; i < labels.size(); ++i) {
        QString& answer = form_.sizes[static_cast<std::size_t>(i)];
        TypedLine* edit = field(QStringLiteral("size%1").arg(i), labels[i], answer, yardUnit(units_), row);
        connect(edit, &QLineEdit::textEdited, this, [&answer](const QString& text) { answer = text; });
        connect(edit, &QLineEdit::editingFinished, this, &TankScreen::keepYard);
    }
    if (form_.kind == TankKind::table) {
        const QString both =
            symbolOf(unitOf(Dimension::length, units_)) + u' ' + symbolOf(unitOf(Dimension::volume, units_));
        TypedLine* edit = field(QStringLiteral("marks"), tr("depth and volume of each mark (%1)").arg(both),
                                form_.marks, Unit::none, row, true);
        edit->setPlaceholderText(QStringLiteral("10 100; 20 260"));
        connect(edit, &QLineEdit::textEdited, this, [this](const QString& text) { form_.marks = text; });
        connect(edit, &QLineEdit::editingFinished, this, &TankScreen::keepYard);
    } else {
        row->addStretch();
    }
    holds_ = labelOf(dress_, QStringLiteral("holds"), mm::words);
    if (yard_.tank) {
        const Length deep = tankDepth(*yard_.tank).value_or(Length{});
        holds_->setText(tr("%1 deep, holds %2")
                            .arg(figure(deep, units_).text(),
                                 figure(tankVolume(*yard_.tank, deep).value_or(Volume{}), units_).text()));
    }
    grid->addWidget(label, 2, 0);
    grid->addLayout(row, 2, 1);
    grid->addWidget(holds_, 3, 1);
}

void TankScreen::addPile(QGridLayout* grid) {
    auto* label = labelOf(dress_, {}, mm::words, true);
    label->setText(tr("Woodpile"));
    auto* row = new QHBoxLayout;
    const QStringList labels = pileLabels();
    for (qsizetype i = 0; i < labels.size(); ++i) {
        QString& answer = form_.pile[static_cast<std::size_t>(i)];
        const Unit unit = i == 2 ? unitOf(Dimension::length, units_) : yardUnit(units_);
        TypedLine* edit = field(QStringLiteral("pile%1").arg(i), labels[i], answer, unit, row);
        connect(edit, &QLineEdit::textEdited, this, [this, &answer](const QString& text) {
            answer = text;
            pileTyped_ = true;
        });
        connect(edit, &QLineEdit::editingFinished, this, &TankScreen::keepYard);
    }
    TypedLine* price = field(QStringLiteral("price"), tr("price of a full cord"), form_.price, Unit::none, row);
    connect(price, &QLineEdit::textEdited, this, [this](const QString& text) { form_.price = text; });
    connect(price, &QLineEdit::editingFinished, this, &TankScreen::keepYard);
    row->addStretch();
    stacked_ = labelOf(dress_, QStringLiteral("stacked"), mm::words);
    if (yard_.pile)
        stacked_->setText(
            tr("%1 full cords when it was measured").arg(QLocale{}.toString(yard_.pile->cords(), 'f', 1)));
    grid->addWidget(label, 4, 0);
    grid->addLayout(row, 4, 1);
    grid->addWidget(stacked_, 5, 1);
}

void TankScreen::turnKind() {
    form_.kind = static_cast<TankKind>((static_cast<int>(form_.kind) + 1) % 4);
    form_.sizes = {};
    form_.marks.clear();
    build();
}

// Each field as it is left; a tank half typed is not complained of before its last field.
void TankScreen::keepYard() {
    const int count = static_cast<int>(sizeLabels(form_.kind).size());
    int typed = 0;
    for (int i = 0; i < count; ++i)
        typed += !form_.sizes[static_cast<std::size_t>(i)].trimmed().isEmpty();
    int piled = 0;
    for (const QString& side : form_.pile)
        piled += !side.trimmed().isEmpty();
    if ((typed > 0 && typed < count) || (piled > 0 && piled < 3))
        return;
    const auto made = yardOf(form_, units_);
    if (const auto* wrong = std::get_if<QString>(&made)) {
        say(*wrong);
        return;
    }
    say({});
    Yard yard = std::get<Yard>(made);
    // What stands in the fields is rounded: only what was typed is a new measure, also the same again.
    if (!pileTyped_) {
        yard.pile = yard_.pile;
        yard.measured = yard_.measured;
    } else if (yard.pile) {
        yard.measured = std::chrono::time_point_cast<Instant::duration>(std::chrono::system_clock::now());
    }
    pileTyped_ = false;
    if (yard != yard_)
        emit yardWanted(yard);
}

void TankScreen::sayDip() {
    if (!dip_)
        return;
    const Dip dip = dipOf(dip_->text(), yard_, units_, picture_, sapSince_, now_);
    comes_->setText(dip.words);
    odd_->setText(dip.warning);
    stands_->setText((tankFullWords(picture_.store) + u' ' + sapAgeWords(picture_.store, units_)).trimmed());
}

void TankScreen::keepDip() {
    const Dip dip = dipOf(dip_->text(), yard_, units_, picture_, sapSince_, now_);
    if (!dip.fact)
        return;
    dip_->clear();
    emit dipped(*dip.fact);
}

void TankScreen::say(const QString& words) {
    if (said_)
        said_->setText(words);
}

void TankScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit left();
    else
        QWidget::keyPressEvent(event);
}

} // namespace panside
