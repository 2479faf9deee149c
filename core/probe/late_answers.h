#pragma once
// Modbus RTU answers do not say which question they answer. A slave that is slower than was waited for answers the
// question before, in the midst of the next one, and a pan's number would be read as a pressure. So a slave that owes
// an answer is asked nothing but the same question again, until all that may still come must be past; and what was
// learned of its slowness is waited for from then on. Pure: no port, no clock of its own.
#include <chrono>
#include <cstddef>
#include <map>
#include <utility>

namespace panside {

class LateAnswers {
public:
    using Milliseconds = std::chrono::milliseconds;
    using Moment = Milliseconds; // since any beginning, never backwards

    // No answer comes later than this; common practice, no source.
    static constexpr Milliseconds latest{5000};

    // `questions`: how many each slave is asked. Where it is one only, no answer can be another's.
    LateAnswers(Milliseconds usual, std::map<int, int> questions) : usual_{usual}, questions_{std::move(questions)} {}

    // How long this slave's answer is to be waited for.
    Milliseconds patience(int slave) const;
    // False: an answer to another question may still come from it.
    bool mayAsk(int slave, std::size_t question, Moment now) const;

    void asked(int slave, std::size_t question, Moment now);
    void answered(int slave, Moment now); // in time, an exception too
    void timedOut(int slave, Moment now);
    // Bytes came while nothing was being waited for.
    void heardUnasked(Moment now);
    // The line was cut and joined anew.
    void forget() { slaves_.clear(); }

private:
    struct Slave {
        std::size_t question = 0;
        int owed = 0; // answers that may still come to `question`
        Moment first{}, last{}, rest{};
        Milliseconds slow{0}; // as late as it was seen to answer
    };
    Milliseconds usual_;
    std::map<int, int> questions_;
    std::map<int, Slave> slaves_;
    Moment unasked_{-latest}; // when bytes came last that nothing was waiting for, and whose they were taken for
    int unaskedFrom_ = 0;
};

} // namespace panside
