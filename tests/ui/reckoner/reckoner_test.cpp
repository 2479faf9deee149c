#include "ui/look/press.h"
#include "ui/reckoner/reckoner_screen.h"
#include "ui/reckoner/reckoner_words.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <gtest/gtest.h>

namespace panside {
namespace {

std::size_t sumNamed(std::string_view kind) {
    for (std::size_t i = 0; i < sums::reckonKinds().size(); ++i)
        if (sums::reckonKinds()[i].name == kind)
            return i;
    throw std::runtime_error{"no such sum"};
}

TEST(ReckonerForm, AsksForEverySumAndEveryWayWhatItNeeds) {
    for (std::size_t sum = 0; sum < sums::reckonKinds().size(); ++sum)
        for (std::size_t way = 0; way < static_cast<std::size_t>(waysOf(sum).size()); ++way) {
            ReckonerForm form = reckonerForm(sum, way, Units::metric);
            ASSERT_FALSE(form.fields.empty());
            for (ReckonerField& field : form.fields)
                if (field.choices.isEmpty())
                    field.text = "1";
            // Whatever the number, it is never a question put wrongly: the form asks for what the sum takes.
            const auto answer = reckonerAnswer(form);
            EXPECT_NE(answer.state, ReckonerAnswer::State::waiting);
            EXPECT_FALSE(answer.words.contains("no such argument") || answer.words.contains("needed"))
                << answer.words.toStdString();
        }
}

TEST(ReckonerForm, WaitsForWhatIsMissingAndNamesIt) {
    ReckonerForm form = reckonerForm(sumNamed("target"), 0, Units::us);
    form.fields[0].text = "29.15";
    const auto answer = reckonerAnswer(form);
    EXPECT_EQ(answer.state, ReckonerAnswer::State::waiting);
    EXPECT_EQ(answer.argument, "density");
    EXPECT_EQ(answer.words, "Type: Density.");
}

TEST(ReckonerForm, NamesTheFieldAndTheLikelySlip) {
    ReckonerForm form = reckonerForm(sumNamed("boiling"), 0, Units::metric);
    form.fields[0].text = "29.9";
    form.fields[0].unit = 1; // kPa
    const auto answer = reckonerAnswer(form);
    EXPECT_EQ(answer.state, ReckonerAnswer::State::refused);
    EXPECT_EQ(answer.words, "Barometer at the pan: it must lie from 50 to 110 kPa. Did you mean 29.9inHg?");
}

// Trade figure: 0.40 gallon of water to ten of 68.9 brix makes 66.9 (computed from sucrose tables).
TEST(ReckonerForm, BlendsTwoParts) {
    ReckonerForm form = reckonerForm(sumNamed("blend"), 0, Units::us);
    const char* typed[] = {"10", "68.9", "0.4", "0"};
    for (std::size_t i = 0; i < 4; ++i)
        form.fields[i].text = typed[i];
    const auto answer = reckonerAnswer(form);
    ASSERT_EQ(answer.state, ReckonerAnswer::State::done);
    EXPECT_EQ(answer.others.front().second, "66.91 °Brix");
}

TEST(ReckonerForm, TakesACommaAndALongMinusAsTyped) {
    ReckonerForm form = reckonerForm(sumNamed("rtd"), 1, Units::metric);
    form.fields[0].text = QString{QChar{0x2212}} + "10,0";
    const auto answer = reckonerAnswer(form);
    ASSERT_EQ(answer.state, ReckonerAnswer::State::done);
    EXPECT_EQ(answer.others.front().second, "96.086 ohm"); // IEC 60751 prints 96.09 at -10 degC
}

// A rise of 4 K is 7.2 °F, and the water's 100 °C are 212: the words never mix the two up.
TEST(ReckonerWords, ADifferenceIsNotShiftedBy32) {
    const auto sentence =
        sums::say("Water at %1 °C, syrup %2 C° above it, %3 L, %4 mm.", {"100.00", "4.00", "3.785", "51"});
    EXPECT_EQ(inWords(sentence, Units::us), "Water at 212.0 °F, syrup 7.20 °F above it, 1.000 gal, 2.0 in.");
    EXPECT_EQ(inWords(sentence, Units::metric), "Water at 100.00 °C, syrup 4.00 °C above it, 3.785 L, 51 mm.");
    EXPECT_EQ(sums::asRead(sentence), "Water at 100.00 °C, syrup 4.00 °C above it, 3.785 L, 51 mm.");
    EXPECT_EQ(figureInWords(sums::say("%1 °C (%2 °F)", {"100.00", "212.0"}), Units::us), "212.0 °F (100.00 °C)");
}

// Every word of the sums and of their forms stands in the French translation.
TEST(ReckonerWords, AreAllThereInFrench) {
    QString french;
    const QDir folder{QStringLiteral(PANSIDE_SOURCE "/resources/translations")};
    for (const QString& name : folder.entryList({QStringLiteral("*_fr.ts")})) {
        QFile file{folder.filePath(name)};
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        french +=
            QString::fromUtf8(file.readAll()).replace("&apos;", "'").replace("&quot;", "\"").replace("&amp;", "&");
    }
    const auto isThere = [&french](std::string_view text) {
        const QString source =
            "<source>" + QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())) + "</source>";
        return french.contains(source);
    };
    for (std::size_t sum = 0; sum < sums::reckonKinds().size(); ++sum) {
        EXPECT_TRUE(isThere(sums::reckonKinds()[sum].title));
        for (std::size_t way = 0; way < static_cast<std::size_t>(waysOf(sum).size()); ++way)
            for (const ReckonerField& field : reckonerForm(sum, way, Units::us).fields) {
                EXPECT_TRUE(isThere(field.label.toStdString())) << field.label.toStdString();
                for (const QString& choice : field.choices)
                    EXPECT_TRUE(isThere(choiceInWords(choice).toStdString())) << choice.toStdString();
            }
        sums::Arguments arguments;
        for (const auto& parameter : sums::reckonKinds()[sum].parameters)
            if (parameter.needed || parameter.name == "pressure" || parameter.name == "volume" ||
                parameter.name == "ohm" || parameter.name == "mv" ||
                (parameter.name == "density" && parameter.example == "66.9brix"))
                arguments.emplace_back(parameter.name, parameter.example);
        const auto outcome = sums::reckon(sums::reckonKinds()[sum].name, arguments);
        const auto* answer = std::get_if<sums::Answer>(&outcome);
        ASSERT_TRUE(answer) << sums::reckonKinds()[sum].name;
        EXPECT_TRUE(isThere(answer->caution)) << answer->caution;
        EXPECT_TRUE(isThere(answer->uncertainty.text)) << answer->uncertainty.text;
        for (const auto& figure : answer->figures)
            EXPECT_TRUE(isThere(figure.name)) << figure.name;
        for (const auto& step : answer->sum)
            EXPECT_TRUE(isThere(step.text)) << step.text;
    }
}

