#include "ui/look/parts.h"
#include "ui/look/refocus.h"
#include "ui/probes/chain_view.h"
#include "ui/probes/field_sheet.h"
#include "ui/probes/probes_screen.h"
#include "ui/probes/row_words.h"
#include "ui/words/port_words.h"

#include <QFontDatabase>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>
#include <QScrollArea>
#include <QStringList>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

Press* ProbesScreen::press(const QString& word, const QString& key, const QString& name) {
    return pressOf(dress_, word, key, name);
}

QLabel* ProbesScreen::label(const QString& name, double height, bool bold) {
    return labelOf(dress_, name, height, bold);
}

void ProbesScreen::build() {
    const Focused focused = focusedIn(inside_);
    discard(inside_);
    const QString wasSaid = said_ ? said_->text() : QString{};
    panel_ = nullptr;
    rows_.clear();
    inside_ = new QWidget;
    layout()->addWidget(inside_);
    auto* halves = new QHBoxLayout{inside_};
    halves->setContentsMargins(0, 0, 0, 0);
    halves->setSpacing(dress_.px(mm::gap * 2));
    auto* left = new QVBoxLayout;
    buildPorts(left);
    halves->addLayout(left, 1);
    auto* right = new QWidget;
    auto* place = new QVBoxLayout{right};
    place->setContentsMargins(0, 0, 0, 0);
    main_ = new QWidget;
    place->addWidget(main_);
    halves->addWidget(right, 3);

    auto* column = new QVBoxLayout{main_};
    column->setContentsMargins(0, 0, 0, 0);
    sentence_ = label(QStringLiteral("portSentence"), mm::words);
    column->addWidget(sentence_);
    buildWiring(column);
    lines_ = label(QStringLiteral("lines"), mm::words);
    QFont fixed = lines_->font();
    fixed.setFamily(QFontDatabase::systemFont(QFontDatabase::FixedFont).family());
    lines_->setFont(fixed);
    lines_->setTextFormat(Qt::PlainText);
    column->addWidget(lines_);
    buildQuestion(column);
    scroll_ = new QScrollArea;
    scroll_->setAccessibleName(accessibleName()); // it takes the keys that roll it
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setWidgetResizable(true);
    fields_ = new QWidget;
    scroll_->setWidget(fields_);
    column->addWidget(scroll_, 1);
    said_ = label(QStringLiteral("said"), mm::words);
    said_->setText(wasSaid);
    column->addWidget(said_);
    buildFoot(column);
    refresh();
    if (focused.name.startsWith(QStringLiteral("port_")))
        setFocus(); // a port is chosen: the keys are its fields' now
    else
        refocus(*inside_, focused);
}

void ProbesScreen::buildPorts(QVBoxLayout* column) {
    auto* title = label({}, mm::words, true);
    title->setText(tr("Ports"));
    column->addWidget(title);
    for (const PortInfo& info : ports_) {
        const QString words =
            QString::fromStdString(info.description.empty() ? info.device : info.description + ", " + info.device);
        Press* choose = press(words, {}, QStringLiteral("port_") + QString::fromStdString(info.device));
        const PortRule* shown = setup_.rule();
        choose->setCheckable(true);
        choose->setChecked(shown && (shown->device == info.device || shown->device == info.best()));
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
        const bool seen = std::ranges::any_of(
            ports_, [&](const PortInfo& info) { return info.device == rule.device || info.best() == rule.device; });
        if (seen)
            continue;
        Press* absent = press(
            tr("%1, %2 (in the file)").arg(QString::fromStdString(rule.name), QString::fromStdString(rule.device)), {},
            QStringLiteral("kept_%1").arg(i));
        absent->setCheckable(true);
        absent->setChecked(setup_.rule() == &rule);
        connect(absent, &Press::clicked, this, [this, i] {
            setup_.show(i);
            closePanel();
            refresh();
            build(); // its mark moves
        });
        column->addWidget(absent);
    }
    if (ports_.empty() && setup_.file().ports.empty()) {
        auto* none = label({}, mm::words);
        none->setText(tr("No serial port is plugged in. Plug the probe in and look again; readings can be typed in "
                         "without one."));
        column->addWidget(none);
    }
    column->addStretch();
    Press* again = press(tr("Look again"), QStringLiteral("G"), QStringLiteral("again"));
    Press* chain = press(tr("Test the whole chain"), QStringLiteral("T"), QStringLiteral("testChain"));
    Press* sound = press(tr("Sound"), QStringLiteral("H"), QStringLiteral("sound"));
    connect(again, &Press::clicked, this, &ProbesScreen::portsWanted);
    connect(chain, &Press::clicked, this, &ProbesScreen::testChain);
    connect(sound, &Press::clicked, this, &ProbesScreen::soundWanted);
    for (Press* key : {again, chain, sound})
        column->addWidget(key);
}

