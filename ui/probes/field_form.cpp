#include "ui/probes/field_form.h"

#include "ui/probes/row_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Probes", text); }

// The words of the choices, in the order of what they mean.
QStringList functions() { return {tr("3, holding registers"), tr("4, input registers")}; }
QStringList types() {
    return {tr("whole, 16 bit, signed"), tr("whole, 16 bit"), tr("whole, 32 bit, signed"), tr("whole, 32 bit"),
            tr("decimal, 32 bit")};
}
QStringList orders() { return {tr("high word first"), tr("low word first")}; }

QString plain(double number) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(number, 'g', 8).replace(u'-', QChar{0x2212});
}

bool isTwoWords(const RegisterPlace& place) {
    return place.type != RegisterType::int16 && place.type != RegisterType::uint16;
}

// The other fields that may read a thermocouple's other end.
std::vector<const FieldRule*> junctionFields(const PortRule& port, const FieldRule& field) {
    std::vector<const FieldRule*> others;
    for (const FieldRule& other : port.fields)
        if (other != field && !other.is.empty() && other.unit != Unit::mV)
            others.push_back(&other);
    return others;
}

QString atFixed() { return tr("at a fixed temperature"); }

Unit degrees(Units units) { return units == Units::us ? Unit::degF : Unit::degC; }

void addPlace(std::vector<FieldFormRow>& rows, const RegisterPlace& place) {
    rows.push_back({FieldPart::slave, tr("slave (1 to 247)"), QString::number(place.slave)});
    rows.push_back({FieldPart::function, tr("function"), functions()[place.function - 3], {}, functions()});
    rows.push_back({FieldPart::address, tr("register, from 0"), QString::number(place.address)});
    rows.push_back({FieldPart::type, tr("number"), types()[static_cast<int>(place.type)], {}, types()});
    if (isTwoWords(place))
        rows.push_back({FieldPart::wordOrder, tr("words"), orders()[static_cast<int>(place.order)], {}, orders()});
    rows.push_back({FieldPart::scale, tr("times (0.1 for tenths)"), plain(place.scale)});
}

void addJunction(std::vector<FieldFormRow>& rows, const PortRule& port, const FieldRule& field, Units units) {
    QStringList choices{atFixed()};
    for (const FieldRule* other : junctionFields(port, field))
        choices << QString::fromStdString(other->is);
    const auto* fixed = std::get_if<Said<Temperature>>(&*field.junction);
    const auto* name = std::get_if<std::string>(&*field.junction);
    rows.push_back({FieldPart::junction,
                    tr("the wire's other end"),
                    name ? QString::fromStdString(*name) : choices[0],
                    {},
                    choices});
    if (fixed)
        rows.push_back({FieldPart::junctionAt, tr("its temperature"),
                        plain(std::round(fromSi(fixed->value.kelvin(), degrees(units)) * 100) / 100),
                        symbolOf(degrees(units))});
}

class Answering {
public:
    Answering(FieldRule field, const QString& answer, Units units)
        : field_{std::move(field)}, answer_{answer}, units_{units} {}

    std::variant<FieldRule, QString> given(FieldPart part) {
        set(part);
        if (!wrong_.isEmpty())
            return wrong_;
        return std::move(field_);
    }

private:
    void set(FieldPart part) {
        RegisterPlace place = field_.place.value_or(RegisterPlace{});
        switch (part) {
        case FieldPart::slave:
            place.slave = static_cast<int>(whole(1, 247));
            break;
        case FieldPart::function:
            place.function = 3 + choice(functions());
            break;
        case FieldPart::address:
            place.address = static_cast<int>(whole(0, isTwoWords(place) ? 65534 : 65535));
            break;
        case FieldPart::type:
            place.type = static_cast<RegisterType>(choice(types()));
            place.address = std::min(place.address, isTwoWords(place) ? 65534 : 65535);
            break;
        case FieldPart::wordOrder:
            place.order = static_cast<WordOrder>(choice(orders()));
            break;
        case FieldPart::scale:
            place.scale = number(-1e6, 1e6);
            if (place.scale == 0 && wrong_.isEmpty())
                wrong_ = tr("Times 0 would make every reading 0. Write 1, or 0.1 for tenths.");
            break;
        case FieldPart::offset:
            field_.offset = number(-1e6, 1e6);
            return;
        case FieldPart::junction:
        case FieldPart::junctionAt:
            setJunction(part);
            return;
        case FieldPart::name:
            field_.is = answer_.trimmed().toStdString();
            return;
        }
        if (field_.place)
            field_.place = place;
    }

    void setJunction(FieldPart part) {
        if (part == FieldPart::junction && answer_ != atFixed()) {
            field_.junction = answer_.toStdString();
            return;
        }
        if (part == FieldPart::junction) {
            field_.junction = Said<Temperature>{Temperature::celsius(25), Unit::degC};
            return;
        }
        const Unit unit = degrees(units_);
        const double typed = number(fromSi(233.15, unit), fromSi(398.15, unit)); // as thermocouple.h has it
        field_.junction = Said<Temperature>{Temperature::kelvin(toSi(typed, unit)), unit};
    }

    double number(double lowest, double highest) {
        QString text = answer_.trimmed();
        text.replace(u',', u'.').replace(QChar{0x2212}, u'-');
        const auto typed = numberIn(text.toStdString());
        if (!typed || *typed < lowest || *typed > highest) {
            wrong_ =
                tr("“%1” does not fit here. Write a number from %2 to %3.").arg(answer_, plain(lowest), plain(highest));
            return 1;
        }
        return *typed;
    }
    double whole(double lowest, double highest) {
        const double typed = number(lowest, highest);
        if (typed != std::floor(typed) && wrong_.isEmpty())
            wrong_ = tr("“%1” does not fit here. Write a whole number.").arg(answer_);
        return wrong_.isEmpty() ? typed : lowest;
    }
    int choice(const QStringList& all) { return std::max(0, static_cast<int>(all.indexOf(answer_))); }

    FieldRule field_;
    QString answer_, wrong_;
    Units units_;
};

} // namespace

std::vector<FieldFormRow> fieldForm(const PortRule& port, const FieldRule& field, Units units) {
    std::vector<FieldFormRow> rows;
    if (field.place)
        addPlace(rows, *field.place);
    rows.push_back({FieldPart::offset, tr("add to what is read"), plain(field.offset), symbolOf(field.unit)});
    if (field.junction)
        addJunction(rows, port, field, units);
    if (field.place)
        rows.push_back({FieldPart::name, tr("its name, if it needs one"), QString::fromStdString(field.is)});
    return rows;
}

std::variant<FieldRule, QString> withAnswer(FieldRule field, FieldPart part, const QString& answer, Units units) {
    return Answering{std::move(field), answer, units}.given(part);
}

} // namespace panside
