#include "ui/rehearsal/rehearsal_desk.h"

#include "core/shift/rehearsal_feed.h"
#include "ui/chart/shift_trace.h"
#include "ui/page/keyed_page.h"
#include "ui/rehearsal/rehearsal_words.h"

#include <QTimer>

namespace panside {
namespace {

constexpr int deedsShown = 5;

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
        feed->again(name == u"same" ? Evening::same : name == u"lesson" ? Evening::lesson : Evening::another);
        shell_.showBoard();
    }
    void show() {
        RehearsalFeed* feed = shell_.rehearsal();
        if (!feed)
            return;
        RehearsalTold told{feed->seed(), feed->isOver(), feed->isCrewAway(), feed->troubles(), feed->score(), {}};
        told.done = lastDone(feed->session().boil().facts(), deedsShown, units(), shell_.trace().clock());
        std::vector<KeyedPage::Key> keys{{QStringLiteral("another"), Desk::tr("Another evening"), Qt::Key_N},
                                         {QStringLiteral("same"), Desk::tr("The same again"), Qt::Key_G},
                                         {QStringLiteral("lesson"), Desk::tr("A lesson"), Qt::Key_L}};
        if (!told.over)
            keys.push_back({QStringLiteral("crew"),
                            told.crewAway ? Desk::tr("Let the crew work") : Desk::tr("Take the crew's part"),
                            Qt::Key_T});
        page_->show(rehearsalWords(told, units()), keys);
    }

    KeyedPage* page_;
    QTimer second_;
};

} // namespace

Desk* rehearsalDesk(Shell& shell) { return new RehearsalDesk{shell, new KeyedPage{QStringLiteral("rehearsal")}}; }
bool isRehearsal(Shell& shell) { return shell.rehearsal() != nullptr; }

} // namespace panside
