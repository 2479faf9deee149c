#include "ui/frame/desks.h"

#include "core/probe/probe_source.h"
#include "ui/frame/desk.h"
#include "ui/probes/probes_screen.h"
#include "ui/sound/voice.h"
#include "ui/words/fault_words.h"

namespace panside {
namespace {

class ProbesDesk : public Desk {
public:
    ProbesDesk(Shell& shell, ProbesScreen* screen, ProbeSource& watch)
        : Desk{shell, screen}, screen_{screen}, watch_{watch} {
        leavesFrom(screen);
        connect(screen, &ProbesScreen::portsWanted, this, &ProbesDesk::open);
        connect(screen, &ProbesScreen::tryWanted, &watch, &ProbeSource::read);
        connect(screen, &ProbesScreen::saveWanted, this, &ProbesDesk::save);
        connect(screen, &ProbesScreen::soundWanted, this, [this] { shell_.act(Action::sound); });
        connect(&watch, &ProbeSource::heard, screen, &ProbesScreen::heard);
        connect(&watch, &ProbeSource::status, screen, &ProbesScreen::status);
        screen->setEvidence([this] {
            const auto trouble = session().journalTrouble();
            return ChainEvidence{.picture = session().picture(),
                                 .now = session().now(),
                                 .journalTrouble = trouble ? journalWords(*trouble) : QString{},
                                 .canBeHeard = shell_.voice().canBeHeard()};
        });
    }
    void open() override { screen_->open(watch_.file(), PortFinder{}.all()); }
    void wear(const Dress& dress) override {
        screen_->setUnits(units());
        screen_->wear(dress);
    }

private:
    void save(const ProbeFile& file) {
        if (file.ports.empty()) { // a probe file with no port in it would be refused at the next start
            screen_->say(Desk::tr("Nothing to keep yet: say of one field at least what it reads."));
            return;
        }
        const auto text = writeProbeFile(file);
        if (const auto back = readProbeFile(text); const auto* faults = std::get_if<std::vector<ProbeFault>>(&back)) {
            screen_->say(Desk::tr("Not kept: %1").arg(probeFaultWords(faults->front(), Desk::tr("probe file"))));
            return;
        }
        const auto& place = shell_.probePlace();
        std::error_code ignored;
        std::filesystem::create_directories(place.parent_path(), ignored);
        const auto wrong = saveProbeFile(file, place);
        screen_->say(wrong.empty() ? Desk::tr("Kept in %1.").arg(QString::fromStdString(place.string()))
                                   : Desk::tr("Not kept: %1").arg(QString::fromStdString(wrong)));
    }

    ProbesScreen* screen_;
    ProbeSource& watch_;
};

} // namespace

Desk* probesDesk(Shell& shell) { return new ProbesDesk{shell, new ProbesScreen, *shell.probes()}; }

} // namespace panside
