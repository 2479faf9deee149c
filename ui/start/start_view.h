#pragma once
// What is asked before the first boil, one question a page: what makes its numbers right. Each can be left out, and is
// then missed where it is wanted. The answers become the settings and choices that the rig's page sets too.
#include "ui/rig/rig_view.h"

#include <QStringList>
#include <span>

namespace panside {

enum class StartQuestion { language, units, place, height, pans, source };
std::span<const StartQuestion> startQuestions();

struct StartView {
    StartQuestion question = StartQuestion::language;
    QString title, why;                    // what is asked; what it is good for
    QStringList choices = {};              // of a few, each a key
    int chosen = -1;                       // the one that holds
    std::vector<RigRow> fields;            // numbers
    std::optional<std::size_t> place = {}; // that holds, where a place is asked
    bool operator==(const StartView&) const = default;
};

// What holds now: the rig's settings, and the person's choices.
struct StartGround {
    std::vector<Set> settings;
    Units units = Units::us;
    QString language;
    bool probe = false; // one is set up
};
StartView startView(StartQuestion question, const StartGround& ground);
// What was left out of what the first boil goes by, in words; empty: nothing.
QString leftOut(const StartGround& ground);

// Places whose name, or a word of it, begins so, in the order of the alphabet; those of the person's side of the border
// first. Blanks alone match all.
std::vector<std::size_t> placesLike(const QString& typed, Units units);

} // namespace panside
