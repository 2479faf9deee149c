#include "ui/pack/touched_words.h"

#include "ui/look/units.h"
#include "ui/vessels/vessels_view.h"
#include "ui/words/book_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Touched", text); }

QString shareWords(const TouchedLot& lot) {
    if (!lot.share)
        return tr("some of its sugar came by it, nobody knows how much");
    if (*lot.share <= 0)
        return {};
    const double percent = *lot.share * 100;
    return tr("%1 percent of its sugar came by it").arg(QLocale{}.toString(percent, 'f', percent < 10 ? 1 : 0));
}

// What is otherwise than before.
QString changeWords(const TouchedLot& lot) {
    if (lot.gone)
        return tr("it is no lot any more");
    QStringList words;
    const QString was = figure(lot.was).text(), is = figure(lot.is).text();
    if (was != is)
        words << tr("density by the book %1, before %2").arg(is, was);
    if (lot.heldIs != lot.heldWas)
        words << (lot.heldIs ? tr("held from now on") : tr("no longer held"));
    if (!(lot.taintIs == lot.taintWas)) {
        const QString runs = taintWords(lot.taintIs);
        words << (runs.isEmpty() ? tr("nothing runs with it any more") : tr("runs with it: %1").arg(runs));
    }
    return words.isEmpty() ? tr("its thread is another") : words.join(QStringLiteral(", "));
}

QString goodsWords(const TouchedLot& lot) {
    QStringList made, buyers;
    for (const auto& [size, count] : lot.sizes)
        made << QStringLiteral("%1 × %2").arg(count).arg(sizeWord(size));
    for (const auto& [buyer, count] : lot.buyers)
        buyers << QStringLiteral("%1 (%2)").arg(buyerWord(buyer)).arg(count);
    return made.join(QStringLiteral(", ")) + QStringLiteral("; ") +
           (buyers.isEmpty() ? tr("nothing went out") : tr("went to %1").arg(buyers.join(QStringLiteral(", "))));
}

} // namespace

QString touchedLine(const std::vector<TouchedLot>& lots) {
    QStringList codes;
    for (const TouchedLot& lot : lots)
        codes << utf8(lot.code);
    return tr("Packed lots rest on what was taken back or put right: %1").arg(codes.join(QStringLiteral(", ")));
}

QString touchedPage(const std::vector<TouchedLot>& lots) {
    QString words = QStringLiteral("<h2>") + tr("What it changes for packed lots") + QStringLiteral("</h2><p>") +
                    touchedLine(lots).toHtmlEscaped() + QStringLiteral("</p><ul>");
    for (const TouchedLot& lot : lots) {
        QStringList parts{goodsWords(lot), shareWords(lot), changeWords(lot)};
        parts.removeAll(QString{});
        words += QStringLiteral("<li><b>") + utf8(lot.code).toHtmlEscaped() + QStringLiteral("</b>: ") +
                 parts.join(QStringLiteral("; ")).toHtmlEscaped() + QStringLiteral("</li>");
    }
    return words + QStringLiteral("</ul><p>") + tr("This is advice: the inspector decides.") + QStringLiteral("</p>");
}

} // namespace panside
