#include "tests/ui/words/marked_texts.h"

#include <QDirIterator>
#include <QFile>
#include <QMap>
#include <QRegularExpression>

namespace panside {
namespace {

const QString literalPattern = QStringLiteral(R"re("(?:[^"\\]|\\.)*")re");

// Literals that stand one after another are one.
QString joined(const QString& literals) {
    static const QRegularExpression one{literalPattern};
    QString text;
    for (auto found = one.globalMatch(literals); found.hasNext();) {
        const QString piece = found.next().captured();
        text += piece.mid(1, piece.size() - 2);
    }
    return text.replace(QLatin1String("\\\""), QLatin1String("\"")).replace(QLatin1String("\\n"), QLatin1String("\n"));
}

// Comments become blanks, so that places stay; what looks like one within a literal stays.
QString withoutComments(QString source) {
    static const QRegularExpression piece{literalPattern + QStringLiteral(R"re(|//[^\n]*|'(?:[^'\\\n]|\\.)')re")};
    for (auto found = piece.globalMatch(source); found.hasNext();) {
        const auto match = found.next();
        if (match.captured().startsWith(QLatin1String("//")))
            source.replace(match.capturedStart(), match.capturedLength(), QString{match.capturedLength(), u' '});
    }
    return source;
}

class Collector {
public:
    Collector(const QString& source, QString path) : source_{withoutComments(source)}, path_{std::move(path)} {
        // QString tr(const char* text, …) { return QCoreApplication::translate("Context", text …
        static const QRegularExpression own{
            QStringLiteral(R"re(QString tr\(const char\*[^{]*\{\s*return QCoreApplication::translate\("([\w:]+)")re")};
        ownContext_ = own.match(source_).captured(1);
    }
    std::vector<MarkedText> collect() {
        each(QStringLiteral(R"re(QT_TRANSLATE_NOOP\(\s*"([\w:]+)"\s*,\s*)re"),
             [](const auto& m) { return m.captured(1); });
        each(QStringLiteral(R"re(\btranslate\(\s*"([\w:]+)"\s*,\s*)re"), [](const auto& m) { return m.captured(1); });
        each(QStringLiteral(R"re((?:(\w+)::)?\b(?:tr|QT_TR_NOOP)\(\s*)re"), [this](const auto& m) {
            if (!m.captured(1).isEmpty())
                return QStringLiteral("panside::") + m.captured(1);
            return ownContext_.isEmpty() ? classAt(m.capturedStart()) : ownContext_;
        });
        // #define WORD(text) QT_TRANSLATE_NOOP("Context", text)
        static const QRegularExpression macro{
            QStringLiteral(R"re(#define (\w+)\((\w+)\) QT_TRANSLATE_NOOP\("(\w+)", \2\))re")};
        for (auto found = macro.globalMatch(source_); found.hasNext();) {
            const auto match = found.next();
            each(QStringLiteral(R"re(\b%1\(\s*)re").arg(match.captured(1)),
                 [context = match.captured(3)](const auto&) { return context; });
        }
        return std::move(texts_);
    }

private:
    // Every place where `before` stands in front of a literal.
    template <class ContextOf>
    void each(const QString& before, ContextOf contextOf) {
        const QRegularExpression mark{before + QStringLiteral("((?:%1\\s*)+)(?=([^;]{0,40}))").arg(literalPattern)};
        for (auto found = mark.globalMatch(source_); found.hasNext();) {
            const auto match = found.next();
            const int last = mark.captureCount();
            // tr("text", "remark", n) and translate("Context", "text", nullptr, n)
            static const QRegularExpression number{QStringLiteral(R"re(^,\s*(?:nullptr|"[^"]*")\s*,)re")};
            texts_.push_back(
                {contextOf(match), joined(match.captured(last - 1)), number.match(match.captured(last)).hasMatch(),
                 QStringLiteral("%1:%2").arg(path_).arg(source_.left(match.capturedStart()).count(u'\n') + 1)});
        }
    }
    // The class whose function a place lies in.
    QString classAt(qsizetype place) const {
        static const QRegularExpression function{QStringLiteral(R"re(^(?=\w)(?:[\w<>:*&, ]+ )?(\w+)::~?\w+\()re"),
                                                 QRegularExpression::MultilineOption};
        QString name;
        for (auto found = function.globalMatch(source_); found.hasNext();) {
            const auto match = found.next();
            if (match.capturedStart() > place)
                break;
            name = match.captured(1);
        }
        return QStringLiteral("panside::") + name;
    }

    QString source_, path_, ownContext_;
    std::vector<MarkedText> texts_;
};

} // namespace

std::vector<MarkedText> markedIn(const QString& source, const QString& path) {
    return Collector{source, path}.collect();
}

std::vector<MarkedText> markedTexts(const QStringList& folders) {
    std::vector<MarkedText> all;
    for (const QString& folder : folders) {
        const QString root = QStringLiteral(PANSIDE_SOURCE "/");
        QDirIterator files{
            root + folder, {QStringLiteral("*.cpp"), QStringLiteral("*.h")}, QDir::Files, QDirIterator::Subdirectories};
        while (files.hasNext()) {
            QFile file{files.next()};
            if (!file.open(QIODevice::ReadOnly))
                continue;
            const auto found = markedIn(QString::fromUtf8(file.readAll()), file.fileName().mid(root.size()));
            all.insert(all.end(), found.begin(), found.end());
        }
    }
    return all;
}

} // namespace panside
