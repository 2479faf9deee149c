#include "ui/ledger/book_form.h"

#include "core/boil/shift_log.h"
#include "ui/words/book_words.h"
#include "ui/words/fault_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <QRegularExpression>
#include <algorithm>
#include <map>
#include <set>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("BookForm", text); }
constexpr std::size_t wordsOffered = 24;

using K = std::optional<Key>;
constexpr K itself = std::nullopt; // the row's value

// In which order a person thinks of it; what is not here follows by the table.
std::vector<K> orderOf(Deed deed) {
    static const std::map<Deed, std::vector<K>> orders{
        {Deed::vessel, {Key::name, Key::kind, itself, Key::shape}},
        {Deed::gathered, {itself, Key::to, Key::from, Key::brix, Key::temp}},
        {Deed::moved, {Key::from, Key::to, itself}},
        {Deed::dipped, {Key::in, itself}},
        {Deed::concentrated, {Key::from, Key::to, itself, Key::brix, Key::brix_in}},
        {Deed::bought, {Key::what, itself, Key::from, Key::vessel, Key::brix}},
        {Deed::sold, {Key::what, itself, Key::to, Key::vessel}},
        {Deed::lost, {Key::from, itself, Key::why}},
        {Deed::press_on, {Key::from, Key::to, Key::aid, Key::papers, Key::temp}},
        {Deed::press_off, {itself, Key::result, Key::heel}},
        {Deed::graded, {Key::vessel, Key::lot, itself, Key::light_class, Key::off}},
        {Deed::packed, {Key::from, Key::lot, itself, Key::size, Key::of, Key::filler, Key::capped, Key::brix}},
        {Deed::shipped, {Key::lot, itself, Key::size, Key::to}},
        {Deed::came_back, {Key::lot, itself, Key::size, Key::why}},
        {Deed::destroyed, {Key::lot, itself, Key::size, Key::why}},
        {Deed::cleaned, {Key::vessel, Key::with}},
        {Deed::tested, {Key::of, Key::tested_for, itself}}};
    const auto order = orders.find(deed);
    return order == orders.end() ? std::vector{itself} : order->second;
}

// Keys that a row may have and that a sheet does not ask for: of another row of the same family.
bool isAsked(Deed deed, Key key) {
    static const std::map<Deed, std::set<Key>> unasked{{Deed::bought, {Key::to, Key::lot}},
                                                       {Deed::sold, {Key::from, Key::lot}},
                                                       {Deed::shipped, {Key::from, Key::why}},
                                                       {Deed::came_back, {Key::to, Key::price}},
                                                       {Deed::destroyed, {Key::from, Key::to, Key::price}},
                                                       {Deed::press_on, {Key::heel, Key::result}},
                                                       {Deed::press_off, {Key::from, Key::aid}}};
    const auto of = unasked.find(deed);
    return of == unasked.end() || !of->second.contains(key);
}
// A run's volume is told when it ends.
bool isValueAsked(Deed deed) { return rowOf(deed).value != DayValue::none && deed != Deed::press_on; }

QStringList split(std::string_view words) {
    QStringList all;
    for (const QString& word : utf8(words).split(u'|', Qt::SkipEmptyParts))
        all << word;
    return all;
}

// Words that stand ready before anybody used any.
QStringList usualWords(Deed deed, Key key, Units units) {
    switch (key) {
    case Key::why:
        return deed == Deed::lost ? split("sour|spilled|overflow|tasting|sample|scorched|given|poured off")
                                  : QStringList{};
    case Key::result:
        return split("clear|cloudy|back to the tank");
    case Key::chased:
        return split("water");
    case Key::papers:
        return split("new");
    case Key::tested_for:
        return split("lead");
    case Key::size:
        return units == Units::us ? split("0.5pt|1pt|1qt|0.5gal|1gal|100mL|250mL")
                                  : split("100mL|250mL|500mL|540mL|1L|4L");
    case Key::cal:
        return units == Units::us ? split("60degF|38degF|68degF") : split("20degC|15degC|3degC");
    default:
        return {};
    }
}

std::vector<Unit> unitsOf(DayValue value, Units units) {
    const bool us = units == Units::us;
    const std::vector<Unit> volumes =
        us ? std::vector<Unit>{Unit::gal, Unit::qt, Unit::pt} : std::vector<Unit>{Unit::L, Unit::mL};
    auto with = [&](Unit first) {
        std::vector<Unit> all{volumes.front(), first};
        all.insert(all.end(), volumes.begin() + 1, volumes.end());
        return all;
    };
    switch (value) {
    case DayValue::volume:
        return volumes;
    case DayValue::volumeOrMass:
        return with(us ? Unit::lb : Unit::kg);
    case DayValue::volumeOrDepth:
        return with(us ? Unit::in : Unit::mm);
    default:
        return {};
    }
}

