#pragma once
// A console on the journal of an invented house, at a moment that is always the same.
#include "core/probe/probe_source.h"
#include "core/shift/session.h"
#include "ui/console/console.h"

#include <QTemporaryDir>
#include <memory>

namespace panside {

// What its journal holds: the book and the nights of a large house, which nobody's probe watched; two nights by the
// second; all of it, and an evening's boil under way; or the house in a season of turns: buddy and ropy sap,
// dumped, spilled and given syrup, books that do not close, a thin pack in August, a press run that goes on.
enum class MadeOf { house, nights, all, turns };

class MadeHouse {
public:
    // Of what was entered before `now` (RFC 3339, UTC).
    // In the language of the default locale, of which the console makes its own.
    MadeHouse(MadeOf made, const char* now, const QSize& size, Look look, Units units);
    Console& console() { return *console_; }
    // The last night but one, opened, with its story told.
    void openPastNight();

private:
    QTemporaryDir folder_;
    std::unique_ptr<Session> session_;
    std::unique_ptr<ProbeSource> watch_;
    std::unique_ptr<Console> console_;
};

// After the last entry of all; afternoons of its season, with sap in the tanks, and with syrup in the drums.
inline constexpr const char* afterTheSeason = "2027-09-01T20:30:00Z";
inline constexpr const char* withSap = "2027-03-04T16:30:00Z";
inline constexpr const char* withSyrup = "2027-03-20T16:30:00Z";

} // namespace panside
