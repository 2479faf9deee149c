#pragma once
// A port under trial: what it gave, held against what was really sent, and how soon it came back.
#include "core/boil/vocabulary.h"
#include "core/probe/line_port.h"
#include "tests/battery/rows.h"
#include "tests/core/probe/pty.h"

#include <QLoggingCategory>
#include <cmath>
#include <map>

namespace battery {

using panside::Pty;

// What each reading really was at any moment of the case: anything else that is read is a wrong number.
using Truth = std::map<panside::Series, std::vector<double>>; // celsius

class Ears {
public:
    template <class Port>
    static std::unique_ptr<Ears> at(const panside::PortRule& rule, Truth truth, const std::string& byId = "/nowhere") {
        panside::needEventLoop();
        QLoggingCategory::setFilterRules(QStringLiteral("qt.modbus*=false"));
        std::unique_ptr<Ears> ears{new Ears{std::move(truth)}};
        ears->port_ = std::make_unique<Port>(rule, ears->wiring(), panside::PortFinder{byId});
        ears->port_->start();
        return ears;
    }
    int readings() const { return readings_; }
    const std::string& wrong() const { return wrong_; } // the first number that was not so
    panside::PortStatus status() const { return port_->status(); }
    bool is(panside::PortState state) const { return status().state == state; }
    // What a line or an answer from now on may say as well.
    void alsoTrue(panside::Series series, double celsius) { truth_[series].push_back(celsius); }

private:
    explicit Ears(Truth truth) : truth_{std::move(truth)} {}
    panside::SerialPort::Wiring wiring() {
        return {.now = [] { return panside::Instant{}; },
                .deliver = [this](const panside::Fact& fact) { add(std::get<panside::Reading>(fact.what)); },
                .changed = [] {},
                .heard = {}};
    }
    void add(const panside::Reading& reading) {
        ++readings_;
        const double celsius = reading.si - 273.15;
        for (const double is : truth_[reading.series])
            if (std::abs(is - celsius) < 1e-6)
                return;
        if (wrong_.empty())
            wrong_ = std::string{panside::rowOf(reading.series).name} + " was read as " + std::to_string(celsius);
    }
    Truth truth_;
    int readings_ = 0;
    std::string wrong_;
    std::unique_ptr<panside::SerialPort> port_;
};

constexpr int soon = 2000;               // milliseconds within which a port is to be read again
constexpr int whileNothingComes = 60000; // only waited for where something does not hold

// From now on `feed` is called again and again until one more reading has come: what did not hold.
inline std::string resumes(const Case& c, Ears& ears, const std::function<void()>& feed, int within = soon) {
    const int before = ears.readings();
    QElapsedTimer took;
    took.start();
    const bool came = panside::waitFor(
        [&] {
            feed();
            return ears.readings() > before;
        },
        whileNothingComes);
    if (!ears.wrong().empty())
        return ears.wrong();
    if (!came)
        return "not read again: " + sentence(ears.status());
    if (!c.brief && took.elapsed() > within)
        return "read again after " + std::to_string(took.elapsed()) + " ms";
    return {};
}

// Calls `feed` at most every so many milliseconds: a probe speaks at its own pace.
inline std::function<void()> paced(int milliseconds, std::function<void()> feed) {
    auto clock = std::make_shared<QElapsedTimer>();
    return [=] {
        if (clock->isValid() && clock->elapsed() < milliseconds)
            return;
        clock->start();
        feed();
    };
}

// Runs the event loop for so long, and `feed` with it.
inline void goOnFor(
    int milliseconds, const std::function<void()>& feed = [] {}) {
    panside::waitFor(
        [&] {
            feed();
            return false;
        },
        milliseconds);
}

} // namespace battery
