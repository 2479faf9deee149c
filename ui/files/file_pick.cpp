#include "ui/files/file_pick.h"

#include "ui/look/parts.h"
#include "ui/look/tall_rows.h"
#include "ui/look/typed_line.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QStorageInfo>
#include <algorithm>

namespace panside {
namespace {

QString& lastFolder() {
    static QString last;
    return last;
}

// Sticks and cards, as the desktops mount them.
QStringList sticks() {
    QStringList found;
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes()) {
        const QString root = volume.rootPath();
        if (volume.isReady() && (root.startsWith(u"/media/") || root.startsWith(u"/run/media/")))
            found << root;
    }
    return found;
}

bool fits(const QFileInfo& file, const QStringList& endings) {
    return endings.isEmpty() || endings.contains(file.suffix().toLower());
}

} // namespace

FilePick::FilePick(const PickWish& wish, const Dress& dress, QWidget* over)
    : QDialog{over, Qt::Dialog | Qt::FramelessWindowHint}, wish_{wish}, dress_{dress}, where_{new QLabel},
      said_{new QLabel}, list_{new QListWidget}, name_{new TypedLine} {
    setObjectName(QStringLiteral("filePick"));
    setWindowTitle(wish.title);
    setModal(true);
    setPalette(paletteOf(dress.look));
    build();
    const QString start = !wish.start.isEmpty() ? wish.start : lastFolder();
    enter(!start.isEmpty() && QDir{start}.exists() ? start : QDir::homePath());
    if (over) // in the place of the page that asks
        setGeometry(QRect{over->mapToGlobal(QPoint{}), over->size()});
    isSave() ? name_->setFocus() : list_->setFocus();
}

Press* FilePick::key(const QString& word, const QString& cap, const QString& name) {
    return pressOf(dress_, word, cap, name, Qt::TabFocus);
}

void FilePick::build() {
    auto* column = new QVBoxLayout{this};
    const int edge = dress_.px(2 * mm::gap);
    column->setContentsMargins(edge, edge, edge, edge);
    column->addWidget(titleOf(dress_, wish_.title));
    column->addWidget(placeRow());
    list_->setObjectName(QStringLiteral("pickList"));
    list_->setAccessibleName(tr("Folders and files"));
    list_->setFont(dress_.letters(mm::words));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setUniformItemSizes(true);
    list_->setItemDelegate(new TallRows{dress_, this});
    connect(list_, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) { tick(list_->row(item)); });
    column->addWidget(list_, 1);
    if (isSave())
        column->addWidget(nameRow());
    said_->setObjectName(QStringLiteral("said"));
    said_->setFont(dress_.letters(mm::words));
    said_->setWordWrap(true);
    column->addWidget(said_);
    column->addWidget(lastRow());
}

QWidget* FilePick::placeRow() {
    auto* place = new QWidget;
    auto* row = new QHBoxLayout{place};
    row->setContentsMargins(0, 0, 0, 0);
    Press* up = key(tr("Up"), tr("Backspace"), QStringLiteral("pickUp"));
    connect(up, &Press::clicked, this, [this] { enter(folder_.absoluteFilePath(QStringLiteral(".."))); });
    row->addWidget(up);
    QStringList roots{QDir::homePath()};
    roots << sticks();
    for (int i = 0; i < roots.size(); ++i) {
        Press* root =
            key(i == 0 ? tr("My folder") : QFileInfo{roots[i]}.fileName(), {}, QStringLiteral("pickRoot_%1").arg(i));
        connect(root, &Press::clicked, this, [this, to = roots[i]] { enter(to); });
        row->addWidget(root);
    }
    where_->setObjectName(QStringLiteral("pickWhere"));
    where_->setFont(dress_.letters(mm::words));
    where_->setForegroundRole(QPalette::PlaceholderText);
    row->addWidget(where_, 1);
    return place;
}

QWidget* FilePick::nameRow() {
    auto* place = new QWidget;
    auto* row = new QHBoxLayout{place};
    row->setContentsMargins(0, 0, 0, 0);
    QLabel* label = wordOf(dress_, tr("name"));
    name_->setObjectName(QStringLiteral("pickName"));
    name_->setAccessibleName(label->text());
    name_->wear(dress_);
    name_->setMinimumHeight(dress_.px(mm::target));
    name_->setText(wish_.name);
    connect(name_, &QLineEdit::textChanged, this, [this] { say({}); });
    row->addWidget(label);
    row->addWidget(name_, 1);
    if (wish_.endings.size() > 1)
        for (const QString& ending : wish_.endings) {
            Press* kind = key(ending.toUpper(), {}, QStringLiteral("pickEnding_") + ending);
            connect(kind, &Press::clicked, this, [this, ending] {
                const QFileInfo now{name_->text().trimmed()};
                name_->setText(now.completeBaseName() + u'.' + ending);
            });
            row->addWidget(kind);
        }
    return place;
}

QWidget* FilePick::lastRow() {
    auto* place = new QWidget;
    auto* row = new QHBoxLayout{place};
    row->setContentsMargins(0, 0, 0, 0);
    Press* leave = key(tr("Leave"), tr("Esc"), QStringLiteral("pickLeave"));
    connect(leave, &Press::clicked, this, &FilePick::reject);
    take_ = key(isSave()                               ? tr("Write it here")
                : wish_.kind == PickWish::Kind::folder ? tr("Take this folder")
                                                       : tr("Take it"),
                isSave() ? tr("Enter") : tr("Ctrl+Enter"), QStringLiteral("pickTake"));
    take_->setShape(KeyShape::due);
    connect(take_, &Press::clicked, this, &FilePick::accept);
    over_ = key(tr("Write over it"), {}, QStringLiteral("pickOver"));
    connect(over_, &Press::clicked, this, &FilePick::writeOver);
    over_->hide();
    row->addWidget(leave);
    row->addWidget(take_, 1);
    row->addWidget(over_, 1);
    return place;
}

