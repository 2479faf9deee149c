#include "core/journal/seal.h"

#include <SQLiteCpp/VariadicBind.h>

#include <array>

namespace panside {
namespace {

// Where a thing that was worked out bears its sum, and all that the sum is over.
struct DerivedTable {
    const char* name;
    std::array<const char*, 2> queries;
};

DerivedTable tableOf(Derived what) {
    switch (what) {
    case Derived::summary:
        return {"summary",
                {"SELECT seen, first, last, readings, facts, draws, drawsMeasured, loads, loadsWeighed, checks, sap, "
                 "syrup, wood, lit, crew FROM summary WHERE shift=?",
                 nullptr}};
    case Derived::scores:
        return {"scored",
                {"SELECT seen, form FROM scored WHERE shift=?",
                 "SELECT at, ten, five, two, inside, under10, under50, under90, forecasts FROM score WHERE shift=? "
                 "ORDER BY at"}};
    case Derived::figures:
        return {"worked",
                {"SELECT form, seen FROM worked WHERE shift=?",
                 "SELECT name, value FROM figure WHERE shift=? ORDER BY name"}};
    }
    return {};
}

} // namespace

void Seal::close() {
    if (changed_.empty())
        return;
    SQLite::Statement had{db_, "SELECT rows, sum FROM seal WHERE shift=? AND part=?"};
    SQLite::Statement put{db_, "INSERT OR REPLACE INTO seal(shift, part, rows, sum) VALUES(?,?,?,?)"};
    for (const auto& [place, change] : changed_) {
        const auto part = static_cast<int>(place.second);
        SQLite::bind(had, place.first, part);
        SealSum now = change;
        if (had.executeStep()) { // added here: SQLite makes a broken number of a sum that leaves 64 bits
            now.rows += had.getColumn(0).getInt64();
            now.sum += static_cast<std::uint64_t>(had.getColumn(1).getInt64());
        }
        had.reset();
        SQLite::bind(put, place.first, part, now.rows, static_cast<std::int64_t>(now.sum));
        put.exec();
        put.reset();
    }
    changed_.clear();
}

SealSums sealsIn(SQLite::Database& db) {
    SealSums sums;
    SQLite::Statement query{db, "SELECT shift, part, rows, sum FROM seal"};
    while (query.executeStep())
        sums[{query.getColumn(0).getInt64(), static_cast<Part>(query.getColumn(1).getInt())}] = {
            query.getColumn(2).getInt64(), static_cast<std::uint64_t>(query.getColumn(3).getInt64())};
    return sums;
}

std::int64_t sumOf(SQLite::Database& db, Derived what, std::int64_t shift) {
    std::uint64_t sum = mixed(static_cast<std::uint64_t>(shift));
    for (const char* query : tableOf(what).queries) {
        if (query == nullptr)
            break;
        SQLite::Statement rows{db, query};
        rows.bind(1, shift);
        while (rows.executeStep())
            for (int i = 0; i < rows.getColumnCount(); ++i) {
                const auto column = rows.getColumn(i);
                const auto type = static_cast<std::uint64_t>(column.getType());
                sum = hashOf(column.getString(), sum + type);
            }
    }
    return static_cast<std::int64_t>(sum);
}

void sealDerived(SQLite::Database& db, Derived what, std::int64_t shift) {
    SQLite::Statement update{db, std::string{"UPDATE "} + tableOf(what).name + " SET sum=? WHERE shift=?"};
    SQLite::bind(update, sumOf(db, what, shift), shift);
    update.exec();
}

bool isAsDerived(SQLite::Database& db, Derived what, std::int64_t shift) {
    SQLite::Statement query{db, std::string{"SELECT sum FROM "} + tableOf(what).name + " WHERE shift=?"};
    query.bind(1, shift);
    return query.executeStep() && query.getColumn(0).getInt64() == sumOf(db, what, shift);
}

std::vector<std::int64_t> shiftsWith(SQLite::Database& db, Derived what) {
    std::vector<std::int64_t> shifts;
    SQLite::Statement query{db, std::string{"SELECT shift FROM "} + tableOf(what).name + " ORDER BY shift"};
    while (query.executeStep())
        shifts.push_back(query.getColumn(0).getInt64());
    return shifts;
}

} // namespace panside
