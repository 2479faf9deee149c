#include "ui/words/probe_fault_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace panside {
namespace {

// %1 the key, %2 what stood there, %3 what may stand there.
const char* slipText(ProbeSlip slip) {
    switch (slip) {
    case ProbeSlip::unreadable:
        return QT_TRANSLATE_NOOP("ProbeFaultWords",
                                 "the probe file cannot be read: %3. Name a probe file that is there.");
    case ProbeSlip::syntax:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "this is no TOML: %2.");
    case ProbeSlip::unknownKey:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "\"%1\" is no key that is known here. What may stand here: %3.");
    case ProbeSlip::missingKey:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "%1 is missing. Write %3.");
    case ProbeSlip::wrongKind:
    case ProbeSlip::notAllowed:
    case ProbeSlip::outOfRange:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "%1 cannot be \"%2\". Write %3.");
    case ProbeSlip::twice:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "%1 \"%2\" stands twice. Write %3.");
    case ProbeSlip::notFor:
        return QT_TRANSLATE_NOOP("ProbeFaultWords",
                                 "%1 means nothing here: it goes with %3. Take it out, or change that.");
    case ProbeSlip::nothing:
        return QT_TRANSLATE_NOOP("ProbeFaultWords",
                                 "no port is named. Write a heading [[port]] and under it the port's device.");
    }
    return "";
}

// %1 and %2: its words, or all of them as one list.
const char* wantText(ProbeWant::Kind kind) {
    using Kind = ProbeWant::Kind;
    switch (kind) {
    case Kind::none:
        return "";
    case Kind::asWritten:
    case Kind::oneOf:
        return "%1";
    case Kind::text:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a text in quotes");
    case Kind::flag:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "true or false, without quotes");
    case Kind::number:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a number from %1 to %2");
    case Kind::wholeNumber:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a whole number from %1 to %2");
    case Kind::numberUnquoted:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a number without quotes");
    case Kind::heading:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a heading [[%1]] before each of them");
    case Kind::file:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "it is not a file");
    case Kind::fileToRead:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "it cannot be opened; may you read it?");
    case Kind::fieldName:
        return QT_TRANSLATE_NOOP("ProbeFaultWords",
                                 "a column's number from 1, or the name in the line, as in is = \"syrup\"");
    case Kind::columnNumber:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "the number of a column, from 1 to 64");
    case Kind::nameInLine:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "the name that stands in the line");
    case Kind::slaveAddress:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "the address set at the device, as in slave = 1");
    case Kind::registerKind:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "3 for holding registers, 4 for input registers");
    case Kind::registerAddress:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "the address as sent on the line, from 0");
    case Kind::roomForTwo:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "at most 65534 for a number of two registers");
    case Kind::notZero:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "anything but 0, which would make every reading 0");
    case Kind::thermocoupleLetter:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "the wire's letter, as in thermocouple = \"K\"");
    case Kind::junction:
        return QT_TRANSLATE_NOOP("ProbeFaultWords",
                                 "a temperature, as in junction = \"25degC\", or the name of the field that reads it");
    case Kind::junctionFilled:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a temperature, as in \"25degC\", or a field's name");
    case Kind::junctionRange:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a temperature from -40degC to 125degC");
    case Kind::junctionField:
        return QT_TRANSLATE_NOOP("ProbeFaultWords",
                                 "a temperature, or the `is` of another [[port.field]] of this port");
    case Kind::otherField:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "another field than the thermocouple itself");
    case Kind::devicePath:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "the port's path, as in device = \"/dev/ttyUSB0\"");
    case Kind::devicePathFilled:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "the port's path, as in \"/dev/ttyUSB0\"");
    case Kind::shortName:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a short name without ; or quotes, and not \"hand\"");
    case Kind::someField:
        return QT_TRANSLATE_NOOP("ProbeFaultWords",
                                 "at least one heading [[port.field]] under the port, or nothing would be read");
    case Kind::onePortEach:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "one [[port]] for each device");
    case Kind::oneFieldEach:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "one [[port.field]] for each field of a port");
    case Kind::ownName:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a name of its own for each port");
    case Kind::ownNameBeside:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a name of its own, since another port is called \"%1\"");
    case Kind::shortNameInMap:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a short name without ; | and quotes, and not \"hand\"");
    case Kind::someColumn:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a [[column]] for each reading, with is, reads and unit");
    case Kind::columnOfTable:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a column's name in the heading, or its number from 1");
    case Kind::columnNamed:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "%1, as in the table, or a number from 1");
    case Kind::columnByNumber:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "its number from 1: the heading has the name twice");
    case Kind::zone:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "a zone's name as in \"America/New_York\"");
    case Kind::otherReading:
        return QT_TRANSLATE_NOOP("ProbeFaultWords", "another reading: one column is to read each");
    }
    return "";
}

// All at one go: what is put in may itself contain a per cent sign and a digit.
QString filledWith(const QStringList& parts, const char* text) {
    const QString marked = *text ? QCoreApplication::translate("ProbeFaultWords", text) : QString{};
    QString filled;
    for (qsizetype i = 0; i < marked.size(); ++i) {
        const int part = marked[i] == u'%' && i + 1 < marked.size() ? marked[i + 1].digitValue() : -1;
        if (part < 1 || part > parts.size()) {
            filled += marked[i];
            continue;
        }
        filled += parts[part - 1];
        ++i;
    }
    return filled;
}

QString wantedWords(const ProbeWant& want) {
    QStringList words;
    for (const std::string& word : want.words)
        words << QString::fromStdString(word);
    if (want.kind == ProbeWant::Kind::oneOf || want.kind == ProbeWant::Kind::columnNamed) {
        const QString last = words.isEmpty() ? QString{} : words.takeLast();
        const QString before = words.join(QStringLiteral(", "));
        words = {before.isEmpty() ? last : before + QCoreApplication::translate("ProbeFaultWords", " or ") + last};
    }
    return filledWith(words, wantText(want.kind));
}

} // namespace

QString probeFaultWords(const ProbeFault& fault, const QString& file) {
    const QString given = QString::fromStdString(fault.given);
    const QString wanted = fault.slip == ProbeSlip::unreadable && !given.isEmpty() ? given : wantedWords(fault.wanted);
    QString place = file;
    if (fault.line > 0)
        place += QStringLiteral(":%1:%2").arg(fault.line).arg(fault.column);
    return QCoreApplication::translate("ProbeFaultWords", "%1: %2")
        .arg(place, filledWith({QString::fromStdString(fault.key), given, wanted}, slipText(fault.slip)));
}

} // namespace panside
