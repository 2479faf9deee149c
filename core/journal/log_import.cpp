#include "core/journal/log_import.h"

#include "core/journal/hash.h"
#include "core/journal/inside.h"
#include "core/journal/log_chunks.h"

#include <algorithm>
#include <bit>
#include <fmt/format.h>

namespace panside {
namespace {

// Whether a log is of one shift: a fire that is lit after the shift's end is another's.
class ShiftEnds {
public:
    void hear(const Fact& fact) {
        if (std::holds_alternative<ShiftEnd>(fact.what))
            ended_ = ended_ ? std::min(*ended_, fact.at) : fact.at;
        if (std::holds_alternative<Lit>(fact.what))
            lit_ = lit_ ? std::max(*lit_, fact.at) : fact.at;
    }
    bool judge(Imported& imported) const {
        if (!ended_ || !lit_ || *lit_ <= *ended_)
            return false;
        imported.outcome = ImportOutcome::twoShifts;
        imported.endedAt = *ended_;
        imported.litAgain = *lit_;
        return true;
    }

private:
    std::optional<Instant> ended_, lit_;
};

// A log on its way in: readings packed as they come, so that little is held until all of it is known to be sound.
class Staged {
public:
    FactId add(Fact fact) {
        digest_.add(fact);
        first_ = digest_.facts == 1 ? fact.at : std::min(first_, fact.at);
        ends_.hear(fact);
        const FactId id = next_++;
        if (!isPlain(fact)) {
            rows_.push_back({id, microsOf(fact.at), rowOf(fact)});
            return id;
        }
        const auto& reading = std::get<Reading>(fact.what);
        samples_.push_back({id, fact.at, reading.si, channelIndex(channels_, reading)});
        if (static_cast<std::int64_t>(samples_.size()) == readingsABlock)
            pack();
        return id;
    }
    void pack() {
        if (samples_.empty())
            return;
        blocks_.push_back({blockRowOf(samples_), packed(channels_, samples_)});
        samples_.clear();
        channels_.clear();
    }
    void keep(SQLite::Database& db, ShiftId shift) const {
        SQLite::Transaction transaction{db, SQLite::TransactionBehavior::IMMEDIATE};
        Seal seal{db};
        addShift(db, seal, {microsOf(shift), 0, 0, 0});
        addTurn(db, seal, shift, false);
        FactTable facts{db, seal};
        for (const FactRow& row : rows_)
            facts.add(shift, row);
        BlockTable blocks{db, seal};
        for (const Block& block : blocks_)
            blocks.addPacked(shift, block.row, block.data);
        seal.close();
        transaction.commit();
    }
    const Digest& digest() const { return digest_; }
    Instant first() const { return first_; }
    const ShiftEnds& ends() const { return ends_; }

private:
    struct Block {
        BlockRow row;
        std::string data;
    };
    Digest digest_;
    Instant first_{};
    ShiftEnds ends_;
    FactId next_ = 1;
    std::vector<FactRow> rows_;
    std::vector<Channel> channels_;
    std::vector<Sample> samples_;
    std::vector<Block> blocks_;
};

void moveFaults(std::vector<Fault>& from, std::vector<Fault>& into, std::uint64_t& count, std::size_t most) {
    count += from.size();
    for (Fault& fault : from)
        if (into.size() < most)
            into.push_back(std::move(fault));
}

// The shift of the journal that begins when this one does.
std::optional<ShiftId> twinOf(const Journal& journal, Instant first) {
    for (const Shift& shift : journal.shifts())
        if (beginningOf(journal.inside(), shift.id).earliest == microsOf(first))
            return shift.id;
    return std::nullopt;
}

// Rows of the day book among a shift's own, and the draws that name a vessel, for whoever judges them.
void pickDeeds(const ReadLog& piece, ReadLog& deeds) {
    for (std::size_t i = 0; i < piece.facts.size(); ++i) {
        const bool day = std::holds_alternative<DayRow>(piece.facts[i].what);
        if (!day && !std::holds_alternative<DrawClosed>(piece.facts[i].what))
            continue;
        deeds.dayRows += day;
        deeds.facts.push_back(piece.facts[i]);
        deeds.lines.push_back(i < piece.lines.size() ? piece.lines[i] : 0);
    }
}

// All of a log, and what is to be said of it as long as nobody looks what is in the journal: `added` where it is sound.
Imported read(LogSource& log, const ImportOptions& options, Staged& staged) {
    Imported imported;
    ReadLog deeds;
    while (auto chunk = log.next()) {
        if (options.judge)
            pickDeeds(*chunk, deeds);
        moveFaults(chunk->faults, imported.faults, imported.faultCount, options.most);
        moveFaults(chunk->warnings, imported.warnings, imported.warningCount, options.most);
        if (imported.faultCount == 0)
            for (std::size_t i = 0; i < chunk->facts.size(); ++i) {
                const Fact& fact = chunk->facts[i];
                const bool placed = !isPlain(fact) || (options.placed && options.placed(fact));
                const FactId id = staged.add(std::move(chunk->facts[i]));
                if (placed && i < chunk->lines.size())
                    imported.lines.emplace_back(id, chunk->lines[i]);
            }
        else
            imported.facts += chunk->facts.size(); // good rows of a log that is refused are counted alone
        if (options.goOn && !options.goOn(log.bytes())) {
            imported.outcome = ImportOutcome::cancelled;
            return imported;
        }
    }
    if (log.broken()) {
        imported.outcome = ImportOutcome::unreadable;
        return imported;
    }
    if (imported.faultCount == 0 && deeds.dayRows > 0) {
        auto faults = options.judge(deeds);
        moveFaults(faults, imported.faults, imported.faultCount, options.most);
    }
    staged.pack();
    imported.facts += staged.digest().facts;
    if (imported.faultCount > 0)
        return imported;
    imported.outcome = ImportOutcome::added;
    staged.ends().judge(imported);
    return imported;
}

} // namespace

void Digest::add(const Fact& fact) {
    ++facts;
    if (!isPlain(fact)) {
        sum += hashOf(rowOf(fact));
        return;
    }
    const auto& reading = std::get<Reading>(fact.what);
    std::uint64_t hash =
        mixed(static_cast<std::uint64_t>(microsOf(fact.at))) ^ std::bit_cast<std::uint64_t>(reading.si);
    hash = mixed(hash) ^ (static_cast<std::uint64_t>(reading.series) << 8) ^ static_cast<std::uint64_t>(reading.unit);
    sum += reading.probe.empty() ? mixed(hash) : hashOf(reading.probe, hash);
}

Digest digestOf(const Journal& journal, ShiftId shift) {
    Digest digest;
    journal.visit(shift, [&](FactId, const Fact& fact) {
        digest.add(fact);
        return true;
    });
    return digest;
}

Imported importLog(Journal& journal, std::istream& log, const ImportOptions& options) {
    LogChunks chunks{log};
    return importLog(journal, chunks, options);
}

std::optional<Imported> twoShiftsIn(const std::vector<Fact>& facts) {
    ShiftEnds ends;
    for (const Fact& fact : facts)
        ends.hear(fact);
    Imported imported;
    return ends.judge(imported) ? std::optional{imported} : std::nullopt;
}

Imported importLog(Journal& journal, LogSource& log, const ImportOptions& options) {
    requireRight(journal.inside());
    Staged staged;
    Imported imported = read(log, options, staged);
    if (imported.outcome != ImportOutcome::added)
        return imported;
    return guarded(journal.place(), [&] {
        if (const auto twin = twinOf(journal, staged.first())) {
            imported.shift = *twin;
            const Digest there = digestOf(journal, *twin);
            imported.factsThere = there.facts;
            imported.outcome = there == staged.digest() ? ImportOutcome::alreadyThere : ImportOutcome::differs;
            return imported;
        }
        imported.shift = freeName(journal, staged.first());
        staged.keep(*journal.inside().db, imported.shift);
        return imported;
    });
}

bool exportLog(const Journal& journal, ShiftId shift, const std::function<void(std::string_view)>& piece,
               const std::function<bool(std::uint64_t facts)>& goOn) {
    constexpr std::size_t pieceSize = 1U << 18;
    std::string text{logHeader};
    text += '\n';
    std::uint64_t facts = 0;
    bool whole = true;
    journal.visit(shift, [&](FactId, const Fact& fact) {
        text += rowOf(fact);
        text += '\n';
        ++facts;
        if (text.size() < pieceSize)
            return true;
        piece(text);
        text.clear();
        whole = !goOn || goOn(facts);
        return whole;
    });
    if (whole)
        piece(text);
    return whole;
}

std::string sentence(const Imported& imported, std::string_view file) {
    switch (imported.outcome) {
    case ImportOutcome::added:
        return fmt::format("{}: added as shift {}, {} facts.", file, textOf(imported.shift), imported.facts);
    case ImportOutcome::alreadyThere:
        return fmt::format("{}: already there as shift {}; nothing was added.", file, textOf(imported.shift));
    case ImportOutcome::faulty:
        return fmt::format("{}: {} fault{}, nothing was imported.", file, imported.faultCount,
                           imported.faultCount == 1 ? "" : "s");
    case ImportOutcome::differs:
        return fmt::format("{}: a shift that begins at the same time is there, {}, with other facts ({} there, {} in "
                           "the log); nothing "
                           "was imported. Import it into another journal to compare them.",
                           file, textOf(imported.shift), imported.factsThere, imported.facts);
    case ImportOutcome::twoShifts:
        return fmt::format(
            "{}: two shifts in one log: shift_end at {}, then lit at {}; nothing was imported. Split the log "
            "between the two.",
            file, textOf(imported.endedAt), textOf(imported.litAgain));
    case ImportOutcome::cancelled:
        return fmt::format("{}: stopped; nothing was imported.", file);
    case ImportOutcome::unreadable:
        return fmt::format("{}: cannot be read to its end; nothing was imported. Check the disk or stick.", file);
    }
    return {};
}

} // namespace panside
