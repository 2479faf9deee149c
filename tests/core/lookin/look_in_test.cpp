// The server from outside, by plain sockets on 127.0.0.1: who is let in, what is refused, and that a slow one keeps
// nobody waiting.
#include "core/lookin/look_in.h"
#include "core/lookin/request.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QRegularExpression>
#include <QTcpSocket>
#include <gtest/gtest.h>
#include <memory>

namespace panside {
namespace {

constexpr int soon = 4000; // milliseconds, more than any answer takes
const QByteArray page = "<html><style>p{}</style><script>1</script><p>the page</p></html>";

class LookInTest : public testing::Test {
protected:
    LookInTest() {
        if (!QCoreApplication::instance()) {
            static int count = 1;
            static char name[] = "lookin_test";
            static char* words[] = {name, nullptr};
            static QCoreApplication application{count, words};
        }
        place_.address = QStringLiteral("127.0.0.1");
        place_.port = 0;
        place_.key = newKey();
        EXPECT_EQ(lookIn_.open(place_, page), LookFault::none);
    }
    std::unique_ptr<QTcpSocket> connected() const {
        auto socket = std::make_unique<QTcpSocket>();
        socket->connectToHost(place_.address, lookIn_.place().port);
        EXPECT_TRUE(socket->waitForConnected(soon));
        return socket;
    }
    static QByteArray allOf(QTcpSocket& socket) {
        QByteArray all;
        while (socket.waitForReadyRead(soon))
            all += socket.readAll();
        return all + socket.readAll();
    }
    QByteArray answerTo(const QByteArray& request) const {
        auto socket = connected();
        socket->write(request);
        return allOf(*socket);
    }
    QByteArray get(const QByteArray& path, const QByteArray& method = "GET") const {
        return answerTo(method + ' ' + path + " HTTP/1.1\r\nHost: sugarhouse\r\n\r\n");
    }
    static int statusOf(const QByteArray& answer) { return answer.mid(9, 3).toInt(); }
    QByteArray in(const QByteArray& rest = "") const {
        return '/' + QByteArray::fromStdString(place_.key) + '/' + rest;
    }
    static bool hears(QTcpSocket& socket, const QByteArray& words) {
        QByteArray all;
        QElapsedTimer since;
        for (since.start(); since.elapsed() < soon && !all.contains(words); all += socket.readAll())
            socket.waitForReadyRead(50);
        return all.contains(words);
    }

