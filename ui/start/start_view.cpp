#include "ui/start/start_view.h"

#include "core/quantity/enum_count.h"
#include "ui/frame/languages.h"
#include "ui/look/typing.h"
#include "ui/words/place_words.h"

#include <QCollator>
#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Start", text); }

struct Asked {
    StartQuestion question;
    const char *title, *why;
};
constexpr std::array<Asked, 6> asked{{
    {StartQuestion::language, QT_TR_NOOP("Which language?"),
     QT_TR_NOOP("Each of these questions can be left out, and answered later under F7.")},
    {StartQuestion::units, QT_TR_NOOP("In which units do you boil?"),
     QT_TR_NOOP("All that is typed and shown is in these. Nothing that was kept changes with them.")},
    {StartQuestion::place, QT_TR_NOOP("Where is the syrup sold?"),
     QT_TR_NOOP("Its law says how dense syrup must be. What is known of it here is advice: the inspector decides.")},
    {StartQuestion::height, QT_TR_NOOP("How far above sea level is the sugarhouse?"),
     QT_TR_NOOP("The higher the sugarhouse, the cooler water and syrup boil. Without the elevation only a water check "
                "or a barometer tells how hot.")},
    {StartQuestion::pans, QT_TR_NOOP("How large are the pans?"),
     QT_TR_NOOP("Length times width of each. Without them nothing can say how fast you boil, or how much sap must be "
                "kept back.")},
    {StartQuestion::source, QT_TR_NOOP("Who reads the syrup pan?"),
     QT_TR_NOOP("A probe on a wire is read each second. By hand you type what a thermometer shows: every few minutes "
                "at first, more often near the draw.")},
}};

static_assert(inOrder(asked, &Asked::question));

constexpr std::array<Setting, 1> heights{Setting::elevation};
constexpr std::array<Setting, 2> pans{Setting::syrup_pan_area, Setting::flue_pan_area};

bool wasSet(const StartGround& ground, Setting key) {
    return std::ranges::any_of(ground.settings, [&](const Set& set) { return set.key == key; });
}

std::vector<RigRow> rowsOf(std::span<const Setting> keys, const StartGround& ground) {
    std::vector<RigRow> rows;
    for (const Setting key : keys)
        rows.push_back(rigRow(key, ground.settings, ground.units));
    return rows;
}

} // namespace

std::span<const StartQuestion> startQuestions() {
    static constexpr StartQuestion all[] = {StartQuestion::language, StartQuestion::units, StartQuestion::place,
                                            StartQuestion::height,   StartQuestion::pans,  StartQuestion::source};
    return all;
}

StartView startView(StartQuestion question, const StartGround& ground) {
    const Asked& words = asked[static_cast<std::size_t>(question)];
    StartView view{.question = question, .title = tr(words.title), .why = tr(words.why), .fields = {}};
    switch (question) {
    case StartQuestion::language:
        for (const Language& one : languages()) {
            if (&one == &languageOf(ground.language))
                view.chosen = static_cast<int>(view.choices.size());
            view.choices << QString::fromUtf8(one.name);
        }
        break;
    case StartQuestion::units:
        view.choices = {tr("°F, gallons, feet, pounds"), tr("°C, liters, meters, kilograms")};
        view.chosen = ground.units == Units::us ? 0 : 1;
        break;
    case StartQuestion::place:
        for (const Set& set : ground.settings)
            if (set.key == Setting::place)
                view.place = static_cast<std::size_t>(set.si);
        break;
    case StartQuestion::height:
        view.fields = rowsOf(heights, ground);
        break;
    case StartQuestion::pans:
        view.fields = rowsOf(pans, ground);
        break;
    case StartQuestion::source:
        view.choices = {tr("I do, and type it in"), tr("A probe: find its wire")};
        view.chosen = ground.probe ? 1 : 0;
        break;
    }
    return view;
}

QString leftOut(const StartGround& ground) {
    QStringList missing;
    if (!wasSet(ground, Setting::place))
        missing << tr("the place");
    if (!wasSet(ground, Setting::elevation))
        missing << tr("the height");
    if (std::ranges::any_of(pans, [&](Setting key) { return !wasSet(ground, key); }))
        missing << tr("the pans");
    return missing.join(QStringLiteral(", "));
}

std::vector<std::size_t> placesLike(const QString& typed, Units units) {
    const auto places = allPlaces();
    const QString begins = unmarked(typed).trimmed();
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const QString name = unmarked(placeName(places[i]));
        if (name.startsWith(begins) || name.contains(u' ' + begins) || name.contains(u'-' + begins))
            found.push_back(i);
    }
    const Country home = units == Units::us ? Country::unitedStates : Country::canada;
    const QCollator order;
    const auto before = [&](std::size_t a, std::size_t b) {
        const bool homeA = places[a].country == home, homeB = places[b].country == home;
        if (homeA != homeB)
            return homeA;
        const bool startsA = unmarked(placeName(places[a])).startsWith(begins),
                   startsB = unmarked(placeName(places[b])).startsWith(begins);
        if (startsA != startsB)
            return startsA;
        return order.compare(placeName(places[a]), placeName(places[b])) < 0;
    };
    std::ranges::sort(found, before);
    return found;
}

} // namespace panside
