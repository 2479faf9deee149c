#include "ui/entry/entry_sheet.h"

#include "core/boil/vocabulary.h"
#include "ui/look/pad.h"
#include "ui/look/parts.h"
#include "ui/look/refocus.h"
#include "ui/words/reading_words.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {
namespace {

QChar letterOfKind(int index) { return QChar{u'A' + index}; }

} // namespace

EntrySheet::EntrySheet(QWidget* parent) : FormSheet{QStringLiteral("entrySheet"), parent} {}

void EntrySheet::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    if (!isVisible())
        return;
    const Focused before = focusedIn(this);
    build();
    takeFocus();
    refocus(*inside_, before);
}

// Its first field, or the key that keeps where there is none. What was just built is seen only once it is shown, and
// only what is seen takes keys.
void EntrySheet::takeFocus() {
    inside_->show();
    if (lines_.empty())
        keep_->setFocus();
    else
        lines_.front()->setFocus();
}

void EntrySheet::open(const EntryForm& form, Units units, const WallClock& clock) {
    form_ = form;
    units_ = units;
    clock_ = clock;
    resume();
}

void EntrySheet::resume() {
    aside_ = false;
    build();
    show();
    raise();
    takeFocus();
    if (!form_.loss.isEmpty())
        put(Question::loss, form_.loss, {}, tr("End it all the same"), {});
}

void EntrySheet::build() {
    discard(inside_);
    lines_.clear();
    typing_ = nullptr;
    inside_ = new QWidget{this};
    layout()->addWidget(inside_);
    auto* column = new QVBoxLayout{inside_};
    const bool low = isLow();
    column->setSpacing(low ? dress_.px(0.5) : dress_.px(mm::gap));

    writes_ = labelOf(dress_, QStringLiteral("writes"), low ? mm::words : mm::words * 1.25, true);
    column->addWidget(writes_);

    auto* middle = new QHBoxLayout;
    auto* fields = new QVBoxLayout;
    if (low)
        fields->setSpacing(dress_.px(0.5));
    for (std::size_t i = 0; i < form_.fields.size(); ++i) {
        fields->addWidget(fieldRow(i));
        if (!form_.fields[i].offers.isEmpty())
            fields->addWidget(offersFor(i));
    }
    fields->addStretch();
    middle->addLayout(fields, 1);
    const bool digits = std::ranges::any_of(
        form_.fields, [](const EntryField& field) { return field.kind == EntryField::Kind::number; });
    if (digits)
        middle->addWidget(pad());
    column->addLayout(middle);
    column->addLayout(timeRow());
    if (!form_.crew.isEmpty())
        column->addLayout(crewRow());

    problem_ = labelOf(dress_, QStringLiteral("problem"), mm::words);
    problem_->hide();
    column->addWidget(problem_);
    column->addStretch();
    column->addLayout(questionRow());
    changed();
}

// Its end, and the answers to what it asks.
QHBoxLayout* EntrySheet::questionRow() {
    QHBoxLayout* end = endRow();
    yes_ = key({}, QStringLiteral("answerYes"));
    other_ = key({}, QStringLiteral("answerOther"));
    for (Press* answer : {yes_, other_})
        answer->installEventFilter(this);
    connect(yes_, &Press::clicked, this, &EntrySheet::answerYes);
    connect(other_, &Press::clicked, this, &EntrySheet::answerOther);
    end->addWidget(yes_, 1);
    end->addWidget(other_, 1);
    return end;
}

void EntrySheet::changed() {
    problem_->hide();
    sure_ = false;
    ask(false);
    withdrawQuestion();
    say();
}

