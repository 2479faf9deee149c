#pragma once
// The line at the foot of every screen: what can be taken back, by name; what was kept last; day or night; the clock.
// It is always there: nothing moves when it has something to say.
#include "ui/keys/actions.h"
#include "ui/look/dress.h"

#include <QWidget>

namespace panside {

class Press;

class Foot : public QWidget {
    Q_OBJECT
public:
    explicit Foot(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    // What undo would take back ("fire lit, 21:04"); empty: nothing.
    void offerUndo(const QString& what);
    void say(const QString& words);
    QString said() const { return said_; }
    // `chip`: a standing state beside the clock, as "rehearsal"; empty: none.
    void tellTime(const QString& clock, const QString& chip);

signals:
    void actionPressed(panside::Action action);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void sayKeys();
    void arrange();
    Dress dress_;
    QString what_, said_, clock_, chip_;
    Press *undo_, *look_, *across_;
    QRect saidPlace_, chipPlace_, clockPlace_;
};

} // namespace panside
