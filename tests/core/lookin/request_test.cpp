#include "core/lookin/request.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

// What requests may look like: RFC 9112 (HTTP/1.1), sections 2 to 6; RFC 9110, section 5.6.2 for a token.
int statusOf(const std::string& received) {
    const auto read = requestIn(received);
    if (!read)
        return 0;
    const auto* refusal = std::get_if<Refusal>(&*read);
    return refusal ? refusal->status : 200;
}

TEST(LookRequest, ReadsTheFirstLine) {
    const auto read = requestIn("GET /abc/stream HTTP/1.1\r\nHost: 10.0.0.2:8437\r\nAccept: */*\r\n\r\n");
    ASSERT_TRUE(read);
    EXPECT_EQ(std::get<LookRequest>(*read), (LookRequest{true, "/abc/stream"}));
    EXPECT_EQ(std::get<LookRequest>(*requestIn("HEAD / HTTP/1.0\r\n\r\n")), (LookRequest{false, "/"}));
}

TEST(LookRequest, WaitsForTheEmptyLine) {
    const std::string whole = "GET / HTTP/1.1\r\nHost: a\r\n\r\n";
    for (std::size_t i = 0; i < whole.size(); ++i)
        EXPECT_EQ(statusOf(whole.substr(0, i)), 0) << i;
    EXPECT_EQ(statusOf(whole), 200);
    EXPECT_EQ(statusOf(whole + "what comes after it"), 200);
}

TEST(LookRequest, RefusesAllMethodsThatCouldChangeSomething) {
    for (const char* method : {"POST", "PUT", "DELETE", "PATCH", "OPTIONS", "CONNECT", "TRACE", "get"})
        EXPECT_EQ(statusOf(std::string{method} + " / HTTP/1.1\r\n\r\n"), 405) << method;
}

TEST(LookRequest, RefusesABodyHoweverItIsAnnounced) {
    EXPECT_EQ(statusOf("GET / HTTP/1.1\r\nContent-Length: 5\r\n\r\nabcde"), 413);
    EXPECT_EQ(statusOf("GET / HTTP/1.1\r\ncontent-LENGTH:0\r\nTransfer-Encoding: chunked\r\n\r\n"), 413);
    EXPECT_EQ(statusOf("GET / HTTP/1.1\r\nContent-Length: 0\r\n\r\n"), 200);
    EXPECT_EQ(statusOf("GET / HTTP/1.1\r\nTransfer-Encoding : chunked\r\n\r\n"), 400);
}

TEST(LookRequest, RefusesWhatIsNoRequest) {
    for (const char* line :
         {"", " ", "GET", "GET /", "GET  HTTP/1.1", "GET x HTTP/1.1", "GET http://a/ HTTP/1.1", "GET / HTTP/1.1 ",
          "GET /a b HTTP/1.1", "GET /\x01 HTTP/1.1", "GET / HTCPCP/1.0", "G\xc3\xa9T / HTTP/1.1", "\x16\x03\x01\x02"})
        EXPECT_EQ(statusOf(std::string{line} + "\r\n\r\n"), 400) << line;
    EXPECT_EQ(statusOf("GET / HTTP/2.0\r\n\r\n"), 505);
    EXPECT_EQ(statusOf("GET / HTTP/1.1\r\nno colon\r\n\r\n"), 400);
    EXPECT_EQ(statusOf("GET / HTTP/1.1\r\nA: b\r\n folded\r\n\r\n"), 400);
    EXPECT_EQ(statusOf(std::string{"GET / HTTP/1.1\r\nA: b\0c\r\n\r\n", 26}), 400);
}

TEST(LookRequest, TakesNoMoreThanItsSize) {
    std::string head = "GET / HTTP/1.1\r\nA: ";
    head.append(greatestHead - head.size() - 4, 'x');
    EXPECT_EQ(statusOf(head + "\r\n\r\n"), 200);
    EXPECT_EQ(statusOf(head + "x\r\n\r\n"), 431);
    EXPECT_EQ(statusOf(std::string(1'000'000, 'x')), 431);
    EXPECT_EQ(statusOf(std::string(greatestHead - 1, 'x')), 0);
}

} // namespace
} // namespace panside
