#include "ui/frame/desks.h"

#include "core/shift/rehearsal_feed.h"
#include "ui/chart/shift_trace.h"
#include "ui/frame/desk.h"
#include "ui/page/keyed_page.h"
#include "ui/rehearsal/rehearsal_words.h"

#include <QTimer>
#include <algorithm>
#include <array>

namespace panside {
namespace {

constexpr int deedsShown = 5;

// What a teacher can throw in, and the key for it.
struct Throw {
    Trouble trouble;
    QString name;
    int key;
};
const std::array<Throw, troubleCount>& throws() {
    static const std::array<Throw, troubleCount> all{{{Trouble::probeOut, QStringLiteral("probeOut"), Qt::Key_P},
                                                      {Trouble::feedShut, QStringLiteral("feedShut"), Qt::Key_E},
                                                      {Trouble::forgottenLoads, QStringLiteral("forgotten"), Qt::Key_O},
                                                      {Trouble::foam, QStringLiteral("foam"), Qt::Key_M},
                                                      {Trouble::frontPassing, QStringLiteral("front"), Qt::Key_R},
                                                      {Trouble::nobodyDraws, QStringLiteral("whole"), Qt::Key_W}}};
    return all;
}

class RehearsalDesk : public Desk {
public:
    RehearsalDesk(Shell& shell, KeyedPage* page) : Desk{shell, page}, page_{page} {
        leavesFrom(page);
        connect(page, &KeyedPage::pressed, this, &RehearsalDesk::press);
        second_.setInterval(std::chrono::seconds{1});
        connect(&second_, &QTimer::timeout, this, [this] {
            if (page_->isVisible())
                show();
        });
    }
    void open() override {
        show();
        second_.start();
    }
    void wear(const Dress& dress) override {
        page_->wear(dress);
        if (page_->isVisible())
            show();
    }

private:
    void press(const QString& name) {
        using Evening = RehearsalFeed::Evening;
        RehearsalFeed* feed = shell_.rehearsal();
        if (!feed)
            return;
        if (name == u"crew") {
            feed->sendCrewAway(!feed->isCrewAway());
            return show();
        }
        if (name == u"teach" || name == u"away") {
            teaching_ = name == u"teach";
            return show();
        }
        const auto thrown = std::ranges::find(throws(), name, &Throw::name);
        if (thrown != throws().end()) {
            feed->throwIn(thrown->trouble);
            page_->say(Desk::tr("Now: %1.").arg(troubleWords(thrown->trouble)));
            return show();
        }
        teaching_ = false;
        feed->again(name == u"same" ? Evening::same : name == u"lesson" ? Evening::lesson : Evening::another);
        shell_.showBoard();
    }
    void show() {
        RehearsalFeed* feed = shell_.rehearsal();
        if (!feed)
            return;
        RehearsalTold told{feed->seed(), feed->isOver(), feed->isCrewAway(), feed->troubles(), feed->score(), {}};
        told.done = lastDone(feed->session().boil().facts(), deedsShown, units(), shell_.trace().clock());
        teaching_ = teaching_ && !told.over;
        told.teaching = teaching_;
        page_->show(rehearsalWords(told, units()), teaching_ ? teachersKeys() : keys(told));
    }
    static std::vector<KeyedPage::Key> keys(const RehearsalTold& told) {
        std::vector<KeyedPage::Key> keys{{QStringLiteral("another"), Desk::tr("Another evening"), Qt::Key_N},
                                         {QStringLiteral("same"), Desk::tr("The same again"), Qt::Key_G},
                                         {QStringLiteral("lesson"), Desk::tr("A lesson"), Qt::Key_L}};
        if (!told.over) {
            keys.push_back({QStringLiteral("crew"),
                            told.crewAway ? Desk::tr("Let the crew work") : Desk::tr("Take the crew's part"),
                            Qt::Key_T});
            keys.push_back({QStringLiteral("teach"), Desk::tr("Teach"), Qt::Key_H});
        }
        return keys;
    }
    static std::vector<KeyedPage::Key> teachersKeys() {
        std::vector<KeyedPage::Key> keys;
        for (const Throw& one : throws())
            keys.push_back({one.name, troubleKeyWord(one.trouble), one.key});
        keys.push_back({QStringLiteral("away"), Desk::tr("Enough"), Qt::Key_H});
        return keys;
    }

    KeyedPage* page_;
    QTimer second_;
    bool teaching_ = false;
};

} // namespace

Desk* rehearsalDesk(Shell& shell) { return new RehearsalDesk{shell, new KeyedPage{QStringLiteral("rehearsal")}}; }
bool isRehearsal(Shell& shell) { return shell.rehearsal() != nullptr; }

} // namespace panside
