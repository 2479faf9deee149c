#include "ui/pack/label_sheet.h"

#include "ui/lookin/look_words.h"
#include "ui/pack/pack_view.h"
#include "ui/report/pdf_pages.h"
#include "ui/vessels/vessels_view.h"
#include "ui/words/book_words.h"
#include "ui/words/place_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Labels", text); }
constexpr int across = 3, down = 8, modulePixels = 8;
constexpr int leastPixels = 12; // nine points, in 1/96 inch
constexpr double ouncesInGallon = 128;

QString dateOf(std::chrono::year_month_day day) {
    const QDate date{static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
                     static_cast<int>(static_cast<unsigned>(day.day()))};
    return QLocale{}.toString(date, QStringLiteral("d MMM yyyy"));
}

// Three digits of it, the rest dropped: a label promises no more than there is.
QString threeDigits(double number) {
    const int decimals = std::max(0, 2 - static_cast<int>(std::floor(std::log10(number))));
    const double ten = std::pow(10, decimals);
    return QLocale{}.toString(std::floor(number * ten * (1 + 1e-9)) / ten, 'f', decimals);
}

// As it was declared: "½ gal", "540 mL".
QString declared(const Written& size) {
    static const QString parts[] = {QString{}, QStringLiteral("¼"), QStringLiteral("½"), QStringLiteral("¾")};
    const auto quarters = static_cast<long long>(std::round(size.number * 4));
    const bool isMetric = size.unit == Unit::L || size.unit == Unit::mL;
    QString number = QLocale{}.toString(size.number, 'g', 6);
    if (!isMetric && quarters > 0 && std::abs(size.number * 4 - static_cast<double>(quarters)) < 1e-9)
        number = (quarters >= 4 ? QString::number(quarters / 4) : QString{}) + parts[quarters % 4];
    return number + QChar{0x00a0} + symbolOf(size.unit);
}

// What is in it as it was declared, and in the other system beside it. In the US both stand on a label, under a gallon
// in fluid ounces (21 CFR 101.7, 16 CFR 500, from memory); in Canada the metric alone is enough, and an ounce there is
// another one.
QString netContents(const LotSize& one, const PlaceLaw& law) {
    const auto written = writtenIn(one.written);
    if (!written)
        return figure(one.size, Units::metric).text();
    const double litres = one.size.litre(), gallons = one.size.gallon();
    QStringList both{declared(*written)};
    if (written->unit != Unit::L && written->unit != Unit::mL)
        both << (litres < 1 ? threeDigits(litres * 1000) + QChar{0x00a0} + symbolOf(Unit::mL)
                            : threeDigits(litres) + QChar{0x00a0} + symbolOf(Unit::L));
    else if (law.country == Country::unitedStates)
        both << (gallons < 1 ? tr("%1 fl oz").arg(threeDigits(gallons * ouncesInGallon))
                             : threeDigits(gallons) + QChar{0x00a0} + symbolOf(Unit::gal));
    return both.join(QStringLiteral("  ·  "));
}

QString allergen(const Taint& taint) { return taint.milk ? tr("CONTAINS MILK") : QString{}; }

// Letters as high as the place allows, in lines that are not broken.
void drawLine(QPainter& painter, QRectF& place, const QString& text, double high, bool bold) {
    QFont font{painter.font()};
    font.setBold(bold);
    font.setPixelSize(std::max(1, static_cast<int>(high)));
    while (font.pixelSize() > 4 && QFontMetricsF{font}.horizontalAdvance(text) > place.width())
        font.setPixelSize(font.pixelSize() - 1);
    painter.setFont(font);
    painter.drawText(QRectF{place.left(), place.top(), place.width(), high * 1.3}, Qt::AlignLeft | Qt::AlignVCenter,
                     text);
    place.setTop(place.top() + high * 1.3);
}

// What does not stand in its place in letters of nine points goes on in a line below.
QStringList brokenFor(const QFont& face, const QString& text, double width) {
    QFont font{face};
    font.setPixelSize(leastPixels);
    const QFontMetricsF metrics{font};
    QStringList lines;
    for (const QString& word : text.split(u' ', Qt::SkipEmptyParts))
        if (!lines.isEmpty() && metrics.horizontalAdvance(lines.back() + u' ' + word) <= width)
            lines.back() += u' ' + word;
        else
            lines << word;
    return lines;
}

