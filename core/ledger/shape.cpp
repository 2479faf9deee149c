#include "core/ledger/shape.h"

#include "core/quantity/unit.h"

#include <vector>

namespace panside {
namespace {

// SI of a word; a bare number is in metres or cubic metres.
std::optional<double> measureIn(std::string_view word, Dimension dimension) {
    if (const auto bare = numberIn(word))
        return bare;
    const auto written = writtenIn(word);
    return written && dimensionOf(written->unit) == dimension ? std::optional{written->si()} : std::nullopt;
}

std::vector<std::string_view> wordsOf(std::string_view text) {
    std::vector<std::string_view> words;
    while (true) {
        const auto begin = text.find_first_not_of(" \t");
        if (begin == std::string_view::npos)
            return words;
        text.remove_prefix(begin);
        const auto end = std::min(text.find_first_of(" \t"), text.size());
        words.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
}

} // namespace

std::optional<TankShape> shapeIn(std::string_view text) {
    const auto words = wordsOf(text);
    if (words.empty())
        return std::nullopt;
    const bool table = words[0] == "table";
    std::vector<double> n;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const auto measure = measureIn(words[i], table && i % 2 == 0 ? Dimension::volume : Dimension::length);
        if (!measure)
            return std::nullopt;
        n.push_back(*measure);
    }
    std::optional<TankShape> shape;
    if (words[0] == "upright" && n.size() == 2)
        shape = UprightTank{Length::ofSi(n[0]), Length::ofSi(n[1])};
    else if (words[0] == "lying" && n.size() == 2)
        shape = LyingTank{Length::ofSi(n[0]), Length::ofSi(n[1])};
    else if (words[0] == "box" && n.size() == 3)
        shape = BoxTank{Length::ofSi(n[0]), Length::ofSi(n[1]), Length::ofSi(n[2])};
    else if (table && n.size() % 2 == 0) {
        TankTable marks;
        for (std::size_t i = 0; i + 1 < n.size(); i += 2)
            marks.marks.push_back({Length::ofSi(n[i]), Volume::ofSi(n[i + 1])});
        shape = std::move(marks);
    }
    return shape && isTank(*shape) ? shape : std::nullopt;
}

} // namespace panside
