#pragma once
// What the ledger must know of a shift as a whole before it folds its rows: the feed tank's level through the night,
// which tellings of a draw count, and which check was taken of which draw.
#include "core/boil/density_check.h"
#include "core/boil/fact.h"
#include "core/boil/loads.h"

#include <map>
#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace panside {

// How far a level of the feed tank may be off, of a gauge or a dip stick.
Volume gaugeNoise(Volume level);

class ShiftAid {
public:
    // A draw as all its tellings say it; `twice` are rows that only told it again.
    // What a hydrometer was read in; the fact outlives this.
    struct Cup {
        CheckedSugar sugar;
        const DensityCheck* told;
    };
    struct Draw {
        std::size_t row; // the telling that counts
        DrawClosed told;
        std::optional<Instant> opened;
        std::vector<Cup> cups;
    };
    void add(const Fact& fact, std::size_t row);
    // So much came into the feed tank, by a row of the shift or of the day book; less than nothing: it was taken out.
    void came(Instant at, std::size_t row, Volume volume) { came_.push_back({at, volume.si(), row}); }
    // All that stood in a vessel came: how much that is only the fold knows, and tells it while it comes to the row.
    struct Whole {
        std::size_t row;
        std::string from;
    };
    void cameWhole(Instant at, std::size_t row, std::string from) {
        came(at, row, {});
        wholes_.push_back({row, std::move(from)});
    }
    const std::vector<Whole>& wholes() const { return wholes_; }
    void know(std::size_t row, Volume volume);
    // Sap that comes out of a vessel by a row of the shift, as told; no volume: all that is in it.
    struct Poured {
        Instant at;
        std::size_t row;
        std::string from;
        std::optional<Volume> volume;
    };
    const std::vector<Poured>& poured() const { return poured_; }
    // Does a gauge that is read shortly before and after show that the tank did not rise by it?
    bool passedBy(const Poured& poured, Volume volume) const;
    void finish();

    const Draw* drawAt(std::size_t row) const;
    bool isTwice(std::size_t row) const;
    std::optional<std::size_t> drawOfCheck(std::size_t row) const; // the row of its draw
    // Of the feed tank just before a row of a moment; nullopt where its level was never read. Rows of one moment stand
    // in their order: read, filled and read again within a minute.
    std::optional<Volume> levelAt(Instant at, std::size_t row) const;
    bool hasLevel() const { return !levels_.empty(); }
    Instant firstLevel() const { return levels_.front().at; } // where there is one
    bool hasFlow() const { return !flows_.empty(); }
    // What the feed meter let through from the shift's begin to a moment.
    Volume flowed(Instant to) const;
    Brix wanted() const { return wanted_; }
    const std::vector<Cup>& cups() const { return cups_; } // all of the shift
    // Rows of sap that was in the tank before it was told: the gauge shows it from the first, and does not rise when
    // the row comes.
    const std::vector<std::size_t>& toldLater() const { return toldLater_; }
    void findToldLater(); // anew, where it is known meanwhile how much came
    // The fire: rows of lighting and of the last load (SIZE_MAX: none), the loads, and their full cords where all the
    // wood is known.
    std::size_t litRow() const { return lit_; }
    std::size_t lastLoadRow() const { return lastLoad_; }
    int loads() const { return loadCount_; }
    std::optional<double> cords() const { return cords_; }
    double wood() const { return wood_; } // kg; 0: not all of it is known
    const std::string& woodKind() const { return woodKind_; }

private:
    struct Point {
        Instant at;
        double value;
        std::size_t row = 0;
        bool operator<(const Point& other) const { return std::pair{at, row} < std::pair{other.at, other.row}; }
    };
    struct Check {
        Instant at;
        std::size_t row;
        std::optional<Cup> cup;
    };
    struct Sap {
        Instant at;
        std::size_t row;
        double volume;
    };
    bool stoodBefore(const Sap& sap) const;
    std::vector<Point> levels_, flows_, came_;
    std::vector<Sap> saps_;
    std::vector<Whole> wholes_;
    std::vector<Poured> poured_;
    std::vector<std::size_t> toldLater_;
    std::vector<double> flowSum_; // m3 until each
    std::vector<Draw> draws_;
    std::vector<Instant> closedAt_;
    std::vector<std::size_t> twice_;
    std::vector<Check> checks_;
    std::vector<Cup> cups_;
    std::map<std::size_t, std::size_t> drawOf_; // rows of checks to rows of draws
    std::optional<Instant> opened_;
    Brix wanted_ = Brix::degrees(66.9);
    LoadsOfShift loads_;
    std::size_t lit_ = SIZE_MAX, lastLoad_ = SIZE_MAX;
    int loadCount_ = 0;
    std::optional<double> cords_;
    double wood_ = 0;
    std::string woodKind_;
    std::vector<std::pair<std::size_t, Fact>> closes_; // until finish
    std::vector<std::optional<Instant>> closesOpened_;
};

} // namespace panside
