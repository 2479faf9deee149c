#include "ui/entry/entry_form.h"

#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "ui/entry/unit_slip.h"
#include "ui/words/reading_words.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant now = *instantIn("2026-03-14T22:42:00Z");

Fact only(const EntryForm& form) {
    const auto made = factsOf(form);
    if (const auto* problem = std::get_if<EntryProblem>(&made)) {
        ADD_FAILURE() << problem->words.toStdString();
        return {.at = now, .what = Note{}};
    }
    EXPECT_EQ(std::get<std::vector<Fact>>(made).size(), 1U);
    return std::get<std::vector<Fact>>(made).front();
}

EntryForm formOf(Action action, Units units = Units::us, const Picture& picture = {}) {
    return formFor(action, picture, units, now);
}

TEST(EntryForm, AKeyAloneIsAFactStampedWhenItWasPressed) {
    EXPECT_EQ(rowOf(only(formOf(Action::fireLit))), "2026-03-14T22:42:00Z,lit,,,");
    EXPECT_EQ(rowOf(only(formOf(Action::fired))), "2026-03-14T22:42:00Z,fired,,,");
    EXPECT_EQ(rowOf(only(formOf(Action::drawOpen))), "2026-03-14T22:42:00Z,draw_open,,,");
    EXPECT_EQ(rowOf(only(formOf(Action::panSwapped))), "2026-03-14T22:42:00Z,pan_swapped,,,");
    EXPECT_EQ(rowOf(only(formOf(Action::stopFiring))), "2026-03-14T22:42:00Z,shutdown,,,");
}

TEST(EntryForm, TenMinutesAgoIsWhenItHappenedAndNowIsWhenItWasEntered) {
    EntryForm form = formOf(Action::fired);
    form.earlier = std::chrono::minutes{10};
    const Fact fact = only(form);
    EXPECT_EQ(textOf(fact.at), "2026-03-14T22:32:00Z");
    EXPECT_EQ(fact.entered, now);
}

TEST(EntryForm, ADrawIsClosedWithOrWithoutItsVolumeInThePersonsUnit) {
    EXPECT_EQ(only(formOf(Action::drawClose)).what, What{DrawClosed{}});
    EntryForm form = formOf(Action::drawClose);
    form.answer(QStringLiteral("volume"), QStringLiteral("1.5"));
    const auto closed = std::get<DrawClosed>(only(form).what);
    EXPECT_NEAR(closed.volume->value.gallon(), 1.5, 1e-12);
    EXPECT_EQ(closed.volume->unit, Unit::gal);
}

TEST(EntryForm, ADensityCheckKeepsTheCupAndTheScaleItWasReadOn) {
    EntryForm form = formOf(Action::densityCheck);
    form.answer(QStringLiteral("reading"), QStringLiteral("59.1"));
    form.answer(QStringLiteral("cup"), QStringLiteral("211"));
    const auto check = std::get<DensityCheck>(only(form).what);
    EXPECT_EQ(check.reading, 59.1);
    EXPECT_EQ(check.unit, Unit::brix);
    EXPECT_NEAR(check.cup->value.fahrenheit(), 211, 1e-9);
    EXPECT_NEAR(check.scale->value.fahrenheit(), 60, 1e-9);
}

TEST(EntryForm, ASevenTypedForASixtySevenIsNotKept) {
    EntryForm form = formOf(Action::densityCheck);
    form.answer(QStringLiteral("reading"), QStringLiteral("7"));
    EXPECT_TRUE(std::holds_alternative<EntryProblem>(factsOf(form)));
}

TEST(EntryForm, ANumberMayHaveAComma) {
    EntryForm form = formOf(Action::sapIn, Units::metric);
    form.answer(QStringLiteral("volume"), QStringLiteral("812,5"));
    EXPECT_NEAR(std::get<SapIn>(only(form).what).volume.value.litre(), 812.5, 1e-9);
}

