#pragma once
#include "ui/look/dress.h"
#include "ui/manual/manual_book.h"

#include <QStringList>
#include <QWidget>

class QTextBrowser;
class QUrl;

namespace panside {

class ActionKeys;
class TypedLine;

// The manual on the screen: a page, its links, the way back, and a search. No letter is a key here, so that the board's
// letters go on working; the search is typed only once it was pressed.
class ManualScreen : public QWidget {
    Q_OBJECT
public:
    explicit ManualScreen(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void read(ManualBook book); // begins at its first page, or stays where one was
    void open(const QString& page);
    void search(const QString& words);
    QString words() const; // what is read, as plain text
    QString shown() const { return trail_.isEmpty() ? QString{} : trail_.last(); }

signals:
    void left();

private:
    void follow(const QUrl& link);
    void back();
    void act(int key);
    void turnTo(const QString& page, const QString& mark);
    void name();

    Dress dress_;
    ManualBook book_;
    QStringList trail_; // the pages one came by, the shown one last
    QTextBrowser* text_;
    ActionKeys* keys_;
    TypedLine* typed_;
};

} // namespace panside
