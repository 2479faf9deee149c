#include "core/journal/rows.h"

#include <SQLiteCpp/VariadicBind.h>

#include <algorithm>

namespace panside {
namespace {

// A sum of numbers in their order, for one kind of row.
std::uint64_t sumOfNumbers(Part part, std::initializer_list<std::int64_t> numbers) {
    std::uint64_t sum = mixed(static_cast<std::uint64_t>(part));
    for (const std::int64_t n : numbers)
        sum = mixed(sum ^ asWord(n)) + 0x9e3779b97f4a7c15U;
    return sum;
}

std::uint64_t seedOf(ShiftId shift, FactId first) { return mixed(mixed(asWord(microsOf(shift))) + asWord(first)); }

} // namespace

std::int64_t sumOf(ShiftId shift, const FactRow& row) {
    const auto seed = mixed(asWord(microsOf(shift))) + asWord(row.id);
    return static_cast<std::int64_t>(hashOf(row.row, mixed(seed) + asWord(row.at)));
}

std::int64_t sumOf(ShiftId shift, FactId first, std::string_view block) {
    return static_cast<std::int64_t>(hashOf(block, seedOf(shift, first)));
}

std::int64_t sumOf(const ShiftRow& row) {
    return static_cast<std::int64_t>(sumOfNumbers(Part::shifts, {row.id, row.live, row.opening, row.begun}));
}

std::int64_t sumOf(const TurnRow& row) {
    return static_cast<std::int64_t>(sumOfNumbers(Part::turns, {row.shift, row.number, row.open}));
}

std::int64_t sumOf(const WithdrawalRow& row) {
    const auto numbers = sumOfNumbers(Part::withdrawals, {row.shift, row.id, row.fact, row.at});
    return static_cast<std::int64_t>(hashOf(row.by, numbers));
}

std::int64_t sumOf(const CarriedRow& row) {
    return static_cast<std::int64_t>(hashOf(row.row, sumOfNumbers(Part::carried, {row.id, row.at, row.after})));
}

std::uint64_t sealOf(const BlockRow& row, std::int64_t sum) {
    return sumOfNumbers(Part::blocks, {sum, row.first, row.last, row.count, row.earliest, row.latest});
}

void addShift(SQLite::Database& db, Seal& seal, ShiftRow row) {
    if (row.begun == 0) {
        SQLite::Statement last{db, "SELECT ifnull(max(begun), 0) FROM shift"};
        last.executeStep();
        row.begun = 1 + last.getColumn(0).getInt64();
    }
    SQLite::Statement insert{db, "INSERT INTO shift(id, live, opening, begun, sum) VALUES(?,?,?,?,?)"};
    SQLite::bind(insert, row.id, row.live, row.opening, row.begun, sumOf(row));
    insert.exec();
    seal.add(ofNoShift, Part::shifts, asWord(sumOf(row)));
}

void addTurn(SQLite::Database& db, Seal& seal, ShiftId shift, bool open) {
    TurnRow row{microsOf(shift), 0, open ? 1 : 0};
    SQLite::Statement last{db, "SELECT ifnull(max(number), 0) FROM turn WHERE shift=?"};
    last.bind(1, row.shift);
    last.executeStep();
    row.number = 1 + last.getColumn(0).getInt64();
    SQLite::Statement insert{db, "INSERT INTO turn(shift, number, open, sum) VALUES(?,?,?,?)"};
    SQLite::bind(insert, row.shift, row.number, row.open, sumOf(row));
    insert.exec();
    seal.add(row.shift, Part::turns, asWord(sumOf(row)));
}

void addWithdrawal(SQLite::Database& db, Seal& seal, const WithdrawalRow& row) {
    SQLite::Statement insert{db, "INSERT INTO withdrawal(shift, id, fact, at, by, sum) VALUES(?,?,?,?,?,?)"};
    SQLite::bind(insert, row.shift, row.id, row.fact, row.at, row.by, sumOf(row));
    insert.exec();
    seal.add(row.shift, Part::withdrawals, asWord(sumOf(row)));
}

void addCarried(SQLite::Database& db, Seal& seal, std::int64_t at, const std::string& row, std::int64_t after) {
    SQLite::Statement last{db, "SELECT ifnull(max(id), 0) FROM carried"};
    last.executeStep();
    const CarriedRow carried{1 + last.getColumn(0).getInt64(), at, row, after};
    SQLite::Statement insert{db, "INSERT INTO carried(id, at, row, after, sum) VALUES(?,?,?,?,?)"};
    SQLite::bind(insert, carried.id, carried.at, carried.row, carried.after, sumOf(carried));
    insert.exec();
    seal.add(ofNoShift, Part::carried, asWord(sumOf(carried)));
}

std::int64_t latestBegun(SQLite::Database& db) {
    SQLite::Statement query{db, "SELECT ifnull(max(begun), 0) FROM shift WHERE live=1"};
    query.executeStep();
    return query.getColumn(0).getInt64();
}

FactTable::FactTable(SQLite::Database& db, Seal& seal)
    : insert_{db, "INSERT INTO fact(shift, id, at, row, sum) VALUES(?,?,?,?,?)"}, seal_{seal} {}

void FactTable::add(ShiftId shift, const FactRow& row) {
    const std::int64_t sum = sumOf(shift, row);
    SQLite::bind(insert_, microsOf(shift), row.id, row.at, row.row, sum);
    insert_.exec();
    insert_.reset();
    seal_.add(microsOf(shift), Part::facts, asWord(sum));
}

BlockTable::BlockTable(SQLite::Database& db, Seal& seal)
    : insert_{db, "INSERT INTO block(shift, first, last, count, earliest, latest, sum, data) VALUES(?,?,?,?,?,?,?,?)"},
      seal_{seal} {}

BlockRow blockRowOf(const std::vector<Sample>& samples) {
    const auto byId = [](const Sample& a, const Sample& b) { return a.id < b.id; };
    const auto byTime = [](const Sample& a, const Sample& b) { return a.at < b.at; };
    const auto [first, last] = std::minmax_element(samples.begin(), samples.end(), byId);
    const auto [earliest, latest] = std::minmax_element(samples.begin(), samples.end(), byTime);
    return {first->id, last->id, static_cast<std::int64_t>(samples.size()), microsOf(earliest->at),
            microsOf(latest->at)};
}

void BlockTable::add(ShiftId shift, const std::vector<Channel>& channels, const std::vector<Sample>& samples) {
    addPacked(shift, blockRowOf(samples), packed(channels, samples));
}

void BlockTable::addPacked(ShiftId shift, const BlockRow& row, std::string_view data) {
    const std::int64_t sum = sumOf(shift, row.first, data);
    SQLite::bind(insert_, microsOf(shift), row.first, row.last, row.count, row.earliest, row.latest, sum);
    insert_.bind(8, data.data(), static_cast<int>(data.size()));
    insert_.exec();
    insert_.reset();
    seal_.add(microsOf(shift), Part::blocks, sealOf(row, sum));
}

BlocksByFour::BlocksByFour(SQLite::Database& db)
    : query_{db, "SELECT first, last, count, earliest, latest, sum, shift, data FROM block"} {}

std::span<const BlocksByFour::Block> BlocksByFour::next() {
    std::array<Hashed, 4> hashed;
    std::size_t count = 0;
    while (count < blocks_.size() && !done_) {
        if (!query_.executeStep()) { // not asked again: SQLite would begin anew
            done_ = true;
            break;
        }
        Block& block = blocks_[count];
        block.row = query_.getColumns<BlockRow, 5>();
        block.sum = query_.getColumn(5).getInt64();
        block.shift = instantOf(query_.getColumn(6).getInt64());
        const auto data = query_.getColumn(7);
        block.data.clear(); // an empty blob has no address
        if (const auto* bytes = static_cast<const char*>(data.getBlob()))
            block.data.assign(bytes, static_cast<std::size_t>(data.getBytes()));
        hashed[count] = {block.data, seedOf(block.shift, block.row.first)};
        ++count;
    }
    if (count == 0)
        return {};
    const auto hashes = count == 4 ? hashesOf(hashed) : std::array<std::uint64_t, 4>{};
    for (std::size_t i = 0; i < count; ++i)
        blocks_[i].sound = static_cast<std::int64_t>(
                               count == 4 ? hashes[i] : hashOf(hashed[i].bytes, hashed[i].seed)) == blocks_[i].sum;
    return {blocks_.data(), count};
}

} // namespace panside
