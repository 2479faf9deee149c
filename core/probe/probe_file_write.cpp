#include "core/boil/vocabulary.h"
#include "core/files/text_file.h"
#include "core/probe/probe_file.h"
#include "core/probe/probe_words.h"

#include <fmt/format.h>

namespace panside {
namespace {

using probe_words::wordFor;

std::string inQuotes(std::string_view text) {
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\')
            out += '\\';
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F)
            out += fmt::format("\\u{:04X}", static_cast<unsigned>(c));
        else
            out += c;
    }
    return out + '"';
}

// Always with a point, so that it is read back as a number with decimals.
std::string decimal(double number) {
    auto text = fmt::format("{}", number);
    return text.find_first_of(".e") == std::string::npos ? text + ".0" : text;
}

std::string junctionText(const Junction& junction) {
    return std::visit(Overloaded{[](const Said<Temperature>& fixed) {
                                     // Twelve digits: what a person wrote, not what the way through kelvin left of it.
                                     return fmt::format("{:.12g}{}", fromSi(fixed.value.kelvin(), fixed.unit),
                                                        nameOf(fixed.unit));
                                 },
                                 [](const std::string& field) { return field; }},
                      junction);
}

class Writer {
public:
    template <class... Args>
    void line(fmt::format_string<Args...> format, Args&&... args) {
        text += fmt::format(format, std::forward<Args>(args)...) + '\n';
    }

    void port(const PortRule& port) {
        text += text.empty() ? "" : "\n";
        line("[[port]]");
        line("name = {}", inQuotes(port.name));
        line("device = {}", inQuotes(port.device));
        const bool lines = port.protocol == Protocol::lines;
        line("protocol = \"{}\"", wordFor(probe_words::protocols, port.protocol));
        if (lines && port.encoding)
            line("encoding = \"{}\"", wordFor(probe_words::encodings, *port.encoding));
        line("baud = {}", port.baud);
        if (port.parity != Parity::none)
            line("parity = \"{}\"", wordFor(probe_words::parities, port.parity));
        if (port.stopBits != 1)
            line("stop_bits = {}", port.stopBits);
        if (lines && port.checksum)
            line("checksum = true");
        if (!lines)
            line("every = {}", decimal(port.every));
        for (const auto& one : port.fields)
            field(one);
    }

    std::string text;

private:
    void field(const FieldRule& field) {
        text += "\n";
        line("[[port.field]]");
        if (!field.is.empty())
            line("is = {}", inQuotes(field.is));
        if (field.place)
            place(*field.place);
        if (field.reads)
            line("reads = \"{}\"", rowOf(*field.reads).name);
        line("unit = \"{}\"", nameOf(field.unit));
        if (field.thermocouple)
            line("thermocouple = \"{}\"", wordFor(probe_words::thermocouples, *field.thermocouple));
        if (field.junction)
            line("junction = {}", inQuotes(junctionText(*field.junction)));
        if (field.offset != 0)
            line("offset = {}", decimal(field.offset));
    }

    void place(const RegisterPlace& place) {
        line("slave = {}", place.slave);
        line("function = {}", place.function);
        line("register = {}", place.address);
        line("type = \"{}\"", wordFor(probe_words::types, place.type));
        if (place.order != WordOrder::big)
            line("word_order = \"{}\"", wordFor(probe_words::orders, place.order));
        if (place.scale != 1)
            line("scale = {}", decimal(place.scale));
    }
};

} // namespace

std::string writeProbeFile(const ProbeFile& file) {
    Writer writer;
    for (const auto& port : file.ports)
        writer.port(port);
    return writer.text;
}

std::string saveProbeFile(const ProbeFile& file, const std::filesystem::path& path) {
    const auto text = writeProbeFile(file);
    try {
        if (std::error_code none; std::filesystem::exists(path, none))
            writeText(path.string() + '~', readText(path.string()));
        writeText(path.string(), text);
        return {};
    } catch (const FileFault& fault) {
        return fault.what();
    }
}

} // namespace panside
