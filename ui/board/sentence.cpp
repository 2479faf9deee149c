#include "ui/board/sentence.h"

#include "core/boil/calls.h"
#include "ui/words/alarm_words.h"
#include "ui/words/check_words.h"
#include "ui/words/reading_words.h"
#include "ui/words/sap_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {
namespace {

constexpr Duration overIsNews{600}; // afterwards it stands in the review alone

QString tr(const char* text) { return QCoreApplication::translate("Sentence", text); }

int urgency(const AlarmPicture& alarm) {
    const int priority = 3 - static_cast<int>(alarm.priority); // 3 high, 2 medium, 1 low
    return alarm.state == AlarmState::unseen ? 20 + priority : alarm.state == AlarmState::seen ? 10 + priority : 0;
}

// Somebody did what it asked for: that was the answer, nobody needs to be told.
bool answered(const Picture& picture, const AlarmPicture& alarm) {
    switch (alarm.alarm) {
    case Alarm::fire_overdue:
        return (picture.lastFired && *picture.lastFired >= alarm.since) || picture.shutdownAt;
    case Alarm::draw_overdue: // only shutting it ends it
        return true;
    case Alarm::above_target:
        return picture.drawing || (picture.drawOpenedAt && *picture.drawOpenedAt >= alarm.since);
    case Alarm::last_load:
    case Alarm::sap_low:
        return picture.shutdownAt.has_value();
    default:
        return false;
    }
}

// A float that is stuck open drowns the pan: no alarm, and no calm boil either.
QString overfullLine(const Picture& picture) {
    const Why why{Series::pan_level, Reason::overfull};
    if (std::ranges::find(picture.why, why) == picture.why.end())
        return {};
    return tr("The syrup pan stands far over its running depth: a float stuck open?");
}

QStringList news(const Picture& picture, Units units) {
    const bool calls = std::ranges::any_of(
        picture.alarms, [](const AlarmPicture& one) { return one.alarm == Alarm::tank_overflow && one.stands(); });
    QStringList all{overfullLine(picture), checkWords(picture, units),
                    calls ? QString{} : tankFullWords(picture.store)};
    all.removeAll(QString{});
    return all;
}

QString othersLine(const Picture& picture, const AlarmPicture* shown, Units units) {
    QStringList standing, shelved, parts;
    for (const AlarmPicture& alarm : picture.alarms) {
        // One that is over reads beside what stands as if it stood.
        if (&alarm == shown || alarm.state == AlarmState::normal || alarm.state == AlarmState::goneUnseen)
            continue;
        (alarm.state == AlarmState::shelved ? shelved : standing) << alarmName(alarm.alarm);
    }
    if (!standing.isEmpty())
        parts << tr("also: %1").arg(standing.join(QStringLiteral(", ")));
    if (!shelved.isEmpty())
        parts << tr("shelved: %1").arg(shelved.join(QStringLiteral(", ")));
    if (shown) // on a calm boil these are the line itself
        parts << news(picture, units);
    return parts.join(QStringLiteral(" · "));
}

QString calmLine(const Picture& picture, Units units) {
    if (const QStringList all = news(picture, units); !all.isEmpty())
        return all.front();
    if (picture.endedAt)
        return tr("The shift is over.");
    if (picture.shutdownAt)
        return tr("Burning out: stay until the pans are still.");
    if (picture.drawing)
        return tr("Drawing. Nothing is wrong.");
    if (!picture.litAt)
        return tr("Nothing is lit. Flood the pans before you light.");
    const auto& pan = picture.reading(Series::syrup_pan);
    if (!pan)
        return tr("No probe in the pan: type readings in, watch the pan.");
    if (pan->trust != Trust::good)
        return tr("Pan probe %1: watch the pan itself.").arg(reasonWords(*pan));
    if (pan->byHand)
        return tr("Readings by hand. Nothing is wrong by the last one.");
    if (picture.markCrept)
        return tr("The target has crept up: niter? Look at the pan.");
    return tr("A calm boil. Nothing is wrong.");
}

QString withTurn(const QString& words, const Picture& picture) {
    return picture.turn.empty() ? words : tr("%1: %2").arg(words, QString::fromStdString(picture.turn));
}

void tellDue(SentenceView& view, const Picture& picture) {
    const bool draw = isDue(picture, Call::draw), fire = isDue(picture, Call::fire);
    const auto& pan = picture.reading(Series::syrup_pan);
    if (draw && fire)
        view.wrong = tr("Draw now, then fire");
    else
        view.wrong = draw ? tr("Draw now") : withTurn(tr("Fire now"), picture);
    if (draw && pan && pan->byHand)
        view.steps << tr("look: by the last reading, or the climb since, it is syrup");
    if (draw)
        view.steps << tr("open the draw") << tr("check the density");
    else
        view.next = nextLine(picture);
}

void tellAlarm(SentenceView& view, const Picture& picture, const AlarmPicture& shown) {
    view.tone = toneOf(shown.priority);
    view.alarm = shown.alarm;
    view.flashing = view.canBeSeen = shown.state == AlarmState::unseen;
    view.canBeShelved = shown.alarm != Alarm::scorch_risk;
    view.wrong = alarmLine(shown);
    view.steps = alarmSteps(shown, picture.drawing);
}

} // namespace

