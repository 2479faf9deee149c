#include "ui/ledger/book_sheet.h"

#include "core/boil/day_vocabulary.h"
#include "ui/look/pad.h"
#include "ui/look/parts.h"
#include "ui/look/refocus.h"
#include "ui/words/book_words.h"
#include "ui/words/fact_words.h"

#include <QApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>
#include <span>

namespace panside {
namespace {

constexpr int offersShown = 7;      // in a row, and one that turns to the next
constexpr double longestOffer = 30; // mm: seven of them and the turning key stand side by side

// What is said gives way before what is pressed: its letters first, then what stands there each time, then what the
// fields say too, then all but a problem that is told.
struct Way {
    double title, live; // mm
    bool whole = true, caution = true, says = true;
};
constexpr Way ways[] = {{mm::words * 1.25, mm::words},
                        {mm::words, 3.5},
                        {3.5, mm::smallWords},
                        {mm::smallWords, mm::smallWords},
                        {mm::smallWords, mm::smallWords, true, false},
                        {mm::smallWords, mm::smallWords, false, false},
                        {mm::smallWords, mm::smallWords, false, false, false}};

} // namespace

BookSheet::BookSheet(QWidget* parent) : FormSheet{QStringLiteral("bookSheet"), parent} {}

void BookSheet::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    if (isVisible())
        build();
}

void BookSheet::open(BookForm form, Units units, const WallClock& clock, std::function<QStringList(const Fact&)> odd) {
    form_ = std::move(form);
    units_ = units;
    clock_ = clock;
    odd_ = std::move(odd);
    at_ = 0;
    resume();
}

void BookSheet::resume() {
    aside_ = false;
    build();
    show();
    raise();
    // The first field that is still empty, and of these one that is wanted.
    const auto& fields = form_.fields;
    auto at = std::ranges::find_if(fields, [](const BookField& one) { return one.needed && one.answer.isEmpty(); });
    if (at == fields.end())
        at = std::ranges::find_if(fields, [](const BookField& one) { return one.answer.isEmpty(); });
    const auto first = at == fields.end() ? 0 : static_cast<std::size_t>(at - fields.begin());
    if (first < edits_.size()) {
        edits_[first]->setFocus();
        follow(edits_[first]);
    }
}

void BookSheet::build() {
    const std::size_t stood = at_;
    discard(inside_);
    edits_.clear();
    offers_.clear();
    asked_ = false;
    insteads_.clear();
    inside_ = new QWidget{this};
    layout()->addWidget(inside_);
    const bool low = isLow();
    const int gap = dress_.px(low ? 0.5 : mm::gap); // so low a sheet has no pixel to spare
    auto* column = new QVBoxLayout{inside_};
    column->setSpacing(gap);
    column->setContentsMargins(dress_.px(2), gap, dress_.px(2), gap);

    writes_ = labelOf(dress_, QStringLiteral("writes"), mm::words, true);
    column->addWidget(writes_);
    column->addLayout(fieldsAndPad(gap));
    column->addLayout(offersRow(gap));
    live_ = labelOf(dress_, QStringLiteral("live"), mm::words);
    column->addWidget(live_);
    problem_ = labelOf(dress_, QStringLiteral("problem"), low ? 3.5 : mm::words, true);
    column->addWidget(problem_);
    column->addStretch();
    column->addLayout(lateRow());
    column->addLayout(endRow());
    at_ = std::min(stood, form_.fields.size() - 1);
    from_ = 0;
    offer();
    problem_->hide();
    say();
    if (isVisible() && at_ < edits_.size())
        edits_[at_]->setFocus();
}

QLayout* BookSheet::fieldsAndPad(int gap) {
    auto* middle = new QHBoxLayout;
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(dress_.px(mm::gap));
    grid->setVerticalSpacing(gap);
    const std::size_t rows = (form_.fields.size() + 1) / 2;
    for (std::size_t i = 0; i < form_.fields.size(); ++i)
        grid->addWidget(fieldRow(i), static_cast<int>(i % rows), static_cast<int>(i / rows));
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    auto* left = new QVBoxLayout;
    left->addLayout(grid);
    left->addStretch();
    middle->addLayout(left, 1);
    Pad* pad = makePad();
    connect(pad, &Pad::typed, this, &BookSheet::typeInto);
    connect(pad, &Pad::next, this, [this] {
        focusNextChild();
        follow(window()->focusWidget()); // where no window manager makes the window active, no focus is told
    });
    middle->addWidget(pad, 0, Qt::AlignTop);
    return middle;
}

QLayout* BookSheet::offersRow(int gap) {
    auto* offers = new QHBoxLayout;
    offers->setSpacing(gap);
    for (int i = 0; i <= offersShown; ++i) {
        Press* one = key({}, QStringLiteral("offer%1").arg(i));
        one->setFocusPolicy(Qt::NoFocus); // it is for the field that has the focus
        connect(one, &Press::clicked, this, [this, i] {
            if (i < offersShown)
                return choose(offers_[static_cast<std::size_t>(i)]->property("word").toString());
            from_ += offersShown;
            offer();
        });
        one->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
        QSizePolicy stays = one->sizePolicy();
        stays.setRetainSizeWhenHidden(true);
        one->setSizePolicy(stays);
        offers_.push_back(one);
        offers->addWidget(one, 1);
    }
    return offers;
}

