#include "ui/probes/row_words.h"

#include "ui/probes/probe_setup.h"
#include "ui/words/fact_words.h"
#include "ui/words/port_words.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Probes", text); }

QString plain(double number) { return QLocale{}.toString(number, 'g', 7).replace(u'-', QChar{0x2212}); }

} // namespace

QString unitChoiceWords(const UnitChoice& choice) {
    if (choice.wire)
        return symbolOf(choice.unit) +
               QStringLiteral(" (%1)").arg(QChar::fromLatin1("KJT"[static_cast<int>(*choice.wire)]));
    return symbolOf(choice.unit);
}

QString registerName(const FieldRule& field) {
    if (!field.is.empty())
        return QString::fromStdString(field.is);
    const auto kind = field.place->function == 3 ? tr("slave %1, holding %2") : tr("slave %1, input %2");
    return kind.arg(field.place->slave).arg(field.place->address);
}

QString registersShown(const FieldStatus& now) {
    QString shown;
    for (const auto word : now.registers)
        shown += QStringLiteral("%1 ").arg(word, 4, 16, QLatin1Char('0')).toUpper();
    if (now.number)
        shown += QStringLiteral("→ ") + plain(*now.number);
    return shown.trimmed();
}

QString readsWords(const FieldRule* field) {
    return field && field->reads ? readingName(*field->reads) : tr("not used");
}

QString framingWords(Parity parity, int stopBits) {
    return QStringLiteral("8%1%2").arg(QChar::fromLatin1("NEO"[static_cast<int>(parity)])).arg(stopBits);
}

QString valueWords(const FieldStatus* now, Units units) {
    if (!now)
        return {};
    if (now->fault != PollFault::none)
        return pollFaultWords(now->fault, now->exception);
    if (now->last)
        return readingValue(*now->last, units);
    return noReadingWords(now->why);
}

QString secondWords(const ProbeFile& file, std::size_t port, std::size_t field) {
    const auto reads = file.ports[port].fields[field].reads;
    if (!reads)
        return {};
    for (std::size_t p = 0; p <= port; ++p)
        for (std::size_t f = 0; f < (p == port ? field : file.ports[p].fields.size()); ++f)
            if (file.ports[p].fields[f].reads == reads)
                return QStringLiteral(" · ") +
                       tr("takes over when %1 fails")
                           .arg(p == port ? tr("the first") : QString::fromStdString(file.ports[p].name));
    return {};
}

} // namespace panside
