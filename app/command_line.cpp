#include "app/command_line.h"

#include "app/version.h"
#include "core/boil/log_limits.h"
#include "ui/frame/languages.h"

#include <CLI/CLI.hpp>
#include <algorithm>

#include <ostream>

namespace panside {
namespace {

// "en or fr"
std::string codes() {
    std::string all;
    for (const std::string& code : languageCodes())
        all += (all.empty() ? "" : " or ") + code;
    return all;
}

constexpr auto whySwitch = "Show on the error stream why: each alarm, doubt, forecast and learned value";
constexpr auto about =
    R"(Panside stands beside the syrup pan of a wood-fired evaporator. It reads the probes or what you
type, knows the day's target, predicts the draw, calls the firings, warns before a pan scorches, and keeps every shift.
It advises and controls nothing: the instruments on the pan, the hydrometer and local codes come first.

`panside` alone opens the console.)";

constexpr auto examples = R"(
Examples
  panside                                        the console, on your own journal
  panside --rehearsal                            the console on a made-up boil; nothing of it is kept
  panside tend --probe pan.toml                  the same without a screen, one JSON object a second
  panside rehearse --hours 3 --seed 7 --out a.csv   a made-up boil as a shift log
  panside replay a.csv --every 60                what the engine says of a log, once a minute
  panside check a.csv                            every fault of a log, with its line
  panside import a.csv --journal season.db       a log into a journal
  panside export --journal season.db --out b.csv    and out again
  panside reckon target --pressure 98.7kPa --density 66.9brix

A number and its unit are written together: 98.7kPa, 66.9brix, 210degF, 300m, 45min, 12.3mV.
Exit status: 0 done; 1 refused because of the input; 2 wrong usage; 3 the machine failed (disk, port).
`panside COMMAND --help` says more of each.)";

// Turns every --set of a command into settings; what is wrong with one is a usage error.
void readSettings(const std::vector<std::string>& texts, std::vector<Set>& settings) {
    for (const auto& text : texts) {
        auto setting = settingIn(text);
        if (const auto* wrong = std::get_if<std::string>(&setting))
            throw CLI::ValidationError(*wrong);
        settings.push_back(std::get<Set>(setting));
    }
}

class CommandLine {
public:
    CommandLine() {
        app_.footer(examples);
        app_.set_version_flag("--version", std::string{"panside "} + version);
        app_.set_help_flag("--help,-h", "Show this help and end");
        app_.require_subcommand(0, 1);
        addConsole();
        addReplay();
        addTend();
        addRehearse();
        addCheck();
        addImport();
        addExport();
        addReport();
        addTrace();
        addReckon();
    }

    Command read(std::vector<std::string> words, std::ostream& out, std::ostream& err) {
        std::ranges::reverse(words);
        try {
            app_.parse(std::move(words));
            readSettings(settingTexts_, settings_);
            if (app_.get_subcommands().empty())
                return console_;
        } catch (const CLI::ParseError& error) {
            const bool wrong = app_.exit(error, out, err) != 0;
            return Answered{wrong ? 2 : 0};
        }
        if (auto* replay = std::get_if<ReplayRequest>(&command_))
            replay->settings = settings_;
        if (auto* tend = std::get_if<TendRequest>(&command_))
            tend->settings = settings_;
        return command_;
    }

private:
    // A command whose options are read straight into `options`, which the callback then takes as what was asked.
    template <class Options>
    CLI::App* add(const std::string& name, const std::string& text, Options& options, const std::string& footer) {
        auto* command = app_.add_subcommand(name, text);
        command->footer("\n" + footer);
        command->callback([this, &options] { command_ = options; });
        return command;
    }
    void addSettings(CLI::App* command) {
        command->add_option("--set", settingTexts_, "A setting the facts lack, as KEY=VALUE: target_density=66.9brix")
            ->allow_extra_args(false);
    }

