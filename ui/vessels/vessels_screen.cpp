#include "ui/vessels/vessels_screen.h"

#include "ui/look/each_language.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/page/action_keys.h"
#include "ui/words/book_words.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace panside {
namespace {

constexpr int namesOffered = 6;

} // namespace

VesselsScreen::VesselsScreen(QWidget* parent)
    : QWidget{parent}, wants_{new QLabel}, notes_{new QLabel}, question_{new QLabel}, leaves_{new QStackedWidget},
      table_{new LedgerTable{QStringLiteral("vesselTable")}}, lost_{new LedgerTable{QStringLiteral("lostDraws")}},
      entries_{new LedgerTable{QStringLiteral("entryTable")}}, draws_{new DrawsPicture}, into_{new TypedLine},
      keys_{new ActionKeys} {
    setObjectName(QStringLiteral("vessels"));
    setAutoFillBackground(true);
    auto* column = new QVBoxLayout{this};
    wants_->setObjectName(QStringLiteral("wants"));
    notes_->setObjectName(QStringLiteral("notes"));
    question_->setObjectName(QStringLiteral("question"));
    into_->setObjectName(QStringLiteral("intoVessel"));
    for (QLabel* label : {wants_, notes_, question_})
        label->setWordWrap(true);
    auto* main = new QWidget;
    auto* first = new QVBoxLayout{main};
    first->setContentsMargins(0, 0, 0, 0);
    first->addWidget(wants_);
    first->addWidget(notes_);
    first->addWidget(table_, 1);
    leaves_->addWidget(main);
    auto* where = new QWidget;
    auto* second = new QVBoxLayout{where};
    second->setContentsMargins(0, 0, 0, 0);
    second->addWidget(question_);
    second->addWidget(lost_, 1);
    auto* row = new QHBoxLayout;
    row->addWidget(into_, 2);
    for (int i = 0; i < namesOffered; ++i) {
        auto* press = new Press;
        press->setFocusPolicy(Qt::NoFocus);
        press->setObjectName(QStringLiteral("into%1").arg(i));
        connect(press, &Press::clicked, this, [this, press] {
            into_->setText(press->text());
            tell();
        });
        names_.push_back(press);
        row->addWidget(press, 1);
    }
    second->addLayout(row);
    leaves_->addWidget(where);
    leaves_->addWidget(entries_);
    leaves_->addWidget(draws_);
    column->addWidget(leaves_, 1);
    column->addWidget(keys_);
    into_->installEventFilter(this);
    connect(table_, &LedgerTable::chosenChanged, this, &VesselsScreen::sayChosen);
    connect(table_, &LedgerTable::opened, this, [this] { act(Qt::Key_M); });
    connect(lost_, &LedgerTable::opened, this, [this] { into_->setFocus(); });
    connect(entries_, &LedgerTable::opened, this, [this](int at) {
        const QString name = chosen() ? chosen()->name : QString{};
        emit deedWanted(deeds_[static_cast<std::size_t>(at)], name);
    });
    connect(into_, &QLineEdit::textChanged, this, &VesselsScreen::offerVessels);
    keys_->answerFor(*this);
    connect(keys_, &ActionKeys::pressed, this, &VesselsScreen::act);
    setFocusProxy(table_);
    sayKeys();
    inEachLanguage(*this, [this] {
        sayKeys();
        fillEntries();
        turnTo(leaf());
    });
}

void VesselsScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    wants_->setFont(dress.letters(mm::act, true));
    notes_->setFont(dress.letters(mm::words));
    question_->setFont(dress.letters(mm::words, true));
    for (LedgerTable* table : {table_, lost_, entries_})
        table->wear(dress);
    draws_->wear(dress);
    into_->wear(dress, mm::words);
    into_->setMinimumHeight(dress.px(mm::target));
    for (Press* press : names_)
        press->wear(dress);
    keys_->wear(dress);
    sayChosen();
}

void VesselsScreen::display(const VesselsView& view, const DrawsView& draws) {
    draws_->display(draws);
    const bool lost = view.whereTo != view_.whereTo;
    view_ = view;
    table_->display(view.columns, view.rows);
    if (lost || lost_->count() != static_cast<int>(view.whereTo.size())) {
        std::vector<TableRow> rows;
        for (const LostDraw& draw : view.whereTo)
            rows.push_back({{draw.words}});
        lost_->display({{tr("drawn")}}, rows);
    }
    if (leaf() == Leaf::whereTo && view.whereTo.empty())
        turnTo(Leaf::vessels);
    sayKeys();
    sayChosen();
    offerVessels();
}

void VesselsScreen::setDeeds(const std::vector<Deed>& deeds) {
    deeds_ = deeds;
    fillEntries();
}

void VesselsScreen::fillEntries() {
    std::vector<TableRow> rows;
    for (const Deed deed : deeds_)
        rows.push_back({{deedName(deed)}});
    entries_->display({{tr("What to write")}}, rows);
}

void VesselsScreen::choose(int row) { table_->choose(row); }

VesselsScreen::Leaf VesselsScreen::leaf() const { return static_cast<Leaf>(leaves_->currentIndex()); }

