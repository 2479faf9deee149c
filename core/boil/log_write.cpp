// A fact as a row of the shift log: what reading it again turns back into the same fact, to the last bit.
#include "core/boil/day_vocabulary.h"
#include "core/boil/decimals.h"
#include "core/boil/detail.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"

#include <array>
#include <charconv>
#include <cmath>

namespace panside {
namespace {

std::string numberText(double number, int digits) {
    std::array<char, 40> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), number, std::chars_format::general, digits).ptr;
    return {buffer.data(), end};
}

// Of four decimals at most, as nearly all are: the same digits without a text that is read again. Empty: it is not.
std::string fewDecimals(double number, double si, Unit unit) {
    constexpr double places = 1e4, exact = 1e12, same = 1e-13; // far less than the twelfth digit
    const double whole = std::round(number * places), near = whole / places;
    std::string text;
    if (whole != 0 && std::abs(whole) < exact && std::abs(number - near) <= same * std::abs(near) &&
        toSi(near, unit) == si)
        appendDecimals(text, near, 4);
    return text;
}

// The shortest number in the unit that reads back as the same SI value: what was typed, where it was typed.
std::string numberFor(double si, Unit unit) {
    const double number = fromSi(si, unit);
    if (std::string text = fewDecimals(number, si, unit); !text.empty())
        return text;
    for (const int digits : {12, 15, 17})
        if (std::string text = numberText(number, digits); toSi(*numberIn(text), unit) == si)
            return text;
    // The way there and back may miss by a last bit or two.
    double up = number, down = number;
    for (int step = 0; step < 8; ++step) {
        up = std::nextafter(up, HUGE_VAL);
        down = std::nextafter(down, -HUGE_VAL);
        for (const double near : {up, down})
            if (toSi(near, unit) == si)
                return numberText(near, 17);
    }
    return numberText(number, 17);
}

struct Fields {
    std::string what, value, unit, detail;

    void put(double si, Unit in) {
        value = numberFor(si, in);
        unit = nameOf(in);
    }
    void pair(std::string_view key, std::string_view text) {
        if (!text.empty())
            appendPair(detail, key, text);
    }
    template <class Q>
    void putSaid(const std::optional<Said<Q>>& said) {
        if (said)
            put(said->value.si(), said->unit);
    }
    void temperature(std::string_view key, const std::optional<Said<Temperature>>& said) {
        if (said)
            pair(key, numberFor(said->value.kelvin(), said->unit) + std::string{nameOf(said->unit)});
    }
};

// What a fact says, kind by kind.
struct FieldsOf {
    Fields row;

    void operator()(const Reading& reading) {
        row.what = rowOf(reading.series).name;
        row.put(reading.si, reading.unit);
        row.pair("probe", reading.probe);
    }
    void operator()(const Lit&) { row.what = "lit"; }
    void operator()(const Fired& fired) {
        row.what = "fired";
        row.putSaid(fired.load);
        row.pair("wood", fired.wood);
        if (fired.moisture)
            row.pair("moisture", numberFor(fired.moisture->share, Unit::percent));
        row.pair("fire", fired.fire);
        row.pair("inferred", fired.inferred ? "yes" : "");
    }
    void operator()(const DrawOpened&) { row.what = "draw_open"; }
    void operator()(const DrawClosed& closed) {
        row.what = "draw_close";
        row.putSaid(closed.volume);
        row.pair("to", closed.to);
        row.temperature("temp", closed.temperature);
    }
    void operator()(const DensityCheck& check) {
        row.what = "density_check";
        row.value = numberFor(check.reading, Unit::none);
        row.unit = nameOf(check.unit);
        row.pair("with", check.with == Instrument::refractometer ? "refractometer" : "");
        row.temperature("temp", check.cup);
        row.temperature("cal", check.scale);
        if (check.drawn)
            row.pair("drawn", textOf(*check.drawn));
    }
    void operator()(const WaterCheck& check) {
        row.what = "water_check";
        row.put(check.boiledAt.value.kelvin(), check.boiledAt.unit);
        row.pair("probe", check.probe);
    }
    void operator()(const SapIn& sap) {
        row.what = "sap_in";
        if (!sap.all)
            row.put(sap.volume.value.si(), sap.volume.unit);
        if (sap.sugar)
            row.pair("brix", numberFor(sap.sugar->si(), Unit::brix));
        row.temperature("temp", sap.temperature);
        row.temperature("cal", sap.scale);
        row.pair("from", sap.from);
    }
    void operator()(const PanSwapped&) { row.what = "pan_swapped"; }
    void operator()(const Defoamer& defoamer) {
        row.what = "defoamer";
        if (defoamer.drops)
            row.put(*defoamer.drops, Unit::none);
        row.pair("kind", defoamer.kind);
    }
    void operator()(const Crew& crew) {
        row.what = "crew";
        row.pair("off", crew.off);
    }
    void operator()(const Shutdown&) { row.what = "shutdown"; }
    void operator()(const ShiftEnd&) { row.what = "shift_end"; }
    void operator()(const AlarmSeen& seen) {
        row.what = "alarm_seen";
        row.pair("name", seen.name);
    }
    void operator()(const AlarmShelved& shelved) {
        row.what = "alarm_shelved";
        row.put(seconds(shelved.span), Unit::min);
        row.pair("name", shelved.name);
    }
    void operator()(const ClockStep& step) {
        row.what = "clock_step";
        row.put(seconds(step.by), Unit::s);
    }
    void operator()(const Note&) { row.what = "note"; }
    void operator()(const Set& set) {
        row.what = "set";
        if (isWords(set.key))
            row.value = set.text;
        else
            row.put(set.si, set.unit);
        row.pair("key", rowOf(set.key).name);
    }
    void operator()(const DayRow& day) {
        row.what = rowOf(day.deed).name;
        row.value = day.words;
        if (day.value)
            row.put(day.value->si, day.value->unit);
        for (const DayPair& pair : day.pairs)
            row.pair(nameOf(pair.key), pair.text);
    }
    void operator()(const Unknown& unknown) { row = {unknown.what, unknown.value, unknown.unit, unknown.detail}; }
};

void appendField(std::string& out, std::string_view field) {
    if (field.find_first_of(",\"\r\n") == std::string_view::npos) {
        out.append(field);
        return;
    }
    out += '"';
    for (const char c : field) {
        if (c == '"')
            out += '"';
        out += c;
    }
    out += '"';
}

void appendRow(std::string& out, const Fact& fact) {
    FieldsOf fields;
    std::visit(fields, fact.what);
    Fields& row = fields.row;
    const std::string entered = fact.entered ? textOf(*fact.entered) : std::string{};
    if (const auto* note = std::get_if<Note>(&fact.what)) {
        row.detail = noteDetail({note->text, fact.by, entered});
    } else if (!std::holds_alternative<Unknown>(fact.what)) {
        if (!fact.extra.empty())
            row.detail += (row.detail.empty() ? "" : ";") + fact.extra;
        row.pair("by", fact.by);
        row.pair("entered", entered);
    }
    out += textOf(fact.at);
    for (const std::string* field : {&row.what, &row.value, &row.unit, &row.detail}) {
        out += ',';
        appendField(out, *field);
    }
}

} // namespace

std::string rowOf(const Fact& fact) {
    std::string out;
    appendRow(out, fact);
    return out;
}

std::string writeLog(const std::vector<Fact>& facts) {
    std::string out;
    out.reserve(48 * (facts.size() + 1));
    out.append(logHeader);
    out += '\n';
    for (const Fact& fact : facts) {
        appendRow(out, fact);
        out += '\n';
    }
    return out;
}

} // namespace panside