BookField valueField(Deed deed, const BookContext& context) {
    const DayDeedRow& row = rowOf(deed);
    BookField field{.kind = BookField::Kind::number,
                    .name = QStringLiteral("value"),
                    .label = valueLabel(deed),
                    .needed = row.valueNeeded,
                    .units = unitsOf(row.value, context.units)};
    if (!field.units.empty()) {
        field.kind = BookField::Kind::amount;
        field.unit = field.units.front();
    } else if (row.value == DayValue::percent) {
        field.unit = Unit::percent;
    } else if (row.value == DayValue::traceOrWords) {
        field.kind = BookField::Kind::words;
    }
    return field;
}

// Names that are free yet, for whoever has no letters under the hand.
constexpr const char* kindsNamed[] = {"pail", "drum", "filter", "canner", "hold", "feed", "gather"};
QStringList freshNames(const BookContext& context) {
    QStringList names;
    for (const char* kind : kindsNamed)
        for (int number = 1;; ++number) {
            const QString name = choiceWord(kind) + u' ' + QString::number(number);
            if (context.known.vessels.contains(nameKey(name.toStdString())))
                continue;
            names << name;
            break;
        }
    return names;
}

QStringList namesFor(Deed deed, Key key, const BookContext& context) {
    const bool trade = deed == Deed::bought || deed == Deed::sold || deed == Deed::shipped || deed == Deed::came_back ||
                       deed == Deed::destroyed;
    if (key == Key::lot)
        return deed == Deed::packed ? QStringList{} : context.lots;
    if (trade && key == Key::to)
        return context.buyers.isEmpty() ? QStringList{tr("at the door"), tr("market"), tr("shop")} : context.buyers;
    if (trade && key == Key::from)
        return deed == Deed::bought ? context.sellers : context.buyers;
    const DayText text = keyOf(deed, key).text;
    if (key == Key::name)
        return freshNames(context);
    return text == DayText::vessel || text == DayText::gear ? context.vessels : QStringList{};
}

BookField keyField(Deed deed, Key key, const BookContext& context) {
    const DayKeyRow row = keyOf(deed, key);
    const DayDeedRow& its = rowOf(deed);
    BookField field{.kind = BookField::Kind::words,
                    .key = key,
                    .name = utf8(row.name),
                    .label = keyLabel(deed, key),
                    .needed = std::ranges::find(its.needed, key) != its.needed.end(),
                    .offers = namesFor(deed, key, context)};
    switch (row.text) {
    case DayText::choice:
        field.kind = BookField::Kind::choice;
        field.offers = split(row.choices);
        break;
    case DayText::plain:
        field.kind = BookField::Kind::number;
        field.unit = row.unit;
        break;
    case DayText::amount:
        field.kind = BookField::Kind::amount;
        field.unit = unitOf(dimensionOf(row.unit), context.units);
        break;
    case DayText::sapTemperature:
    case DayText::temperature:
        field.kind = BookField::Kind::amount;
        field.unit = unitOf(Dimension::temperature, context.units);
        field.units = {Unit::degF, Unit::degC};
        if (context.units == Units::metric)
            std::swap(field.units[0], field.units[1]);
        break;
    default:
        break;
    }
    for (const QString& word : usualWords(deed, key, context.units))
        if (!field.offers.contains(word))
            field.offers << word;
    if (const auto used = context.words.find({deed, key}); used != context.words.end())
        for (const QString& word : used->second)
            if (!field.offers.contains(word))
                field.offers << word;
    return field;
}

// A number as the log writes it: a point, no blanks, the unit that was typed behind it apart.
struct Typed {
    QString number;
    std::optional<Unit> unit;
    bool bareGallon = false, unreadable = false;
};
Typed typedIn(const BookField& field) {
    QString text = field.answer.trimmed();
    static const QRegularExpression parts{QStringLiteral("^([-\u2212]?[0-9.,]*)\\s*(.*)$")};
    const auto match = parts.match(text);
    QString number = match.captured(1);
    number.replace(u',', u'.').replace(u'\u2212', u'-');
    QString unit = match.captured(2).trimmed();
    if (unit.isEmpty())
        return {number, {}};
    unit.remove(QChar{u'°'});
    if (unit.startsWith(u"deg", Qt::CaseInsensitive))
        unit.remove(0, 3);
    unit = unit.toLower();
    static constexpr std::pair<const char16_t*, Unit> shorter[] = {
        {u"f", Unit::degF}, {u"c", Unit::degC},    {u"l", Unit::L},      {u"ml", Unit::mL},
        {u"po", Unit::in},  {u"usgal", Unit::gal}, {u"%", Unit::percent}};
    for (const auto& [written, meant] : shorter)
        if (unit == QStringView{written})
            return {number, meant};
    const auto named = unitNamed(unit.toStdString());
    return {number, named, named == Unit::gal, !named};
}

