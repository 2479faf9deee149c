#include "ui/words/journal_words.h"

#include "ui/words/said.h"

#include <QCoreApplication>

namespace panside {

QString foundWords(const Sentence& found) { return said(found, "JournalWords"); }

QString journalWords(const JournalError& error) {
    return QCoreApplication::translate("JournalWords", "%1: %2")
        .arg(QString::fromStdString(error.place().string()), foundWords(error.told()));
}

} // namespace panside
