#pragma once
#include <QEvent>
#include <QWidget>
#include <functional>
#include <utility>

namespace panside {

class EachLanguage : public QObject {
public:
    EachLanguage(QWidget& widget, std::function<void()> say) : QObject{&widget}, say_{std::move(say)} {
        widget.installEventFilter(this);
    }

protected:
    bool eventFilter(QObject* widget, QEvent* event) override {
        if (event->type() == QEvent::LanguageChange)
            say_();
        return QObject::eventFilter(widget, event);
    }

private:
    std::function<void()> say_;
};

// What a widget says in words of its own is said anew in each language that is chosen while it stands there.
inline void inEachLanguage(QWidget& widget, std::function<void()> say) { new EachLanguage{widget, std::move(say)}; }

} // namespace panside
