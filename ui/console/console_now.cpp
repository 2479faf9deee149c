// What is kept and taken back, what the session then shows, and what the foot says of it.
#include "core/shift/rehearsal_feed.h"
#include "ui/board/board.h"
#include "ui/board/card.h"
#include "ui/chart/rise_chart.h"
#include "ui/console/console.h"
#include "ui/frame/foot.h"
#include "ui/frame/frame_view.h"
#include "ui/ledger/house.h"
#include "ui/ledger/ledger_desk.h"
#include "ui/lookin/looked_at.h"
#include "ui/rehearsal/rehearsal_words.h"
#include "ui/sound/voice.h"
#include "ui/words/fact_words.h"
#include "ui/words/said.h"

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr auto readable = 30s; // how long what was kept stands at the foot

} // namespace

void Console::keep(const std::vector<Fact>& facts) {
    focusPage();
    const auto answers = session().enter(facts);
    QString words;
    std::vector<Fact> taken;
    for (std::size_t i = 0; i < answers.size(); ++i) {
        if (const auto* refused = std::get_if<Session::Refused>(&answers[i])) {
            words = tr("Not kept: %1").arg(said(refused->why, "Session"));
            continue;
        }
        taken.push_back(facts[i]);
        const auto what = factWords(facts[i], choices_.units) + QStringLiteral(", ") +
                          board_->chart().trace().clock().hourAndMinute(facts[i].at);
        words = std::get<Session::Entered>(answers[i]).kept
                    ? tr("Kept: %1").arg(what)
                    : tr("Not on the disk yet: %1. Trying again each second.").arg(what);
    }
    if (behind_.rehearsal)
        behind_.rehearsal->perform(taken);
    say(words);
    touchHouse(std::ranges::any_of(taken, fillsTanks));
    refresh();
}

// Read again only where somebody looks at it, or where a tank may call: the others ask when they are opened.
void Console::touchHouse(bool fills) {
    const auto its = desks_.find(shown_);
    if (fills || (its != desks_.end() && dynamic_cast<LedgerDesk*>(its->second)))
        house_->touched();
}

void Console::undo() {
    const auto fact = session().undo();
    say(fact ? tr("Taken back: %1.").arg(factWords(*fact, choices_.units)) : tr("There is nothing to take back."));
    house_->touched(); // packed lots may rest on it
    refresh();
}

void Console::say(const QString& words) {
    lastSaid_ = words;
    said_.start(readable);
    footLine();
}

void Console::setNotice(const QString& words) {
    behind_.notice = [words] { return words; };
    footLine();
}

// In a rehearsal, that it is one, and what its crew has just done.
QString Console::notice() {
    if (!behind_.rehearsal)
        return behind_.notice ? behind_.notice() : QString{};
    const QStringList done = lastDone(session().boil().facts(), 1, choices_.units, board_->chart().trace().clock());
    return done.isEmpty() || behind_.rehearsal->isCrewAway()
               ? tr("Rehearsal: a made-up boil. Nothing of it is kept.")
               : tr("Rehearsal, a made-up boil. Last: %1").arg(done.front());
}

void Console::footLine() {
    const Fact* last = session().lastEntered();
    // What was just said has the place to itself, or neither could be read. The notice is asked for each time: the
    // language may have been changed since.
    frame_->foot().say(lastSaid_.isEmpty() ? notice() : lastSaid_);
    const auto& clock = board_->chart().trace().clock();
    frame_->foot().offerUndo(
        last ? factWords(*last, choices_.units) + QStringLiteral(", ") + clock.hourAndMinute(last->at) : QString{});
    frame_->foot().tellTime(clock.hourAndMinute(session().now()), behind_.rehearsal ? tr("rehearsal") : QString{});
}

void Console::everySecond() {
    session().tick();
    if (behind_.advance)
        behind_.advance();
    if (behind_.rehearsal)
        behind_.rehearsal->advance();
    refresh();
    lookAtTheEnd();
}

// A rehearsal ends with its shift: it says what it was and offers another.
void Console::lookAtTheEnd() {
    const bool over = behind_.rehearsal && behind_.rehearsal->isOver();
    if (over && !toldOver_)
        openScreen(Action::rehearsal);
    toldOver_ = over;
}

void Console::refreshSoon() {
    if (!soon_.isActive())
        soon_.start();
}

void Console::refresh() {
    const auto picture = session().picture();
    board_->chart().follow(session().boil());
    board_->display(picture);
    frame_->display(board_->sentenceShown(), board_->numbersLine());
    voice_->display(picture);
    tellPhones();
    putSheetsAside(picture);
    lookAtWater(picture);
    footLine();
}

// What the board shows, no other reckoning of it.
void Console::tellPhones() {
    if (!looked_->isOn())
        return;
    const auto& cards = board_->cards().cards();
    looked_->tell({.picture = board_->picture(),
                   .sentence = board_->sentenceShown(),
                   .cards = {cards[0]->view(), cards[1]->view(), cards[2]->view()},
                   .units = choices_.units},
                  session().boil(), behind_.rehearsal);
}

} // namespace panside
