#include "ui/pack/pack_view.h"

#include "core/ledger/lot_code.h"
#include "core/physics/pack.h"
#include "core/physics/sugar_density.h"
#include "ui/vessels/vessels_view.h"
#include "ui/words/book_words.h"
#include "ui/words/mark_words.h"
#include "ui/words/place_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Pack", text); }
QString packNumber(double value, int decimals) { return QLocale{}.toString(value, 'f', decimals); }

constexpr Temperature hotFill = Temperature::celsius(85); // usual in the filler: Ontario's ministry 2014, as quoted
constexpr double smallestLeft = 0.005;                    // litres: no cup holds less (our judgement)
constexpr Volume smallContainer = Volume::litre(0.25);    // cools fast (our judgement)

bool canBePacked(const Vessel& vessel) {
    return !vessel.out && !isTankKind(vessel.kind) && !vessel.content.isEmpty() &&
           vessel.content.brix() > Brix::degrees(55);
}

QString gradeOf(const Vessel& vessel, const PlaceLaw& law) {
    if (vessel.light)
        return packNumber(*vessel.light * 100, 0) + QStringLiteral("\u00a0%, ") + classOf(*vessel.light, law);
    return choiceWord(vessel.lightClass);
}

QString temperaturesOf(const Ledger& ledger, Units units) {
    return tr("Fill at %1 or hotter, cap at no less than %2, lay down 5 to 10 min.")
        .arg(figure(hotFill, units, 0).text(), figure(ledger.tables().cappedLeast, units, 0).text());
}

// As the last pack out of a vessel of this kind was, or else the last of all.
QString lastSize(const Ledger& ledger, VesselKind kind) {
    QString size;
    bool same = false;
    for (const Lot& lot : ledger.lots()) {
        const bool his = ledger.vessels()[lot.vessel].kind == kind;
        if (lot.sizes.empty() || (same && !his))
            continue;
        same |= his;
        size = utf8(lot.sizes.back().written);
    }
    return size;
}

bool isRelease(const BookRow& row, const Lot& lot) {
    return row.row.text(Key::tested_for) == releaseWord && nameKey(row.subject) == nameKey(lot.code);
}

double coldBy() { // how much less hot-filled syrup is when it is cold
    const Brix syrup = Brix::degrees(66.9);
    return 1 - sugarDensity(syrup, hotFill)->si() / sugarDensity(syrup, Temperature::celsius(20))->si();
}

} // namespace

PackView packView(const HouseLedger* house, std::span<const Set> settings, Units units) {
    PackView view;
    if (!house) {
        view.nothing = tr("Reading the book …");
        return view;
    }
    const Ledger& ledger = house->ledger();
    const DensityLimits limits = limitsOf(ledger, settings);
    view.columns = {{tr("vessel")},          {tr("holds"), true},          {tr("°Brix"), true},
                    {tr("grade"), false, 2}, {tr("also in it"), false, 3}, {tr("ready to pack?"), false, 1}};
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < ledger.vessels().size(); ++i)
        if (canBePacked(ledger.vessels()[i]))
            order.push_back(i);
    // What was touched last; of two ends of one move, what it went into, whose content is the newer.
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) {
        const Vessel &one = ledger.vessels()[a], &other = ledger.vessels()[b];
        return one.touched != other.touched ? one.touched > other.touched
                                            : one.knot != noKnot && (other.knot == noKnot || one.knot > other.knot);
    });
    for (const std::size_t i : order) {
        const Vessel& vessel = ledger.vessels()[i];
        const Remedy remedy = remedyOf(vessel.content, limits);
        const QString may = isApart(vessel)                          ? tr("no: keep it apart")
                            : remedy.mayBePacked()                   ? tr("yes")
                            : remedy.kind == Remedy::Kind::maybeThin ? tr("test it first")
                                                                     : tr("no: see what it needs");
        view.rows.push_back({{utf8(vessel.name), figure(vessel.content.volume(), units).text(),
                              packNumber(vessel.content.brix().degrees(), 1), gradeOf(vessel, ledger.tables().law()),
                              taintWords(vessel.taint), may}});
        QStringList notes{temperaturesOf(ledger, units)};
        if (vessel.taint.milk)
            notes << tr("Milk is in it: say so on every label.");
        if (gradeOf(vessel, ledger.tables().law()).isEmpty())
            notes << tr("Measure the color before you label it.");
        notes << tr("Check the density again after re-heating. Hot syrup burns deeply.");
        view.lines.push_back({i, utf8(vessel.name), remedySentence(vessel, limits, units), notes.join(u' ')});
    }
    if (view.rows.empty())
        view.nothing = tr("No vessel holds syrup to pack. Draws, bought syrup and moves fill them.");
    return view;
}

