#pragma once
// Digits for a finger: what is pressed goes into the line that has the focus. The line keeps it: the pad takes none.
#include "ui/look/dress.h"

#include <QWidget>

class QLineEdit;

namespace panside {

class Pad : public QWidget {
    Q_OBJECT
public:
    enum class Rows { five, four }; // high and narrow, or for a low page
    explicit Pad(const Dress& dress, Rows rows = Rows::five, QWidget* parent = nullptr);
    // What a face of the pad does to a line.
    static void type(QLineEdit& line, const QString& face);

signals:
    void typed(const QString& face);
    void next();
};

} // namespace panside
