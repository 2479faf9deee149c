// The set-up screen by its keys, with real ports: pseudo-terminals on which a probe writes or a Modbus slave answers.
#include "ui/probes/probes_screen.h"

#include "../../core/probe/pty.h"
#include "tests/ui/frame/in_front.h"
#include "ui/look/press.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QSocketNotifier>
#include <QTest>
#include <fmt/format.h>
#include <gtest/gtest.h>

namespace panside {
namespace {

// Modbus over serial line V1.02, 6.2.2: polynomial A001, low byte first.
std::string withCrc(std::string frame) {
    unsigned crc = 0xFFFF;
    for (const char c : frame) {
        crc ^= static_cast<unsigned char>(c);
        for (int bit = 0; bit < 8; ++bit)
            crc = (crc & 1) != 0 ? crc >> 1 ^ 0xA001 : crc >> 1;
    }
    return frame + static_cast<char>(crc & 0xFF) + static_cast<char>(crc >> 8);
}

// A slave 1 with 1034 in input register 0; for every other address it answers that there is none.
class Slave {
public:
    explicit Slave(const Pty& cable) : notifier_{cable.ours(), QSocketNotifier::Read} {
        QObject::connect(&notifier_, &QSocketNotifier::activated, [this, &cable] {
            asked_ += cable.received();
            if (asked_.size() < 8)
                return;
            const auto address = static_cast<unsigned char>(asked_[2]) << 8 | static_cast<unsigned char>(asked_[3]);
            const bool mine = asked_[0] == 1, hasAll = address == 0 && asked_[5] == 1;
            asked_.clear();
            if (mine)
                cable.send(withCrc(hasAll ? std::string{"\x01\x04\x02\x04\x0A"} : std::string{"\x01\x84\x02"}));
        });
    }

private:
    QSocketNotifier notifier_;
    std::string asked_;
};

struct Screen : testing::Test {
    Pty cable;
    ProbesScreen screen;
    std::unique_ptr<ProbeSource> source;
    std::optional<ProbeFile> saved;
    int left = 0;

    Screen() {
        screen.resize(1366, 768);
        screen.wear({});
        screen.setUnits(Units::metric);
        QObject::connect(&screen, &ProbesScreen::tryWanted, [this](const ProbeFile& file) { read(file); });
        QObject::connect(&screen, &ProbesScreen::saveWanted, [this](const ProbeFile& file) { saved = file; });
        QObject::connect(&screen, &ProbesScreen::left, [this] { ++left; });
        EXPECT_TRUE(inFront(screen));
        screen.open({}, {{.device = cable.path(), .stable = {}, .description = "box", .maker = {}, .serial = {}}});
        press("port_" + cable.path());
    }
    void read(const ProbeFile& file) {
        source = std::make_unique<ProbeSource>(
            file, [] { return std::chrono::time_point_cast<Duration_>(std::chrono::system_clock::now()); },
            PortFinder{"/nowhere"});
        QObject::connect(source.get(), &ProbeSource::heard, &screen, &ProbesScreen::heard);
        QObject::connect(source.get(), &ProbeSource::status, &screen, &ProbesScreen::status);
        source->start();
    }
    using Duration_ = Instant::duration;

