#include "core/ledger/concentrator.h"
#include "core/ledger/house_account.h"
#include "core/ledger/rig_tells.h"

#include "core/rehearsal/season.h"
#include "house.h"

#include <array>
#include <cmath>

namespace panside {
namespace {

using namespace testing_house;

constexpr const char* accountTanks = "2027-03-01T06:00:00Z,vessel,3000,L,name=tank;kind=hold\n"
                                     "2027-03-01T06:00:00Z,vessel,3000,L,name=feed;kind=feed\n"
                                     "2027-03-01T06:00:00Z,vessel,200,L,name=drum;kind=drum\n";

TEST(HouseAccount, TellsSyrupATapAndARun) {
    const FoldedHouse house{std::string{accountTanks} +
                            day(2, "09:00", "gathered,400,L,to=tank;from=north;taps=100;brix=2") +
                            day(3, "09:00", "gathered,480,L,to=tank;from=North;taps=100;brix=2") +
                            day(3, "10:00", "gathered,200,L,to=tank;from=yard;brix=3")};
    const HouseAccount account = houseAccount(*house.ledger);
    ASSERT_EQ(account.runs.size(), 2u);
    // 880 L of 2 brix at 44.2 to one (mass balance with sucrose tables, 66.9 brix).
    EXPECT_NEAR(account.runs[0].syrup.litre(), 880 / 44.2, 0.05);
    EXPECT_NEAR(account.runs[0].syrupPerTap()->litre(), 8.8 / 44.2, 0.001);
    EXPECT_FALSE(account.runs[1].syrupPerTap());
    EXPECT_NEAR(account.syrupPerTap->litre(), 8.8 / 44.2, 0.001);
}

// A litre of 66.9 brix is 1.3282 kg (ICUMSA SPS-4): at 20 for a litre a half costs half of it, by weight.
TEST(HouseAccount, ListsThePriceOfEverySizeByWeight) {
    const std::string packed = std::string{accountTanks} +
                               day(2, "08:00", "bought,100,L,what=syrup;from=Ada;vessel=drum;brix=66.9") +
                               day(3, "09:00", "packed,20,,lot=a;from=drum;size=1L;capped=85degC") +
                               day(3, "09:30", "packed,10,,lot=a;from=drum;size=500mL;capped=85degC");
    EXPECT_TRUE(houseAccount(*FoldedHouse{packed}.ledger).prices.empty()) << "nothing was sold yet";
    const FoldedHouse house{packed + day(4, "09:00", "shipped,8,,lot=a;size=1L;to=shop;price=20")};
    const HouseAccount account = houseAccount(*house.ledger);
    ASSERT_EQ(account.prices.size(), 2u);
    EXPECT_NEAR(account.prices[0].price, 20, 1e-9);
    EXPECT_NEAR(account.prices[1].price, 10, 1e-9);
    EXPECT_NEAR(account.prices[1].content.kilogram(), 0.6641, 1e-4);
}

// A sap hydrometer made for 38 degF that reads 2.3 at 60 degF means 2.5 (extension practice; float balance with ICUMSA
// SPS-4 densities), in the balance and in what the run gave. A refractometer has no such scale.
TEST(HouseAccount, TakesTheSapHydrometersScaleIntoTheBalance) {
    const auto sugarOf = [](const std::string& read, const std::string& sapIn) {
        const FoldedHouse house{std::string{accountTanks} +
                                    day(2, "09:00", "gathered,400,L,to=tank;from=north;taps=100;brix=" + read),
                                {day(2, "17:00", "sap_in,300,L,brix=" + sapIn) + day(2, "17:10", "lit,,,") +
                                 day(2, "20:00", "shift_end,,,")}};
        const HouseAccount account = houseAccount(*house.ledger);
        EXPECT_NEAR(house.ledger->balance().gathered, account.flow.sap, 1e-12);
        EXPECT_EQ(account.runs.size(), 2u);
        return std::array{account.runs[0].sugar, account.runs[1].sugar, account.runs[0].syrupPerTap()->litre()};
    };
    const auto read = sugarOf("2.3;temp=60degF;cal=38degF", "2.3;temp=60degF;cal=38degF");
    const auto meant = sugarOf("2.5;temp=60degF", "2.5;temp=60degF");
    const auto taken = sugarOf("2.3;temp=60degF;cal=38degF;with=refractometer", "2.3;temp=60degF");
    for (std::size_t i = 0; i < read.size(); ++i) {
        EXPECT_NEAR(read[i] / meant[i], 1, 0.012) << i; // 2.5 is printed to a tenth, and is 2.51
        EXPECT_NEAR(taken[i] / meant[i], 2.3 / 2.5, 0.002) << i;
    }
}

// 0.5 brix over on 200 gallons gives away some 2 gallons (the trade's own reckoning).
TEST(HouseAccount, CountsWhatHeavyDrawsGaveAway) {
    const std::string boil = day(2, "17:00", "sap_in,2000,gal,brix=8") + day(2, "17:10", "lit,,,") +
                             day(2, "19:00", "draw_close,200,gal,to=drum;temp=20degC") +
                             day(2, "19:05", "density_check,67.4,brix,temp=60degF;cal=60degF") +
                             day(2, "20:00", "shift_end,,,");
    FoldedHouse house{accountTanks, {boil}};
    HouseAccount account = houseAccount(*house.ledger);
    EXPECT_EQ(account.heavy.draws, 1);
    EXPECT_EQ(account.heavy.heavy, 0) << "one check is good to 0.7 brix of the draw: nothing is claimed";
    const std::string heavier = day(2, "17:00", "sap_in,2000,gal,brix=8") + day(2, "17:10", "lit,,,") +
                                day(2, "19:00", "draw_close,200,gal,to=drum;temp=20degC") +
                                day(2, "19:05", "density_check,68.4,brix,temp=60degF;cal=60degF") +
                                day(2, "20:00", "shift_end,,,");
    FoldedHouse heavy{accountTanks, {heavier}};
    account = houseAccount(*heavy.ledger);
    EXPECT_EQ(account.heavy.heavy, 1);
    EXPECT_NEAR(account.heavy.givenAway.gallon(), 3 * 2, 0.6);
}

// A draw with no vessel, a load with none, a sale out of none: a line of their own, or the account would not add up.
TEST(HouseAccount, AddsUpThoughNobodySaidIntoWhatOrOutOfWhat) {
    const FoldedHouse house{std::string{accountTanks} + day(1, "08:00", "bought,10,L,what=syrup;from=Ada;brix=66.9") +
                                day(3, "08:00", "sold,4,L,what=syrup;to=Bo;price=10"),
                            {day(2, "17:00", "sap_in,200,L,brix=2") + day(2, "17:10", "lit,,,") +
                             day(2, "19:00", "draw_close,2,L,temp=20degC") + day(2, "20:00", "shift_end,,,")}};
    const Balance20& balance = house.ledger->balance();
    const double litre = 1.3282 * 0.669; // kg of sugar in one of 66.9 brix: ICUMSA SPS-4 (1998)
    EXPECT_NEAR(balance.nowhere, 12 * litre, 0.01);
    EXPECT_NEAR(balance.sold, 4 * litre, 0.01);
    EXPECT_NEAR(balance.in() + balance.doesNotClose,
                balance.sold + balance.packed + balance.inVessels + balance.inPans + balance.nowhere, 1e-6);
    const HouseAccount account = houseAccount(*house.ledger);
    EXPECT_NEAR(account.flow.doesNotClose, balance.doesNotClose, 1e-6);
}

TEST(HouseAccount, CountsStockBySizeAndClass) {
    const FoldedHouse house{std::string{accountTanks} +
                            day(2, "08:00", "bought,100,L,what=syrup;from=Ada;vessel=drum;brix=66.9") +
                            day(2, "09:00", "graded,60,percent,vessel=drum") +
                            day(3, "09:00", "packed,20,,lot=a;from=drum;size=1L;capped=85degC") +
                            day(3, "09:30", "packed,10,,lot=a;from=drum;size=500mL;capped=85degC") +
                            day(4, "09:00", "shipped,8,,lot=a;size=1L;to=shop;price=20")};
    const HouseAccount account = houseAccount(*house.ledger);
    ASSERT_EQ(account.stock.size(), 2u);
    EXPECT_EQ(account.stock[0].size, "1L") << "the largest first";
    EXPECT_EQ(account.stock[0].count, 12);
    EXPECT_EQ(account.stock[0].light, "amber"); // 50 to 75 percent: 7 CFR 52.5961, as quoted
    EXPECT_EQ(account.stock[1].count, 10);
    EXPECT_NEAR(account.pricePerLitre.value(), 20, 1e-9);
    EXPECT_NEAR(account.flow.boughtSyrup, account.flow.out(), 1e-6);
    EXPECT_NEAR(account.flow.shipped / account.flow.bottled, 8.0 / 17.0, 1e-6);
}

// Two jugs went to Bo, and nobody said which: what he paid is in the money, and tells no price of a litre.
TEST(HouseAccount, TellsThePriceOfALitreFromSizesThatWereSaid) {
    const FoldedHouse house{std::string{accountTanks} +
                            day(2, "08:00", "bought,100,L,what=syrup;from=Ada;vessel=drum;brix=66.9") +
                            day(3, "09:00", "packed,20,,lot=a;from=drum;size=1L;capped=85degC") +
                            day(3, "09:30", "packed,10,,lot=a;from=drum;size=500mL;capped=85degC") +
                            day(4, "09:00", "shipped,8,,lot=a;size=1L;to=shop;price=20") +
                            day(4, "10:00", "shipped,2,,lot=a;to=Bo;price=11")};
    EXPECT_NEAR(houseAccount(*house.ledger).pricePerLitre.value(), 20, 1e-9);
}

// The revised rule of the University of Vermont: (87.1 / brix) - 0.32 for 66.0; 88.2 for 66.9.
TEST(HouseAccount, TradesSapByTheRevisedRuleAtTheDensityAgreed) {
    const FoldedHouse house{std::string{accountTanks} +
                            day(2, "08:00", "bought,430,gal,what=sap;from=Ada;vessel=tank;brix=2;price=0.40")};
    const auto sold = houseAccount(*house.ledger, Brix::degrees(66.0)).trades;
    ASSERT_EQ(sold.size(), 1u);
    EXPECT_TRUE(sold[0].bought);
    EXPECT_NEAR(sold[0].syrup->gallon(), 430 / (87.1 / 2 - 0.32), 0.02);
    EXPECT_NEAR(houseAccount(*house.ledger).trades[0].syrup->gallon(), 430 / (88.2 / 2 - 0.32), 0.02);
    EXPECT_NEAR(sold[0].price.value(), 0.40, 1e-9);
}

TEST(HouseAccount, PricesASizeByTheWeightOfItsContent) {
    const Volume sizes[] = {Volume::litre(1), Volume::litre(0.25)};
    const auto lines = priceByWeight(10, sizes, Brix::degrees(66.9));
    EXPECT_NEAR(lines[0].price, 13.2819, 1e-4); // ICUMSA SPS-4: 1328.19 kg/m3
    EXPECT_NEAR(lines[1].price, 13.2819 / 4, 1e-4);
}

// Situation 49: dumped sap, an overturned pail, syrup given away. What is lost has its cause, what does not close its
// own line, and nothing is forced.
TEST(HouseAccount, KeepsWhatDoesNotCloseApart) {
    const FoldedHouse house{std::string{accountTanks} + day(2, "09:00", "gathered,500,L,to=tank;from=run;brix=2") +
                            day(2, "12:00", "lost,100,L,from=tank;why=sour") + day(3, "09:00", "dipped,300,L,in=tank") +
                            day(3, "10:00", "bought,20,L,what=syrup;from=Ada;vessel=drum;brix=66.9") +
                            day(3, "11:00", "lost,2,L,from=drum;why=given")};
    const SugarFlow flow = sugarFlow(*house.ledger);
    const double litre = 0.02 * 1.0060; // kg of sugar in a litre of 2 brix (ICUMSA)
    EXPECT_NEAR(flow.lost.at("sour"), 100 * litre, 0.01);
    EXPECT_NEAR(flow.lost.at("given"), 2 * 0.8886, 0.01);
    EXPECT_NEAR(flow.inTanks, 300 * litre, 0.02);
    EXPECT_NEAR(flow.doesNotClose, -100 * litre, 0.02) << "the dip found less than the book";
    EXPECT_NEAR(flow.doesNotClose, house.ledger->balance().doesNotClose, 1e-6);
    EXPECT_GT(flow.doesNotCloseSd, 0);
}

// The season of truth: what the account holds comes to what came in, to rounding, but for its own open line.
class SeasonAccount : public testing::TestWithParam<bool> {};
TEST_P(SeasonAccount, Closes) {
    const MadeSeason season = GetParam() ? largeHouse(7) : smallHouse(7);
    const auto body = [](const std::string& log) { return log.substr(log.find('\n') + 1); };
    std::vector<std::string> shifts;
    for (const std::string& log : season.shifts)
        shifts.push_back(body(log));
    const FoldedHouse house{body(season.dayBook), shifts};
    const SugarFlow flow = sugarFlow(*house.ledger);
    EXPECT_GT(flow.in(), 1);
    EXPECT_NEAR(flow.out() - flow.in(), house.ledger->balance().doesNotClose, 1e-6 * flow.in());
    EXPECT_LT(std::abs(flow.doesNotClose), 4 * flow.doesNotCloseSd + 0.02 * flow.in());
    EXPECT_LE(flow.drawn, flow.in() * 1.02);
}
INSTANTIATE_TEST_SUITE_P(Houses, SeasonAccount, testing::Bool());

// Nights of like wood, whose water a kilogram of wood falls by so much a night.
std::vector<std::string> nights(int count, double fall, double scatter) {
    std::vector<std::string> shifts;
    double per = 4;
    for (int i = 0; i < count; ++i, per *= 1 - fall) {
        const int date = 2 + 2 * i;
        const double left = 900 - 100 * per * (1 + (i % 2 ? scatter : -scatter)) * 44.2 / 43.2;
        shifts.push_back(day(date, "16:50", "tank_level,900,L,") + day(date, "17:00", "sap_in,900,L,brix=2") +
                         day(date, "17:00", "tank_level,900,L,") + day(date, "17:00", "lit,,,") +
                         day(date, "17:10", "fired,50,kg,wood=maple") + day(date, "20:00", "fired,50,kg,wood=maple") +
                         day(date, "20:00", "tank_level," + std::to_string(left) + ",L,") +
                         day(date, "21:00", "tank_level,0,L,") + day(date, "21:00", "shift_end,,,"));
    }
    return shifts;
}

// 217 L of 8 brix (1030.0 kg/m3 by ICUMSA SPS-4) hold 17.88 kg of sugar, that came as 888.7 L of 2 brix (1005.9): 671.7
// L of water, that the rig of these nights boils off in some four hours.
TEST(HouseAccount, TellsWhatTheConcentratorTookOutAndSaved) {
    const std::string run = std::string{accountTanks} +
                            "2027-03-01T06:00:00Z,vessel,500,L,name=sweet;kind=concentrate\n" +
                            day(27, "09:00", "gathered,900,L,to=tank;from=north;brix=2") +
                            day(27, "12:00", "concentrated,217,L,from=tank;to=sweet;brix=8;hours=1.5;washed=yes");
    const FoldedHouse known{run, nights(6, 0, 0)}, unknown{run};
    const auto savings = concentratorSavings(*known.ledger);
    ASSERT_EQ(savings.size(), 1u);
    EXPECT_NEAR(savings[0].water.litre(), 671.7, 1);
    ASSERT_TRUE(savings[0].boil && savings[0].cords);
    // 400 L in three hours, of which half an hour or so is the warming up: 130 to 190 L/h.
    EXPECT_GT(savings[0].boil->p50.count() / 3600, 672 / 190.0);
    EXPECT_LT(savings[0].boil->p50.count() / 3600, 672 / 130.0);
    EXPECT_LE(savings[0].boil->p10, savings[0].boil->p50);
    EXPECT_LE(savings[0].boil->p50, savings[0].boil->p90);
    ASSERT_EQ(concentratorSavings(*unknown.ledger).size(), 1u);
    EXPECT_FALSE(concentratorSavings(*unknown.ledger)[0].boil);
}

TEST(RigTells, EvaporationAPoundOfWoodThatSlides) {
    const auto trendOf = [](int count, double fall, double scatter) {
        const FoldedHouse house{accountTanks, nights(count, fall, scatter)};
        return rigTells(*house.ledger).trend;
    };
    const RigTrend falling = trendOf(9, 0.04, 0.02);
    EXPECT_EQ(falling.verdict, RigVerdict::falling);
    EXPECT_EQ(falling.nights, 9);
    EXPECT_NEAR(falling.first, 4, 0.25);
    EXPECT_NEAR(falling.last / falling.first, std::pow(0.96, 8), 0.05);
    EXPECT_LT(falling.changeHigh, 0);
    EXPECT_EQ(trendOf(9, 0, 0.02).verdict, RigVerdict::steady);
    EXPECT_EQ(trendOf(4, 0.04, 0.02).verdict, RigVerdict::tooLittle) << "four nights are too few";
    EXPECT_EQ(trendOf(9, 0.01, 0.3).verdict, RigVerdict::tooLittle) << "it scatters too much";
    const RigTrend unsure = trendOf(9, -0.008, 0.05);
    EXPECT_GT(unsure.changeLow, -0.1);
    EXPECT_GT(unsure.changeHigh, 0.1);
    EXPECT_EQ(unsure.verdict, RigVerdict::tooLittle) << "it may as well have risen";
}

TEST(RigTells, HoursOfNiterToASwitch) {
    std::vector<std::string> shifts;
    for (int i = 0; i < 4; ++i)
        shifts.push_back(day(2 + i, "17:00", "lit,,,") + day(2 + i, "17:10", "fired,20,kg,") +
                         day(2 + i, "19:00", "pan_swapped,,,") + day(2 + i, "21:00", "fired,20,kg,") +
                         day(2 + i, "22:00", "shift_end,,,"));
    const FoldedHouse house{accountTanks, shifts};
    const NiterTell niter = rigTells(*house.ledger).niter;
    EXPECT_EQ(niter.switches, 4);
    EXPECT_EQ(niter.usual, Duration{4 * 3600}); // two hours to the last load, two of the next night
    EXPECT_EQ(niter.since, Duration{2 * 3600});
}

// Situation 8: hydrometer and physics apart by the same amount on every pan, draw by draw.
TEST(RigTells, TheGlassWhereEveryPanIsOffByTheSame) {
    const auto tell = [](const std::vector<double>& ofPans) {
        std::vector<std::pair<Instant, std::vector<Boil::Entry>>> shifts;
        std::vector<double> apart;
        std::vector<Boil::Entry> facts;
        const Instant from = *instantIn("2027-03-02T17:00:00Z");
        const auto add = [&](What what) {
            const auto number = static_cast<FactId>(facts.size());
            facts.push_back({number, {from + Duration{60.0 * static_cast<double>(number)}, std::move(what)}});
        };
        for (const double off : ofPans) {
            for (const double scatter : {-0.04, 0.03}) {
                add(DensityCheck{66.9, Unit::brix, Instrument::hydrometer, {}, {}, {}});
                apart.push_back(off + scatter);
            }
            add(PanSwapped{});
        }
        shifts.emplace_back(from, facts);
        LedgerInput input = ledgerInput({}, shifts);
        std::size_t next = 0;
        input.apartOf = [&](int, Instant) {
            return CheckApart{TemperatureDifference::kelvin(apart.at(next++)), TemperatureDifference::kelvin(0.06)};
        };
        return rigTells(Ledger{std::move(input)}).glass;
    };
    EXPECT_EQ(tell({0.40, 0.42, 0.38, 0.41}).verdict, RigVerdict::steady);
    EXPECT_NEAR(tell({0.40, 0.42, 0.38, 0.41}).apart.kelvin(), 0.40, 0.02);
    EXPECT_EQ(tell({0.40, 0.42}).verdict, RigVerdict::tooLittle) << "two pans";
    EXPECT_EQ(tell({0.4, -0.1, 0.6, 0.0}).verdict, RigVerdict::tooLittle) << "every pan its own";
    EXPECT_EQ(tell({0.02, 0.01, 0.03, 0.02}).verdict, RigVerdict::tooLittle) << "nothing is off";
}

} // namespace
} // namespace panside
