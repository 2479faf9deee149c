#include "tests/ui/ledger/house_of.h"
#include "tests/ui/words/in_language.h"
#include "ui/report/ledger_paper.h"

#include <QRegularExpression>

namespace panside {
namespace {

HouseLedger inspectedHouse() {
    return houseOf({rowIn("2026-03-03T10:00:00Z,vessel,40,gal,name=drum 8;kind=drum;lead=suspect;material=steel"),
                    rowIn("2026-03-03T11:00:00Z,graded,55.5,percent,vessel=drum 7;flavour=clean;sample=yes"),
                    rowIn("2026-03-03T11:10:00Z,graded,,,vessel=pail 3;class=very dark;off=scorched"),
                    rowIn("2026-03-03T11:20:00Z,press_on,,,from=drum 7;to=drum 8"),
                    rowIn("2026-03-03T11:40:00Z,press_off,10,gal,heel=0.5gal"),
                    rowIn("2026-03-03T12:00:00Z,cleaned,,,vessel=press;with=hot water;rinsed=yes;checked=no"),
                    rowIn("2026-03-03T12:30:00Z,tested,180,ppb,of=drum 7;for=lead"),
                    rowIn("2026-03-04T12:00:00Z,packed,24,,lot=a;from=drum 7;size=0.5L;brix=66.9"),
                    rowIn("2026-03-05T12:00:00Z,shipped,4,,lot=a;size=0.5L")});
}

const PaperTable& tableNamed(const LedgerPaper& paper, const char* english, const char* french, bool isFrench) {
    for (const PaperTable& one : paper.tables)
        if (one.title == QString::fromUtf8(isFrench ? french : english))
            return one;
    ADD_FAILURE() << "no table " << english;
    return paper.tables.front();
}

class LedgerPaperWords : public InLanguage {};

TEST_P(LedgerPaperWords, AreTheLanguagesOwnOnEveryPage) {
    const HouseLedger house = inspectedHouse();
    const LedgerPaper book = bookOnPaper(house.ledger(), GetParam() ? Units::metric : Units::us);
    const auto row = [&](const char* english, const char* french, std::size_t at) {
        QStringList cells;
        for (const QString& cell : tableNamed(book, english, french, GetParam()).rows.at(at))
            cells << asPrinted(cell);
        return cells.join(u'|').toStdString();
    };
    const auto has = [&](const std::string& words, const char* english, const char* french) {
        EXPECT_NE(words.find(GetParam() ? french : english), std::string::npos) << words;
    };
    has(row("Graded", "Classé", 0), "drum 7|56\u00a0%, clean|sample kept", "drum 7|56\u00a0%, clean|échantillon gardé");
    has(row("Graded", "Classé", 1), "very dark, scorched", "très foncé, brûlé");
    has(row("Cleaned", "Nettoyé", 0), "press|hot water|rinsed, looked over: no",
        "filtre-presse|hot water|rincé, inspecté\u00a0: non");
    has(row("Tested", "Analysé", 0), "drum 7|lead|180\u00a0ppb", "drum 7|plomb|180\u00a0ppb");
    has(row("Buyers", "Acheteurs", 0), "nobody named|a|0.5L", "personne de nommé|a|0,5L");
    QString losses;
    for (const PaperTable& table : book.tables)
        for (const QStringList& cells : table.rows)
            for (const QString& cell : cells) {
                losses += cell + u'\n';
                static const QRegularExpression point{QStringLiteral("\\d\\.\\d")};
                const bool isSource = &table == &book.tables[0] && &cell == &cells.back(); // as it was published
                if (GetParam() && !isSource) {
                    EXPECT_FALSE(point.match(asPrinted(cell)).hasMatch())
                        << table.title.toStdString() << ": " << cell.toStdString();
                }
            }
    has(losses.toStdString(), "press heel", "reste du filtre-presse");
    has(losses.toStdString(), "suspect", "soupçonné");
}
INSTANTIATE_TEST_SUITE_P(Languages, LedgerPaperWords, testing::Bool());

} // namespace
} // namespace panside
