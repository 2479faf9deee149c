#pragma once
#include "ui/look/dress.h"
#include "ui/trace/trace_view.h"

#include <QWidget>

class QLabel;

namespace panside {

class ActionKeys;
class Press;
class TracePicture;
class TypedLine;

// What is asked about is typed, scanned or pressed; its thread stands below, and each box of it can be asked in turn.
class TraceScreen : public QWidget {
    Q_OBJECT
public:
    explicit TraceScreen(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const TraceView& view, bool isLot);
    // Nothing is called so; names that are like it.
    void refuse(const QString& name, const QStringList& like);
    void offer(const QStringList& names);
    QString headline() const;

signals:
    void wanted(const QString& name);
    void recallWanted();
    void backWanted(); // to what was asked before
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void letter();
    void fitAsked();
    void act(int key);
    void sayKeys();
    void sayNames(const QStringList& names);
    Dress dress_;
    TypedLine* line_;
    QLabel *head_, *notes_, *before_;
    TracePicture* picture_;
    std::vector<Press*> names_;
    QStringList offered_;
    ActionKeys* keys_;
    bool isLot_ = false;
};

} // namespace panside
