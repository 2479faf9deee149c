#include "core/shift/season_book.h"

#include "core/journal/kept_figures.h"

#include <algorithm>

namespace panside {

std::vector<SeasonShift> keptSeason(const Journal& journal) {
    const auto kept = keptFigures(journal, accountForm);
    std::vector<SeasonShift> shifts;
    for (const Shift& shift : journal.shifts()) {
        const auto found = kept.find(shift.id);
        shifts.push_back(
            {shift.id, shift.open, found == kept.end() ? std::nullopt : std::optional{accountIn(found->second)}});
    }
    return shifts;
}

std::optional<ShiftAccount> workOut(Journal& journal, const Shift& shift, const std::function<bool()>& stop) {
    const FactId seen = factsSeen(journal, shift.id);
    ShiftAccountant accountant;
    bool stopped = false;
    int count = 0;
    journal.visit(shift.id, [&](FactId, const Fact& fact) {
        accountant.add(fact);
        stopped = ++count % 1024 == 0 && stop && stop();
        return !stopped;
    });
    if (stopped)
        return std::nullopt;
    auto account = accountant.account();
    if (!shift.open)
        keepFigures(journal, shift.id, accountForm, seen, figuresOf(account));
    return account;
}

std::vector<SeasonShift> wholeSeason(Journal& journal, const std::function<void(int, int)>& each) {
    auto shifts = keptSeason(journal);
    const auto missing =
        static_cast<int>(std::ranges::count_if(shifts, [](const SeasonShift& shift) { return !shift.account; }));
    int done = 0;
    for (SeasonShift& shift : shifts)
        if (!shift.account) {
            shift.account = workOut(journal, {shift.id, shift.open, false});
            if (each)
                each(++done, missing);
        }
    return shifts;
}

} // namespace panside
