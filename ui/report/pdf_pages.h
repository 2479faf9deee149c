#pragma once
// A PDF that is drawn in lines and letters, page by page.
#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <string>

namespace panside {

class PdfPages {
public:
    // A4. Nothing is at the place before finish(), which throws FileFault where it cannot be written.
    PdfPages(const std::string& place, const QString& title);
    QPainter& painter() { return painter_; }
    QRectF page() const { return page_; } // in 1/96 inch
    void newPage();
    void finish();

private:
    void scale();
    std::string place_;
    QBuffer bytes_;
    QPdfWriter writer_;
    QPainter painter_;
    QRectF page_;
};

} // namespace panside
