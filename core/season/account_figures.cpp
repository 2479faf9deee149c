#include "core/season/shift_account.h"

#include <string_view>

namespace panside {
namespace {

using Figures = std::map<std::string, double>;

// The names stand in journals: never change one, only add; a new meaning takes a new name and another accountForm.
void eachFigure(auto& account, auto&& visit) {
    visit("first", account.first);
    visit("last", account.last);
    visit("lit", account.lit);
    visit("sap_in", account.sapIn);
    visit("sap_taken", account.sapTaken);
    visit("sap_sugar", account.sapSugar);
    visit("draws", account.draws);
    visit("draws_measured", account.drawsMeasured);
    visit("syrup", account.syrup);
    visit("draws_judged", account.drawsJudged);
    visit("draws_in_band", account.drawsInBand);
    visit("checks", account.checks);
    visit("loads", account.loads);
    visit("loads_weighed", account.loadsWeighed);
    visit("wood", account.wood);
    visit("cords", account.cords);
    visit("moisture", account.moisture);
    visit("fire_interval", account.fireInterval);
    visit("evaporation", account.evaporation);
    visit("efficiency", account.efficiency);
    visit("stack", account.stack);
    visit("depth", account.depth);
    visit("pressure", account.pressure);
    visit("forecast_draws", account.forecast.draws);
    visit("forecast_under_p10", account.forecast.underP10);
    visit("forecast_under_p50", account.forecast.underP50);
    visit("forecast_under_p90", account.forecast.underP90);
    visit("forecast_inside", account.forecast.inside);
}

double numberOf(Instant at) { return static_cast<double>(at.time_since_epoch().count()); } // exact to the year 2255
double numberOf(double value) { return value; }
double numberOf(int value) { return value; }
double numberOf(Duration value) { return value.count(); }
double numberOf(Temperature value) { return value.kelvin(); }
template <class Quantity>
double numberOf(Quantity value) {
    return value.si();
}

void set(Instant& at, double value) { at = Instant{std::chrono::microseconds{static_cast<std::int64_t>(value)}}; }
void set(double& to, double value) { to = value; }
void set(int& to, double value) { to = static_cast<int>(value); }
void set(Duration& to, double value) { to = Duration{value}; }
template <class Quantity>
void set(Quantity& to, double value) {
    to = Quantity::ofSi(value);
}

struct Write {
    Figures& figures;
    template <class Value>
    void operator()(const char* name, const Value& value) {
        figures[name] = numberOf(value);
    }
    template <class Value>
    void operator()(const char* name, const std::optional<Value>& value) {
        if (value)
            figures[name] = numberOf(*value);
    }
};

struct Read {
    const Figures& figures;
    template <class Value>
    void operator()(const char* name, Value& value) {
        if (const auto found = figures.find(name); found != figures.end())
            set(value, found->second);
    }
    void operator()(const char* name, std::optional<Temperature>& value) {
        if (const auto found = figures.find(name); found != figures.end())
            value = Temperature::kelvin(found->second);
    }
    template <class Value>
    void operator()(const char* name, std::optional<Value>& value) {
        if (const auto found = figures.find(name); found != figures.end())
            set(value.emplace(), found->second);
    }
};

constexpr std::string_view woodMark = "wood:", alarmMark = "alarm:", crewMark = "crew:";

} // namespace

std::map<std::string, double> figuresOf(const ShiftAccount& account) {
    Figures figures;
    eachFigure(account, Write{figures});
    for (const auto& [species, mass] : account.woods)
        figures[std::string{woodMark} + species] = mass.si();
    for (const auto& [alarm, times] : account.alarms)
        figures[std::string{alarmMark} + std::string{nameOf(alarm)}] = times;
    for (const auto& [name, time] : account.crew)
        figures[std::string{crewMark} + name] = time.count();
    return figures;
}

ShiftAccount accountIn(const std::map<std::string, double>& figures) {
    ShiftAccount account;
    eachFigure(account, Read{figures});
    for (const auto& [name, value] : figures) {
        const std::string_view whole = name;
        if (whole.starts_with(woodMark))
            account.woods[std::string{whole.substr(woodMark.size())}] = Mass::ofSi(value);
        else if (whole.starts_with(crewMark))
            account.crew[std::string{whole.substr(crewMark.size())}] = Duration{value};
        else if (whole.starts_with(alarmMark))
            if (const auto alarm = alarmNamed(whole.substr(alarmMark.size())))
                account.alarms[*alarm] = static_cast<int>(value);
    }
    return account;
}

} // namespace panside
