#pragma once
// A table of another logger's: one row a moment, one column a reading, under names of its own. A map, made by hand once
// and remembered, says what its columns are.
#include "core/boil/log_limits.h"
#include "core/journal/foreign_time.h"
#include "core/journal/log_source.h"

#include <istream>
#include <string>
#include <vector>

namespace panside {

struct ForeignColumn {
    int column; // from 0
    Series series;
    Unit unit;
    bool operator==(const ForeignColumn&) const = default;
};

struct ForeignMap {
    char delimiter = ','; // , ; tab |
    bool decimalComma = false;
    int heading = 1; // the line that names the columns, from 1; what stands above it is passed over. 0: there is none
    int time = 0;    // the column of the time, from 0
    std::optional<int> date; // where the date has a column of its own
    TimeForm form = TimeForm::yearFirst;
    std::string zone;  // IANA name of the zone of its clock
    std::string probe; // the readings' probe=; may be empty
    std::vector<ForeignColumn> columns;
    bool operator==(const ForeignMap&) const = default;
};

// What stands at the beginning of a file, to be mapped: the heading (or numbers where there is none) and a few rows.
struct ForeignSample {
    std::vector<std::string> heading;
    std::vector<std::vector<std::string>> rows;
    std::vector<int> lines; // of the rows
};
ForeignSample sampleOf(std::string_view beginning, char delimiter, int heading, std::size_t most = 8);
// A first proposal, from the beginning of a file: delimiter, heading, column and form of the time, decimal mark.
// Readings are left to the person: a name is a guess, and a wrong one would be a made-up number.
ForeignMap proposedMap(std::string_view beginning, std::string zone);

// One line as its cells; quotes around a cell go, doubled ones within it become one.
std::vector<std::string> cellsOf(std::string_view line, char delimiter);
// "", "-", "nan", "n/a", "open", "null" …: no reading in this row, others may have one.
bool isNoReading(std::string_view cell);

// Reads such a table as a shift's readings. A cell that is neither a number nor one of the words for no reading, a
// row without its time, or with too few cells, is a fault.
class ForeignRows : public LogSource {
public:
    ForeignRows(std::istream& table, ForeignMap map, ZoneClock clock);
    std::optional<ReadLog> next() override;
    std::uint64_t bytes() const override { return bytes_; }
    bool broken() const override { return table_.bad(); }
    std::uint64_t blanks() const { return blanks_; } // cells without a reading, so far

private:
    void readLine(std::string_view line, ReadLog& read);
    std::optional<Instant> timeOf(const std::vector<std::string>& cells, ReadLog& read);

    std::istream& table_;
    ForeignMap map_;
    ZoneClock clock_;
    std::string text_; // read and not yet taken
    std::uint64_t bytes_ = 0, blanks_ = 0;
    std::size_t line_ = 0;
    std::optional<Instant> before_; // the row above
    bool ended_ = false;
    LogLimits limits_;
};

// As text, to be remembered, and back; nullopt for what is none.
std::string textOf(const ForeignMap& map);
std::optional<ForeignMap> foreignMapIn(std::string_view text);

} // namespace panside
