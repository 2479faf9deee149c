#pragma once
#include "core/boil/draw_end.h"
#include "core/boil/fact.h"
#include "core/boil/fire_heat.h"
#include "core/boil/forecast_record.h"
#include "core/boil/past_waits.h"
#include "core/boil/picture.h"
#include "core/boil/weather.h"

namespace panside {

struct State;

// How long until the draw (until the reading, freed of its noise, next rises through the target), and while drawing
// until it falls back through it: a distribution, or the reason why there is none.
class DrawForecast {
public:
    void absorb(const State& state, const Fact& fact);
    // drawEta, closeEta, lastScore and their why. The three times of a range are all that a fan needs: it runs from the
    // reading now to the target at p10, p50 and p90.
    void show(const State& state, Instant now, Picture& picture) const;

    // The two sources apart, for whoever compares them: the model of the pan, and the waits of this shift.
    std::optional<Quantiles> byPan(const State& state, Instant now) const;
    std::optional<Quantiles> byWaits(Instant now) const;

    // Sugar at the draw-off, freed of the reading's noise by how it has climbed; nullopt while drawing, while it is not
    // followed, and when what is read is not what was expected.
    std::optional<Brix> sugar(Instant now) const;

    // What the probe would have shown at a time that nobody read it, over water's boiling point, and how sure that is;
    // nullopt before the last reading or the last draw shut, and well into a draw.
    struct Expected {
        TemperatureDifference rise, sd;
    };
    std::optional<Expected> expected(Instant at, Pressure pressure) const;

    // What the next shift may expect of this rig; nothing before the fourth wait.
    struct Rhythm {
        std::optional<Duration> cycle, brix; // from shut to the mark; that a brix takes
    };
    Rhythm learned() const;
    // Brix a second that the sugar climbs on the whole.
    std::optional<double> usualRate() const { return end_.started() ? std::optional{end_.usualRate()} : std::nullopt; }

    // Of the last draw that was foretold.
    const std::optional<DrawScore>& lastScore() const { return lastScore_; }

private:
    struct Stack {
        std::optional<Instant> at;
        double now = 0, usual = 0; // kelvin
    };
    void readStack(const State& state, Instant at);
    void readPan(const State& state, Instant at);
    void open(const State& state, Instant at);
    void close(const State& state, Instant at);
    void watchMark(const State& state, Instant at, double rise, double unread);
    double passedAgo(const State& state, Instant at, double unread) const;
    void expect(const State& state, const Set& set);
    void followOffset(const State& state, Instant at);
    void happened(Instant seen, double ago = 0);
    bool drawnUnkeyed(const State& state, Instant at, double sugar, const Weather::Boiling& water);
    bool drawnByItself(Instant now) const;

    bool comesToBoil(Instant at, double sugar, double noise);
    double excess(Instant now, const FireHeat& fire) const;
    DrawGrounds grounds(Instant now, const Quantiles& pan) const;
    Quantiles shown(const State& state, Instant now, const Quantiles& pan) const;
    std::optional<Quantiles> byPanAndWaits(const State& state, Instant now) const;
    std::optional<Quantiles> byWatch(const State& state, Instant now, Reason silent) const;
    bool mayNeverCome(Instant now) const;
    Reason silence(const State& state, Instant now) const;
    Reason unreached(Instant now) const;
    void showClose(const State& state, Instant now, Picture& picture) const;

    DrawEnd end_;
    FireHeat fire_;
    std::optional<Brix> fed_; // the sap whose sugar reached the syrup pan, at the last reading
    Stack stack_;
    // A draw that nobody keyed: the reading was at the mark and falls as it does when syrup is drawn.
    struct Unkeyed {
        DrawEnd before = {};      // the pan as it stood at the mark
        double high = 0, low = 0; // brix; high 0: it has not been at the mark lately
        Instant highAt{};
        bool falls = false;
        int turned = 0; // readings since the lowest
        Temperature water = Temperature::kelvin(0);
        void shift(double by) {
            before.shift(by);
            high += high > 0 ? by : 0;
            low += by;
        }
    };
    Unkeyed unkeyed_;
    PastWaits waits_, falls_; // from shut to the mark; from open to back under it
    ForecastRecord record_;
    std::optional<DrawScore> lastScore_;
    std::optional<Instant> shutAt_, openAt_, readAt_;
    // Samples since the model last took a reading.
    struct Heard {
        Instant last{};
        double mean = 0; // kelvin
        int samples = 0;
        void addSample(double kelvin, Instant at);
    };
    Heard heard_;
    // How far the reading lay under the mark over the last minutes, brix: means that fade within half a minute and in
    // one and a half.
    struct Under {
        std::optional<Instant> at;
        double fast = 0, slow = 0;
        void addSample(double brix, Instant at);
    };
    Under below_;
    // The first climb of a shift: minutes in a row in which it climbed no faster than sugar can.
    struct Quiet {
        std::optional<Instant> at;
        double sugar = 0;
        int minutes = 0;
    };
    Quiet quiet_;
    double markSlope_ = 0.23; // kelvin a brix at the density wanted
    double surprise_ = 0;     // standard deviations by which the last readings were off what was expected, faded
    double offset_ = 0;       // kelvin, in what end_ was told
    bool under_ = false;      // the reading was under the mark in this cycle
    bool passed_ = false;     // and has passed it
    bool fallen_ = false;     // in this draw
};

} // namespace panside
