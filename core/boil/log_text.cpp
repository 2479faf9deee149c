// The shift log as a whole: RFC 4180 records into rows. Written to be quick, since a night is a quarter of a million
// rows.
#include "core/boil/day_vocabulary.h"
#include "core/boil/density_check.h"
#include "core/boil/log_limits.h"
#include "core/boil/picture.h"
#include "core/boil/repeated_draw.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <bitset>
#include <cstdint>
#include <cstring>
#include <memory>
#include <numeric>

namespace panside {
namespace {

constexpr std::size_t columnCount = 5;
constexpr std::array<std::string_view, columnCount> columnNames{"time", "what", "value", "unit", "detail"};

struct Field {
    std::string_view text;
    std::size_t begins; // offset in the log
    std::size_t line;
};

// Cuts a text into records. A quoted field may hold commas, doubled quotes and line ends.
class RecordReader {
public:
    explicit RecordReader(std::string_view text) : text_{text} {}

    bool atEnd() const { return at_ >= text_.size(); }
    std::size_t at() const { return std::min(at_, text_.size()); }
    void stop() { at_ = text_.size(); }
    std::size_t line() const { return line_; }
    std::string_view text() const { return text_; }
    // The next record; false where its quoting is broken, `brokenAt` then says where, and the next line is next.
    bool next(std::vector<Field>& fields);
    std::size_t brokenAt() const { return brokenAt_; }

private:
    void plain(std::string_view row, std::vector<Field>& fields) const;
    bool quoted(std::vector<Field>& fields);
    std::string_view unquoted(std::size_t from, std::size_t to);

