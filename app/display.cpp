#include "app/display.h"

#include <QDir>
#include <QLibraryInfo>
#include <cstdlib>
#include <cstring>
#include <string_view>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>
#include <xcb/xcb.h>

namespace panside {
namespace {

std::string said(const char* variable) {
    const char* value = std::getenv(variable);
    return value ? value : "";
}

// Knows of sockets, hosts and permissions all that Qt's own connection does.
bool xAnswers() {
    auto* connection = xcb_connect(nullptr, nullptr);
    const bool answers = xcb_connection_has_error(connection) == 0;
    xcb_disconnect(connection);
    return answers;
}

bool listens(const std::string& socketPlace) {
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    if (socketPlace.size() >= sizeof address.sun_path)
        return false;
    std::memcpy(address.sun_path, socketPlace.c_str(), socketPlace.size());
    const int end = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
    if (end < 0)
        return false;
    const bool answers = ::connect(end, reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0;
    ::close(end);
    return answers;
}

bool waylandAnswers(const std::string& name) {
    const QDir platforms{QLibraryInfo::path(QLibraryInfo::PluginsPath) + QStringLiteral("/platforms")};
    if (platforms.entryList({QStringLiteral("libqwayland*")}).isEmpty())
        return false; // Qt could not speak to it
    return listens(name.front() == '/' ? name : said("XDG_RUNTIME_DIR") + '/' + name);
}

} // namespace

std::string displayTrouble() {
    const auto platform = said("QT_QPA_PLATFORM"), x = said("DISPLAY"), wayland = said("WAYLAND_DISPLAY");
    if (!platform.empty() && !std::string_view{platform}.starts_with("xcb"))
        return {};
    if (!x.empty() && xAnswers())
        return {};
    if (platform.empty() && !wayland.empty() && waylandAnswers(wayland))
        return {};
    if (x.empty() && wayland.empty())
        return "There is no display here for the console.";
    return "The display " + (x.empty() ? wayland : x) +
           " does not answer: it is not running, or it does not let this user in.";
}

} // namespace panside
