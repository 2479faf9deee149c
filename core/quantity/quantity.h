#pragma once
// Quantities that cannot be mixed up. A number enters by a named unit and leaves by one; inside it is SI.
// A point on a scale (a temperature) is another type than a difference on it.
#include <chrono>
#ifndef Q_MOC_RUN // Qt 6.4 cannot read GCC 12 concepts, and need not
#include <compare>
#endif

namespace panside {

// What all plain amounts share: they add, scale, compare, and divide to a bare ratio. The value is SI.
template <class Self>
class Amount {
public:
    constexpr Amount() = default; // none of it: zero
    constexpr double si() const { return si_; }
    static constexpr Self ofSi(double si) {
        Self self;
        self.si_ = si;
        return self;
    }
    friend constexpr Self operator+(Self a, Self b) { return ofSi(a.si() + b.si()); }
    friend constexpr Self operator-(Self a, Self b) { return ofSi(a.si() - b.si()); }
    friend constexpr Self operator-(Self a) { return ofSi(-a.si()); }
    friend constexpr Self operator*(Self a, double k) { return ofSi(a.si() * k); }
    friend constexpr Self operator*(double k, Self a) { return ofSi(a.si() * k); }
    friend constexpr Self operator/(Self a, double k) { return ofSi(a.si() / k); }
    friend constexpr double operator/(Self a, Self b) { return a.si() / b.si(); }
    friend constexpr Self& operator+=(Self& a, Self b) { return a = a + b; }
    friend constexpr Self& operator-=(Self& a, Self b) { return a = a - b; }
    friend constexpr auto operator<=>(Self a, Self b) { return a.si() <=> b.si(); }
    friend constexpr bool operator==(Self a, Self b) { return a.si() == b.si(); }

private:
    double si_ = 0;
};

// A step on the temperature scale: a rise, an offset, an error. Kelvin inside.
class TemperatureDifference : public Amount<TemperatureDifference> {
public:
    static constexpr TemperatureDifference kelvin(double k) { return ofSi(k); }
    static constexpr TemperatureDifference fahrenheit(double f) { return ofSi(f / 1.8); }
    constexpr double kelvin() const { return si(); }
    constexpr double fahrenheit() const { return si() * 1.8; }
};

// A point on the temperature scale, kept in kelvin (ITS-90). Two points differ; they do not add.
class Temperature {
public:
    static constexpr Temperature kelvin(double k) { return Temperature{k}; }
    static constexpr Temperature celsius(double c) { return Temperature{c + 273.15}; }
    static constexpr Temperature fahrenheit(double f) { return Temperature{(f + 459.67) / 1.8}; }
    constexpr double kelvin() const { return k_; }
    constexpr double celsius() const { return k_ - 273.15; }
    constexpr double fahrenheit() const { return k_ * 1.8 - 459.67; }
    friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
        return TemperatureDifference::kelvin(a.k_ - b.k_);
    }
    friend constexpr Temperature operator+(Temperature t, TemperatureDifference d) { return kelvin(t.k_ + d.kelvin()); }
    friend constexpr Temperature operator-(Temperature t, TemperatureDifference d) { return kelvin(t.k_ - d.kelvin()); }
    auto operator<=>(const Temperature&) const = default; // NOLINT(modernize-use-nullptr): clang-tidy 14 errs here

private:
    explicit constexpr Temperature(double k) : k_{k} {}
    double k_;
};

// Absolute or gauge as the name of the figure says. Pascal inside.
class Pressure : public Amount<Pressure> {
public:
    static constexpr double pascalPerInHg = 3386.389; // conventional inch of mercury, 0 degC
    static constexpr double pascalPerPsi = 6894.757293168361;
    static constexpr Pressure pascal(double p) { return ofSi(p); }
    static constexpr Pressure kilopascal(double p) { return ofSi(p * 1e3); }
    static constexpr Pressure hectopascal(double p) { return ofSi(p * 1e2); }
    static constexpr Pressure inchesOfMercury(double p) { return ofSi(p * pascalPerInHg); }
    static constexpr Pressure psi(double p) { return ofSi(p * pascalPerPsi); }
    constexpr double pascal() const { return si(); }
    constexpr double kilopascal() const { return si() / 1e3; }
    constexpr double hectopascal() const { return si() / 1e2; }
    constexpr double inchesOfMercury() const { return si() / pascalPerInHg; }
    constexpr double psi() const { return si() / pascalPerPsi; }
};

class Length : public Amount<Length> {
public:
    static constexpr Length metre(double m) { return ofSi(m); }
    static constexpr Length millimetre(double mm) { return ofSi(mm / 1e3); }
    static constexpr Length inch(double in) { return ofSi(in * 0.0254); }
    static constexpr Length foot(double ft) { return ofSi(ft * 0.3048); }
    constexpr double metre() const { return si(); }
    constexpr double millimetre() const { return si() * 1e3; }
    constexpr double inch() const { return si() / 0.0254; }
    constexpr double foot() const { return si() / 0.3048; }
};

class Area : public Amount<Area> {
public:
    static constexpr double squareMetrePerSquareFoot = 0.3048 * 0.3048;
    static constexpr Area squareMetre(double m2) { return ofSi(m2); }
    static constexpr Area squareFoot(double ft2) { return ofSi(ft2 * squareMetrePerSquareFoot); }
    constexpr double squareMetre() const { return si(); }
    constexpr double squareFoot() const { return si() / squareMetrePerSquareFoot; }
};

