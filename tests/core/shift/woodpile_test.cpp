#include "core/shift/woodpile.h"

#include "core/boil/cords.h"
#include "core/boil/shift_log.h"
#include "tests/core/journal/hand_journal.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <stdlib.h>

namespace panside {
namespace {

const Instant noon = instantIn("2025-03-14T12:00:00Z").value();
Load weighed(double kilogram, std::string wood = {}) {
    Load load;
    load.mass = Mass::kilogram(kilogram);
    load.wood = std::move(wood);
    return load;
}
Instant hour(double h) { return noon + std::chrono::round<std::chrono::microseconds>(Duration{3600 * h}); }

class BurntBeside : public testing::Test {
protected:
    BurntBeside() {
        std::string name = (std::filesystem::temp_directory_path() / "woodpile-XXXXXX").string();
        folder_ = mkdtemp(name.data());
        journal.emplace(Journal::open(folder_ / "j.db", Journal::Access::write));
    }
    ~BurntBeside() override {
        journal.reset();
        std::filesystem::remove_all(folder_);
    }
    // A shift of one load each hour, 100 kg of red oak.
    ShiftId night(double from, int loads) {
        const ShiftId shift = journal->append(Fact{hour(from), load}).shift;
        for (int i = 1; i < loads; ++i)
            journal->append(Fact{hour(from + i), load});
        journal->close();
        return shift;
    }
    const Fired load{Said<Mass>{Mass::kilogram(100), Unit::kg}, "red oak", WetBasis::percent(20), ""};
    const double each = cordsOf(weighed(100, "red oak")).value();
    std::optional<HandJournal> journal;

private:
    std::filesystem::path folder_;
};

TEST_F(BurntBeside, CountsTheLoadsSinceThePileWasMeasured) {
    night(-48, 5);
    night(-3, 8); // measured at noon half way through: of its loads those at 1, 2, 3 and 4 h count
    const ShiftId last = night(28, 6);
    EXPECT_NEAR(cordsBurntBeside(*journal, noon, std::nullopt), (4 + 6) * each, 1e-9);
    EXPECT_NEAR(cordsBurntBeside(*journal, noon, last), 4 * each, 1e-9) << "the one shown counts its own";
    EXPECT_NEAR(cordsBurntBeside(*journal, hour(40), std::nullopt), 0, 1e-9);
}

// Asked for each second while the shift goes on.
TEST(CordsOfShift, FollowsWhatComesWhatComesLateAndWhatIsTakenBack) {
    Boil boil;
    CordsOfShift cords{noon};
    const auto expectLoads = [&](double kilogram) {
        EXPECT_NEAR(cords.of(boil.fold()), cordsOf(weighed(kilogram)).value(), 1e-12) << kilogram;
    };
    boil.add(1, {hour(-1), Set{Setting::load_mass, 20, Unit::kg}});
    boil.add(2, {hour(-0.5), Fired{}});
    expectLoads(0);
    boil.add(3, {hour(1), Fired{}});
    boil.add(4, {hour(2), Fired{}});
    expectLoads(40);
    boil.add(5, {hour(0.5), Fired{}});
    expectLoads(60);
    boil.add(6, {hour(3), Fired{}});
    boil.add(7, {hour(2.5), Fired{}});
    expectLoads(100);
    boil.withdraw(4);
    boil.add(8, {hour(4), Fired{}});
    expectLoads(100);
    boil.add(9, {hour(0.1), Set{Setting::load_mass, 10, Unit::kg}});
    expectLoads(50);
    boil.withdraw(8);
    expectLoads(40);
}

TEST(CordSum, TakesTheMassThatWasSetAndOnlyWhatCameAfter) {
    CordSum sum{noon};
    sum.add({hour(-2), Set{Setting::load_mass, 20, Unit::kg}});
    for (const double at : {-1.0, 1.0, 2.0})
        sum.add({hour(at), Fired{}});
    EXPECT_NEAR(sum.cords(), 2 * cordsOf(weighed(20)).value(), 1e-12);
    EXPECT_FALSE(cordsOf(Load{})) << "nobody weighed it";
}

} // namespace
} // namespace panside
