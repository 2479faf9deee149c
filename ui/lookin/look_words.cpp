#include "ui/lookin/look_words.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>
#include <memory>
#include <qrencode.h>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("LookIn", text); }

QString paragraph(const QString& words) { return QStringLiteral("<p>") + words + QStringLiteral("</p>"); }

QString faultWords(const LookState& state) {
    switch (state.fault) {
    case LookFault::addressNotOurs:
        return tr("It is not running: %1 is not an address of this machine now. Join the house's network, or press "
                  "Other address.")
            .arg(state.choices.address.isEmpty() ? QStringLiteral("–") : state.choices.address.toHtmlEscaped());
    case LookFault::portTaken:
        return tr("It is not running: another program uses port %1 of this machine. Is Panside open twice?")
            .arg(state.choices.port);
    case LookFault::none:
        break;
    }
    return {};
}

QString pictureOf(const QImage& image) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return QStringLiteral("<p><img src=\"data:image/png;base64,%1\"></p>").arg(QString::fromLatin1(bytes.toBase64()));
}

QString whereWords(const LookState& state, int modulePixels) {
    if (state.link.isEmpty())
        return paragraph(tr("It is off: this machine shows nothing to anybody."));
    return pictureOf(codeOf(state.link, modulePixels)) + paragraph(QStringLiteral("<b>%1</b>").arg(state.link)) +
           paragraph(tr("Point the phone's camera at the code, on the house's own network. Phones looking in now: %1.")
                         .arg(state.phones));
}

} // namespace

QImage codeOf(const QString& link, int modulePixels) {
    constexpr int quiet = 4;
    const std::unique_ptr<QRcode, void (*)(QRcode*)> code{
        QRcode_encodeString8bit(link.toUtf8().constData(), 0, QR_ECLEVEL_M), QRcode_free};
    if (!code)
        return {};
    const int side = code->width + 2 * quiet;
    QImage image{side, side, QImage::Format_RGB32};
    image.fill(Qt::white);
    for (int y = 0; y < code->width; ++y)
        for (int x = 0; x < code->width; ++x)
            if (code->data[y * code->width + x] & 1)
                image.setPixelColor(x + quiet, y + quiet, Qt::black);
    return image.scaled(side * modulePixels, side * modulePixels);
}

QString lookWords(const LookState& state, int modulePixels) {
    QString words = QStringLiteral("<h2>") + tr("A look in from the woodpile") + QStringLiteral("</h2>");
    if (const QString fault = faultWords(state); !fault.isEmpty())
        words += paragraph(QStringLiteral("<b>") + fault + QStringLiteral("</b>"));
    words += whereWords(state, modulePixels);
    words += paragraph(tr("A phone shows what the board shows, and calls with the same alarms while the page is open. "
                          "Nothing can be changed from there. It is a look in, not a guard: a phone that is locked or "
                          "out of reach of the network cannot call. Somebody stays with a lit fire."));
    words +=
        paragraph(tr("Anyone with the address and its key can look in; a new key shuts the old ones out. It is plain "
                     "HTTP: anyone who can listen on the house's network can read it. Nothing leaves the house."));
    return words;
}

std::vector<KeyedPage::Key> lookKeys(const LookState& state, bool otherAddress) {
    std::vector<KeyedPage::Key> keys{
        {QStringLiteral("turn"), state.choices.on ? tr("Switch it off") : tr("Switch it on"), Qt::Key_O}};
    if (state.choices.on)
        keys.push_back({QStringLiteral("key"), tr("New key"), Qt::Key_K});
    if (otherAddress)
        keys.push_back({QStringLiteral("address"), tr("Other address"), Qt::Key_N});
    return keys;
}

} // namespace panside
