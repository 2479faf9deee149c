#include "app/terminal_board.h"

#include "core/boil/shift_log.h"

#include <cmath>
#include <fmt/format.h>

namespace panside {
namespace {

std::string minutes(Duration span) { return fmt::format("{:.0f}", std::round(seconds(span) / 60)); }

std::string drawText(const Picture& picture) {
    const auto& range = picture.drawing ? picture.closeEta : picture.drawEta;
    const std::string word = picture.drawing ? "drawing, close in" : "draw in";
    if (!range)
        return word + " -";
    return fmt::format("{} {} min ({} to {})", word, minutes(range->p50), minutes(range->p10),
                       range->p90 ? minutes(*range->p90) : "?");
}

std::string fireText(const Picture& picture) {
    if (!picture.fireDue)
        return "fire -";
    const auto left = static_cast<long>(std::abs(seconds(*picture.fireDue)));
    return fmt::format("fire {} {}:{:02}", seconds(*picture.fireDue) < 0 ? "overdue" : "in", left / 60, left % 60);
}

} // namespace

std::string terminalLine(const Picture& picture) {
    const auto rise = picture.rise && picture.targetRise
                          ? fmt::format("rise {:.1f} of {:.1f} K", picture.rise->kelvin(), picture.targetRise->kelvin())
                          : std::string{"rise -"};
    auto line = fmt::format("{}  {:<20}  {:<34}  {:<18}", textOf(picture.at).substr(11, 5), rise, drawText(picture),
                            fireText(picture));
    for (const auto& alarm : picture.alarms)
        if (alarm.stands())
            line += fmt::format("  {}", nameOf(alarm.alarm));
    return line.substr(0, line.find_last_not_of(' ') + 1);
}

} // namespace panside
