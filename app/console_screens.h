#pragma once
#include "app/console.h"
#include "app/probe_watch.h"

#include <filesystem>

namespace panside {

// The screens behind the board's keys, each wired to what it shows and changes.
void addReckoner(Console& console);
void addRig(Console& console, Session& session);
void addReview(Console& console, Session& session, const std::filesystem::path& journal);
// Back-ups, checks, salvage.
void addKeeping(Console& console, Session& session, const std::filesystem::path& journal);
// What the next crew must know.
void addHandover(Console& console, Session& session, const std::filesystem::path& journal);
// A log on paper, typed the next day.
void addPaper(Console& console, Session& session);
// Logs read in, other loggers' tables too.
void addImport(Console& console, Session& session);
// How loud the alarms are, and hearing them.
void addSound(Console& console);
void addFuel(Console& console, Session& session);
void addTank(Console& console, Session& session);
void addSeason(Console& console, Session& session, const std::filesystem::path& journal);
// `saveTo`: where a probe file is kept that the person wants kept.
void addProbes(Console& console, Session& session, ProbeWatch& watch, const std::filesystem::path& saveTo);

} // namespace panside
