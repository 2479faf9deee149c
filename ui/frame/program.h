#pragma once
#include <QApplication>
#include <functional>

namespace panside {

// The application, and the outermost frame of all that the window's thread does: what a slot, a timer or a key throws
// ends what was asked, never the boil.
class Program : public QApplication {
public:
    using QApplication::QApplication;
    // Told what was thrown, in the person's words.
    std::function<void(const QString& words)> failed;
    bool notify(QObject* receiver, QEvent* event) override;
};

// Whatever a person, a log or a probe wrote is shown as it is written: labels and hints take no text for HTML.
void keepLabelsPlain(QApplication& application);

} // namespace panside