QWidget* EntrySheet::fieldRow(std::size_t index) {
    EntryField& field = form_.fields[index];
    if (form_.action == Action::handReading && field.kind == EntryField::Kind::choice)
        return kindsOfReading(index);
    auto* row = new QWidget;
    auto* line = new QHBoxLayout{row};
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(wordOf(dress_, field.label));
    if (field.kind == EntryField::Kind::choice) {
        // A choice is a key that turns to the next word: no list to hit with a glove.
        Press* turn = key(field.answer, field.name);
        turn->setAccessibleName(field.label);
        connect(turn, &Press::clicked, this, [this, index, turn] {
            EntryField& turned = form_.fields[index];
            if (turned.choices.isEmpty())
                return;
            turned.answer = turned.choices[(turned.choices.indexOf(turned.answer) + 1) % turned.choices.size()];
            turn->say(turned.answer, {});
            if (turned.name == QLatin1String("scale"))
                if (auto* reading = findChild<TypedLine*>(QStringLiteral("reading")))
                    reading->setUnit(turned.answer);
            say();
        });
        line->addWidget(turn, 1);
        return row;
    }
    const bool isNumber = field.kind == EntryField::Kind::number;
    TypedLine* edit = lineOf(dress_, field.name, field.label, field.answer, isNumber ? mm::act : mm::words);
    if (isNumber)
        edit->takeNumbers(true);
    edit->setUnit(symbolOf(field.unit));
    edit->setMinimumWidth(dress_.px(isNumber ? 42 : 60));
    connect(edit, &QLineEdit::textChanged, this, [this, index](const QString& text) {
        form_.fields[index].answer = text;
        changed();
    });
    line->addWidget(edit, 1);
    lines_.push_back(edit);
    edit->installEventFilter(this);
    return row;
}

// Names that there are, as keys: a glove presses one instead of typing it.
QWidget* EntrySheet::offersFor(std::size_t index) {
    constexpr int columns = 3;
    auto* place = new QWidget;
    auto* grid = new QGridLayout{place};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(dress_.px(mm::gap) / 2);
    const EntryField& field = form_.fields[index];
    for (int i = 0; i < field.offers.size(); ++i) {
        Press* one = key(field.offers[i], QStringLiteral("offer_%1").arg(i));
        one->setFocusPolicy(Qt::NoFocus); // what is typed next goes on where it went
        connect(one, &Press::clicked, this, [this, word = field.offers[i], name = field.name] {
            if (auto* line = findChild<TypedLine*>(name))
                line->setText(word);
        });
        grid->addWidget(one, i / columns, i % columns);
    }
    return place;
}

// All that can be read at once, each with a letter: digits go to the value meanwhile, which takes no letters.
QWidget* EntrySheet::kindsOfReading(std::size_t index) {
    constexpr int columns = 3;
    const EntryField& field = form_.fields[index];
    auto* place = new QWidget;
    place->setAccessibleName(field.label);
    auto* grid = new QGridLayout{place};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(dress_.px(mm::gap));
    for (int i = 0; i < field.choices.size(); ++i) {
        Press* kind = key(field.choices[i], QStringLiteral("kind_%1").arg(i), QString{letterOfKind(i)});
        kind->setCheckable(true);
        kind->setChecked(field.choices[i] == field.answer);
        kind->setFocusPolicy(Qt::TabFocus);
        connect(kind, &Press::clicked, this, [this, i, index] { chooseKind(form_.fields[index].choices[i]); });
        grid->addWidget(kind, i / columns, i % columns);
    }
    return place;
}

void EntrySheet::chooseKind(const QString& kind) {
    form_.answer(QStringLiteral("reading"), kind);
    const EntryField* field = form_.field(QStringLiteral("reading"));
    for (int i = 0; i < field->choices.size(); ++i)
        findChild<Press*>(QStringLiteral("kind_%1").arg(i))->setChecked(field->choices[i] == kind);
    unitOfReading(kind);
    changed();
    // What is typed now is the value, whether a finger or a letter chose.
    lines_.front()->setFocus();
}

QHBoxLayout* EntrySheet::timeRow() {
    std::vector<std::pair<QString, Duration>> steps;
    for (const int minutes : {1, 5, 10})
        steps.emplace_back(tr("%n min earlier", "", minutes), Duration{60.0 * minutes});
    return whenRow(steps);
}

