#include "core/probe/line_decoder.h"

#include <cmath>
#include <gmock/gmock.h>
#include <random>

namespace panside {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

// What a line said, kept after the decoder's buffer has moved on.
struct Heard {
    std::string text;
    Refusal refusal;
    std::vector<std::string> names;
    std::vector<std::optional<double>> numbers;
    bool operator==(const Heard&) const = default;
};

std::vector<Heard> feed(LineDecoder& decoder, std::string_view bytes) {
    std::vector<Heard> heard;
    decoder.feed(bytes, [&](const ProbeLine& line) {
        Heard one{std::string{line.text}, line.refusal, {}, {}};
        for (const Field& field : line.fields) {
            one.names.emplace_back(field.name);
            one.numbers.push_back(field.number);
        }
        heard.push_back(one);
    });
    return heard;
}

// A decoder that knows it begins at a line's beginning.
LineDecoder fresh(LineRules rules = {}) {
    LineDecoder decoder{rules};
    decoder.restart(false);
    return decoder;
}

Heard only(std::string_view line, LineRules rules = {}) {
    auto decoder = fresh(rules);
    const auto heard = feed(decoder, std::string{line} + "\n");
    EXPECT_EQ(heard.size(), 1U) << line;
    return heard.empty() ? Heard{} : heard.front();
}

// The three lines of the probe lines' contract, and every separator it allows.
TEST(LineDecoder, ReadsTheThreeEncodings) {
    for (const auto* line : {"103.42,318.5,98.71", "103.42;318.5;98.71", "103.42\t318.5\t98.71", "103.42 318.5  98.71",
                             "103.42, 318.5, 98.71", " 103.42 ; 318.5 ; 98.71 "})
        EXPECT_THAT(only(line).numbers, ElementsAre(103.42, 318.5, 98.71)) << line;
    for (const auto* line :
         {"syrup=103.42 stack=318.5 baro=98.71", "syrup:103.42,stack:318.5,baro:98.71",
          "syrup=103.42;stack=318.5;baro=98.71", "syrup: 103.42, stack: 318.5, baro: 98.71",
          "syrup = 103.42 stack = 318.5\tbaro = 98.71", R"({"syrup":103.42,"stack":318.5,"baro":98.71})",
          R"( { "syrup" : 103.42 , "stack" : 318.5 , "baro" : 98.71 } )"}) {
        EXPECT_THAT(only(line).names, ElementsAre("syrup", "stack", "baro")) << line;
        EXPECT_THAT(only(line).numbers, ElementsAre(103.42, 318.5, 98.71)) << line;
    }
}

TEST(LineDecoder, TakesEitherLineEndAndPassesOverEmptyLines) {
    auto decoder = fresh();
    const auto heard = feed(decoder, "\r\n103.42,98.71\r\n\n103.43,98.71\n  \n");
    ASSERT_EQ(heard.size(), 2U);
    EXPECT_EQ(heard[0].text, "103.42,98.71");
    EXPECT_EQ(heard[1].text, "103.43,98.71");
    EXPECT_EQ(decoder.counts().good, 2U);
    EXPECT_THAT(decoder.counts().refused, testing::Each(0U));
}

TEST(LineDecoder, AChannelWithoutANumberHasNoReadingAndTheOthersDo) {
    using Numbers = std::vector<std::optional<double>>;
    const Numbers middleMissing{103.42, std::nullopt, 98.71};
    for (const auto* line :
         {"103.42,,98.71", "103.42,nan,98.71", "103.42,open,98.71", "103.42;;98.71", "103.42\t\t98.71",
          "103.42 open 98.71", "103.42,inf,98.71", "103.42,21O.5,98.71", "103.42,1e999,98.71",
          "syrup=103.42 stack= baro=98.71", "syrup=103.42,stack=,baro=98.71", "syrup=103.42 stack=nan baro=98.71",
          "syrup=103.42 stack=open baro=98.71", R"({"syrup":103.42,"stack":null,"baro":98.71})",
          R"({"syrup":103.42,"stack":"open","baro":98.71})", R"({"syrup":103.42,"stack":nan,"baro":98.71})",
          R"({"syrup":103.42,"stack":,"baro":98.71})"})
        EXPECT_EQ(only(line).numbers, middleMissing) << line;
}

TEST(LineDecoder, PassesOverNestedJsonValues) {
    const auto heard = only(R"({"id":{"a":[1,"}"]},"syrup":103.42,"list":[1,2,{"syrup":7}],"say \"\u0070an\"":1})");
    EXPECT_THAT(heard.names, ElementsAre("syrup", "say \"pan\""));
    EXPECT_THAT(heard.numbers, ElementsAre(103.42, 1));
}

