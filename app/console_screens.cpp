#include "app/console_screens.h"

#include "app/woodpile.h"
#include "ui/board/board.h"
#include "ui/chart/rise_chart.h"
#include "ui/fuel/fuel_screen.h"
#include "ui/probes/probes_screen.h"
#include "ui/reckoner/reckoner_screen.h"
#include "ui/rig/rig_screen.h"
#include "ui/sound/sound_screen.h"
#include "ui/sound/voice.h"
#include "ui/tank/tank_screen.h"
#include "ui/words/journal_words.h"
#include "ui/words/probe_fault_words.h"

#include <QTimer>
#include <algorithm>
#include <filesystem>

namespace panside {

void addReckoner(Console& console) {
    auto* screen = new ReckonerScreen;
    const auto show = [&console, screen](const Dress& dress) { screen->display(console.choices().units, dress); };
    QObject::connect(screen, &ReckonerScreen::left, &console, &Console::showBoard);
    console.addScreen(
        Action::reckoner, screen, [] {}, show);
}

void addRig(Console& console, Session& session) {
    auto* screen = new RigScreen;
    const auto show = [&console, &session, screen](const Dress& dress) {
        // Between shifts what the next one would begin with.
        auto facts = session.boil().facts();
        if (facts.empty())
            for (const auto& setting : session.settings())
                facts.push_back({0, Fact{session.now(), setting}});
        const auto& choices = console.choices();
        screen->display(rigRows(facts, choices.units), choices.units, choices.language, dress);
    };
    QObject::connect(screen, &RigScreen::left, &console, &Console::showBoard);
    QObject::connect(screen, &RigScreen::settingWanted, &console,
                     [&console, &session, screen, show](const RigRow& row, const QString& typed) {
                         auto fact = settingFact(row, typed, session.now());
                         if (const auto* wrong = std::get_if<QString>(&fact)) {
                             screen->say(*wrong);
                             return;
                         }
                         if (session.openShift() || !session.boil().facts().empty())
                             session.enter(std::get<Fact>(fact));
                         else
                             session.carry(std::get<Set>(std::get<Fact>(fact).what));
                         show(console.dress());
                     });
    QObject::connect(screen, &RigScreen::unitsWanted, &console, [&console](Units units) {
        auto choices = console.choices();
        choices.units = units;
        console.choose(choices);
    });
    QObject::connect(screen, &RigScreen::languageWanted, &console, [&console](const QString& language) {
        auto choices = console.choices();
        choices.language = language;
        console.choose(choices);
    });
    QObject::connect(screen, &RigScreen::lookWanted, &console, [&console](Look look) {
        auto choices = console.choices();
        choices.look = look;
        console.choose(choices);
    });
    console.addScreen(
        Action::rig, screen, [&console, show] { show(console.dress()); }, show);
}

void addSound(Console& console) {
    auto* screen = new SoundScreen;
    const auto show = [&console, screen] {
        screen->display(console.choices().sound, console.voice().canBeHeard(), Speech::canSpeak());
    };
    QObject::connect(screen, &SoundScreen::left, &console, &Console::showBoard);
    QObject::connect(screen, &SoundScreen::testWanted, &console.voice(), &Voice::test);
    QObject::connect(screen, &SoundScreen::chosen, &console, [&console](const SoundChoices& sound) {
        auto choices = console.choices();
        choices.sound = sound;
        console.choose(choices);
    });
    console.addScreen(Action::sound, screen, show, [screen, show](const Dress& dress) {
        screen->wear(dress);
        show();
    });
}

// What is left of the woodpile. The journal is read beside, when the page is opened, when another shift is shown and
// when the pile was measured anew; the shift that is shown is counted as it grows.
class PileLeft {
public:
    explicit PileLeft(Session& session) : session_{session} {}
    void forget() { asked_.reset(); }
    std::optional<double> of(const Yard& yard) {
        if (!yard.pile)
            return std::nullopt;
        const Asked asked{yard.measured, session_.shownShift()};
        if (asked_ != asked) {
            asked_ = asked;
            // One kept before its time was stands as it did when the shift began.
            shown_ = CordsOfShift{yard.measured.value_or(Instant::min())};
            burntBeside_.reset();
            if (yard.measured)
                read(*yard.measured, asked.second);
            else
                burntBeside_ = 0;
        }
        if (!burntBeside_)
            return std::nullopt;
        return yard.pile->cords() - *burntBeside_ - shown_.of(session_.boil());
    }

private:
    using Asked = std::pair<std::optional<Instant>, std::optional<ShiftId>>;
    void read(Instant measured, std::optional<ShiftId> shown) {
        try {
            if (const auto journal = session_.journalBeside())
                burntBeside_ = cordsBurntBeside(*journal, measured, shown);
        } catch (const JournalError&) { // it stays unknown; the board says that the journal is in trouble
        }
    }

