#include "core/ledger/marks.h"

#include "core/boil/shift_log.h"

#include <fmt/format.h>

namespace panside {
namespace {

std::string decimal(std::optional<double> number, int decimals) {
    return fmt::format("{:.{}f}", number.value_or(0), decimals);
}

std::string ofLot(const LedgerMark& mark) {
    const auto amount = [&mark](int decimals) { return decimal(mark.amount, decimals); };
    const auto limit = [&mark](int decimals) { return decimal(mark.limit, decimals); };
    switch (mark.kind) {
    case MarkKind::packedTooCool:
        return fmt::format("lot {} was capped at {} °C, under the least of {} °C: it is held.{}", mark.name, amount(1),
                           limit(1), mark.more.empty() ? "" : " Did you mean " + mark.more + "?");
    case MarkKind::underDensity:
        return fmt::format("lot {} is {} °Brix, under the {} of this place: it is held.", mark.name, amount(1),
                           limit(1));
    case MarkKind::overDensity:
        return fmt::format("lot {} is {} °Brix, over the {} of this place: it is held.", mark.name, amount(1),
                           limit(1));
    case MarkKind::shippedTooMany:
        return fmt::format("lot {}: {} more left than were made. Is the lot, the size or the count another?", mark.name,
                           amount(0));
    case MarkKind::backTooMany:
        return fmt::format("lot {}: {} more came back than had left. Is the lot, the size or the count another?",
                           mark.name, amount(0));
    case MarkKind::sizeUnknown:
        return fmt::format("lot {} was never packed in {}. Write the size as it was packed.", mark.name, mark.more);
    case MarkKind::lotUnknown:
        return fmt::format("lot {} was never packed by any row. Look at its code, or write its packed row.", mark.name);
    case MarkKind::codeTwice:
        return fmt::format("lot {} is a code twice.", mark.name);
    default:
        return {};
    }
}

std::string ofPress(const LedgerMark& mark) {
    const auto amount = [&mark](int decimals) { return decimal(mark.amount, decimals); };
    const std::string before = mark.before ? textOf(*mark.before) : std::string{};
    switch (mark.kind) {
    case MarkKind::noVolume:
        return "a press run of which nobody said how much went through. Write it in its press_off, or dip what it "
               "filled.";
    case MarkKind::pressNotOpen:
        return "a press run ends here that nobody began. Write its press_on, with from= and to=.";
    case MarkKind::pressNotEnded:
        return fmt::format("a press run begins here while that of {} was not ended. Write its press_off and volume.",
                           before);
    case MarkKind::heelTooMuch:
        return fmt::format("a press cannot hold back {} L of {} L that were in it. Is the heel or the volume another?",
                           amount(1), decimal(mark.limit, 1));
    case MarkKind::pressureWithoutRun:
        return fmt::format("the filter gauge shows {} kPa while no run goes on ({}): was its beginning not told, or is "
                           "the pressure not let off?",
                           amount(0), before);
    default:
        return {};
    }
}

} // namespace

std::string sentence(const LedgerMark& mark) {
    const auto amount = [&mark](int decimals) { return decimal(mark.amount, decimals); };
    const auto limit = [&mark](int decimals) { return decimal(mark.limit, decimals); };
    const std::string since =
        mark.before ? fmt::format(" The entry before it, of {}, does not fit.", textOf(*mark.before)) : "";
    switch (mark.kind) {
    case MarkKind::belowEmpty:
        return fmt::format("{}: {} L more were taken out than the book had in it.{} Dip it.", mark.name, amount(1),
                           since);
    case MarkKind::overRim:
        return fmt::format("{}: {} L over its rim of {} L.{} Dip it.", mark.name, amount(1), limit(1), since);
    case MarkKind::vesselOut:
        return fmt::format("{} was retired before this. If it is used again, say out=no in a vessel row.", mark.name);
    case MarkKind::vesselUnknown:
        return fmt::format("{} is a vessel nobody named any more.", mark.name);
    case MarkKind::drawTwice:
        return fmt::format("a draw into {} was told twice and counts once.",
                           mark.name.empty() ? "no vessel" : mark.name);
    case MarkKind::noVessel:
        return "a draw without a vessel: where to?";
    case MarkKind::thinner:
        return fmt::format("a concentrate of {} °Brix is thinner than the {} that went in.", amount(1), limit(1));
    case MarkKind::sugarOdd:
        return fmt::format("sap of {} °Brix. Did you mean {:.1f}?", amount(1), mark.amount.value_or(0) / 10);
    case MarkKind::milk:
        return fmt::format("{}: milk in it, by {} against foam. It belongs on the label.", mark.name, mark.more);
    case MarkKind::lead:
        return fmt::format("{}: lead over the limit of {} ppb.", mark.name, limit(0));
    case MarkKind::ropy:
        return fmt::format("{}: ropy sap is in it.", mark.name);
    case MarkKind::offFlavour:
        return fmt::format("{}: an off-flavour ({}); processing only.", mark.name, mark.more);
    case MarkKind::depthNoShape:
        return fmt::format("{}: a depth tells no volume while its shape is not known. Tell shape= in its vessel row.",
                           mark.name);
    case MarkKind::shapeUnread:
        return fmt::format(
            "{}: \"{}\" is no shape. Write upright, lying or box and its measures, as in upright 1.2 0.9.", mark.name,
            mark.more);
    case MarkKind::packedTooCool:
    case MarkKind::underDensity:
    case MarkKind::overDensity:
    case MarkKind::shippedTooMany:
    case MarkKind::backTooMany:
    case MarkKind::sizeUnknown:
    case MarkKind::lotUnknown:
    case MarkKind::codeTwice:
        return ofLot(mark);
    case MarkKind::noVolume:
    case MarkKind::pressNotOpen:
    case MarkKind::pressNotEnded:
    case MarkKind::heelTooMuch:
    case MarkKind::pressureWithoutRun:
        return ofPress(mark);
    }
    return {};
}

} // namespace panside
