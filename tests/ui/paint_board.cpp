// Paints the board's evenings to pictures, for looking at: paint_board FOLDER [WIDTHxHEIGHT[@DPI]] [QM FILE]
#include "tests/ui/board/scenes.h"
#include "ui/board/board.h"
#include "ui/chart/rise_chart.h"

#include <QApplication>
#include <QDir>
#include <QLocale>
#include <QRegularExpression>
#include <QTranslator>
#include <cstdio>

using namespace panside;

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TZ", "UTC");
    QApplication application{argc, argv};
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() < 2) {
        std::fputs("paint_board FOLDER [WIDTHxHEIGHT[@DPI]] [QM FILE]\n", stderr);
        return 2;
    }
    const QDir folder{arguments[1]};
    folder.mkpath(QStringLiteral("."));
    const QString size = arguments.value(2, QStringLiteral("1366x768@96"));
    const auto match = QRegularExpression{QStringLiteral("^(\\d+)x(\\d+)(?:@(\\d+))?$")}.match(size);
    if (!match.hasMatch())
        return 2;
    const Measure measure{match.captured(3).isEmpty() ? Measure::usualDpi : match.captured(3).toDouble()};
    QTranslator french;
    const bool inFrench = arguments.size() > 3 && french.load(arguments[3]);
    if (inFrench) {
        QApplication::installTranslator(&french);
        QLocale::setDefault(QLocale{QLocale::French, QLocale::Canada});
    }
    const struct {
        const char* name;
        Picture picture;
        bool across = false;
    } evenings[] = {{"fresh", scenes::fresh()},       {"calm", scenes::calm()},
                    {"drawing", scenes::drawing()},   {"scorching", scenes::scorching()},
                    {"seen", scenes::seenAlarm()},    {"gone", scenes::goneUnseen()},
                    {"doubt", scenes::doubt()},       {"blind", scenes::blind()},
                    {"hand", scenes::handOnly()},     {"burnout", scenes::burningOut()},
                    {"late", scenes::late(), false},  {"across-late", scenes::late(), true},
                    {"across", scenes::calm(), true}, {"across-alarm", scenes::scorching(), true}};
    for (const Look look : {Look::day, Look::night}) {
        for (const auto& evening : evenings) {
            Board board;
            board.resize(match.captured(1).toInt(), match.captured(2).toInt());
            board.wear({measure, look});
            board.setUnits(inFrench ? Units::metric : Units::us);
            if (evening.picture.litAt)
                scenes::fillTrace(board.chart().trace());
            board.display(evening.picture);
            board.showAcrossTheRoom(evening.across);
            const QString name = QStringLiteral("%1-%2%3.png")
                                     .arg(QString::fromUtf8(evening.name),
                                          look == Look::day ? QStringLiteral("day") : QStringLiteral("night"),
                                          inFrench ? QStringLiteral("-fr") : QString{});
            if (!board.grab().save(folder.filePath(name))) {
                std::fprintf(stderr, "%s cannot be written. Look at the folder's permissions.\n",
                             qPrintable(folder.filePath(name)));
                return 3;
            }
        }
    }
    return 0;
}
