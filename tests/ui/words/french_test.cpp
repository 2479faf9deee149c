// The French of the console, as the built program reads it.
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "core/journal/foreign_log.h"
#include "core/physics/wood.h"
#include "tests/ui/words/marked_texts.h"
#include "ui/console/screens.h"
#include "ui/entry/entry_sheet.h"
#include "ui/frame/key_map.h"
#include "ui/importing/import_screen.h"
#include "ui/importing/map_view.h"
#include "ui/keys/actions.h"
#include "ui/look/press.h"
#include "ui/page/page.h"
#include "ui/paperlog/paper_screen.h"
#include "ui/reckoner/reckoner_screen.h"
#include "ui/review/review_screen.h"
#include "ui/rig/rig_screen.h"
#include "ui/season/season_screen.h"
#include "ui/words/alarm_words.h"
#include "ui/words/fact_words.h"
#include "ui/words/fault_words.h"
#include "ui/words/reading_words.h"

#include "tests/ui/board/framed.h"
#include "tests/ui/board/scenes.h"
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QRegularExpression>
#include <QTextBrowser>
#include <QTimeZone>
#include <QTranslator>
#include <QXmlStreamReader>
#include <functional>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <sstream>

namespace panside {
namespace {

struct Message {
    QString context, source;
    QStringList french; // one, or a form each for one and for many
    bool counted = false, unfinished = false;
    QString file;
};

std::vector<Message> messages() {
    std::vector<Message> all;
    const QDir folder{QStringLiteral(PANSIDE_SOURCE "/resources/translations")};
    for (const QString& name : folder.entryList({QStringLiteral("*_fr.ts")})) {
        QFile file{folder.filePath(name)};
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
        QXmlStreamReader xml{&file};
        QString context;
        while (!xml.atEnd()) {
            if (xml.readNext() != QXmlStreamReader::StartElement)
                continue;
            if (xml.name() == u"name")
                context = xml.readElementText();
            else if (xml.name() == u"message")
                all.push_back({context, {}, {}, xml.attributes().value("numerus") == u"yes", false, name});
            else if (xml.name() == u"source")
                all.back().source = xml.readElementText();
            else if (xml.name() == u"translation") {
                all.back().unfinished = xml.attributes().hasAttribute("type");
                if (!all.back().counted)
                    all.back().french << xml.readElementText();
            } else if (xml.name() == u"numerusform")
                all.back().french << xml.readElementText();
        }
        EXPECT_FALSE(xml.hasError()) << name.toStdString() << ": " << xml.errorString().toStdString();
    }
    return all;
}

QStringList placeholders(const QString& text) {
    static const QRegularExpression mark{QStringLiteral("%(?:[1-9]|n)")};
    QStringList found;
    for (auto each = mark.globalMatch(text); each.hasNext();)
        found << each.next().captured();
    found.sort();
    return found;
}

// Signs, units and the names that the two languages share.
bool isTheSameInBoth(const QString& text) {
    static const std::set<QString> words{
        "Panside",      "Note", "note", "Ports", "Port",   "Type",  "volume", "Baumé",      "Tab",
        "Thermocouple", "type", "K",    "J",     "T",      "N",     "S",      "Modbus RTU", "%2 (exception %1)",
        "PDF (*.pdf)",  "Lots", "lots", "lot",   "source", "urgent"};
    static const QRegularExpression unit{
        QStringLiteral("^(?:s|min|h|d|kPa|inHg|psi|L|gal|kg|lb|MJ|Btu|mV|ohm|C|F|Brix|Bé|mm|"
                       "cm|m|in|baume|x|n|MHz|kB|MB|CSV|PDF|KB)?$")};
    if (words.contains(text))
        return true;
    static const QRegularExpression others{QStringLiteral("[^\\p{L}]+")};
    const QString bare = QString{text}.remove(QRegularExpression{QStringLiteral("%(?:[1-9]|n)")});
    for (const QString& word : bare.split(others))
        if (!unit.match(word).hasMatch())
            return false;
    return true;
}

class French : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(translator_.load(QStringLiteral(PANSIDE_FRENCH))) << PANSIDE_FRENCH; }
    void TearDown() override { speak(false); }
    void speak(bool french) {
        QCoreApplication::removeTranslator(&translator_);
        if (french)
            QCoreApplication::installTranslator(&translator_);
        QLocale::setDefault(french ? QLocale{QStringLiteral("fr_CA")} : QLocale::c());
    }
    QString of(const QString& context, const QString& text, int count = -1) const {
        return translator_.translate(context.toUtf8().constData(), text.toUtf8().constData(), nullptr, count);
    }
    // The words are others in French.
    void expectOther(const std::function<QString()>& words) {
        speak(false);
        const QString english = words();
        speak(true);
        const QString french = words();
        EXPECT_FALSE(english.isEmpty());
        EXPECT_FALSE(french.isEmpty());
        EXPECT_TRUE(french != english || isTheSameInBoth(english)) << english.toStdString();
    }
    // All values of an enum that has words for each, from `first` on; returns how many.
    template <class Enum>
    int expectOtherForEach(Enum first, const std::function<QString(Enum)>& words) {
        int count = 0;
        for (auto value = first;; value = static_cast<Enum>(static_cast<int>(value) + 1), ++count) {
            speak(false);
            if (words(value).isEmpty())
                return count;
            expectOther([&] { return words(value); });
        }
    }
    QTranslator translator_;
};