QWidget* BookSheet::fieldRow(std::size_t index) {
    BookField& field = form_.fields[index];
    auto* row = new QWidget;
    auto* line = new QHBoxLayout{row};
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(dress_.px(mm::gap));
    auto* label = new QLabel{field.needed ? field.label + QStringLiteral(" *") : field.label};
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    label->setFixedWidth(dress_.px(34));
    const bool oneLine = fits(dress_.letters(3.5), label->text(), {label->maximumWidth(), dress_.px(mm::target)});
    label->setFont(dress_.letters(isLow() || !oneLine ? mm::smallWords : 3.5)); // two lines in the height of a target
    line->addWidget(label);
    if (field.kind == BookField::Kind::choice) {
        // A choice is a key that turns to the next word, beside the words that are offered below.
        Press* turn = key(choiceWord(field.answer.toStdString()), field.name);
        turn->setFocusPolicy(Qt::StrongFocus); // the words below are its own then
        turn->setAccessibleName(field.label);
        turn->installEventFilter(this);
        connect(turn, &Press::clicked, this, [this, index] {
            BookField& turned = form_.fields[index];
            const auto next = turned.offers.indexOf(turned.answer) + 1;
            at_ = index;
            choose(next < turned.offers.size() ? turned.offers[next] : QString{});
        });
        line->addWidget(turn, 1);
        edits_.push_back(turn);
        return row;
    }
    TypedLine* edit = lineOf(dress_, field.name, field.label, field.answer);
    if (field.kind == BookField::Kind::number)
        edit->takeNumbers(false);
    edit->setUnit(field.unit == Unit::none ? QString{} : symbolOf(field.unit));
    edit->setMinimumWidth(dress_.px(24));
    connect(edit, &QLineEdit::textChanged, this, [this, index](const QString& text) {
        form_.fields[index].answer = text;
        changed(index);
    });
    edit->installEventFilter(this);
    line->addWidget(edit, 1);
    edits_.push_back(edit);
    return row;
}

// When, and who.
QLayout* BookSheet::lateRow() {
    const std::pair<QString, Duration> steps[] = {{tr("10 min earlier"), Duration{600}},
                                                  {tr("1 h earlier"), Duration{3600}},
                                                  {tr("1 day earlier"), Duration{86400}}};
    QHBoxLayout* line = whenRow(steps);
    line->setSpacing(dress_.px(1));
    hand_ = key({}, QStringLiteral("hand"));
    connect(hand_, &Press::clicked, this, &BookSheet::turnHand);
    hand_->setVisible(form_.context && !form_.context->hands.isEmpty());
    line->addWidget(hand_, 1);
    return line;
}

void BookSheet::turnHand() {
    const QStringList& hands = form_.context->hands;
    const auto next = hands.indexOf(form_.by) + 1;
    form_.by = next < hands.size() ? hands[next] : QString{};
    say();
}

void BookSheet::changed(std::size_t index) {
    asked_ = false;
    insteads_.clear();
    problem_->clear();
    problem_->hide();
    at_ = index;
    from_ = 0;
    offer();
    say();
}

// Words for the field that is filled in: those that begin as what is typed, or units; or what could stand instead.
void BookSheet::offer() {
    QStringList words = insteads_;
    const BookField& field = form_.fields[at_];
    const QString typed = field.answer.trimmed();
    if (words.isEmpty() && field.units.size() > 1 && !typed.isEmpty()) {
        for (const Unit unit : field.units)
            words << QStringLiteral("\u0001") +
                         QString::fromUtf8(nameOf(unit).data(), static_cast<qsizetype>(nameOf(unit).size()));
    } else if (words.isEmpty()) {
        const bool whole = field.kind == BookField::Kind::choice || field.offers.contains(typed);
        const auto key = nameKey(typed.toStdString());
        for (const QString& word : field.offers)
            if (whole || nameKey(word.toStdString()).starts_with(key))
                words << word;
    }
    if (from_ >= words.size())
        from_ = 0;
    // A vessel keeps the name it was given, though it be a word for a kind of vessel.
    const auto text = field.key ? keyOf(form_.deed, *field.key).text : DayText::plain;
    const bool isName = text == DayText::vessel || text == DayText::gear;
    int wanted = 0;
    for (int i = 0; i < offersShown; ++i) {
        Press* one = offers_[static_cast<std::size_t>(i)];
        const QString word = words.value(from_ + i);
        one->setProperty("word", word);
        one->setVisible(!word.isEmpty());
        one->setMinimumWidth(0);
        if (word.isEmpty())
            continue;
        const auto unit = word.startsWith(u'\u0001') ? unitNamed(word.mid(1).toStdString()) : std::nullopt;
        one->say(unit ? symbolOf(*unit) : isName ? word : choiceWord(word.toStdString()), {});
        wanted += one->leastWidth();
        one->setShape(field.answer == word ? KeyShape::resting : KeyShape::plain);
    }
    offers_.back()->say(tr("more"), {});
    offers_.back()->setVisible(words.size() > offersShown);
    // Each as long as its word, or all no longer than what lets them stand side by side.
    const int most = wanted <= offersShown * dress_.px(longestOffer) ? wanted : dress_.px(longestOffer);
    for (int i = 0; i < offersShown; ++i)
        if (Press* one = offers_[static_cast<std::size_t>(i)]; one->isVisibleTo(this))
            one->setMinimumWidth(std::min(one->leastWidth(), most));
}

