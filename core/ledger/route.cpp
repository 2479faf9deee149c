#include "core/ledger/route.h"

#include "core/boil/day_vocabulary.h"

#include <algorithm>
#include <map>

namespace panside {
namespace {

constexpr std::size_t daysBack = 10;

struct Day {
    std::vector<std::string> order; // keys of its stops, each once
};

} // namespace

std::vector<RouteStop> routeOf(const Ledger& ledger) {
    std::map<std::int64_t, Day> days;
    std::map<std::string, RouteStop> stops;
    for (const GatheredRow& row : ledger.tables().gathered) {
        const std::string key = nameKey(row.name);
        if (row.bought || key.empty() || key == nameKey(row.to))
            continue;
        Day& day = days[std::chrono::floor<std::chrono::days>(row.at).time_since_epoch().count()];
        if (std::ranges::find(day.order, key) == day.order.end())
            day.order.push_back(key);
        RouteStop& stop = stops[key];
        const auto taps = row.taps ? row.taps : stop.taps;
        stop = {row.name, row.to, taps, row.at, row.liquid.volume(), {}};
        if (!row.sugarAssumed)
            stop.sugar = row.liquid.brix();
    }
    while (days.size() > daysBack)
        days.erase(days.begin());
    std::vector<std::string> order;
    for (const auto& [date, day] : days)
        if (day.order.size() >= order.size())
            order = day.order;
    for (auto day = days.rbegin(); day != days.rend(); ++day)
        for (const std::string& key : day->second.order)
            if (std::ranges::find(order, key) == order.end())
                order.push_back(key);
    std::vector<RouteStop> route;
    route.reserve(order.size());
    for (const std::string& key : order)
        route.push_back(stops[key]);
    return route;
}

} // namespace panside
