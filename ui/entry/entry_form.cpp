#include "ui/entry/entry_form.h"

#include "core/boil/height.h"
#include "core/boil/repeated_draw.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "core/physics/air.h"
#include "ui/words/alarm_words.h"
#include "ui/words/fact_words.h"
#include "ui/words/fault_words.h"
#include "ui/words/fire_words.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("EntryForm", text); }

using Kind = EntryField::Kind;

EntryField number(const char* name, const QString& label, Unit unit, bool needed = false) {
    return {.kind = Kind::number, .name = QString::fromLatin1(name), .label = label, .unit = unit, .needed = needed};
}

EntryField words(const char* name, const QString& label, bool needed = false) {
    return {.kind = Kind::words, .name = QString::fromLatin1(name), .label = label, .needed = needed};
}

EntryField choice(const char* name, const QString& label, const QStringList& choices) {
    return {.kind = Kind::choice,
            .name = QString::fromLatin1(name),
            .label = label,
            .answer = choices.value(0),
            .choices = choices};
}

// The words of a choice, in the order of what they mean.
QStringList scaleChoices() { return {QStringLiteral("°Brix"), QStringLiteral("°Bé")}; }
QStringList instrumentChoices() { return {tr("hydrometer"), tr("refractometer")}; }
QStringList calibrationChoices() { return {QStringLiteral("60 °F"), QStringLiteral("20 °C")}; }
// A sap hydrometer is made for sap as it comes; any other must be told, and the temperature with it.
constexpr std::array<const char*, 4> sapScales{"", "38degF", "60degF", "20degC"};
QStringList sapScaleChoices() {
    return {tr("as read"), QStringLiteral("38 °F"), QStringLiteral("60 °F"), QStringLiteral("20 °C")};
}
QStringList comesOrLeaves() { return {tr("comes on"), tr("leaves")}; }

QStringList readingChoices() {
    QStringList names;
    for (const ReadingRow& row : allReadings())
        names << readingName(row.series);
    return names;
}

bool isAbout(Action action, const AlarmPicture& alarm) {
    return action == Action::alarmShelve && alarm.stands() && alarm.alarm != Alarm::scorch_risk;
}

// A shift that ends takes the draw and the fire out of sight.
QString lossOf(Action action, const Picture& picture) {
    if (action != Action::shiftEnd)
        return {};
    const bool lit = picture.litAt && !picture.shutdownAt;
    if (picture.drawing && lit)
        return tr("The draw is open and the fire is lit. Close the draw and stop firing first: when the shift is over, "
                  "nothing is watched.");
    if (picture.drawing)
        return tr("The draw is open. Close it first: when the shift is over, nothing is watched.");
    return lit ? tr("The fire is lit. Stop firing first, and stay until the pans are still: when the shift is over, "
                    "nothing is watched.")
               : QString{};
}

// Set to the fire that is called, so that the key alone answers the call. Once there are several a glove chooses.
EntryField whichFire(const Picture& picture) {
    if (picture.fires.size() > 1) {
        QStringList names;
        for (const FirePicture& fire : picture.fires)
            names << fireName(fire.name);
        return choice("fire", tr("which fire"), names);
    }
    EntryField one = words("fire", tr("fire, if several"));
    if (!picture.fires.empty())
        one.answer = QString::fromStdString(picture.fires.front().name);
    return one;
}

