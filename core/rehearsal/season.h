#pragma once
// `panside rehearse --season`: a made-up season of two invented houses, each as a day book, its shift logs and the
// truth behind them: what stands in every vessel and in the pans, and which sap is in every lot.
#include <chrono>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace panside {

// What is in a vessel or a lot, by where its sugar was gathered or bought.
struct TrueContent {
    double litres = 0;                  // at 20 degC
    double sugar = 0;                   // kg
    std::map<std::string, double> from; // kg of sugar, by the name of the gathering or the seller
};
struct TrueLot {
    TrueContent content;
    int made = 0;
    std::map<std::string, int> buyers; // net
    bool milk = false;
};
struct MadeSeason {
    std::string house;               // small or large
    std::string dayBook;             // CSV
    std::vector<std::string> shifts; // CSV, by time
    std::map<std::string, TrueContent> vessels;
    TrueContent pans;
    std::map<std::string, TrueLot> lots;
    std::string truth() const; // as JSON
};

constexpr std::chrono::sys_days spring2027{std::chrono::year{2027} / 3 / 1};
// A nature centre with 120 buckets: felt cones, pints, butter against foam on one night, a lot lost to scorching.
// `first`: when the vessels are named; four nights from the fifth day on, and the last row is written on the 19th.
MadeSeason smallHouse(std::uint64_t seed, std::chrono::sys_days first = spring2027);
// A family with 3000 taps: tanks, a membrane, numbered drums, a press with its heel, blends of blends, half a drum
// topped a week later, bought syrup, a week in which nobody wrote, pans drained into pails, a pack in August.
MadeSeason largeHouse(std::uint64_t seed);

} // namespace panside
