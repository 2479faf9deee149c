#include "core/physics/reckon_reader.h"

#include "core/physics/baume.h"
#include "core/physics/range.h"

#include <algorithm>

namespace panside::sums {
namespace {

std::vector<Unit> unitsLike(Unit like) {
    std::vector<Unit> units;
    for (int i = 1; i < unitCount; ++i)
        if (dimensionOf(static_cast<Unit>(i)) == dimensionOf(like))
            units.push_back(static_cast<Unit>(i));
    return units;
}

std::string namesOfUnitsLike(Unit like) {
    std::string names;
    for (const Unit unit : unitsLike(like)) {
        if (!names.empty())
            names += ", ";
        names += nameOf(unit);
    }
    return names;
}

std::string withoutBlanks(std::string_view text) {
    std::string plainText{text};
    std::erase(plainText, ' ');
    return plainText;
}

bool inside(double number, Unit unit, Span span) {
    return within(fromSi(toSi(number, unit), span.unit), span.low, span.high);
}

// The end of a span in another unit, for a message.
std::string endIn(Unit unit, double end, Unit of) { return plain(fromSi(toSi(end, of), unit), 4); }

// What stands there instead of an amount.
std::vector<Sentence> whyNoAmount(std::string_view text, Span span, std::string_view example) {
    const Unit like = span.unit;
    const std::string example_{example};
    if (text.empty())
        return {say("nothing stands there. Write a number and its unit together, as in %1.", {example_})};
    if (const auto value = numberIn(text)) {
        std::vector<Sentence> why{say("the number has no unit. Write them together, as in %1; units: %2.",
                                      {example_, namesOfUnitsLike(like)})};
        for (const Unit unit : unitsLike(like))
            if (inside(*value, unit, span)) {
                why.push_back(say("Did you mean %1%2?", {plain(*value), std::string{nameOf(unit)}}));
                break;
            }
        return why;
    }
    if (text.find(',') != std::string_view::npos)
        return {say("that is not a number. Write a point, not a comma, as in %1.", {example_})};
    const std::size_t end = text.find_first_not_of("+-0123456789.");
    if (end == 0 || end == std::string_view::npos)
        return {say("that is not an amount. Write a number and its unit together, as in %1.", {example_})};
    return {say("there is no unit %1. Write one of %2 (capitals count), as in %3.",
                {std::string{text.substr(end)}, namesOfUnitsLike(like), example_})};
}

} // namespace

Reader::Reader(const Kind& kind, const Arguments& arguments) : kind_{kind}, arguments_{arguments} {
    for (const auto& argument : arguments) {
        const std::string& name = argument.first;
        const auto known = std::ranges::find(kind.parameters, name, &Parameter::name);
        if (known == kind.parameters.end())
            refuseUsage(name, {say("this sum has no such argument.")});
        else if (!known->many && all(name).size() > 1)
            refuseUsage(name, {say("it is given twice.")});
    }
    for (const Parameter& parameter : kind.parameters)
        if (parameter.needed && !has(parameter.name))
            refuseUsage(parameter.name, {say("it is needed: %1, as in %2.",
                                             {std::string{parameter.meaning}, std::string{parameter.example}})});
}

bool Reader::has(std::string_view name) const {
    return std::ranges::any_of(arguments_, [&](const auto& one) { return one.first == name; });
}

std::vector<std::string> Reader::all(std::string_view name) const {
    std::vector<std::string> found;
    for (const auto& [given, text] : arguments_)
        if (given == name)
            found.push_back(text);
    return found;
}

std::string Reader::text(std::string_view name) const {
    const auto found = all(name);
    if (found.empty())
        refuseUsage(name, {say("it is needed here, as in %1.", {std::string{exampleOf(name)}})});
    return found.front();
}

std::string_view Reader::exampleOf(std::string_view name) const {
    for (const Parameter& parameter : kind_.parameters)
        if (parameter.name == name)
            return parameter.example;
    return {};
}

void Reader::refuse(std::string_view name, std::string_view given, std::vector<Sentence> why) {
    throw Refused{{false, std::string{name}, std::string{given}, std::move(why)}};
}

void Reader::refuseUsage(std::string_view name, std::vector<Sentence> why) {
    throw Refused{{true, std::string{name}, {}, std::move(why)}};
}

Written Reader::writtenAmount(std::string_view name, std::string_view text, Span span) const {
    const std::string amount = withoutBlanks(text);
    const auto written = writtenIn(amount);
    if (!written)
        refuse(name, text, whyNoAmount(amount, span, exampleOf(name)));
    return *written;
}

double Reader::siOf(std::string_view name, std::string_view text, Span span) const {
    const Written written = writtenAmount(name, text, span);
    const std::string unit{nameOf(written.unit)};
    if (dimensionOf(written.unit) != dimensionOf(span.unit))
        refuse(name, text,
               {say("%1 is a unit of something else. Write one of %2, as in %3.",
                    {unit, namesOfUnitsLike(span.unit), std::string{exampleOf(name)}})});
    if (inside(written.number, written.unit, span))
        return written.si();
    std::vector<Sentence> why{say("it must lie from %1 to %2 %3.", {endIn(written.unit, span.low, span.unit),
                                                                    endIn(written.unit, span.high, span.unit), unit})};
    for (const Unit other : unitsLike(span.unit))
        if (other != written.unit && inside(written.number, other, span)) {
            why.push_back(say("Did you mean %1%2?", {plain(written.number), std::string{nameOf(other)}}));
            break;
        }
    refuse(name, text, std::move(why));
}

Temperature Reader::temperature(std::string_view name, double low, double high) const {
    return Temperature::kelvin(siOf(name, text(name), {low, high, Unit::degC}));
}

Pressure Reader::pressure(std::string_view name, double low, double high) const {
    return amount<Pressure>(name, {low, high, Unit::kPa});
}

TemperatureDifference Reader::difference(std::string_view name, double high) const {
    const std::string given = text(name);
    constexpr Span nothing{1, 0, Unit::degC}; // no guess is made at a rise without its unit
    const Written written = writtenAmount(name, given, nothing);
    const Dimension dimension = dimensionOf(written.unit);
    if (dimension != Dimension::temperature && dimension != Dimension::temperatureDifference)
        refuse(name, given, {say("a rise is written in degC, degF or K, as in %1.", {std::string{exampleOf(name)}})});
    const auto rise = TemperatureDifference::kelvin(differenceToSi(written.number, written.unit));
    if (within(rise.kelvin(), 0, high))
        return rise;
    const bool fahrenheit = written.unit == Unit::degF;
    std::vector<Sentence> why{say("a rise must lie from 0 to %1 %2.",
                                  {plain(fahrenheit ? high * 1.8 : high, 4), std::string{nameOf(written.unit)}})};
    const double celsius = fahrenheit ? (written.number - 32) / 1.8 : written.number;
    if (within(celsius, 80, 120))
        why.push_back(
            say("That looks like what the thermometer reads. A rise is how far it stands above boiling water."));
    else if (within(rise.kelvin() - 32 / 1.8, 0, high) && fahrenheit)
        why.push_back(say("Was it shifted by 32? A difference is not: 4 °C of rise are 7.2 °F."));
    refuse(name, given, std::move(why));
}

Brix Reader::sugar(std::string_view name, Temperature scale, double most) const {
    return sugarIn(name, text(name), scale, most);
}

Brix Reader::sugarIn(std::string_view name, std::string_view given, Temperature scale, double most) const {
    const Written written = writtenAmount(name, given, {0, most, Unit::brix});
    if (written.unit != Unit::baume)
        return Brix::ofSi(siOf(name, given, {0, most, Unit::brix}));
    const auto sugar = sugarOfBaume(Baume{written.number}, scale);
    if (!sugar)
        refuse(name, given,
               {say("it must lie from 0 to %1 baume.", {number(baumeOf(Brix::degrees(75), scale)->degrees, 1)})});
    return *sugar;
}

Reader::VolumeOf Reader::volumeOf(std::string_view name, const std::string& written, double mostLitres,
                                  Sentence wanted) const {
    const std::size_t at = written.find('@');
    if (at == std::string::npos)
        refuse(name, written, {std::move(wanted)});
    return {Volume::ofSi(siOf(name, written.substr(0, at), {0, mostLitres, Unit::L})), written.substr(at + 1)};
}

void Reader::oneOf(std::string_view name, std::string_view other, Sentence wanted) const {
    if (has(name) == has(other))
        refuseUsage(name, {std::move(wanted)});
}

double Reader::bareNumber(std::string_view name, double low, double high) const {
    const std::string given = text(name);
    const auto value = numberIn(given);
    if (!value)
        refuse(
            name, given,
            {say("that is not a plain number. Write digits with a point, as in %1.", {std::string{exampleOf(name)}})});
    if (!within(*value, low, high))
        refuse(name, given, {say("it must lie from %1 to %2.", {plain(low), plain(high)})});
    return *value;
}

} // namespace panside::sums