// NMEA 0183: the checksum is the XOR of all characters before the star, in two hexadecimal digits. The sentence
// (without its $, which that standard leaves out of the sum) and its sum are an example that is printed widely; from
// memory.
TEST(LineDecoder, ChecksTheChecksumAsNmea0183Does) {
    EXPECT_EQ(only("GPGLL,5300.97914,N,00259.98174,E,125926,A*28").refusal, Refusal::none);
    EXPECT_EQ(only("GPGLL,5300.97914,N,00259.98174,E,125926,A*29").refusal, Refusal::checksumWrong);
}

TEST(LineDecoder, AChecksumThatIsThereIsCheckedInEveryEncoding) {
    for (const auto* line : {"103.42,318.5,98.71*12", "syrup=103.42 stack=318.5 baro=98.71*22",
                             R"({"syrup":103.42,"stack":318.5,"baro":98.71}*23)", "103.42,318.5,98.71*12 "}) {
        EXPECT_EQ(only(line).refusal, Refusal::none) << line;
        EXPECT_THAT(only(line).numbers, ElementsAre(103.42, 318.5, 98.71)) << line;
        std::string wrong{line};
        wrong[2] = wrong[2] == '3' ? '4' : 'x';
        EXPECT_EQ(only(wrong).refusal, Refusal::checksumWrong) << wrong;
        EXPECT_THAT(only(wrong).numbers, IsEmpty());
    }
    for (const auto* line : {"103.42,318.5,98.71*", "103.42,318.5,98.71*1", "103.42,318.5,98.71*1G", "103.42*12,98.71"})
        EXPECT_EQ(only(line).refusal, Refusal::checksumWrong) << line;
    EXPECT_EQ(only(R"({"a":"5*","syrup":1})").refusal, Refusal::none); // a star within a string is none
}

TEST(LineDecoder, ADemandedChecksumMustBeThere) {
    EXPECT_EQ(only("103.42,318.5,98.71", {.checksumDemanded = true}).refusal, Refusal::checksumMissing);
    EXPECT_EQ(only("103.42,318.5,98.71*12", {.checksumDemanded = true}).refusal, Refusal::none);
}

TEST(LineDecoder, RefusesWhatIsGarbled) {
    for (const auto* line :
         {R"({"syrup":103.42)", R"({"syrup":103.42}})", R"({"syrup" 103.42})", R"({"syrup":103.42,})",
          R"({syrup:103.42})", R"({"syrup":1 2})", R"({"syrup":[1})", R"(["syrup",1])", "syrup", "ready to boil",
          "syrup=103.42 stack", "syrup=103.42 C", "=103.42"})
        EXPECT_NE(only(line).refusal, Refusal::none) << line;
    EXPECT_EQ(only("syrup=103.42 syrup=103.43").refusal, Refusal::nameTwice);
    EXPECT_EQ(only("{\"a\":1,\"a\":2}").refusal, Refusal::nameTwice);
    std::string wide = "1";
    for (int i = 0; i < 64; ++i)
        wide += ",1";
    EXPECT_EQ(only(wide).refusal, Refusal::tooManyFields);
}

// In Quebec a person writes 103,42; a column of it would be two numbers that nobody sent.
TEST(LineDecoder, ADecimalCommaIsRefusedNotSplit) {
    EXPECT_EQ(only("103,42;318,5").refusal, Refusal::decimalComma);
    EXPECT_EQ(only("103,42 318,5").refusal, Refusal::decimalComma);
    EXPECT_EQ(only("-4,5\t318,5\t98").refusal, Refusal::decimalComma);
    EXPECT_THAT(only("2026-03-14 21:04:05,103.42").numbers, ElementsAre(std::nullopt, 103.42));
}

