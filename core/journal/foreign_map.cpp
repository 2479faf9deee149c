// A map of another logger's table: proposed from what stands at the file's beginning, and as text to be remembered.
#include "core/boil/vocabulary.h"
#include "core/journal/foreign_log.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>

namespace panside {
namespace {

constexpr std::array delimiters{',', ';', '\t', '|'};
constexpr std::size_t looked = 60; // lines that a proposal rests on

std::vector<std::string_view> linesOf(std::string_view text, std::size_t most) {
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);
    std::vector<std::string_view> lines;
    while (!text.empty() && lines.size() < most) {
        const auto end = text.find('\n');
        std::string_view line = text.substr(0, end);
        if (line.ends_with('\r'))
            line.remove_suffix(1);
        lines.push_back(line);
        if (end == std::string_view::npos)
            break;
        text.remove_prefix(end + 1);
    }
    return lines;
}

// How many cells most lines have, and how many lines that are.
std::pair<std::size_t, std::size_t> commonCells(const std::vector<std::string_view>& lines, char delimiter) {
    std::map<std::size_t, std::size_t> counts;
    for (const auto line : lines)
        ++counts[cellsOf(line, delimiter).size()];
    std::pair<std::size_t, std::size_t> best{0, 0};
    for (const auto& [cells, count] : counts)
        if (cells > 1 && count > best.second)
            best = {cells, count};
    return best;
}

bool isNumber(std::string_view cell, bool comma) {
    std::string text{cell};
    if (comma)
        std::ranges::replace(text, ',', '.');
    if (text.starts_with('+'))
        text.erase(0, 1);
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc{} && end == text.data() + text.size();
}

std::optional<TimeForm> formOf(const std::vector<std::string>& times) {
    std::optional<TimeForm> found;
    for (int i = 0; i < timeFormCount; ++i) {
        const auto form = static_cast<TimeForm>(i);
        const bool all = !times.empty() && std::ranges::all_of(times, [&](const std::string& text) {
            const auto time = foreignTimeIn(text, form);
            if (!time)
                return false;
            // A count of seconds is a time only from this century on: 103.4 is a temperature.
            const auto* moment = std::get_if<Instant>(&*time);
            return !moment || form < TimeForm::unixSeconds || *moment > Instant{} + std::chrono::seconds{946'684'800};
        });
        if (all && !found)
            found = form;
    }
    return found;
}

std::vector<std::string> columnOf(const ForeignSample& sample, std::size_t column) {
    std::vector<std::string> cells;
    for (const auto& row : sample.rows)
        if (column < row.size())
            cells.push_back(row[column]);
    return cells;
}

// The date may have a column of its own, right before the time.
void proposeTime(ForeignMap& map, const ForeignSample& sample) {
    for (std::size_t i = 0; i < sample.heading.size(); ++i)
        if (const auto form = formOf(columnOf(sample, i))) {
            map.time = static_cast<int>(i);
            map.form = *form;
            return;
        }
    for (std::size_t i = 0; i + 1 < sample.heading.size(); ++i) {
        auto both = columnOf(sample, i);
        const auto times = columnOf(sample, i + 1);
        for (std::size_t r = 0; r < std::min(both.size(), times.size()); ++r)
            both[r] += ' ' + times[r];
        if (const auto form = formOf(both)) {
            map.date = static_cast<int>(i);
            map.time = static_cast<int>(i + 1);
            map.form = *form;
            return;
        }
    }
}

template <class Number>
std::optional<Number> numberIn(std::string_view text) {
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc{} && end == text.data() + text.size() ? std::optional{number} : std::nullopt;
}

std::optional<ForeignColumn> columnIn(std::string_view text) {
    const auto said = cellsOf(text, ':');
    if (said.size() != 3)
        return std::nullopt;
    const auto column = numberIn<int>(said[0]);
    const auto series = seriesNamed(said[1]);
    const auto unit = unitNamed(said[2]);
    if (!column || *column < 0 || !series || !unit || !takesUnit(*series, *unit))
        return std::nullopt;
    return ForeignColumn{*column, *series, *unit};
}

} // namespace

