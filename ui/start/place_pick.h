#pragma once
// One place of many: its first letters typed, or its key pressed; the arrows go to the next. Under the keys stands what
// its law says, and from where that is.
#include "ui/look/dress.h"
#include "ui/look/units.h"

#include <QWidget>
#include <optional>
#include <vector>

class QGridLayout;
class QLabel;

namespace panside {

class Press;
class TypedLine;

class PlacePick : public QWidget {
    Q_OBJECT
public:
    // `low`: a row of keys less, and smaller words.
    PlacePick(std::optional<std::size_t> now, Units units, const Dress& dress, bool low, QWidget* parent = nullptr);
    std::optional<std::size_t> chosen() const { return chosen_; }
    // Was something typed that no place is called?
    bool isUnknown() const;
    QString typed() const;

signals:
    void picked(); // by a finger, which has nothing more to say

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void look();
    void turn(int by);
    void step(int by);
    void showPage();
    int perPage() const { return static_cast<int>(keys_.size()); }

    Units units_;
    Dress dress_;
    TypedLine* line_;
    QWidget* room_; // of the keys
    std::vector<Press*> keys_;
    Press *earlier_, *later_;
    QLabel* numbers_;
    std::vector<std::size_t> found_;
    int first_ = 0; // shown
    std::optional<std::size_t> chosen_;
};

} // namespace panside
