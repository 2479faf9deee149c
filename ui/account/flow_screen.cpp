#include "ui/account/flow_screen.h"

#include "ui/look/roles.h"

#include <QLabel>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {
namespace {

// Names stand beside their bands, a line each at least, pushed apart where bands are thin.
std::vector<double> linesOf(const std::vector<FlowBand>& bands, double top, double scale, double line, double bottom) {
    std::vector<double> at;
    double next = top;
    for (const FlowBand& band : bands) {
        const double middle = top + (band.from + band.to) / 2 * scale - line / 2;
        at.push_back(std::max(next, middle));
        next = at.back() + line;
    }
    double most = bottom;
    for (std::size_t i = at.size(); i-- > 0;) {
        at[i] = std::min(at[i], most - line);
        most = at[i];
    }
    return at;
}

QPainterPath bandBetween(QPointF a, QPointF b, double aHigh, double bHigh) {
    QPainterPath path{a};
    const double middle = (a.x() + b.x()) / 2;
    path.cubicTo({middle, a.y()}, {middle, b.y()}, b);
    path.lineTo(b.x(), b.y() + bHigh);
    path.cubicTo({middle, b.y() + bHigh}, {middle, a.y() + aHigh}, {a.x(), a.y() + aHigh});
    path.closeSubpath();
    return path;
}

} // namespace

void FlowPicture::display(const FlowView& view, const Dress& dress) {
    view_ = view;
    dress_ = dress;
    giveRole(*this, QAccessible::Chart);
    QStringList bands;
    for (const auto* side : {&view.in, &view.out})
        for (const FlowBand& band : *side)
            bands << band.name + u' ' + band.amount;
    setAccessibleName(bands.join(QStringLiteral(", ")));
    update();
}

void FlowPicture::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Inks& inks = dress_.inks();
    painter.fillRect(rect(), inks.panel);
    if (view_.empty)
        return;
    const double gap = dress_.px(4), line = dress_.px(6.4), words = width() * 0.24;
    const double top = gap, high = height() - 2 * gap;
    // Bands at the ends stand apart by as much as there is room for; all are of one scale.
    const auto most = static_cast<double>(std::max(view_.in.size(), view_.out.size()));
    const double scale = high * 0.72, apart = most > 1 ? high * 0.28 / (most - 1) : 0;
    const double trunkTop = top + (high - scale) / 2, leftTrunk = width() * 0.42, rightTrunk = width() * 0.58;
    // By night an edge and a dim ground: so large a bright area would spoil eyes used to the dark.
    const bool dark = dress_.look == Look::night;
    const QPen edgePen = dark ? QPen{inks.trace, 1.5} : QPen{Qt::NoPen};
    const auto ink = [&](const FlowBand& band) -> QBrush {
        if (band.open)
            return {inks.band, Qt::BDiagPattern};
        QColor colour = band.lost ? inks.band : inks.trace;
        colour.setAlphaF(dark ? 0.2F : band.lost ? 0.55F : 0.78F);
        return colour;
    };
    painter.setPen(edgePen);
    QColor trunk = inks.trace;
    trunk.setAlphaF(dark ? 0.25F : 0.9F);
    painter.fillRect(QRectF{leftTrunk, trunkTop, rightTrunk - leftTrunk, scale}, trunk);
    const auto side = [&](const std::vector<FlowBand>& bands, bool isLeft) {
        const double edge = isLeft ? words : width() - words;
        const double here = isLeft ? leftTrunk : rightTrunk;
        const double spread = scale + apart * static_cast<double>(bands.size() - 1);
        double at = top + (high - spread) / 2;
        std::vector<FlowBand> placed;
        for (const FlowBand& band : bands) {
            const double thick = (band.to - band.from) * scale;
            painter.setPen(band.open ? QPen{inks.line, 1, Qt::DashLine} : edgePen);
            painter.setBrush(ink(band));
            painter.drawPath(bandBetween({here, trunkTop + band.from * scale}, {edge, at}, thick, thick));
            placed.push_back({band.name, band.amount, (at - top) / scale, (at - top + thick) / scale});
            at += thick + apart;
        }
        const auto lines = linesOf(placed, top, scale, line, height() - 1.0);
        painter.setPen(inks.word);
        for (std::size_t i = 0; i < placed.size(); ++i) {
            const QRectF place{isLeft ? dress_.px(1) * 1.0 : edge + dress_.px(2), lines[i], words - dress_.px(3), line};
            drawFitted(painter, place.toRect(), (isLeft ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
                       dress_.letters(mm::words), placed[i].name + QStringLiteral("  ") + placed[i].amount);
        }
        painter.setPen(Qt::NoPen);
    };
    side(view_.in, true);
    side(view_.out, false);
}

FlowScreen::FlowScreen(QWidget* parent)
    : QWidget{parent}, head_{new QLabel{this}}, notes_{new QLabel{this}}, picture_{new FlowPicture{this}},
      keys_{new ActionKeys{this}} {
    setObjectName(QStringLiteral("sugar"));
    head_->setObjectName(QStringLiteral("sugarHead"));
    notes_->setObjectName(QStringLiteral("sugarNotes"));
    head_->setWordWrap(true);
    notes_->setWordWrap(true);
    auto* all = new QVBoxLayout{this};
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(head_);
    all->addWidget(notes_);
    all->addWidget(picture_, 1);
    all->addWidget(keys_);
    keys_->answerFor(*this);
    connect(keys_, &ActionKeys::pressed, this, &FlowScreen::left);
    setFocusPolicy(Qt::StrongFocus);
}

void FlowScreen::display(const FlowView& view, const Dress& dress) {
    keys_->wear(dress);
    keys_->display({wayToBoard()});
    head_->setFont(dress.letters(mm::act));
    notes_->setFont(dress.letters(mm::words));
    head_->setText(view.empty ? tr("There is no sugar in the book yet.") : view.whole);
    notes_->setText(view.doubt);
    picture_->display(view, dress);
}

} // namespace panside
