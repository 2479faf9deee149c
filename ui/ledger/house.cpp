#include "ui/ledger/house.h"

#include "core/journal/unforeseen.h"

#include <QCoreApplication>
#include <QThread>
#include <algorithm>

namespace panside {

House::House(Session& session, std::filesystem::path journal, QObject* parent)
    : QObject{parent}, session_{session}, place_{std::move(journal)} {}

House::~House() {
    worker_.request_stop();
    if (worker_.joinable())
        worker_.join();
}

// Settings that no shift holds yet, and rows that no disk holds.
std::vector<Fact> House::inMemory() const {
    std::vector<Fact> facts;
    for (const auto& entry : session_.heldBook())
        facts.push_back(entry.fact);
    // The settings in force stand before all that is entered from now on.
    const Instant now = session_.now();
    for (const Set& set : session_.settings())
        facts.push_back({now, set});
    std::ranges::stable_sort(facts, {}, &Fact::at);
    return facts;
}

void House::ask() {
    if (reading_) {
        again_ = true;
        return;
    }
    read();
}

bool House::isFresh() const { return !reading_ && told_ == session_.told(); }

void House::touched() {
    if (told_ >= 0 && told_ != session_.told())
        ask();
}

void House::tellTouched(const HouseLedger& before, const HouseLedger& after) {
    std::vector<TouchedLot> all;
    for (const Fact& entry : std::exchange(takenBack_, {}))
        for (TouchedLot& lot : lotsTouched(before.ledger(), entry, after.ledger()))
            if (std::ranges::none_of(all, [&](const TouchedLot& one) { return one.code == lot.code; }))
                all.push_back(std::move(lot));
    if (!all.empty())
        emit touchedLots(all);
}

void House::read() {
    reading_ = true;
    again_ = false;
    for (Fact& entry : session_.takenBack())
        takenBack_.push_back(std::move(entry));
    if (worker_.joinable())
        worker_.join();             // it has given its answer
    if (!session_.journalTrouble()) // what no disk takes is not waited for
        session_.flush();
    Facts shift;
    const auto shown = session_.shownShift();
    if (place_.empty() && shown)
        shift = session_.boil().facts();
    // With the right to write, so that what was worked out is kept; where there is none, it is only read.
    std::shared_ptr<Journal> own;
    if (!place_.empty())
        troubleIn(place_, [&] {
            if (auto beside = session_.journalBeside())
                own = std::make_shared<Journal>(std::move(*beside));
        });
    worker_ = std::jthread{[this, own = std::move(own), told = session_.told(), more = inMemory(), place = place_,
                            reader = reader_, shown, shift = std::move(shift)](const std::stop_token& stop) mutable {
        std::shared_ptr<const HouseLedger> ledger;
        std::optional<JournalError> trouble;
        if (place.empty()) {
            HouseLedger::Parts parts;
            if (shown)
                parts.shifts.push_back(std::make_shared<const HouseShift>(houseShift(*shown, shift)));
            ledger = std::make_shared<const HouseLedger>(std::move(parts), std::move(more));
        } else {
            trouble = troubleIn(place, [&] {
                if (!own)
                    own = std::make_shared<Journal>(Journal::open(place, Journal::Access::read));
                ledger = reader->read(*own, std::move(more), [&] { return stop.stop_requested(); });
                own.reset();
            });
        }
        QMetaObject::invokeMethod(this, [this, ledger = std::move(ledger), trouble = std::move(trouble), told] {
            hold(ledger, trouble, told);
        });
    }};
}

void House::hold(std::shared_ptr<const HouseLedger> ledger, std::optional<JournalError> trouble, long long told) {
    reading_ = false;
    trouble_ = std::move(trouble);
    const auto before = ledger ? std::exchange(ledger_, std::move(ledger)) : nullptr;
    told_ = told;
    emit changed();
    if (before)
        tellTouched(*before, *ledger_);
    if (again_ || session_.told() != told)
        read();
}

void House::wait() {
    while (reading_) {
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
        QThread::msleep(1);
    }
}

std::vector<LedgerMark> House::marksOf(const Fact& fact) const {
    std::vector<LedgerMark> marks;
    if (!ledger_)
        return marks;
    const HouseLedger then = ledger_->with({fact});
    for (const LedgerMark& mark : then.ledger().marks()) {
        const auto which = then.moreOf(mark.row);
        if (which && then.more()[*which].fact == fact)
            marks.push_back(mark);
    }
    return marks;
}

std::shared_ptr<const BookContext> House::context(Units units) const {
    return bookContext(ledger_.get(), units, session_.now());
}

} // namespace panside
