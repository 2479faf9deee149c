#pragma once
// What is wrong with a probe file, in the person's language: where, what, what to do.
#include "core/probe/probe_fault.h"

#include <QString>

namespace panside {

QString probeFaultWords(const ProbeFault& fault, const QString& file);

} // namespace panside
