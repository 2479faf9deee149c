#include "core/boil/alarm_review.h"

#include <algorithm>
#include <map>

namespace panside {
namespace {

constexpr Duration tooShortToTell{1800};

using Spans = std::vector<const AlarmSpan*>;

Duration stood(const AlarmSpan& span, Instant until) {
    return Duration{secondsBetween(span.began, span.ended.value_or(until))};
}

std::optional<Duration> median(std::vector<Duration> values) {
    if (values.empty())
        return std::nullopt;
    std::sort(values.begin(), values.end());
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

// Each that is one of `chatterTimes` in a row within the time. Spans of one alarm, by time.
void countChatter(AlarmTally& tally, const Spans& spans, const AlarmLimits& limits) {
    const auto many = static_cast<std::size_t>(std::max(2, limits.chatterTimes));
    std::size_t counted = 0; // those before it are
    for (std::size_t first = 0; first + many <= spans.size(); ++first) {
        const std::size_t last = first + many - 1;
        if (secondsBetween(spans[first]->began, spans[last]->began) > limits.chatterWithin.count())
            continue;
        if (!tally.chatterFrom)
            tally.chatterFrom = spans[first]->began;
        tally.chattered += static_cast<int>(last + 1 - std::max(counted, first));
        counted = last + 1;
    }
}

AlarmTally tallyOf(const Spans& spans, Instant until, const AlarmLimits& limits) {
    AlarmTally tally{spans.front()->alarm, spans.front()->series, spans.front()->priority};
    std::vector<Duration> answers;
    for (const AlarmSpan* span : spans) {
        const Duration length = stood(*span, until);
        ++tally.times;
        tally.total += length;
        tally.longest = std::max(tally.longest, length);
        tally.stoodLong += length >= limits.standing;
        tally.standsAtEnd = tally.standsAtEnd || !span->ended;
        tally.shelved += static_cast<int>(span->shelved.size());
        if (span->seen)
            answers.push_back(Duration{secondsBetween(span->began, *span->seen)});
        tally.spans.push_back(*span);
    }
    tally.answered = static_cast<int>(answers.size());
    tally.answeredIn = median(std::move(answers));
    countChatter(tally, spans, limits);
    return tally;
}

std::optional<AlarmReview::Busiest> busiestOf(const std::vector<AlarmSpan>& spans, const AlarmLimits& limits) {
    std::optional<AlarmReview::Busiest> busiest;
    std::size_t last = 0;
    for (std::size_t first = 0; first < spans.size(); ++first) {
        while (last < spans.size() &&
               secondsBetween(spans[first].began, spans[last].began) < limits.floodWithin.count())
            ++last;
        const int times = static_cast<int>(last - first);
        if (!busiest || times > busiest->times)
            busiest = AlarmReview::Busiest{spans[first].began, times, times > limits.floodOver};
    }
    return busiest;
}

} // namespace

AlarmReview alarmReview(const AlarmHistory& history, const AlarmLimits& limits) {
    std::map<std::pair<Alarm, std::optional<Series>>, Spans> each;
    AlarmReview review{.from = history.from, .until = history.until};
    for (const AlarmSpan& span : history.spans) {
        each[{span.alarm, span.series}].push_back(&span);
        ++review.times;
        review.urgent += span.priority == Priority::high;
    }
    for (const auto& [about, spans] : each)
        review.tallies.push_back(tallyOf(spans, history.until, limits));
    std::stable_sort(review.tallies.begin(), review.tallies.end(), [](const AlarmTally& a, const AlarmTally& b) {
        return a.priority != b.priority ? a.priority < b.priority : a.total > b.total;
    });
    const double seconds = secondsBetween(history.from, history.until);
    if (seconds >= tooShortToTell.count())
        review.anHour = review.times / (seconds / 3600);
    review.busiest = busiestOf(history.spans, limits);
    return review;
}

} // namespace panside
