#include "core/boil/hindsight.h"

#include "core/boil/boil.h"
#include "core/boil/state.h"

namespace panside {

struct Hindsight::Inside {
    State state;
    std::optional<Duration> fanEvery;
    std::optional<Instant> fanAt; // the next one
    std::vector<DrawScore> scores;
    std::vector<PastForecast> fans;

    void look(Instant now);
};

void Hindsight::Inside::look(Instant now) {
    const Picture seen = picture(state, now);
    if (seen.drawEta && seen.rise && seen.targetRise && seen.drawEta->p50.count() > 0)
        fans.push_back({now, *seen.rise, *seen.targetRise, *seen.drawEta});
}

Hindsight::Hindsight(std::optional<Duration> fanEvery) : inside_{std::make_unique<Inside>()} {
    inside_->fanEvery = fanEvery;
}
Hindsight::~Hindsight() = default;
Hindsight::Hindsight(Hindsight&&) noexcept = default;
Hindsight& Hindsight::operator=(Hindsight&&) noexcept = default;

void Hindsight::add(const Fact& fact) {
    auto& [state, every, fanAt, scores, fans] = *inside_;
    if (every) {
        const auto step = std::chrono::round<std::chrono::microseconds>(*every);
        if (!fanAt)
            fanAt = fact.at + step;
        for (; *fanAt < fact.at; *fanAt += step)
            inside_->look(*fanAt);
    }
    absorb(state, fact);
    const auto& score = state.forecast.lastScore();
    if (score && (scores.empty() || scores.back().at != score->at))
        scores.push_back(*score);
}

const std::vector<DrawScore>& Hindsight::scores() const { return inside_->scores; }
const std::vector<PastForecast>& Hindsight::fans() const { return inside_->fans; }

} // namespace panside
