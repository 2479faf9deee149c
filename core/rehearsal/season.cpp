#include "core/rehearsal/season.h"

#include "core/boil/shift_log.h"
#include "core/physics/sugar_density.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <random>

namespace panside {
namespace {

double kgPerLitre(double brix) { return sugarDensity(Brix::degrees(brix), Temperature::celsius(20))->si() * 1e-3; }

// The truth of a liquid: mass, and sugar by where it is from.
struct Box {
    double mass = 0;
    std::map<std::string, double> from;
    double sugar() const {
        double all = 0;
        for (const auto& [name, kg] : from)
            all += kg;
        return all;
    }
    double brix() const { return mass > 0 ? sugar() / mass * 100 : 0; }
    double litres() const { return mass > 0 ? mass / kgPerLitre(brix()) : 0; }
    Box part(double share) const {
        Box some{mass * share, {}};
        for (const auto& [name, kg] : from)
            some.from[name] = kg * share;
        return some;
    }
    void add(const Box& more) {
        mass += more.mass;
        for (const auto& [name, kg] : more.from)
            from[name] += kg;
    }
    Box pour(double litre) {
        const double share = std::min(1.0, litre / litres());
        Box some = part(share);
        *this = part(1 - share);
        return some;
    }
};

// Writes what the crew does, and does it.
class MadeHouse {
public:
    // All times are those of a spring whose first of March is this day.
    MadeHouse(std::string name, std::uint64_t seed, std::chrono::sys_days first) : first_{first}, dice_{seed} {
        season.house = std::move(name);
    }

