// The screens' tests run real widgets on Qt's offscreen platform: no display, no waiting.
#include "ui/frame/program.h"

#include <QLocale>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TZ", "UTC");
    testing::InitGoogleTest(&argc, argv);
    QLocale::setDefault(QLocale::c());
    panside::Program application{argc, argv};
    panside::keepLabelsPlain(application);
    return RUN_ALL_TESTS();
}
