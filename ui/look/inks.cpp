#include "ui/look/inks.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

Inks day() {
    return {.ground = QColor{"#d8d7d1"},
            .panel = QColor{"#f4f3ef"},
            .key = QColor{"#e6e4de"},
            .field = QColor{"#ffffff"},
            .sel = QColor{"#d3dde1"},
            .word = QColor{"#1a1f22"},
            .quiet = QColor{"#4c5357"},
            .line = QColor{"#6d7377"},
            .faint = QColor{"#d3d2cb"},
            .trace = QColor{"#17485c"},
            .band = QColor{"#6f7a7f"},
            .shade = QColor{"#e1e4e3"},
            .high = QColor{"#a81c17"},
            .medium = QColor{"#7d4d00"},
            .low = QColor{"#57427f"},
            .onAlarm = QColor{"#fffdf8"}};
}

// Warm and dim: no colour here is brighter than two fifths of white, and none is blue.
Inks night() {
    return {.ground = QColor{"#0d0a08"},
            .panel = QColor{"#18130f"},
            .key = QColor{"#2a221b"},
            .field = QColor{"#0d0a08"},
            .sel = QColor{"#2d2319"},
            .word = QColor{"#b9a184"},
            .quiet = QColor{"#9b8971"},
            .line = QColor{"#83735f"},
            .faint = QColor{"#2e261f"},
            .trace = QColor{"#c89f64"},
            .band = QColor{"#7b6a55"},
            .shade = QColor{"#251d16"},
            .high = QColor{"#d8543c"},
            .medium = QColor{"#bd8a35"},
            .low = QColor{"#b0809a"},
            .onAlarm = QColor{"#0d0a08"}};
}

Inks paper() {
    Inks inks = day();
    inks.ground = inks.panel = inks.field = QColor{Qt::white};
    inks.word = QColor{Qt::black};
    inks.quiet = QColor{"#303030"};
    return inks;
}

double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

} // namespace

const QColor& Inks::of(Priority priority) const {
    switch (priority) {
    case Priority::high:
        return high;
    case Priority::medium:
        return medium;
    case Priority::low:
        break;
    }
    return low;
}

const Inks& inksOf(Look look) {
    static const Inks inks[] = {day(), night(), paper()};
    return inks[static_cast<std::size_t>(look)];
}

QPalette paletteOf(Look look) {
    const Inks& inks = inksOf(look);
    QPalette palette;
    palette.setColor(QPalette::Window, inks.ground);
    palette.setColor(QPalette::WindowText, inks.word);
    palette.setColor(QPalette::Base, inks.panel);
    palette.setColor(QPalette::AlternateBase, inks.shade);
    palette.setColor(QPalette::Text, inks.word);
    palette.setColor(QPalette::PlaceholderText, inks.quiet);
    palette.setColor(QPalette::Button, inks.key);
    palette.setColor(QPalette::ButtonText, inks.word);
    palette.setColor(QPalette::BrightText, inks.high);
    palette.setColor(QPalette::Light, inks.panel);
    palette.setColor(QPalette::Midlight, inks.faint);
    palette.setColor(QPalette::Mid, inks.line);
    palette.setColor(QPalette::Dark, inks.line);
    palette.setColor(QPalette::Shadow, inks.ground);
    // A chosen row is told apart by its ground and its edge: a bar of full ink across a table would light the room.
    palette.setColor(QPalette::Highlight, inks.sel);
    palette.setColor(QPalette::HighlightedText, inks.word);
    palette.setColor(QPalette::Link, inks.trace);
    palette.setColor(QPalette::LinkVisited, inks.trace);
    palette.setColor(QPalette::ToolTipBase, inks.panel);
    palette.setColor(QPalette::ToolTipText, inks.word);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, inks.line);
    return palette;
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
    const auto [dark, light] =
        std::minmax({luminance(a), luminance(b)}); // by value: the pair of two arguments would dangle
    return (light + 0.05) / (dark + 0.05);
}

} // namespace panside