std::vector<EntryField> fieldsOf(Action action, const Picture& picture, Units units) {
    const Unit degrees = unitOf(Dimension::temperature, units);
    const Unit volume = unitOf(Dimension::volume, units);
    switch (action) {
    case Action::drawClose:
        return {number("volume", tr("volume drawn, if known"), volume), words("to", tr("into"))};
    case Action::densityCheck:
        return {number("reading", tr("reading"), Unit::brix, true), number("cup", tr("cup temperature"), degrees),
                choice("scale", tr("scale"), scaleChoices()), choice("instrument", tr("with"), instrumentChoices()),
                choice("calibrated", tr("made for"), calibrationChoices())};
    case Action::fired:
        return {number("load", tr("wood, if weighed"), unitOf(Dimension::mass, units)),
                words("wood", tr("kind of wood")), whichFire(picture)};
    case Action::sapIn:
        return {number("volume", tr("volume"), volume, true), number("brix", tr("sugar, if known"), Unit::brix),
                words("from", tr("from where")), number("temperature", tr("its temperature, if taken"), degrees),
                choice("calibrated", tr("sap scale made for"), sapScaleChoices())};
    case Action::alarmShelve: {
        QStringList names;
        for (const AlarmPicture& alarm : picture.alarms)
            if (isAbout(action, alarm))
                names << alarmName(alarm.alarm);
        return {choice("alarm", tr("alarm"), names), number("minutes", tr("for"), Unit::min, true)};
    }
    case Action::waterCheck: {
        auto boiled = number("boiled", tr("water boils at, on this probe"), degrees, true);
        if (picture.syrupPan)
            boiled.answer = figure(*picture.syrupPan, units, 2).number;
        return {boiled};
    }
    case Action::handReading:
        return {choice("reading", tr("reading"), readingChoices()),
                number("value", tr("value"), readingUnit(Series::syrup_pan, units), true)};
    case Action::defoamer:
        return {number("drops", tr("drops"), Unit::none)};
    case Action::note:
        return {words("text", tr("note"), true)};
    case Action::crew:
        return {words("name", tr("name"), true), choice("way", tr("who"), comesOrLeaves())};
    default:
        return {};
    }
}

// A number typed in a language that writes a comma becomes one with a point.
std::string typed(const EntryForm& form, const char* name) {
    const EntryField* field = form.field(QString::fromLatin1(name));
    if (!field)
        return {};
    QString text = field->answer.trimmed();
    if (field->kind == Kind::number)
        text.replace(u',', u'.').replace(u'\u2212', u'-');
    return text.toStdString();
}

int chosen(const EntryForm& form, const char* name) {
    const EntryField* field = form.field(QString::fromLatin1(name));
    return field ? static_cast<int>(field->choices.indexOf(field->answer)) : -1;
}

Unit unitOfField(const EntryForm& form, const char* name) {
    const EntryField* field = form.field(QString::fromLatin1(name));
    return field ? field->unit : Unit::none;
}

// One row of the shift log in the making: what the sheet's answers say there.
struct Row {
    std::string what, value, unit, detail;

    void number(const EntryForm& form, const char* name) {
        value = typed(form, name);
        unit = value.empty() ? std::string{} : std::string{nameOf(unitOfField(form, name))};
    }
    // Free words may not break the pairs apart.
    void pair(const std::string& key, std::string text) {
        if (text.empty())
            return;
        std::ranges::replace(text, ';', ',');
        detail += (detail.empty() ? "" : ";") + key + "=" + text;
    }
    void pairWithUnit(const std::string& key, const EntryForm& form, const char* name) {
        const std::string text = typed(form, name);
        pair(key, text.empty() ? text : text + std::string{nameOf(unitOfField(form, name))});
    }
};

Row checkRow(const EntryForm& form) {
    Row row;
    row.what = "density_check";
    row.value = typed(form, "reading");
    row.unit = nameOf(chosen(form, "scale") == 1 ? Unit::baume : Unit::brix);
    row.pair("with", chosen(form, "instrument") == 1 ? "refractometer" : "hydrometer");
    row.pairWithUnit("temp", form, "cup");
    row.pair("cal", chosen(form, "calibrated") == 1 ? "20degC" : "60degF");
    return row;
}

Row sapRow(const EntryForm& form) {
    Row row;
    row.what = "sap_in";
    row.number(form, "volume");
    row.pair("brix", typed(form, "brix"));
    row.pair("from", typed(form, "from"));
    row.pairWithUnit("temp", form, "temperature");
    if (const auto scale = static_cast<std::size_t>(std::max(chosen(form, "calibrated"), 0)); scale > 0)
        row.pair("cal", sapScales[scale]);
    return row;
}

