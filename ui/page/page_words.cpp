#include "ui/page/page.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Page", text); }

const char* const cautions[] = {
    QT_TR_NOOP("Boiling syrup and steam burn at once and deeply. Keep children and visitors back."),
    QT_TR_NOOP("A dry pan burns within minutes and can set the house on fire. Somebody stays with a lit fire, always; "
               "keep sap and an extinguisher at hand, and look up at the roof."),
    QT_TR_NOOP(
        "Flue gas in a closed house kills without a smell (carbon monoxide). Keep it open, and hang a detector."),
    QT_TR_NOOP("Old solder and galvanized or terne gear can put lead into syrup. Find out what yours is."),
    QT_TR_NOOP("Syrup packed too cool grows mold. Measure in the bottle, and follow what your food law says."),
    QT_TR_NOOP("A defoamer made of milk, or of another food that people cannot have, is an allergen: it belongs on the "
               "label."),
};

} // namespace

QString cautionWords() {
    auto words = "<h2>" + tr("Before the first fire") + "</h2><p>" +
                 tr("Panside advises. It controls nothing, and it can be wrong: a probe may lie, a forecast may miss. "
                    "The instruments on the pan, the hydrometer, licensed inspectors and local codes come first.") +
                 "</p><ul>";
    for (const auto* caution : cautions)
        words += "<li>" + tr(caution) + "</li>";
    return words + "</ul><p>" + tr("You find this page again under F1, then 2.") + "</p>";
}

} // namespace panside
