#pragma once
#include <QAccessible>

class QWidget;

namespace panside {

// What a widget that paints itself is to a screen reader; without it, it is a client like any other.
void giveRole(QWidget& widget, QAccessible::Role role);

} // namespace panside
