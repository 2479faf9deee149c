// The screens' tests run real widgets on Qt's offscreen platform: no display, no waiting.
#include <QApplication>
#include <QLocale>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TZ", "UTC");
    testing::InitGoogleTest(&argc, argv);
    QLocale::setDefault(QLocale::c());
    const QApplication application{argc, argv};
    return RUN_ALL_TESTS();
}
