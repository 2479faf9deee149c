#include "core/files/csv_cell.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

// RFC 4180: fields with commas, quotes or line ends stand in double quotes, quotes within them are doubled.
TEST(CsvCell, IsQuotedWhereItMustBe) {
    EXPECT_EQ(csvCell("Odile"), "Odile");
    EXPECT_EQ(csvCell("smoke, and a \"pop\""), "\"smoke, and a \"\"pop\"\"\"");
    EXPECT_EQ(csvCell("two\nlines"), "\"two\nlines\"");
    EXPECT_EQ(csvCell(""), "");
}

TEST(CsvCell, IsNoFormula) {
    for (const char* formula : {"=cmd|calc", "+1+A1", "-A1", "@SUM(A1)", " =A1", "\t=A1", "-"})
        EXPECT_EQ(csvCell(formula), "'" + std::string{formula}) << formula;
    EXPECT_EQ(csvCell("=A1,B1"), "\"'=A1,B1\"");
    for (const char* number : {"-4.5", "+3", "1e-3", "-2.5e+6"})
        EXPECT_EQ(csvCell(number), number);
}

TEST(CsvCell, ARowKeepsItsCells) {
    EXPECT_EQ(csvRowHarmless("2025-03-14T18:00:00Z,note,,,\"=HYPERLINK(\"\"x\"\"), now\""),
              "2025-03-14T18:00:00Z,note,,,\"'=HYPERLINK(\"\"x\"\"), now\"");
    EXPECT_EQ(csvRowHarmless("a,-4.5,,=b"), "a,-4.5,,'=b");
    EXPECT_EQ(csvRowHarmless(""), "");
    EXPECT_EQ(csvRowHarmless(","), ",");
}

} // namespace
} // namespace panside
