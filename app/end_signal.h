#pragma once
#include <QSocketNotifier>
#include <memory>

namespace panside {

// Turns SIGINT, SIGTERM and SIGHUP into an ordinary end of the event loop, so that everything is kept first.
class EndSignal {
public:
    EndSignal();
    EndSignal(const EndSignal&) = delete;
    EndSignal& operator=(const EndSignal&) = delete;
    ~EndSignal();

private:
    int ends_[2];
    std::unique_ptr<QSocketNotifier> notifier_;
};

} // namespace panside
