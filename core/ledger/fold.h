#pragma once
// The fold itself; no one outside this room includes it.
#include "core/boil/day_vocabulary.h"
#include "core/ledger/book_rows.h"
#include "core/ledger/ledger.h"
#include "core/ledger/shift_aid.h"

#include <set>

namespace panside {

struct Ledger::Fold {
    explicit Fold(LedgerInput given);
    void run();

    // What leaves a vessel: the liquid, and the strands that lead back.
    struct Taken {
        Liquid liquid;
        std::vector<Strand> strands;
        Taint taint;
        std::optional<Instant> oldest;
        std::optional<Temperature> temperature, coldest, warmest;
        std::optional<Instant> temperatureTold;
        Duration over40F{0}, over50F{0};
        bool sugarAssumed = false;
        bool volumeUntold = false;
        bool unseen = false;              // it must have been there, and nobody saw it so full
        std::optional<Silence> unwritten; // all of a vessel of which nobody knows how much it holds
    };
    // A volume is at 20 degC; none: all of it.
    Taken pour(std::size_t vessel, std::optional<Volume> volume);
    Taken pourBeyond(std::size_t vessel, double litres);
    Taken takeShare(Vessel& vessel, double share);
    void put(std::size_t vessel, const Taken& what, int night = -1);
    void dip(std::size_t vessel, Volume volume, std::optional<Brix> sugar, Instant at);
    void scaleUp(std::size_t vessel, const Liquid& all, Instant at);
    void measured(std::size_t vessel, const Liquid& all, bool sugarAssumed);
    void empty(Vessel& vessel);
    static void holdIn(Vessel& vessel, Volume volume);
    static void feel(Vessel& vessel, std::optional<Temperature> told);
    void warm(Vessel& vessel, Instant at);
    Taken source(GatheredRow row, KnotKind kind);
    Taken unwritten(const Vessel& vessel, const Liquid& liquid);
    std::size_t vessel(std::string_view name, bool declare = true);
    std::optional<std::size_t> known(std::string_view name) const;
    std::size_t feed();
    // A row's volume at 20 degC, for liquid of a sugar.
    Volume at20(const DayRow& row, Brix sugar) const;

    // shift rows
    void shiftRow(const Fact& fact);
    void fireRow(Night& night, const ShiftAid& aid);
    void night(int shift);
    void sync();
    void readFeed(const ShiftAid& aid);
    void knowPoured(ShiftAid& aid);
    void intoPans(Volume volume);
    void intoPans(const Taken& taken);
    void sapIn(const SapIn& sap);
    bool isOfFeed(const SapIn& sap) const { return !feedTank.key().empty() && nameKey(sap.from) == feedTank.key(); }
    void standsInFeed(const SapIn& sap, std::optional<Brix> read);
    void foldToldLater(const ShiftAid& aid);
    void drawClosed();
    Taken drawn(const ShiftAid::Draw& draw, DrawRow& told);
    void checked(const DensityCheck& check);
    void shiftOver();
    // A measured draw leaves the pans: its knot, and its strands where nobody saw its sugar go in.
    Knot fromPans(Taken& draw, Brix sd);
    void defoamer(const Defoamer& drops);
    void tiePans(std::span<const Strand> strands, double sugar);
    struct Density {
        Brix sugar, sd, alone; // alone: of this draw for itself
    };
    Density densityOf(const ShiftAid::Draw& draw) const;
    Brix chartApart(const ShiftAid::Draw& draw) const;

