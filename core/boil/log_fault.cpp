// What is wrong with a row, in one English sentence: where, what, and what to do.
#include "core/boil/shift_log.h"

#include <fmt/format.h>

namespace panside {
namespace {

std::string wantWords(const FaultWant& want) {
    using Kind = FaultWant::Kind;
    switch (want.kind) {
    case Kind::none:
        return {};
    case Kind::asWritten:
        return want.first;
    case Kind::either:
        return want.first + (want.second.empty() ? "" : " or " + want.second) +
               (want.third.empty() ? "" : " or " + want.third);
    case Kind::range:
        return fmt::format("{} to {}{}{}", want.first, want.second, want.third.empty() ? "" : " ", want.third);
    case Kind::moreThan:
        return "more than " + want.first;
    case Kind::number:
        return "a number";
    case Kind::numberOf:
        return "a number of " + want.first;
    case Kind::temperature:
        return "a number and degC or degF, as in 98.9degC";
    case Kind::time:
        return "a time as in " + want.first;
    case Kind::readingOrEvent:
        return "a reading or an event";
    case Kind::alarmName:
        return "name=ALARM";
    case Kind::settingName:
        return "key=SETTING";
    case Kind::byOrOff:
        return "by=NAME or off=NAME";
    case Kind::pairs:
        return "key=value, each key once, with ; between";
    case Kind::timeOfForm:
        return fmt::format("a time as in {}, or choose another form", want.first);
    case Kind::timeThatWas:
        return "a time that clocks did not go forward over, or choose the zone of its clock";
    case Kind::oneRowALine:
        return "one row a line, each under a million characters";
    case Kind::cells:
        return want.first + " cells or more, as they are mapped";
    }
    return {};
}

std::string what(const Fault& fault) {
    const auto& [slip, line, column, field, given, want, meant, cell] = fault;
    const std::string wanted = wantWords(want);
    switch (slip) {
    case Slip::noHeader:
        return fmt::format("the first line is \"{}\". A shift log begins with the line {}.", given, logHeader);
    case Slip::notUtf8:
        return "the text is not UTF-8. Save it as UTF-8 and try again.";
    case Slip::columns:
        return fmt::format(
            "the row has {} field{}, not five. Write time,what,value,unit,detail, with nothing between the "
            "commas where there is nothing to say.",
            given, given == "1" ? "" : "s");
    case Slip::quoting:
        return "a double quote does not close, or stands where none may. Put the whole field in double quotes and "
               "double "
               "those inside it.";
    case Slip::time:
        return given.empty() ? fmt::format("the time is missing. Write {}.", wanted)
                             : fmt::format("\"{}\" is not a time. Write {}, with at most six decimals.", given, wanted);
    case Slip::number:
        return fmt::format(
            "{} \"{}\" is not a number. Write digits with a point, as in 210.5, or leave the field empty "
            "where the row needs none.",
            field, given);
    case Slip::unitMissing:
        return fmt::format("the number has no unit. Write {}.", wanted);
    case Slip::unitUnknown:
        return fmt::format("unit \"{}\" is not known. Write {}.", given, wanted);
    case Slip::unitWrong:
        return wanted.empty() ? fmt::format("unit \"{}\" stands where no unit belongs. Leave it empty.", given)
                              : fmt::format("unit \"{}\" cannot stand here. Write {}.", given, wanted);
    case Slip::valueMissing:
        return fmt::format("the {} is missing. Write {}.", field, wanted);
    case Slip::valueUnwanted:
        return fmt::format("value \"{}\" stands where none belongs. Leave it empty.", given);
    case Slip::outOfRange:
        return fmt::format("{} {} cannot be: it must be {}.{}", field, given, wanted,
                           meant.empty() ? "" : fmt::format(" Was {} meant?", meant));
    case Slip::detailPair:
        return fmt::format("detail \"{}\" cannot be read. Write {}.", given, wanted);
    case Slip::detailValue:
        return fmt::format("{}=\"{}\" cannot be read. Write {}.", field, given, wanted);
    case Slip::settingUnknown:
        return fmt::format("the setting in \"{}\" is not known; kept, and without effect.", given);
    case Slip::whatUnknown:
        return fmt::format("\"{}\" is not known; kept, and without effect.", given);
    case Slip::empty:
        return "there is no row in it.";
    case Slip::rowLength:
        return fmt::format("the row is longer than {} bytes, so what follows was not read. End each row with a line "
                           "end, and close each quote.",
                           wanted);
    case Slip::span:
        return fmt::format("{} is more than {} days from another row. A log is one shift: put this row right, or into "
                           "a log of its own.",
                           given, wanted);
    case Slip::probes:
        return fmt::format("\"{}\" is one more than the {} names of probes that a log may have. Leave out what names "
                           "no probe.",
                           given, wanted);
    case Slip::detailUnknown:
        return fmt::format("\"{}\" is not known here; kept, and without effect.", given);
    case Slip::alarmUnknown:
        return fmt::format("there is no alarm \"{}\"; kept, and without effect.", given);
    case Slip::detailMissing:
        return fmt::format("{} is missing from the detail. Write {}.", field, wanted);
    case Slip::wordUnknown:
        return fmt::format("{}=\"{}\" is none of the words for it ({}); kept as it stands.", field, given, wanted);
    case Slip::placeUnknown:
        return fmt::format("there is no place \"{}\". Write a state or province in English, or US or Canada. Was {} "
                           "meant?",
                           given, wanted);
    case Slip::intoItself:
        return fmt::format("{}=\"{}\" is the vessel it comes from. Name two vessels.", field, given);
    case Slip::vesselUnknown:
        return fmt::format("{}=\"{}\" is a vessel nobody named. {}Name it in a vessel row.", field, given,
                           wanted.empty() ? "" : fmt::format("Was \"{}\" meant? ", wanted));
    case Slip::codeTwice:
        return fmt::format(
            "lot \"{}\" is a code twice: it stands for another vessel or another day. The next free code "
            "is \"{}\".",
            given, wanted);
    case Slip::implausible:
        return fmt::format("{} {} cannot be true; kept, and not believed.{}", wanted, given,
                           meant.empty() ? "" : fmt::format(" Was {} meant?", meant));
    case Slip::toldTwice:
        return "this draw is told twice; kept, and counted once.";
    }
    return {};
}

} // namespace

bool isWarning(const Fault& fault) {
    switch (fault.slip) {
    case Slip::settingUnknown:
    case Slip::whatUnknown:
    case Slip::detailUnknown:
    case Slip::alarmUnknown:
    case Slip::implausible:
    case Slip::toldTwice:
    case Slip::wordUnknown:
        return true;
    default:
        return false;
    }
}

std::string sentence(const Fault& fault, std::string_view file) {
    std::string where{file};
    if (fault.line > 0)
        where += fmt::format(":{}", fault.line);
    if (fault.column > 0)
        where += fmt::format(":{}", fault.column);
    return where + ": " + what(fault);
}

} // namespace panside
