#include "core/ledger/trace_subject.h"

#include "core/boil/day_vocabulary.h"
#include "core/boil/shift_log.h"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>
#include <set>

namespace panside {
namespace {

using Subject = TraceSubject;
using Begins = TraceSubject::Begins;

Begins beginsOf(const std::vector<std::pair<Knot, double>>& knots) {
    const double all =
        std::accumulate(knots.begin(), knots.end(), 0.0, [](double sum, const auto& one) { return sum + one.second; });
    Begins begins;
    for (const auto& [knot, sugar] : knots)
        begins.push_back({knot, all > 0 ? sugar / all : 0});
    return begins;
}

// Sugar that comes by a second time is the same sugar: of a knot that an earlier one of them has flowed into only the
// rest counts. Returns the share of all that is left.
double countOnce(const Thread& thread, std::vector<std::pair<Knot, double>>& knots) {
    std::ranges::stable_sort(knots, {}, [](const auto& one) { return one.first; });
    if (knots.size() < 2)
        return 1;
    std::vector<double> came(thread.size());
    double all = 0, rest = 0;
    std::size_t next = 0;
    std::vector<std::pair<Knot, double>> once;
    for (std::size_t knot = knots.front().first; knot < thread.size() && next < knots.size(); ++knot) {
        for (const Strand& strand : thread.strandsOf(static_cast<Knot>(knot)))
            if (const double sugar = thread[strand.from].sugar; !strand.unknown && sugar > 0 && came[strand.from] > 0)
                came[knot] += came[strand.from] * std::min(1.0, strand.left / sugar);
        for (; next < knots.size() && knots[next].first == knot; ++next) {
            const double sugar = knots[next].second;
            const double more = std::clamp(thread[knots[next].first].sugar - came[knot], 0.0, sugar);
            all += sugar;
            rest += more;
            if (sugar <= 0 || more > 1e-9 * sugar)
                once.emplace_back(knots[next].first, more);
            came[knot] += more;
        }
    }
    knots = std::move(once);
    return all > 0 ? rest / all : 1;
}

Subject lotSubject(const Ledger& ledger, std::size_t index) {
    const Lot& lot = ledger.lots()[index];
    Subject subject;
    subject.trace = {TraceKind::lot, lot.code, lot.packed, lot.volume(), lot.sugar(), lot.book, lot.bookSd, {}, {}};
    std::vector<std::pair<Knot, double>> knots;
    for (const LotSize& size : lot.sizes)
        knots.insert(knots.end(), size.knots.begin(), size.knots.end());
    subject.behind = subject.before = beginsOf(knots);
    subject.behindVolume = subject.beforeVolume = lot.volume();
    subject.lot = index;
    return subject;
}

void everIn(Subject& subject, const Ledger& ledger, std::uint32_t index) {
    const Thread& thread = ledger.thread();
    const Vessel& vessel = ledger.vessels()[index];
    subject.cut = index;
    for (const auto& begin : beginsOf(vessel.filling)) {
        const auto strands = thread.strandsOf(begin.knot);
        const bool found = !strands.empty() && std::ranges::all_of(strands, [&](const Strand& strand) {
            return thread[strand.from].kind == KnotKind::content && thread[strand.from].what == index;
        });
        (found ? subject.found : subject.behind).push_back(begin);
    }
    const double first = std::max(1e-9, 1 - thread.again(subject.behind, index));
    for (Begins* begins : {&subject.behind, &subject.found})
        for (auto& begin : *begins)
            begin.share /= first;
    subject.behindVolume = vessel.taken * first;
}

Subject vesselSubject(const Ledger& ledger, std::size_t index) {
    const Vessel& vessel = ledger.vessels()[index];
    Subject subject;
    const TraceKind kind = isTankKind(vessel.kind) ? TraceKind::tank : TraceKind::vessel;
    subject.trace = {kind,
                     vessel.name,
                     vessel.since,
                     vessel.content.volume(),
                     vessel.content.sugar,
                     vessel.content.brix(),
                     vessel.content.error(),
                     {},
                     {}};
    auto filling = vessel.filling;
    const double once = countOnce(ledger.thread(), filling);
    subject.before = beginsOf(filling);
    subject.beforeVolume = vessel.taken * once;
    if (vessel.knot != noKnot) { // what is in it now
        subject.behind = {{vessel.knot, vessel.content.sugar > 0 ? 1.0 : 0.0}};
        subject.behindVolume = vessel.content.volume();
    } else { // all that it ever held
        everIn(subject, ledger, static_cast<std::uint32_t>(index));
    }
    subject.vessel = index;
    return subject;
}

// All shifts of one date are one night.
Subject nightSubject(const Ledger& ledger, std::vector<std::size_t> which) {
    const Night& first = ledger.nights()[which.front()];
    Subject subject;
    std::vector<std::pair<Knot, double>> draws, all, ends;
    Volume volume;
    double drawn = 0;
    for (const std::size_t index : which) {
        const Night& night = ledger.nights()[index];
        draws.insert(draws.end(), night.draws.begin(), night.draws.end());
        all.insert(all.end(), night.drained.begin(), night.drained.end());
        volume += night.drawn;
        drawn += night.drawnSugar;
        if (night.endKnot != noKnot)
            ends.emplace_back(night.endKnot, std::max(0.0, night.left));
    }
    all.insert(all.end(), draws.begin(), draws.end());
    all.insert(all.end(), ends.begin(), ends.end());
    // What an earlier shift left may be in a later one of that date.
    double whole =
        std::accumulate(all.begin(), all.end(), 0.0, [](double sum, const auto& one) { return sum + one.second; });
    whole *= countOnce(ledger.thread(), all);
    subject.trace = {TraceKind::night, first.date, first.first, volume, drawn, {}, {}, {}, {}};
    if (volume.si() > 0)
        subject.trace.brix = liquidHolding(volume, drawn).brix();
    if (!all.empty())
        subject.behind = beginsOf(draws.empty() ? std::vector{ends.empty() ? all.back() : ends.back()} : draws);
    subject.before = beginsOf(all);
    subject.behindVolume = volume;
    subject.beforeVolume = drawn > 0 ? volume * (whole / drawn) : Volume{};
    subject.nights = std::move(which);
    return subject;
}

// Is a filter aid meant by its own lot? "diatomite 5 lb lot D78" by "D78".
bool hasWord(std::string_view text, const std::string& key) {
    while (!text.empty()) {
        const auto end = std::min(text.find_first_of(" ,"), text.size());
        if (end > 1 && nameKey(text.substr(0, end)) == key)
            return true;
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return false;
}

// All of a name, or one load, run or dose of it: the name with its local date or its time behind it.
class Wanted {
public:
    Wanted(const Ledger& ledger, std::string_view name) : ledger_{ledger} {
        const auto blank = name.rfind(' ');
        if (blank != std::string_view::npos && name.size() - blank > 10 && name[blank + 5] == '-') {
            when_ = name.substr(blank + 1);
            at_ = instantIn(when_);
            name = name.substr(0, blank);
        }
        key_ = nameKey(name);
    }
    bool is(std::string_view name, Instant at) const { return nameKey(name) == key_ && then(at); }
    bool isAid(std::string_view aid, Instant at) const {
        return !aid.empty() && (nameKey(aid) == key_ || hasWord(aid, key_)) && then(at);
    }

private:
    bool then(Instant at) const {
        if (when_.empty())
            return true;
        const auto day = ledger_.dateOf(at);
        return at_ ? *at_ == at
                   : when_ == fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()),
                                          static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    }
    const Ledger& ledger_;
    std::string key_;
    std::string_view when_;
    std::optional<Instant> at_;
};

// Whoever gave or sold sap or syrup, filter aid, or what was used against foam.
class OtherSubject {
public:
    OtherSubject(const Ledger& ledger, std::string_view name)
        : tables_{ledger.tables()}, thread_{ledger.thread()}, wanted_{ledger, name} {}
    std::optional<Subject> found() {
        for (Knot knot = 0; knot < thread_.size(); ++knot)
            look(knot, thread_[knot]);
        if (knots_.empty())
            return std::nullopt;
        const double once = countOnce(thread_, knots_);
        subject_.trace.volume = subject_.trace.volume * once;
        subject_.trace.sugar *= once;
        subject_.before = beginsOf(knots_);
        subject_.beforeVolume = subject_.trace.volume;
        return std::move(subject_);
    }

private:
    void look(Knot knot, const KnotData& data) {
        if (data.kind == KnotKind::gathered) {
            const GatheredRow& row = tables_.gathered[data.what];
            if (wanted_.is(row.name, row.at))
                add(row.bought ? TraceKind::bought : TraceKind::gathered, row.name, row.at, knot, row.liquid.sugar,
                    row.liquid.volume());
        } else if (data.kind == KnotKind::press) {
            const PressRow& row = tables_.presses[data.what];
            if (wanted_.isAid(row.aid, row.at))
                add(TraceKind::aid, row.aid, row.at, knot, data.sugar, row.through);
        } else if (data.kind == KnotKind::draw) {
            lookForFoam(knot, data.sugar, tables_.draws[data.what].liquid.volume());
        } else if (data.kind == KnotKind::drained) {
            lookForFoam(knot, data.sugar, tables_.drained[data.what]);
        }
    }
    // What left the pans while it was in them, by the draw-off or into a pail.
    void lookForFoam(Knot knot, double sugar, Volume volume) {
        for (const DefoamerRow& row : tables_.defoamers)
            if (wanted_.is(row.name, row.at) && isIn(row, knot))
                return add(TraceKind::defoamer, row.name, row.at, knot, sugar, volume);
    }
    bool isIn(const DefoamerRow& row, Knot draw) const {
        const auto strands = thread_.strandsOf(draw);
        return row.firstPans != noKnot && std::ranges::any_of(strands, [&row](const Strand& strand) {
                   return strand.from >= row.firstPans && strand.from <= row.lastPans;
               });
    }
    void add(TraceKind kind, const std::string& its, Instant at, Knot knot, double sugar, Volume volume) {
        if (knots_.empty()) {
            subject_.trace.kind = kind;
            subject_.trace.of = its;
            subject_.trace.at = at;
        }
        knots_.emplace_back(knot, sugar);
        subject_.trace.volume += volume;
        subject_.trace.sugar += sugar;
    }

