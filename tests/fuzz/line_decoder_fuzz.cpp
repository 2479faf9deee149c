// Any bytes, in any pieces: no crash, the same lines however they are cut, and no number that does not stand in its
// line.
#include "core/probe/mapping.h"

#include <cstdlib>
#include <numeric>

namespace {

using namespace panside;

struct Heard {
    std::string text;
    Refusal refusal;
    std::vector<std::pair<std::string, std::optional<double>>> fields;
    bool operator==(const Heard&) const = default;
};

void demand(bool holds) {
    if (!holds)
        std::abort();
}

LineDecoder::Sink into(std::vector<Heard>& heard) {
    return [&heard](const ProbeLine& line) {
        Heard one{std::string{line.text}, line.refusal, {}};
        for (const Field& field : line.fields) {
            one.fields.emplace_back(field.name, field.number);
            // The text of a field is a part of the line itself, and its number is what that text says.
            demand(field.text.empty() ||
                   (field.text.data() >= line.text.data() &&
                    field.text.data() + field.text.size() <= line.text.data() + line.text.size()));
            demand(field.number == numberIn(field.text));
        }
        demand(line.refusal == Refusal::none || line.fields.empty());
        heard.push_back(std::move(one));
    };
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 2)
        return 0;
    // The first two bytes choose the rules and the size of the pieces.
    LineRules rules{.encoding = {}, .checksumDemanded = (data[0] & 4) != 0};
    if ((data[0] & 3) < 3)
        rules.encoding = static_cast<Encoding>(data[0] & 3);
    const std::size_t piece = data[1] + 1U;
    const std::string_view bytes{reinterpret_cast<const char*>(data) + 2, size - 2};
    LineDecoder whole{rules}, pieces{rules};
    std::vector<Heard> one, other;
    whole.feed(bytes, into(one));
    for (std::size_t at = 0; at < bytes.size(); at += piece)
        pieces.feed(bytes.substr(at, piece), into(other));
    demand(one == other);
    demand(whole.looksLikeWrongSpeed() == pieces.looksLikeWrongSpeed());
    const auto& refused = whole.counts().refused;
    demand(std::accumulate(refused.begin(), refused.end(), whole.counts().good) == one.size());

    const Mapping mapping{
        {.name = "p",
         .device = "",
         .fields = {
             {.is = "syrup", .reads = Series::syrup_pan, .unit = Unit::degF},
             {.is = "2", .reads = Series::stack, .unit = Unit::mV, .thermocouple = Thermocouple::K, .junction = "3"},
             {.is = "1", .reads = Series::air, .unit = Unit::ohm}}}};
    LineDecoder again{rules};
    again.feed(bytes, [&](const ProbeLine& line) {
        mapping.map(line, [](const FieldOutcome& outcome) {
            demand(outcome.reading.has_value() == (outcome.why == NoReading::none));
        });
    });
    return 0;
}
