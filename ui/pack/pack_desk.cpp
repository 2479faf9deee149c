#include "ui/frame/desks.h"

#include "ui/ledger/grade_form.h"
#include "ui/ledger/ledger_desk.h"
#include "ui/pack/label_sheet.h"
#include "ui/pack/pack_view.h"
#include "ui/words/place_words.h"

namespace panside {
namespace {

constexpr int mostLabels = 600; // 25 pages

class PackDesk : public ListDesk {
public:
    using ListDesk::ListDesk;
    void open() override {
        leaf_ = Leaf::vessels;
        LedgerDesk::open();
    }

protected:
    void show(const HouseLedger* house) override {
        view_ = packView(house, session().settings(), units());
        screen_->display(leaf_ == Leaf::vessels ? vessels() : leaf_ == Leaf::yields ? yields() : checklist());
    }

private:
    enum class Leaf { vessels, yields, checklist };
    std::vector<PageKey> onlyBack() const { return {{Qt::Key_Escape, QStringLiteral("back"), Desk::tr("Back")}}; }
    ListView vessels() const {
        ListView view{view_.columns, view_.rows, {}, view_.nothing, {}, {}};
        for (const PackLine& line : view_.lines)
            view.said.push_back({line.says, line.notes});
        const bool some = !view_.rows.empty();
        view.keys = {{Qt::Key_P, QStringLiteral("pack"), Desk::tr("Pack"), some, some},
                     {Qt::Key_Y, QStringLiteral("yields"), Desk::tr("Yield"), false, some},
                     {Qt::Key_G, QStringLiteral("grade"), Desk::tr("Grade"), false, some},
                     {Qt::Key_T, QStringLiteral("tag"), Desk::tr("Drum tag"), false, some},
                     {Qt::Key_L, QStringLiteral("needs"), Desk::tr("What a label needs")},
                     wayToBoard()};
        return view;
    }
    ListView yields() const {
        const auto sizes = usualSizes(house(), units());
        const Vessel* of = chosenVessel();
        if (!of)
            return vessels();
        const YieldView lines = yieldView(*of, sizes, units());
        return {lines.columns,
                lines.rows,
                {},
                QString::fromStdString(of->name),
                Desk::tr("Weights are of the content alone. No scale here is legal for trade."),
                onlyBack()};
    }
    ListView checklist() const {
        const bool set = house() && house()->ledger().tables().place;
        return {checklistColumns(),
                labelChecklist(law(), nullptr),
                {},
                placeName(law()),
                set ? QString{} : Desk::tr("No place is set: F7, then 2, asks where the syrup is sold."),
                onlyBack()};
    }
    const Vessel* chosenVessel() const {
        return house() && chosen_ < view_.lines.size() ? &house()->ledger().vessels()[view_.lines[chosen_].vessel]
                                                       : nullptr;
    }
    void turn(Leaf leaf) {
        leaf_ = leaf;
        showHouse();
        if (leaf == Leaf::vessels)
            screen_->choose(static_cast<int>(chosen_));
    }
    void act(int key) override {
        if (leaf_ == Leaf::vessels && screen_->chosen() >= 0)
            chosen_ = static_cast<std::size_t>(screen_->chosen());
        if (key == Qt::Key_Escape)
            return leaf_ == Leaf::vessels ? shell_.showBoard() : turn(Leaf::vessels);
        if (leaf_ != Leaf::vessels)
            return;
        if (key == Qt::Key_L)
            return turn(Leaf::checklist);
        const Vessel* of = chosenVessel();
        if (!of)
            return;
        if (key == Qt::Key_P || key == Qt::Key_Return)
            enter(packForm(form(Deed::packed), *house(), view_.lines[chosen_].vessel, session().settings(), units(),
                           session().now()));
        else if (key == Qt::Key_Y)
            turn(Leaf::yields);
        else if (key == Qt::Key_G)
            enter(gradeForm(form(Deed::graded), law(), QString::fromStdString(of->name)));
        else if (key == Qt::Key_T)
            tag(*of);
    }
    void tag(const Vessel& of) {
        // As it is now: while a place is picked the house may be read anew, and the vessel with it.
        const Label label = drumTag(house()->ledger(), of, units());
        writeTo(Desk::tr("Drum tag"), QStringLiteral("tag.pdf"), {"pdf"},
                [&](const std::string& place) { tagAsPdf(label, place); });
    }

