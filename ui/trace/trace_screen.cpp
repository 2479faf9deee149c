#include "ui/trace/trace_screen.h"

#include "ui/look/each_language.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/page/action_keys.h"
#include "ui/trace/trace_picture.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

namespace panside {
namespace {

constexpr int namesShown = 6;

} // namespace

TraceScreen::TraceScreen(QWidget* parent)
    : QWidget{parent}, line_{new TypedLine}, head_{new QLabel}, notes_{new QLabel}, before_{new QLabel},
      picture_{new TracePicture}, keys_{new ActionKeys} {
    setObjectName(QStringLiteral("trace"));
    setAutoFillBackground(true);
    head_->setObjectName(QStringLiteral("headline"));
    notes_->setObjectName(QStringLiteral("notes"));
    line_->setObjectName(QStringLiteral("asked"));
    head_->setWordWrap(true);
    notes_->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    auto* first = new QHBoxLayout;
    first->addWidget(before_);
    first->addWidget(line_, 2);
    for (int i = 0; i < namesShown; ++i) {
        auto* press = new Press;
        press->setFocusPolicy(Qt::NoFocus);
        press->setObjectName(QStringLiteral("name%1").arg(i));
        connect(press, &Press::clicked, this, [this, press] { emit wanted(press->text()); });
        names_.push_back(press);
        first->addWidget(press, 1);
    }
    column->addLayout(first);
    column->addWidget(head_);
    column->addWidget(picture_, 1);
    column->addWidget(notes_);
    column->addWidget(keys_);
    line_->installEventFilter(this);
    connect(picture_, &TracePicture::asked, this, &TraceScreen::wanted);
    keys_->answerFor(*this);
    connect(keys_, &ActionKeys::pressed, this, &TraceScreen::act);
    connect(line_, &QLineEdit::returnPressed, this, [this] {
        if (!line_->text().trimmed().isEmpty())
            emit wanted(line_->text().trimmed());
    });
    setFocusProxy(line_);
    sayKeys();
    inEachLanguage(*this, [this] { sayKeys(); });
}

void TraceScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    letter();
    before_->setFont(dress.letters(mm::words));
    line_->wear(dress, mm::words);
    line_->setMinimumHeight(dress.px(mm::target));
    fitAsked();
    picture_->wear(dress);
    for (Press* press : names_)
        press->wear(dress);
    keys_->wear(dress);
}

// On a low page the thread needs the height: the box in its middle says what is asked about.
void TraceScreen::letter() {
    const bool low = height() < dress_.px(115);
    head_->setFont(dress_.letters(low ? mm::words : mm::lead, true));
    notes_->setFont(dress_.letters(low ? mm::smallWords : 3.5));
    layout()->setSpacing(dress_.px(low ? 1 : mm::gap));
}

void TraceScreen::resizeEvent(QResizeEvent*) { letter(); }

QString TraceScreen::headline() const { return head_->text(); }

void TraceScreen::sayNames(const QStringList& names) {
    for (int i = 0; i < namesShown; ++i) {
        Press* press = names_[static_cast<std::size_t>(i)];
        press->setVisible(i < names.size());
        press->say(names.value(i), {});
    }
}

void TraceScreen::offer(const QStringList& names) {
    offered_ = names;
    sayNames(names);
}

void TraceScreen::display(const TraceView& view, bool isLot) {
    isLot_ = isLot;
    letter();
    head_->setText(view.head);
    notes_->setText(view.notes);
    picture_->display(view);
    sayNames(offered_);
    line_->selectAll();
    sayKeys();
}

void TraceScreen::refuse(const QString& name, const QStringList& like) {
    head_->setText(like.isEmpty()
                       ? tr("Nothing is called %1: type a lot, a vessel, a night, a buyer's load or an aid's "
                            "lot.")
                             .arg(name)
                       : tr("Nothing is called %1. Did you mean one of these?").arg(name));
    sayNames(like);
}

// What can be typed is read whole.
void TraceScreen::fitAsked() {
    line_->setMinimumWidth(line_->fontMetrics().horizontalAdvance(line_->placeholderText()) + dress_.px(6));
}

void TraceScreen::sayKeys() {
    before_->setText(tr("Trace"));
    line_->setAccessibleName(tr("lot, vessel or night"));
    line_->setPlaceholderText(tr("lot, vessel or night"));
    fitAsked();
    keys_->display({{Qt::Key_R, QStringLiteral("recall"), tr("Mock recall on paper"), false, isLot_},
                    {Qt::Key_B, QStringLiteral("before"), tr("Previous search")},
                    {Qt::Key_T, QStringLiteral("type"), tr("Type a name")},
                    wayToBoard()});
}

void TraceScreen::act(int key) {
    if (key == Qt::Key_R)
        emit recallWanted();
    else if (key == Qt::Key_B)
        emit backWanted();
    else if (key == Qt::Key_T)
        line_->setFocus();
    else
        emit left();
}

// Out of the field the arrows go along the thread, and letters are keys again.
bool TraceScreen::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_ || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Down && key != Qt::Key_Escape)
        return false;
    picture_->setFocus();
    return true;
}

} // namespace panside
