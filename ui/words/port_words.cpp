#include "ui/words/port_words.h"

#include "ui/words/said.h"

#include <QCoreApplication>
#include <QStringList>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("PortWords", text); }

} // namespace

QString portSentence(const PortStatus& status) {
    return tr("%1: %2").arg(QString::fromStdString(status.name.empty() ? status.device : status.name),
                            said(told(status), "PortWords"));
}

QString pollWords(const PollCounts& polls) {
    QStringList words{tr("answered %1").arg(polls.answered)};
    if (polls.timedOut > 0)
        words << tr("no answer %1").arg(polls.timedOut);
    if (polls.garbled > 0)
        words << tr("garbled %1").arg(polls.garbled);
    for (const auto& [code, count] : polls.exceptions)
        words << QStringLiteral("%1 %2").arg(pollFaultWords(PollFault::exception, code)).arg(count);
    if (polls.skipped > 0)
        words << tr("too slow for this pace %1").arg(polls.skipped);
    return words.join(QStringLiteral(" · "));
}

QString pollFaultWords(PollFault fault, int exception) { return said(told(fault, exception), "PortWords"); }
QString noReadingWords(NoReading why) { return said(noReadingText(why), {}, "PortWords"); }

} // namespace panside
