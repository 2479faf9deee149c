#include "ui/keys/actions.h"
#include "ui/page/page.h"

#include <QCoreApplication>

namespace panside {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("Page", text); }

const char* const cautions[] = {
    QT_TRANSLATE_NOOP("Page", "Boiling syrup and steam burn at once and deeply. Keep children and visitors back."),
    QT_TRANSLATE_NOOP("Page",
                      "A dry pan burns within minutes and can set the house on fire. Somebody stays with a lit fire, "
                      "always; keep sap and an extinguisher at hand, and look up at the roof."),
    QT_TRANSLATE_NOOP("Page",
                      "Flue gas in a closed house kills without a smell (carbon monoxide). Keep it open, and hang a "
                      "detector."),
    QT_TRANSLATE_NOOP("Page",
                      "Old solder and galvanised or terne gear can put lead into syrup. Find out what yours is."),
    QT_TRANSLATE_NOOP("Page",
                      "Syrup packed too cool grows mould. Measure in the bottle, and follow what your food law says."),
    QT_TRANSLATE_NOOP(
        "Page", "A defoamer made of milk, or of another food that people cannot have, is an allergen: it belongs on "
                "the label."),
};

QString keyCells(const ActionRow& row) {
    return "<td><b>" + keyOf(row.action).toHtmlEscaped() + "</b></td><td>" + wordOf(row.action).toHtmlEscaped() +
           "</td><td>" + sentenceOf(row.action).toHtmlEscaped() + "</td>";
}

} // namespace

QString cautionWords() {
    auto words =
        "<h2>" + tr(QT_TRANSLATE_NOOP("Page", "Before the first fire")) + "</h2><p>" +
        tr(QT_TRANSLATE_NOOP(
            "Page",
            "Panside advises. It controls nothing, and it can be wrong: a probe may lie, a forecast may miss. The "
            "instruments on the pan, the hydrometer, licensed inspectors and local codes come first.")) +
        "</p><ul>";
    for (const auto* caution : cautions)
        words += "<li>" + tr(caution) + "</li>";
    return words + "</ul><p>" + tr(QT_TRANSLATE_NOOP("Page", "You find this page again under help.")) + "</p>";
}

QString helpWords() {
    auto words = "<h2>" + tr(QT_TRANSLATE_NOOP("Page", "The keys")) + "</h2><table cellpadding=\"3\">";
    // In two columns, so that they are all seen at once.
    const auto actions = allActions();
    const std::size_t half = (actions.size() + 1) / 2;
    for (std::size_t i = 0; i < half; ++i) {
        words += "<tr>" + keyCells(actions[i]);
        if (i + half < actions.size())
            words += keyCells(actions[i + half]);
        words += "</tr>";
    }
    return words + "</table>" + cautionWords();
}

} // namespace panside
