#include "core/probe/probe_file.h"

#include "core/boil/vocabulary.h"
#include "core/probe/mapping.h"
#include "core/probe/probe_table.h"
#include "core/probe/probe_words.h"

#include <algorithm>
#include <fmt/format.h>
#include <fstream>
#include <iterator>

namespace panside {
namespace {

constexpr std::string_view portKeys =
    "name, device, protocol, encoding, baud, parity, stop_bits, checksum, every, field";
constexpr std::string_view fieldKeys =
    "is, reads, unit, offset, thermocouple, junction, slave, function, register, type, word_order, scale";
constexpr double widest = 1e6; // of an offset or a scale; more is a slip of the finger
constexpr std::size_t longestName = 60;

std::vector<std::string> namesOf(const std::vector<Unit>& units) {
    std::vector<std::string> names;
    names.reserve(units.size());
    for (const Unit unit : units)
        names.emplace_back('"' + std::string{nameOf(unit)} + '"');
    return names;
}

Sentence aReading() {
    std::vector<std::string> names;
    for (const auto& row : allReadings())
        names.emplace_back('"' + std::string{row.name} + '"');
    return sayOneOf(std::move(names));
}

// A name goes into the shift log as probe=NAME among pairs with semicolons between, and "hand" stands for no probe at
// all.
bool fitsName(char c) { return static_cast<unsigned char>(c) >= 0x20 && c != 0x7F && c != ';' && c != '"'; }

// A port that is not named goes by its device. Of a long path by the adapter's id the end is kept, where the ports of
// one adapter differ.
std::string nameAfter(const std::string& device) {
    std::string name;
    std::ranges::copy_if(std::filesystem::path{device}.filename().string(), std::back_inserter(name), fitsName);
    if (name.size() > longestName)
        name.erase(0, name.size() - longestName);
    const auto begins = [](char c) { return c != ' ' && (static_cast<unsigned char>(c) & 0xC0) != 0x80; };
    name.erase(name.begin(), std::ranges::find_if(name, begins));
    name.erase(name.find_last_not_of(' ') + 1);
    return probe_words::isName(name) ? name : "port";
}

class FieldReader {
public:
    FieldReader(const toml::table& table, const PortRule& port, std::vector<ProbeFault>& faults)
        : table_{table, faults}, port_{port} {}

    FieldRule read() {
        if (port_.protocol == Protocol::modbusRtu)
            readPlace();
        else
            readName();
        readMeaning();
        table_.finish(fieldKeys);
        return std::move(field_);
    }

private:
    void readName() {
        if (const auto is = table_.textOrNumber("is"))
            field_.is = *is;
        else if (!table_.has("is"))
            table_.missing("is", say("a column's number from 1, or the name in the line, as in is = \"syrup\""));
        if (table_.has("is") && port_.encoding == Encoding::columns && columnIn(field_.is) == 0)
            table_.fault(ProbeSlip::notAllowed, "is", say("the number of a column, from 1 to 64"));
        else if (table_.has("is") && field_.is.empty())
            table_.fault(ProbeSlip::notAllowed, "is", say("the name that stands in the line"));
        table_.unfit({"slave", "function", "register", "type", "word_order", "scale"}, "protocol = \"modbus-rtu\"");
    }

    void readPlace() {
        RegisterPlace place;
        field_.is = table_.textOrNumber("is").value_or("");
        place.slave = demanded("slave", 1, 247, say("the address set at the device, as in slave = 1")).value_or(1);
        place.function = demanded("function", 3, 4, say("3 for holding registers, 4 for input registers")).value_or(4);
        place.address = demanded("register", 0, 65535, say("the address as sent on the line, from 0")).value_or(0);
        place.type = table_.word("type", probe_words::types).value_or(RegisterType::int16);
        place.order = table_.word("word_order", probe_words::orders).value_or(WordOrder::big);
        place.scale = table_.number("scale", -widest, widest).value_or(1.0);
        const bool isPair = place.type != RegisterType::int16 && place.type != RegisterType::uint16;
        if (isPair && place.address == 65535)
            table_.fault(ProbeSlip::outOfRange, "register", say("at most 65534 for a number of two registers"));
        if (place.scale == 0)
            table_.fault(ProbeSlip::outOfRange, "scale", say("anything but 0, which would make every reading 0"));
        field_.place = place;
    }

    std::optional<int> demanded(std::string_view key, int lowest, int highest, Sentence wanted) {
        if (!table_.has(key))
            table_.missing(key, std::move(wanted));
        return table_.whole(key, lowest, highest);
    }

