#include "ui/trace/trace_view.h"

#include "core/boil/shift_log.h"
#include "core/quantity/enum_count.h"
#include "ui/look/wall_clock.h"
#include "ui/words/book_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <algorithm>
#include <array>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Trace", text); }
// In which column a kind stands, from the sap to the buyer.
std::size_t stageOf(TraceKind kind) {
    switch (kind) {
    case TraceKind::gathered:
    case TraceKind::bought:
        return 0;
    case TraceKind::tank:
    case TraceKind::hole:
        return 1;
    case TraceKind::night:
    case TraceKind::defoamer:
        return 2;
    case TraceKind::draw:
    case TraceKind::check:
        return 3;
    case TraceKind::vessel:
    case TraceKind::press:
    case TraceKind::aid:
        return 4;
    case TraceKind::lot:
        return 5;
    case TraceKind::buyer:
        return 6;
    }
    return 0;
}
constexpr std::size_t stages = 7;

QString headOf(std::size_t stage) {
    switch (stage) {
    case 0:
        return tr("sap");
    case 1:
        return tr("tanks");
    case 2:
        return tr("nights");
    case 3:
        return tr("draws");
    case 4:
        return tr("vessels");
    case 5:
        return tr("lots");
    default:
        return tr("buyers");
    }
}

QString shareText(const std::optional<double>& share) {
    if (!share)
        return tr("share not known");
    const double percent = *share * 100;
    if (percent < 0.1)
        return tr("under 0.1 %");
    return QLocale{}.toString(percent, 'f', percent < 10 ? 1 : 0) + QStringLiteral("\u00a0%");
}

QString dayAndHour(Instant at) { return QLocale{}.toString(WallClock{}.at(at), QStringLiteral("d MMM HH:mm")); }

TraceBox boxOf(const TraceEntry& entry) {
    TraceBox box;
    box.title = utf8(entry.name);
    box.share = entry.share.value_or(0);
    box.shareKnown = entry.share.has_value();
    box.hole = entry.kind == TraceKind::hole;
    QStringList second;
    if (entry.kind == TraceKind::check || entry.kind == TraceKind::press || entry.kind == TraceKind::aid ||
        entry.kind == TraceKind::bought)
        second << kindWord(entry.kind);
    if (entry.kind == TraceKind::defoamer && entry.name == nameOf(entry.kind)) // nobody said of what
        box.title = kindWord(entry.kind);
    if (box.hole)
        box.title = tr("no entry");
    if (entry.kind == TraceKind::buyer)
        box.title = buyerWord(entry.name);
    if (entry.kind == TraceKind::draw || entry.kind == TraceKind::check || entry.kind == TraceKind::press)
        box.title = dayAndHour(entry.at);
    else if (entry.kind != TraceKind::night && entry.kind != TraceKind::buyer && entry.kind != TraceKind::lot)
        second << QLocale{}.toString(WallClock{}.at(entry.at), QStringLiteral("d MMM"));
    if (entry.kind == TraceKind::night)
        if (const QDate day = QDate::fromString(box.title, Qt::ISODate); day.isValid())
            box.title = QLocale{}.toString(day, QStringLiteral("d MMM"));
    if (entry.count)
        second << (entry.size.empty() ? QString::number(*entry.count)
                                      : QStringLiteral("%1 × %2").arg(*entry.count).arg(sizeWord(entry.size)));
    if (entry.kind != TraceKind::buyer && entry.kind != TraceKind::check)
        second << shareText(entry.share);
    box.second = second.join(QStringLiteral(" · "));
    switch (entry.kind) {
    case TraceKind::draw:
    case TraceKind::check:
    case TraceKind::press:
    case TraceKind::hole:
    case TraceKind::buyer:
        break;
    case TraceKind::gathered:
    case TraceKind::bought: // this load, and not all of that name
        box.asks = utf8(entry.name) + u' ' + QString::fromStdString(textOf(entry.at));
        break;
    default:
        box.asks = utf8(entry.name);
    }
    return box;
}

void addColumns(TraceView& view, const std::vector<TraceEntry>& entries) {
    std::array<TraceColumn, stages> all;
    for (const TraceEntry& entry : entries)
        all[stageOf(entry.kind)].boxes.push_back(boxOf(entry));
    for (std::size_t stage = 0; stage < stages; ++stage)
        if (!all[stage].boxes.empty()) {
            all[stage].head = headOf(stage);
            view.columns.push_back(std::move(all[stage]));
        }
}

} // namespace

QString kindWord(TraceKind kind) {
    struct Row {
        TraceKind of;
        const char* words;
    };
    static constexpr std::array rows{
        Row{TraceKind::gathered, QT_TR_NOOP("gathered")}, Row{TraceKind::bought, QT_TR_NOOP("bought")},
        Row{TraceKind::tank, QT_TR_NOOP("tank")},         Row{TraceKind::night, QT_TR_NOOP("night")},
        Row{TraceKind::draw, QT_TR_NOOP("draw")},         Row{TraceKind::check, QT_TR_NOOP("check")},
        Row{TraceKind::vessel, QT_TR_NOOP("vessel")},     Row{TraceKind::press, QT_TR_NOOP("filter run")},
        Row{TraceKind::aid, QT_TR_NOOP("filter aid")},    Row{TraceKind::defoamer, QT_TR_NOOP("against foam")},
        Row{TraceKind::lot, QT_TR_NOOP("lot")},           Row{TraceKind::buyer, QT_TR_NOOP("buyer")},
        Row{TraceKind::hole, QT_TR_NOOP("gap")}};
    static_assert(inOrder(rows, &Row::of) && hasCount<TraceKind, rows.size()>());
    const auto row = static_cast<std::size_t>(kind);
    return row < rows.size() ? tr(rows[row].words) : QString{};
}

QString lotCounts(const Lot& lot) {
    long long made = 0, sold = 0, back = 0, destroyed = 0, here = 0;
    for (const LotSize& size : lot.sizes) {
        made += size.made;
        sold += size.shipped;
        back += size.back;
        destroyed += size.destroyed;
        here += size.here();
    }
    return tr("made %1, sold %2, came back %3, destroyed %4, here %5")
        .arg(made)
        .arg(sold)
        .arg(back)
        .arg(destroyed)
        .arg(here);
}

TraceView traceView(const Ledger& ledger, const Trace& trace, Units units) {
    TraceView view;
    view.head = utf8(trace.of);
    if (trace.volume.si() > 0)
        view.head = namedAs(view.head, figure(trace.volume, units).text());
    if (trace.volume.si() > 0 && trace.brix.si() > 0)
        view.head += QStringLiteral(", ") + figure(trace.brix).text();
    QStringList notes;
    const auto lot = ledger.lotNamed(trace.of);
    if (lot && trace.kind == TraceKind::lot)
        notes << lotCounts(ledger.lots()[*lot]);
    const auto has = [&](TraceKind kind) {
        return std::ranges::any_of(trace.behind, [kind](const TraceEntry& one) { return one.kind == kind; });
    };
    if (has(TraceKind::hole))
        notes << tr("It passes through a time with no entries.");
    notes << tr("Shares are parts of its sugar. This is advice: the inspector decides.");
    view.notes = notes.join(QStringLiteral(" · "));
    addColumns(view, trace.behind);
    TraceBox itself;
    itself.title = utf8(trace.of);
    itself.second = kindWord(trace.kind);
    itself.share = 1;
    view.columns.push_back({tr("searched for"), {itself}, true});
    addColumns(view, trace.before);
    return view;
}

} // namespace panside
