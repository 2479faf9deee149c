#include "ui/words/book_words.h"

#include "core/quantity/enum_count.h"
#include "ui/look/wall_clock.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <array>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("BookWords", text); }
struct Word {
    const char* written;
    const char* said;
};
constexpr Word choiceWords[] = {{"gather", QT_TR_NOOP("gathering tank")},
                                {"truck", QT_TR_NOOP("truck tank")},
                                {"hold", QT_TR_NOOP("holding tank")},
                                {"feed", QT_TR_NOOP("feed tank")},
                                {"concentrate", QT_TR_NOOP("concentrate")},
                                {"pail", QT_TR_NOOP("pail")},
                                {"filter", QT_TR_NOOP("filter tank")},
                                {"drum", QT_TR_NOOP("drum")},
                                {"canner", QT_TR_NOOP("canner")},
                                {"none", QT_TR_NOOP("none")},
                                {"suspect", QT_TR_NOOP("suspect")},
                                {"unknown", QT_TR_NOOP("not known")},
                                {"yes", QT_TR_NOOP("yes")},
                                {"no", QT_TR_NOOP("no")},
                                {"clear", QT_TR_NOOP("clear")},
                                {"cloudy", QT_TR_NOOP("cloudy")},
                                {"ropy", QT_TR_NOOP("ropy")},
                                {"back to the tank", QT_TR_NOOP("back to the tank")},
                                {"sap", QT_TR_NOOP("sap")},
                                {"syrup", QT_TR_NOOP("syrup")},
                                {"glass", QT_TR_NOOP("glass")},
                                {"plastic", QT_TR_NOOP("plastic")},
                                {"tin", QT_TR_NOOP("tin")},
                                {"gone", QT_TR_NOOP("gone")},
                                {"water", QT_TR_NOOP("water")},
                                {"new", QT_TR_NOOP("new")},
                                {"sour", QT_TR_NOOP("sour")},
                                {"spilled", QT_TR_NOOP("spilled")},
                                {"overflow", QT_TR_NOOP("overflow")},
                                {"tasting", QT_TR_NOOP("tasting")},
                                {"sample", QT_TR_NOOP("sample")},
                                {"scorched", QT_TR_NOOP("scorched")},
                                {"given", QT_TR_NOOP("given away")},
                                {"poured off", QT_TR_NOOP("poured off")},
                                {"lead", QT_TR_NOOP("lead")},
                                {"press", QT_TR_NOOP("press")},
                                {"golden", QT_TR_NOOP("golden")},
                                {"amber", QT_TR_NOOP("amber")},
                                {"dark", QT_TR_NOOP("dark")},
                                {"very dark", QT_TR_NOOP("very dark")}};

struct KeyRow {
    Key key;
    const char* words;
};
constexpr std::array<KeyRow, keyCount> keyRows{{
    {Key::name, QT_TR_NOOP("name")},
    {Key::kind, QT_TR_NOOP("kind")},
    {Key::shape, QT_TR_NOOP("shape")},
    {Key::tare, QT_TR_NOOP("weighs empty")},
    {Key::material, QT_TR_NOOP("made of")},
    {Key::lead, QT_TR_NOOP("lead in it")},
    {Key::out, QT_TR_NOOP("no longer used")},
    {Key::to, QT_TR_NOOP("into")},
    {Key::from, QT_TR_NOOP("out of")},
    {Key::taps, QT_TR_NOOP("taps")},
    {Key::brix, QT_TR_NOOP("sugar")},
    {Key::with, QT_TR_NOOP("measured with")},
    {Key::cal, QT_TR_NOOP("scale made for")},
    {Key::temp, QT_TR_NOOP("temperature")},
    {Key::clear, QT_TR_NOOP("looks")},
    {Key::in, QT_TR_NOOP("vessel dipped")},
    {Key::brix_in, QT_TR_NOOP("sugar of the sap")},
    {Key::hours, QT_TR_NOOP("hours run")},
    {Key::washed, QT_TR_NOOP("washed with")},
    {Key::what, QT_TR_NOOP("what")},
    {Key::vessel, QT_TR_NOOP("vessel")},
    {Key::price, QT_TR_NOOP("price")},
    {Key::why, QT_TR_NOOP("why")},
    {Key::chased, QT_TR_NOOP("chased with")},
    {Key::aid, QT_TR_NOOP("filter aid: kind, mass, lot")},
    {Key::papers, QT_TR_NOOP("papers")},
    {Key::heel, QT_TR_NOOP("stays in the filter")},
    {Key::result, QT_TR_NOOP("came out")},
    {Key::lot, QT_TR_NOOP("lot")},
    {Key::light_class, QT_TR_NOOP("class by eye")},
    {Key::flavour, QT_TR_NOOP("flavor")},
    {Key::off, QT_TR_NOOP("off-flavor")},
    {Key::sample, QT_TR_NOOP("sample kept")},
    {Key::size, QT_TR_NOOP("size")},
    {Key::of, QT_TR_NOOP("of what")},
    {Key::filler, QT_TR_NOOP("in the filler")},
    {Key::capped, QT_TR_NOOP("when capped")},
    {Key::broken, QT_TR_NOOP("broken besides")},
    {Key::laid, QT_TR_NOOP("laid down, minutes")},
    {Key::rinsed, QT_TR_NOOP("rinsed with")},
    {Key::checked, QT_TR_NOOP("looked over")},
    {Key::tested_for, QT_TR_NOOP("tested for")},
}};
static_assert(inOrder(keyRows, &KeyRow::key));

