#include "core/journal/scribe.h"

#include <algorithm>
#include <array>

namespace panside {

std::vector<Set> Scribe::inForce() const {
    std::vector<Standing::Setting> all = now_.settings;
    all.insert(all.end(), now_.carried.begin(), now_.carried.end());
    // What is carried comes after what the shift set at the same moment.
    std::ranges::stable_sort(all, [](const auto& a, const auto& b) { return a.at < b.at; });
    std::array<std::optional<Set>, settingCount> last;
    for (const auto& setting : all)
        last[static_cast<std::size_t>(setting.set.key)] = setting.set;
    std::vector<Set> inForce;
    for (const auto& set : last)
        if (set)
            inForce.push_back(*set);
    return inForce;
}

ShiftId Scribe::name(Instant first) {
    while (std::ranges::find(now_.taken, first) != now_.taken.end())
        first += std::chrono::microseconds{1};
    now_.taken.push_back(first);
    return first;
}

std::vector<Boil::Entry> Scribe::begin(Instant at, std::vector<Change>& changes) {
    const std::vector<Set> inForce = this->inForce();
    const ShiftId shift = name(at);
    now_ = {shift, true, 1, 0, {}, {}, std::move(now_.taken)};
    changes.emplace_back(BeginShift{shift, true, static_cast<int>(inForce.size())});
    std::vector<Boil::Entry> opening;
    for (const Set& set : inForce) {
        opening.push_back({now_.next, Fact{at, set}});
        changes.emplace_back(KeepFact{shift, now_.next, opening.back().fact});
        now_.settings.push_back({at, now_.next++, set});
    }
    return opening;
}

Scribe::Kept Scribe::keep(Fact fact, std::vector<Change>& changes) {
    Kept kept{};
    if (!now_.open)
        kept.opening = begin(fact.at, changes);
    kept.shift = *now_.shift;
    kept.id = now_.next++;
    if (const auto* set = std::get_if<Set>(&fact.what))
        now_.settings.push_back({fact.at, kept.id, *set});
    const bool ends = std::holds_alternative<ShiftEnd>(fact.what);
    changes.emplace_back(KeepFact{kept.shift, kept.id, std::move(fact)});
    if (ends) {
        now_.endedBy = kept.id;
        close(changes);
    }
    return kept;
}

bool Scribe::withdraw(FactId fact, Instant at, std::string by, std::vector<Change>& changes) {
    if (!now_.shift || fact < 1 || fact >= now_.next)
        return false;
    changes.emplace_back(WithdrawFact{*now_.shift, now_.next++, fact, at, std::move(by)});
    std::erase_if(now_.settings, [&](const auto& setting) { return setting.id == fact; });
    if (fact == now_.endedBy && !now_.open) {
        now_.open = true;
        now_.endedBy = 0;
        changes.emplace_back(TurnShift{*now_.shift, true});
    }
    return true;
}

FactId Scribe::keepIn(ShiftId shift, Fact fact, std::vector<Change>& changes) {
    const bool latest = shift == now_.shift;
    const FactId id = latest ? now_.next++ : 0;
    if (const auto* set = std::get_if<Set>(&fact.what); set && latest)
        now_.settings.push_back({fact.at, id, *set});
    if (latest && !now_.open && std::holds_alternative<ShiftEnd>(fact.what))
        now_.endedBy = id;
    changes.emplace_back(KeepFact{shift, id, std::move(fact)});
    return id;
}

void Scribe::withdrawFrom(ShiftId shift, FactId fact, Instant at, std::string by, std::vector<Change>& changes) {
    if (shift != now_.shift) {
        changes.emplace_back(WithdrawFact{shift, 0, fact, at, std::move(by)});
        return;
    }
    if (fact == now_.endedBy)
        now_.endedBy = 0; // its end is put right, not taken back: it stays over
    withdraw(fact, at, std::move(by), changes);
}

void Scribe::close(std::vector<Change>& changes) {
    if (!now_.open)
        return;
    now_.open = false;
    changes.emplace_back(TurnShift{*now_.shift, false});
}

void Scribe::carry(Fact setting, std::vector<Change>& changes) {
    if (const auto* set = std::get_if<Set>(&setting.what))
        now_.carried.push_back({setting.at, 0, *set});
    changes.emplace_back(CarrySetting{std::move(setting)});
}

} // namespace panside
