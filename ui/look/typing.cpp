#include "ui/look/typing.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>
#include <QTextEdit>
#include <QVariant>

namespace panside {
namespace {

constexpr const char* ownKeys = "keysOfItsOwn";

} // namespace

bool takesLetters(const QWidget* focused) {
    if (const auto* line = qobject_cast<const QLineEdit*>(focused))
        return !line->isReadOnly() && !(line->inputMethodHints() & Qt::ImhFormattedNumbersOnly);
    if (const auto* text = qobject_cast<const QTextEdit*>(focused))
        return !text->isReadOnly();
    return qobject_cast<const QComboBox*>(focused) != nullptr;
}

bool takesDigits(const QWidget* focused) {
    return takesLetters(focused) || qobject_cast<const QLineEdit*>(focused) ||
           qobject_cast<const QAbstractSpinBox*>(focused);
}

void offerWords(QLineEdit& line, const QStringList& words) {
    auto* offered = new QCompleter{words, &line};
    offered->setCaseSensitivity(Qt::CaseInsensitive);
    offered->setFilterMode(Qt::MatchContains);
    line.setCompleter(offered);
}

QString unmarked(const QString& text) {
    QString letters;
    for (const QChar letter : text.normalized(QString::NormalizationForm_D))
        if (letter.category() != QChar::Mark_NonSpacing)
            letters += letter.toLower();
    return letters;
}

void giveKeysOfItsOwn(QWidget& widget) { widget.setProperty(ownKeys, true); }

bool hasKeysOfItsOwn(const QWidget* focused) {
    for (; focused; focused = focused->parentWidget())
        if (focused->property(ownKeys).toBool())
            return true;
    return false;
}

} // namespace panside
