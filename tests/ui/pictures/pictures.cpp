#include "tests/ui/pictures/pictures.h"

#include "tests/ui/board/framed.h"
#include "tests/ui/board/scenes.h"
#include "tests/ui/pictures/made_house.h"
#include "tests/ui/pictures/said_by.h"
#include "ui/chart/rise_chart.h"
#include "ui/frame/foot.h"
#include "ui/ledger/house.h"

#include <QApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QPixmap>
#include <cstdio>

namespace panside {
namespace {

constexpr QSize screen{1366, 768}; // a laptop's

auto boardOf(Look look, Picture (*picture)()) {
    return [look, picture](Units units, const std::function<void(QWidget&)>& use) {
        Framed framed{screen, {Measure{}, look}, units};
        scenes::fillTrace(framed.board->chart().trace());
        Picture shown = picture();
        shown.fuel.tank = Volume::gallon(158);
        framed.show(shown);
        framed.frame.foot().tellTime(QStringLiteral("20:30"), {});
        QApplication::processEvents();
        use(framed.frame);
    };
}

void pastNight(Units units, const std::function<void(QWidget&)>& use) {
    MadeHouse house{MadeOf::nights, afterTheSeason, screen, Look::day, units};
    house.openPastNight();
    QApplication::processEvents();
    use(house.console());
}

auto screenOf(Action action, const char* now) {
    return [action, now](Units units, const std::function<void(QWidget&)>& use) {
        MadeHouse house{MadeOf::house, now, screen, Look::day, units};
        house.console().act(action);
        house.console().house().wait();
        QApplication::processEvents();
        use(house.console());
    };
}

bool written(bool done, const QString& file) {
    if (!done)
        std::fprintf(stderr, "%s cannot be written. Look at the folder's permissions.\n", qPrintable(file));
    return done;
}

} // namespace

std::vector<PictureOf> allPictures() {
    return {{QStringLiteral("board_day"), boardOf(Look::day, scenes::calm)},
            {QStringLiteral("alarm_night"), boardOf(Look::night, scenes::scorching)},
            {QStringLiteral("past_night"), pastNight},
            {QStringLiteral("sap"), screenOf(Action::tanks, withSap)},
            {QStringLiteral("vessels"), screenOf(Action::vessels, withSyrup)}};
}

QString picturePath(const PictureOf& picture, bool french) {
    return (french ? QStringLiteral("fr/") : QString{}) + picture.name + QStringLiteral(".png");
}
QString saidPath(const PictureOf& picture, bool french) {
    return (french ? QStringLiteral("fr_") : QString{}) + picture.name + QStringLiteral(".txt");
}

QString keptBeside(const QString& pictureFile, const QStringList& said) {
    QFile file{pictureFile};
    QCryptographicHash sum{QCryptographicHash::Sha256};
    if (file.open(QIODevice::ReadOnly))
        sum.addData(file.readAll());
    return (QStringList{QString::fromLatin1(sum.result().toHex())} + said).join(u'\n') + u'\n';
}

bool paintPictures(const QString& pictures, const QString& saids, bool french) {
    QDir{}.mkpath(pictures + QStringLiteral("/fr"));
    QDir{}.mkpath(saids);
    bool all = true;
    for (const PictureOf& picture : allPictures())
        picture.put(french ? Units::metric : Units::us, [&](QWidget& widget) {
            const QString place = pictures + u'/' + picturePath(picture, french);
            all = written(widget.grab().save(place, "PNG", 0), place) && all; // 0: as small as it gets
            QFile said{saids + u'/' + saidPath(picture, french)};
            const QByteArray words = keptBeside(place, linesOf(saidBy(widget))).toUtf8();
            all = written(said.open(QIODevice::WriteOnly) && said.write(words) == words.size(), said.fileName()) && all;
        });
    return all;
}

} // namespace panside
