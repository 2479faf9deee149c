#pragma once
// The parts that pages are made of, dressed and named for tests and readers.
#include "ui/look/press.h"
#include "ui/look/typed_line.h"

#include <QLabel>

namespace panside {

// A key with its word and, if there is one, the key on the keyboard that does the same.
Press* pressOf(const Dress& dress, const QString& word, const QString& key, const QString& name,
               Qt::FocusPolicy focus = Qt::StrongFocus);
// Words that take as many lines as they need; letters so many millimetres high.
QLabel* labelOf(const Dress& dress, const QString& name, double height, bool bold = false);
// The same, but in one line: the name of a field, a page's title.
QLabel* wordOf(const Dress& dress, const QString& words, double height = mm::words, bool bold = false);
QLabel* titleOf(const Dress& dress, const QString& words);
// A line to type into, with what stands in it; `asks` is what a reader says of it.
TypedLine* lineOf(const Dress& dress, const QString& name, const QString& asks, const QString& answer,
                  double height = mm::words);

} // namespace panside
