#include "core/boil/vocabulary.h"
#include "ui/board/actions.h"
#include "ui/rig/rig_view.h"
#include "ui/words/alarm_words.h"
#include "ui/words/reading_words.h"

#include <QFile>
#include <gtest/gtest.h>

namespace panside {
namespace {

// What French has for each text, straight from the translation's own file.
struct French {
    QString text;
    French() {
        QFile file{QStringLiteral(PANSIDE_SOURCE "/resources/translations/panside_fr.ts")};
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        text = QString::fromUtf8(file.readAll());
    }
    bool has(const QString& source) const {
        const QString line = QStringLiteral("<source>%1</source>").arg(source.toHtmlEscaped());
        const auto at = text.indexOf(line);
        return at >= 0 && !text.mid(at, line.size() + 60).contains(QStringLiteral("<translation></translation>"));
    }
};

TEST(French, HasAWordForEveryKey) {
    const French french;
    for (const ActionRow& row : allActions()) {
        EXPECT_TRUE(french.has(QString::fromUtf8(row.word))) << row.word;
        EXPECT_TRUE(french.has(QString::fromUtf8(row.sentence))) << row.sentence;
    }
}

TEST(French, HasWordsForEveryAlarmReadingAndSetting) {
    const French french;
    for (std::size_t i = 0; i < alarmCount; ++i) {
        const auto alarm = static_cast<Alarm>(i);
        EXPECT_TRUE(french.has(alarmName(alarm))) << nameOf(alarm);
        const AlarmPicture picture{
            .alarm = alarm, .priority = priorityOf(alarm), .state = AlarmState::unseen, .since = {}};
        EXPECT_TRUE(french.has(alarmFirst(picture))) << nameOf(alarm);
    }
    for (const ReadingRow& row : allReadings())
        EXPECT_TRUE(french.has(readingName(row.series))) << row.name;
    for (const SettingRow& row : allSettings())
        EXPECT_TRUE(french.has(settingName(row.key))) << row.name;
}

TEST(French, LeavesNothingUnfinished) {
    EXPECT_FALSE(French{}.text.contains(QStringLiteral("unfinished")));
    EXPECT_FALSE(French{}.text.contains(QStringLiteral("<translation></translation>")));
}

} // namespace
} // namespace panside
