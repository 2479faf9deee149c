#pragma once
// Every pair of inks that the screens paint, with the least contrast it must keep: W3C, Web Content Accessibility
// Guidelines 2.1, success criteria 1.4.3 (4.5:1 for words) and 1.4.11 (3:1 for what a control or a mark is told by).
#include "ui/look/inks.h"

#include <string>
#include <vector>

namespace panside {

struct ContrastPair {
    std::string what;
    QColor ink, ground;
    double least;
};

inline std::vector<ContrastPair> contrastPairs(const Inks& inks) {
    struct Below {
        std::string name;
        QColor color;
    };
    const Below panel{"panel", inks.panel}, ground{"ground", inks.ground}, key{"key", inks.key},
        field{"field", inks.field}, sel{"chosen row", inks.sel}, shade{"shade", inks.shade};
    std::vector<ContrastPair> pairs;
    const auto add = [&](const std::string& what, const QColor& ink, const std::vector<Below>& on, double least) {
        for (const Below& one : on)
            pairs.push_back({what + " on " + one.name, ink, one.color, least});
    };
    constexpr double words = 4.5, marks = 3.0;
    add("words", inks.word, {panel, ground, key, field, sel, shade}, words);
    add("quiet words", inks.quiet, {panel, ground, key, field, sel}, words);
    add("an edge or axis", inks.line, {panel, ground, key, field}, marks);
    add("the trace, the focus", inks.trace, {panel, ground, key, field, shade, sel}, marks);
    add("the due key's words", inks.panel, {{"the trace", inks.trace}}, words);
    add("the target band", inks.band, {panel}, marks);
    const Below alarms[] = {{"high", inks.high}, {"medium", inks.medium}, {"low", inks.low}};
    for (const Below& alarm : alarms) {
        add("an alarm seen, " + alarm.name, alarm.color, {panel}, words);
        add("words", inks.onAlarm, {{"an alarm, " + alarm.name, alarm.color}}, words);
    }
    return pairs;
}

} // namespace panside
