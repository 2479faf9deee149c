#pragma once
// The look in's server: one page and the stream behind it, to whoever has the key, on one address of this machine. It
// lives in a thread of its own and knows nothing of the boil: it hands on the newest of what it was given.
#include "core/lookin/door.h"

#include <QByteArray>
#include <QElapsedTimer>
#include <QHostAddress>
#include <QObject>
#include <atomic>
#include <list>
#include <memory>

class QTcpServer;
class QTcpSocket;

namespace panside {

// What is streamed: the picture as it is now, and the chart, which changes seldom. Each one line of JSON.
struct LookNews {
    QByteArray picture, chart;
};

class LookServer : public QObject {
    Q_OBJECT
public:
    static constexpr int connections = 32;   // at most
    static constexpr int patience = 5'000;   // milliseconds: a whole head, and an answer taken
    static constexpr int slowPhone = 15'000; // milliseconds that a stream may stand still

    LookServer(QByteArray page, std::string key);
    ~LookServer() override;
    // Begins to listen; empty, or what is wrong, in the system's words.
    QString listen(const QHostAddress& address, quint16 port);
    quint16 port() const;
    void show(const LookNews& news);
    int phones() const { return phones_; } // that stream now; from any thread

private:
    struct Guest;
    void come();
    void heard(Guest& guest);
    void answer(Guest& guest);
    void give(Guest& guest, int status, const QByteArray& type, const QByteArray& body, bool withBody);
    void stream(Guest& guest);
    void send(Guest& guest);
    void leave(QTcpSocket* socket);
    void makeRoom();
    double now() const;

    QByteArray page_, policy_;
    Door door_;
    LookNews news_;
    quint64 charts_ = 0; // how often the chart changed
    std::unique_ptr<QTcpServer> server_;
    std::list<std::unique_ptr<Guest>> guests_; // the oldest first
    QElapsedTimer clock_;
    std::atomic<int> phones_ = 0;
};

} // namespace panside
