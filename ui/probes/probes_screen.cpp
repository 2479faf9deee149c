#include "ui/probes/probes_screen.h"

#include "core/boil/vocabulary.h"
#include "ui/look/each_language.h"
#include "ui/look/press.h"
#include "ui/look/refocus.h"
#include "ui/probes/chain_view.h"
#include "ui/probes/choice_grid.h"
#include "ui/probes/field_sheet.h"
#include "ui/words/reading_words.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace panside {

ProbesScreen::ProbesScreen(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("probes"));
    setAutoFillBackground(true);
    setFocusPolicy(Qt::StrongFocus);
    new QVBoxLayout{this};
    build();
    inEachLanguage(*this, [this] { build(); });
}

void ProbesScreen::wear(const Dress& dress) {
    if (dress == dress_ && inside_)
        return;
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    build();
}

void ProbesScreen::setUnits(Units units) {
    units_ = units;
    refresh();
}

void ProbesScreen::open(const ProbeFile& file, const std::vector<PortInfo>& ports) {
    const auto shown = setup_.shown();
    const bool same = file == setup_.file();
    ports_ = ports;
    if (!same || !shown) {
        setup_ = ProbeSetup{file};
        refused_.clear();
        if (!file.ports.empty())
            setup_.show(0);
    }
    build();
}

void ProbesScreen::changed() {
    emit tryWanted(setup_.file());
    refresh();
}

void ProbesScreen::turned(bool changedFile) { changedFile ? changed() : refresh(); }

void ProbesScreen::answer(bool yes) {
    if (!asked_)
        return;
    if (yes) {
        setup_.rewrite(asked_->after);
        changed();
    } else {
        refused_.insert(asked_->key);
        refresh();
    }
    setFocus();
}

void ProbesScreen::chooseReading(std::size_t row) {
    const FieldRule* rule = setup_.ruleOf(row);
    QStringList choices;
    for (const ReadingRow& reading : allReadings())
        choices << readingName(reading.series);
    choices << tr("not used");
    const int now = rule && rule->reads ? static_cast<int>(*rule->reads) : static_cast<int>(seriesCount);
    auto* grid = new ChoiceGrid{tr("What is “%1”?").arg(setup_.rows(units_)[row].name), choices, now, dress_};
    connect(grid, &ChoiceGrid::chosen, this, [this, row](int chosen) {
        closePanel();
        const auto all = allReadings();
        const auto index = static_cast<std::size_t>(chosen);
        turned(setup_.setReading(row, index < all.size() ? std::optional{all[index].series} : std::nullopt));
    });
    connect(grid, &ChoiceGrid::left, this, &ProbesScreen::closePanel);
    panelRow_ = row;
    openPanel(grid);
}

void ProbesScreen::chooseUnit(std::size_t row) {
    const auto units = setup_.unitChoices(row);
    const FieldRule* rule = setup_.ruleOf(row);
    if (!rule)
        return;
    QStringList choices;
    int now = -1;
    for (const UnitChoice& choice : units) {
        if (choice == UnitChoice{rule->unit, rule->thermocouple})
            now = static_cast<int>(choices.size());
        choices << unitChoiceWords(choice);
    }
    auto* grid =
        new ChoiceGrid{tr("In which unit does “%1” come?").arg(setup_.rows(units_)[row].name), choices, now, dress_};
    connect(grid, &ChoiceGrid::chosen, this, [this, row, units](int chosen) {
        closePanel();
        turned(setup_.setUnit(row, units[static_cast<std::size_t>(chosen)]));
    });
    connect(grid, &ChoiceGrid::left, this, &ProbesScreen::closePanel);
    panelRow_ = row;
    openPanel(grid);
}

void ProbesScreen::openField(std::size_t row) {
    const FieldRule* rule = setup_.ruleOf(row);
    if (!rule)
        return;
    auto* sheet = new FieldSheet{fieldForm(*setup_.rule(), *rule, units_), rule->place.has_value(), dress_};
    connect(sheet, &FieldSheet::answered, this,
            [this, row](FieldPart part, const QString& words) { takePart(row, part, words); });
    connect(sheet, &FieldSheet::left, this, &ProbesScreen::closePanel);
    connect(sheet, &FieldSheet::takeOut, this, [this, row] {
        closePanel();
        turned(setup_.ruleOf(row) && setup_.ruleOf(row)->place && setup_.removeRow(row));
    });
    panelRow_ = row;
    openPanel(sheet);
}

