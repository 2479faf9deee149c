#pragma once
#include <QString>
#include <string>

namespace panside {

// What a fire is called among several; the one that nobody named is the evaporator's.
QString fireName(const std::string& fire);
// The fire that a person means by such words.
std::string fireNamed(const QString& words);

} // namespace panside
