#pragma once
// The settings of the rig and the day in a person's words.
#include "core/boil/fact.h"

#include <QString>

namespace panside {

QString settingName(Setting key);

} // namespace panside
