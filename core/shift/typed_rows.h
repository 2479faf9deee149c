#pragma once
#include "core/boil/shift_log.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace panside {

// Rows of the shift log as they arrive on a stream, a piece at a time: hand entry for scripts. Pure.
class TypedRows {
public:
    struct Row {
        std::size_t line;
        std::variant<Fact, Fault> what;
    };
    // The rows that this piece completes. The log's header and empty lines are passed over; an empty time means `now`.
    std::vector<Row> feed(std::string_view bytes, Instant now);
    // The end of the stream: a last row may lack its line end.
    std::vector<Row> end(Instant now);

private:
    void readLine(std::string_view text, Instant now, std::vector<Row>& rows);
    std::string begun_;    // a line whose end has not come
    std::size_t line_ = 0; // the last complete one
    bool tooLong_ = false; // the line has been refused; what is left of it is passed over
};

} // namespace panside