void ProbesScreen::buildWiring(QVBoxLayout* column) {
    auto* wiring = new QHBoxLayout;
    protocol_ = press({}, {}, QStringLiteral("protocol"));
    baud_ = press({}, {}, QStringLiteral("baud"));
    framing_ = press({}, {}, QStringLiteral("framing"));
    encoding_ = press({}, {}, QStringLiteral("encoding"));
    checksum_ = press({}, {}, QStringLiteral("checksum"));
    every_ = press({}, {}, QStringLiteral("every"));
    add_ = press(tr("Add a register"), tr("Ins"), QStringLiteral("addRegister"));
    const auto turns = [this](Press* key, bool (ProbeSetup::*turn)()) {
        connect(key, &Press::clicked, this, [this, turn] { turned((setup_.*turn)()); });
    };
    turns(protocol_, &ProbeSetup::turnProtocol);
    turns(baud_, &ProbeSetup::turnBaud);
    turns(framing_, &ProbeSetup::turnFraming);
    turns(encoding_, &ProbeSetup::turnEncoding);
    turns(checksum_, &ProbeSetup::turnChecksum);
    turns(every_, &ProbeSetup::turnEvery);
    connect(add_, &Press::clicked, this, &ProbesScreen::addRegister);
    for (Press* key : {protocol_, baud_, framing_, encoding_, checksum_, every_, add_})
        wiring->addWidget(key, 1);
    column->addLayout(wiring);
}

void ProbesScreen::buildQuestion(QVBoxLayout* column) {
    question_ = new QFrame;
    question_->setObjectName(QStringLiteral("question"));
    auto* line = new QHBoxLayout{question_};
    line->setContentsMargins(0, 0, 0, 0);
    asks_ = label(QStringLiteral("asks"), mm::words, true);
    line->addWidget(asks_, 1);
    yes_ = press({}, {}, QStringLiteral("yes"));
    Press* no = press(tr("No, leave it"), tr("N"), QStringLiteral("no"));
    connect(yes_, &Press::clicked, this, [this] { answer(true); });
    connect(no, &Press::clicked, this, [this] { answer(false); });
    line->addWidget(yes_);
    line->addWidget(no);
    column->addWidget(question_);
}

void ProbesScreen::buildFoot(QVBoxLayout* column) {
    auto* keys = new QHBoxLayout;
    Press* keep = press(tr("Keep this"), QStringLiteral("K"), QStringLiteral("save"));
    Press* forget = press(tr("Leave this port out"), {}, QStringLiteral("forget"));
    forget->setEnabled(setup_.rule() != nullptr);
    connect(keep, &Press::clicked, this, &ProbesScreen::save);
    connect(forget, &Press::clicked, this, [this] {
        setup_.forget();
        changed();
        build();
    });
    for (Press* key : {keep, forget})
        keys->addWidget(key, 1);
    column->addLayout(keys);
}

void ProbesScreen::buildFields() {
    if (setup_.rowCount() == rows_.size())
        return;
    qDeleteAll(fields_->findChildren<QWidget*>(QString{}, Qt::FindDirectChildrenOnly));
    delete fields_->layout();
    rows_.clear();
    auto* grid = new QGridLayout{fields_};
    grid->setContentsMargins(0, 0, 0, 0);
    for (std::size_t i = 0; i < setup_.rowCount(); ++i) {
        const int line = static_cast<int>(i);
        const auto named = [line](const char* what) {
            return QStringLiteral("%1_%2").arg(QLatin1String(what)).arg(line);
        };
        Row row{.reads = press({}, {}, named("reads")),
                .unit = press({}, {}, named("unit")),
                .more = press(QStringLiteral("…"), {}, named("more")),
                .name = label(named("name"), mm::words, true),
                .shown = label(named("shown"), mm::words),
                .value = label(named("value"), mm::words)};
        row.more->setAccessibleName(tr("offset, register and the rest"));
        connect(row.reads, &Press::clicked, this, [this, i] { chooseReading(i); });
        connect(row.unit, &Press::clicked, this, [this, i] { chooseUnit(i); });
        connect(row.more, &Press::clicked, this, [this, i] { openField(i); });
        for (Press* key : {row.reads, row.unit, row.more})
            key->installEventFilter(this);
        int place = 0;
        for (QWidget* cell :
             std::initializer_list<QWidget*>{row.name, row.shown, row.reads, row.unit, row.more, row.value}) {
            grid->addWidget(cell, line, place++);
            cell->show(); // at once: a key may be pressed before the layout shows what it was given
        }
        rows_.push_back(row);
    }
    for (const auto& [column, stretch] : {std::pair{0, 3}, {1, 3}, {2, 3}, {3, 2}, {4, 0}, {5, 5}})
        grid->setColumnStretch(column, stretch);
    grid->setRowStretch(static_cast<int>(rows_.size()), 1);
}

