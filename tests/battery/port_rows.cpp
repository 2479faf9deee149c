// Rows about ports on which probes send lines.
#include "tests/battery/ears.h"

#include <fmt/format.h>

namespace battery {
namespace {

using namespace panside;
namespace fs = std::filesystem;

PortRule panBox(std::string device) {
    return {.name = "pan box",
            .device = std::move(device),
            .fields = {{.is = "syrup", .reads = Series::syrup_pan, .unit = Unit::degC}}};
}

// The device's name leads to this cable.
std::string plug(const Pty& pty, const fs::path& name) {
    fs::remove(name);
    fs::create_symlink(pty.path(), name);
    return name.string();
}

std::string line(double celsius) { return fmt::format("syrup={:.2f}\r\n", celsius); }

double anyPan(const Case& c) { return 95 + c.upTo(1000) / 100.0; }

// A line as a receiver at another speed samples it (8N1, the low bit first, the line high at rest): `ratio` receiver's
// bits to one of the sender's.
std::string atOtherSpeed(std::string_view sent, double ratio) {
    std::vector<bool> levels;
    for (const char byte : sent) {
        levels.push_back(false);
        for (int bit = 0; bit < 8; ++bit)
            levels.push_back((byte >> bit & 1) != 0);
        levels.push_back(true);
    }
    const auto at = [&](double bits) { // so many of the receiver's bits from the beginning
        const auto index = static_cast<std::size_t>(bits / ratio);
        return index >= levels.size() || levels[index];
    };
    std::string heard;
    const double end = static_cast<double>(levels.size()) * ratio;
    for (double bit = 0.5; bit < end;) {
        if (at(bit)) {
            bit += 0.25; // looks for the edge
            continue;
        }
        int byte = 0;
        for (int i = 0; i < 8; ++i)
            byte |= at(bit + 1 + i) ? 1 << i : 0;
        if (at(bit + 9)) // else a framing error: the driver drops it
            heard += static_cast<char>(byte);
        bit += 9.5;
    }
    return heard;
}

} // namespace

std::string unplugged(const Case& c) {
    auto pty = std::make_unique<Pty>();
    const fs::path name = c.folder / "ttyUSB0";
    auto ears = Ears::at<LinePort>(panBox(plug(*pty, name)), {});
    for (int round = 0; round < 3; ++round) {
        const double celsius = anyPan(c);
        ears->alsoTrue(Series::syrup_pan, celsius);
        const auto speak = paced(50, [&] { pty->send(line(celsius)); });
        if (auto wrong = resumes(c, *ears, speak); !wrong.empty())
            return wrong;
        const std::string half = line(anyPan(c));
        pty->send(half.substr(0, static_cast<std::size_t>(c.upTo(static_cast<int>(half.size()) - 2))));
        auto next = std::make_unique<Pty>(); // before the other goes, so that the system gives it another name
        fs::remove(name);
        pty.reset();
        if (!waitFor([&] { return ears->is(PortState::lost); }, whileNothingComes))
            return "its loss is not told";
        pty = std::move(next);
        plug(*pty, name);
    }
    return ears->wrong();
}

std::string otherNumber(const Case& c) {
    const fs::path byId = c.folder / "by-id";
    fs::create_directory(byId);
    const Pty stranger;
    auto pty = std::make_unique<Pty>();
    fs::path name = plug(*pty, c.folder / "ttyUSB0");
    fs::create_symlink(pty->path(), byId / "usb-pan-box");
    auto ears = Ears::at<LinePort>(panBox(name.string()), {}, byId.string());
    for (int round = 1; round <= 3; ++round) {
        const double celsius = anyPan(c);
        ears->alsoTrue(Series::syrup_pan, celsius);
        const auto speak = paced(50, [&] {
            pty->send(line(celsius));
            stranger.send("syrup=20\n");
        });
        if (auto wrong = resumes(c, *ears, speak); !wrong.empty())
            return wrong;
        auto next = std::make_unique<Pty>();
        fs::remove(byId / "usb-pan-box");
        fs::remove(name);
        fs::create_symlink(stranger.path(), name); // another adapter has the number now
        pty.reset();
        if (!waitFor([&] { return ears->is(PortState::lost); }, whileNothingComes))
            return "its loss is not told";
        goOnFor(c.upTo(400));
        if (!ears->is(PortState::lost))
            return "the stranger was taken for it";
        pty = std::move(next);
        name = plug(*pty, c.folder / fmt::format("ttyUSB{}", round));
        fs::create_symlink(pty->path(), byId / "usb-pan-box");
    }
    return ears->wrong();
}

// What comes at a wrong speed is never a number; once the probe speaks at the right one it is read.
std::string wrongSpeed(const Case& c) {
    static constexpr std::array ratios{0.125, 0.25, 0.5, 2.0, 3.0, 4.0, 6.0, 8.0, 1.5};
    const double ratio = c.oneOf(ratios), celsius = anyPan(c);
    const Pty pty;
    auto ears = Ears::at<LinePort>(panBox(pty.path()), {});
    bool told = false;
    goOnFor(1500 + c.upTo(1000), paced(40, [&] {
                pty.send(atOtherSpeed(line(anyPan(c)), ratio));
                told = told || ears->is(PortState::wrongSpeed) || ears->is(PortState::refused) ||
                       ears->is(PortState::unended) || ears->is(PortState::listening);
            }));
    if (ears->readings() > 0)
        return fmt::format("a number was read at {} times the speed", ratio);
    if (!told)
        return "it is not told: " + sentence(ears->status());
    ears->alsoTrue(Series::syrup_pan, celsius);
    return resumes(c, *ears, paced(100, [&] { pty.send(line(celsius)); }));
}

// One port gets all that the system takes; the one beside it is read as ever.
std::string flooded(const Case& c) {
    const Pty pty, beside;
    const double celsius = anyPan(c);
    auto ears = Ears::at<LinePort>(panBox(pty.path()), {{Series::syrup_pan, {celsius}}});
    auto other = Ears::at<LinePort>(panBox(beside.path()), {{Series::syrup_pan, {celsius}}});
    std::string lines;
    for (int i = 0; i < 100; ++i)
        lines += line(celsius);
    std::size_t at = 0;
    const auto flood = [&] { // what the system did not take is sent next time
        for (int i = 0; i < 50; ++i) {
            const auto took = ::write(pty.ours(), lines.data() + at, lines.size() - at);
            if (took <= 0)
                break;
            at = (at + static_cast<std::size_t>(took)) % lines.size();
        }
    };
    const auto speak = paced(100, [&] { beside.send(line(celsius)); });
    for (int round = 0; round < 10; ++round)
        if (auto wrong = resumes(c, *other, [&] { flood(), speak(); }); !wrong.empty())
            return "beside a flood: " + wrong;
    goOnFor(200, flood);
    if (!ears->wrong().empty() || ears->readings() < 100)
        return "in the flood: " + (ears->wrong().empty() ? "it is not read" : ears->wrong());
    return {};
}

std::string silent(const Case& c) {
    const Pty pty;
    double celsius = anyPan(c);
    auto ears = Ears::at<LinePort>(panBox(pty.path()), {{Series::syrup_pan, {celsius}}});
    const auto speak = paced(50, [&] { pty.send(line(celsius)); });
    if (auto wrong = resumes(c, *ears, speak); !wrong.empty())
        return wrong;
    goOnFor(200);
    const int before = ears->readings();
    if (!waitFor([&] { return ears->is(PortState::silent); }, whileNothingComes))
        return "its silence is not told";
    if (ears->readings() != before)
        return "read while nothing was said";
    celsius = anyPan(c);
    ears->alsoTrue(Series::syrup_pan, celsius);
    return resumes(c, *ears, speak);
}

// Text without an end, digits among it or nothing but; then the lines end again.
std::string endlessLine(const Case& c) {
    static constexpr std::array<std::string_view, 4> pieces{"syrup=103.", "1", "syrup=99.5 ", "syrup=101.25\r"};
    const Pty pty;
    const double celsius = anyPan(c);
    auto ears = Ears::at<LinePort>(panBox(pty.path()), {});
    const bool begunWell = c.upTo(2) == 0;
    if (begunWell) {
        ears->alsoTrue(Series::syrup_pan, celsius);
        if (auto wrong = resumes(c, *ears, paced(50, [&] { pty.send(line(celsius)); })); !wrong.empty())
            return wrong;
        goOnFor(200);
    }
    const int before = ears->readings();
    const std::string_view piece = c.oneOf(pieces);
    int sent = 0;
    const int all = 1000 + c.upTo(20000);
    const auto speak = paced(5, [&] {
        for (int i = 0; i < 100 && pty.send(piece); ++i)
            ++sent;
    });
    if (!waitFor(
            [&] {
                speak();
                return sent >= all && ears->is(PortState::unended);
            },
            whileNothingComes))
        return "it is not told that no line ends: " + sentence(ears->status());
    if (ears->readings() != before)
        return "read from a line without an end";
    ears->alsoTrue(Series::syrup_pan, celsius);
    return resumes(c, *ears, paced(50, [&] { pty.send("\n" + line(celsius)); }));
}

// Columns by number; now and then, or from some moment on, one is missing. Nothing moves into another's place.
std::string droppedColumn(const Case& c) {
    const Pty pty;
    const int columns = 3 + c.upTo(3); // of which the first three are read
    PortRule rule{.name = "logger", .device = pty.path()};
    const std::array series{Series::syrup_pan, Series::flue_pan, Series::stack};
    Truth truth;
    for (int i = 0; i < 3; ++i) {
        rule.fields.push_back(
            {.is = std::to_string(i + 1), .reads = series[static_cast<std::size_t>(i)], .unit = Unit::degC});
        truth[series[static_cast<std::size_t>(i)]] = {100.0 + i};
    }
    auto ears = Ears::at<LinePort>(rule, truth);
    const auto row = [&](int without) {
        std::string text;
        for (int i = 0; i < columns; ++i)
            if (i != without)
                text += (text.empty() ? "" : ",") + fmt::format("{}.0", 100 + i);
        return text + "\r\n";
    };
    const auto whole = paced(20, [&] { pty.send(row(-1)); });
    for (int i = 0; i < 6; ++i)
        if (auto wrong = resumes(c, *ears, whole); !wrong.empty())
            return wrong;
    const bool forGood = c.upTo(2) == 0;
    const int dropped = c.upTo(columns);
    goOnFor(1000, paced(20, [&] { pty.send(row(forGood || c.upTo(3) == 0 ? dropped : -1)); }));
    if (!ears->wrong().empty())
        return ears->wrong() + fmt::format(" (column {} of {} dropped)", dropped + 1, columns);
    return resumes(c, *ears, whole);
}

} // namespace battery
