// Any bytes, in any pieces: no crash, the same answer however they are cut once there is one, and only a path of
// printable characters that stands in them.
#include "core/lookin/request.h"

#include <cstdint>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace panside;
    const std::string_view all{reinterpret_cast<const char*>(data), size};
    const auto whole = requestIn(all);
    if (size >= greatestHead && !whole)
        std::abort();
    for (std::size_t cut = 0; cut < size; cut += 1 + size / 16)
        if (const auto early = requestIn(all.substr(0, cut)); early && early != whole)
            std::abort();
    if (!whole || std::holds_alternative<Refusal>(*whole))
        return 0;
    const auto& path = std::get<LookRequest>(*whole).path;
    if (path.empty() || path.front() != '/' || all.find(path) == std::string_view::npos ||
        path.find_first_of(" \r\n\t") != std::string::npos)
        std::abort();
    return 0;
}
