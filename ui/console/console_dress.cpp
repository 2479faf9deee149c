// Sizes, colours, units and language: all that is shown wears them, now and when they change.
#include "ui/board/board.h"
#include "ui/console/console.h"
#include "ui/console/screens.h"
#include "ui/entry/entry_sheet.h"
#include "ui/entry/water_sheet.h"
#include "ui/frame/frame_view.h"
#include "ui/frame/key_map.h"
#include "ui/ledger/book_sheet.h"
#include "ui/lookin/looked_at.h"
#include "ui/page/keyed_page.h"
#include "ui/page/page.h"
#include "ui/sound/voice.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QKeyEvent>

namespace panside {
namespace {

// For a screen reader: the page, its lists and whatever rolls in it are called as its tab is.
void nameForReaders(QWidget& page, const QString& word) {
    page.setAccessibleName(word);
    for (auto* part : page.findChildren<QAbstractScrollArea*>())
        part->setAccessibleName(word);
    for (auto* leaf : page.findChildren<KeyedPage*>())
        leaf->setAccessibleName(word);
}

} // namespace

void Console::choose(Choices choices) {
    const bool otherLanguage = choices.language != choices_.language;
    choices_ = std::move(choices);
    saveChoices();
    if (otherLanguage) {
        speak(choices_.language);
        say({});
    }
    wear();
    refresh();
    emit chosen(choices_);
}

void Console::saveChoices() const {
    Choices kept = choices_;
    if (behind_.rehearsal)
        kept.backupFolder = ownBackups_;
    kept.save();
}

void Console::speak(const QString& language) {
    spoken_.speak(language);
    setWindowTitle(behind_.rehearsal ? tr("Panside, rehearsal") : tr("Panside"));
}

void Console::wear(const ScreenRow& row, Desk& desk) {
    nameForReaders(*desk.screen(), wordOf(row));
    desk.wear(dress_);
}

Measure Console::measureHere() const { return Measure::of(*this).grownTo(width(), height()); }

void Console::wear() {
    dress_ = {measureHere(), choices_.look};
    // What is hidden must not take the focus while it changes its dress.
    QWidget* focused = QApplication::focusWidget();
    setPalette(paletteOf(dress_.look));
    bars_->setBreadth(dress_.px(mm::target) * 2 / 3);
    frame_->wear(dress_);
    frame_->setStill(choices_.sound.still);
    board_->wear(dress_);
    board_->setUnits(choices_.units);
    for (const auto& [action, its] : desks_) {
        wear(*screenRow(action), *its);
    }
    board_->setAccessibleName(wordOf(*screenRow(Action::board)));
    map_->setAccessibleName(wordOf(*screenRow(Action::help)));
    nameForReaders(*page_, wordOf(*screenRow(Action::cautions)));
    water_->setAccessibleName(wordOf(Action::waterCheck));
    map_->wear(dress_);
    page_->wear(dress_);
    sheet_->wear(dress_);
    water_->wear(dress_);
    book_->wear(dress_);
    voice_->setVolume(choices_.sound.volume / 100.0);
    voice_->setSpoken(choices_.sound.spoken);
    looked_->apply(choices_.lookIn);
    if (frame_->page() == map_)
        showKeys();
    if (frame_->page() && shown_ != Action::help)
        frame_->showTabs(screenRow(shown_)->place, tabsOf(screenRow(shown_)->place, withJournal(), this), shown_);
    placeSheets();
    QWidget* now = focusWidget();
    if (isVisible() && (!now || !now->isVisible())) {
        if (focused && focused->isVisible() && isAncestorOf(focused))
            focused->setFocus();
        else if (!hasSheet())
            focusPage();
    }
}

// What nobody took, pressed where the page does not see it (a key of the bar, a tab), is the page's.
void Console::keyPressEvent(QKeyEvent* event) {
    QWidget* page = frame_->page();
    const QWidget* focused = QApplication::focusWidget();
    if (passing_ || !page || hasSheet() || !focused || focused == page || page->isAncestorOf(focused))
        return QMainWindow::keyPressEvent(event);
    passing_ = true;
    QCoreApplication::sendEvent(page, event);
    passing_ = false;
}

void Console::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        setWindowTitle(behind_.rehearsal ? tr("Panside, rehearsal") : tr("Panside"));
}

void Console::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    if (measureHere() != dress_.measure)
        wear();
    focusPage();
}

void Console::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    if (measureHere() != dress_.measure)
        wear();
    placeSheets();
}

} // namespace panside
