#include "tests/ui/pictures/pictures.h"
#include "tests/ui/pictures/said_by.h"
#include "tests/ui/words/in_language.h"

#include <QCoreApplication>
#include <QFile>
#include <QLabel>
#include <QLocale>
#include <gtest/gtest.h>

namespace panside {
namespace {

QString textOf(const QString& place) {
    QFile file{place};
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString{};
}

// The README and the manual show the screens as they are. Where this fails: app/pictures makes them again.
class Pictures : public InLanguage {};

TEST_P(Pictures, ShowTheScreensAsTheyAre) {
    const QString pictures = QStringLiteral(PANSIDE_SOURCE "/resources/pictures/");
    const QString saids = QStringLiteral(PANSIDE_SOURCE "/tests/reference/pictures/");
    for (const PictureOf& picture : allPictures()) {
        const auto kept = textOf(saids + saidPath(picture, GetParam())).split(u'\n', Qt::SkipEmptyParts);
        const QString file = pictures + picturePath(picture, GetParam());
        EXPECT_TRUE(QFile::exists(file)) << file.toStdString();
        EXPECT_EQ(kept.value(0), keptBeside(file, {}).trimmed()) << picture.name.toStdString() << " is another picture";
        picture.put(GetParam() ? Units::metric : Units::us, [&](QWidget& widget) {
            EXPECT_EQ(differenceOf(paintedIn(kept.mid(1)), saidBy(widget)).toStdString(), "")
                << picture.name.toStdString() << " is out of date: run app/pictures, look at it, commit it";
        });
    }
}
INSTANTIATE_TEST_SUITE_P(InBothLanguages, Pictures, testing::Bool());

TEST(SaidBy, TellsTextsWithTheirColorAndPlace) {
    QLabel label{QStringLiteral("sap and wood")};
    label.setFixedSize(400, 100);
    const auto said = saidBy(label);
    ASSERT_EQ(said.size(), 1u);
    EXPECT_EQ(said[0].text, "sap and wood");
    EXPECT_NEAR(said[0].place.y(), 50, 15);
    EXPECT_EQ(paintedIn(linesOf(said)), said) << "kept and read back";
    EXPECT_EQ(differenceOf(said, said), "");
    label.setText(QStringLiteral("sap and syrup"));
    EXPECT_TRUE(differenceOf(said, saidBy(label)).contains("syrup")) << "another word";
    label.setText(QStringLiteral("sap and wood"));
    label.setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    EXPECT_TRUE(differenceOf(said, saidBy(label)).contains("moved")) << "another place";
    label.setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    label.setStyleSheet(QStringLiteral("color: #ff0000"));
    EXPECT_TRUE(differenceOf(said, saidBy(label)).contains("#ff0000")) << "another color";
}

} // namespace
} // namespace panside
