#pragma once
// How a port is doing, in the person's language: what is so, and what to do.
#include "core/probe/port_status.h"

#include <QString>

namespace panside {

QString portSentence(const PortStatus& status);
// "answered 120, no answer 3, illegal data address 4": what the polls of a Modbus port came to.
QString pollWords(const PollCounts& polls);
QString pollFaultWords(PollFault fault, int exception); // "illegal data address (exception 2)"
QString noReadingWords(NoReading why);

} // namespace panside
