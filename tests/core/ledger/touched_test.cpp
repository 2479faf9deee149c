// What an entry that is taken back changes for the lots that rest on it.
#include "core/ledger/touched.h"

#include "house.h"

namespace panside {
namespace {
namespace touched_rows {

using namespace testing_house;

const std::string begin =
    day(1, "06:00", "vessel,2000,L,name=hold;kind=hold") + day(1, "06:00", "vessel,2000,L,name=feed;kind=feed") +
    day(1, "06:00", "vessel,60,L,name=pail 1;kind=pail") + day(1, "12:00", "gathered,300,L,to=hold;from=north;brix=2");
const std::string second = day(1, "13:00", "gathered,600,L,to=hold;from=south;brix=2");
const std::string lots = day(2, "09:00", "packed,10,,lot=A;from=pail 1;size=500mL;brix=66.9") +
                         day(2, "10:00", "packed,4,,lot=A;from=pail 1;size=250mL") +
                         day(3, "09:00", "shipped,6,,lot=A;size=500mL;to=Corner Shop") +
                         day(4, "09:00", "came_back,1,,lot=A;size=500mL;from=corner shop") +
                         day(5, "09:00", "bought,5,L,what=syrup;vessel=pail 2;from=neighbour") +
                         day(6, "09:00", "packed,4,,lot=B;from=pail 2;size=500mL");
const std::string other = day(1, "06:00", "vessel,60,L,name=pail 2;kind=pail");
const std::string drawn = day(1, "20:00", "draw_close,10,L,to=pail 1");
std::string night(const std::string& rows) {
    return day(1, "18:00", "sap_in,,,from=hold") + day(1, "18:01", "tank_level,900,L,") + rows +
           day(1, "22:00", "tank_level,0,L,") + day(1, "22:30", "shift_end,,,");
}
Fact entry(const std::string& row) { return std::get<Fact>(factOfLine(row.substr(0, row.size() - 1))); }

TEST(LotsTouched, ByAGatheringSayTheShareSizesAndBuyers) {
    const FoldedHouse before{begin + second + other + lots, {night(drawn)}};
    const FoldedHouse after{begin + other + lots, {night(drawn)}};
    const auto touched = lotsTouched(*before.ledger, entry(second), *after.ledger);
    ASSERT_EQ(touched.size(), 1U); // and lot B has nothing of it
    EXPECT_EQ(touched[0].code, "A");
    EXPECT_NEAR(touched[0].share.value_or(-1), 2.0 / 3, 1e-3); // 600 of 900 litres of one sugar
    ASSERT_EQ(touched[0].sizes.size(), 2U);
    EXPECT_EQ(touched[0].sizes[0], (std::pair<std::string, long long>{"500mL", 10}));
    ASSERT_EQ(touched[0].buyers.size(), 1U);
    EXPECT_EQ(touched[0].buyers[0], (std::pair<std::string, long long>{"Corner Shop", 5}));
    EXPECT_FALSE(touched[0].gone);
}

TEST(LotsTouched, ByADrawAndByItsCheckSayWhatTheDensityIsThen) {
    const std::string check = day(1, "20:02", "density_check,64.0,brix,with=hydrometer;temp=20degC;cal=20degC");
    const FoldedHouse before{begin + other + lots, {night(drawn + check)}};
    const FoldedHouse noCheck{begin + other + lots, {night(drawn)}};
    const auto byCheck = lotsTouched(*before.ledger, entry(check), *noCheck.ledger);
    ASSERT_EQ(byCheck.size(), 1U);
    EXPECT_NEAR(byCheck[0].was.degrees(), 64.0, 0.1);
    EXPECT_NEAR(byCheck[0].is.degrees(), 66.9, 0.1);
    const FoldedHouse noDraw{begin + other + lots, {night(check)}};
    const auto byDraw = lotsTouched(*before.ledger, entry(drawn), *noDraw.ledger);
    ASSERT_EQ(byDraw.size(), 1U);
    EXPECT_NEAR(byDraw[0].share.value_or(0), 1, 1e-9);
}

// Told weeks later that butter was in the pans, or how dense a draw was: what was packed since is judged otherwise.
TEST(LotsChanged, ByWhatCameToBeKnownSayWhatIsOtherwise) {
    const FoldedHouse before{begin + other + lots, {night(drawn)}};
    const std::string butter = day(1, "19:00", "defoamer,2,,kind=butter");
    const FoldedHouse after{begin + other + lots, {night(butter + drawn)}};
    const auto changed = lotsChanged(*before.ledger, *after.ledger);
    ASSERT_EQ(changed.size(), 1U);
    EXPECT_EQ(sentence(changed[0]), "lot A (10 × 500mL, 4 × 250mL; Corner Shop 5): held from now on; milk in it.");
    const std::string check = day(1, "20:02", "density_check,64.0,brix,with=hydrometer;temp=20degC;cal=20degC");
    const FoldedHouse checked{begin + other + lots, {night(drawn + check)}};
    const auto thinner = lotsChanged(*before.ledger, *checked.ledger);
    ASSERT_EQ(thinner.size(), 1U);
    EXPECT_EQ(sentence(thinner[0]),
              "lot A (10 × 500mL, 4 × 250mL; Corner Shop 5): 64.0 °Brix by the book, before 66.9; held from now on.");
    EXPECT_TRUE(lotsChanged(*before.ledger, *before.ledger).empty());
}

TEST(LotsTouched, ByThePackItselfAreGoneAndByNothingNone) {
    const FoldedHouse before{begin + other + lots, {night(drawn)}};
    const std::string pack = day(6, "09:00", "packed,4,,lot=B;from=pail 2;size=500mL");
    std::string fewer = lots;
    fewer.erase(fewer.find(pack), pack.size());
    const FoldedHouse after{begin + other + fewer, {night(drawn)}};
    const auto touched = lotsTouched(*before.ledger, entry(pack), *after.ledger);
    ASSERT_EQ(touched.size(), 1U);
    EXPECT_TRUE(touched[0].gone);
    EXPECT_TRUE(
        lotsTouched(*before.ledger, entry(day(9, "09:00", "lost,1,L,from=hold;why=sour")), *before.ledger).empty());
}

} // namespace touched_rows
} // namespace
} // namespace panside