const AlarmPicture* shownAlarm(const Picture& picture) {
    const AlarmPicture* shown = nullptr;
    for (const AlarmPicture& alarm : picture.alarms)
        if (urgency(alarm) > (shown ? urgency(*shown) : 0))
            shown = &alarm;
    return shown;
}

const AlarmPicture* overAlarm(const Picture& picture) {
    for (const AlarmPicture& alarm : picture.alarms)
        if (alarm.state == AlarmState::goneUnseen && !answered(picture, alarm) &&
            secondsBetween(alarm.over.value_or(alarm.since), picture.at) < overIsNews.count())
            return &alarm;
    return nullptr;
}

QString nextLine(const Picture& picture) {
    if (picture.endedAt || !picture.litAt)
        return {};
    std::vector<std::pair<double, QString>> coming;
    if (picture.fireDue && picture.fireDue->count() > 0 && !forbids(picture, Call::fire)) {
        const QString left = leftText(*picture.fireDue);
        coming.emplace_back(picture.fireDue->count(),
                            picture.turn.empty()
                                ? tr("fire in %1").arg(left)
                                : tr("fire in %1 (%2)").arg(left, QString::fromStdString(picture.turn)));
    }
    if (!picture.drawing && picture.drawEta && picture.drawEta->p50.count() > 0 && !forbids(picture, Call::draw))
        coming.emplace_back(picture.drawEta->p50.count(), tr("draw in %1").arg(leftText(picture.drawEta->p50)));
    std::ranges::stable_sort(coming, [](const auto& a, const auto& b) { return a.first < b.first; });
    QStringList words;
    for (const auto& [left, what] : coming)
        words << what;
    return words.isEmpty() ? QString{} : tr("next: %1").arg(words.join(QStringLiteral(", ")));
}

SentenceView sentence(const Picture& picture, Units units) {
    SentenceView view;
    const AlarmPicture* shown = shownAlarm(picture);
    const AlarmPicture* over = overAlarm(picture);
    const bool draw = isDue(picture, Call::draw), due = draw || isDue(picture, Call::fire);
    // An alarm that somebody has seen and that is not urgent leaves the word to the pan.
    if (shown && draw && shown->state == AlarmState::seen && shown->priority != Priority::high)
        shown = nullptr;
    view.others = othersLine(picture, shown, units);
    if (shown) {
        view.state = SentenceView::State::alarm;
        tellAlarm(view, picture, *shown);
    } else if (due) {
        view.state = SentenceView::State::due;
        tellDue(view, picture);
        const QStringList beside = news(picture, units);
        if (view.others.isEmpty() && !beside.isEmpty())
            view.others = beside.join(QStringLiteral(" · "));
    } else if (over) {
        view.state = SentenceView::State::over;
        view.alarm = over->alarm;
        view.canBeSeen = true;
        view.wrong = tr("Over, nothing to do: %1").arg(alarmName(over->alarm, over->series));
        view.next = nextLine(picture);
    } else {
        view.wrong = calmLine(picture, units);
        view.next = nextLine(picture);
    }
    return view;
}

} // namespace panside
