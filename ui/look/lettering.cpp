#include "ui/look/lettering.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

// A resource of a static library must be asked for; Qt wants that outside of any namespace.
static void bringResources() { Q_INIT_RESOURCE(faces); }

namespace panside {
namespace {

constexpr int trial = 200;               // pixels; large enough that hinting does not matter
constexpr double shareInOurFace = 0.735; // its glyph of 0 reaches from -10 to 725 of 1000, in both weights

bool bringFace() {
    bringResources();
    bool whole = true;
    for (const char* file : {":/faces/NotoSans-Regular.ttf", ":/faces/NotoSans-Bold.ttf"})
        whole = QFontDatabase::addApplicationFont(QString::fromLatin1(file)) >= 0 && whole;
    return whole;
}

bool isBrought() {
    static const bool brought = bringFace();
    return brought;
}

QFont plain(bool bold) {
    QFont font;
    // The face comes with the program: narrow enough for French at 1366 pixels, digits all of one width, the same on
    // every desktop. Another is taken only where it cannot be read.
    font.setFamilies(
        {isBrought() ? QStringLiteral("Noto Sans") : QStringLiteral("Liberation Sans"), QStringLiteral("DejaVu Sans")});
    font.setWeight(bold ? QFont::Bold : QFont::Normal);
    font.setPixelSize(trial);
    return font;
}

// How much of a font's size its digits fill; of another face measured once a weight, because capHeight() is missing in
// some.
double digitShare(bool bold) {
    if (isBrought())
        return shareInOurFace;
    static const double shares[] = {QFontMetricsF{plain(false)}.tightBoundingRect(QStringLiteral("0")).height() / trial,
                                    QFontMetricsF{plain(true)}.tightBoundingRect(QStringLiteral("0")).height() / trial};
    return shares[bold ? 1 : 0];
}

int wrapFlags(int lines) { return lines > 1 ? int{Qt::TextWordWrap} : int{Qt::TextSingleLine}; }

} // namespace

QFont letteringOfPixels(double capitalHeight, bool bold) {
    QFont font = plain(bold);
    font.setPixelSize(std::max(6, static_cast<int>(std::lround(capitalHeight / digitShare(bold)))));
    return font;
}

QFont lettering(const Measure& measure, double millimetres, bool bold) {
    return letteringOfPixels(measure.px(millimetres), bold);
}

bool fits(const QFont& font, const QString& text, const QSize& size, int lines) {
    const QFontMetricsF metrics{font};
    if (lines <= 1)
        return metrics.horizontalAdvance(text) <= size.width();
    const QRectF room{0, 0, static_cast<double>(size.width()), 1e6};
    const QRectF box = metrics.boundingRect(room, wrapFlags(lines), text);
    return box.width() <= size.width() &&
           box.height() <= std::min<double>(size.height(), lines * metrics.lineSpacing() + 1);
}

QFont fitted(const QFont& font, const QString& text, const QSize& size, int lines) {
    QFont tried = font;
    const int smallest = std::max(6, font.pixelSize() / 3);
    int low = smallest, high = font.pixelSize();
    if (fits(font, text, size, lines))
        return font;
    while (low < high) {
        const int middle = (low + high + 1) / 2;
        tried.setPixelSize(middle);
        if (fits(tried, text, size, lines))
            low = middle;
        else
            high = middle - 1;
    }
    tried.setPixelSize(low);
    return tried;
}

void drawFitted(QPainter& painter, const QRect& place, int alignment, const QFont& font, const QString& text,
                int lines) {
    if (text.isEmpty())
        return;
    QFont best = fitted(font, text, place.size(), 1);
    int used = 1;
    for (int count = 2; count <= lines; ++count) {
        const QFont more = fitted(font, text, place.size(), count);
        const bool bestFits = fits(best, text, place.size(), used);
        if (more.pixelSize() > best.pixelSize() || (more.pixelSize() == best.pixelSize() && !bestFits)) {
            best = more;
            used = count;
        }
    }
    painter.setFont(best);
    painter.drawText(place, alignment | Qt::TextDontClip | wrapFlags(used), text);
}

} // namespace panside