    Session& session_;
    std::optional<Asked> asked_;
    std::optional<double> burntBeside_; // none: it cannot be read
    CordsOfShift shown_{Instant::min()};
};

void addFuel(Console& console, Session& session) {
    auto* screen = new FuelScreen;
    auto pile = std::make_shared<PileLeft>(session);
    const auto show = [&console, screen, pile] {
        const Picture& picture = console.board().picture();
        const Units units = console.choices().units;
        const ShiftTrace& trace = console.board().chart().trace();
        const Yard& yard = console.choices().yard;
        const FuelBeside beside{.clock = trace.clock(),
                                .steps = screen->steps(),
                                .pricePerCord = yard.pricePerCord,
                                .pile = yard.pile.has_value(),
                                .pileCords = pile->of(yard)};
        screen->display(fuelView(picture, units, beside), trace, picture.at);
    };
    // It goes on while it is looked at.
    auto* second = new QTimer{screen};
    QObject::connect(second, &QTimer::timeout, screen, [screen, show] {
        if (screen->isVisible())
            show();
    });
    second->start(std::chrono::seconds{1});
    QObject::connect(screen, &FuelScreen::stepsChanged, screen, show);
    QObject::connect(screen, &FuelScreen::left, &console, &Console::showBoard);
    const auto open = [pile, show] {
        pile->forget();
        show();
    };
    console.addScreen(Action::fuel, screen, open, [screen](const Dress& dress) { screen->wear(dress); });
}

void addTank(Console& console, Session& session) {
    auto* screen = new TankScreen;
    const auto follow = [&console, &session, screen] {
        const Picture& picture = console.board().picture();
        const auto& level = picture.reading(Series::tank_level);
        const auto& facts = session.boil().facts();
        const bool sapSince = std::any_of(facts.begin(), facts.end(), [&](const Boil::Entry& entry) {
            return level && std::holds_alternative<SapIn>(entry.fact.what) && entry.fact.at >= level->last;
        });
        screen->follow(picture, sapSince, session.now());
    };
    const auto show = [&console, screen, follow](const Dress& dress) {
        screen->display(console.choices().yard, console.choices().units, dress);
        follow();
    };
    QObject::connect(screen, &TankScreen::left, &console, &Console::showBoard);
    QObject::connect(screen, &TankScreen::yardWanted, &console, [&console](const Yard& yard) {
        auto choices = console.choices();
        choices.yard = yard;
        console.choose(choices);
    });
    QObject::connect(screen, &TankScreen::dipped, &console, [&console, &session, follow](const Fact& fact) {
        Fact now = fact;
        now.at = session.now();
        console.keep({now});
        follow();
    });
    console.addScreen(
        Action::tank, screen, [&console, show] { show(console.dress()); }, show);
}

void addProbes(Console& console, Session& session, ProbeWatch& watch, const std::filesystem::path& saveTo) {
    auto* screen = new ProbesScreen;
    const auto open = [&watch, screen] { screen->open(watch.file(), PortFinder{}.all()); };
    QObject::connect(screen, &ProbesScreen::left, &console, &Console::showBoard);
    QObject::connect(screen, &ProbesScreen::portsWanted, &console, open);
    QObject::connect(screen, &ProbesScreen::tryWanted, &watch, &ProbeWatch::read);
    QObject::connect(screen, &ProbesScreen::saveWanted, &console, [screen, saveTo](const ProbeFile& file) {
        if (file.ports.empty()) { // a probe file with no port in it would be refused at the next start
            screen->say(Console::tr("Nothing to keep yet: say of one field at least what it reads."));
            return;
        }
        const auto text = writeProbeFile(file);
        if (const auto back = readProbeFile(text); const auto* faults = std::get_if<std::vector<ProbeFault>>(&back)) {
            screen->say(Console::tr("Not kept: %1").arg(probeFaultWords(faults->front(), Console::tr("probe file"))));
            return;
        }
        std::error_code ignored;
        std::filesystem::create_directories(saveTo.parent_path(), ignored);
        const auto wrong = saveProbeFile(file, saveTo);
        screen->say(wrong.empty() ? Console::tr("Kept in %1.").arg(QString::fromStdString(saveTo.string()))
                                  : Console::tr("Not kept: %1").arg(QString::fromStdString(wrong)));
    });
    QObject::connect(screen, &ProbesScreen::soundWanted, &console, [&console] { console.act(Action::sound); });
    screen->setEvidence([&console, &session] {
        const auto trouble = session.journalTrouble();
        return ChainEvidence{.file = {},
                             .ports = {},
                             .picture = session.picture(),
                             .now = session.now(),
                             .journalTrouble = trouble ? journalWords(*trouble) : QString{},
                             .canBeHeard = console.voice().canBeHeard()};
    });
    QObject::connect(&watch, &ProbeWatch::heard, screen, &ProbesScreen::heard);
    QObject::connect(&watch, &ProbeWatch::status, screen, &ProbesScreen::status);
    console.addScreen(Action::probes, screen, open, [&console, screen](const Dress& dress) {
        screen->setUnits(console.choices().units);
        screen->wear(dress);
    });
}

} // namespace panside
