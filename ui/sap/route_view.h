#pragma once
// The round stop by stop: one sheet after the other with all filled in but what is read there; and the same on paper.
#include "core/ledger/route.h"
#include "ui/ledger/book_form.h"
#include "ui/look/units.h"

namespace panside {

// The sheet of a stop, the next ones following it; `blank` makes an empty form for a gathering, as of now. None where
// there is no such stop.
std::optional<BookForm> stopForm(std::vector<RouteStop> route, std::size_t stop, std::function<BookForm()> blank,
                                 Units units);

// A page that a crew takes along: a ruled line a stop, and empty ones. Throws FileFault; needs a QApplication.
void routeAsPdf(const std::vector<RouteStop>& route, Instant day, Units units, const std::string& place);

} // namespace panside
