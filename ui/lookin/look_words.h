#pragma once
// The page that switches the look in on: where it is found, by whom, and what it cannot do.
#include "core/lookin/look_in.h"
#include "ui/frame/choices.h"
#include "ui/page/keyed_page.h"

#include <QImage>

namespace panside {

struct LookState {
    LookChoices choices;
    LookFault fault = LookFault::none;
    QString link; // empty while it is off
    int phones = 0;
};
QString lookWords(const LookState& state, int modulePixels);
std::vector<KeyedPage::Key> lookKeys(const LookState& state, bool otherAddress);
// The link as a QR code (ISO/IEC 18004, by libqrencode), black on white with its quiet edge of four modules.
QImage codeOf(const QString& link, int modulePixels);

} // namespace panside
