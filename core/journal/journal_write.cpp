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

std::int64_t sumOf(ShiftId shift, const FactRow& row) {
    const auto seed = mixed(static_cast<std::uint64_t>(microsOf(shift))) + static_cast<std::uint64_t>(row.id);
    return static_cast<std::int64_t>(hashOf(row.row, mixed(seed) + static_cast<std::uint64_t>(row.at)));
}

static std::uint64_t seedOf(ShiftId shift, FactId first) {
    return mixed(mixed(static_cast<std::uint64_t>(microsOf(shift))) + static_cast<std::uint64_t>(first));
}

std::int64_t sumOf(ShiftId shift, FactId first, std::string_view block) {
    return static_cast<std::int64_t>(hashOf(block, seedOf(shift, first)));
}

std::span<const BlocksByFour::Block> BlocksByFour::next() {
    std::array<Hashed, 4> hashed;
    std::array<std::int64_t, 4> sums{};
    std::size_t count = 0;
    while (count < blocks_.size() && !done_) {
        if (!query_.executeStep()) { // not asked again: SQLite would begin anew
            done_ = true;
            break;
        }
        Block& block = blocks_[count];
        block.shift = instantOf(query_.getColumn(0).getInt64());
        block.first = query_.getColumn(1).getInt64();
        sums[count] = query_.getColumn(2).getInt64();
        const auto data = query_.getColumn(3);
        block.data.clear(); // an empty blob has no address
        if (const auto* bytes = static_cast<const char*>(data.getBlob()))
            block.data.assign(bytes, static_cast<std::size_t>(data.getBytes()));
        hashed[count] = {block.data, seedOf(block.shift, block.first)};
        ++count;
    }
    if (count == 0)
        return {};
    const auto hashes = count == 4 ? hashesOf(hashed) : std::array<std::uint64_t, 4>{};
    for (std::size_t i = 0; i < count; ++i)
        blocks_[i].sound =
            static_cast<std::int64_t>(count == 4 ? hashes[i] : hashOf(hashed[i].bytes, hashed[i].seed)) == sums[i];
    return {blocks_.data(), count};
}

FactTable::FactTable(SQLite::Database& db)
    : insert_{db, "INSERT INTO fact(shift, id, at, row, sum) VALUES(?,?,?,?,?)"} {}

void FactTable::add(ShiftId shift, const FactRow& row) {
    SQLite::bind(insert_, microsOf(shift), row.id, row.at, row.row, sumOf(shift, row));
    insert_.exec();
    insert_.reset();
}

BlockTable::BlockTable(SQLite::Database& db)
    : insert_{db, "INSERT INTO block(shift, first, last, count, earliest, latest, sum, data) VALUES(?,?,?,?,?,?,?,?)"} {
}

void BlockTable::add(ShiftId shift, const std::vector<Channel>& channels, const std::vector<Sample>& samples) {
    const auto byId = [](const Sample& a, const Sample& b) { return a.id < b.id; };
    const auto byTime = [](const Sample& a, const Sample& b) { return a.at < b.at; };
    const auto [first, last] = std::minmax_element(samples.begin(), samples.end(), byId);
    const auto [earliest, latest] = std::minmax_element(samples.begin(), samples.end(), byTime);
    addPacked(shift, first->id, last->id, static_cast<std::int64_t>(samples.size()), microsOf(earliest->at),
              microsOf(latest->at), packed(channels, samples));
}

