#pragma once
// What was foretold in a shift, seen afterwards: how each forecast of a draw came out, and the fans as they stood.
// Derived from the facts alone, and the same whenever it is worked out again; a fact entered late counts at its own
// time.
#include "core/boil/fact.h"
#include "core/boil/picture.h"

#include <memory>
#include <vector>

namespace panside {

struct PastForecast {
    Instant at;
    TemperatureDifference rise, targetRise; // as they stood then
    Range draw;
};

class Hindsight {
public:
    // Fans are kept one each `fanEvery` from the first fact on; none where it is left out.
    explicit Hindsight(std::optional<Duration> fanEvery = {});
    ~Hindsight();
    Hindsight(Hindsight&&) noexcept;
    Hindsight& operator=(Hindsight&&) noexcept;

    void add(const Fact& fact); // by time

    const std::vector<DrawScore>& scores() const; // one a draw that was foretold, by time
    const std::vector<PastForecast>& fans() const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace panside
