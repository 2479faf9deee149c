#pragma once
#include <QString>
#include <optional>

class QWidget;

namespace panside {

// For a screen that builds its fields anew: the field in it that a person is in, with what is typed there and not yet
// kept; and back into the field of that name, ready to be typed over or on.
struct Focused {
    QString name = {};
    std::optional<QString> typed = {};
};
// What is built anew goes: unseen at once, and later altogether, since a key in it may be what asked for this.
void discard(QWidget* old);

Focused focusedIn(const QWidget* inside);
void refocus(QWidget& inside, const Focused& focused);

} // namespace panside
