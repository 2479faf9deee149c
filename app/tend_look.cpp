#include "app/tend_look.h"

#include "core/lookin/door.h"

#include <QCoreApplication>
#include <QLocale>
#include <ostream>

namespace panside {

std::variant<LookChoices, std::string> servedAt(const std::string& text) {
    const QString whole = QString::fromStdString(text);
    const bool bracketed = whole.startsWith(QLatin1Char('['));
    const auto colon = bracketed ? whole.indexOf(QLatin1String("]:")) + 1 : whole.indexOf(QLatin1Char(':'));
    LookChoices place;
    place.on = true;
    QString address = colon > 0 ? whole.left(colon) : whole;
    if (bracketed)
        address = address.mid(1).chopped(address.endsWith(QLatin1Char(']')) ? 1 : 0);
    if (colon > 0) {
        bool isNumber = false;
        place.port = whole.mid(colon + 1).toInt(&isNumber);
        if (!isNumber || place.port < 0 || place.port > 65535)
            return "--serve " + text +
                   ": the port is a number up to 65535 (0: one that is free), as in 192.168.1.20:8437.";
    }
    if (QHostAddress{address}.isNull())
        return "--serve " + text + ": write an address of this machine and a port, as in 192.168.1.20:8437.";
    place.address = address;
    return place;
}

TendLook::TendLook(const LookChoices& place) : place_{place} {
    const Choices choices = Choices::load();
    units_ = choices.units;
    spoken_.speak(choices.language);
    place_.key = QString::fromStdString(newKey());
}

bool TendLook::open(std::ostream& err) {
    looked_.apply(place_);
    switch (looked_.fault()) {
    case LookFault::addressNotOurs:
        err << "--serve: " << place_.address.toStdString()
            << " is no address of this machine. `ip address` lists those that are.\n";
        return false;
    case LookFault::portTaken:
        err << "--serve: port " << place_.port << " is in use by another program, or may not be used. Name another.\n";
        return false;
    case LookFault::none:
        break;
    }
    err << "Look in at " << looked_.link().toStdString() << std::endl;
    return true;
}

void TendLook::tell(Picture picture, const Boil& boil) {
    fireClock_.steady(picture);
    looked_.tell({.picture = picture,
                  .sentence = sentence(picture, units_),
                  .cards = {drawCard(picture, units_), fireCard(picture, units_), lastLoadCard(picture, units_)},
                  .units = units_},
                 boil, false);
}

} // namespace panside
