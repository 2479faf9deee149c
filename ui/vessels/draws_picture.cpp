#include "ui/vessels/draws_picture.h"

#include "ui/look/lettering.h"
#include "ui/look/roles.h"
#include "ui/look/wall_clock.h"
#include "ui/vessels/vessels_view.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

constexpr std::size_t drawsShown = 12;
constexpr double lowest = 62.5, highest = 70.5; // brix: what lies outside stands at the edge

} // namespace

DrawsView drawsView(const HouseLedger* house, std::span<const Set> settings, Units units) {
    DrawsView view;
    if (!house)
        return view;
    const Ledger& ledger = house->ledger();
    const DensityLimits limits = limitsOf(ledger, settings);
    view.least = limits.least.degrees();
    view.most = limits.most.degrees();
    const auto& draws = ledger.tables().draws;
    const std::size_t first = draws.size() > drawsShown ? draws.size() - drawsShown : 0;
    for (std::size_t i = first; i < draws.size(); ++i) {
        const DrawRow& row = draws[i];
        DrawMark mark;
        mark.when = QLocale{}.toString(WallClock{}.at(row.at), QStringLiteral("d MMM HH:mm"));
        mark.into = utf8(row.to);
        if (row.measured) {
            mark.amount = figure(row.liquid.volume(), units).text();
            mark.brix = row.liquid.brix().degrees();
            mark.sd = row.liquid.error().degrees();
        }
        for (const CheckRow& check : ledger.tables().checks)
            if (check.draw == i && check.sugar)
                mark.checks.push_back(check.sugar->degrees());
        view.draws.push_back(std::move(mark));
    }
    return view;
}

DrawsPicture::DrawsPicture(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("drawsPicture"));
    giveRole(*this, QAccessible::Chart);
    setFocusPolicy(Qt::StrongFocus);
}

void DrawsPicture::wear(const Dress& dress) {
    dress_ = dress;
    update();
}

void DrawsPicture::display(const DrawsView& view) {
    if (view == view_)
        return;
    view_ = view;
    QStringList words;
    for (const DrawMark& draw : view.draws)
        words << namedAs(draw.when, draw.brix ? QLocale{}.toString(*draw.brix, 'f', 1) : tr("not measured"));
    setAccessibleName(tr("The draws and their densities"));
    setAccessibleDescription(words.join(QStringLiteral(", ")));
    update();
}

double DrawsPicture::heightOf(double brix, const QRectF& plot) const {
    return plot.bottom() - (std::clamp(brix, lowest, highest) - lowest) / (highest - lowest) * plot.height();
}

void DrawsPicture::paintLimits(QPainter& painter, const QRectF& plot) const {
    const Inks& inks = dress_.inks();
    painter.setFont(dress_.letters(mm::smallWords));
    for (const double brix : {view_.least, view_.most}) {
        const double y = heightOf(brix, plot);
        painter.setPen(QPen{inks.line, 1, Qt::DashLine});
        painter.drawLine(QPointF{plot.left(), y}, QPointF{plot.right(), y});
        painter.setPen(inks.quiet);
        painter.drawText(QRectF{0, y - dress_.px(3), plot.left() - dress_.px(1), dress_.px(6) * 1.0},
                         Qt::AlignRight | Qt::AlignVCenter, QLocale{}.toString(brix, 'f', 1));
    }
}

void DrawsPicture::paintDraw(QPainter& painter, const DrawMark& draw, double x, double width,
                             const QRectF& plot) const {
    const Inks& inks = dress_.inks();
    const double dot = dress_.px(1.2);
    if (draw.brix) {
        painter.setPen(QPen{inks.trace, static_cast<double>(dress_.px(0.7))});
        painter.drawLine(QPointF{x, heightOf(*draw.brix - draw.sd, plot)},
                         QPointF{x, heightOf(*draw.brix + draw.sd, plot)});
        painter.setBrush(inks.trace);
        painter.drawEllipse(QPointF{x, heightOf(*draw.brix, plot)}, dot, dot);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen{inks.word, static_cast<double>(dress_.px(0.5))});
    for (const double check : draw.checks) { // a diamond beside it
        const QPointF at{x + 3 * dot, heightOf(check, plot)};
        const QPointF corners[] = {at + QPointF{0, -dot}, at + QPointF{dot, 0}, at + QPointF{0, dot},
                                   at + QPointF{-dot, 0}};
        painter.drawPolygon(corners, 4);
    }
    painter.setFont(dress_.letters(mm::smallWords));
    const double line = dress_.px(4);
    const QString brix =
        draw.brix ? QLocale{}.toString(*draw.brix, 'f', 1) + QStringLiteral(" ± ") + QLocale{}.toString(draw.sd, 'f', 1)
                  : tr("not measured");
    const QStringList words{brix, draw.when, draw.into.isEmpty() ? tr("where to?") : draw.into, draw.amount};
    for (int i = 0; i < words.size(); ++i) {
        painter.setPen(i == 0 ? inks.word : inks.quiet);
        drawFitted(painter, QRectF{x - width / 2, plot.bottom() + line * (i + 0.3), width, line}.toRect(),
                   Qt::AlignCenter, dress_.letters(mm::smallWords), words[i], 1);
    }
}

void DrawsPicture::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), dress_.inks().panel);
    if (view_.draws.empty()) {
        painter.setPen(dress_.inks().quiet);
        painter.setFont(dress_.letters(mm::words));
        painter.drawText(rect(), Qt::AlignCenter, tr("No draw was entered yet."));
        return;
    }
    const QRectF plot{dress_.px(12) * 1.0, dress_.px(6) * 1.0, width() - dress_.px(14) * 1.0,
                      height() - dress_.px(6 + 18) * 1.0};
    painter.setPen(dress_.inks().quiet);
    painter.setFont(dress_.letters(mm::smallWords));
    painter.drawText(QRectF{plot.left(), 0, plot.width(), dress_.px(5) * 1.0}, Qt::AlignLeft | Qt::AlignVCenter,
                     tr("°Brix of each draw by the pan's reading, with its doubt; diamonds: density checks"));
    paintLimits(painter, plot);
    const double each = plot.width() / static_cast<double>(view_.draws.size());
    for (std::size_t i = 0; i < view_.draws.size(); ++i)
        paintDraw(painter, view_.draws[i], plot.left() + each * (static_cast<double>(i) + 0.5), each, plot);
}

} // namespace panside
