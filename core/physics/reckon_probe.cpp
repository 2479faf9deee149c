// Sums of the probes.
#include "core/physics/platinum.h"
#include "core/physics/reckon_kinds.h"
#include "core/physics/thermocouple.h"

#include <cmath>

namespace panside::sums {
namespace {

constexpr std::string_view trimIt =
    "No probe finishes syrup untrimmed: set it to zero in plain boiling water of the day, then against the hydrometer.";

struct Wire {
    std::string_view name;
    Thermocouple type;
    double coldest, hottest; // degC
    double tolerance;        // K near 100 degC, class 2
};
constexpr Wire wires[] = {{"K", Thermocouple::K, -200, 1372, 2.2},
                          {"J", Thermocouple::J, -210, 760, 2.2},
                          {"T", Thermocouple::T, -200, 400, 1.0}};

const Wire& wireOf(Reader& in) {
    const std::string given = in.text("type");
    for (const Wire& wire : wires)
        if (given == wire.name || (given.size() == 1 && given[0] == wire.name[0] - 'A' + 'a'))
            return wire;
    in.refuse("type", given, {say("the types known are K, J and T.")});
}

Answer thermocoupleAnswer(const Wire& wire, Temperature hot, Voltage voltage, Sentence step) {
    return {
        .figures = {{"temperatureC", hot.celsius(), "Temperature", sayTemperature(hot)},
                    {"mv", voltage.millivolt(), "Voltage", say("%1 mV", {number(voltage.millivolt(), 4)})}},
        .sum = {std::move(step)},
        .uncertainty = say(
            "Wire of class 2 is within %1 C° near 100 °C, or 0.75 percent if that is more; the sum itself is exact.",
            {number(wire.tolerance, 1)}),
        .source = "IEC 60584-1:2013; NIST Monograph 175 (ITS-90)",
        .caution = trimIt};
}

} // namespace

Answer reckonThermocouple(Reader& in) {
    in.oneOf("mv", "temp", say("give one of --mv and --temp."));
    const Wire& wire = wireOf(in);
    const Temperature junction = in.has("junction") ? in.temperature("junction", -40, 125) : Temperature::celsius(0);
    if (in.has("temp")) {
        const Temperature hot = in.temperature("temp", wire.coldest, wire.hottest);
        const auto voltage = *thermocoupleVoltage(wire.type, hot, junction);
        return thermocoupleAnswer(
            wire, hot, voltage,
            say("The emf of %1 °C less that of the junction at %2 °C is %3 mV.",
                {number(hot.celsius(), 2), number(junction.celsius(), 2), number(voltage.millivolt(), 4)}));
    }
    const auto measured = in.amount<Voltage>("mv", {-10000, 10000, Unit::mV});
    const auto hot = thermocoupleTemperature(wire.type, measured, junction);
    if (!hot)
        in.refuse(
            "mv", in.text("mv"),
            {say("type %1 gives no such voltage from %2 to %3 °C. Is the pair open or reversed, the type right, the "
                 "voltage in millivolts?",
                 {std::string{wire.name}, plain(wire.coldest), plain(wire.hottest)})});
    return thermocoupleAnswer(
        wire, *hot, measured,
        say("%1 mV and the emf of the junction at %2 °C together are the emf of %3 °C.",
            {number(measured.millivolt(), 4), number(junction.celsius(), 2), number(hot->celsius(), 2)}));
}

Answer reckonPlatinum(Reader& in) {
    in.oneOf("ohm", "temp", say("give one of --ohm and --temp."));
    std::optional<Temperature> temperature;
    std::optional<Resistance> resistance;
    if (in.has("temp")) {
        temperature = in.temperature("temp", -200, 850);
        resistance = platinumResistance(*temperature);
    } else {
        resistance = in.amount<Resistance>("ohm", {18.52, 390.48, Unit::ohm});
        temperature = platinumTemperature(*resistance);
    }
    if (!temperature)
        in.refuse("ohm", in.text("ohm"), {say("that is outside -200 to 850 °C.")});
    const double t = std::abs(temperature->celsius());
    return {.figures = {{"temperatureC", temperature->celsius(), "Temperature", sayTemperature(*temperature)},
                        {"ohm", resistance->ohm(), "Resistance", say("%1 ohm", {number(resistance->ohm(), 3)})}},
            .sum = {say("100 ohm at 0 °C; %1 ohm at %2 °C.",
                        {number(resistance->ohm(), 3), number(temperature->celsius(), 2)})},
            .uncertainty = say(
                "An element of class A is within %1 C° here, of class B within %2 C°; 0.38 ohm in the leads is 1 °C.",
                {number(0.15 + 0.002 * t, 2), number(0.30 + 0.005 * t, 2)}),
            .source = "IEC 60751:2008",
            .caution = trimIt};
}

} // namespace panside::sums
