#include "core/probe/late_answers.h"

#include <algorithm>

namespace panside {
namespace {

using Milliseconds = LateAnswers::Milliseconds;

constexpr Milliseconds rest{1000}; // after a time-out: nearly every late answer has come by then
constexpr Milliseconds gap{100};   // silence after a late answer's last byte

} // namespace

Milliseconds LateAnswers::patience(int slave) const {
    const auto found = slaves_.find(slave);
    const auto slow = found == slaves_.end() ? Milliseconds{0} : found->second.slow;
    return std::min(latest, std::max(usual_, slow * 3 / 2));
}

bool LateAnswers::mayAsk(int slave, std::size_t question, Moment now) const {
    const auto found = slaves_.find(slave);
    const auto questions = questions_.find(slave);
    if (found == slaves_.end() || (questions != questions_.end() && questions->second == 1))
        return true;
    return now >= found->second.rest && (found->second.owed == 0 || question == found->second.question);
}

void LateAnswers::asked(int slave, std::size_t question, Moment now) {
    Slave& asked = slaves_[slave];
    // What was asked long ago is answered no more.
    if (now - asked.last > latest)
        asked.owed = 0;
    if (asked.owed == 0)
        asked.first = now;
    asked.first = std::max(asked.first, now - latest);
    asked.question = question;
    asked.last = now;
    ++asked.owed;
}

void LateAnswers::answered(int slave, Moment now) {
    Slave& answering = slaves_[slave];
    --answering.owed;
    if (answering.owed <= 0) {
        answering.owed = 0;
        return;
    }
    // Whether it answered the first asking or the last cannot be told. If the first, it is so slow, and the answers to
    // the others come after so long.
    const auto slow = std::min(latest, now - answering.first);
    answering.rest = answering.last + slow + gap;
    answering.owed = 0;
}

void LateAnswers::timedOut(int slave, Moment now) {
    Slave& silent = slaves_[slave];
    silent.rest = now + rest;
    // It may only be slow: waited for twice as long next time, and no more, lest a dead one hold up the others.
    silent.slow = std::max(silent.slow, usual_ * 4 / 3);
}

void LateAnswers::heardUnasked(Moment now) {
    const bool goesOn = now - unasked_ < gap;
    unasked_ = now;
    if (goesOn) { // of the same answer
        if (const auto found = slaves_.find(unaskedFrom_); found != slaves_.end())
            found->second.rest = std::max(found->second.rest, now + gap);
        return;
    }
    unaskedFrom_ = -1;
    const auto owes = [&](const auto& one) { return one.second.owed > 0 && now - one.second.last <= latest; };
    if (std::ranges::count_if(slaves_, owes) != 1)
        return; // whose it was cannot be told: the rest is waited for
    auto& [number, late] = *std::ranges::find_if(slaves_, owes);
    unaskedFrom_ = number;
    if (late.owed == 1)
        late.slow = std::min(latest, std::max(late.slow, now - late.last));
    --late.owed;
    late.rest = late.owed > 0 ? late.rest : now + gap;
}

} // namespace panside
