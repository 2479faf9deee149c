#pragma once
// The ledger: what stands before and after the boil, folded over the day book and all shifts together, by time. Facts
// in, picture out: no clock, no file. How each row is read stands in the manual (day_book.md).
#include "core/boil/boil.h"
#include "core/ledger/ledger_parts.h"

#include <functional>
#include <map>
#include <memory>
#include <span>
#include <unordered_map>

namespace panside {

// A row with where it is from: which shift, or the day book.
struct LedgerRow {
    const Fact* fact = nullptr;
    int shift = -1; // into LedgerInput::shifts; -1: the day book
    FactId id = 0;
};

// The density of a draw, as the boil engine knows it.
struct DrawDensity {
    Brix sugar;
    Brix sd; // of what it shares with the night's other draws: the mark, the glass
    // What each draw has for itself: the pail is not quite the mean of what the probe saw.
    static constexpr Brix alone = Brix::degrees(0.22);
};

// How far the pan's reading lay over what physics says of a checked sugar, and how well that is known.
struct CheckApart {
    TemperatureDifference apart, sd;
};

struct LedgerInput {
    std::vector<LedgerRow> rows; // by time; those of equal times in the order of their files
    std::vector<Instant> shifts; // their IDs
    std::function<std::optional<DrawDensity>(int shift, Instant closed)> densityOf; // none: the checks decide
    std::function<std::optional<CheckApart>(int shift, Instant checked)> apartOf;   // none: nobody knows
    std::function<std::chrono::year_month_day(Instant)> dateOf;                     // local; none: UTC
};

class Ledger {
public:
    explicit Ledger(LedgerInput input);
    ~Ledger();
    Ledger(Ledger&&) noexcept;
    Ledger& operator=(Ledger&&) noexcept;

    const Thread& thread() const;
    const std::vector<Vessel>& vessels() const;
    const std::vector<Lot>& lots() const;
    const std::vector<Night>& nights() const;
    const LedgerTables& tables() const;
    const std::vector<LedgerMark>& marks() const; // by row
    const Balance20& balance() const;
    std::chrono::year_month_day dateOf(Instant at) const; // local, as the nights are named

    std::optional<std::size_t> vesselNamed(std::string_view name) const;
    std::optional<std::size_t> lotNamed(std::string_view code) const;

private:
    struct Fold;
    std::unique_ptr<Fold> fold_;
};

// The rows of one shift.
struct LedgerShift {
    Instant id;
    std::span<const Boil::Entry> rows;
};
// All rows of day books and of shifts put together by time; the facts must outlive it.
LedgerInput ledgerInput(std::span<const std::span<const Boil::Entry>> books, std::span<const LedgerShift> shifts);

} // namespace panside