TEST(MarkedTexts, AreFoundBehindFunctionsMacrosAndClasses) {
    const QString source = QStringLiteral(R"cpp(
#define WORD(text) QT_TRANSLATE_NOOP("Table", text)
const char* words[] = {WORD("one"), QT_TRANSLATE_NOOP("Other",
    "two "
    "halves")}; // tr("not this")
QString Page::leave(int n) const { return tr("Leave") + tr("%n times", "", n) + Console::tr("Back"); }
QString x = QCoreApplication::translate("Direct", "%n drops", nullptr, 3) + "http://nowhere";
)cpp");
    std::set<std::string> found;
    for (const MarkedText& text : markedIn(source, QStringLiteral("a.cpp")))
        found.insert((text.context + '|' + text.text + (text.counted ? "|n" : "")).toStdString());
    EXPECT_EQ(found, (std::set<std::string>{"Table|one", "Other|two halves", "panside::Page|Leave",
                                            "panside::Page|%n times|n", "panside::Console|Back", "Direct|%n drops|n"}));
    const auto own =
        markedIn(QStringLiteral("QString tr(const char* text) { return QCoreApplication::translate(\"Own\", text); }\n"
                                "auto a = tr(\"said \\\"so\\\"\");"),
                 QStringLiteral("b.cpp"));
    ASSERT_EQ(own.size(), 1u);
    EXPECT_EQ(own[0].context, "Own");
    EXPECT_EQ(own[0].text, "said \"so\"");
    EXPECT_EQ(own[0].place, "b.cpp:2");
}

TEST_F(French, IsThereForEveryTextTheSourcesMark) {
    const auto marked = markedTexts({QStringLiteral("ui"), QStringLiteral("app")});
    EXPECT_GT(marked.size(), 300u);
    for (const MarkedText& text : marked)
        EXPECT_FALSE(of(text.context, text.text, text.counted ? 2 : -1).isEmpty())
            << text.place.toStdString() << ": " << text.context.toStdString() << " \"" << text.text.toStdString()
            << '"';
}

