#pragma once
// The rows of the journal's tables: how they are written, summed and sealed, here and nowhere else.
#include "core/journal/packing.h"
#include "core/journal/seal.h"

#include <array>
#include <fmt/format.h>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace panside {

using ShiftId = Instant;

inline std::int64_t microsOf(Instant at) { return at.time_since_epoch().count(); }
inline std::uint64_t asWord(std::int64_t n) { return static_cast<std::uint64_t>(n); } // for sums
inline Instant instantOf(std::int64_t micros) { return Instant{std::chrono::microseconds{micros}}; }

// Their members stand in the order of their columns.
struct ShiftRow {
    std::int64_t id;
    int live, opening;
    std::int64_t begun; // its place in the order in which shifts were begun, or came in
    static constexpr int count = 4;
    static constexpr auto table = "shift", columns = "id, live, opening, begun";
    static constexpr Part part = Part::shifts;
    static std::int64_t ofShift() { return ofNoShift; }
};
struct TurnRow {
    std::int64_t shift, number;
    int open;
    static constexpr int count = 3;
    static constexpr auto table = "turn", columns = "shift, number, open";
    static constexpr Part part = Part::turns;
    std::int64_t ofShift() const { return shift; }
};
struct FactRow {
    FactId id;
    std::int64_t at;
    std::string row;
};
struct WithdrawalRow {
    std::int64_t shift;
    FactId id, fact;
    std::int64_t at;
    std::string by;
    static constexpr int count = 5;
    static constexpr auto table = "withdrawal", columns = "shift, id, fact, at, by";
    static constexpr Part part = Part::withdrawals;
    std::int64_t ofShift() const { return shift; }
};
struct CarriedRow {
    std::int64_t id, at;
    std::string row;
    std::int64_t after; // `begun` of the shift that was the latest here by then
    static constexpr int count = 4;
    static constexpr auto table = "carried", columns = "id, at, row, after";
    static constexpr Part part = Part::carried;
    static std::int64_t ofShift() { return ofNoShift; }
};
struct BlockRow {
    FactId first, last;
    std::int64_t count, earliest, latest;
};

// Calls visit(row, the sum that stands beside it) for every row of a table.
template <class Row>
void eachRow(SQLite::Database& db, const auto& visit) {
    SQLite::Statement query{db, fmt::format("SELECT {}, sum FROM {}", Row::columns, Row::table)};
    while (query.executeStep())
        visit(query.getColumns<Row, Row::count>(), query.getColumn(Row::count).getInt64());
}

BlockRow blockRowOf(const std::vector<Sample>& samples); // which must not be none

std::int64_t sumOf(ShiftId shift, const FactRow& row);
std::int64_t sumOf(ShiftId shift, FactId first, std::string_view block);
std::int64_t sumOf(const ShiftRow& row);
std::int64_t sumOf(const TurnRow& row);
std::int64_t sumOf(const WithdrawalRow& row);
std::int64_t sumOf(const CarriedRow& row);
// What a block's row comes to in its shift's seal: its data's sum, and all that stands beside it.
std::uint64_t sealOf(const BlockRow& row, std::int64_t sum);

// These number the row where there is a number to give.
void addShift(SQLite::Database& db, Seal& seal, ShiftRow row);
void addTurn(SQLite::Database& db, Seal& seal, ShiftId shift, bool open);
void addWithdrawal(SQLite::Database& db, Seal& seal, const WithdrawalRow& row);
void addCarried(SQLite::Database& db, Seal& seal, std::int64_t at, const std::string& row, std::int64_t after);
// `begun` of the latest shift that was begun here; 0: none.
std::int64_t latestBegun(SQLite::Database& db);

class FactTable {
public:
    FactTable(SQLite::Database& db, Seal& seal);
    void add(ShiftId shift, const FactRow& row);

private:
    SQLite::Statement insert_;
    Seal& seal_;
};

class BlockTable {
public:
    BlockTable(SQLite::Database& db, Seal& seal);
    void add(ShiftId shift, const std::vector<Channel>& channels, const std::vector<Sample>& samples);
    void addPacked(ShiftId shift, const BlockRow& row, std::string_view data);

private:
    SQLite::Statement insert_;
    Seal& seal_;
};

// The blocks of a journal, four at a time: to compare four sums at once takes a third of the time.
class BlocksByFour {
public:
    struct Block {
        ShiftId shift{};
        std::int64_t sum = 0;
        BlockRow row{};
        std::string data;
        bool sound = false; // as it was written
    };
    explicit BlocksByFour(SQLite::Database& db);
    std::span<const Block> next(); // empty: there are no more

private:
    SQLite::Statement query_;
    std::array<Block, 4> blocks_;
    bool done_ = false;
};

} // namespace panside
