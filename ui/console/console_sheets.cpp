// The sheets in which something is typed: one place, one at a time, put aside for an alarm.
#include "ui/board/across_view.h"
#include "ui/board/board.h"
#include "ui/chart/rise_chart.h"
#include "ui/console/console.h"
#include "ui/entry/entry_sheet.h"
#include "ui/entry/water_sheet.h"
#include "ui/frame/frame_view.h"
#include "ui/ledger/book_sheet.h"
#include "ui/ledger/house.h"
#include "ui/ledger/known_vessels.h"
#include "ui/words/mark_words.h"

namespace panside {

bool Console::hasSheet() const { return sheet_->isVisible() || water_->isVisible() || book_->isVisible(); }

void Console::hideSheets() {
    sheet_->hide();
    water_->hide();
    book_->hide();
}

void Console::openBook(BookForm form) {
    hideSheets();
    placeSheets();
    if (book_->isAside() && book_->form().deed == form.deed)
        return book_->resume();
    book_->open(std::move(form), choices_.units, board_->chart().trace().clock(), [this](const Fact& fact) {
        QStringList words;
        for (const LedgerMark& mark : house_->marksOf(fact))
            words << markWords(mark, choices_.units);
        return words;
    });
}

void Console::openSheet(Action action) {
    water_->hide();
    book_->hide();
    placeSheets();
    if (sheet_->isPutAside(action))
        return sheet_->resume();
    EntryForm form = formFor(action, board_->picture(), choices_.units, session().now());
    for (const Set& set : session().settings())
        if (set.key == Setting::elevation)
            form.elevation = Length::metre(set.si);
    if (action == Action::drawClose)
        form.draws = drawsIn(session().boil().facts());
    if (const auto ledger = house_->ledger())
        offerVessels(form, ledger->ledger());
    sheet_->open(form, choices_.units, board_->chart().trace().clock());
}

void Console::sheetLeft() { focusPage(); }

// An alarm is read and answered first.
void Console::putSheetsAside(const Picture& picture) {
    std::set<std::pair<Alarm, std::optional<Series>>> unseen;
    bool isNew = false;
    for (const AlarmPicture& alarm : picture.alarms)
        if (alarm.state == AlarmState::unseen && alarm.priority != Priority::low) {
            unseen.emplace(alarm.alarm, alarm.series);
            isNew = isNew || !unseen_.contains({alarm.alarm, alarm.series});
        }
    unseen_ = std::move(unseen);
    if (!isNew || !hasSheet())
        return;
    if (book_->isVisible()) {
        book_->putAside();
        say(tr("Put aside for an alarm: %1. Open it again: what you typed is still there.").arg(book_->form().title));
        return focusPage();
    }
    if (sheet_->isVisible()) {
        const Action about = sheet_->form().action;
        sheet_->putAside();
        say(tr("Put aside for an alarm: %1. %2 opens it again.").arg(wordOf(about), keyOf(about)));
    } else {
        water_->hide();
        say(tr("Put aside for an alarm: %1. %2 opens it again.")
                .arg(wordOf(Action::waterCheck), keyOf(Action::waterCheck)));
    }
    focusPage();
}

// Where a probe reads the pan, the console watches it; where none does, the temperature is typed in.
void Console::openWaterCheck() {
    const auto& pan = board_->picture().reading(Series::syrup_pan);
    if (!pan || pan->byHand || pan->reason == Reason::silent) {
        openSheet(Action::waterCheck);
        return;
    }
    hideSheets();
    placeSheets();
    water_->begin(pan->probe, session().now(), choices_.units);
    lookAtWater(board_->picture());
}

WaterLikely Console::likely() {
    std::optional<Length> height;
    for (const Set& set : session().settings())
        if (set.key == Setting::elevation)
            height = Length::metre(set.si);
    return likelyBoil(board_->picture(), height);
}

void Console::lookAtWater(const Picture& picture) {
    if (!water_->isVisible())
        return;
    const auto samples = waterSamples(session().boil().facts(), water_->probe(), water_->since());
    const auto expected = expectedBoil(picture);
    water_->display(panside::lookAtWater(samples, picture.at, expected), expected, likely(), picture.at);
}

// In one place, never over the sentence or the cards.
void Console::placeSheets() {
    const QRect place = frame_->sheetPlace();
    sheet_->setGeometry(place);
    water_->setGeometry(place);
    book_->setGeometry(place);
    const int edge = dress_.px(2);
    board_->across().setGeometry(frame_->rect().adjusted(edge, edge, -edge, -edge));
}

} // namespace panside
