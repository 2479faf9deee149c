#pragma once
#include "core/boil/exchanged_plugs.h"
#include "core/boil/fact.h"
#include "core/boil/last_digit.h"
#include "core/boil/pan_doubt.h"
#include "core/boil/picture.h"
#include "core/boil/vocabulary.h"

#include <array>
#include <string>
#include <utility>
#include <vector>

namespace panside {

struct State;

// One probe as it comes in: freed of spikes and noise, and how far it can be believed. Its numbers are plain, SI of the
// dimension of its series: one filter serves them all.
class Probe {
public:
    Probe(std::string name, Series series);

    // What a probe must know of the rest to judge itself.
    struct Around {
        bool boiling = false;
        bool othersMove = false; // other thermometers have moved since this one last did
        bool drawing = false, firing = false;
        bool handsAtPan = false;          // syrup is drawn or was just now, or hands were at the pan
        std::optional<double> waterBoils; // kelvin, on this probe's scale
        PanDoubt::Around pan;             // of a pan's probe
        Reason height = Reason::none;     // why no weather makes this pressure at the height that is set
    };
    void addSample(const ReadingRow& row, double si, Unit unit, Instant at, const Around& around);
    // Hands were at the pan: another stands there, or what it reads was held against a hydrometer.
    void seenByHand();

    const std::string& name() const { return name_; }
    bool byHand() const { return byHand_; }
    std::optional<Instant> last() const { return last_; }
    double spacing() const { return spacing_; } // seconds between its samples, usually; 0: not known yet
    Instant silentAt() const;                   // when it will have been silent for too long
    bool silent(Instant now) const { return !byHand() && last_ && now >= silentAt(); }
    bool stuck() const { return digit_.stuck(); }
    // In the pan it came to stand so much higher (or lower) from one sample to the next, as no liquid does: another
    // probe, plug or lead. Until it leaps back, or hands were at the pan.
    struct Leap {
        Instant at;
        double by; // SI
    };
    const std::optional<Leap>& leap() const { return leap_; }
    // Silences so long that it was put by, and came back. A press gauge is read while somebody presses.
    static constexpr double putBy = 900; // seconds
    std::uint32_t pauses() const { return pauses_; }
    // Since when it has been outside physics, changed faster than it can, or read what no pan can; nullopt: it is not.
    std::optional<Instant> implausibleSince() const {
        return implausibleSince_  ? implausibleSince_
               : exchangedSurely_ ? exchangedSurely_
                                  : underBoiling_.surelySince();
    }
    // Its plug stands in another's place since then; `surely`: no error of two probes explains it.
    void exchanged(std::optional<Instant> since, std::optional<Instant> surely) {
        exchangedSince_ = since;
        exchangedSurely_ = surely;
    }
    ExchangedPlugs::Pan asPan(Instant at) const;
    Instant unchangedSince() const { return digit_.unchangedSince(); }

    Trust trust(Instant now) const;
    Reason reason(Instant now) const;
    Instant reasonSince(Instant now) const;
    bool hasValue() const { return started_; }
    double value() const { return x_; }
    double slope() const { return v_; } // SI a second
    double noise() const;               // standard deviation of a sample about the value, SI
    Instant believedAt() const { return believedAt_; }
    double accepted() const { return accepted_; }    // the last sample that was no spike, as it came
    Instant startedAt() const { return startedAt_; } // when the filter last began anew
    // What this probe reads above another, learned while both were good; added when it stands in for that one.
    double above() const { return above_; }
    void compare(const Probe& other);

private:
    void countGap(Instant at);
    void watchSteam(const ReadingRow& row, Instant at, const Around& around);
    void watchPan(const ReadingRow& row, Unit unit, Instant at, const Around& around);
    void refuse(Reason reason, double si, Instant at);
    void pend(const ReadingRow& row, double si, Instant at, double gate, const Around& around);
    void watchLeap(const ReadingRow& row, double si, const Around& around);
    void start(const ReadingRow& row, double si, double slope, Instant at);
    void follow(const ReadingRow& row, double si, Instant at, const Around& around);

