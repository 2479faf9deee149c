#pragma once
// What the ledger asks of a row of the day book before it folds it.
#include "core/boil/fact.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace panside {

bool isYes(std::string_view word);

// Which vessel is the feed tank while the rows go by: the first that is named one, until it is retired or is another
// kind; then the next that is in use.
class FeedTank {
public:
    void first(std::string_view name); // where none is known: from the first row on
    void see(const DayRow& row);
    // As names agree; empty: none was ever declared.
    const std::string& key() const { return key_; }

private:
    std::string key_;
    std::vector<std::pair<std::string, bool>> known_; // in use, by when they were named
};

// Does it concern the feed tank, whose name's key is `feed`? Then the pans are brought up to it first.
bool touches(const DayRow& day, const std::string& feed);
// 1: its volume comes into the feed tank; -1: it is taken out of it; 0: neither.
int wayOf(const DayRow& day, const std::string& feed);
// A name is the same however it is written, and a row that is written down again later is the same row.
bool isSameRow(const Fact& one, const Fact& other);

} // namespace panside
