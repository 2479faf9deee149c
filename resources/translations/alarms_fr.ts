<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AlarmReview</name>
    <message>
        <source>by nobody</source>
        <translation>par personne</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 sur %3)</translation>
    </message>
    <message>
        <source>comes and goes</source>
        <translation>va et vient</translation>
    </message>
    <message>
        <source>stood too long</source>
        <translation>trop longue</translation>
    </message>
    <message>
        <source>to the end</source>
        <translation>jusqu'à la fin</translation>
    </message>
    <message>
        <source>shelved</source>
        <translation>écartée</translation>
    </message>
    <message>
        <source>%1: %2, longest %3</source>
        <translation>%1 : %2, la plus longue %3</translation>
    </message>
    <message>
        <source>once</source>
        <translation>une fois</translation>
    </message>
    <message numerus="yes">
        <source>%n times</source>
        <translation>
            <numerusform>%n fois</numerusform>
            <numerusform>%n fois</numerusform>
        </translation>
    </message>
    <message>
        <source>came and went %1 times, three or more in a minute, from %2</source>
        <translation>venue et repartie %1 fois, trois ou plus par minute, dès %2</translation>
    </message>
    <message>
        <source>stood longer than %1: %2</source>
        <translation>a duré plus de %1 : %2</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation>alarme</translation>
    </message>
    <message>
        <source>how urgent</source>
        <translation>urgence</translation>
    </message>
    <message>
        <source>times</source>
        <translation>fois</translation>
    </message>
    <message>
        <source>stood in all</source>
        <translation>en tout</translation>
    </message>
    <message>
        <source>longest</source>
        <translation>au plus</translation>
    </message>
    <message>
        <source>seen after</source>
        <translation>vue après</translation>
    </message>
    <message>
        <source>what is amiss</source>
        <translation>à redire</translation>
    </message>
    <message>
        <source>No alarm stood in this shift.</source>
        <translation>Aucune alarme pendant ce quart.</translation>
    </message>
    <message>
        <source>1 alarm</source>
        <translation>1 alarme</translation>
    </message>
    <message numerus="yes">
        <source>%n alarms</source>
        <translation>
            <numerusform>%n alarme</numerusform>
            <numerusform>%n alarmes</numerusform>
        </translation>
    </message>
    <message>
        <source>1 urgent</source>
        <translation>1 urgente</translation>
    </message>
    <message numerus="yes">
        <source>%n urgent</source>
        <translation>
            <numerusform>%n urgente</numerusform>
            <numerusform>%n urgentes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 an hour, more than one person can answer</source>
        <translation>%1 par heure, plus qu'une personne ne peut en traiter</translation>
    </message>
    <message>
        <source>%1 an hour</source>
        <translation>%1 par heure</translation>
    </message>
    <message>
        <source>most in ten minutes: %1, from %2</source>
        <translation>au plus fort : %1 en dix minutes, dès %2</translation>
    </message>
    <message>
        <source>%1 (a flood)</source>
        <translation>%1 (une avalanche)</translation>
    </message>
</context>
<context>
    <name>panside::AlarmsPane</name>
    <message>
        <source>When it stood</source>
        <translation>Quand elle a duré</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Back to the shifts</source>
        <translation>Retour aux quarts</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>The alarms are being worked out.</source>
        <translation>Les alarmes sont en cours de calcul.</translation>
    </message>
    <message>
        <source>%1, %2 of %3: %4</source>
        <translation>%1, %2 sur %3 : %4</translation>
    </message>
</context>
<context>
    <name>panside::ReviewScreen</name>
    <message>
        <source>Alarms</source>
        <translation>Alarmes</translation>
    </message>
</context>
<context>
    <name>panside::RiseChart</name>
    <message>
        <source>alarm: %1, %2</source>
        <translation>alarme : %1, %2</translation>
    </message>
    <message>
        <source>alarms: %1</source>
        <translation>alarmes : %1</translation>
    </message>
</context>
<context>
    <name>RiseChart</name>
    <message>
        <source>alarms</source>
        <translation>alarmes</translation>
    </message>
</context>
<context>
    <name>AlarmWords</name>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>de %1 à %2, %3</translation>
    </message>
    <message>
        <source>%1 to the end, %2</source>
        <translation>de %1 à la fin, %2</translation>
    </message>
    <message>
        <source>seen after %1</source>
        <translation>vue après %1</translation>
    </message>
    <message>
        <source>seen after %1 by %2</source>
        <translation>vue après %1 par %2</translation>
    </message>
    <message>
        <source>not seen by anybody</source>
        <translation>vue par personne</translation>
    </message>
    <message>
        <source>shelved %1 to %2</source>
        <translation>écartée de %1 à %2</translation>
    </message>
    <message>
        <source>shelved %1 to %2 by %3</source>
        <translation>écartée de %1 à %2 par %3</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>%1 %2: %3×, %4, at most %5</source>
        <translation>%1 %2 : %3×, %4, au plus %5</translation>
    </message>
</context>
</TS>
