#pragma once
#include "ui/importing/map_view.h"
#include "ui/look/dress.h"

#include <QWidget>

class QLabel;
class QTableWidget;

namespace panside {

class ChoiceBox;
class ActionKeys;
class TypedLine;

// What another logger's columns are, said by hand: a row a column, with the first values that stand in it. What its
// first row would become stands below at once.
class MapScreen : public QWidget {
    Q_OBJECT
public:
    explicit MapScreen(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    // `beginning`: what stands at the front of the file, some ten kilobytes.
    void open(const QString& name, std::string beginning, ForeignMap map, Units units);
    const ForeignMap& map() const { return map_; }
    bool isGood() const { return good_; }

signals:
    void kept(const panside::ForeignMap& map);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void name();
    void fillTable();
    ChoiceBox* roleBox(int column);
    ChoiceBox* unitBox(int column);
    void choose(int column, int role);
    void recut();
    void judge();
    void keep();

    Dress dress_;
    Units units_ = Units::us;
    QString file_;
    std::string beginning_;
    ForeignMap map_;
    bool good_ = false, filling_ = false;
    QLabel *title_, *formWord_, *zoneWord_, *probeWord_, *answer_;
    ChoiceBox *form_, *delimiter_, *decimal_;
    TypedLine *zone_, *probe_;
    QTableWidget* table_;
    ActionKeys* keys_;
};

} // namespace panside
