#include "core/boil/forecast.h"

#include "core/boil/state.h"

namespace panside {

void DrawForecast::take(const State&, const Fact&) {}

void DrawForecast::show(const State& state, Instant, Picture& picture) const {
    const bool drawing = state.course.drawing();
    picture.why.push_back({"drawEta", drawing ? Reason::drawing : Reason::tooShort});
    picture.why.push_back({"closeEta", drawing ? Reason::tooShort : Reason::notDrawing});
}

} // namespace panside
