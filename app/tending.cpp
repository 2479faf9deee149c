#include "app/tending.h"

#include "app/commands.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cerrno>
#include <ostream>
#include <unistd.h>

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr std::string_view source = "standard input";

Instant wholeSecond(Instant moment) { return std::chrono::floor<std::chrono::seconds>(moment); }

} // namespace

Tending::Tending(Session& session, std::optional<ProbeFile> probe, std::ostream& out, std::ostream& err)
    : session_{session}, out_{out}, err_{err}, input_{STDIN_FILENO, QSocketNotifier::Read} {
    if (probe)
        probe_ = std::make_unique<ProbeSource>(std::move(*probe), [this] { return session_.now(); });
    input_.setEnabled(false);
    connect(&input_, &QSocketNotifier::activated, this, &Tending::readInput);
    second_.setSingleShot(true);
    second_.setTimerType(Qt::PreciseTimer);
    connect(&second_, &QTimer::timeout, this, &Tending::onTheSecond);
}

void Tending::start() {
    if (probe_) {
        connect(probe_.get(), &ProbeSource::fact, this, [this](const Fact& fact) { session_.read(fact); });
        connect(probe_.get(), &ProbeSource::status, this,
                [this](std::size_t, const PortStatus& status) { sayState(status); });
        probe_->start();
    }
    input_.setEnabled(true);
    waitForTheSecond();
}

void Tending::hear(House& house) {
    house_ = &house;
    connect(house_, &House::changed, this, [this] { session_.knows(house_->ledger()); });
    house_->ask();
}

void Tending::readInput() {
    std::array<char, 1 << 16> piece;
    const auto count = read(STDIN_FILENO, piece.data(), piece.size());
    if (count > 0) {
        enter(typed_.feed({piece.data(), static_cast<std::size_t>(count)}, session_.now()));
    } else if (count == 0 || (errno != EAGAIN && errno != EINTR)) {
        enter(typed_.end(session_.now()));
        inputEnded();
    }
}

void Tending::enter(std::vector<TypedRows::Row> rows) {
    std::vector<Fact> facts;
    std::vector<std::size_t> lines;
    for (auto& row : rows) {
        if (const auto* fault = std::get_if<Fault>(&row.what)) {
            err_ << sentence(*fault, source) << '\n';
        } else {
            facts.push_back(std::move(std::get<Fact>(row.what)));
            lines.push_back(row.line);
        }
    }
    if (facts.empty()) {
        err_.flush();
        return;
    }
    const bool fills = std::ranges::any_of(facts, fillsTanks);
    const auto answers = session_.enter(std::move(facts));
    if (house_ && fills)
        house_->ask();
    for (std::size_t i = 0; i < answers.size(); ++i)
        if (const auto* refused = std::get_if<Session::Refused>(&answers[i]))
            err_ << source << ':' << lines[i] << ": " << english(refused->why) << '\n';
    err_.flush();
}

void Tending::inputEnded() {
    input_.setEnabled(false);
    if (probe_)
        return;
    second_.stop();
    if (house_)
        house_->wait();
    const Facts& facts = session_.boil().facts();
    const auto last = facts.empty() ? session_.now() : facts.at(facts.size() - 1);
    say(std::chrono::ceil<std::chrono::seconds>(last));
    QCoreApplication::quit();
}

void Tending::waitForTheSecond() {
    const auto now = session_.now();
    const auto left = wholeSecond(now) + 1s - now;
    // A little past it, so that what arrived within the second is in.
    second_.start(std::chrono::ceil<std::chrono::milliseconds>(left) + 5ms);
}

void Tending::onTheSecond() {
    session_.tick();
    say(wholeSecond(session_.now()));
    waitForTheSecond();
}

void Tending::say(Instant moment) {
    if (lastSaid_ && moment <= *lastSaid_ && second_.isActive())
        return;
    lastSaid_ = moment;
    std::string line;
    const Picture picture = session_.pictureAt(moment);
    appendJson(line, picture);
    if (other_)
        other_(picture);
    out_ << line << '\n' << std::flush;
    if (!out_) {
        exitStatus_ = status::machineFailed;
        QCoreApplication::quit();
    }
    if (auto trouble = session_.trouble(); trouble != trouble_) {
        trouble_ = std::move(trouble);
        err_ << (trouble_.empty() ? "What was held back is kept now." : trouble_) << std::endl;
    }
}

void Tending::sayState(const PortStatus& status) {
    const auto [place, isFirst] = lastState_.try_emplace(status.device, PortState::starting);
    if (place->second == status.state)
        return;
    place->second = status.state;
    err_ << sentence(status) << std::endl;
}

} // namespace panside
