#include "ui/words/mark_words.h"

#include "ui/look/wall_clock.h"
#include "ui/words/book_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("MarkWords", text); }

QString moment(Instant at) { return WallClock{}.at(at).toString(QStringLiteral("yyyy-MM-dd HH:mm")); }

} // namespace

QString markWords(const LedgerMark& mark, Units units) {
    const QString name = QString::fromStdString(mark.name), more = choiceWord(mark.more);
    const double amount = mark.amount.value_or(0), limit = mark.limit.value_or(0);
    const auto litres = [&](double number) { return handVolume(Volume::litre(number), units); };
    const auto degrees = [&](double number) { return figure(Temperature::celsius(number), units).text(); };
    const auto brix = [&](double number) { return figure(Brix::degrees(number)).text(); };
    const QString since =
        mark.before ? u' ' + tr("The entry before it, of %1, does not fit.").arg(moment(*mark.before)) : QString{};
    switch (mark.kind) {
    case MarkKind::belowEmpty:
        return tr("%1: %2 more come out than the book has in it.%3 Dip it.").arg(name, litres(amount), since);
    case MarkKind::overRim:
        return tr("%1: %2 over its rim of %3.%4 Dip it.").arg(name, litres(amount), litres(limit), since);
    case MarkKind::vesselOut:
        return tr("%1 is no longer used.").arg(name);
    case MarkKind::vesselUnknown:
        return tr("%1 is a vessel that has not been named.").arg(name);
    case MarkKind::packedTooCool:
        return tr("Lot %1 was capped at %2, under the least of %3: it is held.")
                   .arg(name, degrees(amount), degrees(limit)) +
               (mark.more.empty() ? QString{} : u' ' + tr("Did you mean %1?").arg(QString::fromStdString(mark.more)));
    case MarkKind::underDensity:
        return tr("Lot %1 is %2, under the %3 of this place: it is held.").arg(name, brix(amount), brix(limit));
    case MarkKind::overDensity:
        return tr("Lot %1 is %2, over the %3 of this place: it is held.").arg(name, brix(amount), brix(limit));
    case MarkKind::shippedTooMany:
        return tr("Lot %1: %2 more left than were made.").arg(name, QLocale{}.toString(amount, 'f', 0));
    case MarkKind::backTooMany:
        return tr("Lot %1: %2 more came back than had left.").arg(name, QLocale{}.toString(amount, 'f', 0));
    case MarkKind::sizeUnknown:
        return tr("Lot %1 was never packed in %2.").arg(name, QString::fromStdString(mark.more));
    case MarkKind::lotUnknown:
        return tr("Lot %1 was never packed.").arg(name);
    case MarkKind::codeTwice:
        return tr("Lot code %1 is used twice.").arg(name);
    case MarkKind::drawTwice:
        return tr("A draw was entered twice and counts once: %1.").arg(name);
    case MarkKind::noVessel:
        return tr("A draw without a vessel: where to?");
    case MarkKind::pressureWithoutRun:
        return tr("The filter gauge showed %1 while no run went on (%2): was its beginning not entered, or the "
                  "pressure not let off?")
            .arg(gaugeFigure(Pressure::kilopascal(amount), units).text(),
                 mark.before ? moment(*mark.before) : QString{});
    case MarkKind::noVolume:
        return tr("Nobody said how much went through this run.");
    case MarkKind::thinner:
        return tr("A concentrate of %1 is thinner than the %2 that went in.").arg(brix(amount), brix(limit));
    case MarkKind::sugarOdd:
        return tr("Sap of %1. Did you mean %2?").arg(brix(amount), brix(amount / 10));
    case MarkKind::milk:
        return tr("%1: milk is in it, by %2 against foam. It belongs on the label.").arg(name, more);
    case MarkKind::lead:
        return tr("%1: lead over the limit of %2 ppb.").arg(name, QLocale{}.toString(limit, 'f', 0));
    case MarkKind::ropy:
        return tr("%1: ropy sap is in it.").arg(name);
    case MarkKind::offFlavour:
        return tr("%1: an off-flavor (%2). It is for processing only.").arg(name, more);
    case MarkKind::depthNoShape:
        return tr("%1: a depth gives no volume until its shape is known. Enter its shape.").arg(name);
    case MarkKind::shapeUnread:
        return tr("%1: “%2” is no shape. Enter it as in upright 1.2 0.9.").arg(name, QString::fromStdString(mark.more));
    case MarkKind::pressNotEnded:
        return tr("A filter run begins while that of %1 was not ended. Enter its end.")
            .arg(mark.before ? moment(*mark.before) : QString{});
    case MarkKind::heelTooMuch:
        return tr("A press cannot hold back %1 of the %2 that were in it.").arg(litres(amount), litres(limit));
    case MarkKind::pressNotOpen:
        return tr("A filter run ends here that was never begun.");
    }
    return {};
}

} // namespace panside
