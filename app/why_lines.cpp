#include "app/why_lines.h"

#include "core/boil/shift_log.h"

#include <ostream>

namespace panside {

void WhyLines::say(const Picture& picture) {
    std::set<std::string> now;
    for (const ToldGround& told : groundsOf(picture)) {
        // The figures move from line to line: what is said anew is another ground, not another figure.
        std::string about{toldText({told.of, std::visit(Overloaded{[](Ground ground) {
                                                                       ground.seen = ground.limit = {};
                                                                       return std::variant<Ground, Why>{ground};
                                                                   },
                                                                   [](Why why) {
                                                                       why.amount = 0;
                                                                       return std::variant<Ground, Why>{why};
                                                                   }},
                                                        told.why)})};
        if (!said_.contains(about))
            err_ << textOf(picture.at) << ' ' << toldText(told) << '\n';
        now.insert(std::move(about));
    }
    said_ = std::move(now);
}

} // namespace panside
