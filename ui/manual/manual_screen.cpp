#include "ui/manual/manual_screen.h"

#include "ui/look/each_language.h"
#include "ui/look/typed_line.h"
#include "ui/page/action_keys.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QScrollBar>
#include <QTextBrowser>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {
namespace {

const QString firstPage = QStringLiteral("index.html");

} // namespace

ManualScreen::ManualScreen(QWidget* parent)
    : QWidget{parent}, text_{new QTextBrowser{this}}, keys_{new ActionKeys}, typed_{new TypedLine{this}} {
    setObjectName(QStringLiteral("manual"));
    setAutoFillBackground(true);
    text_->setObjectName(QStringLiteral("manualText"));
    text_->setFrameShape(QFrame::NoFrame);
    text_->setOpenLinks(false);
    typed_->setObjectName(QStringLiteral("manualSearch"));
    typed_->hide();
    auto* keys = new QHBoxLayout;
    keys->addWidget(keys_, 1);
    keys->addWidget(typed_, 1);
    auto* column = new QVBoxLayout{this};
    column->addWidget(text_, 1);
    column->addLayout(keys);
    connect(text_, &QTextBrowser::anchorClicked, this, &ManualScreen::follow);
    keys_->answerFor(*this);
    connect(keys_, &ActionKeys::pressed, this, &ManualScreen::act);
    connect(typed_, &QLineEdit::textChanged, this, &ManualScreen::search);
    setFocusProxy(text_);
    name();
    inEachLanguage(*this, [this] { name(); });
}

void ManualScreen::name() {
    keys_->display({{Qt::Key_T, QStringLiteral("contents"), tr("Contents")},
                    {Qt::Key_B, QStringLiteral("pageBefore"), tr("Previous page")},
                    {Qt::Key_R, QStringLiteral("searchManual"), tr("Search")},
                    wayToBoard()});
    typed_->setAccessibleName(tr("Search"));
}

void ManualScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    text_->setPalette(paletteOf(dress.look));
    text_->setFont(dress.letters(mm::words));
    const auto ink = dress.inks().trace.name();
    const auto line = dress.inks().line.name();
    text_->document()->setDefaultStyleSheet(
        QStringLiteral("a{color:%1} td,th{padding:%3px;border:1px solid %2;text-align:left}"
                       "table{border-collapse:collapse} code,pre{font-family:monospace}")
            .arg(ink, line)
            .arg(dress.px(1)));
    keys_->wear(dress);
    typed_->wear(dress);
    const int gap = dress.px(mm::gap);
    layout()->setContentsMargins(gap, gap, gap, gap);
    if (!trail_.isEmpty())
        turnTo(trail_.last(), {});
}

void ManualScreen::read(ManualBook book) {
    book_ = std::move(book);
    text_->setSearchPaths({book_.folder(), book_.folder() + QStringLiteral("/..")});
    if (book_.pages().empty())
        text_->setPlainText(tr("The manual was not found beside the program: %1. Install it, or read it on another "
                               "machine; every key is on the page of all keys.")
                                .arg(book_.folder()));
    else if (trail_.isEmpty() || book_.page(trail_.last()).isEmpty())
        open(firstPage);
    else
        turnTo(trail_.last(), {});
}

void ManualScreen::open(const QString& page) {
    typed_->clear();
    typed_->hide();
    if (shown() != page)
        trail_ << page;
    turnTo(page, {});
}

void ManualScreen::turnTo(const QString& page, const QString& mark) {
    QString words = book_.page(page);
    if (words.isEmpty())
        return;
    // A picture is never wider than the page.
    const int wide = std::max(100, text_->viewport()->width() - dress_.px(2 * mm::target));
    words.replace(QStringLiteral("<img "), QStringLiteral("<img width=\"%1\" ").arg(wide));
    text_->setHtml(words);
    text_->verticalScrollBar()->setValue(0);
    if (!mark.isEmpty())
        text_->scrollToAnchor(mark);
}

// Within the manual alone: the console opens nothing from elsewhere.
void ManualScreen::follow(const QUrl& link) {
    const QString page = link.path().isEmpty() ? shown() : link.path();
    if (book_.page(page).isEmpty())
        return;
    open(page);
    turnTo(page, link.fragment());
}

void ManualScreen::back() {
    typed_->clear();
    typed_->hide();
    if (trail_.size() > 1)
        trail_.removeLast();
    if (!trail_.isEmpty())
        turnTo(trail_.last(), {});
}

void ManualScreen::search(const QString& words) {
    if (words.simplified().isEmpty()) {
        if (!trail_.isEmpty())
            turnTo(trail_.last(), {});
        return;
    }
    const QString found = book_.found(words);
    text_->setHtml(found.isEmpty() ? tr("No page has all these words.") : found);
}

QString ManualScreen::words() const { return text_->toPlainText(); }

void ManualScreen::act(int key) {
    switch (key) {
    case Qt::Key_T:
        return open(firstPage);
    case Qt::Key_B:
        return back();
    case Qt::Key_R:
        typed_->show();
        return typed_->setFocus();
    default:
        emit left();
    }
}

} // namespace panside
