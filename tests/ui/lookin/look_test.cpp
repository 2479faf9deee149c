#include "core/boil/boil.h"
#include "core/journal/journal.h"
#include "core/lookin/door.h"
#include "core/shift/keeper.h"
#include "tests/ui/board/scenes.h"
#include "tests/ui/lookin/phones.h"
#include "ui/board/board.h"
#include "ui/board/card.h"
#include "ui/console/console.h"
#include "ui/lookin/look_words.h"
#include "ui/lookin/looked_at.h"
#include "ui/page/keyed_page.h"

#include <QApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTcpSocket>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

LookShown shownOn(const Board& board) {
    const auto& cards = const_cast<Board&>(board).cards().cards();
    return {.picture = board.picture(),
            .sentence = board.sentenceShown(),
            .cards = {cards[0]->view(), cards[1]->view(), cards[2]->view()},
            .units = board.units()};
}
QJsonObject read(const QByteArray& line) {
    EXPECT_FALSE(line.contains('\n')) << "a line of the stream";
    return QJsonDocument::fromJson(line).object();
}
QString chiefOf(const QJsonObject& card) {
    QStringList pieces;
    for (const auto& piece : card["chief"].toArray())
        pieces << piece.toArray()[0].toString();
    return pieces.join(u' ');
}

TEST(LookView, SaysWhatTheBoardSays) {
    Board board;
    board.setUnits(Units::us);
    for (const Picture& picture : {scenes::fresh(), scenes::calm(), scenes::drawing(), scenes::scorching(),
                                   scenes::late(), scenes::doubt(), scenes::blind(), scenes::handOnly()}) {
        board.display(picture);
        const auto told = read(lookPicture(shownOn(board), WallClock{}, false));
        EXPECT_EQ(told["said"].toString(), board.sentenceShown().wrong);
        EXPECT_EQ(told["steps"].toString(), board.sentenceShown().first());
        EXPECT_EQ(told["flashing"].toBool(), board.sentenceShown().flashing);
        ASSERT_EQ(told["cards"].toArray().size(), 3);
        for (int i = 0; i < 3; ++i) {
            const auto card = told["cards"].toArray()[i].toObject();
            const CardView& view = board.cards().cards()[static_cast<std::size_t>(i)]->view();
            QStringList pieces;
            for (const Piece& piece : view.chief)
                pieces << piece.text;
            EXPECT_EQ(chiefOf(card), pieces.join(u' '));
            EXPECT_EQ(card["title"].toString(), view.title);
            EXPECT_EQ(card["figure"].toString(), view.figure);
            EXPECT_EQ(card["order"].toString(), view.order);
            EXPECT_EQ(card["due"].toBool(), view.due);
        }
    }
}

TEST(LookView, CallsForTheAlarmThatNobodyHasSeen) {
    Board board;
    board.display(scenes::scorching());
    const auto call = read(lookPicture(shownOn(board), WallClock{}, false))["call"].toObject();
    EXPECT_EQ(call["tone"].toString(), "high");
    EXPECT_EQ(call["pitches"].toArray().size(), 5);
    EXPECT_EQ(call["every"].toDouble(), 4);
    board.display(scenes::seenAlarm());
    EXPECT_TRUE(read(lookPicture(shownOn(board), WallClock{}, false))["call"].isNull());
    board.display(scenes::calm());
    EXPECT_TRUE(read(lookPicture(shownOn(board), WallClock{}, false))["call"].isNull());
}

