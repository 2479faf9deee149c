#include "ui/words/sap_words.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("SapWords", text); }

constexpr Duration soonFull{3600};
// Above 10 degC (50 degF) bacteria grow fast in sap (Ohio State University Extension, Handling sap and syrup during the
// season, 2020). That it keeps a day or so when it came in cool: common practice, no source.
constexpr Temperature growsFast = Temperature::celsius(10);
constexpr Duration keepsWell{24 * 3600};

} // namespace

QString tankFullWords(const SapPicture& store) {
    if (!store.fullIn || *store.fullIn > soonFull)
        return {};
    if (*store.fullIn < Duration{60})
        return tr("The feed tank is full: look that it does not run over.");
    return tr("The feed tank is full in %1: look that it does not run over.").arg(spanText(*store.fullIn));
}

QString sapAgeWords(const SapPicture& store, Units units) {
    if (!store.oldest)
        return {};
    QString words = (store.older ? tr("The oldest sap in it came in %1 ago or earlier.")
                                 : tr("The oldest sap in it came in %1 ago."))
                        .arg(spanText(*store.oldest));
    const bool warm = store.warmest && *store.warmest > growsFast;
    if (warm)
        words += u' ' + tr("Some came in at %1: above %2 sap spoils fast.")
                            .arg(figure(*store.warmest, units).text(), figure(growsFast, units, 0).text());
    if (warm || *store.oldest > keepsWell)
        words += u' ' + tr("Smell it and boil it first; the syrup may come darker.");
    return words;
}

} // namespace panside