ForeignSample sampleOf(std::string_view beginning, char delimiter, int heading, std::size_t most) {
    ForeignSample sample;
    const auto lines = linesOf(beginning, static_cast<std::size_t>(heading) + 2 * most);
    if (heading > 0 && static_cast<std::size_t>(heading) <= lines.size())
        sample.heading = cellsOf(lines[static_cast<std::size_t>(heading) - 1], delimiter);
    for (std::size_t i = static_cast<std::size_t>(heading); i < lines.size() && sample.rows.size() < most; ++i) {
        if (lines[i].empty())
            continue;
        sample.rows.push_back(cellsOf(lines[i], delimiter));
        sample.lines.push_back(static_cast<int>(i) + 1);
    }
    std::size_t widest = sample.heading.size();
    for (const auto& row : sample.rows)
        widest = std::max(widest, row.size());
    while (sample.heading.size() < widest)
        sample.heading.push_back(std::to_string(sample.heading.size() + 1));
    return sample;
}

ForeignMap proposedMap(std::string_view beginning, std::string zone) {
    ForeignMap map;
    map.zone = std::move(zone);
    const auto lines = linesOf(beginning, looked);
    std::size_t cells = 0, best = 0;
    for (const char delimiter : delimiters)
        if (const auto [common, count] = commonCells(lines, delimiter);
            count > best || (count == best && common > cells)) {
            map.delimiter = delimiter;
            cells = common;
            best = count;
        }
    map.heading = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto row = cellsOf(lines[i], map.delimiter);
        if (row.size() != cells)
            continue;
        // A heading has no number in it; a table without one begins with its first row.
        const bool named =
            std::ranges::none_of(row, [](const std::string& cell) { return isNumber(cell, true) || cell.empty(); });
        map.heading = static_cast<int>(named ? i + 1 : i);
        break;
    }
    const auto sample = sampleOf(beginning, map.delimiter, map.heading);
    proposeTime(map, sample);
    for (const auto& row : sample.rows)
        for (const std::string& cell : row)
            map.decimalComma = map.decimalComma || (map.delimiter != ',' && cell.find(',') != std::string::npos &&
                                                    !isNumber(cell, false) && isNumber(cell, true));
    return map;
}

// "1|44|point|1|0|-|0|America/New_York|pan box|2:syrup_pan:degC|3:stack:degF": the delimiter by its number.
std::string textOf(const ForeignMap& map) {
    const auto plain = [](std::string words) { // what would be taken for the end of a part
        std::erase_if(words, [](char letter) { return letter == '|' || letter == '"'; });
        return words;
    };
    std::string text = "1|" + std::to_string(static_cast<int>(map.delimiter)) + '|' +
                       (map.decimalComma ? "comma" : "point") + '|' + std::to_string(map.heading) + '|' +
                       std::to_string(map.time) + '|' + (map.date ? std::to_string(*map.date) : "-") + '|' +
                       std::to_string(static_cast<int>(map.form)) + '|' + plain(map.zone) + '|' + plain(map.probe);
    for (const ForeignColumn& column : map.columns)
        text += '|' + std::to_string(column.column) + ':' + std::string{rowOf(column.series).name} + ':' +
                std::string{nameOf(column.unit)};
    return text;
}

std::optional<ForeignMap> foreignMapIn(std::string_view text) {
    const auto parts = cellsOf(text, '|');
    if (parts.size() < 9 || parts[0] != "1")
        return std::nullopt;
    const auto delimiter = numberIn<int>(parts[1]), heading = numberIn<int>(parts[3]), time = numberIn<int>(parts[4]),
               form = numberIn<int>(parts[6]);
    const auto date = numberIn<int>(parts[5]);
    if (!delimiter || !heading || !time || !form || *heading < 0 || *time < 0 || *form < 0 || *form >= timeFormCount ||
        date.value_or(0) < 0)
        return std::nullopt;
    ForeignMap map{static_cast<char>(*delimiter),
                   parts[2] == "comma",
                   *heading,
                   *time,
                   date,
                   static_cast<TimeForm>(*form),
                   parts[7],
                   parts[8],
                   {}};
    for (std::size_t i = 9; i < parts.size(); ++i) {
        const auto column = columnIn(parts[i]);
        if (!column)
            return std::nullopt;
        map.columns.push_back(*column);
    }
    return map;
}

} // namespace panside
