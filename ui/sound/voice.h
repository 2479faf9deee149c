#pragma once
// The one voice of the console: calls the highest alarm that nobody has seen, louder each time, and is still when it
// was. Without a loudspeaker it is silent and says so; nothing else changes.
#include "core/boil/picture.h"

#include <QBuffer>
#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>

class QAudioSink;

namespace panside {

class Voice : public QObject {
    Q_OBJECT
public:
    explicit Voice(QObject* parent = nullptr);
    ~Voice() override;

    void display(const Picture& picture);
    void setVolume(double volume); // 0 to 1
    // Calls once as an urgent alarm does at its loudest: the volume test of the set-up.
    void test();
    bool canBeHeard() const;
    int calls() const { return calls_; } // since the alarm was raised

    // What there is to call about: the highest priority not yet seen.
    static std::optional<Priority> urgent(const Picture& picture);

signals:
    void called(panside::Priority priority, double loudness);

private:
    void call();
    void sound(Priority priority, double loudness);

    std::unique_ptr<QAudioSink> sink_;
    QByteArray bytes_;
    QBuffer buffer_;
    QTimer again_;
    std::optional<Priority> about_;
    double volume_ = 1;
    int calls_ = 0;
};

} // namespace panside
