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
Focused focusedIn(const QWidget* inside);
void refocus(QWidget& inside, const Focused& focused);

} // namespace panside
