#include "ui/console/screens.h"

#include "ui/fuel/fuel_desk.h"
#include "ui/handover/handover_desk.h"
#include "ui/importing/import_desk.h"
#include "ui/keeping/keeping_desk.h"
#include "ui/paperlog/paper_desk.h"
#include "ui/probes/probes_desk.h"
#include "ui/reckoner/reckoner_desk.h"
#include "ui/review/review_desk.h"
#include "ui/rig/rig_desk.h"
#include "ui/season/season_desk.h"
#include "ui/sound/sound_desk.h"
#include "ui/tank/tank_desk.h"

namespace panside {

std::span<const ScreenRow> allScreens() {
    static constexpr ScreenRow rows[] = {
        {Action::reckoner, false, &reckonerDesk}, {Action::rig, false, &rigDesk},
        {Action::review, true, &reviewDesk},      {Action::keeping, true, &keepingDesk},
        {Action::handover, true, &handoverDesk},  {Action::paper, true, &paperDesk},
        {Action::importing, true, &importDesk},   {Action::fuel, false, &fuelDesk},
        {Action::tank, false, &tankDesk},         {Action::season, true, &seasonDesk},
        {Action::sound, false, &soundDesk},       {Action::probes, true, &probesDesk},
    };
    return rows;
}

} // namespace panside
