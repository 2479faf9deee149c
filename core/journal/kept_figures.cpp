#include "core/journal/kept_figures.h"

#include "core/journal/inside.h"

namespace panside {
namespace {

constexpr std::int32_t firstWithFigures = 4; // the form of the journal
// Figures of a family bear its name before their own, and two of them tell how they were worked out.
constexpr char familyMark = '/';
constexpr const char* formOfFamily = "form";
constexpr const char* seenOfFamily = "seen";

bool isOfFamily(const std::string& name) { return name.find(familyMark) != std::string::npos; }

// All that is kept of a shift under names like that is replaced.
void replace(SQLite::Database& db, ShiftId shift, const char* names, const Figures& figures) {
    SQLite::Statement drop{db, std::string{"DELETE FROM figure WHERE shift=? AND name "} + names};
    SQLite::bind(drop, microsOf(shift));
    drop.exec();
    SQLite::Statement insert{db, "INSERT INTO figure(shift, name, value) VALUES(?,?,?)"};
    for (const auto& [name, value] : figures) {
        SQLite::bind(insert, microsOf(shift), name, value);
        insert.exec();
        insert.reset();
    }
    sealDerived(db, Derived::figures, microsOf(shift));
}

// False where it may not be written, or another is writing.
bool written(Journal& journal, const auto& work) {
    if (!journal.inside().lock)
        return false;
    try {
        SQLite::Database& db = *journal.inside().db;
        SQLite::Transaction transaction{db, SQLite::TransactionBehavior::IMMEDIATE};
        work(db);
        transaction.commit();
        return true;
    } catch (const SQLite::Exception&) {
        return false;
    }
}

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
            if (worked.getColumn(1).getInt64() == nextId(db, shift) &&
                isAsKept(journal.inside(), Derived::figures, shift))
                kept.emplace(shift, Figures{});
        }
        SQLite::Statement query{db, "SELECT shift, name, value FROM figure"};
        while (query.executeStep())
            if (const auto found = kept.find(instantOf(query.getColumn(0).getInt64()));
                found != kept.end() && !isOfFamily(query.getColumn(1).getString()))
                found->second.emplace(query.getColumn(1).getString(), query.getColumn(2).getDouble());
        return kept;
    });
}

bool keepFigures(Journal& journal, ShiftId shift, int form, FactId seen, const Figures& figures) {
    return written(journal, [&](SQLite::Database& db) {
        SQLite::Statement worked{db, "INSERT OR REPLACE INTO worked(shift, form, seen) VALUES(?,?,?)"};
        SQLite::bind(worked, microsOf(shift), form, seen);
        worked.exec();
        replace(db, shift, "NOT LIKE '%/%'", figures);
    });
}

std::map<ShiftId, Figures> keptFiguresOf(const Journal& journal, const std::string& family, int form) {
    return guarded(journal.place(), [&] {
        std::map<ShiftId, Figures> kept;
        if (journal.inside().version < firstWithFigures)
            return kept;
        SQLite::Database& db = *journal.inside().db;
        const Snapshot snapshot{db};
        SQLite::Statement query{db, "SELECT shift, name, value FROM figure WHERE name LIKE ?"};
        query.bind(1, family + familyMark + '%');
        while (query.executeStep())
            kept[instantOf(query.getColumn(0).getInt64())].emplace(
                query.getColumn(1).getString().substr(family.size() + 1), query.getColumn(2).getDouble());
        for (auto one = kept.begin(); one != kept.end();) {
            Figures& figures = one->second;
            const auto by = figures.find(formOfFamily), seen = figures.find(seenOfFamily);
            const bool holds = by != figures.end() && seen != figures.end() && by->second == form &&
                               seen->second == static_cast<double>(nextId(db, one->first)) &&
                               isAsKept(journal.inside(), Derived::figures, one->first);
            figures.erase(formOfFamily);
            figures.erase(seenOfFamily);
            one = holds ? std::next(one) : kept.erase(one);
        }
        return kept;
    });
}

bool keepFiguresOf(Journal& journal, ShiftId shift, const std::string& family, int form, FactId seen,
                   const Figures& figures) {
    return written(journal, [&](SQLite::Database& db) {
        // The row that bears the sum of them all; of no rule, where nobody else kept anything.
        SQLite::Statement worked{db, "INSERT OR IGNORE INTO worked(shift, form, seen) VALUES(?,0,0)"};
        SQLite::bind(worked, microsOf(shift));
        worked.exec();
        const std::string its = family + familyMark;
        Figures named;
        for (const auto& [name, value] : figures)
            named.emplace(its + name, value);
        named[its + formOfFamily] = form;
        named[its + seenOfFamily] = static_cast<double>(seen);
        replace(db, shift, ("LIKE '" + its + "%'").c_str(), named);
    });
}

FactId factsSeen(const Journal& journal, ShiftId shift) {
    return guarded(journal.place(), [&] { return nextId(*journal.inside().db, shift); });
}

} // namespace panside
