#include "ui/frame/languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <algorithm>

namespace panside {

std::span<const Language> languages() {
    static constexpr Language all[] = {{"en", "English", "en_US"}, {"fr", "Français", "fr_CA"}};
    return all;
}

std::vector<std::string> languageCodes() {
    std::vector<std::string> codes;
    for (const Language& one : languages())
        codes.emplace_back(one.code);
    return codes;
}

const Language& languageOf(const QString& code) {
    const auto all = languages();
    const auto found = std::ranges::find_if(all, [&](const Language& one) { return code == QLatin1String(one.code); });
    return found == all.end() ? all.front() : *found;
}

QString languageOfSystem() {
    const auto spoken = QLocale::system().language();
    for (const Language& one : languages())
        if (QLocale{QLatin1String(one.locale)}.language() == spoken)
            return QLatin1String(one.code);
    return QLatin1String(languages().front().code);
}

void Spoken::speak(const QString& code) {
    QCoreApplication::removeTranslator(&words_);
    QCoreApplication::removeTranslator(&qtWords_);
    const Language& chosen = languageOf(code);
    QLocale::setDefault(QLocale{QLatin1String(chosen.locale)});
    if (&chosen == &languages().front())
        return;
    if (words_.load(QStringLiteral("panside_") + QLatin1String(chosen.code), QStringLiteral(":/translations")))
        QCoreApplication::installTranslator(&words_);
    if (qtWords_.load(QStringLiteral("qtbase_") + QLatin1String(chosen.code),
                      QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(&qtWords_);
}

} // namespace panside