Row rowFor(const EntryForm& form) {
    Row row;
    switch (form.action) {
    case Action::fireLit:
        row.what = "lit";
        break;
    case Action::fired:
        row.what = "fired";
        row.number(form, "load");
        row.pair("wood", typed(form, "wood"));
        row.pair("fire", fireNamed(QString::fromStdString(typed(form, "fire"))));
        break;
    case Action::drawOpen:
        row.what = "draw_open";
        break;
    case Action::drawClose:
        row.what = "draw_close";
        row.number(form, "volume");
        row.pair("to", typed(form, "to"));
        break;
    case Action::densityCheck:
        return checkRow(form);
    case Action::waterCheck:
        row.what = "water_check";
        row.number(form, "boiled");
        break;
    case Action::sapIn:
        return sapRow(form);
    case Action::handReading:
        row.number(form, "value");
        row.what = rowOf(allReadings()[static_cast<std::size_t>(std::max(chosen(form, "reading"), 0))].series).name;
        row.pair("probe", "hand");
        break;
    case Action::panSwapped:
        row.what = "pan_swapped";
        break;
    case Action::defoamer:
        row.what = "defoamer";
        row.value = typed(form, "drops");
        break;
    case Action::crew:
        row.what = "crew";
        row.pair(chosen(form, "way") == 1 ? "off" : "by", typed(form, "name"));
        break;
    case Action::stopFiring:
        row.what = "shutdown";
        break;
    case Action::shiftEnd:
        row.what = "shift_end";
        break;
    case Action::note:
        row.what = "note";
        row.detail = typed(form, "text");
        break;
    default:
        break;
    }
    return row;
}

// Alarms go by the program's names for them, not by words.
std::variant<std::vector<Fact>, EntryProblem> shelveFacts(const EntryForm& form) {
    const auto minutes = numberIn(typed(form, "minutes"));
    if (!minutes || *minutes <= 0 || *minutes > 240)
        return EntryProblem{QStringLiteral("minutes"), tr("Type how many minutes, from 1 to 240.")};
    const int which = chosen(form, "alarm");
    if (which < 0 || which >= static_cast<int>(form.alarms.size()))
        return EntryProblem{{}, tr("There is no alarm that this would change.")};
    const auto name = nameOf(form.alarms[static_cast<std::size_t>(which)]);
    return std::vector{Fact{.at = form.at(), .what = AlarmShelved{std::string{name}, Duration{*minutes * 60}}}};
}

} // namespace

const EntryField* EntryForm::field(const QString& name) const {
    const auto found = std::ranges::find(fields, name, &EntryField::name);
    return found == fields.end() ? nullptr : &*found;
}

void EntryForm::answer(const QString& name, const QString& text) {
    for (EntryField& field : fields)
        if (field.name == name)
            field.answer = text;
}

void EntryForm::offer(const QString& name, const QStringList& words) {
    for (EntryField& field : fields)
        if (field.name == name)
            field.offers = words;
}

bool makesFact(Action action) {
    return (action <= Action::crew && action != Action::alarmSeen) || action == Action::shiftEnd;
}

EntryForm formFor(Action action, const Picture& picture, Units units, Instant pressedAt) {
    EntryForm form{.action = action,
                   .fields = fieldsOf(action, picture, units),
                   .pressedAt = pressedAt,
                   .loss = lossOf(action, picture)};
    for (const AlarmPicture& alarm : picture.alarms)
        if (isAbout(action, alarm))
            form.alarms.push_back(alarm.alarm);
    if (action == Action::crew)
        return form;
    if (const auto& air = picture.reading(Series::air); air && air->si && air->trust == Trust::good)
        form.air = Temperature::kelvin(*air->si);
    for (const std::string& name : picture.crew)
        form.crew << QString::fromStdString(name);
    if (action == Action::fired)
        form.by = QString::fromStdString(picture.turn);
    return form;
}

std::variant<std::vector<Fact>, EntryProblem> factsOf(const EntryForm& form) {
    for (const EntryField& field : form.fields)
        if (field.needed && field.answer.trimmed().isEmpty())
            return EntryProblem{field.name, tr("%1: type it, or leave with Escape.").arg(field.label)};
    // A log may hold any density; at the pan one so thin is a digit that was not typed (common practice, no source).
    constexpr double thinnestBrix = 20, thinnestBaume = 11;
    if (const auto reading = numberIn(typed(form, "reading"));
        form.action == Action::densityCheck && reading &&
        *reading < (chosen(form, "scale") == 1 ? thinnestBaume : thinnestBrix))
        return EntryProblem{QStringLiteral("reading"),
                            tr("Nothing that is drawn off reads so low. Is a digit missing?")};
    std::vector<Fact> facts;
    if (form.action == Action::alarmShelve) {
        auto made = shelveFacts(form);
        if (std::holds_alternative<EntryProblem>(made))
            return made;
        facts = std::get<std::vector<Fact>>(std::move(made));
    } else {
        const Row row = rowFor(form);
        auto made = factOf({}, row.what, row.value, row.unit, row.detail, form.at());
        if (const auto* fault = std::get_if<Fault>(&made))
            return EntryProblem{{}, faultWords(*fault, wordOf(form.action))};
        facts.push_back(std::get<Fact>(std::move(made)));
    }
    for (Fact& fact : facts) {
        if (fact.by.empty())
            fact.by = form.by.toStdString();
        if (form.earlier.count() > 0)
            fact.entered = form.pressedAt;
    }
    return facts;
}

