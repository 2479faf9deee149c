#include "app/end_signal.h"

#include <QCoreApplication>
#include <csignal>
#include <fcntl.h>
#include <unistd.h>

namespace panside {
namespace {

// A signal may come at any moment; all that is allowed then is to write a byte.
int writeEnd = -1;
void onSignal(int) {
    const char byte = 0;
    [[maybe_unused]] const auto written = write(writeEnd, &byte, 1);
}

} // namespace

EndSignal::EndSignal() {
    if (pipe2(ends_, O_CLOEXEC | O_NONBLOCK) != 0)
        throw std::runtime_error{"no pipe can be made"};
    writeEnd = ends_[1];
    notifier_ = std::make_unique<QSocketNotifier>(ends_[0], QSocketNotifier::Read);
    QObject::connect(notifier_.get(), &QSocketNotifier::activated, [] { QCoreApplication::quit(); });
    for (const int number : {SIGINT, SIGTERM, SIGHUP})
        std::signal(number, onSignal);
}

EndSignal::~EndSignal() {
    for (const int number : {SIGINT, SIGTERM, SIGHUP})
        std::signal(number, SIG_DFL);
    notifier_.reset();
    close(ends_[0]);
    close(ends_[1]);
}

} // namespace panside
