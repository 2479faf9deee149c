#include "ui/words/fault_words.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("FaultWords", text); }
QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

QString where(const Fault& fault, const QString& file) {
    const QString line = QString::number(fault.line);
    return fault.column == 0 ? QStringLiteral("%1:%2").arg(file, line)
                             : QStringLiteral("%1:%2:%3").arg(file, line, QString::number(fault.column));
}

// What is wrong and what to do. %1 the field, %2 what stood there, %3 what may stand there.
QString said(const Fault& fault) {
    switch (fault.slip) {
    case Slip::noHeader:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "the first line is not the heading of a shift log. "
                                                  "Begin with time,what,value,unit,detail."));
    case Slip::notUtf8:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "the text is not UTF-8. Save the file as UTF-8 and try again."));
    case Slip::columns:
        return tr(QT_TRANSLATE_NOOP("FaultWords",
                                    "the row does not have five fields. Write time, what, value, unit and "
                                    "detail, empty ones too, with commas between."));
    case Slip::quoting:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "a quotation mark is not closed, or stands inside a field. "
                                                  "Put the whole field in quotation marks and double those inside."));
    case Slip::time:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "“%2” is not a time. Write it as 2026-03-14T18:42:00Z."));
    case Slip::number:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%1 “%2” is not a number. Write digits with a point, as in 210.5, "
                                                  "or leave the field empty."));
    case Slip::unitMissing:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%1 has a number without its unit. Write %3 beside it."));
    case Slip::unitUnknown:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "“%2” is not a unit. Write %3."));
    case Slip::unitWrong:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "“%2” does not measure %1. Write %3."));
    case Slip::valueMissing:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%1 needs a value and has none. Write one, or remove the row."));
    case Slip::valueUnwanted:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%1 takes no value, and “%2” is there. Leave the field empty."));
    case Slip::outOfRange:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%1 “%2” is not possible. It must be %3: look at digits and unit."));
    case Slip::detailPair:
        return tr(
            QT_TRANSLATE_NOOP("FaultWords", "“%2” is not a pair. Write key=value, with a semicolon between pairs."));
    case Slip::detailValue:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "“%2” cannot be read as %1. Write %3."));
    case Slip::settingUnknown:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "no setting is called “%2”. The row is kept and changes nothing."));
    case Slip::whatUnknown:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "nothing is called “%2”. The row is kept and changes nothing."));
    case Slip::detailUnknown:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "“%2” is not known here. It is kept and changes nothing."));
    case Slip::alarmUnknown:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "no alarm is called “%2”. The row is kept and changes nothing."));
    case Slip::implausible:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%3 %2 cannot be true. It is kept and not believed."));
    case Slip::toldTwice:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "this draw is there twice. It is kept and counts once."));
    case Slip::detailMissing:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%1 is missing from the detail. Write %3."));
    case Slip::wordUnknown:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "“%2” is not one of the words for %1 (%3). It is kept as it is."));
    case Slip::placeUnknown:
        return tr(QT_TRANSLATE_NOOP(
            "FaultWords",
            "there is no place “%2”. Write a state or province in English, or US or Canada. Did you mean %3?"));
    case Slip::intoItself:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "“%2” is the vessel it comes from. Name two vessels."));
    case Slip::vesselUnknown:
        return tr(
            QT_TRANSLATE_NOOP("FaultWords", "“%2” is a vessel that has not been named (nearest: %3). Name it first."));
    case Slip::codeTwice:
        return tr(QT_TRANSLATE_NOOP(
            "FaultWords",
            "lot code “%2” is used twice: it is for another vessel or another day. The next free one is %3."));
    case Slip::empty:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "there is no row in it. A shift log has one row for each fact."));
    case Slip::rowLength:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "the row is longer than %3 bytes, so what follows was not read. End "
                                                  "each row with a line end, and close each quote."));
    case Slip::span:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%2 is more than %3 days from another row. A log is one shift: put "
                                                  "this row right, or into a log of its own."));
    case Slip::probes:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "“%2” is one more than the %3 names of probes that a log may have. "
                                                  "Leave out what names no probe."));
    }
    return {};
}

