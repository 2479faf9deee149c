#include "tests/battery/rows.h"

#include <array>

namespace battery {

std::span<const Row> allRows() {
    static const std::array rows{
        Row{"kill", "kill -9 at any moment, with back-up, import or recount going on", 700, 12, killed},
        Row{"tenhertz", "kill -9 while a probe is read at 10 Hz and a hand writes", 200, 2, killedAtTenHertz},
        Row{"migration", "kill -9 while an older journal is brought to this form", 100, 4, killedInMigration},
        Row{"fault", "an error, a short write, a full disk, a lost sync at every call of an hour", 0, 0, faultyCall,
            callsOfAnHour},
        Row{"power", "the power cut: writes since the last sync dropped and reordered", 500, 60, powerCut},
        Row{"full", "the disk full from any write on, and freed", 20, 5, diskFull},
        Row{"readonly", "file and folder turned read-only, and back", 20, 3, readOnly},
        Row{"folder", "the folder gone, or a loop of links in its place, and back", 20, 4, folderGone},
        Row{"stick", "the stick pulled in the midst of a back-up", 20, 5, stickPulled},
        Row{"bytes", "bits flipped, pages wiped, the end cut off", 2000, 60, spoiltBytes},
        Row{"consoles", "two writers on one journal, killed in turn", 100, 4, twoConsoles},
        Row{"clock", "the clock stepped, daylight saving turned, the zone changed, the computer asleep", 60, 6,
            clockMoved},
        Row{"noclock", "a start under 1970, put right later", 20, 2, clockLost},
        Row{"unplug", "a port unplugged in a line, and back", 100, 2, unplugged},
        Row{"number", "a port back under another number, a stranger under its own", 100, 2, otherNumber},
        Row{"speed", "a probe that speaks at another speed", 100, 3, wrongSpeed},
        Row{"flood", "a port that floods, and another beside it", 100, 1, flooded},
        Row{"silence", "a port that is silent, and speaks again", 100, 1, silent},
        Row{"endless", "a line that does not end", 100, 2, endlessLine},
        Row{"column", "a logger that drops columns", 100, 3, droppedColumn},
        Row{"slow", "Modbus answers that come late", 100, 1, slowSlave},
        Row{"wrong", "Modbus answers that are garbled, or another slave's", 100, 1, wrongSlave},
        Row{"excepting", "Modbus exceptions", 100, 1, exceptingSlave},
    };
    return rows;
}

} // namespace battery
