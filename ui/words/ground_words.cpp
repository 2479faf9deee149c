#include "ui/words/ground_words.h"

#include "ui/words/alarm_words.h"
#include "ui/words/reading_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Why", text); }

// The only pressure that an alarm goes by is the press gauge's.
QString figureWords(const GroundFigure& seen, Units units) {
    return std::visit(Overloaded{[](std::monostate) { return QString{}; }, [](Duration span) { return spanText(span); },
                                 [](const std::string& name) { return QString::fromStdString(name); },
                                 [&](Pressure pressure) { return gaugeFigure(pressure, units).text(); },
                                 [&](const auto& other) { return figure(other, units).text(); }},
                      seen);
}

QString shownName(Shown shown) {
    switch (shown) {
    case Shown::pressureKPa:
    case Shown::waterBoilsC:
        return tr("boiling water");
    case Shown::syrupPanC:
    case Shown::riseC:
        return tr("degrees over boiling water");
    case Shown::targetRiseC:
    case Shown::targetC:
        return tr("the target");
    case Shown::brix:
        return tr("sugar at the draw-off");
    case Shown::drawEta:
        return tr("time to the draw");
    case Shown::closeEta:
        return tr("time to shut the draw");
    case Shown::fireDueS:
        return tr("the next firing");
    case Shown::keepBackL:
        return tr("sap to keep back");
    case Shown::lastLoadS:
        return tr("the last load");
    case Shown::evaporationLph:
        return tr("what boils off");
    case Shown::sapLeftS:
        return tr("how long the sap lasts");
    case Shown::efficiency:
        return tr("share of the wood's heat");
    }
    return {};
}

} // namespace

QString groundWords(const Ground& ground, Units units) {
    return said(groundSentence(ground.kind).text,
                {figureWords(ground.seen, units), figureWords(ground.limit, units),
                 ground.series ? readingName(*ground.series) : QString{}},
                "GroundWords");
}

QString whyPage(const Picture& picture, Units units) {
    QString words = "<h2>" + tr("Why?") + "</h2><table cellpadding=\"3\">";
    QString before;
    for (const ToldGround& told : groundsOf(picture)) {
        const QString about = std::visit(Overloaded{[](Alarm alarm) { return alarmName(alarm); },
                                                    [](Shown shown) { return shownName(shown); },
                                                    [](Series series) { return readingName(series); }},
                                         told.of);
        const QString why = std::visit(Overloaded{[&](const Ground& ground) { return groundWords(ground, units); },
                                                  [](const Why& reason) { return reasonWords(reason); }},
                                       told.why);
        words += "<tr><td><b>" + (about == before ? QString{} : about.toHtmlEscaped()) + "</b></td><td>" +
                 why.toHtmlEscaped() + "</td></tr>";
        before = about;
    }
    return words + "</table>";
}

} // namespace panside
