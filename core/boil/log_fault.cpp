// What is wrong with a row, in one sentence: what, and what to do.
#include "core/boil/shift_log.h"
#include "core/quantity/enum_count.h"

#include <array>

namespace panside {
namespace {

// %1 the field, %2 what stood there, %3 what may stand there.
struct SlipRow {
    Slip slip;
    std::string_view text;
};
constexpr SlipRow slipRow(Slip slip, std::string_view text) { return {slip, text}; }
constexpr std::array slipRows{
    slipRow(Slip::noHeader, "the first line is \"%2\". A shift log begins with the line time,what,value,unit,detail."),
    slipRow(Slip::notUtf8, "the text is not UTF-8. Save it as UTF-8 and try again."),
    slipRow(Slip::columns, "the row has %2 fields, not five. Write time,what,value,unit,detail, with nothing between "
                           "the commas where there is nothing to say."),
    slipRow(Slip::quoting, "a double quote does not close, or stands where none may. Put the whole field in double "
                           "quotes and double those inside it."),
    slipRow(Slip::time, "\"%2\" is not a time. Write %3, with at most six decimals."),
    slipRow(Slip::number, "%1 \"%2\" is not a number. Write digits with a point, as in 210.5, or leave the field empty "
                          "where the row needs none."),
    slipRow(Slip::notWhole, "%1 %2 is not a whole number. Write how many there are."),
    slipRow(Slip::unitInValue, "%1 \"%2\" holds its unit. Write %3."),
    slipRow(Slip::unitMissing, "the number has no unit. Write %3."),
    slipRow(Slip::unitUnknown, "unit \"%2\" is not known. Write %3."),
    slipRow(Slip::unitWrong, "unit \"%2\" cannot stand here. Write %3."),
    slipRow(Slip::valueMissing, "the %1 is missing. Write %3."),
    slipRow(Slip::valueUnwanted, "value \"%2\" stands where none belongs. Leave it empty."),
    slipRow(Slip::outOfRange, "%1 %2 cannot be: it must be %3."),
    slipRow(Slip::detailPair, "detail \"%2\" cannot be read. Write %3."),
    slipRow(Slip::detailValue, "%1=\"%2\" cannot be read. Write %3."),
    slipRow(Slip::settingUnknown, "the setting in \"%2\" is not known; kept, and without effect."),
    slipRow(Slip::whatUnknown, "\"%2\" is not known; kept, and without effect."),
    slipRow(Slip::empty, "there is no row in it."),
    slipRow(Slip::detailUnknown, "\"%2\" is not known here; kept, and without effect."),
    slipRow(Slip::alarmUnknown, "there is no alarm \"%2\"; kept, and without effect."),
    slipRow(Slip::implausible, "%3 %2 cannot be true; kept, and not believed."),
    slipRow(Slip::toldTwice, "this draw is told twice; kept, and counted once."),
    slipRow(Slip::detailMissing, "%1 is missing from the detail. Write %3."),
    slipRow(Slip::wordUnknown, "%1=\"%2\" is none of the words for it (%3); kept as it stands."),
    slipRow(Slip::placeUnknown,
            "there is no place \"%2\". Write a state or province in English, or US or Canada. Did you mean %3?"),
    slipRow(Slip::intoItself, "%1=\"%2\" is the vessel it comes from. Name two vessels."),
    slipRow(Slip::vesselUnknown,
            "%1=\"%2\" is a vessel nobody named. Did you mean \"%3\"? If not, name it in a vessel row."),
    slipRow(Slip::codeTwice,
            "lot \"%2\" is a code twice: it stands for another vessel or another day. The next free code is \"%3\"."),
    slipRow(Slip::cells, "%1=\"%2 cells\" cannot be read. Write %3 cells or more, as they are mapped."),
    slipRow(Slip::rowLength, "the row is longer than %3 bytes, so what follows was not read. End each row with a line "
                             "end, and close each quote."),
    slipRow(
        Slip::span,
        "%2 is more than %3 days from another row. A log is one shift: put this row right, or into a log of its own."),
    slipRow(Slip::probes,
            "\"%2\" is one more than the %3 names of probes that a log may have. Leave out what names no probe.")};
static_assert(inOrder(slipRows, &SlipRow::slip) && hasCount<Slip, slipRows.size()>());

Sentence patternOf(const Fault& fault) {
    const bool wanted = !fault.wanted.parts.empty() && !fault.wanted.parts.front().empty();
    if (fault.slip == Slip::columns && fault.given == "1")
        return say("the row has %2 field, not five. Write time,what,value,unit,detail, with nothing between the commas "
                   "where there is nothing to say.");
    if (fault.slip == Slip::time && fault.given.empty())
        return say("the time is missing. Write %3.");
    if (fault.slip == Slip::unitWrong && !wanted)
        return say("unit \"%2\" stands where no unit belongs. Leave it empty.");
    if (fault.slip == Slip::vesselUnknown && !wanted)
        return say("%1=\"%2\" is a vessel nobody named. Name it in a vessel row.");
    const auto row = static_cast<std::size_t>(fault.slip);
    return row < slipRows.size() ? say(slipRows[row].text) : Sentence{};
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
