#pragma once
// How loud the alarms are, and whether they are spoken; each of them can be heard here before the fire is lit.
#include "core/boil/picture.h"
#include "ui/frame/choices.h"
#include "ui/look/dress.h"

#include <QWidget>

class QLabel;

namespace panside {

class Press;

class SoundScreen : public QWidget {
    Q_OBJECT
public:
    explicit SoundScreen(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void display(const SoundChoices& choices, bool canBeHeard, bool canSpeak);

signals:
    void chosen(const panside::SoundChoices& choices);
    void testWanted(panside::Priority priority);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void refresh();
    void louder(int steps);
    void turnSpoken();
    void turnStill();

    Dress dress_;
    SoundChoices choices_;
    bool canBeHeard_ = false, canSpeak_ = false;
    QWidget* inside_ = nullptr;
    QLabel *device_ = nullptr, *volume_ = nullptr;
    Press *spoken_ = nullptr, *still_ = nullptr;
};

} // namespace panside
