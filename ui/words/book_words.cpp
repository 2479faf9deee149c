#include "ui/words/book_words.h"

#include "ui/look/wall_clock.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("BookWords", text); }
struct Word {
    const char* written;
    const char* said;
};
constexpr Word choiceWords[] = {{"gather", QT_TRANSLATE_NOOP("BookWords", "gathering tank")},
                                {"truck", QT_TRANSLATE_NOOP("BookWords", "truck tank")},
                                {"hold", QT_TRANSLATE_NOOP("BookWords", "holding tank")},
                                {"feed", QT_TRANSLATE_NOOP("BookWords", "feed tank")},
                                {"concentrate", QT_TRANSLATE_NOOP("BookWords", "concentrate")},
                                {"pail", QT_TRANSLATE_NOOP("BookWords", "pail")},
                                {"filter", QT_TRANSLATE_NOOP("BookWords", "filter tank")},
                                {"drum", QT_TRANSLATE_NOOP("BookWords", "drum")},
                                {"canner", QT_TRANSLATE_NOOP("BookWords", "canner")},
                                {"none", QT_TRANSLATE_NOOP("BookWords", "none")},
                                {"suspect", QT_TRANSLATE_NOOP("BookWords", "suspect")},
                                {"unknown", QT_TRANSLATE_NOOP("BookWords", "not known")},
                                {"yes", QT_TRANSLATE_NOOP("BookWords", "yes")},
                                {"no", QT_TRANSLATE_NOOP("BookWords", "no")},
                                {"clear", QT_TRANSLATE_NOOP("BookWords", "clear")},
                                {"cloudy", QT_TRANSLATE_NOOP("BookWords", "cloudy")},
                                {"ropy", QT_TRANSLATE_NOOP("BookWords", "ropy")},
                                {"back to the tank", QT_TRANSLATE_NOOP("BookWords", "back to the tank")},
                                {"sap", QT_TRANSLATE_NOOP("BookWords", "sap")},
                                {"syrup", QT_TRANSLATE_NOOP("BookWords", "syrup")},
                                {"glass", QT_TRANSLATE_NOOP("BookWords", "glass")},
                                {"plastic", QT_TRANSLATE_NOOP("BookWords", "plastic")},
                                {"tin", QT_TRANSLATE_NOOP("BookWords", "tin")},
                                {"gone", QT_TRANSLATE_NOOP("BookWords", "gone")},
                                {"water", QT_TRANSLATE_NOOP("BookWords", "water")},
                                {"new", QT_TRANSLATE_NOOP("BookWords", "new")},
                                {"sour", QT_TRANSLATE_NOOP("BookWords", "sour")},
                                {"spilled", QT_TRANSLATE_NOOP("BookWords", "spilled")},
                                {"overflow", QT_TRANSLATE_NOOP("BookWords", "overflow")},
                                {"tasting", QT_TRANSLATE_NOOP("BookWords", "tasting")},
                                {"sample", QT_TRANSLATE_NOOP("BookWords", "sample")},
                                {"scorched", QT_TRANSLATE_NOOP("BookWords", "scorched")},
                                {"given", QT_TRANSLATE_NOOP("BookWords", "given away")},
                                {"poured off", QT_TRANSLATE_NOOP("BookWords", "poured off")},
                                {"lead", QT_TRANSLATE_NOOP("BookWords", "lead")},
                                {"golden", QT_TRANSLATE_NOOP("BookWords", "golden")},
                                {"amber", QT_TRANSLATE_NOOP("BookWords", "amber")},
                                {"dark", QT_TRANSLATE_NOOP("BookWords", "dark")},
                                {"very dark", QT_TRANSLATE_NOOP("BookWords", "very dark")}};

