#pragma once
#include "ui/look/dress.h"
#include "ui/paperlog/paper_row.h"
#include "ui/review/entry_lines.h"

#include <QWidget>
#include <array>

class QLabel;
class QTableWidget;

namespace panside {

class ActionKeys;
class TypedLine;

// The entries of the shift that is open in review, one of them to be put right: Enter opens it in five fields, Enter
// again keeps what they say, Delete takes it back, Escape leaves. What was wrong stays to be read. Decides nothing: the
// list changes when the journal has.
class EntriesPane : public QWidget {
    Q_OBJECT
public:
    explicit EntriesPane(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void display(std::vector<EntryLine> lines, const WallClock& clock, Units units);
    const std::vector<EntryLine>& lines() const { return lines_; }

signals:
    void chosen(panside::Instant at); // the list stands on this entry
    // No fact instead: it is taken back.
    void correctionWanted(panside::FactId fact, const std::optional<panside::Fact>& instead);
    void said(const QString& words);
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void name();
    void sayKeys();
    void act(int key);
    const EntryLine* line() const;
    void open();
    PaperRead readFields(const EntryLine& old) const;
    void judge();
    void keep();
    void takeBack();
    void closeFields();
    bool inFields() const { return fieldsOf_ != 0; }

    Dress dress_;
    Units units_ = Units::us;
    WallClock clock_;
    std::vector<EntryLine> lines_;
    FactId fieldsOf_ = 0; // open in the fields
    FactId askedFor_ = 0; // Delete was pressed once
    QTableWidget* table_;
    QWidget* fields_;
    std::array<TypedLine*, 5> edits_{};
    QLabel* answer_;
    ActionKeys* keys_;
};

} // namespace panside
