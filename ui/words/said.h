#pragma once
// Core's sentences in the person's language: translated by their English text, then filled.
#include "core/words/sentence.h"

#include <QString>
#include <QStringList>

namespace panside {

QString utf8(std::string_view text);

// "pail 3: 66.8 °Brix", with the space that a language wants before its colon.
QString namedAs(const QString& name, const QString& what);

// `context`: where in the translations the room's texts stand.
QString said(const Sentence& sentence, const char* context);
QString said(std::string_view text, const QStringList& parts, const char* context);

} // namespace panside
