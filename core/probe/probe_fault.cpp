#include "core/probe/probe_fault.h"

#include <fmt/format.h>

namespace panside {
namespace {

std::string either(const std::vector<std::string>& words) {
    std::string list;
    for (std::size_t i = 0; i < words.size(); ++i)
        list += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + words[i];
    return list;
}

std::string wantWords(const ProbeWant& want) {
    using Kind = ProbeWant::Kind;
    const auto& words = want.words;
    switch (want.kind) {
    case Kind::none:
        return {};
    case Kind::asWritten:
        return words.at(0);
    case Kind::oneOf:
        return either(words);
    case Kind::text:
        return "a text in quotes";
    case Kind::flag:
        return "true or false, without quotes";
    case Kind::number:
        return fmt::format("a number from {} to {}", words.at(0), words.at(1));
    case Kind::wholeNumber:
        return fmt::format("a whole number from {} to {}", words.at(0), words.at(1));
    case Kind::numberUnquoted:
        return "a number without quotes";
    case Kind::heading:
        return fmt::format("a heading [[{}]] before each of them", words.at(0));
    case Kind::file:
        return "it is not a file";
    case Kind::fileToRead:
        return "it cannot be opened; may you read it?";
    case Kind::fieldName:
        return "a column's number from 1, or the name in the line, as in is = \"syrup\"";
    case Kind::columnNumber:
        return "the number of a column, from 1 to 64";
    case Kind::nameInLine:
        return "the name that stands in the line";
    case Kind::slaveAddress:
        return "the address set at the device, as in slave = 1";
    case Kind::registerKind:
        return "3 for holding registers, 4 for input registers";
    case Kind::registerAddress:
        return "the address as sent on the line, from 0";
    case Kind::roomForTwo:
        return "at most 65534 for a number of two registers";
    case Kind::notZero:
        return "anything but 0, which would make every reading 0";
    case Kind::thermocoupleLetter:
        return "the wire's letter, as in thermocouple = \"K\"";
    case Kind::junction:
        return "a temperature, as in junction = \"25degC\", or the name of the field that reads it";
    case Kind::junctionFilled:
        return "a temperature, as in \"25degC\", or a field's name";
    case Kind::junctionRange:
        return "a temperature from -40degC to 125degC";
    case Kind::junctionField:
        return "a temperature, or the `is` of another [[port.field]] of this port";
    case Kind::otherField:
        return "another field than the thermocouple itself";
    case Kind::devicePath:
        return "the port's path, as in device = \"/dev/ttyUSB0\"";
    case Kind::devicePathFilled:
        return "the port's path, as in \"/dev/ttyUSB0\"";
    case Kind::shortName:
        return "a short name without ; or quotes, and not \"hand\"";
    case Kind::someField:
        return "at least one heading [[port.field]] under the port, or nothing would be read";
    case Kind::onePortEach:
        return "one [[port]] for each device";
    case Kind::oneFieldEach:
        return "one [[port.field]] for each field of a port";
    case Kind::ownName:
        return "a name of its own for each port";
    case Kind::ownNameBeside:
        return fmt::format("a name of its own, since another port is called \"{}\"", words.at(0));
    case Kind::shortNameInMap:
        return "a short name without ; | and quotes, and not \"hand\"";
    case Kind::someColumn:
        return "a [[column]] for each reading, with is, reads and unit";
    case Kind::columnOfTable:
        return "a column's name in the heading, or its number from 1";
    case Kind::columnNamed:
        return either(words) + ", as in the table, or a number from 1";
    case Kind::columnByNumber:
        return "its number from 1: the heading has the name twice";
    case Kind::zone:
        return "a zone's name as in \"America/New_York\"";
    case Kind::otherReading:
        return "another reading: one column is to read each";
    }
    return {};
}

std::string what(const ProbeFault& fault) {
    const auto& [slip, line, column, key, given, want] = fault;
    const std::string wanted = wantWords(want);
    switch (slip) {
    case ProbeSlip::unreadable:
        return fmt::format("the probe file cannot be read: {}. Name a probe file that is there.",
                           given.empty() ? wanted : given);
    case ProbeSlip::syntax:
        return fmt::format("this is no TOML: {}.", given);
    case ProbeSlip::unknownKey:
        return fmt::format("\"{}\" is no key that is known here. What may stand here: {}.", key, wanted);
    case ProbeSlip::missingKey:
        return fmt::format("{} is missing. Write {}.", key, wanted);
    case ProbeSlip::wrongKind:
    case ProbeSlip::notAllowed:
    case ProbeSlip::outOfRange:
        return fmt::format("{} cannot be \"{}\". Write {}.", key, given, wanted);
    case ProbeSlip::twice:
        return fmt::format("{} \"{}\" stands twice. Write {}.", key, given, wanted);
    case ProbeSlip::notFor:
        return fmt::format("{} means nothing here: it goes with {}. Take it out, or change that.", key, wanted);
    case ProbeSlip::nothing:
        return "no port is named. Write a heading [[port]] and under it the port's device.";
    }
    return {};
}

} // namespace

std::string sentence(const ProbeFault& fault, std::string_view file) {
    if (fault.line == 0)
        return fmt::format("{}: {}", file, what(fault));
    return fmt::format("{}:{}:{}: {}", file, fault.line, fault.column, what(fault));
}

} // namespace panside
