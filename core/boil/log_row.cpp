// One row of the shift log into a fact, or what is wrong with it.
#include "core/boil/day_vocabulary.h"
#include "core/boil/detail.h"
#include "core/boil/log_limits.h"
#include "core/boil/picture.h"
#include "core/boil/place.h"
#include "core/boil/row_reader.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <vector>

namespace panside {
namespace {

Sentence yearsLike() { return range(std::to_string(firstYear), std::to_string(lastYear)); }

} // namespace

std::optional<double> RowReader::number(std::string_view field, std::string_view text) {
    const auto number = numberIn(text);
    if (number)
        return number;
    if (const auto together = writtenIn(text); together && field == "value" && row_.unit.empty())
        fail(Slip::unitInValue, field, text,
             say("%1 as the value and %2 as the unit",
                 {fmt::format("{}", together->number), std::string{nameOf(together->unit)}}));
    else
        fail(Slip::number, field, text);
    return number;
}

std::optional<Unit> RowReader::unit(auto takes, const Sentence& wanted) {
    if (row_.unit.empty()) {
        if (takes(Unit::none))
            return Unit::none;
        fail(Slip::unitMissing, "unit", "", wanted);
        return std::nullopt;
    }
    const auto unit = unitNamed(row_.unit);
    if (!unit)
        fail(Slip::unitUnknown, "unit", row_.unit, wanted);
    else if (!takes(*unit))
        fail(Slip::unitWrong, "unit", row_.unit, wanted);
    else
        return unit;
    return std::nullopt;
}

namespace {

// What was probably meant by a number that cannot be: the same in another of the units that may stand there.
std::string probablyMeant(double number, Unit unit, const Form& form) {
    for (const Unit other : form.units())
        if (other != unit && other != Unit::none && toSi(number, other) >= form.lowest &&
            toSi(number, other) <= form.highest)
            return fmt::format("{} {}", number, nameOf(other));
    if (toSi(number / 10, unit) >= form.lowest && toSi(number / 10, unit) <= form.highest)
        return fmt::format("{:.6g} {}", number / 10, nameOf(unit));
    return {};
}

} // namespace

void RowReader::checkRange(std::string_view field, std::string_view given, double value, Unit unit, const Form& form) {
    const double si = toSi(value, unit);
    // Half a last digit of a limit written in another unit is no fault.
    const double slack = 1e-9 * (form.highest - form.lowest);
    if (si < form.lowest - slack || si > form.highest + slack)
        fail(Slip::outOfRange, field, given, rangeBetween(form.lowest, form.highest, unit),
             probablyMeant(value, unit, form));
}

std::optional<Written> RowReader::value(const Form& form, bool required) {
    if (row_.value.empty()) {
        if (required)
            fail(Slip::valueMissing, "value", "", oneOf(form.units()));
        return std::nullopt;
    }
    const auto written = number("value", row_.value);
    const auto takes = [&form](Unit unit) {
        for (const Unit one : form.units())
            if (one == unit)
                return true;
        return false;
    };
    const auto in = written ? unit(takes, oneOf(form.units())) : std::nullopt;
    if (!in)
        return std::nullopt;
    checkRange("value", row_.value, *written, *in, form);
    return Written{*written, *in};
}

void RowReader::noValue() {
    if (!row_.value.empty())
        fail(Slip::valueUnwanted, "value", row_.value);
    else if (!row_.unit.empty())
        fail(Slip::unitWrong, "unit", row_.unit);
}

std::optional<Said<Temperature>> RowReader::temperature(std::string_view key, double lowest, double highest) {
    const auto given = detail_.use(key);
    if (!given)
        return std::nullopt;
    const auto written = writtenIn(*given);
    if (!written || dimensionOf(written->unit) != Dimension::temperature) {
        fail(Slip::detailValue, key, *given, aTemperature());
        return std::nullopt;
    }
    const Form form{
        {Unit::degC, Unit::degF}, Temperature::celsius(lowest).kelvin(), Temperature::celsius(highest).kelvin()};
    checkRange(key, *given, written->number, written->unit, form);
    return Said<Temperature>{Temperature::kelvin(written->si()), written->unit};
}

// A detail that has one unit only, which need not be written: brix=2.1, moisture=20.
std::optional<double> RowReader::plainOrIn(std::string_view key, Unit unit, double lowest, double highest) {
    const auto given = detail_.use(key);
    if (!given)
        return std::nullopt;
    auto plain = numberIn(*given);
    if (const auto written = writtenIn(*given); !plain && written && written->unit == unit)
        plain = written->number;
    if (!plain) {
        fail(Slip::detailValue, key, *given, say("a number of %1", {std::string{nameOf(unit)}}));
        return std::nullopt;
    }
    checkRange(key, *given, *plain, unit, Form{only(unit), lowest, highest});
    return toSi(*plain, unit);
}

What RowReader::reading(Series series) {
    const auto written = number("value", row_.value);
    const auto takes = [series](Unit unit) { return takesUnit(series, unit); };
    const auto wanted = [series] {
        std::vector<Unit> units;
        for (const Unit unit : {Unit::degC, Unit::degF, Unit::kPa, Unit::hPa, Unit::inHg, Unit::psi, Unit::mm, Unit::in,
                                Unit::L, Unit::gal, Unit::Lph, Unit::galph})
            if (takesUnit(series, unit))
                units.push_back(unit);
        return oneOf(units);
    };
    std::optional<Unit> in = unitNamed(row_.unit);
    if (!in || !takes(*in))
        in = unit(takes, wanted());
    if (!written || !in)
        return Reading{};
    Reading reading{series, toSi(*written, *in), *in, {}};
    // Nothing is colder than absolute zero, no air has less pressure than none, and no instrument counts so far that
    // its number can no longer be written in another unit. All else is for the engine to doubt.
    if (std::fabs(*written) > largestNumber)
        fail(Slip::outOfRange, "value", row_.value,
             range(fmt::format("{:.0f}", -largestNumber), fmt::format("{:.0f}", largestNumber), *in));
    const Dimension dimension = rowOf(series).dimension;
    const bool absolute =
        dimension == Dimension::temperature || (dimension == Dimension::pressure && series != Series::filter_pressure);
    if (absolute && reading.si < 0)
        fail(Slip::outOfRange, "value", row_.value,
             say("more than %1", {fmt::format("{:.6g} {}", fromSi(0, *in), nameOf(*in))}));
    if (!row_.detail.empty())
        reading.probe = text("probe");
    return reading;
}

What RowReader::fired() {
    Fired fired;
    fired.load = said<Mass>(value({{Unit::kg, Unit::lb}, 0, 400}, false));
    fired.wood = text("wood");
    if (const auto moisture = plainOrIn("moisture", Unit::percent, 0, 0.80))
        fired.moisture = WetBasis{*moisture};
    fired.fire = text("fire");
    if (const auto inferred = detail_.use("inferred")) {
        fired.inferred = *inferred == "yes";
        if (*inferred != "yes" && *inferred != "no")
            fail(Slip::detailValue, "inferred", *inferred, asWritten("yes"));
    }
    return fired;
}

What RowReader::densityCheck() {
    const bool baume = row_.unit == "baume";
    // What no syrup can be is kept too, and the engine does not learn from it: a log is refused for no slip of a glass.
    const Form brix{{Unit::brix, Unit::baume}, 0, 1};
    const Form degreesBaume{only(Unit::baume), 0, 80};
    const auto written = value(baume ? degreesBaume : brix, true);
    DensityCheck check{};
    check.reading = written ? written->number : 0;
    check.unit = written ? written->unit : Unit::brix;
    if (const auto with = detail_.use("with")) {
        if (*with == "refractometer")
            check.with = Instrument::refractometer;
        else if (*with != "hydrometer")
            fail(Slip::detailValue, "with", *with, say("%1 or %2", {"hydrometer", "refractometer"}));
    }
    check.cup = temperature("temp", -5, 110);
    check.scale = temperature("cal", 0, 105);
    if (const auto drawn = detail_.use("drawn")) {
        check.drawn = instantIn(*drawn);
        if (!check.drawn || !isInYears(*check.drawn))
            fail(Slip::detailValue, "drawn", *drawn, timeLike());
    }
    return check;
}

What RowReader::sapIn() {
    SapIn sap{};
    if (const auto volume = said<Volume>(value({volumeUnits, 0, 100}, false)))
        sap.volume = *volume;
    else if (row_.value.empty())
        sap.all = true;
    if (const auto sugar = plainOrIn("brix", Unit::brix, 0, 0.50))
        sap.sugar = Brix::ofSi(*sugar);
    sap.temperature = temperature("temp", -10, 100);
    sap.scale = temperature("cal", 0, 105);
    sap.from = text("from");
    // Nobody can know how much all of it is where nobody says of what.
    if (sap.all && sap.from.empty())
        fail(Slip::valueMissing, "value", "", oneOf(volumeUnits));
    return sap;
}

What RowReader::crew() {
    noValue();
    return Crew{text("off")};
}

What RowReader::alarm(bool shelved) {
    std::optional<Written> minutes;
    if (shelved)
        minutes = value({only(Unit::min), 0, 43200}, true);
    else
        noValue();
    std::string name = text("name");
    if (name.empty())
        fail(Slip::detailPair, "detail", row_.detail, say("name=ALARM"));
    if (!shelved)
        return AlarmSeen{std::move(name)};
    return AlarmShelved{std::move(name), Duration{minutes ? minutes->si() : 0}};
}

What RowReader::set() {
    const std::string name = text("key");
    if (name.empty())
        fail(Slip::detailPair, "detail", row_.detail, say("key=SETTING"));
    const auto key = settingNamed(name);
    if (!key)
        return asUnknown();
    if (isWords(*key))
        return setWords(*key);
    const SettingRow& setting = panside::rowOf(*key);
    const auto takes = [key](Unit unit) { return takesUnit(*key, unit); };
    Form form{only(setting.exported), setting.lowest, setting.highest};
    for (int i = 0; i < unitCount; ++i)
        if (const auto one = static_cast<Unit>(i); one != setting.exported && takes(one))
            form.add(one);
    const Sentence wanted = oneOf(form.units());
    if (row_.value.empty()) {
        fail(Slip::valueMissing, "value", "", wanted);
        return Set{};
    }
    const auto written = number("value", row_.value);
    const bool years = *key == Setting::kept_for && row_.unit.empty();
    const auto in = !written ? std::nullopt : years ? std::optional{Unit::years} : unit(takes, wanted);
    if (!in)
        return Set{};
    checkRange("value", row_.value, *written, *in, form);
    return Set{*key, toSi(*written, *in), *in};
}

What RowReader::setWords(Setting key) {
    if (row_.value.empty())
        fail(Slip::valueMissing, "value", "", asWritten(key == Setting::place ? "Vermont" : "words"));
    else if (!row_.unit.empty())
        fail(Slip::unitWrong, "unit", row_.unit);
    Set set{key, 0, Unit::none, std::string{row_.value}};
    if (key == Setting::place) {
        const auto place = placeNamed(row_.value);
        if (!place && !fault_)
            fail(Slip::placeUnknown, "value", row_.value, asWritten(std::string{placeLike(row_.value)}));
        set.si = static_cast<double>(place.value_or(0));
    }
    return set;
}

std::optional<What> RowReader::what() {
    const auto plain = [this](What what) {
        noValue();
        return what;
    };
    const std::string_view name = row_.what;
    if (name == "lit")
        return plain(Lit{});
    if (name == "fired")
        return fired();
    if (name == "draw_open")
        return plain(DrawOpened{});
    if (name == "draw_close") {
        const auto volume = said<Volume>(value({volumeUnits, 0, 2}, false));
        DrawClosed closed{volume, text("to")};
        closed.temperature = temperature("temp", -5, 115);
        return closed;
    }
    if (name == "density_check")
        return densityCheck();
    if (name == "water_check") {
        // Plain water boils between 83 and 101 degC in any sugarhouse; a careless probe is a few degrees off.
        const auto boiled = said<Temperature>(value({{Unit::degC, Unit::degF}, 343.15, 383.15}, true));
        return WaterCheck{boiled.value_or(Said<Temperature>{Temperature::kelvin(0), Unit::degC}), text("probe")};
    }
    if (name == "sap_in")
        return sapIn();
    if (name == "pan_swapped")
        return plain(PanSwapped{});
    if (name == "defoamer") {
        const auto drops = value({only(Unit::none), 0, 10000}, false);
        return Defoamer{drops ? std::optional{drops->number} : std::nullopt, text("kind")};
    }
    if (name == "crew")
        return crew();
    if (name == "shutdown")
        return plain(Shutdown{});
    if (name == "shift_end")
        return plain(ShiftEnd{});
    if (name == "alarm_seen" || name == "alarm_shelved")
        return alarm(name == "alarm_shelved");
    if (name == "clock_step") {
        const auto by = value({only(Unit::s), -1e11, 1e11}, true);
        return ClockStep{Duration{by ? by->number : 0}};
    }
    if (name == "set")
        return set();
    if (const auto deed = deedNamed(name))
        return day(*deed);
    return std::nullopt;
}

std::variant<Fact, Fault> RowReader::read(std::optional<Instant> now) {
    const auto at = row_.time.empty() && now ? now : instantIn(row_.time);
    if (!at)
        return Fault{Slip::time, 0, 0, "time", std::string{row_.time}, timeLike()};
    if (!isInYears(*at))
        return Fault{Slip::outOfRange, 0, 0, "time", std::string{row_.time}, yearsLike()};
    Fact fact{*at, Unknown{}};
    if (row_.what.empty())
        return Fault{Slip::valueMissing, 0, 0, "what", "", say("a reading or an event")};
    if (row_.what == "note") {
        noValue();
        if (fault_)
            return *fault_;
        NoteDetail note = noteIn(row_.detail);
        fact.what = Note{std::move(note.text)};
        fact.by = std::move(note.by);
        fact.entered = instantIn(note.entered);
        if (fact.entered && !isInYears(*fact.entered))
            return Fault{Slip::detailValue, 0, 0, "entered", note.entered, timeLike()};
        return fact;
    }
    const auto series = seriesNamed(row_.what);
    if (!row_.detail.empty()) {
        // Of a row that this version does not know the detail is none of our business.
        if (const auto bad = detail_.read(row_.detail))
            fail(Slip::detailPair, "detail", *bad, say("key=value, each key once, with ; between"));
    }
    if (series && row_.value.empty()) {
        // The probe was asked and gave nothing: no reading, kept as it was written.
        fact.what = asUnknown();
        if (fault_)
            return std::move(*fault_);
        return fact;
    }
    if (series) {
        fact.what = reading(*series);
    } else if (auto event = what()) {
        fact.what = std::move(*event);
    } else {
        fact.what = asUnknown();
        return fact;
    }
    if (std::holds_alternative<Unknown>(fact.what) && !fault_)
        return fact;
    if (!row_.detail.empty()) {
        fact.by = text("by");
        if (const auto entered = detail_.use("entered")) {
            fact.entered = instantIn(*entered);
            if (!fact.entered || !isInYears(*fact.entered))
                fail(Slip::detailValue, "entered", *entered, timeLike());
        }
        fact.extra = detail_.rest();
    }
    if (const auto* crew = std::get_if<Crew>(&fact.what); crew && crew->off.empty() && fact.by.empty())
        fail(Slip::detailPair, "detail", row_.detail, say("by=NAME or off=NAME"));
    if (fault_)
        return std::move(*fault_);
    return fact;
}

std::variant<Fact, Fault> factOf(std::string_view time, std::string_view what, std::string_view value,
                                 std::string_view unit, std::string_view detail, std::optional<Instant> now) {
    const LogFields row{time, what, value, unit, detail};
    return RowReader{row}.read(now);
}

} // namespace panside
