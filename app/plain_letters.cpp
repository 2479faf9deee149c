#include "app/plain_letters.h"

namespace panside {

PlainLetters::~PlainLetters() {
    PlainLetters::sync();
    to_.rdbuf(under_);
}

bool PlainLetters::put(unsigned char letter) { return under_->sputc(static_cast<char>(letter)) != traits_type::eof(); }

bool PlainLetters::shown(unsigned char letter) {
    constexpr char digits[] = "0123456789abcdef";
    const char text[] = {'\\', 'x', digits[letter >> 4], digits[letter & 15]};
    return under_->sputn(text, 4) == 4;
}

PlainLetters::int_type PlainLetters::overflow(int_type given) {
    if (given == traits_type::eof())
        return traits_type::not_eof(given);
    const auto letter = static_cast<unsigned char>(given);
    bool good = true;
    if (afterC2_) {
        afterC2_ = false;
        if (letter >= 0x80 && letter < 0xA0)
            return shown(letter) ? given : traits_type::eof();
        good = put(0xC2);
    }
    if (letter == 0xC2)
        afterC2_ = true;
    else if ((letter < 0x20 && letter != '\n' && letter != '\t') || letter == 0x7F)
        good = good && shown(letter);
    else
        good = good && put(letter);
    return good ? given : traits_type::eof();
}

int PlainLetters::sync() {
    if (afterC2_ && !put(0xC2))
        return -1;
    afterC2_ = false;
    return under_->pubsync();
}

} // namespace panside
