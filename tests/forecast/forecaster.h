#pragma once
// Whoever foretells a draw from the log alone: the engine, the simple methods it must beat, candidates for its place.
#include "core/boil/picture.h"

#include <functional>
#include <memory>
#include <string>

namespace panside::judge {

class Forecaster {
public:
    Forecaster() = default;
    Forecaster(const Forecaster&) = delete;
    Forecaster& operator=(const Forecaster&) = delete;
    virtual ~Forecaster() = default;
    // Facts come in the order in which they were entered.
    virtual void add(const Fact& fact) = 0;
    // Time to the draw, the draw being shut; nullopt: no ground for one.
    virtual std::optional<Range> eta(Instant now) = 0;
    // The whole picture, from those that make one.
    virtual const Picture* picture() const { return nullptr; }
};

struct Entrant {
    std::string name;
    std::function<std::unique_ptr<Forecaster>()> make; // one for each boil
};

Entrant engine();
// Time between the last draws; past waits longer than this one already is; straight line of the last 5 min on the
// reading; robust slope of the last 10 min on the rise.
std::vector<Entrant> simpleMethods();

} // namespace panside::judge
