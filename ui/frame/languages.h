#pragma once
// The languages of the screens, a row each: its words are resources/translations/*_<code>.ts, a file a screen.
#include <QTranslator>
#include <span>
#include <string>
#include <vector>

namespace panside {

struct Language {
    const char* code;
    const char* name; // as its speakers write it
    const char* locale;
};
// The first is the one that stands in the code: it needs no translation.
std::span<const Language> languages();
std::vector<std::string> languageCodes();
// The first one for a code that no row has.
const Language& languageOf(const QString& code);
QString languageOfSystem();

// Words, numbers and dates of the application in one language.
class Spoken {
public:
    void speak(const QString& code);

private:
    QTranslator words_, qtWords_;
};

} // namespace panside