TEST(LookView, DrawsTheLastHoursThinnedAndInThePersonsUnits) {
    ShiftTrace trace;
    trace.setColumn(lookColumn);
    scenes::fillTrace(trace);
    Board board;
    board.display(scenes::calm());
    auto shown = shownOn(board);
    shown.units = Units::metric;
    const auto metric = read(lookChart(shown, trace));
    shown.units = Units::us;
    const QByteArray line = lookChart(shown, trace);
    const auto us = read(line);
    const auto curve = us["curve"].toArray();
    EXPECT_GT(curve.size(), 100);
    EXPECT_LE(curve.size(), 3 * 3600 / 30 + 1);
    EXPECT_LT(line.size(), 16'000);
    ASSERT_EQ(metric["curve"].toArray().size(), curve.size());
    for (int i = 0; i < curve.size(); ++i) {
        const auto f = curve[i].toArray(), k = metric["curve"].toArray()[i].toArray();
        EXPECT_EQ(f[0].toDouble(), k[0].toDouble());
        EXPECT_NEAR(f[1].toDouble(), k[1].toDouble() * 1.8, 0.02); // a kelvin is 1.8 degrees Fahrenheit
        EXPECT_LE(f[1].toDouble(), f[2].toDouble());
        EXPECT_GE(f[0].toDouble() + 30, us["from"].toDouble());
    }
    EXPECT_NEAR(us["target"].toDouble(), metric["target"].toDouble() * 1.8, 0.02);
    EXPECT_FALSE(us["draws"].toArray().isEmpty());
    EXPECT_FALSE(us["loads"].toArray().isEmpty());
    EXPECT_EQ(us["fan"].toArray().size(), 4);
}

TEST(LookView, ThePageIsSmallWholeAndNeedsNothingFromElsewhere) {
    const QByteArray page = lookPage();
    EXPECT_GT(page.size(), 5'000);
    EXPECT_LT(page.size(), 100'000);
    EXPECT_EQ(page.count("<script>"), 1);
    EXPECT_EQ(page.count("<style>"), 1);
    EXPECT_FALSE(page.contains("http:") || page.contains("https:") || page.contains("//cdn"));
    EXPECT_FALSE(page.contains("/*DAY*/") || page.contains("/*NIGHT*/")) << "its colours are the console's";
    EXPECT_TRUE(page.contains(inksOf(Look::night).word.name().toLatin1()));
    // What names it asks of the stream are told by it.
    Board board;
    board.display(scenes::calm());
    const auto told = read(lookPicture(shownOn(board), WallClock{}, false));
    static const QRegularExpression asked{QStringLiteral(R"re(\bnews\.(\w+))re")},
        word{QStringLiteral(R"re(\bw(?:ords)?\.(\w+))re")};
    int names = 0;
    for (auto found = asked.globalMatch(QString::fromUtf8(page)); found.hasNext(); ++names) {
        const QString name = found.next().captured(1);
        EXPECT_TRUE(told.contains(name)) << name.toStdString();
    }
    for (auto found = word.globalMatch(QString::fromUtf8(page)); found.hasNext(); ++names) {
        const QString name = found.next().captured(1);
        EXPECT_TRUE(name == u"replace" || told["words"].toObject().contains(name)) << name.toStdString();
    }
    EXPECT_GT(names, 20);
}

// The finder of a QR code: seven modules dark, five light, three dark, in three corners (ISO/IEC 18004, 6.3.3).
TEST(LookCode, HasItsFindersAndItsQuietEdge) {
    const QImage code = codeOf(LookPlace{QStringLiteral("192.168.1.20"), 8437, newKey()}.link(), 1);
    ASSERT_EQ(code.width(), code.height());
    EXPECT_EQ((code.width() - 8 - 17) % 4, 0); // a version's size, four modules of quiet on each side
    const auto dark = [&](int x, int y) { return code.pixelColor(x, y) == Qt::black; };
    const int far = code.width() - 4 - 7;
    for (const auto& [left, top] : {std::pair{4, 4}, {far, 4}, {4, far}})
        for (int i = 0; i < 7; ++i) {
            EXPECT_TRUE(dark(left + i, top)) << i;
            EXPECT_EQ(dark(left + i, top + 3), i != 1 && i != 5) << i;
        }
    for (int i = 0; i < code.width(); ++i)
        for (int edge = 0; edge < 4; ++edge)
            EXPECT_FALSE(dark(i, edge) || dark(edge, i));
}

TEST(LookedAtByPhones, IsOffUntilItIsSwitchedOn) {
    LookedAt looked;
    looked.apply({});
    EXPECT_FALSE(looked.isOpen());
    looked.apply({.on = true, .address = QStringLiteral("192.0.2.7"), .port = 0, .key = QStringLiteral("k")});
    EXPECT_FALSE(looked.isOpen());
    EXPECT_EQ(looked.fault(), LookFault::addressNotOurs);
    looked.apply({.on = true, .address = QStringLiteral("127.0.0.1"), .port = 0, .key = QStringLiteral("k")});
    EXPECT_TRUE(looked.isOpen());
    looked.apply({});
    EXPECT_FALSE(looked.isOpen());
}

class LookConsole : public testing::Test {
protected:
    LookConsole() {
        qputenv("XDG_CONFIG_HOME", folder_.path().toUtf8());
        const auto place = std::filesystem::path{folder_.filePath(QStringLiteral("own.journal")).toStdString()};
        session_ = std::make_unique<Session>(keeperIn(Journal::open(place)));
        Choices choices;
        choices.cautioned = true;
        choices.lookIn.address = QStringLiteral("127.0.0.1");
        choices.lookIn.port = 0;
        console_ = std::make_unique<Console>(
            Console::Behind{.session = *session_, .journal = place, .probeFile = {}, .notice = {}, .advance = {}},
            choices);
        console_->resize(1366, 768);
        console_->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(console_.get()));
    }
    ~LookConsole() override { QLocale::setDefault(QLocale::c()); }

    QTemporaryDir folder_;
    std::unique_ptr<Session> session_;
    std::unique_ptr<Console> console_;
};

TEST_F(LookConsole, IsSwitchedOnAndOffOnItsPageAndStreamsTheBoard) {
    console_->act(Action::lookIn);
    auto* page = console_->findChild<KeyedPage*>(QStringLiteral("lookIn"));
    ASSERT_TRUE(page && page->isVisible());
    EXPECT_FALSE(console_->lookedAt().isOpen());
    EXPECT_TRUE(page->words().contains("It is off"));
    emit page->pressed(QStringLiteral("turn"));
    ASSERT_TRUE(console_->lookedAt().isOpen());
    const QUrl link{console_->lookedAt().link()};
    EXPECT_TRUE(page->words().contains(link.toString()));
    EXPECT_EQ(QFile::permissions(folder_.filePath(QStringLiteral("panside/console.ini"))) &
                  (QFile::ReadGroup | QFile::ReadOther),
              QFile::Permissions{})
        << "the key is the person's own";

    QTcpSocket phone;
    phone.connectToHost(link.host(), static_cast<quint16>(link.port()));
    phone.write("GET " + link.path().toUtf8() + "stream HTTP/1.1\r\n\r\n");
    QByteArray heard;
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            heard += phone.readAll();
            return heard.contains("\n\ndata: ");
        },
        10'000));
    EXPECT_TRUE(heard.contains(QJsonDocument{QJsonArray{console_->board().sentenceShown().wrong}}
                                   .toJson(QJsonDocument::Compact)
                                   .chopped(1)
                                   .mid(1)));

    emit page->pressed(QStringLiteral("key"));
    EXPECT_NE(QUrl{console_->lookedAt().link()}.path(), link.path());
    emit page->pressed(QStringLiteral("turn"));
    EXPECT_FALSE(console_->lookedAt().isOpen());
}

// The short form of tests/bench/look_bench, which measures what they cost.
TEST_F(LookConsole, TellsThirtyTwoPhonesAtOnceWhatTheBoardSays) {
    console_->act(Action::lookIn);
    emit console_->findChild<KeyedPage*>(QStringLiteral("lookIn"))->pressed(QStringLiteral("turn"));
    ASSERT_TRUE(console_->lookedAt().isOpen());
    const QUrl link{console_->lookedAt().link()};
    const Phones phones{32, link.port(), link.path().toStdString()};
    EXPECT_TRUE(QTest::qWaitFor([&] { return console_->lookedAt().phones() == 32; }, 10'000));
    EXPECT_TRUE(QTest::qWaitFor([&] { return phones.fewest() >= 3; }, 20'000)) << phones.fewest();
}

} // namespace
} // namespace panside