// Core says its sentences in English: they are said in French by the text.
TEST_F(French, IsThereForEverySentenceOfCore) {
    static const QRegularExpression said{
        QStringLiteral(R"re(\b(?:say|sayOneOf|groundRow|slipRow)\([^;"]*((?:"(?:[^"\\]|\\.)*"\s*)+))re")};
    static const QRegularExpression literal{QStringLiteral(R"re("((?:[^"\\]|\\.)*)")re")};
    static const std::set<QString> byThemselves{"port_status.cpp", "modbus_port.cpp", "foreign_log.cpp"};
    int count = 0;
    for (const auto& [files, context] : {std::pair{"core/physics", "reckon"},
                                         {"core/probe", "ProbeFaultWords"},
                                         {"core/probe/port_status.cpp", "PortWords"},
                                         {"core/probe/modbus_port.cpp", "PortWords"},
                                         {"core/journal", "JournalWords"},
                                         {"core/journal/foreign_log.cpp", "FaultWords"},
                                         {"core/boil/log_fault.cpp", "FaultWords"},
                                         {"core/boil/log_row.cpp", "FaultWords"},
                                         {"core/boil/day_read.cpp", "FaultWords"},
                                         {"core/boil/row_reader.h", "FaultWords"},
                                         {"core/shift", "Session"},
                                         {"core/boil/ground.cpp", "GroundWords"},
                                         {"ui/importing/mapping_file.cpp", "ProbeFaultWords"}}) {
        const QFileInfo place{QStringLiteral(PANSIDE_SOURCE "/%1").arg(QLatin1String{files})};
        const QDir folder{place.isDir() ? place.filePath() : place.path()};
        for (const QString& name : folder.entryList({place.isDir() ? QStringLiteral("*.cpp") : place.fileName()})) {
            if (place.isDir() && byThemselves.contains(name))
                continue;
            QFile file{folder.filePath(name)};
            ASSERT_TRUE(file.open(QIODevice::ReadOnly));
            const QString source = QString::fromUtf8(file.readAll());
            for (auto found = said.globalMatch(source); found.hasNext(); ++count) {
                QString text;
                const QString literals = found.next().captured(1);
                for (auto piece = literal.globalMatch(literals); piece.hasNext();)
                    text += piece.next().captured(1).replace(QLatin1String{"\\\""}, QLatin1String{"\""});
                EXPECT_FALSE(of(QString::fromLatin1(context), text).isEmpty())
                    << name.toStdString() << ": " << text.toStdString();
            }
        }
    }
    EXPECT_GT(count, 130);
    for (const Wood& wood : woods())
        EXPECT_FALSE(
            of(QStringLiteral("wood"), QString::fromStdString(std::string{wood.name}).replace(u'-', u' ')).isEmpty())
            << wood.name;
}

TEST_F(French, SaysEachTextOnceInOtherWordsWithTheSamePlaceholders) {
    std::map<std::pair<QString, QString>, QStringList> seen;
    for (const Message& message : messages()) {
        const auto where = message.file.toStdString() + ": " + message.source.toStdString();
        EXPECT_FALSE(message.unfinished) << where;
        EXPECT_EQ(message.french.size(), message.counted ? 2 : 1) << where;
        for (const QString& french : message.french) {
            EXPECT_FALSE(french.trimmed().isEmpty()) << where;
            EXPECT_EQ(placeholders(french), placeholders(message.source)) << where;
            EXPECT_TRUE(french != message.source || isTheSameInBoth(message.source)) << where;
            // French writes a space before a colon that ends a clause, and no line ends there; in Quebec none before
            // other marks.
            static const QRegularExpression spacedMark{QStringLiteral("\\S[\\s\u00a0][?!;]")};
            EXPECT_FALSE(spacedMark.match(french).hasMatch()) << where;
            static const QRegularExpression bareColon{QStringLiteral("[^\u00a0]:(?:\\s|$)")};
            EXPECT_FALSE(bareColon.match(french).hasMatch()) << where;
        }
        const auto [place, isFirst] = seen.try_emplace({message.context, message.source}, message.french);
        EXPECT_TRUE(isFirst || place->second == message.french) << where << " has two different translations";
    }
    EXPECT_GT(seen.size(), 300u);
}

// One word for one thing, through all screens.
TEST_F(French, KeepsToTheWordsOfTheTrade) {
    static const QRegularExpression strayed{QStringLiteral("\\b(?:attis\\w+|éprouvettes?|sèves?|pannes?(?! de "
                                                           "courant)|réservoirs?|cuves?|emballé\\w*|répétitions?|"
                                                           "tirages trop|(?<!somme de )contrôles?|(?<!sur)veilles?|"
                                                           "sorties? (?:ouverte|fermée))\\b"),
                                            QRegularExpression::UseUnicodePropertiesOption |
                                                QRegularExpression::CaseInsensitiveOption};
    for (const Message& message : messages())
        for (const QString& french : message.french)
            EXPECT_FALSE(strayed.match(french).hasMatch())
                << message.file.toStdString() << ": " << french.toStdString();
}

TEST_F(French, HasOtherWordsForEveryKeyAlarmReadingReasonAndSetting) {
    for (const ActionRow& row : allActions()) {
        expectOther([&] { return wordOf(row.action); });
        expectOther([&] { return sentenceOf(row.action); });
    }
    for (std::size_t i = 0; i < alarmCount; ++i) {
        AlarmPicture alarm{.alarm = static_cast<Alarm>(i), .priority = {}, .state = AlarmState::unseen, .since = {}};
        expectOther([&] { return alarmName(alarm.alarm); });
        expectOther([&] { return alarmFirst(alarm, true); });
        expectOther([&] { return alarmFirst(alarm, false); });
        for (const std::optional<Duration> left : {std::optional<Duration>{}, {Duration{240}}, {Duration{0}}})
            for (const std::optional<Series> series : {std::optional<Series>{}, {Series::stack}}) {
                alarm.left = left;
                alarm.series = series;
                expectOther([&] { return alarmLine(alarm); });
            }
    }
    for (const ReadingRow& row : allReadings())
        expectOther([&] { return readingName(row.series); });
    for (const SettingRow& row : allSettings()) {
        expectOther([&] { return settingName(row.key); });
        expectOther([&] { return settingUsual(row.key, Units::metric); });
        expectOther([&] { return factWords({.at = {}, .what = Set{row.key, 1, Unit::none}}, Units::metric); });
    }
    EXPECT_GE(expectOtherForEach<Reason>(Reason::silent,
                                         [](Reason reason) {
                                             return reasonWords(Why{{}, reason, 40});
                                         }),
              28);
    EXPECT_EQ(expectOtherForEach<Priority>(Priority::high, priorityWord), 3);
    EXPECT_EQ(expectOtherForEach<AlarmState>(AlarmState::normal, stateWord), 5);
    EXPECT_EQ(expectOtherForEach<Trust>(Trust::good, trustWord), 3);
}

TEST_F(French, HasOtherWordsForEveryFaultOfALogAndOfTheJournal) {
    const auto faulty = [](Slip slip) {
        const Fault fault{.slip = slip, .field = "x", .given = "9", .wanted = say("%1 to %2", {"5", "7"}), .meant = ""};
        return faultWords(fault);
    };
    EXPECT_GE(expectOtherForEach<Slip>(Slip::noHeader, faulty), 20);
    speak(true);
    EXPECT_EQ(faultWords({.slip = Slip::outOfRange,
                          .field = "value",
                          .given = "7",
                          .wanted = say("%1 to %2 %3", {"60", "70", "brix"})},
                         "Densité"),
              QString::fromUtf8("Densité\u00a0: valeur 7 est impossible\u00a0: ce doit être de 60 à 70 brix."));
    const auto troubled = [](JournalTrouble trouble) {
        const auto words = journalWords(JournalError{trouble, "a.db", asWritten("7")});
        return words.size() > 8 ? words : QString{};
    };
    EXPECT_GE(expectOtherForEach<JournalTrouble>(JournalTrouble::noSuchFile, troubled), 15);
}

// What to do is French as well, wherever a log or another logger's table may be wrong: rows from the outside, and none
// of the words that the English hints are made of.
TEST_F(French, SaysWhatToDoInFrench) {
    const char* const wrong[] = {"2026-03-14T18:42,lit,,,",
                                 "2026-03-14T18:42:00Z,,,,",
                                 "2026-03-14T18:42:00Z,syrup_pan,hot,degC,",
                                 "2026-03-14T18:42:00Z,syrup_pan,103,,",
                                 "2026-03-14T18:42:00Z,syrup_pan,103,degX,",
                                 "2026-03-14T18:42:00Z,syrup_pan,103,kPa,",
                                 "2026-03-14T18:42:00Z,density_check,,brix,",
                                 "2026-03-14T18:42:00Z,pressure,-4,kPa,",
                                 "2026-03-14T18:42:00Z,lit,4,,",
                                 "2026-03-14T18:42:00Z,fired,12,kg,moisture=wet",
                                 "2026-03-14T18:42:00Z,fired,12,kg,inferred=maybe",
                                 "2026-03-14T18:42:00Z,fired,12,kg,wood",
                                 "2026-03-14T18:42:00Z,fired,12,kg,wood=maple;wood=ash",
                                 "2026-03-14T18:42:00Z,density_check,66,brix,with=eye",
                                 "2026-03-14T18:42:00Z,density_check,66,brix,temp=hot",
                                 "2026-03-14T18:42:00Z,density_check,66,brix,drawn=early",
                                 "2026-03-14T18:42:00Z,density_check,660,brix,",
                                 "2026-03-14T18:42:00Z,sap_in,100,L,brix=sweet",
                                 "2026-03-14T18:42:00Z,sap_in,100,L,entered=late",
                                 "2026-03-14T18:42:00Z,alarm_seen,,,",
                                 "2026-03-14T18:42:00Z,crew,,,",
                                 "2026-03-14T18:42:00Z,set,4,min,"};
    std::vector<Fault> faults;
    for (const char* row : wrong) {
        auto read = factOfLine(row);
        ASSERT_TRUE(std::holds_alternative<Fault>(read)) << row;
        faults.push_back(std::get<Fault>(read));
    }
    // Cells missing, a time in another form, one that clocks went forward over (second Sunday of March), no number.
    const ForeignMap map{
        ',', false, 1, 0, {}, TimeForm::yearFirst, "America/New_York", {}, {{1, Series::syrup_pan, Unit::degC}}};
    for (const char* row :
         {"2027-03-14 21:00:00", "14.03.2027 21:00,101", "2027-03-14 02:30:00,101", "2027-03-14 21:00:00,hot"}) {
        std::istringstream table{std::string{"Time,Pan\n"} + row + "\n"};
        auto read = ForeignRows{table, map, zoneClock(QTimeZone{"America/New_York"})}.next();
        ASSERT_TRUE(read && !read->faults.empty()) << row;
        faults.push_back(read->faults.front());
    }
    speak(true);
    const QRegularExpression english{QStringLiteral(
        "\\b(an|and|as|or|the|than|of|in|time|number|more|each|between|cells|row|column|reading|write)\\b")};
    for (const Fault& fault : faults) {
        QString said = faultWords(fault, QStringLiteral("-"));
        said.remove(QString::fromStdString(fault.given));
        said.remove(QStringLiteral("degC or degF"));
        EXPECT_FALSE(english.match(said).hasMatch()) << said.toStdString() << " (" << sentence(fault, "-") << ")";
    }
    EXPECT_EQ(foundWords(readingsOf("2027-03-14T18:00:00Z")),
              QStringLiteral("des mesures du quart 2027-03-14T18:00:00Z"));
}

// All that a screen shows in French, as far as it has a French other than its English: none of it is English.
class FrenchScreens : public French {
protected:
    void SetUp() override {
        French::SetUp();
        for (const Message& message : messages())
            if (message.source.size() > 1 && // a letter is a key's
                !isTheSameInBoth(message.source) && placeholders(message.source).isEmpty())
                english_.insert(message.source);
        for (const Message& message : messages()) // a word that is French as well
            for (const QString& french : message.french)
                english_.erase(french);
        speak(true);
    }
    void expectFrench(const QWidget& screen) {
        QStringList shown;
        for (const auto* label : screen.findChildren<QLabel*>())
            shown << label->text();
        for (const auto* key : screen.findChildren<Press*>())
            shown << key->text() << key->accessibleDescription();
        for (const auto* page : screen.findChildren<QTextBrowser*>())
            shown << page->toPlainText().split(u'\n');
        for (const auto* widget : screen.findChildren<QWidget*>())
            shown << widget->accessibleName();
        EXPECT_GT(shown.size(), 3) << screen.objectName().toStdString();
        // The longer words still leave it within a laptop's screen, above the line at the foot.
        EXPECT_LE(screen.minimumSizeHint().width(), 1366) << screen.objectName().toStdString();
        EXPECT_LE(screen.minimumSizeHint().height(), 740) << screen.objectName().toStdString();
        for (const QString& text : shown)
            EXPECT_FALSE(english_.contains(text.trimmed()))
                << screen.objectName().toStdString() << ": " << text.toStdString();
    }
    std::set<QString> english_;
};

// "1 casseroles": none and one are one word in French, two are another.
TEST_F(FrenchScreens, ACountTakesItsPlural) {
    const struct {
        const char *context, *text, *none, *one, *two;
    } counts[] = {
        {"Account", "%n switches entered", "0 changement entré", "1 changement entré", "2 changements entrés"},
        {"Account", "%n pans or sides", "0 casserole ou côté", "1 casserole ou côté", "2 casseroles ou côtés"},
        {"Account", "%n nights of like wood", "0 nuit du même bois", "1 nuit du même bois", "2 nuits du même bois"},
        {"Fuel", "%1 cords", "%1 corde", "%1 corde", "%1 cordes"}};
    for (const auto& [context, text, none, one, two] : counts) {
        EXPECT_EQ(QCoreApplication::translate(context, text, nullptr, 0), QString::fromUtf8(none));
        EXPECT_EQ(QCoreApplication::translate(context, text, nullptr, 1), QString::fromUtf8(one));
        EXPECT_EQ(QCoreApplication::translate(context, text, nullptr, 2), QString::fromUtf8(two));
    }
}

TEST_F(FrenchScreens, ThoseOfTheShiftsAndTheSeason) {
    ReviewScreen review;
    review.wear({});
    expectFrench(review);
    SeasonScreen season;
    season.wear({});
    expectFrench(season);
    PaperScreen paper;
    paper.wear({});
    expectFrench(paper);
    ImportScreen importing;
    importing.wear({});
    ImportState state;
    state.lines.push_back({QStringLiteral("boite.csv"), {}, {}, true, 0});
    importing.display(state);
    const std::string table = "a;b\n14.03.2026 18:00:00;99,5\n";
    importing.askMap(QStringLiteral("boite.csv"), table, proposedMap(table, "UTC"), Units::metric);
    expectFrench(importing);
}

TEST_F(FrenchScreens, TheBoardAndItsPagesAndSheets) {
    Framed framed;
    for (const Picture& scene : {scenes::fresh(), scenes::calm(), scenes::drawing(), scenes::scorching(),
                                 scenes::blind(), scenes::burningOut()}) {
        framed.show(scene);
        expectFrench(framed.frame);
    }
    KeyMap map;
    map.display({{Place::boil, {{Action::board, 1, QStringLiteral("Tableau")}}}});
    expectFrench(map);
    Page page;
    page.show(cautionWords(), QStringLiteral("Retour"));
    expectFrench(page);
    for (const ScreenRow& row : allScreens())
        expectOther([&] { return wordOf(row); });
    for (const PlaceRow& row : railPlaces())
        expectOther([&] { return wordOf(row.place); });
    speak(true);
    EntrySheet sheet;
    sheet.wear(Dress{});
    for (const ActionRow& row : allActions())
        if (makesFact(row.action)) {
            sheet.open(formFor(row.action, scenes::scorching(), Units::metric, {}), Units::metric, WallClock{});
            expectFrench(sheet);
        }
}

TEST_F(FrenchScreens, TheRigAndTheReckoner) {
    RigScreen rig;
    rig.display(rigRows({}, Units::metric), Units::metric, QStringLiteral("fr"), Dress{});
    expectFrench(rig);
    ReckonerScreen reckoner;
    reckoner.display(Units::metric, Dress{});
    for (std::size_t sum = 0; sum < static_cast<std::size_t>(reckonerSums().size()); ++sum)
        for (std::size_t way = 0; way < static_cast<std::size_t>(waysOf(sum).size()); ++way) {
            reckoner.choose(sum, way);
            expectFrench(reckoner);
        }
}

} // namespace
} // namespace panside
