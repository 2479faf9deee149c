#include "ui/entry/water_sheet.h"

#include "core/physics/air.h"
#include "core/physics/water.h"
#include "ui/look/each_language.h"
#include "ui/page/action_keys.h"

#include <QCoreApplication>
#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("panside::WaterSheet", text); }

// How far the truth may be from each (common practice, no source): weather moves boiling by a kelvin about what the
// height makes of it and as much from one day to the next, and a fair probe reads up to a kelvin wrong.
constexpr double fromHeight = 2.2, sinceLastCheck = 1.2, asBefore = 0.3; // K

QString size(TemperatureDifference by, Units units) {
    return figure(TemperatureDifference::kelvin(std::abs(by.kelvin())), units, 2).text();
}

QString offWords(TemperatureDifference off, Units units) {
    const auto words = off.kelvin() < 0 ? tr("%1 too low") : tr("%1 too high");
    return words.arg(size(off, units));
}

QString figuresOf(const WaterLook& look, const std::optional<ExpectedBoil>& expected, Units units) {
    if (!look.at)
        return {};
    QString words = tr("reads %1 · varies by %2 · watched for %3 of %4 s")
                        .arg(figure(*look.at, units, 2).text(), size(look.scatter, units))
                        .arg(std::lround(look.watched.count()))
                        .arg(std::lround(waterWatch.count()));
    if (expected && !expected->byHeight)
        words += tr(" · today this probe should read %1").arg(figure(expected->at, units, 2).text());
    return words;
}

// What may be kept, though it is doubted: headline and what to do.
WaterSheetView doubtedView(const WaterLook& look, const QString& off) {
    const auto view = [](const QString& headline, const QString& what) {
        return WaterSheetView{headline,
                              what + u' ' + tr("Kept all the same, it counts when a second check says so too."),
                              {},
                              tr("Keep it all the same"),
                              true};
    };
    if (look.verdict == WaterVerdict::notBoiling)
        return view(look.off ? tr("The water does not boil: %1.").arg(off)
                             : tr("The water does not boil: nowhere does it boil so cold."),
                    tr("Bring it to a rolling boil."));
    if (look.verdict == WaterVerdict::tooShallow)
        return view(tr("The probe reads %1: not deep enough, or the water only simmers.").arg(off),
                    tr("Put it as deep as in the pan, at a rolling boil."));
    return view(look.off ? tr("The probe reads %1: this is not plain water, or it touches the metal.").arg(off)
                         : tr("Water does not boil so hot: this is not plain water, or the probe touches the metal."),
                tr("Take clean water, and keep the probe off the bottom."));
}

// Headline, what to do, and the word of the key that keeps it.
WaterSheetView said(const WaterLook& look, Units units) {
    const QString keep = tr("Keep it");
    const QString off = look.off ? offWords(*look.off, units) : QString{};
    switch (look.verdict) {
    case WaterVerdict::nothingRead:
        return {tr("Waiting for the probe."),
                tr("Stand it in plain water at a rolling boil, as deep as in the pan, not touching the metal. Mind the "
                   "steam."),
                {},
                {}};
    case WaterVerdict::watching:
        return {tr("Watching whether the reading is steady."),
                tr("Leave the probe in plain water at a rolling boil, not touching the metal."),
                {},
                {}};
    case WaterVerdict::stillWarming: {
        const auto by = size(look.eachMinute, units);
        return {(look.eachMinute > TemperatureDifference{} ? tr("Still warming by %1 a minute.")
                                                           : tr("Cooling by %1 a minute."))
                    .arg(by),
                tr("Wait for a rolling boil; the check goes on by itself."),
                {},
                {}};
    }
    case WaterVerdict::restless:
        return {tr("The reading is not steady: it varies by %1.").arg(size(look.scatter, units)),
                tr("Put the probe deeper, away from the metal, and keep it still."),
                {},
                {}};
    case WaterVerdict::fits:
        return {tr("The water boils; the probe reads %1.").arg(off),
                tr("Keeping it teaches the console what this probe reads too high."),
                {},
                keep};
    case WaterVerdict::notBoiling:
    case WaterVerdict::tooShallow:
    case WaterVerdict::tooHot:
        return doubtedView(look, off);
    case WaterVerdict::givesBoiling:
        return {tr("Water boils at %1 on this probe.").arg(figure(*look.at, units, 2).text()),
                tr("There is no barometer: keeping it makes this the day's boiling point. It changes with the weather; "
                   "check again every few hours."),
                {},
                keep};
    }
    return {};
}

// Where no barometer tells, the height and the last check do, and a fire: over one the probe stands in sap, which boils
// hotter than water, and would pass for a day of high pressure.
bool isDoubtful(const WaterLook& look, const WaterLikely& likely) {
    const auto isFar = [&](const std::optional<Temperature>& from, double kelvin) {
        return from && std::abs((*look.at - *from).kelvin()) > kelvin;
    };
    return isFar(likely.byHeight, fromHeight) || isFar(likely.byLastCheck, sinceLastCheck) ||
           (likely.fireLit && !(likely.byLastCheck && !isFar(likely.byLastCheck, asBefore)));
}

QString likelyWords(const WaterLikely& likely, Units units) {
    QStringList words;
    if (likely.byHeight)
        words << tr("at your elevation about %1 is likely").arg(figure(*likely.byHeight, units).text());
    if (likely.byLastCheck)
        words << tr("the last check said %1").arg(figure(*likely.byLastCheck, units, 2).text());
    return words.join(QStringLiteral(", "));
}

