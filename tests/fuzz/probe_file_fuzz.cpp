// Any text as a probe file: refused with faults that have a sentence, or read; and what was read comes back as it was
// written.
#include "core/probe/probe_file.h"

#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace panside;
    const auto read = readProbeFile({reinterpret_cast<const char*>(data), size});
    if (const auto* faults = std::get_if<std::vector<ProbeFault>>(&read)) {
        if (faults->empty())
            std::abort();
        for (const auto& fault : *faults)
            if (sentence(fault, "f").size() < 10)
                std::abort();
        return 0;
    }
    const auto text = writeProbeFile(std::get<ProbeFile>(read));
    const auto back = readProbeFile(text);
    if (!std::holds_alternative<ProbeFile>(back) || writeProbeFile(std::get<ProbeFile>(back)) != text)
        std::abort();
    return 0;
}