    double between(double low, double high, double step) {
        return std::round(std::uniform_real_distribution<double>{low, high}(dice_) / step) * step;
    }
    std::chrono::sys_days dayOf(int month, int day) const {
        using namespace std::chrono;
        const auto since = [](int m, int d) { return sys_days{year{2027} / m / d}; };
        return first_ + (since(month, day) - since(3, 1));
    }
    std::string at(int month, int day, double hour) const {
        const Instant moment = dayOf(month, day) + std::chrono::minutes{std::lround(hour * 60)};
        return textOf(moment);
    }
    // The year and the day of it.
    std::string lotCode(int month, int day) const {
        using namespace std::chrono;
        const year_month_day date{dayOf(month, day)};
        const auto dayOfYear = dayOf(month, day) - sys_days{date.year() / January / 1} + days{1};
        return fmt::format("{:02}-{:03}", static_cast<int>(date.year()) % 100, dayOfYear.count());
    }
    void write(const std::string& time, const std::string& row) { book_.push_back(time + "," + row); }
    void vessel(const std::string& name, const std::string& kind, double litres) {
        write(at(3, 1, 6), fmt::format("vessel,{},L,name={};kind={}", litres, name, kind));
        boxes[name];
    }
    void gather(const std::string& time, const std::string& to, const std::string& from, double litres, double brix) {
        const std::string name = fmt::format("{} {}", from, time.substr(5, 5));
        write(time, fmt::format("gathered,{},L,to={};from={};brix={:.1f};temp=4degC", litres, to, name, brix));
        // Measured at 4 degC.
        const double mass = litres * sugarDensity(Brix::degrees(brix), Temperature::celsius(4))->si() * 1e-3;
        boxes[to].add({mass, {{name, mass * brix / 100}}});
    }
    void buy(const std::string& time, const std::string& vessel, const std::string& from, double litres, double brix) {
        write(time, fmt::format("bought,{},L,what=syrup;from={};vessel={};brix={:.1f}", litres, from, vessel, brix));
        const double mass = litres * kgPerLitre(brix);
        boxes[vessel].add({mass, {{from, mass * brix / 100}}});
    }
    void move(const std::string& time, const std::string& from, const std::string& to, double litres = 0) {
        const std::string amount = litres > 0 ? fmt::format("{},L", litres) : ",";
        write(time, fmt::format("moved,{},from={};to={}", amount, from, to));
        boxes[to].add(boxes[from].pour(litres > 0 ? litres : boxes[from].litres()));
    }
    void concentrate(const std::string& time, const std::string& from, const std::string& to, double litres,
                     double brix) {
        write(time, fmt::format("concentrated,{},L,from={};to={};brix={}", litres, from, to, brix));
        const double mass = litres * kgPerLitre(brix), sugar = mass * brix / 100;
        Box taken = boxes[from].part(sugar / boxes[from].sugar());
        boxes[from] = boxes[from].part(1 - sugar / boxes[from].sugar());
        taken.mass = mass;
        boxes[to].add(taken);
    }
    void lose(const std::string& time, const std::string& from, double litres, const std::string& why) {
        write(time, fmt::format("lost,{:.1f},L,from={};why={}", litres, from, why));
        boxes[from].pour(litres);
    }
    // One boil: everything of `tank` goes into the feed tank, and `leave` litres stay in it.
    void boil(int month, int day, const std::string& tank, double leave,
              const std::vector<std::pair<std::string, double>>& draws, bool butter = false) {
        std::string log = "time,what,value,unit,detail\n";
        const auto row = [&](double hour, const std::string& what) { log += at(month, day, hour) + "," + what + "\n"; };
        const double begin = 17;
        const double before = boxes["feed"].litres();
        if (before > 0.05)
            row(begin, fmt::format("tank_level,{:.6f},L,", before));
        row(begin + 0.1, fmt::format("sap_in,,,from={}", tank));
        boxes["feed"].add(boxes[tank].pour(boxes[tank].litres()));
        row(begin + 0.2, fmt::format("tank_level,{:.6f},L,", boxes["feed"].litres()));
        row(begin + 0.3, "lit,,,");
        const double all = boxes["feed"].litres() - leave;
        double hour = begin + 2;
        for (std::size_t i = 0; i < draws.size(); ++i, hour += 1.5) {
            enter(all / static_cast<double>(draws.size() + 1));
            row(hour, fmt::format("tank_level,{:.6f},L,", boxes["feed"].litres()));
            if (butter && i == 0) {
                row(hour, "defoamer,2,,kind=butter");
                milk_ = true;
            }
            row(hour, "draw_open,,,");
            row(hour + 0.1, fmt::format("tank_level,{:.6f},L,", boxes["feed"].litres()));
            const auto& [to, litres] = draws[i];
            const double brix = between(66.0, 68.0, 0.1);
            row(hour + 0.1, fmt::format("draw_close,{:.1f},L,to={};temp=20degC", litres, to));
            row(hour + 0.2, fmt::format("density_check,{:.1f},brix,temp=60degF;cal=60degF", brix));
            // The glass says so much at 60 degF; sugar by mass is the same at any temperature.
            const double mass = litres * kgPerLitre(brix), sugar = mass * brix / 100;
            Box drawn = pans_.part(sugar / pans_.sugar());
            pans_ = pans_.part(1 - sugar / pans_.sugar());
            drawn.mass = mass;
            boxes[to].add(drawn);
            milky_[to] = milky_[to] || milk_;
        }
        enter(boxes["feed"].litres() - leave);
        row(hour, fmt::format("tank_level,{:.6f},L,", boxes["feed"].litres()));
        row(hour + 0.1, "shutdown,,,");
        row(hour + 1, "shift_end,,,");
        season.shifts.push_back(std::move(log));
    }
    double sugarInPans() const { return pans_.sugar(); }
    void emptyPans(const std::string& time, const std::vector<std::pair<std::string, double>>& pails) {
        double all = 0;
        for (const auto& [to, litres] : pails)
            all += litres;
        for (const auto& [to, litres] : pails) {
            write(time, fmt::format("pans_emptied,{},L,to={};washed=yes", litres, to));
            Box drained = pans_.part(litres / all);
            // What a litre weighs that holds so much sugar: found by halving.
            double low = 0, high = 75;
            for (int i = 0; i < 60; ++i)
                (litres * kgPerLitre((low + high) / 2) * (low + high) / 200 < drained.sugar() ? low : high) =
                    (low + high) / 2;
            drained.mass = litres * kgPerLitre(high);
            boxes[to].add(drained);
        }
        pans_ = {};
        milk_ = false;
    }
    void press(const std::string& time, const std::string& later, const std::string& from, const std::string& to,
               double litres, double heel, const std::string& aid) {
        write(time, fmt::format("press_on,,,from={};to={};aid={};temp=86degC", from, to, aid));
        write(later, fmt::format("press_off,{},L,heel={}L;result=clear", litres, heel));
        Box through = boxes[from].pour(litres);
        through.add(press_);
        press_ = through.part(heel / through.litres());
        through = through.part(1 - heel / through.litres());
        boxes[to].add(through);
        milky_[to] = milky_[to] || milky_[from];
    }
    void pack(const std::string& time, const std::string& lot, const std::string& from, int count,
              const std::string& size, double litres, int broken) {
        write(time, fmt::format("packed,{},,lot={};from={};size={};of=glass;filler=86degC;capped=83degC;broken={}",
                                count, lot, from, size, broken));
        Box all = boxes[from].pour(litres * (count + broken));
        const Box good = all.part(static_cast<double>(count) / (count + broken));
        TrueLot& its = season.lots[lot];
        its.content.litres += litres * count;
        its.content.sugar += good.sugar();
        for (const auto& [name, kg] : good.from)
            its.content.from[name] += kg;
        its.made += count;
        its.milk = its.milk || milky_[from];
    }
    void moveMilk(const std::string& from, const std::string& to) { milky_[to] = milky_[to] || milky_[from]; }
    void ship(const std::string& time, const std::string& lot, const std::string& size, int count,
              const std::string& buyer) {
        write(time, fmt::format("shipped,{},,lot={};size={};to={};price=9.50", count, lot, size, buyer));
        season.lots[lot].buyers[buyer] += count;
    }
    void back(const std::string& time, const std::string& lot, const std::string& size, int count,
              const std::string& buyer) {
        write(time, fmt::format("came_back,{},,lot={};size={};from={};why=cloudy", count, lot, size, buyer));
        season.lots[lot].buyers[buyer] -= count;
    }
    MadeSeason finish() {
        std::ranges::stable_sort(book_, [](const auto& a, const auto& b) { return a.substr(0, 20) < b.substr(0, 20); });
        season.dayBook = "time,what,value,unit,detail\n";
        for (const std::string& row : book_)
            season.dayBook += row + "\n";
        for (const auto& [name, box] : boxes)
            season.vessels[name] = contentOf(box);
        season.pans = contentOf(pans_);
        return std::move(season);
    }

