// How much longer we boil, and when we stop firing.
#include "ui/board/card_view.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("LastLoadCard", text); }

bool callsForTheLast(const Picture& picture) {
    return std::ranges::any_of(picture.alarms, [](const AlarmPicture& one) {
        return (one.alarm == Alarm::last_load || one.alarm == Alarm::sap_low) && one.stands();
    });
}

bool wantsFlooding(const Picture& picture) {
    return picture.fuel.tank && std::ranges::any_of(picture.alarms, [](const AlarmPicture& one) {
               return (one.alarm == Alarm::scorch_risk || one.alarm == Alarm::pan_low) && one.stands();
           });
}

// "25 min ago", "il y a 25 min": the number large, the words about it as small as its unit.
std::vector<Piece> ago(Duration span) {
    const QString words = tr("%1 ago");
    const auto place = words.indexOf(QLatin1String("%1"));
    std::vector<Piece> pieces = pastPieces(span);
    if (const QString before = words.left(place).trimmed(); !before.isEmpty())
        pieces.insert(pieces.begin(), {before, true});
    if (const QString after = words.mid(place + 2).trimmed(); !after.isEmpty())
        pieces.push_back({after, true});
    return pieces;
}

QString sapFigure(const Picture& picture) {
    return picture.sapLeft ? tr("sap for %1").arg(spanText(*picture.sapLeft)) : QString{};
}

QString boiledOff(const Picture& picture, Units units) {
    if (!picture.evaporation)
        return {};
    const QString rate = figure(*picture.evaporation, units).text();
    if (!picture.efficiency)
        return tr("boils off %1").arg(rate);
    return tr("boils off %1, %2 % of the wood's heat").arg(rate, QString::number(qRound(*picture.efficiency * 100)));
}

// After the shutdown: until when the arch is hot, and when to look again.
void addAfter(const Picture& picture, std::vector<QString>& lines) {
    const FuelPicture& fuel = picture.fuel;
    if (fuel.watchPans)
        lines.push_back(tr("the arch stays hot %1 more: never a dry pan").arg(spanText(*fuel.watchPans)));
    if (fuel.lastLook)
        lines.push_back(fuel.lastLook->count() > 0
                            ? tr("last look at roof, fire, pans in %1").arg(spanText(*fuel.lastLook))
                            : tr("take the last look now: roof, fire, pans"));
}

QString account(const Picture& picture, Units units) {
    QString line;
    if (picture.sapIn)
        line = tr("sap in %1").arg(figure(*picture.sapIn, units).text());
    if (picture.syrupOut) {
        const QString out = tr("syrup %1").arg(figure(*picture.syrupOut, units).text());
        line = line.isEmpty() ? out : line + QStringLiteral(" · ") + out;
    }
    return line;
}

} // namespace

CardView lastLoadCard(const Picture& picture, Units units) {
    CardView view;
    view.title = tr("TO THE LAST LOAD");
    view.keys = {{Action::sapIn}};
    if (picture.litAt && !picture.shutdownAt)
        view.keys.push_back({Action::stopFiring});
    if (wantsFlooding(picture)) { // how long it would last matters to nobody now
        view.title = tr("SAP TO FLOOD WITH");
        const Figure left = figure(*picture.fuel.tank, units);
        view.chief = {{left.number}, {left.unit, true}};
    } else if (picture.shutdownAt) {
        view.title = tr("FIRING STOPPED, WATCH THE PANS");
        view.chief = ago(Duration{secondsBetween(*picture.shutdownAt, picture.at)});
    } else if (picture.lastLoad) {
        view.chief = waitPieces(picture.lastLoad->p50);
        view.beside = rangeText(*picture.lastLoad);
    } else {
        view.chief = dash;
        view.reason = whyNot(picture, Shown::lastLoadS);
        if (view.reason.isEmpty())
            view.reason = whyNot(picture, Shown::sapLeftS);
    }
    view.figure = sapFigure(picture);
    if (picture.keepBack && !picture.shutdownAt)
        view.lines.push_back(tr("keep %1 back to cover the pans").arg(figure(*picture.keepBack, units).text()));
    addAfter(picture, view.lines);
    view.lines.push_back(boiledOff(picture, units));
    view.lines.push_back(account(picture, units));
    std::erase(view.lines, QString{});
    if (callsForTheLast(picture) && !wantsFlooding(picture))
        view.tone = Tone::medium;
    return view;
}

} // namespace panside
