#pragma once
#include <QStringList>

class QLineEdit;
class QWidget;

namespace panside {

// Are letters typed into what has the focus? A field that takes numbers only lets them pass.
bool takesLetters(const QWidget* focused);
// Are digits?
bool takesDigits(const QWidget* focused);
// A list of choices with a letter each, or a table that is typed into, keeps letters and digits to itself.
void giveKeysOfItsOwn(QWidget& widget);
bool hasKeysOfItsOwn(const QWidget* focused);

// Below the line stand those of these words that hold what is typed.
void offerWords(QLineEdit& line, const QStringList& words);

// As a hurried hand types it: small letters without their marks, so that "Québec" is found by "que".
QString unmarked(const QString& text);

} // namespace panside