void drawLabel(QPainter& painter, const QRectF& place, const Label& label) {
    painter.setPen(Qt::black);
    const double edge = place.height() * 0.06;
    const QRectF inside = place.adjusted(edge, edge, -edge, -edge);
    const double side = std::min(inside.height(), inside.width() * 0.42);
    painter.drawImage(QRectF{inside.right() - side, inside.top(), side, side}, codeOf(label.code, modulePixels));
    QRectF words{inside.left(), inside.top(), inside.width() - side - edge, inside.height()};
    QStringList lines;
    for (const QString& line : label.lines)
        lines << brokenFor(painter.font(), line, words.width());
    const double count = static_cast<double>(lines.size()) + 1.4 + (label.warning.isEmpty() ? 0 : 1);
    const double high = std::min(inside.height() / (count * 1.3), inside.height() * 0.17);
    drawLine(painter, words, label.head, high * 1.3, true);
    for (const QString& line : lines)
        drawLine(painter, words, line, high, false);
    if (!label.warning.isEmpty())
        drawLine(painter, words, label.warning, high, true);
}

} // namespace

std::vector<Label> labelsOf(const Ledger& ledger, const Lot& lot, std::size_t size, int most) {
    const LotSize& one = lot.sizes.at(size);
    Label label;
    label.head = tr("Maple syrup");
    label.lines << netContents(one, ledger.tables().law());
    const QString grade = lot.light ? classOf(*lot.light, ledger.tables().law()) : choiceWord(lot.lightClass);
    label.lines << (grade.isEmpty() ? tr("Class: ________") : grade);
    label.lines << tr("Lot %1").arg(utf8(lot.code));
    label.lines << tr("Packed %1").arg(dateOf(lot.day));
    label.warning = allergen(lot.taint);
    label.code = utf8(lot.code);
    return std::vector<Label>(static_cast<std::size_t>(std::clamp<long long>(one.made, 0, most)), label);
}

Label drumTag(const Ledger& ledger, const Vessel& vessel, Units units) {
    Label tag;
    tag.head = utf8(vessel.name);
    tag.lines << figure(vessel.content.volume(), units).text() + QStringLiteral("  ·  ") +
                     figure(vessel.content.brix()).text();
    if (vessel.light)
        tag.lines << classOf(*vessel.light, ledger.tables().law());
    else if (!vessel.lightClass.empty())
        tag.lines << choiceWord(vessel.lightClass);
    QStringList nights;
    for (const Night& night : ledger.nights())
        if (std::ranges::find(vessel.shifts, night.shift) != vessel.shifts.end())
            nights << utf8(night.date);
    if (!nights.isEmpty())
        tag.lines << tr("Nights: %1").arg(nights.join(QStringLiteral(", ")));
    if (const QString runs = taintWords(vessel.taint); !runs.isEmpty())
        tag.lines << runs;
    if (vessel.lead == "suspect" || vessel.lead == "unknown")
        tag.lines << tr("Lead: %1").arg(choiceWord(vessel.lead));
    tag.warning = allergen(vessel.taint);
    tag.code = utf8(vessel.name);
    return tag;
}

void labelsAsPdf(const std::vector<Label>& labels, const std::string& place) {
    PdfPages pages{place, tr("Labels")};
    const QRectF page = pages.page();
    const double wide = page.width() / across, high = page.height() / down;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        const int at = static_cast<int>(i % (across * down));
        if (i > 0 && at == 0)
            pages.newPage();
        drawLabel(pages.painter(),
                  QRectF{page.left() + at % across * wide, page.top() + at / across * high, wide, high}, labels[i]);
    }
    pages.finish();
}

void tagAsPdf(const Label& tag, const std::string& place) {
    PdfPages pages{place, tag.head};
    const QRectF page = pages.page();
    drawLabel(pages.painter(), QRectF{page.left(), page.top(), page.width(), page.height() / 3}, tag);
    pages.finish();
}

} // namespace panside