std::optional<EntryProblem> askedFirst(const EntryForm& form) {
    if (form.action != Action::densityCheck || !typed(form, "cup").empty())
        return std::nullopt;
    return EntryProblem{QStringLiteral("cup"), chosen(form, "instrument") == 1
                                                   ? tr("How warm was the sample? Type it and press Enter. Enter alone "
                                                        "keeps the check as it was read, and it counts for less.")
                                                   : tr("How hot was the cup? Type it and press Enter. Enter alone "
                                                        "keeps the check as it was read, and it counts for less.")};
}

std::optional<SeaLevelQuestion> isItSeaLevel(const EntryForm& form, Units units) {
    if (form.action != Action::handReading || !form.elevation)
        return std::nullopt;
    const auto made = factsOf(form);
    const auto* facts = std::get_if<std::vector<Fact>>(&made);
    const auto* reading = facts ? std::get_if<Reading>(&facts->front().what) : nullptr;
    if (!reading || reading->series != Series::pressure)
        return std::nullopt;
    const Pressure typed = reading->pressure();
    const auto usualHere = standardAtmosphere(*form.elevation);
    const auto meant = stationFromSeaLevel(typed, *form.elevation, form.air);
    if (!usualHere || !meant || !looksReduced(typed, *form.elevation, askedAbout))
        return std::nullopt;
    const QString shown = figure(typed, units).text(), station = figure(*meant, units).text();
    return SeaLevelQuestion{tr("%1 is unusual at your elevation, where about %2 is usual. Weather reports give the "
                               "pressure at sea level: if this is one, it means %3 here.")
                                .arg(shown, figure(*usualHere, units).text(), station),
                            tr("A barometer here shows it: keep %1").arg(shown),
                            tr("It is a weather report: %1 here").arg(station)};
}

std::optional<QString> toldBefore(const EntryForm& form, Units units, const WallClock& clock) {
    const auto made = factsOf(form);
    const auto* facts = std::get_if<std::vector<Fact>>(&made);
    const auto* drawn = facts ? std::get_if<DrawClosed>(&facts->front().what) : nullptr;
    if (!drawn || !drawn->volume)
        return std::nullopt;
    const auto counted = [](const std::vector<Fact>& draws) {
        RepeatedDraw repeated;
        return std::ranges::count_if(draws,
                                     [&](const Fact& fact) { return RepeatedDraw::counts(repeated.hear(fact)); });
    };
    std::vector<Fact> with = form.draws;
    const auto later = [](const Fact& one, const Fact& two) { return one.at < two.at; };
    with.insert(std::upper_bound(with.begin(), with.end(), facts->front(), later), facts->front());
    if (counted(with) > counted(form.draws))
        return std::nullopt;
    const Fact* other = nullptr;
    for (const Fact& one : form.draws)
        if (std::holds_alternative<DrawClosed>(one.what) &&
            (!other || std::abs(secondsBetween(one.at, form.at())) < std::abs(secondsBetween(other->at, form.at()))))
            other = &one;
    constexpr double oneMoment = 60; // seconds: the same key pressed twice is asked about by nobody
    if (!other || std::abs(secondsBetween(other->at, form.at())) <= oneMoment)
        return std::nullopt;
    return tr("Entered already: %1, %2. Is this the same draw?")
        .arg(factWords(*other, units), clock.hourAndMinute(other->at));
}

void takeAsReported(EntryForm& form) {
    form.answer(QStringLiteral("reading"), readingName(Series::sea_level_pressure));
}

QString willWrite(const EntryForm& form, Units units, const WallClock& clock) {
    const auto made = factsOf(form);
    const auto* facts = std::get_if<std::vector<Fact>>(&made);
    const QString word = wordOf(form.action); // of a key: within the line it begins as any other
    QStringList parts{clock.hourAndMinute(form.at()),
                      facts ? factWords(facts->front(), units) : word.left(1).toLower() + word.mid(1)};
    if (!form.by.isEmpty())
        parts << form.by;
    return parts.join(QStringLiteral(", "));
}

} // namespace panside
