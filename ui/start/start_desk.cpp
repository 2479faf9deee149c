#include "ui/frame/desks.h"

#include "core/probe/probe_file.h"
#include "core/probe/probe_source.h"
#include "ui/frame/desk.h"
#include "ui/frame/languages.h"
#include "ui/start/start_screen.h"
#include "ui/words/place_words.h"
#include "ui/words/said.h"

namespace panside {
namespace {

class StartDesk : public Desk {
public:
    StartDesk(Shell& shell, StartScreen* screen) : Desk{shell, screen}, screen_{screen} {
        connect(screen, &StartScreen::chose, this, &StartDesk::choose);
        connect(screen, &StartScreen::typed, this, &StartDesk::type);
        connect(screen, &StartScreen::picked, this, &StartDesk::pick);
        connect(screen, &StartScreen::wentOn, this, [this] { go(1); });
        connect(screen, &StartScreen::wentBack, this, [this] { go(-1); });
        connect(screen, &StartScreen::left, this, &StartDesk::end);
    }
    void open() override {
        question_ = 0;
        probe_.reset();
        wear(shell_.dress());
    }
    void wear(const Dress& dress) override {
        screen_->display(startView(startQuestions()[question_], ground()), units(), dress);
    }

private:
    StartGround ground() const {
        std::error_code error;
        const bool probe = probe_.value_or(std::filesystem::exists(shell_.probePlace(), error));
        return {session().settings(), units(), shell_.choices().language, probe};
    }
    void go(int by) {
        const std::size_t last = startQuestions().size() - 1;
        if (by > 0 && question_ == last)
            return end();
        if (by > 0 || question_ > 0)
            question_ = by > 0 ? question_ + 1 : question_ - 1;
        wear(shell_.dress());
    }
    void choose(int index) {
        const StartQuestion question = startQuestions()[question_];
        if (question == StartQuestion::source)
            probe_ = index == 1;
        // The page after is shown in the language and the units that were chosen.
        go(1);
        if (question == StartQuestion::language)
            Desk::choose(
                [&](Choices& choices) { choices.language = languages()[static_cast<std::size_t>(index)].code; });
        else if (question == StartQuestion::units)
            Desk::choose([&](Choices& choices) { choices.units = index == 0 ? Units::us : Units::metric; });
    }
    // Kept only when all of them can be.
    void type(const QStringList& answers) {
        const StartView view = startView(startQuestions()[question_], ground());
        std::vector<Fact> facts;
        for (std::size_t i = 0; i < view.fields.size(); ++i) {
            const QString& answer = answers[static_cast<qsizetype>(i)];
            if (answer.isEmpty())
                continue;
            auto fact = settingFact(view.fields[i], answer, session().now());
            if (const auto* wrong = std::get_if<QString>(&fact))
                return screen_->refuse(*wrong, i);
            facts.push_back(std::get<Fact>(std::move(fact)));
        }
        set(facts);
    }
    void pick(std::size_t place) {
        const std::string name{allPlaces()[place].name};
        auto fact = settingFact(rigRow(Setting::place, session().settings(), units()), QString::fromStdString(name),
                                session().now());
        if (const auto* wrong = std::get_if<QString>(&fact))
            return screen_->refuse(*wrong);
        set({std::get<Fact>(std::move(fact))});
    }
    void set(const std::vector<Fact>& facts) {
        for (const Fact& fact : facts)
            if (const auto refused = session().set(fact))
                return screen_->refuse(said(refused->why, "Session"));
        shell_.refreshSoon();
        go(1);
    }
    void end() {
        const QString missing = leftOut(ground());
        shell_.say(missing.isEmpty() ? QString{} : Desk::tr("Left out: %1. F7, then 2, asks again.").arg(missing));
        if (probe_.value_or(false) && shell_.probes())
            shell_.act(Action::probes);
        else
            shell_.showBoard();
    }

    StartScreen* screen_;
    std::size_t question_ = 0;
    std::optional<bool> probe_; // as it was just answered
};

} // namespace

Desk* startDesk(Shell& shell) { return new StartDesk{shell, new StartScreen}; }

} // namespace panside