QHBoxLayout* EntrySheet::crewRow() {
    auto* line = new QHBoxLayout;
    for (const QString& name : form_.crew) {
        Press* button = key(name, QStringLiteral("by_") + name);
        button->setCheckable(true);
        button->setChecked(name == form_.by);
        connect(button, &Press::clicked, this, [this, name, button] {
            form_.by = button->isChecked() ? name : QString{};
            for (const QString& other : form_.crew)
                findChild<Press*>(QStringLiteral("by_") + other)->setChecked(other == form_.by);
            say();
        });
        line->addWidget(button, 1);
    }
    return line;
}

QWidget* EntrySheet::pad() {
    Pad* pad = makePad();
    connect(pad, &Pad::typed, this, &EntrySheet::typeInto);
    connect(pad, &Pad::next, this, [this] { focusNextChild(); });
    return pad;
}

void EntrySheet::typeInto(const QString& text) {
    auto* line = qobject_cast<TypedLine*>(focusWidget());
    if (!line)
        line = typing_ ? typing_ : lines_.empty() ? nullptr : lines_.front();
    typing_ = line;
    if (line)
        Pad::type(*line, text);
}

void EntrySheet::unitOfReading(const QString& reading) {
    for (const ReadingRow& row : allReadings()) {
        if (readingName(row.series) != reading)
            continue;
        for (EntryField& field : form_.fields) {
            if (field.name != QLatin1String("value"))
                continue;
            field.unit = readingUnit(row.series, units_);
            if (auto* value = findChild<TypedLine*>(QStringLiteral("value")))
                value->setUnit(symbolOf(field.unit));
        }
    }
}

void EntrySheet::say() { writes_->setText(willWrite(form_, units_, clock_)); }

void EntrySheet::ask(bool asked) {
    asked_ = asked;
    keep_->say(asked ? tr("Keep it without") : tr("Keep it"), tr("Enter"));
}

void EntrySheet::putForward(const EntryProblem& problem) {
    problem_->setText(problem.words);
    problem_->show();
    // A row more, and as high as its words want: the others are not to be squeezed for it.
    problem_->setMinimumHeight(problem_->heightForWidth(inside_->contentsRect().width()));
    focusOn(problem.field);
}

void EntrySheet::focusOn(const QString& field) {
    for (TypedLine* line : lines_)
        if (line->objectName() == field) {
            typing_ = line;
            line->setFocus();
        }
}

void EntrySheet::keep() {
    const auto made = factsOf(form_);
    if (const auto* problem = std::get_if<EntryProblem>(&made)) {
        problem_->setFont(dress_.letters(mm::words));
        putForward(*problem);
        return;
    }
    if (const auto question = askedFirst(form_); question && !asked_) {
        problem_->setFont(dress_.letters(mm::words * 1.25, true));
        putForward(*question);
        ask(true);
        return;
    }
    if (question_ != Question::none) // Enter answers none
        return;
    if (!sure_) {
        if ((slip_ = slipOf(form_))) {
            focusOn(slip_->field);
            for (TypedLine* line : lines_)
                line->setDoubted(line->objectName() == slip_->field);
            return put(Question::slip, slip_->words, slip_->field, slip_->asTyped, slip_->asMeant);
        }
        if (const auto question = isItSeaLevel(form_, units_))
            return put(Question::seaLevel, question->words, {}, question->here, question->reported);
        if (const auto words = toldBefore(form_, units_, clock_))
            return put(Question::twice, *words, {}, tr("The same one"), tr("Keep it besides"));
    }
    hand(std::get<std::vector<Fact>>(made));
}

void EntrySheet::hand(const std::vector<Fact>& facts) {
    hide();
    emit kept(facts);
}

