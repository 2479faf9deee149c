// Paints every screen to pictures, for looking at: paint_screens FOLDER [SIZE,…] [LOOK,…] [LANGUAGE,…] [ONLY]
// Beside them it writes what there is (pictures.md) and the contrast of every pair of inks (contrast.md).
// A size is WIDTHxHEIGHT at 96 dpi. All of them together: paint_screens FOLDER
// The pictures of the README and the manual, with what each says: paint_screens --pictures FOLDER FOLDER-OF-WORDS
#include "core/boil/shift_log.h"
#include "core/rehearsal/rehearse.h"
#include "core/season/shift_account.h"
#include "core/shift/rehearsal_feed.h"
#include "tests/ui/board/framed.h"
#include "tests/ui/board/scenes.h"
#include "tests/ui/look/contrast_pairs.h"
#include "tests/ui/pictures/made_house.h"
#include "tests/ui/pictures/pictures.h"
#include "ui/board/across_view.h"
#include "ui/chart/rise_chart.h"
#include "ui/console/screens.h"
#include "ui/files/file_pick.h"
#include "ui/frame/foot.h"
#include "ui/frame/frame_view.h"
#include "ui/frame/program.h"
#include "ui/importing/import_screen.h"
#include "ui/ledger/book_form.h"
#include "ui/ledger/house.h"
#include "ui/look/choice_box.h"
#include "ui/pack/label_sheet.h"
#include "ui/page/page.h"
#include "ui/report/ledger_paper.h"
#include "ui/report/shift_report.h"
#include "ui/start/start_view.h"
#include "ui/words/ground_words.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QTranslator>
#include <cstdio>

using namespace panside;

namespace {

struct Wish {
    QSize size;
    Look look;
    bool french;
    QString folder, only;
    QString named(const QString& what) const {
        return QStringLiteral("%1/%2_%3x%4%5%6.png")
            .arg(folder, what)
            .arg(size.width())
            .arg(size.height())
            .arg(look == Look::night ? QStringLiteral("_night") : QString{},
                 french ? QStringLiteral("_fr") : QString{});
    }
    bool wants(const QString& what) const { return only.isEmpty() || what.contains(only); }
    Units units() const { return french ? Units::metric : Units::us; }
};

QStringList painted;

void keep(QWidget& widget, const Wish& wish, const QString& what) {
    QApplication::processEvents();
    const QString file = wish.named(what);
    if (!widget.grab().save(file))
        std::fprintf(stderr, "%s cannot be written. Look at the folder's permissions.\n", qPrintable(file));
    painted << QFileInfo{file}.fileName();
}

// What a note on the screens quotes: every picture by its name, and the table of contrasts.
void writeLists(const QString& folder) {
    QFile list{folder + QStringLiteral("/pictures.md")}, table{folder + QStringLiteral("/contrast.md")};
    if (list.open(QIODevice::WriteOnly))
        list.write((QStringLiteral("- ") + painted.join(QStringLiteral("\n- ")) + u'\n').toUtf8());
    QString rows = QStringLiteral("| pair | wanted | day | night | paper |\n| --- | --- | --- | --- | --- |\n");
    const auto day = contrastPairs(inksOf(Look::day)), night = contrastPairs(inksOf(Look::night)),
               paper = contrastPairs(inksOf(Look::paper));
    for (std::size_t i = 0; i < day.size(); ++i) {
        const auto ratio = [&](const ContrastPair& pair) {
            return QString::number(contrast(pair.ink, pair.ground), 'f', 1);
        };
        rows += QStringLiteral("| %1 | %2 | %3 | %4 | %5 |\n")
                    .arg(QString::fromStdString(day[i].what))
                    .arg(day[i].least)
                    .arg(ratio(day[i]), ratio(night[i]), ratio(paper[i]));
    }
    if (table.open(QIODevice::WriteOnly))
        table.write(rows.toUtf8());
    std::printf("%lld pictures, %zu pairs of inks\n", static_cast<long long>(painted.size()), day.size());
}

void paintBoards(const Wish& wish) {
    Picture due = scenes::calm();
    due.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
    due.drawDue = true;
    Picture scorch = scenes::scorching();
    scorch.fuel.tank = Volume::gallon(158);
    const std::pair<const char*, Picture> evenings[] = {{"fresh", scenes::fresh()},
                                                        {"calm", scenes::calm()},
                                                        {"due", due},
                                                        {"drawing", scenes::drawing()},
                                                        {"scorching", scorch},
                                                        {"seen", scenes::seenAlarm()},
                                                        {"gone", scenes::goneUnseen()},
                                                        {"doubt", scenes::doubt()},
                                                        {"blind", scenes::blind()},
                                                        {"hand", scenes::handOnly()},
                                                        {"burnout", scenes::burningOut()},
                                                        {"late", scenes::late()}};
    for (const auto& [name, picture] : evenings) {
        if (const QString why = QStringLiteral("why_") + QString::fromLatin1(name); wish.wants(why)) {
            Page page;
            page.wear({Measure{}.grownTo(wish.size.width(), wish.size.height()), wish.look});
            page.show(whyPage(picture, wish.units()), QStringLiteral("Board"));
            page.resize(wish.size);
            keep(page, wish, why);
        }
        const QString what = QStringLiteral("board_") + QString::fromLatin1(name);
        if (!wish.wants(what))
            continue;
        Framed framed{wish.size, {Measure{}, wish.look}, wish.units()};
        if (picture.litAt)
            scenes::fillTrace(framed.board->chart().trace());
        framed.show(picture);
        framed.frame.foot().tellTime(QStringLiteral("20:30"), {});
        framed.frame.foot().offerUndo(QStringLiteral("fired, 20:26"));
        keep(framed.frame, wish, what);
        if (!wish.wants(what + QStringLiteral("_across")) || (what != u"board_due" && what != u"board_scorching"))
            continue;
        framed.board->across().setParent(&framed.frame);
        framed.board->across().setGeometry(framed.frame.rect().adjusted(8, 8, -8, -8));
        framed.board->across().show();
        keep(framed.frame, wish, what + QStringLiteral("_across"));
    }
}

void paintQuestions(Console& console, const Wish& wish, const QString& what) {
    for (std::size_t i = 1; i < startQuestions().size(); ++i) {
        QTest::keyClick(console.frame().page(), Qt::Key_PageDown);
        if (startQuestions()[i] == StartQuestion::place)
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_V);
        keep(console, wish, QStringLiteral("%1_%2").arg(what).arg(i + 1));
    }
}

