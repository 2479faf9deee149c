#include "ui/words/port_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("PortWords", text); }
QString ours(std::string_view text) { return QString::fromUtf8(text.data(), qsizetype(text.size())); }
// The words of core are looked up as they are: the tables of refusals, exceptions and missing readings stand there.
QString translated(std::string_view text) { return tr(std::string{text}.c_str()); }

QString firstFault(const PortStatus& status) {
    for (const FieldStatus& field : status.fields)
        if (field.fault != PollFault::none)
            return pollFaultWords(field.fault, field.exception);
    return {};
}

QString refusedWords(const PortStatus& status) {
    if (const auto fault = firstFault(status); !fault.isEmpty())
        return tr(QT_TRANSLATE_NOOP("PortWords", "the instrument refuses: %1. Check function and register in its "
                                                 "manual."))
            .arg(fault);
    std::size_t most = 1;
    for (std::size_t i = 1; i < refusalCount; ++i)
        if (status.lines.refused[i] > status.lines.refused[most])
            most = i;
    return tr(QT_TRANSLATE_NOOP("PortWords", "no line can be believed; most of them: %1 (as in “%2”)."))
        .arg(refusalWords(static_cast<Refusal>(most)), ours(status.lines.sample[most]));
}

QString stateWords(const PortStatus& status) {
    const QString device = ours(status.device), words = ours(status.words);
    switch (status.state) {
    case PortState::starting:
        return tr(QT_TRANSLATE_NOOP("PortWords", "not opened yet."));
    case PortState::noSuchPort:
        return tr(QT_TRANSLATE_NOOP("PortWords", "there is no port %1. Plug the probe in, or choose another port; "
                                                 "reading begins by itself."))
            .arg(device);
    case PortState::noPermission:
        return tr(QT_TRANSLATE_NOOP("PortWords", "you may not open %1: it belongs to the group %2. Run `sudo adduser "
                                                 "$USER %2`, log out and in."))
            .arg(device, words);
    case PortState::taken:
        return tr(QT_TRANSLATE_NOOP("PortWords", "another program has %1 open. Close it; reading begins by itself."))
            .arg(device);
    case PortState::notSerial:
        return tr(QT_TRANSLATE_NOOP("PortWords", "%1 is not a serial port. Choose another one.")).arg(device);
    case PortState::failed:
        return tr(QT_TRANSLATE_NOOP("PortWords", "%1 does not open: %2. It is tried again by itself."))
            .arg(device, words);
    case PortState::lost:
        return tr(QT_TRANSLATE_NOOP("PortWords", "%1 went away. Check plug and power; reading goes on by itself when "
                                                 "it is back."))
            .arg(device);
    case PortState::listening:
        return tr(QT_TRANSLATE_NOOP("PortWords", "open; nothing received yet."));
    case PortState::reading:
        return tr(QT_TRANSLATE_NOOP("PortWords", "reading."));
    case PortState::silent:
        return tr(
            QT_TRANSLATE_NOOP("PortWords", "open, but nothing received for 10 s. Check the probe's power and cable."));
    case PortState::wrongSpeed:
        return tr(QT_TRANSLATE_NOOP(
            "PortWords", "what arrives is not text. Wrong speed? Set the speed (baud) that the probe uses."));
    case PortState::unended:
        return tr(QT_TRANSLATE_NOOP(
            "PortWords",
            "letters arrive, but no line end. Have the probe end each line with a line feed (LF, or CR and LF)."));
    case PortState::refused:
        return refusedWords(status);
    case PortState::noAnswer:
        return tr(QT_TRANSLATE_NOOP("PortWords", "no answer. Check address, speed, parity and the two wires."));
    }
    return {};
}

} // namespace

QString portSentence(const PortStatus& status) {
    return tr(QT_TRANSLATE_NOOP("PortWords", "%1: %2"))
        .arg(ours(status.name.empty() ? status.device : status.name), stateWords(status));
}

QString pollWords(const PollCounts& polls) {
    QStringList words{tr(QT_TRANSLATE_NOOP("PortWords", "answered %1")).arg(polls.answered)};
    if (polls.timedOut > 0)
        words << tr(QT_TRANSLATE_NOOP("PortWords", "no answer %1")).arg(polls.timedOut);
    if (polls.garbled > 0)
        words << tr(QT_TRANSLATE_NOOP("PortWords", "garbled %1")).arg(polls.garbled);
    for (const auto& [code, count] : polls.exceptions)
        words << QStringLiteral("%1 %2").arg(pollFaultWords(PollFault::exception, code)).arg(count);
    if (polls.skipped > 0)
        words << tr(QT_TRANSLATE_NOOP("PortWords", "too slow for this pace %1")).arg(polls.skipped);
    return words.join(QStringLiteral(" · "));
}

QString pollFaultWords(PollFault fault, int exception) {
    switch (fault) {
    case PollFault::none:
        return {};
    case PollFault::noAnswer:
        return tr(QT_TRANSLATE_NOOP("PortWords", "no answer"));
    case PollFault::garbled:
        return tr(QT_TRANSLATE_NOOP("PortWords", "garbled answer"));
    case PollFault::exception:
        return tr(QT_TRANSLATE_NOOP("PortWords", "%1 (exception %2)"))
            .arg(translated(exceptionText(exception)))
            .arg(exception);
    }
    return {};
}

QString noReadingWords(NoReading why) { return why == NoReading::none ? QString{} : translated(noReadingText(why)); }

QString refusalWords(Refusal refusal) { return translated(refusalText(refusal)); }

} // namespace panside
