#pragma once
#include "ui/look/dress.h"
#include "ui/trace/trace_view.h"

#include <QWidget>

namespace panside {

// The thread from left to right: a column for each stage, threads as thick as the shares, every box a finger's height.
// A box is gone to by the arrow keys, and asked about by Enter or a press. A column longer than the page turns.
class TracePicture : public QWidget {
    Q_OBJECT
public:
    explicit TracePicture(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const TraceView& view);
    // The box that the keys stand on.
    const TraceBox* at() const;
    QSize minimumSizeHint() const override;

signals:
    void asked(const QString& name);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    struct Place {
        std::size_t column, box;
        QRect rect;
        bool more = false; // turns the column's page
    };
    std::vector<Place> places() const;
    int rowsShown() const;
    QRect columnPlace(std::size_t column) const;
    void paintThreads(QPainter& painter, const std::vector<Place>& all) const;
    void paintBox(QPainter& painter, const Place& place) const;
    void press();
    void step(int columns, int boxes);

    Dress dress_;
    TraceView view_;
    std::vector<std::size_t> from_; // the first box of each column that is shown
    std::size_t column_ = 0, box_ = 0;
};

} // namespace panside
