// The words that the board paints: none over another, none cut, none too small to be read, on the lowest screen in
// French as on the largest.
#include "tests/ui/board/framed.h"
#include "tests/ui/board/scenes.h"
#include "tests/ui/pictures/said_by.h"
#include "tests/ui/words/in_language.h"
#include "ui/board/across_view.h"
#include "ui/board/card_view.h"
#include "ui/chart/rise_chart.h"
#include "ui/look/press.h"
#include "ui/words/alarm_words.h"

#include <QApplication>
#include <gtest/gtest.h>

namespace panside {
namespace {

struct WordsStandFree : InLanguage {
    static void judge(QWidget& widget, const std::string& where) {
        const auto words = wordsOn(widget);
        EXPECT_GT(words.size(), 6u) << where;
        const double least = Measure{}.px(mm::smallWords) - 1.5;
        for (std::size_t i = 0; i < words.size(); ++i) {
            EXPECT_GE(words[i].capital, least) << where << words[i].text.toStdString();
            EXPECT_TRUE(QRectF{widget.rect()}.contains(words[i].box)) << where << words[i].text.toStdString();
            for (std::size_t j = i + 1; j < words.size(); ++j)
                EXPECT_FALSE(words[i].box.adjusted(1, 1, -1, -1).intersects(words[j].box.adjusted(1, 1, -1, -1)))
                    << where << words[i].text.toStdString() << " lies over " << words[j].text.toStdString();
        }
    }
    Units units() const { return GetParam() ? Units::metric : Units::us; }
};

Picture due() {
    Picture picture = scenes::calm();
    picture.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
    picture.drawDue = true;
    return picture;
}

struct Evening {
    const char* name;
    Picture (*picture)();
};
constexpr Evening evenings[] = {
    {"fresh", scenes::fresh},     {"calm", scenes::calm},           {"due", due},
    {"drawing", scenes::drawing}, {"scorching", scenes::scorching}, {"seen", scenes::seenAlarm},
    {"gone", scenes::goneUnseen}, {"doubt", scenes::doubt},         {"blind", scenes::blind},
    {"hand", scenes::handOnly},   {"burnout", scenes::burningOut},  {"late", scenes::late}};
constexpr QSize sizes[] = {{1024, 600}, {1366, 768}, {1920, 1080}, {2560, 1440}};

TEST_P(WordsStandFree, OnTheBoardAndAcrossTheRoomAtEverySize) {
    for (const QSize& size : sizes)
        for (const auto& [name, picture] : evenings) {
            const std::string where = std::string{name} + ' ' + std::to_string(size.width()) + ": ";
            Framed framed{size, {}, units()};
            scenes::fillTrace(framed.board->chart().trace());
            framed.show(picture());
            judge(framed.frame, where);
            AcrossView& across = framed.board->across();
            across.setParent(nullptr);
            across.resize(size);
            judge(across, "across, " + where);
            across.setParent(framed.board);
        }
}

// What an old hand thinks in: at every size, in both languages, whatever stands in the place of the number.
TEST_P(WordsStandFree, ThePansTemperatureAndTheOneToOpenAtStandOnTheBoardAtEverySize) {
    for (const QSize& size : sizes)
        for (const auto& [name, picture] : evenings) {
            const Picture shown = picture();
            const QString figure = drawCard(shown, units()).figure;
            if (figure.isEmpty())
                continue;
            Framed framed{size, {}, units()};
            framed.show(shown);
            QStringList said;
            for (const Word& word : wordsOn(framed.board->cards()))
                said << word.text;
            EXPECT_TRUE(said.join(u' ').contains(figure.simplified()))
                << name << ' ' << size.width() << ": " << figure.toStdString() << " is not in "
                << said.join(u'|').toStdString();
        }
}

// What to do first is said whole, with both answers beside it.
TEST_P(WordsStandFree, EveryStepOfEveryAlarmStandsInTheBarOnTheLowestScreen) {
    Framed framed{{1024, 600}, {}, units()};
    for (std::size_t i = 0; i < alarmCount; ++i)
        for (const bool drawing : {false, true}) {
            Picture picture = drawing ? scenes::drawing() : scenes::calm();
            AlarmPicture alarm;
            alarm.alarm = static_cast<Alarm>(i);
            alarm.priority = priorityOf(alarm.alarm);
            alarm.since = picture.at;
            picture.alarms = {alarm};
            framed.show(picture);
            auto* bar = framed.frame.findChild<SentenceBar*>();
            QString said;
            for (const Word& word : wordsOn(*bar))
                said += word.text;
            said.remove(u' ').remove(QChar{0x00a0});
            for (QString step : framed.board->sentenceShown().steps)
                EXPECT_TRUE(said.contains(step.remove(u' ').remove(QChar{0x00a0})))
                    << step.toStdString() << "\nin " << said.toStdString();
        }
}

INSTANTIATE_TEST_SUITE_P(InBothLanguages, WordsStandFree, testing::Bool());

} // namespace
} // namespace panside
