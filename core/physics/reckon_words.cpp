#include "core/physics/reckon_words.h"

#include <array>
#include <charconv>
#include <utility>

namespace panside::sums {
namespace {

std::string written(double value, std::chars_format format, int precision) {
    std::array<char, 400> room{};
    const auto result = std::to_chars(room.data(), room.data() + room.size(), value, format, precision);
    return {room.data(), result.ptr};
}

// A difference is told from a point by C° in place of °C, so that whoever turns it into °F does not add 32. People read
// °C.
std::string asDegrees(std::string text) {
    for (const auto& [difference, point] : {std::pair{"C°", "°C"}, {"F°", "°F"}})
        for (std::size_t at = text.find(difference); at != std::string::npos; at = text.find(difference, at))
            text.replace(at, std::string_view{difference}.size(), point);
    return text;
}

} // namespace

std::string asRead(const Sentence& sentence) { return asDegrees(panside::english(sentence)); }

std::string number(double value, int decimals) {
    std::string text = written(value, std::chars_format::fixed, decimals);
    if (text.find_first_of("123456789") == std::string::npos && text.front() == '-')
        text.erase(0, 1);
    return text;
}

std::string plain(double value, int digits) { return written(value, std::chars_format::general, digits); }

Sentence sayTemperature(Temperature t) {
    return say("%1 °C (%2 °F)", {number(t.celsius(), 2), number(t.fahrenheit(), 1)});
}
Sentence sayDifference(TemperatureDifference d) {
    return say("%1 C° (%2 F°)", {number(d.kelvin(), 2), number(d.fahrenheit(), 2)});
}
Sentence sayPressure(Pressure p) {
    return say("%1 kPa (%2 inHg)", {number(p.kilopascal(), 2), number(p.inchesOfMercury(), 2)});
}
Sentence sayVolume(Volume v) {
    const double litre = v.litre(), gallon = v.gallon();
    if (gallon >= 1 || gallon <= 0)
        return say("%1 L (%2 gal)", {number(litre, 2), number(gallon, 2)});
    if (gallon >= 0.25)
        return say("%1 L (%2 qt)", {number(litre, 2), number(gallon * 4, 2)});
    if (gallon >= 0.125)
        return say("%1 mL (%2 pt)", {number(litre * 1e3, 0), number(gallon * 8, 2)});
    return say("%1 mL (%2 cups)", {number(litre * 1e3, 0), number(gallon * 16, 2)});
}
Sentence sayMass(Mass m) { return say("%1 kg (%2 lb)", {number(m.kilogram(), 0), number(m.pound(), 0)}); }
Sentence saySugar(Brix b) { return say("%1 °Brix", {number(b.degrees(), 2)}); }

Sentence meantInstead(Brix sap) {
    return say("No tree gives sap of %1 °Brix. Did you mean %2?",
               {number(sap.degrees(), 1), number(sap.degrees() / 10, 1)});
}

} // namespace panside::sums
