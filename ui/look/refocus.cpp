#include "ui/look/refocus.h"

#include <QApplication>
#include <QLineEdit>

namespace panside {

QString focusedIn(const QWidget* inside) {
    const QWidget* focused = QApplication::focusWidget();
    return inside && focused && inside->isAncestorOf(focused) ? focused->objectName() : QString{};
}

void refocus(QWidget& inside, const QString& name) {
    auto* field = name.isEmpty() ? nullptr : inside.findChild<QWidget*>(name);
    if (!field)
        return;
    inside.show(); // only what is shown takes the focus
    field->setFocus(Qt::TabFocusReason);
}

} // namespace panside
