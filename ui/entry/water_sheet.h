#pragma once
// The water check as it goes on: the probe stands in boiling water, the sheet says what it waits for, and when the
// reading has stood still, what comes of it. Not modal: the numbers beside it go on, and so do the alarms.
#include "core/boil/water_boil.h"
#include "ui/look/dress.h"
#include "ui/look/units.h"

#include <QFrame>

class QLabel;

namespace panside {

class ActionKeys;

// What the sheet shows of a look; the words of each verdict and what to do. Pure.
struct WaterSheetView {
    QString headline;     // "The water boils: the probe reads 0.3 °C high."
    QString what;         // what to do, or what keeping it does
    QString figures;      // what is read, how it scatters, how far the watch has come
    QString keep;         // the key's word; empty: there is nothing to keep yet
    bool doubted = false; // then Enter does not keep it: a key of its own does
    bool operator==(const WaterSheetView&) const = default;
};
// What else tells where water boils today, where no barometer does.
struct WaterLikely {
    std::optional<Temperature> byHeight;    // in the standard atmosphere at the height of the place
    std::optional<Temperature> byLastCheck; // on this probe
    bool fireLit = false;                   // the probe stands in a pan of sap, as far as anybody knows
    bool operator==(const WaterLikely&) const = default;
};
WaterLikely likelyBoil(const Picture& picture, std::optional<Length> elevation);
WaterSheetView waterSheetView(const WaterLook& look, const std::optional<ExpectedBoil>& expected,
                              const WaterLikely& likely, Units units);

class WaterSheet : public QFrame {
    Q_OBJECT
public:
    explicit WaterSheet(QWidget* parent = nullptr);

    // Begins anew, for this probe (as the readings name it).
    void begin(const std::string& probe, Instant now, Units units);
    const std::string& probe() const { return probe_; }
    Instant since() const { return since_; }
    void display(const WaterLook& look, const std::optional<ExpectedBoil>& expected, const WaterLikely& likely,
                 Instant now);
    void wear(const Dress& dress);

signals:
    void kept(const std::vector<panside::Fact>& facts);
    void typeWanted(); // rather type in what another thermometer, or this one, showed
    void left();

private:
    void sayKeys();
    void act(int key);
    void keep();

    std::string probe_;
    Instant since_{}, now_{};
    Units units_ = Units::us;
    Dress dress_;
    WaterLook look_;
    WaterSheetView view_;
    QLabel *headline_, *what_, *figures_;
    ActionKeys* keys_;
};

// Where the probe of this picture should read in boiling water; nullopt without barometer or report. What the pan adds
// to the probe's offset is not told apart here: the limits of the check are wider than that.
std::optional<ExpectedBoil> expectedBoil(const Picture& picture);

} // namespace panside
