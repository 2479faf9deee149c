#include "tests/ui/pictures/said_by.h"

#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainterPath>
#include <QRegularExpression>
#include <QWidget>
#include <cmath>

namespace panside {
namespace {

constexpr int pointsOfACurve = 24; // fewer are a frame, a mark, a rounded corner
constexpr double movedBy = 4;      // percent: another version of the letters' shaping is no other screen

class Listener : public QPaintEngine {
public:
    explicit Listener(const QSize& size) : QPaintEngine{AllFeatures}, size_{size} {}
    std::vector<Painted> painted;
    std::vector<Word> words;

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    Type type() const override { return User; }
    void updateState(const QPaintEngineState& now) override {
        if (now.state() & DirtyTransform)
            transform_ = now.transform();
        if (now.state() & DirtyPen)
            pen_ = now.pen();
        if (now.state() & DirtyBrush)
            brush_ = now.brush();
    }
    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        const QString words = item.text().simplified();
        if (words.isEmpty())
            return;
        const double capital = QFontMetricsF{item.font()}.capHeight();
        this->words.push_back(
            {words, transform_.mapRect(QRectF{at.x(), at.y() - capital, item.width(), capital}), capital});
        const QRectF place = percent({transform_.map(at), QSizeF{0, 0}});
        auto* last = painted.empty() ? nullptr : &painted.back();
        // A line may come in pieces, by its script or by how it is broken.
        if (last && !last->text.isEmpty() && last->color == pen_.color().name() &&
            std::abs(last->place.y() - place.y()) < 0.1 && place.x() > last->place.x())
            last->text += u' ' + words;
        else
            painted.push_back({pen_.color().name(), words, place});
    }
    void drawPath(const QPainterPath& path) override {
        if (path.elementCount() >= pointsOfACurve)
            curve(path.boundingRect());
    }
    void drawPolygon(const QPointF* points, int count, PolygonDrawMode) override {
        if (count < pointsOfACurve)
            return;
        QPolygonF polygon;
        for (int i = 0; i < count; ++i)
            polygon << points[i];
        curve(polygon.boundingRect());
    }
    void drawLines(const QLineF* lines, int count) override {
        if (count < pointsOfACurve)
            return;
        QPolygonF ends;
        for (int i = 0; i < count; ++i)
            ends << lines[i].p1() << lines[i].p2();
        curve(ends.boundingRect());
    }
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}

private:
    QRectF percent(const QRectF& place) const {
        const auto round = [](double value) { return std::round(value * 10) / 10; };
        return {round(place.x() * 100 / size_.width()), round(place.y() * 100 / size_.height()),
                round(place.width() * 100 / size_.width()), round(place.height() * 100 / size_.height())};
    }
    void curve(const QRectF& box) {
        const QColor color = pen_.style() == Qt::NoPen ? brush_.color() : pen_.color();
        painted.push_back({color.name(), {}, percent(transform_.mapRect(box))});
    }
    QSize size_;
    QTransform transform_;
    QPen pen_;
    QBrush brush_;
};

class Paper : public QPaintDevice {
public:
    explicit Paper(const QWidget& like) : like_{like}, listener{like.size()} {}
    QPaintEngine* paintEngine() const override { return &listener; }

protected:
    int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
        case PdmWidth:
            return like_.width();
        case PdmHeight:
            return like_.height();
        case PdmDepth:
            return 32;
        case PdmNumColors:
            return 0;
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return static_cast<int>(devicePixelRatioFScale());
        case PdmDpiX:
        case PdmPhysicalDpiX:
            return like_.logicalDpiX();
        case PdmDpiY:
        case PdmPhysicalDpiY:
            return like_.logicalDpiY();
        default:
            return 0;
        }
    }

private:
    const QWidget& like_;

public:
    mutable Listener listener;
};

QString withoutBlanks(const std::vector<Painted>& painted) {
    static const QRegularExpression blanks{QStringLiteral("\\s+")};
    QString all;
    for (const Painted& one : painted)
        all += one.text;
    return all.remove(blanks);
}

QString wordsOf(const Painted& one) {
    return one.text.isEmpty() ? QStringLiteral("a curve in ") + one.color : u'"' + one.text + u'"';
}

} // namespace

std::vector<Painted> saidBy(QWidget& widget) {
    Paper paper{widget};
    widget.render(&paper);
    return std::move(paper.listener.painted);
}

std::vector<Word> wordsOn(QWidget& widget) {
    Paper paper{widget};
    widget.render(&paper);
    return std::move(paper.listener.words);
}

QStringList linesOf(const std::vector<Painted>& painted) {
    QStringList lines;
    for (const Painted& one : painted)
        lines << QStringLiteral("%1 %2 %3 %4 %5 %6")
                     .arg(one.color)
                     .arg(one.place.x())
                     .arg(one.place.y())
                     .arg(one.place.width())
                     .arg(one.place.height())
                     .arg(one.text)
                     .trimmed();
    return lines;
}

std::vector<Painted> paintedIn(const QStringList& lines) {
    std::vector<Painted> painted;
    for (const QString& line : lines) {
        const auto part = [&](int i) { return line.section(u' ', i, i); };
        painted.push_back({part(0),
                           line.section(u' ', 5),
                           {part(1).toDouble(), part(2).toDouble(), part(3).toDouble(), part(4).toDouble()}});
    }
    return painted;
}

QString differenceOf(const std::vector<Painted>& kept, const std::vector<Painted>& now) {
    const QString before = withoutBlanks(kept), after = withoutBlanks(now);
    if (before != after) {
        const auto from =
            std::mismatch(before.begin(), before.end(), after.begin(), after.end()).first - before.begin();
        return QStringLiteral("it said ...%1..., it says ...%2...")
            .arg(before.mid(std::max<qsizetype>(0, from - 20), 60), after.mid(std::max<qsizetype>(0, from - 20), 60));
    }
    if (kept.size() != now.size())
        return {}; // the same words, broken elsewhere: their places cannot be held against each other
    for (std::size_t i = 0; i < kept.size(); ++i) {
        if (kept[i].color != now[i].color)
            return QStringLiteral("%1 was %2, it is %3").arg(wordsOf(kept[i]), kept[i].color, now[i].color);
        const QPointF from = kept[i].place.topLeft() - now[i].place.topLeft(),
                      to = kept[i].place.bottomRight() - now[i].place.bottomRight();
        for (const double by : {from.x(), from.y(), to.x(), to.y()})
            if (std::abs(by) > movedBy)
                return QStringLiteral("%1 moved by %2 percent").arg(wordsOf(kept[i])).arg(by);
    }
    return {};
}

} // namespace panside
