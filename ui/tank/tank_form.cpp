#include "ui/tank/tank_form.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Tank", text); }

// A rise that a dip cannot be wrong by: a finger's breadth of a small tank (common practice, no source).
constexpr double leastRise = 8; // litres
constexpr double leastShare = 0.02;

std::optional<double> numberOf(QString text) {
    text = text.trimmed().replace(u',', u'.');
    return numberIn(text.toStdString());
}

QString typedText(double si, Unit unit) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(fromSi(si, unit), 'g', 6);
}

std::optional<TankTable> marksIn(const QString& text, Units units) {
    TankTable table;
    for (const QString& pair : text.split(u';', Qt::SkipEmptyParts)) {
        const QStringList both = pair.simplified().split(u' ', Qt::SkipEmptyParts);
        const auto depth = both.size() == 2 ? numberOf(both[0]) : std::nullopt;
        const auto volume = both.size() == 2 ? numberOf(both[1]) : std::nullopt;
        if (!depth || !volume)
            return std::nullopt;
        table.marks.push_back({Length::ofSi(toSi(*depth, unitOf(Dimension::length, units))),
                               Volume::ofSi(toSi(*volume, unitOf(Dimension::volume, units)))});
    }
    return table;
}

// The lengths typed: none if all fields are empty; a problem if only some are there or one is no number.
struct Lengths {
    bool any = false, good = true;
    std::vector<Length> values;
};
Lengths lengthsIn(const QString* fields, int count, const std::vector<Unit>& units) {
    Lengths lengths;
    for (int i = 0; i < count; ++i) {
        lengths.any = lengths.any || !fields[i].trimmed().isEmpty();
        const auto value = numberOf(fields[i]);
        lengths.good = lengths.good && value && *value > 0;
        lengths.values.push_back(Length::ofSi(toSi(value.value_or(0), units[static_cast<std::size_t>(i)])));
    }
    return lengths;
}

std::variant<std::optional<TankShape>, QString> tankOf(const TankForm& form, Units units) {
    std::optional<TankShape> shape;
    if (form.kind == TankKind::table) {
        if (form.marks.trimmed().isEmpty())
            return shape;
        if (const auto table = marksIn(form.marks, units))
            shape = *table;
        if (!shape || !isTank(*shape))
            return tr("The table needs two marks or more, depth and volume, both rising: 10 100; 20 260");
        return shape;
    }
    const int count = static_cast<int>(sizeLabels(form.kind).size());
    const auto sizes = lengthsIn(form.sizes.data(), count, std::vector<Unit>(3, yardUnit(units)));
    if (!sizes.any)
        return shape;
    if (sizes.good) {
        const auto& v = sizes.values;
        if (form.kind == TankKind::upright)
            shape = UprightTank{v[0], v[1]};
        else if (form.kind == TankKind::lying)
            shape = LyingTank{v[0], v[1]};
        else
            shape = BoxTank{v[0], v[1], v[2]};
    }
    if (!shape || !isTank(*shape))
        return tr("Type every measure of the tank as a number above 0, at most 20 m (65 ft).");
    return shape;
}

} // namespace

QString kindName(TankKind kind) {
    switch (kind) {
    case TankKind::upright:
        return tr("round, standing");
    case TankKind::lying:
        return tr("round, lying");
    case TankKind::box:
        return tr("box");
    case TankKind::table:
        return tr("by a table of marks");
    }
    return {};
}

QStringList sizeLabels(TankKind kind) {
    const QString across = tr("across"), length = tr("length"), height = tr("height");
    switch (kind) {
    case TankKind::upright:
        return {across, height};
    case TankKind::lying:
        return {across, length};
    case TankKind::box:
        return {length, tr("width"), height};
    case TankKind::table:
        break;
    }
    return {};
}

QStringList pileLabels() { return {tr("length"), tr("height"), tr("stick")}; }

Unit yardUnit(Units units) { return units == Units::us ? Unit::ft : Unit::m; }

