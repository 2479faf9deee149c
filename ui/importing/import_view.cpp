#include "ui/importing/import_view.h"

#include "ui/words/fault_words.h"
#include "ui/words/season_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace panside {
namespace {

constexpr std::size_t faultsShown = 6; // of one log

QString tr(const char* text) { return QCoreApplication::translate("Import", text); }
QString heading(const QString& words) { return QStringLiteral("<h3>") + words.toHtmlEscaped() + "</h3>"; }
QString paragraph(const QString& words) { return QStringLiteral("<p>") + words.toHtmlEscaped() + "</p>"; }
QString item(const QString& words) { return QStringLiteral("<li>") + words.toHtmlEscaped() + "</li>"; }
QString count(std::uint64_t number) { return QLocale{}.toString(static_cast<qulonglong>(number)); }

bool isIn(const ImportLine& line) {
    return line.imported &&
           (line.imported->outcome == ImportOutcome::added || line.imported->outcome == ImportOutcome::alreadyThere);
}

// The faults come without the file's name: it stands above them.
QString faultLine(const Fault& fault) {
    return fault.line == 0 ? faultWords(fault) : tr("line %1").arg(faultWords(fault, QStringLiteral("-")).mid(2));
}

QString faultList(const std::vector<Fault>& faults, std::uint64_t all) {
    QString words = QStringLiteral("<ul>");
    const auto shown = std::min(faults.size(), faultsShown);
    for (std::size_t i = 0; i < shown; ++i)
        words += item(faultLine(faults[i]));
    if (all > shown)
        words += item(tr("and %1 more").arg(count(all - shown)));
    return words + QStringLiteral("</ul>");
}

QString lineWords(const ImportState& state, std::size_t i) {
    const ImportLine& line = state.lines[i];
    const auto said = [&](const QString& what) {
        return QStringLiteral("<p><b>%1</b>: %2</p>").arg(line.name.toHtmlEscaped(), what.toHtmlEscaped());
    };
    if (line.unmapped)
        return said(tr("not a shift log: its first line is not the heading of one. If it is another logger's table, "
                       "say with M what its columns are."));
    if (!line.trouble.isEmpty())
        return said(line.trouble);
    if (!line.imported)
        return said(state.working && static_cast<int>(i) == state.at ? tr("being read …")
                    : state.working                                  ? tr("waiting")
                                                                     : tr("not begun"));
    QString words = said(importedWords(*line.imported));
    if (line.blanks > 0)
        words += paragraph(tr("Cells without a reading, left out: %1.").arg(count(line.blanks)));
    if (line.imported->faultCount > 0)
        words += faultList(line.imported->faults, line.imported->faultCount);
    if (line.imported->warningCount > 0)
        words +=
            paragraph(tr("Taken, and worth a look:")) + faultList(line.imported->warnings, line.imported->warningCount);
    return words;
}

QString sumWords(const ImportState& state) {
    int added = 0, there = 0, refused = 0;
    std::uint64_t facts = 0;
    for (const ImportLine& line : state.lines) {
        const bool isNew = line.imported && line.imported->outcome == ImportOutcome::added;
        added += isNew ? 1 : 0;
        facts += isNew ? line.imported->facts : 0;
        there += isIn(line) && !isNew ? 1 : 0;
        refused += (line.imported && !isIn(line) && line.imported->outcome != ImportOutcome::cancelled) ||
                           !line.trouble.isEmpty() || line.unmapped
                       ? 1
                       : 0;
    }
    QString words = tr("Shifts added: %1. Facts in them: %2. There already: %3. Refused: %4.")
                        .arg(count(static_cast<std::uint64_t>(added)), count(facts),
                             count(static_cast<std::uint64_t>(there)), count(static_cast<std::uint64_t>(refused)));
    if (state.stopped)
        words += QStringLiteral(" ") +
                 tr("Stopped: what was added before stays; nothing of the one being read is in the journal.");
    return words;
}

} // namespace

QString importedWords(const Imported& imported) {
    switch (imported.outcome) {
    case ImportOutcome::added:
        return tr("added as shift %1; facts: %2").arg(seasonShiftName(imported.shift), count(imported.facts));
    case ImportOutcome::alreadyThere:
        return tr("there already as shift %1; nothing was added").arg(seasonShiftName(imported.shift));
    case ImportOutcome::faulty:
        return tr("refused, nothing of it was taken. Faults: %1").arg(count(imported.faultCount));
    case ImportOutcome::differs:
        return tr("refused: a shift that begins at the same time, %1, has other entries (%2 there, %3 in the log). "
                  "Only you can tell which is right: read it into another journal to compare.")
            .arg(seasonShiftName(imported.shift), count(imported.factsThere), count(imported.facts));
    case ImportOutcome::twoShifts:
        return tr("refused: two shifts in one log. One ends %1, and %2 a fire is lit again. Split the log between the "
                  "two.")
            .arg(seasonShiftName(imported.endedAt), seasonShiftName(imported.litAgain));
    case ImportOutcome::cancelled:
        return tr("stopped; nothing of it was taken");
    case ImportOutcome::unreadable:
        return tr("refused: it cannot be read to its end. See whether the stick is still in; nothing of it was taken");
    }
    return {};
}

QString importWords(const ImportState& state) {
    QString words = heading(tr("Logs read in"));
    if (!state.mayWrite)
        return words +
               paragraph(tr("This console only watches: another one writes in the journal. Read the logs in there."));
    if (state.lines.empty())
        return words +
               paragraph(tr(
                   "Choose one log or more. Each becomes a whole shift, or is refused as a whole; one that is already "
                   "there adds nothing. Another logger's table is read too, once you have said what its columns are."));
    if (!state.working)
        words += paragraph(sumWords(state));
    for (std::size_t i = 0; i < state.lines.size(); ++i)
        words += lineWords(state, i);
    return words;
}

std::vector<KeyedPage::Key> importKeys(const ImportState& state) {
    if (state.working)
        return {{QStringLiteral("stop"), tr("Stop"), Qt::Key_X}};
    if (!state.mayWrite)
        return {};
    std::vector<KeyedPage::Key> keys{{QStringLiteral("choose"), tr("Choose the logs"), Qt::Key_O}};
    if (std::ranges::any_of(state.lines, [](const ImportLine& line) { return line.unmapped; }))
        keys.push_back({QStringLiteral("map"), tr("Say what its columns are"), Qt::Key_M});
    return keys;
}

} // namespace panside
