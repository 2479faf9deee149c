#pragma once
#include "ui/look/dress.h"
#include "ui/paperlog/paper_row.h"

#include <QWidget>

class QLabel;
class QTableWidget;

namespace panside {

class ActionKeys;
class TypedLine;

// A log on paper, typed the next day: a row an event, Tab to the next field, Enter to the next row. What each row will
// be written as, or what is wrong with it, stands beside it as it is typed.
class PaperScreen : public QWidget {
    Q_OBJECT
public:
    explicit PaperScreen(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void setUnits(Units units);
    // The night the log is of, and the zone of the clock it was written by.
    void setDay(QDate date, const QTimeZone& zone);
    void say(const QString& words);
    void clear();
    std::vector<PaperRow> rows() const;

signals:
    void keepWanted(const std::vector<panside::Fact>& facts);
    void left();

protected:
    void hideEvent(QHideEvent* event) override;

private:
    bool eventFilter(QObject* watched, QEvent* event) override;
    std::optional<PaperDay> day();
    void name();
    void act(int key);
    void addRow();
    void judge();
    void leaveField();
    void keep();
    void takeOut();
    void toNextRow();
    void tellRow();

    Dress dress_;
    Units units_ = Units::us;
    QLabel *dateWord_, *zoneWord_, *said_;
    TypedLine *date_, *zone_;
    QTableWidget* table_;
    ActionKeys* keys_;
    QString told_; // of the row that is typed in
    bool judging_ = false;
};

} // namespace panside
