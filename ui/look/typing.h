#pragma once
#include <QString>

class QWidget;

namespace panside {

// Are letters typed into what has the focus? A field that takes numbers only lets them pass.
bool takesLetters(const QWidget* focused);
// Are digits?
bool takesDigits(const QWidget* focused);
// A list of choices with a letter each, or a table that is typed into, keeps letters and digits to itself.
void giveKeysOfItsOwn(QWidget& widget);
bool hasKeysOfItsOwn(const QWidget* focused);

// As a hurried hand types it: small letters without their marks, so that "Québec" is found by "que".
QString unmarked(const QString& text);

} // namespace panside
