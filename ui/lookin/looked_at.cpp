#include "ui/lookin/looked_at.h"

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr qint64 tellEvery = 240, tryEvery = 10'000; // milliseconds
constexpr auto chartEvery = 10s;

} // namespace

LookedAt::LookedAt() { trace_.setColumn(lookColumn); }

void LookedAt::apply(const LookChoices& choices) {
    if (choices == applied_)
        return;
    applied_ = choices;
    fault_ = LookFault::none;
    lookIn_.close();
    if (choices.on)
        open();
}

void LookedAt::open() {
    const QString address = !applied_.address.isEmpty() ? applied_.address : houseAddresses().value(0);
    fault_ = lookIn_.open({address, static_cast<quint16>(applied_.port), applied_.key.toStdString()}, lookPage());
    tried_.start();
    told_.invalidate();
    charted_ = 0;
}

void LookedAt::tell(const LookShown& shown, const Boil& boil, bool rehearsal) {
    if (applied_.on && !lookIn_.isOpen() && tried_.elapsed() > tryEvery)
        open(); // the network may have come up since
    if (!lookIn_.isOpen() || (told_.isValid() && told_.elapsed() < tellEvery))
        return;
    told_.start();
    trace_.follow(boil);
    news_.picture = lookPicture(shown, trace_.clock(), rehearsal);
    const auto chart = shown.picture.at.time_since_epoch() / chartEvery;
    if (chart != charted_)
        news_.chart = lookChart(shown, trace_);
    charted_ = chart;
    lookIn_.show(news_);
}

} // namespace panside
