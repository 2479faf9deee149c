#include "core/physics/thermocouple.h"

#include "core/physics/range.h"

#include <cmath>
#include <span>

namespace panside {
namespace {

// NIST Monograph 175 (1993), reference functions: millivolt from degrees Celsius, by rising power.
constexpr double kBelow[] = {0,
                             0.039450128025,
                             2.3622373598e-05,
                             -3.2858906784e-07,
                             -4.9904828777e-09,
                             -6.7509059173e-11,
                             -5.7410327428e-13,
                             -3.1088872894e-15,
                             -1.0451609365e-17,
                             -1.9889266878e-20,
                             -1.6322697486e-23};
constexpr double kAbove[] = {-0.017600413686,  0.038921204975,    1.8558770032e-05, -9.9457592874e-08,
                             3.1840945719e-10, -5.6072844889e-13, 5.6075059059e-16, -3.2020720003e-19,
                             9.7151147152e-23, -1.2104721275e-26};
constexpr double jAll[] = {0,
                           0.050381187815,
                           3.047583693e-05,
                           -8.568106572e-08,
                           1.3228195295e-10,
                           -1.7052958337e-13,
                           2.0948090697e-16,
                           -1.2538395336e-19,
                           1.5631725697e-23};
constexpr double tBelow[] = {0,
                             0.038748106364,
                             4.4194434347e-05,
                             1.1844323105e-07,
                             2.0032973554e-08,
                             9.0138019559e-10,
                             2.2651156593e-11,
                             3.6071154205e-13,
                             3.8493939883e-15,
                             2.8213521925e-17,
                             1.4251594779e-19,
                             4.8768662286e-22,
                             1.079553927e-24,
                             1.3945027062e-27,
                             7.9795153927e-31};
constexpr double tAbove[] = {0,
                             0.038748106364,
                             3.329222788e-05,
                             2.0618243404e-07,
                             -2.1882256846e-09,
                             1.0996880928e-11,
                             -3.0815758772e-14,
                             4.547913529e-17,
                             -2.7512901673e-20};
// The same, inverse: degrees Celsius from millivolt.
constexpr double kInverseBelow[] = {0,           25.173462,    -1.1662878,   -1.0833638,    -0.8977354,
                                    -0.37342377, -0.086632643, -0.010450598, -0.00051920577};
constexpr double kInverse[] = {0,           25.08355,     0.07860106,   -0.2503131,   0.0831527,
                               -0.01228034, 0.0009804036, -4.41303e-05, 1.057734e-06, -1.052755e-08};
constexpr double kInverseHigh[] = {-131.8058,     48.30222,     -1.646031,   0.05464731,
                                   -0.0009650715, 8.802193e-06, -3.11081e-08};
constexpr double jInverseBelow[] = {0,           19.528268,    -1.2286185,   -1.0752178,    -0.59086933,
                                    -0.17256713, -0.028131513, -0.002396337, -8.3823321e-05};
constexpr double jInverse[] = {0,          19.78425, -0.2001204, 0.01036969, -0.0002549687, 3.585153e-06, -5.344285e-08,
                               5.09989e-10};
constexpr double tInverseBelow[] = {0,          25.949192,  -0.21316967, 0.79018692,
                                    0.42527777, 0.13304473, 0.020241446, 0.0012668171};
constexpr double tInverse[] = {0, 25.928, -0.7602961, 0.04637791, -0.002165394, 6.048144e-05, -7.293422e-07};
// Type K above 0 degC has a bump beside its polynomial: a0 exp(a1 (t - a2)^2), millivolt.
constexpr double bump0 = 0.1185976;
constexpr double bump1 = -0.1183432e-3;
constexpr double bump2 = 126.9686;

using Polynomial = std::span<const double>;

struct Type {
    double coldest, hottest; // degC
    Polynomial below, above; // millivolt, below and above 0 degC
    bool bump;
    Polynomial inverseBelow, inverse, inverseHigh;
    double high; // millivolt from which inverseHigh serves
};
constexpr Type types[] = {
    {-200, 1372, kBelow, kAbove, true, kInverseBelow, kInverse, kInverseHigh, 20.644},
    {-210, 760, jAll, jAll, false, jInverseBelow, jInverse, jInverse, 42.919},
    {-200, 400, tBelow, tAbove, false, tInverseBelow, tInverse, tInverse, 20.872},
};

const Type& typeOf(Thermocouple type) { return types[static_cast<std::size_t>(type)]; }

double evaluate(Polynomial polynomial, double x) {
    double sum = 0;
    for (std::size_t i = polynomial.size(); i-- > 0;)
        sum = sum * x + polynomial[i];
    return sum;
}

struct Emf {
    double millivolt, slope; // slope in millivolt a kelvin
};

Emf emfAt(const Type& type, double celsius) {
    const Polynomial polynomial = celsius < 0 ? type.below : type.above;
    Emf emf{0, 0};
    for (std::size_t i = polynomial.size(); i-- > 0;) {
        emf.slope = emf.slope * celsius + emf.millivolt;
        emf.millivolt = emf.millivolt * celsius + polynomial[i];
    }
    if (type.bump && celsius >= 0) {
        const double away = celsius - bump2;
        const double bump = bump0 * std::exp(bump1 * away * away);
        emf.millivolt += bump;
        emf.slope += bump * 2 * bump1 * away;
    }
    return emf;
}

bool inRange(const Type& type, Temperature t) { return within(t.celsius(), type.coldest, type.hottest); }
bool isJunction(Temperature t) { return within(t.celsius(), -40, 125); }

} // namespace

std::optional<Voltage> thermocoupleVoltage(Thermocouple type, Temperature hot, Temperature junction) {
    const Type& wire = typeOf(type);
    if (!inRange(wire, hot) || !isJunction(junction))
        return std::nullopt;
    return Voltage::millivolt(emfAt(wire, hot.celsius()).millivolt - emfAt(wire, junction.celsius()).millivolt);
}

std::optional<Temperature> thermocoupleTemperature(Thermocouple type, Voltage measured, Temperature junction) {
    const Type& wire = typeOf(type);
    if (!isJunction(junction))
        return std::nullopt;
    const double emf = measured.millivolt() + emfAt(wire, junction.celsius()).millivolt;
    if (!within(emf, emfAt(wire, wire.coldest).millivolt, emfAt(wire, wire.hottest).millivolt))
        return std::nullopt;
    double celsius = evaluate(emf < 0 ? wire.inverseBelow : emf < wire.high ? wire.inverse : wire.inverseHigh, emf);
    for (int turn = 0; turn < 2; ++turn) {
        const Emf here = emfAt(wire, celsius);
        celsius -= (here.millivolt - emf) / here.slope;
    }
    return Temperature::celsius(std::fmin(std::fmax(celsius, wire.coldest), wire.hottest));
}

} // namespace panside
