#include "ui/manual/manual_book.h"

#include "ui/look/typing.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace panside {
namespace {

QString textIn(const QString& place) {
    QFile file{place};
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString{};
}

// "const pages=[{"file":…}];", the first line of what the pages are searched by.
std::vector<ManualPage> bookPagesIn(const QString& script) {
    const QString line = script.section(QLatin1Char('\n'), 0, 0);
    const auto from = line.indexOf(QLatin1Char('['));
    const auto until = line.lastIndexOf(QLatin1Char(']'));
    std::vector<ManualPage> pages;
    if (from < 0 || until < from)
        return pages;
    for (const auto& value : QJsonDocument::fromJson(line.mid(from, until - from + 1).toUtf8()).array()) {
        const auto page = value.toObject();
        pages.push_back({page[QLatin1String("file")].toString(), page[QLatin1String("title")].toString(),
                         page[QLatin1String("text")].toString()});
    }
    return pages;
}

} // namespace

QString ManualBook::usualPlace() {
    return QCoreApplication::applicationDirPath() + QStringLiteral("/../share/panside/manual");
}

ManualBook ManualBook::in(const QString& place, const QString& language) {
    ManualBook book;
    for (const QString& folder : {place + QLatin1Char('/') + language, place}) {
        book.folder_ = folder;
        book.pages_ = bookPagesIn(textIn(folder + QStringLiteral("/pages.js")));
        if (!book.pages_.empty())
            break;
    }
    return book;
}

QString ManualBook::page(const QString& file) const {
    const auto there = std::ranges::find_if(pages_, [&](const auto& page) { return page.file == file; });
    if (there == pages_.end())
        return {};
    return textIn(folder_ + QLatin1Char('/') + file)
        .section(QStringLiteral("<main>"), 1, 1)
        .section(QStringLiteral("</main>"), 0, 0);
}

QString ManualBook::found(const QString& words) const {
    constexpr qsizetype before = 80, shown = 240;
    const auto wanted = unmarked(words.simplified()).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    QString all;
    for (const ManualPage& page : pages_) {
        const QString text = unmarked(page.text);
        const bool has =
            !wanted.isEmpty() && std::ranges::all_of(wanted, [&](const QString& word) { return text.contains(word); });
        if (!has)
            continue;
        const auto at = std::max<qsizetype>(0, text.indexOf(wanted.front()) - before);
        all += QStringLiteral("<h3><a href=\"%1\">%2</a></h3><p>… %3 …</p>")
                   .arg(page.file, page.title.toHtmlEscaped(), page.text.mid(at, shown).toHtmlEscaped());
    }
    return all;
}

} // namespace panside
