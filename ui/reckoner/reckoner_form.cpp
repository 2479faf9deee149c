#include "ui/reckoner/reckoner_form.h"

#include "core/physics/wood.h"
#include "ui/reckoner/reckoner_words.h"

#include <QCoreApplication>
#include <algorithm>

#define WORD(text) QT_TRANSLATE_NOOP("Reckoner", text)

namespace panside {
namespace {

enum class Asks {
    pressure,
    temperature,
    rise,
    elevation,
    depth,
    area,
    volume,
    smallVolume,
    flow,
    sugar,
    time,
    share,
    voltage,
    resistance,
    index,
    clock,
    wire,
    wood
};

struct FieldRow {
    const char* argument;
    const char* label;
    Asks asks;
    bool optional = false;
};
struct WayRow {
    const char* name; // empty where there is only one
    std::vector<FieldRow> fields;
};
struct SumRow {
    std::string_view kind;
    std::vector<WayRow> ways;
};

const FieldRow station{"pressure", WORD("Barometer at the pan"), Asks::pressure};
const FieldRow seaLevel{"sea-level", WORD("Pressure at sea level"), Asks::pressure};
const FieldRow altimeter{"altimeter", WORD("Altimeter setting"), Asks::pressure};
const FieldRow elevation{"elevation", WORD("Height above the sea"), Asks::elevation};
const FieldRow outside{"air", WORD("Outside air"), Asks::temperature, true};
const FieldRow syrup{"density", WORD("Density"), Asks::sugar};
const FieldRow rise{"rise", WORD("Rise above water"), Asks::rise};

const std::vector<SumRow> sumRows{
    {"boiling",
     {{WORD("Barometer"), {station}},
      {WORD("Weather report"), {seaLevel, elevation, outside}},
      {WORD("Altimeter setting"), {altimeter, elevation}}}},
    {"target",
     {{WORD("From the density"), {station, syrup}},
      {WORD("From the rise"), {station, rise}},
      {WORD("By weather report"), {seaLevel, elevation, outside, syrup}}}},
    {"cup",
     {{"",
       {{"reading", WORD("Hydrometer shows"), Asks::sugar},
        {"temp", WORD("In the cup"), Asks::temperature},
        {"cal", WORD("Scale made for"), Asks::temperature},
        {"volume", WORD("How much syrup"), Asks::volume, true},
        {"target", WORD("Wanted density"), Asks::sugar, true},
        {"sap", WORD("Sap to thin it"), Asks::sugar, true}}}}},
    {"sap", {{"", {{"sap", WORD("Sap"), Asks::sugar}, syrup, {"volume", WORD("How much syrup"), Asks::volume, true}}}}},
    {"blend",
     {{"",
       {{"volume1", WORD("First part"), Asks::volume},
        {"density1", WORD("Its density"), Asks::sugar},
        {"volume2", WORD("Second part"), Asks::volume},
        {"density2", WORD("Its density"), Asks::sugar}}}}},
    {"density", {{"", {syrup, {"temp", WORD("Temperature"), Asks::temperature}}}}},
    {"refraction",
     {{WORD("From the index"),
       {{"index", WORD("Index as read"), Asks::index}, {"temp", WORD("Temperature"), Asks::temperature}}},
      {WORD("From the density"), {syrup}}}},
    {"baume",
     {{WORD("From the density"), {syrup, {"cal", WORD("Scale made for"), Asks::temperature, true}}},
      {WORD("From degrees Baumé"),
       {{"baume", WORD("Degrees Baumé"), Asks::sugar}, {"cal", WORD("Scale made for"), Asks::temperature, true}}}}},
    {"wood", {{"", {{"wood", WORD("Wood"), Asks::wood}, {"moisture", WORD("Water in it (wet basis)"), Asks::share}}}}},
    {"shutdown",
     {{"",
       {{"area", WORD("Area of the pans"), Asks::area},
        {"depth", WORD("Depth to add"), Asks::depth},
        {"rate", WORD("Water boiled off"), Asks::flow},
        {"burn-out", WORD("Fire burns out in"), Asks::time}}}}},
    {"thermocouple",
     {{WORD("From the voltage"),
       {{"type", WORD("Type"), Asks::wire},
        {"mv", WORD("Voltage"), Asks::voltage},
        {"junction", WORD("Its other end"), Asks::temperature, true}}},
      {WORD("From the temperature"),
       {{"type", WORD("Type"), Asks::wire},
        {"temp", WORD("Temperature"), Asks::temperature},
        {"junction", WORD("Its other end"), Asks::temperature, true}}}}},
    {"rtd",
     {{WORD("From the resistance"), {{"ohm", WORD("Resistance"), Asks::resistance}}},
      {WORD("From the temperature"), {{"temp", WORD("Temperature"), Asks::temperature}}}}},
    {"fill",
     {{"",
       {{"size", WORD("Size of the container"), Asks::smallVolume},
        syrup,
        {"at", WORD("Meant at"), Asks::temperature, true}}}}},
    {"containers",
     {{"",
       {{"volume", WORD("How much syrup"), Asks::volume},
        syrup,
        {"size", WORD("Size of the container"), Asks::smallVolume},
        {"size", WORD("Another size"), Asks::smallVolume, true}}}}},
    {"colour",
     {{"",
       {{"volume1", WORD("First part"), Asks::volume},
        {"light1", WORD("Its light"), Asks::share},
        {"volume2", WORD("Second part"), Asks::volume},
        {"light2", WORD("Its light"), Asks::share}}}}},
    {"concentrate",
     {{"",
       {{"volume1", WORD("How much sap"), Asks::volume},
        {"sugar1", WORD("Its sugar"), Asks::sugar},
        {"to", WORD("Concentrate"), Asks::sugar}}}}},
    {"sapscale",
     {{"",
       {{"reading", WORD("Hydrometer shows"), Asks::sugar},
        {"temp", WORD("In the sap"), Asks::temperature},
        {"cal", WORD("Scale made for"), Asks::temperature}}}}},
    {"tonight",
     {{"",
       {{"volume1", WORD("Sap on hand"), Asks::volume},
        {"sugar1", WORD("Its sugar"), Asks::sugar},
        {"rate", WORD("Water boiled off"), Asks::flow},
        {"light", WORD("Lit at"), Asks::clock, true},
        {"cold", WORD("Cold by"), Asks::clock, true},
        {"concentrate", WORD("Concentrate"), Asks::sugar, true},
        {"keep", WORD("Sap to keep back"), Asks::volume, true}}}}},
    {"run",
     {{"",
       {{"night", WORD("Coldest of the night"), Asks::temperature},
        {"day", WORD("Warmest of the day"), Asks::temperature},
        {"taps", WORD("How many taps"), Asks::index, true}}}}}};

const SumRow& rowOf(std::size_t sum) {
    const auto found = std::ranges::find(sumRows, sums::reckonKinds()[sum].name, &SumRow::kind);
    return *found;
}

std::vector<Unit> unitsFor(Asks asks, Units units) {
    const auto order = [units](Unit us, Unit metric) {
        return units == Units::us ? std::vector{us, metric} : std::vector{metric, us};
    };
    switch (asks) {
    case Asks::pressure:
        return units == Units::us ? std::vector{Unit::inHg, Unit::hPa, Unit::kPa}
                                  : std::vector{Unit::hPa, Unit::kPa, Unit::inHg};
    case Asks::temperature:
    case Asks::rise:
        return order(Unit::degF, Unit::degC);
    case Asks::elevation:
        return order(Unit::ft, Unit::m);
    case Asks::depth:
        return order(Unit::in, Unit::mm);
    case Asks::area:
        return order(Unit::ft2, Unit::m2);
    case Asks::volume:
        return order(Unit::gal, Unit::L);
    case Asks::smallVolume:
        return units == Units::us ? std::vector{Unit::pt, Unit::qt, Unit::gal, Unit::cup, Unit::mL, Unit::L}
                                  : std::vector{Unit::mL, Unit::L, Unit::pt, Unit::qt, Unit::gal, Unit::cup};
    case Asks::flow:
        return order(Unit::galph, Unit::Lph);
    case Asks::sugar:
        return {Unit::brix, Unit::baume};
    case Asks::time:
        return {Unit::min};
    case Asks::share:
        return {Unit::percent};
    case Asks::voltage:
        return {Unit::mV};
    case Asks::resistance:
        return {Unit::ohm};
    case Asks::index:
    case Asks::clock:
    case Asks::wire:
    case Asks::wood:
        return {};
    }
    return {};
}

QStringList choicesFor(Asks asks) {
    QStringList choices;
    if (asks == Asks::wire)
        choices = {QStringLiteral("K"), QStringLiteral("J"), QStringLiteral("T")};
    if (asks == Asks::wood)
        for (const Wood& wood : woods())
            choices << QString::fromUtf8(wood.name.data(), static_cast<qsizetype>(wood.name.size()));
    return choices;
}

QString word(const char* text) { return *text ? QCoreApplication::translate("Reckoner", text) : QString{}; }

// As the sums read it: a point, a plain minus, the unit behind it.
std::string written(const ReckonerField& field) {
    QString text = field.text.trimmed();
    text.replace(QLatin1Char(','), QLatin1Char('.'));
    text.replace(QChar{0x2212}, QLatin1Char('-'));
    std::string amount = text.toStdString();
    if (!field.units.empty())
        amount += nameOf(field.units[field.unit]);
    return amount;
}

sums::Arguments argumentsOf(const ReckonerForm& form) {
    const auto kind = sums::reckonKinds()[form.sum].name;
    if (kind == "concentrate")
        return {{"sap", written(form.fields[0]) + "@" + written(form.fields[1])}, {"to", written(form.fields[2])}};
    if (kind == "blend" || kind == "colour")
        return {{"part", written(form.fields[0]) + "@" + written(form.fields[1])},
                {"part", written(form.fields[2]) + "@" + written(form.fields[3])}};
    sums::Arguments arguments;
    if (kind == "tonight")
        arguments = {{"stand", written(form.fields[0]) + "@" + written(form.fields[1])}};
    for (std::size_t i = arguments.empty() ? 0 : 2; i < form.fields.size(); ++i)
        if (const ReckonerField& field = form.fields[i]; !field.text.trimmed().isEmpty())
            arguments.emplace_back(field.argument, written(field));
    return arguments;
}

ReckonerAnswer refusedAnswer(const ReckonerForm& form, const sums::Refusal& refusal) {
    ReckonerAnswer answer;
    answer.state = ReckonerAnswer::State::refused;
    answer.argument = refusal.argument;
    QStringList words;
    for (const sums::Sentence& sentence : refusal.why)
        words << inWords(sentence, form.units);
    answer.words = words.join(QLatin1Char(' '));
    for (const ReckonerField& field : form.fields)
        if (field.argument == refusal.argument)
            answer.words = QCoreApplication::translate("Reckoner", "%1: %2").arg(field.label, answer.words);
    return answer;
}

ReckonerAnswer doneAnswer(const sums::Answer& reckoned, Units units) {
    ReckonerAnswer answer;
    answer.state = ReckonerAnswer::State::done;
    for (const sums::Figure& figure : reckoned.figures) {
        const QString name = inWords(figure.name);
        if (answer.name.isEmpty()) {
            answer.name = name;
            answer.value = figureInWords(figure.shown, units);
        } else
            answer.others.emplace_back(name, figureInWords(figure.shown, units));
    }
    for (const sums::Sentence& step : reckoned.sum)
        answer.sum << inWords(step, units);
    answer.uncertainty = inWords(reckoned.uncertainty, units);
    answer.source = QString::fromUtf8(reckoned.source.data(), static_cast<qsizetype>(reckoned.source.size()));
    answer.caution = inWords(reckoned.caution);
    return answer;
}

} // namespace

QString choiceInWords(const QString& choice) {
    // Context "wood": the names of the woods, with blanks for dashes.
    return QCoreApplication::translate(
        "wood", QString{choice}.replace(QLatin1Char('-'), QLatin1Char(' ')).toUtf8().constData());
}

QStringList reckonerSums() {
    QStringList titles;
    for (const sums::Kind& kind : sums::reckonKinds())
        titles << inWords(kind.title);
    return titles;
}

QStringList waysOf(std::size_t sum) {
    QStringList names;
    for (const WayRow& way : rowOf(sum).ways)
        names << word(way.name);
    return names;
}

ReckonerForm reckonerForm(std::size_t sum, std::size_t way, Units units) {
    ReckonerForm form{sum, way, {}, units};
    for (const FieldRow& row : rowOf(sum).ways[way].fields) {
        ReckonerField field;
        field.argument = row.argument;
        field.label = word(row.label);
        field.units = unitsFor(row.asks, units);
        if (field.argument == "baume")
            std::ranges::reverse(field.units);
        field.choices = choicesFor(row.asks);
        field.optional = row.optional;
        if (!field.choices.isEmpty())
            field.text = field.choices.front();
        form.fields.push_back(std::move(field));
    }
    return form;
}

ReckonerAnswer reckonerAnswer(const ReckonerForm& form) {
    for (const ReckonerField& field : form.fields)
        if (!field.optional && field.text.trimmed().isEmpty()) {
            ReckonerAnswer waiting;
            waiting.argument = field.argument;
            waiting.words = QCoreApplication::translate("Reckoner", "Type: %1.").arg(field.label);
            return waiting;
        }
    const auto outcome = sums::reckon(sums::reckonKinds()[form.sum].name, argumentsOf(form));
    if (const auto* refusal = std::get_if<sums::Refusal>(&outcome))
        return refusedAnswer(form, *refusal);
    return doneAnswer(std::get<sums::Answer>(outcome), form.units);
}

} // namespace panside
