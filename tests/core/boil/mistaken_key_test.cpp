// The key of the draw, mistaken for the other: opened for shut and shut for opened.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::Rows;

// Draws of 80 s, keyed by `atOpening` and `atShutting`.
class Draws {
public:
    void draw(const char* atOpening, const char* atShutting, int seconds = 80) {
        log.climb(61, 67.3, 800);
        log.rows.add(log.now, atOpening);
        log.climb(67.3, 61, seconds);
        log.rows.add(log.now, atShutting);
        log.climb(61, 61.3, 40);
    }
    BoilLog log;
};

TEST(AMistakenKey, OfTwoThatOpenTheSecondShuts) {
    Draws night;
    for (int i = 1; i <= 4; ++i) {
        night.draw("draw_open,,,", "draw_open,,,");
        const Picture after = night.log.picture();
        EXPECT_FALSE(after.drawing) << i;
        EXPECT_EQ(after.draws, i);
        EXPECT_FALSE(test::stands(after, Alarm::draw_overdue)) << i;
    }
    night.log.climb(61, 64, 400);
    EXPECT_TRUE(night.log.picture().drawEta);
}

TEST(AMistakenKey, OfKeysExchangedTheOneThatOpensShuts) {
    Draws night;
    for (int i = 1; i <= 4; ++i) {
        night.draw("draw_close,3,L,", "draw_open,,,");
        const Picture after = night.log.picture();
        EXPECT_FALSE(after.drawing) << i;
        EXPECT_EQ(after.draws, i);
        EXPECT_NEAR(after.syrupOut->litre(), 3 * i, 1e-6);
    }
    EXPECT_EQ(test::stood(night.log.rows, Alarm::draw_overdue).times, 0);
}

// Also where the first of them, of a draw that hardly thinned, did not show it.
TEST(AMistakenKey, OfKeysExchangedIsFoundAtTheNextDraw) {
    Draws night;
    night.log.climb(61, 65, 800);
    night.log.rows.add(night.log.now, "draw_open,,,");
    night.draw("draw_close,3,L,", "draw_open,,,");
    EXPECT_FALSE(night.log.picture().drawing);
}

// Right keys are believed: also where the last draw was never keyed shut, or a close was keyed alone.
TEST(AMistakenKey, IsNoneAtThePansMark) {
    Draws night;
    night.draw("draw_open,,,", "note,,,forgotten");
    night.log.climb(61.3, 67.1, 800);
    night.log.rows.add(night.log.now, "draw_open,,,");
    EXPECT_TRUE(night.log.picture().drawing);
    night.log.climb(67.1, 61, 80);
    night.log.rows.add(night.log.now, "draw_close,3,L,");
    night.draw("note,,,forgotten", "draw_close,3,L,");
    night.log.climb(61.3, 67.1, 800);
    night.log.rows.add(night.log.now, "draw_open,,,");
    EXPECT_TRUE(night.log.picture().drawing);
}

// The power fails in a draw and comes back half an hour later: nobody has drawn all the while.
TEST(AMistakenKey, IsNoneOfADrawThatAPowerCutEnded) {
    Draws night;
    night.draw("draw_open,,,", "draw_close,3,L,");
    night.draw("draw_open,,,", "draw_close,3,L,");
    night.log.climb(61, 67.3, 800);
    night.log.rows.add(night.log.now, "draw_open,,,");
    night.log.climb(67.3, 66.5, 20);
    night.log.now += 1800;
    night.log.climb(62, 62.5, 60);
    EXPECT_FALSE(night.log.picture().drawing);
    EXPECT_EQ(night.log.picture().draws, 3);
}

// Two hands press within a minute, or one writes it down later.
TEST(AMistakenKey, IsNoneOfTwoHandsThatTellOneDraw) {
    Draws night;
    night.log.climb(61, 67.3, 800);
    night.log.rows.add(night.log.now, "draw_open,,,");
    night.log.climb(67.3, 66, 30);
    night.log.rows.add(night.log.now, "draw_open,,,");
    EXPECT_TRUE(night.log.picture().drawing);
    night.log.climb(66, 64, 60);
    night.log.rows.add(night.log.now, "draw_open,,,entered=2025-03-14T12:40:00Z");
    EXPECT_TRUE(night.log.picture().drawing);
}

} // namespace
} // namespace panside
