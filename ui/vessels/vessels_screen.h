#pragma once
#include "ui/look/dress.h"
#include "ui/vessels/draws_picture.h"
#include "ui/vessels/vessels_view.h"

#include <QWidget>

class QLabel;
class QStackedWidget;

namespace panside {

class ActionKeys;
class Press;
class TypedLine;

// The vessels: a list, what the chosen one wants in letters that are read at the pan, and keys for what is done with
// it. More leaves: draws of which nobody said where they went, all other entries of the day book, and the draws with
// their checks.
class VesselsScreen : public QWidget {
    Q_OBJECT
public:
    enum class Leaf { vessels, whereTo, entries, draws };
    explicit VesselsScreen(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const VesselsView& view, const DrawsView& draws = {});
    // Rows of the day book that can be entered from here.
    void setDeeds(const std::vector<Deed>& deeds);
    void choose(int row);
    Leaf leaf() const;
    const VesselLine* chosen() const;

signals:
    void deedWanted(panside::Deed deed, const QString& vessel);
    void traceWanted(const QString& name);
    void told(const panside::LostDraw& draw, const QString& vessel);
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void act(int key);
    void turnTo(Leaf leaf);
    void sayKeys();
    void sayChosen();
    void fillEntries();
    void tell();
    void offerVessels();

    Dress dress_;
    VesselsView view_;
    std::vector<Deed> deeds_;
    QLabel *wants_, *notes_, *question_;
    QStackedWidget* leaves_;
    LedgerTable *table_, *lost_, *entries_;
    DrawsPicture* draws_;
    TypedLine* into_;
    std::vector<Press*> names_;
    ActionKeys* keys_;
};

} // namespace panside
