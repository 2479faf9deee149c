#include "ui/board/sentence.h"

#include "ui/words/alarm_words.h"
#include "ui/words/check_words.h"
#include "ui/words/reading_words.h"
#include "ui/words/sap_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Sentence", text); }

int urgency(const AlarmPicture& alarm) {
    const int priority = 3 - static_cast<int>(alarm.priority); // 3 high, 2 medium, 1 low
    switch (alarm.state) {
    case AlarmState::unseen:
        return 20 + priority;
    case AlarmState::seen:
        return 10 + priority;
    case AlarmState::goneUnseen:
        return priority;
    case AlarmState::shelved:
    case AlarmState::normal:
        break;
    }
    return 0;
}

Tone toneOf(Priority priority) {
    switch (priority) {
    case Priority::high:
        return Tone::high;
    case Priority::medium:
        return Tone::medium;
    case Priority::low:
        break;
    }
    return Tone::low;
}

QString othersLine(const Picture& picture, const AlarmPicture* shown, Units units) {
    QStringList standing, shelved;
    for (const AlarmPicture& alarm : picture.alarms) {
        // One that is over is asked for when its turn comes; beside what stands it would read as if it stood.
        if (&alarm == shown || alarm.state == AlarmState::normal || alarm.state == AlarmState::goneUnseen)
            continue;
        (alarm.state == AlarmState::shelved ? shelved : standing) << alarmName(alarm.alarm);
    }
    QStringList parts;
    if (!standing.isEmpty())
        parts << tr(QT_TRANSLATE_NOOP("Sentence", "also: %1")).arg(standing.join(QStringLiteral(", ")));
    if (!shelved.isEmpty())
        parts << tr(QT_TRANSLATE_NOOP("Sentence", "shelved: %1")).arg(shelved.join(QStringLiteral(", ")));
    // On a calm boil these are the line itself.
    if (shown)
        for (const QString& news : {checkWords(picture, units), tankFullWords(picture.store)})
            if (!news.isEmpty())
                parts << news;
    return parts.join(QStringLiteral(" · "));
}

QString calmLine(const Picture& picture, Units units) {
    if (QString checked = checkWords(picture, units); !checked.isEmpty())
        return checked;
    if (QString full = tankFullWords(picture.store); !full.isEmpty())
        return full;
    if (picture.endedAt)
        return tr(QT_TRANSLATE_NOOP("Sentence", "The shift is over."));
    if (picture.shutdownAt)
        return tr(QT_TRANSLATE_NOOP("Sentence", "Burning out: stay until the pans are still."));
    if (picture.drawing)
        return tr(QT_TRANSLATE_NOOP("Sentence", "Drawing. Nothing is wrong."));
    if (!picture.litAt)
        return tr(QT_TRANSLATE_NOOP("Sentence", "Nothing is lit. Cover the pans before the fire."));
    const auto& pan = picture.reading(Series::syrup_pan);
    if (!pan)
        return tr(QT_TRANSLATE_NOOP("Sentence", "No probe in the pan: type readings in, watch the pan."));
    if (pan->trust == Trust::good && pan->byHand && picture.drawEta && seconds(picture.drawEta->p50) <= 0)
        return tr(QT_TRANSLATE_NOOP("Sentence", "Syrup, by the last reading or the climb since: look, and draw."));
    if (pan->trust == Trust::good && pan->byHand)
        return tr(QT_TRANSLATE_NOOP("Sentence", "Readings by hand. Nothing is wrong by the last one."));
    if (pan->trust != Trust::good)
        return tr(QT_TRANSLATE_NOOP("Sentence", "Pan probe %1: watch the pan itself.")).arg(reasonWords(*pan));
    if (picture.markCrept)
        return tr(QT_TRANSLATE_NOOP("Sentence", "The target has crept up: niter? Look at the pan."));
    return tr(QT_TRANSLATE_NOOP("Sentence", "A calm boil. Nothing is wrong."));
}

} // namespace

const AlarmPicture* shownAlarm(const Picture& picture) {
    const AlarmPicture* shown = nullptr;
    for (const AlarmPicture& alarm : picture.alarms)
        if (urgency(alarm) > (shown ? urgency(*shown) : 0))
            shown = &alarm;
    return shown;
}

SentenceView sentence(const Picture& picture, Units units) {
    SentenceView view;
    const AlarmPicture* shown = shownAlarm(picture);
    view.others = othersLine(picture, shown, units);
    if (!shown) {
        view.wrong = calmLine(picture, units);
        return view;
    }
    view.tone = toneOf(shown->priority);
    view.alarm = shown->alarm;
    view.flashing = shown->state == AlarmState::unseen || shown->state == AlarmState::goneUnseen;
    view.canBeSeen = view.flashing;
    view.wrong = alarmLine(*shown);
    if (shown->state == AlarmState::goneUnseen) {
        view.state = stateWord(shown->state);
        view.wrong = tr(QT_TRANSLATE_NOOP("Sentence", "Over now: %1")).arg(view.wrong);
    } else {
        view.first = alarmFirst(*shown);
    }
    return view;
}

} // namespace panside