class ReckonerScreenTest : public testing::Test {
protected:
    void SetUp() override {
        screen.display(Units::us, Dress{});
        screen.resize(1366, 768);
        screen.show();
        screen.activateWindow();
        QApplication::processEvents();
    }
    QString shown(const char* name) { return screen.findChild<QLabel*>(name)->text(); }
    void press(const QString& name) {
        auto* key = screen.findChild<Press*>(name);
        ASSERT_TRUE(key) << name.toStdString();
        key->click();
        QApplication::processEvents();
    }
    void hit(QWidget* at, int key, const QString& text = {}) {
        QKeyEvent down{QEvent::KeyPress, key, Qt::NoModifier, text};
        QApplication::sendEvent(at, &down);
        QApplication::processEvents();
    }
    void type(const QString& text) {
        for (const QChar c : text)
            hit(screen.focusWidget(), 0, c);
    }
    ReckonerScreen screen;
};

TEST_F(ReckonerScreenTest, AnswersWhileTwoNumbersAreTyped) {
    press(QStringLiteral("sum_%1").arg(sumNamed("target")));
    type("29.92");
    hit(screen.focusWidget(), Qt::Key_Return);
    // Enter goes on to the unit, then to the next number.
    screen.findChild<QLineEdit*>("density")->setFocus();
    type("66.9");
    EXPECT_EQ(shown("answerName"), "Syrup boils at");
    EXPECT_TRUE(shown("answer").startsWith("219.5")) << shown("answer").toStdString();
    EXPECT_TRUE(shown("sum").contains("66.90 °Brix boils"));
    EXPECT_TRUE(shown("foot").contains("Source: "));
    EXPECT_TRUE(shown("foot").contains("the hydrometer decides"));
}

TEST_F(ReckonerScreenTest, ThePadTypesWhereTheFocusIs) {
    press(QStringLiteral("sum_%1").arg(sumNamed("rtd")));
    for (const char* face : {"1", "3", "8"})
        press(QStringLiteral("pad_") + face);
    press(QStringLiteral("pad_."));
    for (const char* face : {"5", "1"})
        press(QStringLiteral("pad_") + face);
    EXPECT_EQ(screen.findChild<QLineEdit*>("ohm")->text(), "138.51");
    EXPECT_EQ(shown("answer"), "212.0 °F (100.01 °C)");
    press(QStringLiteral("pad_⌫"));
    EXPECT_EQ(screen.findChild<QLineEdit*>("ohm")->text(), "138.5");
}

TEST_F(ReckonerScreenTest, AUnitTurnsByItsKeyAndANullIsADash) {
    type("987"); // the first sum and its one field stand ready
    EXPECT_EQ(shown("answer"), "—");
    EXPECT_TRUE(shown("sum").contains("Did you mean 987hPa?")) << shown("sum").toStdString();
    press(QStringLiteral("unit_pressure"));
    EXPECT_EQ(shown("answer"), "210.6 °F (99.24 °C)");
}

TEST_F(ReckonerScreenTest, EverythingToPressIsTwelveMillimetresAndNothingIsCut) {
    const Dress dress;
    for (std::size_t sum = 0; sum < sums::reckonKinds().size(); ++sum) {
        screen.choose(sum);
        QApplication::processEvents();
        EXPECT_LE(screen.minimumSizeHint().width(), 1366) << sum;
        EXPECT_LE(screen.minimumSizeHint().height(), 768) << sum;
        for (const auto* key : screen.findChildren<Press*>())
            if (key->isVisible()) {
                EXPECT_GE(key->height(), dress.px(mm::target)) << key->objectName().toStdString();
                EXPECT_GE(key->width(), dress.px(mm::target)) << key->objectName().toStdString();
                EXPECT_TRUE(screen.rect().contains(QRect{key->mapTo(&screen, QPoint{}), key->size()}));
            }
    }
}

TEST_F(ReckonerScreenTest, EscapeLeaves) {
    bool left = false;
    QObject::connect(&screen, &ReckonerScreen::left, [&left] { left = true; });
    hit(&screen, Qt::Key_Escape);
    EXPECT_TRUE(left);
}

} // namespace
} // namespace panside
