#include "ui/account/flow_view.h"

#include "ui/account/account_view.h"
#include "ui/words/book_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("SugarFlow", text); }
QString massText(double kilograms, Units units) { return figure(Mass::kilogram(kilograms), units).text(); }

class Stack {
public:
    Stack(std::vector<FlowBand>& bands, double whole, Units units) : bands_{bands}, whole_{whole}, units_{units} {}
    void add(const QString& name, double kilograms, bool lost = false, bool open = false) {
        if (kilograms <= 1e-6 * whole_)
            return;
        const double high = kilograms / whole_;
        bands_.push_back({name, massText(kilograms, units_), at_, at_ + high, lost, open});
        at_ += high;
    }

private:
    std::vector<FlowBand>& bands_;
    double whole_, at_ = 0;
    Units units_;
};

} // namespace

FlowView flowView(const Ledger* ledger, Units units) {
    FlowView view;
    if (!ledger)
        return view;
    const SugarFlow flow = sugarFlow(*ledger);
    const double found = std::max(0.0, flow.doesNotClose), missing = std::max(0.0, -flow.doesNotClose);
    const double whole = flow.in() + found;
    if (whole <= 0)
        return view;
    view.empty = false;
    Stack in{view.in, whole, units}, out{view.out, whole, units};
    in.add(tr("sap of the bush"), flow.sap);
    in.add(tr("sap bought"), flow.boughtSap);
    in.add(tr("syrup bought"), flow.boughtSyrup);
    in.add(tr("not entered"), found, false, true);
    out.add(tr("sold and shipped"), flow.shipped + flow.soldBulk);
    out.add(tr("bottled, here"), flow.bottled);
    out.add(tr("in pails and drums"), flow.inVessels);
    out.add(tr("drawn or bought with no vessel named"), flow.nowhere);
    out.add(tr("in the pans"), flow.inPans);
    out.add(tr("in the tanks"), flow.inTanks);
    for (const auto& [cause, kilograms] : flow.lost)
        out.add(causeWord(cause), kilograms, true);
    out.add(tr("does not close"), missing, false, true);
    view.pans = std::min(1.0, flow.drawn / whole);
    view.membrane = std::min(1.0, flow.throughConcentrator / whole);
    view.whole =
        tr("%1 of sugar came in; %2 was drawn as syrup.").arg(massText(flow.in(), units), massText(flow.drawn, units));
    const QString sd = massText(2 * flow.doesNotCloseSd, units);
    view.doubt = flow.doesNotClose >= 0 ? tr("%1 more is found than came in. It has a line of its own and is not "
                                             "spread over the others. The measurements alone may be off by %2.")
                                              .arg(massText(found, units), sd)
                                        : tr("%1 is missing. It has a line of its own and is not spread over the "
                                             "others. The measurements alone may be off by %2.")
                                              .arg(massText(missing, units), sd);
    return view;
}

} // namespace panside
