#include "ui/sap/route_view.h"

#include "ui/look/lettering.h"
#include "ui/look/wall_clock.h"
#include "ui/report/pdf_pages.h"
#include "ui/words/counted.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <array>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Route", text, comment, n);
}

constexpr std::size_t emptyLines = 4; // a stop that is new, or gone to twice
constexpr double lineHigh = 42;       // 1/96 inch: a pencil in a glove
constexpr double headHigh = 30, titleHigh = 34;

struct Column {
    QString head;
    double share; // of the page's width
};

std::array<Column, 6> columnsOf(Units units) {
    const QString volume = symbolOf(unitOf(Dimension::volume, units)),
                  degrees = symbolOf(unitOf(Dimension::temperature, units));
    return {{{tr("stop"), 0.27},
             {tr("into"), 0.16},
             {tr("last time"), 0.15},
             {tr("sap, %1").arg(volume), 0.16},
             {tr("sugar, °Brix"), 0.14},
             {tr("sap at, %1").arg(degrees), 0.12}}};
}

class RoutePages {
public:
    RoutePages(PdfPages& pages, Units units) : pages_{pages}, columns_{columnsOf(units)} {}
    void begin(const QString& title, const QString& note) {
        words(QRectF{0, 0, pages_.page().width(), titleHigh}, title, 3.6, true);
        words(QRectF{0, titleHigh, pages_.page().width(), headHigh}, note, paperLetters, false);
        y_ = titleHigh + headHigh;
        heads();
    }
    void line(const QStringList& cells) {
        if (y_ + lineHigh > pages_.page().bottom()) {
            pages_.newPage();
            y_ = 0;
            heads();
        }
        row(cells, lineHigh, false);
    }

private:
    void heads() {
        QStringList cells;
        for (const Column& column : columns_)
            cells << column.head;
        row(cells, headHigh, true);
    }
    void row(const QStringList& cells, double high, bool bold) {
        double x = 0;
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            const QRectF box{x, y_, columns_[i].share * pages_.page().width(), high};
            pages_.painter().drawRect(box);
            words(box.adjusted(4, 0, -4, 0), cells.value(static_cast<qsizetype>(i)), bold ? paperLetters : 2.4, bold);
            x += box.width();
        }
        y_ += high;
    }
    // Smaller where the place is narrow, in one line.
    void words(const QRectF& box, const QString& text, double millimetres, bool bold) {
        pages_.painter().setFont(fitted(lettering(Measure{}, millimetres, bold), text, box.size().toSize()));
        pages_.painter().drawText(box, Qt::AlignLeft | Qt::AlignVCenter, text);
    }
    PdfPages& pages_;
    std::array<Column, 6> columns_;
    double y_ = 0;
};

} // namespace

std::optional<BookForm> stopForm(std::vector<RouteStop> route, std::size_t stop, std::function<BookForm()> blank,
                                 Units units) {
    if (stop >= route.size())
        return std::nullopt;
    const RouteStop& here = route[stop];
    BookForm form = blank();
    form.put(Key::from, QString::fromStdString(here.name));
    form.put(Key::to, QString::fromStdString(here.to));
    if (here.taps)
        form.put(Key::taps, QString::number(*here.taps));
    // What is read there comes first, the rest stands already.
    const auto rank = [](const BookField& field) {
        return !field.key                ? 0
               : field.key == Key::brix  ? 1
               : field.key == Key::temp  ? 2
               : field.key == Key::clear ? 3
                                         : 4;
    };
    std::ranges::stable_sort(form.fields, [&](const BookField& a, const BookField& b) { return rank(a) < rank(b); });
    form.title = tr("stop %1 of %2: %3")
                     .arg(QString::number(stop + 1), QString::number(route.size()), QString::fromStdString(here.name));
    form.caution = here.sugar
                       ? tr("The last time %1 at %2. Enter goes on to the next stop.")
                             .arg(figure(here.gave, units).text(), figure(*here.sugar).text())
                       : tr("The last time %1. Enter goes on to the next stop.").arg(figure(here.gave, units).text());
    form.next = [route = std::move(route), stop, blank = std::move(blank), units] {
        return stopForm(route, stop + 1, blank, units);
    };
    return form;
}

void routeAsPdf(const std::vector<RouteStop>& route, Instant day, Units units, const std::string& place) {
    const QString date = QLocale{}.toString(WallClock{}.at(day).date(), QStringLiteral("dddd d MMMM yyyy"));
    const QString title = tr("Gathering, %1").arg(date);
    PdfPages pages{place, title};
    RoutePages paper{pages, units};
    paper.begin(title,
                tr("Who: ____________   Hydrometer made for: ______   Cloudy or ropy sap: write it beside the stop."));
    for (const RouteStop& stop : route) {
        QString name = QString::fromStdString(stop.name);
        if (stop.taps)
            name += counted(qRound(*stop.taps), tr(", 1 tap"), tr(", %n taps", nullptr, qRound(*stop.taps)));
        paper.line({name, QString::fromStdString(stop.to), figure(stop.gave, units).text()});
    }
    for (std::size_t i = 0; i < emptyLines; ++i)
        paper.line({});
    pages.finish();
}

} // namespace panside