    PackView view_;
    Leaf leaf_ = Leaf::vessels;
    std::size_t chosen_ = 0;
};

class LotsDesk : public ListDesk {
public:
    using ListDesk::ListDesk;
    void open() override {
        needs_ = false;
        LedgerDesk::open();
    }

protected:
    void show(const HouseLedger* house) override {
        view_ = lotsView(house, units());
        screen_->display(needs_ && house ? checklist() : lots());
    }

private:
    ListView lots() const {
        ListView view{view_.columns, view_.rows, {}, view_.nothing, {}, {}};
        for (const LotLine& line : view_.lines)
            view.said.push_back(
                {line.held && !line.released
                     ? Desk::tr("%1 is held: no label until somebody says why it can be released.").arg(line.code)
                     : line.code,
                 line.says});
        const bool some = !view_.rows.empty();
        view.keys = {{Qt::Key_X, QStringLiteral("ship"), Desk::tr("Ship"), false, some},
                     {Qt::Key_B, QStringLiteral("cameBack"), Desk::tr("Came back"), false, some},
                     {Qt::Key_Y, QStringLiteral("destroyed"), Desk::tr("Destroyed"), false, some},
                     {Qt::Key_W, QStringLiteral("release"), Desk::tr("Release"), false, some},
                     {Qt::Key_L, QStringLiteral("labels"), Desk::tr("Labels"), false, some},
                     {Qt::Key_T, QStringLiteral("trace"), Desk::tr("Trace"), false, some},
                     {Qt::Key_N, QStringLiteral("needs"), Desk::tr("What a label needs"), false, some},
                     wayToBoard()};
        return view;
    }
    ListView checklist() const {
        const LotLine* line = chosen();
        return {checklistColumns(),
                labelChecklist(law(), line ? &house()->ledger().lots()[line->lot] : nullptr),
                {},
                placeName(law()),
                {},
                {{Qt::Key_Escape, QStringLiteral("back"), Desk::tr("Back")}}};
    }
    const LotLine* chosen() const { return chosen_ < view_.lines.size() ? &view_.lines[chosen_] : nullptr; }
    void act(int key) override {
        if (!needs_ && screen_->chosen() >= 0)
            chosen_ = static_cast<std::size_t>(screen_->chosen());
        if (key == Qt::Key_Escape && !needs_)
            return shell_.showBoard();
        if (key == Qt::Key_Escape || key == Qt::Key_N) {
            needs_ = key == Qt::Key_N;
            showHouse();
            if (!needs_)
                screen_->choose(static_cast<int>(chosen_));
            return;
        }
        const LotLine* line = chosen();
        if (needs_ || !line)
            return;
        if (key == Qt::Key_X || key == Qt::Key_Return)
            openFor(Deed::shipped, *line);
        else if (key == Qt::Key_B)
            openFor(Deed::came_back, *line);
        else if (key == Qt::Key_Y)
            openFor(Deed::destroyed, *line);
        else if (key == Qt::Key_W)
            release(*line);
        else if (key == Qt::Key_L)
            labels(*line);
        else if (key == Qt::Key_T)
            openTrace(shell_, *screen_, line->code);
    }
    void openFor(Deed deed, const LotLine& line) {
        BookForm filled = form(deed);
        filled.put(Key::lot, line.code);
        const Lot& lot = house()->ledger().lots()[line.lot];
        if (BookField* size = filled.field(Key::size)) {
            size->offers.clear();
            for (const LotSize& one : lot.sizes)
                size->offers << QString::fromStdString(one.written);
            if (lot.sizes.size() == 1)
                size->answer = size->offers[0];
        }
        if (line.held && !line.released && deed == Deed::shipped)
            filled.caution = Desk::tr("This lot is held: say first why it can be released.");
        enter(std::move(filled));
    }
    void release(const LotLine& line) {
        BookForm filled = form(Deed::tested);
        filled.title = Desk::tr("Why %1 can be released").arg(line.code);
        filled.put(Key::of, line.code);
        filled.put(Key::tested_for, QString::fromUtf8(releaseWord.data(), static_cast<qsizetype>(releaseWord.size())));
        if (BookField* why = filled.field(std::nullopt)) {
            why->label = Desk::tr("why it can be released");
            why->needed = true;
            why->offers << Desk::tr("heated and packed again") << Desk::tr("measured again, as the place wants it");
        }
        filled.caution = Desk::tr("This is advice: the inspector decides.");
        enter(std::move(filled));
    }
    void labels(const LotLine& line) {
        if (line.held && !line.released)
            return shell_.say(
                Desk::tr("%1 is held: no label until somebody says why it can be released.").arg(line.code));
        // As they are now: while a place is picked the house may be read anew.
        const Lot& lot = house()->ledger().lots()[line.lot];
        std::vector<Label> all;
        for (std::size_t i = 0; i < lot.sizes.size(); ++i)
            for (Label& one : labelsOf(house()->ledger(), lot, i, mostLabels - static_cast<int>(all.size())))
                all.push_back(std::move(one));
        writeTo(Desk::tr("Labels"), QStringLiteral("labels.pdf"), {"pdf"},
                [&](const std::string& place) { labelsAsPdf(all, place); });
    }

    LotsView view_;
    std::size_t chosen_ = 0;
    bool needs_ = false;
};

} // namespace

Desk* packDesk(Shell& shell) { return new PackDesk{shell, QStringLiteral("pack")}; }
Desk* lotsDesk(Shell& shell) { return new LotsDesk{shell, QStringLiteral("lots")}; }

} // namespace panside
