#include "core/probe/port_status.h"

#include <fmt/format.h>

namespace panside {
namespace {

std::string refusedText(const PortStatus& status) {
    if (!status.polls.lastFault.empty())
        return fmt::format("the instrument refuses: {}. Check function and register in its manual.",
                           status.polls.lastFault);
    std::size_t most = 1;
    for (std::size_t i = 1; i < refusalCount; ++i)
        if (status.lines.refused[i] > status.lines.refused[most])
            most = i;
    return fmt::format("no line can be believed; most of them: {} (as in \"{}\").",
                       refusalText(static_cast<Refusal>(most)), status.lines.sample[most]);
}

std::string stateText(const PortStatus& status) {
    switch (status.state) {
    case PortState::starting:
        return "not opened yet.";
    case PortState::noSuchPort:
        return fmt::format("there is no port {}. Plug the probe in, or choose another port; reading begins by itself.",
                           status.device);
    case PortState::noPermission:
        return fmt::format(
            "you may not open {}: it belongs to the group {}. Run `sudo adduser $USER {}`, log out and in.",
            status.device, status.words, status.words);
    case PortState::taken:
        return fmt::format("another program has {} open. Close it; reading begins by itself.", status.device);
    case PortState::notSerial:
        return fmt::format("{} is no serial port. Choose another one.", status.device);
    case PortState::failed:
        return fmt::format("{} does not open: {}. It is tried again by itself.", status.device, status.words);
    case PortState::lost:
        return fmt::format("{} went away. Check plug and power; reading goes on by itself when it is back.",
                           status.device);
    case PortState::listening:
        return "open; nothing received yet.";
    case PortState::reading:
        return "reading.";
    case PortState::silent:
        return "open, but nothing received for 10 s. Check the probe's power and cable.";
    case PortState::wrongSpeed:
        return "what arrives is not text. Wrong speed? Set the speed (baud) that the probe uses.";
    case PortState::unended:
        return "letters arrive, but no line end. Have the probe end each line with a line feed (LF, or CR and LF).";
    case PortState::refused:
        return refusedText(status);
    case PortState::noAnswer:
        return fmt::format("no answer ({}). Check address, speed, parity and the two wires.", status.polls.lastFault);
    }
    return {};
}

} // namespace

// Modbus Application Protocol Specification V1.1b3, section 7.
std::string_view exceptionText(int code) {
    switch (code) {
    case 1:
        return "illegal function";
    case 2:
        return "illegal data address";
    case 3:
        return "illegal data value";
    case 4:
        return "server device failure";
    case 5:
        return "acknowledge";
    case 6:
        return "server device busy";
    case 8:
        return "memory parity error";
    case 10:
        return "gateway path unavailable";
    case 11:
        return "gateway target device failed to respond";
    default:
        return "unknown exception";
    }
}

std::string sentence(const PortStatus& status) {
    return (status.name.empty() ? status.device : status.name) + ": " + stateText(status);
}

} // namespace panside