// The screens of a made-up house, and a night that goes on.
void paintScreens(const Wish& wish) {
    MadeHouse house{MadeOf::all, afterTheSeason, wish.size, wish.look, wish.units()};
    Console& console = house.console();
    for (const ScreenRow& row : allScreens()) {
        const QString what = QStringLiteral("%1%2").arg(keyOf(row.place)).arg(row.digit);
        if (!wish.wants(what) || (row.shown && !row.shown(console)))
            continue;
        console.act(row.screen);
        QTest::qWait(row.screen == Action::season || row.screen == Action::review ? 1500 : 50);
        if (row.screen == Action::season) { // the season that is full
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Y);
            QTest::qWait(50);
        }
        console.house().wait();
        keep(console, wish, what);
        if (row.screen == Action::start)
            paintQuestions(console, wish, what);
    }
    if (wish.wants(QStringLiteral("past_night"))) {
        house.openPastNight();
        keep(console, wish, QStringLiteral("past_night"));
    }
    console.showBoard();
    const std::pair<Action, const char*> sheets[] = {
        {Action::densityCheck, "check"}, {Action::handReading, "reading"}, {Action::fired, "fired"},
        {Action::crew, "crew"},          {Action::sapIn, "sap"},           {Action::shiftEnd, "end"},
        {Action::waterCheck, "water"},   {Action::drawOpen, "open"},       {Action::drawClose, "draw"}};
    for (const auto& [action, name] : sheets) {
        const QString what = QStringLiteral("sheet_") + QString::fromLatin1(name);
        if (!wish.wants(what))
            continue;
        if (action == Action::drawClose) { // one is open, and the pails are known
            console.house().ask();
            console.house().wait();
            console.act(Action::drawOpen);
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        }
        console.act(action);
        keep(console, wish, what);
        console.showBoard();
    }
    for (const Deed deed : {Deed::packed, Deed::gathered, Deed::moved, Deed::press_on}) {
        const QString what =
            QStringLiteral("book_") +
            QString::fromUtf8(rowOf(deed).name.data(), static_cast<qsizetype>(rowOf(deed).name.size()));
        if (!wish.wants(what))
            continue;
        console.act(Action::vessels);
        console.house().wait();
        console.openBook(bookForm(deed, console.house().context(wish.units())));
        keep(console, wish, what);
        console.showBoard();
    }
}

