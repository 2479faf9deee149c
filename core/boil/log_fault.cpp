// What is wrong with a row, in one sentence: what, and what to do.
#include "core/boil/shift_log.h"

namespace panside {
namespace {

// %1 the field, %2 what stood there, %3 what may stand there.
Sentence patternOf(const Fault& fault) {
    const bool wanted = !fault.wanted.parts.empty() && !fault.wanted.parts.front().empty();
    switch (fault.slip) {
    case Slip::noHeader:
        return say("the first line is \"%2\". A shift log begins with the line time,what,value,unit,detail.");
    case Slip::notUtf8:
        return say("the text is not UTF-8. Save it as UTF-8 and try again.");
    case Slip::columns:
        return fault.given == "1" ? say("the row has %2 field, not five. Write time,what,value,unit,detail, with "
                                        "nothing between the commas where there is nothing to say.")
                                  : say("the row has %2 fields, not five. Write time,what,value,unit,detail, with "
                                        "nothing between the commas where there is nothing to say.");
    case Slip::quoting:
        return say("a double quote does not close, or stands where none may. Put the whole field in double quotes and "
                   "double those inside it.");
    case Slip::time:
        return fault.given.empty() ? say("the time is missing. Write %3.")
                                   : say("\"%2\" is not a time. Write %3, with at most six decimals.");
    case Slip::number:
        return say("%1 \"%2\" is not a number. Write digits with a point, as in 210.5, or leave the field empty "
                   "where the row needs none.");
    case Slip::unitInValue:
        return say("%1 \"%2\" holds its unit. Write %3.");
    case Slip::notWhole:
        return say("%1 %2 is not a whole number. Write how many there are.");
    case Slip::unitMissing:
        return say("the number has no unit. Write %3.");
    case Slip::unitUnknown:
        return say("unit \"%2\" is not known. Write %3.");
    case Slip::unitWrong:
        return wanted ? say("unit \"%2\" cannot stand here. Write %3.")
                      : say("unit \"%2\" stands where no unit belongs. Leave it empty.");
    case Slip::valueMissing:
        return say("the %1 is missing. Write %3.");
    case Slip::valueUnwanted:
        return say("value \"%2\" stands where none belongs. Leave it empty.");
    case Slip::outOfRange:
        return say("%1 %2 cannot be: it must be %3.");
    case Slip::detailPair:
        return say("detail \"%2\" cannot be read. Write %3.");
    case Slip::detailValue:
        return say("%1=\"%2\" cannot be read. Write %3.");
    case Slip::cells:
        return say("%1=\"%2 cells\" cannot be read. Write %3 cells or more, as they are mapped.");
    case Slip::settingUnknown:
        return say("the setting in \"%2\" is not known; kept, and without effect.");
    case Slip::whatUnknown:
        return say("\"%2\" is not known; kept, and without effect.");
    case Slip::empty:
        return say("there is no row in it.");
    case Slip::rowLength:
        return say("the row is longer than %3 bytes, so what follows was not read. End each row with a line end, and "
                   "close each quote.");
    case Slip::span:
        return say("%2 is more than %3 days from another row. A log is one shift: put this row right, or into a log "
                   "of its own.");
    case Slip::probes:
        return say("\"%2\" is one more than the %3 names of probes that a log may have. Leave out what names no "
                   "probe.");
    case Slip::detailUnknown:
        return say("\"%2\" is not known here; kept, and without effect.");
    case Slip::alarmUnknown:
        return say("there is no alarm \"%2\"; kept, and without effect.");
    case Slip::detailMissing:
        return say("%1 is missing from the detail. Write %3.");
    case Slip::wordUnknown:
        return say("%1=\"%2\" is none of the words for it (%3); kept as it stands.");
    case Slip::placeUnknown:
        return say("there is no place \"%2\". Write a state or province in English, or US or Canada. Did you mean %3?");
    case Slip::intoItself:
        return say("%1=\"%2\" is the vessel it comes from. Name two vessels.");
    case Slip::vesselUnknown:
        return wanted ? say("%1=\"%2\" is a vessel nobody named. Did you mean \"%3\"? If not, name it in a vessel row.")
                      : say("%1=\"%2\" is a vessel nobody named. Name it in a vessel row.");
    case Slip::codeTwice:
        return say("lot \"%2\" is a code twice: it stands for another vessel or another day. The next free code is "
                   "\"%3\".");
    case Slip::implausible:
        return say("%3 %2 cannot be true; kept, and not believed.");
    case Slip::toldTwice:
        return say("this draw is told twice; kept, and counted once.");
    }
    return {};
}

// In a file it is the column's name, on a sheet a word.
Sentence fieldOf(const Fault& fault) {
    if (fault.cell > 0)
        return say("column %1", {std::to_string(fault.cell)});
    if (fault.field == "row")
        return say("row");
    return fault.field == "value" && fault.line == 0 ? say("value") : asWritten(fault.field);
}

} // namespace

Sentence told(const Fault& fault) {
    Sentence whole = sayWith(patternOf(fault), {fieldOf(fault), asWritten(fault.given), fault.wanted});
    return fault.meant.empty() ? whole
                               : Sentence{.text = "%1 %2", .inner = {whole, say("Did you mean %1?", {fault.meant})}};
}

std::string sentence(const Fault& fault, std::string_view file) {
    std::string where{file};
    for (const std::size_t place : {fault.line, fault.column})
        if (place > 0)
            where += ':' + std::to_string(place);
    return where + ": " + english(told(fault));
}

} // namespace panside
