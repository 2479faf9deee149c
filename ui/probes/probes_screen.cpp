#include "ui/probes/probes_screen.h"

#include "ui/look/press.h"

#include <QEvent>
#include <QFontDatabase>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

ProbesScreen::ProbesScreen(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("probes"));
    setAutoFillBackground(true);
    setFocusPolicy(Qt::StrongFocus);
    new QVBoxLayout{this};
    build();
}

void ProbesScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    build();
}

void ProbesScreen::setUnits(Units units) {
    units_ = units;
    refresh();
}

void ProbesScreen::open(const ProbeFile& file, const std::vector<PortInfo>& ports) {
    const auto shown = setup_.shown();
    const bool same = file == setup_.file();
    ports_ = ports;
    if (!same || !shown) {
        setup_ = ProbeSetup{file};
        if (!file.ports.empty())
            setup_.show(0);
    }
    build();
}

Press* ProbesScreen::press(const QString& word, const QString& key, const QString& name) {
    auto* made = new Press;
    made->wear(dress_);
    made->say(word, key);
    made->setObjectName(name);
    made->setFocusPolicy(Qt::StrongFocus);
    return made;
}

void ProbesScreen::build() {
    if (inside_) { // a key in it may be what asked for this
        inside_->setParent(nullptr);
        inside_->deleteLater();
    }
    rows_.clear();
    fields_ = nullptr;
    inside_ = new QWidget;
    layout()->addWidget(inside_);
    auto* halves = new QHBoxLayout{inside_};
    auto* left = new QVBoxLayout;
    buildPorts(left);
    halves->addLayout(left, 2);

    auto* right = new QVBoxLayout;
    sentence_ = new QLabel;
    sentence_->setObjectName(QStringLiteral("portSentence"));
    sentence_->setWordWrap(true);
    sentence_->setFont(dress_.letters(mm::words));
    right->addWidget(sentence_);
    auto* wiring = new QHBoxLayout;
    baud_ = press({}, {}, QStringLiteral("baud"));
    encoding_ = press({}, {}, QStringLiteral("encoding"));
    checksum_ = press({}, {}, QStringLiteral("checksum"));
    connect(baud_, &Press::clicked, this, [this] { setup_.turnBaud() ? changed() : refresh(); });
    connect(encoding_, &Press::clicked, this, [this] { setup_.turnEncoding() ? changed() : refresh(); });
    connect(checksum_, &Press::clicked, this, [this] { setup_.turnChecksum() ? changed() : refresh(); });
    for (Press* key : {baud_, encoding_, checksum_})
        wiring->addWidget(key, 1);
    right->addLayout(wiring);
    lines_ = new QLabel;
    lines_->setObjectName(QStringLiteral("lines"));
    QFont fixed = dress_.letters(mm::smallWords);
    fixed.setFamily(QFontDatabase::systemFont(QFontDatabase::FixedFont).family());
    lines_->setFont(fixed);
    lines_->setTextFormat(Qt::PlainText);
    lines_->setMinimumHeight(dress_.px(5 * 6));
    right->addWidget(lines_);
    fields_ = new QWidget;
    right->addWidget(fields_);
    right->addStretch();
    said_ = new QLabel;
    said_->setObjectName(QStringLiteral("said"));
    said_->setWordWrap(true);
    said_->setFont(dress_.letters(mm::words));
    right->addWidget(said_);
    auto* keys = new QHBoxLayout;
    Press* save = press(tr("Keep this"), QStringLiteral("F2"), QStringLiteral("save"));
    Press* forget = press(tr("Leave this port out"), {}, QStringLiteral("forget"));
    Press* back = press(tr("Back to the board"), tr("Esc"), QStringLiteral("back"));
    connect(save, &Press::clicked, this, [this] { emit saveWanted(setup_.file()); });
    connect(forget, &Press::clicked, this, [this] {
        setup_.forget();
        changed();
        build();
    });
    connect(back, &Press::clicked, this, &ProbesScreen::left);
    for (Press* key : {save, forget, back})
        keys->addWidget(key, 1);
    right->addLayout(keys);
    halves->addLayout(right, 3);
    refresh();
}