// In a file it is the column's name, on a sheet a word.
QString fieldOf(const Fault& fault) {
    if (fault.line == 0 && fault.field == "value")
        return tr(QT_TRANSLATE_NOOP("FaultWords", "value"));
    if (fault.cell > 0)
        return tr(QT_TRANSLATE_NOOP("FaultWords", "column %1")).arg(fault.cell);
    return fault.field == "row" ? tr(QT_TRANSLATE_NOOP("FaultWords", "row")) : text(fault.field);
}

QString givenIn(const Fault& fault) {
    return fault.wanted.kind == FaultWant::Kind::cells
               ? tr(QT_TRANSLATE_NOOP("FaultWords", "%1 cells")).arg(text(fault.wanted.second))
               : text(fault.given);
}

// "0 to 100 brix", "degC or degF": units are written alike in all languages, what joins them is not.
QString wantedBy(const FaultWant& want) {
    using Kind = FaultWant::Kind;
    QString first = text(want.first);
    const QString second = text(want.second), third = text(want.third);
    const QString joint = tr(QT_TRANSLATE_NOOP("FaultWords", " or "));
    switch (want.kind) {
    case Kind::none:
        return {};
    case Kind::asWritten:
        return first;
    case Kind::either:
        return first + (second.isEmpty() ? QString{} : joint + second) + (third.isEmpty() ? QString{} : joint + third);
    case Kind::range:
        return (first + tr(QT_TRANSLATE_NOOP("FaultWords", " to ")) + second + u' ' + third).trimmed();
    case Kind::moreThan:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "more than %1")).arg(first);
    case Kind::number:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "a number"));
    case Kind::numberOf:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "a number of %1")).arg(first);
    case Kind::temperature:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "a number and degC or degF, as in 98.9degC"));
    case Kind::time:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "a time as in %1")).arg(first);
    case Kind::readingOrEvent:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "a reading or an event"));
    case Kind::alarmName:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "name=ALARM"));
    case Kind::settingName:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "key=SETTING"));
    case Kind::byOrOff:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "by=NAME or off=NAME"));
    case Kind::pairs:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "key=value, each key once, with ; between"));
    case Kind::timeOfForm:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "a time as in %1, or choose another form")).arg(first);
    case Kind::timeThatWas:
        return tr(QT_TRANSLATE_NOOP("FaultWords",
                                    "a time that clocks did not go forward over, or choose the zone of its clock"));
    case Kind::oneRowALine:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "one row a line, each under a million characters"));
    case Kind::cells:
        return tr(QT_TRANSLATE_NOOP("FaultWords", "%1 cells or more, as they are mapped")).arg(first);
    }
    return {};
}

} // namespace

QString faultWords(const Fault& fault, const QString& file) {
    QString sentence = said(fault);
    // The three are put in at one go: what was given may itself contain a per cent sign and a digit.
    const QString parts[] = {fieldOf(fault), givenIn(fault), wantedBy(fault.wanted)};
    QString filled;
    for (qsizetype i = 0; i < sentence.size(); ++i) {
        const bool mark =
            sentence[i] == u'%' && i + 1 < sentence.size() && sentence[i + 1] >= u'1' && sentence[i + 1] <= u'3';
        if (mark)
            filled += parts[sentence[++i].unicode() - u'1'];
        else
            filled += sentence[i];
    }
    if (!fault.meant.empty())
        filled += u' ' + tr(QT_TRANSLATE_NOOP("FaultWords", "Did you mean %1?")).arg(text(fault.meant));
    if (fault.line == 0) // a field of a sheet, not a place in a file
        return QCoreApplication::translate("FaultWords", "%1: %2").arg(file, filled);
    return where(fault, file) + QStringLiteral(": ") + filled;
}

} // namespace panside
