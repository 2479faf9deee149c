#include "ui/frame/desks.h"

#include "ui/ledger/ledger_desk.h"
#include "ui/sap/route_view.h"
#include "ui/sap/tanks_view.h"
#include "ui/sap/tonight_view.h"

namespace panside {
namespace {

class TanksDesk : public ListDesk {
public:
    using ListDesk::ListDesk;

protected:
    void show(const HouseLedger* house) override {
        ListView view = tanksView(house ? &house->ledger() : nullptr, session().now(), units());
        const bool some = !view.rows.empty();
        view.keys = {{Qt::Key_G, QStringLiteral("gather"), Desk::tr("Gathered"), !some},
                     {Qt::Key_R, QStringLiteral("route"), Desk::tr("By route"), false, hasRoute()},
                     {Qt::Key_O, QStringLiteral("sheet"), Desk::tr("Route sheet")},
                     {Qt::Key_M, QStringLiteral("move"), Desk::tr("Pumped"), false, some},
                     {Qt::Key_I, QStringLiteral("dip"), Desk::tr("Dipped")},
                     {Qt::Key_K, QStringLiteral("concentrate"), Desk::tr("Concentrated"), false, some},
                     {Qt::Key_L, QStringLiteral("lose"), Desk::tr("Lost"), false, some},
                     {Qt::Key_P, QStringLiteral("pans"), Desk::tr("Pans emptied")},
                     {Qt::Key_V, QStringLiteral("vessel"), Desk::tr("A tank")},
                     wayToBoard()};
        screen_->display(view);
    }

private:
    QString chosenName() const {
        if (!house() || screen_->chosen() < 0)
            return {};
        const auto shown = tanksShown(house()->ledger(), session().now());
        const auto row = static_cast<std::size_t>(screen_->chosen());
        return row < shown.size() ? QString::fromStdString(house()->ledger().vessels()[shown[row]].name) : QString{};
    }
    bool hasRoute() const { return house() && !routeOf(house()->ledger()).empty(); }
    // Stop by stop: only what is read there is typed.
    void goRound() {
        if (auto first = stopForm(
                routeOf(house()->ledger()), 0, [this] { return form(Deed::gathered); }, units()))
            enter(std::move(*first));
    }
    void print() {
        writeTo(Desk::tr("Route sheet"), QStringLiteral("route.pdf"), {"pdf"}, [&](const std::string& place) {
            routeAsPdf(house() ? routeOf(house()->ledger()) : std::vector<RouteStop>{}, session().now(), units(),
                       place);
        });
    }
    void ask(Deed deed, std::optional<Key> key) {
        BookForm filled = form(deed);
        if (key)
            filled.put(*key, chosenName());
        enter(std::move(filled));
    }
    void act(int key) override {
        switch (key) {
        case Qt::Key_G:
            return ask(Deed::gathered, Key::to);
        case Qt::Key_R:
            return hasRoute() ? goRound() : void();
        case Qt::Key_O:
            return print();
        case Qt::Key_M:
            return ask(Deed::moved, Key::from);
        case Qt::Key_I:
        case Qt::Key_Return:
            return ask(Deed::dipped, Key::in);
        case Qt::Key_K:
            return ask(Deed::concentrated, Key::from);
        case Qt::Key_L:
            return ask(Deed::lost, Key::from);
        case Qt::Key_P:
            return ask(Deed::pans_emptied, {});
        case Qt::Key_V:
            return ask(Deed::vessel, {});
        case Qt::Key_Escape:
            return shell_.showBoard();
        default:
            break;
        }
    }
};

class TonightDesk : public ListDesk {
public:
    using ListDesk::ListDesk;
    void open() override {
        ask_ = usualAsk(session().now());
        LedgerDesk::open();
    }

protected:
    void show(const HouseLedger* house) override {
        ListView view = tonightView(house ? &house->ledger() : nullptr, ask_, units());
        view.keys = {{Qt::Key_E, QStringLiteral("litEarlier"), Desk::tr("Lit earlier")},
                     {Qt::Key_L, QStringLiteral("litLater"), Desk::tr("Lit later")},
                     {Qt::Key_Q, QStringLiteral("bedEarlier"), Desk::tr("Cold earlier")},
                     {Qt::Key_W, QStringLiteral("bedLater"), Desk::tr("Cold later")},
                     {Qt::Key_K, QStringLiteral("concentrate"), Desk::tr("Concentrated first")},
                     {Qt::Key_T, QStringLiteral("tanks"), Desk::tr("Tanks")},
                     wayToBoard()};
        screen_->display(view);
    }

private:
    // Off, then 4 to 12 brix, as membranes give.
    void turnConcentrate() {
        static constexpr double steps[] = {6, 8, 10, 12};
        for (const double step : steps)
            if (!ask_.concentrate || ask_.concentrate->degrees() < step - 0.01) {
                ask_.concentrate = Brix::degrees(step);
                return;
            }
        ask_.concentrate.reset();
    }
    void act(int key) override {
        constexpr std::chrono::minutes half{30};
        switch (key) {
        case Qt::Key_E:
            ask_.light -= half;
            break;
        case Qt::Key_L:
            ask_.light += half;
            break;
        case Qt::Key_Q:
            ask_.cold -= half;
            break;
        case Qt::Key_W:
            ask_.cold += half;
            break;
        case Qt::Key_K:
            turnConcentrate();
            break;
        case Qt::Key_T:
            return shell_.act(Action::tanks);
        case Qt::Key_Escape:
            return shell_.showBoard();
        default:
            return;
        }
        showHouse();
    }
    TonightAsk ask_;
};

} // namespace

Desk* tanksDesk(Shell& shell) { return new TanksDesk{shell, QStringLiteral("tanks")}; }
Desk* tonightDesk(Shell& shell) { return new TonightDesk{shell, QStringLiteral("tonight")}; }

} // namespace panside