    void readMeaning() {
        if (const auto reads = table_.text("reads")) {
            field_.reads = seriesNamed(*reads);
            if (!field_.reads)
                table_.fault(ProbeSlip::notAllowed, "reads", aReading());
        }
        const auto wanted = field_.reads ? unitsFor(*field_.reads) : unitsFor(Series::syrup_pan);
        if (const auto unit = table_.text("unit")) {
            const auto named = unitNamed(*unit);
            if (!named || std::ranges::find(wanted, *named) == wanted.end())
                table_.fault(ProbeSlip::notAllowed, "unit", sayOneOf(namesOf(wanted)));
            else
                field_.unit = *named;
        } else if (!table_.has("unit")) {
            table_.missing("unit", sayOneOf(namesOf(wanted)));
        }
        field_.offset = table_.number("offset", -widest, widest).value_or(0.0);
        readThermocouple();
    }

    void readThermocouple() {
        if (field_.unit != Unit::mV) {
            table_.unfit({"thermocouple", "junction"}, "unit = \"mV\"");
            return;
        }
        if (!table_.has("thermocouple"))
            table_.missing("thermocouple", say("the wire's letter, as in thermocouple = \"K\""));
        field_.thermocouple = table_.word("thermocouple", probe_words::thermocouples);
        if (!table_.has("junction"))
            table_.missing("junction",
                           say("a temperature, as in junction = \"25degC\", or the name of the field that reads it"));
        const auto junction = table_.textOrNumber("junction");
        if (!junction)
            return;
        const auto fixed = writtenIn(*junction);
        if (!fixed) {
            if (junction->empty())
                table_.fault(ProbeSlip::notAllowed, "junction",
                             say("a temperature, as in \"25degC\", or a field's name"));
            field_.junction = *junction;
            return;
        }
        const auto lowest = Temperature::celsius(-40), highest = Temperature::celsius(125);
        const auto at = Temperature::kelvin(fixed->si());
        if (dimensionOf(fixed->unit) != Dimension::temperature || at < lowest || at > highest)
            table_.fault(ProbeSlip::outOfRange, "junction", say("a temperature from -40degC to 125degC"));
        else
            field_.junction = Said<Temperature>{at, fixed->unit};
    }

