// Every alarm that stands says why, with its figure and its limit.
#include "core/boil/show_ground.h"

#include "tests/core/boil/boil_log.h"

#include <gmock/gmock.h>

#include <set>

namespace panside {
namespace {

using test::BoilLog;
using test::noon;
using test::Rows;
using testing::HasSubstr;

const AlarmPicture* find(const Picture& picture, Alarm alarm) {
    for (const AlarmPicture& one : picture.alarms)
        if (one.alarm == alarm && one.stands())
            return &one;
    return nullptr;
}

std::string firstWhy(const Picture& picture, Alarm alarm) {
    const auto* found = find(picture, alarm);
    return found && !found->why.empty() ? groundText(found->why.front()) : std::string{};
}

TEST(Ground, EveryKindHasASentenceOfItsOwn) {
    std::set<std::string_view> all;
    for (std::size_t i = 0; i < groundCount; ++i)
        all.insert(groundSentence(static_cast<GroundKind>(i)).text);
    EXPECT_EQ(all.size(), groundCount);
    EXPECT_FALSE(all.contains({}));
}

TEST(Ground, FillsInWhatWasSeenItsLimitAndTheReading) {
    EXPECT_EQ(groundText({GroundKind::panUnderHalf, Length::millimetre(12), Length::millimetre(19)}),
              "the syrup pan is at 12 mm; half of its running depth is 19 mm");
    EXPECT_EQ(groundText({GroundKind::nothingRead, Duration{14}, Duration{10}, Series::stack}),
              "stack: nothing read for 14 s; 10 s is the longest it should take");
    EXPECT_EQ(groundText({GroundKind::stackOverSet, Temperature::celsius(700), Temperature::celsius(650)}),
              "flue gas at 700.0 degC, the limit that was set is 650.0 degC");
}

TEST(Ground, AnAlarmSaysWhy) {
    Rows rows;
    rows.add(0, "set,40,mm,key=running_depth").add(0, "set,300,kPa,key=filter_limit").add(0, "lit,,,");
    for (int t = 0; t <= 60; ++t) {
        rows.read(t, "pan_level", 18, "mm");
        rows.read(t, "filter_pressure", 350, "kPa");
        if (t < 40)
            rows.read(t, "stack", 300 + t % 3, "degC");
    }
    const auto picture = rows.at(60);
    EXPECT_EQ(firstWhy(picture, Alarm::pan_low), "the syrup pan is at 18 mm; half of its running depth is 20 mm");
    EXPECT_THAT(firstWhy(picture, Alarm::filter_pressure_high), HasSubstr("its limit is 300.0 kPa"));
    EXPECT_THAT(firstWhy(picture, Alarm::probe_silent), HasSubstr("stack: nothing read for 21 s"));
    std::string json;
    appendJson(json, picture);
    EXPECT_THAT(json, HasSubstr(R"("alarmWhy":{)"));
    EXPECT_THAT(json, HasSubstr(R"("pan_low":["the syrup pan is at 18 mm; half of its running depth is 20 mm"])"));
}

// Whatever stands, and as long as it does: none without a reason, in a night in which most things go wrong.
TEST(Ground, NoneStandsWithoutAReason) {
    BoilLog log;
    log.stack = [](int t) { return 300 + 60 * std::sin(t / 90.0); };
    log.cycle();
    log.cycle();
    log.hold(68, 300);
    log.stack = [](int) { return 720.0; };
    log.feeds = 0;
    log.climb(68, 74.9, 400);
    log.hold(74.9, 60);
    int stood = 0;
    replay(log.rows.facts, {}, [&](const Picture& picture) {
        for (const AlarmPicture& alarm : picture.alarms) {
            EXPECT_EQ(alarm.stands(), !alarm.why.empty()) << nameOf(alarm.alarm);
            for (const Ground& ground : alarm.why)
                EXPECT_EQ(groundText(ground).find('%'), std::string::npos) << groundText(ground);
            stood += alarm.stands();
        }
    });
    EXPECT_GT(stood, 300);
}

// A pan that has turned to syrup and stands as deep as ever is drawn on; one that runs dry is not.
TEST(Ground, AScorchIsToldApartByItsCause) {
    const auto causeOf = [](bool deep, std::optional<double> level) {
        BoilLog log;
        log.rows.add(0, "set,40,mm,key=running_depth");
        const auto second = [&](double brix, double depth) {
            if (level)
                log.rows.read(log.now, "pan_level", depth + 0.3 * (log.now % 2), "mm");
            log.second(brix);
        };
        for (int cycle = 0; cycle < 3; ++cycle) {
            for (int t = 0; t < 700; ++t)
                second(61 + 6.3 * t / 700, level.value_or(0));
            log.rows.add(log.now, "draw_open,,,");
            for (int t = 0; t < 80; ++t)
                second(67.3 - 6.3 * t / 80, level.value_or(0));
            log.rows.add(log.now, "draw_close,3,L,");
        }
        std::optional<ScorchCause> cause;
        for (int t = 0; t < 900 && !cause; ++t) {
            second(61 + 15.0 * t / 700, deep ? level.value_or(0) : level.value_or(0) * (1 - t / 1000.0));
            if (t % 5 != 0)
                continue;
            const Picture now = log.picture();
            if (const auto* alarm = find(now, Alarm::scorch_risk))
                cause = scorchCause(*alarm);
        }
        return cause;
    };
    EXPECT_EQ(causeOf(true, 40.0), ScorchCause::allSyrup);
    EXPECT_EQ(causeOf(false, 40.0), ScorchCause::runsDry);
    EXPECT_EQ(causeOf(true, {}), ScorchCause::unknown);
}

// One list for the page and the terminal: alarms, doubts, what is missing, what a forecast goes by.
TEST(Ground, IsShownOfAlarmsReadingsAndFiguresAlike) {
    BoilLog log;
    log.rows.add(0, "set,40,mm,key=running_depth");
    log.climb(61, 65, 700);
    for (int t = 0; t < 30; ++t) {
        log.rows.read(log.now, "pan_level", 12 + t % 2, "mm");
        log.second(65);
    }
    std::set<std::string> all;
    const auto picture = log.picture();
    for (const ToldGround& told : groundsOf(picture))
        all.insert(toldText(told));
    const auto has = [&](const std::string& text) {
        return std::any_of(all.begin(), all.end(), [&](const std::string& one) { return one.starts_with(text); });
    };
    EXPECT_TRUE(has("pan_low: the syrup pan is at"));
    EXPECT_TRUE(has("sapLeftS: no tank level"));
    EXPECT_EQ(has("drawEta: from "), picture.drawEta.has_value());
    EXPECT_EQ(groundsOf(picture).front().of, (std::variant<Alarm, Shown, Series>{Alarm::pan_low}));
}

// Five inches over a running depth of one and a half: sap runs in faster than it boils off.
TEST(Ground, AFloatThatIsStuckOpenIsTold) {
    const auto told = [](double millimetre, bool lit) {
        Rows rows;
        rows.add(0, "set,38,mm,key=running_depth").read(0, "pressure", 101.325, "kPa");
        if (lit)
            rows.add(0, "lit,,,");
        for (int t = 0; t <= 300; ++t) {
            rows.read(t, "syrup_pan", 101.5 + 0.02 * (t % 5), "degC");
            rows.read(t, "pan_level", millimetre + t % 2, "mm");
        }
        const auto picture = rows.at(300);
        return std::count(picture.why.begin(), picture.why.end(), Why{Series::pan_level, Reason::overfull});
    };
    EXPECT_EQ(told(127, true), 1);
    EXPECT_EQ(told(60, true), 0) << "a pan that was let rise";
    EXPECT_EQ(told(127, false), 0) << "flooded before the fire is lit";
}

} // namespace
} // namespace panside
