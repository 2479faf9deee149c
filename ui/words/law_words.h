#pragma once
// What the law of a place asks (core/boil: place, law_rules), in the person's language.
#include <QString>
#include <string_view>

namespace panside {

QString ruleWords(std::string_view text);

} // namespace panside
