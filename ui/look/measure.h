#pragma once
// Physical sizes on the screen's own resolution: what a gloved hand must hit and a tired eye must read is meant in
// millimetres, never in pixels.
#include <QtGlobal>

class QScreen;
class QWidget;

namespace panside {

// Sizes in millimetres. Letters and digits are measured as a capital or a digit stands: foot to top.
namespace mm {
inline constexpr double target = 12;      // what a glove presses
inline constexpr double chiefDigits = 20; // the one number of a card
inline constexpr double bar = 25.4;       // the sentence and what to do first
inline constexpr double fromAfar = 9;     // the sentence, the other figures: read from two metres
inline constexpr double act = 6;          // first action, second line of a card: read from a metre
inline constexpr double lead = 5;         // a typed value, the bar when calm
inline constexpr double words = 4;        // at the hand's distance
inline constexpr double smallWords = 3;   // scales and marks of the chart
inline constexpr double gap = 2;
inline constexpr double frame = 2.5; // the frame that an alarm flashes
inline constexpr double lowSheet =
    150; // a sheet lower than this sets its rows closer: what is pressed keeps its height
} // namespace mm

class Measure {
public:
    static constexpr double usualDpi = 96;
    // A screen that gives no size, or one that no screen has (under 40 or over 400 dots an inch), is taken for 96 dpi.
    explicit constexpr Measure(double dpi = usualDpi) : dpi_{dpi >= 40 && dpi <= 400 ? dpi : usualDpi} {}
    // Projectors, virtual machines and some panels state nonsense; then the desktop's own (logical) resolution counts.
    static Measure of(const QScreen& screen);
    static Measure of(const QWidget& widget);

    // Sizes grow with the window, so that a large screen is read from further away: by what it is wider and higher than
    // the one that the sizes are meant for (361 mm x 203 mm), up to 1.9; a small one keeps the sizes.
    constexpr Measure grownTo(int width, int height) const {
        const double across = width * 25.4 / dpi_ / 361, down = height * 25.4 / dpi_ / 203;
        const double least = across < down ? across : down;
        return Measure{dpi_ * (least < 1 ? 1 : least > 1.9 ? 1.9 : least), 0};
    }
    constexpr double dpi() const { return dpi_; }
    constexpr int px(double millimetres) const { return qRound(millimetres * dpi_ / 25.4); }
    constexpr double millimetres(int pixels) const { return pixels * 25.4 / dpi_; }
    bool operator==(const Measure&) const = default;

private:
    constexpr Measure(double dpi, int) : dpi_{dpi} {} // as it is
    double dpi_;
};

} // namespace panside