BookProblem missing(const BookField& field) {
    return {field.name, tr("%1: type it, or leave with Escape.").arg(field.label), field.offers};
}

BookProblem unreadable(const QString& name, const QString& label, const QString& given) {
    return {name, tr("%1: %2 cannot be read. Type a number, and its unit if it is another one.").arg(label, given), {}};
}

// A grade without one would wipe out the one before it.
bool saysNoGrade(const BookForm& form) {
    constexpr std::optional<Key> grades[] = {itself, Key::light_class, Key::flavour, Key::off};
    return std::ranges::all_of(grades, [&](std::optional<Key> key) { return form.answer(key).trimmed().isEmpty(); });
}

// Free words may not break the pairs apart.
std::string clean(QString text) {
    text.replace(u';', u',');
    return text.trimmed().toStdString();
}

const BookField* fieldNamed(const BookForm& form, const std::string& name) {
    for (const BookField& field : form.fields)
        if (field.name.toStdString() == name)
            return &field;
    return nullptr;
}

// A unit as people write it.
QString bounds(Sentence want) {
    if (const auto unit = want.parts.size() == 3 ? unitNamed(want.parts[2]) : std::nullopt)
        want.parts[2] = symbolOf(*unit).toStdString();
    return wantedWords(want);
}

BookProblem problemOf(const Fault& fault, const BookForm& form) {
    const BookField* field = fieldNamed(form, fault.field);
    const QString label = field ? field->label : QString::fromStdString(fault.field);
    const QString given = QString::fromStdString(fault.given), near = wantedWords(fault.wanted);
    BookProblem problem{field ? field->name : QString{}, {}, {}};
    switch (fault.slip) {
    case Slip::outOfRange:
        problem.words = tr("%1: %2 is not possible. The range is %3.").arg(label, given, bounds(fault.wanted));
        if (!fault.meant.empty()) {
            problem.words += u' ' + tr("Did you mean %1?").arg(QString::fromStdString(fault.meant));
            problem.offers << QString::fromStdString(fault.meant);
        }
        break;
    case Slip::vesselUnknown:
        problem.words = near.isEmpty()
                            ? tr("No vessel is called %1. Name it first.").arg(given)
                            : tr("No vessel is called %1. Did you mean %2? If not, name it first.").arg(given, near);
        if (!near.isEmpty())
            problem.offers << near;
        break;
    case Slip::codeTwice:
        problem.words = tr("Lot %1 is already another packing. The next free code is %2.").arg(given, near);
        problem.offers << near;
        break;
    case Slip::notWhole:
        problem.words = tr("%1: %2 is not a whole number. Type how many there are.").arg(label, given);
        break;
    case Slip::intoItself:
        problem.words = tr("%1 is the vessel it comes from. Name another.").arg(given);
        break;
    case Slip::detailMissing:
        problem.words = tr("%1: type it, or leave with Escape.").arg(label);
        break;
    default:
        return unreadable(problem.field, label, given);
    }
    return problem;
}

} // namespace

std::shared_ptr<const BookContext> bookContext(const HouseLedger* house, Units units, Instant now) {
    auto context = std::make_shared<BookContext>();
    context->units = units;
    context->now = now;
    context->asksGallons = QLocale{}.language() == QLocale::French;
    if (!house)
        return context;
    context->known = house->known();
    std::vector<const Vessel*> vessels;
    for (const Vessel& vessel : house->ledger().vessels())
        if (!vessel.out)
            vessels.push_back(&vessel);
    std::ranges::stable_sort(vessels, [](const Vessel* a, const Vessel* b) { return a->touched > b->touched; });
    for (const Vessel* vessel : vessels)
        context->vessels << utf8(vessel->name);
    const auto& lots = house->ledger().lots();
    for (auto lot = lots.rbegin(); lot != lots.rend(); ++lot)
        context->lots << utf8(lot->code);
    const auto add = [](QStringList& list, const QString& word) {
        if (!word.isEmpty() && static_cast<std::size_t>(list.size()) < wordsOffered && !list.contains(word))
            list << word;
    };
    const auto& rows = house->rows();
    for (auto row = rows.rbegin(); row != rows.rend(); ++row) {
        add(context->hands, utf8(row->fact->by));
        const auto* day = std::get_if<DayRow>(&row->fact->what);
        if (!day)
            continue;
        for (const DayPair& pair : day->pairs) {
            const DayText text = keyOf(day->deed, pair.key).text;
            const bool out = day->deed == Deed::sold || day->deed == Deed::shipped || day->deed == Deed::came_back;
            if (out && (pair.key == Key::to || pair.key == Key::from))
                add(context->buyers, utf8(pair.text));
            else if (day->deed == Deed::bought && pair.key == Key::from)
                add(context->sellers, utf8(pair.text));
            else if ((text == DayText::words && pair.key != Key::lot) || pair.key == Key::size)
                add(context->words[{day->deed, pair.key}], utf8(pair.text));
        }
    }
    return context;
}

