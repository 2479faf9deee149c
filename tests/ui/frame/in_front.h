// A window that has the keys, as a person's has: waited for, since a window system gives them in its own time.
#pragma once

#include <QTest>
#include <QWidget>

namespace panside {

inline bool inFront(QWidget& window) {
    window.show();
    if (!QTest::qWaitForWindowExposed(&window))
        return false;
    window.activateWindow();
    return QTest::qWaitForWindowActive(&window);
}

} // namespace panside
