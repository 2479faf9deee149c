#include "ui/words/probe_fault_words.h"

#include "ui/words/said.h"

#include <QCoreApplication>

namespace panside {

QString probeFaultWords(const ProbeFault& fault, const QString& file) {
    QString place = file;
    if (fault.line > 0)
        place += QStringLiteral(":%1:%2").arg(fault.line).arg(fault.column);
    return QCoreApplication::translate("ProbeFaultWords", "%1: %2").arg(place, said(told(fault), "ProbeFaultWords"));
}

} // namespace panside
