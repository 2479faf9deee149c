#include "ui/words/known_phrase.h"

#include <QCoreApplication>
#include <QStringList>
#include <optional>
#include <string_view>

namespace panside {

namespace {

// What stands in `text` where the phrase has its marks; nullopt where it does not fit.
std::optional<QStringList> fillingOf(std::string_view text, std::string_view phrase) {
    QStringList filling;
    for (const std::string_view mark : {"%1", "%2"}) {
        const auto place = phrase.find(mark);
        if (place == std::string_view::npos)
            break;
        if (!text.starts_with(phrase.substr(0, place)))
            return std::nullopt;
        text.remove_prefix(place);
        phrase.remove_prefix(place + mark.size());
        const auto next = phrase.substr(0, phrase.find('%'));
        const auto end = next.empty() ? text.size() : text.rfind(next);
        if (end == std::string_view::npos)
            return std::nullopt;
        filling << QString::fromUtf8(text.data(), static_cast<qsizetype>(end));
        text.remove_prefix(end);
    }
    return text == phrase ? std::optional{filling} : std::nullopt;
}

} // namespace

QString knownPhrase(const std::string& english, const char* context, std::span<const char* const> phrases) {
    for (const char* const phrase : phrases) {
        const auto filling = fillingOf(english, phrase);
        if (!filling)
            continue;
        QString said = QCoreApplication::translate(context, phrase);
        for (qsizetype i = 0; i < filling->size(); ++i)
            said.replace(QStringLiteral("%") + QString::number(i + 1), (*filling)[i]);
        return said;
    }
    return QString::fromStdString(english);
}

} // namespace panside