    // day book rows
    void dayRow(const DayRow& row);
    void declare(const DayRow& row);
    void gathered(const DayRow& row);
    void moved(const DayRow& row);
    void dipped(const DayRow& row);
    void concentrated(const DayRow& row);
    void bought(const DayRow& row);
    void sold(const DayRow& row);
    void lost(const DayRow& row);
    void pansEmptied(const DayRow& row);
    void drainPans(const DayRow& row);
    Liquid drainedInto(const DayRow& row, double sugar, double doubt) const;
    void cutPress();
    void pressOn(const DayRow& row);
    void gauge(const Fact& fact);
    InstrumentRow& instrument(std::string_view name);
    void instruments(const Fact& fact);
    void pressOff(const DayRow& row);
    void pressEnds(const DayRow& row); // what `row` does not say is as the run began
    void pressed(PressRow run, const DayRow& row, std::size_t from, std::size_t to);
    void graded(const DayRow& row);
    void packed(const DayRow& row);
    void shipped(const DayRow& row);
    void cleaned(const DayRow& row);
    void tested(const DayRow& row);
    void set(const Set& set);
    LotSize* sizeOf(Lot& lot, const DayRow& row);
    void judge(Lot& lot, const DayRow& row, const Liquid& content);
    void judgeHeat(Lot& lot, const DayRow& row);
    std::size_t lotOf(const DayRow& row, std::size_t from);
    void fill(std::size_t lot, const DayRow& row, const Taken& taken, const std::string& from);
    void deliver(std::size_t lot, LotSize& size, bool sizeKnown, const DayRow& row);
    void lose(std::string why, std::string from, const Liquid& liquid, std::span<const Strand> strands);
    void mark(MarkKind kind, std::string name = {}, std::optional<double> amount = {}, std::optional<double> limit = {},
              std::optional<Instant> before = {}, std::string more = {});
    void markTaint(const std::string& name, const Taint& taint);
    void offComesIn(std::size_t to, const Taken& what);

    bool isTold(std::size_t index) const;
    void prepare();
    void findSilences();
    void passSilence();
    double pansMost() const; // sugar that may be in the pans after a silence, kg
    void finish();

    LedgerInput in;
    std::size_t line = 0; // of its rows, that is being folded
    Instant now{};
    std::vector<ShiftAid> aids;
    std::vector<std::size_t> ends; // of each shift's rows, the last one
    struct FoundSilence {
        std::size_t before; // this row
        Silence span;
        bool isLong;
    };
    std::vector<FoundSilence> silences;
    std::size_t nextSilence = 0;
    Thread thread;
    std::vector<Vessel> vessels;
    std::unordered_map<std::string, std::size_t> names;
    std::vector<Lot> lots;
    std::unordered_map<std::string, std::size_t> codes;
    std::vector<Night> nights;
    std::vector<int> nightOf; // by shift; -1: none yet
    LedgerTables tables;
    std::vector<LedgerMark> marks;
    Balance20 balance;
    double closeVariance = 0;
    std::optional<Brix> leastSet, mostSet;

    std::optional<std::size_t> feedVessel;
    int current = -1; // shift whose rows are folded
    int pan = 0;      // pans and sides so far
    FeedTank feedTank;
    Volume toldOfFeed; // by rows that bring sap out of it into itself
    bool feedDipped = false;
    std::set<std::size_t> putBack; // rows of pails that go past the feed tank into the pans
    Volume flowed;                 // of the shift, that has entered the pans
    Liquid enteredAtLit;           // the pans, of the shift, when it was lit

    Liquid pans;
    Knot pansKnot = noKnot;
    Taint pansTaint;
    std::vector<std::size_t> inPans; // defoamers that are in them
    std::optional<Instant> pansOldest, pansSince;
    double pansInSd = 0, pansOutSd = 0; // kg: of one glass each, so they add up
    std::optional<Silence> pansUnwritten;
    bool pansShort = false; // more sugar was drawn than the book had in them
    double pansOwed = 0;    // kg, by how much, since they were last emptied
    struct Drained {
        Instant at{};
        double sugar = 0, volume = 0; // m3 of all its rows
        int pails = 0;
        Knot knot = noKnot;
        bool short_ = false;
        double doubt = 0; // kg of sugar, one standard deviation, of what was not written
        Taint taint;
    };
    std::optional<Drained> draining;

    struct Press {
        bool open = false;
        bool told = false;              // some run is: a house that writes none is asked about none
        std::optional<Instant> pressed; // since then the gauge shows pressure outside of a run
        bool asked = false;             // and it was said
        PressRow run;
        Liquid heel;
        Knot last = noKnot;
        Taint taint;
    } press;
};

} // namespace panside
