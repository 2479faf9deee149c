#pragma once
// The words of one row of the set-up screen.
#include "core/probe/port_status.h"
#include "core/probe/probe_file.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

QString registerName(const FieldRule& field);            // "slave 1, input 0"
QString registersShown(const FieldStatus& now);          // "040A → 103.4": as it stands there, and scaled
QString readsWords(const FieldRule* field);              // "syrup pan"; "not used" for none
QString framingWords(Parity parity, int stopBits);       // "8N1"
QString valueWords(const FieldStatus* now, Units units); // what the console makes of it, or why nothing
// ", takes over from pan box" where another field or port, earlier in the file, gives the same reading; else empty.
QString secondWords(const ProbeFile& file, std::size_t port, std::size_t field);

} // namespace panside
