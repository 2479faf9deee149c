#include "core/journal/journal_writer.h"

#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <atomic>
#include <condition_variable>
#include <future>
#include <mutex>

namespace panside {
namespace {

using namespace std::chrono_literals;
using Writer = JournalPlace;

constexpr auto longEnough = 20s; // only waited for when something is wrong

// Counts what the writer says, and lets a test wait for it.
class Heard {
public:
    JournalWriter::Listener listener() {
        return {.kept = [this](ShiftId, FactId id) { note([&] { kept.push_back(id); }); },
                .trouble = [this](const JournalError& error) { note([&] { troubles.push_back(error.trouble()); }); },
                .well = [this] { note([&] { ++wells; }); }};
    }
    bool waitFor(const std::function<bool()>& met) {
        std::unique_lock lock{mutex_};
        return changed_.wait_for(lock, longEnough, met);
    }
    bool isNow(const std::function<bool()>& met) {
        const std::scoped_lock lock{mutex_};
        return met();
    }
    std::vector<FactId> kept;
    std::vector<JournalTrouble> troubles;
    int wells = 0;

private:
    void note(const std::function<void()>& what) {
        const std::scoped_lock lock{mutex_};
        what();
        changed_.notify_all();
    }
    std::mutex mutex_;
    std::condition_variable changed_;
};

std::size_t factsIn(const std::filesystem::path& place) {
    const Journal journal = Journal::open(place, Journal::Access::read);
    const auto shifts = journal.shifts();
    return shifts.empty() ? 0 : journal.facts(shifts.back().id).size();
}

TEST_F(Writer, SaysWhenAPersonsFactIsOnTheDisk) {
    Heard heard;
    JournalWriter writer{Journal::open(place()), heard.listener(), {.gather = 1h, .again = 1ms}};
    writer.keep(factFrom("2025-03-14T18:00:00Z,syrup_pan,20,degC,"));
    const auto lit = writer.keep(factFrom("2025-03-14T18:00:01Z,lit,,,"));
    ASSERT_TRUE(heard.waitFor([&] { return !heard.kept.empty(); }));
    EXPECT_EQ(heard.kept, std::vector<FactId>{lit.id}); // readings are not told one by one
    EXPECT_EQ(factsIn(place()), 2U);                    // but go along
    EXPECT_EQ(writer.openShift(), lit.shift);
}

TEST_F(Writer, GathersReadingsAndWritesThemByItself) {
    Heard heard;
    JournalWriter writer{Journal::open(place()), heard.listener(), {.gather = 5ms, .again = 1ms}};
    for (int i = 0; i < 5; ++i)
        writer.keep(factFrom("2025-03-14T18:00:0" + std::to_string(i) + "Z,syrup_pan,20,degC,"));
    const auto until = std::chrono::steady_clock::now() + longEnough;
    while (factsIn(place()) < 5 && std::chrono::steady_clock::now() < until)
        std::this_thread::sleep_for(1ms);
    EXPECT_EQ(factsIn(place()), 5U);
}

TEST_F(Writer, WritesWhatIsLeftWhenItEnds) {
    {
        JournalWriter writer{Journal::open(place()), {}, {.gather = 1h, .again = 1h}};
        writer.keep(factFrom("2025-03-14T18:00:00Z,syrup_pan,20,degC,"));
    }
    EXPECT_EQ(factsIn(place()), 1U);
}

TEST_F(Writer, HoldsFactsWhileTheDiskIsFullAndKeepsThemAfter) {
    {
        HandJournal journal = Journal::open(place());
        journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    }
    const auto size = static_cast<std::int64_t>(std::filesystem::file_size(place()));
    Heard heard;
    auto writer = std::make_unique<JournalWriter>(
        Journal::open(place(), Journal::Access::write, {.patienceMs = 10, .largestBytes = size + 8192}),
        heard.listener(), JournalWriter::Pace{.gather = 1ms, .again = 1ms});
    std::size_t notes = 0;
    while (heard.isNow([&] { return heard.troubles.empty(); }) && ++notes < 100) {
        writer->keep(factFrom("2025-03-14T18:01:00Z,note,,," + std::string(2000, 'x')));
        std::this_thread::sleep_for(1ms);
    }
    ASSERT_TRUE(heard.waitFor([&] { return !heard.troubles.empty(); }));
    EXPECT_EQ(heard.troubles.front(), JournalTrouble::diskFull);
    const auto unkept = writer->unkept().size();
    EXPECT_GT(unkept, 0U);
    EXPECT_FALSE(writer->flush(1ms));
    EXPECT_EQ(factsIn(place()) + unkept, notes + 1); // none is lost, none is there twice
}

TEST_F(Writer, GoesOnWhenAPulledStickIsBack) {
    Heard heard;
    JournalWriter writer{Journal::open(place()), heard.listener(), {.gather = 1ms, .again = 1ms}};
    writer.keep(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    ASSERT_TRUE(writer.flush(longEnough));
    const auto away = folder_ / "away";
    std::filesystem::create_directory(away);
    for (const char* ending : {"", "-wal", "-shm"})
        std::filesystem::rename(place().string() + ending, (away / place().filename()).string() + ending);
    writer.keep(factFrom("2025-03-14T18:07:00Z,fired,,,"));
    ASSERT_TRUE(heard.waitFor([&] { return !heard.troubles.empty(); }));
    EXPECT_EQ(heard.troubles, std::vector{JournalTrouble::gone});
    EXPECT_EQ(writer.unkept().size(), 1U);
    EXPECT_FALSE(std::filesystem::exists(place())); // no new one is made in its place
    // A copy comes back under the same name: another file to the system, the same journal to us.
    for (const char* ending : {"-wal", ""})
        std::filesystem::copy_file((away / place().filename()).string() + ending, place().string() + ending);
    ASSERT_TRUE(heard.waitFor([&] { return heard.wells == 1; }));
    EXPECT_TRUE(writer.flush(longEnough));
    EXPECT_EQ(factsIn(place()), 2U);
}

// What came while a write failed goes after what failed: a shift that begins meanwhile has its facts, in their order.
TEST_F(Writer, KeepsWhatCameMeanwhileAfterWhatCouldNotBeWritten) {
    Heard heard;
    std::promise<void> failed, goOn;
    auto listener = heard.listener();
    listener.trouble = [&, first = true](const JournalError&) mutable {
        if (!std::exchange(first, false))
            return;
        failed.set_value();
        goOn.get_future().wait(); // the writer stands here, and facts come
    };
    JournalWriter writer{Journal::open(place()), std::move(listener), {.gather = 1ms, .again = 1ms}};
    const auto shift = writer.keep(factFrom("2025-03-14T18:00:00Z,lit,,,")).shift;
    ASSERT_TRUE(writer.flush(longEnough));
    std::filesystem::rename(place(), folder_ / "away");
    writer.keep(factFrom("2025-03-14T18:07:00Z,fired,,,"));
    failed.get_future().wait();
    const auto last = writer.keep(factFrom("2025-03-14T18:14:00Z,fired,,,"));
    writer.withdraw(last.id, instantIn("2025-03-14T18:15:00Z").value());
    std::filesystem::rename(folder_ / "away", place());
    goOn.set_value();
    ASSERT_TRUE(writer.flush(longEnough));
    const Journal journal = Journal::open(place(), Journal::Access::read);
    EXPECT_EQ(journal.facts(shift).size(), 2U);
    ASSERT_EQ(journal.withdrawn(shift).size(), 1U);
    std::vector<FactId> told;
    ASSERT_TRUE(heard.waitFor([&] { return heard.kept.size() == 3; }));
    EXPECT_EQ(heard.kept, (std::vector<FactId>{1, 2, 3}));
}

TEST_F(Writer, DoesNotWriteIntoAnotherJournalInItsPlace) {
    Heard heard;
    JournalWriter writer{Journal::open(place()), heard.listener(), {.gather = 1ms, .again = 1ms}};
    writer.keep(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    ASSERT_TRUE(writer.flush(longEnough));
    { HandJournal{Journal::open(folder_ / "other")}.append(factFrom("2025-03-10T18:00:00Z,lit,,,")); }
    for (const char* ending : {"-wal", "-shm"})
        std::filesystem::rename(place().string() + ending, (folder_ / "away").string() + ending);
    std::filesystem::rename(folder_ / "other", place());
    writer.keep(factFrom("2025-03-14T18:07:00Z,fired,,,"));
    ASSERT_TRUE(heard.waitFor([&] { return !heard.troubles.empty(); }));
    EXPECT_EQ(heard.troubles, std::vector{JournalTrouble::gone});
    EXPECT_EQ(factsIn(place()), 1U);
    EXPECT_EQ(writer.unkept().size(), 1U);
}

// A place that cannot even be asked whether it is there: a folder on the way has become a loop of links, as a right
// taken away, an I/O error or a network place that is gone would be.
TEST_F(Writer, HoldsFactsWhileItsPlaceCannotBeAsked) {
    namespace fs = std::filesystem;
    const fs::path inner = folder_ / "inner";
    Heard heard;
    JournalWriter writer{Journal::open(inner / "night.journal"), heard.listener(), {.gather = 1ms, .again = 1ms}};
    writer.keep(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    ASSERT_TRUE(writer.flush(longEnough));
    fs::rename(inner, folder_ / "kept");
    fs::create_symlink(inner, inner);
    writer.keep(factFrom("2025-03-14T18:07:00Z,fired,,,"));
    ASSERT_TRUE(heard.waitFor([&] { return !heard.troubles.empty(); }));
    EXPECT_EQ(heard.troubles.front(), JournalTrouble::cannotRead);
    EXPECT_EQ(writer.unkept().size(), 1U);
    fs::remove(inner);
    fs::rename(folder_ / "kept", inner);
    ASSERT_TRUE(heard.waitFor([&] { return heard.wells > 0; }));
    EXPECT_EQ(factsIn(inner / "night.journal"), 2U);
}

// What listens may fail as well: the fact is kept once all the same, and the thread goes on.
TEST_F(Writer, OutlivesAListenerThatThrows) {
    JournalWriter writer{Journal::open(place()),
                         {.kept = [](ShiftId, FactId) { throw std::runtime_error{"no"}; }, .trouble = {}, .well = {}},
                         {.gather = 1ms, .again = 1ms}};
    writer.keep(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    ASSERT_TRUE(writer.flush(longEnough));
    writer.keep(factFrom("2025-03-14T18:07:00Z,fired,,,"));
    ASSERT_TRUE(writer.flush(longEnough));
    EXPECT_EQ(factsIn(place()), 2U);
}

// A journal that cannot be opened when the program begins: all is held, it is tried again by itself, and what was begun
// meanwhile is a shift of its own, with no other open beside it.
TEST_F(Writer, HoldsFactsForAJournalThatCannotBeOpenedYet) {
    { HandJournal{Journal::open(place())}.append(factFrom("2025-03-13T18:00:00Z,lit,,,")); }
    const auto sound = fileText(place());
    std::ofstream{place(), std::ios::binary} << std::string(sound.size(), '\0');
    std::optional<JournalError> why;
    try {
        Journal::open(place());
    } catch (const JournalError& error) {
        why = error;
    }
    ASSERT_TRUE(why);
    Heard heard;
    JournalWriter writer{place(), {}, *why, heard.listener(), {.gather = 1ms, .again = 1ms}};
    EXPECT_EQ(heard.troubles, std::vector{why->trouble()}) << "told at once, not only when something is to be kept";
    const auto lit = writer.keep(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    EXPECT_FALSE(writer.flush(20ms));
    EXPECT_EQ(writer.unkept().size(), 1U);
    EXPECT_FALSE(writer.beside());
    // Put back whole, as a person or a restore does it: the writer may look at any moment.
    const auto beside = folder_ / "sound";
    std::ofstream{beside, std::ios::binary} << sound;
    std::filesystem::rename(beside, place());
    ASSERT_TRUE(writer.flush(longEnough));
    EXPECT_TRUE(heard.isNow([&] { return heard.wells == 1; }));
    ASSERT_TRUE(writer.beside());
    const auto shifts = Journal::open(place(), Journal::Access::read).shifts();
    ASSERT_EQ(shifts.size(), 2U);
    EXPECT_FALSE(shifts[0].open);
    EXPECT_EQ(shifts[1].id, lit.shift);
    EXPECT_TRUE(shifts[1].open);
}

TEST_F(Writer, TellsTheSettingsANewShiftBeginsWith) {
    JournalWriter writer{Journal::open(place()), {}};
    writer.carry(factFrom("2025-03-14T12:00:00Z,set,18,kg,key=load_mass"));
    ASSERT_EQ(writer.inForce().size(), 1U);
    const auto first = writer.keep(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    ASSERT_EQ(first.opening.size(), 1U);
    EXPECT_EQ(first.id, 2);
    writer.close();
    EXPECT_FALSE(writer.openShift());
    EXPECT_EQ(writer.keepIn(first.shift, factFrom("2025-03-14T18:30:00Z,fired,,,entered=2025-03-15T09:00:00Z")), 3);
    EXPECT_FALSE(writer.openShift());
    EXPECT_TRUE(writer.withdraw(3, *instantIn("2025-03-15T09:01:00Z")));
    ASSERT_TRUE(writer.flush(longEnough));
    EXPECT_EQ(factsIn(place()), 2U);
}

// A second thread may look while the writer writes.
TEST_F(Writer, IsReadFromMeanwhile) {
    JournalWriter writer{Journal::open(place()), {}, {.gather = 1ms, .again = 1ms}};
    writer.keep(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    ASSERT_TRUE(writer.flush(longEnough));
    std::atomic<bool> done{false};
    auto reading = std::async(std::launch::async, [&] {
        std::size_t most = 0;
        while (!done)
            most = std::max(most, factsIn(place()));
        return most;
    });
    for (int i = 1; i <= 200; ++i) {
        Fact fact = factFrom("2025-03-14T18:00:00Z,stack,300.5,degC,");
        fact.at += std::chrono::seconds{i};
        writer.keep(fact);
        if (i % 20 == 0) {
            ASSERT_TRUE(writer.flush(longEnough));
        }
    }
    done = true;
    EXPECT_LE(reading.get(), 201U);
    EXPECT_EQ(factsIn(place()), 201U);
}

} // namespace
} // namespace panside
