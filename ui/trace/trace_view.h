#pragma once
// A trace as a picture from left to right: what it came from, itself, where it went. Pure.
#include "core/ledger/trace.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace panside {

struct TraceBox {
    QString title, second; // its name; its share, its time
    double share = 0;      // of what is asked about, 0 to 1; for the thickness of its thread
    bool shareKnown = true;
    bool hole = false;
    QString asks; // the name to ask by when it is pressed; empty: it cannot be asked
    bool operator==(const TraceBox&) const = default;
};
struct TraceColumn {
    QString head;
    std::vector<TraceBox> boxes; // by time
    bool asked = false;          // what is asked about stands in it
    bool operator==(const TraceColumn&) const = default;
};
struct TraceView {
    QString head, notes;
    std::vector<TraceColumn> columns;
    bool operator==(const TraceView&) const = default;
};
TraceView traceView(const Ledger& ledger, const Trace& trace, Units units);
QString kindWord(TraceKind kind);
// "made 24, sold 20, destroyed 1, here 3": of all sizes of a lot.
QString lotCounts(const Lot& lot);

} // namespace panside
