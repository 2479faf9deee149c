#include "core/shift/woodpile.h"

namespace panside {
namespace {

constexpr std::chrono::hours longestShift{72};

} // namespace

double cordsBurntBeside(const Journal& journal, Instant since, std::optional<ShiftId> shown) {
    double cords = 0;
    for (const Shift& shift : journal.shifts()) {
        if (shift.id == shown || shift.id < since - longestShift)
            continue;
        CordSum sum{since};
        // The loads rest on what was done and said, and on the stack.
        const auto add = [&sum](FactId, const Fact& fact) {
            sum.add(fact);
            return true;
        };
        journal.visit(shift.id, add, Series::stack);
        cords += sum.cords();
    }
    return cords;
}

double CordsOfShift::of(const Boil& boil) {
    const auto& facts = boil.facts();
    if (boil.rewritten() != rewritten_ || facts.size() < taken_) {
        sum_ = CordSum{since_};
        taken_ = 0;
    }
    rewritten_ = boil.rewritten();
    Fact scratch{};
    for (; taken_ < facts.size(); ++taken_)
        sum_.add(facts.fact(taken_, scratch));
    return sum_.cords();
}

} // namespace panside
