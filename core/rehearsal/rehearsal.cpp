#include "core/rehearsal/rehearsal.h"
#include "core/rehearsal/crew.h"
#include "core/rehearsal/instruments.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace panside {

using namespace rehearsal;

struct Rehearsal::Inside {
    Inside(RehearsalOptions given, std::uint64_t seed)
        : options{std::move(given)}, plant{options, seed}, crew{options, seed},
          instruments{options, seed}, teacher{seed, 62}, truth{plant.truth(options.begins)} {}

    void second(std::vector<Fact>& facts) {
        const Instant at = options.begins + Duration{since};
        if (since == 0)
            crew.begin(plant, at, facts);
        plant.step(since);
        const auto shown = plant.probe().sent();
        // They dip the probe in a pot of boiling water before it goes into the pan.
        crew.step({since, at, shown}, plant, facts, deeds);
        instruments.read(since, at, shown, plant, facts);
        noteFaults(at);
        truth = plant.truth(at);
        watch.look(truth);
        since += 1;
    }

    void noteFaults(Instant at) {
        const bool feed = plant.feedFails(since);
        if (feed != feedFailed)
            deeds.push_back({feed ? RehearsalDeed::Kind::feedStopped : RehearsalDeed::Kind::feedBack, at});
        feedFailed = feed;
        const double from = seconds(options.probeFaultAfter), to = from + seconds(options.probeFaultLasts);
        const bool probe = options.probeFault != ProbeTrouble::none && since >= from && since < to;
        if (probe != probeFailed)
            deeds.push_back({probe ? RehearsalDeed::Kind::probeFails : RehearsalDeed::Kind::probeBack, at});
        probeFailed = probe;
    }

    RehearsalOptions options;
    Plant plant;
    CrewOnShift crew;
    Instruments instruments;
    Dice teacher;
    double since = 0; // of the next second
    RehearsalTruth truth;
    LessonWatch watch;
    std::vector<RehearsalDeed> deeds;
    bool feedFailed = false, probeFailed = false;
};

Rehearsal::Rehearsal(RehearsalOptions options, std::uint64_t seed)
    : inside_{std::make_unique<Inside>(std::move(options), seed)} {}
Rehearsal::~Rehearsal() = default;
Rehearsal::Rehearsal(Rehearsal&&) noexcept = default;
Rehearsal& Rehearsal::operator=(Rehearsal&&) noexcept = default;

std::vector<Fact> Rehearsal::advance(Instant until) {
    std::vector<Fact> facts;
    while (inside_->options.begins + Duration{inside_->since} <= until && !ended())
        inside_->second(facts);
    std::ranges::stable_sort(facts, {}, &Fact::at);
    return facts;
}

Instant Rehearsal::now() const { return inside_->truth.at; }
bool Rehearsal::ended() const { return inside_->crew.ended(); }
const RehearsalOptions& Rehearsal::options() const { return inside_->options; }
const RehearsalTruth& Rehearsal::truth() const { return inside_->truth; }
const std::vector<RehearsalDeed>& Rehearsal::deeds() const { return inside_->deeds; }

constexpr double bucket = 40; // liters: more is no bucket

void Rehearsal::perform(const What& what) {
    auto& plant = inside_->plant;
    auto& deeds = inside_->deeds;
    const Instant at = now();
    if (const auto* fired = std::get_if<Fired>(&what)) {
        const double kilogram = fired->load ? fired->load->value.kilogram() : plant.nominalLoad();
        plant.loadWood(kilogram, 25);
        inside_->crew.seeFired(inside_->since);
        deeds.push_back({RehearsalDeed::Kind::fired, at, Mass::kilogram(kilogram)});
    } else if (std::holds_alternative<DrawOpened>(what) && !plant.drawing()) {
        plant.openDraw();
        inside_->crew.seeDraw(inside_->since);
        deeds.push_back({RehearsalDeed::Kind::opened, at});
    } else if (std::holds_alternative<DrawClosed>(what) && plant.drawing()) {
        plant.closeDraw();
        inside_->crew.seeDraw(inside_->since);
        deeds.push_back({RehearsalDeed::Kind::closed, at});
    } else if (const auto* sap = std::get_if<SapIn>(&what)) {
        const double litres = sap->volume.value.litre();
        if (litres < bucket && plant.feedFails(inside_->since)) { // poured in by hand, and the float freed
            plant.pourBucket(litres);
            plant.mendFeed();
        } else {
            plant.addSap(litres, sap->sugar ? sap->sugar->massFraction() : plant.tankSugar());
        }
    } else if (std::holds_alternative<Shutdown>(what)) {
        inside_->crew.seeShutdown(inside_->since, plant);
        deeds.push_back({RehearsalDeed::Kind::shutDown, at});
    } else if (std::holds_alternative<ShiftEnd>(what)) {
        inside_->crew.goHome();
    }
}

void Rehearsal::befall(Trouble trouble) {
    throwIn(inside_->options, trouble, Duration{inside_->since}, inside_->teacher);
    inside_->plant.meet(inside_->options, trouble, inside_->since);
    inside_->crew.meet(inside_->options, trouble);
}

void Rehearsal::sendCrewAway(bool away) { inside_->crew.sendAway(away); }
const LessonScore& Rehearsal::score() const { return inside_->watch.score(); }
void Rehearsal::beginLesson() { inside_->watch.begin(inside_->truth); }

namespace {
// The first second after some draws at which the next one is two to four minutes off by the truth.
Duration ripeAfter(const RehearsalOptions& options, std::uint64_t seed) {
    Rehearsal trial{options, seed};
    Instant at = options.begins;
    int closed = 0;
    double before = 0;
    while (!trial.ended()) {
        at = at + Duration{30};
        trial.advance(at);
        closed = static_cast<int>(std::ranges::count(trial.deeds(), RehearsalDeed::Kind::closed, &RehearsalDeed::kind));
        const double under = (trial.truth().mark - trial.truth().reading).kelvin();
        const bool climbing = under < before;
        before = under;
        if (closed >= 3 && !trial.truth().drawing && climbing && under > 0.05 && under < 0.35)
            return Duration{secondsBetween(options.begins, at)};
    }
    return std::chrono::hours{2};
}
} // namespace

namespace {
RehearsalUnderWay begunBefore(RehearsalOptions options, std::uint64_t seed, Instant now, Duration old) {
    options.begins = now - std::chrono::round<std::chrono::microseconds>(old);
    RehearsalUnderWay underWay{Rehearsal{options, seed}, {}, {}};
    for (auto& fact : underWay.rehearsal.advance(now)) {
        const bool reading = std::holds_alternative<Reading>(fact.what);
        if (!reading || std::fmod(secondsBetween(options.begins, fact.at), 10) < 0.5)
            underWay.past.push_back(std::move(fact));
    }
    underWay.rehearsal.beginLesson();
    return underWay;
}
} // namespace

RehearsalUnderWay rehearsalUnderWay(const RehearsalOptions& options, std::uint64_t seed, Instant now) {
    return begunBefore(options, seed, now, ripeAfter(options, seed));
}

RehearsalUnderWay lessonUnderWay(std::uint64_t seed, Instant now) {
    // Until it begins it is as if its troubles came much later.
    const Duration old = ripeAfter(lessonOf(seed, std::chrono::hours{99}).options, seed);
    Lesson lesson = lessonOf(seed, old);
    auto underWay = begunBefore(lesson.options, seed, now, old);
    underWay.troubles = std::move(lesson.troubles);
    return underWay;
}

} // namespace panside
