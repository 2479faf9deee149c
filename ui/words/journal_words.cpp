#include "ui/words/journal_words.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("JournalWords", text); }

// %1: what the words need beside the place, in brackets where it may be missing.
QString said(JournalTrouble trouble) {
    switch (trouble) {
    case JournalTrouble::noSuchFile:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "there is no journal here. Check the path."));
    case JournalTrouble::noFolder:
        return tr(
            QT_TRANSLATE_NOOP("JournalWords", "the folder cannot be made%1. Choose another place for the journal."));
    case JournalTrouble::noPermission:
        return tr(QT_TRANSLATE_NOOP("JournalWords",
                                    "permission is missing%1. Ask the owner of the file, or choose another place."));
    case JournalTrouble::notSqlite:
        return tr(QT_TRANSLATE_NOOP(
            "JournalWords", "this is not a journal but some other file; it was left as it is. Check the path."));
    case JournalTrouble::notOurs:
        return tr(QT_TRANSLATE_NOOP("JournalWords",
                                    "this database belongs to another program; it was left as it is. Check the path."));
    case JournalTrouble::newer:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "this journal was written by a later version of Panside%1; it was "
                                                    "left as it is. Install that version, or open another journal."));
    case JournalTrouble::heldByOther:
        return tr(QT_TRANSLATE_NOOP(
            "JournalWords",
            "another console is writing in this journal%1; here it can only be read. Close the other one to write."));
    case JournalTrouble::locked:
        return tr(QT_TRANSLATE_NOOP(
            "JournalWords",
            "another program holds this journal locked. Close that program; it is tried again by itself."));
    case JournalTrouble::diskFull:
        return tr(QT_TRANSLATE_NOOP(
            "JournalWords", "the disk is full. Make room; what was not yet kept is held in memory and tried again."));
    case JournalTrouble::readOnly:
        return tr(QT_TRANSLATE_NOOP(
            "JournalWords", "this journal can only be read%1. Give the right to write, or choose another place."));
    case JournalTrouble::damaged:
        return tr(QT_TRANSLATE_NOOP(
            "JournalWords",
            "the journal is damaged%1. Salvage what can be read into a new file, or restore a back-up."));
    case JournalTrouble::gone:
        return tr(QT_TRANSLATE_NOOP(
            "JournalWords",
            "the journal has vanished. Put the disk or stick back; what was not yet kept is held in memory."));
    case JournalTrouble::cannotWrite:
        return tr(QT_TRANSLATE_NOOP("JournalWords",
                                    "the disk refuses to write%1. Check the disk; back up to another place."));
    case JournalTrouble::cannotRead:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "the journal cannot be read%1. Check the disk and the path."));
    case JournalTrouble::noSuchShift:
        return tr(
            QT_TRANSLATE_NOOP("JournalWords", "there is no shift %1 in this journal. Look at the list of its shifts."));
    case JournalTrouble::noSuchFact:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "there is no such fact%1 in this journal; nothing was withdrawn."));
    }
    return {};
}

QString ofShift(const QString& shift) {
    return shift.isEmpty()
               ? tr(QT_TRANSLATE_NOOP("JournalWords", " of the list of shifts or of settings for shifts to come"))
               : tr(QT_TRANSLATE_NOOP("JournalWords", " of the shift %1")).arg(shift);
}

} // namespace

QString foundWords(const JournalFinding& found) {
    using Kind = JournalFinding::Kind;
    QString first = QString::fromStdString(found.first);
    const QString second = QString::fromStdString(found.second);
    switch (found.kind) {
    case Kind::none:
        return {};
    case Kind::said:
        return first;
    case Kind::fact:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "a fact of the shift %1")).arg(first);
    case Kind::readings:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "readings of the shift %1")).arg(first);
    case Kind::withdrawal:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "a withdrawal of the shift %1")).arg(first);
    case Kind::turn:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "an opening or closing of the shift %1")).arg(first);
    case Kind::shiftEntry:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "the shift %1 in the list of shifts")).arg(first);
    case Kind::carried:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "a setting for shifts to come: %1")).arg(first);
    case Kind::derived:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "figures worked out of the shift %1; have them counted again"))
            .arg(first);
    case Kind::missing:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "missing rows, %1%2")).arg(second, ofShift(first));
    case Kind::added:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "rows that were not kept here, %1%2")).arg(second, ofShift(first));
    case Kind::sealed:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "rows that are not as they were kept%1")).arg(ofShift(first));
    case Kind::notGivenBack:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "the disk does not give back what was written"));
    case Kind::copyNotOpened:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "the copy cannot be opened"));
    case Kind::fileNotWritable:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "the file may not be written"));
    case Kind::folderNotWritable:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "its folder may not be written: %1")).arg(first);
    case Kind::otherInPlace:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "another journal lies in its place"));
    case Kind::openedToRead:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "it was opened to read"));
    case Kind::alreadyThere:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "it is there already; name a new file"));
    case Kind::isFolder:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "it is a folder"));
    case Kind::heldByUnknown:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "process unknown"));
    case Kind::heldByProcess:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "process %1")).arg(first);
    case Kind::forms:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "its form is %1, this program knows forms up to %2"))
            .arg(first, second);
    case Kind::number:
        return tr(QT_TRANSLATE_NOOP("JournalWords", "number %1")).arg(first);
    }
    return {};
}

QString journalWords(JournalTrouble trouble, const QString& place, const QString& given) {
    const bool bare = given.isEmpty() || trouble == JournalTrouble::noSuchShift;
    QString words = said(trouble);
    words.replace(QStringLiteral("%1"), bare ? given : QStringLiteral(" (%1)").arg(given));
    return QCoreApplication::translate("JournalWords", "%1: %2").arg(place, words);
}

QString journalWords(const JournalError& error) {
    return journalWords(error.trouble(), QString::fromStdString(error.place().string()), foundWords(error.given()));
}

} // namespace panside
