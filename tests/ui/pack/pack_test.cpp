#include "tests/ui/ledger/house_of.h"
#include "ui/lookin/look_words.h"
#include "ui/pack/label_sheet.h"
#include "ui/pack/pack_view.h"
#include "ui/words/place_words.h"

#include <QImage>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant august = instantIn("2026-08-03T15:00:00Z").value();

HouseLedger packedHouse() {
    return houseOf({rowIn("2026-03-04T10:00:00Z,vessel,40,gal,name=drum 8;kind=drum"),
                    rowIn("2026-03-04T11:00:00Z,bought,40,gal,what=syrup;vessel=drum 8;brix=66.9;from=a neighbour"),
                    rowIn("2026-08-03T12:00:00Z,packed,24,,lot=26215-1;from=drum 8;size=1pt;capped=185degF;brix=66.9"),
                    rowIn("2026-08-03T13:00:00Z,packed,10,,lot=cool;from=drum 8;size=1pt;capped=170degF;brix=66.9"),
                    rowIn("2026-08-03T14:00:00Z,shipped,20,,lot=26215-1;size=1pt;to=a shop")});
}

const PackLine* lineOf(const PackView& view, const char* name) {
    for (const PackLine& line : view.lines)
        if (line.name == QString::fromLatin1(name))
            return &line;
    return nullptr;
}

TEST(PackView, SaysWhichVesselMayBePacked) {
    const HouseLedger house = packedHouse();
    const auto view = packView(&house, {}, Units::us);
    ASSERT_TRUE(lineOf(view, "drum 7"));
    for (std::size_t i = 0; i < view.lines.size(); ++i) {
        const QString may = view.rows[i].cells.back();
        EXPECT_EQ(may == QStringLiteral("yes"), view.lines[i].name != QStringLiteral("drum 7"))
            << view.lines[i].name.toStdString() << may.toStdString();
    }
    EXPECT_FALSE(lineOf(view, "hold"));   // sap is no syrup
    EXPECT_FALSE(lineOf(view, "pail 4")); // empty
}

// What syrup just went into is what will be packed, though more was left where it came from.
TEST(PackView, BeginsWithTheVesselThatSyrupWentInto) {
    const HouseLedger house = houseOf({rowIn("2026-03-04T11:00:00Z,moved,4,gal,from=drum 7;to=pail 4")});
    EXPECT_EQ(packView(&house, {}, Units::us).lines.front().name, QStringLiteral("pail 4"));
}

// A pint of 473.2 mL (NIST Handbook 44, appendix C) at 66.9 brix, whose density is 1.3293 kg/L at 20 degC by ICUMSA
// (1.32932 between the table's 66 and 67), weighs 0.629 kg, 1.387 lb, 22.2 oz.
TEST(PackView, SaysTheWeightThatFillsASize) {
    const HouseLedger house = packedHouse();
    const auto which = house.ledger().vesselNamed("drum 8").value();
    const FillLine pint{QStringLiteral("1pt"), Volume::litre(0.473176473)};
    const auto view = yieldView(house.ledger().vessels()[which], std::span{&pint, 1}, Units::us);
    ASSERT_EQ(view.rows.size(), 1U);
    EXPECT_EQ(view.rows[0].cells[1], QString::fromUtf8("1.39\u00a0lb (22.2\u00a0oz)"));
}

TEST(PackForm, ComesWithTheNextCodeAndSaysWhatWillBeHeld) {
    const HouseLedger house = packedHouse();
    const auto context = bookContext(&house, Units::us, august);
    const auto which = house.ledger().vesselNamed("drum 8").value();
    BookForm form = packForm(bookForm(Deed::packed, context), house, which, {}, Units::us, august);
    EXPECT_EQ(form.answer(Key::lot), QStringLiteral("26215-2"));
    EXPECT_EQ(form.answer(Key::from), QStringLiteral("drum 8"));
    EXPECT_EQ(form.answer(Key::size), QStringLiteral("1pt")); // as it was packed last
    EXPECT_TRUE(form.live(form).contains(QStringLiteral("1.39")));
    EXPECT_FALSE(form.live(form).contains(QStringLiteral("held")));
    form.put(Key::capped, QStringLiteral("170"));
    EXPECT_TRUE(form.live(form).contains(QStringLiteral("held")));
    form.put(Key::capped, QStringLiteral("185"));
    form.put(Key::brix, QStringLiteral("65.5"));
    EXPECT_TRUE(form.live(form).contains(QStringLiteral("held")));
    form.put(Key::size, QStringLiteral("100mL"));
    EXPECT_TRUE(form.live(form).contains(QStringLiteral("Small")));
}

TEST(LotsView, HoldsALotThatWasPackedTooCoolUntilSomebodySaysWhy) {
    const HouseLedger house = packedHouse();
    const auto view = lotsView(&house, Units::us);
    ASSERT_EQ(view.lines.size(), 2U);
    EXPECT_EQ(view.lines[0].code, QStringLiteral("cool")); // the latest first
    EXPECT_TRUE(view.lines[0].held);
    EXPECT_TRUE(view.lines[0].says.contains(QString::fromUtf8("170.0\u00a0°F"))) << view.lines[0].says.toStdString();
    EXPECT_FALSE(view.lines[1].held);
    EXPECT_EQ(view.rows[1].cells[4], QStringLiteral("4")); // 24 less 20
    const HouseLedger told =
        house.with({rowIn("2026-08-04T12:00:00Z,tested,heated again,,of=cool;for=release;by=Maud")});
    EXPECT_TRUE(lotsView(&told, Units::us).lines[0].released);
}