    struct Sample {
        double si = 0;
        Instant at{};
    };
    static constexpr std::size_t gapCount = 5, pendCount = 4;

    std::string name_;
    bool byHand_;
    double typedHoldsFor_; // seconds
    std::optional<Instant> last_, implausibleSince_;
    std::array<float, gapCount> gaps_{};
    float spacing_ = 0; // their median
    std::uint32_t samples_ = 0, pauses_ = 0;
    // the filter: value, slope, variance of a sample about it
    bool started_ = false;
    double x_ = 0, v_ = 0, variance_ = 0, drift_ = 0;
    std::uint32_t followed_ = 0;
    Instant believedAt_{}, startedAt_{};
    double accepted_ = 0, above_ = 0;
    std::uint32_t compared_ = 0;
    // samples that do not fit, waiting to be borne out or forgotten
    std::array<Sample, pendCount> pending_{};
    std::uint8_t pendings_ = 0;
    double pendedFirst_ = 0;
    float held_ = 0; // seconds that it had shown the same to the last digit, before this sample
    std::optional<Leap> leap_;
    std::optional<ExchangedPlugs::Jump> jump_;
    std::optional<Instant> exchangedSince_, exchangedSurely_;
    Instant first_{};
    Instant pendingSince_{};
    Reason refusal_ = Reason::none;
    Instant settledAt_{}; // after a jump that no pan can make: believed again from here on
    float spikes_ = 0;    // share of spikes among the last samples
    bool jumping_ = false;
    Instant jumpingSince_{};
    // in steam or foam, or against the metal
    double high_ = 0, highSince_ = 0, highBefore_ = 0; // of the last two half minutes, of this one, of the one before
    Instant highFrom_{};
    std::optional<Instant> steamSince_, touchingSince_;
    double touchedFrom_ = 0, steamLow_ = 0;
    double highest_ = 0; // that it stood at for half a minute, in this pan
    PanDoubt underBoiling_;
    LastDigit digit_;
    Reason height_ = Reason::none; // of a pressure
    std::optional<Instant> heightSince_;
};

// One reading: the probe that gives it, and those that stand in for it.
class Sensor {
public:
    struct Believed {
        double si;     // the believed value
        double noise;  // standard deviation of what was taken away, SI
        Instant at;    // of the last believed sample
        double slope;  // SI a second, as filtered
        double sample; // the last believed one as it came: no filter has carried it on or held it back
    };
    // The last believed value; nullopt if there was none, or it is gone.
    std::optional<Believed> value(Instant now) const;
    Trust trust(Instant now) const;
    Reason reason(Instant now) const;
    std::optional<Instant> lastRead() const;
    bool byHand(Instant now) const;

    const std::vector<Probe>& probes() const { return probes_; }
    // The one that is believed now; nullptr when nothing was ever read.
    const Probe* active(Instant now) const;

private:
    friend class Sensors;
    Probe& probe(const std::string& name, Series series);
    const Probe* first() const;
    Probe* first() { return const_cast<Probe*>(std::as_const(*this).first()); }

    std::vector<Probe> probes_;
};

class Sensors {
public:
    void absorb(const State& state, const Fact& fact);
    void show(const State& state, Instant now, Picture& picture) const;
    const Sensor& of(Series series) const { return sensors_[static_cast<std::size_t>(series)]; }
    // Is a pan boiling, as far as its own probe tells?
    bool boiling(const State& state, Instant now) const;

private:
    bool otherMoved(const Probe& probe) const;
    PanDoubt::Around aroundPan(const State& state, const Probe& probe, Series series, Instant at) const;
    PanDoubt::Fire fire(const State& state, double boils, Instant at) const;
    void watchPlugs(double boils, Instant at);

    std::array<Sensor, seriesCount> sensors_;
    std::optional<Instant> handsAt_; // at the syrup pan: a check, another pan
    ExchangedPlugs plugs_;           // of the first probes in the two pans
};

} // namespace panside
