#include "tests/ui/frame/in_front.h"
#include "ui/frame/roll.h"

#include <QLineEdit>
#include <QScrollBar>
#include <QTest>
#include <QVBoxLayout>
#include <gtest/gtest.h>

using namespace panside;

namespace {

// Twelve fields of 45 pixels: more than a low panel has room for.
struct Fields : QWidget {
    std::vector<QLineEdit*> all;
    Fields() {
        auto* column = new QVBoxLayout{this};
        for (int i = 0; i < 12; ++i) {
            all.push_back(new QLineEdit);
            all.back()->setMinimumHeight(45);
            column->addWidget(all.back());
        }
    }
};

bool inSight(const QWidget& roll, const QWidget& field) {
    const QRect place{field.mapTo(&roll, QPoint{}), field.size()};
    return roll.rect().contains(place);
}

} // namespace

TEST(Roll, SqueezesNothingAndKeepsTheFocusInSight) {
    auto* fields = new Fields;
    Roll roll{fields};
    roll.wear({});
    roll.resize(400, 260);
    roll.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&roll));
    for (const QLineEdit* field : fields->all)
        EXPECT_GE(field->height(), 45);
    EXPECT_FALSE(inSight(roll, *fields->all.back()));
    EXPECT_TRUE(inFront(roll));
    fields->all.back()->setFocus();
    EXPECT_TRUE(QTest::qWaitFor([&] { return inSight(roll, *fields->all.back()); }));
    QTest::keyClick(fields, Qt::Key_PageUp);
    EXPECT_TRUE(inSight(roll, *fields->all[5]));
    // Never wider than the room: what is cut at the side cannot be reached.
    EXPECT_LE(fields->width(), roll.viewport()->width());
    roll.resize(400, 900);
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return inSight(roll, *fields->all.front()) && inSight(roll, *fields->all.back()); }));
}
