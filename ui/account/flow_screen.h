#pragma once
#include "ui/account/flow_view.h"
#include "ui/look/dress.h"
#include "ui/page/action_keys.h"

#include <QWidget>

class QLabel;

namespace panside {

// Bands of sugar, in at the left, out at the right, a trunk between them.
class FlowPicture : public QWidget {
    Q_OBJECT
public:
    using QWidget::QWidget;
    void display(const FlowView& view, const Dress& dress);

private:
    void paintEvent(QPaintEvent* event) override;
    FlowView view_;
    Dress dress_;
};

class FlowScreen : public QWidget {
    Q_OBJECT
public:
    explicit FlowScreen(QWidget* parent = nullptr);
    void display(const FlowView& view, const Dress& dress);

signals:
    void left();

private:
    QLabel *head_, *notes_;
    FlowPicture* picture_;
    ActionKeys* keys_;
};

} // namespace panside