const VesselLine* VesselsScreen::chosen() const {
    const int row = table_->chosen();
    return row >= 0 && static_cast<std::size_t>(row) < view_.lines.size() ? &view_.lines[static_cast<std::size_t>(row)]
                                                                          : nullptr;
}

void VesselsScreen::sayChosen() {
    const VesselLine* line = chosen();
    wants_->setText(line ? line->wants : view_.nothing);
    notes_->setText(line ? line->notes : QString{});
    notes_->setVisible(!notes_->text().isEmpty());
}

void VesselsScreen::sayKeys() {
    const bool some = !view_.rows.empty();
    std::vector<PageKey> keys;
    if (leaf() == Leaf::vessels) {
        keys = {{Qt::Key_M, QStringLiteral("move"), tr("Move"), false, some},
                {Qt::Key_I, QStringLiteral("dip"), tr("Dip"), false, some},
                {Qt::Key_G, QStringLiteral("grade"), tr("Grade"), false, some},
                {Qt::Key_T, QStringLiteral("trace"), tr("Trace"), false, some},
                {Qt::Key_N, QStringLiteral("new"), tr("New vessel"), !some},
                {Qt::Key_L, QStringLiteral("draws"), tr("Draws")},
                {Qt::Key_E, QStringLiteral("entries"), tr("Other entry")}};
        if (!view_.whereTo.empty())
            keys.insert(keys.begin(),
                        {Qt::Key_W, QStringLiteral("whereTo"), tr("Where to? %1").arg(view_.whereTo.size()), true});
    } else if (leaf() == Leaf::whereTo) {
        keys = {{Qt::Key_Return, QStringLiteral("tell"), tr("It went there"), true}};
    } else if (leaf() == Leaf::entries) {
        keys = {{Qt::Key_Return, QStringLiteral("write"), tr("Write it"), true}};
    }
    keys.push_back(leaf() == Leaf::vessels ? wayToBoard()
                                           : PageKey{Qt::Key_Escape, QStringLiteral("back"), tr("Back")});
    keys_->display(keys);
}

void VesselsScreen::turnTo(Leaf leaf) {
    leaves_->setCurrentIndex(static_cast<int>(leaf));
    sayKeys();
    question_->setText(tr("Where did it go? Choose the draw, then type or press the vessel."));
    setFocusProxy(leaf == Leaf::whereTo   ? static_cast<QWidget*>(into_)
                  : leaf == Leaf::entries ? static_cast<QWidget*>(entries_)
                  : leaf == Leaf::draws   ? static_cast<QWidget*>(draws_)
                                          : table_);
    if (leaf == Leaf::whereTo)
        lost_->choose(0);
    if (leaf == Leaf::entries && entries_->chosen() < 0)
        entries_->choose(0);
    if (isVisible())
        focusProxy()->setFocus();
}

void VesselsScreen::offerVessels() {
    const QString typed = into_->text();
    int at = 0;
    for (const VesselLine& line : view_.lines)
        if (at < namesOffered && nameKey(line.name.toStdString()).starts_with(nameKey(typed.toStdString())))
            names_[static_cast<std::size_t>(at++)]->say(line.name, {});
    for (int i = 0; i < namesOffered; ++i)
        names_[static_cast<std::size_t>(i)]->setVisible(i < at);
}

void VesselsScreen::tell() {
    const int row = lost_->chosen();
    const QString name = into_->text().trimmed();
    if (row < 0 || name.isEmpty())
        return;
    const LostDraw draw = view_.whereTo[static_cast<std::size_t>(row)];
    into_->clear();
    emit told(draw, name);
}

void VesselsScreen::act(int key) {
    const QString name = chosen() ? chosen()->name : QString{};
    if (key == Qt::Key_Escape) {
        if (leaf() == Leaf::vessels)
            emit left();
        else
            turnTo(Leaf::vessels);
    } else if (leaf() == Leaf::whereTo) {
        tell();
    } else if (leaf() == Leaf::draws) {
        return; // only looked at
    } else if (leaf() == Leaf::entries) {
        if (entries_->chosen() >= 0)
            emit deedWanted(deeds_[static_cast<std::size_t>(entries_->chosen())], name);
    } else if (key == Qt::Key_M) {
        emit deedWanted(Deed::moved, name);
    } else if (key == Qt::Key_I) {
        emit deedWanted(Deed::dipped, name);
    } else if (key == Qt::Key_G) {
        emit deedWanted(Deed::graded, name);
    } else if (key == Qt::Key_N) {
        emit deedWanted(Deed::vessel, {});
    } else if (key == Qt::Key_T) {
        emit traceWanted(name);
    } else if (key == Qt::Key_L) {
        turnTo(Leaf::draws);
    } else if (key == Qt::Key_W) {
        turnTo(Leaf::whereTo);
    } else if (key == Qt::Key_E) {
        turnTo(Leaf::entries);
    }
}

bool VesselsScreen::eventFilter(QObject* watched, QEvent* event) {
    if (watched != into_ || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Up || key == Qt::Key_Down) {
        lost_->choose(std::clamp(lost_->chosen() + (key == Qt::Key_Up ? -1 : 1), 0, std::max(0, lost_->count() - 1)));
        return true;
    }
    return false;
}

} // namespace panside
