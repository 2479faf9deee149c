#include "ui/words/fault_words.h"

#include "ui/words/said.h"

#include <QCoreApplication>

namespace panside {

QString wantedWords(const Sentence& wanted) { return said(wanted, "FaultWords"); }
QString faultWords(const Fault& fault) { return said(told(fault), "FaultWords"); }

QString faultWords(const Fault& fault, const QString& file) {
    if (fault.line == 0) // a field of a sheet, not a place in a file
        return QCoreApplication::translate("FaultWords", "%1: %2").arg(file, faultWords(fault));
    QString place = file;
    for (const std::size_t at : {fault.line, fault.column})
        if (at > 0)
            place += QStringLiteral(":%1").arg(at);
    return place + QStringLiteral(": ") + faultWords(fault);
}

} // namespace panside
