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
        counted(score.draws, tr("1 draw"), QCoreApplication::translate("Rehearsal", "%n draws", nullptr, score.draws)),
        tr("missed, the pan far over its mark: %1").arg(score.missed),
        tr("late by more than a minute: %1").arg(score.late), tr("too early, false: %1").arg(score.tooEarly),
        tr("alarms that nobody saw for two minutes: %1").arg(score.alarmsMissed)};
    if (score.meanDensity && score.furthest)
        rows << tr("density: %1 on average, the worst draw %2 off")
                    .arg(figure(*score.meanDensity).text(),
                         QLocale{}.toString(*score.furthest, 'f', 1) + QChar{0x00a0} + symbolOf(Unit::brix));
    if (score.woodALitre) {
        const Figure wood = figure(Mass::kilogram(100 * *score.woodALitre), units);
        rows << tr("wood: %1 for each %2 of water boiled off")
                    .arg(wood.text(), figure(Volume::litre(100), units).text());
    }
    return rows;
}

} // namespace

QString troubleWords(Trouble trouble) {
    switch (trouble) {
    case Trouble::probeOut:
        return tr("the pan probe went out");
    case Trouble::feedShut:
        return tr("the feed was shut: a bucket of sap (S) frees the float");
    case Trouble::forgottenLoads:
        return tr("the crew forgot loads");
    case Trouble::foam:
        return tr("the probe stood in foam");
    case Trouble::frontPassing:
        return tr("a front passed: the mark moved with the weather");
    case Trouble::nobodyDraws:
        return tr("the crew no longer drew: the whole pan turns to syrup");
    }
    return {};
}

QString troubleKeyWord(Trouble trouble) {
    switch (trouble) {
    case Trouble::probeOut:
        return tr("Probe out");
    case Trouble::feedShut:
        return tr("Feed shut");
    case Trouble::forgottenLoads:
        return tr("Load forgotten");
    case Trouble::foam:
        return tr("Foam");
    case Trouble::frontPassing:
        return tr("Front passing");
    case Trouble::nobodyDraws:
        return tr("Whole pan to syrup");
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
    return QStringLiteral("<h2>") + tr("You teach: throw something in") + QStringLiteral("</h2><p>") +
           tr("The others look away while you press. It begins at once; go back to the board and say nothing. The "
              "first one makes a lesson of the evening: an hour and a half, a score at the end, and the same again has "
              "the same go wrong at the same minute.") +
           QStringLiteral("</p><p>") +
           tr("The pan turns whole when nobody draws: let the made-up crew work for that, or keep your own people from "
              "the draw.") +
           QStringLiteral("</p>");
}

} // namespace

QString rehearsalWords(const RehearsalTold& told, Units units) {
    if (told.teaching)
        return teachersWords();
    const bool lesson = !told.troubles.empty();
    QString words =
        QStringLiteral("<h2>") +
        (told.over ? tr("The rehearsal is over.")
         : lesson  ? tr("A lesson: things go wrong")
                   : tr("A made-up boil")) +
        QStringLiteral("</h2><p>") +
        tr("Pans, fire, weather, crew and all the nights before are made up (evening %1). Nothing of it is kept.")
            .arg(told.seed) +
        QStringLiteral("</p><p>") +
        (told.crewAway ? tr("You are the crew: fire, draw, check, stop.")
                       : tr("The made-up crew fires and draws. What you do is done in the pan as well.")) +
        QStringLiteral("</p>");
    if (told.over && lesson) {
        QStringList met;
        for (const Trouble trouble : told.troubles)
            met << troubleWords(trouble);
        words += QStringLiteral("<p>") + tr("What went wrong:") + list(met) + QStringLiteral("</p>");
    } else if (lesson) {
        words += QStringLiteral("<p>") + tr("It lasts an hour and a half. What goes wrong is said at the end.") +
                 QStringLiteral("</p>");
    }
    words +=
        QStringLiteral("<p>") + tr("Since you came:") + list(scoreRows(told.score, units)) + QStringLiteral("</p>");
    if (!told.over && !told.done.isEmpty())
        words += QStringLiteral("<p>") + tr("Done last:") + list(told.done) + QStringLiteral("</p>");
    return words;
}

} // namespace panside