void ProbesScreen::buildPorts(QVBoxLayout* column) {
    auto* title = new QLabel{tr("Ports")};
    title->setFont(dress_.letters(mm::words, true));
    column->addWidget(title);
    for (const PortInfo& info : ports_) {
        const QString words =
            QString::fromStdString(info.description.empty() ? info.device : info.description + ", " + info.device);
        Press* choose = press(words, {}, QStringLiteral("port_") + QString::fromStdString(info.device));
        connect(choose, &Press::clicked, this, [this, info] {
            setup_.choose(info);
            changed();
            build();
        });
        column->addWidget(choose);
    }
    // Ports of the file that the system does not see now stay in it.
    for (std::size_t i = 0; i < setup_.file().ports.size(); ++i) {
        const PortRule& rule = setup_.file().ports[i];
        const bool seen = std::any_of(ports_.begin(), ports_.end(), [&](const PortInfo& info) {
            return info.device == rule.device || info.best() == rule.device;
        });
        if (seen)
            continue;
        Press* absent = press(
            tr("%1, %2 (in the file)").arg(QString::fromStdString(rule.name), QString::fromStdString(rule.device)), {},
            QStringLiteral("kept_%1").arg(i));
        connect(absent, &Press::clicked, this, [this, i] {
            setup_.show(i);
            refresh();
        });
        column->addWidget(absent);
    }
    if (ports_.empty() && setup_.file().ports.empty()) {
        auto* none =
            new QLabel{tr("No serial port is plugged in. Plug the probe in and look again; readings can be typed in "
                          "without one.")};
        none->setWordWrap(true);
        none->setFont(dress_.letters(mm::words));
        column->addWidget(none);
    }
    Press* again = press(tr("Look again"), QStringLiteral("F5"), QStringLiteral("again"));
    connect(again, &Press::clicked, this, &ProbesScreen::portsWanted);
    column->addWidget(again);
    column->addStretch();
}

void ProbesScreen::buildFields() {
    const auto rows = setup_.rows(units_);
    if (rows.size() == rows_.size())
        return;
    qDeleteAll(fields_->findChildren<QWidget*>(QString{}, Qt::FindDirectChildrenOnly));
    delete fields_->layout();
    rows_.clear();
    auto* grid = new QGridLayout{fields_};
    grid->setContentsMargins(0, 0, 0, 0);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const int line = static_cast<int>(i);
        auto* is = new QLabel{QString::fromStdString(rows[i].is)};
        is->setFont(dress_.letters(mm::words, true));
        Row row{press({}, {}, QStringLiteral("reads_%1").arg(line)), press({}, {}, QStringLiteral("unit_%1").arg(line)),
                new QLabel, new QLabel};
        row.shown->setFont(dress_.letters(mm::words));
        row.value->setFont(dress_.letters(mm::words));
        row.value->setObjectName(QStringLiteral("value_%1").arg(line));
        connect(row.reads, &Press::clicked, this, [this, i] { setup_.turnReading(i) ? changed() : refresh(); });
        connect(row.unit, &Press::clicked, this, [this, i] { setup_.turnUnit(i) ? changed() : refresh(); });
        grid->addWidget(is, line, 0);
        grid->addWidget(row.shown, line, 1);
        grid->addWidget(row.reads, line, 2);
        grid->addWidget(row.unit, line, 3);
        grid->addWidget(row.value, line, 4);
        rows_.push_back(row);
    }
    grid->setColumnStretch(2, 2);
    grid->setColumnStretch(4, 3);
}

void ProbesScreen::refresh() {
    buildFields();
    const auto rows = setup_.rows(units_);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        rows_[i].shown->setText(rows[i].shown);
        rows_[i].reads->say(rows[i].reads, {});
        rows_[i].unit->say(rows[i].unit, {});
        rows_[i].unit->setEnabled(!rows[i].unit.isEmpty());
        rows_[i].value->setText(rows[i].value);
    }
    const PortRule* rule = setup_.rule();
    for (Press* key : {baud_, encoding_, checksum_})
        key->setVisible(rule != nullptr);
    if (rule) {
        baud_->say(tr("%1 baud").arg(rule->baud), {});
        const auto seen = setup_.status() ? setup_.status()->encoding : std::nullopt;
        encoding_->say(rule->encoding ? QString::fromUtf8(nameOf(*rule->encoding).data())
                       : seen         ? tr("recognised: %1").arg(QString::fromUtf8(nameOf(*seen).data()))
                                      : tr("to be recognised"),
                       {});
        checksum_->say(rule->checksum ? tr("checksum demanded") : tr("checksum if there is one"), {});
    }
    sentence_->setText(setup_.status() ? QString::fromStdString(sentence(*setup_.status()))
                       : rule          ? tr("Listening to %1 …").arg(QString::fromStdString(rule->device))
                                       : tr("Choose the port that the probe is plugged into."));
    QStringList text;
    for (const QString& line : setup_.lines())
        text << line;
    lines_->setText(text.join(u'\n'));
}

void ProbesScreen::changed() {
    emit tryWanted(setup_.file());
    refresh();
}

void ProbesScreen::heard(std::size_t port, const HeardLine& line) {
    setup_.heard(port, line);
    refresh();
}

void ProbesScreen::status(std::size_t port, const PortStatus& status) {
    setup_.status(port, status);
    refresh();
}

void ProbesScreen::say(const QString& words) { said_->setText(words); }

void ProbesScreen::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit left();
    else if (event->key() == Qt::Key_F2)
        emit saveWanted(setup_.file());
    else if (event->key() == Qt::Key_F5)
        emit portsWanted();
    else
        QWidget::keyPressEvent(event);
}

void ProbesScreen::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange)
        build();
    QWidget::changeEvent(event);
}

} // namespace panside
