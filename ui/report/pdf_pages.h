#pragma once
// A PDF that is drawn in lines and letters, page by page.
#include <QPainter>
#include <QPdfWriter>
#include <string>

namespace panside {

class PdfPages {
public:
    // A4. Throws FileFault where the place cannot be written.
    PdfPages(const std::string& place, const QString& title);
    QPainter& painter() { return painter_; }
    QRectF page() const { return page_; } // in 1/96 inch
    void newPage();

private:
    void scale();
    QPdfWriter writer_;
    QPainter painter_;
    QRectF page_;
};

} // namespace panside
