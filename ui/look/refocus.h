#pragma once
#include <QString>

class QWidget;

namespace panside {

// For a screen that builds its fields anew: the name of the field in it that a person is in, empty where there is none;
// and back into the field of that name.
QString focusedIn(const QWidget* inside);
void refocus(QWidget& inside, const QString& name);

} // namespace panside
