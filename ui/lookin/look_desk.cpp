#include "ui/frame/desks.h"

#include "ui/frame/desk.h"
#include "ui/lookin/look_words.h"
#include "ui/lookin/looked_at.h"

#include <QTimer>

namespace panside {
namespace {

class LookDesk : public Desk {
public:
    LookDesk(Shell& shell, KeyedPage* page) : Desk{shell, page}, page_{page} {
        leavesFrom(page);
        connect(page, &KeyedPage::pressed, this, &LookDesk::act);
        connect(&again_, &QTimer::timeout, this, [this] {
            if (page_->isVisible())
                show();
        });
        again_.start(std::chrono::seconds{2}); // how many look changes by itself
    }
    void open() override { show(); }
    void wear(const Dress& dress) override {
        dress_ = dress;
        page_->wear(dress);
        shown_.reset();
        show();
    }

private:
    void show() {
        const LookedAt& looked = shell_.lookedAt();
        const LookState state{.choices = shell_.choices().lookIn,
                              .fault = looked.fault(),
                              .link = looked.isOpen() ? looked.link() : QString{},
                              .phones = looked.phones()};
        const auto words = lookWords(state, std::max(3, dress_.px(0.9)));
        if (shown_ == words)
            return;
        shown_ = words;
        page_->show(words, lookKeys(state, houseAddresses().size() > 1 || state.fault == LookFault::addressNotOurs));
    }
    void act(const QString& name) {
        choose([&](Choices& choices) {
            LookChoices& look = choices.lookIn;
            if (name == u"turn")
                look.on = !look.on;
            if (name == u"key" || look.key.isEmpty())
                look.key = QString::fromStdString(newKey());
            const QStringList house = houseAddresses();
            if ((name == u"address" || look.address.isEmpty()) && !house.isEmpty())
                look.address = house[(house.indexOf(look.address) + 1) % house.size()];
        });
        shown_.reset();
        show();
    }

    Dress dress_;
    KeyedPage* page_;
    QTimer again_;
    std::optional<QString> shown_;
};

} // namespace

Desk* lookDesk(Shell& shell) { return new LookDesk{shell, new KeyedPage{QStringLiteral("lookIn")}}; }

} // namespace panside
