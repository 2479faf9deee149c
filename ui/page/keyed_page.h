#pragma once
#include "ui/look/dress.h"

#include <QWidget>
#include <optional>
#include <vector>

class QLabel;
class QProgressBar;
class QTextBrowser;

namespace panside {

class ActionKeys;

// A page of words with a row of keys under it: what stands there, and what can be done about it. A key works by finger,
// by Tab and by its letter; Escape leaves.
class KeyedPage : public QWidget {
    Q_OBJECT
public:
    struct Key {
        QString name; // what the tests call it, and what pressed() says
        QString word;
        int key; // a Qt::Key
        bool operator==(const Key&) const = default;
    };
    explicit KeyedPage(const QString& name, QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void show(const QString& words, const std::vector<Key>& keys);
    // How far something is, in per cent; none: nothing is going on.
    void progress(std::optional<int> percent);
    void say(const QString& words);
    QString words() const;
    QString said() const;

signals:
    void pressed(const QString& name);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    Dress dress_;
    std::vector<Key> keys_;
    QTextBrowser* text_;
    QProgressBar* bar_;
    QLabel* said_;
    ActionKeys* row_;
};

// A page of words on paper: as a PDF (false: it could not be written), or by one of the printers of this machine
// (false: it took nothing).
bool writePdf(const QString& words, const QString& title, const QString& place);
bool printOut(const QString& words, const QString& title, const QString& printer);

} // namespace panside
