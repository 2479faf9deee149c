#pragma once
// Reads the arguments of a sum. The first thing that is wrong with them, with the likely slip, ends it: outcomeOf makes
// a value of that again, for whoever asked.
#include "core/physics/reckon.h"
#include "core/quantity/unit.h"

namespace panside::sums {

// What an argument may be, told in one unit.
struct Span {
    double low, high;
    Unit unit;
};

struct Refused {
    Refusal why;
};
template <class Sum>
Outcome outcomeOf(Sum&& sum) {
    try {
        return sum();
    } catch (const Refused& refused) {
        return refused.why;
    }
}

class Reader { // each of these throws Refused
public:
    Reader(const Kind& kind, const Arguments& arguments);

    bool has(std::string_view name) const;
    // All that was given under a name.
    std::vector<std::string> all(std::string_view name) const;
    // As written.
    std::string text(std::string_view name) const;

    // The argument's amount within its span.
    Temperature temperature(std::string_view name, double lowCelsius, double highCelsius) const;
    TemperatureDifference difference(std::string_view name, double highKelvin) const;
    Pressure pressure(std::string_view name, double lowKilopascal, double highKilopascal) const;
    // brix or baume; the latter on a scale made for that temperature.
    Brix sugar(std::string_view name, Temperature scale, double most = 75) const; // brix
    Brix sugarIn(std::string_view name, std::string_view written, Temperature scale, double most = 75) const;
    template <class Quantity>
    Quantity amount(std::string_view name, Span span) const {
        return Quantity::ofSi(siOf(name, text(name), span));
    }
    double siOf(std::string_view name, std::string_view written, Span span) const;
    double bareNumber(std::string_view name, double low, double high) const;
    // A volume up to so many litres, and what stands behind the @; `wanted` says what is wrong where there is none.
    struct VolumeOf {
        Volume volume;
        std::string rest;
    };
    VolumeOf volumeOf(std::string_view name, const std::string& written, double mostLitres, Sentence wanted) const;
    // Just one of the two must be given.
    void oneOf(std::string_view name, std::string_view other, Sentence wanted) const;

    const Arguments& given() const { return arguments_; }

    [[noreturn]] static void refuse(std::string_view name, std::string_view given, std::vector<Sentence> why);
    [[noreturn]] static void refuseUsage(std::string_view name, std::vector<Sentence> why);

private:
    Written writtenAmount(std::string_view name, std::string_view text, Span span) const;
    std::string_view exampleOf(std::string_view name) const;

    const Kind& kind_;
    const Arguments& arguments_;
};

} // namespace panside::sums
