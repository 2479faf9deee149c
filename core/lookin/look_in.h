#pragma once
// The look in as the console has it: off until it is opened; then a server in a thread of its own, which the boil never
// waits for.
#include "core/lookin/look_server.h"

#include <QThread>

namespace panside {

// Where it is served. The address is one of this machine's.
struct LookPlace {
    QString address; // "192.168.1.20"
    quint16 port = usualPort;
    std::string key;
    static constexpr quint16 usualPort = 8437;
    QString link() const; // "http://192.168.1.20:8437/KEY/"
    bool operator==(const LookPlace&) const = default;
};
// The addresses that a phone in the house may reach this machine by: no loopback, none that is only for one wire.
QStringList houseAddresses();

enum class LookFault { none, addressNotOurs, portTaken };

class LookIn {
public:
    LookIn() = default;
    ~LookIn() { close(); }
    LookIn(const LookIn&) = delete;
    LookIn& operator=(const LookIn&) = delete;

    // Opens, or opens elsewhere. `page`: its HTML, with one <script> and one <style>.
    LookFault open(const LookPlace& place, const QByteArray& page);
    void close();
    bool isOpen() const { return server_ != nullptr; }
    const LookPlace& place() const { return place_; }
    // Whether anybody looks: no news need be made for nobody.
    int phones() const { return server_ ? server_->phones() : 0; }
    void show(LookNews news);

private:
    LookPlace place_;
    QThread thread_;
    LookServer* server_ = nullptr;
};

} // namespace panside