    std::map<std::string, Box> boxes;
    MadeSeason season;

private:
    static TrueContent contentOf(const Box& box) {
        TrueContent content{box.litres(), box.sugar(), {}};
        for (const auto& [from, kg] : box.from)
            if (kg > 1e-12)
                content.from[from] = kg;
        return content;
    }
    void enter(double litres) {
        if (litres > 1e-9)
            pans_.add(boxes["feed"].pour(litres));
    }
    std::chrono::sys_days first_;
    std::mt19937_64 dice_;
    std::vector<std::string> book_;
    Box pans_, press_;
    bool milk_ = false;
    std::map<std::string, bool> milky_;
};

std::string jsonOf(const TrueContent& content) {
    std::string from;
    for (const auto& [name, kg] : content.from)
        from +=
            fmt::format("{}\"{}\":{:.9g}", from.empty() ? "" : ",", name, content.sugar > 0 ? kg / content.sugar : 0);
    return fmt::format("\"litres\":{:.6f},\"sugarKg\":{:.6f},\"from\":{{{}}}", content.litres, content.sugar, from);
}

} // namespace

std::string MadeSeason::truth() const {
    std::string vesselTexts, lotTexts;
    for (const auto& [name, content] : vessels)
        vesselTexts += fmt::format("{}\n  \"{}\":{{{}}}", vesselTexts.empty() ? "" : ",", name, jsonOf(content));
    for (const auto& [code, lot] : lots) {
        std::string buyers;
        for (const auto& [buyer, count] : lot.buyers)
            buyers += fmt::format("{}\"{}\":{}", buyers.empty() ? "" : ",", buyer, count);
        lotTexts += fmt::format("{}\n  \"{}\":{{{},\"made\":{},\"milk\":{},\"buyers\":{{{}}}}}",
                                lotTexts.empty() ? "" : ",", code, jsonOf(lot.content), lot.made, lot.milk, buyers);
    }
    return fmt::format("{{\"house\":\"{}\",\n\"vessels\":{{{}}},\n\"pans\":{{{}}},\n\"lots\":{{{}}}}}\n", house,
                       vesselTexts, jsonOf(pans), lotTexts);
}

MadeSeason smallHouse(std::uint64_t seed, std::chrono::sys_days first) {
    MadeHouse house{"small", seed, first};
    house.write(house.at(3, 1, 6), "set,Vermont,,key=place");
    house.vessel("barrel", "hold", 400);
    house.vessel("feed", "feed", 3000); // an evening that is rehearsed fills it
    for (const char* name : {"pail 1", "pail 2", "pail 3", "pail 4"})
        house.vessel(name, "pail", 20);
    house.vessel("kettle", "canner", 40);
    for (int night = 0; night < 4; ++night) {
        const int day = 5 + 4 * night;
        house.gather(house.at(3, day, 9), "barrel", "buckets", house.between(120, 200, 5),
                     house.between(1.8, 2.6, 0.1));
        house.gather(house.at(3, day, 14), "barrel", "school side", house.between(40, 90, 5),
                     house.between(1.8, 2.6, 0.1));
        const std::string pail = fmt::format("pail {}", night + 1);
        house.boil(3, day, "barrel", 20, {{pail, house.between(0.7, 1.0, 0.1)}, {pail, house.between(0.8, 1.0, 0.1)}},
                   night == 1);
        if (night == 2) { // scorched: thrown away, and no more of it is seen
            house.lose(house.at(3, day + 1, 9), pail, 0.5, "scorched");
        }
        house.move(house.at(3, day + 1, 10), pail, "kettle");
        house.moveMilk(pail, "kettle");
        const std::string code = house.lotCode(3, day + 1);
        house.pack(house.at(3, day + 1, 12), code, "kettle", 2, "1pt", 0.473176473, night == 0 ? 1 : 0);
        house.ship(house.at(3, day + 2, 12), code, "1pt", 2, night % 2 ? "the desk" : "a class");
    }
    return house.finish();
}

MadeSeason largeHouse(std::uint64_t seed) {
    MadeHouse house{"large", seed, spring2027};
    house.write(house.at(3, 1, 6), "set,Ontario,,key=place");
    for (const char* name : {"north tank", "south tank"})
        house.vessel(name, "gather", 8000);
    house.vessel("house tank", "hold", 12000);
    house.vessel("concentrate", "concentrate", 4000);
    house.vessel("feed", "feed", 3000);
    for (int i = 1; i <= 12; ++i)
        house.vessel(fmt::format("drum {}", i), "drum", 205);
    for (int i = 1; i <= 3; ++i)
        house.vessel(fmt::format("pail {}", i), "pail", 50);
    house.vessel("filter tank", "filter", 205);
    house.vessel("canner", "canner", 205);
    int drum = 1;
    const std::vector<int> nights{3, 4, 6, 9, 10, 20, 21, 24}; // between the 10th and the 20th nobody wrote anything
    for (std::size_t n = 0; n < nights.size(); ++n) {
        const int day = nights[n];
        house.gather(house.at(3, day, 8), "north tank", "north bush", house.between(2500, 4000, 50),
                     house.between(1.8, 2.6, 0.1));
        house.gather(house.at(3, day, 9), "south tank", "south bush", house.between(1500, 3000, 50),
                     house.between(1.8, 2.6, 0.1));
        house.move(house.at(3, day, 10), "north tank", "house tank");
        house.move(house.at(3, day, 11), "south tank", "house tank", n == 2 ? 1200 : 0);
        const double sugar = house.boxes["house tank"].sugar();
        house.concentrate(house.at(3, day, 15), "house tank", "concentrate", std::floor(sugar * 0.9 / (0.08 * 1.03)),
                          8);
        // Most of the sugar is drawn, in four draws; the rest stays in the pans for the next night.
        const double syrup = (house.boxes["concentrate"].sugar() + house.sugarInPans()) / (0.665 * 1.327);
        const std::string into = fmt::format("drum {}", drum++);
        const double one = std::floor(syrup * house.between(0.17, 0.19, 0.01));
        house.boil(3, day, "concentrate", 60, {{into, one}, {into, one}, {into, one}, {into, one}});
    }
    house.emptyPans(house.at(3, 26, 9), {{"pail 1", 40}, {"pail 2", 45}});
    // Half a drum, topped a week later.
    house.buy(house.at(3, 27, 9), "drum 9", "a neighbour", 70, 66.8);
    house.move(house.at(3, 28, 9), "drum 2", "drum 9", 60);
    // Two runs blended, and a blend of blends.
    house.move(house.at(3, 28, 10), "drum 1", "drum 10", 50);
    house.move(house.at(3, 28, 11), "drum 9", "drum 10", 50);
    house.press(house.at(3, 29, 9), house.at(3, 29, 9.5), "drum 10", "filter tank", 60, 4, "DE 11");
    house.move(house.at(3, 29, 10), "filter tank", "canner", 50);
    house.pack(house.at(3, 29, 11), "27-088-A", "canner", 80, "0.5L", 0.5, 3);
    house.ship(house.at(3, 30, 9), "27-088-A", "0.5L", 50, "Brook Street Market");
    house.ship(house.at(3, 31, 9), "27-088-A", "0.5L", 12, "the inn");
    house.back(house.at(4, 8, 9), "27-088-A", "0.5L", 5, "the inn");
    house.press(house.at(4, 2, 9), house.at(4, 2, 9.5), "drum 3", "canner", 50, 4, "DE 12");
    house.pack(house.at(4, 2, 11), "27-092-A", "canner", 12, "4L", 4, 0);
    house.ship(house.at(4, 3, 9), "27-092-A", "4L", 12, "Brook Street Market");
    // August.
    house.move(house.at(8, 10, 9), "drum 9", "canner", 40);
    house.pack(house.at(8, 10, 11), "27-222-A", "canner", 70, "0.5L", 0.5, 1);
    house.ship(house.at(8, 12, 11), "27-222-A", "0.5L", 70, "the fair");
    return house.finish();
}

} // namespace panside
