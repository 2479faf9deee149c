#include "ui/words/said.h"

#include <QCoreApplication>

namespace panside {

QString utf8(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

QString namedAs(const QString& name, const QString& what) {
    return QCoreApplication::translate("Said", "%1: %2").arg(name, what);
}

QString said(std::string_view text, const QStringList& parts, const char* context) {
    const std::string literal{text};
    const QString marked = literal == "%1" || literal.empty() ? QString::fromStdString(literal)
                                                              : QCoreApplication::translate(context, literal.c_str());
    std::vector<std::string> written;
    for (const QString& part : parts)
        written.push_back(part.toStdString());
    return QString::fromStdString(filled(marked.toStdString(), written));
}

QString said(const Sentence& sentence, const char* context) {
    QStringList parts;
    for (const std::string& part : sentence.parts)
        parts << QString::fromStdString(part);
    if (sentence.oneOf && parts.size() > 1) {
        const QString last = parts.takeLast();
        parts = {parts.join(QStringLiteral(", ")) + QCoreApplication::translate("Words", " or ") + last};
    }
    for (const Sentence& inner : sentence.inner)
        parts << said(inner, context);
    return said(sentence.text, parts, context);
}

} // namespace panside