class Volume : public Amount<Volume> {
public:
    static constexpr double litresPerGallon = 3.785411784;     // US liquid gallon, exact
    static constexpr double litresPerImperialGallon = 4.54609; // exact
    static constexpr Volume cubicMetre(double m3) { return ofSi(m3); }
    static constexpr Volume litre(double l) { return ofSi(l / 1e3); }
    static constexpr Volume gallon(double gal) { return ofSi(gal * litresPerGallon / 1e3); }
    constexpr double cubicMetre() const { return si(); }
    constexpr double litre() const { return si() * 1e3; }
    constexpr double gallon() const { return si() * 1e3 / litresPerGallon; }
};

// A volume in a time. Cubic metre a second inside.
class VolumeFlow : public Amount<VolumeFlow> {
public:
    static constexpr VolumeFlow litrePerHour(double lph) { return ofSi(lph / 3.6e6); }
    static constexpr VolumeFlow gallonPerHour(double gph) { return ofSi(gph * Volume::litresPerGallon / 3.6e6); }
    constexpr double litrePerHour() const { return si() * 3.6e6; }
    constexpr double gallonPerHour() const { return si() * 3.6e6 / Volume::litresPerGallon; }
};

class Mass : public Amount<Mass> {
public:
    static constexpr double kilogramPerPound = 0.45359237; // avoirdupois, exact
    static constexpr Mass kilogram(double kg) { return ofSi(kg); }
    static constexpr Mass pound(double lb) { return ofSi(lb * kilogramPerPound); }
    constexpr double kilogram() const { return si(); }
    constexpr double pound() const { return si() / kilogramPerPound; }
};

class Density : public Amount<Density> {
public:
    static constexpr Density kilogramPerCubicMetre(double d) { return ofSi(d); }
    constexpr double kilogramPerCubicMetre() const { return si(); }
};

class Energy : public Amount<Energy> {
public:
    static constexpr Energy joule(double j) { return ofSi(j); }
    constexpr double joule() const { return si(); }
};

class Power : public Amount<Power> {
public:
    static constexpr Power watt(double w) { return ofSi(w); }
    constexpr double watt() const { return si(); }
};

// Energy for each kilogram: a heating value, a latent heat.
class SpecificEnergy : public Amount<SpecificEnergy> {
public:
    static constexpr SpecificEnergy joulePerKilogram(double j) { return ofSi(j); }
    static constexpr SpecificEnergy kilojoulePerKilogram(double kj) { return ofSi(kj * 1e3); }
    static constexpr SpecificEnergy megajoulePerKilogram(double mj) { return ofSi(mj * 1e6); }
    static constexpr SpecificEnergy btuPerPound(double btu) { return ofSi(btu * 2326); } // International Table, exact
    constexpr double kilojoulePerKilogram() const { return si() / 1e3; }
    constexpr double megajoulePerKilogram() const { return si() / 1e6; }
    constexpr double btuPerPound() const { return si() / 2326; }
};

// Heat that warms a kilogram by a kelvin.
class SpecificHeat : public Amount<SpecificHeat> {
public:
    static constexpr SpecificHeat kilojoulePerKilogramKelvin(double kj) { return ofSi(kj * 1e3); }
    constexpr double kilojoulePerKilogramKelvin() const { return si() / 1e3; }
};

class Voltage : public Amount<Voltage> {
public:
    static constexpr Voltage millivolt(double mv) { return ofSi(mv / 1e3); }
    constexpr double millivolt() const { return si() * 1e3; }
};

class Resistance : public Amount<Resistance> {
public:
    static constexpr Resistance ohm(double r) { return ofSi(r); }
    constexpr double ohm() const { return si(); }
};

// Dissolved sugar by mass: one degree Brix is one gram of sucrose in a hundred grams of solution. A mass fraction
// inside.
class Brix : public Amount<Brix> {
public:
    static constexpr Brix degrees(double b) { return ofSi(b / 100); }
    static constexpr Brix massFraction(double w) { return ofSi(w); }
    constexpr double degrees() const { return si() * 100; }
    constexpr double massFraction() const { return si(); }
};

// Time. The clock is the shift's own: it never jumps (the shift log names it `time`).
using Duration = std::chrono::duration<double>;
using Instant = std::chrono::sys_time<std::chrono::microseconds>;

constexpr Instant operator+(Instant t, Duration d) { return t + std::chrono::round<std::chrono::microseconds>(d); }
constexpr double seconds(Duration d) { return d.count(); }
constexpr double secondsBetween(Instant from, Instant to) { return static_cast<double>((to - from).count()) * 1e-6; }

constexpr Volume operator*(Area a, Length h) { return Volume::ofSi(a.si() * h.si()); }
constexpr Volume operator*(VolumeFlow f, Duration d) { return Volume::ofSi(f.si() * d.count()); }
constexpr VolumeFlow operator/(Volume v, Duration d) { return VolumeFlow::ofSi(v.si() / d.count()); }
constexpr Duration operator/(Volume v, VolumeFlow f) { return Duration{v.si() / f.si()}; }
constexpr Mass operator*(Density d, Volume v) { return Mass::ofSi(d.si() * v.si()); }
constexpr Volume operator/(Mass m, Density d) { return Volume::ofSi(m.si() / d.si()); }
constexpr Energy operator*(Power p, Duration d) { return Energy::ofSi(p.si() * d.count()); }
constexpr Energy operator*(SpecificEnergy e, Mass m) { return Energy::ofSi(e.si() * m.si()); }
constexpr SpecificEnergy operator*(SpecificHeat c, TemperatureDifference d) {
    return SpecificEnergy::ofSi(c.si() * d.si());
}
constexpr Power operator/(Energy e, Duration d) { return Power::ofSi(e.si() / d.count()); }

} // namespace panside
