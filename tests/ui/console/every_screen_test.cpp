// Every screen, sheet and question of the console, at four sizes, by day and by night, in both languages: nothing is
// cut, nothing is too small for a glove or an eye, nothing melts into its ground, and each control says what it is.
#include "tests/ui/pictures/made_house.h"
#include "ui/board/card.h"
#include "ui/chart/rise_chart.h"
#include "ui/console/screens.h"
#include "ui/entry/entry_form.h"
#include "ui/frame/frame_view.h"
#include "ui/frame/sentence_bar.h"
#include "ui/ledger/book_form.h"
#include "ui/ledger/house.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/season/season_pictures.h"
#include "ui/start/start_view.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QFile>
#include <QHash>
#include <QLabel>
#include <QScrollBar>
#include <QTest>
#include <QTextDocument>
#include <QTranslator>
#include <algorithm>
#include <functional>
#include <gtest/gtest.h>
#include <set>

namespace panside {
namespace {

struct EveryScreen : testing::Test {
    std::set<QString> faults; // one line each, wherever else it is as well

    using Visit = std::function<void(Console&, const QString& where)>;
    void visitAll(const QSize& size, Look look, bool french, const Visit& visit) {
        QTranslator words;
        if (french) {
            ASSERT_TRUE(words.load(QStringLiteral(PANSIDE_FRENCH)));
            QCoreApplication::installTranslator(&words);
        }
        {
            QLocale::setDefault(french ? QLocale{QStringLiteral("fr_CA")} : QLocale{QStringLiteral("en_US")});
            MadeHouse house{MadeOf::all, afterTheSeason, size, look, french ? Units::metric : Units::us};
            visitScreens(
                house.console(),
                QStringLiteral("%1%2%3 ").arg(size.width()).arg(look == Look::night ? "n" : "", french ? "f" : ""),
                visit);
        }
        QCoreApplication::removePostedEvents(nullptr);
        QCoreApplication::removeTranslator(&words);
        QLocale::setDefault(QLocale::c());
    }
    // The season is counted in a thread of its own: until then its pictures are empty and nameless.
    static bool picturesAreDrawn(const Console& console) {
        return std::ranges::none_of(console.findChildren<SeasonPicture*>(), [](const SeasonPicture* picture) {
            return picture->isVisible() && picture->accessibleName().isEmpty();
        });
    }
    static void visitScreens(Console& console, const QString& how, const Visit& visit) {
        const auto at = [&](const QString& where) {
            QApplication::processEvents();
            visit(console, how + where);
        };
        for (const ScreenRow& row : allScreens()) {
            console.act(row.screen);
            QTest::qWait(row.screen == Action::review ? 600 : 1);
            console.house().wait();
            if (!QTest::qWaitFor([&] { return picturesAreDrawn(console); }, 20000))
                ADD_FAILURE() << "a picture of the season waits for its figures";
            at(keyOf(row.place) + QString::number(row.digit));
            if (row.screen == Action::start)
                for (std::size_t i = 1; i < startQuestions().size(); ++i) {
                    QTest::keyClick(console.frame().page(), Qt::Key_PageDown);
                    at(QStringLiteral("question %1").arg(i + 1));
                }
        }
        console.showBoard();
        for (const ActionRow& row : allActions())
            if (makesFact(row.action)) {
                console.act(row.action);
                at(QStringLiteral("sheet ") + keyOf(row.action));
                console.showBoard();
            }
        for (std::size_t deed = 0; deed < deedCount; ++deed) {
            console.openBook(bookForm(static_cast<Deed>(deed), console.house().context(console.choices().units)));
            at(QStringLiteral("book %1").arg(deed));
            console.showBoard();
        }
    }
    void fault(const QString& where, const QWidget& of, const QString& what) {
        const auto* label = qobject_cast<const QLabel*>(&of);
        const auto* key = qobject_cast<const QAbstractButton*>(&of);
        const QString words = label ? label->text() : key ? key->text() : QString{};
        faults.insert(
            QStringLiteral("%1: %2 %3 '%4' %5")
                .arg(where, QString::fromLatin1(of.metaObject()->className()), of.objectName(), words.left(60), what));
    }
    void report() const {
        for (const QString& one : faults)
            ADD_FAILURE() << one.toStdString();
    }
    static std::vector<QWidget*> seen(Console& console) {
        std::vector<QWidget*> all;
        for (auto* one : console.findChildren<QWidget*>())
            if (one->isVisible() && !one->visibleRegion().isEmpty())
                all.push_back(one);
        return all;
    }
};

constexpr QSize screens[] = {{1024, 600}, {1366, 768}, {1920, 1080}, {2560, 1440}};

bool isWords(const QLabel& label) { return !label.text().isEmpty() && label.pixmap().isNull(); }

TEST_F(EveryScreen, CutsNoWordAndNoTargetAtAnySizeInEitherLanguage) {
    for (const QSize& size : screens)
        for (const bool french : {false, true})
            visitAll(size, Look::day, french, [&](Console& console, const QString& where) {
                const Measure measure = Measure{}.grownTo(size.width(), size.height());
                const int target = Measure{}.px(mm::target) - 1;
                for (QWidget* one : seen(console)) {
                    if (auto* label = qobject_cast<QLabel*>(one); label && isWords(*label)) {
                        const int high =
                            label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
                        if (high > label->height() + 2)
                            fault(where, *one, QStringLiteral("needs %1 px, has %2").arg(high).arg(label->height()));
                        if (!label->wordWrap() && label->sizeHint().width() > label->width() + 2)
                            fault(where, *one, QStringLiteral("is cut at the side"));
                        if (QFontMetricsF{label->font()}.capHeight() < measure.px(mm::smallWords) - 1.5)
                            fault(where, *one, QStringLiteral("has letters under 3 mm"));
                    }
                    const bool pressed = qobject_cast<QAbstractButton*>(one) && one->focusPolicy() != Qt::NoFocus;
                    if ((pressed || qobject_cast<TypedLine*>(one)) && (one->height() < target || one->width() < target))
                        fault(where, *one, QStringLiteral("%1 x %2 px").arg(one->width()).arg(one->height()));
                    if (auto* key = qobject_cast<Press*>(one); key && !key->isWhole())
                        fault(where, *one, QStringLiteral("does not stand on its key whole"));
                }
            });
    report();
}

// W3C, Web Content Accessibility Guidelines 2.1, 1.4.3 and 1.4.11, as the pixels are: the ground is what there is most
// of, the ink what differs from it most and is there `least` times: a point on a key is hardly more than one pixel.
struct Painted {
    double words, edge;
};
Painted painted(const QImage& screen, const QRect& place, int least) {
    QHash<QRgb, int> found;
    for (int y = place.top(); y <= place.bottom(); ++y)
        for (int x = place.left(); x <= place.right(); ++x)
            ++found[screen.pixel(x, y)];
    QRgb ground = 0;
    int most = 0;
    for (auto one = found.constBegin(); one != found.constEnd(); ++one)
        if (one.value() > most) {
            ground = one.key();
            most = one.value();
        }
    Painted seen{1, 1};
    for (auto one = found.constBegin(); one != found.constEnd(); ++one)
        if (one.value() >= least)
            seen.words = std::max(seen.words, contrast(QColor{one.key()}, QColor{ground}));
    seen.edge = contrast(screen.pixelColor(place.left(), place.center().y()), QColor{ground});
    return seen;
}

TEST_F(EveryScreen, KeepsItsContrastByDayAndByNight) {
    for (const Look look : {Look::day, Look::night})
        visitAll({1366, 768}, look, false, [&](Console& console, const QString& where) {
            const QImage image = console.grab().toImage();
            for (QWidget* one : seen(console)) {
                const QRect place = QRect{one->mapTo(&console, QPoint{}), one->size()}.intersected(
                    one->visibleRegion().boundingRect().translated(one->mapTo(&console, QPoint{})));
                const auto* label = qobject_cast<QLabel*>(one);
                const auto* key = qobject_cast<QAbstractButton*>(one);
                const auto* line = qobject_cast<TypedLine*>(one);
                const bool words =
                    (label && isWords(*label)) || (key && !key->text().isEmpty()) || (line && !line->text().isEmpty());
                if (!words && !line)
                    continue;
                // What is rolled out of its page shows no word to judge; its like is judged where it stands whole.
                if (!one->isEnabled() || place.width() < 8 || place.height() < std::max(8, one->height() * 3 / 4))
                    continue;
                const Painted seen = painted(image, place, key && key->text().size() == 1 ? 1 : 3);
                if (words && seen.words < 4.5)
                    fault(where, *one, QStringLiteral("words %1:1").arg(seen.words, 0, 'f', 1));
                if (line && seen.edge < 3)
                    fault(where, *one, QStringLiteral("edge %1:1").arg(seen.edge, 0, 'f', 1));
            }
        });
    report();
}

void walk(QAccessibleInterface* at, const std::function<void(QAccessibleInterface&)>& visit) {
    if (!at || at->state().invisible)
        return;
    visit(*at);
    if (at->tableInterface()) // its cells are told by the table
        return;
    for (int i = 0; i < at->childCount(); ++i)
        walk(at->child(i), visit);
}

TEST_F(EveryScreen, TellsAScreenReaderTheNameAndTheRoleOfEachControl) {
    std::map<QAccessible::Role, int> roles;
    visitAll({1366, 768}, Look::day, false, [&](Console& console, const QString& where) {
        walk(QAccessible::queryAccessibleInterface(&console), [&](QAccessibleInterface& one) {
            const auto* widget = qobject_cast<QWidget*>(one.object());
            if (!widget || widget == &console || qobject_cast<const QScrollBar*>(widget))
                return;
            ++roles[one.role()];
            // What paints itself says by its role what it is, and by its name what it shows.
            const bool painted = QByteArray{widget->metaObject()->className()}.endsWith("Picture") ||
                                 qobject_cast<const RiseChart*>(widget) || qobject_cast<const Card*>(widget) ||
                                 qobject_cast<const SentenceBar*>(widget);
            if (painted && (one.role() == QAccessible::Client || one.text(QAccessible::Name).isEmpty()))
                fault(where, *widget, QStringLiteral("paints itself and has no role or no name"));
            const bool takesFocus = widget->focusPolicy() != Qt::NoFocus;
            const bool control = takesFocus || qobject_cast<const QAbstractButton*>(widget);
            if (control && one.text(QAccessible::Name).isEmpty())
                fault(where, *widget, QStringLiteral("has no name for a screen reader"));
            if (control && one.role() == QAccessible::NoRole)
                fault(where, *widget, QStringLiteral("has no role"));
        });
    });
    EXPECT_GT(roles[QAccessible::Chart], 4);
    EXPECT_GT(roles[QAccessible::AlertMessage], 30) << "the sentence, on every screen";
    EXPECT_GT(roles[QAccessible::Grouping], 2) << "the cards";
    EXPECT_GT(roles[QAccessible::Button], 100);
    EXPECT_GT(roles[QAccessible::EditableText], 30);
    report();
}

} // namespace
} // namespace panside
