#pragma once
// One table of a probe file, read key by key; what nobody asked for in the end is a fault.
#include "core/probe/probe_file.h"

#include <set>
#include <toml++/toml.h>

namespace panside {

class ProbeTable {
public:
    ProbeTable(const toml::table& table, std::vector<ProbeFault>& faults) : table_{table}, faults_{faults} {}

    bool has(std::string_view key) const { return table_.contains(key); }
    std::optional<std::string> text(std::string_view key);
    // A text, or a whole number taken for one.
    std::optional<std::string> textOrNumber(std::string_view key);
    std::optional<double> number(std::string_view key, double lowest, double highest);
    std::optional<int> whole(std::string_view key, int lowest, int highest);
    std::optional<bool> flag(std::string_view key);
    template <class Words>
    auto word(std::string_view key, const Words& words) -> std::optional<decltype(words[0].meant)>;
    // The tables of an array of tables; a fault for anything else under this name.
    std::vector<const toml::table*> tables(std::string_view key);

    void missing(std::string_view key, Sentence wanted);
    // A fault at a key's value.
    void fault(ProbeSlip slip, std::string_view key, Sentence wanted);
    // Keys of the other protocol, or of another unit: a fault for each that is there.
    void unfit(std::initializer_list<std::string_view> keys, std::string_view belongsTo);
    // Every key that nobody asked for is a fault.
    void finish(std::string_view known);

private:
    const toml::node* node(std::string_view key);
    void at(const toml::source_region& place, ProbeSlip slip, std::string_view key, std::string given, Sentence wanted);

    const toml::table& table_;
    std::vector<ProbeFault>& faults_;
    std::set<std::string, std::less<>> asked_;
};

template <class Words>
auto ProbeTable::word(std::string_view key, const Words& words) -> std::optional<decltype(words[0].meant)> {
    const auto given = text(key);
    if (!given)
        return std::nullopt;
    std::vector<std::string> all;
    for (const auto& word : words) {
        if (word.text == *given)
            return word.meant;
        all.push_back('"' + std::string{word.text} + '"');
    }
    fault(ProbeSlip::notAllowed, key, sayOneOf(std::move(all)));
    return std::nullopt;
}

} // namespace panside
