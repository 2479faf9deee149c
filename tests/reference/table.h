#pragma once
// Reads a table of published values: a header, then one row a value, each with its source.
#include <cstdlib>
#include <fstream>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

namespace panside {

inline constexpr double joulePerBtu = 1055.05585262; // International Table

struct PublishedRow {
    std::map<std::string, std::string> fields;

    const std::string& text(const std::string& name) const { return fields.at(name); }
    bool has(const std::string& name) const { return !fields.at(name).empty(); }
    double number(const std::string& name) const {
        const std::string& field = fields.at(name);
        char* end = nullptr;
        const double value = std::strtod(field.c_str(), &end);
        if (field.empty() || *end != '\0')
            throw std::runtime_error{name + " holds no number: " + field};
        return value;
    }
};

// The fields of one line; a quoted one may hold commas, and a quote written twice.
inline std::vector<std::string> fieldsOf(const std::string& line) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const bool doubled = quoted && line[i] == '"' && i + 1 < line.size() && line[i + 1] == '"';
        if (doubled)
            fields.back() += line[++i];
        else if (line[i] == '"')
            quoted = !quoted;
        else if (line[i] == ',' && !quoted)
            fields.emplace_back();
        else
            fields.back() += line[i];
    }
    return fields;
}

inline std::vector<PublishedRow> published(const std::string& file) {
    std::ifstream in{std::string{PANSIDE_REFERENCE} + "/" + file};
    std::string line;
    if (!std::getline(in, line))
        throw std::runtime_error{"no table " + file};
    const auto names = fieldsOf(line);
    std::vector<PublishedRow> rows;
    while (std::getline(in, line)) {
        const auto fields = fieldsOf(line);
        if (fields.size() != names.size())
            throw std::runtime_error{file + " has a row of another length: " + line};
        PublishedRow row;
        for (std::size_t i = 0; i < names.size(); ++i)
            row.fields[names[i]] = fields[i];
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace panside