const BookField* BookForm::field(std::optional<Key> key) const {
    for (const BookField& one : fields)
        if (one.key == key)
            return &one;
    return nullptr;
}
BookField* BookForm::field(std::optional<Key> key) {
    for (BookField& one : fields)
        if (one.key == key)
            return &one;
    return nullptr;
}
QString BookForm::answer(std::optional<Key> key) const {
    const BookField* one = field(key);
    return one ? one->answer.trimmed() : QString{};
}
void BookForm::put(std::optional<Key> key, const QString& text) {
    if (BookField* one = field(key))
        one->answer = text;
}

void BookForm::takeKindFromName() {
    if (deed != Deed::vessel || !answer(Key::kind).isEmpty())
        return;
    const QString named = answer(Key::name).section(u' ', 0, -2);
    for (const char* kind : kindsNamed)
        if (named == choiceWord(kind))
            put(Key::kind, QString::fromLatin1(kind));
}

BookForm bookForm(Deed deed, std::shared_ptr<const BookContext> context) {
    BookForm form;
    form.deed = deed;
    form.pressedAt = context->now;
    form.title = deedName(deed);
    std::vector<K> order = orderOf(deed);
    order.push_back(itself);
    for (const Key key : rowOf(deed).taken)
        order.emplace_back(key);
    for (const K& key : order) {
        if (form.field(key) || (key && !isAsked(deed, *key)) || (!key && !isValueAsked(deed)))
            continue;
        form.fields.push_back(key ? keyField(deed, *key, *context) : valueField(deed, *context));
    }
    form.context = std::move(context);
    return form;
}

std::variant<Fact, BookProblem> factOf(const BookForm& form) {
    if (form.deed == Deed::graded && saysNoGrade(form))
        return BookProblem{QStringLiteral("value"),
                           tr("Type the light that is let through, or the class, the flavor or what is off."),
                           {}};
    std::string value, unit, detail;
    for (const BookField& field : form.fields) {
        if (field.answer.trimmed().isEmpty()) {
            if (field.needed)
                return missing(field);
            continue;
        }
        std::string text = clean(field.answer);
        if (field.kind == BookField::Kind::number || field.kind == BookField::Kind::amount) {
            const Typed typed = typedIn(field);
            if (typed.bareGallon && form.context && form.context->asksGallons)
                return BookProblem{field.name,
                                   tr("Which gallon? The US one is gal, 3.785 L; the imperial one is impgal, 4.546 L."),
                                   {typed.number + QStringLiteral(" usgal"), typed.number + QStringLiteral(" impgal")}};
            const std::string number = typed.number.toStdString();
            if (!numberIn(number) || typed.unreadable)
                return unreadable(field.name, field.label, field.answer.trimmed());
            const Unit meant = typed.unit.value_or(field.unit);
            if (!field.key) {
                value = number;
                unit = nameOf(meant);
                continue;
            }
            text = field.kind == BookField::Kind::amount ? number + std::string{nameOf(meant)} : number;
        } else if (!field.key) { // what a test found: a number is of parts in a thousand million
            value = text;
            if (numberIn(text))
                unit = "ppb";
            continue;
        }
        if (field.key == Key::size || field.key == Key::cal || field.key == Key::tare) {
            QString written = QString::fromStdString(text);
            written.remove(u' ').replace(u',', u'.');
            text = written.toStdString();
        }
        detail += (detail.empty() ? "" : ";") + std::string{keyOf(form.deed, *field.key).name} + "=" + text;
    }
    auto made = factOf({}, rowOf(form.deed).name, value, unit, detail, form.at());
    if (const auto* fault = std::get_if<Fault>(&made))
        return problemOf(*fault, form);
    Fact fact = std::get<Fact>(std::move(made));
    fact.by = form.by.toStdString();
    if (form.earlier.count() > 0)
        fact.entered = form.pressedAt;
    if (form.context) {
        ReadLog one;
        one.facts = {fact};
        one.lines = {1};
        one.dayRows = 1;
        if (const auto faults = bookFaults(one, form.context->known); !faults.empty())
            return problemOf(faults.front(), form);
    }
    return fact;
}

std::optional<double> siOf(const BookForm& form, std::optional<Key> key) {
    const BookField* field = form.field(key);
    if (!field || field->answer.trimmed().isEmpty())
        return std::nullopt;
    const Typed typed = typedIn(*field);
    const auto number = numberIn(typed.number.toStdString());
    return number ? std::optional{toSi(*number, typed.unit.value_or(field->unit))} : std::nullopt;
}

} // namespace panside
