#include "ui/look/parts.h"

namespace panside {

Press* pressOf(const Dress& dress, const QString& word, const QString& key, const QString& name,
               Qt::FocusPolicy focus) {
    auto* press = new Press;
    press->wear(dress);
    press->say(word, key);
    press->setObjectName(name);
    press->setFocusPolicy(focus);
    return press;
}

QLabel* labelOf(const Dress& dress, const QString& name, double height, bool bold) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setFont(dress.letters(height, bold));
    label->setWordWrap(true);
    return label;
}

QLabel* wordOf(const Dress& dress, const QString& words, double height, bool bold) {
    auto* label = new QLabel{words};
    label->setFont(dress.letters(height, bold));
    return label;
}

QLabel* titleOf(const Dress& dress, const QString& words) { return wordOf(dress, words, mm::words * 1.25, true); }

TypedLine* lineOf(const Dress& dress, const QString& name, const QString& asks, const QString& answer, double height) {
    auto* line = new TypedLine;
    line->setText(answer);
    line->setObjectName(name);
    line->setAccessibleName(asks);
    line->wear(dress, height);
    line->setMinimumHeight(dress.px(mm::target));
    return line;
}

} // namespace panside