QString weightText(Mass mass, Units units) {
    if (units == Units::metric)
        return mass.kilogram() < 2 ? packNumber(mass.kilogram() * 1000, 0) + QStringLiteral("\u00a0g")
                                   : packNumber(mass.kilogram(), 2) + QStringLiteral("\u00a0kg");
    const double pounds = mass.kilogram() / Mass::kilogramPerPound;
    return packNumber(pounds, 2) + QStringLiteral("\u00a0lb") +
           (pounds < 16 ? QStringLiteral(" (") + packNumber(pounds * 16, 1) + QStringLiteral("\u00a0oz)") : QString{});
}

std::vector<FillLine> usualSizes(const HouseLedger* house, Units units) {
    static constexpr std::pair<const char*, double> us[] = {{"1gal", 3.785411784},   {"0.5gal", 1.892705892},
                                                            {"1qt", 0.946352946},    {"1pt", 0.473176473},
                                                            {"0.5pt", 0.2365882365}, {"100mL", 0.1}};
    static constexpr std::pair<const char*, double> metric[] = {{"4L", 4},      {"1L", 1},       {"540mL", 0.54},
                                                                {"500mL", 0.5}, {"250mL", 0.25}, {"100mL", 0.1}};
    std::vector<FillLine> sizes;
    if (house)
        for (const Lot& lot : house->ledger().lots())
            for (const LotSize& size : lot.sizes)
                if (std::ranges::none_of(
                        sizes, [&](const FillLine& one) { return std::abs(one.size.si() - size.size.si()) < 1e-9; }))
                    sizes.push_back({utf8(size.written), size.size});
    for (const auto& [written, litres] : units == Units::us ? std::span{us} : std::span{metric})
        if (std::ranges::none_of(sizes,
                                 [l = litres](const FillLine& one) { return std::abs(one.size.litre() - l) < 1e-6; }))
            sizes.push_back({QString::fromLatin1(written), Volume::litre(litres)});
    std::ranges::stable_sort(sizes, [](const FillLine& a, const FillLine& b) { return a.size > b.size; });
    return sizes;
}

YieldView yieldView(const Vessel& vessel, std::span<const FillLine> sizes, Units units) {
    YieldView view;
    view.columns = {
        {tr("size")}, {tr("fill weight"), true}, {tr("yield, all in this size"), true}, {tr("left over"), true, 1}};
    const Volume holds = vessel.content.volume();
    for (const FillLine& one : sizes) {
        const auto density = sugarDensity(vessel.content.brix(), Temperature::celsius(20));
        const auto made = containersFrom(holds, std::span{&one.size, 1});
        if (!density || !made)
            continue;
        view.rows.push_back({{one.written, weightText(*density * one.size, units), QString::number(made->counts[0]),
                              handVolume(made->left, units)}});
    }
    return view;
}

