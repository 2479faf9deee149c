#include "core/boil/show_ground.h"

#include "core/boil/vocabulary.h"

namespace panside {

std::vector<ToldGround> groundsOf(const Picture& picture) {
    std::vector<ToldGround> all;
    const auto tell = [&](auto of, const auto& why) { // built in place: gcc 12 at -O2 warns of a variant that moves
        ToldGround& told = all.emplace_back();
        told.of = of;
        told.why = why;
    };
    for (const AlarmPicture& alarm : picture.alarms)
        for (const Ground& ground : alarm.why)
            tell(alarm.alarm, ground);
    for (const bool reading : {true, false})
        for (const Why& why : picture.why)
            if (std::holds_alternative<Series>(why.of) == reading)
                std::visit([&](auto of) { tell(of, why); }, why.of);
    if (picture.check && picture.check->fate == CheckFate::doubted)
        tell(Shown::targetC, Ground{GroundKind::checkDoubted});
    if (picture.checks > 0 && picture.targetUncertainty)
        tell(Shown::targetC, Ground{GroundKind::offsetLearnt, picture.probeOffset, *picture.targetUncertainty});
    if (picture.drawEta && picture.rise && picture.targetRise)
        tell(Shown::drawEta, Ground{GroundKind::climbsTo, *picture.rise, *picture.targetRise});
    if (picture.fireIntervalLearned)
        tell(Shown::fireDueS, Ground{GroundKind::intervalLearnt, picture.fireInterval});
    return all;
}

std::string toldText(const ToldGround& told) {
    const auto name =
        std::visit(Overloaded{[](Alarm alarm) { return nameOf(alarm); }, [](Shown figure) { return nameOf(figure); },
                              [](Series series) { return rowOf(series).name; }},
                   told.of);
    return std::string{name} + ": " +
           std::visit(Overloaded{[](const Ground& ground) { return groundText(ground); },
                                 [](const Why& why) { return whyText(why); }},
                      told.why);
}

} // namespace panside
