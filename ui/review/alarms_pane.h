#pragma once
#include "ui/look/dress.h"
#include "ui/review/alarm_lines.h"

#include <QWidget>

class QLabel;
class QTableWidget;

namespace panside {

class Press;

// The alarms of the shift that is open in review, a row each, in letters as large as the width bears. The one that the
// list stands on stands out on the chart; Enter goes from one time that it stood to the next.
class AlarmsPane : public QWidget {
    Q_OBJECT
public:
    explicit AlarmsPane(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    // None: being worked out.
    void display(std::optional<AlarmReview> review, const WallClock& clock);
    std::optional<std::size_t> chosen() const;

signals:
    void chosenChanged(std::optional<std::size_t> row);
    void pointed(panside::Instant at); // at the beginning of one time that it stood
    void said(const QString& words);
    void left();

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void name();
    void fill();
    void fit();
    void tell();
    void next();

    Dress dress_;
    std::optional<AlarmReview> review_;
    WallClock clock_;
    std::vector<AlarmLine> lines_;
    std::optional<std::size_t> span_; // of the chosen one, pointed at
    QLabel* story_;
    QTableWidget* table_;
    Press* next_;
};

} // namespace panside
