#include "app/commands.h"
#include "app/text_file.h"
#include "core/probe/rehearse.h"

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