    const LedgerTables& tables_;
    const Thread& thread_;
    Wanted wanted_;
    Subject subject_;
    std::vector<std::pair<Knot, double>> knots_;
};

} // namespace

std::optional<TraceSubject> traceSubject(const Ledger& ledger, std::string_view name) {
    if (const auto lot = ledger.lotNamed(name))
        return lotSubject(ledger, *lot);
    if (const auto vessel = ledger.vesselNamed(name))
        return vesselSubject(ledger, *vessel);
    const auto& nights = ledger.nights();
    const auto instant = instantIn(name);
    std::vector<std::size_t> ofDate, begun;
    for (std::size_t i = 0; i < nights.size(); ++i) {
        if ((instant && (nights[i].id == *instant || nights[i].first == *instant)) || textOf(nights[i].id) == name)
            return nightSubject(ledger, {i});
        if (nights[i].date == name)
            ofDate.push_back(i);
        if (name.size() >= 10 && textOf(nights[i].id).starts_with(name))
            begun.push_back(i);
    }
    if (!ofDate.empty())
        return nightSubject(ledger, std::move(ofDate));
    if (begun.size() == 1)
        return nightSubject(ledger, std::move(begun));
    return OtherSubject{ledger, name}.found();
}

std::vector<std::string> namesLike(const Ledger& ledger, std::string_view asked, Like wanted) {
    const std::string key = nameKey(asked);
    std::vector<std::pair<std::size_t, std::string>> all;
    const auto add = [&](const std::string& name) { all.emplace_back(lettersBetween(nameKey(name), key), name); };
    if (wanted == Like::anything)
        for (const Vessel& vessel : ledger.vessels())
            add(vessel.name);
    for (const Lot& lot : ledger.lots())
        add(lot.code);
    if (wanted == Like::anything) {
        for (const Night& night : ledger.nights())
            all.emplace_back(lettersBetween(night.date, key), night.date);
        std::set<std::string> others;
        for (const GatheredRow& row : ledger.tables().gathered)
            others.insert(row.name);
        for (const DefoamerRow& row : ledger.tables().defoamers)
            others.insert(row.name);
        for (const PressRow& row : ledger.tables().presses)
            others.insert(row.aid);
        others.erase("");
        for (const std::string& name : others)
            if (!ledger.vesselNamed(name))
                add(name);
    }
    std::ranges::stable_sort(all, [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::string> names;
    for (const auto& [distance, one] : all)
        if (names.size() < 3 && distance <= std::max<std::size_t>(2, key.size() / 2))
            names.push_back(one);
    return names;
}

} // namespace panside