void ProbesScreen::takePart(std::size_t row, FieldPart part, const QString& words) {
    const FieldRule* rule = setup_.ruleOf(row);
    auto* sheet = qobject_cast<FieldSheet*>(panel_);
    if (!rule || !sheet)
        return;
    const auto answered = withAnswer(*rule, part, words, units_);
    if (const auto* wrong = std::get_if<QString>(&answered)) {
        sheet->showProblem(*wrong);
        return;
    }
    const auto before = fieldForm(*setup_.rule(), *rule, units_);
    turned(setup_.replaceRule(row, std::get<FieldRule>(answered)));
    const bool isChoice = std::ranges::any_of(
        before, [&](const FieldFormRow& asked) { return asked.part == part && !asked.choices.isEmpty(); });
    if (!isChoice)
        return;
    // A choice may bring other questions with it, and says its new word.
    openField(row);
    if (auto* turn = panel_->findChild<QWidget*>(QStringLiteral("part_%1").arg(static_cast<int>(part))))
        turn->setFocus();
}

void ProbesScreen::testChain() {
    openPanel(new ChainView{dress_});
    connect(qobject_cast<ChainView*>(panel_), &ChainView::left, this, &ProbesScreen::closePanel);
    refreshPanel();
}

void ProbesScreen::save() { emit saveWanted(setup_.fileToKeep()); }

void ProbesScreen::addRegister() {
    if (!setup_.addRegister())
        return;
    changed();
    openField(setup_.rowCount() - 1);
}

void ProbesScreen::openPanel(QWidget* panel) {
    discard(panel_);
    panel_ = panel;
    main_->hide();
    main_->parentWidget()->layout()->addWidget(panel);
    panel->show();
    panel->setFocus();
    refreshPanel();
}

void ProbesScreen::closePanel() {
    if (!panel_)
        return;
    discard(panel_);
    panel_ = nullptr;
    main_->show();
    if (panelRow_ < rows_.size())
        rows_[panelRow_].reads->setFocus();
    else
        setFocus();
    refresh();
}

void ProbesScreen::heard(std::size_t port, const HeardLine& line) {
    setup_.heard(port, line);
    refresh();
}

void ProbesScreen::status(std::size_t port, const PortStatus& status) {
    setup_.status(port, status);
    refresh();
}

void ProbesScreen::say(const QString& words) { said_->setText(words); }

void ProbesScreen::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (key == Qt::Key_Escape)
        panel_ ? closePanel() : left();
    else if (panel_)
        QWidget::keyPressEvent(event);
    else if (key == Qt::Key_K)
        save();
    else if (key == Qt::Key_G)
        emit portsWanted();
    else if (key == Qt::Key_T)
        testChain();
    else if (key == Qt::Key_H)
        emit soundWanted();
    else if (key == Qt::Key_Y || key == Qt::Key_O) // yes, oui
        answer(true);
    else if (key == Qt::Key_N)
        answer(false);
    else if (key == Qt::Key_Insert || key == Qt::Key_Plus)
        addRegister();
    else if (key == Qt::Key_Down || key == Qt::Key_Up)
        stepRow(key == Qt::Key_Down ? 1 : -1);
    else
        QWidget::keyPressEvent(event);
}

void ProbesScreen::stepRow(int by) {
    if (rows_.empty()) { // no port is chosen yet: to the ports
        focusNextPrevChild(by > 0);
        return;
    }
    int at = by > 0 ? -1 : static_cast<int>(rows_.size());
    Press* Row::*column = &Row::reads;
    for (std::size_t i = 0; i < rows_.size(); ++i)
        for (Press* Row::*each : {&Row::reads, &Row::unit, &Row::more})
            if ((rows_[i].*each)->hasFocus()) {
                at = static_cast<int>(i);
                column = each;
            }
    const Row& row = rows_[static_cast<std::size_t>(std::clamp(at + by, 0, static_cast<int>(rows_.size()) - 1))];
    ((row.*column)->isEnabled() ? row.*column : row.reads)->setFocus();
}

// A key that has the focus would take an arrow for its neighbour's.
bool ProbesScreen::eventFilter(QObject* watched, QEvent* event) {
    const int key = event->type() == QEvent::KeyPress ? static_cast<QKeyEvent&>(*event).key() : 0;
    if (key != Qt::Key_Up && key != Qt::Key_Down)
        return QWidget::eventFilter(watched, event);
    stepRow(key == Qt::Key_Down ? 1 : -1);
    return true;
}

} // namespace panside
