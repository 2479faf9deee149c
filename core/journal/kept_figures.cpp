#include "core/journal/kept_figures.h"

#include "core/journal/inside.h"

namespace panside {
namespace {

constexpr std::int32_t firstWithFigures = 4; // the form of the journal

} // namespace

std::map<ShiftId, Figures> keptFigures(const Journal& journal, int form) {
    return guarded(journal.place(), [&] {
        std::map<ShiftId, Figures> kept;
        if (journal.inside().version < firstWithFigures)
            return kept;
        SQLite::Database& db = *journal.inside().db;
        const Snapshot snapshot{db};
        SQLite::Statement worked{db, "SELECT shift, seen FROM worked WHERE form=?"};
        worked.bind(1, form);
        while (worked.executeStep()) {
            const ShiftId shift = instantOf(worked.getColumn(0).getInt64());
            if (worked.getColumn(1).getInt64() == nextId(db, shift))
                kept.emplace(shift, Figures{});
        }
        SQLite::Statement query{db, "SELECT shift, name, value FROM figure"};
        while (query.executeStep())
            if (const auto found = kept.find(instantOf(query.getColumn(0).getInt64())); found != kept.end())
                found->second.emplace(query.getColumn(1).getString(), query.getColumn(2).getDouble());
        return kept;
    });
}

bool keepFigures(Journal& journal, ShiftId shift, int form, FactId seen, const Figures& figures) {
    if (!journal.inside().lock)
        return false;
    try {
        SQLite::Database& db = *journal.inside().db;
        SQLite::Transaction transaction{db, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement drop{db, "DELETE FROM figure WHERE shift=?"};
        SQLite::bind(drop, microsOf(shift));
        drop.exec();
        SQLite::Statement worked{db, "INSERT OR REPLACE INTO worked(shift, form, seen) VALUES(?,?,?)"};
        SQLite::bind(worked, microsOf(shift), form, seen);
        worked.exec();
        SQLite::Statement insert{db, "INSERT INTO figure(shift, name, value) VALUES(?,?,?)"};
        for (const auto& [name, value] : figures) {
            SQLite::bind(insert, microsOf(shift), name, value);
            insert.exec();
            insert.reset();
        }
        sealDerived(db, Derived::figures, microsOf(shift));
        transaction.commit();
        return true;
    } catch (const SQLite::Exception&) {
        return false;
    }
}

FactId factsSeen(const Journal& journal, ShiftId shift) {
    return guarded(journal.place(), [&] { return nextId(*journal.inside().db, shift); });
}

} // namespace panside