void BookSheet::choose(const QString& word) {
    BookField& field = form_.fields[at_];
    QString text = word;
    if (word.startsWith(u'\u0001')) { // a unit behind the number that stands there
        QString number = field.answer.trimmed();
        while (!number.isEmpty() && !number.back().isDigit())
            number.chop(1);
        text = number + u' ' + word.mid(1);
    }
    if (auto* edit = qobject_cast<TypedLine*>(edits_[at_])) {
        edit->setText(text); // the form follows by its signal
        form_.takeKindFromName();
        for (std::size_t i = 0; i < edits_.size(); ++i)
            if (auto* turn = qobject_cast<Press*>(edits_[i]))
                turn->say(choiceWord(form_.fields[i].answer.toStdString()), {});
        say();
        edit->setFocus();
        return;
    }
    field.answer = text;
    static_cast<Press*>(edits_[at_])->say(choiceWord(text.toStdString()), {});
    changed(at_);
}

void BookSheet::typeInto(const QString& face) {
    if (auto* edit = qobject_cast<TypedLine*>(edits_[at_]))
        Pad::type(*edit, face);
}

void BookSheet::say() {
    giveWay();
    if (hand_ && form_.context)
        hand_->say(form_.by.isEmpty() ? tr("who?") : form_.by, {});
    keep_->say(asked_ ? tr("Keep it all the same") : tr("Keep it"), tr("Enter"));
}

void BookSheet::giveWay() {
    if (!inside_)
        return;
    const auto made = factOf(form_);
    const auto* fact = std::get_if<Fact>(&made);
    const QString when =
        clock_.at(form_.at())
            .toString(form_.earlier < Duration{43200} ? QStringLiteral("HH:mm") : QStringLiteral("yyyy-MM-dd HH:mm"));
    const QString says = form_.live ? form_.live(form_) : QString{};
    for (const Way& way : std::span{ways}.subspan(isLow() ? 1 : 0)) {
        QStringList title{when, fact && way.whole ? factWords(*fact, units_) : form_.title}, live{says};
        if (!form_.by.isEmpty() && way.whole)
            title << form_.by;
        if (way.caution)
            live << form_.caution;
        live.removeAll(QString{});
        writes_->setFont(dress_.letters(way.title, true));
        writes_->setText(title.join(QStringLiteral(", ")));
        live_->setFont(dress_.letters(way.live));
        live_->setText(live.join(u'\n'));
        live_->setVisible(!live.isEmpty() && way.says);
        problem_->setFont(dress_.letters(way.live, true));
        if (inside_->layout()->totalMinimumHeightForWidth(contentsRect().width()) <= contentsRect().height())
            return;
    }
}

void BookSheet::resizeEvent(QResizeEvent* event) {
    FormSheet::resizeEvent(event);
    giveWay();
}

void BookSheet::keep() {
    const auto made = factOf(form_);
    if (const auto* problem = std::get_if<BookProblem>(&made)) {
        focusOn(problem->field);
        insteads_ = problem->offers;
        tell(problem->words);
        from_ = 0;
        return offer();
    }
    const Fact& fact = std::get<Fact>(made);
    const QStringList odd = odd_ && !asked_ ? odd_(fact) : QStringList{};
    if (!odd.isEmpty()) {
        asked_ = true;
        tell(odd.join(u'\n'));
        return say();
    }
    hide();
    const auto next = form_.next;
    const QString by = form_.by;
    emit kept({fact});
    if (auto more = next ? next() : std::nullopt) {
        more->by = by; // the same hand goes on
        open(std::move(*more), units_, clock_, odd_);
    }
}

void BookSheet::tell(const QString& problem) {
    problem_->setText(problem);
    problem_->show();
    giveWay();
}

void BookSheet::focusOn(const QString& field) {
    for (std::size_t i = 0; i < form_.fields.size(); ++i)
        if (form_.fields[i].name == field) {
            edits_[i]->setFocus();
            follow(edits_[i]);
        }
}

bool BookSheet::eventFilter(QObject* watched, QEvent* event) {
    // A glove that taps twice does not answer the question that its first tap brought up.
    if (watched == keep_)
        return event->type() == QEvent::MouseButtonDblClick || FormSheet::eventFilter(watched, event);
    if (event->type() == QEvent::FocusIn)
        follow(watched);
    return FormSheet::eventFilter(watched, event);
}

void BookSheet::follow(const QObject* focused) {
    const auto found = std::ranges::find(edits_, focused);
    if (found == edits_.end())
        return;
    at_ = static_cast<std::size_t>(found - edits_.begin());
    from_ = 0;
    offer();
}

} // namespace panside
