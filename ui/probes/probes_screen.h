#pragma once
#include "ui/look/dress.h"
#include "ui/probes/probe_setup.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace panside {

class Press;

// Set-up of the probes: which ports there are, what comes in on one, which of its fields is which reading. A person
// points; the value shows at once.
class ProbesScreen : public QWidget {
    Q_OBJECT
public:
    explicit ProbesScreen(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void setUnits(Units units);
    // The file in use, and the ports that the system knows.
    void open(const ProbeFile& file, const std::vector<PortInfo>& ports);
    const ProbeSetup& setup() const { return setup_; }

public slots:
    void heard(std::size_t port, const panside::HeardLine& line);
    void status(std::size_t port, const panside::PortStatus& status);
    void say(const QString& words);

signals:
    // The ports are to be read by this from now on; it is not on the disk yet.
    void tryWanted(const panside::ProbeFile& file);
    void saveWanted(const panside::ProbeFile& file);
    void portsWanted(); // look again which ports there are
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build();
    void buildPorts(QVBoxLayout* column);
    void buildFields();
    void refresh();
    void changed();
    Press* press(const QString& word, const QString& key, const QString& name);

    Dress dress_;
    Units units_ = Units::us;
    ProbeSetup setup_;
    std::vector<PortInfo> ports_;
    QWidget* inside_ = nullptr;
    QLabel *sentence_ = nullptr, *lines_ = nullptr, *said_ = nullptr;
    QWidget* fields_ = nullptr;
    Press *baud_ = nullptr, *encoding_ = nullptr, *checksum_ = nullptr;
    struct Row {
        Press *reads, *unit;
        QLabel *shown, *value;
    };
    std::vector<Row> rows_;
};

} // namespace panside