TEST(EntryForm, SapMayTellItsTemperatureAndTheScaleItWasReadOn) {
    EntryForm form = formOf(Action::sapIn);
    form.answer(QStringLiteral("volume"), QStringLiteral("400"));
    form.answer(QStringLiteral("brix"), QStringLiteral("2.3"));
    EXPECT_FALSE(std::get<SapIn>(only(form).what).scale) << "as read, unless somebody says otherwise";
    form.answer(QStringLiteral("temperature"), QStringLiteral("60"));
    form.answer(QStringLiteral("calibrated"), QStringLiteral("38 °F"));
    const auto sap = std::get<SapIn>(only(form).what);
    EXPECT_NEAR(sap.temperature->value.fahrenheit(), 60, 1e-9);
    EXPECT_NEAR(sap.scale->value.fahrenheit(), 38, 1e-9);
}

TEST(EntryForm, SapWithoutAVolumeOrBelowNothingSaysWhatToDo) {
    EntryForm form = formOf(Action::sapIn);
    const auto missing = factsOf(form);
    ASSERT_TRUE(std::holds_alternative<EntryProblem>(missing));
    EXPECT_EQ(std::get<EntryProblem>(missing).field, QStringLiteral("volume"));
    form.answer(QStringLiteral("volume"), QStringLiteral("-20"));
    EXPECT_TRUE(std::holds_alternative<EntryProblem>(factsOf(form)));
}

TEST(EntryForm, AReadingByHandSaysSo) {
    EntryForm form = formOf(Action::handReading);
    form.answer(QStringLiteral("value"), QStringLiteral("215.6"));
    const auto reading = std::get<Reading>(only(form).what);
    EXPECT_TRUE(reading.byHand());
    EXPECT_EQ(reading.series, Series::syrup_pan);
    EXPECT_NEAR(reading.temperature().fahrenheit(), 215.6, 1e-9);
}

TEST(EntryForm, TheFiringIsOfferedToWhoseTurnItIs) {
    Picture picture;
    picture.crew = {"Odile", "Bram"};
    picture.turn = "Bram";
    EXPECT_EQ(only(formOf(Action::fired, Units::us, picture)).by, "Bram");
}

// The key alone answers the call: the load goes to the fire that is called, another is chosen by name.
TEST(EntryForm, AFiringIsOfTheFireThatIsCalledUnlessAnotherIsChosen) {
    Picture picture;
    EntryForm first = formOf(Action::fired, Units::us, picture);
    first.answer(QStringLiteral("fire"), QStringLiteral("finishing"));
    EXPECT_EQ(rowOf(only(first)), "2026-03-14T22:42:00Z,fired,,,fire=finishing");
    picture.fires = {{"finishing", Duration{30}, Duration{600}, now}};
    EXPECT_EQ(rowOf(only(formOf(Action::fired, Units::us, picture))), "2026-03-14T22:42:00Z,fired,,,fire=finishing");
    picture.fires.push_back({"", Duration{90}, Duration{480}, now});
    EntryForm form = formOf(Action::fired, Units::us, picture);
    EXPECT_EQ(rowOf(only(form)), "2026-03-14T22:42:00Z,fired,,,fire=finishing");
    ASSERT_EQ(form.field(QStringLiteral("fire"))->choices, (QStringList{"finishing", "evaporator"}));
    form.answer(QStringLiteral("fire"), QStringLiteral("evaporator"));
    EXPECT_EQ(rowOf(only(form)), "2026-03-14T22:42:00Z,fired,,,");
}

TEST(EntryForm, CrewComeOnAndLeaveByName) {
    EntryForm form = formOf(Action::crew);
    form.answer(QStringLiteral("name"), QStringLiteral("Odile"));
    EXPECT_EQ(only(form).by, "Odile");
    form.answer(QStringLiteral("way"), form.field(QStringLiteral("way"))->choices[1]);
    EXPECT_EQ(std::get<Crew>(only(form).what).off, "Odile");
}

TEST(EntryForm, AScorchAlarmIsNotAmongThoseThatCanBeShelved) {
    Picture picture;
    picture.alarms = {
        {.alarm = Alarm::scorch_risk, .priority = Priority::high, .state = AlarmState::unseen, .since = now},
        {.alarm = Alarm::fire_overdue, .priority = Priority::medium, .state = AlarmState::seen, .since = now}};
    EntryForm form = formOf(Action::alarmShelve, Units::us, picture);
    EXPECT_EQ(form.field(QStringLiteral("alarm"))->choices.size(), 1);
    form.answer(QStringLiteral("minutes"), QStringLiteral("20"));
    EXPECT_EQ(only(form).what, (What{AlarmShelved{"fire_overdue", Duration{1200}}}));
}

