#include "core/journal/foreign_log.h"

#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "core/words/trimmed.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <istream>

namespace panside {
namespace {

constexpr std::size_t readAtOnce = 1U << 18;
constexpr std::size_t longestLine = 1U << 20; // a file without line ends is no table
constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
constexpr std::string_view aroundCells = " \t\r";

Fault faultAt(std::size_t line, std::string field, std::string given, Sentence wanted) {
    return {Slip::detailValue, line, 0, std::move(field), std::move(given), std::move(wanted)};
}

std::string nameOf(int column) { return "column " + std::to_string(column + 1); }

// Of an hour that came twice the one that follows on the row above.
std::optional<Instant> following(const std::vector<Instant>& moments, std::int64_t micro,
                                 const std::optional<Instant>& before) {
    for (const Instant moment : moments) {
        const Instant at = moment + std::chrono::microseconds{micro};
        if (!before || at >= *before)
            return at;
    }
    return moments.empty() ? std::nullopt : std::optional{moments.back() + std::chrono::microseconds{micro}};
}

} // namespace

std::vector<std::string> cellsOf(std::string_view line, char delimiter) {
    std::vector<std::string> cells{{}};
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char letter = line[i];
        if (letter == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"')
            cells.back() += line[i++];
        else if (letter == '"')
            quoted = !quoted;
        else if (letter == delimiter && !quoted)
            cells.emplace_back();
        else
            cells.back() += letter;
    }
    for (std::string& cell : cells)
        cell = std::string{trimmed(cell, aroundCells)};
    return cells;
}

bool isNoReading(std::string_view cell) {
    static constexpr std::array<std::string_view, 12> words{"",     "-",    "--",   "---",   "nan",   "n/a",
                                                            "null", "none", "open", "error", "fault", "#n/a"};
    std::string low{cell};
    std::transform(low.begin(), low.end(), low.begin(), [](char letter) {
        return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter + 32) : letter;
    });
    return std::ranges::find(words, low) != words.end();
}

ForeignRows::ForeignRows(std::istream& table, ForeignMap map, ZoneClock clock)
    : table_{table}, map_{std::move(map)}, clock_{std::move(clock)} {}

std::optional<ReadLog> ForeignRows::next() {
    if (ended_)
        return std::nullopt;
    const auto before = text_.size();
    text_.resize(before + readAtOnce);
    table_.read(text_.data() + before, readAtOnce);
    const auto got = static_cast<std::size_t>(table_.gcount());
    text_.resize(before + got);
    bytes_ += got;
    ended_ = got < readAtOnce;
    ReadLog read;
    std::string_view rest = text_;
    if (line_ == 0 && rest.starts_with(byteOrderMark))
        rest.remove_prefix(byteOrderMark.size());
    for (auto end = rest.find('\n'); end != std::string_view::npos; end = rest.find('\n')) {
        readLine(rest.substr(0, end), read);
        rest.remove_prefix(end + 1);
    }
    if (ended_ && !rest.empty()) {
        readLine(rest, read);
        rest = {};
    } else if (rest.size() > longestLine) {
        read.faults.push_back(faultAt(line_ + 1, "row", fmt::format("{}…", rest.substr(0, 20)),
                                      say("one row a line, each under a million characters")));
        ended_ = true;
        rest = {};
    }
    text_ = std::string{rest};
    if (ended_ && !before_ && read.faults.empty())
        read.faults.push_back({Slip::empty, 0, 0, {}, {}});
    std::ranges::stable_sort(read.facts, {}, &Fact::at);
    return read;
}

std::optional<Instant> ForeignRows::timeOf(const std::vector<std::string>& cells, ReadLog& read) {
    std::string text = cells[static_cast<std::size_t>(map_.time)];
    if (map_.date)
        text = cells[static_cast<std::size_t>(*map_.date)] + ' ' + text;
    const auto wrong = [&](Sentence wanted) {
        read.faults.push_back(faultAt(line_, nameOf(map_.time), text, std::move(wanted)));
        read.faults.back().cell = map_.time + 1;
        return std::optional<Instant>{};
    };
    const auto time = foreignTimeIn(text, map_.form);
    if (!time)
        return wrong(say("a time as in %1, or choose another form", {std::string{exampleOf(map_.form)}}));
    if (const auto* moment = std::get_if<Instant>(&*time))
        return *moment;
    const auto& shown = std::get<ShownTime>(*time);
    const auto at = following(clock_(shown), shown.microsecond, before_);
    return at ? at : wrong(say("a time that clocks did not go forward over, or choose the zone of its clock"));
}

void ForeignRows::readLine(std::string_view line, ReadLog& read) {
    ++line_;
    line = trimmed(line, aroundCells);
    if (static_cast<int>(line_) <= map_.heading || line.empty())
        return;
    const auto cells = cellsOf(line, map_.delimiter);
    int last = std::max(map_.time, map_.date.value_or(0));
    for (const ForeignColumn& column : map_.columns)
        last = std::max(last, column.column);
    if (static_cast<int>(cells.size()) <= last) {
        read.faults.push_back(
            {Slip::cells, line_, 0, "row", std::to_string(cells.size()), asWritten(std::to_string(last + 1))});
        return;
    }
    const auto at = timeOf(cells, read);
    if (!at)
        return;
    if (!isInYears(*at)) {
        read.faults.push_back(faultAt(line_, nameOf(map_.time), cells[static_cast<std::size_t>(map_.time)],
                                      say("%1 to %2", {std::to_string(firstYear), std::to_string(lastYear)})));
        read.faults.back().slip = Slip::outOfRange;
        read.faults.back().cell = map_.time + 1;
        return;
    }
    before_ = at;
    for (const ForeignColumn& column : map_.columns) {
        std::string cell = cells[static_cast<std::size_t>(column.column)];
        if (isNoReading(cell)) {
            ++blanks_;
            continue;
        }
        if (map_.decimalComma)
            std::ranges::replace(cell, ',', '.');
        // The log's own judge of a value; the time is put in afterwards.
        auto made = factOf("2000-01-01T00:00:00Z", rowOf(column.series).name, cell, panside::nameOf(column.unit), {});
        if (auto* fault = std::get_if<Fault>(&made)) {
            fault->line = line_;
            fault->field = nameOf(column.column);
            fault->cell = column.column + 1;
            fault->given = cells[static_cast<std::size_t>(column.column)];
            read.faults.push_back(std::move(*fault));
            continue;
        }
        auto& fact = std::get<Fact>(made);
        fact.at = *at;
        std::get<Reading>(fact.what).probe = map_.probe;
        if (auto over = limits_.judge(fact)) {
            over->line = line_;
            read.faults.push_back(std::move(*over));
            continue;
        }
        read.facts.push_back(std::move(fact));
    }
}

} // namespace panside
