#pragma once
// What the core says in English beside a fault, in the person's language.
#include <QString>
#include <span>
#include <string>

namespace panside {

// `phrases`: English texts marked for translation in this context, each whole or with a %1, or a %1 and a %2 after it,
// for what differs. The first that fits is given in the person's language; what none fits comes back as it is.
QString knownPhrase(const std::string& english, const char* context, std::span<const char* const> phrases);

} // namespace panside
