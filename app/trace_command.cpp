#include "app/commands.h"
#include "app/exit_status.h"
#include "core/boil/shift_log.h"
#include "core/ledger/doubt.h"
#include "core/ledger/trace.h"
#include "core/shift/house_ledger.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <ostream>

namespace panside {
namespace {

using Json = nlohmann::ordered_json;

Json jsonOf(const TraceEntry& entry) {
    Json json{{"kind", nameOf(entry.kind)}, {"name", entry.name}, {"time", textOf(entry.at)}};
    json["share"] = entry.share ? Json(*entry.share) : Json();
    json["litres"] = entry.volume ? Json(entry.volume->litre()) : Json();
    if (entry.kind == TraceKind::lot || entry.kind == TraceKind::buyer) {
        json["count"] = entry.count ? Json(*entry.count) : Json();
        json["size"] = entry.size.empty() ? Json() : Json(entry.size);
        if (!entry.lot.empty())
            json["lot"] = entry.lot;
    }
    if (entry.until)
        json["until"] = textOf(*entry.until);
    return json;
}

Json jsonOf(const Trace& trace) {
    Json json{{"of", trace.of}, {"behind", Json::array()}, {"before", Json::array()}};
    for (const TraceEntry& entry : trace.behind)
        json["behind"].push_back(jsonOf(entry));
    for (const TraceEntry& entry : trace.before)
        json["before"].push_back(jsonOf(entry));
    json["kind"] = nameOf(trace.kind);
    json["litres"] = trace.volume.litre();
    json["sugarKg"] = trace.sugar;
    json["brix"] = trace.volume.si() > 0 && trace.brix.si() > 0 ? Json(trace.brix.degrees()) : Json();
    json["brixUncertainty"] = trace.brixSd.si() > 0 ? Json(trace.brixSd.degrees()) : Json();
    return json;
}

void addDoubt(Json& json, const Vessel& vessel) {
    json["sugarUncertaintyKg"] = sugarDoubt(vessel);
    if (vessel.unwritten)
        json["notMeasuredSince"] = {{"from", textOf(vessel.unwritten->from)}, {"to", textOf(vessel.unwritten->to)}};
}

std::string dayOf(Instant at) { return textOf(at).substr(0, 16); }

void say(const TraceEntry& entry, std::ostream& out) {
    const std::string share = entry.share ? fmt::format("{:9.4f} %", *entry.share * 100) : "    not known";
    const std::string litres = entry.volume ? fmt::format("{:10.2f} L", entry.volume->litre()) : "            ";
    out << fmt::format("  {:<9} {:<16} {} {}  {}", nameOf(entry.kind), dayOf(entry.at), share, litres, entry.name);
    if (entry.count)
        out << fmt::format("  {} of {}", *entry.count, entry.size.empty() ? "a size nobody told" : entry.size);
    if (!entry.lot.empty())
        out << "  lot " << entry.lot;
    if (entry.until)
        out << "  until " << dayOf(*entry.until);
    out << '\n';
}

} // namespace

int traceCommand(const TraceRequest& request, std::ostream& out, std::ostream& err) {
    const auto journal = Journal::open(request.journal, Journal::Access::read);
    const HouseLedger house{&journal};
    const auto trace = traceOf(house.ledger(), request.name);
    if (!trace)
        return refuseName(namesLike(house.ledger(), request.name), request.name,
                          "no lot, vessel or night is called so.", err);
    if (request.json) {
        Json json = jsonOf(*trace);
        if (const auto vessel = house.ledger().vesselNamed(request.name); vessel && trace->kind != TraceKind::lot)
            addDoubt(json, house.ledger().vessels()[*vessel]);
        out << json.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) << '\n';
        return status::done;
    }
    out << nameOf(trace->kind) << ' ' << trace->of << fmt::format(": {:.2f} L", trace->volume.litre());
    if (trace->brix.si() > 0)
        out << fmt::format(" of {:.1f} brix", trace->brix.degrees());
    out << (request.forward ? "\nwent into\n" : "\ncame from\n");
    for (const TraceEntry& entry : request.forward ? trace->before : trace->behind)
        say(entry, out);
    out << "Shares are of its sugar. This is advice: the inspector decides.\n";
    return status::done;
}

} // namespace panside
