#include "ui/words/book_words.h"

#include "core/quantity/enum_count.h"
#include "ui/look/wall_clock.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <array>
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

struct KeyRow {
    Key key;
    const char* words;
};
constexpr std::array<KeyRow, keyCount> keyRows{{
    {Key::name, QT_TRANSLATE_NOOP("BookWords", "name")},
    {Key::kind, QT_TRANSLATE_NOOP("BookWords", "kind")},
    {Key::shape, QT_TRANSLATE_NOOP("BookWords", "shape")},
    {Key::tare, QT_TRANSLATE_NOOP("BookWords", "weighs empty")},
    {Key::material, QT_TRANSLATE_NOOP("BookWords", "made of")},
    {Key::lead, QT_TRANSLATE_NOOP("BookWords", "lead in it")},
    {Key::out, QT_TRANSLATE_NOOP("BookWords", "no longer used")},
    {Key::to, QT_TRANSLATE_NOOP("BookWords", "into")},
    {Key::from, QT_TRANSLATE_NOOP("BookWords", "out of")},
    {Key::taps, QT_TRANSLATE_NOOP("BookWords", "taps")},
    {Key::brix, QT_TRANSLATE_NOOP("BookWords", "sugar")},
    {Key::with, QT_TRANSLATE_NOOP("BookWords", "measured with")},
    {Key::cal, QT_TRANSLATE_NOOP("BookWords", "scale made for")},
    {Key::temp, QT_TRANSLATE_NOOP("BookWords", "temperature")},
    {Key::clear, QT_TRANSLATE_NOOP("BookWords", "looks")},
    {Key::in, QT_TRANSLATE_NOOP("BookWords", "vessel dipped")},
    {Key::brix_in, QT_TRANSLATE_NOOP("BookWords", "sugar of the sap")},
    {Key::hours, QT_TRANSLATE_NOOP("BookWords", "hours run")},
    {Key::washed, QT_TRANSLATE_NOOP("BookWords", "washed with")},
    {Key::what, QT_TRANSLATE_NOOP("BookWords", "what")},
    {Key::vessel, QT_TRANSLATE_NOOP("BookWords", "vessel")},
    {Key::price, QT_TRANSLATE_NOOP("BookWords", "price")},
    {Key::why, QT_TRANSLATE_NOOP("BookWords", "why")},
    {Key::chased, QT_TRANSLATE_NOOP("BookWords", "chased with")},
    {Key::aid, QT_TRANSLATE_NOOP("BookWords", "filter aid: kind, mass, lot")},
    {Key::papers, QT_TRANSLATE_NOOP("BookWords", "papers")},
    {Key::heel, QT_TRANSLATE_NOOP("BookWords", "stays in the filter")},
    {Key::result, QT_TRANSLATE_NOOP("BookWords", "came out")},
    {Key::lot, QT_TRANSLATE_NOOP("BookWords", "lot")},
    {Key::light_class, QT_TRANSLATE_NOOP("BookWords", "class by eye")},
    {Key::flavour, QT_TRANSLATE_NOOP("BookWords", "flavor")},
    {Key::off, QT_TRANSLATE_NOOP("BookWords", "off-flavor")},
    {Key::sample, QT_TRANSLATE_NOOP("BookWords", "sample kept")},
    {Key::size, QT_TRANSLATE_NOOP("BookWords", "size")},
    {Key::of, QT_TRANSLATE_NOOP("BookWords", "of what")},
    {Key::filler, QT_TRANSLATE_NOOP("BookWords", "in the filler")},
    {Key::capped, QT_TRANSLATE_NOOP("BookWords", "when capped")},
    {Key::broken, QT_TRANSLATE_NOOP("BookWords", "broken besides")},
    {Key::laid, QT_TRANSLATE_NOOP("BookWords", "laid down, minutes")},
    {Key::rinsed, QT_TRANSLATE_NOOP("BookWords", "rinsed with")},
    {Key::checked, QT_TRANSLATE_NOOP("BookWords", "looked over")},
    {Key::tested_for, QT_TRANSLATE_NOOP("BookWords", "tested for")},
}};
static_assert(inOrder(keyRows, &KeyRow::key));

// What a key is called in a row of one deed, where that is another word.
struct OtherwiseRow {
    Deed deed;
    Key key;
    const char* words;
};
constexpr OtherwiseRow calledOtherwise[] = {
    {Deed::bought, Key::to, QT_TRANSLATE_NOOP("BookWords", "to whom")},
    {Deed::bought, Key::from, QT_TRANSLATE_NOOP("BookWords", "from whom")},
    {Deed::sold, Key::to, QT_TRANSLATE_NOOP("BookWords", "to whom")},
    {Deed::sold, Key::from, QT_TRANSLATE_NOOP("BookWords", "from whom")},
    {Deed::shipped, Key::to, QT_TRANSLATE_NOOP("BookWords", "to whom")},
    {Deed::shipped, Key::from, QT_TRANSLATE_NOOP("BookWords", "from whom")},
    {Deed::came_back, Key::to, QT_TRANSLATE_NOOP("BookWords", "to whom")},
    {Deed::came_back, Key::from, QT_TRANSLATE_NOOP("BookWords", "from whom")},
    {Deed::destroyed, Key::to, QT_TRANSLATE_NOOP("BookWords", "to whom")},
    {Deed::destroyed, Key::from, QT_TRANSLATE_NOOP("BookWords", "from whom")},
    {Deed::gathered, Key::from, QT_TRANSLATE_NOOP("BookWords", "run or stop")},
    {Deed::packed, Key::brix, QT_TRANSLATE_NOOP("BookWords", "density at packing")},
    {Deed::packed, Key::of, QT_TRANSLATE_NOOP("BookWords", "container of")},
    {Deed::cleaned, Key::with, QT_TRANSLATE_NOOP("BookWords", "cleaned with")},
    {Deed::cleaned, Key::vessel, QT_TRANSLATE_NOOP("BookWords", "vessel or gear")},
};

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
    for (const OtherwiseRow& row : calledOtherwise)
        if (row.deed == deed && row.key == key)
            return tr(row.words);
    const auto at = static_cast<std::size_t>(key);
    return at < keyRows.size() ? tr(keyRows[at].words) : QString{};
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
