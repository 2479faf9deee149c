#include "ui/look/roles.h"

#include <QAccessibleWidget>
#include <QVariant>

namespace panside {
namespace {

constexpr const char* itsRole = "roleForReaders";

QAccessibleInterface* withItsRole(const QString&, QObject* object) {
    auto* widget = qobject_cast<QWidget*>(object);
    const QVariant role = widget ? widget->property(itsRole) : QVariant{};
    return role.isValid() ? new QAccessibleWidget{widget, static_cast<QAccessible::Role>(role.toInt())} : nullptr;
}

} // namespace

void giveRole(QWidget& widget, QAccessible::Role role) {
    static const bool installed = (QAccessible::installFactory(&withItsRole), true);
    widget.setProperty(itsRole, installed ? static_cast<int>(role) : 0);
}

} // namespace panside