    template <class T>
    T* find(const std::string& name) {
        return screen.findChild<T*>(QString::fromStdString(name));
    }
    void press(const std::string& name) {
        auto* key = find<Press>(name);
        ASSERT_TRUE(key) << name;
        QTest::mouseClick(key, Qt::LeftButton);
    }
    void key(Qt::Key key) { QTest::keyClick(screen.focusWidget() ? screen.focusWidget() : &screen, key); }
    QString text(const std::string& name) {
        const auto* label = find<QLabel>(name);
        return label ? label->text() : QString{};
    }
    // Lines keep coming while the event loop runs.
    bool whileSending(const std::string& line, const std::function<bool()>& holds) {
        QTimer probe;
        QObject::connect(&probe, &QTimer::timeout, [&] { cable.send(line); });
        probe.start(20);
        return waitFor(holds);
    }
};

TEST_F(Screen, TheChosenPortIsMarked) {
    const auto* port = find<Press>("port_" + cable.path());
    ASSERT_TRUE(port);
    EXPECT_TRUE(port->isChecked());
    screen.open({}, {{.device = cable.path(), .stable = {}, .description = "box", .maker = {}, .serial = {}}});
    EXPECT_FALSE(find<Press>("port_" + cable.path())->isChecked());
}

TEST_F(Screen, APersonPointsWithTwoKeysAndIsAskedAboutTheUnit) {
    const std::string line = "a=212.4 b=xx\r\n";
    ASSERT_TRUE(whileSending(line, [&] { return text("shown_0") == QStringLiteral("212.4"); }));
    EXPECT_EQ(find<Press>("reads_0")->key(), QString{}) << "a digit goes to a tab";
    key(Qt::Key_Down);
    key(Qt::Key_Down);
    EXPECT_TRUE(find<Press>("reads_1")->hasFocus());
    key(Qt::Key_Up);
    key(Qt::Key_Space);
    key(Qt::Key_1); // the first of the readings
    ASSERT_EQ(screen.setup().file().ports[0].fields.size(), 1U);
    EXPECT_EQ(screen.setup().file().ports[0].fields[0].reads, Series::syrup_pan);
    ASSERT_TRUE(whileSending(line, [&] { return find<QWidget>("question")->isVisible(); }));
    EXPECT_EQ(text("asks"), QStringLiteral("The syrup pan reads 212.4\u00a0°C: that looks like °F."));
    key(Qt::Key_Y);
    EXPECT_EQ(screen.setup().file().ports[0].fields[0].unit, Unit::degF);
    EXPECT_FALSE(find<QWidget>("question")->isVisible());
    EXPECT_TRUE(whileSending(line, [&] { return text("value_0") == QStringLiteral("100.2\u00a0°C"); }));
    key(Qt::Key_K);
    ASSERT_TRUE(saved);
    EXPECT_EQ(*saved, screen.setup().file());
}

TEST_F(Screen, RawLinesShowWithTheirEncodingAndLeaveTheFieldsTheirRoom) {
    ASSERT_TRUE(whileSending("a=212.4 b=xx\r\n", [&] { return text("lines").count(u'\n') >= 3; }));
    EXPECT_TRUE(text("lines").endsWith(QStringLiteral("a=212.4 b=xx")));
    EXPECT_EQ(find<Press>("encoding")->text(), QStringLiteral("kind of line: pairs, detected"));
    // Of long lines fewer are shown, and the newest always.
    const std::string lengthy = "a=212.4 b=xx " + std::string(150, 'c') + "=1\r\n";
    ASSERT_TRUE(whileSending(lengthy, [&] { return text("lines").contains(QStringLiteral("ccc")); }));
    ASSERT_TRUE(whileSending(
        lengthy, [&] { return !text("lines").endsWith(QStringLiteral("xx")) && text("lines").count(u'\n') <= 2; }));
    EXPECT_LE(find<QLabel>("lines")->heightForWidth(find<QLabel>("lines")->width()),
              6 * find<QLabel>("lines")->fontMetrics().lineSpacing());
}

TEST_F(Screen, AUnitIsChosenFromKeysThatAreAllInSight) {
    const std::string line = "12.2,xx\r\n";
    ASSERT_TRUE(whileSending(line, [&] { return text("shown_0") == QStringLiteral("12.2"); }));
    press("reads_0");
    press("choice_2"); // the stack
    press("unit_0");
    press("choice_2"); // mV, type K
    EXPECT_EQ(screen.setup().file().ports[0].fields[0].thermocouple, Thermocouple::K);
    press("more_0");
    auto* junction = find<QLineEdit>("part_8");
    ASSERT_TRUE(junction);
    EXPECT_EQ(junction->text(), QStringLiteral("25"));
    // IEC 60584-1 type K: 12.209 mV at 300 degC against 0 degC, so 12.2 mV is 299.8 degC there.
    junction->setText(QStringLiteral("0"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(find<QWidget>("fieldSheet"));
    EXPECT_TRUE(whileSending(line, [&] { return text("value_0") == QStringLiteral("299.8\u00a0°C"); }))
        << text("value_0").toStdString();
}

TEST_F(Screen, AModbusRegisterIsSetUpReadScaledAndKept) {
    const Slave slave{cable};
    press("protocol");
    press("every"); // faster, for the test
    while (screen.setup().rule()->every != 0.25)
        press("every");
    key(Qt::Key_Insert);
    ASSERT_TRUE(find<QWidget>("fieldSheet"));
    ASSERT_TRUE(waitFor([&] { return text("live").contains(QStringLiteral("040A → 1034")); }))
        << text("live").toStdString();
    auto* scale = find<QLineEdit>("part_5");
    scale->setFocus();
    scale->selectAll();
    QTest::keyClicks(scale, QStringLiteral("0.1"));
    press("fieldDone");
    press("reads_0");
    key(Qt::Key_1);
    EXPECT_TRUE(waitFor([&] { return text("value_0") == QStringLiteral("103.4\u00a0°C"); }))
        << text("value_0").toStdString();
    EXPECT_EQ(text("shown_0"), QStringLiteral("040A → 103.4"));
    // A second register, far from the first and so asked for alone, that the slave does not have: the fault stands at
    // it by its name, and is counted.
    press("addRegister");
    find<QLineEdit>("part_2")->setText(QStringLiteral("100"));
    press("fieldDone");
    EXPECT_TRUE(waitFor([&] { return text("value_1") == QStringLiteral("illegal data address (exception 2)"); }))
        << text("value_1").toStdString();
    EXPECT_TRUE(text("lines").contains(QStringLiteral("illegal data address (exception 2) ")));
    key(Qt::Key_K);
    ASSERT_TRUE(saved);
    ASSERT_EQ(saved->ports.at(0).fields.size(), 1U); // the one that reads nothing is left out
    const auto back = readProbeFile(writeProbeFile(*saved));
    ASSERT_TRUE(std::holds_alternative<ProbeFile>(back));
    EXPECT_EQ(std::get<ProbeFile>(back), *saved);
}

TEST_F(Screen, AWrongAnswerKeepsTheSheetOpenAndSaysWhatMayStand) {
    press("protocol");
    key(Qt::Key_Insert);
    find<QLineEdit>("part_0")->setText(QStringLiteral("300"));
    key(Qt::Key_Escape);
    ASSERT_TRUE(find<QWidget>("fieldSheet"));
    EXPECT_EQ(text("fieldProblem"), QStringLiteral("“300” does not fit here. Write a number from 1 to 247."));
    key(Qt::Key_Escape);
    EXPECT_FALSE(find<QWidget>("fieldSheet"));
    EXPECT_EQ(screen.setup().file().ports[0].fields[0].place->slave, 1);
}

TEST_F(Screen, OneKeyTestsTheWholeChainLive) {
    screen.setEvidence([] {
        return ChainEvidence{
            .file = {}, .ports = {}, .picture = {}, .now = Instant{}, .journalTrouble = {}, .canBeHeard = true};
    });
    key(Qt::Key_T);
    EXPECT_EQ(text("chain_0_5"), QStringLiteral("no probe: point at its field, or type readings in"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(find<QWidget>("chain") && find<QWidget>("chain")->isVisible());
    EXPECT_EQ(left, 0);
    key(Qt::Key_Escape);
    EXPECT_EQ(left, 1);
}

TEST_F(Screen, WhatIsPressedIsAtLeastTwelveMillimetresHighEverywhere) {
    const Measure measure;
    const auto check = [&] {
        for (const auto* key : screen.findChildren<Press*>())
            if (key->isVisible()) {
                EXPECT_GE(key->height(), measure.px(mm::target)) << key->objectName().toStdString();
                EXPECT_GE(key->width(), measure.px(mm::target)) << key->objectName().toStdString();
            }
    };
    ASSERT_TRUE(whileSending("12.2,100.1\r\n", [&] { return find<Press>("reads_1") != nullptr; }));
    QCoreApplication::processEvents();
    check();
    press("reads_0");
    QCoreApplication::processEvents();
    check();
    key(Qt::Key_Escape);
    press("protocol");
    key(Qt::Key_Insert);
    QCoreApplication::processEvents();
    check();
}

} // namespace
} // namespace panside
