#include "core/journal/first_seal.h"

#include "core/journal/rows.h"

#include <SQLiteCpp/VariadicBind.h>

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

void sealShifts(SQLite::Database& db, Seal& seal) {
    SQLite::Statement update{db, "UPDATE shift SET sum=? WHERE id=?"};
    SQLite::Statement query{db, "SELECT id, live, opening, begun FROM shift"};
    std::vector<ShiftRow> rows;
    while (query.executeStep())
        rows.push_back({query.getColumn(0).getInt64(), query.getColumn(1).getInt(), query.getColumn(2).getInt(),
                        query.getColumn(3).getInt64()});
    for (const ShiftRow& row : rows) {
        SQLite::bind(update, sumOf(row), row.id);
        update.exec();
        update.reset();
        seal.add(ofNoShift, Part::shifts, asWord(sumOf(row)));
    }
}

void sealTurns(SQLite::Database& db, Seal& seal) {
    SQLite::Statement update{db, "UPDATE turn SET sum=? WHERE shift=? AND number=?"};
    SQLite::Statement query{db, "SELECT shift, number, open FROM turn"};
    std::vector<TurnRow> rows;
    while (query.executeStep())
        rows.push_back({query.getColumn(0).getInt64(), query.getColumn(1).getInt64(), query.getColumn(2).getInt()});
    for (const TurnRow& row : rows) {
        SQLite::bind(update, sumOf(row), row.shift, row.number);
        update.exec();
        update.reset();
        seal.add(row.shift, Part::turns, asWord(sumOf(row)));
    }
}

void sealWithdrawals(SQLite::Database& db, Seal& seal) {
    SQLite::Statement update{db, "UPDATE withdrawal SET sum=? WHERE shift=? AND id=?"};
    SQLite::Statement query{db, "SELECT shift, id, fact, at, by FROM withdrawal"};
    std::vector<WithdrawalRow> rows;
    while (query.executeStep())
        rows.push_back({query.getColumn(0).getInt64(), query.getColumn(1).getInt64(), query.getColumn(2).getInt64(),
                        query.getColumn(3).getInt64(), query.getColumn(4).getString()});
    for (const WithdrawalRow& row : rows) {
        SQLite::bind(update, sumOf(row), row.shift, row.id);
        update.exec();
        update.reset();
        seal.add(row.shift, Part::withdrawals, asWord(sumOf(row)));
    }
}

void sealCarried(SQLite::Database& db, Seal& seal) {
    SQLite::Statement update{db, "UPDATE carried SET sum=? WHERE id=?"};
    SQLite::Statement query{db, "SELECT id, at, row, after FROM carried"};
    std::vector<CarriedRow> rows;
    while (query.executeStep())
        rows.push_back({query.getColumn(0).getInt64(), query.getColumn(1).getInt64(), query.getColumn(2).getString(),
                        query.getColumn(3).getInt64()});
    for (const CarriedRow& row : rows) {
        SQLite::bind(update, sumOf(row), row.id);
        update.exec();
        update.reset();
        seal.add(ofNoShift, Part::carried, asWord(sumOf(row)));
    }
}

// These had their sums: one that does not fit stays as it is, and is found by itself.
void sealFactsAndReadings(SQLite::Database& db, Seal& seal) {
    SQLite::Statement facts{db, "SELECT shift, sum FROM fact"};
    while (facts.executeStep())
        seal.add(facts.getColumn(0).getInt64(), Part::facts, asWord(facts.getColumn(1).getInt64()));
    SQLite::Statement blocks{db, "SELECT shift, first, last, count, earliest, latest, sum FROM block"};
    while (blocks.executeStep()) {
        const BlockRow row{blocks.getColumn(1).getInt64(), blocks.getColumn(2).getInt64(),
                           blocks.getColumn(3).getInt64(), blocks.getColumn(4).getInt64(),
                           blocks.getColumn(5).getInt64()};
        seal.add(blocks.getColumn(0).getInt64(), Part::blocks, sealOf(row, blocks.getColumn(6).getInt64()));
    }
}

} // namespace

void sealWhatWasKept(SQLite::Database& db) {
    Seal seal{db};
    orderShifts(db);
    sealShifts(db, seal);
    sealTurns(db, seal);
    sealWithdrawals(db, seal);
    sealCarried(db, seal);
    sealFactsAndReadings(db, seal);
    for (const Derived what : {Derived::summary, Derived::scores, Derived::figures})
        for (const std::int64_t shift : shiftsWith(db, what))
            sealDerived(db, what, shift);
    seal.close();
}

} // namespace panside
