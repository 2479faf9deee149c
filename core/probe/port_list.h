#pragma once
// The serial ports there are, what the system knows of them, and which of them is the one that was meant: a USB adapter
// keeps its identity when it comes back under another number.
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace panside {

struct PortInfo {
    std::string device;      // /dev/ttyUSB0
    std::string stable;      // a path that stays the same under another number, empty if the system has none
    std::string description; // as the adapter tells it; may be empty
    std::string maker, serial;
    int vendor = 0, product = 0;                                                 // USB numbers; 0: none
    const std::string& best() const { return stable.empty() ? device : stable; } // for the probe file
};

// What the system knows a plugged-in adapter by.
struct PortIdentity {
    std::string byId; // its link under /dev/serial/by-id
    int vendor = 0, product = 0;
    std::string serial = {};
    bool known() const { return !byId.empty() || !serial.empty(); }
    // The same adapter: by serial and USB numbers where both have a serial, else by the same link, which both may lack.
    // One whose link has not appeared yet is not the one that was known by its link.
    bool sameAs(const PortIdentity& other) const;
};

class PortFinder {
public:
    explicit PortFinder(std::filesystem::path byIdFolder = "/dev/serial/by-id") : byIdFolder_{std::move(byIdFolder)} {}

    std::vector<PortInfo> all() const;
    PortIdentity identityOf(const std::string& device) const;
    // Where the port is now: its own path, unless another adapter has taken that; else wherever its identity is found.
    std::optional<std::string> find(const std::string& device, const PortIdentity& identity) const;

private:
    std::string linkTo(const std::filesystem::path& target) const;
    std::filesystem::path byIdFolder_;
};

} // namespace panside
