#include "ui/frame/languages.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QTranslator>
#include <gtest/gtest.h>

namespace panside {

TEST(Languages, EachHasALocaleOfItsOwnAndAllButTheFirstAFileOfWords) {
    QStringList locales;
    for (const Language& one : languages()) {
        const QLocale locale{QLatin1String(one.locale)};
        EXPECT_EQ(locale.name(), QLatin1String(one.locale));
        EXPECT_FALSE(locales.contains(locale.name())) << one.code;
        locales << locale.name();
        EXPECT_EQ(&languageOf(QLatin1String(one.code)), &one);
        if (&one == &languages().front())
            continue;
        QString words = QStringLiteral(PANSIDE_FRENCH); // the folder that the program's words are made in
        words.replace(QStringLiteral("panside_fr"), QStringLiteral("panside_") + QLatin1String(one.code));
        QTranslator translator;
        EXPECT_TRUE(translator.load(words)) << words.toStdString();
        EXPECT_FALSE(translator.translate("Screens", "Board").isEmpty()) << one.code;
    }
}

TEST(Languages, OneThatThereIsNoneOfIsTheFirst) {
    EXPECT_STREQ(languageOf(QStringLiteral("tlh")).code, "en");
    EXPECT_STREQ(languageOf({}).code, "en");
}

// Numbers too: 1.5 is 1,5 in Quebec, by the Unicode Common Locale Data Repository that Qt carries.
TEST(Languages, SpeakingOneSetsHowNumbersAreWritten) {
    const QLocale before;
    Spoken spoken;
    spoken.speak(QStringLiteral("fr"));
    EXPECT_EQ(QLocale{}.toString(1.5), QStringLiteral("1,5"));
    spoken.speak(QStringLiteral("en"));
    EXPECT_EQ(QLocale{}.toString(1.5), QStringLiteral("1.5"));
    QLocale::setDefault(before);
}

} // namespace panside