// A season in which things go wrong, on the pages from the draw to the bottle.
void paintTurns(const Wish& wish) {
    if (!wish.wants(QStringLiteral("turns")))
        return;
    MadeHouse house{MadeOf::turns, afterTheSeason, wish.size, wish.look, wish.units()};
    Console& console = house.console();
    for (const ScreenRow& row : allScreens()) {
        if (row.place != Place::syrup && row.place != Place::sap)
            continue;
        console.act(row.screen);
        console.house().wait();
        QTest::qWait(50);
        keep(console, wish, QStringLiteral("turns_%1%2").arg(keyOf(row.place)).arg(row.digit));
    }
}

// What is chosen from: a place to write to, another logger's columns, one of its words.
void paintChoices(const Wish& wish) {
    if (!wish.wants(QStringLiteral("choice")))
        return;
    Dress dress{Measure{}.grownTo(wish.size.width(), wish.size.height()), wish.look};
    QTemporaryDir folder;
    for (const char* name : {"season 2025/a.csv", "season 2026/b.csv", "book.pdf", "recall.pdf"}) {
        QDir{folder.path()}.mkpath(QFileInfo{QString::fromLatin1(name)}.path());
        QFile file{folder.filePath(QString::fromLatin1(name))};
        if (!file.open(QIODevice::WriteOnly))
            return;
    }
    for (const auto& [kind, name] : {std::pair{PickWish::Kind::save, "save"}, {PickWish::Kind::files, "files"}}) {
        FilePick pick{
            {kind, QStringLiteral("27-222-A"), folder.path(), QStringLiteral("book.pdf"), {}}, dress, nullptr};
        pick.resize(wish.size);
        pick.show();
        QTest::keyClick(&pick, kind == PickWish::Kind::save ? Qt::Key_Return : Qt::Key_End);
        keep(pick, wish, QStringLiteral("choice_") + QString::fromLatin1(name));
    }
    ImportScreen importing;
    importing.wear(dress);
    const std::string table = "Zeit;Pfanne;Kamin\n14.03.2026 18:00:00;99,5;310\n14.03.2026 18:00:01;99,6;311\n";
    importing.askMap(QStringLiteral("logger.csv"), table, proposedMap(table, "UTC"), wish.units());
    importing.resize(wish.size);
    importing.show();
    keep(importing, wish, QStringLiteral("choice_columns"));
    for (auto* box : importing.findChildren<ChoiceBox*>())
        if (box->isVisible() && box->count() > 4) {
            box->showPopup();
            keep(*box->view()->window(), wish, QStringLiteral("choice_box"));
            box->hidePopup();
            break;
        }
}

// What is printed: a page's picture is made from the PDF by another program.
void paintPapers(const Wish& wish) {
    if (!wish.wants(QStringLiteral("paper")))
        return;
    MadeHouse house{MadeOf::turns, afterTheSeason, wish.size, wish.look, wish.units()};
    Console& console = house.console();
    console.act(Action::vessels);
    console.house().wait();
    const Ledger& ledger = console.house().ledger()->ledger();
    const auto place = [&](const char* what) {
        return wish.named(QStringLiteral("paper_") + QString::fromLatin1(what)).replace(".png", ".pdf").toStdString();
    };
    std::vector<Label> labels;
    for (const Lot& lot : ledger.lots())
        for (Label& one : labelsOf(ledger, lot, 0, 9))
            labels.push_back(std::move(one));
    labelsAsPdf(labels, place("labels"));
    for (const Vessel& vessel : ledger.vessels())
        if (vessel.name == "drum 6")
            tagAsPdf(drumTag(ledger, vessel, wish.units()), place("tag"));
    paperAsPdf(recallOnPaper(ledger, 0, wish.units()), place("recall"));
    paperAsPdf(bookOnPaper(ledger, wish.units()), place("book"));
    const auto night = readLog(rehearsedLog(std::chrono::hours{5}, 4)).facts;
    Facts facts;
    ShiftAccountant accountant;
    for (const Fact& fact : night) {
        facts.add(static_cast<FactId>(facts.size() + 1), fact);
        accountant.add(fact);
    }
    reportAsPdf({.id = night.front().at, .open = false, .account = accountant.account()}, facts, wish.units(),
                place("night"));
}

