#pragma once
#include "core/probe/probe_source.h"
#include "core/shift/session.h"
#include "core/shift/typed_rows.h"
#include "ui/ledger/house.h"

#include <QObject>
#include <QSocketNotifier>
#include <QTimer>
#include <functional>
#include <iosfwd>
#include <memory>

namespace panside {

// A boil without a screen: rows from standard input and a probe into the session, a line of JSON out at each whole
// second. Where the input ends it goes on as long as there is a probe; without one it says the last picture and ends.
class Tending : public QObject {
    Q_OBJECT
public:
    Tending(Session& session, std::optional<ProbeFile> probe, std::ostream& out, std::ostream& err);
    void start();
    // Who else is told each picture that goes out.
    void tell(std::function<void(const Picture&)> other) { other_ = std::move(other); }
    // By its ledger the tanks that no gauge reads call; it is read at the start and whenever a row may change them.
    void hear(House& house);
    // 0, or what went wrong with the output.
    int exitStatus() const { return exitStatus_; }

private:
    void readInput();
    void enter(std::vector<TypedRows::Row> rows);
    void inputEnded();
    void say(Instant moment);
    void onTheSecond();
    void waitForTheSecond();
    void sayState(const PortStatus& status);

    Session& session_;
    House* house_ = nullptr;
    std::function<void(const Picture&)> other_;
    std::ostream& out_;
    std::ostream& err_;
    std::unique_ptr<ProbeSource> probe_;
    std::map<std::string, PortState> lastState_;
    QSocketNotifier input_;
    QTimer second_;
    TypedRows typed_;
    std::optional<Instant> lastSaid_;
    std::string trouble_;
    int exitStatus_ = 0;
};

} // namespace panside
