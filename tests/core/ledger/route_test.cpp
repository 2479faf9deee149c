// The round of a gathering, as it was last gone.
#include "core/ledger/route.h"

#include "house.h"

namespace panside {
namespace {

using namespace testing_house;

std::vector<std::string> stopsOf(const std::string& rows) {
    const FoldedHouse house{"2027-03-01T06:00:00Z,vessel,1000,L,name=north;kind=gather\n"
                            "2027-03-01T06:00:00Z,vessel,1000,L,name=truck;kind=truck\n" +
                            rows};
    std::vector<std::string> names;
    for (const RouteStop& stop : routeOf(*house.ledger))
        names.push_back(stop.name + " to " + stop.to);
    return names;
}

TEST(Route, IsGoneAsOnTheDayOfTheMostStops) {
    EXPECT_TRUE(stopsOf("").empty());
    const std::string rows =
        day(2, "09:00", "gathered,40,L,to=truck;from=yard;taps=30") +
        day(2, "09:20", "gathered,60,L,to=truck;from=hill;brix=2.4") +
        day(2, "09:40", "gathered,50,L,to=north;from=brook") + day(3, "09:00", "gathered,55,L,to=north;from=Hill") +
        day(3, "10:00", "gathered,20,L,to=north;from=school") + day(3, "11:00", "gathered,100,L,to=north") +
        day(3, "12:00", "bought,100,L,what=sap;vessel=north;from=a neighbor");
    // Hill went into another tank the last time; what has no name of its own, or was bought, is no stop.
    EXPECT_EQ(stopsOf(rows),
              (std::vector<std::string>{"yard to truck", "Hill to north", "brook to north", "school to north"}));
    const FoldedHouse house{"2027-03-01T06:00:00Z,vessel,1000,L,name=truck;kind=truck\n" +
                            day(2, "09:00", "gathered,40,L,to=truck;from=yard;taps=30;brix=2.4") +
                            day(3, "09:00", "gathered,30,L,to=truck;from=yard")};
    const auto route = routeOf(*house.ledger);
    ASSERT_EQ(route.size(), 1u);
    EXPECT_EQ(route[0].taps, 30);
    EXPECT_NEAR(route[0].gave.litre(), 30, 1e-6);
    EXPECT_FALSE(route[0].sugar) << "nobody read it the last time";
}

// The crew goes it the other way round by now.
TEST(Route, OfTwoRoundsOfAsManyStopsTheLaterOneHolds) {
    EXPECT_EQ(stopsOf(day(2, "09:00", "gathered,40,L,to=truck;from=yard") +
                      day(2, "09:20", "gathered,60,L,to=truck;from=hill") +
                      day(3, "09:00", "gathered,60,L,to=truck;from=hill") +
                      day(3, "09:20", "gathered,40,L,to=truck;from=yard")),
              (std::vector<std::string>{"hill to truck", "yard to truck"}));
}

} // namespace
} // namespace panside