    ProbeTable table_;
    const PortRule& port_;
    FieldRule field_;
};

// What one field says about another: names that stand twice, and junctions that nobody reads.
void checkAmong(const std::vector<FieldRule>& fields, const std::vector<const toml::table*>& tables,
                std::vector<ProbeFault>& faults, Protocol protocol) {
    const auto isNamed = [&](const std::string& name) {
        return std::ranges::any_of(fields, [&](const FieldRule& f) { return f.is == name && f.unit != Unit::mV; });
    };
    const auto servesAsJunction = [&](const std::string& name) {
        return !name.empty() && std::ranges::any_of(fields, [&](const FieldRule& f) {
            const auto* other = f.junction ? std::get_if<std::string>(&*f.junction) : nullptr;
            return other && *other == name;
        });
    };
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const auto& field = fields[i];
        ProbeTable table{*tables[i], faults};
        const auto sameName = [&](const FieldRule& f) { return !f.is.empty() && f.is == field.is; };
        if (std::any_of(fields.begin(), fields.begin() + static_cast<std::ptrdiff_t>(i), sameName))
            table.fault(ProbeSlip::twice, "is", say("one [[port.field]] for each field of a port"));
        if (!table.has("reads") && !servesAsJunction(field.is))
            table.missing("reads", aReading());
        const auto* junction = field.junction ? std::get_if<std::string>(&*field.junction) : nullptr;
        if (junction && !junction->empty() && protocol == Protocol::modbusRtu && !isNamed(*junction))
            table.fault(ProbeSlip::notAllowed, "junction",
                        say("a temperature, or the `is` of another [[port.field]] of this port"));
        if (junction && *junction == field.is && !field.is.empty())
            table.fault(ProbeSlip::notAllowed, "junction", say("another field than the thermocouple itself"));
    }
}

PortRule readPort(const toml::table& toml, std::vector<ProbeFault>& faults) {
    ProbeTable table{toml, faults};
    PortRule port;
    if (!table.has("device"))
        table.missing("device", say("the port's path, as in device = \"/dev/ttyUSB0\""));
    port.device = table.text("device").value_or("");
    if (table.has("device") && port.device.empty())
        table.fault(ProbeSlip::notAllowed, "device", say("the port's path, as in \"/dev/ttyUSB0\""));
    port.name = table.text("name").value_or(port.device.empty() ? "" : nameAfter(port.device));
    if (table.has("name") && !probe_words::isName(port.name))
        table.fault(ProbeSlip::notAllowed, "name", say("a short name without ; or quotes, and not \"hand\""));
    port.protocol = table.word("protocol", probe_words::protocols).value_or(Protocol::lines);
    port.baud = table.whole("baud", 50, 4'000'000).value_or(9600);
    port.parity = table.word("parity", probe_words::parities).value_or(Parity::none);
    port.stopBits = table.whole("stop_bits", 1, 2).value_or(1);
    if (port.protocol == Protocol::lines) {
        port.encoding = table.word("encoding", probe_words::encodings);
        port.checksum = table.flag("checksum").value_or(false);
        table.unfit({"every"}, "protocol = \"modbus-rtu\"");
    } else {
        port.every = table.number("every", 0.05, 3600).value_or(1.0);
        table.unfit({"encoding", "checksum"}, "protocol = \"lines\"");
    }
    const auto fields = table.tables("field");
    for (const auto* field : fields)
        port.fields.push_back(FieldReader{*field, port, faults}.read());
    checkAmong(port.fields, fields, faults, port.protocol);
    if (!table.has("field"))
        table.missing("field", say("at least one heading [[port.field]] under the port, or nothing would be read"));
    table.finish(portKeys);
    return port;
}

void checkPorts(const std::vector<PortRule>& ports, const std::vector<const toml::table*>& tables,
                std::vector<ProbeFault>& faults) {
    for (std::size_t i = 0; i < ports.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            ProbeTable table{*tables[i], faults};
            if (table.has("device") && ports[i].device == ports[j].device)
                table.fault(ProbeSlip::twice, "device", say("one [[port]] for each device"));
            else if (ports[i].name == ports[j].name && table.has("name"))
                table.fault(ProbeSlip::twice, "name", say("a name of its own for each port"));
            else if (ports[i].name == ports[j].name && !ports[i].name.empty())
                table.missing("name", say("a name of its own, since another port is called \"%1\"", {ports[j].name}));
        }
}

} // namespace

bool probe_words::isName(std::string_view name) {
    return !name.empty() && name.size() <= longestName && name != "hand" && name.front() != ' ' && name.back() != ' ' &&
           std::ranges::all_of(name, fitsName);
}

std::vector<Unit> unitsFor(Series series) {
    std::vector<Unit> units;
    for (int i = 1; i < unitCount; ++i)
        if (takesUnit(series, static_cast<Unit>(i)))
            units.push_back(static_cast<Unit>(i));
    if (rowOf(series).dimension == Dimension::temperature)
        units.insert(units.end(), {Unit::mV, Unit::ohm});
    return units;
}

std::variant<ProbeFile, std::vector<ProbeFault>> readProbeFile(std::string_view text) {
    std::vector<ProbeFault> faults;
    ProbeFile file;
    try {
        const auto toml = toml::parse(text);
        ProbeTable root{toml, faults};
        const auto tables = root.tables("port");
        for (const auto* table : tables)
            file.ports.push_back(readPort(*table, faults));
        checkPorts(file.ports, tables, faults);
        root.finish("[[port]]");
        if (!root.has("port"))
            faults.push_back({ProbeSlip::nothing, 0, 0, "port"});
    } catch (const toml::parse_error& error) {
        const auto& at = error.source().begin;
        return std::vector{ProbeFault{ProbeSlip::syntax, at.line, at.column, "", std::string{error.description()}}};
    }
    if (faults.empty())
        return file;
    const auto place = [](const ProbeFault& fault) { return std::pair{fault.line, fault.column}; };
    std::ranges::stable_sort(faults, {}, place);
    return faults;
}

std::variant<ProbeFile, std::vector<ProbeFault>> loadProbeFile(const std::filesystem::path& path) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error)) {
        return std::vector{ProbeFault{
            .slip = ProbeSlip::unreadable, .given = error ? error.message() : "", .wanted = say("it is not a file")}};
    }
    std::ifstream stream{path, std::ios::binary};
    const std::string text{std::istreambuf_iterator<char>{stream}, {}};
    if (!stream)
        return std::vector{
            ProbeFault{.slip = ProbeSlip::unreadable, .wanted = say("it cannot be opened; may you read it?")}};
    return readProbeFile(text);
}

} // namespace panside
