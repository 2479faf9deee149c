#include "core/probe/port_list.h"

#include <QSerialPortInfo>

namespace panside {
namespace fs = std::filesystem;

namespace {

PortInfo infoOf(const QSerialPortInfo& info) {
    return {.device = info.systemLocation().toStdString(),
            .stable = {},
            .description = info.description().toStdString(),
            .maker = info.manufacturer().toStdString(),
            .serial = info.serialNumber().toStdString(),
            .vendor = info.hasVendorIdentifier() ? info.vendorIdentifier() : 0,
            .product = info.hasProductIdentifier() ? info.productIdentifier() : 0};
}

} // namespace

bool PortIdentity::sameAs(const PortIdentity& other) const {
    if (!serial.empty() && !other.serial.empty())
        return serial == other.serial && vendor == other.vendor && product == other.product;
    // The system names an adapter a moment after its device is there: until then it may be anybody's.
    return byId == other.byId;
}

std::vector<PortInfo> PortFinder::all() const {
    std::vector<PortInfo> ports;
    for (const auto& found : QSerialPortInfo::availablePorts()) {
        auto info = infoOf(found);
        info.stable = linkTo(info.device);
        ports.push_back(std::move(info));
    }
    return ports;
}

// The link in the by-id folder that leads to this device; the first by name, if there are several.
std::string PortFinder::linkTo(const fs::path& target) const {
    std::error_code error;
    const auto device = fs::canonical(target, error);
    if (error)
        return {};
    std::string found;
    for (const auto& entry : fs::directory_iterator{byIdFolder_, error}) {
        std::error_code broken;
        if (fs::canonical(entry.path(), broken) == device && !broken && (found.empty() || entry.path() < found))
            found = entry.path().string();
    }
    return found;
}

PortIdentity PortFinder::identityOf(const std::string& device) const {
    PortIdentity identity{.byId = linkTo(device)};
    std::error_code error;
    const auto canonical = fs::canonical(device, error);
    if (error)
        return identity;
    const auto info = infoOf(QSerialPortInfo{QString::fromStdString(canonical.filename().string())});
    if (info.device == canonical.string()) {
        identity.vendor = info.vendor;
        identity.product = info.product;
        identity.serial = info.serial;
    }
    return identity;
}

std::optional<std::string> PortFinder::find(const std::string& device, const PortIdentity& identity) const {
    std::error_code error;
    if (fs::exists(device, error)) {
        const auto there = identity.known() ? identityOf(device) : identity;
        if (there.sameAs(identity))
            return device;
    }
    if (!identity.byId.empty() && fs::exists(identity.byId, error))
        return identity.byId;
    if (!identity.serial.empty())
        for (const auto& found : QSerialPortInfo::availablePorts())
            if (const auto info = infoOf(found);
                info.vendor == identity.vendor && info.product == identity.product && info.serial == identity.serial)
                return info.device;
    return std::nullopt;
}

} // namespace panside
