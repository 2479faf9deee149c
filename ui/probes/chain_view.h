#pragma once
// The test of the whole chain, live as long as it is looked at.
#include "ui/look/dress.h"
#include "ui/probes/chain.h"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace panside {

class ChainView : public QWidget {
    Q_OBJECT
public:
    explicit ChainView(const Dress& dress, QWidget* parent = nullptr);
    void display(const std::vector<ChainRow>& rows);

signals:
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    Dress dress_;
    std::vector<ChainRow> rows_;
    QLabel* sentence_;
    QWidget* table_;
    std::vector<std::array<QLabel*, 6>> cells_;
};

} // namespace panside