    std::string_view text_;
    std::size_t at_ = 0;
    std::size_t line_ = 1;
    std::size_t brokenAt_ = 0;
    std::vector<std::unique_ptr<std::string>> unescaped_; // fields that had doubled quotes
};

bool RecordReader::next(std::vector<Field>& fields) {
    fields.clear();
    unescaped_.clear();
    const auto end = std::min(text_.find('\n', at_), text_.size());
    std::string_view row = text_.substr(at_, end - at_);
    if (std::memchr(row.data(), '"', row.size()) == nullptr) {
        if (!row.empty() && row.back() == '\r')
            row.remove_suffix(1);
        plain(row, fields);
        at_ = end + 1;
        ++line_;
        return true;
    }
    if (quoted(fields))
        return true;
    at_ = end + 1;
    ++line_;
    return false;
}

void RecordReader::plain(std::string_view row, std::vector<Field>& fields) const {
    std::size_t from = 0;
    while (true) {
        const auto comma = row.find(',', from);
        fields.push_back({row.substr(from, comma - from), at_ + from, line_});
        if (comma == std::string_view::npos)
            return;
        from = comma + 1;
    }
}

bool RecordReader::quoted(std::vector<Field>& fields) {
    std::size_t at = at_, line = line_;
    while (true) {
        const std::size_t begins = at, beginsLine = line;
        if (at < text_.size() && text_[at] == '"') {
            std::size_t close = at + 1;
            for (; close < text_.size(); ++close) {
                line += text_[close] == '\n';
                if (text_[close] != '"')
                    continue;
                if (close + 1 < text_.size() && text_[close + 1] == '"')
                    ++close;
                else
                    break;
            }
            at = close + 1;
            if (close >= text_.size()) {
                brokenAt_ = begins;
                return false;
            }
            fields.push_back({unquoted(begins + 1, close), begins, beginsLine});
            if (at < text_.size() && text_[at] == '\r' && (at + 1 == text_.size() || text_[at + 1] == '\n'))
                ++at;
            if (at < text_.size() && text_[at] != ',' && text_[at] != '\n') {
                brokenAt_ = at;
                return false;
            }
        } else {
            while (at < text_.size() && text_[at] != ',' && text_[at] != '\n' && text_[at] != '"')
                ++at;
            if (at < text_.size() && text_[at] == '"') {
                brokenAt_ = at;
                return false;
            }
            std::string_view field = text_.substr(begins, at - begins);
            if ((at == text_.size() || text_[at] == '\n') && !field.empty() && field.back() == '\r')
                field.remove_suffix(1);
            fields.push_back({field, begins, beginsLine});
        }
        if (at >= text_.size() || text_[at] == '\n') {
            at_ = at + 1;
            line_ = line + 1;
            return true;
        }
        ++at; // the comma
    }
}

std::string_view RecordReader::unquoted(std::size_t from, std::size_t to) {
    const std::string_view field = text_.substr(from, to - from);
    if (field.find('"') == std::string_view::npos)
        return field;
    auto& plain = *unescaped_.emplace_back(std::make_unique<std::string>());
    for (std::size_t i = 0; i < field.size(); ++i) {
        plain += field[i];
        i += field[i] == '"';
    }
    return plain;
}

// Where the first byte stands that is not UTF-8 (overlong forms and surrogates included); npos: all is well.
std::size_t brokenUtf8(std::string_view text) {
    const auto byte = [text](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    for (std::size_t i = 0; i < text.size();) {
        std::uint64_t eight = 0;
        if (i + 8 <= text.size()) {
            std::memcpy(&eight, text.data() + i, 8);
            if ((eight & 0x8080808080808080U) == 0) {
                i += 8;
                continue;
            }
        }
        const unsigned lead = byte(i);
        if (lead < 0x80) {
            ++i;
            continue;
        }
        const std::size_t more = lead >= 0xC2 && lead < 0xE0   ? 1
                                 : lead >= 0xE0 && lead < 0xF0 ? 2
                                 : lead >= 0xF0 && lead < 0xF5 ? 3
                                                               : 0;
        if (more == 0 || i + more >= text.size())
            return i;
        for (std::size_t k = 1; k <= more; ++k)
            if ((byte(i + k) & 0xC0U) != 0x80)
                return i;
        const unsigned second = byte(i + 1);
        if ((lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F) || (lead == 0xF0 && second < 0x90) ||
            (lead == 0xF4 && second > 0x8F))
            return i;
        i += more + 1;
    }
    return std::string_view::npos;
}

// Column of an offset, from 1, in characters.
std::size_t columnOf(std::string_view text, std::size_t offset) {
    const auto before = offset == 0 ? std::string_view::npos : text.rfind('\n', offset - 1);
    std::size_t column = 1;
    for (std::size_t i = before == std::string_view::npos ? 0 : before + 1; i < offset; ++i)
        column += (static_cast<unsigned char>(text[i]) & 0xC0U) != 0x80;
    return column;
}

void place(Fault& fault, std::string_view text, const std::vector<Field>& fields) {
    const auto name = std::find(columnNames.begin(), columnNames.end(), fault.field);
    const auto index = std::min<std::size_t>(static_cast<std::size_t>(name - columnNames.begin()), columnCount - 1);
    fault.line = fields[index].line;
    fault.column = columnOf(text, fields[index].begins);
}

Fault tooLong(std::size_t line) { return {Slip::rowLength, line, 0, {}, {}, asWritten(std::to_string(bytesARow))}; }

class Reader {
public:
    Reader(std::string_view text, LogLimits& limits) : records_{text}, limits_{limits} {}
    ReadLog read();

private:
    bool header();
    void row();
    void sortByTime();
    void fault(Slip slip, std::size_t line, std::size_t column, std::string field, std::string given) {
        log_.faults.push_back({slip, line, column, std::move(field), std::move(given)});
    }
    void warnings(const Fact& fact);
    void warn(Slip slip, std::string field, std::string given, Sentence wanted = {}, std::string meant = {}) {
        Fault warning{slip, 0, 0, std::move(field), std::move(given), std::move(wanted), std::move(meant)};
        place(warning, records_.text(), fields_);
        log_.warnings.push_back(std::move(warning));
    }
    void doubt(const Reading& reading);

    RecordReader records_;
    LogLimits& limits_;
    std::vector<Field> fields_;
    ReadLog log_;
    std::bitset<seriesCount> doubted_;
    RepeatedDraw repeatedDraw_;
};

// A reading outside what can be is kept, since a broken probe's night is a night too; said once for each reading.
void Reader::doubt(const Reading& reading) {
    const ReadingRow& row = rowOf(reading.series);
    const auto fits = [&row](double si) { return si >= row.lowest && si <= row.highest; };
    if (fits(reading.si) || doubted_[static_cast<std::size_t>(reading.series)])
        return;
    doubted_.set(static_cast<std::size_t>(reading.series));
    std::string meant;
    const double number = fromSi(reading.si, reading.unit);
    for (const Unit other : {Unit::degC, Unit::degF, Unit::kPa, Unit::hPa, Unit::inHg})
        if (other != reading.unit && takesUnit(reading.series, other) && fits(toSi(number, other)))
            meant = std::string{fields_[2].text} + " " + std::string{nameOf(other)};
    warn(Slip::implausible, "value", std::string{fields_[2].text}, asWritten(std::string{row.name}), std::move(meant));
}

// A ten that was lost (7 for 67), or brix written as Baumé.
std::string densityMeant(const DensityCheck& check, std::string_view given) {
    if (check.unit == Unit::brix && check.reading < 10)
        return fmt::format("{:.4g} brix", check.reading + 60);
    return check.unit == Unit::baume && check.reading <= 80 ? fmt::format("{} brix", given) : "";
}

void Reader::warnings(const Fact& fact) {
    if (const auto* unknown = std::get_if<Unknown>(&fact.what)) {
        if (unknown->what == "set")
            warn(Slip::settingUnknown, "detail", unknown->detail);
        else if (!seriesNamed(unknown->what)) // one without a value is no reading
            warn(Slip::whatUnknown, "what", unknown->what);
    }
    if (!fact.extra.empty())
        warn(Slip::detailUnknown, "detail", fact.extra);
    if (const auto* day = std::get_if<DayRow>(&fact.what))
        for (const DayPair& pair : day->pairs)
            if (const DayKeyRow its = keyOf(day->deed, pair.key);
                its.text == DayText::choice && !isChoice(its.choices, pair.text))
                warn(Slip::wordUnknown, std::string{its.name}, pair.text, asWritten(std::string{its.choices}));
    const auto alarm = [this](const std::string& name) {
        if (!alarmNamed(name))
            warn(Slip::alarmUnknown, "name", name);
    };
    if (const auto* check = std::get_if<DensityCheck>(&fact.what); check && !mayBeSyrup(*check))
        warn(Slip::implausible, "value", std::string{fields_[2].text}, asWritten("density_check"),
             densityMeant(*check, fields_[2].text));
    if (repeatedDraw_.hear(fact) == RepeatedDraw::Telling::again)
        warn(Slip::toldTwice, "what", std::string{fields_[2].text});
    if (const auto* seen = std::get_if<AlarmSeen>(&fact.what))
        alarm(seen->name);
    if (const auto* shelved = std::get_if<AlarmShelved>(&fact.what))
        alarm(shelved->name);
}

bool Reader::header() {
    const bool sound = !records_.atEnd() && records_.next(fields_);
    if (sound && fields_.size() == columnCount &&
        std::equal(fields_.begin(), fields_.end(), columnNames.begin(),
                   [](const Field& field, std::string_view name) { return field.text == name; }))
        return true;
    const std::string_view text = records_.text();
    std::string_view first = text.substr(0, text.find_first_of("\r\n"));
    fault(Slip::noHeader, 1, 0, "", std::string{first.substr(0, 80)});
    return false;
}

void Reader::row() {
    const std::size_t line = records_.line();
    const std::size_t begins = records_.at();
    if (!records_.next(fields_)) {
        fault(Slip::quoting, line, columnOf(records_.text(), records_.brokenAt()), "", "");
        return;
    }
    if (records_.at() - begins > bytesARow + 2) { // and a line end
        log_.faults.push_back(tooLong(line));
        records_.stop();
        return;
    }
    if (fields_.size() == 1 && fields_[0].text.empty())
        return; // an empty line holds nothing
    if (fields_.size() != columnCount) {
        fault(Slip::columns, line, 0, "", std::to_string(fields_.size()));
        return;
    }
    auto fact = factOf(fields_[0].text, fields_[1].text, fields_[2].text, fields_[3].text, fields_[4].text);
    if (auto* bad = std::get_if<Fault>(&fact)) {
        place(*bad, records_.text(), fields_);
        log_.faults.push_back(std::move(*bad));
        return;
    }
    Fact& good = std::get<Fact>(fact);
    if (auto over = limits_.judge(good)) {
        place(*over, records_.text(), fields_);
        log_.faults.push_back(std::move(*over));
        return;
    }
    if (const auto* reading = std::get_if<Reading>(&good.what))
        doubt(*reading);
    if (!good.extra.empty() || !std::holds_alternative<Reading>(good.what))
        warnings(good);
    const bool day = std::holds_alternative<DayRow>(good.what);
    log_.dayRows += day;
    const auto* unknown = std::get_if<Unknown>(&good.what); // a reading without a value is one
    log_.shiftRows += !day && !std::holds_alternative<Note>(good.what) && !std::holds_alternative<Set>(good.what) &&
                      (!unknown || seriesNamed(unknown->what));
    log_.facts.push_back(std::move(good));
    log_.lines.push_back(static_cast<std::uint32_t>(line));
}

void Reader::sortByTime() {
    std::vector<std::size_t> order(log_.facts.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [this](std::size_t a, std::size_t b) { return log_.facts[a].at < log_.facts[b].at; });
    std::vector<Fact> facts;
    std::vector<std::uint32_t> lines;
    facts.reserve(order.size());
    lines.reserve(order.size());
    for (const std::size_t i : order) {
        facts.push_back(std::move(log_.facts[i]));
        lines.push_back(log_.lines[i]);
    }
    log_.facts = std::move(facts);
    log_.lines = std::move(lines);
}

ReadLog Reader::read() {
    const std::string_view text = records_.text();
    if (const auto broken = brokenUtf8(text); broken != std::string_view::npos) {
        const auto line = 1 + static_cast<std::size_t>(
                                  std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(broken), '\n'));
        fault(Slip::notUtf8, line, columnOf(text, broken), "", "");
        return std::move(log_); // what follows cannot be told apart
    }
    if (!header())
        return std::move(log_);
    const auto rows = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) + 1;
    log_.facts.reserve(rows);
    log_.lines.reserve(rows);
    while (!records_.atEnd())
        row();
    const auto earlier = [](const Fact& a, const Fact& b) { return a.at < b.at; };
    if (!std::is_sorted(log_.facts.begin(), log_.facts.end(), earlier))
        sortByTime();
    if (log_.facts.empty() && log_.faults.empty())
        fault(Slip::empty, 0, 0, "", "");
    return std::move(log_);
}

} // namespace

ReadLog readLog(std::string_view text, LogLimits& limits) {
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);
    return Reader{text, limits}.read();
}

ReadLog readLog(std::string_view text) {
    LogLimits limits;
    return readLog(text, limits);
}

std::variant<Fact, Fault> factOfLine(std::string_view text, std::size_t line, std::optional<Instant> now) {
    const auto refuse = [line](Slip slip, std::size_t column, std::string given) {
        return Fault{slip, line, column, "", std::move(given)};
    };
    if (text.size() > bytesARow)
        return tooLong(line);
    if (const auto broken = brokenUtf8(text); broken != std::string_view::npos)
        return refuse(Slip::notUtf8, 0, "");
    RecordReader records{text};
    std::vector<Field> fields;
    if (!records.next(fields))
        return refuse(Slip::quoting, columnOf(text, records.brokenAt()), "");
    if (fields.size() != columnCount)
        return refuse(Slip::columns, 0, std::to_string(fields.size()));
    auto fact = factOf(fields[0].text, fields[1].text, fields[2].text, fields[3].text, fields[4].text, now);
    if (auto* bad = std::get_if<Fault>(&fact)) {
        place(*bad, text, fields);
        bad->line = line;
    }
    return fact;
}

} // namespace panside