QString valueWords(const DayRow& row, Units units) {
    if (!row.value)
        return utf8(row.words);
    const double si = row.value->si;
    switch (dimensionOf(row.value->unit)) {
    case Dimension::volume:
        return row.deed == Deed::vessel ? figure(Volume::ofSi(si), units).text() : handVolume(Volume::ofSi(si), units);
    case Dimension::mass:
        return figure(Mass::ofSi(si), units).text();
    case Dimension::length:
        return figure(Length::ofSi(si), units).text();
    case Dimension::share:
        return QLocale{}.toString(si * 100, 'f', 0) + QStringLiteral("\u00a0%");
    case Dimension::trace:
        return QLocale{}.toString(si * 1e9, 'f', 0) + QStringLiteral("\u00a0ppb");
    default:
        return QLocale{}.toString(si, 'f', 0);
    }
}

QString pairWords(const DayRow& row, const DayPair& pair, Units units) {
    const QString text = choiceWord(pair.text);
    switch (pair.key) {
    case Key::name:
    case Key::vessel:
    case Key::of:
    case Key::kind:
    case Key::what:
    case Key::why:
    case Key::clear:
    case Key::flavour:
    case Key::off:
    case Key::light_class:
    case Key::result:
        return text;
    case Key::from:
        return tr(QT_TRANSLATE_NOOP("BookWords", "from %1")).arg(text);
    case Key::to:
        return tr(QT_TRANSLATE_NOOP("BookWords", "to %1")).arg(text);
    case Key::in:
        return tr(QT_TRANSLATE_NOOP("BookWords", "in %1")).arg(text);
    case Key::lot:
        return tr(QT_TRANSLATE_NOOP("BookWords", "lot %1")).arg(text);
    case Key::brix:
        return figure(Brix::ofSi(pair.si)).text();
    case Key::temp:
    case Key::filler:
    case Key::capped:
        return keyLabel(row.deed, pair.key) + u' ' + figure(Temperature::kelvin(pair.si), units).text();
    default:
        return keyLabel(row.deed, pair.key) + u' ' + text;
    }
}

} // namespace

QString deedName(Deed deed) {
    switch (deed) {
    case Deed::vessel:
        return tr(QT_TRANSLATE_NOOP("BookWords", "vessel named"));
    case Deed::gathered:
        return tr(QT_TRANSLATE_NOOP("BookWords", "gathered"));
    case Deed::moved:
        return tr(QT_TRANSLATE_NOOP("BookWords", "moved"));
    case Deed::dipped:
        return tr(QT_TRANSLATE_NOOP("BookWords", "dipped"));
    case Deed::concentrated:
        return tr(QT_TRANSLATE_NOOP("BookWords", "concentrated"));
    case Deed::bought:
        return tr(QT_TRANSLATE_NOOP("BookWords", "bought"));
    case Deed::sold:
        return tr(QT_TRANSLATE_NOOP("BookWords", "sold in bulk"));
    case Deed::lost:
        return tr(QT_TRANSLATE_NOOP("BookWords", "lost"));
    case Deed::pans_emptied:
        return tr(QT_TRANSLATE_NOOP("BookWords", "pans emptied"));
    case Deed::press_on:
        return tr(QT_TRANSLATE_NOOP("BookWords", "filter run begun"));
    case Deed::press_off:
        return tr(QT_TRANSLATE_NOOP("BookWords", "filter run ended"));
    case Deed::graded:
        return tr(QT_TRANSLATE_NOOP("BookWords", "graded"));
    case Deed::packed:
        return tr(QT_TRANSLATE_NOOP("BookWords", "packed"));
    case Deed::shipped:
        return tr(QT_TRANSLATE_NOOP("BookWords", "shipped"));
    case Deed::came_back:
        return tr(QT_TRANSLATE_NOOP("BookWords", "came back"));
    case Deed::destroyed:
        return tr(QT_TRANSLATE_NOOP("BookWords", "destroyed"));
    case Deed::cleaned:
        return tr(QT_TRANSLATE_NOOP("BookWords", "cleaned"));
    case Deed::tested:
        return tr(QT_TRANSLATE_NOOP("BookWords", "tested"));
    }
    return {};
}

