#include "app/reckon_command.h"

#include "app/commands.h"
#include "app/exit_status.h"
#include "core/ledger/sap_nights.h"
#include "core/physics/reckon_tonight.h"
#include "core/physics/wood.h"
#include "core/shift/house_ledger.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>

namespace panside::sums {
namespace {

struct Request {
    std::string kind;
    Arguments arguments;
    bool json = false;
    bool list = false;
    bool help = false;
    std::string fault;
};

// By hand, as an amount may begin with a minus and would be taken for an option: --temp -4degC.
Request requestIn(const std::vector<std::string>& args) {
    Request request;
    for (std::size_t i = 0; i < args.size(); ++i) {
        const std::string& word = args[i];
        if (word == "--json")
            request.json = true;
        else if (word == "--list")
            request.list = true;
        else if (word == "--help" || word == "-h")
            request.help = true;
        else if (word.starts_with("--")) {
            const std::size_t equals = word.find('=');
            if (equals != std::string::npos)
                request.arguments.emplace_back(word.substr(2, equals - 2), word.substr(equals + 1));
            else if (i + 1 < args.size() && !args[i + 1].starts_with("--"))
                request.arguments.emplace_back(word.substr(2), args[++i]);
            else
                request.fault = word + " stands alone. Write what it is behind it.";
        } else if (request.kind.empty())
            request.kind = word;
        else
            request.fault =
                "\"" + word + "\" belongs to no argument. Write a number and its unit together, without a blank.";
    }
    return request;
}

const Kind* kindNamed(const std::string& name) {
    for (const Kind& kind : reckonKinds())
        if (kind.name == name)
            return &kind;
    return nullptr;
}

void writeKinds(std::ostream& out) {
    out << "panside reckon KIND ... [--json]\n\n";
    for (const Kind& kind : reckonKinds())
        out << "  " << kind.name << std::string(14 - kind.name.size(), ' ') << kind.title << '\n';
    out << "\npanside reckon KIND --help tells what one needs.\n";
}

void writeHelp(const Kind& kind, std::ostream& out) {
    out << kind.title << "\n\npanside reckon " << kind.name;
    for (const Parameter& parameter : kind.parameters)
        if (parameter.needed)
            out << " --" << parameter.name << ' ' << parameter.example;
    out << "\n\n";
    for (const Parameter& parameter : kind.parameters)
        out << "  --" << parameter.name << std::string(12 - parameter.name.size(), ' ') << parameter.meaning
            << ", as in " << parameter.example << (parameter.many ? "; may be repeated" : "") << '\n';
    if (kind.name == "wood")
        out << "  --list        the woods that are known\n";
    if (kind.name == "tonight")
        out << "  --journal     a journal, which tells what stands and what its last nights were, in place of --stand "
               "and "
               "--rate\n";
}

void writeWoods(bool json, std::ostream& out) {
    nlohmann::json names = nlohmann::json::array();
    for (const Wood& wood : woods()) {
        if (json)
            names.push_back(wood.name);
        else
            out << wood.name << '\n';
    }
    if (json)
        out << nlohmann::json{{"woods", names}}.dump() << '\n';
}

void writeJson(const Answer& answer, std::ostream& out) {
    nlohmann::ordered_json object;
    for (const Figure& figure : answer.figures)
        if (figure.range)
            object[std::string{figure.field}] = {
                {"p10", figure.range->p10}, {"p50", figure.range->p50}, {"p90", figure.range->p90}};
        else if (!figure.list.empty())
            object[std::string{figure.field}] = figure.list;
        else if (!figure.word.empty())
            object[std::string{figure.field}] = figure.word;
        else if (!figure.field.empty())
            object[std::string{figure.field}] = figure.value ? nlohmann::ordered_json(*figure.value) : nullptr;
    out << object.dump() << '\n';
}

void writeForPeople(const Kind& kind, const Answer& answer, std::ostream& out) {
    out << kind.title << '\n';
    std::size_t widest = 0;
    for (const Figure& figure : answer.figures)
        widest = std::max(widest, figure.name.size());
    for (const Figure& figure : answer.figures)
        out << "  " << figure.name << std::string(widest - figure.name.size() + 2, ' ') << asRead(figure.shown) << '\n';
    out << '\n';
    for (const Sentence& step : answer.sum)
        out << asRead(step) << '\n';
    out << asRead(answer.uncertainty) << "\nSource: " << answer.source << ".\n" << answer.caution << '\n';
}

int writeRefusal(const Request& request, const Refusal& refusal, std::ostream& err) {
    err << "panside reckon " << request.kind;
    if (!refusal.argument.empty())
        err << " --" << refusal.argument;
    if (!refusal.given.empty() && !refusal.argument.empty())
        err << ' ' << refusal.given;
    err << ":";
    for (const Sentence& sentence : refusal.why)
        err << ' ' << asRead(sentence);
    err << '\n';
    return refusal.usage ? status::wrongUsage : status::refused;
}

// Tonight, from what a journal knows: its nights, and what stands in its tanks unless that is told.
Outcome tonightOf(const Request& request) {
    Arguments asked;
    std::string place;
    bool stands = false;
    for (const auto& one : request.arguments) {
        if (one.first == "journal")
            place = one.second;
        else
            asked.push_back(one);
        stands |= one.first == "stand";
    }
    const auto journal = Journal::open(place, Journal::Access::read);
    const HouseLedger house{&journal};
    const auto here = standing(house.ledger());
    return reckonTonight(asked, tonightBasis(house.ledger()),
                         stands ? std::nullopt : std::optional<std::span<const SapStanding>>{here});
}

Outcome answerOf(const Request& request) {
    const bool journal = std::ranges::any_of(request.arguments, [](const auto& one) { return one.first == "journal"; });
    return journal && request.kind == "tonight" ? tonightOf(request) : reckon(request.kind, request.arguments);
}

int answerTo(const std::vector<std::string>& args, std::ostream& out, std::ostream& err) {
    const Request request = requestIn(args);
    const Kind* kind = kindNamed(request.kind);
    if (request.help && (kind || request.kind.empty())) {
        if (kind)
            writeHelp(*kind, out);
        else
            writeKinds(out);
        return status::done;
    }
    if (!kind) {
        err << (request.kind.empty() ? "panside reckon: which sum?"
                                     : "panside reckon: there is no sum " + request.kind + ".")
            << " One of these:\n\n";
        writeKinds(err);
        return status::wrongUsage;
    }
    if (!request.fault.empty()) {
        err << "panside reckon " << request.kind << ": " << request.fault << '\n';
        return status::wrongUsage;
    }
    if (request.list && kind->name == "wood") {
        writeWoods(request.json, out);
        return status::done;
    }
    if (request.list) {
        err << "panside reckon " << request.kind << ": --list goes with wood only.\n";
        return status::wrongUsage;
    }
    const Outcome outcome = answerOf(request);
    if (const auto* refusal = std::get_if<Refusal>(&outcome))
        return writeRefusal(request, *refusal, err);
    if (request.json)
        writeJson(std::get<Answer>(outcome), out);
    else
        writeForPeople(*kind, std::get<Answer>(outcome), out);
    return status::done;
}

} // namespace
} // namespace panside::sums

namespace panside {

int reckonCommand(const std::vector<std::string>& args, std::ostream& out, std::ostream& err) {
    try {
        return sums::answerTo(args, out, err);
    } catch (const JournalError& trouble) {
        err << trouble.what() << '\n';
        return statusOf(trouble.trouble());
    }
}

} // namespace panside
