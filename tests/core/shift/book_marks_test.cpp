// What the ledger has to say of a night's log before it is in the journal.
#include "core/shift/book_marks.h"

#include "core/journal/day_books.h"
#include "core/shift/session.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <unistd.h>

namespace panside {
namespace {

class BookMarks : public testing::Test {
protected:
    BookMarks() {
        std::filesystem::create_directories(folder_);
        Session session{keeperIn(Journal::open(place_))};
        for (const char* detail : {"name=pail;kind=pail", "name=drum 7;kind=drum"})
            session.enter(std::get<Fact>(factOf("2025-03-01T06:00:00Z", "vessel", "20", "L", detail)));
    }
    void keep(const char* at, const char* what, const char* value, const char* unit, const char* detail) {
        Session{keeperIn(Journal::open(place_))}.enter(std::get<Fact>(factOf(at, what, value, unit, detail)));
    }
    ~BookMarks() override { std::filesystem::remove_all(folder_); }
    // Those of a night with these rows, beside what the reader of the log has said of them.
    std::vector<LineMark> marksOf(const std::string& rows) {
        log_ = readLog(std::string{logHeader} + "\n2025-03-14T11:00:00Z,lit,,,\n" + rows);
        const Journal journal = Journal::open(place_, Journal::Access::read);
        return shiftMarks(log_, &journal);
    }
    ReadLog log_;

private:
    std::filesystem::path folder_ = std::filesystem::temp_directory_path() / ("book_marks_" + std::to_string(getpid()));
    std::filesystem::path place_ = folder_ / "house.journal";
};

TEST_F(BookMarks, ADrawThatTwoHandsToldIsSaidOnce) {
    EXPECT_TRUE(marksOf("2025-03-14T12:02:00Z,draw_close,2.1,L,to=pail;by=Ann\n"
                        "2025-03-14T12:06:00Z,draw_close,2.1,L,to=pail;by=Ben;entered=2025-03-14T13:00:00Z\n")
                    .empty());
    ASSERT_EQ(log_.warnings.size(), 1u);
    EXPECT_EQ(log_.warnings[0].slip, Slip::toldTwice);
}

TEST_F(BookMarks, AVesselThatOverflowsIsSaidWithItsLine) {
    const auto marks = marksOf("2025-03-14T12:02:00Z,draw_close,8,L,to=pail\n"
                               "2025-03-14T12:30:00Z,draw_close,30,L,to=pail\n");
    ASSERT_EQ(marks.size(), 1u);
    EXPECT_EQ(marks[0].line, 4u);
    EXPECT_NE(marks[0].says.find("over its rim"), std::string::npos) << marks[0].says;
}

// The gauge of the press is a probe's reading, and a mark may stand at it all the same.
TEST_F(BookMarks, PressureWithNoRunIsSaidWithItsLine) {
    keep("2025-03-01T07:00:00Z", "press_on", "", "", "from=pail;to=drum 7");
    keep("2025-03-01T07:20:00Z", "press_off", "3", "L", "result=clear");
    const auto marks = marksOf("2025-03-14T12:00:00Z,filter_pressure,150,kPa,probe=box\n"
                               "2025-03-14T12:02:00Z,filter_pressure,150,kPa,probe=box\n"
                               "2025-03-14T12:04:00Z,filter_pressure,150,kPa,probe=box\n");
    ASSERT_EQ(marks.size(), 1u);
    EXPECT_EQ(marks[0].line, 5u);
    EXPECT_NE(marks[0].says.find("150 kPa"), std::string::npos) << marks[0].says;
}

} // namespace
} // namespace panside