// A day of spring: sap in the tanks, nights to learn from, one that must end in time, with the concentrator and
// without.
void paintSpring(const Wish& wish) {
    if (!wish.wants(QStringLiteral("spring")))
        return;
    MadeHouse house{MadeOf::all, withSap, wish.size, wish.look, wish.units()};
    Console& console = house.console();
    for (const Action screen : {Action::tanks, Action::tonight}) {
        console.act(screen);
        console.house().wait();
        QTest::qWait(50);
        keep(console, wish,
             screen == Action::tanks ? QStringLiteral("spring_tanks") : QStringLiteral("spring_tonight"));
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_K);
    keep(console, wish, QStringLiteral("spring_concentrated"));
    for (int i = 0; i < 8; ++i)
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Q);
    keep(console, wish, QStringLiteral("spring_earlier"));
}

// What a rehearsal says of itself, to those who boil and to the teacher.
void paintRehearsal(const Wish& wish) {
    const QString what = QStringLiteral("F34");
    if (!wish.wants(what))
        return;
    RehearsalFeed feed{4, 1, std::make_unique<RehearsalHouse>(4)};
    ProbeSource watch{[&] { return feed.session().now(); }};
    Choices choices;
    choices.cautioned = true;
    choices.look = wish.look;
    choices.units = wish.units();
    choices.language = wish.french ? QStringLiteral("fr") : QStringLiteral("en");
    Console console{{.session = feed.session(),
                     .journal = feed.house()->journal(),
                     .probeFile = feed.house()->folder() / "probe.toml",
                     .probes = &watch,
                     .notice = {},
                     .advance = {},
                     .rehearsal = &feed},
                    choices};
    console.resize(wish.size);
    console.show();
    console.act(Action::rehearsal);
    keep(console, wish, what);
    QTest::keyClick(console.frame().page(), Qt::Key_H);
    keep(console, wish, what + QStringLiteral("_teach"));
}

bool paintAllPictures(const QString& pictures, const QString& words) {
    QLocale::setDefault(QLocale{QStringLiteral("en_US")});
    bool all = paintPictures(pictures, words, false);
    QTranslator french;
    all = french.load(QStringLiteral(PANSIDE_FRENCH)) && QApplication::installTranslator(&french) && all;
    QLocale::setDefault(QLocale{QStringLiteral("fr_CA")});
    return paintPictures(pictures, words, true) && all;
}

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TZ", "UTC");
    const QTemporaryDir home;
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    panside::Program application{argc, argv};
    panside::keepLabelsPlain(application);
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() < 2) {
        std::fputs("paint_screens FOLDER [SIZE,...] [day,night] [en,fr] [ONLY]\n", stderr);
        return 2;
    }
    if (arguments[1] == u"--pictures")
        return arguments.size() == 4 && paintAllPictures(arguments[2], arguments[3]) ? 0 : 2;
    QDir{arguments[1]}.mkpath(QStringLiteral("."));
    const QString sizes = arguments.value(2, QStringLiteral("1024x600,1366x768,1920x1080,2560x1440"));
    QTranslator french;
    for (const QString& language : arguments.value(4, QStringLiteral("en,fr")).split(u',')) {
        const bool inFrench = language == u"fr";
        if (inFrench && french.load(QStringLiteral(PANSIDE_FRENCH)))
            QApplication::installTranslator(&french);
        for (const QString& look : arguments.value(3, QStringLiteral("day,night")).split(u','))
            for (const QString& size : sizes.split(u',')) {
                const QStringList sides = size.split(u'x');
                const Wish wish{{sides.value(0).toInt(), sides.value(1).toInt()},
                                look == u"night" ? Look::night : Look::day,
                                inFrench,
                                arguments[1],
                                arguments.value(5)};
                if (wish.size.isEmpty())
                    return 2;
                QLocale::setDefault(inFrench ? QLocale{QStringLiteral("fr_CA")} : QLocale{QStringLiteral("en_US")});
                paintBoards(wish);
                paintScreens(wish);
                paintTurns(wish);
                paintSpring(wish);
                paintRehearsal(wish);
                paintChoices(wish);
                paintPapers(wish);
            }
        QApplication::removeTranslator(&french);
    }
    writeLists(arguments[1]);
    return 0;
}
