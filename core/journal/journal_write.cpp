#include "core/boil/shift_log.h"
#include "core/journal/hash.h"
#include "core/journal/inside.h"

#include <algorithm>
#include <map>

namespace panside {

bool isPlain(const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    return reading && !reading->byHand() && fact.by.empty() && !fact.entered && fact.extra.empty();
}

FactId nextId(SQLite::Database& db, ShiftId shift) {
    SQLite::Statement query{db, "SELECT 1 + max(ifnull((SELECT max(id) FROM fact WHERE shift=?1), 0),"
                                " ifnull((SELECT max(last) FROM block WHERE shift=?1), 0),"
                                " ifnull((SELECT max(id) FROM withdrawal WHERE shift=?1), 0))"};
    query.bind(1, microsOf(shift));
    query.executeStep();
    return query.getColumn(0).getInt64();
}

namespace {

// One transaction's worth of changes on their way into the tables.
class Entering {
public:
    explicit Entering(SQLite::Database& db) : db_{db}, seal_{db}, facts_{db, seal_}, blocks_{db, seal_} {}

    void add(const BeginShift& begin) {
        addShift(db_, seal_, {microsOf(begin.shift), begin.book ? 2 : begin.live ? 1 : 0, begin.opening, 0});
        add(TurnShift{begin.shift, true});
    }
    void add(KeepFact& keep) {
        if (keep.id == 0)
            keep.id = numbered(keep.shift);
        if (isPlain(keep.fact)) {
            const auto& reading = std::get<Reading>(keep.fact.what);
            Loose& loose = loose_[keep.shift];
            loose.samples.push_back({keep.id, keep.fact.at, reading.si, channelIndex(loose.channels, reading)});
        } else {
            facts_.add(keep.shift, {keep.id, microsOf(keep.fact.at), rowOf(keep.fact)});
        }
    }
    void add(WithdrawFact& withdraw) {
        if (withdraw.id == 0)
            withdraw.id = numbered(withdraw.shift);
        addWithdrawal(db_, seal_,
                      {microsOf(withdraw.shift), withdraw.id, withdraw.fact, microsOf(withdraw.at), withdraw.by});
    }
    void add(const TurnShift& turn) { addTurn(db_, seal_, turn.shift, turn.open); }
    void add(const CarrySetting& carry) {
        addCarried(db_, seal_, microsOf(carry.fact.at), rowOf(carry.fact), latestBegun(db_));
    }
    // The last of all: what is loose becomes blocks, and all of it is sealed; returns how many readings were loose.
    std::int64_t close() {
        const std::int64_t readings = flush();
        seal_.close();
        return readings;
    }

private:
    std::int64_t flush() {
        std::int64_t readings = 0;
        for (const auto& [shift, loose] : loose_) {
            blocks_.add(shift, loose.channels, loose.samples);
            readings += static_cast<std::int64_t>(loose.samples.size());
        }
        loose_.clear();
        return readings;
    }
    FactId numbered(ShiftId shift) {
        flush();
        return nextId(db_, shift);
    }
    struct Loose {
        std::vector<Channel> channels;
        std::vector<Sample> samples;
    };
    SQLite::Database& db_;
    Seal seal_;
    FactTable facts_;
    BlockTable blocks_;
    std::map<ShiftId, Loose> loose_;
};

// The facts are kept already: merging them only saves room, and can wait.
void tidy(Journal::Inside& inside, ShiftId shift) {
    try {
        mergeBlocks(inside, shift);
    } catch (...) {
        inside.loose = 0;
    }
}

} // namespace

void requireRight(const Journal::Inside& inside) {
    if (!inside.lock)
        throw JournalError{*inside.readOnly};
    // SQLite would go on writing into a file that has been deleted or replaced, and all would be lost with it.
    if (inside.moved())
        throw JournalError{JournalTrouble::gone, inside.place};
}

void mergeBlocks(Journal::Inside& inside, ShiftId shift) {
    SQLite::Transaction transaction{*inside.db, SQLite::TransactionBehavior::IMMEDIATE};
    Seal seal{*inside.db};
    Unpacked small;
    {
        SQLite::Statement query{*inside.db, "SELECT first, last, count, earliest, latest, sum, data FROM block"
                                            " WHERE shift=? AND count<? ORDER BY first"};
        SQLite::bind(query, microsOf(shift), readingsABlock);
        while (query.executeStep()) {
            const auto row = query.getColumns<BlockRow, 5>();
            const std::int64_t sum = query.getColumn(5).getInt64();
            const std::string data = query.getColumn(6).getString();
            // A damaged block stays as it is, for the salvage.
            if (sumOf(shift, row.first, data) != sum || !unpack(data, small))
                return;
            seal.drop(microsOf(shift), Part::blocks, sealOf(row, sum));
        }
    }
    if (small.samples.empty())
        return;
    SQLite::Statement drop{*inside.db, "DELETE FROM block WHERE shift=? AND count<?"};
    SQLite::bind(drop, microsOf(shift), readingsABlock);
    drop.exec();
    BlockTable blocks{*inside.db, seal};
    for (auto from = small.samples.begin(); from != small.samples.end();) {
        const auto to = from + std::min<std::ptrdiff_t>(readingsABlock, small.samples.end() - from);
        std::vector<Channel> channels;
        std::vector<Sample> samples{from, to};
        for (Sample& sample : samples) {
            const Channel& channel = small.channels[sample.channel];
            sample.channel = channelIndex(channels, Reading{channel.series, 0, channel.unit, channel.probe});
        }
        blocks.add(shift, channels, samples);
        from = to;
    }
    seal.close();
    transaction.commit();
    inside.loose = 0;
}

void Journal::commit(std::span<Change> changes) {
    Inside& inside = *inside_;
    requireRight(inside);
    guarded(inside.place, [&] {
        SQLite::Transaction transaction{*inside.db, SQLite::TransactionBehavior::IMMEDIATE};
        Entering entering{*inside.db};
        for (Change& change : changes)
            std::visit([&](auto& one) { entering.add(one); }, change);
        const std::int64_t readings = entering.close();
        transaction.commit();
        inside.loose += readings;
    });
    for (const Change& change : changes)
        if (const auto* begin = std::get_if<BeginShift>(&change); begin && begin->live)
            inside.newest = begin->shift;
    for (const Change& change : changes)
        if (const auto* turn = std::get_if<TurnShift>(&change); turn && !turn->open)
            tidy(inside, turn->shift);
    if (const auto* keep = changes.empty() ? nullptr : std::get_if<KeepFact>(&changes.back());
        keep && inside.loose >= readingsABlock)
        tidy(inside, keep->shift);
}

FactId Journal::appendTo(ShiftId shift, Fact fact) {
    guarded(place(), [&] { beginningOf(*inside_, shift); }); // throws where there is no such shift
    std::vector<Change> changes{KeepFact{shift, 0, std::move(fact)}};
    commit(changes);
    return std::get<KeepFact>(changes.front()).id;
}

} // namespace panside
