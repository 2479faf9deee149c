#pragma once
#include "ui/look/dress.h"
#include "ui/probes/chain.h"
#include "ui/probes/field_form.h"
#include "ui/probes/setup_questions.h"

#include <QPointer>
#include <QWidget>
#include <functional>

class QGridLayout;
class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace panside {

class ChainView;
class FieldSheet;
class Press;

// Set-up of the probes: which ports there are, what comes in on one, which of its fields or registers is which reading.
// A person points; the value shows at once, and what looks wrong is asked. Everything has a key.
class ProbesScreen : public QWidget {
    Q_OBJECT
public:
    explicit ProbesScreen(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void setUnits(Units units);
    // The file in use, and the ports that the system knows.
    void open(const ProbeFile& file, const std::vector<PortInfo>& ports);
    const ProbeSetup& setup() const { return setup_; }
    // Where the test of the chain learns what the ports do not tell: picture, now, journal, loudspeaker.
    void setEvidence(std::function<ChainEvidence()> evidence) { evidence_ = std::move(evidence); }

public slots:
    void heard(std::size_t port, const panside::HeardLine& line);
    void status(std::size_t port, const panside::PortStatus& status);
    void say(const QString& words);

signals:
    // The ports are to be read by this from now on; it is not on the disk yet.
    void tryWanted(const panside::ProbeFile& file);
    void saveWanted(const panside::ProbeFile& file);
    void portsWanted(); // look again which ports there are
    void soundWanted();
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void buildPorts(QVBoxLayout* column);
    void buildWiring(QVBoxLayout* column);
    void buildQuestion(QVBoxLayout* column);
    void buildFoot(QVBoxLayout* column);
    void buildFields();
    void refresh();
    void refreshWiring();
    QString encodingWord(Encoding encoding) const;
    QStringList newestLines() const;
    void refreshQuestion();
    void refreshPanel();
    void changed();
    void turned(bool changedFile);
    void answer(bool yes);
    void chooseReading(std::size_t row);
    void chooseUnit(std::size_t row);
    void openField(std::size_t row);
    void takePart(std::size_t row, FieldPart part, const QString& words);
    void testChain();
    void stepRow(int by);
    void save();
    void addRegister();
    void openPanel(QWidget* panel);
    void closePanel();
    Press* press(const QString& word, const QString& key, const QString& name);
    QLabel* label(const QString& name, double height, bool bold = false);

    Dress dress_;
    Units units_ = Units::us;
    ProbeSetup setup_;
    std::vector<PortInfo> ports_;
    std::function<ChainEvidence()> evidence_;
    std::set<std::string> refused_; // questions answered with no
    std::optional<SetupQuestion> asked_;
    QWidget *inside_ = nullptr, *main_ = nullptr, *question_ = nullptr;
    QLabel *sentence_ = nullptr, *lines_ = nullptr, *said_ = nullptr, *asks_ = nullptr;
    QWidget* fields_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    Press *protocol_ = nullptr, *baud_ = nullptr, *framing_ = nullptr, *encoding_ = nullptr, *checksum_ = nullptr,
          *every_ = nullptr, *add_ = nullptr, *yes_ = nullptr;
    struct Row {
        Press *reads, *unit, *more;
        QLabel *name, *shown, *value;
    };
    std::vector<Row> rows_;
    QPointer<QWidget> panel_;  // stands in the place of the main part
    std::size_t panelRow_ = 0; // the row that it is about
};

} // namespace panside
