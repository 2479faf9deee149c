#pragma once
// Which file or folder, in the console's own dress: rows that a glove hits, one name to type, everything by keys. The
// folders of plugged-in sticks stand beside the person's own.
#include "ui/look/dress.h"

#include <QDialog>
#include <QDir>
#include <QStringList>

class QLabel;
class QListWidget;

namespace panside {

class Press;
class TypedLine;

struct PickWish {
    enum class Kind { save, file, files, folder };
    Kind kind = Kind::file;
    QString title;
    QString start = {};       // the folder that it opens on; empty: the last one, or the person's own
    QString name = {};        // save: as it is suggested, "book.pdf"
    QStringList endings = {}; // "pdf", "csv": for a save the first is usual; empty: all files
};

class FilePick : public QDialog {
    Q_OBJECT
public:
    FilePick(const PickWish& wish, const Dress& dress, QWidget* over);
    QStringList chosen() const { return chosen_; }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    QWidget* placeRow();
    QWidget* nameRow();
    QWidget* lastRow();
    void enter(const QString& folder);
    void act(int row);  // Enter or a second press on a row
    void tick(int row); // a press: chosen, or among those chosen
    void accept() override;
    void writeOver();
    void say(const QString& words, bool asks = false);
    QString target() const; // save: where it would be written
    bool isSave() const { return wish_.kind == PickWish::Kind::save; }
    Press* key(const QString& word, const QString& cap, const QString& name);

    PickWish wish_;
    Dress dress_;
    QDir folder_;
    QStringList chosen_;
    QLabel *where_, *said_;
    QListWidget* list_;
    TypedLine* name_;
    Press *take_ = nullptr, *over_ = nullptr;
};

// What was picked; empty: left.
QString pickToSave(QWidget* over, const Dress& dress, const QString& title, const QString& name,
                   const QStringList& endings);
QString pickFile(QWidget* over, const Dress& dress, const QString& title, const QString& start,
                 const QStringList& endings);
QStringList pickFiles(QWidget* over, const Dress& dress, const QString& title, const QStringList& endings);
QString pickFolder(QWidget* over, const Dress& dress, const QString& title, const QString& start);

} // namespace panside
