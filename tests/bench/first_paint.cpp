// Ends with the first paint of its window, so that a whole start can be timed from outside:
//   first_paint empty            a window with nothing in it
//   first_paint JOURNAL          the console with the journal's last shift
#include "app/commands.h"

#include <QApplication>
#include <QEvent>
#include <QTimer>
#include <QWidget>
#include <iostream>
#include <string_view>

namespace {

class FirstPaint : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        // Queued: the quit comes after the paint, when what was painted has been handed to the screen.
        if (event->type() == QEvent::Paint && watched->isWidgetType())
            QTimer::singleShot(0, qApp, &QCoreApplication::quit);
        return false;
    }
};

void endWithFirstPaint() { qApp->installEventFilter(new FirstPaint{qApp}); }

} // namespace

Q_COREAPP_STARTUP_FUNCTION(endWithFirstPaint)

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "usage: first_paint empty | JOURNAL\n";
        return 2;
    }
    if (std::string_view{argv[1]} == "empty") {
        const QApplication application{argc, argv};
        QWidget window;
        window.showMaximized();
        return QApplication::exec();
    }
    panside::ConsoleRequest request;
    request.journal = argv[1];
    return panside::consoleCommand(request, std::cout, std::cerr);
}
