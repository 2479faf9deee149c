// Any places and any answer: requests within the standard, and only finite numbers from registers that were sent.
#include "core/probe/modbus_map.h"

#include <cmath>
#include <cstdlib>
#include <cstring>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace panside;
    const std::size_t many = size == 0 ? 0 : data[0] % 16;
    std::size_t at = 1;
    std::vector<FieldRule> fields;
    for (; fields.size() < many && at + 5 <= size; at += 5) {
        RegisterPlace place{.slave = 1 + data[at] % 3,
                            .function = 3 + data[at + 1] % 2,
                            .address = data[at + 2] << 8 | data[at + 3],
                            .type = static_cast<RegisterType>(data[at + 4] % 5),
                            .order = static_cast<WordOrder>(data[at + 4] / 5 % 2),
                            .scale = data[at + 4] % 2 == 0 ? 0.1 : 1e300};
        if (place.address == 65535)
            place.address = 65534;
        fields.push_back({.is = "", .place = place});
    }
    std::vector<std::uint16_t> words((size - std::min(at, size)) / 2);
    if (!words.empty())
        std::memcpy(words.data(), data + at, words.size() * 2);
    std::size_t served = 0;
    for (const auto& read : requestsFor(fields)) {
        if (read.count < 1 || read.count > 125 || read.first + read.count > 65536)
            std::abort();
        served += read.rules.size();
        for (const auto rule : read.rules)
            if (const auto number = numberAt(*fields[rule].place, read, words); number && !std::isfinite(*number))
                std::abort();
    }
    if (served != fields.size())
        std::abort();
    return 0;
}
