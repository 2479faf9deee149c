#include "core/shift/typed_rows.h"

namespace panside {
namespace {

// No row of ours comes near it; a stream without line ends must not fill the memory.
constexpr std::size_t longestRow = 64 * 1024;
constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

} // namespace

std::vector<TypedRows::Row> TypedRows::feed(std::string_view bytes, Instant now) {
    std::vector<Row> rows;
    for (;;) {
        const auto end = bytes.find('\n');
        if (!tooLong_)
            begun_ += bytes.substr(0, end);
        if (begun_.size() > longestRow) {
            rows.push_back({line_ + 1, Fault{Slip::columns, line_ + 1, 0, {}, begun_.substr(0, 20) + "…"}});
            begun_.clear();
            tooLong_ = true;
        }
        if (end == std::string_view::npos)
            return rows;
        ++line_;
        if (!tooLong_)
            readLine(begun_, now, rows);
        tooLong_ = false;
        begun_.clear();
        bytes.remove_prefix(end + 1);
    }
}

std::vector<TypedRows::Row> TypedRows::end(Instant now) {
    return begun_.empty() ? std::vector<Row>{} : feed("\n", now);
}

void TypedRows::readLine(std::string_view text, Instant now, std::vector<Row>& rows) {
    if (line_ == 1 && text.starts_with(byteOrderMark))
        text.remove_prefix(byteOrderMark.size());
    if (text.ends_with('\r'))
        text.remove_suffix(1);
    if (text.empty() || text == logHeader)
        return;
    rows.push_back({line_, factOfLine(text, line_, now)});
}

} // namespace panside
