#pragma once
// A folder of its own for each test, and facts written as they stand in a log.
#include "core/boil/shift_log.h"
#include "core/journal/journal.h"
#include "core/journal/log_import.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace panside {

class JournalPlace : public ::testing::Test {
protected:
    JournalPlace() {
        std::string name = (std::filesystem::temp_directory_path() / "panside-test-XXXXXX").string();
        folder_ = ::mkdtemp(name.data());
    }
    ~JournalPlace() override {
        std::error_code ignored;
        std::filesystem::remove_all(folder_, ignored);
    }
    std::filesystem::path folder_;
    std::filesystem::path place() const { return folder_ / "sugarhouse.journal"; }
};

inline Fact factFrom(const std::string& row) {
    auto read = factOfLine(row);
    if (const auto* fault = std::get_if<Fault>(&read))
        throw std::runtime_error{sentence(*fault, row)};
    return std::get<Fact>(read);
}

inline std::vector<std::string> rowsOf(const Journal& journal, ShiftId shift) {
    std::vector<std::string> rows;
    for (const auto& entry : journal.facts(shift))
        rows.push_back(rowOf(entry.fact));
    return rows;
}

inline std::string exported(const Journal& journal, ShiftId shift) {
    std::string text;
    exportLog(journal, shift, [&](std::string_view piece) { text += piece; });
    return text;
}

inline Imported imported(Journal& journal, const std::string& log, const ImportOptions& options = {}) {
    std::istringstream stream{log};
    return importLog(journal, stream, options);
}

inline std::string fileText(const std::filesystem::path& place) {
    std::ifstream file{place, std::ios::binary};
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

// A short shift with all kinds of rows.
inline const std::string shortLog = "time,what,value,unit,detail\n"
                                    "2025-03-14T18:00:00Z,set,66.9,brix,key=target_density\n"
                                    "2025-03-14T18:00:00Z,set,18,kg,key=load_mass\n"
                                    "2025-03-14T18:00:00Z,lit,,,by=Odile\n"
                                    "2025-03-14T18:00:01Z,syrup_pan,20.25,degC,\n"
                                    "2025-03-14T18:00:01Z,stack,68.5,degF,\n"
                                    "2025-03-14T18:00:02Z,syrup_pan,20.3,degC,\n"
                                    "2025-03-14T18:00:02Z,stack,71,degF,\n"
                                    "2025-03-14T18:00:02Z,pressure,98.71,kPa,probe=shelf\n"
                                    "2025-03-14T18:05:00Z,fired,40,lb,wood=maple;moisture=22\n"
                                    "2025-03-14T18:06:00Z,feed,4.5,degC,probe=hand;by=Odile\n"
                                    "2025-03-14T18:12:00Z,fired,,,\n"
                                    "2025-03-14T19:00:00Z,sap_in,400,L,brix=2.1;from=north lines\n"
                                    "2025-03-14T19:40:00Z,draw_open,,,\n"
                                    "2025-03-14T19:44:30.25Z,draw_close,2.5,gal,to=drum\n"
                                    "2025-03-14T19:50:00Z,humour,7,,mood=good\n"
                                    "2025-03-14T20:00:00Z,note,,,\"smoke, and a \"\"pop\"\"\"\n"
                                    "2025-03-14T20:10:00Z,shift_end,,,\n";

} // namespace panside
