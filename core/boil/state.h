#pragma once
// The state of the fold: what is believed after the facts so far. A plain value, copied to keep earlier moments, so it
// stays small: stateLimit says how much. Each part is a module with two doors:
//   absorb(state, fact)          after the parts above it have absorbed the fact; state.now is the fact's time
//   show(state, now, picture)    writes its own figures into the picture; may read those of the parts above it
// A part reads the others through `state` and writes only itself.
#include "core/boil/balance.h"
#include "core/boil/climb.h"
#include "core/boil/course.h"
#include "core/boil/draw_call.h"
#include "core/boil/draw_watch.h"
#include "core/boil/fact.h"
#include "core/boil/fire.h"
#include "core/boil/forecast.h"
#include "core/boil/mark.h"
#include "core/boil/own_draw.h"
#include "core/boil/sap_store.h"
#include "core/boil/sensor.h"
#include "core/boil/settings.h"
#include "core/boil/trend.h"
#include "core/boil/watch.h"
#include "core/boil/weather.h"

namespace panside {

struct State {
    Instant now{};       // time of the last fact
    Settings settings;   // the rig and the day's choices
    Course course;       // what happened: lit, draws, crew, shutdown
    Sensors sensors;     // each reading: filtered, and how far it is trusted
    Weather weather;     // station pressure, boiling water
    Trends trends;       // how fast pan, levels and feed really move
    Mark mark;           // what the probe reads too high in this pan; target
    DrawWatch drawWatch; // draws that nobody keyed as shut
    OwnDraw ownDraw;     // and those that nobody keyed at all
    Climb climb;         // how fast the draw-off thickens, against this shift's usual
    Fire fire;           // loads and their rhythm
    Balance balance;     // water, sap, heat
    SapStore store;      // what stands in the tank
    DrawForecast forecast;
    DrawCall call; // whether to draw now
    Watch watch;   // alarms and their states
};

inline constexpr std::size_t stateLimit = std::size_t{24} * 1024; // bytes, beside what its few vectors hold
static_assert(sizeof(State) <= stateLimit);

// apply() in place.
void absorb(State& state, const Fact& fact);
// The same but for the alarms: no other part looks at them.
void absorbUnwatched(State& state, const Fact& fact);

} // namespace panside
