#include "ui/frame/program.h"

#include "core/journal/journal_error.h"
#include "ui/words/fault_words.h"

#include <QEvent>
#include <QLabel>

namespace panside {
namespace {

QString wordsOfThrown() {
    try {
        throw;
    } catch (const JournalError& error) {
        return journalWords(error);
    } catch (const std::exception& error) {
        return QCoreApplication::translate("Program", "This could not be done: %1. The boil goes on.")
            .arg(QString::fromUtf8(error.what()));
    } catch (...) {
        return QCoreApplication::translate("Program", "This could not be done. The boil goes on.");
    }
}

class PlainLabels : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Polish)
            if (auto* label = qobject_cast<QLabel*>(watched); label && label->textFormat() == Qt::AutoText)
                label->setTextFormat(Qt::PlainText);
        return false;
    }
};

} // namespace

bool Program::notify(QObject* receiver, QEvent* event) {
    try {
        return QApplication::notify(receiver, event);
    } catch (...) {
        const QString words = wordsOfThrown();
        if (failed)
            failed(words);
        return true;
    }
}

void keepLabelsPlain(QApplication& application) { application.installEventFilter(new PlainLabels{&application}); }

} // namespace panside
