#include "ui/frame/choices.h"

#include "core/boil/shift_log.h"
#include "core/files/places.h"
#include "ui/frame/languages.h"

#include <QFile>
#include <QLocale>
#include <QSettings>
#include <algorithm>

namespace panside {
namespace {

QSettings choices() { return QSettings{QString::fromStdString(choicesFile().string()), QSettings::IniFormat}; }

} // namespace

Choices Choices::load() {
    const auto system = QLocale::system();
    const bool american = system.measurementSystem() == QLocale::ImperialUSSystem;
    const auto kept = choices();
    Choices chosen;
    chosen.look = kept.value("look").toString() == "night" ? Look::night : Look::day;
    chosen.units = kept.value("units", american ? "us" : "metric").toString() == "us" ? Units::us : Units::metric;
    chosen.language = kept.value("language", languageOfSystem()).toString();
    chosen.backupFolder = kept.value("backupFolder").toString();
    chosen.sound.volume = std::clamp(kept.value("volume", 100).toInt(), SoundChoices::softest, 100);
    chosen.sound.spoken = kept.value("spoken").toBool();
    chosen.sound.still = kept.value("still").toBool();
    chosen.yard.tank = tankIn(kept.value("tank").toString());
    chosen.yard.pile = pileIn(kept.value("woodpile").toString());
    chosen.yard.measured = instantIn(kept.value("woodpileMeasured").toString().toStdString());
    if (const double price = kept.value("cordPrice", -1).toDouble(); price >= 0)
        chosen.yard.pricePerCord = price;
    chosen.lookIn.on = kept.value("lookIn").toBool();
    chosen.lookIn.address = kept.value("lookInAddress").toString();
    chosen.lookIn.port = std::clamp(kept.value("lookInPort", chosen.lookIn.port).toInt(), 1024, 65535);
    chosen.lookIn.key = kept.value("lookInKey").toString();
    chosen.cautioned = kept.value("cautioned").toBool();
    chosen.askedFor = kept.value("askedFor").toString();
    return chosen;
}

void Choices::save() const {
    auto kept = choices();
    kept.setValue("look", look == Look::night ? "night" : "day");
    kept.setValue("units", units == Units::us ? "us" : "metric");
    kept.setValue("language", language);
    kept.setValue("backupFolder", backupFolder);
    kept.setValue("volume", sound.volume);
    kept.setValue("spoken", sound.spoken);
    kept.setValue("still", sound.still);
    kept.setValue("tank", yard.tank ? textOf(*yard.tank) : QString{});
    kept.setValue("woodpile", yard.pile ? textOf(*yard.pile) : QString{});
    kept.setValue("woodpileMeasured", yard.measured ? QString::fromStdString(textOf(*yard.measured)) : QString{});
    kept.setValue("cordPrice", yard.pricePerCord.value_or(-1));
    kept.setValue("lookIn", lookIn.on);
    kept.setValue("lookInAddress", lookIn.address);
    kept.setValue("lookInPort", lookIn.port);
    kept.setValue("lookInKey", lookIn.key);
    kept.setValue("cautioned", cautioned);
    kept.setValue("askedFor", askedFor);
    kept.sync();
    // The key is nobody else's.
    QFile::setPermissions(kept.fileName(), QFile::ReadOwner | QFile::WriteOwner);
}

} // namespace panside