// 7 CFR 52.5961 to .5966, as quoted: at least 75, 50 and 25 percent of light.
TEST(Class, FollowsTheRuleOfThePlace) {
    const PlaceLaw& ohio = allPlaces()[placeNamed("Ohio").value()];
    EXPECT_TRUE(classOf(0.76, ohio).startsWith(QStringLiteral("Golden")));
    EXPECT_TRUE(classOf(0.74, ohio).startsWith(QStringLiteral("Amber")));
    EXPECT_TRUE(classOf(0.49, ohio).startsWith(QStringLiteral("Dark")));
    EXPECT_TRUE(classOf(0.24, ohio).startsWith(QStringLiteral("Very dark")));
}

TEST(Labels, CarryTheLotAndTheAllergen) {
    const HouseLedger house = packedHouse();
    Lot lot = house.ledger().lots()[0];
    EXPECT_EQ(labelsOf(house.ledger(), lot, 0, 600).size(), 24U);
    EXPECT_EQ(labelsOf(house.ledger(), lot, 0, 5).size(), 5U);
    EXPECT_TRUE(labelsOf(house.ledger(), lot, 0, 1)[0].warning.isEmpty());
    lot.taint.milk = true;
    const Label label = labelsOf(house.ledger(), lot, 0, 1)[0];
    EXPECT_EQ(label.warning, QStringLiteral("CONTAINS MILK"));
    EXPECT_EQ(label.code, QStringLiteral("26215-1"));
    const auto rows = labelChecklist(allPlaces()[0], &lot);
    EXPECT_TRUE(std::any_of(rows.begin(), rows.end(),
                            [](const TableRow& row) { return row.cells[0].contains(QStringLiteral("MILK")); }));
}

// A gallon is 3.785 412 L, a fluid ounce 29.573 53 mL (NIST Handbook 44, appendix C). Both systems stand on a label of
// the US (21 CFR 101.7, from memory), and neither says more than is in it.
TEST(Labels, SayTheirContentsTrulyInBothSystems) {
    const auto contents = [](const char* size, const char* place) {
        const HouseLedger house =
            houseOf({rowIn("2026-03-01T09:00:00Z,set," + std::string{place} + ",,key=place"),
                     rowIn("2026-03-04T12:00:00Z,packed,2,,lot=a;from=drum 7;brix=66.9;size=" + std::string{size})});
        const QString line = labelsOf(house.ledger(), house.ledger().lots()[0], 0, 1)[0].lines[0];
        return QString{line}.replace(QChar{0x00a0}, u' ').toStdString();
    };
    const std::pair<const char*, const char*> inOhio[] = {
        {"1gal", "1 gal  ·  3.78 L"},       {"0.5gal", "½ gal  ·  1.89 L"},     {"1qt", "1 qt  ·  946 mL"},
        {"1pt", "1 pt  ·  473 mL"},         {"0.5pt", "½ pt  ·  236 mL"},       {"4L", "4 L  ·  1.05 gal"},
        {"1L", "1 L  ·  33.8 fl oz"},       {"500mL", "500 mL  ·  16.9 fl oz"}, {"250mL", "250 mL  ·  8.45 fl oz"},
        {"100mL", "100 mL  ·  3.38 fl oz"}, {"0.54L", "0.54 L  ·  18.2 fl oz"}};
    for (const auto& [size, line] : inOhio)
        EXPECT_EQ(contents(size, "Ohio"), line);
    EXPECT_EQ(contents("540mL", "Ontario"), "540 mL");
    EXPECT_EQ(contents("1pt", "Ontario"), "1 pt  ·  473 mL");
}

TEST(Labels, AreWrittenAsPages) {
    const HouseLedger house = packedHouse();
    const QTemporaryDir folder;
    const auto place = folder.filePath(QStringLiteral("labels.pdf")).toStdString();
    labelsAsPdf(labelsOf(house.ledger(), house.ledger().lots()[0], 0, 600), place);
    QFile file{QString::fromStdString(place)};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF"));
    const auto tag =
        drumTag(house.ledger(), house.ledger().vessels()[house.ledger().vesselNamed("drum 8").value()], Units::us);
    EXPECT_EQ(tag.head, QStringLiteral("drum 8"));
    tagAsPdf(tag, folder.filePath(QStringLiteral("tag.pdf")).toStdString());
    EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("tag.pdf"))));
}

// Read back by the reader of Debian's zbar-tools.
TEST(Labels, HaveACodeThatAReaderReads) {
    const QString reader = QStandardPaths::findExecutable(QStringLiteral("zbarimg"));
    ASSERT_FALSE(reader.isEmpty()) << "zbarimg is not installed (zbar-tools)";
    const QImage image = codeOf(QStringLiteral("26215-1"), 8);
    const QTemporaryDir folder;
    const QString place = folder.filePath(QStringLiteral("code.png"));
    ASSERT_TRUE(image.save(place));
    QProcess process;
    process.start(reader, {QStringLiteral("--quiet"), QStringLiteral("--raw"), place});
    ASSERT_TRUE(process.waitForFinished(20000));
    EXPECT_EQ(QString::fromUtf8(process.readAllStandardOutput()).trimmed(), QStringLiteral("26215-1"));
}

} // namespace
} // namespace panside
