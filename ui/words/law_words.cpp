#include "ui/words/law_words.h"

#include <QCoreApplication>
#include <string>

namespace panside {
namespace {

// What the places ask is written in core/boil; here it is marked to be put into another language.
[[maybe_unused]] constexpr const char* ruleTexts[] = {
    QT_TRANSLATE_NOOP("Law", "a code on every container over 125 mL that the records explain; bought sap and syrup "
                             "traced too"),
    QT_TRANSLATE_NOOP("Law", "a lot number or production code on every label"),
    QT_TRANSLATE_NOOP("Law", "a batch code on every container"),
    QT_TRANSLATE_NOOP("Law", "none of its own is known here; a record of one step back and one step forward is "
                             "expected"),
    QT_TRANSLATE_NOOP("Law", "the container filled to at least 90 percent"),
    QT_TRANSLATE_NOOP("Law", "packed at 85 °C, laid on its side 5 to 10 minutes"),
    QT_TRANSLATE_NOOP("Law", "packed at 82 to 85 °C or hotter"),
    QT_TRANSLATE_NOOP("Law", "at least 180 °F (82 °C) when the cap goes on"),
    QT_TRANSLATE_NOOP("Law", "processing grade only in containers of 5 gallons and more"),
    QT_TRANSLATE_NOOP("Law", "a rule of its own on grades and labels: ask for it"),
    QT_TRANSLATE_NOOP("Law", "the volume of the label is meant at 68 °F (20 °C)"),
    QT_TRANSLATE_NOOP("Law", "a record of each lot")};

} // namespace

QString ruleWords(std::string_view text) { return QCoreApplication::translate("Law", std::string{text}.c_str()); }

} // namespace panside
