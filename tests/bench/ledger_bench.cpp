// ledger_bench [rows]: a day book of so many rows (a million if left out): what parsing alone takes, what parsing and
// folding takes, and what one trace takes. Fails where the fold takes more than three times the parsing, or a trace
// more than 100 ms, or the page of the sap or of the vessels more than 300 ms.
#include "core/boil/shift_log.h"
#include "core/ledger/house_account.h"
#include "core/ledger/sap_page.h"
#include "core/ledger/trace.h"
#include "ui/vessels/vessels_view.h"

#include <chrono>
#include <cstdlib>
#include <fmt/format.h>

using namespace panside;
namespace {

// A house that gathers, moves, blends and packs without end; five years of it, a row every few minutes.
std::string bookOf(std::size_t rows) {
    std::string text{logHeader};
    text += '\n';
    const Instant begin = *instantIn("2027-02-01T00:00:00Z");
    for (int i = 0; i < 40; ++i)
        text += fmt::format("{},vessel,100000,L,name=v{};kind={}\n", textOf(begin), i, i < 20 ? "hold" : "drum");
    for (std::size_t i = 0; i < rows; ++i) {
        const std::string time = textOf(begin + std::chrono::seconds{60 + 150 * static_cast<long long>(i)});
        const auto from = i * 7 % 40, to = (i * 11 + 3) % 40;
        switch (i % 8) {
        case 0:
        case 1:
        case 2:
            text += fmt::format("{},gathered,{},L,to=v{};from=bush {};brix=2.{};by=Ann\n", time, 100 + i % 50, to,
                                i % 9, i % 10);
            break;
        case 3:
        case 4:
        case 5:
            text += fmt::format("{},moved,{},L,from=v{};to=v{}\n", time, 10 + i % 70, from,
                                from == to ? (to + 1) % 40 : to);
            break;
        case 6:
            text += fmt::format("{},lost,1,L,from=v{};why=sample\n", time, from);
            break;
        default:
            text += fmt::format("{},packed,3,,lot=L{};from=v{};size=1L;capped=84degC\n", time, i, from);
        }
    }
    return text;
}

double millisecondsOf(const auto& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

} // namespace

int main(int count, char** words) {
    const std::size_t rows = count > 1 ? std::strtoull(words[1], nullptr, 10) : 1'000'000;
    const std::string text = bookOf(rows);
    ReadLog read;
    const double parse = millisecondsOf([&] { read = readLog(text); });
    if (!read.faults.empty())
        return 2;
    auto book = std::make_shared<std::vector<Boil::Entry>>();
    for (Fact& fact : read.facts)
        book->push_back({static_cast<FactId>(book->size() + 1), std::move(fact)});
    const Instant now = book->back().fact.at;
    std::unique_ptr<HouseLedger> folded;
    const double fold = millisecondsOf([&] {
        folded = std::make_unique<HouseLedger>(HouseLedger::Parts{std::move(book), {}}, std::vector<Fact>{});
    });
    const Ledger* ledger = &folded->ledger();
    std::optional<Trace> trace;
    const double one = millisecondsOf([&] { trace = traceOf(*ledger, ledger->lots().back().code); });
    SapPage page;
    HouseAccount account;
    const double sap = millisecondsOf([&] { page = sapPage(*ledger, now); });
    const double house = millisecondsOf([&] { account = houseAccount(*ledger); });
    VesselsView vessels;
    const double vesselsPage = millisecondsOf([&] { vessels = vesselsView(folded.get(), {}, Units::us); });
    fmt::print("vessels page {:.1f} ms, {} vessels\n", vesselsPage, vessels.rows.size());
    fmt::print("sap page {:.1f} ms, {} tanks; house's account {:.1f} ms, {} runs\n", sap, page.tanks.size(), house,
               account.runs.size());
    fmt::print("rows {}\nparse {:.0f} ms\nparse and fold {:.0f} ms, {:.2f} times\ntrace {:.1f} ms, {} behind\n", rows,
               parse, parse + fold, (parse + fold) / parse, one, trace->behind.size());
    return (parse + fold) / parse <= 3 && one <= 100 && sap <= 300 && vesselsPage <= 300 ? 0 : 1;
}
