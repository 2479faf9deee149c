#pragma once
// One trace, one way; no one outside this room includes it.
#include "core/ledger/trace_subject.h"

namespace panside {

class Tracer {
public:
    Tracer(const Ledger& ledger, const TraceSubject& subject)
        : ledger_{ledger}, thread_{ledger.thread()}, subject_{subject} {}
    std::vector<TraceEntry> behind();
    std::vector<TraceEntry> before();

private:
    void sweep();
    bool isPoint(KnotKind kind, bool back) const;
    void add(TraceKind kind, std::string name, Instant at, const Reach& reach);
    void addHoles();
    double through(const auto& isOne) const; // backward
    bool drainedOf(Knot knot, const auto& isOne) const;
    std::vector<TraceEntry> sorted();
    void addPoint(Knot knot, bool back);
    void addPoints(bool back);
    void addVessels(bool back);
    void addNights(bool back);
    void addDefoamers();
    void addLots();
    void addBuyers();
    Reach reachOf(std::size_t lot, const LotSize& size) const;
    bool isOf(Knot knot, KnotKind kind, std::size_t what) const {
        return thread_[knot].kind == kind && thread_[knot].what == what;
    }

    const Ledger& ledger_;
    const Thread& thread_;
    const TraceSubject& subject_;
    Volume volume_;
    std::vector<Reach> reach_;
    std::vector<Knot> reached_; // of them all
    std::vector<TraceEntry> entries_;
    bool exact_ = true;
};

} // namespace panside