QString ProbesScreen::encodingWord(Encoding encoding) const {
    switch (encoding) {
    case Encoding::columns:
        return tr("columns");
    case Encoding::pairs:
        return tr("pairs");
    case Encoding::json:
        return tr("JSON objects");
    }
    return {};
}

void ProbesScreen::refreshWiring() {
    const PortRule* rule = setup_.rule();
    const bool modbus = rule && rule->protocol == Protocol::modbusRtu;
    for (Press* key : {protocol_, baud_, framing_})
        key->setVisible(rule != nullptr);
    for (Press* key : {encoding_, checksum_})
        key->setVisible(rule && !modbus);
    for (Press* key : {every_, add_})
        key->setVisible(modbus);
    if (!rule)
        return;
    protocol_->say(modbus ? tr("Modbus RTU") : tr("lines of text"), {});
    baud_->say(tr("%1 baud").arg(rule->baud), {});
    framing_->say(framingWords(rule->parity, rule->stopBits), {});
    const auto seen = setup_.status() ? setup_.status()->encoding : std::nullopt;
    encoding_->say(rule->encoding ? encodingWord(*rule->encoding)
                   : seen         ? tr("kind of line: %1, detected").arg(encodingWord(*seen))
                                  : tr("kind of line: detected by itself"),
                   {});
    checksum_->say(rule->checksum ? tr("checksum demanded") : tr("checksum if there is one"), {});
    every_->say(tr("every %1 s").arg(QLocale{}.toString(rule->every)), {});
}

void ProbesScreen::refreshQuestion() {
    const auto all = setupQuestions(setup_, refused_);
    asked_ = all.empty() ? std::nullopt : std::optional{all.front()};
    question_->setVisible(asked_.has_value());
    if (!asked_)
        return;
    asks_->setText(asked_->words);
    yes_->say(asked_->yes, tr("Y"));
}

void ProbesScreen::refreshPanel() {
    if (auto* chain = qobject_cast<ChainView*>(panel_); chain && evidence_) {
        auto evidence = evidence_();
        evidence.file = setup_.file();
        for (std::size_t i = 0; i < evidence.file.ports.size(); ++i)
            evidence.ports.push_back(setup_.statusOf(i));
        chain->display(chainRows(evidence, units_));
    }
    if (auto* sheet = qobject_cast<FieldSheet*>(panel_)) {
        const auto rows = setup_.rows(units_);
        if (panelRow_ < rows.size())
            sheet->showLive(
                QStringList{rows[panelRow_].name, rows[panelRow_].shown, rows[panelRow_].reads, rows[panelRow_].value}
                    .join(QStringLiteral("   ")));
    }
}

// The newest lines, as many as leave the fields their room; a long line takes several rows of letters.
QStringList ProbesScreen::newestLines() const {
    constexpr qsizetype most = 5;
    const int letter = std::max(1, lines_->fontMetrics().horizontalAdvance(u'0'));
    const qsizetype inRow = std::max(20, (main_->width() - dress_.px(mm::gap)) / letter);
    QStringList lines;
    qsizetype taken = 0;
    for (auto line = setup_.lines().rbegin(); line != setup_.lines().rend(); ++line) {
        taken += 1 + line->size() / inRow;
        if (taken > most && !lines.isEmpty())
            break;
        lines.prepend(*line);
    }
    return lines;
}

void ProbesScreen::refresh() {
    buildFields();
    const auto rows = setup_.rows(units_);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        constexpr qsizetype longest = 24; // letters that stand in one line
        rows_[i].name->setWordWrap(rows[i].name.size() > longest);
        rows_[i].name->setText(rows[i].name);
        rows_[i].shown->setText(rows[i].shown);
        rows_[i].reads->say(rows[i].reads, {}); // digits are the tabs'
        rows_[i].unit->say(rows[i].unit, {});
        rows_[i].unit->setEnabled(!rows[i].unit.isEmpty());
        rows_[i].more->setEnabled(!rows[i].unit.isEmpty());
        rows_[i].value->setText(rows[i].value);
    }
    refreshWiring();
    const PortRule* rule = setup_.rule();
    sentence_->setText(setup_.status() ? portSentence(*setup_.status())
                       : rule          ? tr("Listening to %1 …").arg(QString::fromStdString(rule->device))
                                       : tr("Choose the port that the probe is plugged into."));
    QStringList text;
    if (rule && rule->protocol == Protocol::modbusRtu && rows.empty())
        text << tr("Nothing is asked for yet. Add a register, as the instrument's manual numbers it.");
    else if (rule && rule->protocol == Protocol::modbusRtu && setup_.status())
        text << pollWords(setup_.status()->polls);
    text << newestLines();
    lines_->setText(text.join(u'\n'));
    lines_->setVisible(!text.isEmpty());
    refreshQuestion();
    refreshPanel();
}

} // namespace panside
