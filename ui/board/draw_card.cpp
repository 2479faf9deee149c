// How long until we draw, and while drawing until we close.
#include "ui/board/card_view.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("DrawCard", text); }

// Steps of five seconds, so that the digits do not dance.
Duration toFiveSeconds(Duration span) { return Duration{std::round(span.count() / 5) * 5}; }

bool inDoubt(const Picture& picture) {
    const auto& pan = picture.reading(Series::syrup_pan);
    return pan && pan->trust != Trust::good;
}

bool standsFor(const Picture& picture, Alarm alarm) {
    return std::any_of(picture.alarms.begin(), picture.alarms.end(),
                       [&](const AlarmPicture& one) { return one.alarm == alarm && one.stands(); });
}

QString riseFigure(const Picture& picture, Units units) {
    if (!picture.rise || !picture.targetRise)
        return {};
    const Figure target = figure(*picture.targetRise, units);
    const QString now = inDoubt(picture) ? QStringLiteral("–") : figure(*picture.rise, units).number;
    return tr(QT_TRANSLATE_NOOP("DrawCard", "rise %1 of %2")).arg(now, target.text());
}

// "reads 217.9, open at 218.4 ± 0.3 °F"
QString markLine(const Picture& picture, Units units) {
    if (!picture.target)
        return whyNot(picture, Shown::targetC);
    QString mark = figure(*picture.target, units).number;
    if (picture.targetUncertainty)
        mark = tr(QT_TRANSLATE_NOOP("DrawCard", "%1 ± %2")).arg(mark, figure(*picture.targetUncertainty, units).number);
    mark += QChar{0x00a0} + figure(*picture.target, units).unit;
    if (!picture.syrupPan || inDoubt(picture))
        return tr(QT_TRANSLATE_NOOP("DrawCard", "open at %1")).arg(mark);
    return tr(QT_TRANSLATE_NOOP("DrawCard", "reads %1, open at %2")).arg(figure(*picture.syrupPan, units).number, mark);
}

QString sugarLine(const Picture& picture) {
    QString line;
    if (picture.brix)
        line = tr(QT_TRANSLATE_NOOP("DrawCard", "about %1")).arg(figure(*picture.brix).text());
    if (picture.checks > 0 && picture.lastCheck) {
        const QString age = spanText(Duration{secondsBetween(*picture.lastCheck, picture.at)});
        const QString checks =
            picture.checks == 1
                ? tr(QT_TRANSLATE_NOOP("DrawCard", "one check, %1 ago")).arg(age)
                : QCoreApplication::translate("DrawCard", "%n checks, the last %1 ago", nullptr, picture.checks)
                      .arg(age);
        line = line.isEmpty() ? checks : line + QStringLiteral(" · ") + checks;
    } else if (picture.target) {
        const QString none = tr(QT_TRANSLATE_NOOP("DrawCard", "no density check yet"));
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
        return tr(QT_TRANSLATE_NOOP("DrawCard", "a check now would halve the ±"));
    return tr(QT_TRANSLATE_NOOP("DrawCard", "a check now would make it ± %1"))
        .arg(figure(*picture.targetUncertaintyAfterCheck, units).text());
}

// A time to the close that would be shown as 0:00 is no time any more.
bool closes(const Picture& picture) { return picture.closeEta && toFiveSeconds(picture.closeEta->p50).count() <= 0; }

void count(CardView& view, const std::optional<Range>& eta, const QString& why) {
    if (!eta) {
        view.chief = dash;
        view.reason = why;
        return;
    }
    const bool near = eta->p50.count() < 180;
    // Seconds only where they mean something.
    view.chief = countdownPieces(near ? toFiveSeconds(eta->p50) : eta->p50, near);
    view.beside = rangeText(*eta);
}

} // namespace

CardView drawCard(const Picture& picture, Units units) {
    CardView view;
    view.actions = {picture.drawing ? Action::drawClose : Action::drawOpen, Action::densityCheck};
    const bool above = !picture.drawing && picture.drawEta && picture.drawEta->p50.count() <= 0;
    if (picture.drawing && closes(picture)) {
        view.title = tr(QT_TRANSLATE_NOOP("DrawCard", "DRAWING, CLOSE IT"));
        view.chief = {{tr(QT_TRANSLATE_NOOP("DrawCard", "now"))}};
    } else if (picture.drawing) {
        view.title = picture.closeEta ? tr(QT_TRANSLATE_NOOP("DrawCard", "DRAWING, CLOSE IN"))
                                      : tr(QT_TRANSLATE_NOOP("DrawCard", "DRAWING, WATCH THE RISE"));
        count(view, picture.closeEta, whyNot(picture, Shown::closeEta));
    } else if (above) {
        view.title = tr(QT_TRANSLATE_NOOP("DrawCard", "TO THE DRAW"));
        view.chief = {{tr(QT_TRANSLATE_NOOP("DrawCard", "now"))}};
    } else {
        view.title = tr(QT_TRANSLATE_NOOP("DrawCard", "TO THE DRAW"));
        count(view, picture.drawEta, whyNot(picture, Shown::drawEta));
    }
    view.figure = riseFigure(picture, units);
    view.lines = {markLine(picture, units), sugarLine(picture), checkLine(picture, units)};
    std::erase(view.lines, QString{});
    if (inDoubt(picture)) {
        const QString doubt = reasonWords(*picture.reading(Series::syrup_pan));
        // A dash needs no striking; its reason is the doubt itself, which says more than that there is one.
        if (picture.drawing ? picture.closeEta.has_value() : picture.drawEta.has_value())
            view.doubt = doubt;
        else if (!doubt.isEmpty())
            view.reason = tr(QT_TRANSLATE_NOOP("DrawCard", "pan probe %1")).arg(doubt);
    }
    if (standsFor(picture, Alarm::above_target) || standsFor(picture, Alarm::draw_overdue))
        view.tone = Tone::medium;
    return view;
}

} // namespace panside
