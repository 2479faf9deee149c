#include "ui/words/probe_fault_words.h"

#include "ui/words/said.h"

#include <QCoreApplication>

namespace panside {

QString probeFaultWords(const ProbeFault& fault, const QString& file) {
    constexpr auto context = "ProbeFaultWords";
    const QString given = QString::fromStdString(fault.given);
    const bool bySystem = fault.slip == ProbeSlip::unreadable && !given.isEmpty();
    QString place = file;
    if (fault.line > 0)
        place += QStringLiteral(":%1:%2").arg(fault.line).arg(fault.column);
    return QCoreApplication::translate("ProbeFaultWords", "%1: %2")
        .arg(place,
             said(textOf(fault.slip),
                  {QString::fromStdString(fault.key), given, bySystem ? given : said(fault.wanted, context)}, context));
}

} // namespace panside
