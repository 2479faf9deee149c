#include "ui/page/keyed_page.h"

#include "ui/page/action_keys.h"
#include "ui/page/page.h"

#include "core/files/text_file.h"

#include <QBuffer>
#include <QKeyEvent>
#include <QLabel>
#include <QPdfWriter>
#include <QPrinter>
#include <QPrinterInfo>
#include <QProgressBar>
#include <QScrollBar>
#include <QTextBrowser>
#include <QTextDocument>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

KeyedPage::KeyedPage(const QString& name, QWidget* parent)
    : QWidget{parent}, text_{new QTextBrowser{this}}, bar_{new QProgressBar{this}}, said_{new QLabel{this}},
      row_{new ActionKeys} {
    setObjectName(name);
    setAutoFillBackground(true);
    setFocusPolicy(Qt::StrongFocus);
    text_->setObjectName(QStringLiteral("pageText"));
    text_->setFrameShape(QFrame::NoFrame);
    text_->setOpenLinks(false);
    text_->setFocusPolicy(Qt::NoFocus);
    bar_->setObjectName(QStringLiteral("progress"));
    bar_->setRange(0, 100);
    bar_->hide();
    said_->setObjectName(QStringLiteral("said"));
    said_->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    column->addWidget(text_, 1);
    column->addWidget(bar_);
    column->addWidget(said_);
    column->addWidget(row_);
    connect(row_, &ActionKeys::pressed, this, [this](int key) {
        const auto at = std::ranges::find(keys_, key, &Key::key);
        if (at != keys_.end())
            emit pressed(QString{at->name}); // the page may be shown anew while it is told
    });
}

void KeyedPage::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    text_->setPalette(paletteOf(dress.look));
    said_->setFont(dress.letters(mm::words));
    row_->wear(dress);
    const int gap = dress.px(2 * mm::gap);
    layout()->setContentsMargins(gap, gap, gap, gap);
    letterToFit(*text_, dress_, mm::words);
}

void KeyedPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layout()->activate(); // the words' own place first
    letterToFit(*text_, dress_, mm::words);
}

void KeyedPage::show(const QString& words, const std::vector<Key>& keys) {
    const int place = text_->verticalScrollBar()->value();
    text_->setHtml(words);
    letterToFit(*text_, dress_, mm::words);
    text_->verticalScrollBar()->setValue(place);
    keys_ = keys;
    std::vector<PageKey> drawn;
    for (const Key& key : keys)
        drawn.push_back({key.key, key.name, key.word});
    row_->display(drawn);
}

void KeyedPage::progress(std::optional<int> percent) {
    bar_->setVisible(percent.has_value());
    bar_->setValue(percent.value_or(0));
}

void KeyedPage::say(const QString& words) { said_->setText(words); }
QString KeyedPage::words() const { return text_->toPlainText(); }
QString KeyedPage::said() const { return said_->text(); }

void KeyedPage::keyPressEvent(QKeyEvent* event) {
    auto& bar = *text_->verticalScrollBar();
    if (event->key() == Qt::Key_Escape)
        emit left();
    else if (row_->answer(*event))
        return;
    else if (event->key() == Qt::Key_Down || event->key() == Qt::Key_PageDown)
        bar.setValue(bar.value() + (event->key() == Qt::Key_Down ? bar.singleStep() : bar.pageStep()));
    else if (event->key() == Qt::Key_Up || event->key() == Qt::Key_PageUp)
        bar.setValue(bar.value() - (event->key() == Qt::Key_Up ? bar.singleStep() : bar.pageStep()));
    else
        QWidget::keyPressEvent(event);
}

bool writePdf(const QString& words, const QString& title, const QString& place) {
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer{&bytes};
        writer.setPageSize(QPageSize{QPageSize::A4});
        writer.setTitle(title);
        QTextDocument document;
        document.setHtml(words);
        document.print(&writer);
    }
    try {
        writeText(place.toStdString(), bytes.data().toStdString());
        return true;
    } catch (const FileFault&) {
        return false; // what was there is as it was
    }
}

bool printOut(const QString& words, const QString& title, const QString& printer) {
    QPrinter paper{QPrinterInfo::printerInfo(printer), QPrinter::HighResolution};
    paper.setDocName(title);
    if (!paper.isValid())
        return false;
    QTextDocument document;
    document.setHtml(words);
    document.print(&paper);
    return true;
}

} // namespace panside
