#pragma once
// The words that stand in a probe file for its choices: reader and writer share them.
#include "core/probe/probe_file.h"

#include <array>

namespace panside::probe_words {

template <class T>
struct Word {
    std::string_view text;
    T meant;
};
template <class T>
Word(std::string_view, T) -> Word<T>;
inline constexpr std::array protocols{Word{"lines", Protocol::lines}, Word{"modbus-rtu", Protocol::modbusRtu}};
inline constexpr std::array encodings{Word{"columns", Encoding::columns}, Word{"pairs", Encoding::pairs},
                                      Word{"json", Encoding::json}};
inline constexpr std::array parities{Word{"none", Parity::none}, Word{"even", Parity::even}, Word{"odd", Parity::odd}};
inline constexpr std::array types{Word{"int16", RegisterType::int16}, Word{"uint16", RegisterType::uint16},
                                  Word{"int32", RegisterType::int32}, Word{"uint32", RegisterType::uint32},
                                  Word{"float32", RegisterType::float32}};
inline constexpr std::array orders{Word{"big", WordOrder::big}, Word{"little", WordOrder::little}};
inline constexpr std::array thermocouples{Word{"K", Thermocouple::K}, Word{"J", Thermocouple::J},
                                          Word{"T", Thermocouple::T}};

// Whether readings can carry this name as probe=NAME in a shift log: up to 60 bytes on one line.
bool isName(std::string_view name);

template <class Words, class T>
std::string_view wordFor(const Words& words, const T& meant) {
    for (const auto& word : words)
        if (word.meant == meant)
            return word.text;
    return {};
}

} // namespace panside::probe_words
