#include "ui/filter/filter_view.h"

#include "ui/look/wall_clock.h"
#include "ui/words/book_words.h"
#include "ui/words/counted.h"
#include "ui/words/mark_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Filter", text, comment, n);
}
constexpr Duration gaugeEvery{20};
constexpr Temperature circulateUnder = Temperature::fahrenheit(180); // hot enough to run: common practice, no source
constexpr std::size_t flowRuns = 3;
constexpr Duration oneNight{14 * 3600}; // runs so near each other press the same sugar sand

QString range(double from, std::optional<double> to, int decimals) {
    const QString low = QLocale{}.toString(from, 'f', decimals);
    if (!to)
        return tr("%1 or later").arg(low);
    const QString high = QLocale{}.toString(*to, 'f', decimals);
    return low == high ? low : tr("%1 to %2").arg(low, high);
}

// Adds a reading of the gauge, one in some seconds of a probe and all that were typed.
void addGauge(std::vector<GaugeReading>& all, const Fact& fact, Instant begun) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading || reading->series != Series::filter_pressure || fact.at < begun || reading->si <= 0)
        return;
    if (reading->byHand() || all.empty() || secondsBetween(all.back().at, fact.at) >= gaugeEvery.count())
        all.push_back({fact.at, reading->pressure()});
}

// "diatomite" of "diatomite 1lb lot 7": mass and lot are another each time.
std::string kindOfAid(const QString& aid) { return nameKey(aid.section(u' ', 0, 0).toStdString()); }

// What has gone through by the flow of the runs before, and how the gauge climbs with it.
QString throughWords(const FilterNow& now, Units units, const CakeForecast* forecast) {
    if (!now.flow)
        return {};
    const Volume through = Volume::ofSi(now.flow->si() * secondsBetween(now.run->begun, now.now));
    QString words = tr("About %1 through by the flow of the runs before.").arg(figure(through, units).text());
    if (forecast && forecast->climb > 0) {
        const Volume one = units == Units::us ? Volume::gallon(1) : Volume::litre(10);
        words +=
            u' ' + tr("It climbs %1 each %2.")
                       .arg(gaugeFigure(Pressure::pascal(forecast->climb / now.flow->si() * one.si()), units).text(),
                            figure(one, units).text());
    }
    return words;
}

QString forecastWords(const std::variant<CakeForecast, CakeSilence>& said, const FilterNow& now, Units units) {
    if (const auto* silence = std::get_if<CakeSilence>(&said))
        switch (*silence) {
        case CakeSilence::tooFew:
            return tr("From the third reading on, this says when the limit will be reached.");
        case CakeSilence::atLimit:
            return tr("At the limit: stop the pump, let the pressure off, stand clear.");
        case CakeSilence::notClimbing:
            return tr("The gauge is not climbing: when the limit is reached is not known.");
        case CakeSilence::bypass:
            return tr("The gauge has stopped climbing: a bypass is open or the flow falls. No forecast.");
        }
    const auto& forecast = std::get<CakeForecast>(said);
    const double gone = secondsBetween(now.run->begun, now.now);
    if (forecast.p90 && *forecast.p90 <= gone) // by readings of before: the pump may be off, or the gauge past it
        return tr("By now the limit should have been reached: look at the gauge, and write what it says.");
    const auto minutes = [&](double at) { return std::max(0.0, at - gone) / 60; };
    QString words =
        tr("The limit in %1 min")
            .arg(range(minutes(forecast.p10), forecast.p90 ? std::optional{minutes(*forecast.p90)} : std::nullopt, 0));
    if (now.flow) {
        const auto volume = [&](double at) { return Volume::ofSi(now.flow->si() * at); };
        const Figure low = figure(volume(forecast.p10), units);
        words += forecast.p90
                     ? tr(", after %1 to %2 through it").arg(low.number, figure(volume(*forecast.p90), units).text())
                     : tr(", after %1 or more through it").arg(low.text());
    }
    words += u'.';
    if (forecast.learned)
        words += u' ' + tr("Learned from runs with this aid and these papers: %1.").arg(now.before.size());
    return words;
}

} // namespace

std::vector<CakeReading> cakeOf(std::span<const GaugeReading> readings, Instant begun) {
    std::vector<CakeReading> all;
    for (const GaugeReading& one : readings)
        all.push_back({secondsBetween(begun, one.at), one.pressure});
    return all;
}

std::optional<OpenRun> openRun(const HouseLedger& house) {
    std::optional<OpenRun> run;
    for (const LedgerRow& row : house.rows()) {
        const auto* day = std::get_if<DayRow>(&row.fact->what);
        if (!day)
            continue;
        if (day->deed == Deed::press_off)
            run.reset();
        if (day->deed == Deed::press_on)
            run = OpenRun{row.fact->at,
                          utf8(day->text(Key::from)),
                          utf8(day->text(Key::to)),
                          utf8(day->text(Key::aid)),
                          utf8(day->text(Key::papers)),
                          day->temperature()};
    }
    return run;
}

