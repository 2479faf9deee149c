#include "app/command_line.h"

#include <gmock/gmock.h>
#include <sstream>

namespace panside {
namespace {

using testing::HasSubstr;
using Words = std::vector<std::string>;

struct Read {
    Command command;
    std::string out, err;
};
Read read(const Words& words) {
    std::ostringstream out, err;
    auto command = commandIn(words, out, err);
    return {std::move(command), out.str(), err.str()};
}
int statusOf(const Read& read) {
    const auto* answered = std::get_if<Answered>(&read.command);
    return answered ? answered->status : -1;
}

TEST(CommandLine, OpensTheConsoleWhenNothingIsAskedFor) {
    const auto console = std::get<ConsoleRequest>(read({}).command);
    EXPECT_FALSE(console.rehearsal);
    EXPECT_TRUE(console.journal.empty());
}

TEST(CommandLine, TakesTheConsolesOptions) {
    const auto console = std::get<ConsoleRequest>(
        read({"--rehearsal", "--seed", "7", "--night", "--language", "fr", "--units", "us"}).command);
    EXPECT_TRUE(console.rehearsal);
    EXPECT_EQ(console.seed, 7U);
    EXPECT_TRUE(console.night);
    EXPECT_EQ(console.language, "fr");
    EXPECT_EQ(console.units, "us");
}

TEST(CommandLine, TakesEverySettingOfAReplay) {
    const auto replay = std::get<ReplayRequest>(read({"replay", "night.csv", "--every", "60", "--as-entered", "--set",
                                                      "target_density=66.9brix", "--set", "elevation=1000ft"})
                                                    .command);
    EXPECT_EQ(replay.log, "night.csv");
    EXPECT_EQ(replay.every, 60);
    EXPECT_TRUE(replay.asEntered);
    ASSERT_EQ(replay.settings.size(), 2U);
    EXPECT_EQ(replay.settings[0].key, Setting::target_density);
    EXPECT_NEAR(replay.settings[0].si, 0.669, 1e-12);
    EXPECT_NEAR(replay.settings[1].si, 304.8, 1e-9); // the international foot is 0.3048 m exactly
}

TEST(CommandLine, TakesASettingThatIsAWord) {
    const auto replay = std::get<ReplayRequest>(read({"replay", "night.csv", "--set", "place=New Hampshire"}).command);
    ASSERT_EQ(replay.settings.size(), 1U);
    EXPECT_EQ(replay.settings[0].key, Setting::place);
    EXPECT_EQ(replay.settings[0].text, "New Hampshire");
    const Read wrong = read({"replay", "night.csv", "--set", "place=Vermunt"});
    EXPECT_EQ(statusOf(wrong), 2);
    EXPECT_THAT(wrong.err, HasSubstr("Did you mean Vermont?"));
    EXPECT_EQ(statusOf(read({"replay", "night.csv", "--set", "place="})), 2);
}

TEST(CommandLine, ReadsALogFromStandardInputByADash) {
    EXPECT_EQ(std::get<ReplayRequest>(read({"replay", "-"}).command).log, "-");
}

TEST(CommandLine, LeavesTheWordsOfASumAsTheyAre) {
    const auto reckon = std::get<ReckonRequest>(read({"reckon", "target", "--pressure", "98.7kPa"}).command);
    EXPECT_EQ(reckon.words, (Words{"target", "--pressure", "98.7kPa"}));
}

TEST(CommandLine, SaysWrongUsageByStatusTwo) {
    EXPECT_EQ(statusOf(read({"replay"})), 2);
    EXPECT_EQ(statusOf(read({"replay", "a.csv", "--every", "0"})), 2);
    EXPECT_EQ(statusOf(read({"boil"})), 2);
    EXPECT_EQ(statusOf(read({"rehearse"})), 2);
    EXPECT_EQ(statusOf(read({"--night", "--day"})), 2);
    EXPECT_EQ(statusOf(read({"export"})), 2);
}

TEST(CommandLine, SaysWhatIsWrongWithASetting) {
    auto wrong = read({"replay", "a.csv", "--set", "colour=3kPa"});
    EXPECT_EQ(statusOf(wrong), 2);
    EXPECT_THAT(wrong.err, HasSubstr("there is no setting \"colour\""));
    EXPECT_THAT(wrong.err, HasSubstr("target_density"));

    wrong = read({"replay", "a.csv", "--set", "target_density=high"});
    EXPECT_THAT(wrong.err, HasSubstr("\"high\" does not begin with a number"));

    wrong = read({"replay", "a.csv", "--set", "elevation=300kPa"});
    EXPECT_EQ(statusOf(wrong), 2);
    EXPECT_THAT(wrong.err, HasSubstr("kPa"));
}

TEST(CommandLine, HelpsWithEveryCommand) {
    const auto help = read({"--help"});
    EXPECT_EQ(statusOf(help), 0);
    for (const auto* command : {"replay", "tend", "rehearse", "check", "import", "export", "report", "reckon"}) {
        EXPECT_THAT(help.out, HasSubstr(command));
        if (std::string{command} != "reckon") {
            const auto its = read({command, "--help"});
            EXPECT_EQ(statusOf(its), 0) << command;
            EXPECT_THAT(its.out, HasSubstr("panside " + std::string{command})) << command;
        }
    }
    EXPECT_THAT(help.out, HasSubstr("Exit status"));
}

TEST(CommandLine, TellsItsVersion) {
    const auto version = read({"--version"});
    EXPECT_EQ(statusOf(version), 0);
    EXPECT_THAT(version.out, testing::MatchesRegex("panside [0-9]+\\.[0-9]+\\.[0-9]+\n"));
}

} // namespace
} // namespace panside