// What a key is called in a row of one deed, where that is another word.
struct OtherwiseRow {
    Deed deed;
    Key key;
    const char* words;
};
constexpr OtherwiseRow calledOtherwise[] = {
    {Deed::bought, Key::to, QT_TR_NOOP("to whom")},
    {Deed::bought, Key::from, QT_TR_NOOP("from whom")},
    {Deed::sold, Key::to, QT_TR_NOOP("to whom")},
    {Deed::sold, Key::from, QT_TR_NOOP("from whom")},
    {Deed::shipped, Key::to, QT_TR_NOOP("to whom")},
    {Deed::shipped, Key::from, QT_TR_NOOP("from whom")},
    {Deed::came_back, Key::to, QT_TR_NOOP("to whom")},
    {Deed::came_back, Key::from, QT_TR_NOOP("from whom")},
    {Deed::destroyed, Key::to, QT_TR_NOOP("to whom")},
    {Deed::destroyed, Key::from, QT_TR_NOOP("from whom")},
    {Deed::gathered, Key::from, QT_TR_NOOP("run or stop")},
    {Deed::packed, Key::brix, QT_TR_NOOP("density at packing")},
    {Deed::packed, Key::of, QT_TR_NOOP("container of")},
    {Deed::cleaned, Key::with, QT_TR_NOOP("cleaned with")},
    {Deed::cleaned, Key::vessel, QT_TR_NOOP("vessel or gear")},
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
        return tr("from %1").arg(text);
    case Key::to:
        return tr("to %1").arg(text);
    case Key::in:
        return tr("in %1").arg(text);
    case Key::lot:
        return tr("lot %1").arg(text);
    case Key::brix:
        return figure(Brix::ofSi(pair.si)).text();
    case Key::temp:
    case Key::filler:
    case Key::capped:
        return keyLabel(row.deed, pair.key) + u' ' + figure(Temperature::kelvin(pair.si), units).text();
    default:
        break;
    }
    // Whoever says yes says it by the word.
    const QString label = pair.key == Key::rinsed && pair.text == "yes" ? tr("rinsed") : keyLabel(row.deed, pair.key);
    return pair.text == "yes" ? label : pair.text == "no" ? namedAs(label, text) : label + u' ' + text;
}

} // namespace