TEST(EntryForm, EndingAShiftSaysWhatWouldGoOutOfSight) {
    Picture picture;
    EXPECT_TRUE(formOf(Action::shiftEnd, Units::us, picture).loss.isEmpty());
    picture.litAt = now;
    EXPECT_TRUE(formOf(Action::shiftEnd, Units::us, picture).loss.startsWith(QStringLiteral("The fire is lit.")));
    picture.drawing = true;
    EXPECT_TRUE(formOf(Action::shiftEnd, Units::us, picture).loss.startsWith(QStringLiteral("The draw is open and")));
    picture.drawing = false;
    picture.shutdownAt = now;
    EXPECT_TRUE(formOf(Action::shiftEnd, Units::us, picture).loss.isEmpty());
}

EntryForm readingOf(const char* kind, const char* typed, Units units) {
    EntryForm form = formOf(Action::handReading, units);
    form.answer(QStringLiteral("reading"), QString::fromLatin1(kind));
    for (const ReadingRow& row : allReadings())
        if (readingName(row.series) == QLatin1String(kind))
            for (EntryField& field : form.fields)
                if (field.name == QLatin1String("value"))
                    field.unit = unitOf(row.dimension, units);
    form.answer(QStringLiteral("value"), QString::fromLatin1(typed));
    return form;
}

TEST(UnitSlip, WhatCannotBeIsAskedAboutWithTheLikelySlip) {
    const struct {
        const char *kind, *typed;
        Units units;
        const char *meant, *kept; // empty: no such answer
    } cases[] = {{"syrup pan", "217", Units::metric, "It is 217 °F", ""},
                 {"syrup pan", "103.1", Units::us, "It is 103.1 °C", "It is 103.1 °F"}, // a pan that is cold, perhaps
                 {"barometer", "99", Units::us, "It is 99 kPa", ""},
                 {"barometer", "1013", Units::metric, "It is 1013 hPa", ""},
                 {"sap feed", "380", Units::us, "", ""}};
    for (const auto& [kind, typed, units, meant, kept] : cases) {
        const auto slip = slipOf(readingOf(kind, typed, units));
        ASSERT_TRUE(slip) << typed;
        EXPECT_EQ(slip->asMeant, QString::fromUtf8(meant)
                                     .replace(u' ', QChar{0x00a0})
                                     .replace(QStringLiteral("It\u00a0is\u00a0"), QStringLiteral("It is ")));
        EXPECT_EQ(slip->asTyped, QString::fromUtf8(kept)
                                     .replace(u' ', QChar{0x00a0})
                                     .replace(QStringLiteral("It\u00a0is\u00a0"), QStringLiteral("It is ")));
    }
    EXPECT_FALSE(slipOf(readingOf("syrup pan", "103.1", Units::metric)));
    EXPECT_FALSE(slipOf(readingOf("syrup pan", "217.4", Units::us)));
    EXPECT_FALSE(slipOf(readingOf("barometer", "29.12", Units::us)));
    EXPECT_FALSE(slipOf(readingOf("stack", "650", Units::us)));
}

TEST(UnitSlip, TakenAsMeantItIsKeptAsItWasWritten) {
    EntryForm form = readingOf("syrup pan", "217", Units::metric);
    takeAsMeant(form, *slipOf(form));
    EXPECT_FALSE(slipOf(form));
    EXPECT_EQ(rowOf(only(form)), "2026-03-14T22:42:00Z,syrup_pan,217,degF,probe=hand");
}

