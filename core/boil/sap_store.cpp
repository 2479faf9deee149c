#include "core/boil/sap_store.h"

#include "core/boil/state.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// A gauge or a dip cannot be wrong by more (common practice, no source).
constexpr double storeShare = 0.05, storeLitres = 20;
constexpr double levelEvery = 18; // seconds between two levels that are kept
// Seconds: a trickle, a pump that has just begun, and dips by hand, which come seldom.
constexpr double fillWindow = 600, pumpWindow = 180, dipWindow = 2 * 3600;
constexpr std::size_t fillReadings = 5, dipReadings = 3;
constexpr double fillRise = 8, fillSurely = 3; // litres over the window; standard errors of the slope
constexpr double fillStale = 1800;             // seconds: what a tank did then says nothing of now
constexpr double fillEvenly = 0.4;             // of the whole rise, as a share of what each third should have risen

} // namespace

void SapStore::absorb(const State& state, const Fact& fact) {
    if (const auto* sap = std::get_if<SapIn>(&fact.what)) {
        came_[cameCount_++ % cameKept] = {fact.at, sap->volume.value.litre(),
                                          sap->temperature ? std::optional{sap->temperature->value} : std::nullopt};
        return;
    }
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading || reading->series != Series::tank_level)
        return;
    if (levelCount_ > 0 && secondsBetween(levels_[(levelCount_ - 1) % levelsKept].at, fact.at) < levelEvery)
        return;
    if (const auto level = state.sensors.of(Series::tank_level).value(fact.at); level && level->at == fact.at) {
        levels_[levelCount_++ % levelsKept] = {fact.at, Volume::ofSi(level->si).litre()};
        judge();
    }
}

// What came last is thought to be in it whole, and before it so much as is left: a tank is drawn from below, and
// nobody knows better.
void SapStore::showAge(double litre, Instant now, SapPicture& store) const {
    double found = 0;
    const double unsure = storeShare * litre + storeLitres;
    for (std::size_t i = 0; i < std::min(cameCount_, cameKept) && found < litre - unsure; ++i) {
        const Came& came = came_[(cameCount_ - 1 - i) % cameKept];
        found += came.litre;
        store.oldest = Duration{std::max(0.0, secondsBetween(came.at, now))};
        if (came.temperature)
            store.warmest = std::max(store.warmest.value_or(*came.temperature), *came.temperature);
    }
    store.older = store.oldest && found < litre - unsure;
}

const SapStore::Level& SapStore::level(std::size_t back) const {
    return levels_[(levelCount_ - 1 - back) % levelsKept];
}

std::size_t SapStore::within(double seconds) const {
    const std::size_t held = std::min(levelCount_, levelsKept);
    std::size_t n = 0;
    while (n < held && secondsBetween(level(n).at, level(0).at) <= seconds)
        ++n;
    return n;
}

void SapStore::judge() {
    const std::size_t lately = within(fillWindow), dips = within(dipWindow);
    filling_ = lately >= fillReadings ? rising(lately) : rising(std::min(fillReadings, dips));
    if (!filling_ && lately >= fillReadings)
        filling_ = rising(within(pumpWindow));
    const auto line = slope(lately >= fillReadings ? lately : dips);
    falls_ = line && line->perSecond * line->span < -fillRise && line->perSecond < -fillSurely * line->error;
}

std::optional<double> SapStore::filling(Instant now) const {
    return levelCount_ > 0 && secondsBetween(level(0).at, now) <= fillStale ? filling_ : std::nullopt;
}

std::optional<SapStore::Slope> SapStore::slope(std::size_t n) const {
    if (n < dipReadings)
        return std::nullopt;
    const Instant last = level(0).at;
    double meanT = 0, meanL = 0;
    for (std::size_t i = 0; i < n; ++i) {
        meanT += secondsBetween(last, level(i).at) / static_cast<double>(n);
        meanL += level(i).litre / static_cast<double>(n);
    }
    double tt = 0, tl = 0, ll = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const double t = secondsBetween(last, level(i).at) - meanT, l = level(i).litre - meanL;
        tt += t * t;
        tl += t * l;
        ll += l * l;
    }
    if (tt <= 0)
        return std::nullopt;
    const double steep = tl / tt;
    return Slope{steep, std::sqrt(std::max(ll - steep * tl, 0.0) / static_cast<double>(n - 2) / tt),
                 secondsBetween(level(n - 1).at, last)};
}

std::optional<double> SapStore::rising(std::size_t n) const {
    const auto line = slope(n);
    if (!line || line->perSecond * line->span <= fillRise || line->perSecond <= fillSurely * line->error)
        return std::nullopt;
    const auto [slope, error, span] = *line;
    // A load that is dumped in lifts the line through all of it; what fills goes on filling, from third to third and in
    // the newest of them.
    const auto mean = [&](std::size_t from, std::size_t count) {
        double litre = 0;
        for (std::size_t i = from; i < from + count; ++i)
            litre += level(i).litre / static_cast<double>(count);
        return litre;
    };
    const std::size_t third = n / 3, half = third / 2;
    const double least = fillEvenly * slope * span / 3, middle = mean((n - third) / 2, third);
    const bool goesOn = half == 0 || mean(0, half) - mean(third - half, half) > least / 2;
    return goesOn && mean(0, third) - middle > least && middle - mean(n - third, third) > least ? std::optional{slope}
                                                                                                : std::nullopt;
}

void SapStore::show(const State& state, Instant now, Picture& picture) const {
    const auto& sensor = state.sensors.of(Series::tank_level);
    const auto level = sensor.value(now);
    if (!level || sensor.trust(now) != Trust::good)
        return;
    const double litre = Volume::ofSi(level->si).litre();
    showAge(litre, now, picture.store);
    if (const auto left = rim(state, now); left && left->filling)
        picture.store.fullIn = std::max(Duration{0}, left->room / *left->filling);
}

std::optional<SapStore::Rim> SapStore::rim(const State& state, Instant now) const {
    const auto& sensor = state.sensors.of(Series::tank_level);
    const auto level = sensor.value(now);
    const auto holds = state.settings.feedTankVolume();
    if (!level || !holds || sensor.trust(now) != Trust::good)
        return std::nullopt;
    const auto rate = filling(now);
    const double risen = rate ? *rate * std::max(0.0, secondsBetween(level->at, now)) : 0;
    Rim rim{*holds - Volume::ofSi(level->si) - Volume::litre(risen)};
    if (rate)
        rim.filling = VolumeFlow::litrePerHour(*rate * 3600);
    rim.falls = !rate && falls_;
    return rim;
}

} // namespace panside
