#pragma once
// What the nights teach, in plain words: each effect with its interval, what is too little to tell, what cannot be told
// apart, and which comparison would tell.
#include "core/season/tuning.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace panside {

struct EffectLine {
    QString cause;                        // "2 min sooner, the load the same"
    QString figure;                       // "+6 %, between −2 and +14"
    QString verdict;                      // "too little to tell"
    double middle = 0, low = 0, high = 0; // percent
    bool claimed = false;                 // its interval may be drawn as a finding
    bool operator==(const EffectLine&) const = default;
};
struct TuningWords {
    QString title, basis; // what was asked; on how many nights it rests
    std::vector<EffectLine> lines;
    QStringList notes; // what went together, what was left out and why
    QString tomorrow;  // a night with, a night without; or why none is named
    QString caution;
    bool operator==(const TuningWords&) const = default;
};
TuningWords tuningWords(const Tuning& tuning, Units units);
QString verdictWord(Verdict verdict);

} // namespace panside
