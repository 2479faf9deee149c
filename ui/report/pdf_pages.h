#pragma once
// A PDF that is drawn in lines and letters, page by page.
#include <QBuffer>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <string>

namespace panside {

// Height of a capital, in millimetres, of what is read on paper at arm's length: 9 points of this face. Nothing is
// smaller.
inline constexpr double paperLetters = 2.3;

class PdfPages {
public:
    // A4. Nothing is at the place before finish(), which throws FileFault where it cannot be written.
    PdfPages(const std::string& place, const QString& title,
             QPageLayout::Orientation orientation = QPageLayout::Portrait);
    QPainter& painter() { return painter_; }
    QRectF page() const { return page_; } // in 1/96 inch
    void newPage();                       // as the one before
    void newPage(QPageLayout::Orientation orientation);
    void finish();

private:
    void measure();
    void scale();
    std::string place_;
    QBuffer bytes_;
    QPdfWriter writer_;
    QPainter painter_;
    QRectF page_;
};

} // namespace panside
