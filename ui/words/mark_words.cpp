#include "ui/words/mark_words.h"

#include "core/quantity/enum_count.h"
#include "ui/look/wall_clock.h"
#include "ui/words/book_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <array>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("MarkWords", text); }

QString moment(Instant at) { return WallClock{}.at(at).toString(QStringLiteral("yyyy-MM-dd HH:mm")); }

// What a mark's figures are, and its words: %1 the name, %2 the amount, %3 the limit, %4 the entry before it, %5 more.
enum class Of { number, litres, degrees, brix, gauge };
struct MarkRow {
    MarkKind kind;
    Of figures;
    const char* words;
};
constexpr std::array markRows{
    MarkRow{MarkKind::belowEmpty, Of::litres, QT_TR_NOOP("%1: %2 more come out than the book has in it.%4 Dip it.")},
    MarkRow{MarkKind::overRim, Of::litres, QT_TR_NOOP("%1: %2 over its rim of %3.%4 Dip it.")},
    MarkRow{MarkKind::vesselOut, Of::number, QT_TR_NOOP("%1 is no longer used.")},
    MarkRow{MarkKind::vesselUnknown, Of::number, QT_TR_NOOP("%1 is a vessel that has not been named.")},
    MarkRow{MarkKind::packedTooCool, Of::degrees,
            QT_TR_NOOP("Lot %1 was capped at %2, under the least of %3: it is held.")},
    MarkRow{MarkKind::underDensity, Of::brix, QT_TR_NOOP("Lot %1 is %2, under the %3 of this place: it is held.")},
    MarkRow{MarkKind::overDensity, Of::brix, QT_TR_NOOP("Lot %1 is %2, over the %3 of this place: it is held.")},
    MarkRow{MarkKind::shippedTooMany, Of::number, QT_TR_NOOP("Lot %1: %2 more left than were made.")},
    MarkRow{MarkKind::backTooMany, Of::number, QT_TR_NOOP("Lot %1: %2 more came back than had left.")},
    MarkRow{MarkKind::sizeUnknown, Of::number, QT_TR_NOOP("Lot %1 was never packed in %5.")},
    MarkRow{MarkKind::lotUnknown, Of::number, QT_TR_NOOP("Lot %1 was never packed.")},
    MarkRow{MarkKind::codeTwice, Of::number, QT_TR_NOOP("Lot code %1 is used twice.")},
    MarkRow{MarkKind::drawTwice, Of::number, QT_TR_NOOP("A draw was entered twice and counts once: %1.")},
    MarkRow{MarkKind::noVessel, Of::number, QT_TR_NOOP("A draw without a vessel: where to?")},
    MarkRow{MarkKind::noVolume, Of::number, QT_TR_NOOP("Nobody said how much went through this run.")},
    MarkRow{MarkKind::thinner, Of::brix, QT_TR_NOOP("A concentrate of %2 is thinner than the %3 that went in.")},
    MarkRow{MarkKind::sugarOdd, Of::brix, QT_TR_NOOP("Sap of %2. Did you mean %3?")},
    MarkRow{MarkKind::milk, Of::number, QT_TR_NOOP("%1: milk is in it, by %5 against foam. It belongs on the label.")},
    MarkRow{MarkKind::lead, Of::number, QT_TR_NOOP("%1: lead over the limit of %3 ppb.")},
    MarkRow{MarkKind::ropy, Of::number, QT_TR_NOOP("%1: ropy sap is in it.")},
    MarkRow{MarkKind::offFlavour, Of::number, QT_TR_NOOP("%1: an off-flavor (%5). It is for processing only.")},
    MarkRow{MarkKind::depthNoShape, Of::number,
            QT_TR_NOOP("%1: a depth gives no volume until its shape is known. Enter its shape.")},
    MarkRow{MarkKind::shapeUnread, Of::number, QT_TR_NOOP("%1: “%5” is no shape. Enter it as in upright 1.2 0.9.")},
    MarkRow{MarkKind::pressNotOpen, Of::number, QT_TR_NOOP("A filter run ends here that was never begun.")},
    MarkRow{MarkKind::pressNotEnded, Of::number,
            QT_TR_NOOP("A filter run begins while that of %4 was not ended. Enter its end.")},
    MarkRow{MarkKind::heelTooMuch, Of::litres, QT_TR_NOOP("A press cannot hold back %2 of the %3 that were in it.")},
    MarkRow{MarkKind::pressureWithoutRun, Of::gauge,
            QT_TR_NOOP("The filter gauge showed %2 while no run went on (%4): was its beginning not entered, or the "
                       "pressure not let off?")}};
static_assert(inOrder(markRows, &MarkRow::kind) && hasCount<MarkKind, markRows.size()>());

QString figureOf(double number, Of what, Units units) {
    switch (what) {
    case Of::number:
        break;
    case Of::litres:
        return handVolume(Volume::litre(number), units);
    case Of::degrees:
        return figure(Temperature::celsius(number), units).text();
    case Of::brix:
        return figure(Brix::degrees(number)).text();
    case Of::gauge:
        return gaugeFigure(Pressure::kilopascal(number), units).text();
    }
    return QLocale{}.toString(number, 'f', 0);
}

} // namespace

QString markWords(const LedgerMark& mark, Units units) {
    const MarkRow& row = markRows.at(static_cast<std::size_t>(mark.kind));
    const double amount = mark.amount.value_or(0);
    const double limit = mark.kind == MarkKind::sugarOdd ? amount / 10 : mark.limit.value_or(0);
    const bool isVolume = mark.kind == MarkKind::belowEmpty || mark.kind == MarkKind::overRim;
    const QString before = mark.before ? moment(*mark.before) : QString{};
    const QString since =
        isVolume && mark.before ? u' ' + tr("The entry before it, of %1, does not fit.").arg(before) : QString{};
    const bool isWord = mark.kind == MarkKind::milk || mark.kind == MarkKind::offFlavour;
    QString words = said(row.words,
                         {QString::fromStdString(mark.name), figureOf(amount, row.figures, units),
                          figureOf(limit, row.figures, units), isVolume ? since : before,
                          isWord ? choiceWord(mark.more) : QString::fromStdString(mark.more)},
                         "MarkWords");
    if (mark.kind == MarkKind::packedTooCool && !mark.more.empty())
        words += u' ' + tr("Did you mean %1?").arg(QString::fromStdString(mark.more));
    return words;
}

} // namespace panside
