#include "ui/importing/map_screen.h"

#include "ui/look/choice_box.h"
#include "ui/look/each_language.h"
#include "ui/look/local_time.h"
#include "ui/look/typed_line.h"
#include "ui/look/typing.h"
#include "ui/page/action_keys.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>
#include <array>

namespace panside {
namespace {

enum MapColumn { columnName, columnValues, columnIs, columnUnit, mapColumns };
constexpr std::array delimiters{',', ';', '\t', '|'};
constexpr int valuesShown = 3;
constexpr double mapLetters = 3.4; // millimetres: a reading's French name and three values beside one another

} // namespace

MapScreen::MapScreen(QWidget* parent)
    : QWidget{parent}, title_{new QLabel}, formWord_{new QLabel}, zoneWord_{new QLabel}, probeWord_{new QLabel},
      answer_{new QLabel}, form_{new ChoiceBox}, delimiter_{new ChoiceBox}, decimal_{new ChoiceBox},
      zone_{new TypedLine}, probe_{new TypedLine}, table_{new QTableWidget}, keys_{new ActionKeys} {
    setObjectName(QStringLiteral("map"));
    setAutoFillBackground(true);
    setFocusPolicy(Qt::StrongFocus);
    form_->setObjectName(QStringLiteral("timeForm"));
    delimiter_->setObjectName(QStringLiteral("delimiter"));
    decimal_->setObjectName(QStringLiteral("decimal"));
    zone_->setObjectName(QStringLiteral("mapZone"));
    probe_->setObjectName(QStringLiteral("mapProbe"));
    table_->setObjectName(QStringLiteral("columns"));
    answer_->setObjectName(QStringLiteral("mapAnswer"));
    answer_->setWordWrap(true);
    auto* cut = new QHBoxLayout;
    for (QWidget* part : std::initializer_list<QWidget*>{formWord_, form_, delimiter_, decimal_})
        cut->addWidget(part);
    cut->addStretch(1);
    auto* clock = new QHBoxLayout;
    for (QWidget* part : std::initializer_list<QWidget*>{zoneWord_, zone_, probeWord_, probe_})
        clock->addWidget(part);
    clock->addStretch(1);
    auto* column = new QVBoxLayout{this};
    column->addWidget(title_);
    column->addLayout(cut);
    column->addLayout(clock);
    column->addWidget(table_, 1);
    column->addWidget(answer_);
    column->addWidget(keys_);
    table_->setColumnCount(mapColumns);
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->installEventFilter(this);
    table_->setTabKeyNavigation(false);
    table_->setFocusPolicy(Qt::NoFocus); // Tab goes from choice to choice

    offerWords(*zone_, zoneNames());
    connect(form_, &ChoiceBox::activated, this, &MapScreen::judge);
    connect(decimal_, &ChoiceBox::activated, this, &MapScreen::judge);
    connect(delimiter_, &ChoiceBox::activated, this, &MapScreen::recut);
    connect(zone_, &QLineEdit::textChanged, this, &MapScreen::judge);
    connect(probe_, &QLineEdit::textChanged, this, &MapScreen::judge);
    connect(keys_, &ActionKeys::pressed, this, [this](int key) { key == Qt::Key_Escape ? left() : keep(); });
    name();
    inEachLanguage(*this, [this] {
        name();
        if (!beginning_.empty())
            fillTable();
    });
}

void MapScreen::name() {
    keys_->display({{ctrlEnter, QStringLiteral("keepMap"), tr("Keep this and read it in")},
                    {Qt::Key_Escape, QStringLiteral("leaveMap"), tr("Leave it")}});
    formWord_->setText(tr("its times look like"));
    zoneWord_->setText(tr("time zone of its clock"));
    probeWord_->setText(tr("name of the probe"));
    table_->setHorizontalHeaderLabels({tr("column"), tr("first values"), tr("is"), tr("unit")});
    const auto refill = [](ChoiceBox* box, const QStringList& words) {
        const int was = std::max(0, box->currentIndex());
        box->clear();
        box->addItems(words);
        box->setCurrentIndex(was);
    };
    refill(form_, timeFormWords());
    refill(delimiter_, {tr("commas between"), tr("semicolons between"), tr("tabs between"), tr("bars between")});
    refill(decimal_, {tr("decimal point"), tr("decimal comma")});
}

void MapScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    title_->setFont(dress.letters(mm::words, true));
    answer_->setFont(dress.letters(mm::words));
    keys_->wear(dress);
    for (QWidget* words : std::initializer_list<QWidget*>{formWord_, zoneWord_, probeWord_})
        words->setFont(dress.letters(mapLetters));
    for (TypedLine* field : {zone_, probe_}) {
        field->wear(dress, mapLetters);
        field->setMinimumHeight(dress.px(mm::target));
    }
    for (ChoiceBox* box : {form_, delimiter_, decimal_})
        box->wear(dress, mapLetters);
    zone_->setMinimumWidth(dress.px(60));
    probe_->setMinimumWidth(dress.px(60));
    table_->setFont(dress.letters(mapLetters));
    table_->horizontalHeader()->setFont(dress.letters(mm::smallWords));
    table_->verticalHeader()->setDefaultSectionSize(dress.px(mm::target));
    if (!beginning_.empty())
        fillTable();
}

void MapScreen::open(const QString& file, std::string beginning, ForeignMap map, Units units) {
    file_ = file;
    beginning_ = std::move(beginning);
    map_ = std::move(map);
    units_ = units;
    title_->setText(tr("%1: what its columns are").arg(file));
    fillTable();
    if (table_->rowCount() > 0)
        table_->cellWidget(0, columnIs)->setFocus();
}

