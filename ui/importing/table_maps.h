#pragma once
// What another logger's table is read by: the maps made on the screen and remembered, and mapping files.
#include "core/journal/foreign_log.h"

#include <istream>
#include <optional>
#include <string>
#include <vector>

namespace panside {

// As much of a file as a table is known and mapped by. The stream is left at its beginning.
std::string beginningOf(std::istream& table);
// A file that begins as a shift log does needs no map.
bool isShiftLog(std::string_view beginning);

// Remembered under what names the columns: any table with the same heading is known again.
void rememberMap(const std::string& beginning, const ForeignMap& map);
std::optional<ForeignMap> rememberedMap(const std::string& beginning);

// What `--mapping` names, for this table: the word `remembered`, a mapping file, or the name of the probe that a
// remembered map gives its readings. Throws FileFault where there is none, or it does not fit the table.
ForeignMap mapNamed(const std::string& wanted, const std::string& beginning, const std::string& table);

// A mapping file (resources/manual/command_line.md) on a table that begins so. Throws FileFault with every fault.
ForeignMap mapIn(std::string_view mappingFile, const std::string& place, const std::string& beginning);

} // namespace panside
