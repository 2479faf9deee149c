#include "ui/words/fire_words.h"

#include <QCoreApplication>

namespace panside {

QString fireName(const std::string& fire) {
    return fire.empty() ? QCoreApplication::translate("FireWords", "evaporator") : QString::fromStdString(fire);
}

std::string fireNamed(const QString& words) {
    const QString named = words.trimmed();
    return named == fireName({}) ? std::string{} : named.toStdString();
}

} // namespace panside
