// Reasons in English words.
#include "core/boil/picture.h"

#include <fmt/format.h>

namespace panside {
namespace {

std::string span(double seconds) {
    if (seconds < 120)
        return fmt::format("{:.0f} s", seconds);
    if (seconds < 7200)
        return fmt::format("{:.0f} min", seconds / 60);
    return fmt::format("{:.0f} h", seconds / 3600);
}

} // namespace

std::string whyText(const Why& why) {
    switch (why.reason) {
    case Reason::none:
        return "no reason is known";
    case Reason::silent:
        return "nothing read for " + span(why.amount);
    case Reason::stuck:
        return "the same to the last digit for " + span(why.amount);
    case Reason::jumping:
        return "jumps too much to be believed";
    case Reason::outsidePhysics:
        return "outside what can be";
    case Reason::tooFast:
        return "changed faster than it can";
    case Reason::inSteamOrFoam:
        return "seems to stand in steam or foam";
    case Reason::wrongUnit:
        return "seems to come in another unit: degrees F or C?";
    case Reason::outOfPan:
        return "far under boiling water while the pan boils: probe out of the pan, or wet?";
    case Reason::otherHeight:
        return "no weather makes that pressure at this height: is it reduced to sea level?";
    case Reason::touchingPan:
        return "seems to touch the pan";
    case Reason::notYetRead:
        return "not read yet";
    case Reason::noPressure:
        return "no barometer and no water check";
    case Reason::checkDoubted:
        return "no barometer, and a water check in doubt until another agrees";
    case Reason::noBarometer:
        return "no barometer: water boils at the last water check";
    case Reason::noElevation:
        return "sea level pressure is known, the elevation is not";
    case Reason::noPanReading:
        return "no syrup pan reading";
    case Reason::panReadingDoubtful:
        return "the syrup pan reading is in doubt";
    case Reason::noGradient:
        return "the rise has not begun to climb";
    case Reason::fireDying:
        return "the fire is dying";
    case Reason::drawing:
        return "the draw is open";
    case Reason::notDrawing:
        return "the draw is shut";
    case Reason::notLit:
        return "the fire is not lit";
    case Reason::tooFewDraws:
        return "too few draws yet";
    case Reason::stoppedFiring:
        return "firing has stopped";
    case Reason::noTankLevel:
        return "no tank level";
    case Reason::tooShort:
        return "not watched for long enough";
    case Reason::noLoadMass:
        return "the mass of a load is not known";
    case Reason::noPanArea:
        return "the pan area is not known";
    case Reason::noSapSugar:
        return "the sugar of the sap is not known";
    case Reason::notBoiling:
        return "not boiling";
    case Reason::shiftEnded:
        return "the shift has ended";
    case Reason::notReached:
        return "more than one future in ten never gets there";
    case Reason::nearWater:
        return "too near boiling water to tell its sugar";
    case Reason::moreThanBoils:
        return "the tank falls faster than pans of that size can boil: a leak, or sap let out?";
    case Reason::noSapRunsIn:
        return "no sap runs in: what boils off comes out of the pans";
    case Reason::overfull:
        return "far over the running depth: a float stuck open?";
    case Reason::tankRises:
        return "the tank rises and no sap was entered";
    }
    return {};
}

} // namespace panside
