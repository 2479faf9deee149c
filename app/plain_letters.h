#pragma once
// Letters that act on a terminal (escapes that move the cursor, set its title, ring it) may stand in a log, a probe's
// name or a file's. What is written for people goes through here: they are shown, as \x1b, and never sent.
#include <ostream>
#include <streambuf>

namespace panside {

class PlainLetters : public std::streambuf {
public:
    explicit PlainLetters(std::ostream& to) : to_{to}, under_{to.rdbuf(this)} {}
    ~PlainLetters() override;
    PlainLetters(const PlainLetters&) = delete;
    PlainLetters& operator=(const PlainLetters&) = delete;

protected:
    int_type overflow(int_type letter) override;
    int sync() override;

private:
    bool put(unsigned char letter);
    bool shown(unsigned char letter);
    std::ostream& to_;
    std::streambuf* under_;
    bool afterC2_ = false; // the first byte of U+0080 to U+00BF: of those the first half act
};

} // namespace panside
