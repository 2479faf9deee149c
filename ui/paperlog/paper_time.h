#pragma once
// Times as people write them on paper: 9:40p, 940, 21:40, 9 pm, 21h40.
#include "core/boil/fact.h"

#include <QDate>
#include <QString>
#include <QTimeZone>
#include <optional>
#include <variant>

namespace panside {

struct PaperTime {
    int hour = 0, minute = 0;
    bool half = false; // may be before or after noon: 12-hour, and nobody said which
    bool operator==(const PaperTime&) const = default;
};
std::optional<PaperTime> paperTimeIn(const QString& text);

enum class PaperTimeSlip { notShown }; // clocks went forward over it
// The moment meant. The first row of a log is on `date` (an hour without a or p as on a 24-hour clock); any other lies
// near the row above: from 6 h before to 18 h after it, or where a or p was left away from 2 h before to 10 h after.
std::variant<Instant, PaperTimeSlip> paperMoment(const PaperTime& time, QDate date, const QTimeZone& zone,
                                                 std::optional<Instant> above);

} // namespace panside
