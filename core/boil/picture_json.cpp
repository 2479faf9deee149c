// The picture as one line of JSON: fixed fields in a fixed order, null where a figure cannot be known.
#include "core/boil/decimals.h"
#include "core/boil/picture.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace panside {
namespace {

class Line {
public:
    explicit Line(std::string& out) : out_{out} {}

    void field(std::string_view name) {
        out_.append(first_ ? "{\"" : ",\"", 2);
        first_ = false;
        out_.append(name);
        out_.append("\":", 2);
    }
    // A number with that many decimals at most; null for none, and for what no number can say.
    void number(std::optional<double> value, int decimals) {
        if (!value || !std::isfinite(*value)) {
            out_.append("null");
            return;
        }
        if (appendDecimals(out_, *value, decimals))
            return;
        std::array<char, 340> buffer; // filled as far as it is used
        char* end =
            std::to_chars(buffer.data(), buffer.data() + buffer.size(), *value, std::chars_format::fixed, decimals).ptr;
        if (decimals > 0) {
            while (*(end - 1) == '0')
                --end;
            if (*(end - 1) == '.')
                --end;
        }
        const std::string_view text{buffer.data(), static_cast<std::size_t>(end - buffer.data())};
        out_.append(text == "-0" ? "0" : text);
    }
    void number(std::string_view name, std::optional<double> value, int decimals) {
        field(name);
        number(value, decimals);
    }
    void range(std::string_view name, const std::optional<Range>& range) {
        field(name);
        if (!range) {
            out_.append("null");
            return;
        }
        out_.append("{\"p10\":");
        number(seconds(range->p10), 1);
        out_.append(",\"p50\":");
        number(seconds(range->p50), 1);
        out_.append(",\"p90\":");
        number(range->p90 ? std::optional{seconds(*range->p90)} : std::nullopt, 1);
        out_ += '}';
    }
    // Only names and our own words come here; what JSON wants escaped is escaped all the same.
    void string(std::string_view value) {
        constexpr std::string_view hex = "0123456789abcdef";
        out_ += '"';
        while (!value.empty()) {
            const auto odd = std::find_if(value.begin(), value.end(), [](char c) {
                return c == '"' || c == '\\' || static_cast<unsigned char>(c) < 0x20;
            });
            const auto plain = static_cast<std::size_t>(odd - value.begin());
            out_.append(value.substr(0, plain));
            if (odd == value.end())
                break;
            const auto code = static_cast<unsigned char>(*odd);
            out_.append(code < 0x20 ? "\\u00" : "\\");
            if (code < 0x20)
                out_ += hex[code >> 4U];
            out_ += code < 0x20 ? hex[code & 15U] : *odd;
            value.remove_prefix(plain + 1);
        }
        out_ += '"';
    }
    void raw(std::string_view value) { out_.append(value); }

