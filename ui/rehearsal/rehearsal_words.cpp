#include "ui/rehearsal/rehearsal_words.h"

#include "ui/words/counted.h"
#include "ui/words/fact_words.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Rehearsal", text); }

bool isDeed(const Fact& fact) {
    return !std::holds_alternative<Reading>(fact.what) && !std::holds_alternative<AlarmSeen>(fact.what) &&
           !std::holds_alternative<ClockStep>(fact.what) && !std::holds_alternative<Set>(fact.what);
}

QString list(const QStringList& rows) {
    return QStringLiteral("<ul><li>") + rows.join(QStringLiteral("</li><li>")) + QStringLiteral("</li></ul>");
}

QStringList scoreRows(const LessonScore& score, Units units) {
    QStringList rows{
        counted(score.draws, tr(QT_TRANSLATE_NOOP("Rehearsal", "1 draw")),
                QCoreApplication::translate("Rehearsal", "%n draws", nullptr, score.draws)),
        tr(QT_TRANSLATE_NOOP("Rehearsal", "missed, the pan far over its mark: %1")).arg(score.missed),
        tr(QT_TRANSLATE_NOOP("Rehearsal", "late by more than a minute: %1")).arg(score.late),
        tr(QT_TRANSLATE_NOOP("Rehearsal", "too early, false: %1")).arg(score.tooEarly),
        tr(QT_TRANSLATE_NOOP("Rehearsal", "alarms that nobody saw for two minutes: %1")).arg(score.alarmsMissed)};
    if (score.meanDensity && score.furthest)
        rows << tr(QT_TRANSLATE_NOOP("Rehearsal", "density: %1 on average, the worst draw %2 off"))
                    .arg(figure(*score.meanDensity).text(),
                         QLocale{}.toString(*score.furthest, 'f', 1) + QChar{0x00a0} + symbolOf(Unit::brix));
    if (score.woodALitre) {
        const Figure wood = figure(Mass::kilogram(100 * *score.woodALitre), units);
        rows << tr(QT_TRANSLATE_NOOP("Rehearsal", "wood: %1 for each %2 of water boiled off"))
                    .arg(wood.text(), figure(Volume::litre(100), units).text());
    }
    return rows;
}

} // namespace

QString troubleWords(Trouble trouble) {
    switch (trouble) {
    case Trouble::probeOut:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "the pan probe went out"));
    case Trouble::feedShut:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "the feed was shut: a bucket of sap (S) frees the float"));
    case Trouble::forgottenLoads:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "the crew forgot loads"));
    case Trouble::foam:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "the probe stood in foam"));
    case Trouble::frontPassing:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "a front passed: the mark moved with the weather"));
    case Trouble::nobodyDraws:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "the crew no longer drew: the whole pan turns to syrup"));
    }
    return {};
}

QString troubleKeyWord(Trouble trouble) {
    switch (trouble) {
    case Trouble::probeOut:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "Probe out"));
    case Trouble::feedShut:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "Feed shut"));
    case Trouble::forgottenLoads:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "Load forgotten"));
    case Trouble::foam:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "Foam"));
    case Trouble::frontPassing:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "Front passing"));
    case Trouble::nobodyDraws:
        return tr(QT_TRANSLATE_NOOP("Rehearsal", "Whole pan to syrup"));
    }
    return {};
}

QStringList lastDone(const Facts& facts, int most, Units units, const WallClock& clock) {
    QStringList done;
    Fact scratch{};
    for (std::size_t i = facts.size(); i-- > 0 && done.size() < most;)
        if (const Fact& fact = facts.fact(i, scratch); isDeed(fact))
            done << factWords(fact, units) + QStringLiteral(", ") + clock.hourAndMinute(fact.at);
    return done;
}

namespace {

// For the teacher's eyes: what each does to those who boil, so that it is chosen and not guessed at.
QString teachersWords() {
    return QStringLiteral("<h2>") + tr(QT_TRANSLATE_NOOP("Rehearsal", "You teach: throw something in")) +
           QStringLiteral("</h2><p>") +
           tr(QT_TRANSLATE_NOOP("Rehearsal", "The others look away while you press. It begins at once; go back to the "
                                             "board and say nothing. The first one makes a lesson of the evening: an "
                                             "hour and a half, a score at the end, and the same again has the same "
                                             "go wrong at the same minute.")) +
           QStringLiteral("</p><p>") +
           tr(QT_TRANSLATE_NOOP("Rehearsal", "The pan turns whole when nobody draws: let the made-up crew work for "
                                             "that, or keep your own people from the draw.")) +
           QStringLiteral("</p>");
}

} // namespace

QString rehearsalWords(const RehearsalTold& told, Units units) {
    if (told.teaching)
        return teachersWords();
    const bool lesson = !told.troubles.empty();
    QString words = QStringLiteral("<h2>") +
                    (told.over ? tr(QT_TRANSLATE_NOOP("Rehearsal", "The rehearsal is over."))
                     : lesson  ? tr(QT_TRANSLATE_NOOP("Rehearsal", "A lesson: things go wrong"))
                               : tr(QT_TRANSLATE_NOOP("Rehearsal", "A made-up boil"))) +
                    QStringLiteral("</h2><p>") +
                    tr(QT_TRANSLATE_NOOP("Rehearsal", "Pans, fire, weather, crew and all the nights before are made "
                                                      "up (evening %1). Nothing of it is kept."))
                        .arg(told.seed) +
                    QStringLiteral("</p><p>") +
                    (told.crewAway ? tr(QT_TRANSLATE_NOOP("Rehearsal", "You are the crew: fire, draw, check, stop."))
                                   : tr(QT_TRANSLATE_NOOP("Rehearsal", "The made-up crew fires and draws. What you do "
                                                                       "is done in the pan as well."))) +
                    QStringLiteral("</p>");
    if (told.over && lesson) {
        QStringList met;
        for (const Trouble trouble : told.troubles)
            met << troubleWords(trouble);
        words += QStringLiteral("<p>") + tr(QT_TRANSLATE_NOOP("Rehearsal", "What went wrong:")) + list(met) +
                 QStringLiteral("</p>");
    } else if (lesson) {
        words +=
            QStringLiteral("<p>") +
            tr(QT_TRANSLATE_NOOP("Rehearsal", "It lasts an hour and a half. What goes wrong is said at the end.")) +
            QStringLiteral("</p>");
    }
    words += QStringLiteral("<p>") + tr(QT_TRANSLATE_NOOP("Rehearsal", "Since you came:")) +
             list(scoreRows(told.score, units)) + QStringLiteral("</p>");
    if (!told.over && !told.done.isEmpty())
        words += QStringLiteral("<p>") + tr(QT_TRANSLATE_NOOP("Rehearsal", "Done last:")) + list(told.done) +
                 QStringLiteral("</p>");
    return words;
}

} // namespace panside
