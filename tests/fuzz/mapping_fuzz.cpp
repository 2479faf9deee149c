// Any text as a mapping file, as a remembered map, and any text as a table by it: refused with faults that have a
// sentence, or read; and only numbers that the table's unit can mean.
#include "core/files/text_file.h"
#include "core/journal/foreign_log.h"
#include "tests/fuzz/demand.h"
#include "ui/importing/table_maps.h"

#include <cmath>
#include <sstream>

namespace {

using namespace panside;

void readTable(const std::string& table, const ForeignMap& map) {
    std::istringstream stream{table};
    ForeignRows rows{stream, map, [](const ShownTime& shown) {
                         const std::chrono::year_month_day day{std::chrono::year{shown.year},
                                                               std::chrono::month{static_cast<unsigned>(shown.month)},
                                                               std::chrono::day{static_cast<unsigned>(shown.day)}};
                         if (!day.ok())
                             return std::vector<Instant>{};
                         return std::vector{Instant{std::chrono::sys_days{day} + std::chrono::hours{shown.hour} +
                                                    std::chrono::minutes{shown.minute} +
                                                    std::chrono::seconds{shown.second}}};
                     }};
    while (const auto read = rows.next()) {
        for (const Fault& fault : read->faults)
            demand(sentence(fault, "f").size() >= 10);
        for (const Fact& fact : read->facts)
            demand(std::isfinite(std::get<Reading>(fact.what).si));
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    // Up to the first NUL the mapping, behind it the table.
    const std::string all{reinterpret_cast<const char*>(data), size};
    const auto cut = all.find('\0');
    const std::string mapping = all.substr(0, cut), table = cut == std::string::npos ? all : all.substr(cut + 1);
    readTable(table, proposedMap(table.substr(0, 16384), "UTC"));
    if (const auto map = foreignMapIn(mapping)) {
        demand(foreignMapIn(textOf(*map)).has_value());
        readTable(table, *map);
    }
    try {
        readTable(table, mapIn(mapping, "m.toml", table));
    } catch (const FileFault& fault) {
        demand(std::string{fault.what()}.size() >= 10);
    }
    return 0;
}
