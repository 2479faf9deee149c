#pragma once
// What a sheet asks for a row of the day book, by the table of such rows, and the fact that its answers make. Pure: the
// sheet shows it, tests drive it without one.
#include "core/boil/day_vocabulary.h"
#include "core/shift/house_ledger.h"
#include "ui/look/units.h"

#include <QStringList>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <variant>
#include <vector>

namespace panside {

// What a form is filled in with: names that there are, words that were used, the latest first.
struct BookContext {
    Units units = Units::us;
    Instant now{};
    QStringList vessels, lots, hands, buyers, sellers;
    std::map<std::pair<Deed, Key>, QStringList> words;
    BookKnown known;
    bool asksGallons = false; // a bare gal may be either gallon here
};
// `house` may be none: nothing is known yet.
std::shared_ptr<const BookContext> bookContext(const HouseLedger* house, Units units, Instant now);

struct BookField {
    enum class Kind { number, amount, words, choice }; // amount: a number that may have its unit written behind it
    Kind kind = Kind::words;
    std::optional<Key> key = {}; // none: the row's value
    QString name = {}, label = {}, answer = {};
    Unit unit = Unit::none; // what a bare number is meant in
    bool needed = false;
    std::vector<Unit> units = {}; // others that it may be written in
    QStringList offers = {};      // to be put in by one press, as written
    bool operator==(const BookField&) const = default;
};

struct BookForm {
    Deed deed{};
    std::vector<BookField> fields;
    Instant pressedAt{}; // when it happened, unless it is put earlier
    Duration earlier{0};
    QString by;
    QString title, caution;
    std::function<QString(const BookForm&)> live;  // said under the fields while they are filled in; may be empty
    std::function<std::optional<BookForm>()> next; // the sheet that follows when this one was kept; may be empty
    std::shared_ptr<const BookContext> context;

    const BookField* field(std::optional<Key> key) const;
    BookField* field(std::optional<Key> key);
    QString answer(std::optional<Key> key) const;
    // A vessel that is called by its kind, as names are offered, is of that kind until another is said.
    void takeKindFromName();
    // Fills a field in; of a key that the row has not, nothing happens.
    void put(std::optional<Key> key, const QString& text);
    Instant at() const { return pressedAt - std::chrono::round<std::chrono::microseconds>(earlier); }
};
BookForm bookForm(Deed deed, std::shared_ptr<const BookContext> context);

// What keeps the form from becoming a fact, at which field (by name; empty: none), and what could stand there instead.
struct BookProblem {
    QString field, words;
    QStringList offers;
};
std::variant<Fact, BookProblem> factOf(const BookForm& form);

// Amounts that a live line needs; nullopt while they cannot be read.
std::optional<double> siOf(const BookForm& form, std::optional<Key> key);

} // namespace panside