QString valueLabel(Deed deed) {
    switch (deed) {
    case Deed::vessel:
        return tr(QT_TRANSLATE_NOOP("BookWords", "holds"));
    case Deed::moved:
    case Deed::lost:
    case Deed::sold:
    case Deed::pans_emptied:
        return tr(QT_TRANSLATE_NOOP("BookWords", "how much; empty: all"));
    case Deed::press_on:
    case Deed::press_off:
        return tr(QT_TRANSLATE_NOOP("BookWords", "went through"));
    case Deed::graded:
        return tr(QT_TRANSLATE_NOOP("BookWords", "light let through"));
    case Deed::packed:
    case Deed::shipped:
    case Deed::came_back:
    case Deed::destroyed:
        return tr(QT_TRANSLATE_NOOP("BookWords", "how many"));
    case Deed::tested:
        return tr(QT_TRANSLATE_NOOP("BookWords", "found, ppb or words"));
    default:
        return tr(QT_TRANSLATE_NOOP("BookWords", "how much"));
    }
}

QString keyLabel(Deed deed, Key key) {
    const bool trade = deed == Deed::bought || deed == Deed::sold || deed == Deed::shipped || deed == Deed::came_back ||
                       deed == Deed::destroyed;
    switch (key) {
    case Key::name:
        return tr(QT_TRANSLATE_NOOP("BookWords", "name"));
    case Key::kind:
        return tr(QT_TRANSLATE_NOOP("BookWords", "kind"));
    case Key::shape:
        return tr(QT_TRANSLATE_NOOP("BookWords", "shape"));
    case Key::tare:
        return tr(QT_TRANSLATE_NOOP("BookWords", "weighs empty"));
    case Key::material:
        return tr(QT_TRANSLATE_NOOP("BookWords", "made of"));
    case Key::lead:
        return tr(QT_TRANSLATE_NOOP("BookWords", "lead in it"));
    case Key::out:
        return tr(QT_TRANSLATE_NOOP("BookWords", "no longer used"));
    case Key::to:
        return trade ? tr(QT_TRANSLATE_NOOP("BookWords", "to whom")) : tr(QT_TRANSLATE_NOOP("BookWords", "into"));
    case Key::from:
        return trade                    ? tr(QT_TRANSLATE_NOOP("BookWords", "from whom"))
               : deed == Deed::gathered ? tr(QT_TRANSLATE_NOOP("BookWords", "run or stop"))
                                        : tr(QT_TRANSLATE_NOOP("BookWords", "out of"));
    case Key::taps:
        return tr(QT_TRANSLATE_NOOP("BookWords", "taps"));
    case Key::brix:
        return deed == Deed::packed ? tr(QT_TRANSLATE_NOOP("BookWords", "density at packing"))
                                    : tr(QT_TRANSLATE_NOOP("BookWords", "sugar"));
    case Key::with:
        return deed == Deed::cleaned ? tr(QT_TRANSLATE_NOOP("BookWords", "cleaned with"))
                                     : tr(QT_TRANSLATE_NOOP("BookWords", "measured with"));
    case Key::cal:
        return tr(QT_TRANSLATE_NOOP("BookWords", "scale made for"));
    case Key::temp:
        return tr(QT_TRANSLATE_NOOP("BookWords", "temperature"));
    case Key::clear:
        return tr(QT_TRANSLATE_NOOP("BookWords", "looks"));
    case Key::in:
        return tr(QT_TRANSLATE_NOOP("BookWords", "vessel dipped"));
    case Key::brix_in:
        return tr(QT_TRANSLATE_NOOP("BookWords", "sugar of the sap"));
    case Key::hours:
        return tr(QT_TRANSLATE_NOOP("BookWords", "hours run"));
    case Key::washed:
        return tr(QT_TRANSLATE_NOOP("BookWords", "washed with"));
    case Key::what:
        return tr(QT_TRANSLATE_NOOP("BookWords", "what"));
    case Key::vessel:
        return deed == Deed::cleaned ? tr(QT_TRANSLATE_NOOP("BookWords", "vessel or gear"))
                                     : tr(QT_TRANSLATE_NOOP("BookWords", "vessel"));
    case Key::price:
        return tr(QT_TRANSLATE_NOOP("BookWords", "price"));
    case Key::why:
        return tr(QT_TRANSLATE_NOOP("BookWords", "why"));
    case Key::chased:
        return tr(QT_TRANSLATE_NOOP("BookWords", "chased with"));
    case Key::aid:
        return tr(QT_TRANSLATE_NOOP("BookWords", "filter aid: kind, mass, lot"));
    case Key::papers:
        return tr(QT_TRANSLATE_NOOP("BookWords", "papers"));
    case Key::heel:
        return tr(QT_TRANSLATE_NOOP("BookWords", "stays in the filter"));
    case Key::result:
        return tr(QT_TRANSLATE_NOOP("BookWords", "came out"));
    case Key::lot:
        return tr(QT_TRANSLATE_NOOP("BookWords", "lot"));
    case Key::light_class:
        return tr(QT_TRANSLATE_NOOP("BookWords", "class by eye"));
    case Key::flavour:
        return tr(QT_TRANSLATE_NOOP("BookWords", "flavor"));
    case Key::off:
        return tr(QT_TRANSLATE_NOOP("BookWords", "off-flavor"));
    case Key::sample:
        return tr(QT_TRANSLATE_NOOP("BookWords", "sample kept"));
    case Key::size:
        return tr(QT_TRANSLATE_NOOP("BookWords", "size"));
    case Key::of:
        return deed == Deed::packed ? tr(QT_TRANSLATE_NOOP("BookWords", "container of"))
                                    : tr(QT_TRANSLATE_NOOP("BookWords", "of what"));
    case Key::filler:
        return tr(QT_TRANSLATE_NOOP("BookWords", "in the filler"));
    case Key::capped:
        return tr(QT_TRANSLATE_NOOP("BookWords", "when capped"));
    case Key::broken:
        return tr(QT_TRANSLATE_NOOP("BookWords", "broken besides"));
    case Key::laid:
        return tr(QT_TRANSLATE_NOOP("BookWords", "laid down, minutes"));
    case Key::rinsed:
        return tr(QT_TRANSLATE_NOOP("BookWords", "rinsed with"));
    case Key::checked:
        return tr(QT_TRANSLATE_NOOP("BookWords", "looked over"));
    case Key::tested_for:
        return tr(QT_TRANSLATE_NOOP("BookWords", "tested for"));
    }
    return {};
}

QString choiceWord(std::string_view word) {
    for (const Word& one : choiceWords)
        if (word == one.written)
            return tr(one.said);
    return utf8(word);
}

QString dayRowWords(const DayRow& row, Units units) {
    QStringList parts{deedName(row.deed), valueWords(row, units)};
    const DayPair* size = row.of(Key::size);
    if (size)
        parts[1] += (parts[1].isEmpty() ? QString{} : QStringLiteral(" × ")) + utf8(size->text);
    for (const DayPair& pair : row.pairs)
        if (&pair != size)
            parts << pairWords(row, pair, units);
    parts.removeAll(QString{});
    return parts.join(QStringLiteral(", "));
}

QString unwrittenWords(const Silence& silence) {
    const auto day = [](Instant at) { return QLocale{}.toString(WallClock{}.at(at), QStringLiteral("d MMM")); };
    return tr(QT_TRANSLATE_NOOP("BookWords", "Nothing was written from %1 to %2, and it has not been measured since: "
                                             "dip it."))
        .arg(day(silence.from), day(silence.to));
}

} // namespace panside
