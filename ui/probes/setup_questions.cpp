#include "ui/probes/setup_questions.h"

#include "core/boil/vocabulary.h"
#include "core/probe/guess.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Probes", text); }

constexpr std::size_t enoughSamples = 5; // before a field is guessed at

// A field among those of all ports: the two that are swapped may hang on two ports.
struct Place {
    std::size_t port, field;
};

QString number(double value, Unit unit) {
    return QLocale{}.toString(value, 'f', 1).replace(u'-', QChar{0x2212}) + QChar{0x00a0} + symbolOf(unit);
}

// A sentence may begin with the name of a reading.
QString begun(QString sentence) {
    if (!sentence.isEmpty())
        sentence[0] = sentence[0].toUpper();
    return sentence;
}

class Asking {
public:
    explicit Asking(const ProbeSetup& setup) : setup_{setup} {
        for (std::size_t p = 0; p < setup.file().ports.size(); ++p)
            for (std::size_t f = 0; f < setup.file().ports[p].fields.size(); ++f) {
                const PortStatus* status = setup.statusOf(p);
                const bool known = status && f < status->fields.size();
                places_.push_back({p, f});
                rules_.push_back(setup.file().ports[p].fields[f]);
                numbers_.push_back(known ? status->fields[f].number : std::nullopt);
                if (numbers_.back())
                    *numbers_.back() += rules_.back().offset;
            }
    }

    std::vector<SetupQuestion> all() {
        for (const Question& question : questions(rules_, numbers_))
            question.doubt == Doubt::swapped ? swapped(question) : otherUnit(question);
        guesses();
        return std::move(asked_);
    }

private:
    FieldRule& ruleIn(ProbeFile& file, std::size_t flat) const {
        return file.ports[places_[flat].port].fields[places_[flat].field];
    }
    std::string keyOf(std::size_t flat) const {
        const auto& [port, field] = places_[flat];
        return setup_.file().ports[port].device + "/" + std::to_string(field);
    }

    void otherUnit(const Question& question) {
        const FieldRule& rule = rules_[question.field];
        SetupQuestion asks{.words =
                               begun(tr("The %1 reads %2: that looks like %3.")
                                         .arg(readingName(*rule.reads), number(*numbers_[question.field], rule.unit),
                                              symbolOf(question.unit))),
                           .yes = tr("Read it in %1").arg(symbolOf(question.unit)),
                           .key = "unit " + keyOf(question.field),
                           .after = setup_.file()};
        ruleIn(asks.after, question.field).unit = question.unit;
        asked_.push_back(std::move(asks));
    }

    void swapped(const Question& question) {
        const std::size_t pan = question.field, stack = *question.other;
        SetupQuestion asks{
            .words = begun(tr("The %1 reads %2 and the %3 %4: are the two swapped?")
                               .arg(readingName(*rules_[pan].reads), number(*numbers_[pan], rules_[pan].unit),
                                    readingName(*rules_[stack].reads), number(*numbers_[stack], rules_[stack].unit))),
            .yes = tr("Swap them"),
            .key = "swap " + keyOf(pan) + " " + keyOf(stack),
            .after = setup_.file()};
        std::swap(ruleIn(asks.after, pan).reads, ruleIn(asks.after, stack).reads);
        asked_.push_back(std::move(asks));
    }

    bool isRead(Series series) const {
        return std::ranges::any_of(rules_, [&](const FieldRule& rule) { return rule.reads == series; });
    }

    // The unit of a guess that the number leaves open: that of the port's other temperatures.
    Unit unitFor(const Guess& guess) const {
        if (guess.unit != Unit::none)
            return guess.unit;
        if (rowOf(*guess.reads).dimension == Dimension::temperature)
            for (const FieldRule& rule : setup_.rule()->fields)
                if (rule.unit == Unit::degC || rule.unit == Unit::degF)
                    return rule.unit;
        return rowOf(*guess.reads).exported;
    }

    void guesses() {
        if (!setup_.rule() || setup_.rule()->protocol != Protocol::lines)
            return;
        std::vector<FieldSamples> unused;
        for (const auto& [is, numbers] : setup_.samples())
            if (numbers.size() >= enoughSamples &&
                std::ranges::find(setup_.rule()->fields, is, &FieldRule::is) == setup_.rule()->fields.end())
                unused.push_back({is, numbers});
        auto guessed = panside::guess(unused);
        // The syrup pan is asked about first: all else leans on it.
        std::ranges::stable_sort(guessed, {}, [](const Guess& guess) {
            return guess.reads ? static_cast<int>(*guess.reads) : static_cast<int>(seriesCount);
        });
        for (const Guess& guess : guessed) {
            if (!guess.reads || isRead(*guess.reads))
                continue;
            const Unit unit = unitFor(guess);
            SetupQuestion asks{
                .words = tr("Field “%1” looks like the %2, in %3.")
                             .arg(QString::fromStdString(guess.is), readingName(*guess.reads), symbolOf(unit)),
                .yes = tr("Use it"),
                .key = "guess " + setup_.rule()->device + "/" + guess.is,
                .after = setup_.file()};
            asks.after.ports[*setup_.shown()].fields.push_back({.is = guess.is, .reads = guess.reads, .unit = unit});
            asked_.push_back(std::move(asks));
        }
    }

    const ProbeSetup& setup_;
    std::vector<Place> places_;
    std::vector<FieldRule> rules_;
    std::vector<std::optional<double>> numbers_;
    std::vector<SetupQuestion> asked_;
};

} // namespace

std::vector<SetupQuestion> setupQuestions(const ProbeSetup& setup, const std::set<std::string>& refused) {
    auto asked = Asking{setup}.all();
    std::erase_if(asked, [&](const SetupQuestion& question) { return refused.contains(question.key); });
    return asked;
}

} // namespace panside
