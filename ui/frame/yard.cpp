#include "ui/frame/yard.h"

#include <QStringList>
#include <vector>

namespace panside {
namespace {

constexpr double cordCubicFeet = 128;

// As many digits as bring the same number back.
QString number(double value) { return QString::number(value, 'g', 17); }

// The numbers after the first `skip` words; nullopt if one is none.
std::optional<std::vector<double>> numbersIn(const QStringList& words, int skip) {
    std::vector<double> numbers;
    for (qsizetype i = skip; i < words.size(); ++i) {
        bool good = false;
        numbers.push_back(words[i].toDouble(&good));
        if (!good)
            return std::nullopt;
    }
    return numbers;
}

} // namespace

double Woodpile::cords() const {
    const double foot = Length::foot(1).metre();
    return length.metre() * height.metre() * stick.metre() / (foot * foot * foot) / cordCubicFeet;
}

QString textOf(const TankShape& shape) {
    return std::visit(
        Overloaded{
            [](const UprightTank& tank) {
                return QStringLiteral("upright %1 %2").arg(number(tank.diameter.metre()), number(tank.height.metre()));
            },
            [](const LyingTank& tank) {
                return QStringLiteral("lying %1 %2").arg(number(tank.diameter.metre()), number(tank.length.metre()));
            },
            [](const BoxTank& tank) {
                return QStringLiteral("box %1 %2 %3")
                    .arg(number(tank.length.metre()), number(tank.width.metre()), number(tank.height.metre()));
            },
            [](const TankTable& tank) {
                QString text = QStringLiteral("table");
                for (const auto& mark : tank.marks)
                    text += QStringLiteral(" %1 %2").arg(number(mark.depth.metre()), number(mark.volume.cubicMetre()));
                return text;
            },
        },
        shape);
}

std::optional<TankShape> tankIn(const QString& text) {
    const QStringList words = text.split(u' ', Qt::SkipEmptyParts);
    const auto n = numbersIn(words, 1);
    if (words.isEmpty() || !n)
        return std::nullopt;
    const QString& kind = words.front();
    const auto length = [&](std::size_t i) { return Length::metre((*n)[i]); };
    std::optional<TankShape> shape;
    if (kind == QLatin1String("upright") && n->size() == 2)
        shape = UprightTank{length(0), length(1)};
    else if (kind == QLatin1String("lying") && n->size() == 2)
        shape = LyingTank{length(0), length(1)};
    else if (kind == QLatin1String("box") && n->size() == 3)
        shape = BoxTank{length(0), length(1), length(2)};
    else if (kind == QLatin1String("table") && n->size() % 2 == 0) {
        TankTable table;
        for (std::size_t i = 0; i + 1 < n->size(); i += 2)
            table.marks.push_back({length(i), Volume::cubicMetre((*n)[i + 1])});
        shape = table;
    }
    return shape && isTank(*shape) ? shape : std::nullopt;
}

QString textOf(const Woodpile& pile) {
    return QStringLiteral("%1 %2 %3")
        .arg(number(pile.length.metre()), number(pile.height.metre()), number(pile.stick.metre()));
}

std::optional<Woodpile> pileIn(const QString& text) {
    const auto n = numbersIn(text.split(u' ', Qt::SkipEmptyParts), 0);
    if (!n || n->size() != 3)
        return std::nullopt;
    for (const double side : *n)
        if (!(side > 0 && side <= 1000))
            return std::nullopt;
    return Woodpile{Length::metre((*n)[0]), Length::metre((*n)[1]), Length::metre((*n)[2])};
}

} // namespace panside
