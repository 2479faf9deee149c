// What a label needs, as far as this program knows: advice with its source, never law. What was not read in full is
// said to be so.
#include "core/boil/law_rules.h"
#include "ui/pack/pack_view.h"
#include "ui/words/place_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Checklist", text); }
struct Item {
    const char* words;
    const char* source;
    bool us, canada;
};
constexpr Item items[] = {
    {QT_TR_NOOP("The name of the food: maple syrup"), "21 CFR 168.140, 101.3; SFCR", true, true},
    {QT_TR_NOOP("How much is in it, as a volume"), "21 CFR 101.7; Weights and Measures: NIST HB 130", true, false},
    {QT_TR_NOOP("How much is in it, in metric units"), "SFCR, division on labelling", false, true},
    {QT_TR_NOOP("Grade and color class"), "7 CFR 52.5961 to .5966; Canadian Grade Compendium 7", true, true},
    {QT_TR_NOOP("Name and address of the packer or the responsible firm"), "21 CFR 101.5; SFCR", true, true},
    {QT_TR_NOOP("The same in English and French"), "SFCR, section 206", false, true},
    {QT_TR_NOOP("Nutrition facts, where you are not small enough to be exempt"), "21 CFR 101.9", true, false}};

} // namespace

std::vector<TableColumn> checklistColumns() { return {{tr("The label needs")}, {tr("source, as quoted")}}; }

std::vector<TableRow> labelChecklist(const PlaceLaw& law, const Lot* lot) {
    std::vector<TableRow> rows;
    const bool us = law.country == Country::unitedStates;
    for (const Item& item : items)
        if (us ? item.us : item.canada)
            rows.push_back({{tr(item.words), QString::fromLatin1(item.source)}});
    rows.push_back({{tr("Lot code: %1").arg(ruleWords(lotRule(law).text)), utf8(lotRule(law).source.text)}});
    for (const LawRule& rule : packingRules(law))
        rows.push_back({{tr("Packing: %1").arg(ruleWords(rule.text)), utf8(rule.source.text)}});
    if (const auto keeping = keepingRule(law))
        rows.push_back({{tr("To keep: %1").arg(ruleWords(keeping->text)), utf8(keeping->source.text)}});
    if (lot && lot->taint.milk)
        rows.push_back({{tr("CONTAINS MILK: it was used against foam"),
                         us ? QStringLiteral("21 USC 343(w)") : QStringLiteral("FDR B.01.010.1")},
                        true});
    rows.push_back({{tr("This is advice: the inspector decides."), {}}, false, true});
    return rows;
}

} // namespace panside