void doubt(WaterSheetView& view, const WaterLook& look, const WaterLikely& likely, Units units) {
    const QString at = figure(*look.at, units, 2).text(), others = likelyWords(likely, units);
    view.doubted = true;
    view.headline = likely.fireLit ? tr("%1: is this water, or the sap in the pan?").arg(at)
                                   : tr("%1 is not likely for boiling water here.").arg(at);
    view.what = others.isEmpty() ? QString{} : others + QStringLiteral(". ");
    view.what += tr("If you keep it, every rise is counted from %1. Too hot, and syrup is drawn too heavy; too cold, "
                    "and it is too light.")
                     .arg(at);
    view.keep = tr("It is water: keep %1").arg(at);
}

} // namespace

WaterSheetView waterSheetView(const WaterLook& look, const std::optional<ExpectedBoil>& expected,
                              const WaterLikely& likely, Units units) {
    auto view = said(look, units);
    view.figures = figuresOf(look, expected, units);
    if (look.verdict == WaterVerdict::givesBoiling && isDoubtful(look, likely))
        doubt(view, look, likely, units);
    return view;
}

WaterLikely likelyBoil(const Picture& picture, std::optional<Length> elevation) {
    WaterLikely likely{.byHeight = {}, .byLastCheck = {}, .fireLit = picture.litAt && !picture.shutdownAt};
    if (const auto air = elevation ? standardAtmosphere(*elevation) : std::nullopt)
        if (const auto boils = waterBoilingPoint(*air))
            likely.byHeight = *boils;
    // Without a barometer what is known is the last check, on the probe's own scale.
    if (!picture.pressure && picture.waterBoils)
        likely.byLastCheck = *picture.waterBoils + picture.probeOffset;
    return likely;
}

std::optional<ExpectedBoil> expectedBoil(const Picture& picture) {
    // Weather and a fair probe together are within 1.15 K of what is usual at a height: three of these.
    if (!picture.pressure && picture.usuallyBoils)
        return ExpectedBoil{*picture.usuallyBoils, TemperatureDifference::kelvin(0.38), true};
    if (!picture.pressure || !picture.waterBoils)
        return std::nullopt;
    return ExpectedBoil{*picture.waterBoils + picture.probeOffset,
                        picture.targetUncertainty.value_or(TemperatureDifference::kelvin(0.3))};
}

WaterSheet::WaterSheet(QWidget* parent)
    : QFrame{parent}, headline_{new QLabel{this}}, what_{new QLabel{this}}, figures_{new QLabel{this}},
      keys_{new ActionKeys} {
    setObjectName(QStringLiteral("waterSheet"));
    setAutoFillBackground(true);
    setFrameShape(QFrame::Box);
    setFocusPolicy(Qt::StrongFocus);
    auto* column = new QVBoxLayout{this};
    const char* names[] = {"waterHeadline", "waterWhat", "waterFigures"};
    int i = 0;
    for (QLabel* label : {headline_, what_, figures_}) {
        label->setObjectName(QString::fromLatin1(names[i++]));
        label->setWordWrap(true);
        column->addWidget(label);
    }
    column->addStretch();
    column->addWidget(keys_);
    keys_->answerFor(*this);
    connect(keys_, &ActionKeys::pressed, this, &WaterSheet::act);
    hide();
    inEachLanguage(*this, [this] { sayKeys(); });
}

void WaterSheet::sayKeys() {
    // Enter never keeps what is doubted.
    keys_->display({{Qt::Key_Escape, QStringLiteral("waterLeave"), tr("Leave")},
                    {Qt::Key_B, QStringLiteral("waterAgain"), tr("Start again")},
                    {Qt::Key_T, QStringLiteral("waterType"), tr("Type it in")},
                    {view_.doubted ? Qt::Key_K : Qt::Key_Return, QStringLiteral("waterKeep"),
                     view_.keep.isEmpty() ? tr("Keep it") : view_.keep, !view_.doubted, !view_.keep.isEmpty()}});
}

void WaterSheet::act(int key) {
    switch (key) {
    case Qt::Key_B:
        return begin(probe_, now_, units_);
    case Qt::Key_T:
        hide();
        return typeWanted();
    case Qt::Key_Escape:
        hide();
        return left();
    default:
        keep();
    }
}

void WaterSheet::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    headline_->setFont(dress.letters(mm::words * 1.5, true));
    what_->setFont(dress.letters(mm::words));
    figures_->setFont(dress.letters(mm::words));
    keys_->wear(dress);
    layout()->setContentsMargins(dress.px(4), dress.px(4), dress.px(4), dress.px(4));
    layout()->setSpacing(dress.px(mm::gap));
}

void WaterSheet::begin(const std::string& probe, Instant now, Units units) {
    probe_ = probe;
    since_ = now_ = now;
    units_ = units;
    display({}, std::nullopt, {}, now);
    show();
    raise();
    setFocus();
}

void WaterSheet::display(const WaterLook& look, const std::optional<ExpectedBoil>& expected, const WaterLikely& likely,
                         Instant now) {
    look_ = look;
    now_ = now;
    view_ = waterSheetView(look, expected, likely, units_);
    headline_->setText(view_.headline);
    what_->setText(view_.what);
    figures_->setText(view_.figures);
    sayKeys();
}

void WaterSheet::keep() {
    if (!look_.settled() || !look_.at)
        return;
    // As the trade writes it: hundredths say more than any probe does.
    const Unit unit = unitOf(Dimension::temperature, units_);
    const double written = std::round(fromSi(look_.at->kelvin(), unit) * 100) / 100;
    const WaterCheck check{{Temperature::kelvin(toSi(written, unit)), unit}, probe_};
    hide();
    emit kept({Fact{.at = now_, .what = check}});
}

} // namespace panside
