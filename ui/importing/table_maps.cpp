#include "ui/importing/table_maps.h"

#include "core/boil/shift_log.h"
#include "core/files/places.h"
#include "core/files/text_file.h"
#include "ui/look/local_time.h"

#include <QCryptographicHash>
#include <QSettings>
#include <filesystem>

namespace panside {
namespace {

constexpr std::size_t beginningSize = 1U << 14;

// A table is known again by what names its columns.
QString memoryOf(const std::string& beginning) {
    const auto map = proposedMap(beginning, {});
    QByteArray heading;
    for (const std::string& name : sampleOf(beginning, map.delimiter, map.heading, 1).heading)
        heading += QByteArray::fromStdString(name) + '\n';
    return QStringLiteral("maps/") + QCryptographicHash::hash(heading, QCryptographicHash::Sha1).toHex();
}

QSettings mapMemory() { return QSettings{QString::fromStdString(choicesFile().string()), QSettings::IniFormat}; }

bool isNameRemembered(const std::string& name) {
    QSettings memory = mapMemory();
    memory.beginGroup(QStringLiteral("maps"));
    for (const QString& key : memory.childKeys())
        if (const auto map = foreignMapIn(memory.value(key).toString().toStdString()); map && map->probe == name)
            return true;
    return false;
}

} // namespace

std::string beginningOf(std::istream& table) {
    std::string text(beginningSize, '\0');
    table.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(table.gcount()));
    table.clear();
    table.seekg(0);
    return text;
}

bool isShiftLog(std::string_view beginning) {
    if (beginning.starts_with("\xEF\xBB\xBF"))
        beginning.remove_prefix(3);
    return beginning.substr(0, beginning.find_first_of("\r\n")) == logHeader;
}

void rememberMap(const std::string& beginning, const ForeignMap& map) {
    mapMemory().setValue(memoryOf(beginning), QString::fromStdString(textOf(map)));
}

std::optional<ForeignMap> rememberedMap(const std::string& beginning) {
    auto map = foreignMapIn(mapMemory().value(memoryOf(beginning)).toString().toStdString());
    // A zone that this machine does not know would be read as UTC: ask again.
    return map && zoneNamed(QString::fromStdString(map->zone)) ? map : std::nullopt;
}

ForeignMap mapNamed(const std::string& wanted, const std::string& beginning, const std::string& table) {
    const auto remembered = rememberedMap(beginning);
    if (remembered && (wanted == "remembered" || remembered->probe == wanted))
        return *remembered;
    if (std::error_code none; wanted != "remembered" && std::filesystem::is_regular_file(wanted, none))
        return mapIn(readText(wanted), wanted, beginning);
    if (wanted == "remembered" || isNameRemembered(wanted))
        throw FileFault{FileTrouble::named, table +
                                                ": no map is remembered for a table with these columns. Map it once on "
                                                "the console's page of logs in, or name a mapping file."};
    throw FileFault{FileTrouble::named, wanted +
                                            ": is neither a mapping file nor the probe's name in a map that is "
                                            "remembered. Look at the name and the folder, or map the table once on "
                                            "the console's page of logs in."};
}

} // namespace panside