// Joined midway, "103.42" may come as "3.42": the first line after a port was opened is not believed, but for a
// checksum or a JSON object, which show that they are whole.
TEST(LineDecoder, DoesNotBelieveALineThatMayHaveLostItsHead) {
    LineDecoder decoder;
    auto heard = feed(decoder, "3.42,318.5,98.71\n103.43,318.5,98.71\n");
    EXPECT_EQ(heard[0].refusal, Refusal::cutOff);
    EXPECT_THAT(heard[1].numbers, ElementsAre(103.43, 318.5, 98.71));
    decoder.restart();
    heard = feed(decoder, "98.71\n103.43,318.5,98.71\n103.44,318.5,98.71\n");
    EXPECT_EQ(heard[0].refusal, Refusal::cutOff);
    EXPECT_EQ(heard[1].refusal, Refusal::cutOff);
    EXPECT_EQ(heard[2].refusal, Refusal::none);

    LineDecoder pairs;
    heard = feed(pairs, "pan=95.2 stack=318\nflue_pan=95.3 stack=318\n");
    EXPECT_EQ(heard[0].refusal, Refusal::cutOff);
    EXPECT_THAT(heard[1].names, ElementsAre("flue_pan", "stack"));

    LineDecoder json;
    EXPECT_EQ(feed(json, "{\"syrup\":103.42}\n")[0].refusal, Refusal::none);
    LineDecoder summed;
    EXPECT_EQ(feed(summed, "103.42,318.5,98.71*12\n")[0].refusal, Refusal::none);
}

TEST(LineDecoder, ALineThatLostItsTailIsToldByItsColumns) {
    auto decoder = fresh();
    const auto heard = feed(decoder, "103.42,318.5,98.71\n103.43,31\n103.44,318.5,98.71\n");
    EXPECT_EQ(heard[1].refusal, Refusal::cutOff);
    EXPECT_EQ(heard[2].refusal, Refusal::none);
}

// A logger that leaves out the column of a probe that fell off moves the others up: what stands first then is another
// pan's, and reads well. No number of such lines makes them the port's lines, nor does pulling the plug.
TEST(LineDecoder, ALineOfAnotherShapeThanThePortsLinesIsNotMapped) {
    for (const bool checksums : {false, true}) {
        auto decoder = fresh();
        feed(decoder, "102.8,100.6,98.5\n102.8,100.6,98.5\n102.9,100.6,98.5\n");
        for (int i = 0; i < 50; ++i) {
            const auto heard = feed(decoder, checksums ? "100.6,98.5*1F\n" : "100.6,98.5\n");
            ASSERT_EQ(heard[0].refusal, Refusal::otherShape) << i << checksums;
            ASSERT_THAT(heard[0].numbers, IsEmpty());
            if (i == 25)
                decoder.restart();
        }
        EXPECT_EQ(feed(decoder, "4,102.8,100.6,98.5\n")[0].refusal, Refusal::otherShape);
        EXPECT_THAT(feed(decoder, "102.9,100.6,98.5\n")[0].numbers, ElementsAre(102.9, 100.6, 98.5));
    }
}

// The first lines after the console began may be short already: what the columns were named after says how many.
TEST(LineDecoder, ALineWithoutAColumnThatIsReadIsOfAnotherShape) {
    auto decoder = fresh({.leastColumns = 3});
    for (int i = 0; i < 5; ++i)
        EXPECT_EQ(feed(decoder, "100.6,98.5\n")[0].refusal, Refusal::otherShape);
    EXPECT_THAT(feed(decoder, "102.9,100.6,98.5\n")[0].numbers, ElementsAre(102.9, 100.6, 98.5));
}

TEST(LineDecoder, LinesThatNeverEndOrEndInCarriageReturnsAloneAreTold) {
    for (const char* piece : {"102.8,100.6,98.5\r", "102.8,100.6,98.5;"}) {
        auto decoder = fresh();
        EXPECT_FALSE(decoder.looksUnended());
        for (int i = 0; i < 20; ++i)
            EXPECT_THAT(feed(decoder, piece), IsEmpty());
        EXPECT_TRUE(decoder.looksUnended()) << piece;
        feed(decoder, "\n");
        EXPECT_FALSE(decoder.looksUnended());
    }
}