ChoiceBox* MapScreen::roleBox(int column) {
    auto* box = new ChoiceBox;
    box->setObjectName(QStringLiteral("is%1").arg(column));
    const auto roles = columnRoles();
    const ColumnRole role = roleOf(map_, column);
    for (std::size_t i = 0; i < roles.size(); ++i) {
        box->addItem(roleWord(roles[i]));
        if (roles[i] == role)
            box->setCurrentIndex(static_cast<int>(i));
    }
    box->wear(dress_, mapLetters);
    connect(box, &ChoiceBox::currentIndexChanged, this, [this, column](int chosen) { choose(column, chosen); });
    return box;
}

ChoiceBox* MapScreen::unitBox(int column) {
    auto* box = new ChoiceBox;
    box->setObjectName(QStringLiteral("unit%1").arg(column));
    box->wear(dress_, mapLetters);
    for (const ForeignColumn& mapped : map_.columns) {
        if (mapped.column != column)
            continue;
        const auto units = logUnits(mapped.series);
        for (std::size_t i = 0; i < units.size(); ++i) {
            box->addItem(symbolOf(units[i]));
            if (units[i] == mapped.unit)
                box->setCurrentIndex(static_cast<int>(i));
        }
    }
    box->setEnabled(box->count() > 0);
    connect(box, &ChoiceBox::currentIndexChanged, this, [this, column](int chosen) {
        for (ForeignColumn& mapped : map_.columns)
            if (mapped.column == column)
                mapped.unit = logUnits(mapped.series)[static_cast<std::size_t>(chosen)];
        judge();
    });
    return box;
}

void MapScreen::choose(int column, int chosen) {
    const ColumnRole role = columnRoles()[static_cast<std::size_t>(chosen)];
    const int timeBefore = map_.time;
    setRole(map_, column, role, role.kind == ColumnRole::Kind::reading ? usualUnit(role.series, units_) : Unit::none);
    table_->setCellWidget(column, columnUnit, unitBox(column));
    // There is one time: it moves.
    if (role.kind == ColumnRole::Kind::time && timeBefore >= 0 && timeBefore != column)
        if (auto* box = qobject_cast<ChoiceBox*>(table_->cellWidget(timeBefore, columnIs)))
            box->setCurrentIndex(0);
    judge();
}

void MapScreen::fillTable() {
    filling_ = true;
    const auto sample = sampleOf(beginning_, map_.delimiter, map_.heading);
    form_->setCurrentIndex(static_cast<int>(map_.form));
    decimal_->setCurrentIndex(map_.decimalComma ? 1 : 0);
    for (std::size_t i = 0; i < delimiters.size(); ++i)
        if (delimiters[i] == map_.delimiter)
            delimiter_->setCurrentIndex(static_cast<int>(i));
    zone_->setText(QString::fromStdString(map_.zone));
    probe_->setText(QString::fromStdString(map_.probe));
    table_->setRowCount(0);
    table_->setRowCount(static_cast<int>(sample.heading.size()));
    for (std::size_t c = 0; c < sample.heading.size(); ++c) {
        const int row = static_cast<int>(c);
        QStringList values;
        for (const auto& cells : sample.rows)
            if (c < cells.size() && values.size() < valuesShown)
                values << QString::fromStdString(cells[c]);
        table_->setItem(row, columnName, new QTableWidgetItem{QString::fromStdString(sample.heading[c])});
        table_->setItem(row, columnValues, new QTableWidgetItem{values.join(QStringLiteral("   "))});
        table_->setCellWidget(row, columnIs, roleBox(row));
        table_->setCellWidget(row, columnUnit, unitBox(row));
    }
    table_->resizeColumnsToContents();
    table_->setColumnWidth(columnIs, dress_.px(80));
    table_->setColumnWidth(columnUnit, dress_.px(28));
    table_->horizontalHeader()->setSectionResizeMode(columnValues, QHeaderView::Stretch);
    filling_ = false;
    judge();
}

// Other marks between the cells: all that was said of the columns is said of others now.
void MapScreen::recut() {
    const char chosen = delimiters[static_cast<std::size_t>(std::max(0, delimiter_->currentIndex()))];
    if (chosen == map_.delimiter)
        return;
    map_.delimiter = chosen;
    map_.columns.clear();
    map_.date.reset();
    map_.time = -1;
    fillTable();
}

void MapScreen::judge() {
    if (filling_)
        return;
    map_.form = static_cast<TimeForm>(std::max(0, form_->currentIndex()));
    map_.decimalComma = decimal_->currentIndex() == 1;
    map_.zone = zone_->text().trimmed().toStdString();
    map_.probe = probe_->text().simplified().toStdString();
    const auto answer = mapAnswer(beginning_, map_, units_);
    good_ = answer.good;
    answer_->setText(answer.good ? tr("The first row becomes: %1").arg(answer.words)
                                 : tr("not yet: %1").arg(answer.words));
}

void MapScreen::keep() {
    judge();
    if (good_)
        emit kept(map_);
}

void MapScreen::keyPressEvent(QKeyEvent* event) {
    if (!keys_->answer(*event))
        QWidget::keyPressEvent(event);
}

// The table would take it for its own, and give it back to the choice that it came from.
bool MapScreen::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress) {
        keyPressEvent(static_cast<QKeyEvent*>(event));
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace panside
