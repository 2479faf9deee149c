#include "ui/words/fault_words.h"

#include "ui/words/said.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace panside {
namespace {

// A sheet speaks as a person writes; the names of units are the log's.
QString inSymbols(QString words) {
    static const QRegularExpression celsius{QStringLiteral("(\\d) ?degC\\b")},
        fahrenheit{QStringLiteral("(\\d) ?degF\\b")}, minus{QStringLiteral("(^| )-(?=\\d)")};
    return words.replace(celsius, QStringLiteral("\\1\u00a0°C"))
        .replace(fahrenheit, QStringLiteral("\\1\u00a0°F"))
        .replace(minus, QStringLiteral("\\1\u2212"));
}

} // namespace

QString wantedWords(const Sentence& wanted) { return said(wanted, "FaultWords"); }
QString faultWords(const Fault& fault) { return said(told(fault), "FaultWords"); }

QString faultWords(const Fault& fault, const QString& file) {
    if (fault.line == 0) // a field of a sheet, not a place in a file
        return QCoreApplication::translate("FaultWords", "%1: %2").arg(file, inSymbols(faultWords(fault)));
    QString place = file;
    for (const std::size_t at : {fault.line, fault.column})
        if (at > 0)
            place += QStringLiteral(":%1").arg(at);
    return place + QStringLiteral(": ") + faultWords(fault);
}

QString foundWords(const Sentence& found) { return said(found, "JournalWords"); }

QString journalWords(const JournalError& error) {
    return QCoreApplication::translate("JournalWords", "%1: %2")
        .arg(QString::fromStdString(error.place().string()), foundWords(error.told()));
}

QString probeFaultWords(const ProbeFault& fault, const QString& file) {
    QString place = file;
    if (fault.line > 0)
        place += QStringLiteral(":%1:%2").arg(fault.line).arg(fault.column);
    return QCoreApplication::translate("ProbeFaultWords", "%1: %2").arg(place, said(told(fault), "ProbeFaultWords"));
}

} // namespace panside
