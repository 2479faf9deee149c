#pragma once
// How the night's forecasts of its draws came out, in words.
#include "core/boil/picture.h"
#include "ui/look/wall_clock.h"

#include <QString>
#include <vector>

namespace panside {

// One line on all of them; empty where no draw was foretold.
QString scoreStory(const std::vector<DrawScore>& scores);
// One piece a draw: when it came, what the middle was off by ten, five and two minutes before (+: said too late), and
// for how much of the wait the range held it.
QString scoreList(const std::vector<DrawScore>& scores, const WallClock& clock);

} // namespace panside
