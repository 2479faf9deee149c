#include "core/boil/alarms.h"
#include "ui/console/screens.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/manual/manual_screen.h"
#include "ui/words/alarm_words.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <QTranslator>
#include <gtest/gtest.h>

namespace panside {
namespace {

ManualBook installed() { return ManualBook::in(ManualBook::usualPlace(), QStringLiteral("en")); }

TEST(ManualBook, HasEveryPageOfTheSources) {
    const QDir sources{QStringLiteral(PANSIDE_SOURCE "/resources/manual"), QStringLiteral("*.md")};
    const auto book = installed();
    ASSERT_EQ(sources.entryList().size(), static_cast<qsizetype>(book.pages().size()));
    EXPECT_EQ(book.pages().front().file, "index.html");
    for (const auto& page : book.pages()) {
        EXPECT_FALSE(page.title.isEmpty()) << page.file.toStdString();
        EXPECT_FALSE(book.page(page.file).isEmpty()) << page.file.toStdString();
    }
}

// What is linked is there: a page, and the heading in it.
TEST(ManualBook, HasNoLinkThatLeadsNowhere) {
    static const QRegularExpression link{QStringLiteral(R"re((?:href|src)="([^":#]*)(?:#([^"]*))?")re")};
    int seen = 0;
    for (const char* language : {"en", "fr"}) {
        const auto book = ManualBook::in(ManualBook::usualPlace(), QString::fromLatin1(language));
        for (const auto& page : book.pages()) {
            const QString body = book.page(page.file);
            for (auto found = link.globalMatch(body); found.hasNext(); ++seen) {
                const auto match = found.next();
                const QString target = match.captured(1).isEmpty() ? page.file : match.captured(1);
                const auto where = page.file.toStdString() + " -> " + match.captured().toStdString();
                EXPECT_TRUE(QFile::exists(book.folder() + u'/' + target)) << where;
                if (!match.captured(2).isEmpty()) {
                    EXPECT_TRUE(book.page(target).contains(QStringLiteral("id=\"%1\"").arg(match.captured(2))))
                        << where;
                }
            }
        }
    }
    EXPECT_GT(seen, 40);
}

TEST(ManualBook, FindsPagesByAllWordsWhateverTheirCase) {
    const auto book = installed();
    EXPECT_TRUE(book.found(QStringLiteral("XDG_data_home")).contains("command_line.html"));
    EXPECT_TRUE(book.found(QStringLiteral("hydrometer <b>")).isEmpty());
    EXPECT_TRUE(book.found(QStringLiteral("  ")).isEmpty());
}

TEST(ManualBook, IsWholeInFrench) {
    const auto english = installed(), french = ManualBook::in(ManualBook::usualPlace(), QStringLiteral("fr"));
    EXPECT_EQ(french.pages().size(), english.pages().size());
    EXPECT_TRUE(french.page(QStringLiteral("the_draw.html")).contains("La coulée"));
    EXPECT_TRUE(french.found(QStringLiteral("coulee densimetre")).contains("the_draw.html")) << "typed without accents";
    EXPECT_EQ(french.page(QStringLiteral("fire.html")),
              english.page(QStringLiteral("fire.html"))); // how it works inside is told in English alone
}

// "F7, then 3" is a screen of the console.
TEST(ManualBook, LeadsToScreensThatAreThere) {
    static const QRegularExpression way{QStringLiteral(R"re(\b(F[1-8]), (?:then |puis )?(\d)\b)re")};
    int seen = 0;
    for (const char* language : {"en", "fr"}) {
        const auto book = ManualBook::in(ManualBook::usualPlace(), QString::fromLatin1(language));
        for (const auto& page : book.pages())
            for (auto found = way.globalMatch(page.text); found.hasNext(); ++seen) {
                const auto match = found.next();
                const auto screens = allScreens();
                EXPECT_TRUE(std::any_of(screens.begin(), screens.end(),
                                        [&](const ScreenRow& row) {
                                            return keyOf(row.place) == match.captured(1) &&
                                                   row.digit == match.captured(2).toInt();
                                        }))
                    << page.file.toStdString() << ": " << match.captured().toStdString();
            }
    }
    EXPECT_GT(seen, 20);
}

// The crew's page of alarms has each of them, by the name that the console gives it.
TEST(ManualBook, TellsOfEveryAlarmByItsName) {
    QTranslator french;
    for (const char* language : {"en", "fr"}) {
        if (language == std::string_view{"fr"}) {
            ASSERT_TRUE(french.load(QStringLiteral(PANSIDE_FRENCH)));
            QCoreApplication::installTranslator(&french);
        }
        const auto page = ManualBook::in(ManualBook::usualPlace(), QString::fromLatin1(language))
                              .page(QStringLiteral("the_alarms.html"));
        for (std::size_t i = 0; i < alarmCount; ++i) {
            const QString name = alarmName(static_cast<Alarm>(i));
            EXPECT_TRUE(page.contains(QStringLiteral("<strong>%1</strong>").arg(name))) << name.toStdString();
        }
    }
    QCoreApplication::removeTranslator(&french);
}

TEST(ManualBook, FallsBackToEnglishAndSaysNothingWhereNothingIsInstalled) {
    EXPECT_FALSE(ManualBook::in(ManualBook::usualPlace(), QStringLiteral("xx")).pages().empty());
    const QTemporaryDir empty;
    EXPECT_TRUE(ManualBook::in(empty.path(), QStringLiteral("en")).pages().empty());
}

class ManualScreenTest : public testing::Test {
protected:
    ManualScreenTest() {
        screen_.wear({});
        screen_.resize(1000, 600);
        screen_.show();
    }
    ManualScreen screen_;
};

TEST_F(ManualScreenTest, FollowsALinkAndGoesBack) {
    screen_.read(installed());
    EXPECT_EQ(screen_.shown(), "index.html");
    auto* text = screen_.findChild<QTextBrowser*>();
    emit text->anchorClicked(QUrl{QStringLiteral("command_line.html#tend")});
    EXPECT_EQ(screen_.shown(), "command_line.html");
    EXPECT_TRUE(screen_.words().contains("XDG_DATA_HOME"));
    for (auto* key : screen_.findChildren<Press*>())
        if (key->text() == "Previous page")
            key->click();
    EXPECT_EQ(screen_.shown(), "index.html");
}

TEST_F(ManualScreenTest, OpensNothingFromElsewhere) {
    screen_.read(installed());
    auto* text = screen_.findChild<QTextBrowser*>();
    for (const char* link : {"https://example.org/x.html", "file:///etc/passwd", "../../../etc/passwd"})
        emit text->anchorClicked(QUrl{QString::fromLatin1(link)});
    EXPECT_EQ(screen_.shown(), "index.html");
}

TEST_F(ManualScreenTest, SearchesOnceItIsAskedTo) {
    screen_.read(installed());
    auto* field = screen_.findChild<TypedLine*>();
    EXPECT_FALSE(field->isVisible());
    for (auto* key : screen_.findChildren<Press*>())
        if (key->text() == "Search")
            key->click();
    EXPECT_TRUE(field->isVisible());
    QTest::keyClicks(field, QStringLiteral("uaccess nowhere"));
    EXPECT_EQ(screen_.words(), "No page has all these words.");
    field->setText(QStringLiteral("XDG_DATA_HOME"));
    EXPECT_TRUE(screen_.words().contains("The command line"));
}

TEST_F(ManualScreenTest, SaysWhereItLookedInVain) {
    const QTemporaryDir empty;
    screen_.read(ManualBook::in(empty.path(), QStringLiteral("en")));
    EXPECT_TRUE(screen_.words().contains(empty.path()));
}

} // namespace
} // namespace panside
