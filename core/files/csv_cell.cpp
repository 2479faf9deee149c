#include "core/files/csv_cell.h"

#include <cctype>

namespace panside {
namespace {

bool isNumber(std::string_view text) {
    if (!text.empty() && (text.front() == '-' || text.front() == '+'))
        text.remove_prefix(1);
    return !text.empty() && std::isdigit(static_cast<unsigned char>(text.front())) != 0 &&
           text.find_first_not_of("0123456789.eE+-") == std::string_view::npos;
}

bool acts(std::string_view text) {
    // Spreadsheets pass over blanks and tabs that stand before a formula.
    const auto first = text.find_first_not_of(" \t\r\n");
    return first != std::string_view::npos && std::string_view{"=+-@"}.find(text[first]) != std::string_view::npos &&
           !isNumber(text);
}

} // namespace

std::string csvCell(std::string_view text) {
    std::string cell = acts(text) ? "'" + std::string{text} : std::string{text};
    if (cell.find_first_of(",\"\r\n") == std::string::npos)
        return cell;
    std::string quoted = "\"";
    for (const char c : cell)
        quoted += c == '"' ? std::string{"\"\""} : std::string{c};
    return quoted + '"';
}

std::string csvRowHarmless(std::string_view row) {
    std::string out, cell;
    bool quoted = false;
    for (std::size_t i = 0; i <= row.size(); ++i) {
        if (i == row.size() || (row[i] == ',' && !quoted)) {
            out += (out.empty() && cell.empty() && i == row.size() ? "" : csvCell(cell));
            out += i == row.size() ? "" : ",";
            cell.clear();
        } else if (row[i] != '"') {
            cell += row[i];
        } else if (quoted && i + 1 < row.size() && row[i + 1] == '"') {
            cell += '"';
            ++i;
        } else {
            quoted = !quoted;
        }
    }
    return out;
}

} // namespace panside
