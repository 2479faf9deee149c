#include "core/probe/probe_file.h"

#include "pty.h"

#include <fstream>
#include <gmock/gmock.h>

namespace panside {
namespace {

using testing::ElementsAre;

// The example of the probe file's contract.
constexpr std::string_view example = R"([[port]]
name = "pan box"               # shown to people; the readings' probe=
device = "/dev/ttyUSB0"
protocol = "lines"
baud = 9600
checksum = false
[[port.field]]
is = "syrup"
reads = "syrup_pan"
unit = "degC"
offset = 0.0

[[port]]
device = "/dev/ttyUSB1"
protocol = "modbus-rtu"
every = 1.0
[[port.field]]
slave = 1
function = 4
register = 0
type = "int16"
word_order = "big"
scale = 0.1
reads = "syrup_pan"
unit = "degC"
)";

ProbeFile good(std::string_view text) {
    auto read = readProbeFile(text);
    if (auto* faults = std::get_if<std::vector<ProbeFault>>(&read)) {
        for (const auto& fault : *faults)
            ADD_FAILURE() << sentence(fault, "probe.toml");
        return {};
    }
    return std::get<ProbeFile>(std::move(read));
}

std::vector<std::string> faultsOf(std::string_view text) {
    std::vector<std::string> sentences;
    const auto read = readProbeFile(text);
    if (const auto* faults = std::get_if<std::vector<ProbeFault>>(&read))
        for (const auto& fault : *faults)
            sentences.push_back(sentence(fault, "probe.toml"));
    return sentences;
}

TEST(ProbeFile, ReadsTheExampleOfItsContract) {
    const auto file = good(example);
    ASSERT_EQ(file.ports.size(), 2U);
    const PortRule lines{.name = "pan box",
                         .device = "/dev/ttyUSB0",
                         .fields = {{.is = "syrup", .reads = Series::syrup_pan, .unit = Unit::degC}}};
    EXPECT_EQ(file.ports[0], lines);
    const PortRule modbus{.name = "ttyUSB1", // a port without a name is called as its device
                          .device = "/dev/ttyUSB1",
                          .protocol = Protocol::modbusRtu,
                          .fields = {{.is = "",
                                      .place = RegisterPlace{.slave = 1, .function = 4, .address = 0, .scale = 0.1},
                                      .reads = Series::syrup_pan,
                                      .unit = Unit::degC}}};
    EXPECT_EQ(file.ports[1], modbus);
}

TEST(ProbeFile, ComesBackAsItWasWritten) {
    ProbeFile file = good(example);
    auto& fields = file.ports[0].fields;
    file.ports[0].name = "north \\ \"pan\"";
    file.ports[0].encoding = Encoding::pairs;
    file.ports[0].checksum = true;
    file.ports[0].parity = Parity::even;
    file.ports[0].stopBits = 2;
    fields.push_back({.is = "tc",
                      .reads = Series::stack,
                      .unit = Unit::mV,
                      .offset = -0.01,
                      .thermocouple = Thermocouple::K,
                      .junction = Said<Temperature>{Temperature::fahrenheit(77), Unit::degF}});
    fields.push_back(
        {.is = "tc2", .reads = Series::flue_pan, .unit = Unit::mV, .thermocouple = Thermocouple::T, .junction = "cj"});
    fields.push_back({.is = "cj", .unit = Unit::degF});
    fields.push_back({.is = "pt", .reads = Series::air, .unit = Unit::ohm});
    file.ports[1].fields[0].place->type = RegisterType::float32;
    file.ports[1].fields[0].place->order = WordOrder::little;
    file.ports[0].name = "north pan";
    EXPECT_EQ(good(writeProbeFile(file)), file) << writeProbeFile(file);
}

// A path by an adapter's id is often longer than a name may be; what is saved must be read again.
TEST(ProbeFile, APortWithoutANameTakesOneThatCanBeSaved) {
    const auto nameOn = [](const std::string& device) {
        std::string text{example};
        text.replace(text.find("/dev/ttyUSB1"), std::string_view{"/dev/ttyUSB1"}.size(), device);
        const auto file = good(text);
        EXPECT_EQ(good(writeProbeFile(file)).ports, file.ports);
        return file.ports.empty() ? "" : file.ports.back().name;
    };
    EXPECT_EQ(
        nameOn("/dev/serial/by-id/usb-Bridge_Works_of_Nowhere_Serial_to_Serial_Bridge_Controller_0001-if00-port0"),
        "f_Nowhere_Serial_to_Serial_Bridge_Controller_0001-if00-port0");
    EXPECT_EQ(nameOn("/dev/pan; the hot one "), "pan the hot one");
    EXPECT_EQ(nameOn("/dev/hand"), "port");
    EXPECT_EQ(nameOn("/dev/"), "port");
}

TEST(ProbeFile, EveryFaultIsNamedWithItsPlaceAndWhatToDo) {
    EXPECT_THAT(
        faultsOf(R"([[port]]
device = "/dev/ttyUSB0"
bauds = 9600
parity = "evn"
[[port.field]]
is = "syrup"
reads = "syrup"
unit = "C"
[[port.field]]
is = "baro"
reads = "pressure"
unit = "psi"
offset = "1"
)"),
        ElementsAre(
            "probe.toml:3:1: \"bauds\" is not a key that is known here. Possible here: name, device, protocol, "
            "encoding, baud, "
            "parity, stop_bits, checksum, every, field.",
            "probe.toml:4:10: parity cannot be \"evn\". Write \"none\", \"even\" or \"odd\".",
            "probe.toml:7:9: reads cannot be \"syrup\". Write \"syrup_pan\", \"flue_pan\", \"stack\", \"feed\", "
            "\"air\", "
            "\"pressure\", \"sea_level_pressure\", \"pan_level\", \"flue_level\", \"tank_level\", \"feed_flow\" or "
            "\"filter_pressure\".",
            "probe.toml:8:8: unit cannot be \"C\". Write \"degC\", \"degF\", \"mV\" or \"ohm\".",
            "probe.toml:12:8: unit cannot be \"psi\". Write \"kPa\", \"hPa\" or \"inHg\".",
            "probe.toml:13:10: offset cannot be \"1\". Write a number without quotes."));
    EXPECT_THAT(faultsOf("[[port]]\ndevice = \"/dev/a\n"),
                ElementsAre(testing::StartsWith("probe.toml:2:17: this is not TOML: ")));
    EXPECT_THAT(faultsOf(""),
                ElementsAre("probe.toml: no port is named. Write a heading [[port]] and under it the port's device."));
    EXPECT_THAT(
        faultsOf("[[port]]\nname = \"a\"\n"),
        ElementsAre("probe.toml:1:1: device is missing. Write the port's path, as in device = \"/dev/ttyUSB0\".",
                    "probe.toml:1:1: field is missing. Write at least one heading [[port.field]] under the port, or "
                    "nothing would be read."));
}

TEST(ProbeFile, RefusesWhatCannotBeMeant) {
    const auto line = [](std::string_view fields, std::string_view port = "") {
        return std::string{"[[port]]\ndevice = \"/dev/a\"\n"} + std::string{port} + "[[port.field]]\n" +
               std::string{fields};
    };
    const auto slave = [&](std::string_view fields) {
        return line("reads = \"stack\"\nunit = \"degC\"\n" + std::string{fields}, "protocol = \"modbus-rtu\"\n");
    };
    const std::string meaning = "reads = \"stack\"\nunit = \"degC\"\n";
    for (const auto& text : {
             line(meaning),                                              // which field?
             line("is = \"a\"\nunit = \"degC\"\n"),                      // which reading?
             line("is = \"a\"\nreads = \"stack\"\n"),                    // which unit?
             line("is = \"a\"\n" + meaning + "thermocouple = \"K\"\n"),  // not with degC
             line("is = \"a\"\n" + meaning + "slave = 1\n"),             // not with lines
             line("is = \"a\"\n" + meaning, "encoding = \"columns\"\n"), // a column is a number
             line("is = 0\n" + meaning, "encoding = \"columns\"\n"),     // from 1
             line("is = \"a\"\n" + meaning, "every = 2\n"),              // only with polls
             line("is = \"a\"\n" + meaning, "baud = 9600.5\n"),
             line("is = \"a\"\n" + meaning, "checksum = \"yes\"\n"),
             line("is = \"a\"\n" + meaning, "name = \"hand\"\n"), // that is no probe
             line("is = \"a\"\n" + meaning, "name = \"a;b\"\n"),
             line("is = \"a\"\nreads = \"stack\"\nunit = \"mV\"\n"), // which wire, which junction?
             line("is = \"a\"\nreads = \"stack\"\nunit = \"mV\"\nthermocouple = \"K\"\njunction = \"25kPa\"\n"),
             line("is = \"a\"\nreads = \"stack\"\nunit = \"mV\"\nthermocouple = \"S\"\njunction = \"25degC\"\n"),
             line("is = \"a\"\nreads = \"stack\"\nunit = \"mV\"\nthermocouple = \"K\"\njunction = \"a\"\n"),
             line("is = \"a\"\n" + meaning + "[[port.field]]\nis = \"a\"\nreads = \"air\"\nunit = \"degC\"\n"),
             slave("function = 4\nregister = 0\n"),
             slave("slave = 1\nregister = 0\n"),
             slave("slave = 1\nfunction = 4\n"),
             slave("slave = 248\nfunction = 4\nregister = 0\n"),
             slave("slave = 1\nfunction = 6\nregister = 0\n"),
             slave("slave = 1\nfunction = 4\nregister = 65536\n"),
             slave("slave = 1\nfunction = 4\nregister = 65535\ntype = \"int32\"\n"),
             slave("slave = 1\nfunction = 4\nregister = 0\nscale = 0\n"),
             slave("slave = 1\nfunction = 4\nregister = 0\nscale = nan\n"),
             std::string{"port = 3\n"},
             std::string{"[port]\ndevice = \"a\"\n"},
             "x = 1\n" + std::string{example},
         })
        EXPECT_EQ(faultsOf(text).size(),
                  text.find("\"mV\"\n") != text.npos && text.find("thermocouple") == text.npos ? 2U : 1U)
            << text << testing::PrintToString(faultsOf(text));
    EXPECT_THAT(faultsOf(std::string{example} + std::string{example}),
                testing::Contains(
                    testing::HasSubstr("device \"/dev/ttyUSB0\" is there twice. Write one [[port]] for each device.")));
}

TEST(ProbeFile, AFileThatIsNotThereIsSaidSo) {
    const auto read = loadProbeFile("/nowhere/probe.toml");
    const auto* faults = std::get_if<std::vector<ProbeFault>>(&read);
    ASSERT_TRUE(faults);
    EXPECT_EQ(sentence(faults->front(), "/nowhere/probe.toml"),
              "/nowhere/probe.toml: the probe file cannot be read: No such file or directory. Name a probe file that "
              "is there.");
}

TEST(ProbeFile, SavingKeepsTheFileThatStoodThere) {
    const Folder folder;
    const auto path = folder / "probe.toml";
    std::ofstream{path} << example;
    const auto file = good(example);
    EXPECT_EQ(saveProbeFile(file, path), "");
    EXPECT_EQ(std::get<ProbeFile>(loadProbeFile(path)), file);
    std::ifstream before{path + "~"};
    EXPECT_EQ((std::string{std::istreambuf_iterator<char>{before}, {}}), example);
    EXPECT_NE(saveProbeFile(file, "/nowhere/probe.toml"), "");
}

} // namespace
} // namespace panside
