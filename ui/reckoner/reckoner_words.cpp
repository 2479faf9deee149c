#include "ui/reckoner/reckoner_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace panside {
namespace {

// How a number with such a unit behind it reads in the trade's unit. A difference (C°) is never shifted by 32.
struct Trade {
    QLatin1StringView metric, us;
    double scale, shift;
    int moreDecimals;
};
const Trade trades[] = {
    {QLatin1StringView{"\xb0"
                       "C"},
     QLatin1StringView{"\xb0"
                       "F"},
     1.8, 32, -1},
    {QLatin1StringView{"C\xb0"},
     QLatin1StringView{"\xb0"
                       "F"},
     1.8, 0, 0},
    {QLatin1StringView{"kPa"}, QLatin1StringView{"inHg"}, 1e3 / Pressure::pascalPerInHg, 0, 0},
    {QLatin1StringView{"L"}, QLatin1StringView{"gal"}, 1 / Volume::litresPerGallon, 0, 0},
    {QLatin1StringView{"mm"}, QLatin1StringView{"in"}, 1 / 25.4, 0, 1},
    {QLatin1StringView{"m"}, QLatin1StringView{"ft"}, 1 / 0.3048, 0, 0},
};

int decimalsOf(const std::string& part) {
    const std::size_t point = part.find('.');
    return point == std::string::npos ? 0 : static_cast<int>(part.size() - point - 1);
}

QString localNumber(const std::string& part) {
    QString text = QString::fromStdString(part);
    if (numberIn(part))
        text.replace(QLatin1Char('.'), QLocale{}.decimalPoint());
    return text;
}

// Puts one number in its place, and its unit with it.
void putIn(QString& text, qsizetype place, const std::string& part, Units units) {
    const QString behind = text.mid(place + 2);
    const auto value = numberIn(part);
    for (const Trade& trade : trades) {
        const QString unit = QLatin1Char(' ') + QString{trade.metric};
        const bool whole =
            behind.size() == unit.size() || (behind.size() > unit.size() && !behind[unit.size()].isLetter());
        if (units == Units::metric || !value || !behind.startsWith(unit) || !whole)
            continue;
        const int decimals = std::max(0, decimalsOf(part) + trade.moreDecimals);
        const QString number = localNumber(sums::number(*value * trade.scale + trade.shift, decimals));
        text.replace(place, 2 + unit.size(), number + QLatin1Char(' ') + QString{trade.us});
        return;
    }
    text.replace(place, 2, localNumber(part));
}

QString translated(const sums::Sentence& sentence, Units units) {
    QString text = inWords(sentence.text);
    for (std::size_t i = sentence.parts.size(); i-- > 0;) {
        const QString mark = QLatin1Char('%') + QString::number(i + 1);
        for (qsizetype at = text.indexOf(mark); at >= 0; at = text.indexOf(mark, at + 1))
            putIn(text, at, sentence.parts[i], units);
    }
    return text.replace(QStringLiteral("C°"), QStringLiteral("°C")).replace(QStringLiteral("F°"), QStringLiteral("°F"));
}

} // namespace

QString inWords(std::string_view text) { return QCoreApplication::translate("reckon", std::string{text}.c_str()); }

QString inWords(const sums::Sentence& sentence, Units units) { return translated(sentence, units); }

QString figureInWords(const sums::Sentence& shown, Units units) {
    QString text = translated(shown, Units::metric);
    const qsizetype bracket = text.indexOf(QLatin1String(" ("));
    if (units == Units::metric || bracket < 0 || !text.endsWith(QLatin1Char(')')))
        return text;
    return text.mid(bracket + 2, text.size() - bracket - 3) + QStringLiteral(" (") + text.left(bracket) +
           QLatin1Char(')');
}

} // namespace panside
