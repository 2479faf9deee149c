#include "ui/frame/frame_view.h"

#include "tests/ui/board/framed.h"
#include "tests/ui/board/scenes.h"
#include "ui/board/card.h"
#include "ui/frame/foot.h"
#include "ui/frame/key_map.h"
#include "ui/frame/sentence_bar.h"
#include "ui/look/press.h"
#include "ui/look/urgency.h"

#include <QApplication>
#include <QTest>
#include <gtest/gtest.h>
#include <map>

namespace panside {
namespace {

const QSize screenSizes[] = {{1024, 600}, {1366, 768}, {1920, 1080}, {2560, 1440}};

// Where everything lies that is always there.
std::map<QString, QRect> places(const FrameView& frame) {
    std::map<QString, QRect> all;
    for (const auto* child : frame.findChildren<QWidget*>())
        if (!child->objectName().isEmpty() && child->isVisibleTo(&frame) &&
            !child->objectName().startsWith(QLatin1String("sentenceSe")) &&
            !child->objectName().startsWith(QLatin1String("sentenceSh")) && !child->objectName().contains(u"Action"))
            all.emplace(child->objectName(), QRect{child->mapTo(&frame, QPoint{}), child->size()});
    return all;
}

TEST(Frame, NothingMovesWhenAnAlarmComesIsSeenOrIsOver) {
    for (const QSize& size : screenSizes) {
        Framed framed{size};
        framed.show(scenes::calm());
        framed.frame.show();
        QApplication::processEvents();
        framed.frame.foot().offerUndo({});
        const auto before = places(framed.frame);
        EXPECT_GT(before.size(), 20u);
        for (const Picture& picture : {scenes::scorching(), scenes::seenAlarm(), scenes::goneUnseen(),
                                       scenes::drawing(), scenes::blind(), scenes::late(), scenes::calm()}) {
            framed.show(picture);
            framed.frame.foot().say(QStringLiteral("Kept: fire lit, 21:04"));
            framed.frame.foot().offerUndo(QStringLiteral("fire lit, 21:04"));
            for (const auto& [name, place] : places(framed.frame)) {
                const auto was = before.find(name);
                ASSERT_NE(was, before.end()) << name.toStdString();
                EXPECT_EQ(place, was->second) << name.toStdString() << " at " << size.width();
            }
        }
    }
}

// Eyes that are used to the dark: only what is urgent fills the bar by night.
TEST(Frame, TheBarShinesByNightForWhatIsUrgentAlone) {
    for (const Tone tone : {Tone::low, Tone::medium, Tone::high})
        for (const Look look : {Look::day, Look::night}) {
            SentenceBar bar;
            bar.resize(1200, 100);
            Dress dress;
            dress.look = look;
            bar.wear(dress);
            SentenceView view;
            view.state = SentenceView::State::alarm;
            view.wrong = QStringLiteral("Sap");
            view.tone = tone;
            view.flashing = true;
            bar.display(view, {});
            const QColor at = bar.grab().toImage().pixelColor(1000, 50);
            const bool filled = look == Look::day || tone == Tone::high;
            EXPECT_EQ(at, filled ? inkOf(tone, dress.inks()) : dress.inks().panel)
                << static_cast<int>(tone) << static_cast<int>(look);
        }
}

TEST(Frame, EveryTargetIsTwelveMillimetresAndNothingIsOutsideOrOverAnother) {
    for (const QSize& size : screenSizes)
        for (const Picture& picture : {scenes::calm(), scenes::drawing(), scenes::scorching(), scenes::fresh()}) {
            Framed framed{size};
            framed.show(picture);
            framed.frame.show();
            QApplication::processEvents();
            std::vector<std::pair<QString, QRect>> taken;
            for (const auto* target : framed.frame.findChildren<QAbstractButton*>()) {
                if (!target->isVisible())
                    continue;
                const QRect place{target->mapTo(&framed.frame, QPoint{}), target->size()};
                EXPECT_GE(place.height(), Measure{96}.px(mm::target) - 1) << target->objectName().toStdString();
                EXPECT_GE(place.width(), Measure{96}.px(mm::target)) << target->objectName().toStdString();
                EXPECT_TRUE(framed.frame.rect().contains(place)) << target->objectName().toStdString();
                for (const auto& [name, other] : taken)
                    EXPECT_FALSE(other.intersects(place))
                        << target->objectName().toStdString() << " over " << name.toStdString();
                taken.emplace_back(target->objectName(), place);
            }
            EXPECT_GT(taken.size(), 15u);
        }
}

TEST(Frame, EveryWordStandsWholeOnItsKey) {
    for (const QSize& size : screenSizes) {
        Framed framed{size};
        framed.show(scenes::calm());
        framed.frame.show();
        QApplication::processEvents();
        for (const auto* key : framed.frame.findChildren<Press*>())
            if (key->isVisible()) {
                EXPECT_TRUE(key->isWhole()) << key->text().toStdString() << " at " << size.width();
            }
    }
}

TEST(Frame, ASheetLiesNeverOnTheSentenceAndOnALaptopNeverOnTheCards) {
    for (const QSize& size : screenSizes) {
        Framed framed{size};
        const QRect sheet = framed.frame.sheetPlace();
        EXPECT_FALSE(sheet.intersects(framed.frame.bar().geometry())) << size.width();
        if (size.height() >= 768) {
            EXPECT_FALSE(sheet.intersects(framed.board->cards().geometry())) << size.width();
        }
        EXPECT_GE(sheet.width(), Measure{96}.px(140));
    }
}

TEST(Frame, TheOuterEdgeShowsAnAlarmNobodyHasSeen) {
    Framed framed;
    framed.show(scenes::scorching());
    const QColor ink = inksOf(Look::day).high;
    const QImage image = framed.frame.grab().toImage();
    for (const QPoint corner : {QPoint{1, 1}, QPoint{1364, 1}, QPoint{1, 766}, QPoint{1364, 766}})
        EXPECT_EQ(image.pixelColor(corner), ink);
    // What is over, what is called for and what is calm paint no edge.
    Picture due = scenes::calm();
    due.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
    due.drawDue = true;
    for (const Picture& picture : {scenes::calm(), scenes::goneUnseen(), due}) {
        framed.show(picture);
        EXPECT_EQ(framed.frame.grab().toImage().pixelColor(1, 1), inksOf(Look::day).ground);
    }
}

TEST(Frame, MovesNothingWhereAPersonWantsItStill) {
    Framed framed;
    framed.frame.setStill(true);
    framed.show(scenes::scorching());
    for (int i = 0; i < 3; ++i) {
        EXPECT_TRUE(framed.frame.isLit());
        QTest::qWait(300);
    }
    framed.show(scenes::calm());
    EXPECT_FALSE(framed.frame.isLit());
}

TEST(Frame, WhatHasJustComeUnderTheFingerTakesNoTouch) {
    Framed framed;
    int seen = 0;
    QObject::connect(&framed.frame, &FrameView::actionWanted,
                     [&](Action action) { seen += action == Action::alarmSeen; });
    framed.show(scenes::scorching());
    auto* key = framed.frame.findChild<Press*>(QStringLiteral("sentenceSeen"));
    key->click();
    EXPECT_EQ(seen, 1);
    Picture other = scenes::scorching();
    other.alarms[0].alarm = Alarm::stack_hot;
    framed.show(other);
    key->click();
    EXPECT_EQ(seen, 1) << "the finger meant the alarm before";
}

TEST(Frame, TabsAndRailSayWhereOneIsAndGoWhereTheySay) {
    Framed framed;
    std::vector<Place> places;
    std::vector<Action> opened;
    QObject::connect(&framed.frame, &FrameView::placeWanted, [&](Place place) { places.push_back(place); });
    QObject::connect(&framed.frame, &FrameView::screenWanted, [&](Action screen) { opened.push_back(screen); });
    EXPECT_TRUE(framed.frame.findChild<QAbstractButton*>(QStringLiteral("placeF3"))->isChecked());
    framed.frame.findChild<QAbstractButton*>(QStringLiteral("placeF7"))->click();
    framed.frame.findChild<QAbstractButton*>(QStringLiteral("tab1"))->click();
    EXPECT_EQ(places, std::vector{Place::rig});
    EXPECT_EQ(opened, std::vector{Action::fuel});
}

TEST(Frame, AwayFromTheBoardTheBarKeepsTheThreeNumbersAndTheWayBack) {
    Framed framed;
    framed.show(scenes::calm());
    auto* back = framed.frame.findChild<Press*>(QStringLiteral("toBoard"));
    EXPECT_TRUE(back->isHidden());
    framed.frame.showTabs(Place::rig, {{Action::rig, 1, QStringLiteral("Pans")}}, Action::rig);
    EXPECT_FALSE(back->isHidden());
    EXPECT_EQ(framed.frame.bar().secondLine(),
              QString::fromUtf8("draw 12\u00a0min  ·  fire 3\u00a0min  ·  last load 1\u00a0h\u00a045"));
}

TEST(Foot, SaysOnTheKeyWhatUndoWouldTakeBack) {
    Framed framed;
    auto* undo = framed.frame.findChild<Press*>(QStringLiteral("footUndo"));
    EXPECT_FALSE(undo->isEnabled());
    framed.frame.foot().offerUndo(QStringLiteral("fire lit, 21:04"));
    EXPECT_EQ(undo->text(), "Undo: fire lit, 21:04");
    EXPECT_TRUE(undo->isEnabled());
}

TEST(KeyMap, EachScreenAndEachActionIsAKeyThatCanBePressed) {
    for (const QSize& size : {QSize{930, 430}, QSize{1254, 560}}) {
        KeyMap map;
        map.resize(size);
        map.wear({});
        map.display(
            {{Place::boil, {{Action::board, 1, QStringLiteral("Board")}, {Action::fuel, 2, QStringLiteral("Fire")}}},
             {Place::rig, {{Action::rig, 1, QStringLiteral("Pans")}, {Action::sound, 4, QStringLiteral("Sound")}}}});
        map.show();
        std::vector<Action> opened, actions;
        QObject::connect(&map, &KeyMap::screenWanted, [&](Action screen) { opened.push_back(screen); });
        QObject::connect(&map, &KeyMap::actionWanted, [&](Action action) { actions.push_back(action); });
        for (auto* key : map.findChildren<Press*>()) {
            EXPECT_TRUE(map.rect().contains(key->geometry())) << key->text().toStdString();
            EXPECT_GE(key->height(), Measure{96}.px(mm::target));
            QTest::mouseClick(key, Qt::LeftButton);
        }
        EXPECT_EQ(opened.size(), 4u);
        EXPECT_EQ(actions.size(), allActions().size() - 1) << "open and close the draw are one key";
    }
}

// Of a window of 1366x768 the page has so much.
TEST(KeyMap, NoKeyIsScrolledToOnALaptop) {
    std::vector<FrameTab> tabs;
    for (int digit = 1; digit <= 6; ++digit)
        tabs.push_back({Action::board, digit, QStringLiteral("Board")});
    KeyMap map;
    map.resize(1240, 520);
    map.wear({});
    map.display({{Place::boil, tabs}});
    EXPECT_LE(map.minimumHeight(), 520);
}

} // namespace
} // namespace panside
