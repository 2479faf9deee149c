// A new second on the board with 12 h of six series at one sample a second, beside a Qt Charts view that is given all
// points, and one that is given thinned ones. Memory is what each adds to the heap. Run:  board_bench
#include "ui/board/board.h"
#include "ui/chart/rise_chart.h"

#include <QApplication>
#include <QtCharts/QChart>
#include <QtCharts/QChartView>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>
#include <algorithm>
#include <benchmark/benchmark.h>
#include <cmath>
#include <malloc.h>

using namespace panside;

namespace {

constexpr int seconds12h = 12 * 3600;
constexpr int seriesShown = 6;
constexpr QSize screen{1366, 768};

Instant second(int t) {
    return Instant{std::chrono::sys_days{std::chrono::year{2026} / 3 / 14} + std::chrono::hours{12}} +
           std::chrono::seconds{t};
}

double value(int series, int t) {
    return 3 + 1.2 * std::sin(t / (300.0 + 97 * series)) + 0.05 * std::sin(t * 12.9898 + series);
}

double heapMegabytes() {
    const auto info = mallinfo2();
    return static_cast<double>(info.uordblks + info.hblkhd) / 1e6;
}

Picture pictureAt(int t) {
    Picture picture;
    picture.at = second(t);
    picture.waterBoils = Temperature::celsius(99);
    picture.rise = TemperatureDifference::kelvin(value(0, t));
    picture.targetRise = TemperatureDifference::kelvin(4);
    picture.legalRise = TemperatureDifference::kelvin(3.8);
    picture.heavyRise = TemperatureDifference::kelvin(4.4);
    picture.syrupPan = *picture.waterBoils + *picture.rise;
    picture.target = *picture.waterBoils + *picture.targetRise;
    picture.drawEta = Range{Duration{400}, Duration{600.0 - t % 600}, Duration{900}};
    picture.fireDue = Duration{480.0 - t % 480};
    picture.litAt = second(0);
    picture.evaporation = VolumeFlow::litrePerHour(200 + 20 * value(5, t));
    return picture;
}

// The board with rise, stack and evaporation of this shift, and three more shifts laid under it: six long lines.
struct OurBoard {
    Board board;
    std::vector<Laid> under;
    int t = 0;
    OurBoard() {
        board.resize(screen);
        board.wear({});
        for (int series = 2; series < 5; ++series) {
            auto other = std::make_shared<ShiftTrace>();
            other->add(Fact{second(0), Lit{}});
            for (int i = 0; i < seconds12h; ++i)
                other->add(RisePoint{second(i), static_cast<float>(value(series, i)), Trust::good, false});
            under.push_back({other, QStringLiteral("another night")});
        }
        board.chart().layUnder(under);
        board.chart().trace().add(Fact{second(0), Lit{}});
        for (; t < seconds12h; ++t)
            step();
        board.display(pictureAt(t));
        for (int i = 0; i < 8; ++i)
            board.chart().zoom(1 / 1.25); // until all twelve hours stand on the screen
        board.show();
        QApplication::processEvents();
    }
    void step() {
        ShiftTrace& trace = board.chart().trace();
        trace.add(RisePoint{second(t), static_cast<float>(value(0, t)), Trust::good, false});
        trace.add(Fact{second(t), Reading{Series::stack, 500 + 40 * value(1, t), Unit::degC, ""}});
        if (t % 60 == 0)
            trace.add(SteamPoint{second(t), static_cast<float>(pictureAt(t).evaporation->si()), false});
    }
    void newSecond() {
        ++t;
        step();
        board.display(pictureAt(t));
        board.chart().redraw();        // at once: the 25 redraws a second are for the live console
        QApplication::processEvents(); // the cards that changed
    }
};

struct ChartsView {
    QChartView view;
    QList<QLineSeries*> lines;
    int t = seconds12h;
    bool thinned;
    QList<QList<QPointF>> points{seriesShown};
    explicit ChartsView(bool thin) : thinned{thin} {
        auto* chart = new QChart;
        view.setChart(chart);
        auto* x = new QValueAxis;
        auto* y = new QValueAxis;
        chart->addAxis(x, Qt::AlignBottom);
        chart->addAxis(y, Qt::AlignLeft);
        y->setRange(0, 6);
        for (int i = 0; i < seriesShown; ++i) {
            auto* line = new QLineSeries;
            for (int s = 0; s < seconds12h; ++s)
                points[i].append({static_cast<double>(s), value(i, s)});
            line->replace(shown(i));
            chart->addSeries(line);
            line->attachAxis(x);
            line->attachAxis(y);
            lines.append(line);
        }
        x->setRange(0, seconds12h * 1.25);
        if (!thinned)
            points.clear();
        view.resize(screen);
        view.show();
        QApplication::processEvents();
    }
    QList<QPointF> shown(int i) const {
        if (!thinned)
            return points[i];
        constexpr int column = 60;
        QList<QPointF> few;
        for (qsizetype at = 0; at < points[i].size(); at += column) {
            const auto end = std::min(at + column, points[i].size());
            const auto [low, high] =
                std::minmax_element(points[i].begin() + at, points[i].begin() + end,
                                    [](const QPointF& a, const QPointF& b) { return a.y() < b.y(); });
            few << *low << *high;
        }
        return few;
    }
    void newSecond() {
        ++t;
        for (int i = 0; i < seriesShown; ++i) {
            if (thinned) {
                points[i].append({static_cast<double>(t), value(i, t)});
                lines[i]->replace(shown(i));
            } else {
                lines[i]->append(t, value(i, t));
            }
        }
        view.viewport()->repaint();
    }
};

template <class Subject, class... Args>
void newSecond(benchmark::State& state, Args... args) {
    const double before = heapMegabytes();
    Subject subject{args...};
    const double held = heapMegabytes() - before;
    for (auto _ : state)
        subject.newSecond();
    state.counters["heapMB"] = held;
    if constexpr (std::is_same_v<Subject,
                                 OurBoard>) // one painting of the chart for each second, or the figure is worth nothing
        state.counters["chartPaintings"] =
            benchmark::Counter(subject.board.chart().paintings(), benchmark::Counter::kAvgIterations);
}

void boardNewSecond(benchmark::State& state) { newSecond<OurBoard>(state); }
void chartsThinnedNewSecond(benchmark::State& state) { newSecond<ChartsView>(state, true); }
void chartsAllPointsNewSecond(benchmark::State& state) { newSecond<ChartsView>(state, false); }

} // namespace

BENCHMARK(boardNewSecond)->Unit(benchmark::kMillisecond);
BENCHMARK(chartsThinnedNewSecond)->Unit(benchmark::kMillisecond);
BENCHMARK(chartsAllPointsNewSecond)->Unit(benchmark::kMillisecond);

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application{argc, argv};
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
