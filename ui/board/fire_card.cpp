// When is the next firing, and whose turn it is.
#include "core/boil/calls.h"
#include "ui/board/card_view.h"
#include "ui/words/fire_words.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("FireCard", text); }

QString turn(const Picture& picture) {
    return picture.turn.empty() ? QString{} : tr("turn: %1").arg(QString::fromStdString(picture.turn));
}

// With several fires: which of them is called.
QString calledFire(const Picture& picture) {
    return picture.fires.size() < 2 ? QString{} : fireName(picture.fires.front().name);
}

// The others: "then finishing in 6 min".
QString otherFires(const Picture& picture) {
    QStringList others;
    for (std::size_t i = 1; i < picture.fires.size(); ++i) {
        const FirePicture& fire = picture.fires[i];
        others << (fire.due.count() < 0 ? tr("%1 overdue too").arg(fireName(fire.name))
                                        : tr("then %1 in %2").arg(fireName(fire.name), leftText(fire.due)));
    }
    return others.join(QStringLiteral(", "));
}

QString rhythm(const Picture& picture) {
    const QString every = spanText(picture.fireInterval);
    // Why it was moved, for as long as it is news.
    if (picture.callMoved && picture.callMoved->sagsAfter && secondsBetween(picture.callMoved->at, picture.at) < 900)
        return tr("every %1: boil sags after %2").arg(every, spanText(*picture.callMoved->sagsAfter));
    return picture.fireIntervalLearned ? tr("every %1, learned tonight").arg(every) : tr("every %1").arg(every);
}

// A quarter of the rhythm late, and half of it: by then the fire is well down (common practice, no source).
int insistenceOf(const Picture& picture) {
    const double late = -picture.fireDue->count() / std::max(60.0, picture.fireInterval.count());
    return late < 0.25 ? 0 : late < 0.5 ? 1 : 2;
}

QString loads(const Picture& picture, Units units) {
    QString line = picture.loads == 1 ? tr("one load")
                                      : QCoreApplication::translate("FireCard", "%n loads", nullptr, picture.loads);
    if (picture.wood)
        line += QStringLiteral(", ") + figure(*picture.wood, units).text();
    if (picture.lastFired) {
        const QString ago = spanText(Duration{secondsBetween(*picture.lastFired, picture.at)});
        line += QStringLiteral(" · ") + tr("the last %1 ago").arg(ago);
    }
    return line;
}

void tellTime(CardView& view, const Picture& picture) {
    view.title = tr("TO THE NEXT FIRING");
    if (!picture.fireDue) {
        view.chief = dash;
        view.reason = whyNot(picture, Shown::fireDueS);
        if (view.reason.isEmpty())
            view.reason = picture.shutdownAt ? tr("firing stopped") : tr("fire not lit");
    } else if (picture.fireDue->count() <= 0) {
        // Late is no count-down that goes on: the call stays, and beside it stands how late it is.
        view.insistence = insistenceOf(picture);
        if (view.insistence >= 2)
            view.title = tr("THE FIRE GOES DOWN: FIRE NOW");
        view.chief = {{tr("now")}};
        if (const Duration late = -*picture.fireDue; late.count() >= 30)
            view.beside = tr("late by %1").arg(late < nearest ? tr("a minute") : spanText(late));
        view.due = isDue(picture, Call::fire);
        if (view.insistence > 0)
            view.tone = Tone::medium;
    } else {
        view.chief = waitPieces(*picture.fireDue);
    }
}

void forbid(CardView& view, const AlarmPicture& alarm) {
    view.chief = dash;
    view.beside.clear();
    view.reason.clear();
    view.insistence = 0;
    view.due = false;
    view.order = alarm.alarm == Alarm::sap_low        ? tr("stop firing")
                 : alarm.alarm == Alarm::draw_overdue ? tr("close the draw first")
                                                      : tr("do not fire");
    view.tone = toneOf(alarm.priority);
    view.keys.front() = {Action::fired, KeyShape::resting, tr("Wood went in all the same")};
}

} // namespace

CardView fireCard(const Picture& picture, Units units) {
    CardView view;
    view.keys = {{picture.litAt ? Action::fired : Action::fireLit}};
    tellTime(view, picture);
    QStringList whichAndWho{calledFire(picture), turn(picture)};
    whichAndWho.removeAll(QString{});
    view.figure = whichAndWho.join(QStringLiteral(", "));
    if (picture.litAt) {
        if (const QString others = otherFires(picture); !others.isEmpty())
            view.lines.push_back(others);
        if (picture.fireDue)
            view.lines.push_back(rhythm(picture));
        view.lines.push_back(loads(picture, units));
    }
    if (const AlarmPicture* alarm = forbids(picture, Call::fire); alarm && picture.litAt && !picture.shutdownAt)
        forbid(view, *alarm);
    if (view.due && !isDue(picture, Call::draw)) // at most one key a screen is the due one: the pan comes first
        view.keys.front().shape = KeyShape::due;
    return view;
}

} // namespace panside
