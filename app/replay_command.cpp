#include "core/boil/replay.h"

#include "app/commands.h"
#include "app/exit_status.h"
#include "app/why_lines.h"
#include "core/files/text_file.h"
#include "core/shift/book_marks.h"

#include <ostream>

namespace panside {

int replayCommand(const ReplayRequest& request, std::ostream& out, std::ostream& err) {
    const ReplayOptions options{Duration{request.every}, request.asEntered, request.settings};
    // A night is some 43,200 lines: they are gathered and written in large pieces.
    constexpr std::size_t pieceSize = 1 << 16;
    std::string lines;
    WhyLines why{err};
    const std::string text = readText(request.log);
    if (beginsAsBook(text) && readLog(text).isDayBook()) {
        err << calledPlace(request.log)
            << ": is a day book, and there is no boil in it to replay. Import it, and ask trace or report.\n";
        return status::refused;
    }
    const auto faults = replay(text, options, [&](const Picture& picture) {
        appendJson(lines, picture);
        if (request.why)
            why.say(picture);
        lines += '\n';
        if (lines.size() >= pieceSize) {
            out << lines;
            lines.clear();
        }
    });
    out << lines;
    tell(faults, calledPlace(request.log), err);
    return faults.empty() ? status::done : status::refused;
}

} // namespace panside
