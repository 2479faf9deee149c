#include "core/physics/reckon.h"

#include "core/physics/reckon_kinds.h"

#include <array>

namespace panside::sums {
namespace {

constexpr Parameter stationPressure{"pressure", "station pressure, as a barometer at the pan reads it", "98.7kPa"};
constexpr Parameter seaLevel{"sea-level", "mean sea level pressure of a weather report", "1016hPa"};
constexpr Parameter altimeter{"altimeter", "altimeter setting of an airfield", "30.05inHg"};
constexpr Parameter elevation{"elevation", "elevation of the pan, with --sea-level or --altimeter", "300m"};
constexpr Parameter outsideAir{"air", "outside air, with --sea-level (0 degC if left out)", "-2degC"};

constexpr std::array boilingParameters{stationPressure, seaLevel, altimeter, elevation, outsideAir};
constexpr std::array targetParameters{stationPressure,
                                      seaLevel,
                                      altimeter,
                                      elevation,
                                      outsideAir,
                                      Parameter{"density", "density of the syrup", "66.9brix"},
                                      Parameter{"rise", "how far it boils above water", "7.2degF"}};
constexpr std::array densityParameters{Parameter{"density", "sugar of the solution", "66.9brix", true},
                                       Parameter{"temp", "its temperature", "20degC", true}};
constexpr std::array refractionParameters{Parameter{"index", "refractive index as read", "1.4580"},
                                          Parameter{"temp", "temperature of the prism", "18degC"},
                                          Parameter{"density", "sugar of the solution", "66.9brix"}};
constexpr std::array baumeParameters{
    Parameter{"density", "sugar of the solution", "66.9brix"},
    Parameter{"baume", "reading of the Baume scale", "36baume"},
    Parameter{"cal", "temperature that the scale was made for (20degC if left out)", "60degF"}};
constexpr std::array cupParameters{Parameter{"reading", "what the hydrometer shows", "59.1brix", true},
                                   Parameter{"temp", "temperature in the cup", "211degF", true},
                                   Parameter{"cal", "temperature that its scale was made for", "60degF", true},
                                   Parameter{"volume", "how much syrup there is", "10gal"},
                                   Parameter{"target", "density wanted (66.9brix if left out)", "66.9brix"},
                                   Parameter{"sap", "sugar of what thins it (plain water if left out)", "2brix"}};
constexpr std::array sapParameters{Parameter{"sap", "sugar of the sap", "2brix", true},
                                   Parameter{"density", "density of the syrup", "66.9brix", true},
                                   Parameter{"volume", "how much syrup is wanted", "5gal"}};
constexpr std::array blendParameters{Parameter{"part", "volume and density of a part", "10gal@68.9brix", true, true}};
constexpr std::array thermocoupleParameters{
    Parameter{"type", "K, J or T", "K", true}, Parameter{"mv", "voltage as measured", "4.096mV"},
    Parameter{"temp", "temperature", "104.2degC"},
    Parameter{"junction", "temperature of its other end (0degC if left out)", "22degC"}};
constexpr std::array platinumParameters{Parameter{"ohm", "resistance", "139.9ohm"},
                                        Parameter{"temp", "temperature", "104.2degC"}};
constexpr std::array woodParameters{Parameter{"wood", "species, or hardwood, or softwood", "sugar-maple", true},
                                    Parameter{"moisture", "water over the whole mass (wet basis)", "20percent", true}};
constexpr std::array shutdownParameters{Parameter{"area", "area of the pans", "24ft2", true},
                                        Parameter{"depth", "depth to add before the fire is left", "2in", true},
                                        Parameter{"rate", "water boiled off at full fire", "60gal/h", true},
                                        Parameter{"burn-out", "from the last load to a dead fire", "45min", true}};
constexpr std::array fillParameters{Parameter{"size", "what the container is to hold", "1pt", true},
                                    Parameter{"density", "density of the syrup", "66.9brix", true},
                                    Parameter{"at", "temperature the size is meant at (20degC if left out)", "20degC"}};
constexpr std::array containersParameters{Parameter{"volume", "how much syrup there is, at 20 degC", "37gal", true},
                                          Parameter{"density", "density of the syrup", "66.9brix", true},
                                          Parameter{"size", "a size of container", "1pt", true, true}};
constexpr std::array colourParameters{
    Parameter{"part", "volume of a part and the light it lets through", "10gal@62percent", true, true}};
constexpr std::array concentrateParameters{Parameter{"sap", "volume and sugar of the sap", "800gal@2brix", true},
                                           Parameter{"to", "sugar of the concentrate", "8brix", true}};
constexpr std::array sapScaleParameters{Parameter{"reading", "what the sap hydrometer shows", "2.3brix", true},
                                        Parameter{"temp", "temperature of the sap", "60degF", true},
                                        Parameter{"cal", "temperature that its scale was made for", "38degF", true}};
constexpr std::array tonightParameters{
    Parameter{"stand", "volume and sugar of what stands in a tank", "450gal@2brix", true, true},
    Parameter{"rate", "water boiled off at full fire", "60gal/h", true},
    Parameter{"light", "when it is lit", "16:30"},
    Parameter{"cold", "when the fire is to be cold", "23:00"},
    Parameter{"concentrate", "sugar to which it may be concentrated first", "8brix"},
    Parameter{"keep", "sap to keep back for the burning out", "50gal"},
    Parameter{"burn-out", "from the last load to a dead fire (45min if left out)", "45min"},
    Parameter{"density", "density of the syrup (66.9brix if left out)", "66.9brix"}};
constexpr std::array runParameters{Parameter{"night", "coldest of the night", "22degF", true},
                                   Parameter{"day", "warmest of the day", "45degF", true},
                                   Parameter{"taps", "how many taps", "300"}};

constexpr std::array kinds{Kind{"boiling", "Where water boils", boilingParameters, reckonBoiling},
                           Kind{"target", "Where syrup boils", targetParameters, reckonTarget},
                           Kind{"cup", "Hydrometer in a hot cup", cupParameters, reckonCup},
                           Kind{"sap", "Sap for syrup", sapParameters, reckonSap},
                           Kind{"blend", "Blend", blendParameters, reckonBlend},
                           Kind{"density", "Weight of a liter", densityParameters, reckonDensity},
                           Kind{"refraction", "Refractometer", refractionParameters, reckonRefraction},
                           Kind{"baume", "Baumé", baumeParameters, reckonBaume},
                           Kind{"wood", "Firewood", woodParameters, reckonWood},
                           Kind{"shutdown", "Sap to keep back", shutdownParameters, reckonShutdown},
                           Kind{"thermocouple", "Thermocouple", thermocoupleParameters, reckonThermocouple},
                           Kind{"rtd", "Platinum probe", platinumParameters, reckonPlatinum},
                           Kind{"fill", "Weight to fill", fillParameters, reckonFill},
                           Kind{"containers", "What a drum gives", containersParameters, reckonContainers},
                           Kind{"colour", "Color of a blend", colourParameters, reckonColour},
                           Kind{"concentrate", "Concentrating sap", concentrateParameters, reckonConcentrate},
                           Kind{"sapscale", "Sap hydrometer", sapScaleParameters, reckonSapScale},
                           Kind{"tonight", "Tonight", tonightParameters, reckonTonight},
                           Kind{"run", "Tomorrow's run", runParameters, reckonRun}};

} // namespace

std::span<const Kind> reckonKinds() { return kinds; }

Outcome reckon(std::string_view kind, const Arguments& arguments) {
    for (const Kind& one : kinds)
        if (one.name == kind)
            return outcomeOf([&]() -> Outcome {
                Reader in{one, arguments};
                return one.sum(in);
            });
    return Refusal{true, {}, std::string{kind}, {say("there is no such sum.")}};
}

} // namespace panside::sums