    LookPlace place_;
    LookIn lookIn_;
};

TEST_F(LookInTest, GivesThePageToWhoeverHasTheKey) {
    const QByteArray answer = get(in());
    EXPECT_EQ(statusOf(answer), 200);
    EXPECT_TRUE(answer.endsWith("\r\n\r\n" + page));
    const QByteArray head = get(in(), "HEAD");
    EXPECT_EQ(statusOf(head), 200);
    EXPECT_TRUE(head.endsWith("\r\n\r\n")) << "a head has no body";
    EXPECT_TRUE(head.contains("Content-Length: " + QByteArray::number(page.size())));
    EXPECT_TRUE(lookIn_.place().link().endsWith(QString::fromStdString(place_.key) + u'/'));
}

// The headers by their standards: CSP level 3, Fetch (nosniff, CORP), Referrer Policy, RFC 7034.
TEST_F(LookInTest, ForbidsFramesSniffingAndWhatIsFromElsewhere) {
    const QByteArray answer = get(in());
    for (const char* header :
         {"\r\nX-Content-Type-Options: nosniff\r\n", "\r\nX-Frame-Options: DENY\r\n",
          "\r\nReferrer-Policy: no-referrer\r\n", "\r\nCross-Origin-Resource-Policy: same-origin\r\n",
          "\r\nCache-Control: no-store\r\n", "default-src 'none'", "frame-ancestors 'none'", "form-action 'none'"})
        EXPECT_TRUE(answer.contains(header)) << header;
    // Of "1" and "p{}", by `printf 1 | openssl dgst -sha256 -binary | base64`.
    EXPECT_TRUE(answer.contains("script-src 'sha256-a4ayc/80/OGda4BO/1o/V0etpOqiLx1JwB5S3beHW0s='"));
    EXPECT_TRUE(answer.contains("style-src 'sha256-"));
}

TEST_F(LookInTest, HasNothingElseWhateverItIsCalled) {
    for (const QByteArray& path :
         {in("../"), in("../../etc/passwd"), in("%2e%2e/%2e%2e/etc/passwd"), in("index.html"), in("stream/"), in("?x"),
          in("stream?x"), '/' + QByteArray::fromStdString(place_.key), '/' + in()})
        EXPECT_EQ(statusOf(get(path)), 404) << path.toStdString();
}

TEST_F(LookInTest, LetsWhoeverGuessesWait) {
    EXPECT_EQ(statusOf(get("/favicon.ico")), 404);
    for (std::size_t i = 0; i < Door::wrongAMinute; ++i)
        EXPECT_EQ(statusOf(get('/' + QByteArray::fromStdString(newKey()) + '/')), 404);
    const QByteArray answer = get(in());
    EXPECT_EQ(statusOf(answer), 429) << "with the right key too: or it could be guessed on";
    EXPECT_TRUE(answer.contains("Retry-After: 60"));
}

TEST_F(LookInTest, ChangesNothingWhateverIsAsked) {
    for (const char* method : {"POST", "PUT", "DELETE"})
        EXPECT_EQ(statusOf(get(in(), method)), 405) << method;
}

TEST_F(LookInTest, StreamsTheNewestAndTheChartWhenItChanges) {
    lookIn_.show({"{\"n\":1}", "{\"c\":1}"});
    auto phone = connected();
    phone->write("GET " + in("stream") + " HTTP/1.1\r\n\r\n");
    EXPECT_TRUE(hears(*phone, "event: chart\ndata: {\"c\":1}\n\ndata: {\"n\":1}\n\n"));
    EXPECT_EQ(lookIn_.phones(), 1);
    lookIn_.show({"{\"n\":2}", "{\"c\":1}"});
    QByteArray second;
    while (!second.contains("\n\n") && phone->waitForReadyRead(soon))
        second += phone->readAll();
    EXPECT_EQ(second, "data: {\"n\":2}\n\n") << "the same chart is not sent again";
    lookIn_.show({"{\"n\":3}", "{\"c\":2}"});
    EXPECT_TRUE(hears(*phone, "data: {\"c\":2}\n\ndata: {\"n\":3}\n\n"));
}

TEST_F(LookInTest, RefusesAMegabyteOfHead) {
    auto socket = connected();
    socket->write("GET " + in() + " HTTP/1.1\r\nX: " + QByteArray(1'000'000, 'x') + "\r\n\r\n");
    const QByteArray answer = allOf(*socket);
    EXPECT_TRUE(answer.isEmpty() || statusOf(answer) == 431); // empty: the connection was reset first
    EXPECT_NE(socket->state(), QAbstractSocket::ConnectedState);
    EXPECT_EQ(statusOf(get(in())), 200) << "others are let in as ever";
}

TEST_F(LookInTest, WaitsForASlowSenderNoLongerThanItsPatience) {
    auto slow = connected();
    QElapsedTimer since;
    since.start();
    while (slow->state() == QAbstractSocket::ConnectedState && since.elapsed() < 3 * LookServer::patience) {
        slow->write("G");
        slow->waitForBytesWritten(100);
        slow->waitForReadyRead(200);
    }
    EXPECT_NE(slow->state(), QAbstractSocket::ConnectedState);
    EXPECT_GT(since.elapsed(), LookServer::patience / 2);
    EXPECT_LT(since.elapsed(), 2 * LookServer::patience);
}

TEST_F(LookInTest, GivesRoomToThoseWithTheKey) {
    std::vector<std::unique_ptr<QTcpSocket>> idle;
    for (int i = 0; i < LookServer::connections + 8; ++i)
        idle.push_back(connected());
    EXPECT_EQ(statusOf(get(in())), 200) << "the oldest that says nothing gives way";
}

TEST_F(LookInTest, StreamsToNoMoreThanItsConnections) {
    lookIn_.show({"{\"n\":1}", "{}"});
    std::vector<std::unique_ptr<QTcpSocket>> phones;
    for (int i = 0; i < LookServer::connections; ++i) {
        phones.push_back(connected());
        phones.back()->write("GET " + in("stream") + " HTTP/1.1\r\n\r\n");
        EXPECT_TRUE(hears(*phones.back(), "{\"n\":1}")) << i;
    }
    EXPECT_EQ(lookIn_.phones(), LookServer::connections);
    auto oneMore = connected();
    oneMore->write("GET " + in("stream") + " HTTP/1.1\r\n\r\n");
    EXPECT_FALSE(hears(*oneMore, "{\"n\":1}"));
    lookIn_.show({"{\"n\":2}", "{}"});
    for (const auto& phone : phones)
        EXPECT_TRUE(hears(*phone, "{\"n\":2}"));
}

// A phone that takes nothing: what is told does not wait for it, and the others hear the newest.
TEST_F(LookInTest, DoesNotWaitForAPhoneThatTakesNothing) {
    auto stuck = connected();
    stuck->setReadBufferSize(1);
    stuck->write("GET " + in("stream") + " HTTP/1.1\r\n\r\n");
    ASSERT_TRUE(stuck->waitForReadyRead(soon));
    const QByteArray large(60'000, 'x');
    for (int i = 0; i < 300; ++i) // 18 MB, more than the system's own buffers
        lookIn_.show({'"' + large + '"', "{}"});
    lookIn_.show({"{\"n\":9}", "{}"});
    auto phone = connected();
    phone->write("GET " + in("stream") + " HTTP/1.1\r\n\r\n");
    EXPECT_TRUE(hears(*phone, "{\"n\":9}"));
}

// PANSIDE_LONG=1 tries ten thousand.
TEST_F(LookInTest, TakesThousandsOneAfterAnother) {
    const int many = qEnvironmentVariableIsSet("PANSIDE_LONG") ? 10'000 : 2000;
    for (int i = 0; i < many; ++i)
        ASSERT_EQ(statusOf(get(in(), "HEAD")), 200) << i;
}

TEST_F(LookInTest, MovesToANewKeyAndShutsTheOldOneOut) {
    const QByteArray old = in();
    place_.key = newKey();
    place_.port = lookIn_.place().port;
    ASSERT_EQ(lookIn_.open(place_, page), LookFault::none);
    EXPECT_EQ(statusOf(get(old)), 404);
    EXPECT_EQ(statusOf(get(in())), 200);
}

TEST(LookInPlace, IsAnAddressOfThisMachineOrRefused) {
    LookIn lookIn;
    for (const char* address : {"192.0.2.7", "0.0.0.0", "::", "", "sugarhouse"}) { // RFC 5737: nobody's
        EXPECT_EQ(lookIn.open({QString::fromLatin1(address), 0, "k"}, page), LookFault::addressNotOurs) << address;
        EXPECT_FALSE(lookIn.isOpen());
    }
    LookIn other;
    ASSERT_EQ(lookIn.open({QStringLiteral("127.0.0.1"), 0, "k"}, page), LookFault::none);
    EXPECT_EQ(other.open({QStringLiteral("127.0.0.1"), lookIn.place().port, "k"}, page), LookFault::portTaken);
}

} // namespace
} // namespace panside
