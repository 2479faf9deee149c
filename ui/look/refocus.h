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

// The field that a page hands the focus on to, from now on: a page that has it itself was put at rest, and keeps it.
void handOn(QWidget& page, QWidget* field);

Focused focusedIn(const QWidget* inside);
void refocus(QWidget& inside, const Focused& focused);

} // namespace panside
