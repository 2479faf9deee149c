#pragma once
// The finer points of one field: where a register stands, scale and offset, the other end of a thermocouple. Pure.
#include "core/probe/probe_file.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <variant>
#include <vector>

namespace panside {

enum class FieldPart { slave, function, address, type, wordOrder, scale, offset, junction, junctionAt, name };

struct FieldFormRow {
    FieldPart part;
    QString label;
    QString answer;
    QString unit = {};
    QStringList choices = {}; // empty: it is typed
    bool operator==(const FieldFormRow&) const = default;
};

// What can be said of this field of its port.
std::vector<FieldFormRow> fieldForm(const PortRule& port, const FieldRule& field, Units units);
// The field with one answer changed, or what is wrong with the answer and what to write.
std::variant<FieldRule, QString> withAnswer(FieldRule field, FieldPart part, const QString& answer, Units units);

} // namespace panside
