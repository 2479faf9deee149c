#pragma once
// A journal of the first form, large enough to be hit while it is brought to this one.
#include "core/journal/rows.h"
#include "tests/battery/hour.h"
#include "tests/core/journal/first_form.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

#include <chrono>
#include <fstream>
#include <sstream>

namespace battery {

class OlderJournal {
public:
    OlderJournal() {
        std::string name = (std::filesystem::temp_directory_path() / "panside-battery-XXXXXX").string();
        const std::filesystem::path folder = ::mkdtemp(name.data()), place = folder / "j";
        write(place);
        std::ifstream file{place, std::ios::binary};
        std::stringstream bytes;
        bytes << file.rdbuf();
        bytes_ = bytes.str();
        rows_ = rowsOf(panside::Journal::open(place, panside::Journal::Access::read));
        const auto began = std::chrono::steady_clock::now();
        panside::Journal::open(place);
        const auto took = std::chrono::steady_clock::now() - began;
        takesUs_ = static_cast<int>(std::chrono::duration_cast<std::chrono::microseconds>(took).count()) + 500;
        std::filesystem::remove_all(folder);
    }
    void writeTo(const std::filesystem::path& place) const { std::ofstream{place, std::ios::binary} << bytes_; }
    const std::vector<std::string>& rows() const { return rows_; }
    int takesUs() const { return takesUs_; } // to bring it up undisturbed

private:
    static void write(const std::filesystem::path& place) {
        using namespace panside;
        SQLite::Database db{place.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        db.exec(firstFormEmpty);
        SQLite::Transaction whole{db};
        SQLite::Statement shift{db, "INSERT INTO shift VALUES(?,1,0)"}, turn{db, "INSERT INTO turn VALUES(?,?,?)"},
            fact{db, "INSERT INTO fact VALUES(?,?,?,?,?)"};
        for (int night = 0; night < 60; ++night) {
            const Instant begin = *instantIn("2023-03-01T18:00:00Z") + std::chrono::days{night};
            const auto insert = [](SQLite::Statement& statement, auto... values) {
                statement.reset();
                int column = 0;
                (statement.bind(++column, values), ...);
                statement.exec();
            };
            insert(shift, microsOf(begin));
            insert(turn, microsOf(begin), 1, 1);
            insert(turn, microsOf(begin), 2, night == 59 ? 1 : 0);
            for (int i = 0; i < 200; ++i) {
                const Instant at = begin + std::chrono::minutes{i};
                const FactRow row{i + 1, microsOf(at),
                                  textOf(at) + (i == 0 ? ",lit,,," : ",note,,,load " + std::to_string(i))};
                insert(fact, microsOf(begin), row.id, row.at, row.row, sumOf(begin, row));
            }
        }
        whole.commit();
    }
    std::string bytes_;
    std::vector<std::string> rows_;
    int takesUs_ = 0;
};

} // namespace battery