void BlockTable::addPacked(ShiftId shift, FactId first, FactId last, std::int64_t count, std::int64_t earliest,
                           std::int64_t latest, std::string_view data) {
    SQLite::bind(insert_, microsOf(shift), first, last, count, earliest, latest, sumOf(shift, first, data));
    insert_.bind(8, data.data(), static_cast<int>(data.size()));
    insert_.exec();
    insert_.reset();
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
class Entry {
public:
    explicit Entry(SQLite::Database& db) : db_{db}, facts_{db}, blocks_{db} {}

    void add(const BeginShift& begin) {
        SQLite::Statement insert{db_, "INSERT INTO shift(id, live, opening) VALUES(?,?,?)"};
        SQLite::bind(insert, microsOf(begin.shift), begin.book ? 2 : begin.live ? 1 : 0, begin.opening);
        insert.exec();
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
        SQLite::Statement insert{db_, "INSERT INTO withdrawal(shift, id, fact, at, by) VALUES(?,?,?,?,?)"};
        SQLite::bind(insert, microsOf(withdraw.shift), withdraw.id, withdraw.fact, microsOf(withdraw.at), withdraw.by);
        insert.exec();
    }
    void add(const TurnShift& turn) {
        SQLite::Statement insert{db_, "INSERT INTO turn(shift, number, open) SELECT ?1, 1 + ifnull(max(number), 0), ?2"
                                      " FROM turn WHERE shift=?1"};
        SQLite::bind(insert, microsOf(turn.shift), turn.open ? 1 : 0);
        insert.exec();
    }
    void add(const CarrySetting& carry) {
        SQLite::Statement insert{db_, "INSERT INTO carried(at, row) VALUES(?,?)"};
        SQLite::bind(insert, microsOf(carry.fact.at), rowOf(carry.fact));
        insert.exec();
    }
    // What is loose becomes blocks; returns how many readings that were.
    std::int64_t flush() {
        std::int64_t readings = 0;
        for (const auto& [shift, loose] : loose_) {
            blocks_.add(shift, loose.channels, loose.samples);
            readings += static_cast<std::int64_t>(loose.samples.size());
        }
        loose_.clear();
        return readings;
    }

private:
    FactId numbered(ShiftId shift) {
        flush();
        return nextId(db_, shift);
    }
    struct Loose {
        std::vector<Channel> channels;
        std::vector<Sample> samples;
    };
    SQLite::Database& db_;
    FactTable facts_;
    BlockTable blocks_;
    std::map<ShiftId, Loose> loose_;
};

// The facts are kept already: merging them only saves room, and can wait.
void tidy(Journal::Inside& inside, ShiftId shift) {
    try {
        mergeBlocks(inside, shift);
    } catch (const SQLite::Exception&) {
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
    Unpacked small;
    {
        SQLite::Statement query{*inside.db,
                                "SELECT data, first, sum FROM block WHERE shift=? AND count<? ORDER BY first"};
        SQLite::bind(query, microsOf(shift), readingsABlock);
        while (query.executeStep()) {
            const std::string data = query.getColumn(0).getString();
            // A damaged block stays as it is, for the salvage.
            if (sumOf(shift, query.getColumn(1).getInt64(), data) != query.getColumn(2).getInt64() ||
                !unpack(data, small))
                return;
        }
    }
    if (small.samples.empty())
        return;
    SQLite::Statement drop{*inside.db, "DELETE FROM block WHERE shift=? AND count<?"};
    SQLite::bind(drop, microsOf(shift), readingsABlock);
    drop.exec();
    BlockTable blocks{*inside.db};
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
    transaction.commit();
    inside.loose = 0;
}

void Journal::commit(std::span<Change> changes) {
    Inside& inside = *inside_;
    requireRight(inside);
    guarded(inside.place, [&] {
        SQLite::Transaction transaction{*inside.db, SQLite::TransactionBehavior::IMMEDIATE};
        Entry entry{*inside.db};
        for (Change& change : changes)
            std::visit([&](auto& one) { entry.add(one); }, change);
        const std::int64_t readings = entry.flush();
        transaction.commit();
        inside.loose += readings;
    });
    for (const Change& change : changes)
        if (const auto* begin = std::get_if<BeginShift>(&change))
            inside.newest = begin->shift;
    for (const Change& change : changes)
        if (const auto* turn = std::get_if<TurnShift>(&change); turn && !turn->open)
            tidy(inside, turn->shift);
    if (const auto* keep = changes.empty() ? nullptr : std::get_if<KeepFact>(&changes.back());
        keep && inside.loose >= readingsABlock)
        tidy(inside, keep->shift);
}

namespace {

Scribe& scribeOf(const Journal& journal) {
    auto& scribe = journal.inside().scribe;
    if (!scribe)
        scribe.emplace(journal.standing());
    return *scribe;
}

// If the disk refuses, the scribe must not believe that it was kept: it looks again next time.
void commitOrForget(Journal& journal, std::vector<Change>& changes) {
    try {
        journal.commit(changes);
    } catch (...) {
        journal.inside().scribe.reset();
        throw;
    }
}

void requireShift(const Journal& journal, ShiftId shift) {
    SQLite::Statement query{*journal.inside().db, "SELECT 1 FROM shift WHERE id=?"};
    query.bind(1, microsOf(shift));
    if (!query.executeStep())
        throw JournalError{JournalTrouble::noSuchShift, journal.place(), JournalFinding::said(textOf(shift))};
}

} // namespace

Scribe::Kept Journal::append(Fact fact) {
    std::vector<Change> changes;
    auto kept = scribeOf(*this).keep(std::move(fact), changes);
    commitOrForget(*this, changes);
    return kept;
}

bool Journal::withdraw(FactId fact, Instant at, std::string by) {
    std::vector<Change> changes;
    if (!scribeOf(*this).withdraw(fact, at, std::move(by), changes))
        return false;
    commitOrForget(*this, changes);
    return true;
}

void Journal::close() {
    std::vector<Change> changes;
    scribeOf(*this).close(changes);
    commitOrForget(*this, changes);
}

void Journal::carry(Fact setting) {
    std::vector<Change> changes;
    scribeOf(*this).carry(std::move(setting), changes);
    commitOrForget(*this, changes);
}

FactId Journal::appendTo(ShiftId shift, Fact fact) {
    guarded(place(), [&] { requireShift(*this, shift); });
    std::vector<Change> changes;
    scribeOf(*this).keepIn(shift, std::move(fact), changes);
    commitOrForget(*this, changes);
    return std::get<KeepFact>(changes.front()).id;
}

void Journal::withdrawFrom(ShiftId shift, FactId fact, Instant at, std::string by) {
    guarded(place(), [&] {
        requireShift(*this, shift);
        if (fact < 1 || fact >= nextId(*inside_->db, shift))
            throw JournalError{
                JournalTrouble::noSuchFact, place(), {JournalFinding::Kind::number, std::to_string(fact)}};
    });
    std::vector<Change> changes;
    scribeOf(*this).withdrawFrom(shift, fact, at, std::move(by), changes);
    commitOrForget(*this, changes);
}

} // namespace panside
