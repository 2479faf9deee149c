#include "ui/look/refocus.h"

#include <QApplication>
#include <QLineEdit>

namespace panside {

void discard(QWidget* old) {
    if (!old)
        return;
    old->setParent(nullptr);
    old->hide(); // the layout's late call would show what was replaced at once: a window of its own
    old->deleteLater();
}

void handOn(QWidget& page, QWidget* field) {
    if (QApplication::focusWidget() != &page) // Qt would move it, to a field that is not shown yet
        page.setFocusProxy(field);
}

Focused focusedIn(const QWidget* inside) {
    const QWidget* focused = QApplication::focusWidget();
    if (!inside || !focused || !inside->isAncestorOf(focused))
        return {};
    const auto* edit = qobject_cast<const QLineEdit*>(focused);
    return {focused->objectName(), edit && edit->isModified() ? std::optional{edit->text()} : std::nullopt};
}

void refocus(QWidget& inside, const Focused& focused) {
    auto* field = focused.name.isEmpty() ? nullptr : inside.findChild<QWidget*>(focused.name);
    if (!field)
        return;
    inside.show(); // only what is shown takes the focus
    field->setFocus(Qt::TabFocusReason);
    auto* edit = qobject_cast<QLineEdit*>(field);
    if (edit && focused.typed) {
        edit->setText(*focused.typed);
        edit->setModified(true);
    } else if (edit) {
        edit->selectAll();
    }
}

} // namespace panside
