#pragma once
#include <filesystem>

namespace panside {

// Where a person's own files lie, by the XDG base directory specification (a relative path in its variables is
// ignored).
std::filesystem::path usualJournal();   // $XDG_DATA_HOME/panside/journal.db
std::filesystem::path usualProbeFile(); // $XDG_CONFIG_HOME/panside/probe.toml
std::filesystem::path choicesFile();    // $XDG_CONFIG_HOME/panside/console.ini: look, units, language

} // namespace panside
