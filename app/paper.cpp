#include "app/paper.h"

#include "app/commands.h"
#include "app/text_file.h"

namespace panside {

namespace {

constexpr int dotsPerInch = 1200; // letters are set to a twelve-hundredth of an inch

} // namespace

Paper::Paper(const std::string& place, const QString& title) : writer_{QString::fromStdString(place)} {
    writer_.setPageSize(QPageSize{QPageSize::A4});
    writer_.setPageMargins({12, 12, 12, 12}, QPageLayout::Millimeter);
    writer_.setResolution(dotsPerInch);
    writer_.setTitle(title);
    writer_.setCreator(QStringLiteral("Panside"));
    const QSizeF dots = writer_.pageLayout().paintRectPixels(dotsPerInch).size();
    page_ = QRectF{QPointF{}, dots * 96 / dotsPerInch};
    if (!painter_.begin(&writer_))
        throw FileFault{status::machineFailed,
                        place + ": cannot be written. Choose a folder that is there and may be written."};
    scale();
}

void Paper::scale() {
    painter_.resetTransform();
    painter_.scale(dotsPerInch / 96.0, dotsPerInch / 96.0);
}

void Paper::newPage() {
    writer_.newPage();
    scale();
}

} // namespace panside