void EntrySheet::put(Question question, const QString& words, const QString& field, const QString& yes,
                     const QString& other) {
    question_ = question;
    problem_->setFont(dress_.letters(mm::words * 1.25, true));
    putForward({field, words});
    yes_->say(yes, QStringLiteral("Y"));
    other_->say(other, QStringLiteral("Z"));
    yes_->setVisible(!yes.isEmpty());
    other_->setVisible(!other.isEmpty());
    keep_->hide();
    if (!focusWidget() || !focusWidget()->isVisible()) // the key that kept it is gone: the harmless one has the focus
        leave_->setFocus();
}

void EntrySheet::withdrawQuestion() {
    question_ = Question::none;
    yes_->hide();
    other_->hide();
    keep_->show();
}

void EntrySheet::answerYes() {
    if (question_ == Question::twice) // it is kept already
        return leave();
    const auto made = factsOf(form_);
    if (const auto* facts = std::get_if<std::vector<Fact>>(&made))
        return hand(*facts);
}

void EntrySheet::answerOther() {
    if (question_ == Question::seaLevel) {
        takeAsReported(form_);
        return answerYes();
    }
    if (question_ == Question::twice) { // kept and marked: it counts once
        question_ = Question::none;
        return answerYes();
    }
    if (!slip_)
        return;
    // What was meant stands in the field, to be seen before it is kept.
    takeAsMeant(form_, *slip_);
    for (TypedLine* line : lines_)
        if (line->objectName() == slip_->field) {
            line->setUnit(symbolOf(slip_->unit));
            if (!slip_->digits.isEmpty())
                line->setText(slip_->digits);
            line->setDoubted(false);
        }
    sure_ = true;
    withdrawQuestion();
    keep();
}

void EntrySheet::keyPressEvent(QKeyEvent* event) {
    if (!answers(*event))
        FormSheet::keyPressEvent(event);
}

bool EntrySheet::answers(const QKeyEvent& event) {
    const QString text = event.text().toUpper();
    for (Press* answer : {yes_, other_})
        if (question_ != Question::none && !answer->isHidden() && text == answer->key()) {
            answer->click();
            return true;
        }
    return typesUnit(event) || choosesKind(event);
}

// A letter behind a temperature is the scale it was read on.
bool EntrySheet::typesUnit(const QKeyEvent& event) {
    const auto* typing = qobject_cast<TypedLine*>(focusWidget());
    if (!typing || typing->text().isEmpty() || (event.key() != Qt::Key_F && event.key() != Qt::Key_C))
        return false;
    for (EntryField& field : form_.fields)
        if (field.name == typing->objectName() && dimensionOf(field.unit) == Dimension::temperature) {
            field.unit = event.key() == Qt::Key_F ? Unit::degF : Unit::degC;
            findChild<TypedLine*>(field.name)->setUnit(symbolOf(field.unit));
            say();
            return true;
        }
    return false;
}

bool EntrySheet::choosesKind(const QKeyEvent& event) {
    const EntryField* field = form_.field(QStringLiteral("reading"));
    const QString text = event.text().toUpper();
    if (form_.action != Action::handReading || !field || text.size() != 1)
        return false;
    for (int i = 0; i < field->choices.size(); ++i)
        if (text[0] == letterOfKind(i)) {
            // A letter behind a number is the unit that somebody types out of habit (217.9F), and no other kind.
            if (lines_.front()->text().isEmpty())
                chooseKind(field->choices[i]);
            return true;
        }
    return false;
}

// A glove that taps twice does not answer the question that its first tap brought up.
bool EntrySheet::eventFilter(QObject* watched, QEvent* event) {
    if (watched == yes_ || watched == other_)
        return event->type() == QEvent::MouseButtonDblClick || FormSheet::eventFilter(watched, event);
    if (event->type() == QEvent::KeyPress && watched != keep_)
        return answers(static_cast<QKeyEvent&>(*event)) || FormSheet::eventFilter(watched, event);
    if (watched != keep_ || event->type() != QEvent::MouseButtonDblClick)
        return FormSheet::eventFilter(watched, event);
    if (asked_)
        focusOn(askedFirst(form_).value_or(EntryProblem{}).field); // a press takes the focus along
    return true;
}

} // namespace panside
