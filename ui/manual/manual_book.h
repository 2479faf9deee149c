#pragma once
// The manual as it was installed with the program: pages of HTML made from its Markdown, read and searched by the
// screen.
#include <QString>
#include <vector>

namespace panside {

struct ManualPage {
    QString file;  // "alarms.html"
    QString title; // "Alarms"
    QString text;  // its words alone, for the search
};

class ManualBook {
public:
    // The folder beside the program: share/panside/manual, in it a folder a language ("fr") where there is one.
    static QString usualPlace();
    // Of a person's language, or else the English one; without pages if it is not installed.
    static ManualBook in(const QString& place, const QString& language);

    const std::vector<ManualPage>& pages() const { return pages_; }
    const QString& folder() const { return folder_; }
    // What stands between the page's borders, as rich text; empty: there is no such page.
    QString page(const QString& file) const;
    // The pages that have all the words, each with a piece of text around the first, as rich text with links.
    QString found(const QString& words) const;

private:
    QString folder_;
    std::vector<ManualPage> pages_;
};

} // namespace panside
