// Days of the sap season on which nobody wrote anything, and what is not known since.
#include "core/ledger/fold.h"

#include <algorithm>

namespace panside {
namespace {

constexpr Duration wholeDay{86400};
// Sap keeps a day or two (Handling sap and syrup, Ohio State University Extension, 2020): whoever has any comes back
// within three days. After a longer silence it was the book that rested, or the trees, and no row says which.
constexpr std::chrono::days longSilence{4};

} // namespace

void Ledger::Fold::findSilences() {
    std::optional<std::size_t> first, last;
    for (std::size_t i = 0; i < in.rows.size(); ++i) {
        const auto* day = std::get_if<DayRow>(&in.rows[i].fact->what);
        const bool sap =
            in.rows[i].shift >= 0 || (day && (day->deed == Deed::gathered || day->deed == Deed::concentrated));
        if (!sap)
            continue;
        first = first ? first : i;
        last = i;
    }
    for (std::size_t i = first.value_or(0); last && i < *last; ++i) {
        const Instant from = in.rows[i].fact->at, to = in.rows[i + 1].fact->at;
        if (to - from <= wholeDay)
            continue;
        // At least one whole day lies between the days of the two rows.
        const auto days = std::chrono::sys_days{in.dateOf(to)} - std::chrono::sys_days{in.dateOf(from)};
        if (days >= std::chrono::days{2})
            silences.push_back({i + 1, {from, to}, days >= longSilence});
    }
}

// What may have been filled or emptied meanwhile is not known until somebody measures it.
void Ledger::Fold::passSilence() {
    for (; nextSilence < silences.size() && silences[nextSilence].before <= line; ++nextSilence) {
        const FoundSilence& silence = silences[nextSilence];
        if (!silence.isLong)
            continue;
        for (Vessel& vessel : vessels)
            if (vessel.since != Instant{} && !vessel.out)
                vessel.unwritten = silence.span;
        if (!nights.empty())
            pansUnwritten = silence.span;
    }
}

// What any night left in them, and for each day of the silence what a night added at the most.
double Ledger::Fold::pansMost() const {
    double most = std::max(0.0, pans.sugar), gain = 0;
    for (const Night& night : nights) {
        most = std::max(most, night.left);
        gain = std::max(gain, night.left - night.before);
    }
    const double days = pansUnwritten ? secondsBetween(pansUnwritten->from, pansUnwritten->to) / 86400 : 0;
    return most + gain * days;
}

} // namespace panside
