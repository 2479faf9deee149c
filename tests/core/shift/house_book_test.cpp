// The day book as the console keeps it, and the house read from the journal again and again.
#include "core/boil/settings.h"
#include "core/boil/shift_log.h"
#include "core/journal/day_books.h"
#include "core/journal/log_import.h"
#include "core/journal/rows.h"
#include "core/rehearsal/rehearse.h"
#include "core/shift/house_ledger.h"
#include "core/shift/session.h"
#include "tests/core/journal/hand_journal.h"

#include <SQLiteCpp/Database.h>
#include <filesystem>
#include <gtest/gtest.h>
#include <sstream>
#include <unistd.h>

namespace panside {
namespace {

Fact row(Session& session, const char* what, const char* value, const char* unit, const char* detail) {
    return std::get<Fact>(factOf({}, what, value, unit, detail, session.now()));
}

class HouseBookTest : public testing::Test {
protected:
    HouseBookTest() { std::filesystem::create_directories(folder); }
    ~HouseBookTest() override { std::filesystem::remove_all(folder); }
    std::filesystem::path folder = std::filesystem::temp_directory_path() / ("house_book_" + std::to_string(getpid()));
    std::filesystem::path place = folder / "house.journal";
    Session session{keeperIn(Journal::open(place))};
    std::size_t rows() const { return bookFacts(Journal::open(place, Journal::Access::read)).size(); }
};

TEST_F(HouseBookTest, ARowOfTheDayBookIsKeptThereAndBeginsNoShift) {
    const auto answer = session.enter(row(session, "vessel", "40", "gal", "name=drum 7;kind=drum"));
    ASSERT_TRUE(std::holds_alternative<Session::Entered>(answer));
    EXPECT_TRUE(std::get<Session::Entered>(answer).kept);
    EXPECT_FALSE(session.openShift());
    EXPECT_EQ(rows(), 1U);
    EXPECT_TRUE(session.heldBook().empty());
}

TEST_F(HouseBookTest, UndoTakesBackWhatWasEnteredLastInWhicheverBook) {
    session.enter(row(session, "vessel", "40", "gal", "name=drum 7;kind=drum"));
    session.enter(Fact{session.now(), Lit{}});
    session.enter(row(session, "vessel", "5", "gal", "name=pail 1;kind=pail"));
    EXPECT_EQ(std::get<DayRow>(session.undo().value().what).text(Key::name), "pail 1");
    EXPECT_EQ(rows(), 1U);
    EXPECT_TRUE(std::holds_alternative<Lit>(session.undo().value().what));
    EXPECT_EQ(std::get<DayRow>(session.undo().value().what).text(Key::name), "drum 7");
    EXPECT_EQ(rows(), 0U);
    EXPECT_FALSE(session.undo());
    // Withdrawn, it stays to be read.
    const auto journal = Journal::open(place, Journal::Access::read);
    EXPECT_EQ(journal.withdrawn(journal.books().front().id).size(), 2U);
}

// A gathering at noon, no shift: the tank calls by the book, and that somebody saw it begins no shift.
TEST_F(HouseBookTest, ATankThatNoGaugeReadsCallsByTheBook) {
    session.carry(std::get<Set>(row(session, "set", "30", "gal", "key=overflow_rim").what));
    session.carry(std::get<Set>(row(session, "set", "Ruth", "", "key=overflow_calls").what));
    session.enter(row(session, "vessel", "300", "gal", "name=north;kind=gather"));
    session.enter(row(session, "gathered", "280", "gal", "to=north;brix=2"));
    const auto overflows = [&] {
        std::vector<Fact> inForce;
        for (const Set& set : session.settings())
            inForce.push_back({session.now(), set});
        const auto journal = Journal::open(place, Journal::Access::read);
        session.knows(std::make_shared<const HouseLedger>(&journal, inForce));
        std::vector<AlarmPicture> all = session.picture().alarms;
        std::erase_if(all, [](const AlarmPicture& one) { return one.alarm != Alarm::tank_overflow; });
        return all;
    };
    auto standing = overflows();
    ASSERT_EQ(standing.size(), 1U);
    EXPECT_EQ(standing[0].state, AlarmState::unseen);
    ASSERT_EQ(standing[0].why.size(), 3U);
    EXPECT_EQ(groundText(standing[0].why[0]), "the tank: north");
    EXPECT_EQ(groundText(standing[0].why[1]), "76 L left to the rim, and it calls at 114 L");
    EXPECT_EQ(groundText(standing[0].why[2]), "call Ruth");
    session.enter(Fact{session.now(), AlarmSeen{"tank_overflow"}});
    EXPECT_EQ(overflows()[0].state, AlarmState::seen);
    EXPECT_FALSE(session.openShift());
    session.enter(row(session, "vessel", "900", "gal", "name=hold;kind=hold"));
    session.enter(row(session, "moved", "200", "gal", "from=north;to=hold"));
    EXPECT_TRUE(overflows().empty());
    session.enter(row(session, "gathered", "200", "gal", "to=north;brix=2"));
    ASSERT_EQ(overflows().size(), 1U);
    EXPECT_EQ(overflows()[0].state, AlarmState::unseen) << "it fills again, and nobody has seen that";
}

// Last night's sweet stands in the next shift's balance; drained in between, it does not.
TEST_F(HouseBookTest, TheSweetInThePansIsCarriedIntoTheNextShift) {
    const Instant night = session.now() - std::chrono::hours{20};
    std::string log{logHeader};
    const auto at = [&](int minutes) { return textOf(night + std::chrono::minutes{minutes}) + ","; };
    log += "\n" + at(0) + "sap_in,500,L,brix=2\n" + at(10) + "lit,,,\n" + at(130) +
           "draw_close,5,L,to=pail;temp=20degC\n" + at(180) + "shift_end,,,\n";
    auto journal = session.journalBeside();
    std::istringstream text{log};
    ASSERT_EQ(importLog(*journal, text).outcome, ImportOutcome::added);
    const auto carried = [&] {
        const auto read = Journal::open(place, Journal::Access::read);
        session.knows(std::make_shared<const HouseLedger>(&read));
        Settings stands;
        for (const Set& set : session.settings())
            stands.put(set);
        return stands.learnedPansSugar().value_or(Mass{}).kilogram();
    };
    // 500 L of 2 brix hold 10.06 kg; 5 L of 66.9 brix hold 4.44 (ICUMSA SPS-4).
    EXPECT_NEAR(carried(), 10.06 - 4.44, 0.03);
    session.enter(row(session, "pans_emptied", "30", "L", "to=pail 1"));
    EXPECT_NEAR(carried(), 0, 1e-9);
    session.undo();
    EXPECT_NEAR(carried(), 10.06 - 4.44, 0.03);
}

// The engine knows no tanks: out of one whose sugar the house knows it is told it, so that concentrate is none for sap.
TEST_F(HouseBookTest, SapOutOfATankBringsTheSugarThatTheHouseKnowsOfIt) {
    session.enter(row(session, "vessel", "300", "L", "name=Sweet;kind=concentrate"));
    session.enter(row(session, "gathered", "200", "L", "to=sweet;brix=8.4"));
    session.enter(row(session, "gathered", "90", "L", "to=house tank"));
    const auto read = Journal::open(place, Journal::Access::read);
    session.knows(std::make_shared<const HouseLedger>(&read));
    const auto sugarOf = [&](const char* details) {
        session.enter(row(session, "sap_in", "50", "L", details));
        return std::get<SapIn>(session.boil().facts().back().fact.what).sugar;
    };
    EXPECT_NEAR(sugarOf("from=sweet").value_or(Brix{}).degrees(), 8.4, 1e-9);
    EXPECT_NEAR(sugarOf("from=sweet;brix=8.1").value_or(Brix{}).degrees(), 8.1, 1e-9); // what was read stays
    EXPECT_FALSE(sugarOf("from=house tank"));                                          // nobody measured it
    EXPECT_FALSE(sugarOf("from=a neighbour"));
    EXPECT_FALSE(sugarOf(""));
}

TEST_F(HouseBookTest, ARowIsPutRightAndTheOldOneStaysAsWithdrawn) {
    const auto answer = session.enter(row(session, "gathered", "400", "gal", "to=hold;brix=2.1"));
    const FactId id = std::get<Session::Entered>(answer).id;
    const ShiftId book = Journal::open(place, Journal::Access::read).books().front().id;
    session.correct(book, id, row(session, "gathered", "40", "gal", "to=hold;brix=2.1"));
    session.flush();
    const auto facts = bookFacts(Journal::open(place, Journal::Access::read));
    ASSERT_EQ(facts.size(), 1U);
    EXPECT_NEAR(std::get<DayRow>(facts[0].fact.what).volume()->gallon(), 40, 1e-9);
    EXPECT_TRUE(facts[0].fact.entered);
}

TEST_F(HouseBookTest, WhatHappenedDaysAgoBelongsToNoShiftAndIsKept) {
    session.enter(Fact{session.now(), Lit{}});
    Fact old = row(session, "packed", "24", "", "lot=A;from=drum 7;size=1pt");
    old.at -= std::chrono::days{20};
    EXPECT_TRUE(std::holds_alternative<Session::Entered>(session.enter(old)));
    EXPECT_EQ(rows(), 1U);
}

TEST(HouseBook, ARehearsalHoldsItInMemoryByTime) {
    Session session{keeperOfNothing()};
    Fact later = row(session, "vessel", "5", "gal", "name=pail 1"), earlier = later;
    earlier.at -= std::chrono::hours{2};
    session.enter(later);
    const auto answer = session.enter(earlier);
    EXPECT_TRUE(std::get<Session::Entered>(answer).kept); // nothing is wrong with the disk
    ASSERT_EQ(session.heldBook().size(), 2U);
    EXPECT_LT(session.heldBook()[0].fact.at, session.heldBook()[1].fact.at);
    session.undo();
    ASSERT_EQ(session.heldBook().size(), 1U);
    EXPECT_EQ(session.heldBook()[0].fact.at, later.at);
}

TEST_F(HouseBookTest, ReadAgainTheHouseIsTheSameAsReadAtOnce) {
    {
        auto journal = session.journalBeside().value();
        std::istringstream night{rehearsedLog(std::chrono::hours{2}, 4)};
        importLog(journal, night);
    }
    HouseReader reader;
    const auto same = [&] {
        auto journal = Journal::open(place, Journal::Access::read);
        const auto read = reader.read(journal, {});
        const HouseLedger whole{&journal};
        EXPECT_EQ(read->rows().size(), whole.rows().size());
        ASSERT_EQ(read->ledger().vessels().size(), whole.ledger().vessels().size());
        for (std::size_t i = 0; i < whole.ledger().vessels().size(); ++i) {
            EXPECT_EQ(read->ledger().vessels()[i].name, whole.ledger().vessels()[i].name);
            EXPECT_EQ(read->ledger().vessels()[i].content.sugar, whole.ledger().vessels()[i].content.sugar);
        }
    };
    same();
    session.enter(row(session, "vessel", "40", "gal", "name=drum 7;kind=drum"));
    session.enter(Fact{session.now() - std::chrono::minutes{5}, DrawOpened{}});
    session.enter(Fact{session.now(), DrawClosed{Said<Volume>{Volume::gallon(3), Unit::gal}, "drum 7"}});
    same();
    session.undo();
    session.flush();
    same();
}

TEST_F(HouseBookTest, WhatTheEngineFoundOfDrawsIsKeptForTheNextReader) {
    auto journal = session.journalBeside().value();
    std::istringstream night{rehearsedLog(std::chrono::hours{4}, 4)};
    const ShiftId shift = importLog(journal, night).shift;
    const auto first = HouseReader{}.read(journal, {});
    ASSERT_FALSE(first->parts().shifts[0]->densities.empty());
    // One is altered, and sealed anew: whoever reads it next has not asked the engine.
    const auto changed = [&](double by) {
        SQLite::Database db{place.string(), SQLite::OPEN_READWRITE};
        db.exec("UPDATE figure SET value=value+" + std::to_string(by) + " WHERE name='draws/sugar 0'");
        sealDerived(db, Derived::figures, microsOf(shift));
    };
    changed(0.01);
    const auto next = HouseReader{}.read(journal, {});
    ASSERT_EQ(next->parts().shifts[0]->densities.size(), first->parts().shifts[0]->densities.size());
    EXPECT_NEAR(next->parts().shifts[0]->densities[0].second.sugar.si(),
                first->parts().shifts[0]->densities[0].second.sugar.si() + 0.01, 1e-9);
    EXPECT_EQ(next->parts().shifts[0]->densities[0].first, first->parts().shifts[0]->densities[0].first);
    EXPECT_EQ(next->rows().size(), first->rows().size());
    // A fact more, and it is worked out again.
    journal.appendTo(shift, Fact{shift + std::chrono::seconds{1}, Note{"a word"}});
    EXPECT_NEAR(HouseReader{}.read(journal, {})->parts().shifts[0]->densities[0].second.sugar.si(),
                first->parts().shifts[0]->densities[0].second.sugar.si(), 1e-9);
}

// A shift that goes on is read on, not from its beginning: it must come to the same, whatever is entered late, taken
// back, or read in the minute after a draw.
TEST_F(HouseBookTest, AShiftThatGoesOnComesToTheSameAsReadAtOnce) {
    HandJournal journal = session.journalBeside().value();
    const auto night = readLog(rehearsedLog(std::chrono::hours{4}, 4)).facts;
    const ShiftId shift = night.front().at;
    HouseReader reader;
    std::size_t draws = 0;
    const auto same = [&] {
        const auto on = reader.read(journal, {})->parts().shifts.at(0);
        const auto whole = HouseReader{}.read(journal, {})->parts().shifts.at(0);
        ASSERT_EQ(on->densities.size(), whole->densities.size());
        for (std::size_t i = 0; i < whole->densities.size(); ++i) {
            EXPECT_EQ(on->densities[i].first, whole->densities[i].first);
            EXPECT_EQ(on->densities[i].second.sugar, whole->densities[i].second.sugar) << i;
            EXPECT_EQ(on->densities[i].second.sd, whole->densities[i].second.sd) << i;
        }
        EXPECT_EQ(on->checks.size(), whole->checks.size());
        EXPECT_EQ(on->facts.size(), whole->facts.size());
        draws = whole->densities.size();
    };
    std::vector<Change> changes{BeginShift{shift, true, 0}};
    FactId id = 0, check = 0;
    int closed = 0;
    for (const Fact& fact : night) {
        changes.emplace_back(KeepFact{shift, ++id, fact});
        if (std::holds_alternative<DensityCheck>(fact.what))
            check = id;
        closed += std::holds_alternative<DrawClosed>(fact.what);
        if (!(std::holds_alternative<DrawClosed>(fact.what) && closed % 3 == 0) && &fact != &night.back())
            continue;
        journal.commit(changes);
        changes.clear();
        same();
    }
    ASSERT_GT(draws, 1U);
    ASSERT_GT(check, 0);
    journal.appendTo(shift, Fact{shift + std::chrono::hours{1}, Set{Setting::probe_offset, 0.4, Unit::K}});
    same();
    journal.withdraw(check, night.back().at);
    same();
}

TEST_F(HouseBookTest, StoppedReadingGivesNothingAndGoesOnNextTime) {
    {
        auto journal = session.journalBeside().value();
        std::istringstream night{rehearsedLog(std::chrono::hours{2}, 4)};
        importLog(journal, night);
    }
    HouseReader reader;
    auto journal = Journal::open(place, Journal::Access::read);
    EXPECT_FALSE(reader.read(journal, {}, [] { return true; }));
    EXPECT_TRUE(reader.read(journal, {}));
}

TEST_F(HouseBookTest, SaysWhatARowWouldDoBeforeItIsKept) {
    session.enter(row(session, "vessel", "40", "gal", "name=drum 7;kind=drum"));
    session.enter(row(session, "vessel", "5", "gal", "name=pail 1;kind=pail"));
    session.enter(row(session, "bought", "30", "gal", "what=syrup;vessel=drum 7;brix=66.9;from=a neighbour"));
    const auto journal = Journal::open(place, Journal::Access::read);
    const HouseLedger house{&journal};
    const HouseLedger then = house.with({row(session, "moved", "8", "gal", "from=drum 7;to=pail 1")});
    bool over = false;
    for (const LedgerMark& mark : then.ledger().marks())
        over = over || (mark.kind == MarkKind::overRim && then.moreOf(mark.row));
    EXPECT_TRUE(over);
    EXPECT_TRUE(house.ledger().marks().empty());
    EXPECT_TRUE(house.known().vessels.contains("drum7"));
}

} // namespace
} // namespace panside
