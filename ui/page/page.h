#pragma once
#include "ui/look/dress.h"

#include <QWidget>

class QTextBrowser;

namespace panside {

class Press;

// A page of words to read: help, cautions. Enter or Escape leaves it.
class Page : public QWidget {
    Q_OBJECT
public:
    explicit Page(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    // `words` as rich text; `leaving` stands on the key that leaves it.
    void show(const QString& words, const QString& leaving);
    QString words() const;

signals:
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void letter();

    Dress dress_;
    QTextBrowser* text_;
    Press* leave_;
};

// What a person must know before the first fire, and where it is said again.
QString cautionWords();

// Letters as tall, up to `tallest` millimetres, as lets the whole of the words stand on the page: few words are read
// from further away. Those that do not stand on it even as small words are scrolled through.
void letterToFit(QTextBrowser& text, const Dress& dress, double tallest);

} // namespace panside
