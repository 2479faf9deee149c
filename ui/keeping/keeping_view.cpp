#include "ui/keeping/keeping_view.h"

#include "ui/look/wall_clock.h"
#include "ui/words/fault_words.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Keeping", text); }
QString paragraph(const QString& words) { return QStringLiteral("<p>") + words + QStringLiteral("</p>"); }
QString heading(const QString& words) { return QStringLiteral("<h3>") + words + QStringLiteral("</h3>"); }
QString when(Instant at) { return QLocale{}.toString(WallClock{}.at(at), QStringLiteral("ddd d MMMM yyyy, HH:mm")); }

QString listOf(const QString& head, const std::vector<Shift>& shifts) {
    if (shifts.empty())
        return {};
    QString words = paragraph(QStringLiteral("<b>") + head + QStringLiteral("</b>")) + QStringLiteral("<ul>");
    for (const Shift& shift : shifts)
        words += QStringLiteral("<li>") + when(shift.id) + QStringLiteral("</li>");
    return words + QStringLiteral("</ul>");
}

QString healthWords(const KeepingState& state) {
    if (state.looking)
        return paragraph(tr("Checking the journal …"));
    if (!state.health)
        return paragraph(tr("It has not been checked yet."));
    if (state.health->sound())
        return paragraph(tr("The journal is sound."));
    QString words =
        paragraph(
            QStringLiteral("<b>") +
            tr("The journal is damaged. Restore a back-up, or save what can be read. Neither throws anything away.") +
            QStringLiteral("</b>")) +
        QStringLiteral("<ul>");
    constexpr std::size_t most = 12;
    for (std::size_t i = 0; i < state.health->findings.size() && i < most; ++i)
        words +=
            QStringLiteral("<li>") + foundWords(state.health->findings[i]).toHtmlEscaped() + QStringLiteral("</li>");
    if (state.health->findings.size() > most)
        words += QStringLiteral("<li>") + tr("and %1 more").arg(state.health->findings.size() - most) +
                 QStringLiteral("</li>");
    return words + QStringLiteral("</ul>");
}

QString backupRows(const KeepingState& state) {
    if (state.folder.isEmpty())
        return paragraph(
            tr("No folder has been chosen yet: nothing is backed up. Choose one, best on a stick or another disk."));
    QString words = paragraph(
        tr("They go to %1, after every shift and whenever you say so. Each is read back from the disk and checked.")
            .arg(state.folder.toHtmlEscaped()));
    if (state.backups.empty())
        return words + paragraph(tr("None is there."));
    words += QStringLiteral("<table cellpadding=\"3\">");
    constexpr std::size_t most = 12;
    for (std::size_t i = 0; i < state.backups.size() && i < most; ++i) {
        const QFileInfo file{QString::fromStdString(state.backups[i].place.string())};
        words += QStringLiteral("<tr><td>%1</td><td align=\"right\">%2</td></tr>")
                     .arg(when(state.backups[i].at), QLocale{}.formattedDataSize(file.size(), 1));
    }
    words += QStringLiteral("</table>");
    if (state.backups.size() > most)
        words += paragraph(tr("and %1 older ones").arg(state.backups.size() - most));
    return words;
}

QString previewWords(const KeepingState& state) {
    const RestorePreview& preview = *state.restoring;
    QString words = heading(tr("What restoring this back-up would do")) +
                    paragraph(state.restoringFrom.toHtmlEscaped()) +
                    listOf(tr("These shifts are in the journal only. They would be gone from it:"), preview.lost) +
                    listOf(tr("These shifts have other entries in the back-up. They would become as they are there:"),
                           preview.changed) +
                    listOf(tr("These shifts are in the back-up only. They would come back:"), preview.gained) +
                    paragraph(tr("Shifts that are the same in both: %1.").arg(preview.same));
    return words + paragraph(tr("The journal as it is now is kept beside the new one; nothing is thrown away."));
}

} // namespace

QString salvagedWords(const Salvaged& salvaged) {
    QString words = paragraph(tr("Saved facts: %1, readings: %2. Shifts of which nothing is missing: %3.")
                                  .arg(QLocale{}.toString(static_cast<qlonglong>(salvaged.facts)),
                                       QLocale{}.toString(static_cast<qlonglong>(salvaged.readings)))
                                  .arg(salvaged.whole.size()));
    if (salvaged.listLost)
        words += paragraph(
            tr("A part of the file could not be read at all: there may have been shifts that left no trace."));
    if (salvaged.partly.empty())
        return words;
    words += paragraph(tr("Shifts of which something was lost:")) + QStringLiteral("<ul>");
    for (const auto& part : salvaged.partly)
        words += QStringLiteral("<li>") +
                 tr("%1: lost facts: %2, readings: %3, and on pages that cannot be read as many more: %4")
                     .arg(when(part.shift))
                     .arg(part.facts)
                     .arg(part.readings)
                     .arg(part.unreached) +
                 QStringLiteral("</li>");
    return words + QStringLiteral("</ul>");
}

QString keepingWords(const KeepingState& state) {
    if (state.restoring)
        return previewWords(state);
    if (state.salvaged)
        return heading(tr("What could be saved")) + salvagedWords(*state.salvaged) +
               paragraph(tr("It is in %1. If you put it in the journal's place, the damaged file is kept beside it.")
                             .arg(state.salvagedInto.toHtmlEscaped()));
    return heading(tr("The journal")) + paragraph(state.journal.toHtmlEscaped()) + healthWords(state) +
           heading(tr("Back-ups")) + backupRows(state) +
           paragraph(tr("The ten newest are kept, the last one of each day for sixty days, and the last of each year "
                        "for good; others are removed."));
}

std::vector<KeyedPage::Key> keepingKeys(const KeepingState& state) {
    if (state.working)
        return {{QStringLiteral("stop"), tr("Stop"), Qt::Key_X}};
    if (state.restoring || state.salvaged)
        return {{QStringLiteral("putBack"), tr("Put it in place"), Qt::Key_P},
                {QStringLiteral("leaveIt"), tr("Leave it as it is"), Qt::Key_L}};
    std::vector<KeyedPage::Key> keys{{QStringLiteral("folder"), tr("Choose the folder"), Qt::Key_O}};
    if (!state.folder.isEmpty())
        keys.push_back({QStringLiteral("backUp"), tr("Back up now"), Qt::Key_B});
    keys.push_back({QStringLiteral("restore"), tr("Restore one"), Qt::Key_R});
    keys.push_back({QStringLiteral("check"), tr("Check all of it"), Qt::Key_T});
    if (state.health && !state.health->sound())
        keys.push_back({QStringLiteral("salvage"), tr("Save what can be read"), Qt::Key_V});
    return keys;
}

} // namespace panside
