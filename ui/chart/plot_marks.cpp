// The marks of what was said and done: each kind has a shape of its own, told apart without colour, named by pointing
// and by the legend.
#include "core/boil/loads.h"
#include "ui/chart/plot.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("RiseChart", text); }

enum class Mark { load, lit, check, water, sap, swapped, defoamer, note, crew, shutdown };
constexpr int markCount = 10;

std::optional<Mark> markOf(const Fact& fact) {
    return std::visit(
        Overloaded{[](const Fired& fired) { return deniesLoad(fired) ? std::nullopt : std::optional{Mark::load}; },
                   [](const Lit&) { return std::optional{Mark::lit}; },
                   [](const DensityCheck&) { return std::optional{Mark::check}; },
                   [](const WaterCheck&) { return std::optional{Mark::water}; },
                   [](const SapIn&) { return std::optional{Mark::sap}; },
                   [](const PanSwapped&) { return std::optional{Mark::swapped}; },
                   [](const Defoamer&) { return std::optional{Mark::defoamer}; },
                   [](const Note&) { return std::optional{Mark::note}; },
                   [](const Crew&) { return std::optional{Mark::crew}; },
                   [](const Shutdown&) { return std::optional{Mark::shutdown}; },
                   [](const auto&) { return std::optional<Mark>{}; }},
        fact.what);
}

QString nameOf(Mark mark) {
    switch (mark) {
    case Mark::load:
        return tr("load");
    case Mark::lit:
        return tr("lit");
    case Mark::check:
        return tr("check");
    case Mark::water:
        return tr("water");
    case Mark::sap:
        return tr("sap in");
    case Mark::swapped:
        return tr("pan swapped");
    case Mark::defoamer:
        return tr("defoamer");
    case Mark::note:
        return tr("note");
    case Mark::crew:
        return tr("crew");
    case Mark::shutdown:
        return tr("stopped firing");
    }
    return {};
}

// `at`: its middle. `whole`: a load that somebody pressed.
void shape(QPainter& painter, const Dress& dress, Mark mark, QPointF at, double size, bool whole = true) {
    const Inks& inks = dress.inks();
    painter.setPen(QPen{inks.word, std::max(1.0, dress.px(0.35) * 1.0)});
    painter.setBrush(mark == Mark::lit ? QBrush{inks.word} : mark == Mark::check ? QBrush{inks.panel} : Qt::NoBrush);
    const double x = at.x(), y = at.y();
    switch (mark) {
    case Mark::load: {
        const double high = dress.px(whole ? 4 : 2) / 2.0;
        painter.drawLine(QPointF{x, y - high}, QPointF{x, y + high});
        break;
    }
    case Mark::lit:
        painter.drawPolygon(QPolygonF{{x - size, y + 1.6 * size}, {x + size, y + 1.6 * size}, {x, y - 1.6 * size}});
        break;
    case Mark::check:
        size *= 1.2;
        painter.drawPolygon(QPolygonF{{x, y - size}, {x + size, y}, {x, y + size}, {x - size, y}});
        break;
    case Mark::water:
    case Mark::crew:
        painter.drawEllipse(at, size, size);
        break;
    case Mark::sap:
        painter.drawPolygon(QPolygonF{{x - size, y - size}, {x + size, y - size}, {x, y + size}});
        break;
    case Mark::swapped:
        painter.drawLine(at + QPointF{-size, -size}, at + QPointF{size, size});
        painter.drawLine(at + QPointF{-size, size}, at + QPointF{size, -size});
        break;
    case Mark::defoamer:
        painter.drawEllipse(at, size / 2, size / 2);
        break;
    case Mark::note:
        painter.drawRect(QRectF{x - size, y - size / 2, 2 * size, size});
        break;
    case Mark::shutdown: {
        const double high = dress.px(4) / 2.0;
        painter.drawLine(QPointF{x - size, y - high}, QPointF{x + size, y - high});
        painter.drawLine(QPointF{x, y - high}, QPointF{x, y + high});
        break;
    }
    }
}

double sizeOf(const Dress& dress) { return dress.px(1.5); }

// Where it stands: on the curve, on the floor, or above all.
std::optional<QPointF> placeOf(const ChartScene& scene, const Plot& plot, const Fact& fact, Mark mark) {
    const Dress& dress = scene.dress;
    const double x = plot.time.x(fact.at), floor = plot.area.bottom() + 1.0, top = plot.area.top() + dress.px(2.2);
    if (x < plot.area.left() || x > plot.area.right())
        return std::nullopt;
    switch (mark) {
    case Mark::load: {
        const bool pressed = !std::get<Fired>(fact.what).inferred;
        return QPointF{x, floor - dress.px(pressed ? 4 : 2) / 2.0};
    }
    case Mark::lit:
        return QPointF{x, floor - 1.6 * sizeOf(dress)};
    case Mark::shutdown:
        return QPointF{x, floor - dress.px(4) / 2.0};
    case Mark::defoamer:
        return QPointF{x, floor - dress.px(1.5)};
    case Mark::water:
        return QPointF{x, plot.y(0)};
    case Mark::check:
        if (scene.trace.rise().size() == 0)
            return std::nullopt;
        return QPointF{x, std::clamp(plot.y(scene.trace.rise().nearest(fact.at).value), top, floor)};
    default:
        return QPointF{x, top};
    }
}

} // namespace

void drawMarks(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    for (const Fact& fact : scene.trace.events())
        if (const auto mark = markOf(fact))
            if (const auto at = placeOf(scene, plot, fact, *mark)) {
                const double wide = scene.dress.px(3); // as a mark may reach to either side
                if (at->x() + wide < plot.part.left() || at->x() - wide > plot.part.right())
                    continue;
                const auto* fired = std::get_if<Fired>(&fact.what);
                shape(painter, scene.dress, *mark, *at, sizeOf(scene.dress), !fired || !fired->inferred);
            }
}

// Of the kinds that are in sight, as many as there is room for, from the right.
int drawLegend(QPainter& painter, const ChartScene& scene, const TimeScale& time, const QRect& place) {
    std::array<bool, markCount> seen{};
    for (const Fact& fact : scene.trace.events())
        if (const auto mark = markOf(fact); mark && fact.at >= time.begin() && fact.at <= time.end())
            seen[static_cast<std::size_t>(*mark)] = true;
    const Dress& dress = scene.dress;
    const QFont font = dress.letters(mm::smallWords);
    const QFontMetrics metrics{font};
    painter.save();
    painter.setFont(font);
    painter.setRenderHint(QPainter::Antialiasing);
    int right = place.right();
    for (int i = 0; i < markCount; ++i) {
        if (!seen[static_cast<std::size_t>(i)])
            continue;
        const auto mark = static_cast<Mark>(i);
        const QString name = nameOf(mark);
        const int wide = metrics.horizontalAdvance(name), all = wide + dress.px(6.5);
        if (right - all < place.left())
            break;
        painter.setPen(dress.inks().quiet);
        painter.drawText(QRect{right - wide, place.top(), wide + 1, place.height()}, Qt::AlignRight | Qt::AlignVCenter,
                         name);
        shape(painter, dress, mark, QPointF{right - wide - dress.px(2.5) * 1.0, place.center().y() * 1.0},
              dress.px(1.2));
        right -= all;
    }
    painter.restore();
    return right;
}

} // namespace panside