TankForm formOf(const Yard& yard, Units units) {
    TankForm form;
    const Unit big = yardUnit(units), small = unitOf(Dimension::length, units);
    const auto put = [&](std::initializer_list<Length> sizes) {
        std::transform(sizes.begin(), sizes.end(), form.sizes.begin(),
                       [&](Length size) { return typedText(size.si(), big); });
    };
    if (yard.tank)
        std::visit(Overloaded{
                       [&](const UprightTank& tank) {
                           put({tank.diameter, tank.height});
                       },
                       [&](const LyingTank& tank) {
                           form.kind = TankKind::lying;
                           put({tank.diameter, tank.length});
                       },
                       [&](const BoxTank& tank) {
                           form.kind = TankKind::box;
                           put({tank.length, tank.width, tank.height});
                       },
                       [&](const TankTable& tank) {
                           form.kind = TankKind::table;
                           QStringList marks;
                           for (const auto& mark : tank.marks)
                               marks << typedText(mark.depth.si(), small) + u' ' +
                                            typedText(mark.volume.si(), unitOf(Dimension::volume, units));
                           form.marks = marks.join(QStringLiteral("; "));
                       },
                   },
                   *yard.tank);
    if (yard.pile)
        form.pile = {typedText(yard.pile->length.si(), big), typedText(yard.pile->height.si(), big),
                     typedText(yard.pile->stick.si(), small)};
    if (yard.pricePerCord)
        form.price = QLocale{}.toString(*yard.pricePerCord, 'f', 2);
    return form;
}

std::variant<Yard, QString> yardOf(const TankForm& form, Units units) {
    Yard yard;
    auto tank = tankOf(form, units);
    if (auto* wrong = std::get_if<QString>(&tank))
        return *wrong;
    yard.tank = std::get<std::optional<TankShape>>(std::move(tank));
    const auto pile =
        lengthsIn(form.pile.data(), 3, {yardUnit(units), yardUnit(units), unitOf(Dimension::length, units)});
    if (pile.any && !pile.good)
        return tr("Type length, height and stick of the pile, each a number above 0.");
    if (pile.any) {
        yard.pile = Woodpile{pile.values[0], pile.values[1], pile.values[2]};
        // A stick fed into an arch is a hand's breadth to a man's height long.
        if (yard.pile->stick.metre() > 2 || yard.pile->stick.metre() < 0.1 || yard.pile->cords() > 500)
            return tr("That pile is not possible: sticks are 4 to 79 in (100 to 2000 mm) long, and it holds at most "
                      "500 cords.");
    }
    if (!form.price.trimmed().isEmpty()) {
        yard.pricePerCord = numberOf(form.price);
        if (!yard.pricePerCord || *yard.pricePerCord < 0 || *yard.pricePerCord > 100000)
            return tr("Type the price of a full cord as a number, or leave it empty.");
    }
    return yard;
}

Dip dipOf(const QString& typed, const Yard& yard, Units units, const Picture& picture, bool sapSince, Instant now) {
    Dip dip;
    const Unit unit = unitOf(Dimension::length, units);
    if (!yard.tank) {
        dip.warning = tr("Enter the tank's shape first.");
        return dip;
    }
    if (typed.trimmed().isEmpty())
        return dip;
    const auto depth = numberOf(typed);
    if (!depth || *depth < 0) {
        dip.warning = tr("The depth must be a number, 0 or more.");
        return dip;
    }
    const Length deep = tankDepth(*yard.tank).value_or(Length{});
    const auto volume = tankVolume(*yard.tank, Length::ofSi(toSi(*depth, unit)));
    if (!volume) {
        dip.warning =
            tr("The tank is only %1 deep: dip again, or put its shape right.").arg(figure(deep, units).text());
        return dip;
    }
    const Unit litres = unitOf(Dimension::volume, units);
    // As it is written: to the tenth of a gallon, to the litre.
    const double grain = units == Units::us ? 10 : 1;
    const double written = std::round(fromSi(volume->si(), litres) * grain) / grain;
    dip.fact = Fact{now, Reading{Series::tank_level, toSi(written, litres), litres, "hand"}};
    dip.words =
        tr("%1 in the tank, of %2")
            .arg(figure(*volume, units).text(), figure(tankVolume(*yard.tank, deep).value_or(Volume{}), units).text());
    const auto& last = picture.reading(Series::tank_level);
    if (!last || !last->si || sapSince)
        return dip;
    const Volume before = Volume::ofSi(*last->si);
    if (volume->litre() > before.litre() * (1 + leastShare) + leastRise)
        dip.warning =
            tr("%1 more than read before, and no sap was entered since: enter the sap, dip again, or keep it as it is.")
                .arg(figure(*volume - before, units).text());
    return dip;
}

} // namespace panside
