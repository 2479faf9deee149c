#include "core/files/places.h"

#include <cstdlib>
#include <pwd.h>
#include <unistd.h>

namespace panside {
namespace {

std::filesystem::path home() {
    if (const char* place = std::getenv("HOME"); place && *place == '/')
        return place;
    const passwd* person = getpwuid(getuid());
    return person ? person->pw_dir : "/";
}

std::filesystem::path folder(const char* variable, const char* otherwise) {
    const char* place = std::getenv(variable);
    return (place && *place == '/' ? std::filesystem::path{place} : home() / otherwise) / "panside";
}

} // namespace

std::filesystem::path usualJournal() { return folder("XDG_DATA_HOME", ".local/share") / "journal.db"; }

std::filesystem::path usualProbeFile() { return folder("XDG_CONFIG_HOME", ".config") / "probe.toml"; }

std::filesystem::path choicesFile() { return folder("XDG_CONFIG_HOME", ".config") / "console.ini"; }

} // namespace panside
