// The first questions: what they ask, and that their answers become the settings that the rig's page sets.
#include "tests/ui/console/at_work.h"
#include "ui/board/board.h"
#include "ui/frame/foot.h"
#include "ui/frame/frame_view.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/start/start_view.h"
#include "ui/words/place_words.h"

#include <QLabel>

namespace panside {
namespace {

const PlaceLaw& place(const char* name) { return allPlaces()[placeNamed(name).value()]; }

TEST(StartView, FindsAPlaceByTheFirstLettersOfAnyOfItsWords) {
    const auto names = [](const char* typed, Units units) {
        QStringList found;
        for (const std::size_t at : placesLike(QString::fromUtf8(typed), units))
            found << placeName(allPlaces()[at]);
        return found;
    };
    EXPECT_EQ(names("ve", Units::us), QStringList{"Vermont"});
    EXPECT_EQ(names("york", Units::us), QStringList{"New York"});
    EXPECT_EQ(names("QUÉ", Units::metric), QStringList{"Quebec"});
    EXPECT_EQ(names("new b", Units::us), QStringList{"New Brunswick"});
    // The person's own side of the border first.
    EXPECT_EQ(names("m", Units::us).front(), "Maine");
    EXPECT_EQ(names("m", Units::metric).front(), "Manitoba");
    EXPECT_EQ(names("", Units::us).size(), static_cast<qsizetype>(allPlaces().size()));
    EXPECT_TRUE(names("zz", Units::us).isEmpty());
}

// The figures are the table's own, whose sources stand beside them there and on the page.
TEST(StartView, SaysAPlacesNumbersInThePersonsUnits) {
    EXPECT_EQ(placeNumbers(place("Vermont"), Units::us),
              QString::fromUtf8("at least 66.9\u00a0°Brix (36.0\u00a0°Bé by its own chart) and at most "
                                "68.9\u00a0°Brix, stated at 60\u00a0°F."));
    EXPECT_EQ(placeNumbers(place("Ontario"), Units::metric),
              QString::fromUtf8("at least 66.0\u00a0°Brix and at most 68.9\u00a0°Brix, stated at "
                                "20\u00a0°C."));
}

struct FirstStart : ConsoleAtWork {
    FirstStart() : ConsoleAtWork{true, newcomersChoices()} {}
    std::optional<double> setting(Setting key) const {
        for (const Set& set : session->settings())
            if (set.key == key)
                return set.si;
        return std::nullopt;
    }
    void type(const char* text) {
        for (const char* at = text; *at; ++at)
            key(*at == '.' ? static_cast<int>(Qt::Key_Period) : QChar::fromLatin1(*at).toUpper().unicode());
    }
    bool asks() { return console->frame().page()->objectName() == u"start"; }
    QString title() {
        const auto* label = console->frame().page()->findChild<QLabel*>("title");
        return label ? label->text() : QString{};
    }
    void click(const QString& name) {
        auto* target = console->frame().page()->findChild<QWidget*>(name); // other pages have a pad too
        ASSERT_TRUE(target && target->isVisible()) << name.toStdString();
        EXPECT_GE(target->height(), Measure{96}.px(mm::target)) << name.toStdString();
        EXPECT_GE(target->width(), Measure{96}.px(mm::target)) << name.toStdString();
        QTest::mouseClick(target, Qt::LeftButton);
        QApplication::processEvents();
        EXPECT_TRUE(console->isActiveWindow()) << "no other window comes up: " << name.toStdString();
    }
};

TEST_F(FirstStart, AsksByKeysAloneAndSetsWhatTheRigPageSets) {
    EXPECT_FALSE(asks()) << "the cautions come first";
    key(Qt::Key_Return);
    ASSERT_TRUE(asks());
    key(Qt::Key_Return); // English
    key(Qt::Key_Return); // °F
    type("ve");
    key(Qt::Key_Return);
    type("900");
    key(Qt::Key_Return);
    type("8");
    key(Qt::Key_Return);
    type("16");
    key(Qt::Key_Return);
    key(Qt::Key_Return); // by hand
    EXPECT_EQ(console->frame().page(), &console->board());
    EXPECT_EQ(setting(Setting::place), static_cast<double>(placeNamed("Vermont").value()));
    EXPECT_NEAR(setting(Setting::elevation).value(), 900 * 0.3048, 1e-9);
    EXPECT_NEAR(setting(Setting::syrup_pan_area).value(), Area::squareFoot(8).si(), 1e-9);
    EXPECT_NEAR(setting(Setting::flue_pan_area).value(), Area::squareFoot(16).si(), 1e-9);
    EXPECT_EQ(console->frame().foot().said(), QString{}) << "nothing was left out";
    key(Qt::Key_F7);
    EXPECT_EQ(find<TypedLine>("setting_4")->text(), QString{"16"}) << "the rig's page shows the same";
    // The place's law holds from the first fact on.
    key(Qt::Key_F3);
    key(Qt::Key_F);
    key(Qt::Key_Return);
    EXPECT_EQ(count<Lit>(), 1);
    EXPECT_EQ(session->settings().size(), 4u);
}

TEST_F(FirstStart, AsksByMouseAlone) {
    QTest::mouseClick(find<QWidget>("leavePage"), Qt::LeftButton);
    ASSERT_TRUE(asks());
    click("startChoice_0");
    click("startChoice_1"); // metric
    click("placesMore");
    click("place_0");
    for (const char* face : {"pad_2", "pad_5", "pad_0"})
        click(QString::fromLatin1(face));
    click("startOn");
    click("pad_1");
    click("pad_next");
    click("pad_2");
    click("startOn");
    click("startChoice_0");
    EXPECT_EQ(console->frame().page(), &console->board());
    EXPECT_TRUE(setting(Setting::place));
    EXPECT_EQ(setting(Setting::elevation), 250);
    EXPECT_EQ(setting(Setting::syrup_pan_area), 1);
    EXPECT_EQ(setting(Setting::flue_pan_area), 2);
}

TEST_F(FirstStart, EachQuestionCanBeLeftOutAndTheFootSaysWhatWasOnce) {
    key(Qt::Key_Return);
    for (std::size_t i = 0; i < startQuestions().size(); ++i) {
        ASSERT_TRUE(asks());
        key(Qt::Key_PageDown);
    }
    EXPECT_EQ(console->frame().page(), &console->board());
    EXPECT_TRUE(session->settings().empty());
    EXPECT_TRUE(console->frame().foot().said().startsWith("Left out: the place, the height, the pans."));
    EXPECT_EQ(console->choices().askedFor, QString::fromStdString(console->journalPlace().string()))
        << "they do not come by themselves again";
}

TEST_F(FirstStart, EscapeLeavesThemAllAndAKeyOfTheBoilIsTakenMeanwhile) {
    key(Qt::Key_Return);
    ASSERT_TRUE(asks());
    key(Qt::Key_F);
    key(Qt::Key_Return);
    EXPECT_EQ(count<Lit>(), 1);
    ASSERT_TRUE(asks());
    key(Qt::Key_Escape);
    EXPECT_EQ(console->frame().page(), &console->board());
}

TEST_F(FirstStart, RefusesWhatCannotBeAndGoesBack) {
    key(Qt::Key_Return);
    key(Qt::Key_PageDown);
    key(Qt::Key_PageDown);
    const QString asked = title();
    type("zz");
    key(Qt::Key_Return);
    EXPECT_EQ(title(), asked) << "no place is called so";
    key(Qt::Key_PageDown);
    type("99999");
    key(Qt::Key_Return);
    EXPECT_FALSE(console->frame().page()->findChild<QLabel*>("said")->text().isEmpty());
    EXPECT_FALSE(setting(Setting::elevation));
    key(Qt::Key_PageUp);
    EXPECT_EQ(title(), asked);
}

TEST_F(ConsoleAtWork, AJournalThatHasSomethingIsNotAsked) {
    EXPECT_EQ(console->frame().page(), &console->board());
    key(Qt::Key_F7);
    key(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(console->frame().page()->objectName(), "start") << "they stand under F7, 2 all the same";
}

} // namespace
} // namespace panside
