#include "core/boil/boil.h"
#include "tests/forecast/forecaster.h"

namespace panside::judge {

namespace {
class Engine : public Forecaster {
public:
    void add(const Fact& fact) override { boil_.add(++id_, fact); }
    std::optional<Range> eta(Instant now) override {
        picture_ = boil_.fold().pictureAt(now);
        return picture_.drawEta;
    }
    const Picture* picture() const override { return &picture_; }

private:
    Boil boil_;
    FactId id_ = 0;
    Picture picture_;
};
} // namespace

Entrant engine() {
    return {"engine", [] { return std::make_unique<Engine>(); }};
}

} // namespace panside::judge
