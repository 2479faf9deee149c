#include "ui/report/pdf_pages.h"

#include "core/files/text_file.h"

namespace panside {
namespace {

constexpr int dotsPerInch = 1200; // letters are set to a twelve-hundredth of an inch

} // namespace

PdfPages::PdfPages(const std::string& place, const QString& title, QPageLayout::Orientation orientation)
    : place_{place}, writer_{&bytes_} {
    bytes_.open(QIODevice::WriteOnly);
    writer_.setPageSize(QPageSize{QPageSize::A4});
    writer_.setPageOrientation(orientation);
    writer_.setPageMargins({12, 12, 12, 12}, QPageLayout::Millimeter);
    writer_.setResolution(dotsPerInch);
    writer_.setTitle(title);
    writer_.setCreator(QStringLiteral("Panside"));
    measure();
    if (!painter_.begin(&writer_))
        throw FileFault{FileTrouble::machine, place + ": the pages cannot be drawn."};
    scale();
}

void PdfPages::measure() {
    const QSizeF dots = writer_.pageLayout().paintRectPixels(dotsPerInch).size();
    page_ = QRectF{QPointF{}, dots * 96 / dotsPerInch};
}

void PdfPages::scale() {
    painter_.resetTransform();
    painter_.scale(dotsPerInch / 96.0, dotsPerInch / 96.0);
}

void PdfPages::finish() {
    painter_.end();
    writeText(place_, bytes_.data().toStdString());
}

void PdfPages::newPage() {
    writer_.newPage();
    scale();
}

void PdfPages::newPage(QPageLayout::Orientation orientation) {
    writer_.setPageOrientation(orientation);
    measure();
    newPage();
}

} // namespace panside
