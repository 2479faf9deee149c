#include "core/ledger/book_rows.h"

#include "core/boil/day_vocabulary.h"

#include <algorithm>

namespace panside {

bool isYes(std::string_view word) { return word == "yes" || word == "true" || word == "1"; }

void FeedTank::first(std::string_view name) {
    if (key_.empty())
        key_ = nameKey(name);
}

void FeedTank::see(const DayRow& row) {
    if (row.deed != Deed::vessel)
        return;
    const std::string name = nameKey(row.text(Key::name));
    const auto find = [this](const std::string& wanted) {
        return std::ranges::find_if(known_, [&](const auto& one) { return one.first == wanted; });
    };
    auto known = find(name);
    if (row.text(Key::kind) == "feed" && known == known_.end())
        known = known_.insert(known_.end(), {name, true});
    if (known == known_.end())
        return;
    if (row.of(Key::kind))
        known->second = row.text(Key::kind) == "feed";
    if (row.of(Key::out))
        known->second = !isYes(row.text(Key::out));
    const auto mine = find(key_);
    const auto next = std::ranges::find_if(known_, [](const auto& one) { return one.second; });
    if (mine != known_.end() && !mine->second && next != known_.end())
        key_ = next->first;
}

bool touches(const DayRow& day, const std::string& feed) {
    for (const Key key : {Key::to, Key::from, Key::in, Key::vessel})
        if (const DayPair* pair = day.of(key); pair && nameKey(pair->text) == feed)
            return true;
    return false;
}

bool isSameRow(const Fact& one, const Fact& other) {
    const auto *mine = std::get_if<DayRow>(&one.what), *its = std::get_if<DayRow>(&other.what);
    if (!mine || !its)
        return one == other;
    return mine->deed == its->deed && mine->value == its->value && mine->words == its->words && one.by == other.by &&
           std::equal(mine->pairs.begin(), mine->pairs.end(), its->pairs.begin(), its->pairs.end(),
                      [](const DayPair& a, const DayPair& b) {
                          return a.key == b.key && (a.si != 0 ? a.si == b.si : nameKey(a.text) == nameKey(b.text));
                      });
}

int wayOf(const DayRow& day, const std::string& feed) {
    const auto is = [&](Key key) { return nameKey(day.text(key)) == feed; };
    switch (day.deed) {
    case Deed::gathered:
    case Deed::pans_emptied:
    case Deed::press_off:
        return is(Key::to) ? 1 : 0;
    case Deed::bought:
        return is(Key::vessel) || is(Key::to) ? 1 : 0;
    case Deed::concentrated: // what it takes out is more than its volume
        return is(Key::to) ? 1 : 0;
    case Deed::moved:
        return is(Key::to) ? 1 : is(Key::from) ? -1 : 0;
    case Deed::sold:
        return is(Key::vessel) || is(Key::from) ? -1 : 0;
    case Deed::lost:
        return is(Key::from) ? -1 : 0;
    case Deed::vessel:
    case Deed::dipped:
    case Deed::press_on:
    case Deed::graded:
    case Deed::packed:
    case Deed::shipped:
    case Deed::came_back:
    case Deed::destroyed:
    case Deed::cleaned:
    case Deed::tested:
        return 0;
    }
    return 0;
}

} // namespace panside
