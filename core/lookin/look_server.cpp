#include "core/lookin/look_server.h"

#include "core/lookin/request.h"

#include <QCryptographicHash>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTimer>
#include <algorithm>

namespace panside {
namespace {

QByteArray phrase(int status) {
    switch (status) {
    case 200:
        return "OK";
    case 404:
        return "Not Found";
    case 405:
        return "Method Not Allowed";
    case 413:
        return "Content Too Large";
    case 429:
        return "Too Many Requests";
    case 431:
        return "Request Header Fields Too Large";
    case 503:
        return "Service Unavailable";
    case 505:
        return "HTTP Version Not Supported";
    default:
        return "Bad Request";
    }
}

// The page's own script and style, and nothing else, by their hashes (Content Security Policy, level 2).
QByteArray hashOf(const QByteArray& page, const QByteArray& element) {
    const auto open = page.indexOf('<' + element + '>') + element.size() + 2;
    const auto close = page.indexOf("</" + element + '>', open);
    const auto hash = QCryptographicHash::hash(page.mid(open, close - open), QCryptographicHash::Sha256);
    return "'sha256-" + hash.toBase64() + '\'';
}

} // namespace

struct LookServer::Guest {
    QTcpSocket* socket;
    std::unique_ptr<QTimer> patience;
    std::string received;
    bool answered = false, streams = false, waiting = false; // `waiting`: newer news than it has taken
    quint64 chart = 0;                                       // the one it has
};

LookServer::LookServer(QByteArray page, std::string key)
    : page_{std::move(page)}, policy_{"default-src 'none'; script-src " + hashOf(page_, "script") + "; style-src " +
                                      hashOf(page_, "style") +
                                      "; connect-src 'self'; img-src data:; base-uri 'none'; form-action 'none'; "
                                      "frame-ancestors 'none'"},
      door_{std::move(key)} {
    clock_.start();
}

LookServer::~LookServer() {
    for (const auto& guest : guests_) // the sockets go with the server
        guest->socket->disconnect();
}

double LookServer::now() const { return static_cast<double>(clock_.elapsed()) / 1000; }

QString LookServer::listen(const QHostAddress& address, quint16 port) {
    server_ = std::make_unique<QTcpServer>();
    connect(server_.get(), &QTcpServer::newConnection, this, &LookServer::come);
    return server_->listen(address, port) ? QString{} : server_->errorString();
}

quint16 LookServer::port() const { return server_ ? server_->serverPort() : quint16{0}; }

// Who streams has shown the key; of the others the oldest gives way.
void LookServer::makeRoom() {
    if (guests_.size() < connections)
        return;
    const auto idle = std::ranges::find_if(guests_, [](const auto& guest) { return !guest->streams; });
    if (idle != guests_.end())
        (*idle)->socket->abort();
}

void LookServer::come() {
    while (QTcpSocket* socket = server_->nextPendingConnection()) {
        makeRoom();
        if (guests_.size() >= connections) {
            socket->abort();
            socket->deleteLater();
            continue;
        }
        auto owned = std::make_unique<Guest>();
        Guest& guest = *owned;
        guest.socket = socket;
        guest.patience = std::make_unique<QTimer>();
        guest.patience->setSingleShot(true);
        guests_.push_back(std::move(owned));
        socket->setReadBufferSize(static_cast<qint64>(greatestHead));
        connect(guest.patience.get(), &QTimer::timeout, socket, [socket] { socket->abort(); });
        connect(socket, &QTcpSocket::readyRead, this, [this, &guest] { heard(guest); });
        connect(socket, &QTcpSocket::bytesWritten, this, [this, &guest] {
            if (guest.streams && guest.socket->bytesToWrite() == 0)
                send(guest);
        });
        connect(socket, &QTcpSocket::disconnected, this, [this, socket] { leave(socket); });
        guest.patience->start(patience);
    }
}

void LookServer::leave(QTcpSocket* socket) {
    const auto found = std::ranges::find_if(guests_, [&](const auto& guest) { return guest->socket == socket; });
    if (found == guests_.end())
        return;
    if ((*found)->streams)
        --phones_;
    socket->disconnect();
    socket->deleteLater();
    (*found)->patience.release()->deleteLater(); // it may be what asked for this
    guests_.erase(found);
}

void LookServer::heard(Guest& guest) {
    const QByteArray piece = guest.socket->read(static_cast<qint64>(greatestHead));
    if (guest.answered)
        return; // whatever comes after is not looked at
    guest.received.append(piece.constData(), static_cast<std::size_t>(piece.size()));
    answer(guest);
}

// "/KEY/" is the page, "/KEY/stream" what is behind it. Nothing else is there, whatever it is called.
void LookServer::answer(Guest& guest) {
    const auto head = requestIn(guest.received);
    if (!head)
        return;
    guest.answered = true;
    const std::string address = guest.socket->peerAddress().toString().toStdString();
    if (door_.waits(address, now()))
        return give(guest, 429, "text/plain", "Wait a minute.\n", true);
    if (const auto* refusal = std::get_if<Refusal>(&*head))
        return give(guest, refusal->status, "text/plain", phrase(refusal->status) + '\n', true);
    const auto& request = std::get<LookRequest>(*head);
    const std::string_view path = std::string_view{request.path}.substr(1);
    const auto slash = path.find('/');
    if (!door_.isRight(path.substr(0, slash))) {
        if (path != "favicon.ico") // browsers ask for it by themselves
            door_.wrong(address, now());
        return give(guest, 404, "text/plain", "Not Found\n", request.bodyWanted);
    }
    const auto rest = slash == std::string_view::npos ? std::string_view{} : path.substr(slash + 1);
    if (slash != std::string_view::npos && rest.empty())
        return give(guest, 200, "text/html; charset=utf-8", page_, request.bodyWanted);
    if (rest == "stream" && request.bodyWanted)
        return stream(guest);
    give(guest, 404, "text/plain", "Not Found\n", request.bodyWanted);
}

void LookServer::give(Guest& guest, int status, const QByteArray& type, const QByteArray& body, bool withBody) {
    const QByteArray more = status == 405 ? "Allow: GET, HEAD\r\n" : status == 429 ? "Retry-After: 60\r\n" : "";
    guest.socket->write("HTTP/1.1 " + QByteArray::number(status) + ' ' + phrase(status) + "\r\nContent-Type: " + type +
                        "\r\nContent-Length: " + QByteArray::number(body.size()) +
                        "\r\nConnection: close\r\nCache-Control: no-store\r\nX-Content-Type-Options: nosniff\r\n"
                        "X-Frame-Options: DENY\r\nReferrer-Policy: no-referrer\r\n"
                        "Cross-Origin-Resource-Policy: same-origin\r\nContent-Security-Policy: " +
                        policy_ + "\r\n" + more + "\r\n" + (withBody ? body : QByteArray{}));
    guest.patience->start(patience);
    guest.socket->disconnectFromHost();
}

void LookServer::stream(Guest& guest) {
    guest.socket->write("HTTP/1.1 200 OK\r\nContent-Type: text/event-stream\r\nConnection: close\r\n"
                        "Cache-Control: no-store\r\nX-Content-Type-Options: nosniff\r\nReferrer-Policy: no-referrer\r\n"
                        "Cross-Origin-Resource-Policy: same-origin\r\n\r\nretry: 1000\n\n");
    guest.streams = true;
    ++phones_;
    guest.waiting = !news_.picture.isEmpty();
    send(guest);
}

// A phone that has not taken the last yet skips this one, and gets the newest once it has.
void LookServer::send(Guest& guest) {
    constexpr qint64 unsent = 4096; // of the head and of small news
    if (!guest.waiting || guest.socket->bytesToWrite() > unsent)
        return;
    guest.waiting = false;
    QByteArray all;
    if (guest.chart != charts_)
        all += "event: chart\ndata: " + news_.chart + "\n\n";
    guest.chart = charts_;
    guest.socket->write(all + "data: " + news_.picture + "\n\n");
    guest.patience->start(slowPhone);
}

void LookServer::show(const LookNews& news) {
    if (news.chart != news_.chart)
        ++charts_;
    news_ = news;
    for (const auto& guest : guests_)
        if (guest->streams) {
            guest->waiting = true;
            send(*guest);
        }
}

} // namespace panside
