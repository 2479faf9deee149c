#include "ui/sound/sound_screen.h"

#include "ui/look/each_language.h"
#include "ui/look/parts.h"
#include "ui/look/refocus.h"

#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

SoundScreen::SoundScreen(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("soundScreen"));
    setAutoFillBackground(true);
    setFocusPolicy(Qt::StrongFocus);
    new QVBoxLayout{this};
    build();
    inEachLanguage(*this, [this] { build(); });
}

void SoundScreen::wear(const Dress& dress) {
    if (dress == dress_)
        return;
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    build();
}

void SoundScreen::display(const SoundChoices& choices, bool canBeHeard, bool canSpeak) {
    choices_ = choices;
    canBeHeard_ = canBeHeard;
    canSpeak_ = canSpeak;
    refresh();
}

void SoundScreen::build() {
    discard(inside_);
    inside_ = new QWidget;
    layout()->addWidget(inside_);
    auto* column = new QVBoxLayout{inside_};
    column->setSpacing(dress_.px(mm::gap * 2));
    column->addWidget(titleOf(dress_, tr("How loud the alarms are")));
    device_ = labelOf(dress_, QStringLiteral("device"), mm::words);
    column->addWidget(device_);

    auto* loudness = new QHBoxLayout;
    Press* softer = pressOf(dress_, tr("Softer"), QStringLiteral("−"), QStringLiteral("softer"));
    Press* up = pressOf(dress_, tr("Louder"), QStringLiteral("+"), QStringLiteral("louder"));
    volume_ = new QLabel;
    volume_->setObjectName(QStringLiteral("volume"));
    volume_->setAlignment(Qt::AlignCenter);
    volume_->setFont(dress_.letters(mm::fromAfar));
    connect(softer, &Press::clicked, this, [this] { louder(-1); });
    connect(up, &Press::clicked, this, [this] { louder(1); });
    loudness->addWidget(softer, 1);
    loudness->addWidget(volume_, 1);
    loudness->addWidget(up, 1);
    column->addLayout(loudness);

    column->addWidget(wordOf(dress_, tr("Hear each at its loudest, with the blower and the pans going:")));
    auto* tests = new QHBoxLayout;
    const std::pair<QString, Priority> all[] = {{tr("High: act at once"), Priority::high},
                                                {tr("Medium: act soon"), Priority::medium},
                                                {tr("Low: good to know"), Priority::low}};
    int number = 1;
    for (const auto& [word, priority] : all) {
        Press* hear =
            pressOf(dress_, word, QStringLiteral("HML").mid(number - 1, 1), QStringLiteral("hear_%1").arg(number));
        connect(hear, &Press::clicked, this, [this, which = priority] { emit testWanted(which); });
        tests->addWidget(hear, 1);
        ++number;
    }
    column->addLayout(tests);
    spoken_ = pressOf(dress_, {}, QStringLiteral("W"), QStringLiteral("spoken"));
    connect(spoken_, &Press::clicked, this, &SoundScreen::turnSpoken);
    column->addWidget(spoken_);
    still_ = pressOf(dress_, {}, QStringLiteral("B"), QStringLiteral("still"));
    connect(still_, &Press::clicked, this, &SoundScreen::turnStill);
    column->addWidget(still_);
    column->addStretch();
    refresh();
}

void SoundScreen::refresh() {
    device_->setText(canBeHeard_ ? tr("A call is soft at first and rises to this until somebody says it was seen. The "
                                      "frame flashes as well.")
                                 : tr("There is no loudspeaker here: alarms only show, and the frame flashes. Plug one "
                                      "in; it is found by itself."));
    volume_->setText(tr("%1 %").arg(choices_.volume));
    spoken_->say(!canSpeak_        ? tr("This system has no voice to speak with")
                 : choices_.spoken ? tr("A new alarm is also spoken")
                                   : tr("Alarms are not spoken"),
                 QStringLiteral("W"));
    spoken_->setEnabled(canSpeak_);
    still_->say(choices_.still ? tr("The frame of an alarm stands still") : tr("The frame of an alarm flashes"),
                QStringLiteral("B"));
}

void SoundScreen::louder(int steps) {
    choices_.volume = std::clamp(choices_.volume + steps * SoundChoices::step, SoundChoices::softest, 100);
    refresh();
    emit chosen(choices_);
}

void SoundScreen::turnSpoken() {
    if (!canSpeak_)
        return;
    choices_.spoken = !choices_.spoken;
    refresh();
    emit chosen(choices_);
}

void SoundScreen::turnStill() {
    choices_.still = !choices_.still;
    refresh();
    emit chosen(choices_);
}

void SoundScreen::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Escape:
        emit left();
        break;
    case Qt::Key_Plus:
    case Qt::Key_Equal: // the same key without shift
        louder(1);
        break;
    case Qt::Key_Minus:
        louder(-1);
        break;
    case Qt::Key_H:
        emit testWanted(Priority::high);
        break;
    case Qt::Key_M:
        emit testWanted(Priority::medium);
        break;
    case Qt::Key_L:
        emit testWanted(Priority::low);
        break;
    case Qt::Key_W:
        turnSpoken();
        break;
    case Qt::Key_B:
        turnStill();
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace panside
