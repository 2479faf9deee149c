#pragma once
class QWidget;

namespace panside {

// Are letters typed into what has the focus? A field that takes numbers only lets them pass.
bool takesLetters(const QWidget* focused);
// Are digits?
bool takesDigits(const QWidget* focused);
// A list of choices with a letter each, or a table that is typed into, keeps letters and digits to itself.
void giveKeysOfItsOwn(QWidget& widget);
bool hasKeysOfItsOwn(const QWidget* focused);

} // namespace panside