BookForm packForm(BookForm form, const HouseLedger& house, std::size_t vessel, std::span<const Set> settings,
                  Units units, Instant now) {
    const Ledger& ledger = house.ledger();
    const Vessel& from = ledger.vessels()[vessel];
    const BookKnown known = form.context ? form.context->known : house.known();
    const std::string code = lotCode(ledger.tables().lotScheme, localDate(now), from.name,
                                     [&](std::string_view one) { return known.lots.contains(nameKey(one)); });
    form.put(Key::from, utf8(from.name));
    form.put(Key::lot, utf8(code));
    form.put(Key::size, lastSize(ledger, from.kind));
    form.caution =
        temperaturesOf(ledger, units) + u' ' + tr("No scale here is legal for trade. Hot syrup burns deeply.");
    const DensityLimits limits = limitsOf(ledger, settings);
    form.live = [content = from.content, least = ledger.tables().cappedLeast, limits, units](const BookForm& typed) {
        QStringList words;
        const auto brix = siOf(typed, Key::brix);
        const Brix is = brix ? Brix::ofSi(*brix) : content.brix();
        const auto size = writtenIn(typed.answer(Key::size).remove(u' ').replace(u',', u'.').toStdString());
        if (size && dimensionOf(size->unit) == Dimension::volume) {
            const Volume one = Volume::ofSi(size->si());
            const auto density = sugarDensity(is, Temperature::celsius(20));
            const auto made = containersFrom(content.volume(), std::span{&one, 1});
            if (density && made)
                words << tr("Fill each to %1 by weight: full to the brim with hot syrup, it is %2 percent short when "
                            "cold. That makes %3, and %4 is left.")
                             .arg(weightText(*density * one, units), packNumber(coldBy() * 100, 0),
                                  QString::number(made->counts[0]),
                                  made->left.litre() < smallestLeft ? tr("nothing") : handVolume(made->left, units));
            if (one < smallContainer || (typed.answer(Key::of) == u"glass" && one <= smallContainer))
                words << tr("Small containers cool first: fill and cap these before the others.");
        }
        if (const auto capped = siOf(typed, Key::capped); capped && Temperature::kelvin(*capped) < least)
            words << tr("Capped under %1: the lot will be held.").arg(figure(least, units, 0).text());
        if (brix && (content.byLaw(is) < limits.least || is > limits.most))
            words << tr("Density outside the %1 to %2 °Brix for this place: the lot will be held.")
                         .arg(packNumber(limits.least.degrees(), 1), packNumber(limits.most.degrees(), 1));
        return words.join(u' ');
    };
    return form;
}

bool isReleased(const Ledger& ledger, const Lot& lot) {
    return std::ranges::any_of(ledger.tables().tested, [&](const BookRow& row) { return isRelease(row, lot); });
}

LotsView lotsView(const HouseLedger* house, Units units) {
    LotsView view;
    if (!house) {
        view.nothing = tr("Reading the book …");
        return view;
    }
    const Ledger& ledger = house->ledger();
    view.columns = {{tr("lot")},
                    {tr("packed"), false, 2},
                    {tr("from"), false, 4},
                    {tr("made")},
                    {tr("in stock"), true},
                    {tr("°Brix"), true, 5},
                    {tr("class"), false, 3},
                    {tr("status"), false, 1}};
    for (std::size_t i = ledger.lots().size(); i-- > 0;) {
        const Lot& lot = ledger.lots()[i];
        QStringList made;
        long long here = 0;
        for (const LotSize& size : lot.sizes) {
            made << QStringLiteral("%1 × %2").arg(size.made).arg(sizeWord(size.written));
            here += size.here();
        }
        const bool released = lot.held && isReleased(ledger, lot);
        const QString taint = taintWords(lot.taint);
        const QString stands = lot.held && !released ? tr("held") : released ? tr("released") : QString{};
        QStringList why;
        for (const LedgerMark& mark : ledger.marks())
            if (nameKey(mark.name) == nameKey(lot.code))
                why << markWords(mark, units);
        why.removeDuplicates();
        for (const BookRow& row : ledger.tables().tested)
            if (isRelease(row, lot))
                why << tr("Released: %1.").arg(detailWords(row.row, units, true, {}));
        const auto date =
            QDate{static_cast<int>(lot.day.year()), static_cast<int>(static_cast<unsigned>(lot.day.month())),
                  static_cast<int>(static_cast<unsigned>(lot.day.day()))};
        QStringList both{stands, taint};
        both.removeAll(QString{});
        const Brix is = lot.read.value_or(lot.book);
        view.rows.push_back({{utf8(lot.code), QLocale{}.toString(date, QStringLiteral("d MMM yyyy")),
                              utf8(ledger.vessels()[lot.vessel].name), made.join(QStringLiteral(", ")),
                              QString::number(here), is.si() > 0 ? packNumber(is.degrees(), 1) : QString{},
                              lot.light ? classOf(*lot.light, ledger.tables().law()) : choiceWord(lot.lightClass),
                              both.join(QStringLiteral(", "))},
                             lot.held && !released,
                             here == 0});
        view.lines.push_back({i, utf8(lot.code), why.join(u' '), lot.held, released});
    }
    if (view.rows.empty())
        view.nothing = tr("No lot has been packed yet.");
    return view;
}

} // namespace panside
