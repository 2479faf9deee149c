// A season whose truth is known, kept by another book: what stands in every vessel, and which sap is in every lot.
#include "core/rehearsal/season.h"
#include "house.h"

namespace panside {
namespace {

using namespace testing_house;

std::string withoutHeader(const std::string& log) { return log.substr(log.find('\n') + 1); }

std::unique_ptr<FoldedHouse> houseOf(const MadeSeason& season) {
    std::vector<std::string> shifts;
    for (const std::string& log : season.shifts)
        shifts.push_back(withoutHeader(log));
    return std::make_unique<FoldedHouse>(withoutHeader(season.dayBook), shifts);
}

// Shares of sugar by name; names that nobody gathered or sold are holes and are not meant here.
std::map<std::string, double> sharesOf(const Trace& trace) {
    std::map<std::string, double> shares;
    for (const TraceEntry& entry : trace.behind)
        if (entry.kind == TraceKind::gathered || entry.kind == TraceKind::bought)
            shares[entry.name] += entry.share.value_or(-1);
    return shares;
}

class LedgerSeason : public testing::TestWithParam<std::tuple<bool, std::uint64_t>> {
protected:
    LedgerSeason()
        : season{std::get<0>(GetParam()) ? largeHouse(std::get<1>(GetParam())) : smallHouse(std::get<1>(GetParam()))},
          house{houseOf(season)} {}
    MadeSeason season;
    std::unique_ptr<FoldedHouse> house;
};

TEST_P(LedgerSeason, HoldsTheVolumeAndSugarOfEveryVessel) {
    for (const auto& [name, truth] : season.vessels) {
        EXPECT_NEAR(house->litres(name), truth.litres, 0.01 + 1e-5 * truth.litres) << name;
        EXPECT_NEAR(house->sugar(name), truth.sugar, 0.002 + 1e-5 * truth.sugar) << name;
    }
}

TEST_P(LedgerSeason, TracesEveryLotToAllOfItsSapAndToNoOther) {
    for (const auto& [code, truth] : season.lots) {
        const auto shares = sharesOf(house->trace(code));
        EXPECT_NEAR(house->trace(code).volume.litre(), truth.content.litres, 1e-6) << code;
        for (const auto& [name, kg] : truth.content.from) {
            ASSERT_TRUE(shares.contains(name)) << code << " lacks " << name;
            EXPECT_NEAR(shares.at(name), kg / truth.content.sugar, 1e-4) << code << " from " << name;
        }
        for (const auto& [name, share] : shares)
            EXPECT_TRUE(truth.content.from.contains(name)) << code << " has nothing of " << name << " but " << share;
        EXPECT_EQ(house->lot(code).taint.milk, truth.milk) << code;
        std::map<std::string, long long> buyers;
        for (const TraceEntry& entry : house->trace(code).before)
            if (entry.kind == TraceKind::buyer)
                buyers[entry.name] += entry.count.value_or(0);
        for (const auto& [buyer, count] : truth.buyers)
            EXPECT_EQ(buyers[buyer], count) << code << " to " << buyer;
    }
}

TEST_P(LedgerSeason, EveryNightBehindALotSaysThatItWentIntoIt) {
    for (const auto& [code, truth] : season.lots)
        for (const Night& night : house->ledger->nights()) {
            const Trace back = house->trace(code), forward = house->trace(night.date);
            EXPECT_EQ(entryOf(back.behind, TraceKind::night, night.date) != nullptr,
                      entryOf(forward.before, TraceKind::lot, code) != nullptr)
                << code << " and " << night.date;
        }
}

TEST_P(LedgerSeason, ClosesTheBalanceAndMarksNothing) {
    const Balance20& balance = house->ledger->balance();
    EXPECT_NEAR(balance.doesNotClose, 0, 0.01);
    for (const LedgerMark& mark : house->ledger->marks())
        EXPECT_TRUE(mark.kind == MarkKind::milk || mark.kind == MarkKind::underDensity ||
                    mark.kind == MarkKind::overDensity)
            << sentence(mark);
}

INSTANTIATE_TEST_SUITE_P(Houses, LedgerSeason, testing::Combine(testing::Bool(), testing::Values(1U, 2U, 3U)));

TEST(LedgerLargeHouse, TheWeekWithoutEntriesIsAHoleOnTheWay) {
    const auto house = houseOf(largeHouse(1));
    const Trace trace = house->trace("drum 6");
    ASSERT_TRUE(entryOf(trace.behind, TraceKind::hole, "nothing written"));
}

} // namespace
} // namespace panside
