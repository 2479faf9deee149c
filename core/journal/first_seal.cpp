#include "core/journal/first_seal.h"

#include "core/journal/rows.h"

#include <SQLiteCpp/VariadicBind.h>
#include <fmt/format.h>

namespace panside {
namespace {

// Until now the time by which they are named was all that told their order.
void orderShifts(SQLite::Database& db) {
    db.exec("UPDATE shift SET begun=(SELECT count(*) FROM shift AS other WHERE other.id<=shift.id)");
    db.exec("INSERT INTO turn(shift, number, open) SELECT id, 1 + (SELECT max(number) FROM turn WHERE shift=id), 0"
            " FROM shift WHERE live=1 AND id<(SELECT max(id) FROM shift WHERE live=1)"
            " AND (SELECT open FROM turn WHERE shift=id ORDER BY number DESC LIMIT 1)=1");
    db.exec("UPDATE carried SET after=(SELECT ifnull(max(begun), 0) FROM shift WHERE live=1 AND id<=carried.at)");
}

// A row is found again by `keys`, columns of it.
template <class Row>
void sealRows(SQLite::Database& db, Seal& seal, const char* keys, const auto&... key) {
    std::vector<Row> rows;
    eachRow<Row>(db, [&](Row row, std::int64_t) { rows.push_back(std::move(row)); });
    SQLite::Statement update{db, fmt::format("UPDATE {} SET sum=? WHERE {}", Row::table, keys)};
    for (const Row& row : rows) {
        SQLite::bind(update, sumOf(row), row.*key...);
        update.exec();
        update.reset();
        seal.add(row.ofShift(), Row::part, asWord(sumOf(row)));
    }
}

// These had their sums: one that does not fit stays as it is, and is found by itself.
void sealFactsAndReadings(SQLite::Database& db, Seal& seal) {
    SQLite::Statement facts{db, "SELECT shift, sum FROM fact"};
    while (facts.executeStep())
        seal.add(facts.getColumn(0).getInt64(), Part::facts, asWord(facts.getColumn(1).getInt64()));
    SQLite::Statement blocks{db, "SELECT first, last, count, earliest, latest, sum, shift FROM block"};
    while (blocks.executeStep())
        seal.add(blocks.getColumn(6).getInt64(), Part::blocks,
                 sealOf(blocks.getColumns<BlockRow, 5>(), blocks.getColumn(5).getInt64()));
}

} // namespace

void sealWhatWasKept(SQLite::Database& db) {
    Seal seal{db};
    orderShifts(db);
    sealRows<ShiftRow>(db, seal, "id=?", &ShiftRow::id);
    sealRows<TurnRow>(db, seal, "shift=? AND number=?", &TurnRow::shift, &TurnRow::number);
    sealRows<WithdrawalRow>(db, seal, "shift=? AND id=?", &WithdrawalRow::shift, &WithdrawalRow::id);
    sealRows<CarriedRow>(db, seal, "id=?", &CarriedRow::id);
    sealFactsAndReadings(db, seal);
    for (const Derived what : {Derived::summary, Derived::scores, Derived::figures})
        for (const std::int64_t shift : shiftsWith(db, what))
            sealDerived(db, what, shift);
    seal.close();
}

} // namespace panside