QString deedName(Deed deed) {
    struct Row {
        Deed of;
        const char* words;
    };
    static constexpr std::array rows{Row{Deed::vessel, QT_TR_NOOP("vessel named")},
                                     Row{Deed::gathered, QT_TR_NOOP("gathered")},
                                     Row{Deed::moved, QT_TR_NOOP("moved")},
                                     Row{Deed::dipped, QT_TR_NOOP("dipped")},
                                     Row{Deed::concentrated, QT_TR_NOOP("concentrated")},
                                     Row{Deed::bought, QT_TR_NOOP("bought")},
                                     Row{Deed::sold, QT_TR_NOOP("sold in bulk")},
                                     Row{Deed::lost, QT_TR_NOOP("lost")},
                                     Row{Deed::pans_emptied, QT_TR_NOOP("pans emptied")},
                                     Row{Deed::press_on, QT_TR_NOOP("filter run begun")},
                                     Row{Deed::press_off, QT_TR_NOOP("filter run ended")},
                                     Row{Deed::graded, QT_TR_NOOP("graded")},
                                     Row{Deed::packed, QT_TR_NOOP("packed")},
                                     Row{Deed::shipped, QT_TR_NOOP("shipped")},
                                     Row{Deed::came_back, QT_TR_NOOP("came back")},
                                     Row{Deed::destroyed, QT_TR_NOOP("destroyed")},
                                     Row{Deed::cleaned, QT_TR_NOOP("cleaned")},
                                     Row{Deed::tested, QT_TR_NOOP("tested")}};
    static_assert(inOrder(rows, &Row::of) && hasCount<Deed, rows.size()>());
    const auto row = static_cast<std::size_t>(deed);
    return row < rows.size() ? tr(rows[row].words) : QString{};
}

QString valueLabel(Deed deed) {
    switch (deed) {
    case Deed::vessel:
        return tr("holds");
    case Deed::moved:
    case Deed::lost:
    case Deed::sold:
    case Deed::pans_emptied:
        return tr("how much; empty: all");
    case Deed::press_on:
    case Deed::press_off:
        return tr("went through");
    case Deed::graded:
        return tr("light let through");
    case Deed::packed:
    case Deed::shipped:
    case Deed::came_back:
    case Deed::destroyed:
        return tr("how many");
    case Deed::tested:
        return tr("found, ppb or words");
    default:
        return tr("how much");
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
        parts[1] += (parts[1].isEmpty() ? QString{} : QStringLiteral(" × ")) + sizeWord(size->text);
    for (const DayPair& pair : row.pairs)
        if (&pair != size)
            parts << pairWords(row, pair, units);
    parts.removeAll(QString{});
    return parts.join(QStringLiteral(", "));
}

QString detailWords(const DayRow& row, Units units, bool value, std::initializer_list<Key> keys) {
    QStringList parts;
    if (value)
        parts << valueWords(row, units);
    for (const DayPair& pair : row.pairs)
        if (std::ranges::find(keys, pair.key) != keys.end())
            parts << pairWords(row, pair, units);
    parts.removeAll(QString{});
    return parts.join(QStringLiteral(", "));
}

QString sizeWord(std::string_view written) { return utf8(written).replace(u'.', QLocale{}.decimalPoint()); }

QString buyerWord(std::string_view name) { return name.empty() ? tr("nobody named") : utf8(name); }

QString causeWord(const std::string& cause) {
    // Words of the log and of the ledger; another is shown as it was written.
    static constexpr const char* known[] = {
        QT_TRANSLATE_NOOP("Losses", "sour"),         QT_TRANSLATE_NOOP("Losses", "spilled"),
        QT_TRANSLATE_NOOP("Losses", "overflow"),     QT_TRANSLATE_NOOP("Losses", "tasting"),
        QT_TRANSLATE_NOOP("Losses", "sample"),       QT_TRANSLATE_NOOP("Losses", "scorched"),
        QT_TRANSLATE_NOOP("Losses", "given"),        QT_TRANSLATE_NOOP("Losses", "poured off"),
        QT_TRANSLATE_NOOP("Losses", "pans emptied"), QT_TRANSLATE_NOOP("Losses", "press heel"),
        QT_TRANSLATE_NOOP("Losses", "broken"),       QT_TRANSLATE_NOOP("Losses", "destroyed"),
        QT_TRANSLATE_NOOP("Losses", "no cause told")};
    for (const char* word : known)
        if (cause == word)
            return QCoreApplication::translate("Losses", word);
    return utf8(cause);
}

QString unwrittenWords(const Silence& silence) {
    const auto day = [](Instant at) { return QLocale{}.toString(WallClock{}.at(at), QStringLiteral("d MMM")); };
    return tr("Nothing was written from %1 to %2, and it has not been measured since: dip it.")
        .arg(day(silence.from), day(silence.to));
}

} // namespace panside
