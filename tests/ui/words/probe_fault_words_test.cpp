#include "core/probe/probe_file.h"
#include "ui/words/fault_words.h"

#include <QCoreApplication>
#include <QTranslator>
#include <gtest/gtest.h>

namespace panside {
namespace {

// One of every slip, with what may stand there in each of its forms.
std::vector<ProbeFault> everyProbeFault() {
    std::vector<ProbeFault> all;
    const std::vector<Sentence> wants{sayOneOf({"\"one\"", "%1", "\"three\""}),
                                      sayOneOf({"\"one\""}, "%1, as in the table, or a number from 1"),
                                      say("a whole number from %1 to %2", {"%2", "9"}), asWritten("50 %")};
    for (int slip = 0; slip <= static_cast<int>(ProbeSlip::nothing); ++slip)
        for (const Sentence& wanted : wants)
            all.push_back({.slip = static_cast<ProbeSlip>(slip),
                           .line = slip % 3U,
                           .column = 7,
                           .key = "is %2",
                           .given = "%3",
                           .wanted = wanted});
    all.push_back({.slip = ProbeSlip::unreadable, .wanted = say("it is not a file")});
    return all;
}

TEST(ProbeFaultWords, SayInEnglishWhatTheCommandLineSays) {
    for (const ProbeFault& fault : everyProbeFault())
        EXPECT_EQ(probeFaultWords(fault, QStringLiteral("probe.toml")).toStdString(), sentence(fault, "probe.toml"));
}

TEST(ProbeFaultWords, SayInFrenchWhatAndWhereAndWhatToDo) {
    QTranslator french;
    ASSERT_TRUE(french.load(QStringLiteral(PANSIDE_FRENCH)));
    QCoreApplication::installTranslator(&french);
    const auto read = readProbeFile("[[port]]\ndevice = \"/dev/ttyUSB0\"\nbaud = \"fast\"\n[[port.field]]\nis = "
                                    "\"a\"\nreads = \"syrup_pan\"\nunit = \"mm\"\n");
    QStringList said;
    for (const ProbeFault& fault : std::get<std::vector<ProbeFault>>(read))
        said << probeFaultWords(fault, QStringLiteral("sondes.toml"));
    QCoreApplication::removeTranslator(&french);
    EXPECT_EQ(said.join(u'\n').toStdString(),
              "sondes.toml:3:8\u00a0: baud ne peut être \"fast\". Écrivez un nombre entier de 50 à 4000000.\n"
              "sondes.toml:7:8\u00a0: unit ne peut être \"mm\". Écrivez \"degC\", \"degF\", \"mV\" ou \"ohm\".");
}

} // namespace
} // namespace panside