std::vector<CakeRun> runsBefore(const HouseLedger& house, const OpenRun& run) {
    std::vector<CakeRun> runs;
    std::vector<GaugeReading> readings;
    Instant begun{};
    bool goesOn = false, same = false;
    for (const LedgerRow& row : house.rows()) {
        const auto* day = std::get_if<DayRow>(&row.fact->what);
        if (day && day->deed == Deed::press_on) {
            begun = row.fact->at;
            goesOn = true;
            readings.clear();
            same = kindOfAid(utf8(day->text(Key::aid))) == kindOfAid(run.aid) &&
                   nameKey(day->text(Key::papers)) == nameKey(run.papers.toStdString());
        } else if (day && day->deed == Deed::press_off && goesOn) {
            if (same && readings.size() >= 3)
                runs.push_back({cakeOf(readings, begun), run.begun - begun <= oneNight});
            goesOn = false;
        } else if (goesOn && same) {
            addGauge(readings, *row.fact, begun);
        }
    }
    return runs;
}

std::vector<GaugeReading> gaugeSince(Instant begun, const Facts& facts, std::span<const GaugeReading> typed) {
    std::vector<GaugeReading> all;
    Fact scratch{};
    for (std::size_t i = facts.before(begun); i < facts.size(); ++i)
        addGauge(all, facts.fact(i, scratch), begun);
    for (const GaugeReading& one : typed)
        if (one.at >= begun)
            all.push_back(one);
    std::ranges::stable_sort(all, [](const auto& a, const auto& b) { return a.at < b.at; });
    return all;
}

std::optional<VolumeFlow> usualFlow(const HouseLedger& house) {
    Instant begun{};
    bool goesOn = false;
    std::vector<double> flows;
    for (const LedgerRow& row : house.rows()) {
        const auto* day = std::get_if<DayRow>(&row.fact->what);
        if (day && day->deed == Deed::press_on) {
            begun = row.fact->at;
            goesOn = true;
        } else if (day && day->deed == Deed::press_off && goesOn) {
            const double seconds = secondsBetween(begun, row.fact->at);
            if (day->volume() && seconds > 0)
                flows.push_back(day->volume()->si() / seconds);
            goesOn = false;
        }
    }
    if (flows.empty())
        return std::nullopt;
    const auto last = std::span{flows}.last(std::min(flowRuns, flows.size()));
    double sum = 0;
    for (const double flow : last)
        sum += flow;
    return VolumeFlow::ofSi(sum / static_cast<double>(last.size()));
}

QString filterSentence(const FilterNow& now, Units units) {
    if (!now.run)
        return tr("No run is going on.");
    QStringList words{
        tr("Run of %1, from %2 to %3").arg(WallClock{}.hourAndMinute(now.run->begun), now.run->from, now.run->to)};
    if (!now.readings.empty()) {
        const QString gauge = gaugeFigure(now.readings.back().pressure, units).text();
        words[0] = namedAs(words[0],
                           now.limit ? tr("%1, at most %2").arg(gauge, gaugeFigure(*now.limit, units).text()) : gauge);
    }
    words[0] += u'.';
    std::optional<std::variant<CakeForecast, CakeSilence>> said;
    if (now.limit)
        said = cakeForecast(cakeOf(now.readings, now.run->begun), *now.limit, now.before);
    words << throughWords(now, units, said ? std::get_if<CakeForecast>(&*said) : nullptr);
    words << (said ? forecastWords(*said, now, units)
                   : tr("Write the maker's limit under Rig: there is no usual one."));
    words.removeAll(QString{});
    if (now.run->temperature && *now.run->temperature < circulateUnder)
        words << tr("Under %1: stop or circulate, back to %2.")
                     .arg(figure(circulateUnder, units, 0).text(),
                          figure(Temperature::fahrenheit(185), units, 0).text());
    return words.join(u' ');
}

ListView filterView(const HouseLedger* house, const FilterNow& now, Units units) {
    ListView view;
    view.columns = {{tr("when")},
                    {tr("from"), false, 3},
                    {tr("to"), false, 2},
                    {tr("went through"), true},
                    {tr("filter aid"), false, 1},
                    {tr("came out"), false, 4}};
    view.head = filterSentence(now, units);
    view.notes = tr("A press under pressure hurts: stop the pump and let the pressure off before a frame is touched. "
                    "Hot syrup burns deeply. Do not breathe the dust of the aid.");
    if (!house)
        return view;
    const auto& runs = house->ledger().tables().presses;
    Volume since;
    for (auto run = runs.rbegin(); run != runs.rend(); ++run) {
        since += run->through;
        view.rows.push_back(
            {{QLocale{}.toString(WallClock{}.at(run->at), QStringLiteral("d MMM HH:mm")), utf8(run->from),
              utf8(run->to), run->through.si() > 0 ? figure(run->through, units).text() : tr("not said"),
              utf8(run->aid), choiceWord(run->result)}});
    }
    const auto& marks = house->ledger().marks();
    const auto odd = std::find_if(marks.rbegin(), marks.rend(),
                                  [](const LedgerMark& mark) { return mark.kind == MarkKind::pressureWithoutRun; });
    if (!now.run && odd != marks.rend())
        view.notes = markWords(*odd, units) + u' ' + view.notes;
    if (const auto count = static_cast<int>(runs.size()); count > 0)
        view.notes = counted(count, tr("1 run, %1."), tr("%n runs, %1 in all.", nullptr, count))
                         .arg(figure(since, units).text()) +
                     u' ' + view.notes;
    return view;
}

} // namespace panside
