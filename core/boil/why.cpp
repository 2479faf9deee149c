// Reasons in English words.
#include "core/boil/picture.h"
#include "core/quantity/enum_count.h"
#include "core/words/sentence.h"

#include <array>
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

struct WhyRow {
    Reason reason;
    std::string_view text; // %1: the amount, a span of time
};
constexpr auto whyRows = std::to_array<WhyRow>({
    {Reason::none, "no reason is known"},
    {Reason::silent, "nothing read for %1"},
    {Reason::stuck, "the same to the last digit for %1"},
    {Reason::jumping, "jumps too much to be believed"},
    {Reason::outsidePhysics, "outside what can be"},
    {Reason::tooFast, "changed faster than it can"},
    {Reason::inSteamOrFoam, "seems to stand in steam or foam"},
    {Reason::wrongUnit, "seems to come in another unit: degrees F or C?"},
    {Reason::touchingPan, "seems to touch the pan"},
    {Reason::outOfPan, "far under boiling water while the pan boils: probe out of the pan, or wet?"},
    {Reason::plugsExchanged, "the flue pan reads hotter than the syrup pan: plugs exchanged?"},
    {Reason::otherHeight, "no weather makes that pressure at this height: is it reduced to sea level?"},
    {Reason::noWeather, "no weather makes that pressure at this height: is it the unit, or the height?"},
    {Reason::notYetRead, "not read yet"},
    {Reason::noPressure, "no barometer and no water check"},
    {Reason::checkDoubted, "no barometer, and a water check in doubt until another agrees"},
    {Reason::noBarometer, "no barometer: water boils at the last water check"},
    {Reason::noElevation, "sea level pressure is known, the elevation is not"},
    {Reason::noPanReading, "no syrup pan reading"},
    {Reason::panReadingDoubtful, "the syrup pan reading is in doubt"},
    {Reason::noGradient, "the rise has not begun to climb"},
    {Reason::fireDying, "the fire is dying"},
    {Reason::drawing, "the draw is open"},
    {Reason::notDrawing, "the draw is shut"},
    {Reason::notLit, "the fire is not lit"},
    {Reason::tooFewDraws, "too few draws yet"},
    {Reason::stoppedFiring, "firing has stopped"},
    {Reason::noTankLevel, "no tank level"},
    {Reason::tooShort, "not watched for long enough"},
    {Reason::noLoadMass, "the mass of a load is not known"},
    {Reason::noPanArea, "the pan area is not known"},
    {Reason::noSapSugar, "the sugar of the sap is not known"},
    {Reason::notBoiling, "not boiling"},
    {Reason::shiftEnded, "the shift has ended"},
    {Reason::notReached, "more than one future in ten never gets there"},
    {Reason::tankRises, "the tank rises and no sap was entered"},
    {Reason::nearWater, "too near boiling water to tell its sugar"},
    {Reason::moreThanBoils, "the tank falls faster than pans of that size can boil: a leak, or sap let out?"},
    {Reason::noSapRunsIn, "no sap runs in: what boils off comes out of the pans"},
    {Reason::pastTables, "sweeter than the tables reach: over 78 brix"},
    {Reason::overfull, "far over the running depth: a float stuck open?"},
});
static_assert(hasCount<Reason, whyRows.size()>());
static_assert(inOrder(whyRows, &WhyRow::reason));

} // namespace

std::string whyText(const Why& why) {
    const auto at = static_cast<std::size_t>(why.reason);
    if (at >= whyRows.size())
        return {};
    const std::string_view text = whyRows[at].text;
    return text.find('%') == std::string_view::npos ? std::string{text} : filled(text, {span(why.amount)});
}

} // namespace panside
