#include "ui/filter/filter_screen.h"

#include "ui/filter/filter_picture.h"
#include "ui/look/each_language.h"
#include "ui/look/pad.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace panside {

FilterScreen::FilterScreen(QWidget* parent)
    : QWidget{parent}, across_{new QHBoxLayout{this}}, label_{new QLabel}, gauge_{new TypedLine}, keep_{new Press},
      list_{new ListPage{QStringLiteral("runs")}}, picture_{new FilterPicture} {
    setObjectName(QStringLiteral("filter"));
    setAutoFillBackground(true);
    gauge_->setObjectName(QStringLiteral("gauge"));
    gauge_->takeNumbers(false);
    keep_->setObjectName(QStringLiteral("keepGauge"));
    across_->setContentsMargins(0, 0, 0, 0);
    auto* column = new QVBoxLayout;
    across_->addLayout(column, 1);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(9, 9, 9, 0);
    row->addWidget(label_);
    row->addWidget(gauge_, 1);
    row->addWidget(keep_);
    row->addStretch(1);
    column->addLayout(row);
    auto* below = new QHBoxLayout;
    below->setContentsMargins(0, 0, 0, 0);
    below->addWidget(list_, 5);
    below->addWidget(picture_, 3);
    column->addLayout(below, 1);
    connect(gauge_, &QLineEdit::returnPressed, this, &FilterScreen::give);
    connect(keep_, &Press::clicked, this, &FilterScreen::give);
    connect(list_, &ListPage::pressed, this, &FilterScreen::pressed);
    gauge_->installEventFilter(this);
    list_->answerFor(*this);
    list_->answerFor(*gauge_); // a line would swallow the letters that are no number
    setFocusProxy(gauge_);
    name();
    inEachLanguage(*this, [this] { name(); });
}

void FilterScreen::name() {
    label_->setText(tr("The gauge shows"));
    gauge_->setAccessibleName(label_->text());
    keep_->say(tr("Keep it"), tr("Enter"));
}

void FilterScreen::wear(const Dress& dress, const QString& unit) {
    setPalette(paletteOf(dress.look));
    label_->setFont(dress.letters(mm::words));
    gauge_->wear(dress, mm::lead);
    gauge_->setUnit(unit);
    gauge_->setMinimumHeight(dress.px(mm::target));
    keep_->wear(dress);
    list_->wear(dress);
    picture_->wear(dress);
    delete pad_;
    pad_ = new Pad{dress, Pad::Rows::four};
    connect(pad_, &Pad::typed, this, [this](const QString& face) { Pad::type(*gauge_, face); });
    connect(pad_, &Pad::next, this, &FilterScreen::give);
    across_->addWidget(pad_, 0, Qt::AlignTop);
    showPad(padShown_);
}

void FilterScreen::showPad(bool shown) {
    padShown_ = shown && running_;
    if (pad_)
        pad_->setVisible(padShown_);
    picture_->setVisible(hasCurve_ && !padShown_);
}

bool FilterScreen::eventFilter(QObject* watched, QEvent* event) {
    if (watched == gauge_ && event->type() == QEvent::MouseButtonPress)
        showPad(true);
    return QWidget::eventFilter(watched, event);
}

void FilterScreen::display(const ListView& view, const FilterChart& chart, bool running) {
    list_->display(view);
    picture_->display(chart);
    running_ = running;
    hasCurve_ = !picture_->isHidden();
    gauge_->setEnabled(running);
    showPad(padShown_);
    keep_->setEnabled(running);
}

void FilterScreen::give() {
    const QString number = gauge_->text().trimmed();
    showPad(false);
    if (number.isEmpty())
        return;
    gauge_->clear();
    emit gaugeTyped(number);
}

} // namespace panside
