#pragma once
#include "ui/look/dress.h"

class QTextBrowser;

namespace panside {

// Letters as tall, up to `tallest` millimetres, as lets the whole of the words stand on the page: few words are read
// from further away. Those that do not stand on it even as small words are scrolled through.
void letterToFit(QTextBrowser& text, const Dress& dress, double tallest);

} // namespace panside
