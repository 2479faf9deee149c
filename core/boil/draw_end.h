#pragma once
// The draw-off end of the syrup pan as a state-space model. Where evaporation is steady the sugar there climbs by
// nearly the same brix each minute, while its boiling rise climbs ever faster: so the state is in brix. A Kalman filter
// over
//   sugar   at the draw-off, brix
//   flicker rate that comes and goes within minutes (door, foam, float), brix a second
//   lean    rate that stays for half an hour (depth, sugar of what follows, hands at the fire)
//   usual   rate that this shift's pan has on the whole
//   answer  how much of the rate goes with the fire's heat
// with d sugar/dt = usual + lean + flicker + answer * excess heat. Plain numbers, in brix and seconds: one vector and
// one matrix hold several units and their products.
#include "core/boil/fire_heat.h"
#include "core/quantity/quantity.h"

#include <array>
#include <optional>
#include <vector>

namespace panside {

class DrawEnd {
public:
    bool started() const { return at_.has_value(); }
    // Before it is started: the rate that shifts before had, brix a second.
    void expect(double rate);
    void forget(); // all but that
    // A new liquid is at the draw-off: what was known of the rates goes on, of the sugar it does not.
    void start(Instant at, double sugar, double sd);
    void passTo(Instant at);
    // From here on the fire gives so much more than usual.
    void heat(double excess) { excess_ = excess; }
    void read(Instant at, double sugar, double variance);
    // From here on it thickens so many times as fast.
    void hasten(double factor);
    // All that was read is now taken as so much more.
    void shift(double sugar) { mean_[0] += sugar; }

    double sugar() const { return mean_[0]; }
    double sugarVariance() const { return variance_[0][0]; }
    double rate() const; // brix a second, now
    double usualRate() const { return scale(); }
    // Share of the usual rate that goes with the fire's heat.
    double answer() const { return mean_[4] / scale(); }
    std::optional<Instant> at() const { return at_; }

    // Seconds until a share of all futures (as a standard normal deviate: 0 is half of them) has passed `mark`;
    // nullopt: not within four hours. `markVariance` is how well the mark is known, brix^2.
    std::optional<double> until(double mark, double markVariance, double deviate, const HeatAhead& heat) const;

private:
    static constexpr std::size_t size = 5;
    using Vector = std::array<double, size>;
    using Matrix = std::array<Vector, size>;
    struct Span;
    static const std::vector<Span>& spans();
    double spread(const Span& span, const Vector& by) const; // variance of the sugar then
    double scale() const;
    void noise(Matrix& variance, double seconds) const;

    std::optional<double> expected_; // brix a second
    std::optional<Instant> at_;
    Vector mean_{};
    Matrix variance_{};
    double excess_ = 0;
};

} // namespace panside
