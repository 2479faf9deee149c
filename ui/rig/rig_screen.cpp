#include "ui/rig/rig_screen.h"

#include "core/boil/vocabulary.h"
#include "ui/frame/languages.h"
#include "ui/look/each_language.h"
#include "ui/look/parts.h"
#include "ui/look/refocus.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

namespace panside {

RigScreen::RigScreen(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("rig"));
    setAutoFillBackground(true);
    new QVBoxLayout{this};
    inEachLanguage(*this, [this] {
        if (inside_)
            build();
    });
}

void RigScreen::display(const std::vector<RigRow>& rows, Units units, const QString& language, const Dress& dress) {
    const bool same = rows == rows_ && units == units_ && language == language_ && dress == dress_;
    if (same && inside_)
        return;
    rows_ = rows;
    units_ = units;
    language_ = language;
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    build();
}

void RigScreen::build() {
    const Focused focused = focusedIn(inside_);
    discard(inside_);
    lines_.clear();
    inside_ = new QWidget;
    layout()->addWidget(inside_);
    auto* column = new QVBoxLayout{inside_};
    column->setContentsMargins(0, 0, 0, 0); // the page has its own
    column->addWidget(titleOf(dress_, tr("The rig and the day's choices")));

    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(dress_.px(mm::gap));
    grid->setVerticalSpacing(dress_.px(mm::gap) / 2);
    for (std::size_t i = 0; i < rows_.size(); ++i)
        addRow(grid, i);
    for (const int usual : {3, 7}) // what is left of the width stands behind the words, not among them
        grid->setColumnStretch(usual, 1);
    column->addLayout(grid);

    said_ = labelOf(dress_, QStringLiteral("said"), mm::words);
    column->addWidget(said_);
    column->addStretch();

    auto* choices = new QHBoxLayout;
    Press* units =
        pressOf(dress_, units_ == Units::us ? tr("°F, gal, in, lb") : tr("°C, L, mm, kg"), {}, QStringLiteral("units"));
    Press* language = pressOf(dress_, QString::fromUtf8(languageOf(language_).name), {}, QStringLiteral("language"));
    Press* look =
        pressOf(dress_, dress_.look == Look::day ? tr("Light: day") : tr("Light: night"), {}, QStringLiteral("look"));
    connect(units, &Press::clicked, this,
            [this] { emit unitsWanted(units_ == Units::us ? Units::metric : Units::us); });
    connect(language, &Press::clicked, this, [this] {
        const Language* next = &languageOf(language_) + 1;
        emit languageWanted(
            QLatin1String((next == std::to_address(languages().end()) ? languages().front() : *next).code));
    });
    connect(look, &Press::clicked, this,
            [this] { emit lookWanted(dress_.look == Look::day ? Look::night : Look::day); });
    for (Press* button : {units, language, look})
        choices->addWidget(button, 1);
    column->addLayout(choices);
    refocus(*inside_, focused);
}

void RigScreen::addRow(QGridLayout* grid, std::size_t index) {
    const RigRow& row = rows_[index];
    const int half = static_cast<int>((rows_.size() + 1) / 2);
    const int line = static_cast<int>(index) % half, left = static_cast<int>(index) / half * 4;
    auto* label = new QLabel{row.label};
    label->setFont(dress_.letters(mm::smallWords));
    label->setWordWrap(true);
    TypedLine* edit =
        lineOf(dress_, QStringLiteral("setting_%1").arg(static_cast<int>(row.key)), row.label, row.answer);
    if (!isWords(row.key))
        edit->takeNumbers(true);
    edit->setUnit(symbolOf(row.unit));
    edit->setMaximumWidth(dress_.px(36));
    auto* usual = new QLabel{row.usual};
    usual->setFont(dress_.letters(mm::smallWords));
    usual->setWordWrap(true);
    usual->setForegroundRole(QPalette::PlaceholderText);
    label->setBuddy(edit);
    connect(edit, &QLineEdit::editingFinished, this, [this, index, edit] {
        // Leaving a field as it was sets nothing.
        if (edit->text().trimmed() != rows_[index].answer && !edit->text().trimmed().isEmpty())
            emit settingWanted(rows_[index], edit->text());
    });
    grid->addWidget(label, line, left);
    grid->addWidget(edit, line, left + 1);
    grid->addWidget(usual, line, left + 3);
    lines_.push_back(edit);
}

void RigScreen::say(const QString& words) {
    if (said_)
        said_->setText(words);
}

void RigScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit left();
    else
        QWidget::keyPressEvent(event);
}

} // namespace panside
