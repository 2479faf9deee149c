#include "app/commands.h"
#include "core/files/text_file.h"
#include "core/rehearsal/rehearse.h"

#include <ostream>

namespace panside {

int rehearseCommand(const RehearseRequest& request, std::ostream& out, std::ostream&) {
    const auto log = rehearsedLog(Duration{request.hours * 3600}, request.seed, Duration{request.every});
    if (request.out.empty())
        out << log;
    else
        writeText(request.out, log);
    return status::done;
}

} // namespace panside