    // One of our names: nothing in it wants escaping.
    void name(std::string_view value) {
        out_ += '"';
        out_.append(value);
        out_ += '"';
    }

private:
    std::string& out_;
    bool first_ = true;
};

template <class T>
std::optional<double> celsius(const std::optional<T>& value) {
    if (!value)
        return std::nullopt;
    if constexpr (std::is_same_v<T, Temperature>)
        return value->celsius();
    else
        return value->kelvin();
}

void appendAlarms(Line& line, const Picture& picture) {
    line.field("alarms");
    line.raw("[");
    std::string_view comma;
    std::uint32_t said = 0; // one name once, however many probes it is about
    for (const AlarmPicture& alarm : picture.alarms) {
        const std::uint32_t bit = 1U << static_cast<unsigned>(alarm.alarm);
        if (!alarm.stands() || (said & bit) != 0)
            continue;
        said |= bit;
        line.raw(comma);
        line.name(nameOf(alarm.alarm));
        comma = ",";
    }
    line.raw("]");
}

void appendAlarmWhy(Line& line, const Picture& picture) {
    line.field("alarmWhy");
    line.raw("{");
    std::string_view comma;
    std::uint32_t said = 0;
    for (const AlarmPicture& alarm : picture.alarms) {
        const std::uint32_t bit = 1U << static_cast<unsigned>(alarm.alarm);
        if (!alarm.stands() || (said & bit) != 0)
            continue;
        said |= bit;
        line.raw(comma);
        line.name(nameOf(alarm.alarm));
        line.raw(":[");
        comma = {};
        for (const AlarmPicture& other : picture.alarms) // of each probe that it is about
            for (const Ground& ground :
                 other.alarm == alarm.alarm && other.stands() ? other.why : std::vector<Ground>{}) {
                line.raw(comma);
                line.string(groundText(ground));
                comma = ",";
            }
        line.raw("]");
        comma = ",";
    }
    line.raw("}");
}

void appendTrust(Line& line, const Picture& picture) {
    line.field("trust");
    line.raw("{");
    std::string_view comma;
    for (const ReadingRow& row : allReadings()) {
        const auto& reading = picture.reading(row.series);
        if (!reading)
            continue;
        line.raw(comma);
        line.name(row.name);
        line.raw(":");
        line.name(nameOf(reading->trust));
        comma = ",";
    }
    line.raw("}");
}

void appendWhy(Line& line, const Picture& picture) {
    line.field("why");
    line.raw("{");
    std::string_view comma;
    for (auto why = picture.why.begin(); why != picture.why.end(); ++why) {
        bool said = false;
        for (auto earlier = picture.why.begin(); earlier != why; ++earlier)
            said = said || earlier->of == why->of;
        if (said)
            continue;
        line.raw(comma);
        line.name(std::visit(
            Overloaded{[](Shown figure) { return nameOf(figure); }, [](Series series) { return rowOf(series).name; }},
            why->of));
        line.raw(":");
        line.string(whyText(*why));
        comma = ",";
    }
    line.raw("}");
}

} // namespace

void appendJson(std::string& out, const Picture& picture) {
    Line line{out};
    line.field("t");
    line.name(textOf(picture.at));
    line.number("pressureKPa", picture.pressure ? std::optional{picture.pressure->kilopascal()} : std::nullopt, 4);
    line.number("waterBoilsC", celsius(picture.waterBoils), 4);
    line.number("syrupPanC", celsius(picture.syrupPan), 4);
    line.number("probeOffsetC", picture.probeOffset.kelvin(), 4);
    line.number("riseC", celsius(picture.rise), 4);
    line.number("targetRiseC", celsius(picture.targetRise), 4);
    line.number("targetC", celsius(picture.target), 4);
    line.number("targetUncertaintyC", celsius(picture.targetUncertainty), 4);
    line.number("brix", picture.brix ? std::optional{picture.brix->degrees()} : std::nullopt, 3);
    line.range("drawEta", picture.drawEta);
    line.field("drawDue");
    line.raw(picture.drawDue ? "true" : "false");
    line.field("drawing");
    line.raw(picture.drawing ? "true" : "false");
    line.range("closeEta", picture.closeEta);
    line.number("fireDueS", picture.fireDue ? std::optional{seconds(*picture.fireDue)} : std::nullopt, 1);
    line.number("keepBackL", picture.keepBack ? std::optional{picture.keepBack->litre()} : std::nullopt, 1);
    line.range("lastLoadS", picture.lastLoad);
    line.number("evaporationLph",
                picture.evaporation ? std::optional{picture.evaporation->litrePerHour()} : std::nullopt, 2);
    line.number("sapLeftS", picture.sapLeft ? std::optional{seconds(*picture.sapLeft)} : std::nullopt, 0);
    line.number("efficiency", picture.efficiency, 4);
    appendAlarms(line, picture);
    appendAlarmWhy(line, picture);
    appendTrust(line, picture);
    appendWhy(line, picture);
    line.raw("}");
}

} // namespace panside
