#pragma once
// Reads the arguments of a sum and remembers the first thing that is wrong with them, naming the likely slip.
#include "core/physics/reckon.h"
#include "core/quantity/unit.h"

namespace panside::sums {

// What an argument may be, told in one unit.
struct Span {
    double low, high;
    Unit unit;
};

class Reader {
public:
    Reader(const Kind& kind, const Arguments& arguments);

    bool has(std::string_view name) const;
    // All that was given under a name.
    std::vector<std::string> all(std::string_view name) const;
    // As written; refuses if it is missing.
    std::string text(std::string_view name);

    // The argument's amount within its span; a refusal is remembered and nullopt returned if it is none.
    std::optional<Temperature> temperature(std::string_view name, double lowCelsius, double highCelsius);
    std::optional<TemperatureDifference> difference(std::string_view name, double highKelvin);
    std::optional<Pressure> pressure(std::string_view name, double lowKilopascal, double highKilopascal);
    // brix or baume; the latter on a scale made for that temperature.
    std::optional<Brix> sugar(std::string_view name, Temperature scale, double most = 75); // brix
    std::optional<Brix> sugarIn(std::string_view name, std::string_view written, Temperature scale, double most = 75);
    template <class Quantity>
    std::optional<Quantity> amount(std::string_view name, Span span) {
        const auto si = siOf(name, text(name), span);
        return si ? std::optional{Quantity::ofSi(*si)} : std::nullopt;
    }
    std::optional<double> siOf(std::string_view name, std::string_view written, Span span);
    std::optional<double> bareNumber(std::string_view name, double low, double high);

    const Arguments& given() const { return arguments_; }

    bool refused() const { return refusal_.has_value(); }
    Refusal refusal() const { return *refusal_; }
    // Remembers a refusal, unless there is one already.
    void refuse(std::string_view name, std::string_view given, std::vector<Sentence> why);
    void refuseUsage(std::string_view name, std::vector<Sentence> why);

private:
    std::optional<Written> writtenAmount(std::string_view name, std::string_view text, Span span);
    std::string_view exampleOf(std::string_view name) const;

    const Kind& kind_;
    const Arguments& arguments_;
    std::optional<Refusal> refusal_;
};

} // namespace panside::sums
