#include "core/shift/rim_alarm.h"

#include "core/ledger/sap_page.h"
#include "core/shift/house_ledger.h"

#include <algorithm>

namespace panside {
namespace {

std::vector<Ground> groundsOf(const Ledger& ledger, const RimCall& call) {
    std::vector<Ground> why{{GroundKind::tankNamed, ledger.vessels()[call.vessel].name}};
    if (call.room < Volume{})
        why.push_back({GroundKind::tankOverRim, -call.room});
    else if (call.rim)
        why.push_back({GroundKind::tankNearRim, call.room, *call.rim});
    if (call.fullIn && call.room >= Volume{})
        why.push_back({GroundKind::tankFills, *call.fullIn});
    if (const std::string& name = ledger.tables().settings.overflowCalls(); !name.empty())
        why.push_back({GroundKind::callsFor, name});
    return why;
}

} // namespace

void RimAlarm::show(Picture& picture) {
    if (!house_)
        return;
    const Ledger& ledger = house_->ledger();
    // The gauge of the feed tank goes before the book: where the engine judges it, the book is silent.
    const auto& gauge = picture.reading(Series::tank_level);
    const bool gauged = gauge && gauge->trust == Trust::good && ledger.tables().settings.feedTankVolume();
    std::map<std::string, Instant> standing;
    for (const RimCall& call : rimCalls(ledger, picture.at)) {
        const Vessel& vessel = ledger.vessels()[call.vessel];
        if (vessel.kind == VesselKind::feed && gauged)
            continue;
        const auto before = since_.find(vessel.name);
        const Instant since = before == since_.end() ? picture.at : std::min(before->second, picture.at);
        standing[vessel.name] = since;
        AlarmPicture alarm{Alarm::tank_overflow, priorityOf(Alarm::tank_overflow), AlarmState::unseen, since};
        if (seenAt_ && *seenAt_ >= since)
            alarm.state = AlarmState::seen;
        if (shelvedUntil_ && picture.at < *shelvedUntil_)
            alarm.state = AlarmState::shelved;
        if (call.room >= Volume{})
            alarm.left = call.fullIn;
        alarm.why = groundsOf(ledger, call);
        insertAlarm(picture, alarm);
    }
    since_ = std::move(standing);
}

} // namespace panside