TEST(LineDecoder, AProbeThatGreetsIsStillRecognised) {
    auto decoder = fresh();
    const auto heard = feed(decoder, "Pan box 3 ready\nsyrup=1 a=2\nsyrup=2 a=2\nsyrup=3 a=2\nsyrup=4 a=2\n");
    EXPECT_EQ(decoder.encoding(), Encoding::pairs);
    EXPECT_EQ(heard[4].refusal, Refusal::none);
    auto said = fresh({.encoding = Encoding::columns});
    feed(said, "a=1\na=2\na=3\na=4\na=5\n");
    EXPECT_EQ(said.encoding(), Encoding::columns); // what the person said stays
    EXPECT_EQ(said.counts().good, 0U);
    EXPECT_EQ(said.counts().refused[static_cast<std::size_t>(Refusal::malformed)], 5U);
    EXPECT_EQ(said.counts().sample[static_cast<std::size_t>(Refusal::malformed)], "a=5");
}

// A box that now and then says a word in another form stays what it is, however often that was in a night.
TEST(LineDecoder, AStrayLineNowAndThenIsRefusedAndChangesNothing) {
    LineDecoder decoder = fresh();
    const auto columns = [&] {
        for (int line = 0; line < 5; ++line)
            EXPECT_EQ(feed(decoder, "101.2,99.8,310\n").at(0).refusal, Refusal::none);
    };
    columns();
    for (int hour = 0; hour < 12; ++hour) {
        EXPECT_EQ(feed(decoder, "{\"uptime\":1}\n").at(0).refusal, Refusal::malformed);
        columns();
    }
}

TEST(LineDecoder, AMegabyteWithoutAnEndIsOneRefusedLineAndTheNextIsRead) {
    auto decoder = fresh();
    int lines = 0;
    const std::string piece(1000, '7');
    for (int i = 0; i < 1000; ++i)
        decoder.feed(piece, [&](const ProbeLine& line) {
            ++lines;
            EXPECT_EQ(line.refusal, Refusal::tooLong);
            EXPECT_LE(line.text.size(), LineDecoder::longestLine);
        });
    EXPECT_EQ(lines, 1);
    EXPECT_EQ(decoder.counts().refused[static_cast<std::size_t>(Refusal::tooLong)], 1U);
    const auto heard = feed(decoder, "7\n103.42,98.71\n");
    ASSERT_EQ(heard.size(), 1U);
    EXPECT_THAT(heard[0].numbers, ElementsAre(103.42, 98.71));
    EXPECT_FALSE(decoder.looksLikeWrongSpeed());
}

TEST(LineDecoder, BytesThatAreNoTextPointToAWrongSpeedUntilTextComes) {
    auto decoder = fresh();
    std::mt19937 random{7};
    std::string noise;
    for (int i = 0; i < 300; ++i)
        noise += static_cast<char>(random() % 256);
    feed(decoder, noise);
    EXPECT_TRUE(decoder.looksLikeWrongSpeed());
    EXPECT_EQ(decoder.counts().good, 0U);
    std::string text = "\n";
    for (int i = 0; i < 100; ++i)
        text += "103.42,318.5,98.71\n";
    feed(decoder, text);
    EXPECT_FALSE(decoder.looksLikeWrongSpeed());

    auto unended = fresh(); // not even a line end comes
    feed(unended, std::string(40, '\xF8'));
    EXPECT_TRUE(unended.looksLikeWrongSpeed());
    auto spike = fresh(); // one bad byte is no wrong speed
    feed(spike, "103.42,318.5,98.71\n103.42,318\xFF.5,98.71\n103.42,318.5,98.71\n");
    EXPECT_FALSE(spike.looksLikeWrongSpeed());
    EXPECT_EQ(spike.counts().refused[static_cast<std::size_t>(Refusal::notText)], 1U);
}

// However the bytes are cut into pieces, the lines are the same.
TEST(LineDecoder, DoesNotMindHowTheBytesAreCut) {
    std::mt19937 random{11};
    const std::string_view alphabet = "103.42,;= \t\r\n\n{}\":*ab\xE9";
    for (int round = 0; round < 200; ++round) {
        std::string bytes;
        for (int i = 0; i < 400; ++i)
            bytes += alphabet[random() % alphabet.size()];
        LineDecoder whole, pieces;
        const auto expected = feed(whole, bytes);
        std::vector<Heard> heard;
        for (std::size_t at = 0; at < bytes.size();) {
            const auto size = 1 + random() % 17;
            for (auto& one : feed(pieces, std::string_view{bytes}.substr(at, size)))
                heard.push_back(one);
            at += size;
        }
        EXPECT_EQ(heard, expected);
    }
}

} // namespace
} // namespace panside
