#include "core/boil/log_limits.h"

#include <algorithm>

namespace panside {
namespace {

// A row that only a shift has: a book of a whole season's doings has none of them.
bool isOfShift(const What& what) {
    return std::holds_alternative<Reading>(what) || std::holds_alternative<Lit>(what) ||
           std::holds_alternative<Fired>(what) || std::holds_alternative<DrawOpened>(what) ||
           std::holds_alternative<DrawClosed>(what) || std::holds_alternative<Shutdown>(what) ||
           std::holds_alternative<ShiftEnd>(what);
}

const std::string* probeOf(const What& what) {
    if (const auto* reading = std::get_if<Reading>(&what))
        return &reading->probe;
    if (const auto* check = std::get_if<WaterCheck>(&what))
        return &check->probe;
    return nullptr;
}

} // namespace

bool isInYears(Instant at) {
    using namespace std::chrono;
    constexpr Instant first = sys_days{year{firstYear} / January / 1};
    constexpr Instant end = sys_days{year{lastYear + 1} / January / 1};
    return at >= first && at < end;
}

std::optional<Fault> LogLimits::judge(const Fact& fact) {
    isShift_ = isShift_ || isOfShift(fact.what);
    first_ = first_ ? std::min(*first_, fact.at) : fact.at;
    last_ = last_ ? std::max(*last_, fact.at) : fact.at;
    if (isShift_ && !spanTold_ && *last_ - *first_ > std::chrono::days{daysALog}) {
        spanTold_ = true;
        return Fault{.slip = Slip::span,
                     .field = "time",
                     .given = textOf(fact.at),
                     .wanted = asWritten(std::to_string(daysALog))};
    }
    const std::string* probe = probeOf(fact.what);
    if (probe == nullptr || probe->empty() || probes_.size() > probesALog || !probes_.insert(*probe).second ||
        probes_.size() <= probesALog || probesTold_)
        return std::nullopt;
    probesTold_ = true;
    return Fault{
        .slip = Slip::probes, .field = "detail", .given = *probe, .wanted = asWritten(std::to_string(probesALog))};
}

} // namespace panside
