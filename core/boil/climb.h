#pragma once
// How fast the sugar at the draw-off climbs between two draws, against how fast this pan climbs when all is well. With
// steady sap a section of the pan thickens by its share of the steam over what stands in it: by brix a second in
// inverse proportion to the depth. So a pan that climbs twice as fast as it ever did under the same fire has lost half
// of its depth, whoever goes on drawing from it. Plain numbers: no type names a brix a second.
#include "core/boil/fact.h"

#include <array>
#include <optional>

namespace panside {

struct State;

class Climb {
public:
    void absorb(const State& state, const Fact& fact);

    // Brix a second over the last minute or two; nullopt just after a draw, or where readings lack.
    std::optional<double> rate(Instant now) const;
    // The steepest that it climbed between two draws, the middle one of the last draws; nullopt before the third.
    std::optional<double> usual() const;
    // It climbs far steeper than usual, and is back at the mark far sooner: a pan that is being emptied. Once seen it
    // holds through the next draws, until a climb is as it used to be or takes as long.
    bool races() const { return races_; }

private:
    struct Point {
        Instant at{};
        float brix = 0;
    };
    struct Past {
        std::array<float, 7> values{};
        std::size_t count = 0;
    };
    void read(const State& state, double kelvin, Instant at);
    void judgeMean(double overMark, double brix, Instant at);
    void backAtMark(double overMark, Instant at);
    void add(double brix, Instant at);
    void forgetLine();
    void learn(Instant opened);
    void judge(Instant at);
    static void keep(Past& past, double value);
    static std::optional<double> middle(const Past& past, std::size_t fewest);

    static constexpr std::size_t size = 13;
    double sum_ = 0;
    int summed_ = 0;
    Instant summedFrom_{};
    std::array<float, 3> latest_{}; // means of ten seconds
    std::size_t latestCount_ = 0;
    std::array<Point, size> points_{}; // the highest so far, the first the latest
    std::size_t count_ = 0;
    Instant begunAt_{};
    std::optional<Instant> shutAt_, thinSince_, calmSince_;
    bool drawing_ = false, races_ = false;
    double rate_ = 0, steepest_ = 0, lowest_ = 0;
    int oddOnes_ = 0; // draws in a row
    Past steeps_, waits_;
};

} // namespace panside
