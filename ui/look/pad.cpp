#include "ui/look/pad.h"

#include "ui/look/press.h"

#include <QGridLayout>
#include <QLineEdit>
#include <QLocale>

namespace panside {
namespace {

const QString backspace = QStringLiteral("⌫");
const QString minus = QStringLiteral("−");

} // namespace

Pad::Pad(const Dress& dress, Rows rows, QWidget* parent) : QWidget{parent} {
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    const auto face = [&](const QString& text, const QString& name) {
        auto* made = new Press{this};
        made->wear(dress);
        made->say(text, {});
        made->setObjectName(QStringLiteral("pad_") + name);
        made->setFocusPolicy(Qt::NoFocus);
        return made;
    };
    const QString point = QLocale{}.decimalPoint();
    const bool four = rows == Rows::four;
    const QStringList faces =
        four ? QStringList{"7", "8", "9", backspace, "4", "5", "6", minus, "1", "2", "3", point, "0"}
             : QStringList{"7", "8", "9", "4", "5", "6", "1", "2", "3", point, "0", backspace, minus};
    const int across = four ? 4 : 3;
    for (int i = 0; i < faces.size(); ++i) {
        Press* made = face(faces[i], faces[i] == minus ? QStringLiteral("minus") : faces[i]);
        connect(made, &Press::clicked, this, [this, text = faces[i]] { emit typed(text); });
        grid->addWidget(made, i / across, i % across);
    }
    Press* onward = face(tr("next"), QStringLiteral("next"));
    connect(onward, &Press::clicked, this, &Pad::next);
    grid->addWidget(onward, four ? 3 : 4, 1, 1, across - 1);
}

void Pad::type(QLineEdit& line, const QString& face) {
    line.setFocus();
    if (face == backspace)
        line.backspace();
    else
        line.insert(face);
}

} // namespace panside
