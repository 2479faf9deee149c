#include "ui/frame/desks.h"

#include "ui/filter/filter_picture.h"
#include "ui/filter/filter_screen.h"
#include "ui/filter/filter_view.h"
#include "ui/ledger/ledger_desk.h"
#include "ui/words/reading_words.h"

#include <QTimer>
#include <algorithm>

namespace panside {
namespace {

using namespace std::chrono_literals;

std::optional<Pressure> limitOf(Session& session) {
    for (const Set& set : session.settings())
        if (set.key == Setting::filter_limit)
            return Pressure::pascal(set.si);
    return std::nullopt;
}

class FilterDesk : public LedgerDesk {
public:
    FilterDesk(Shell& shell, FilterScreen* screen) : LedgerDesk{shell, screen}, screen_{screen} {
        connect(screen, &FilterScreen::pressed, this, &FilterDesk::act);
        connect(screen, &FilterScreen::gaugeTyped, this, &FilterDesk::keepTyped);
        // The gauge of a probe goes on while one looks.
        timer_.setInterval(2s);
        connect(&timer_, &QTimer::timeout, this, [this] {
            if (screen_->isVisible())
                showHouse();
        });
        timer_.start();
    }
    void wear(const Dress& dress) override {
        screen_->wear(dress, symbolOf(gaugeUnit()));
        if (screen_->isVisible())
            showHouse();
    }

protected:
    void show(const HouseLedger* house) override {
        FilterNow now;
        now.now = session().now();
        now.limit = limitOf(session());
        if (house) {
            now.run = openRun(*house);
            now.flow = usualFlow(*house);
            if (now.run) {
                now.readings = gaugeSince(now.run->begun, session().boil().facts(), typed_);
                now.before = runsBefore(*house, *now.run);
            }
        }
        running_ = now.run.has_value();
        ListView view = filterView(house, now, units());
        view.keys = {{Qt::Key_B, QStringLiteral("begin"), Desk::tr("Begin a run"), !running_, !running_},
                     {Qt::Key_E, QStringLiteral("end"), Desk::tr("End the run"), running_, running_},
                     {Qt::Key_N, QStringLiteral("changed"), Desk::tr("Papers or cones changed")},
                     wayToBoard()};
        screen_->display(view, filterChart(now, units()), running_);
    }

private:
    Unit gaugeUnit() const { return readingUnit(Series::filter_pressure, units()); }
    void act(int key) {
        if (key == Qt::Key_Escape)
            return shell_.showBoard();
        if (key == Qt::Key_B && !running_)
            return begin();
        if (key == Qt::Key_E && running_)
            return enter(form(Deed::press_off));
        if (key == Qt::Key_N) {
            BookForm filled = form(Deed::cleaned);
            filled.put(Key::vessel, QStringLiteral("press"));
            filled.title = Desk::tr("Papers or cones changed");
            filled.caution = Desk::tr("Let the pressure off first. Rinse with plenty of water after every cleaner.");
            enter(std::move(filled));
        }
    }
    void begin() {
        BookForm filled = form(Deed::press_on);
        // As the last run was: one key and Enter begins it.
        if (house())
            for (const auto& run : house()->ledger().tables().presses) {
                filled.put(Key::from, QString::fromStdString(run.from));
                filled.put(Key::to, QString::fromStdString(run.to));
                filled.put(Key::aid, QString::fromStdString(run.aid));
            }
        filled.caution =
            Desk::tr("Run it at %1 or hotter. A press under pressure hurts: stand clear of the frames. Do not "
                     "breathe the dust of the aid.")
                .arg(figure(Temperature::fahrenheit(180), units(), 0).text());
        enter(std::move(filled));
    }
    void keepTyped(const QString& typed) {
        QString text = typed;
        const auto number = numberIn(text.replace(u',', u'.').toStdString());
        if (!number || *number < 0)
            return shell_.say(Desk::tr("%1 is not a pressure: type what the gauge shows.").arg(typed));
        const Pressure pressure = Pressure::pascal(toSi(*number, gaugeUnit()));
        if (!running_)
            return shell_.say(Desk::tr("No run is going on: begin one first."));
        const Instant now = session().now();
        if (session().openShift())
            shell_.keep(
                {Fact{.at = now, .what = Reading{Series::filter_pressure, pressure.pascal(), gaugeUnit(), "hand"}}});
        else // a reading belongs to a shift, and would begin one
            typed_.push_back({now, pressure});
        showHouse();
    }

    FilterScreen* screen_;
    std::vector<GaugeReading> typed_; // while no shift is open
    bool running_ = false;
    QTimer timer_;
};

} // namespace

Desk* filterDesk(Shell& shell) { return new FilterDesk{shell, new FilterScreen}; }

bool hasFilter(Shell& shell) {
    if (limitOf(shell.session()) || shell.picture().reading(Series::filter_pressure))
        return true;
    const auto house = shell.house().ledger();
    if (!house)
        return false;
    if (!house->ledger().tables().presses.empty() || openRun(*house))
        return true;
    const auto& vessels = house->ledger().vessels();
    return std::ranges::any_of(vessels, [](const Vessel& one) { return one.kind == VesselKind::filter; });
}

} // namespace panside
