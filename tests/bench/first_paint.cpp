// Ends with a paint of its window, so that a whole start can be timed from outside:
//   first_paint empty            a window with a word in it, in the letters of the desktop: its first paint
//   first_paint window JOURNAL   the console with the journal's last shift: its first paint
//   first_paint night JOURNAL    the first one with that shift's numbers
#include "app/commands.h"
#include "ui/board/board.h"
#include "ui/console/console.h"

#include <QApplication>
#include <QEvent>
#include <QLabel>
#include <QMainWindow>
#include <cstdlib>
#include <iostream>
#include <string_view>

namespace {

bool ofTheNight = false;

bool isWhatIsWaitedFor(const QWidget& painted) {
    auto* console = qobject_cast<panside::Console*>(painted.window());
    return !ofTheNight || (console && console->board().picture().litAt);
}

class FirstPaint : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        // Queued before all else: the end comes when what was painted has been handed to the screen, and at once.
        if (event->type() == QEvent::Paint && watched->isWidgetType() &&
            isWhatIsWaitedFor(static_cast<const QWidget&>(*watched)))
            QCoreApplication::postEvent(this, new QEvent{QEvent::User}, Qt::HighEventPriority);
        return false;
    }
    bool event(QEvent* event) override {
        if (event->type() == QEvent::User)
            std::_Exit(0);
        return QObject::event(event);
    }
};

void endWithFirstPaint() { qApp->installEventFilter(new FirstPaint{qApp}); }

} // namespace

Q_COREAPP_STARTUP_FUNCTION(endWithFirstPaint)

int main(int argc, char** argv) {
    const std::string_view what{argc > 1 ? argv[1] : ""};
    if (what == "empty" && argc == 2) {
        const QApplication application{argc, argv};
        QMainWindow window;
        window.setCentralWidget(new QLabel{QStringLiteral("Panside")});
        window.showMaximized();
        return QApplication::exec();
    }
    if ((what != "window" && what != "night") || argc != 3) {
        std::cerr << "usage: first_paint empty | window JOURNAL | night JOURNAL\n";
        return 2;
    }
    ofTheNight = what == "night";
    panside::ConsoleRequest request;
    request.journal = argv[2];
    return panside::consoleCommand(request, std::cout, std::cerr);
}
