#include "core/journal/draw_scores.h"

#include "core/boil/hindsight.h"
#include "core/journal/inside.h"

namespace panside {
namespace {

constexpr std::int32_t firstWithScores = 3; // the form of the journal
// Raised whenever the forecast is made another way, so that what an older one said is worked out again.
constexpr std::int32_t forecastForm = 9;

std::optional<Duration> secondsIn(const SQLite::Column& column) {
    return column.isNull() ? std::nullopt : std::optional{Duration{column.getDouble()}};
}

DrawScore scoreIn(const SQLite::Statement& row) {
    DrawScore score;
    score.at = instantOf(row.getColumn(0).getInt64());
    score.tenBefore = secondsIn(row.getColumn(1));
    score.fiveBefore = secondsIn(row.getColumn(2));
    score.twoBefore = secondsIn(row.getColumn(3));
    score.inside = row.getColumn(4).getDouble();
    score.underP10 = row.getColumn(5).getDouble();
    score.underP50 = row.getColumn(6).getDouble();
    score.underP90 = row.getColumn(7).getDouble();
    score.forecasts = row.getColumn(8).getInt();
    return score;
}

std::optional<std::vector<DrawScore>> kept(const Journal::Inside& inside, ShiftId shift) {
    if (inside.version < firstWithScores)
        return std::nullopt;
    SQLite::Statement scored{*inside.db, "SELECT 1 FROM scored WHERE shift=? AND seen=? AND form=?"};
    SQLite::bind(scored, microsOf(shift), nextId(*inside.db, shift), forecastForm);
    if (!scored.executeStep() || !isAsKept(inside, Derived::scores, shift))
        return std::nullopt;
    std::vector<DrawScore> scores;
    SQLite::Statement query{*inside.db, "SELECT at, ten, five, two, inside, under10, under50, under90, forecasts "
                                        "FROM score WHERE shift=? ORDER BY at"};
    SQLite::bind(query, microsOf(shift));
    while (query.executeStep())
        scores.push_back(scoreIn(query));
    return scores;
}

void bindSeconds(SQLite::Statement& row, int place, const std::optional<Duration>& span) {
    if (span)
        row.bind(place, seconds(*span));
    else
        row.bind(place);
}

void keep(const Journal::Inside& inside, ShiftId shift, FactId seen, const std::vector<DrawScore>& scores) {
    SQLite::Transaction transaction{*inside.db, SQLite::TransactionBehavior::IMMEDIATE};
    SQLite::Statement drop{*inside.db, "DELETE FROM score WHERE shift=?"};
    SQLite::bind(drop, microsOf(shift));
    drop.exec();
    for (const DrawScore& score : scores) {
        SQLite::Statement insert{*inside.db, "INSERT INTO score(shift, at, inside, under10, under50, under90, "
                                             "forecasts, ten, five, two) VALUES(?,?,?,?,?,?,?,?,?,?)"};
        SQLite::bind(insert, microsOf(shift), microsOf(score.at), score.inside, score.underP10, score.underP50,
                     score.underP90, score.forecasts);
        bindSeconds(insert, 8, score.tenBefore);
        bindSeconds(insert, 9, score.fiveBefore);
        bindSeconds(insert, 10, score.twoBefore);
        insert.exec();
    }
    SQLite::Statement scored{*inside.db, "INSERT OR REPLACE INTO scored(shift, seen, form) VALUES(?,?,?)"};
    SQLite::bind(scored, microsOf(shift), seen, forecastForm);
    scored.exec();
    sealDerived(*inside.db, Derived::scores, microsOf(shift));
    transaction.commit();
}

std::vector<DrawScore> workedOut(Journal& journal, const Shift& shift) {
    // Before the facts are read: if one more comes meanwhile, the scores are out of date at once and not used again.
    const FactId seen = nextId(*journal.inside().db, shift.id);
    Hindsight hindsight;
    journal.visit(shift.id, [&](FactId, const Fact& fact) {
        hindsight.add(fact);
        return true;
    });
    if (!shift.open && journal.inside().lock) {
        try {
            keep(journal.inside(), shift.id, seen, hindsight.scores());
        } catch (const SQLite::Exception&) {
            // Another is writing, or the disk is full: they are worked out again next time.
        }
    }
    return hindsight.scores();
}

} // namespace

std::vector<DrawScore> drawScores(Journal& journal, ShiftId shift) {
    return guarded(journal.place(), [&] {
        for (const Shift& one : journal.shifts())
            if (one.id == shift) {
                auto scores = kept(journal.inside(), shift);
                return scores ? std::move(*scores) : workedOut(journal, one);
            }
        beginningOf(journal.inside(), shift); // throws: there is none
        return std::vector<DrawScore>{};
    });
}

} // namespace panside
