#include "ui/season/season_view.h"

#include "core/boil/shift_log.h"
#include "ui/season/tuning_view.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace panside {
namespace {

SeasonShift seasonNight(const char* began, double syrupLitre, const char* hand = "Maud") {
    ShiftAccount account;
    account.first = instantIn(began).value();
    account.last = account.first + std::chrono::minutes{485};
    account.sapIn = Volume::gallon(410);
    account.sapSugar = Brix::degrees(2.2);
    account.syrup = Volume::litre(syrupLitre);
    account.draws = account.drawsMeasured = account.drawsJudged = 8;
    account.drawsInBand = 6;
    account.loads = account.loadsWeighed = 50;
    account.wood = Mass::kilogram(1100);
    account.cords = 0.8;
    account.crew[hand] = std::chrono::hours{8};
    account.alarms[Alarm::fire_overdue] = 2;
    return {account.first, false, account};
}

std::vector<SeasonShift> someNights() {
    return {seasonNight("2025-03-14T22:00:00Z", 30), seasonNight("2026-03-13T22:00:00Z", 36, "Ansel"),
            seasonNight("2026-03-14T22:00:00Z", 44), seasonNight("2026-03-16T22:00:00Z", 20)};
}

SeasonChoice spring2026() {
    SeasonChoice choice;
    choice.year = 2026;
    return choice;
}

QString cell(const SeasonTable& table, std::size_t line, const char* heading) {
    for (qsizetype i = 0; i < table.headings.size(); ++i)
        if (table.headings[i].startsWith(QLatin1String(heading)))
            return table.lines.at(line).cells[i];
    return QStringLiteral("no such column");
}

TEST(SeasonView, ShowsOneSeasonTheLatestNightFirst) {
    const auto table = seasonTable(someNights(), spring2026(), Units::metric);
    ASSERT_EQ(table.lines.size(), 3U);
    EXPECT_TRUE(table.title.startsWith(QStringLiteral("Season 2026 · 3 shifts")));
    EXPECT_GT(table.lines[0].shift, table.lines[1].shift);
    EXPECT_EQ(cell(table, 1, "syrup\n"), QStringLiteral("44"));
    EXPECT_EQ(cell(table, 1, "in the band"), QStringLiteral("75"));
    EXPECT_EQ(cell(table, 1, "hours"), QStringLiteral("8.1"));
    EXPECT_EQ(cell(table, 2, "crew"), QStringLiteral("Ansel"));
    for (const auto& line : table.lines)
        EXPECT_EQ(line.cells.size(), table.headings.size());
    EXPECT_EQ(table.totals.size(), table.headings.size());
}

TEST(SeasonView, SortsByAColumnAndPutsHolesLast) {
    auto shifts = someNights();
    shifts[3].account->drawsMeasured = 0;
    SeasonChoice choice = spring2026();
    choice.sortBy = SeasonFigure::syrup;
    auto table = seasonTable(shifts, choice, Units::metric);
    EXPECT_EQ(cell(table, 0, "syrup\n"), QStringLiteral("44"));
    EXPECT_EQ(cell(table, 2, "syrup\n"), QStringLiteral("–"));
    choice.falling = false;
    table = seasonTable(shifts, choice, Units::metric);
    EXPECT_EQ(cell(table, 0, "syrup\n"), QStringLiteral("36"));
    EXPECT_EQ(cell(table, 2, "syrup\n"), QStringLiteral("–"));
}

TEST(SeasonView, FiltersByCrewWoodAlarmAndDate) {
    auto shifts = someNights();
    shifts[2].account->woods["ash"] = Mass::kilogram(500);
    shifts[1].account->alarms.clear();
    const auto count = [&](const char* filter) {
        SeasonChoice choice;
        choice.filter = QString::fromLatin1(filter);
        return seasonTable(shifts, choice, Units::metric).lines.size();
    };
    EXPECT_EQ(count("ansel"), 1U);
    EXPECT_EQ(count("ash"), 1U);
    EXPECT_EQ(count("2025"), 1U);
    EXPECT_EQ(count("firing"), 3U); // the alarm of the firing that was due
    EXPECT_EQ(count("nobody"), 0U);
}

TEST(SeasonView, SaysInTheTotalsThatAHoleIsThere) {
    auto shifts = someNights();
    shifts[3].account->drawsMeasured = 0;
    SeasonChoice choice = spring2026();
    choice.columns = {SeasonFigure::syrup, SeasonFigure::evaporation};
    const auto table = seasonTable(shifts, choice, Units::metric);
    EXPECT_EQ(table.totals[1], QStringLiteral("≥\u00a080"));
    EXPECT_EQ(table.totals[2], QStringLiteral("–"));
    shifts[2].account.reset(); // not worked out yet
    const auto waiting = seasonTable(shifts, choice, Units::metric);
    EXPECT_EQ(waiting.working, 1);
    EXPECT_EQ(waiting.lines[1].cells[1], QStringLiteral("…"));
}

TEST(SeasonView, SpeaksTheUnitsOfThePerson) {
    SeasonChoice choice = spring2026();
    choice.columns = {SeasonFigure::sapIn, SeasonFigure::syrupPerCord};
    const auto us = seasonTable(someNights(), choice, Units::us);
    EXPECT_EQ(us.headings[1], QStringLiteral("sap in\ngal"));
    EXPECT_EQ(us.lines[0].cells[1], QStringLiteral("410"));
    // 20 L of 0.8 cords, in US gallons of 3.785411784 L (NIST Handbook 44, appendix C).
    EXPECT_EQ(us.lines[0].cells[2], QString::number(20 / 0.8 / 3.785411784, 'f', 1));
}

TEST(SeasonView, LaysTwoNightsSideBySide) {
    auto shifts = someNights();
    shifts[1].account->stack = Temperature::celsius(450);
    shifts[2].account->stack = Temperature::celsius(400);
    const auto line = [&](Units units, const char* what) {
        const auto lines = besideLines(shifts[1], shifts[2], units);
        const auto found = std::find_if(lines.begin(), lines.end(), [&](const BesideLine& one) {
            return one.what.startsWith(QLatin1String(what));
        });
        return found == lines.end() ? BesideLine{} : *found;
    };
    EXPECT_EQ(line(Units::metric, "syrup, L"), (BesideLine{QStringLiteral("syrup, L"), QStringLiteral("36"),
                                                           QStringLiteral("44"), QStringLiteral("+8.0")}));
    EXPECT_EQ(line(Units::us, "stack").first, QStringLiteral("842"));
    EXPECT_EQ(line(Units::us, "stack").difference, QStringLiteral("\u221290")); // 50 K are 90 °F, without the 32
}

TEST(SeasonView, AHoleInTheCurveIsNoBar) {
    auto shifts = someNights();
    shifts[2].account->drawsMeasured = 0;
    const auto bars = seasonBars(chosenShifts(shifts, spring2026()), SeasonFigure::syrup, Units::metric);
    ASSERT_EQ(bars.size(), 3U);
    EXPECT_TRUE(bars[0].value);
    EXPECT_FALSE(bars[1].value);
}

TEST(TuningView, SaysPlainlyThatFourNightsAreTooFew) {
    auto shifts = someNights();
    for (auto& shift : shifts) {
        shift.account->evaporation = VolumeFlow::litrePerHour(200 + shift.account->syrup.litre());
        shift.account->fireInterval = Duration{400 + 9 * shift.account->syrup.litre()};
    }
    const auto words = tuningWords(tune(shifts, Outcome::evaporation), Units::metric);
    EXPECT_TRUE(words.basis.contains(QStringLiteral("too little to tell anything"))) << words.basis.toStdString();
    EXPECT_FALSE(words.lines.empty());
    for (const EffectLine& line : words.lines) {
        EXPECT_FALSE(line.claimed);
        EXPECT_TRUE(line.verdict == verdictWord(Verdict::tooLittle) || line.verdict == verdictWord(Verdict::entangled));
    }
    EXPECT_FALSE(words.tomorrow.isEmpty());
}

TEST(TuningView, SaysThatNothingCanBeComparedYet) {
    const auto words = tuningWords(tune({}, Outcome::syrupPerCord), Units::us);
    EXPECT_TRUE(words.lines.empty());
    EXPECT_TRUE(words.tomorrow.contains(QStringLiteral("No comparison can be named yet")));
}

} // namespace
} // namespace panside
