#include "core/lookin/look_in.h"

#include <QNetworkInterface>

namespace panside {

QString LookPlace::link() const {
    const QHostAddress host{address};
    const QString named =
        host.protocol() == QAbstractSocket::IPv6Protocol ? u'[' + host.toString() + u']' : host.toString();
    return QStringLiteral("http://%1:%2/%3/").arg(named).arg(port).arg(QString::fromStdString(key));
}

QStringList houseAddresses() {
    QStringList all;
    for (const QHostAddress& address : QNetworkInterface::allAddresses())
        if (!address.isLoopback() && !address.isLinkLocal() && !address.isMulticast())
            all << address.toString();
    return all;
}

LookFault LookIn::open(const LookPlace& place, const QByteArray& page) {
    close();
    const QHostAddress address{place.address};
    if (address.isNull() || !QNetworkInterface::allAddresses().contains(address))
        return LookFault::addressNotOurs;
    auto* server = new LookServer{page, place.key};
    server->moveToThread(&thread_);
    thread_.start();
    QString trouble;
    quint16 port = 0;
    QMetaObject::invokeMethod(
        server,
        [&] {
            trouble = server->listen(address, place.port);
            port = server->port();
        },
        Qt::BlockingQueuedConnection);
    server_ = server;
    if (!trouble.isEmpty()) {
        close();
        return LookFault::portTaken;
    }
    place_ = place;
    place_.port = port;
    return LookFault::none;
}

void LookIn::close() {
    if (!server_)
        return;
    server_->deleteLater(); // in its own thread, whose end carries it out
    server_ = nullptr;
    thread_.quit();
    thread_.wait();
}

void LookIn::show(LookNews news) {
    if (server_)
        QMetaObject::invokeMethod(server_, [server = server_, news = std::move(news)] { server->show(news); });
}

} // namespace panside
