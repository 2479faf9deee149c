// How long until we draw, and while drawing until we close.
#include "core/boil/calls.h"
#include "ui/board/card_view.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("DrawCard", text); }

bool inDoubt(const Picture& picture) {
    const auto& pan = picture.reading(Series::syrup_pan);
    return pan && pan->trust != Trust::good;
}

bool standsFor(const Picture& picture, Alarm alarm) {
    return std::ranges::any_of(picture.alarms,
                               [&](const AlarmPicture& one) { return one.alarm == alarm && one.stands(); });
}

QString riseFigure(const Picture& picture, Units units) {
    if (!picture.rise || !picture.targetRise)
        return {};
    const Figure target = figure(*picture.targetRise, units);
    const QString now = inDoubt(picture) ? QStringLiteral("–") : figure(*picture.rise, units).number;
    return tr("rise %1 of %2").arg(now, target.text());
}

// "217.9, open at 218.4 °F": what an old hand thinks in. A live probe shows what it reads with no reference as well.
QString panFigure(const Picture& picture, Units units) {
    std::optional<Temperature> pan = picture.syrupPan;
    if (const auto& read = picture.reading(Series::syrup_pan); !pan && read && read->si && read->trust == Trust::good)
        pan = Temperature::kelvin(*read->si);
    if (inDoubt(picture))
        pan.reset();
    if (picture.drawing) // while it runs the mark to open at is behind us
        return pan ? figure(*pan, units).text() : QString{};
    if (!picture.target)
        return pan ? tr("pan %1").arg(figure(*pan, units).text()) : QString{};
    const QString open = figure(*picture.target, units).text();
    return pan ? tr("%1, open at %2").arg(figure(*pan, units).number, open) : tr("open at %1").arg(open);
}

// How well the mark is known; why there is none.
QString markLine(const Picture& picture, Units units) {
    if (!picture.target)
        return whyNot(picture, Shown::targetC);
    return picture.targetUncertainty
               ? tr("the target is known to ± %1").arg(figure(*picture.targetUncertainty, units).text())
               : QString{};
}

QString sugarLine(const Picture& picture) {
    QString line;
    if (picture.brix)
        line = tr("about %1").arg(figure(*picture.brix).text());
    if (picture.checks > 0 && picture.lastCheck) {
        const QString age = spanText(Duration{secondsBetween(*picture.lastCheck, picture.at)});
        const QString checks =
            picture.checks == 1
                ? tr("one check, %1 ago").arg(age)
                : QCoreApplication::translate("DrawCard", "%n checks, the last %1 ago", nullptr, picture.checks)
                      .arg(age);
        line = line.isEmpty() ? checks : line + QStringLiteral(" · ") + checks;
    } else if (picture.target) {
        const QString none = tr("no density check yet");
        line = line.isEmpty() ? none : line + QStringLiteral(" · ") + none;
    }
    return line;
}

// A check is asked for when it would make the mark much surer, and while that matters to the syrup: 0.1 K is nearly
// half a brix.
QString checkLine(const Picture& picture, Units units) {
    constexpr double matters = 0.1, worth = 0.75;
    if (!picture.targetUncertainty || !picture.targetUncertaintyAfterCheck || picture.shutdownAt || picture.endedAt)
        return {};
    const double now = picture.targetUncertainty->kelvin(), then = picture.targetUncertaintyAfterCheck->kelvin();
    if (now < matters || then > worth * now)
        return {};
    if (then > 0.4 * now && then < 0.6 * now)
        return tr("a check now would halve the ±");
    return tr("a check now would make it ± %1").arg(figure(*picture.targetUncertaintyAfterCheck, units).text());
}

// A time to the close that is nearly none is none any more.
bool closes(const Picture& picture) { return picture.closeEta && picture.closeEta->p50.count() < 3; }

void count(CardView& view, const std::optional<Range>& eta, const QString& why) {
    if (!eta) {
        view.chief = dash;
        view.reason = why;
        return;
    }
    view.chief = waitPieces(eta->p50);
    view.beside = rangeText(*eta);
}

std::vector<Piece> now() { return {{tr("now")}}; }

// What the card counts, as if nothing were wrong.
void tellTime(CardView& view, const Picture& picture) {
    view.title = tr("TO THE DRAW");
    if (picture.drawing && closes(picture)) {
        view.title = tr("DRAWING, CLOSE IT");
        view.chief = now();
    } else if (picture.drawing) {
        view.title = picture.closeEta ? tr("DRAWING, CLOSE IN") : tr("DRAWING, WATCH THE RISE");
        count(view, picture.closeEta, whyNot(picture, Shown::closeEta));
    } else if (isDue(picture, Call::draw)) {
        view.chief = now();
        view.due = true;
    } else {
        count(view, picture.drawEta, whyNot(picture, Shown::drawEta));
    }
}

// An alarm of the probe takes the time away; one of the pan gives an order instead of it.
void forbid(CardView& view, const Picture& picture, const AlarmPicture& alarm) {
    const bool ofTheProbe = alarm.series.has_value();
    if (ofTheProbe) // why no time is given
        view.under = view.doubt.isEmpty() ? view.reason : view.doubt;
    view.beside.clear();
    view.doubt.clear();
    view.reason.clear();
    view.due = false;
    view.chief = dash;
    view.order = ofTheProbe ? tr("by eye and hydrometer") : picture.drawing ? tr("close now") : tr("keep shut");
    view.tone = toneOf(alarm.priority);
    if (picture.drawing && !ofTheProbe)
        view.keys.front().shape = KeyShape::due;
    else if (!picture.drawing && !ofTheProbe)
        view.keys.front() = {Action::drawOpen, KeyShape::resting, tr("The draw was opened")};
}

} // namespace

CardView drawCard(const Picture& picture, Units units) {
    CardView view;
    view.keys = {{picture.drawing ? Action::drawClose : Action::drawOpen}, {Action::densityCheck}};
    tellTime(view, picture);
    view.figure = panFigure(picture, units);
    view.under = riseFigure(picture, units);
    view.lines = {markLine(picture, units), sugarLine(picture), checkLine(picture, units)};
    std::erase(view.lines, QString{});
    if (inDoubt(picture)) {
        const QString doubt = reasonWords(*picture.reading(Series::syrup_pan));
        // A dash needs no doubt; its reason is the doubt itself, which says more than that there is one.
        if (picture.drawing ? picture.closeEta.has_value() : picture.drawEta.has_value())
            view.doubt = doubt;
        else if (!doubt.isEmpty())
            view.reason = tr("pan probe %1").arg(doubt);
    }
    if (standsFor(picture, Alarm::above_target) || standsFor(picture, Alarm::draw_overdue))
        view.tone = Tone::medium;
    std::erase(view.lines, view.reason); // said beside the dash already
    if (const AlarmPicture* alarm = forbids(picture, Call::draw))
        forbid(view, picture, *alarm);
    if (view.due || (picture.drawing && closes(picture)))
        view.keys.front().shape = KeyShape::due;
    return view;
}

} // namespace panside
