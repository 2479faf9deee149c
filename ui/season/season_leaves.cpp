#include "ui/season/season_leaves.h"

#include "ui/season/season_pictures.h"
#include "ui/words/season_words.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {
namespace {

void stackParts(QWidget* leaf, std::initializer_list<std::pair<QWidget*, int>> parts) {
    auto* inside = new QVBoxLayout{leaf};
    inside->setContentsMargins(0, 0, 0, 0);
    for (const auto& [part, stretch] : parts) {
        if (auto* label = qobject_cast<QLabel*>(part))
            label->setWordWrap(true);
        inside->addWidget(part, stretch);
    }
}

} // namespace

BesideLeaf::BesideLeaf(QWidget* parent) : QWidget{parent}, title_{new QLabel}, table_{new QTableWidget} {
    stackParts(this, {{title_, 0}, {table_, 1}});
    table_->setObjectName(QStringLiteral("besideTable"));
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    table_->setFocusPolicy(Qt::NoFocus);
}

void BesideLeaf::wear(const Dress& dress) {
    title_->setFont(dress.letters(mm::words, true));
    table_->setFont(dress.letters(mm::smallWords));
    table_->horizontalHeader()->setFont(dress.letters(mm::smallWords));
    table_->verticalHeader()->setDefaultSectionSize(dress.px(5.5));
}

void BesideLeaf::display(const SeasonShift& first, const SeasonShift& second, Units units) {
    title_->setText(tr("Two shifts side by side"));
    const auto lines = besideLines(first, second, units);
    table_->setColumnCount(4);
    table_->setHorizontalHeaderLabels(
        {{}, seasonShiftName(first.id), seasonShiftName(second.id), tr("the second less the first")});
    table_->setRowCount(static_cast<int>(lines.size()));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const QString cells[] = {lines[i].what, lines[i].first, lines[i].second, lines[i].difference};
        for (int c = 0; c < 4; ++c) {
            auto* item = new QTableWidgetItem{cells[c]};
            item->setTextAlignment((c == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
            table_->setItem(static_cast<int>(i), c, item);
        }
    }
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->resizeRowToContents(static_cast<int>(lines.size()) - 1); // the alarms may want two lines
}

TuningLeaf::TuningLeaf(QWidget* parent)
    : QWidget{parent}, title_{new QLabel}, notes_{new QLabel}, effects_{new SeasonPicture} {
    stackParts(this, {{title_, 0}, {effects_, 1}, {notes_, 0}});
    effects_->setObjectName(QStringLiteral("effects"));
    notes_->setObjectName(QStringLiteral("tuningNotes"));
    title_->setObjectName(QStringLiteral("tuningTitle"));
}

void TuningLeaf::wear(const Dress& dress) {
    dress_ = dress;
    title_->setFont(dress.letters(mm::words, true));
    notes_->setFont(dress.letters(mm::smallWords));
}

void TuningLeaf::display(const TuningWords& words) {
    title_->setText(words.title + QStringLiteral(". ") + words.basis);
    QStringList notes = words.notes;
    notes << words.tomorrow << words.caution;
    notes_->setText(notes.join(QStringLiteral("\n")).replace(QStringLiteral(" %"), QStringLiteral("\u00a0%")));
    effects_->show(words.title, [lines = words.lines, dress = dress_](QPainter& painter, const QRectF& place) {
        paintEffects(painter, place, lines, dress);
    });
}

CalibrationLeaf::CalibrationLeaf(QWidget* parent) : QWidget{parent}, title_{new QLabel}, picture_{new SeasonPicture} {
    stackParts(this, {{title_, 0}, {picture_, 1}});
}

void CalibrationLeaf::wear(const Dress& dress) {
    dress_ = dress;
    title_->setFont(dress.letters(mm::words, true));
}

void CalibrationLeaf::display(const CalibrationPicture& calibration) {
    title_->setText(tr("Was the forecast right? Draws so far: %1. The ring shows what was promised, the bar what came, "
                       "with the margin that so many draws leave (95 %).")
                        .arg(calibration.draws));
    picture_->show(title_->text(), [calibration, dress = dress_](QPainter& painter, const QRectF& place) {
        paintCalibration(painter, place, calibration, dress);
    });
}

ColumnsLeaf::ColumnsLeaf(QWidget* parent) : QWidget{parent}, list_{new QListWidget} {
    stackParts(this, {{list_, 1}});
    list_->setObjectName(QStringLiteral("columnList"));
    list_->installEventFilter(this);
    setFocusProxy(list_);
}

void ColumnsLeaf::wear(const Dress& dress) {
    dress_ = dress;
    list_->setFont(dress.letters(mm::words));
}

void ColumnsLeaf::display(const std::vector<SeasonFigure>& shown) {
    list_->clear();
    for (const FigureRow& row : allSeasonFigures()) {
        auto* item = new QListWidgetItem{headingOf(row.figure), list_};
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setSizeHint({dress_.px(60), dress_.px(mm::target)});
        const bool isShown = std::ranges::find(shown, row.figure) != shown.end();
        item->setCheckState(isShown ? Qt::Checked : Qt::Unchecked);
    }
    list_->setFlow(QListView::TopToBottom);
    list_->setWrapping(true);
    list_->setCurrentRow(0);
}

std::vector<SeasonFigure> ColumnsLeaf::ticked() const {
    std::vector<SeasonFigure> columns;
    for (int i = 0; i < list_->count(); ++i)
        if (list_->item(i)->checkState() == Qt::Checked)
            columns.push_back(allSeasonFigures()[static_cast<std::size_t>(i)].figure);
    return columns;
}

bool ColumnsLeaf::eventFilter(QObject* watched, QEvent* event) {
    if (watched != list_ || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Escape:
    case Qt::Key_K:
        emit doneWith();
        return true;
    default:
        return false; // arrows and Space are the list's own
    }
}

} // namespace panside
