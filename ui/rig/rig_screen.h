#pragma once
#include "ui/look/dress.h"
#include "ui/rig/rig_view.h"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace panside {

class TypedLine;
class Press;

// The rig: every setting on one page, and the person's own choices (units, language, light).
class RigScreen : public QWidget {
    Q_OBJECT
public:
    explicit RigScreen(QWidget* parent = nullptr);
    // `language` is a code of languages().
    void display(const std::vector<RigRow>& rows, Units units, const QString& language, const Dress& dress);

signals:
    void settingWanted(const panside::RigRow& row, const QString& typed);
    void unitsWanted(panside::Units units);
    void languageWanted(const QString& language);
    void lookWanted(panside::Look look);
    void left();

public slots:
    // What was wrong with the last answer, or that it was kept.
    void say(const QString& words);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    void addRow(QGridLayout* grid, std::size_t index);

    std::vector<RigRow> rows_;
    std::vector<TypedLine*> lines_;
    Units units_ = Units::us;
    QString language_;
    Dress dress_;
    QWidget* inside_ = nullptr;
    QLabel* said_ = nullptr;
};

} // namespace panside