// 22 for 2.2, and sap at 38 that was read in the other scale; sap at 380 cannot be, in either.
TEST(UnitSlip, SapThatNoTreeGivesIsAskedAbout) {
    const auto sapOf = [](const char* brix, const char* temperature, Units units) {
        EntryForm form = formOf(Action::sapIn, units);
        form.answer(QStringLiteral("volume"), QStringLiteral("300"));
        form.answer(QStringLiteral("brix"), QString::fromLatin1(brix));
        form.answer(QStringLiteral("temperature"), QString::fromLatin1(temperature));
        return form;
    };
    EntryForm form = sapOf("22", "", Units::metric);
    const auto slip = slipOf(form);
    ASSERT_TRUE(slip && !slip->asTyped.isEmpty());
    takeAsMeant(form, *slip);
    EXPECT_FALSE(slipOf(form));
    EXPECT_TRUE(rowOf(only(form)).ends_with("brix=2.2")) << rowOf(only(form));
    EXPECT_FALSE(slipOf(sapOf("8", "4", Units::metric))) << "concentrate";
    EXPECT_EQ(slipOf(sapOf("2.2", "38", Units::metric)).value_or(UnitSlip{}).unit, Unit::degF);
    EXPECT_FALSE(slipOf(sapOf("2.2", "38", Units::us)));
    const auto hot = slipOf(sapOf("2.2", "380", Units::us));
    EXPECT_TRUE(hot && hot->asTyped.isEmpty());
}

TEST(UnitSlip, ACupHotterThanAnySyrupWasReadInTheOtherScale) {
    EntryForm form = formOf(Action::densityCheck, Units::metric);
    form.answer(QStringLiteral("reading"), QStringLiteral("59.1"));
    form.answer(QStringLiteral("cup"), QStringLiteral("205"));
    const auto slip = slipOf(form);
    ASSERT_TRUE(slip);
    EXPECT_EQ(slip->unit, Unit::degF);
    EXPECT_TRUE(slip->asTyped.isEmpty());
}

EntryForm barometerAt(const char* kilopascal, std::optional<Length> elevation) {
    EntryForm form = formOf(Action::handReading, Units::metric);
    form.answer(QStringLiteral("reading"), QStringLiteral("barometer"));
    for (EntryField& field : form.fields)
        if (field.name == QLatin1String("value"))
            field.unit = Unit::kPa;
    form.answer(QStringLiteral("value"), QString::fromLatin1(kilopascal));
    form.elevation = elevation;
    return form;
}

// ISO 2533:1975, table 1: 97.773 kPa at 300 m and 101.325 kPa at sea level in the standard atmosphere.
TEST(EntryForm, ASeaLevelFigureTypedAsABarometerIsAskedAboutWhereTheHeightIsKnown) {
    const auto question = isItSeaLevel(barometerAt("101.5", Length::metre(300)), Units::metric);
    ASSERT_TRUE(question);
    EXPECT_TRUE(question->words.contains(QStringLiteral("97.77"))) << question->words.toStdString();
    EXPECT_TRUE(question->here.contains(QStringLiteral("101.5"))) << question->here.toStdString();
    // The hypsometric equation by hand, dry air, column at 273.15 + 0.00325 x 300 K:
    // 101.5 exp(-9.80665 x 300 / (287.05287 x 274.125)) = 97.77.
    EXPECT_TRUE(question->reported.contains(QStringLiteral("97.7"))) << question->reported.toStdString();
}

TEST(EntryForm, ABarometerThatTheWeatherMakesIsNotAskedAbout) {
    EXPECT_FALSE(isItSeaLevel(barometerAt("98.9", Length::metre(300)), Units::metric)) << "a fair day at that height";
    EXPECT_FALSE(isItSeaLevel(barometerAt("94.5", Length::metre(300)), Units::metric))
        << "a storm: nowhere near a report";
    EXPECT_FALSE(isItSeaLevel(barometerAt("101.5", Length::metre(30)), Units::metric)) << "it would be the same";
    EXPECT_FALSE(isItSeaLevel(barometerAt("101.5", std::nullopt), Units::metric)) << "the height is not known";
}

TEST(EntryForm, WhatIsAReportIsKeptAsOneWithTheNumberThatWasTyped) {
    EntryForm form = barometerAt("101.5", Length::metre(300));
    takeAsReported(form);
    EXPECT_EQ(rowOf(only(form)), "2026-03-14T22:42:00Z,sea_level_pressure,101.5,kPa,probe=hand");
}

} // namespace
} // namespace panside