    void addConsole() {
        app_.add_option("--journal", console_.journal, "Keep the shifts in this file instead of the usual place");
        app_.add_option("--probe", console_.probe, "The probe file: ports, and what their fields mean");
        app_.add_flag("--rehearsal", console_.rehearsal, "A made-up boil to learn on; nothing of it is kept");
        app_.add_option("--seed", console_.seed, "Which rehearsal: the same seed gives the same boil")
            ->needs("--rehearsal");
        app_.add_option("--speed", console_.speed, "How many times faster than real time the rehearsal runs")
            ->check(CLI::Range(0.1, 60.0))
            ->needs("--rehearsal");
        auto* night = app_.add_flag("--night", console_.night, "Dim and warm, for eyes used to the dark");
        app_.add_flag("--day", console_.day, "Dark on light, for a room with windows")->excludes(night);
        app_.add_option("--language", console_.language, codes())->check(CLI::IsMember(languageCodes()));
        app_.add_option("--units", console_.units, "us (degF, gal, in, lb) or metric (degC, L, mm, kg)")
            ->check(CLI::IsMember({"us", "metric"}));
    }
    void addReplay() {
        auto* command = add("replay", "Run the engine over a log, on the log's own clock", replay_,
                            "One JSON object a line: what the console would have shown.\n"
                            "  panside replay night.csv --every 60\n"
                            "  panside replay night.csv --as-entered    late entries only once they were made\n"
                            "  panside replay night.csv --set elevation=300m");
        command->add_option("LOG", replay_.log, "The shift log; - reads it from standard input")->required();
        command->add_option("--every", replay_.every, "Seconds from one line to the next")
            ->check(CLI::Range(1e-3, 1e6))
            ->capture_default_str();
        command->add_flag("--as-entered", replay_.asEntered, "Leave out what had not been entered yet at each moment");
        command->add_flag("--why", replay_.why, whySwitch);
        addSettings(command);
    }
    void addTend() {
        auto* command =
            add("tend", "Watch a boil without a screen, and keep it", tend_,
                "Prints one JSON object a second, and takes rows of the shift log from standard input:\n"
                "  ,fired,12,kg,                 an empty time means now\n"
                "A bad row is refused on the error stream; the rest goes on. At the end of the input it goes\n"
                "on as long as there is a probe; without one it prints the last picture and ends.\n"
                "  panside tend --probe pan.toml --journal season.db\n"
                "  panside tend --probe pan.toml --serve 192.168.1.20:8437   and a look in for phones\n"
                "  echo ',note,,,sap is cloudy' | panside tend");
        command->add_option("--probe", tend_.probe, "The probe file: ports, and what their fields mean");
        command->add_option("--journal", tend_.journal, "Keep the shift in this file instead of the usual place");
        command->add_option("--serve", tend_.serve, "Let phones look in, at this address and port of this machine");
        command->add_flag("--why", tend_.why, whySwitch);
        addSettings(command);
    }
    void addRehearse() {
        auto* command = add("rehearse", "Make up a boil as a shift log", rehearse_,
                            "The same seed gives the same bytes. Names and numbers are invented.\n"
                            "  panside rehearse --hours 8 --seed 3 --out night.csv\n"
                            "  panside rehearse --season --seed 3 --out season   day books, shift logs, truth.json");
        auto* hours =
            command->add_option("--hours", rehearse_.hours, "How long it boils")->check(CLI::Range(0.01, 48.0));
        auto* season = command->add_flag("--season", rehearse_.season,
                                         "The season of a small and a large house instead, each with its truth");
        hours->excludes(season);
        command->add_option("--seed", rehearse_.seed, "Which boil")->capture_default_str();
        command->add_option("--every", rehearse_.every, "Seconds from one reading of a kind to the next")
            ->capture_default_str()
            ->check(CLI::Range(1.0, 600.0));
        auto* out = command->add_option("--out", rehearse_.out,
                                        "Write it to this file instead of the terminal; a season to this folder");
        season->needs(out);
        command->final_callback([this, hours] {
            if (!rehearse_.season && hours->count() == 0)
                throw CLI::RequiredError("--hours");
            command_ = rehearse_;
        });
    }
    void addCheck() {
        auto* command = add("check", "Show every fault of a log with its line; change nothing", check_,
                            "  panside check night.csv\nExit status 1 if there is a fault; a warning alone is none.");
        command->add_option("LOG", check_.log, "The shift log; - reads it from standard input")->required();
        command->add_option("--journal", check_.journal, "Judge a day book together with what this journal holds");
        command->add_flag("--json", check_.json, "The same as one JSON object");
    }
    void addImport() {
        auto* command = add("import", "Take logs into a journal, each whole or not at all", import_,
                            "  panside import monday.csv tuesday.csv --journal season.db\n"
                            "  panside import logger.csv --mapping logger.toml --journal season.db\n"
                            "A log that is already there is noticed and adds nothing. --mapping says what the columns\n"
                            "of another logger's table are: a mapping file; or the name of the probe, where the table\n"
                            "was mapped on the screen; or the word remembered for whatever was mapped there.");
        command->add_option("LOG", import_.logs, "The shift logs, or other loggers' tables")->required();
        command->add_option("--journal", import_.journal, "The journal; made if there is none")->required();
        command->add_option("--mapping", import_.mapping, "What the columns of those that are no shift logs are");
        command->add_flag("--json", import_.json, "What was done, as one JSON object");
    }
    void addExport() {
        auto* command = add("export", "Give a shift of a journal back as a log", export_,
                            "  panside export --journal season.db --shift 3 --out night.csv\n"
                            "Without --shift the journal must hold one shift; otherwise their numbers are listed.");
        command->add_option("--journal", export_.journal, "The journal")->required();
        command->add_option("--shift", export_.shift, "Which shift");
        command->add_option("--out", export_.out, "Write it to this file instead of the terminal");
        command->add_flag("--json", export_.json, "The list of shifts, where one must be chosen, as JSON");
    }
    void addReport() {
        auto* command = add("report", "A shift or a season on paper", report_,
                            "  panside report --journal season.db --shift 3 --out night.pdf\n"
                            "  panside report --journal season.db --season 2026 --out season.xlsx\n"
                            "The ending of --out says which: .pdf, .csv or .xlsx. Without --out, CSV on the terminal.\n"
                            "A season is named by its spring: 2026 is July 2025 to June 2026.\n"
                            "  panside report --journal season.db --lots\n"
                            "  panside report --journal season.db --book --out inspector.pdf\n"
                            "  panside report --journal season.db --recall 27-073 --out recall.xlsx\n"
                            "  panside report --journal season.db --route --out route.pdf");
        command->add_option("--journal", report_.journal, "The journal")->required();
        auto* shift = command->add_option("--shift", report_.shift, "Which shift");
        command->add_option("--out", report_.out, "Write it to this file: .pdf, .csv or .xlsx");
        command
            ->add_option_function<std::string>(
                "--season",
                [this](const std::string& year) {
                    report_.season = true;
                    if (!year.empty())
                        report_.year = std::stoi(year);
                },
                "The season instead of a shift: its year, or all seasons without one")
            ->expected(0, 1)
            ->check(CLI::Range(firstYear, lastYear) | CLI::IsMember({""}))
            ->excludes(shift);
        auto* lots = command->add_flag("--lots", report_.lots, "Every lot: sizes, counts, grade, what was found");
        auto* book = command->add_flag("--book", report_.book, "The inspector's book")->excludes(lots);
        auto* recall = command->add_option("--recall", report_.recall, "A mock recall of this lot")
                           ->excludes(lots)
                           ->excludes(book);
        auto* route =
            command->add_flag("--route", report_.route, "A sheet for the crew that gathers: stop by stop, .pdf")
                ->excludes(lots)
                ->excludes(book)
                ->excludes(recall);
        for (auto* one : {lots, book, recall, route})
            one->excludes(shift)->excludes("--season");
        command
            ->add_option("--language", report_.language, codes() + ", of .pdf and .xlsx; otherwise as in the console")
            ->check(CLI::IsMember(languageCodes()));
        command->add_option("--units", report_.units, "us or metric; otherwise as in the console")
            ->check(CLI::IsMember({"us", "metric"}));
    }
    void addTrace() {
        auto* command = add("trace", "What a lot, a vessel or a night came from, and what it went into", trace_,
                            "  panside trace 27-073 --journal season.db\n"
                            "  panside trace \"drum 7\" --journal season.db --forward\n"
                            "A night is named by its local date, or as its shift. Shares are of sugar.");
        command->add_option("NAME", trace_.name, "The lot, vessel or night")->required();
        command->add_option("--journal", trace_.journal, "The journal")->required();
        command->add_flag("--forward", trace_.forward, "What it went into, down to the buyers");
        command->add_flag("--json", trace_.json, "Both ways, as one JSON object");
    }
    void addReckon() { app_.add_subcommand("reckon", "The sums of the trade: `panside reckon --help` lists them"); }

    CLI::App app_{about, "panside"};
    std::vector<std::string> settingTexts_;
    std::vector<Set> settings_;
    ConsoleRequest console_;
    ReplayRequest replay_;
    TendRequest tend_;
    RehearseRequest rehearse_;
    CheckRequest check_;
    ImportRequest import_;
    ExportRequest export_;
    ReportRequest report_;
    TraceRequest trace_;
    Command command_ = Answered{0};
};

} // namespace

Command commandIn(const std::vector<std::string>& words, std::ostream& out, std::ostream& err) {
    // The sums have a grammar of their own, a kind at a time.
    if (!words.empty() && words.front() == "reckon")
        return ReckonRequest{{words.begin() + 1, words.end()}};
    return CommandLine{}.read(words, out, err);
}

} // namespace panside
