#pragma once
#include "core/journal/journal.h"

#include <SQLiteCpp/Database.h>

namespace panside {

// Takes away all that was worked out from the facts and kept to be quick.
inline void dropDerived(const Journal& journal) {
    SQLite::Database{journal.place().string(), SQLite::OPEN_READWRITE, 2000}.exec(
        "DELETE FROM summary; DELETE FROM scored; DELETE FROM score; DELETE FROM worked; DELETE FROM figure");
}

} // namespace panside
