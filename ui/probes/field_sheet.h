#pragma once
// The finer points of one field, typed or turned; what they make of the reading stands above them, live.
#include "ui/look/dress.h"
#include "ui/probes/field_form.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QLineEdit;

namespace panside {

class FieldSheet : public QWidget {
    Q_OBJECT
public:
    FieldSheet(std::vector<FieldFormRow> rows, bool canBeTakenOut, const Dress& dress, QWidget* parent = nullptr);
    // What arrives and what it becomes.
    void showLive(const QString& words);
    void showProblem(const QString& words);

signals:
    void answered(panside::FieldPart part, const QString& answer);
    void takeOut();
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void addRow(QGridLayout* grid, std::size_t index, const Dress& dress);
    void leave();

    std::vector<FieldFormRow> rows_;
    std::vector<QLineEdit*> lines_; // one a row; nullptr for a choice
    QLabel *live_, *problem_;
};

} // namespace panside