void FilePick::enter(const QString& folder) {
    const QDir next{QDir::cleanPath(folder)};
    if (!next.exists() || !next.isReadable())
        return say(tr("%1 cannot be looked into.").arg(next.absolutePath()));
    folder_ = next;
    chosen_.clear();
    say({});
    where_->setText(folder_.absolutePath());
    list_->clear();
    const auto add = [this](const QFileInfo& info) {
        auto* item = new QListWidgetItem{info.isDir() ? info.fileName() + u'/' : info.fileName(), list_};
        item->setData(Qt::UserRole, info.absoluteFilePath());
        item->setSizeHint(QSize{0, dress_.px(mm::target)});
    };
    for (const QFileInfo& info : folder_.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot | QDir::Readable, QDir::Name))
        add(info);
    if (wish_.kind != PickWish::Kind::folder)
        for (const QFileInfo& info : folder_.entryInfoList(QDir::Files | QDir::Readable, QDir::Name))
            if (fits(info, wish_.endings))
                add(info);
    if (list_->count() == 0)
        say(tr("Nothing of the kind is in this folder."));
    list_->setCurrentRow(0);
}

void FilePick::tick(int row) {
    const QString place = list_->item(row)->data(Qt::UserRole).toString();
    if (QFileInfo{place}.isDir())
        return enter(place);
    if (isSave())
        return name_->setText(QFileInfo{place}.fileName());
    if (wish_.kind == PickWish::Kind::files && chosen_.contains(place))
        chosen_.removeAll(place);
    else if (wish_.kind == PickWish::Kind::files)
        chosen_ << place;
    else
        chosen_ = {place};
    for (int i = 0; i < list_->count(); ++i) { // a tick, not only a colour
        QListWidgetItem* item = list_->item(i);
        const QString path = item->data(Qt::UserRole).toString();
        const QString name = QFileInfo{path}.fileName() + (QFileInfo{path}.isDir() ? QStringLiteral("/") : QString{});
        item->setText(chosen_.contains(path) ? QStringLiteral("✓ ") + name : name);
    }
}

void FilePick::act(int row) {
    if (row < 0)
        return;
    const QString place = list_->item(row)->data(Qt::UserRole).toString();
    if (QFileInfo{place}.isDir())
        return enter(place);
    if (isSave())
        return tick(row);
    if (chosen_.isEmpty())
        chosen_ = {place};
    accept();
}

QString FilePick::target() const {
    QString name = name_->text().trimmed();
    if (!wish_.endings.isEmpty() && !fits(QFileInfo{name}, wish_.endings))
        name += u'.' + wish_.endings.front();
    return folder_.absoluteFilePath(name);
}

void FilePick::accept() {
    if (isSave()) {
        if (name_->text().trimmed().isEmpty())
            return say(tr("Type a name, or leave with Escape."));
        if (QFileInfo::exists(target()))
            return say(tr("%1 is there already.").arg(QFileInfo{target()}.fileName()), true);
        chosen_ = {target()};
    } else if (wish_.kind == PickWish::Kind::folder) {
        chosen_ = {folder_.absolutePath()};
    } else if (chosen_.isEmpty()) {
        return say(tr("Choose a file first."));
    }
    lastFolder() = folder_.absolutePath();
    QDialog::accept();
}

// Never by Enter: what is there would be lost.
void FilePick::writeOver() {
    chosen_ = {target()};
    lastFolder() = folder_.absolutePath();
    QDialog::accept();
}

void FilePick::say(const QString& words, bool asks) {
    said_->setText(words);
    over_->setVisible(asks);
}

void FilePick::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const bool typing = name_->hasFocus();
    if (event->key() == Qt::Key_Escape)
        reject();
    else if (enter && (event->modifiers().testFlag(Qt::ControlModifier) || typing))
        accept();
    else if (enter)
        act(list_->currentRow());
    else if (event->key() == Qt::Key_Space && !typing && list_->currentRow() >= 0)
        tick(list_->currentRow());
    else if (event->key() == Qt::Key_Backspace && !typing)
        this->enter(folder_.absoluteFilePath(QStringLiteral("..")));
    else
        QDialog::keyPressEvent(event);
}

namespace {
QStringList pick(QWidget* over, const Dress& dress, const PickWish& wish) {
    FilePick picker{wish, dress, over};
    return picker.exec() == QDialog::Accepted ? picker.chosen() : QStringList{};
}
QString one(const QStringList& chosen) { return chosen.isEmpty() ? QString{} : chosen.front(); }
} // namespace

QString pickToSave(QWidget* over, const Dress& dress, const QString& title, const QString& name,
                   const QStringList& endings) {
    return one(pick(over, dress, {PickWish::Kind::save, title, {}, name, endings}));
}
QString pickFile(QWidget* over, const Dress& dress, const QString& title, const QString& start,
                 const QStringList& endings) {
    return one(pick(over, dress, {PickWish::Kind::file, title, start, {}, endings}));
}
QStringList pickFiles(QWidget* over, const Dress& dress, const QString& title, const QStringList& endings) {
    return pick(over, dress, {PickWish::Kind::files, title, {}, {}, endings});
}
QString pickFolder(QWidget* over, const Dress& dress, const QString& title, const QString& start) {
    return one(pick(over, dress, {PickWish::Kind::folder, title, start, {}, {}}));
}

} // namespace panside
