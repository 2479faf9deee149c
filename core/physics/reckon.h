#pragma once
// The sums of the trade, for the command line and for the screen: named arguments as a person writes them in, an answer
// with its sum in words out, or a refusal that names the likely slip. Pure: nothing is read or written.
#include "core/physics/reckon_words.h"
#include "core/physics/tonight.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace panside::sums {

struct Figure {
    std::string_view field;      // its name in JSON; empty: for people only
    std::optional<double> value; // in the unit that the field's name says
    std::string_view name;
    Sentence shown;
    std::vector<double> list = {};            // an array in JSON, in the place of the value
    std::string_view word = {};               // a word in JSON, in the place of the value
    std::optional<Likely<double>> range = {}; // an object of p10, p50 and p90 in JSON, in the place of the value
};

struct Answer {
    std::vector<Figure> figures;
    std::vector<Sentence> sum; // step by step
    Sentence uncertainty;
    std::string_view source;
    std::string_view caution;
};

struct Refusal {
    bool usage = false;   // the question was put wrongly, not the amount
    std::string argument; // which one; empty: the question as a whole
    std::string given;    // what stood there
    std::vector<Sentence> why;
};

struct Parameter {
    std::string_view name; // as on the command line, without its dashes
    std::string_view meaning;
    std::string_view example;
    bool needed = false; // alone; what is needed only together with others the sum itself says
    bool many = false;
};

class Reader;
struct Kind {
    std::string_view name;
    std::string_view title;
    std::span<const Parameter> parameters;
    Answer (*sum)(Reader&); // of this room
};
std::span<const Kind> reckonKinds();

using Arguments = std::vector<std::pair<std::string, std::string>>; // name, as written
using Outcome = std::variant<Answer, Refusal>;
Outcome reckon(std::string_view kind, const Arguments& arguments);

} // namespace panside::sums
