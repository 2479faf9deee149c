#pragma once
// More of what the law of a place asks, as far as this program knows it: of a container, of records, of a glass that
// reads the law's own chart. Advice, not law: each says from where it is and how it was read. The inspector decides.
#include "core/boil/fact.h"
#include "core/boil/place.h"
#include "core/physics/law_chart.h"

#include <vector>

namespace panside {

struct LawRule {
    std::string_view text;
    Source source;
};
// What is asked of a container: how hot, how full, what may go into which.
std::vector<LawRule> packingRules(const PlaceLaw& place);
// What records are to be kept, where it is known.
std::optional<LawRule> keepingRule(const PlaceLaw& place);

// What a hydrometer must show at least in a cup of a temperature, where the law has a chart of its own.
std::optional<ChartReading> leastReading(const PlaceLaw& place, Temperature cup);
// The sugar that the law's own chart reads off a glass, whatever the float balance makes of it; far from the least the
// scales' own slope. nullopt where the law has no chart, the cup's heat was not noted, or the scale is not the chart's.
std::optional<Brix> sugarByChart(const DensityCheck& check, const PlaceLaw& law);
// Does the glass read what the chart asks of it there? Then it is legal. False where sugarByChart says nothing.
bool isLegalByChart(const DensityCheck& check, const PlaceLaw& law);

} // namespace panside
