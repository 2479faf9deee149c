#pragma once
// What is shown in the program's own English (false) or French (true), as the console would say it.
#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>
#include <gtest/gtest.h>

namespace panside {

class InLanguage : public testing::TestWithParam<bool> {
protected:
    void SetUp() override {
        QLocale::setDefault(GetParam() ? QLocale{QStringLiteral("fr_CA")} : QLocale{QStringLiteral("en_US")});
        if (GetParam()) {
            ASSERT_TRUE(french_.load(QStringLiteral(PANSIDE_FRENCH)));
            QCoreApplication::installTranslator(&french_);
        }
    }
    void TearDown() override {
        QCoreApplication::removeTranslator(&french_);
        QLocale::setDefault(QLocale::c());
    }

    QTranslator french_;
};

} // namespace panside
