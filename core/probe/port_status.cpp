#include "core/probe/port_status.h"

namespace panside {
namespace {

Sentence refused(const PortStatus& status) {
    if (!status.polls.lastFault.text.empty())
        return sayWith(say("the instrument refuses: %1. Check function and register in its manual."),
                       {status.polls.lastFault});
    std::size_t most = 1;
    for (std::size_t i = 1; i < refusalCount; ++i)
        if (status.lines.refused[i] > status.lines.refused[most])
            most = i;
    return sayWith(say("no line can be believed; most of them: %2 (as in \"%1\").", {status.lines.sample[most]}),
                   {Sentence{refusalText(static_cast<Refusal>(most))}});
}

} // namespace

Sentence told(const PortStatus& status) {
    switch (status.state) {
    case PortState::starting:
        return say("not opened yet.");
    case PortState::noSuchPort:
        return say("there is no port %1. Plug the probe in, or choose another port; reading begins by itself.",
                   {status.device});
    case PortState::noPermission:
        return say("you may not open %1: it belongs to the group %2. Run `sudo adduser $USER %2`, log out and in.",
                   {status.device, status.words});
    case PortState::taken:
        return say("another program has %1 open. Close it; reading begins by itself.", {status.device});
    case PortState::notSerial:
        return say("%1 is not a serial port. Choose another one.", {status.device});
    case PortState::failed:
        return say("%1 does not open: %2. It is tried again by itself.", {status.device, status.words});
    case PortState::lost:
        return say("%1 went away. Check plug and power; reading goes on by itself when it is back.", {status.device});
    case PortState::listening:
        return say("open; nothing received yet.");
    case PortState::reading:
        return say("reading.");
    case PortState::silent:
        return say("open, but nothing received for 10 s. Check the probe's power and cable.");
    case PortState::wrongSpeed:
        return say("what arrives is not text. Wrong speed? Set the speed (baud) that the probe uses.");
    case PortState::unended:
        return say(
            "letters arrive, but no line end. Have the probe end each line with a line feed (LF, or CR and LF).");
    case PortState::refused:
        return refused(status);
    case PortState::noAnswer:
        return sayWith(say("no answer (%1). Check address, speed, parity and the two wires."),
                       {status.polls.lastFault});
    }
    return {};
}

Sentence told(PollFault fault, int exception) {
    switch (fault) {
    case PollFault::none:
        return {};
    case PollFault::noAnswer:
        return say("no answer");
    case PollFault::garbled:
        return say("garbled answer");
    case PollFault::exception:
        return sayWith(say("%2 (exception %1)", {std::to_string(exception)}), {Sentence{exceptionText(exception)}});
    }
    return {};
}

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
    return (status.name.empty() ? status.device : status.name) + ": " + english(told(status));
}

} // namespace panside
