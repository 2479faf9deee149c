#pragma once
// The one voice of the console: calls the highest alarm that nobody has seen, louder each time, and is still when it
// was. Without a loudspeaker it is silent and says so; nothing else changes.
#include "core/boil/picture.h"
#include "ui/sound/speech.h"

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
    void setSpoken(bool spoken) { spoken_ = spoken; }
    // Calls once as such an alarm does at its loudest: the volume test of the set-up.
    void test(Priority priority);
    bool canBeHeard() const;
    int calls() const { return calls_; } // since the alarm was raised

    // A call that is due is no alarm: one soft tone when it comes, never again.

    // What there is to call about: the highest alarm not yet seen; nullptr for none.
    static const AlarmPicture* urgent(const Picture& picture);

signals:
    void called(panside::Priority priority, double loudness);
    void spoken(const QString& words);

private:
    void call();
    void tellDue(const Picture& picture);
    void sound(Priority priority, double loudness);
    void speak();

    std::unique_ptr<QAudioSink> sink_;
    QByteArray bytes_;
    QBuffer buffer_;
    QTimer again_, afterTone_;
    Speech speech_;
    QString line_; // what is wrong, of the alarm that is called about
    bool spoken_ = false;
    std::optional<Priority> about_;
    double volume_ = 1;
    int calls_ = 0;
    bool drawDue_ = false, fireDue_ = false;
};

} // namespace panside
