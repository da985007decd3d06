<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AboutPage</name>
    <message>
        <source>About Wornband</source>
        <extracomment>app/views/about_page.py</extracomment>
        <translation>Über Wornband</translation>
    </message>
    <message>
        <source>Wornband {version}</source>
        <extracomment>app/views/about_page.py</extracomment>
        <translation>Wornband {version}</translation>
    </message>
    <message>
        <source>Python {python}, Qt {qt}</source>
        <extracomment>app/views/about_page.py</extracomment>
        <translation>Python {python}, Qt {qt}</translation>
    </message>
    <message>
        <source>It finds the worn band on a position sensor's track, and proves it.</source>
        <extracomment>app/views/about_page.py</extracomment>
        <translation>Findet die verschlissene Zone auf der Bahn eines Positionssensors und weist sie nach.</translation>
    </message>
    <message>
        <source>It needs no network and no account; nothing leaves this PC by itself.</source>
        <extracomment>app/views/about_page.py</extracomment>
        <translation>Braucht weder Netz noch Konto; von selbst verlässt nichts diesen PC.</translation>
    </message>
    <message>
        <source>The vehicle maker's procedure stands above what it says.</source>
        <extracomment>app/views/about_page.py</extracomment>
        <translation>Die Vorgaben des Fahrzeugherstellers gehen dem vor, was hier steht.</translation>
    </message>
    <message>
        <source>Settings: {path}</source>
        <extracomment>app/views/about_page.py</extracomment>
        <translation>Einstellungen: {path}</translation>
    </message>
    <message>
        <source>What went wrong is written to: {path}</source>
        <extracomment>app/views/about_page.py</extracomment>
        <translation>Was schiefging, steht in: {path}</translation>
    </message>
</context>
<context>
    <name>BandCard</name>
    <message>
        <source>Band {span}</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Zone {span}</translation>
    </message>
    <message>
        <source>Click: light up every crossing. Double-click or Enter: zoom to the clearest one.</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Klicken: jede Überfahrt hervorheben. Doppelklick oder Eingabe: auf die deutlichste vergrößern.</translation>
    </message>
    <message>
        <source>Watch: {band}</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Beobachten: {band}</translation>
    </message>
    <message>
        <source>Why it comes and goes…</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Warum es kommt und geht…</translation>
    </message>
    <message>
        <source>Beginning of the band, in % of travel</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Anfang der Zone, in % des Wegs</translation>
    </message>
    <message>
        <source>End of the band, in % of travel</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Ende der Zone, in % des Wegs</translation>
    </message>
    <message>
        <source>Enter takes it, Esc gives it up</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Enter übernimmt, Esc verwirft</translation>
    </message>
    <message>
        <source>% of travel</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>% des Wegs</translation>
    </message>
    <message>
        <source>Why? (Enter keeps it)</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Warum? (Eingabetaste übernimmt)</translation>
    </message>
    <message>
        <source>Reason for what you say of this band</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Grund für das Urteil über diese Zone</translation>
    </message>
</context>
<context>
    <name>CapturesMenu</name>
    <message>
        <source>Last captures</source>
        <extracomment>app/captures_menu.py</extracomment>
        <translation>Letzte Messungen</translation>
    </message>
    <message>
        <source>Samples</source>
        <extracomment>app/captures_menu.py</extracomment>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>None yet: open a capture</source>
        <extracomment>app/captures_menu.py</extracomment>
        <translation>Noch keine: eine Messung öffnen</translation>
    </message>
</context>
<context>
    <name>CautionStrip</name>
    <message>
        <source>Cautions</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Before you connect or sweep</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation>Vor dem Anschließen und Durchfahren</translation>
    </message>
    <message>
        <source>All</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Show all cautions</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation>Alle Warnhinweise zeigen</translation>
    </message>
    <message>
        <source>Show all cautions, or the first alone</source>
        <extracomment>app/views/caution_strip.py</extracomment>
        <translation>Alle Warnhinweise zeigen oder nur den ersten</translation>
    </message>
</context>
<context>
    <name>ColoursMenu</name>
    <message>
        <source>Colours</source>
        <extracomment>app/colours_menu.py</extracomment>
        <translation>Farben</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <extracomment>app/colours_menu.py</extracomment>
        <translation>Wie der Desktop</translation>
    </message>
    <message>
        <source>Light</source>
        <extracomment>app/colours_menu.py</extracomment>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <extracomment>app/colours_menu.py</extracomment>
        <translation>Dunkel</translation>
    </message>
</context>
<context>
    <name>CompareDesk</name>
    <message>
        <source>Stopped. Choose the capture again to compare with it.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Angehalten. Wählen Sie die Messung noch einmal, um sie zu vergleichen.</translation>
    </message>
    <message>
        <source>The arm did not move in both records: align them by hand, or choose two sweeps.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Der Hebel hat sich nicht in beiden Aufzeichnungen bewegt: von Hand ausrichten oder zwei Durchläufe wählen.</translation>
    </message>
    <message>
        <source>Both arms first move at the same place: nothing was moved.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Beide Hebel bewegen sich schon an derselben Stelle los: Es wurde nichts verschoben.</translation>
    </message>
    <message>
        <source>This capture names neither part number nor profile, so it is known good for no sensor.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Diese Messung nennt weder Teilenummer noch Profil und kann daher für keinen Sensor als guter Sensor gelten.</translation>
    </message>
    <message>
        <source>Kept as known good: {title}.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Als guten Sensor gemerkt: {title}.</translation>
    </message>
    <message>
        <source>No capture is kept as known good for this sensor. Open one, and keep it as such.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Für diesen Sensor ist noch keine Messung eines guten Sensors gemerkt. Öffnen Sie eine und merken Sie sie als guten Sensor.</translation>
    </message>
    <message>
        <source>Both captures are of one and the same sensor position, so neither is mirrored: that is for a sensor that is mounted the other way round, as on the other side of the axle.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Beide Messungen sind vom selben Einbauort, darum wird keine gespiegelt: Das ist für einen Sensor, der andersherum eingebaut ist, wie auf der anderen Seite der Achse.</translation>
    </message>
    <message>
        <source>as its review says</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>wie die Auswertung sagt</translation>
    </message>
    <message>
        <source>Both captures are open; what differs is said once they are examined.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Beide Messungen sind geöffnet; was sich unterscheidet, steht hier, sobald sie ausgewertet sind.</translation>
    </message>
    <message>
        <source>Open a second capture to see what differs.</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>Öffnen Sie eine zweite Messung, um zu sehen, was sich unterscheidet.</translation>
    </message>
    <message>
        <source>{doing}… {share} %</source>
        <extracomment>app/compare/desk.py</extracomment>
        <translation>{doing}… {share} %</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>How the two belong together</source>
        <extracomment>app/compare/page.py</extracomment>
        <translation>Wie die beiden zusammengehören</translation>
    </message>
    <message>
        <source>How the two belong together; it decides the words alone</source>
        <extracomment>app/compare/page.py</extracomment>
        <translation>Wie die beiden zusammengehören; davon hängen nur die Worte ab</translation>
    </message>
    <message>
        <source>Before and after</source>
        <extracomment>app/compare/page.py</extracomment>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Left and right</source>
        <extracomment>app/compare/page.py</extracomment>
        <translation>Links und rechts</translation>
    </message>
    <message>
        <source>Known good and this one</source>
        <extracomment>app/compare/page.py</extracomment>
        <translation>Guter Sensor und dieser</translation>
    </message>
    <message>
        <source>Two different sensors</source>
        <extracomment>app/compare/page.py</extracomment>
        <translation>Zwei verschiedene Sensoren</translation>
    </message>
    <message>
        <source>Compare</source>
        <extracomment>app/compare/page.py</extracomment>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Mirror</source>
        <extracomment>app/compare/page.py</extracomment>
        <translation>Spiegeln</translation>
    </message>
</context>
<context>
    <name>CompareSide</name>
    <message>
        <source>{name} is no capture. Import it first, then compare with what came of it.</source>
        <extracomment>app/compare/side.py</extracomment>
        <translation>{name} ist keine Messung. Importieren Sie die Datei zuerst und vergleichen Sie dann mit dem, was daraus wurde.</translation>
    </message>
    <message>
        <source>Reading the review of {name}</source>
        <extracomment>app/compare/side.py</extracomment>
        <translation>Auswertung von {name} lesen</translation>
    </message>
</context>
<context>
    <name>ComparisonMaker</name>
    <message>
        <source>Comparing</source>
        <extracomment>app/compare/maker.py</extracomment>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Comparing left and right</source>
        <extracomment>app/compare/maker.py</extracomment>
        <translation>Links und rechts vergleichen</translation>
    </message>
    <message>
        <source>Left against right</source>
        <extracomment>app/compare/maker.py</extracomment>
        <translation>Links gegen rechts</translation>
    </message>
</context>
<context>
    <name>ControlUnitStrip</name>
    <message>
        <source>Control unit</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>Steuergerät</translation>
    </message>
    <message>
        <source>Control unit: which fault would have been stored, and when</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>Steuergerät: welcher Fehler gespeichert worden wäre, und wann</translation>
    </message>
    <message>
        <source>Running the record through a control unit.</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>Die Aufzeichnung geht durch ein Steuergerät.</translation>
    </message>
    <message>
        <source>This record holds no signal that a control unit could judge.</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>Diese Aufzeichnung hat kein Signal, das ein Steuergerät beurteilen könnte.</translation>
    </message>
    <message>
        <source>The other side was not recorded here. What a sound sensor would read that moves as this one does stands in for it.</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>Die andere Seite wurde hier nicht aufgezeichnet. An ihrer Stelle steht, was ein fehlerfreier Sensor läse, der sich bewegt wie dieser.</translation>
    </message>
    <message>
        <source>no code would have been stored here</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>hier wäre kein Code gespeichert worden</translation>
    </message>
    <message>
        <source>no code would have been stored in this record</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>in dieser Aufzeichnung wäre kein Code gespeichert worden</translation>
    </message>
    <message>
        <source>code stored at {time}: {rule}</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>Code gespeichert bei {time}: {rule}</translation>
    </message>
    <message>
        <source>; it sees that the sides disagree, not which is wrong, and names both corners</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>; es sieht, dass die Seiten nicht übereinstimmen, nicht welche falsch ist, und nennt beide Ecken</translation>
    </message>
    <message>
        <source> (other side modelled)</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation> (andere Seite gerechnet)</translation>
    </message>
</context>
<context>
    <name>CornersView</name>
    <message>
        <source>Left against right</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Links gegen rechts</translation>
    </message>
    <message>
        <source>Left against right: how far two corners disagree over time</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Links gegen rechts: wie weit zwei Ecken über die Zeit auseinanderliegen</translation>
    </message>
    <message>
        <source>Limit of the difference</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Grenze des Unterschieds</translation>
    </message>
    <message>
        <source>Time before the code sets</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Zeit, bis der Code gesetzt wird</translation>
    </message>
    <message>
        <source>Difference that counts as level</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Unterschied, der als waagerecht gilt</translation>
    </message>
    <message>
        <source>limit</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>for</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>für</translation>
    </message>
    <message>
        <source>level</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Null</translation>
    </message>
    <message>
        <source>Two corners over one drive or one sweep are set against each other here.</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Zwei Ecken über eine Fahrt oder einen Durchlauf werden hier einander gegenübergestellt.</translation>
    </message>
    <message>
        <source>set by hand</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>von Hand gesetzt</translation>
    </message>
    <message>
        <source>Rule: {source}.</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Regel: {source}.</translation>
    </message>
    <message>
        <source>Difference</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Both corners over time, and their difference</source>
        <extracomment>app/views/corners.py</extracomment>
        <translation>Beide Ecken über die Zeit und ihr Unterschied</translation>
    </message>
</context>
<context>
    <name>DecisionDesk</name>
    <message>
        <source>yours</source>
        <extracomment>app/review/decision_desk.py</extracomment>
        <translation>Ihre</translation>
    </message>
</context>
<context>
    <name>Details</name>
    <message>
        <source>&amp;In detail</source>
        <extracomment>app/why/telling.py</extracomment>
        <translation>&amp;Im Einzelnen</translation>
    </message>
    <message>
        <source>The numbers, the rules, and what they rest on</source>
        <extracomment>app/why/telling.py</extracomment>
        <translation>Die Zahlen, die Regeln und worauf sie beruhen</translation>
    </message>
    <message>
        <source>Why it comes and goes, in detail</source>
        <extracomment>app/why/telling.py</extracomment>
        <translation>Warum es kommt und geht, im Einzelnen</translation>
    </message>
    <message>
        <source>The band, and this height</source>
        <extracomment>app/why/telling.py</extracomment>
        <translation>Die Zone und diese Höhe</translation>
    </message>
    <message>
        <source>This road</source>
        <extracomment>app/why/telling.py</extracomment>
        <translation>Diese Straße</translation>
    </message>
    <message>
        <source>The control unit</source>
        <extracomment>app/why/telling.py</extracomment>
        <translation>Das Steuergerät</translation>
    </message>
    <message>
        <source>From a road record</source>
        <extracomment>app/why/telling.py</extracomment>
        <translation>Aus einer Fahrtaufzeichnung</translation>
    </message>
    <message>
        <source>What it rests on</source>
        <extracomment>app/why/telling.py</extracomment>
        <translation>Worauf es beruht</translation>
    </message>
</context>
<context>
    <name>DriveForm</name>
    <message>
        <source>Road</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>Probefahrt</translation>
    </message>
    <message>
        <source>Speed</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>Tempo</translation>
    </message>
    <message>
        <source> km/h</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation> km/h</translation>
    </message>
    <message>
        <source>Length of the drive</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>Länge der Fahrt</translation>
    </message>
    <message>
        <source> min</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation> min</translation>
    </message>
    <message>
        <source>Height that is told about</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>Höhe, von der erzählt wird</translation>
    </message>
    <message>
        <source>&amp;Road</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>&amp;Straße</translation>
    </message>
    <message>
        <source>&amp;Speed</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>Te&amp;mpo</translation>
    </message>
    <message>
        <source>&amp;Drive</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>&amp;Fahrt</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <source>The roads are the classes A to H of ISO 8608 in words of our own. The wheel moves as that of a middling car.</source>
        <extracomment>app/why/drive_form.py</extracomment>
        <translation>Die Straßen sind die Klassen A bis H der ISO 8608 in eigenen Worten. Das Rad bewegt sich wie das eines mittleren Autos.</translation>
    </message>
</context>
<context>
    <name>EventsView</name>
    <message>
        <source>Crossings and events</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>Überfahrten und Ereignisse</translation>
    </message>
    <message>
        <source>Events, crossings</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>Ereignisse, Überfahrten</translation>
    </message>
    <message>
        <source>Events</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Crossings</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>Überfahrten</translation>
    </message>
    <message>
        <source>Nothing to step to: no band, and no event that counts.</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>Nichts zum Durchgehen: keine Zone und kein Ereignis, das zählt.</translation>
    </message>
    <message>
        <source>Crossings of a worn band, or events, are listed here to step through.</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>Überfahrten einer verschlissenen Zone oder Ereignisse werden hier zum Durchgehen aufgeführt.</translation>
    </message>
    <message>
        <source>quiet</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>ruhig</translation>
    </message>
    <message>
        <source>breaks up</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>setzt aus</translation>
    </message>
    <message>
        <source>worst {reading}</source>
        <extracomment>app/views/events.py</extracomment>
        <translation>stärkste {reading}</translation>
    </message>
</context>
<context>
    <name>EvidenceView</name>
    <message>
        <source>Evidence</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Nachweise</translation>
    </message>
    <message>
        <source>Evidence: verdict and what it stands on</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Nachweise: der Befund, und worauf er beruht</translation>
    </message>
    <message>
        <source>The capture was not examined to the end. Press F5 to examine it again.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Die Messung wurde nicht zu Ende ausgewertet. Mit F5 noch einmal auswerten.</translation>
    </message>
    <message>
        <source>The capture is being examined.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Die Messung wird ausgewertet.</translation>
    </message>
    <message>
        <source>Open a capture to learn which band of travel is worn, how sure that is, and why.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Eine Messung öffnen, um zu erfahren, welche Zone des Wegs verschlissen ist, wie sicher das ist und warum.</translation>
    </message>
    <message>
        <source>You dismissed the band at {places}. The verdict is the program's.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Sie haben die Zone bei {places} abgelehnt. Das Urteil ist das des Programms.</translation>
    </message>
    <message>
        <source>What speaks against the verdict</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Was gegen den Befund spricht</translation>
    </message>
    <message>
        <source>Possible: {causes}.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Möglich: {causes}.</translation>
    </message>
    <message>
        <source>What it stands on</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Worauf er beruht</translation>
    </message>
    <message>
        <source>Readings</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Next: {step}</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Als Nächstes: {step}</translation>
    </message>
    <message>
        <source>{state}; seen in: {records}</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>{state}; zu sehen in: {records}</translation>
    </message>
    <message>
        <source>Press to go there, and again for the next.</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Klick: dorthin; noch einmal: zur nächsten.</translation>
    </message>
    <message>
        <source>What to capture next</source>
        <extracomment>app/views/evidence.py</extracomment>
        <translation>Was als Nächstes zu messen ist</translation>
    </message>
</context>
<context>
    <name>ExportDesk</name>
    <message>
        <source>Export samples</source>
        <extracomment>app/exporting/desk.py</extracomment>
        <translation>Messwerte exportieren</translation>
    </message>
    <message>
        <source>Export the findings</source>
        <extracomment>app/exporting/desk.py</extracomment>
        <translation>Befunde exportieren</translation>
    </message>
    <message>
        <source>Exporting {name}</source>
        <extracomment>app/exporting/desk.py</extracomment>
        <translation>{name} wird exportiert</translation>
    </message>
    <message>
        <source>Save a picture</source>
        <extracomment>app/exporting/desk.py</extracomment>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Saved as {name}.</source>
        <extracomment>app/exporting/desk.py</extracomment>
        <translation>Gespeichert als {name}.</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <extracomment>app/exporting/desk.py</extracomment>
        <translation>Abgebrochen; es wurde nichts geschrieben.</translation>
    </message>
</context>
<context>
    <name>ExposurePicture</name>
    <message>
        <source>Band and wheel travel at each height</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>Zone und Radhub bei jeder Höhe</translation>
    </message>
    <message>
        <source>band</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>Zone</translation>
    </message>
    <message>
        <source>% of travel</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>% des Wegs</translation>
    </message>
    <message>
        <source>mm of wheel travel from the normal height, up to the right</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>mm Radhub ab Normalhöhe, nach rechts höher</translation>
    </message>
    <message>
        <source>in the band · code</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>in der Zone · Code</translation>
    </message>
    <message>
        <source>stands outside</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>steht außerhalb</translation>
    </message>
    <message>
        <source>not in it</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>nicht darin</translation>
    </message>
    <message>
        <source>stands in it</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>steht darin</translation>
    </message>
    <message>
        <source>no code</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>kein Code</translation>
    </message>
    <message>
        <source>code: {chance}</source>
        <extracomment>app/why/picture.py</extracomment>
        <translation>Code: {chance}</translation>
    </message>
</context>
<context>
    <name>FirstMark</name>
    <message>
        <source>Drag moves it, {rename} names it, {delete} deletes it</source>
        <extracomment>app/review/first_mark.py</extracomment>
        <translation>Ziehen verschiebt, {rename} benennt, {delete} löscht</translation>
    </message>
</context>
<context>
    <name>HeightsForm</name>
    <message>
        <source> %</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation> %</translation>
    </message>
    <message>
        <source> mm</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation> mm</translation>
    </message>
    <message>
        <source>How travel becomes millimetres</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Wie aus Weg Millimeter werden</translation>
    </message>
    <message>
        <source>two points</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>zwei Punkte</translation>
    </message>
    <message>
        <source>arm</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Hebel</translation>
    </message>
    <message>
        <source>Which way travel goes as the body rises</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Wohin der Weg geht, wenn der Aufbau steigt</translation>
    </message>
    <message>
        <source>travel rises</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Weg steigt</translation>
    </message>
    <message>
        <source>travel falls</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Weg fällt</translation>
    </message>
    <message>
        <source>First point, travel</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Erster Punkt, Weg</translation>
    </message>
    <message>
        <source>First point, height</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Erster Punkt, Höhe</translation>
    </message>
    <message>
        <source>Second point, travel</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Zweiter Punkt, Weg</translation>
    </message>
    <message>
        <source>Second point, height</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Zweiter Punkt, Höhe</translation>
    </message>
    <message>
        <source>Length of the arm</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Länge des Hebels</translation>
    </message>
    <message>
        <source>Angle of the whole travel</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Winkel des ganzen Wegs</translation>
    </message>
    <message>
        <source>°</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>°</translation>
    </message>
    <message>
        <source>Travel with the arm level</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Weg bei waagrechtem Hebel</translation>
    </message>
    <message>
        <source>Wheel for 1 mm of the arm</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Rad je 1 mm am Hebel</translation>
    </message>
    <message>
        <source>Travel at the normal height</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Weg bei Normalhöhe</translation>
    </message>
    <message>
        <source>Millimetres by</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Millimeter durch</translation>
    </message>
    <message>
        <source>Body rises:</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Aufbau steigt:</translation>
    </message>
    <message>
        <source>First point</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Erster Punkt</translation>
    </message>
    <message>
        <source>Second point</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Zweiter Punkt</translation>
    </message>
    <message>
        <source>Arm</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Hebel</translation>
    </message>
    <message>
        <source>Whole angle</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Ganzer Winkel</translation>
    </message>
    <message>
        <source>Level at</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Waagrecht bei</translation>
    </message>
    <message>
        <source>Wheel for 1 mm</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Rad je 1 mm</translation>
    </message>
    <message>
        <source>Normal at</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Normal bei</translation>
    </message>
    <message>
        <source>Heights are counted from the normal one, up positive. Compress the suspension only by the maker's method, on stands rated for the vehicle.</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Höhen zählen von der Normalhöhe aus, nach oben positiv. Die Federung nur nach der Methode des Herstellers zusammendrücken, auf Böcken, die für das Fahrzeug zugelassen sind.</translation>
    </message>
    <message>
        <source>Heights</source>
        <extracomment>app/why/heights_form.py</extracomment>
        <translation>Höhen</translation>
    </message>
</context>
<context>
    <name>HintBar</name>
    <message>
        <source>First steps</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation>Erste Schritte</translation>
    </message>
    <message>
        <source>Close the first steps</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation>Die ersten Schritte schließen</translation>
    </message>
    <message>
        <source>Press C: Trace shows the worst crossing. Press M: it marks the deepest place and measures the drop. Accept confirms the band.</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation>C zeigt im Verlauf die stärkste Überfahrt, M markiert die tiefste Stelle und misst den Einbruch. Annehmen bestätigt die Zone.</translation>
    </message>
    <message>
        <source>N goes on to the next crossing, Space lets the arm run. Then drop a capture of your own here.</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation>N geht zur nächsten Überfahrt, die Leertaste lässt den Hebel laufen. Danach eine eigene Messung hier ablegen.</translation>
    </message>
    <message>
        <source>Point in Trace and press M: it marks that moment and reads it.</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation>Im Verlauf auf eine Stelle zeigen und M drücken: Der Zeitpunkt wird markiert und abgelesen.</translation>
    </message>
    <message>
        <source>Space lets the arm run. Then drop a capture of your own here.</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation>Die Leertaste lässt den Hebel laufen. Danach eine eigene Messung hier ablegen.</translation>
    </message>
    <message>
        <source>This is a sample. At the right: the verdict, how sure it is, and what it stands on.</source>
        <extracomment>app/views/hint_bar.py</extracomment>
        <translation>Dies ist ein Beispiel. Rechts steht der Befund, wie sicher er ist und worauf er beruht.</translation>
    </message>
</context>
<context>
    <name>ImportDesk</name>
    <message>
        <source>Looking for files</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Dateien werden gesucht</translation>
    </message>
    <message>
        <source>Import files of a recorder</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Dateien eines Rekorders importieren</translation>
    </message>
    <message>
        <source>Import all files of a folder</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Alle Dateien eines Ordners importieren</translation>
    </message>
    <message>
        <source>Add files to this capture</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Dieser Messung Dateien hinzufügen</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Looking at {name}</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>{name} wird angesehen</translation>
    </message>
    <message>
        <source>Looking for a place</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Ein Ort wird gesucht</translation>
    </message>
    <message>
        <source>move a file</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Datei verschieben</translation>
    </message>
    <message>
        <source>remove a file</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Datei entfernen</translation>
    </message>
    <message>
        <source>guess anew</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Neu vermuten</translation>
    </message>
    <message>
        <source>Save the capture as</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Messung speichern unter</translation>
    </message>
    <message>
        <source>Captures ({patterns})</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Messungen ({patterns})</translation>
    </message>
    <message>
        <source>choose the place</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Ort wählen</translation>
    </message>
    <message>
        <source>Importing {name}</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>{name} wird importiert</translation>
    </message>
    <message>
        <source>Keeping what was chosen for the next file</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Merken der Auswahl für die nächste Datei</translation>
    </message>
    <message>
        <source>Importing</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Importieren</translation>
    </message>
    <message>
        <source>Stopped; nothing was written.</source>
        <extracomment>app/importing/desk.py</extracomment>
        <translation>Abgebrochen; es wurde nichts geschrieben.</translation>
    </message>
</context>
<context>
    <name>ImportEdits</name>
    <message>
        <source>change how it is read</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Lesart ändern</translation>
    </message>
    <message>
        <source>change a column</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Spalte ändern</translation>
    </message>
    <message>
        <source>change the title</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Titel ändern</translation>
    </message>
    <message>
        <source>keep it for the next file</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Merken für die nächste Datei</translation>
    </message>
    <message>
        <source>Say at the right how far the rows lie apart instead.</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Geben Sie stattdessen rechts an, wie weit die Zeilen auseinanderliegen.</translation>
    </message>
    <message>
        <source>One column at least has to be a wire of the sensor.</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Mindestens eine Spalte muss eine Leitung des Sensors sein.</translation>
    </message>
    <message>
        <source>{text} is no number to multiply by; enter one such as 10 or 0.5.</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>{text} ist kein Faktor; geben Sie einen ein, etwa 10 oder 0,5.</translation>
    </message>
    <message>
        <source>{text} is no number of volts to add; enter one such as -5 or 0.5.</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>{text} ist keine Zahl von Volt zum Dazuzählen; geben Sie eine ein, etwa -5 oder 0,5.</translation>
    </message>
    <message>
        <source>change the step</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Schritt ändern</translation>
    </message>
    <message>
        <source>change the conditions</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Bedingungen ändern</translation>
    </message>
    <message>
        <source>change what is said of the capture</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>Angaben zur Messung ändern</translation>
    </message>
    <message>
        <source>{text} is no count of lines.</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>{text} ist keine Zeilenzahl.</translation>
    </message>
    <message>
        <source>{text} is no rate; enter hertz, such as 1000 or 10 kHz.</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>{text} ist keine Abtastrate; geben Sie Hertz ein, etwa 1000 oder 10 kHz.</translation>
    </message>
    <message>
        <source>{text} is no interval; enter seconds, such as 0.001 or 1 ms.</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>{text} ist kein Zeitabstand; geben Sie Sekunden ein, etwa 0,001 oder 1 ms.</translation>
    </message>
    <message>
        <source>{text} is no voltage; enter volts, such as 10.</source>
        <extracomment>app/importing/edits.py</extracomment>
        <translation>{text} ist keine Spannung; geben Sie Volt ein, etwa 10.</translation>
    </message>
</context>
<context>
    <name>KeysPage</name>
    <message>
        <source>Keys</source>
        <extracomment>app/views/keys_page.py</extracomment>
        <translation>Tasten</translation>
    </message>
</context>
<context>
    <name>LanguageMenu</name>
    <message>
        <source>Language</source>
        <extracomment>app/language_menu.py</extracomment>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <extracomment>app/language_menu.py</extracomment>
        <translation>Wie der Desktop</translation>
    </message>
</context>
<context>
    <name>MarkerCopies</name>
    <message>
        <source>CSV (*.csv)</source>
        <extracomment>app/review/marker_copies.py</extracomment>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>Save the markers</source>
        <extracomment>app/review/marker_copies.py</extracomment>
        <translation>Marken speichern</translation>
    </message>
    <message>
        <source>Saving the markers</source>
        <extracomment>app/review/marker_copies.py</extracomment>
        <translation>Marken speichern</translation>
    </message>
    <message>
        <source>Saved: {path}</source>
        <extracomment>app/review/marker_copies.py</extracomment>
        <translation>Gespeichert: {path}</translation>
    </message>
    <message>
        <source>{count} markers copied</source>
        <extracomment>app/review/marker_copies.py</extracomment>
        <translation>{count} Marken kopiert</translation>
    </message>
    <message>
        <source>{count} marker copied</source>
        <extracomment>app/review/marker_copies.py</extracomment>
        <translation>{count} Marke kopiert</translation>
    </message>
</context>
<context>
    <name>MarkerDesk</name>
    <message>
        <source>A marker stands there already: {name}</source>
        <extracomment>app/review/marker_desk.py</extracomment>
        <translation>Dort steht schon eine Marke: {name}</translation>
    </message>
</context>
<context>
    <name>MarkerReader</name>
    <message>
        <source>Reading the markers</source>
        <extracomment>app/review/marker_reader.py</extracomment>
        <translation>Marken ablesen</translation>
    </message>
</context>
<context>
    <name>MarkersModel</name>
    <message>
        <source>Marker</source>
        <extracomment>app/views/marker_tables.py</extracomment>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>app/views/marker_tables.py</extracomment>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Reads</source>
        <extracomment>app/views/marker_tables.py</extracomment>
        <translation>Messwert</translation>
    </message>
</context>
<context>
    <name>MarkersView</name>
    <message>
        <source>Markers</source>
        <extracomment>app/views/markers.py</extracomment>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Markers: what was marked, and what it reads</source>
        <extracomment>app/views/markers.py</extracomment>
        <translation>Marken: was markiert wurde, und was dort abzulesen ist</translation>
    </message>
    <message>
        <source>A note on this marker</source>
        <extracomment>app/views/markers.py</extracomment>
        <translation>Eine Notiz zu dieser Marke</translation>
    </message>
    <message>
        <source>Note on the chosen marker</source>
        <extracomment>app/views/markers.py</extracomment>
        <translation>Notiz zur gewählten Marke</translation>
    </message>
    <message>
        <source>M marks the moment at the pointer, S begins and ends a span, T a stretch of travel; or drag with Ctrl.</source>
        <extracomment>app/views/markers.py</extracomment>
        <translation>M markiert den Moment am Zeiger, S eine Spanne, T ein Wegstück; oder mit Strg ziehen.</translation>
    </message>
    <message>
        <source>Readings of the chosen marker</source>
        <extracomment>app/views/markers.py</extracomment>
        <translation>Messwerte der gewählten Marke</translation>
    </message>
</context>
<context>
    <name>NumbersView</name>
    <message>
        <source>Numbers</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>Numbers of both, with their difference</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Zahlen beider Seiten mit ihrem Unterschied</translation>
    </message>
    <message>
        <source>Open a second capture to see what differs.</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Öffnen Sie eine zweite Messung, um zu sehen, was sich unterscheidet.</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <source>Difference</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Beyond chance</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Mehr als Zufall</translation>
    </message>
    <message>
        <source>Band {travel}</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Zone {travel}</translation>
    </message>
    <message>
        <source>Counts of crossings, tested by {test}</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Anzahl der Überfahrten, geprüft mit: {test}</translation>
    </message>
    <message>
        <source>not taken</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>More than its uncertainty: {said}</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Mehr als seine Unsicherheit: {said}</translation>
    </message>
    <message>
        <source>worst seen</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>Extremwert</translation>
    </message>
    <message>
        <source>yes</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <extracomment>app/views/numbers_table.py</extracomment>
        <translation>nein</translation>
    </message>
</context>
<context>
    <name>OverviewView</name>
    <message>
        <source>Overview of the whole record</source>
        <extracomment>app/views/overview.py</extracomment>
        <translation>Überblick über die ganze Aufzeichnung</translation>
    </message>
    <message>
        <source>The whole record. Drag the clear window, or its edges; drag elsewhere for a new one.</source>
        <extracomment>app/views/overview.py</extracomment>
        <translation>Die ganze Aufzeichnung. Das helle Fenster oder seine Ränder ziehen; anderswo ziehen für ein neues.</translation>
    </message>
    <message>
        <source>{start} to {stop} of {length}</source>
        <extracomment>app/views/overview.py</extracomment>
        <translation>{start} bis {stop} von {length}</translation>
    </message>
    <message>
        <source>Whole record</source>
        <extracomment>app/views/overview.py</extracomment>
        <translation>Gesamt</translation>
    </message>
</context>
<context>
    <name>PointerReader</name>
    <message>
        <source>Reading at the pointer</source>
        <extracomment>app/review/pointer_reader.py</extracomment>
        <translation>Messwerte am Zeiger</translation>
    </message>
</context>
<context>
    <name>ProblemBar</name>
    <message>
        <source>Problem</source>
        <extracomment>app/views/problem_bar.py</extracomment>
        <translation>Problem</translation>
    </message>
    <message>
        <source>Close this message</source>
        <extracomment>app/views/problem_bar.py</extracomment>
        <translation>Diese Meldung schließen</translation>
    </message>
</context>
<context>
    <name>ProofForm</name>
    <message>
        <source> km</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation> km</translation>
    </message>
    <message>
        <source>Faults before the repair</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>Fehler vor der Reparatur</translation>
    </message>
    <message>
        <source>Kilometres before the repair</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>Kilometer vor der Reparatur</translation>
    </message>
    <message>
        <source>not entered</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>nicht eingetragen</translation>
    </message>
    <message>
        <source>Driven without a fault since</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>Seither ohne Fehler gefahren</translation>
    </message>
    <message>
        <source>Road test without a fault</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>Probefahrt ohne Fehler</translation>
    </message>
    <message>
        <source>&amp;Faults before</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>&amp;Fehler vorher</translation>
    </message>
    <message>
        <source>&amp;in</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>&amp;in</translation>
    </message>
    <message>
        <source>&amp;Driven since</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>&amp;Seither gefahren</translation>
    </message>
    <message>
        <source>&amp;Count road records…</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>Fahrt-Aufzeichnungen &amp;zählen …</translation>
    </message>
    <message>
        <source>Choose captures after the repair: their road records without a fault fill this in</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>Messungen nach der Reparatur wählen: deren Fahrt-Aufzeichnungen ohne Fehler füllen das Feld</translation>
    </message>
    <message>
        <source>Road records that were counted</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>Gezählte Fahrt-Aufzeichnungen</translation>
    </message>
    <message>
        <source>Taken that faults come at random over the distance. Drive at the same height, load and surface as before.</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>Angenommen ist, dass Fehler zufällig über die Strecke kommen. Mit gleicher Höhe, Last und Fahrbahn fahren wie zuvor.</translation>
    </message>
    <message>
        <source>{capture}: {record}</source>
        <extracomment>app/why/proof_form.py</extracomment>
        <translation>{capture}: {record}</translation>
    </message>
</context>
<context>
    <name>Readout</name>
    <message>
        <source>Reading at the pointer</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation>Messwerte am Zeiger</translation>
    </message>
    <message>
        <source>not tested</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>worst break-up {worst}</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation>größter Aussetzer {worst}</translation>
    </message>
    <message>
        <source>{travel} of travel, second signal</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation>{travel} des Wegs, Signal 2</translation>
    </message>
    <message>
        <source>{travel} of travel</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation>{travel} des Wegs</translation>
    </message>
    <message>
        <source>{height} from normal height</source>
        <extracomment>app/views/readout.py</extracomment>
        <translation>{height} ab Normalhöhe</translation>
    </message>
</context>
<context>
    <name>RecordForm</name>
    <message>
        <source>What is said of the record</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Was über die Aufzeichnung gesagt ist</translation>
    </message>
    <message>
        <source>Edit: {record}</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Bearbeiten: {record}</translation>
    </message>
    <message>
        <source>Drop</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Aufheben</translation>
    </message>
    <message>
        <source>Let this span be as the rest of its record again</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Diese Spanne wieder sein lassen wie den Rest ihrer Aufzeichnung</translation>
    </message>
    <message>
        <source>Drop the span {span}</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Die Spanne {span} aufheben</translation>
    </message>
    <message>
        <source>not told</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>yes</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>nein</translation>
    </message>
    <message>
        <source>Step</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Plugged in</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Gesteckt</translation>
    </message>
    <message>
        <source>Ignition</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Zündung</translation>
    </message>
    <message>
        <source>Engine</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Loads</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Lasten</translation>
    </message>
    <message>
        <source>Moved</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Bewegt</translation>
    </message>
    <message>
        <source>°C</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>°C</translation>
    </message>
    <message>
        <source>Driven, km</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Gefahren, km</translation>
    </message>
    <message>
        <source>Speed, km/h</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Tempo, km/h</translation>
    </message>
    <message>
        <source>Touches</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Liegt an</translation>
    </message>
    <message>
        <source>Probe</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Messort</translation>
    </message>
    <message>
        <source>Against</source>
        <extracomment>app/views/record_form.py</extracomment>
        <translation>Gegen</translation>
    </message>
</context>
<context>
    <name>RecordsView</name>
    <message>
        <source>Records</source>
        <extracomment>app/views/records.py</extracomment>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>Records by step, with their outcome</source>
        <extracomment>app/views/records.py</extracomment>
        <translation>Aufzeichnungen nach Schritten, mit Ergebnis</translation>
    </message>
    <message>
        <source>The steps of a capture are ticked off here.</source>
        <extracomment>app/views/records.py</extracomment>
        <translation>Hier werden die Schritte abgehakt.</translation>
    </message>
    <message>
        <source>Span</source>
        <extracomment>app/views/records.py</extracomment>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>not captured</source>
        <extracomment>app/views/records.py</extracomment>
        <translation>nicht gemessen</translation>
    </message>
</context>
<context>
    <name>ReportDesk</name>
    <message>
        <source>Report</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>The report appears here once a capture is open and examined.</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Der Bericht erscheint hier, sobald eine Messung geöffnet und ausgewertet ist.</translation>
    </message>
    <message>
        <source>Report: {name}</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Bericht: {name}</translation>
    </message>
    <message>
        <source>Making the report</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Bericht erstellen</translation>
    </message>
    <message>
        <source>Captures ({patterns});;All files (*)</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Messungen ({patterns});;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Set a capture beside it</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Eine Messung danebenstellen</translation>
    </message>
    <message>
        <source>Pictures ({patterns})</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Bilder ({patterns})</translation>
    </message>
    <message>
        <source>Add photos</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Fotos hinzufügen</translation>
    </message>
    <message>
        <source>Reports (*{suffix})</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Berichte (*{suffix})</translation>
    </message>
    <message>
        <source>Save the report</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Bericht speichern</translation>
    </message>
    <message>
        <source>Saving the report</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Bericht speichern</translation>
    </message>
    <message>
        <source>Saved: {path}</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Gespeichert: {path}</translation>
    </message>
    <message>
        <source>The printer cannot be used; save the report as PDF and print that instead.</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Der Drucker lässt sich nicht nutzen; den Bericht als PDF speichern und dieses drucken.</translation>
    </message>
</context>
<context>
    <name>ReviewDesk</name>
    <message>
        <source>Undo</source>
        <extracomment>app/review/desk.py</extracomment>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <extracomment>app/review/desk.py</extracomment>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Reviews (*.json)</source>
        <extracomment>app/review/desk.py</extracomment>
        <translation>Auswertungen (*.json)</translation>
    </message>
    <message>
        <source>Save the review elsewhere</source>
        <extracomment>app/review/desk.py</extracomment>
        <translation>Auswertung woanders speichern</translation>
    </message>
    <message>
        <source>End the stretch of travel here</source>
        <extracomment>app/review/desk.py</extracomment>
        <translation>Das Wegstück hier beenden</translation>
    </message>
    <message>
        <source>Mark this place</source>
        <extracomment>app/review/desk.py</extracomment>
        <translation>Diese Stelle markieren</translation>
    </message>
    <message>
        <source>Begin a stretch of travel here</source>
        <extracomment>app/review/desk.py</extracomment>
        <translation>Ein Wegstück hier beginnen</translation>
    </message>
</context>
<context>
    <name>ReviewFile</name>
    <message>
        <source>Reading the review of {name}</source>
        <extracomment>app/review/file.py</extracomment>
        <translation>Auswertung von {name} lesen</translation>
    </message>
    <message>
        <source>Another review of this capture is kept on this PC: {path}. It does not go on from what lies beside the capture now. It is left as it is; to see it, put it in the place of that one.</source>
        <extracomment>app/review/file.py</extracomment>
        <translation>Auf diesem PC liegt noch eine Auswertung dieser Messung: {path}. Sie setzt nicht fort, was jetzt neben der Messung liegt. Sie bleibt, wie sie ist; um sie zu sehen, legen Sie sie an deren Stelle.</translation>
    </message>
    <message>
        <source>This capture is open in another window too. What is saved there is told here, and nothing is overwritten.</source>
        <extracomment>app/review/file.py</extracomment>
        <translation>Diese Messung ist auch in einem anderen Fenster geöffnet. Was dort gespeichert wird, wird hier gemeldet; nichts wird überschrieben.</translation>
    </message>
    <message>
        <source>Looking at the folder</source>
        <extracomment>app/review/file.py</extracomment>
        <translation>Ordner ansehen</translation>
    </message>
    <message>
        <source>{name} was changed or taken away since it was opened. What is shown is what was opened; open it again to see it as it is now.</source>
        <extracomment>app/review/file.py</extracomment>
        <translation>{name} wurde geändert oder entfernt, seit die Datei geöffnet wurde. Gezeigt wird, was geöffnet wurde; öffnen Sie sie noch einmal, um sie zu sehen, wie sie jetzt ist.</translation>
    </message>
</context>
<context>
    <name>ReviewKeeper</name>
    <message>
        <source>The review is still being read. Try again in a moment.</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Die Auswertung wird noch gelesen. Gleich noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The review could be saved nowhere and is in this window alone. “Save the review elsewhere” puts it where you say; doing the same once more gives it up.</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Die Auswertung ließ sich nirgends speichern und ist nur noch in diesem Fenster. „Auswertung woanders speichern“ legt sie dorthin, wo Sie wollen; noch einmal dasselbe gibt sie auf.</translation>
    </message>
    <message>
        <source>A copy of the review was saved: {path}</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Eine Kopie der Auswertung wurde gespeichert: {path}</translation>
    </message>
    <message>
        <source>Saved to {path} until the capture is closed; then the one beside it is read again</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Liegt unter {path}, bis die Messung geschlossen wird; danach gilt wieder die Auswertung neben ihr</translation>
    </message>
    <message>
        <source>Looking at the review</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Auswertung ansehen</translation>
    </message>
    <message>
        <source>Saving the review</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Auswertung speichern</translation>
    </message>
    <message>
        <source>The review cannot be saved beside the capture. It is kept on this PC, in {file}, and found again there; “Save the review elsewhere” puts it where you say.</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Die Auswertung lässt sich nicht neben der Messung speichern. Sie wird auf diesem PC aufgehoben, in {file}, und dort wiedergefunden; „Auswertung woanders speichern“ legt sie dorthin, wo Sie wollen.</translation>
    </message>
    <message>
        <source>Until {path} can be written, the review is kept in memory.</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Bis {path} geschrieben werden kann, bleibt die Auswertung im Speicher.</translation>
    </message>
    <message>
        <source>What lay in the place of this review was kept as {name}</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Was an der Stelle dieser Auswertung lag, liegt jetzt unter {name}</translation>
    </message>
    <message>
        <source>This review was kept as {name}</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>Diese Auswertung liegt jetzt unter {name}</translation>
    </message>
</context>
<context>
    <name>ReviewPage</name>
    <message>
        <source>Last captures</source>
        <extracomment>app/review/page.py</extracomment>
        <translation>Letzte Messungen</translation>
    </message>
    <message>
        <source>Open one of the last captures, or a sample</source>
        <extracomment>app/review/page.py</extracomment>
        <translation>Eine der letzten Messungen oder ein Beispiel öffnen</translation>
    </message>
    <message>
        <source>Last captures and samples</source>
        <extracomment>app/review/page.py</extracomment>
        <translation>Letzte Messungen und Beispiele</translation>
    </message>
    <message>
        <source>Control unit</source>
        <extracomment>app/review/page.py</extracomment>
        <translation>Steuergerät</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>Opening {name}</source>
        <extracomment>app/session.py</extracomment>
        <translation>{name} öffnen</translation>
    </message>
    <message>
        <source>Examining the capture</source>
        <extracomment>app/session.py</extracomment>
        <translation>Messung auswerten</translation>
    </message>
    <message>
        <source>Checking the fingerprint</source>
        <extracomment>app/session.py</extracomment>
        <translation>Fingerabdruck prüfen</translation>
    </message>
</context>
<context>
    <name>SideMenu</name>
    <message>
        <source>The capture in Review</source>
        <extracomment>app/compare/menu.py</extracomment>
        <translation>Die Messung der Auswertung</translation>
    </message>
    <message>
        <source>The known good one</source>
        <extracomment>app/compare/menu.py</extracomment>
        <translation>Die des guten Sensors</translation>
    </message>
    <message>
        <source>Open…</source>
        <extracomment>app/compare/menu.py</extracomment>
        <translation>Öffnen…</translation>
    </message>
</context>
<context>
    <name>SideTools</name>
    <message>
        <source>Capture</source>
        <extracomment>app/views/side_tools.py</extracomment>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Choose the capture of this side</source>
        <extracomment>app/views/side_tools.py</extracomment>
        <translation>Die Messung dieser Seite wählen</translation>
    </message>
    <message>
        <source>Capture of this side</source>
        <extracomment>app/views/side_tools.py</extracomment>
        <translation>Messung dieser Seite</translation>
    </message>
    <message>
        <source>Record of this side</source>
        <extracomment>app/views/side_tools.py</extracomment>
        <translation>Aufzeichnung dieser Seite</translation>
    </message>
    <message>
        <source>Track of this side</source>
        <extracomment>app/views/side_tools.py</extracomment>
        <translation>Bahn dieser Seite</translation>
    </message>
</context>
<context>
    <name>SpeedBox</name>
    <message>
        <source>How fast the arm runs (, and .); auto lets a brief crossing last about three seconds</source>
        <extracomment>app/review/speed_box.py</extracomment>
        <translation>Wie schnell der Hebel läuft (, und .); bei auto dauert eine kurze Überfahrt etwa drei Sekunden</translation>
    </message>
    <message>
        <source>Speed of the arm</source>
        <extracomment>app/review/speed_box.py</extracomment>
        <translation>Geschwindigkeit des Hebels</translation>
    </message>
</context>
<context>
    <name>SplitStrip</name>
    <message>
        <source>Proposed splitting</source>
        <extracomment>app/views/split_strip.py</extracomment>
        <translation>Vorgeschlagene Aufteilung</translation>
    </message>
    <message>
        <source>One probe went from wire to wire in this record. It was examined as: {spans}. Is that so?</source>
        <extracomment>app/views/split_strip.py</extracomment>
        <translation>Eine Prüfspitze ging in dieser Aufzeichnung von Leitung zu Leitung. Untersucht wurde sie als: {spans}. Stimmt das?</translation>
    </message>
    <message>
        <source>{role} ({step})</source>
        <extracomment>app/views/split_strip.py</extracomment>
        <translation>{role} ({step})</translation>
    </message>
</context>
<context>
    <name>SummaryStrip</name>
    <message>
        <source>What differs</source>
        <extracomment>app/compare/summary.py</extracomment>
        <translation>Was sich unterscheidet</translation>
    </message>
    <message>
        <source>Open a second capture to see what differs.</source>
        <extracomment>app/compare/summary.py</extracomment>
        <translation>Öffnen Sie eine zweite Messung, um zu sehen, was sich unterscheidet.</translation>
    </message>
</context>
<context>
    <name>TraceView</name>
    <message>
        <source>Trace</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Trace: voltage over time</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation>Verlauf: Spannung über der Zeit</translation>
    </message>
    <message>
        <source>Voltages over time</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation>Spannungen über der Zeit</translation>
    </message>
    <message>
        <source>Open a capture, or drop one here, to see its voltages.</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation>Eine Messung öffnen oder hier ablegen, um ihre Spannungen zu sehen.</translation>
    </message>
    <message>
        <source>This record holds no samples. Choose another record on the left.</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation>Diese Aufzeichnung enthält keine Messwerte. Links eine andere Aufzeichnung wählen.</translation>
    </message>
    <message>
        <source>Drawing the record</source>
        <extracomment>app/views/trace.py</extracomment>
        <translation>Aufzeichnung zeichnen</translation>
    </message>
</context>
<context>
    <name>TrackPairView</name>
    <message>
        <source>Sensor track</source>
        <extracomment>app/views/track_pair.py</extracomment>
        <translation>Sensorbahn</translation>
    </message>
    <message>
        <source>Sensor track of both: break-up over travel</source>
        <extracomment>app/views/track_pair.py</extracomment>
        <translation>Sensorbahn beider: Aussetzer über dem Weg</translation>
    </message>
    <message>
        <source>Where either sensor breaks up along its travel is drawn here.</source>
        <extracomment>app/views/track_pair.py</extracomment>
        <translation>Hier wird gezeichnet, wo einer der Sensoren auf seinem Weg aussetzt.</translation>
    </message>
    <message>
        <source>No sweep to show on either side.</source>
        <extracomment>app/views/track_pair.py</extracomment>
        <translation>Auf keiner Seite gibt es einen Durchlauf zu zeigen.</translation>
    </message>
    <message>
        <source>break-up in %</source>
        <extracomment>app/views/track_pair.py</extracomment>
        <translation>Aussetzer in %</translation>
    </message>
    <message>
        <source>Break-up over travel of both sides</source>
        <extracomment>app/views/track_pair.py</extracomment>
        <translation>Aussetzer über dem Weg beider Seiten</translation>
    </message>
    <message>
        <source>{name}: {travel} · {words}</source>
        <extracomment>app/views/track_pair.py</extracomment>
        <translation>{name}: {travel} · {words}</translation>
    </message>
</context>
<context>
    <name>TrackView</name>
    <message>
        <source>Sensor track</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Sensorbahn</translation>
    </message>
    <message>
        <source>Sensor track: break-up over travel</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Sensorbahn: Aussetzer über dem Weg</translation>
    </message>
    <message>
        <source>Track of the sensor</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Bahn des Sensors</translation>
    </message>
    <message>
        <source>Which track of the sensor is shown</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Welche Bahn des Sensors gezeigt wird</translation>
    </message>
    <message>
        <source>Where the sensor breaks up along its travel is drawn here.</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Wo der Sensor auf seinem Weg aussetzt, wird hier gezeichnet.</translation>
    </message>
    <message>
        <source>No sweep to show. Capture a slow sweep over the whole travel, a few times up and down.</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Kein Durchlauf zu zeigen. Einen langsamen Durchlauf über den ganzen Weg messen, einige Male auf und ab.</translation>
    </message>
    <message>
        <source>break-up in %</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Aussetzer in %</translation>
    </message>
    <message>
        <source>tested
≤ {count}×</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>geprüft
≤ {count}×</translation>
    </message>
    <message>
        <source> mm</source>
        <extracomment>app/views/track.py</extracomment>
        <translation> mm</translation>
    </message>
    <message>
        <source>Break-up over travel</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Aussetzer über dem Weg</translation>
    </message>
    <message>
        <source>yours {span}</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>Ihre {span}</translation>
    </message>
    <message>
        <source>found {span}</source>
        <extracomment>app/views/track.py</extracomment>
        <translation>gefunden {span}</translation>
    </message>
</context>
<context>
    <name>UnitForm</name>
    <message>
        <source> V</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation> V</translation>
    </message>
    <message>
        <source> ms</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation> ms</translation>
    </message>
    <message>
        <source>Reads every</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Liest alle</translation>
    </message>
    <message>
        <source>Out of range</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>Below</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Unter</translation>
    </message>
    <message>
        <source>Above</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Über</translation>
    </message>
    <message>
        <source>Time before the code sets</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Zeit bis zum Code</translation>
    </message>
    <message>
        <source>without a break</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>ohne Unterbrechung</translation>
    </message>
    <message>
        <source>up/down counter</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Auf/Ab-Zähler</translation>
    </message>
    <message>
        <source>Without a break for</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Ohne Unterbrechung für</translation>
    </message>
    <message>
        <source>Up for a bad reading</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Auf bei schlechtem Messwert</translation>
    </message>
    <message>
        <source>Down for a good reading</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Ab bei gutem Messwert</translation>
    </message>
    <message>
        <source>Code at</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Code bei</translation>
    </message>
    <message>
        <source>Sides disagree</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Seiten weichen ab</translation>
    </message>
    <message>
        <source>By more than</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Um mehr als</translation>
    </message>
    <message>
        <source>For</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Für</translation>
    </message>
    <message>
        <source>Changes too fast</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Ändert sich zu schnell</translation>
    </message>
    <message>
        <source>Faster than</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Schneller als</translation>
    </message>
    <message>
        <source> V/s</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation> V/s</translation>
    </message>
    <message>
        <source>Stored</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>for</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>für</translation>
    </message>
    <message>
        <source>Bad: up</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Schlecht: auf</translation>
    </message>
    <message>
        <source>Good: down</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Gut: ab</translation>
    </message>
    <message>
        <source>Whose figures: {sources}</source>
        <extracomment>app/why/unit_form.py</extracomment>
        <translation>Wessen Zahlen: {sources}</translation>
    </message>
</context>
<context>
    <name>VerdictHead</name>
    <message>
        <source>Verdict</source>
        <extracomment>app/views/verdict_head.py</extracomment>
        <translation>Befund</translation>
    </message>
</context>
<context>
    <name>WatchDesk</name>
    <message>
        <source>Watch a folder</source>
        <extracomment>app/watching/desk.py</extracomment>
        <translation>Ordner beobachten</translation>
    </message>
    <message>
        <source>Watching {folder}</source>
        <extracomment>app/watching/desk.py</extracomment>
        <translation>Beobachtet: {folder}</translation>
    </message>
    <message>
        <source>Writing {name}</source>
        <extracomment>app/watching/desk.py</extracomment>
        <translation>{name} wird geschrieben</translation>
    </message>
</context>
<context>
    <name>WhyCircle</name>
    <message>
        <source>Running the record through a control unit</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>Aufzeichnung durch ein Steuergerät schicken</translation>
    </message>
    <message>
        <source>The capture is being examined.</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>Die Messung wird untersucht.</translation>
    </message>
    <message>
        <source>Why it comes and goes</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>Warum es kommt und geht</translation>
    </message>
    <message>
        <source>No band was found in this capture, so there is nothing to explain.</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>In dieser Messung wurde keine Zone gefunden; es gibt nichts zu erklären.</translation>
    </message>
    <message>
        <source>Captures ({patterns});;All files (*)</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>Messungen ({patterns});;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Captures after the repair</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>Messungen nach der Reparatur</translation>
    </message>
    <message>
        <source>Counting road records</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>Zählen der Fahrt-Aufzeichnungen</translation>
    </message>
</context>
<context>
    <name>WhyWindow</name>
    <message>
        <source>Why it comes and goes</source>
        <extracomment>app/why/window.py</extracomment>
        <translation>Warum es kommt und geht</translation>
    </message>
    <message>
        <source>What it is told for</source>
        <extracomment>app/why/window.py</extracomment>
        <translation>Wofür es gesagt wird</translation>
    </message>
    <message>
        <source>Drive</source>
        <extracomment>app/why/window.py</extracomment>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>Control unit</source>
        <extracomment>app/why/window.py</extracomment>
        <translation>Steuergerät</translation>
    </message>
    <message>
        <source>Heights</source>
        <extracomment>app/why/window.py</extracomment>
        <translation>Höhen</translation>
    </message>
    <message>
        <source>Road test</source>
        <extracomment>app/why/window.py</extracomment>
        <translation>Probefahrt</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Captures ({patterns});;All files (*)</source>
        <extracomment>app/main_window.py</extracomment>
        <translation>Messungen ({patterns});;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open a capture</source>
        <extracomment>app/main_window.py</extracomment>
        <translation>Eine Messung öffnen</translation>
    </message>
    <message>
        <source>finds the worn band on a position sensor's track, and proves it</source>
        <extracomment>app/main_window.py</extracomment>
        <translation>findet die verschlissene Zone auf der Bahn eines Positionssensors und weist sie nach</translation>
    </message>
    <message>
        <source>Capture</source>
        <extracomment>app/main_window.py</extracomment>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Sample</source>
        <extracomment>app/main_window.py</extracomment>
        <translation>Beispiel</translation>
    </message>
    <message>
        <source>Stop the arm</source>
        <extracomment>app/main_window.py</extracomment>
        <translation>Hebel anhalten</translation>
    </message>
</context>
<context>
    <name>WorkStatus</name>
    <message>
        <source>Progress</source>
        <extracomment>app/work_status.py</extracomment>
        <translation>Fortschritt</translation>
    </message>
</context>
<context>
    <name>Workbench</name>
    <message>
        <source>Keeping the settings</source>
        <extracomment>app/workbench.py</extracomment>
        <translation>Merken der Einstellungen</translation>
    </message>
</context>
<context>
    <name>_Sheet</name>
    <message>
        <source>comparison with the other side, modelled as sound, not recorded</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>Vergleich mit der anderen Seite, als fehlerfrei gerechnet, nicht aufgezeichnet</translation>
    </message>
    <message>
        <source> and more</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation> und mehr</translation>
    </message>
    <message>
        <source>{rule}: stored at {times}{more}</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>{rule}: gespeichert bei {times}{more}</translation>
    </message>
    <message>
        <source>{rule}: never broken for long</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>{rule}: nie lange verletzt</translation>
    </message>
    <message>
        <source>{rule}: not stored, {share} of the way</source>
        <extracomment>app/why/strip.py</extracomment>
        <translation>{rule}: nicht gespeichert, {share} der Zeit bis zum Code</translation>
    </message>
</context>
<context>
    <name>actions</name>
    <message>
        <source>Capture</source>
        <extracomment>app/actions.py, app/importing/specs.py, app/watching/specs.py</extracomment>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Open…</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Open a capture</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Eine Messung öffnen</translation>
    </message>
    <message>
        <source>Examine again</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Noch einmal auswerten</translation>
    </message>
    <message>
        <source>Examine the open capture again</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die geöffnete Messung noch einmal auswerten</translation>
    </message>
    <message>
        <source>Stop the work</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Arbeit anhalten</translation>
    </message>
    <message>
        <source>Stop the work that is under way</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die laufende Arbeit anhalten</translation>
    </message>
    <message>
        <source>Copy the reading</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Messwerte kopieren</translation>
    </message>
    <message>
        <source>Copy the reading at the pointer as text</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die Messwerte am Zeiger als Text kopieren</translation>
    </message>
    <message>
        <source>Quit</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>Close the window</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Das Fenster schließen</translation>
    </message>
    <message>
        <source>View</source>
        <extracomment>app/actions.py, app/why/specs.py</extracomment>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Whole record</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Ganze Aufzeichnung</translation>
    </message>
    <message>
        <source>Show the whole record and the whole track</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die ganze Aufzeichnung und die ganze Bahn zeigen</translation>
    </message>
    <message>
        <source>Zoom in</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>Show less time, in more detail</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Weniger Zeit in mehr Einzelheiten zeigen</translation>
    </message>
    <message>
        <source>Zoom out</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Verkleinern</translation>
    </message>
    <message>
        <source>Show more time</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Mehr Zeit zeigen</translation>
    </message>
    <message>
        <source>Move to earlier</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Move the view to earlier time</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die Ansicht zu früherer Zeit bewegen</translation>
    </message>
    <message>
        <source>Move to later</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Später</translation>
    </message>
    <message>
        <source>Move the view to later time</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die Ansicht zu späterer Zeit bewegen</translation>
    </message>
    <message>
        <source>View before</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Vorige Ansicht</translation>
    </message>
    <message>
        <source>Go back to the view before this one</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Zur vorigen Ansicht zurückgehen</translation>
    </message>
    <message>
        <source>View after</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Nächste Ansicht</translation>
    </message>
    <message>
        <source>Go forward again</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Wieder vorwärtsgehen</translation>
    </message>
    <message>
        <source>A lane for each channel</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Eine Spur je Kanal</translation>
    </message>
    <message>
        <source>A lane for each channel, or all on one axis</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Eine Spur je Kanal oder alle auf einer Achse</translation>
    </message>
    <message>
        <source>Next pane</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Nächster Bereich</translation>
    </message>
    <message>
        <source>Go to the next pane by keys</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Mit der Tastatur zum nächsten Bereich gehen</translation>
    </message>
    <message>
        <source>Pane before</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Bereich davor</translation>
    </message>
    <message>
        <source>Go to the pane before by keys</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Mit der Tastatur zum Bereich davor gehen</translation>
    </message>
    <message>
        <source>Full screen</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Ganzer Bildschirm</translation>
    </message>
    <message>
        <source>Use the whole screen</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Den ganzen Bildschirm nutzen</translation>
    </message>
    <message>
        <source>Step</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Previous crossing or event</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Vorige Überfahrt oder Ereignis</translation>
    </message>
    <message>
        <source>Go to the previous crossing or event</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Zur vorigen Überfahrt oder zum vorigen Ereignis gehen</translation>
    </message>
    <message>
        <source>Next crossing or event</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Nächste Überfahrt oder Ereignis</translation>
    </message>
    <message>
        <source>Go to the next crossing or event</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Zur nächsten Überfahrt oder zum nächsten Ereignis gehen</translation>
    </message>
    <message>
        <source>Clearest crossing or event</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Deutlichste Überfahrt oder Ereignis</translation>
    </message>
    <message>
        <source>Zoom to the crossing with the most break-up, or to the deepest event</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Auf die Überfahrt mit den größten Aussetzern oder auf das tiefste Ereignis vergrößern</translation>
    </message>
    <message>
        <source>Next band</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Nächste Zone</translation>
    </message>
    <message>
        <source>Light up the next band</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die nächste Zone hervorheben</translation>
    </message>
    <message>
        <source>Choose nothing</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Auswahl aufheben</translation>
    </message>
    <message>
        <source>Let go of the chosen band and crossing</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die gewählte Zone und Überfahrt loslassen</translation>
    </message>
    <message>
        <source>Previous record</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Vorige Aufzeichnung</translation>
    </message>
    <message>
        <source>Show the previous record</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die vorige Aufzeichnung zeigen</translation>
    </message>
    <message>
        <source>Next record</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Nächste Aufzeichnung</translation>
    </message>
    <message>
        <source>Show the next record</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die nächste Aufzeichnung zeigen</translation>
    </message>
    <message>
        <source>Arm</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Hebel</translation>
    </message>
    <message>
        <source>Let the arm run</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Hebel laufen lassen</translation>
    </message>
    <message>
        <source>Let the arm run along the track, or rest</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Den Hebel über die Bahn laufen oder ruhen lassen</translation>
    </message>
    <message>
        <source>Run through this crossing</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Durch diese Überfahrt laufen</translation>
    </message>
    <message>
        <source>Let the arm run through this crossing alone</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Den Hebel nur durch diese Überfahrt laufen lassen</translation>
    </message>
    <message>
        <source>Run from crossing to crossing</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Von Überfahrt zu Überfahrt laufen</translation>
    </message>
    <message>
        <source>Let the arm run through one crossing after the other</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Den Hebel durch eine Überfahrt nach der anderen laufen lassen</translation>
    </message>
    <message>
        <source>Again and again</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Immer wieder</translation>
    </message>
    <message>
        <source>Begin a crossing again when the arm is through it</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Eine Überfahrt von vorn beginnen, wenn der Hebel hindurch ist</translation>
    </message>
    <message>
        <source>Arm a little back</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Hebel etwas zurück</translation>
    </message>
    <message>
        <source>Move the arm a little back in time</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Den Hebel in der Zeit etwas zurück bewegen</translation>
    </message>
    <message>
        <source>Arm a little on</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Hebel etwas vor</translation>
    </message>
    <message>
        <source>Move the arm a little on in time</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Den Hebel in der Zeit etwas vor bewegen</translation>
    </message>
    <message>
        <source>Slower</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Langsamer</translation>
    </message>
    <message>
        <source>Let the arm run slower</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Den Hebel langsamer laufen lassen</translation>
    </message>
    <message>
        <source>Faster</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Schneller</translation>
    </message>
    <message>
        <source>Let the arm run faster</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Den Hebel schneller laufen lassen</translation>
    </message>
    <message>
        <source>Help</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Keys</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Show every key</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Alle Tasten zeigen</translation>
    </message>
    <message>
        <source>About Wornband</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Über Wornband</translation>
    </message>
    <message>
        <source>Show the version, and where things are kept</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Zeigen, welche Version das ist und wo was liegt</translation>
    </message>
    <message>
        <source>On every page</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Auf jeder Seite</translation>
    </message>
    <message>
        <source>Go to the next control, or the one before</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Zum nächsten Bedienelement gehen oder zum vorigen</translation>
    </message>
    <message>
        <source>Press the button that the keyboard is on; open the row</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die Schaltfläche drücken, auf der die Tastatur steht; die Zeile öffnen</translation>
    </message>
    <message>
        <source>Open the list of a field</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Die Liste eines Feldes öffnen</translation>
    </message>
    <message>
        <source>Alt and a letter</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Alt und ein Buchstabe</translation>
    </message>
    <message>
        <source>Open the menu with that letter underlined</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Das Menü öffnen, in dem dieser Buchstabe unterstrichen ist</translation>
    </message>
    <message>
        <source>In the overview: move the shown window, show less or more</source>
        <extracomment>app/actions.py</extracomment>
        <translation>Im Überblick: den gezeigten Ausschnitt verschieben, weniger oder mehr zeigen</translation>
    </message>
    <message>
        <source>Compare</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Set two captures or records against each other</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Zwei Messungen oder Aufzeichnungen einander gegenüberstellen</translation>
    </message>
    <message>
        <source>Open to compare…</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Zum Vergleich öffnen…</translation>
    </message>
    <message>
        <source>Open the capture to compare with</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Die Messung öffnen, mit der verglichen wird</translation>
    </message>
    <message>
        <source>Swap the sides</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Seiten tauschen</translation>
    </message>
    <message>
        <source>Let the two sides change places</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Die beiden Seiten die Plätze tauschen lassen</translation>
    </message>
    <message>
        <source>Link time</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Zeit koppeln</translation>
    </message>
    <message>
        <source>Move both traces together, as they stand now, or each alone</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Beide Verläufe gemeinsam bewegen, wie sie jetzt stehen, oder jeden für sich</translation>
    </message>
    <message>
        <source>Align by the first movement</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Nach der ersten Bewegung ausrichten</translation>
    </message>
    <message>
        <source>Lay both traces on each other where the arm first moved</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Beide Verläufe dort übereinanderlegen, wo sich der Hebel zuerst bewegt hat</translation>
    </message>
    <message>
        <source>Second a little sooner</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Zweiten etwas früher</translation>
    </message>
    <message>
        <source>Shift the second trace to sooner</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Den zweiten Verlauf nach früher schieben</translation>
    </message>
    <message>
        <source>Second a little later</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Zweiten etwas später</translation>
    </message>
    <message>
        <source>Shift the second trace to later</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Den zweiten Verlauf nach später schieben</translation>
    </message>
    <message>
        <source>Mirror the first</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Ersten spiegeln</translation>
    </message>
    <message>
        <source>The first sensor points the other way</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Der erste Sensor ist andersherum eingebaut</translation>
    </message>
    <message>
        <source>Mirror the second</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Zweiten spiegeln</translation>
    </message>
    <message>
        <source>The second sensor points the other way</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Der zweite Sensor ist andersherum eingebaut</translation>
    </message>
    <message>
        <source>Left against right</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Links gegen rechts</translation>
    </message>
    <message>
        <source>Show how far two corners of an axle disagree over time, or the sensor track</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Zeigen, wie weit zwei Ecken einer Achse über die Zeit auseinanderliegen, oder die Sensorbahn</translation>
    </message>
    <message>
        <source>Compare with the known good one</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Mit gutem Sensor vergleichen</translation>
    </message>
    <message>
        <source>Set the capture against the one that is kept as known good for this sensor</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Die Messung der des guten Sensors gegenüberstellen, die für diesen Sensor gemerkt ist</translation>
    </message>
    <message>
        <source>Keep as known good</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Als guten Sensor merken</translation>
    </message>
    <message>
        <source>Keep the open capture as the known good one for sensors of this part</source>
        <extracomment>app/compare/specs.py</extracomment>
        <translation>Die offene Messung als die eines guten Sensors für Sensoren dieser Teilenummer merken</translation>
    </message>
    <message>
        <source>Export</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Export</translation>
    </message>
    <message>
        <source>Samples of the record…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Messwerte der Aufzeichnung…</translation>
    </message>
    <message>
        <source>Save all samples of the shown record for other programs</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Alle Messwerte der gezeigten Aufzeichnung für andere Programme speichern</translation>
    </message>
    <message>
        <source>Samples of what is shown…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Messwerte des gezeigten Ausschnitts…</translation>
    </message>
    <message>
        <source>Save the samples of the stretch of time that is shown</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Die Messwerte des gezeigten Zeitausschnitts speichern</translation>
    </message>
    <message>
        <source>Samples of the marked span…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Messwerte der markierten Spanne…</translation>
    </message>
    <message>
        <source>Save the samples of the chosen span marker</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Die Messwerte der gewählten Zeitspanne speichern</translation>
    </message>
    <message>
        <source>Findings…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Befunde…</translation>
    </message>
    <message>
        <source>Save verdict, bands, checks and evidence as JSON or CSV</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Befund, Zonen, Prüfungen und Nachweise als JSON oder CSV speichern</translation>
    </message>
    <message>
        <source>Picture of Trace…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Bild des Verlaufs…</translation>
    </message>
    <message>
        <source>Save Trace as a picture</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Den Verlauf als Bild speichern</translation>
    </message>
    <message>
        <source>Picture of Sensor track…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Bild der Sensorbahn…</translation>
    </message>
    <message>
        <source>Save Sensor track as a picture</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Die Sensorbahn als Bild speichern</translation>
    </message>
    <message>
        <source>Picture of Overview…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Bild des Überblicks…</translation>
    </message>
    <message>
        <source>Save Overview as a picture</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Den Überblick als Bild speichern</translation>
    </message>
    <message>
        <source>Picture of why it comes and goes…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Bild, warum es kommt und geht…</translation>
    </message>
    <message>
        <source>Save the band and the movement of the wheel as a picture</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Die Zone und die Bewegung des Rads als Bild speichern</translation>
    </message>
    <message>
        <source>Picture of the whole page…</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Bild der ganzen Seite…</translation>
    </message>
    <message>
        <source>Save all that the page shows as one picture, its lists and cards too</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Alles, was die Seite zeigt, als ein Bild speichern, auch ihre Listen und Karten</translation>
    </message>
    <message>
        <source>Pictures on white</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Bilder auf Weiß</translation>
    </message>
    <message>
        <source>Save pictures on white paper, for printing, whatever colours the window has</source>
        <extracomment>app/exporting/specs.py</extracomment>
        <translation>Bilder auf weißem Papier speichern, zum Drucken, gleich welche Farben das Fenster hat</translation>
    </message>
    <message>
        <source>Import…</source>
        <extracomment>app/importing/specs.py</extracomment>
        <translation>Importieren…</translation>
    </message>
    <message>
        <source>Make a capture out of what a recorder saved</source>
        <extracomment>app/importing/specs.py</extracomment>
        <translation>Aus dem, was ein Rekorder gespeichert hat, eine Messung machen</translation>
    </message>
    <message>
        <source>Import a folder…</source>
        <extracomment>app/importing/specs.py</extracomment>
        <translation>Ordner importieren…</translation>
    </message>
    <message>
        <source>Make one capture out of all files of a folder</source>
        <extracomment>app/importing/specs.py</extracomment>
        <translation>Aus allen Dateien eines Ordners eine Messung machen</translation>
    </message>
    <message>
        <source>Import now</source>
        <extracomment>app/importing/specs.py</extracomment>
        <translation>Jetzt importieren</translation>
    </message>
    <message>
        <source>Import the files as they are understood</source>
        <extracomment>app/importing/specs.py</extracomment>
        <translation>Die Dateien importieren, wie sie verstanden werden</translation>
    </message>
    <message>
        <source>Report</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Make the report of this capture</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Den Bericht dieser Messung erstellen</translation>
    </message>
    <message>
        <source>Back to Review</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Zurück zur Auswertung</translation>
    </message>
    <message>
        <source>Go back to the records and the trace</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Zurück zu Aufzeichnungen und Verlauf</translation>
    </message>
    <message>
        <source>Save PDF…</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>PDF speichern…</translation>
    </message>
    <message>
        <source>Save the report as PDF</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Den Bericht als PDF speichern</translation>
    </message>
    <message>
        <source>Save HTML…</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>HTML speichern…</translation>
    </message>
    <message>
        <source>Save the report as one HTML file</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Den Bericht als eine HTML-Datei speichern</translation>
    </message>
    <message>
        <source>Print…</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print the report</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Den Bericht drucken</translation>
    </message>
    <message>
        <source>Workshop…</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Werkstatt…</translation>
    </message>
    <message>
        <source>Name, address and logo of the workshop</source>
        <extracomment>app/reporting/specs.py</extracomment>
        <translation>Name, Anschrift und Logo der Werkstatt</translation>
    </message>
    <message>
        <source>Markers</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Mark this moment</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Diesen Moment markieren</translation>
    </message>
    <message>
        <source>Mark the moment at the pointer or the arm</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Den Moment am Zeiger oder Hebel markieren</translation>
    </message>
    <message>
        <source>Begin or end a span</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Spanne beginnen oder beenden</translation>
    </message>
    <message>
        <source>Begin a span of time here, or end it here</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Eine Zeitspanne hier beginnen oder hier beenden</translation>
    </message>
    <message>
        <source>Begin or end a stretch of travel</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Wegstück beginnen oder beenden</translation>
    </message>
    <message>
        <source>Begin a stretch of travel at the pointer or the arm, or end it there</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Ein Wegstück am Mauszeiger oder am Hebel beginnen oder dort beenden</translation>
    </message>
    <message>
        <source>Next marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Nächste Marke</translation>
    </message>
    <message>
        <source>Choose the next marker and show it</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die nächste Marke wählen und zeigen</translation>
    </message>
    <message>
        <source>Previous marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Vorige Marke</translation>
    </message>
    <message>
        <source>Choose the previous marker and show it</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die vorige Marke wählen und zeigen</translation>
    </message>
    <message>
        <source>Zoom to the marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Auf die Marke vergrößern</translation>
    </message>
    <message>
        <source>Zoom to the chosen marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Auf die gewählte Marke vergrößern</translation>
    </message>
    <message>
        <source>Move the marker here</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Marke hierher verschieben</translation>
    </message>
    <message>
        <source>Move the chosen point to the pointer or the arm</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Den gewählten Punkt zum Zeiger oder Hebel verschieben</translation>
    </message>
    <message>
        <source>Begin it here</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Hier beginnen lassen</translation>
    </message>
    <message>
        <source>Let the chosen span or band begin at the arm</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die gewählte Spanne oder Zone am Hebel beginnen lassen</translation>
    </message>
    <message>
        <source>End it here</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Hier enden lassen</translation>
    </message>
    <message>
        <source>Let the chosen span or band end at the arm</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die gewählte Spanne oder Zone am Hebel enden lassen</translation>
    </message>
    <message>
        <source>Rename the marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Marke umbenennen</translation>
    </message>
    <message>
        <source>Give the chosen marker another name</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Der gewählten Marke einen anderen Namen geben</translation>
    </message>
    <message>
        <source>Note on the marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Notiz zur Marke</translation>
    </message>
    <message>
        <source>Write a note on the chosen marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Eine Notiz zur gewählten Marke schreiben</translation>
    </message>
    <message>
        <source>Delete the marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Marke löschen</translation>
    </message>
    <message>
        <source>Delete the chosen marker</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die gewählte Marke löschen</translation>
    </message>
    <message>
        <source>Copy the markers</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Marken kopieren</translation>
    </message>
    <message>
        <source>Copy all markers and readings as text</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Alle Marken und Messwerte als Text kopieren</translation>
    </message>
    <message>
        <source>Copy the markers as CSV</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Marken als CSV kopieren</translation>
    </message>
    <message>
        <source>Copy all markers and readings as CSV</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Alle Marken und Messwerte als CSV kopieren</translation>
    </message>
    <message>
        <source>Save the markers as CSV…</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Marken als CSV speichern…</translation>
    </message>
    <message>
        <source>Save all markers and readings to a CSV file</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Alle Marken und Messwerte in eine CSV-Datei speichern</translation>
    </message>
    <message>
        <source>Review</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Auswertung</translation>
    </message>
    <message>
        <source>Undo</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Undo the last edit</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die letzte Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>Redo</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Do again what was undone</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Noch einmal tun, was rückgängig gemacht wurde</translation>
    </message>
    <message>
        <source>Accept</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Accept the chosen band as it was found</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die gewählte Zone annehmen, wie sie gefunden wurde</translation>
    </message>
    <message>
        <source>Adjust</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Give the chosen band other edges</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Der gewählten Zone andere Grenzen geben</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Ablehnen</translation>
    </message>
    <message>
        <source>Dismiss the chosen band, and say why</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die gewählte Zone ablehnen und sagen, warum</translation>
    </message>
    <message>
        <source>No answer</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Keine Antwort</translation>
    </message>
    <message>
        <source>Give no answer on the chosen band: whatever you said of it goes</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Zur gewählten Zone keine Antwort geben: alles, was dazu gesagt wurde, entfällt</translation>
    </message>
    <message>
        <source>Save the review elsewhere…</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Auswertung woanders speichern…</translation>
    </message>
    <message>
        <source>Save a copy of the review; where its own place takes none, it goes on there</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Eine Kopie der Auswertung speichern; wo ihr eigener Ort keine annimmt, geht es dort weiter</translation>
    </message>
    <message>
        <source>Take the other review</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die andere Auswertung übernehmen</translation>
    </message>
    <message>
        <source>Go on with what another program wrote; this review is kept under another name</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Mit dem weitermachen, was ein anderes Programm schrieb; diese Auswertung wird unter einem anderen Namen aufgehoben</translation>
    </message>
    <message>
        <source>Keep this review</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Diese Auswertung behalten</translation>
    </message>
    <message>
        <source>Go on with this review; what another program wrote is kept under another name</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Mit dieser Auswertung weitermachen; was ein anderes Programm schrieb, wird unter einem anderen Namen aufgehoben</translation>
    </message>
    <message>
        <source>Edit the record</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Aufzeichnung bearbeiten</translation>
    </message>
    <message>
        <source>Say what the shown record was taken for, what was probed and under which conditions</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Sagen, wofür die gezeigte Aufzeichnung gemacht wurde, was gemessen wurde und unter welchen Bedingungen</translation>
    </message>
    <message>
        <source>Give the span its own step</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Der Spanne einen eigenen Schritt geben</translation>
    </message>
    <message>
        <source>Give the chosen span, or the stretch that is shown, a step of its own</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Der gewählten Spanne oder dem gezeigten Ausschnitt einen eigenen Schritt geben</translation>
    </message>
    <message>
        <source>Accept the splitting</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Aufteilung annehmen</translation>
    </message>
    <message>
        <source>Take the proposed splitting over as spans of the record</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die vorgeschlagene Aufteilung als Spannen der Aufzeichnung übernehmen</translation>
    </message>
    <message>
        <source>It is one wire</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Es ist eine Leitung</translation>
    </message>
    <message>
        <source>Examine the record as one wire, without splitting it</source>
        <extracomment>app/review/specs.py</extracomment>
        <translation>Die Aufzeichnung als eine Leitung untersuchen, ohne sie aufzuteilen</translation>
    </message>
    <message>
        <source>Watch a folder…</source>
        <extracomment>app/watching/specs.py</extracomment>
        <translation>Ordner beobachten…</translation>
    </message>
    <message>
        <source>Take every file that the recorder saves, and show from afar what is still missing</source>
        <extracomment>app/watching/specs.py</extracomment>
        <translation>Jede Datei nehmen, die der Rekorder speichert, und von weitem lesbar zeigen, was noch fehlt</translation>
    </message>
    <message>
        <source>Next sensor</source>
        <extracomment>app/watching/specs.py</extracomment>
        <translation>Nächster Sensor</translation>
    </message>
    <message>
        <source>Watch on for another sensor; what was gathered stays in the folder</source>
        <extracomment>app/watching/specs.py</extracomment>
        <translation>Für einen anderen Sensor weiter beobachten; das Gesammelte bleibt im Ordner</translation>
    </message>
    <message>
        <source>Review what was gathered</source>
        <extracomment>app/watching/specs.py</extracomment>
        <translation>Gesammeltes ansehen</translation>
    </message>
    <message>
        <source>Write the gathered files as one capture and open it in Review</source>
        <extracomment>app/watching/specs.py</extracomment>
        <translation>Die gesammelten Dateien als eine Messung speichern und in der Auswertung öffnen</translation>
    </message>
    <message>
        <source>Why it comes and goes…</source>
        <extracomment>app/why/specs.py</extracomment>
        <translation>Warum es kommt und geht…</translation>
    </message>
    <message>
        <source>Show at which heights and on which roads the arm comes into the band, and whether a code would set</source>
        <extracomment>app/why/specs.py</extracomment>
        <translation>Zeigen, bei welchen Höhen und auf welchen Straßen der Hebel in die Zone kommt und ob ein Code gesetzt würde</translation>
    </message>
    <message>
        <source>Control unit under Trace</source>
        <extracomment>app/why/specs.py</extracomment>
        <translation>Steuergerät unter dem Verlauf</translation>
    </message>
    <message>
        <source>Run the record through a control unit: which fault would have been stored, and when</source>
        <extracomment>app/why/specs.py</extracomment>
        <translation>Die Aufzeichnung durch ein Steuergerät schicken: welcher Fehler gespeichert worden wäre, und wann</translation>
    </message>
</context>
<context>
    <name>analysis</name>
    <message>
        <source>a text</source>
        <extracomment>analysis/captures/described.py, analysis/review/taken.py</extracomment>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a number</source>
        <extracomment>analysis/captures/described.py, analysis/diagnosis/profile_table.py, analysis/review/taken.py</extracomment>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>{key} of {where} is the text {value!r}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>{where}: {key} ist der Text {value!r}</translation>
    </message>
    <message>
        <source>store it as a number</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>als Zahl speichern</translation>
    </message>
    <message>
        <source>{key} of {where} is {value:g}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>{where}: {key} ist {value:g}</translation>
    </message>
    <message>
        <source>store a finite number</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>eine endliche Zahl speichern</translation>
    </message>
    <message>
        <source>{key} of {where} is {value}, not {wanted}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>{where}: {key} ist {value}, nicht {wanted}</translation>
    </message>
    <message>
        <source>store {wanted} there</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>dort speichern: {wanted}</translation>
    </message>
    <message>
        <source>{where} does not state its {interval_key}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>{where}: {interval_key} ist nicht angegeben</translation>
    </message>
    <message>
        <source>store the seconds between samples in that attribute of {where}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>in diesem Attribut die Sekunden zwischen zwei Messwerten speichern ({where})</translation>
    </message>
    <message>
        <source>the {interval_key} of {where} is {value:g} s</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>{where}: {interval_key} ist {value:g} s</translation>
    </message>
    <message>
        <source>store a positive number of seconds there</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>dort eine positive Anzahl Sekunden speichern</translation>
    </message>
    <message>
        <source>{where} states no {units_key}</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>{where}: {units_key} ist nicht angegeben</translation>
    </message>
    <message>
        <source>store "V" in that attribute</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>in diesem Attribut „V“ speichern</translation>
    </message>
    <message>
        <source>{where} is in {unit!r}, which is no voltage</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>{where}: die Einheit {unit!r} ist keine Spannung</translation>
    </message>
    <message>
        <source>store it in V, mV or kV</source>
        <extracomment>analysis/captures/described.py</extracomment>
        <translation>in V, mV oder kV speichern</translation>
    </message>
    <message>
        <source>the file can no longer be read</source>
        <extracomment>analysis/captures/fingerprint.py, analysis/importing/spool.py</extracomment>
        <translation>die Datei lässt sich nicht mehr lesen</translation>
    </message>
    <message>
        <source>check that it is still there</source>
        <extracomment>analysis/captures/fingerprint.py, analysis/importing/spool.py</extracomment>
        <translation>prüfen, ob sie noch da ist</translation>
    </message>
    <message>
        <source>on</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>ein</translation>
    </message>
    <message>
        <source>off</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>aus</translation>
    </message>
    <message>
        <source>idling</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>im Leerlauf</translation>
    </message>
    <message>
        <source>running</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>läuft</translation>
    </message>
    <message>
        <source>control-unit end</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>am Steuergerät</translation>
    </message>
    <message>
        <source>sensor end</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>am Sensor</translation>
    </message>
    <message>
        <source>battery negative</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Batterie-Minuspol</translation>
    </message>
    <message>
        <source>sensor ground</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Sensormasse</translation>
    </message>
    <message>
        <source>by hand</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>suspension</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>über die Federung</translation>
    </message>
    <message>
        <source>road</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Probefahrt</translation>
    </message>
    <message>
        <source>ride height sensor</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Höhensensor</translation>
    </message>
    <message>
        <source>throttle position sensor</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Drosselklappensensor</translation>
    </message>
    <message>
        <source>accelerator pedal position sensor</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Fahrpedalsensor</translation>
    </message>
    <message>
        <source>front left</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>vorne links</translation>
    </message>
    <message>
        <source>front right</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>vorne rechts</translation>
    </message>
    <message>
        <source>rear left</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>hinten links</translation>
    </message>
    <message>
        <source>rear right</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>hinten rechts</translation>
    </message>
    <message>
        <source>Front left</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Vorne links</translation>
    </message>
    <message>
        <source>Front right</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Vorne rechts</translation>
    </message>
    <message>
        <source>Rear left</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Hinten links</translation>
    </message>
    <message>
        <source>Rear right</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Hinten rechts</translation>
    </message>
    <message>
        <source>left</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>rechts</translation>
    </message>
    <message>
        <source>front</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>vorne</translation>
    </message>
    <message>
        <source>rear</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>hinten</translation>
    </message>
    <message>
        <source>front axle</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Vorderachse</translation>
    </message>
    <message>
        <source>rear axle</source>
        <extracomment>analysis/captures/known_words.py</extracomment>
        <translation>Hinterachse</translation>
    </message>
    <message>
        <source>{name} holds {dtype}, which a capture cannot store</source>
        <extracomment>analysis/captures/packing.py</extracomment>
        <translation>{name} enthält {dtype}, was eine Messung nicht speichern kann</translation>
    </message>
    <message>
        <source>use integers or floats</source>
        <extracomment>analysis/captures/packing.py</extracomment>
        <translation>ganze Zahlen oder Gleitkommazahlen verwenden</translation>
    </message>
    <message>
        <source>no record has a channel whose role is signal</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>keine Aufzeichnung hat einen Kanal mit der Rolle Signal</translation>
    </message>
    <message>
        <source>record the signal wire, or set the role</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>die Signalleitung aufzeichnen oder die Rolle angeben</translation>
    </message>
    <message>
        <source>the capture holds no records</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>die Messung enthält keine Aufzeichnungen</translation>
    </message>
    <message>
        <source>record the sensor again, or choose another file</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>den Sensor noch einmal aufzeichnen oder eine andere Datei wählen</translation>
    </message>
    <message>
        <source>the capture has no id; one is derived from its content</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>die Messung hat keine Kennung; sie wird aus dem Inhalt abgeleitet</translation>
    </message>
    <message>
        <source>no samples</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>keine Messwerte</translation>
    </message>
    <message>
        <source>one sample a channel</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>nur einen Messwert je Kanal</translation>
    </message>
    <message>
        <source>the capture holds {held}</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>die Messung enthält {held}</translation>
    </message>
    <message>
        <source>record the sensor again</source>
        <extracomment>analysis/captures/reading.py, analysis/importing/preview.py, analysis/importing/records.py, analysis/importing/time_base.py</extracomment>
        <translation>den Sensor noch einmal aufzeichnen</translation>
    </message>
    <message>
        <source>no channel of the capture has a known role</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>kein Kanal der Messung hat eine bekannte Rolle</translation>
    </message>
    <message>
        <source>set the attribute {role_key} of each channel to signal, reference, ground or supply</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>das Attribut {role_key} jedes Kanals auf signal, reference, ground oder supply setzen</translation>
    </message>
    <message>
        <source>{where} holds no channel and is set aside</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>{where} enthält keinen Kanal und bleibt außer Betracht</translation>
    </message>
    <message>
        <source>{where} holds {held} and is set aside</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>{where} enthält {held} und bleibt außer Betracht</translation>
    </message>
    <message>
        <source>store plain one-dimensional numbers</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>einfache eindimensionale Zahlen speichern</translation>
    </message>
    <message>
        <source>the channels of {where} differ in length ({listed})</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>{where}: die Kanäle sind verschieden lang ({listed})</translation>
    </message>
    <message>
        <source>export that record again</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>diese Aufzeichnung noch einmal exportieren</translation>
    </message>
    <message>
        <source>the step {text!r}, which is unknown</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>den Schritt {text!r}, der nicht bekannt ist</translation>
    </message>
    <message>
        <source>no step</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>keinen Schritt</translation>
    </message>
    <message>
        <source>{where} states {said}; the step is taken from what the samples show</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>{where} nennt {said}; der Schritt ergibt sich aus dem, was die Messwerte zeigen</translation>
    </message>
    <message>
        <source>the role {text!r}, which is unknown</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>die Rolle {text!r}, die nicht bekannt ist</translation>
    </message>
    <message>
        <source>no role</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>keine Rolle</translation>
    </message>
    <message>
        <source>{where} states {said}; it is shown and not judged</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>{where} nennt {said}; der Kanal wird angezeigt und nicht beurteilt</translation>
    </message>
    <message>
        <source>{where} states no full accuracy; it is unknown, not zero</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>{where} nennt keine vollständige Genauigkeit; sie gilt als unbekannt, nicht als null</translation>
    </message>
    <message>
        <source>the {scale_key} of {where} is {value}</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>{where}: {scale_key} ist {value}</translation>
    </message>
    <message>
        <source>store the volts a count there</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>dort die Volt je Zählschritt speichern</translation>
    </message>
    <message>
        <source>{where} states no {scale_key}; a count is taken as {count} {unit}</source>
        <extracomment>analysis/captures/reading.py</extracomment>
        <translation>{where} nennt kein {scale_key}; ein Zählschritt gilt als {count} {unit}</translation>
    </message>
    <message>
        <source>Zero</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Nullmessung</translation>
    </message>
    <message>
        <source>Check</source>
        <extracomment>analysis/captures/record_names.py, analysis/reports/findings_report.py</extracomment>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Ground</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Reference</source>
        <extracomment>analysis/captures/record_names.py, analysis/diagnosis/checks.py</extracomment>
        <translation>Bezugsspannung</translation>
    </message>
    <message>
        <source>Wiggle</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Wackelprobe</translation>
    </message>
    <message>
        <source>Sweep</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Durchlauf</translation>
    </message>
    <message>
        <source>Hold</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Road</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Probefahrt</translation>
    </message>
    <message>
        <source>Tap</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Klopfen</translation>
    </message>
    <message>
        <source>Heat</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Cold</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Kälte</translation>
    </message>
    <message>
        <source>Wet</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Nässe</translation>
    </message>
    <message>
        <source>Unplugged</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Abgesteckt</translation>
    </message>
    <message>
        <source>Record</source>
        <extracomment>analysis/captures/record_names.py, analysis/reports/findings_report.py, analysis/reports/how_measured.py</extracomment>
        <translation>Aufzeichnung</translation>
    </message>
    <message>
        <source>record {record}</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Aufzeichnung {record}</translation>
    </message>
    <message>
        <source>Record {record}</source>
        <extracomment>analysis/captures/record_names.py</extracomment>
        <translation>Aufzeichnung {record}</translation>
    </message>
    <message>
        <source>all</source>
        <extracomment>analysis/captures/record_names.py, analysis/reports/findings_report.py</extracomment>
        <translation>alle</translation>
    </message>
    <message>
        <source>there is no such folder to write to</source>
        <extracomment>analysis/captures/replacing.py, analysis/importing/spool.py</extracomment>
        <translation>der Ordner, in den geschrieben werden soll, ist nicht vorhanden</translation>
    </message>
    <message>
        <source>create it, or choose another</source>
        <extracomment>analysis/captures/replacing.py, analysis/importing/spool.py</extracomment>
        <translation>ihn anlegen oder einen anderen wählen</translation>
    </message>
    <message>
        <source>you have no right to write there</source>
        <extracomment>analysis/captures/replacing.py, analysis/importing/spool.py</extracomment>
        <translation>dort fehlt das Recht zu schreiben</translation>
    </message>
    <message>
        <source>choose another folder</source>
        <extracomment>analysis/captures/replacing.py, analysis/importing/sources.py, analysis/importing/spool.py</extracomment>
        <translation>einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>a folder of that name exists already</source>
        <extracomment>analysis/captures/replacing.py</extracomment>
        <translation>ein Ordner dieses Namens besteht schon</translation>
    </message>
    <message>
        <source>choose another name</source>
        <extracomment>analysis/captures/replacing.py, analysis/captures/writing.py, analysis/exporting/findings_file.py, analysis/exporting/samples.py, analysis/importing/bring_in.py, app/errands/exporting.py, app/exporting/pictures.py</extracomment>
        <translation>einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>the file could not be written</source>
        <extracomment>analysis/captures/replacing.py, analysis/importing/spool.py</extracomment>
        <translation>die Datei konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <source>check the free space and the drive</source>
        <extracomment>analysis/captures/replacing.py, analysis/importing/spool.py</extracomment>
        <translation>freien Platz und Laufwerk prüfen</translation>
    </message>
    <message>
        <source>the file</source>
        <extracomment>analysis/captures/stored.py, analysis/importing/binary.py</extracomment>
        <translation>die Datei</translation>
    </message>
    <message>
        <source>the file is HDF5 but no capture</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>die Datei ist HDF5, aber keine Messung</translation>
    </message>
    <message>
        <source>import it, or set its {format_key} to {format}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>sie importieren oder {format_key} auf {format} setzen</translation>
    </message>
    <message>
        <source>the file claims {count:,} samples, which no recording packs into its size</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>die Datei gibt {count:,} Abtastwerte an, was keine Aufzeichnung so klein packt</translation>
    </message>
    <message>
        <source>copy it from the recorder again</source>
        <extracomment>analysis/captures/stored.py, analysis/captures/strict.py, analysis/captures/variable_text.py, analysis/importing/opening.py, analysis/importing/wav.py</extracomment>
        <translation>sie noch einmal vom Rekorder kopieren</translation>
    </message>
    <message>
        <source>the file does not state its {version_key}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>die Datei nennt ihr {version_key} nicht</translation>
    </message>
    <message>
        <source>store {format_version} there</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>dort {format_version} speichern</translation>
    </message>
    <message>
        <source>the file has format version {version:g} and this program knows {format_version}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>die Datei hat die Formatversion {version:g}, dieses Programm kennt {format_version}</translation>
    </message>
    <message>
        <source>update the program</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>das Programm aktualisieren</translation>
    </message>
    <message>
        <source>the file has format version {version:g}, which never was</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>die Datei hat die Formatversion {version:g}, die es nie gab</translation>
    </message>
    <message>
        <source>record {name}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>Aufzeichnung {name}</translation>
    </message>
    <message>
        <source>channel {name} of {record}</source>
        <extracomment>analysis/captures/stored.py</extracomment>
        <translation>Kanal {name} von {record}</translation>
    </message>
    <message>
        <source>{where} cannot be read, the file is damaged there</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>{where} lässt sich nicht lesen, die Datei ist dort beschädigt</translation>
    </message>
    <message>
        <source>you have no right to read the file</source>
        <extracomment>analysis/captures/strict.py, analysis/importing/opening.py</extracomment>
        <translation>das Recht, die Datei zu lesen, fehlt</translation>
    </message>
    <message>
        <source>change its permissions or get a copy</source>
        <extracomment>analysis/captures/strict.py, analysis/importing/opening.py</extracomment>
        <translation>ändern Sie seine Rechte, oder lassen Sie sich eine Kopie geben</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <extracomment>analysis/captures/strict.py, analysis/importing/opening.py</extracomment>
        <translation>die Datei ist nicht vorhanden</translation>
    </message>
    <message>
        <source>check the name and the folder</source>
        <extracomment>analysis/captures/strict.py, analysis/importing/opening.py, analysis/importing/recipe.py</extracomment>
        <translation>Namen und Ordner prüfen</translation>
    </message>
    <message>
        <source>this is a folder, not a capture</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>das ist ein Ordner, keine Messung</translation>
    </message>
    <message>
        <source>choose a file inside it</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>eine Datei darin wählen</translation>
    </message>
    <message>
        <source>this is a device or a pipe, not a capture</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>das ist ein Gerät oder eine Pipe, keine Messung</translation>
    </message>
    <message>
        <source>choose a capture file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>eine Messdatei wählen</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <extracomment>analysis/captures/strict.py, analysis/importing/opening.py</extracomment>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>the file is cut short at {size:,} bytes</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>die Datei ist bei {size:,} Byte abgeschnitten</translation>
    </message>
    <message>
        <source>another program is still writing the file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>ein anderes Programm schreibt die Datei noch</translation>
    </message>
    <message>
        <source>close it there and try again</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>sie dort schließen und noch einmal versuchen</translation>
    </message>
    <message>
        <source>the file is not HDF5, so it is no capture</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>die Datei ist nicht HDF5 und damit keine Messung</translation>
    </message>
    <message>
        <source>import it, or choose another file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>sie importieren oder eine andere Datei wählen</translation>
    </message>
    <message>
        <source>the file is damaged and cannot be opened</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>die Datei ist beschädigt und lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>a group</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>eine Gruppe</translation>
    </message>
    <message>
        <source>a group holds more than {most:,} objects</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>eine Gruppe enthält mehr als {most:,} Objekte</translation>
    </message>
    <message>
        <source>choose another file</source>
        <extracomment>analysis/captures/strict.py, analysis/diagnosis/profiles.py</extracomment>
        <translation>eine andere Datei wählen</translation>
    </message>
    <message>
        <source>group {name}</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>Gruppe {name}</translation>
    </message>
    <message>
        <source>dataset {name}</source>
        <extracomment>analysis/captures/strict.py, analysis/importing/binary.py</extracomment>
        <translation>Datensatz {name}</translation>
    </message>
    <message>
        <source>the attributes of {where}</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>die Attribute ({where})</translation>
    </message>
    <message>
        <source>{where} has more than {most:,} attributes</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>{where} hat mehr als {most:,} Attribute</translation>
    </message>
    <message>
        <source>empty</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>leer</translation>
    </message>
    <message>
        <source>an array</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>ein Feld</translation>
    </message>
    <message>
        <source>a text of absurd length</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>ein Text von unsinniger Länge</translation>
    </message>
    <message>
        <source>a number of unknown size</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>eine Zahl unbekannter Größe</translation>
    </message>
    <message>
        <source>an enumeration</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>eine Aufzählung</translation>
    </message>
    <message>
        <source>neither a number nor a text</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>weder Zahl noch Text</translation>
    </message>
    <message>
        <source>has {count} dimensions instead of one</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>hat {count} Dimensionen statt einer</translation>
    </message>
    <message>
        <source>holds something other than plain numbers</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>enthält etwas anderes als einfache Zahlen</translation>
    </message>
    <message>
        <source>keeps its samples in another file</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>verwahrt seine Messwerte in einer anderen Datei</translation>
    </message>
    <message>
        <source>number {code}</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>Nummer {code}</translation>
    </message>
    <message>
        <source>is compressed by a filter that is not at hand ({known})</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>ist mit einem Filter gepackt, das hier fehlt ({known})</translation>
    </message>
    <message>
        <source>claims {count:,} samples but does not hold them</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>gibt {count:,} Messwerte an, enthält sie aber nicht</translation>
    </message>
    <message>
        <source>is stored in chunks of {count:,} samples, more than can be held</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>ist in Blöcken zu {count:,} Messwerten gespeichert, mehr als sich halten lässt</translation>
    </message>
    <message>
        <source>{where} was read after the capture was closed</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>{where} wurde gelesen, nachdem die Messung geschlossen war</translation>
    </message>
    <message>
        <source>open it again</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>sie noch einmal öffnen</translation>
    </message>
    <message>
        <source>the root group</source>
        <extracomment>analysis/captures/strict.py</extracomment>
        <translation>die oberste Gruppe</translation>
    </message>
    <message>
        <source>its texts have variable length and no process can be started to read them safely</source>
        <extracomment>analysis/captures/variable_text.py</extracomment>
        <translation>die Texte haben veränderliche Länge, und es lässt sich kein Prozess starten, der sie sicher liest</translation>
    </message>
    <message>
        <source>store them with fixed length</source>
        <extracomment>analysis/captures/variable_text.py</extracomment>
        <translation>sie mit fester Länge speichern</translation>
    </message>
    <message>
        <source>the text attributes of the file are damaged</source>
        <extracomment>analysis/captures/variable_text.py</extracomment>
        <translation>die Textattribute der Datei sind beschädigt</translation>
    </message>
    <message>
        <source>{name} was changed after it was recorded: its samples or what they mean do not match the fingerprint in the file. Open the original, or do not use it as evidence.</source>
        <extracomment>analysis/captures/verification.py</extracomment>
        <translation>{name} wurde nach der Aufnahme geändert: Die Messwerte oder ihre Bedeutung passen nicht zum Fingerabdruck in der Datei. Öffnen Sie das Original, oder verwenden Sie die Datei nicht als Beleg.</translation>
    </message>
    <message>
        <source>Not all of {name} can be read, so it was not held against the fingerprint in the file. Do not use it as evidence.</source>
        <extracomment>analysis/captures/verification.py</extracomment>
        <translation>{name} lässt sich nicht ganz lesen und wurde deshalb nicht mit dem Fingerabdruck in der Datei verglichen. Verwenden Sie die Datei nicht als Beleg.</translation>
    </message>
    <message>
        <source>changed after it was recorded</source>
        <extracomment>analysis/captures/verification.py</extracomment>
        <translation>nach der Aufnahme geändert</translation>
    </message>
    <message>
        <source>not all of it can be read</source>
        <extracomment>analysis/captures/verification.py</extracomment>
        <translation>nicht vollständig lesbar</translation>
    </message>
    <message>
        <source>store plain numbers</source>
        <extracomment>analysis/captures/verification.py</extracomment>
        <translation>einfache Zahlen speichern</translation>
    </message>
    <message>
        <source>a file of that name exists already</source>
        <extracomment>analysis/captures/writing.py, analysis/exporting/findings_file.py, analysis/exporting/samples.py, analysis/importing/bring_in.py, app/errands/exporting.py, app/exporting/pictures.py</extracomment>
        <translation>eine Datei dieses Namens besteht schon</translation>
    </message>
    <message>
        <source>records of the capture</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>Aufzeichnungen der Messung</translation>
    </message>
    <message>
        <source>channels of record {name}</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>Kanäle von Aufzeichnung {name}</translation>
    </message>
    <message>
        <source>a channel may not be named {name!r}</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>ein Kanal darf nicht {name!r} heißen</translation>
    </message>
    <message>
        <source>rename the channel</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>den Kanal umbenennen</translation>
    </message>
    <message>
        <source>the channels of record {name} differ in length</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>die Kanäle von Aufzeichnung {name} sind verschieden lang</translation>
    </message>
    <message>
        <source>cut them to one</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>sie auf eine Länge kürzen</translation>
    </message>
    <message>
        <source>the {what} need names of their own, got {names}</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>{what}: jeder Name darf nur einmal vorkommen, angegeben sind {names}</translation>
    </message>
    <message>
        <source>rename them</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>sie umbenennen</translation>
    </message>
    <message>
        <source>the text of {key} is {size:,} bytes long</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>der Text von {key} ist {size:,} Byte lang</translation>
    </message>
    <message>
        <source>shorten it to {most:,}</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>ihn auf {most:,} kürzen</translation>
    </message>
    <message>
        <source>{key} {value:g} is no value of {dtype} samples</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>{key} {value:g} ist kein Wert für Messwerte vom Typ {dtype}</translation>
    </message>
    <message>
        <source>correct the scaling</source>
        <extracomment>analysis/captures/writing.py</extracomment>
        <translation>die Skalierung berichtigen</translation>
    </message>
    <message>
        <source>{where} nothing can be said: the capture shows a measurement problem</source>
        <extracomment>analysis/comparison/bands.py</extracomment>
        <translation>{where} lässt sich nichts sagen: Die Messung zeigt ein Messproblem</translation>
    </message>
    <message>
        <source>it is a possible band only</source>
        <extracomment>analysis/comparison/bands.py</extracomment>
        <translation>es ist nur eine mögliche Zone</translation>
    </message>
    <message>
        <source>the counts differ by no more than chance would have it (p = {p_value:.2f})</source>
        <extracomment>analysis/comparison/bands.py</extracomment>
        <translation>die Anzahlen unterscheiden sich nicht stärker, als der Zufall es täte (p = {p_value:.2f})</translation>
    </message>
    <message>
        <source>{title}: measurement problem. {summary}</source>
        <extracomment>analysis/comparison/compare.py</extracomment>
        <translation>{title}: Messproblem. {summary}</translation>
    </message>
    <message>
        <source>The sides were judged by different sensor profiles, {one} and {two}: limits may differ.</source>
        <extracomment>analysis/comparison/compare.py</extracomment>
        <translation>Die Seiten wurden nach verschiedenen Sensorprofilen beurteilt, {one} und {two}: Die Grenzen können sich unterscheiden.</translation>
    </message>
    <message>
        <source>One side is mirrored: its travel is counted from the other end.</source>
        <extracomment>analysis/comparison/compare.py</extracomment>
        <translation>Eine Seite ist gespiegelt: Ihr Weg wird vom anderen Ende gezählt.</translation>
    </message>
    <message>
        <source>Both sides are the same capture.</source>
        <extracomment>analysis/comparison/compare.py</extracomment>
        <translation>Beide Seiten sind dieselbe Messung.</translation>
    </message>
    <message>
        <source>Only part of a capture is compared: {records}; verdicts and confidence are of the whole.</source>
        <extracomment>analysis/comparison/compare.py</extracomment>
        <translation>Verglichen wird nur ein Teil einer Messung: {records}; Befund und Sicherheit gelten für das Ganze.</translation>
    </message>
    <message>
        <source>all records</source>
        <extracomment>analysis/comparison/compare.py</extracomment>
        <translation>alle Aufzeichnungen</translation>
    </message>
    <message>
        <source>limit and time of Honda Civic FC, trouble code P2135 (9.02 % for 0.5 s), published for the two tracks of a throttle; the same time before a code in HUMMER H2 2009, C0625/C0630. For two corners of an axle no figure is published: take the maker's</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>Grenze und Zeit nach Honda Civic FC, Fehlercode P2135 (9,02 % für 0,5 s), veröffentlicht für die beiden Bahnen einer Drosselklappe; dieselbe Zeit vor einem Code in HUMMER H2 2009, C0625/C0630. Für zwei Ecken einer Achse ist kein Wert veröffentlicht: den des Herstellers nehmen</translation>
    </message>
    <message>
        <source>the limit of the difference must be above 0 %, got {came:g} %</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>die Grenze des Unterschieds muss über 0 % liegen, nicht bei {came:g} %</translation>
    </message>
    <message>
        <source>enter it in % of travel</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>sie in % des Wegs eingeben</translation>
    </message>
    <message>
        <source>waits {hold_s:.2f} s</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>wartet {hold_s:.2f} s</translation>
    </message>
    <message>
        <source>counts {up} up and {down} down to {limit}</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>um {up} hoch und um {down} herunter bis {limit} zählt</translation>
    </message>
    <message>
        <source>No stretch of time is shared by {one} and {other}: nothing can be compared.</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>{one} und {other} haben keine gemeinsame Zeit: es gibt nichts zu vergleichen.</translation>
    </message>
    <message>
        <source>All the time {one} and {other} agree within {limit:.1f} % of travel.</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>Die ganze Zeit stimmen {one} und {other} auf {limit:.1f} % des Wegs überein.</translation>
    </message>
    <message>
        <source>Between {one} and {other} the difference exceeds {limit:.1f} % of travel for {beyond_s:.2f} s of {whole_s:.1f} s, {longest_s:.2f} s at a time: too short for a control unit that {waits}, which would have stored no fault.</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>Zwischen {one} und {other} liegt der Unterschied {beyond_s:.2f} s von {whole_s:.1f} s über {limit:.1f} % des Wegs, höchstens {longest_s:.2f} s am Stück: zu kurz für ein Steuergerät ({waits}); es hätte keinen Fehler abgelegt.</translation>
    </message>
    <message>
        <source>Between {one} and {other} the difference exceeds {limit:.1f} % of travel for {beyond_s:.2f} s of {whole_s:.1f} s, {longest_s:.2f} s at a time: a control unit that {waits} would have stored a fault at {moment_s:.2f} s, which names both corners, whichever is bad.</source>
        <extracomment>analysis/comparison/corners.py</extracomment>
        <translation>Zwischen {one} und {other} liegt der Unterschied {beyond_s:.2f} s von {whole_s:.1f} s über {limit:.1f} % des Wegs, höchstens {longest_s:.2f} s am Stück: ein Steuergerät ({waits}) hätte bei {moment_s:.2f} s einen Fehler abgelegt, der beide Ecken nennt, gleich welche schlecht ist.</translation>
    </message>
    <message>
        <source>before</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>vorher</translation>
    </message>
    <message>
        <source>after</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>nachher</translation>
    </message>
    <message>
        <source>on the left</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>links</translation>
    </message>
    <message>
        <source>on the right</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>rechts</translation>
    </message>
    <message>
        <source>on the known good one</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>am guten Sensor</translation>
    </message>
    <message>
        <source>on this one</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>an diesem</translation>
    </message>
    <message>
        <source>on the other one</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>am anderen</translation>
    </message>
    <message>
        <source>Before</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Left</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Known good</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Guter Sensor</translation>
    </message>
    <message>
        <source>This one</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Dieser</translation>
    </message>
    <message>
        <source>The other one</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Der andere</translation>
    </message>
    <message>
        <source>These are two different sensors, {what}: not one before and after a repair.</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Das sind zwei verschiedene Sensoren, {what}: nicht einer vor und nach einer Reparatur.</translation>
    </message>
    <message>
        <source>Both are stated to be mounted {mounting}: not left and right.</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Bei beiden ist als Einbauort {mounting} angegeben: nicht links und rechts.</translation>
    </message>
    <message>
        <source>That both are of one and the same sensor position is taken as given: it is not stated.</source>
        <extracomment>analysis/comparison/pairing.py</extracomment>
        <translation>Dass beide von ein und demselben Einbauort stammen, ist nicht angegeben und wird angenommen.</translation>
    </message>
    <message>
        <source>of two cars, {one} and {two}</source>
        <extracomment>analysis/comparison/positions.py</extracomment>
        <translation>von zwei Fahrzeugen, {one} und {two}</translation>
    </message>
    <message>
        <source>of two kinds, {one} and {two}</source>
        <extracomment>analysis/comparison/positions.py</extracomment>
        <translation>zweierlei, {one} und {two}</translation>
    </message>
    <message>
        <source>mounted {one} and {two}</source>
        <extracomment>analysis/comparison/positions.py</extracomment>
        <translation>Einbauort {one} und {two}</translation>
    </message>
    <message>
        <source>with part numbers {one} and {two}</source>
        <extracomment>analysis/comparison/positions.py</extracomment>
        <translation>mit den Teilenummern {one} und {two}</translation>
    </message>
    <message>
        <source>it was not crossed {where}</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>sie wurde {where} nicht überfahren</translation>
    </message>
    <message>
        <source>it was crossed {count} × {one}, {more} × {other}</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>sie wurde {one} {count} × überfahren, {other} {more} ×</translation>
    </message>
    <message>
        <source>it was crossed at {speed:.0f} % of travel a second {one}, at {their_speed:.0f} {other}</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>sie wurde {one} mit {speed:.0f} % des Wegs je Sekunde überfahren, {other} mit {their_speed:.0f}</translation>
    </message>
    <message>
        <source>it was sampled {rate_hz:.0f} times a second {one}, {their_rate_hz:.0f} times {other}</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>{one} wurde {rate_hz:.0f}-mal je Sekunde abgetastet, {other} {their_rate_hz:.0f}-mal</translation>
    </message>
    <message>
        <source>break-up of {depth:.1f} % could not have been seen {one}, where it shows from {floor:.1f} % up</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>Aussetzer von {depth:.1f} % wären {one} nicht zu sehen gewesen, dort zeigen sie sich erst ab {floor:.1f} %</translation>
    </message>
    <message>
        <source>engine</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>Motor</translation>
    </message>
    <message>
        <source>consumers switched on</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>eingeschaltete Verbraucher</translation>
    </message>
    <message>
        <source>ignition</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>Zündung</translation>
    </message>
    <message>
        <source>sensor plugged in</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>angesteckter Sensor</translation>
    </message>
    <message>
        <source>{what}: not stated {one}</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>{what}: {one} nicht angegeben</translation>
    </message>
    <message>
        <source>the temperature differs by {gap_c:.0f} °C</source>
        <extracomment>analysis/comparison/tested.py</extracomment>
        <translation>die Temperatur unterscheidet sich um {gap_c:.0f} °C</translation>
    </message>
    <message>
        <source>Both sides show the same signal. Choose the other corner on one side.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Beide Seiten zeigen dasselbe Signal. Wählen Sie auf einer Seite die andere Ecke.</translation>
    </message>
    <message>
        <source>Both are of one corner, {mounting}. Two corners of an axle are needed, recorded together.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Beide sind von einer Ecke, {mounting}. Nötig sind zwei Ecken einer Achse, zusammen aufgezeichnet.</translation>
    </message>
    <message>
        <source>Both signals are tracks of one sensor. Two corners of an axle are needed.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Beide Signale sind Bahnen eines Sensors. Nötig sind zwei Ecken einer Achse.</translation>
    </message>
    <message>
        <source>They are of two cars. Two corners of one axle are needed, recorded together.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Sie sind von zwei Fahrzeugen. Nötig sind zwei Ecken einer Achse, zusammen aufgezeichnet.</translation>
    </message>
    <message>
        <source>Where each sensor is mounted is not stated. Two corners of an axle are needed, recorded together.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Wo die Sensoren eingebaut sind, ist nicht bei beiden angegeben. Nötig sind zwei Ecken einer Achse, zusammen aufgezeichnet.</translation>
    </message>
    <message>
        <source>The arm was moved by hand ({label}), not both corners together. Choose a record with the step Road on both sides.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Der Hebel wurde von Hand bewegt ({label}), nicht beide Ecken zusammen. Wählen Sie auf beiden Seiten eine Aufzeichnung mit dem Schritt Probefahrt.</translation>
    </message>
    <message>
        <source>Nothing moved both corners ({label}). Choose a record with the step Road on both sides.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Nichts hat beide Ecken bewegt ({label}). Wählen Sie auf beiden Seiten eine Aufzeichnung mit dem Schritt Probefahrt.</translation>
    </message>
    <message>
        <source>When they were recorded is not stated on both sides. Two corners can be set against each other only where they were recorded together.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Wann sie aufgezeichnet wurden, ist nicht auf beiden Seiten angegeben. Zwei Ecken lassen sich nur gegeneinander halten, wenn sie zusammen aufgezeichnet wurden.</translation>
    </message>
    <message>
        <source>They were recorded one after the other, at {one} and at {two}: the corners did not move together.</source>
        <extracomment>analysis/comparison/together.py</extracomment>
        <translation>Sie wurden nacheinander aufgezeichnet, um {one} und um {two}: Die Ecken haben sich nicht zusammen bewegt.</translation>
    </message>
    <message>
        <source>The band at {travel} is gone: the output broke up on {bad1} of {all1} crossings before, on none of {all2} after.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} ist verschwunden: Aussetzer vorher bei {bad1} von {all1} Überfahrten, nachher bei keiner von {all2}.</translation>
    </message>
    <message>
        <source>The band at {travel} breaks up less often, but is not gone: on {bad2} of {all2} crossings after, on {bad1} of {all1} before.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} setzt seltener aus, ist aber nicht verschwunden: nachher bei {bad2} von {all2} Überfahrten, vorher bei {bad1} von {all1}.</translation>
    </message>
    <message>
        <source>The band at {travel} is still there: the output broke up on {bad1} of {all1} crossings before, on {bad2} of {all2} after.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} ist noch da: Aussetzer vorher bei {bad1} von {all1} Überfahrten, nachher bei {bad2} von {all2}.</translation>
    </message>
    <message>
        <source>The band at {travel} breaks up more often: on {bad2} of {all2} crossings after, on {bad1} of {all1} before.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} setzt häufiger aus: nachher bei {bad2} von {all2} Überfahrten, vorher bei {bad1} von {all1}.</translation>
    </message>
    <message>
        <source>A band at {travel} has appeared: the output broke up on none of {all1} crossings before, on {bad2} of {all2} after.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Eine Zone bei {travel} ist entstanden: Aussetzer vorher bei keiner von {all1} Überfahrten, nachher bei {bad2} von {all2}.</translation>
    </message>
    <message>
        <source>The band at {travel} is {where1} alone: the output broke up on {bad1} of {all1} crossings there, on none of {all2} {where2}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} gibt es nur {where1}: Aussetzer dort bei {bad1} von {all1} Überfahrten, {where2} bei keiner von {all2}.</translation>
    </message>
    <message>
        <source>The band at {travel} breaks up less often {where2}: on {bad2} of {all2} crossings, on {bad1} of {all1} {where1}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} setzt {where2} seltener aus: bei {bad2} von {all2} Überfahrten, {where1} bei {bad1} von {all1}.</translation>
    </message>
    <message>
        <source>The band at {travel} is on both: the output broke up on {bad1} of {all1} crossings {where1}, on {bad2} of {all2} {where2}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} gibt es auf beiden Seiten: Aussetzer {where1} bei {bad1} von {all1} Überfahrten, {where2} bei {bad2} von {all2}.</translation>
    </message>
    <message>
        <source>The band at {travel} breaks up more often {where2}: on {bad2} of {all2} crossings, on {bad1} of {all1} {where1}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} setzt {where2} häufiger aus: bei {bad2} von {all2} Überfahrten, {where1} bei {bad1} von {all1}.</translation>
    </message>
    <message>
        <source>The band at {travel} is {where2} alone: the output broke up on {bad2} of {all2} crossings there, on none of {all1} {where1}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Die Zone bei {travel} gibt es nur {where2}: Aussetzer dort bei {bad2} von {all2} Überfahrten, {where1} bei keiner von {all1}.</translation>
    </message>
    <message>
        <source>The band at {travel} is not shown to be cured: {reasons}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Dass die Zone bei {travel} behoben ist, ist nicht nachgewiesen: {reasons}.</translation>
    </message>
    <message>
        <source>The band at {travel} is not shown to be new: {reasons}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Dass die Zone bei {travel} neu ist, ist nicht nachgewiesen: {reasons}.</translation>
    </message>
    <message>
        <source>Whether the band at {travel} is {where2} too is not shown: {reasons}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Ob es die Zone bei {travel} auch {where2} gibt, ist nicht nachgewiesen: {reasons}.</translation>
    </message>
    <message>
        <source>Whether the band at {travel} is {where1} too is not shown: {reasons}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Ob es die Zone bei {travel} auch {where1} gibt, ist nicht nachgewiesen: {reasons}.</translation>
    </message>
    <message>
        <source>{first} alone</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>nur {first}</translation>
    </message>
    <message>
        <source>less often {second}</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>seltener {second}</translation>
    </message>
    <message>
        <source>both</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>beide</translation>
    </message>
    <message>
        <source>more often {second}</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>öfter {second}</translation>
    </message>
    <message>
        <source>{second} alone</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>nur {second}</translation>
    </message>
    <message>
        <source>not shown</source>
        <extracomment>analysis/comparison/words.py, analysis/reports/checks.py</extracomment>
        <translation>nicht nachgewiesen</translation>
    </message>
    <message>
        <source>gone</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>verschwunden</translation>
    </message>
    <message>
        <source>less often</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>seltener</translation>
    </message>
    <message>
        <source>still there</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>noch da</translation>
    </message>
    <message>
        <source>more often</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>häufiger</translation>
    </message>
    <message>
        <source>appeared</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>entstanden</translation>
    </message>
    <message>
        <source>{start:.1f}–{stop:.1f} % of travel</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>{start:.1f}–{stop:.1f} % des Wegs</translation>
    </message>
    <message>
        <source>{title}: {value1_mv:.0f} mV {where1}, {value2_mv:.0f} mV {where2}; the difference of {difference_mv:.0f} mV exceeds its uncertainty of {spread_mv:.0f} mV.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>{title}: {where1} {value1_mv:.0f} mV, {where2} {value2_mv:.0f} mV; der Unterschied von {difference_mv:.0f} mV ist größer als seine Unsicherheit von {spread_mv:.0f} mV.</translation>
    </message>
    <message>
        <source>No reading differs by more than its uncertainty.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Kein Messwert unterscheidet sich um mehr als seine Unsicherheit.</translation>
    </message>
    <message>
        <source>No stretch of travel was tested on both sides.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Keine Strecke des Wegs wurde auf beiden Seiten geprüft.</translation>
    </message>
    <message>
        <source>Neither shows a band in the travel that both tested, {stretches}.</source>
        <extracomment>analysis/comparison/words.py</extracomment>
        <translation>Auf dem Weg, den beide geprüft haben, {stretches}, zeigt keine Seite eine Zone.</translation>
    </message>
    <message>
        <source>the time before the code sets must lie within 0 and {most_s:g} s, got {came_s:g} s</source>
        <extracomment>analysis/control_unit/debounce.py</extracomment>
        <translation>die Zeit bis zum Setzen des Codes muss zwischen 0 und {most_s:g} s liegen, nicht bei {came_s:g} s</translation>
    </message>
    <message>
        <source>enter it in seconds</source>
        <extracomment>analysis/control_unit/debounce.py</extracomment>
        <translation>sie in Sekunden eingeben</translation>
    </message>
    <message>
        <source>a fault counter must count up by 1 or more, down by 0 or more, to a limit of 1 or more; got {up}, {down} and {limit}</source>
        <extracomment>analysis/control_unit/debounce.py</extracomment>
        <translation>ein Fehlerzähler muss um 1 oder mehr hochzählen, um 0 oder mehr herunter, bis zu einer Grenze von 1 oder mehr; angegeben sind {up}, {down} und {limit}</translation>
    </message>
    <message>
        <source>correct the counter</source>
        <extracomment>analysis/control_unit/debounce.py</extracomment>
        <translation>den Zähler berichtigen</translation>
    </message>
    <message>
        <source>the record has a sample every {sample_ms:.3g} ms, and the control unit reads every {reading_ms:.3g} ms</source>
        <extracomment>analysis/control_unit/replay.py</extracomment>
        <translation>die Aufzeichnung hat alle {sample_ms:.3g} ms einen Messwert, das Steuergerät liest alle {reading_ms:.3g} ms</translation>
    </message>
    <message>
        <source>choose a control unit that reads no faster than the record</source>
        <extracomment>analysis/control_unit/replay.py</extracomment>
        <translation>ein Steuergerät wählen, das nicht schneller liest als die Aufzeichnung</translation>
    </message>
    <message>
        <source>the fastest change must be above 0 V/s, got {came:g}</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>die schnellste Änderung muss über 0 V/s liegen, nicht bei {came:g}</translation>
    </message>
    <message>
        <source>enter it in V/s</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>sie in V/s eingeben</translation>
    </message>
    <message>
        <source>the largest disagreement must be above 0 V, got {came:g}</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>die größte Abweichung muss über 0 V liegen, nicht bei {came:g}</translation>
    </message>
    <message>
        <source>enter it in volts</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>sie in Volt eingeben</translation>
    </message>
    <message>
        <source>a control unit reads every {least_ms:g} to {most_ms:g} ms, got {came_ms:g} ms</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>ein Steuergerät liest alle {least_ms:g} bis {most_ms:g} ms, nicht alle {came_ms:g} ms</translation>
    </message>
    <message>
        <source>enter the time between two readings</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>die Zeit zwischen zwei Ablesungen eingeben</translation>
    </message>
    <message>
        <source>Saab 9-7X 2009, DTC 002: read at 50 ms intervals</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>Saab 9-7X 2009, DTC 002: Ablesung alle 50 ms</translation>
    </message>
    <message>
        <source>HUMMER H2 2009, DTC C0625 or C0630: for more than 500 ms</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>HUMMER H2 2009, DTC C0625 oder C0630: länger als 500 ms</translation>
    </message>
    <message>
        <source>HUMMER H2 2009, DTC C0625 or C0630, without figures; 1 V and 2 s: common practice, no source</source>
        <extracomment>analysis/control_unit/rules.py</extracomment>
        <translation>HUMMER H2 2009, DTC C0625 oder C0630, ohne Zahlen; 1 V und 2 s: allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <extracomment>analysis/control_unit/rules.py, analysis/diagnosis/checks.py</extracomment>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Probe the signal at both ends at once and wiggle the harness section by section; look at the sensor's pins.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Das Signal an beiden Enden zugleich messen und den Kabelbaum Abschnitt für Abschnitt bewegen; die Steckkontakte des Sensors ansehen.</translation>
    </message>
    <message>
        <source>Unplug this sensor, then each other one on the same feed: does the reference return?</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Diesen Sensor abstecken, dann jeden anderen an derselben Versorgung: Kommt die Bezugsspannung zurück?</translation>
    </message>
    <message>
        <source>Measure the drop from sensor ground to battery negative with the consumers on, then unplug this sensor: does it go?</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Den Spannungsabfall von der Sensormasse zum Minuspol der Batterie bei eingeschalteten Verbrauchern messen, dann diesen Sensor abstecken: Verschwindet er?</translation>
    </message>
    <message>
        <source>Measure the real height, look at the link, and check that the profile is the right one.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Die tatsächliche Höhe messen, das Gestänge ansehen und prüfen, ob das Sensorprofil stimmt.</translation>
    </message>
    <message>
        <source>Capture the new sensor in the same way and compare; calibrate it by the maker's method.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Den neuen Sensor ebenso messen und vergleichen; nach Herstellervorgabe kalibrieren.</translation>
    </message>
    <message>
        <source>Capture the new sensor in the same way and compare.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Den neuen Sensor ebenso messen und vergleichen.</translation>
    </message>
    <message>
        <source>It breaks up with nobody touching anything: with both plugs off, measure the signal wire from end to end. More than a few ohms is corrosion, or a poor splice or pin.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Es setzt aus, ohne dass jemand etwas berührt: bei abgezogenen Steckern die Signalleitung von Ende zu Ende messen. Mehr als ein paar Ohm sind Korrosion, eine schlechte Verbindung oder ein schlechter Kontakt.</translation>
    </message>
    <message>
        <source>Record the ground with the sensor plugged in and the ignition on.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Die Masse bei angestecktem Sensor und eingeschalteter Zündung aufzeichnen.</translation>
    </message>
    <message>
        <source>Record the reference with the sensor plugged in and the ignition on.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Die Bezugsspannung bei angestecktem Sensor und eingeschalteter Zündung aufzeichnen.</translation>
    </message>
    <message>
        <source>Sweep the arm slowly through its whole travel, four times, hands off the harness.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Den Hebel viermal langsam über seinen ganzen Weg bewegen, Hände weg vom Kabelbaum.</translation>
    </message>
    <message>
        <source>Sweep to both stops of the arm; only {low:.0f}–{high:.0f} % was visited.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Fahren Sie den Hebel bis an beide Anschläge; nur {low:.0f}–{high:.0f} % wurden befahren.</translation>
    </message>
    <message>
        <source>Sweep past {low:.0f}–{high:.0f} % {missing} more times, slowly, hands off the harness.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Noch {missing} Mal langsam über {low:.0f}–{high:.0f} % fahren, Hände weg vom Kabelbaum.</translation>
    </message>
    <message>
        <source>Hold the arm still at {place:.0f} % for ten seconds, hands off, and record it.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Den Hebel bei {place:.0f} % zehn Sekunden lang stillhalten, Hände weg, und aufzeichnen.</translation>
    </message>
    <message>
        <source>Record the second track in the same sweeps.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Die zweite Bahn bei denselben Durchläufen mit aufzeichnen.</translation>
    </message>
    <message>
        <source>Hold the arm at a few known positions and record both tracks: which of them does not fit is the wrong one.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Halten Sie den Hebel in einigen bekannten Stellungen und zeichnen Sie beide Bahnen auf: Die nicht passt, ist die falsche.</translation>
    </message>
    <message>
        <source>Sweep through the height at which the car stands.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Durch die Höhe fahren, in der das Fahrzeug steht.</translation>
    </message>
    <message>
        <source>Wiggle the harness with the arm at rest and the signal watched.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Bei ruhendem Hebel am Kabelbaum wackeln und dabei das Signal aufzeichnen.</translation>
    </message>
    <message>
        <source>Record again so that no samples are lost: close other programs on the recorder, or sample more slowly.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Noch einmal so aufzeichnen, dass keine Messwerte verloren gehen: andere Programme am Rekorder schließen oder langsamer abtasten.</translation>
    </message>
    <message>
        <source>Record faster: {rate_hz:.0f} samples a second miss most break-ups; take {enough_hz:,} or more.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Schneller aufzeichnen: {rate_hz:.0f} Messwerte je Sekunde übersehen die meisten Aussetzer; {enough_hz:,} oder mehr nehmen.</translation>
    </message>
    <message>
        <source>Record the ground once more, away from what disturbs the probes.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Die Masse noch einmal aufzeichnen, fern von dem, was die Prüfspitzen stört.</translation>
    </message>
    <message>
        <source>Record the reference once more, away from what disturbs the probes.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Die Bezugsspannung noch einmal aufzeichnen, fern von dem, was die Prüfspitzen stört.</translation>
    </message>
    <message>
        <source>Record the ground once more in a smaller range, so that the recorder's steps are finer.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Masse noch einmal in einem kleineren Messbereich aufzeichnen, damit die Stufen des Rekorders feiner werden.</translation>
    </message>
    <message>
        <source>Record the reference once more in a smaller range, so that the recorder's steps are finer.</source>
        <extracomment>analysis/diagnosis/advice.py</extracomment>
        <translation>Bezugsspannung noch einmal in einem kleineren Messbereich aufzeichnen, damit die Stufen des Rekorders feiner werden.</translation>
    </message>
    <message>
        <source>this program</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>dieses Programm</translation>
    </message>
    <message>
        <source>Sensor ground, unplugged</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Sensormasse, abgesteckt</translation>
    </message>
    <message>
        <source>Sensor ground</source>
        <extracomment>analysis/diagnosis/checks.py, analysis/diagnosis/evidence.py</extracomment>
        <translation>Sensormasse</translation>
    </message>
    <message>
        <source>Ground, steadiness</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Masse, Schwankung</translation>
    </message>
    <message>
        <source>Reference, steadiness</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Bezugsspannung, Schwankung</translation>
    </message>
    <message>
        <source>Signal change at rest</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Signaländerung in Ruhe</translation>
    </message>
    <message>
        <source>Outermost level of the signal while it follows the arm</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Äußerster Pegel des Signals, solange es dem Hebel folgt</translation>
    </message>
    <message>
        <source>It breaks away from the arm, down to {low_v:.2f} V; that is not judged here.</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Es weicht vom Hebel ab, hinunter bis {low_v:.2f} V; das wird hier nicht bewertet.</translation>
    </message>
    <message>
        <source>It breaks away from the arm, up to {high_v:.2f} V; that is not judged here.</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Es weicht vom Hebel ab, hinauf bis {high_v:.2f} V; das wird hier nicht bewertet.</translation>
    </message>
    <message>
        <source>It breaks away from the arm, down to {low_v:.2f} V and up to {high_v:.2f} V; that is not judged here.</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Es weicht vom Hebel ab, hinunter bis {low_v:.2f} V und hinauf bis {high_v:.2f} V; das wird hier nicht bewertet.</translation>
    </message>
    <message>
        <source>Output smoothness</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Glätte des Ausgangs</translation>
    </message>
    <message>
        <source>Output smoothness, second track</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Glätte des Ausgangs, zweite Bahn</translation>
    </message>
    <message>
        <source>samples/s</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Messwerte/s</translation>
    </message>
    <message>
        <source>Sampling</source>
        <extracomment>analysis/diagnosis/checks.py</extracomment>
        <translation>Abtastung</translation>
    </message>
    <message>
        <source>Both tracks agree</source>
        <extracomment>analysis/diagnosis/checks_tracks.py</extracomment>
        <translation>Beide Bahnen stimmen überein</translation>
    </message>
    <message>
        <source>Span of the sweep</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Spanne des Durchlaufs</translation>
    </message>
    <message>
        <source>Span of the sweep, ends not reached</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Spanne des Durchlaufs, Enden nicht erreicht</translation>
    </message>
    <message>
        <source>Low end of the sweep</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Unteres Ende des Durchlaufs</translation>
    </message>
    <message>
        <source>Low end of the sweep, stop not reached</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Unteres Ende des Durchlaufs, Anschlag nicht erreicht</translation>
    </message>
    <message>
        <source>High end of the sweep</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Oberes Ende des Durchlaufs</translation>
    </message>
    <message>
        <source>High end of the sweep, stop not reached</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Oberes Ende des Durchlaufs, Anschlag nicht erreicht</translation>
    </message>
    <message>
        <source>Bourns 6657 data sheet</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Bourns 6657 data sheet</translation>
    </message>
    <message>
        <source>Bourns 6657 data sheet, once for each of both tracks</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Bourns 6657 data sheet, je einmal für beide Bahnen</translation>
    </message>
    <message>
        <source>Linearity against the second track, independent</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Linearität gegen die zweite Bahn, unabhängig</translation>
    </message>
    <message>
        <source>Linearity, independent</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Linearität, unabhängig</translation>
    </message>
    <message>
        <source>no limit is known</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>keine Grenze bekannt</translation>
    </message>
    <message>
        <source>Linearity against the second track, through both ends</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Linearität gegen die zweite Bahn, durch beide Enden</translation>
    </message>
    <message>
        <source>Linearity, through both ends</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Linearität, durch beide Enden</translation>
    </message>
    <message>
        <source>A-A-52176, Table VII</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>A-A-52176, Table VII</translation>
    </message>
    <message>
        <source>Up against down, between the tracks</source>
        <extracomment>analysis/diagnosis/checks_travel.py</extracomment>
        <translation>Auf gegen ab, zwischen den Bahnen</translation>
    </message>
    <message>
        <source>no accuracy is stated</source>
        <extracomment>analysis/diagnosis/checks_zero.py</extracomment>
        <translation>keine Genauigkeit angegeben</translation>
    </message>
    <message>
        <source>Zero of the recorder</source>
        <extracomment>analysis/diagnosis/checks_zero.py</extracomment>
        <translation>Nullpunkt des Rekorders</translation>
    </message>
    <message>
        <source>the recorder's stated accuracy</source>
        <extracomment>analysis/diagnosis/checks_zero.py</extracomment>
        <translation>angegebene Genauigkeit des Rekorders</translation>
    </message>
    <message>
        <source>With its probes held together the recorder reads {offset_mv:.1f} mV: within its stated accuracy.</source>
        <extracomment>analysis/diagnosis/checks_zero.py</extracomment>
        <translation>Mit zusammengehaltenen Prüfspitzen zeigt der Rekorder {offset_mv:.1f} mV: innerhalb seiner angegebenen Genauigkeit.</translation>
    </message>
    <message>
        <source>With its probes held together the recorder reads {offset_mv:.1f} mV, more than its stated accuracy: every level here may be off by that.</source>
        <extracomment>analysis/diagnosis/checks_zero.py</extracomment>
        <translation>Mit zusammengehaltenen Prüfspitzen zeigt der Rekorder {offset_mv:.1f} mV, mehr als seine angegebene Genauigkeit: Jeder Pegel hier kann um so viel falsch sein.</translation>
    </message>
    <message>
        <source>With its probes held together the recorder reads {offset_mv:.1f} mV; whether that is within its accuracy cannot be told.</source>
        <extracomment>analysis/diagnosis/checks_zero.py</extracomment>
        <translation>Mit zusammengehaltenen Prüfspitzen zeigt der Rekorder {offset_mv:.1f} mV; ob das innerhalb seiner Genauigkeit liegt, ist nicht zu sagen.</translation>
    </message>
    <message>
        <source>nothing was read</source>
        <extracomment>analysis/diagnosis/checks_zero.py</extracomment>
        <translation>nichts gemessen</translation>
    </message>
    <message>
        <source>zero at {offset_mv:.1f} mV</source>
        <extracomment>analysis/diagnosis/checks_zero.py</extracomment>
        <translation>Nullpunkt bei {offset_mv:.1f} mV</translation>
    </message>
    <message>
        <source>The evidence is complete: every stretch was tested at least {count} times.</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Die Belege sind vollständig: Jeder Abschnitt wurde mindestens {count}-mal geprüft.</translation>
    </message>
    <message>
        <source>ENOUGH</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>GENUG</translation>
    </message>
    <message>
        <source>Sweep the arm</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Hebel durchfahren</translation>
    </message>
    <message>
        <source>Sweep again, slowly</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Noch einmal, langsam</translation>
    </message>
    <message>
        <source>Take {seconds:.1f} s or more for a full stroke: a faster one leaves too few samples in it.</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Nehmen Sie sich {seconds:.1f} s oder mehr für einen ganzen Hub: Ein schnellerer lässt zu wenige Messwerte.</translation>
    </message>
    <message>
        <source>Go to the ends</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Bis an die Enden fahren</translation>
    </message>
    <message>
        <source>Slower</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Langsamer</translation>
    </message>
    <message>
        <source>Slower between {low:.0f} and {high:.0f} %</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Langsamer zwischen {low:.0f} und {high:.0f} %</translation>
    </message>
    <message>
        <source>{low:.0f}–{high:.0f} % not done</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>{low:.0f}–{high:.0f} % fehlen</translation>
    </message>
    <message>
        <source>{low:.0f}–{high:.0f} %: once more</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>{low:.0f}–{high:.0f} %: noch einmal</translation>
    </message>
    <message>
        <source>{low:.0f}–{high:.0f} %: {count} more times</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>{low:.0f}–{high:.0f} %: noch {count} Mal</translation>
    </message>
    <message>
        <source>Measure again</source>
        <extracomment>analysis/diagnosis/enough.py, analysis/reports/verdicts.py</extracomment>
        <translation>Noch einmal messen</translation>
    </message>
    <message>
        <source>Sweep past {low:.0f}–{high:.0f} %</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Über {low:.0f}–{high:.0f} % fahren</translation>
    </message>
    <message>
        <source>Hold still at {place:.0f} %</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Bei {place:.0f} % stillhalten</translation>
    </message>
    <message>
        <source>Record the second track</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Zweite Bahn aufnehmen</translation>
    </message>
    <message>
        <source>Sweep past the rest height</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Über die Ruhehöhe fahren</translation>
    </message>
    <message>
        <source>Wiggle the harness</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Am Kabelbaum rütteln</translation>
    </message>
    <message>
        <source>Record faster</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Schneller abtasten</translation>
    </message>
    <message>
        <source>Now probe the ground</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Jetzt Masse messen</translation>
    </message>
    <message>
        <source>Now probe the reference</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Jetzt Bezugsspannung messen</translation>
    </message>
    <message>
        <source>Probe the ground again, smaller range</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Masse erneut, kleinerer Messbereich</translation>
    </message>
    <message>
        <source>Probe the reference again, smaller range</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Bezugsspannung erneut, kleinerer Messbereich</translation>
    </message>
    <message>
        <source>Probe the ground again</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Masse noch einmal messen</translation>
    </message>
    <message>
        <source>Probe the reference again</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Bezugsspannung noch einmal messen</translation>
    </message>
    <message>
        <source>Read the advice</source>
        <extracomment>analysis/diagnosis/enough.py</extracomment>
        <translation>Rat lesen</translation>
    </message>
    <message>
        <source>The capture is no measurement of the sensor: {text}.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Die Messung ist keine Messung des Sensors: {text}.</translation>
    </message>
    <message>
        <source>The probes measured what they should.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Die Prüfspitzen haben gemessen, was sie sollten.</translation>
    </message>
    <message>
        <source>{name} was not recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name} wurde nicht aufgezeichnet.</translation>
    </message>
    <message>
        <source>{name} is not good: {reading}, moving by {moved_mv:.0f} mV.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name} ist nicht in Ordnung: {reading}, schwankt um {moved_mv:.0f} mV.</translation>
    </message>
    <message>
        <source>{name} reads {reading} unplugged: not shown under load.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name}: {reading} bei abgestecktem Sensor, unter Last nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>{name} is not good: {reading}.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name} ist nicht in Ordnung: {reading}.</translation>
    </message>
    <message>
        <source>{name} is not good: {reading} at times.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name} ist nicht in Ordnung: zeitweise {reading}.</translation>
    </message>
    <message>
        <source>{name} reads {reading}, too near its limit to tell.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name}: {reading}, zu nah an der Grenze, um es zu entscheiden.</translation>
    </message>
    <message>
        <source>{name} reads {reading}; this recorder's steps are too coarse to tell whether it holds still.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name}: {reading}; die Stufen dieses Rekorders sind zu grob, um zu sagen, ob das so bleibt.</translation>
    </message>
    <message>
        <source>{name} reads {reading}, but moves by {moved_mv:.0f} mV: too near the limit to tell whether it holds still.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name}: {reading}, schwankt aber um {moved_mv:.0f} mV: zu nah an der Grenze, um „ruhig“ zu sagen.</translation>
    </message>
    <message>
        <source>{name} is good: {reading}, but was not watched during the sweep.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name} ist in Ordnung: {reading}, wurde aber während der Durchläufe nicht beobachtet.</translation>
    </message>
    <message>
        <source>{name} is good: {reading} and holds still.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{name} ist in Ordnung: {reading}, und bleibt stabil.</translation>
    </message>
    <message>
        <source>{level_mv:.0f} mV</source>
        <extracomment>analysis/diagnosis/evidence.py, analysis/diagnosis/summary.py</extracomment>
        <translation>{level_mv:.0f} mV</translation>
    </message>
    <message>
        <source>{level_v:.2f} V</source>
        <extracomment>analysis/diagnosis/evidence.py, analysis/diagnosis/summary.py</extracomment>
        <translation>{level_v:.2f} V</translation>
    </message>
    <message>
        <source>The reference</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Die Bezugsspannung</translation>
    </message>
    <message>
        <source>The harness was not wiggled with the signal watched.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Am Kabelbaum wurde nicht gewackelt, während das Signal aufgezeichnet wurde.</translation>
    </message>
    <message>
        <source>The signal breaks up while the harness is wiggled and the arm rests.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Das Signal setzt aus, während am Kabelbaum gewackelt wird und der Hebel ruht.</translation>
    </message>
    <message>
        <source>The signal breaks up while the harness is wiggled, and not at a worn place; the arm moved meanwhile, so this does not tell which of the two did it.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Das Signal setzt aus, während am Kabelbaum gewackelt wird, und nicht an einer verschlissenen Stelle; der Hebel bewegte sich dabei, daher zeigt das nicht, woran von beidem es lag.</translation>
    </message>
    <message>
        <source>The output breaks up at {start:.1f}–{stop:.1f} % of travel, which was crossed once: on {noisy} of {count} crossing.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Das Signal setzt bei {start:.1f}–{stop:.1f} % des Wegs aus; einmal überfahren: bei {noisy} von {count} Überfahrt.</translation>
    </message>
    <message>
        <source>The output breaks up at the same spot every time: {start:.1f}–{stop:.1f} % of travel, on {noisy} of {count} crossings.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Das Signal setzt jedes Mal an derselben Stelle aus: {start:.1f}–{stop:.1f} % des Wegs, bei {noisy} von {count} Überfahrten.</translation>
    </message>
    <message>
        <source>It breaks up in both directions.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Es setzt in beiden Richtungen aus.</translation>
    </message>
    <message>
        <source>It was seen in one direction only.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Es war nur in einer Richtung zu sehen.</translation>
    </message>
    <message>
        <source>The arm was not held still in the spot: a probe or loom that moves with it is not ruled out.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Der Hebel wurde an der Stelle nicht stillgehalten: Eine Prüfspitze oder ein Kabel, das sich mitbewegt, ist nicht ausgeschlossen.</translation>
    </message>
    <message>
        <source>At rest in the spot the reading wanders by itself, hands off.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>In Ruhe an der Stelle wandert der Wert von selbst, ohne Berührung.</translation>
    </message>
    <message>
        <source>At rest in the spot the reading was quiet; a loom that moves with the arm is not ruled out.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>In Ruhe an der Stelle war der Wert ruhig; ein Kabel, das sich mit dem Hebel bewegt, ist nicht ausgeschlossen.</translation>
    </message>
    <message>
        <source>The signal also breaks up at moments that belong to no place on the travel.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Das Signal setzt auch in Augenblicken aus, die zu keiner Stelle des Wegs gehören.</translation>
    </message>
    <message>
        <source>The two tracks agree: {apart_mv:.0f} mV apart.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Die beiden Bahnen stimmen überein: {apart_mv:.0f} mV Unterschied.</translation>
    </message>
    <message>
        <source>The two tracks disagree: {apart_mv:.0f} mV apart.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Die beiden Bahnen weichen voneinander ab: {apart_mv:.0f} mV Unterschied.</translation>
    </message>
    <message>
        <source>The two tracks may disagree: {apart_mv:.0f} mV apart.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Die beiden Bahnen weichen möglicherweise voneinander ab: {apart_mv:.0f} mV Unterschied.</translation>
    </message>
    <message>
        <source>Both tracks were recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Beide Bahnen wurden aufgezeichnet.</translation>
    </message>
    <message>
        <source>{title} has two tracks; only one was recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>{title} hat zwei Bahnen; nur eine wurde aufgezeichnet.</translation>
    </message>
    <message>
        <source>No sweep of the arm was recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Es wurde kein Durchlauf des Hebels aufgezeichnet.</translation>
    </message>
    <message>
        <source>The travel tested is {low:.0f}–{high:.0f} %; where the arm normally rests was not recorded.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Geprüft wurde der Weg von {low:.0f}–{high:.0f} %; wo der Hebel gewöhnlich ruht, wurde nicht aufgezeichnet.</translation>
    </message>
    <message>
        <source>The travel tested, {low:.0f}–{high:.0f} %, includes where the arm rests, {rest:.0f} %.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Der geprüfte Weg, {low:.0f}–{high:.0f} %, schließt die Ruhelage des Hebels ein, {rest:.0f} %.</translation>
    </message>
    <message>
        <source>The travel tested, {low:.0f}–{high:.0f} %, leaves out where the arm rests, {rest:.0f} %.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Der geprüfte Weg, {low:.0f}–{high:.0f} %, lässt die Ruhelage des Hebels aus, {rest:.0f} %.</translation>
    </message>
    <message>
        <source>The signal was probed at both ends of its wire.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Das Signal wurde an beiden Enden seiner Leitung gemessen.</translation>
    </message>
    <message>
        <source>Wiring between sensor and control unit: not shown, since only the control-unit end was probed.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Leitung zwischen Sensor und Steuergerät: nicht nachgewiesen, da nur am Steuergerät gemessen wurde.</translation>
    </message>
    <message>
        <source>Wiring between sensor and control unit: not shown, since only the sensor end was probed.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Leitung zwischen Sensor und Steuergerät: nicht nachgewiesen, da nur am Sensor gemessen wurde.</translation>
    </message>
    <message>
        <source>Wiring between sensor and control unit: not shown, since only one end was probed.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Leitung zwischen Sensor und Steuergerät: nicht nachgewiesen, da nur ein Ende gemessen wurde.</translation>
    </message>
    <message>
        <source>No known sensor profile was named: a potentiometer with a contact track on {supply_v:.0f} V is assumed.</source>
        <extracomment>analysis/diagnosis/evidence.py</extracomment>
        <translation>Es wurde kein bekanntes Sensorprofil genannt: Angenommen wird ein Potentiometer mit Schleifbahn an {supply_v:.0f} V.</translation>
    </message>
    <message>
        <source>Tapping the sensor does not disturb the output.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Klopfen am Sensor stört das Signal nicht.</translation>
    </message>
    <message>
        <source>Warm, the output stays quiet.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Warm bleibt das Signal ruhig.</translation>
    </message>
    <message>
        <source>Cold, the output stays quiet.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Kalt bleibt das Signal ruhig.</translation>
    </message>
    <message>
        <source>Wet, the output stays quiet.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Nass bleibt das Signal ruhig.</translation>
    </message>
    <message>
        <source>Tapping the sensor disturbs the output; left alone it is quiet.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Klopfen am Sensor stört das Signal; in Ruhe gelassen ist es ruhig.</translation>
    </message>
    <message>
        <source>It breaks up only when warm; the other records are quiet.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Es setzt nur warm aus; die anderen Aufzeichnungen sind ruhig.</translation>
    </message>
    <message>
        <source>It breaks up only when cold; the other records are quiet.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Es setzt nur kalt aus; die anderen Aufzeichnungen sind ruhig.</translation>
    </message>
    <message>
        <source>It breaks up only when wet; the other records are quiet.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Es setzt nur nass aus; die anderen Aufzeichnungen sind ruhig.</translation>
    </message>
    <message>
        <source>It breaks up while the sensor is tapped, and without it too.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Es setzt aus, während am Sensor geklopft wird, und sonst auch.</translation>
    </message>
    <message>
        <source>It breaks up when warm, and otherwise too.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Es setzt warm aus, und sonst auch.</translation>
    </message>
    <message>
        <source>It breaks up when cold, and otherwise too.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Es setzt kalt aus, und sonst auch.</translation>
    </message>
    <message>
        <source>It breaks up when wet, and otherwise too.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Es setzt nass aus, und sonst auch.</translation>
    </message>
    <message>
        <source>The signal was not watched in the record taken for this: {records}.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>In der Aufzeichnung, die dafür gemacht wurde, fehlt das Signal: {records}.</translation>
    </message>
    <message>
        <source>It breaks up on {cool} of {cool_all} crossings below {border:.0f} °C and on {warm} of {warm_all} above: no difference is shown.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Aussetzer bei {cool} von {cool_all} Überfahrten unter {border:.0f} °C und bei {warm} von {warm_all} darüber: Ein Unterschied ist nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>It depends on the temperature: {cool} of {cool_all} crossings break up below {border:.0f} °C, {warm} of {warm_all} above.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Es hängt von der Temperatur ab: Aussetzer bei {cool} von {cool_all} Überfahrten unter {border:.0f} °C, bei {warm} von {warm_all} darüber.</translation>
    </message>
    <message>
        <source>Unplugged, the signal wire stands at {level_v:.2f} V, neither high nor low: something else feeds it.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Abgesteckt liegt die Signalleitung bei {level_v:.2f} V, weder hoch noch tief: Etwas anderes speist sie.</translation>
    </message>
    <message>
        <source>Unplugged, the signal wire shows its pull-up: {level_v:.2f} V.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Abgesteckt zeigt die Signalleitung ihren Pull-up-Widerstand: {level_v:.2f} V.</translation>
    </message>
    <message>
        <source>Unplugged, the signal wire shows its pull-down, or none: {level_v:.2f} V.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Abgesteckt zeigt die Signalleitung ihren Pull-down-Widerstand oder keinen: {level_v:.2f} V.</translation>
    </message>
    <message>
        <source>The break-ups go where the unplugged wire stands: the contact opens.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Die Aussetzer gehen dorthin, wo die abgesteckte Leitung liegt: Der Kontakt öffnet.</translation>
    </message>
    <message>
        <source>The break-ups go the other way than the unplugged wire: more than a contact that opens.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Die Aussetzer gehen in die andere Richtung als die abgesteckte Leitung: mehr als ein Kontakt, der öffnet.</translation>
    </message>
    <message>
        <source>With the sensor unplugged the signal wire is quiet.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Bei abgestecktem Sensor ist die Signalleitung ruhig.</translation>
    </message>
    <message>
        <source>The signal wire is disturbed with the sensor unplugged too: that is not the sensor's doing.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Die Signalleitung ist auch bei abgestecktem Sensor gestört: Das liegt nicht am Sensor.</translation>
    </message>
    <message>
        <source>Unplugged, the reference returns to {level_v:.2f} V: this sensor, or its load, pulls it.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Abgesteckt kehrt die Bezugsspannung auf {level_v:.2f} V zurück: Dieser Sensor oder seine Last zieht sie herunter.</translation>
    </message>
    <message>
        <source>Unplugged, the reference stays at {level_v:.2f} V: it is not this sensor.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Abgesteckt bleibt die Bezugsspannung bei {level_v:.2f} V: Dieser Sensor ist es nicht.</translation>
    </message>
    <message>
        <source>sensor unplugged</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Sensor abgesteckt</translation>
    </message>
    <message>
        <source>What is said holds for these conditions: {conditions}.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Das Gesagte gilt für diese Bedingungen: {conditions}.</translation>
    </message>
    <message>
        <source>ignition {told}</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Zündung {told}</translation>
    </message>
    <message>
        <source>engine {told}</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Motor {told}</translation>
    </message>
    <message>
        <source>loads {told}</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Verbraucher {told}</translation>
    </message>
    <message>
        <source>moved {told}</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>bewegt {told}</translation>
    </message>
    <message>
        <source>{told} °C</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>{told} °C</translation>
    </message>
    <message>
        <source>The signal was probed at: {points}; against: {returns}.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Gemessen wurde das Signal: {points}; gegen: {returns}.</translation>
    </message>
    <message>
        <source>The signal was probed at: {points}; against what is not stated.</source>
        <extracomment>analysis/diagnosis/evidence_conditions.py</extracomment>
        <translation>Gemessen wurde das Signal: {points}; wogegen, ist nicht angegeben.</translation>
    </message>
    <message>
        <source>The recorder seems to have lost samples without marking it, {count} time (in {records}): the signal leaps to where the motion goes. That is no fault of the sensor, and is not counted.</source>
        <extracomment>analysis/diagnosis/evidence_recorder.py</extracomment>
        <translation>Der Rekorder hat anscheinend Messwerte verloren, ohne es zu vermerken, {count} Mal (in {records}): Das Signal springt dorthin, wohin die Bewegung führt. Das ist kein Fehler des Sensors und wird nicht gezählt.</translation>
    </message>
    <message>
        <source>The recorder seems to have lost samples without marking it, {count} times (in {records}): the signal leaps to where the motion goes. That is no fault of the sensor, and is not counted.</source>
        <extracomment>analysis/diagnosis/evidence_recorder.py</extracomment>
        <translation>Der Rekorder hat anscheinend Messwerte verloren, ohne es zu vermerken, {count} Mal (in {records}): Das Signal springt dorthin, wohin die Bewegung führt. Das ist kein Fehler des Sensors und wird nicht gezählt.</translation>
    </message>
    <message>
        <source>Only {rate_hz:.0f} samples a second were taken: between them a fast stroke passes a bad spot unseen.</source>
        <extracomment>analysis/diagnosis/evidence_sampling.py</extracomment>
        <translation>Es wurden nur {rate_hz:.0f} Werte pro Sekunde aufgenommen: dazwischen geht ein schneller Durchlauf ungesehen über eine schlechte Stelle.</translation>
    </message>
    <message>
        <source>At {count} moment all probes showed the same disturbance, of up to {size_v:.2f} V: interference. It is taken out of what is said of the signal.</source>
        <extracomment>analysis/diagnosis/evidence_sampling.py</extracomment>
        <translation>{count}-mal zeigten alle Messspitzen dieselbe Störung, bis {size_v:.2f} V: eine Einstreuung. Sie ist aus dem, was über das Signal gesagt wird, herausgerechnet.</translation>
    </message>
    <message>
        <source>At {count} moments all probes showed the same disturbance, of up to {size_v:.2f} V: interference. It is taken out of what is said of the signal.</source>
        <extracomment>analysis/diagnosis/evidence_sampling.py</extracomment>
        <translation>{count}-mal zeigten alle Messspitzen dieselbe Störung, bis {size_v:.2f} V: eine Einstreuung. Sie ist aus dem, was über das Signal gesagt wird, herausgerechnet.</translation>
    </message>
    <message>
        <source>Where the first track was lost, {seconds:.2f} s in all, the second told where the arm was: the place of the fault is read from a track without it.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Wo die erste Bahn ausfiel, insgesamt {seconds:.2f} s, sagte die zweite, wo der Hebel war: Die Stelle des Fehlers ist an einer Bahn abgelesen, die ihn nicht hat.</translation>
    </message>
    <message>
        <source>Where the second track was lost, {seconds:.2f} s in all, the first told where the arm was: the place of the fault is read from a track without it.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Wo die zweite Bahn ausfiel, insgesamt {seconds:.2f} s, sagte die erste, wo der Hebel war: Die Stelle des Fehlers ist an einer Bahn abgelesen, die ihn nicht hat.</translation>
    </message>
    <message>
        <source>Held against the second track, the output departs from a straight line by {away:.1f} {share} at most; what both tracks do together, and play in the linkage, does not show.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Gegen die zweite Bahn gehalten, weicht das Signal höchstens um {away:.1f} {share} von einer Geraden ab; was beide Bahnen gemeinsam tun und Spiel im Gestänge zeigt sich so nicht.</translation>
    </message>
    <message>
        <source>Held against the positions that were stated, the output departs from a straight line by {away:.1f} {share} at most.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Gegen die angegebenen Stellungen gehalten, weicht das Signal höchstens um {away:.1f} {share} von einer Geraden ab.</translation>
    </message>
    <message>
        <source>Linearity, and play between the directions: not shown, since nothing but the signal itself told where the arm was.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Linearität und Spiel zwischen den Richtungen: nicht nachgewiesen, da nur das Signal selbst sagte, wo der Hebel war.</translation>
    </message>
    <message>
        <source>Linearity: not shown, since {reason}.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Linearität: nicht nachgewiesen, denn {reason}.</translation>
    </message>
    <message>
        <source>% of the feed</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>% der Versorgung</translation>
    </message>
    <message>
        <source>% of the reference</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>% der Bezugsspannung</translation>
    </message>
    <message>
        <source>% of {supply_v:.1f} V</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>% von {supply_v:.1f} V</translation>
    </message>
    <message>
        <source>This recorder sees break-up down to {floor:.2f} {share}; a new track stays within {limit} %.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Dieser Rekorder zeigt Aussetzer ab {floor:.2f} {share}; eine neue Bahn bleibt innerhalb von {limit} %.</translation>
    </message>
    <message>
        <source>This recorder sees break-up down to {floor:.2f} {share}.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Dieser Rekorder zeigt Aussetzer ab {floor:.2f} {share}.</translation>
    </message>
    <message>
        <source>Break-up below {floor:.1f} {share} cannot be seen in this capture; a new track stays within {limit} %. It cannot prove a track as new.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Aussetzer unter {floor:.1f} {share} sind in dieser Messung nicht zu sehen; eine neue Bahn bleibt innerhalb von {limit} %. Als neu kann sie eine Bahn nicht nachweisen.</translation>
    </message>
    <message>
        <source>Break-up below {floor:.1f} {share} cannot be seen in this capture.</source>
        <extracomment>analysis/diagnosis/evidence_tracks.py</extracomment>
        <translation>Aussetzer unter {floor:.1f} {share} sind in dieser Messung nicht zu sehen.</translation>
    </message>
    <message>
        <source>It improved while being moved: the last crossings are clean. That is not cured.</source>
        <extracomment>analysis/diagnosis/evidence_trend.py</extracomment>
        <translation>Es wurde beim Bewegen besser: Die letzten Überfahrten sind sauber. Geheilt ist das nicht.</translation>
    </message>
    <message>
        <source>Too few crossings, {count}, to tell wear from dirt that a sweep wipes away.</source>
        <extracomment>analysis/diagnosis/evidence_trend.py</extracomment>
        <translation>Zu wenige Überfahrten, {count}, um Verschleiß von Schmutz zu unterscheiden, den ein Durchlauf wegwischt.</translation>
    </message>
    <message>
        <source>It breaks up less from crossing to crossing: dirt that is wiped away does so, wear does not.</source>
        <extracomment>analysis/diagnosis/evidence_trend.py</extracomment>
        <translation>Es setzt von Überfahrt zu Überfahrt weniger aus: So verhält sich Schmutz, der weggewischt wird, nicht Verschleiß.</translation>
    </message>
    <message>
        <source>It breaks up more from crossing to crossing: it became worse while being moved.</source>
        <extracomment>analysis/diagnosis/evidence_trend.py</extracomment>
        <translation>Es setzt von Überfahrt zu Überfahrt mehr aus: Es wurde beim Bewegen schlechter.</translation>
    </message>
    <message>
        <source>It breaks up alike from the first of {count} crossings to the last: no sign of dirt that a sweep wipes away.</source>
        <extracomment>analysis/diagnosis/evidence_trend.py</extracomment>
        <translation>Es setzt von der ersten bis zur letzten von {count} Überfahrten gleich aus: kein Anzeichen von Schmutz, den ein Durchlauf wegwischt.</translation>
    </message>
    <message>
        <source>no record holds a signal channel with two samples or more</source>
        <extracomment>analysis/diagnosis/examine.py</extracomment>
        <translation>keine Aufzeichnung enthält einen Signalkanal mit zwei Messwerten oder mehr</translation>
    </message>
    <message>
        <source>say which channel is the signal, or record the signal wire</source>
        <extracomment>analysis/diagnosis/examine.py</extracomment>
        <translation>angeben, welcher Kanal das Signal ist, oder die Signalleitung aufzeichnen</translation>
    </message>
    <message>
        <source>left out where there are points</source>
        <extracomment>analysis/diagnosis/height_schema.py</extracomment>
        <translation>weggelassen, wo es Punkte gibt</translation>
    </message>
    <message>
        <source>{lost:.0%} of the samples are missing</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>{lost:.0%} der Messwerte fehlen</translation>
    </message>
    <message>
        <source>save the record again</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>die Aufzeichnung noch einmal speichern</translation>
    </message>
    <message>
        <source>{over:.0%} of the samples are beyond the recorder's range</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>{over:.0%} der Messwerte liegen außerhalb des Bereichs des Rekorders</translation>
    </message>
    <message>
        <source>choose a larger range</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>einen größeren Bereich wählen</translation>
    </message>
    <message>
        <source>the voltage is negative</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>die Spannung ist negativ</translation>
    </message>
    <message>
        <source>swap the probe and the return lead</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>Prüfspitze und Rückleitung tauschen</translation>
    </message>
    <message>
        <source>the voltage swings about nought and falls back</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>die Spannung schwankt um null und fällt zurück</translation>
    </message>
    <message>
        <source>set the input to DC coupling</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>den Eingang auf DC-Kopplung stellen</translation>
    </message>
    <message>
        <source>set the probe's attenuation to what the probe is</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>die Teilung des Tastkopfs auf die des Tastkopfs einstellen</translation>
    </message>
    <message>
        <source>the readings are ten times too large</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>die Werte sind zehnmal zu groß</translation>
    </message>
    <message>
        <source>the readings are ten times too small</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>die Werte sind zehnmal zu klein</translation>
    </message>
    <message>
        <source>check that the plug is on, the probe sits on the signal wire and the arm really moves</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>prüfen, ob der Stecker steckt, die Prüfspitze an der Signalleitung sitzt und der Hebel sich wirklich bewegt</translation>
    </message>
    <message>
        <source>the signal does not change while the arm is said to move</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>das Signal ändert sich nicht, obwohl der Hebel bewegt worden sein soll</translation>
    </message>
    <message>
        <source>the sensor was unplugged while it was swept</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>der Sensor war während des Durchlaufs abgesteckt</translation>
    </message>
    <message>
        <source>plug it in and sweep again</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>ihn anstecken und noch einmal durchfahren</translation>
    </message>
    <message>
        <source>the reference reads {level:.2f} V: no feed</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>die Bezugsspannung beträgt {level:.2f} V: keine Versorgung</translation>
    </message>
    <message>
        <source>switch the ignition on, wake the module</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>Zündung einschalten, Steuergerät wecken</translation>
    </message>
    <message>
        <source>all channels move by the same volts: the return clip is poor</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>alle Kanäle bewegen sich um dieselben Volt: Die Masseklemme sitzt schlecht</translation>
    </message>
    <message>
        <source>clip the return to clean metal and repeat</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>die Masseklemme an blankes Metall setzen und wiederholen</translation>
    </message>
    <message>
        <source>the signal stands above the reference, which no sensor can do: a probe is on the wrong wire</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>das Signal liegt über der Bezugsspannung, was kein Sensor kann: Eine Prüfspitze sitzt an der falschen Leitung</translation>
    </message>
    <message>
        <source>ground reads {high:.2f} V and the reference {low:.2f} V: their probes are exchanged</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>Masse zeigt {high:.2f} V und die Bezugsspannung {low:.2f} V: die Messspitzen sind vertauscht</translation>
    </message>
    <message>
        <source>the signal stands still while ground or reference moves as an arm does: a probe is on the wrong wire</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>das Signal steht still, während sich Masse oder Bezugsspannung wie ein Hebel bewegt: eine Messspitze sitzt an der falschen Leitung</translation>
    </message>
    <message>
        <source>check which wire each probe touches, and repeat</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>prüfen, welche Leitung jede Prüfspitze berührt, und wiederholen</translation>
    </message>
    <message>
        <source>this is a duty-cycle or digital sensor, which this method does not judge</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>das ist ein Sensor mit Tastverhältnis oder digitalem Ausgang, den dieses Verfahren nicht beurteilt</translation>
    </message>
    <message>
        <source>the signal knows two levels only</source>
        <extracomment>analysis/diagnosis/measurement_check.py</extracomment>
        <translation>das Signal kennt nur zwei Pegel</translation>
    </message>
    <message>
        <source>the signal probe hums about nought: it hung in the air</source>
        <extracomment>analysis/diagnosis/probe_contact.py</extracomment>
        <translation>die Signalprüfspitze brummt um null: Sie hing in der Luft</translation>
    </message>
    <message>
        <source>put the probe back and repeat</source>
        <extracomment>analysis/diagnosis/probe_contact.py</extracomment>
        <translation>die Prüfspitze wieder ansetzen und wiederholen</translation>
    </message>
    <message>
        <source>the signal probe slipped off at {begun:.1f} s: from there it only hums</source>
        <extracomment>analysis/diagnosis/probe_contact.py</extracomment>
        <translation>die Signalprüfspitze ist bei {begun:.1f} s abgerutscht: Ab da brummt sie nur</translation>
    </message>
    <message>
        <source>the signal is gone from {begun:.1f} s on: the probe slipped off, or the wire is open</source>
        <extracomment>analysis/diagnosis/probe_contact.py</extracomment>
        <translation>das Signal ist ab {begun:.1f} s weg: Die Prüfspitze ist abgerutscht, oder die Leitung ist unterbrochen</translation>
    </message>
    <message>
        <source>{name} is not TOML: {error}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>{name} ist kein TOML: {error}</translation>
    </message>
    <message>
        <source>correct that line</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>diese Zeile berichtigen</translation>
    </message>
    <message>
        <source>{name} is nested too deeply or holds a number that is none</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>{name} ist zu tief verschachtelt oder enthält eine Zahl, die keine ist</translation>
    </message>
    <message>
        <source>write it anew from a built-in profile</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>schreiben Sie es aus einem eingebauten Profil neu</translation>
    </message>
    <message>
        <source>{name}: based_on must name a built-in profile, got {base!r}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>{name}: based_on muss ein mitgeliefertes Profil nennen, nicht {base!r}</translation>
    </message>
    <message>
        <source>choose one of: {known}</source>
        <extracomment>analysis/diagnosis/profile_schema.py, analysis/diagnosis/profiles.py</extracomment>
        <translation>eines davon wählen: {known}</translation>
    </message>
    <message>
        <source>lower-case letters, digits and single hyphens</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>aus Kleinbuchstaben, Ziffern und einzelnen Bindestrichen</translation>
    </message>
    <message>
        <source>there</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>no such table</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>keine solche Tabelle</translation>
    </message>
    <message>
        <source>inside valid_v [{start}, {stop}]</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>innerhalb von valid_v [{start}, {stop}]</translation>
    </message>
    <message>
        <source>other than {value}</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>anders als {value}</translation>
    </message>
    <message>
        <source>there where lower is not</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>vorhanden, wo lower fehlt</translation>
    </message>
    <message>
        <source>neither</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>keines von beiden</translation>
    </message>
    <message>
        <source>at most upper ({upper})</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>höchstens upper ({upper})</translation>
    </message>
    <message>
        <source>there if tracks.second_signal is, and only then</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>vorhanden, wenn tracks.second_signal es ist, und nur dann</translation>
    </message>
    <message>
        <source>one of the two</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>eines von beiden</translation>
    </message>
    <message>
        <source>within {least} and supply_v ({supply_v})</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>zwischen {least} und supply_v ({supply_v})</translation>
    </message>
    <message>
        <source>a range around supply_v ({supply_v})</source>
        <extracomment>analysis/diagnosis/profile_schema.py</extracomment>
        <translation>ein Bereich um supply_v ({supply_v})</translation>
    </message>
    <message>
        <source>{name}: {prefix}{key} must be {rule}, got {came!r}</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>{name}: {prefix}{key} muss {rule} sein, nicht {came!r}</translation>
    </message>
    <message>
        <source>correct it in the profile</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>es im Profil berichtigen</translation>
    </message>
    <message>
        <source>one of {known}</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>eines von {known}</translation>
    </message>
    <message>
        <source>a table</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>eine Tabelle</translation>
    </message>
    <message>
        <source>text</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>Text</translation>
    </message>
    <message>
        <source>true or false</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>above {above:g}</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>größer als {above:g}</translation>
    </message>
    <message>
        <source>at least {least:g}</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>mindestens {least:g}</translation>
    </message>
    <message>
        <source>at most {at_most:g}</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>höchstens {at_most:g}</translation>
    </message>
    <message>
        <source>two ascending numbers</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>zwei aufsteigende Zahlen</translation>
    </message>
    <message>
        <source>two pairs of numbers</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>zwei Zahlenpaare</translation>
    </message>
    <message>
        <source>nothing</source>
        <extracomment>analysis/diagnosis/profile_table.py</extracomment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>there is no sensor profile {id_or_path!r}</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>es gibt kein Sensorprofil {id_or_path!r}</translation>
    </message>
    <message>
        <source>there is no built-in sensor profile {profile_id!r}</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>es gibt kein mitgeliefertes Sensorprofil {profile_id!r}</translation>
    </message>
    <message>
        <source>the sensor profile {name} is not UTF-8 text</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>das Sensorprofil {name} ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>es als UTF-8 speichern</translation>
    </message>
    <message>
        <source>the sensor profile {name} cannot be read ({strerror})</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>das Sensorprofil {name} lässt sich nicht lesen ({strerror})</translation>
    </message>
    <message>
        <source>check that the file is there and may be read</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>prüfen, ob die Datei da ist und gelesen werden darf</translation>
    </message>
    <message>
        <source>{name}: the id {id!r} belongs to a built-in profile</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>{name}: Die Kennung {id!r} gehört einem mitgelieferten Profil</translation>
    </message>
    <message>
        <source>choose another id</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>eine andere Kennung wählen</translation>
    </message>
    <message>
        <source>{name} is no file</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>{name} ist keine Datei</translation>
    </message>
    <message>
        <source>choose a TOML file</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>wählen Sie eine TOML-Datei</translation>
    </message>
    <message>
        <source>the sensor profile {name} is far too long</source>
        <extracomment>analysis/diagnosis/profiles.py</extracomment>
        <translation>das Sensorprofil {name} ist viel zu lang</translation>
    </message>
    <message>
        <source>Wiggling the harness does not disturb the signal.</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>Wackeln am Kabelbaum stört das Signal nicht.</translation>
    </message>
    <message>
        <source>While the harness is wiggled, the signal moves with {wire} and no further.</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>Während am Kabelbaum gewackelt wird, bewegt sich das Signal wie {wire}, und nicht weiter.</translation>
    </message>
    <message>
        <source>While the harness is wiggled, the signal is disturbed by up to {brief_v:.2f} V, but too briefly or too seldom for a bad contact.</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>Während am Kabelbaum gewackelt wird, ist das Signal um bis zu {brief_v:.2f} V gestört, aber zu kurz oder zu selten für einen schlechten Kontakt.</translation>
    </message>
    <message>
        <source>The signal follows the arm without a break.</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>Das Signal folgt dem Hebel ohne Aussetzer.</translation>
    </message>
    <message>
        <source>Away from any band the signal follows the arm without a break.</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>Außerhalb etwaiger Zonen folgt das Signal dem Hebel ohne Aussetzer.</translation>
    </message>
    <message>
        <source>But for what {wire} does, the signal follows the arm without a break.</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>Bis auf das, was {wire} tut, folgt das Signal dem Hebel ohne Aussetzer.</translation>
    </message>
    <message>
        <source>The signal follows the arm; it is disturbed by up to {brief:.0f} %, but too briefly or too seldom for a bad contact.</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>Das Signal folgt dem Hebel; es ist um bis zu {brief:.0f} % gestört, aber zu kurz oder zu selten für einen schlechten Kontakt.</translation>
    </message>
    <message>
        <source>Away from any band the signal follows the arm; it is disturbed by up to {brief:.0f} %, but too briefly or too seldom for a bad contact.</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>Außerhalb der Zonen folgt das Signal dem Hebel; es ist um bis zu {brief:.0f} % gestört, aber zu kurz oder zu selten für einen schlechten Kontakt.</translation>
    </message>
    <message>
        <source>the sensor ground</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>die Sensormasse</translation>
    </message>
    <message>
        <source>the reference</source>
        <extracomment>analysis/diagnosis/quiet.py</extracomment>
        <translation>die Bezugsspannung</translation>
    </message>
    <message>
        <source>breaks up in the band on {count} crossing</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>setzt in der Zone bei {count} Überfahrt aus</translation>
    </message>
    <message>
        <source>breaks up in the band on {count} crossings</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>setzt in der Zone bei {count} Überfahrten aus</translation>
    </message>
    <message>
        <source>breaks up</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>setzt aus</translation>
    </message>
    <message>
        <source>breaks up at rest in the band</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>Aussetzer in Ruhe in der Zone</translation>
    </message>
    <message>
        <source>{reading}, too near its limit to tell</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>{reading}, zu nah an der Grenze für ein Urteil</translation>
    </message>
    <message>
        <source>{reading}, not shown to hold still</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>{reading}, nicht als stabil nachgewiesen</translation>
    </message>
    <message>
        <source>ground stands at {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>Masse liegt bei {reading}</translation>
    </message>
    <message>
        <source>ground moves by {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>Masse schwankt um {reading}</translation>
    </message>
    <message>
        <source>reference stands at {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>Bezugsspannung liegt bei {reading}</translation>
    </message>
    <message>
        <source>reference moves by {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>Bezugsspannung schwankt um {reading}</translation>
    </message>
    <message>
        <source>signal reaches {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>Signal erreicht {reading}</translation>
    </message>
    <message>
        <source>the tracks differ by {reading}</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>die Bahnen weichen um {reading} ab</translation>
    </message>
    <message>
        <source>ground at {reading} at times</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>Masse zeitweise bei {reading}</translation>
    </message>
    <message>
        <source>reference at {reading} at times</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>Bezugsspannung zeitweise bei {reading}</translation>
    </message>
    <message>
        <source>{count} stroke, disturbed briefly at most</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>{count} Hub, höchstens kurz gestört</translation>
    </message>
    <message>
        <source>{count} strokes, disturbed briefly at most</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>{count} Hübe, höchstens kurz gestört</translation>
    </message>
    <message>
        <source>{count} stroke, clean</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>{count} Hub, sauber</translation>
    </message>
    <message>
        <source>{count} strokes, clean</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>{count} Hübe, sauber</translation>
    </message>
    <message>
        <source>{reading}, steady</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>{reading}, stabil</translation>
    </message>
    <message>
        <source>steady</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>stabil</translation>
    </message>
    <message>
        <source>disturbed briefly at most</source>
        <extracomment>analysis/diagnosis/summary.py</extracomment>
        <translation>höchstens kurz gestört</translation>
    </message>
    <message>
        <source>The probe hung in the air: what it read is not the signal.</source>
        <extracomment>analysis/diagnosis/unread.py</extracomment>
        <translation>Die Prüfspitze hing in der Luft: Was sie gemessen hat, ist nicht das Signal.</translation>
    </message>
    <message>
        <source>worn resistive track</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>verschlissene Widerstandsbahn</translation>
    </message>
    <message>
        <source>dirt or moisture on the track</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Schmutz oder Feuchtigkeit auf der Bahn</translation>
    </message>
    <message>
        <source>a loom that moves with the arm</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>ein Kabel, das sich mit dem Hebel bewegt</translation>
    </message>
    <message>
        <source>fault inside the sensor at this position</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Fehler im Inneren des Sensors an dieser Stelle</translation>
    </message>
    <message>
        <source>broken strand or loose terminal in the signal wire</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>gebrochene Litze oder lockerer Kontakt in der Signalleitung</translation>
    </message>
    <message>
        <source>the sensor's own pins</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>die Steckkontakte des Sensors selbst</translation>
    </message>
    <message>
        <source>wiring of the reference</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Leitung der Bezugsspannung</translation>
    </message>
    <message>
        <source>another sensor on the same feed</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>ein anderer Sensor an derselben Versorgung</translation>
    </message>
    <message>
        <source>this sensor pulling it down</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>dieser Sensor, der sie herunterzieht</translation>
    </message>
    <message>
        <source>the control unit</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>das Steuergerät</translation>
    </message>
    <message>
        <source>ground point or splice</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Massepunkt oder Verbinder</translation>
    </message>
    <message>
        <source>wiring of the sensor ground</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Leitung der Sensormasse</translation>
    </message>
    <message>
        <source>the control unit's ground</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>die Masse des Steuergeräts</translation>
    </message>
    <message>
        <source>the height itself</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>die Höhe selbst</translation>
    </message>
    <message>
        <source>a bent or disconnected link</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>ein verbogenes oder ausgehängtes Gestänge</translation>
    </message>
    <message>
        <source>the wrong sensor or profile</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>der falsche Sensor oder das falsche Profil</translation>
    </message>
    <message>
        <source>a contact inside the sensor</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>ein Kontakt im Sensor</translation>
    </message>
    <message>
        <source>the readings contradict each other</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>die Werte widersprechen einander</translation>
    </message>
    <message>
        <source>This capture cannot be judged: {text}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Diese Messung lässt sich nicht beurteilen: {text}.</translation>
    </message>
    <message>
        <source>No fault was seen in {tested}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Kein Fehler gefunden in {tested}.</translation>
    </message>
    <message>
        <source>No fault was seen in {tested}; the rest of the travel was not visited.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Kein Fehler gefunden in {tested}; der übrige Weg wurde nicht befahren.</translation>
    </message>
    <message>
        <source>{plain} It may break up at {spans} too, where {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>{plain} Möglicherweise setzt das Signal auch bei {spans} aus: {crossed}.</translation>
    </message>
    <message>
        <source>The track is worn at {spans} of travel: {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Die Bahn ist bei {spans} des Wegs verschlissen: {crossed}.</translation>
    </message>
    <message>
        <source>The track is worn at {spans} of travel of the second track: {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Die zweite Bahn ist bei {spans} des Wegs verschlissen: {crossed}.</translation>
    </message>
    <message>
        <source>The sensor's output breaks up at {spans} of travel: {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Das Sensorsignal setzt bei {spans} des Wegs aus: {crossed}.</translation>
    </message>
    <message>
        <source>The sensor's output breaks up at {spans} of travel of the second track: {crossed}.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Das Signal der zweiten Bahn setzt bei {spans} des Wegs aus: {crossed}.</translation>
    </message>
    <message>
        <source>The signal breaks up at moments, not at a place: its wire or the sensor's pins make poor contact.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Das Signal setzt zeitweise aus, nicht an einer Stelle: Seine Leitung oder die Steckkontakte des Sensors haben schlechten Kontakt.</translation>
    </message>
    <message>
        <source>The reference is not what it should be, and the signal is a share of it.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Die Bezugsspannung ist nicht, wie sie sein soll, und das Signal ist ein Anteil von ihr.</translation>
    </message>
    <message>
        <source>Sensor ground is not what it should be, and the signal is read against it.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Die Sensormasse ist nicht, wie sie sein soll, und das Signal wird gegen sie gelesen.</translation>
    </message>
    <message>
        <source>The signal rests outside its valid range without breaking up: the sensor may be telling the truth.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Das Signal ruht außerhalb seines gültigen Bereichs, ohne auszusetzen: Der Sensor sagt vielleicht die Wahrheit.</translation>
    </message>
    <message>
        <source>This capture does not decide it.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Diese Messung entscheidet es nicht.</translation>
    </message>
    <message>
        <source>The signal breaks up at moments, not at a place, and only under what was done to the sensor: a contact inside it, its pins or its wire.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Das Signal setzt zeitweise aus, nicht an einer Stelle, und nur unter dem, was mit dem Sensor gemacht wurde: ein Kontakt in ihm, seine Steckkontakte oder seine Leitung.</translation>
    </message>
    <message>
        <source>The two tracks disagree, and this capture does not show which of them is wrong.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Die beiden Bahnen widersprechen sich, und diese Messung zeigt nicht, welche falsch ist.</translation>
    </message>
    <message>
        <source>The reference is not what it should be; this sensor's output does not go with it.</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Die Bezugsspannung ist nicht, wie sie sein soll; der Ausgang dieses Sensors folgt ihr nicht.</translation>
    </message>
    <message>
        <source>no crossings</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>keine Überfahrten</translation>
    </message>
    <message>
        <source>{noisy} of {passes}</source>
        <extracomment>analysis/diagnosis/verdict.py, analysis/reports/comparison_report.py, analysis/reports/findings_report.py</extracomment>
        <translation>{noisy} von {passes}</translation>
    </message>
    <message>
        <source>the output broke up on {counts} crossings</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Aussetzer bei {counts} Überfahrten</translation>
    </message>
    <message>
        <source>the output broke up on {noisy} of {count} crossing</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Aussetzer bei {noisy} von {count} Überfahrt</translation>
    </message>
    <message>
        <source>the output broke up on {noisy} of {count} crossings</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>Aussetzer bei {noisy} von {count} Überfahrten</translation>
    </message>
    <message>
        <source>what was recorded</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>dem, was aufgezeichnet wurde</translation>
    </message>
    <message>
        <source>{low:.0f}–{high:.0f} % of travel, {count} stroke</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>{low:.0f}–{high:.0f} % des Wegs, {count} Hub</translation>
    </message>
    <message>
        <source>{low:.0f}–{high:.0f} % of travel, {count} strokes</source>
        <extracomment>analysis/diagnosis/verdict.py</extracomment>
        <translation>{low:.0f}–{high:.0f} % des Wegs, {count} Hübe</translation>
    </message>
    <message>
        <source>findings cannot be written as {ending}</source>
        <extracomment>analysis/exporting/findings_file.py</extracomment>
        <translation>Befunde können nicht als {ending} geschrieben werden</translation>
    </message>
    <message>
        <source>choose .json or .csv</source>
        <extracomment>analysis/exporting/findings_file.py</extracomment>
        <translation>.json oder .csv wählen</translation>
    </message>
    <message>
        <source>samples cannot be written as {ending}</source>
        <extracomment>analysis/exporting/samples.py, app/exporting/desk.py</extracomment>
        <translation>Messwerte können nicht als {ending} geschrieben werden</translation>
    </message>
    <message>
        <source>choose .csv, .parquet, .mat, .npz or .h5</source>
        <extracomment>analysis/exporting/samples.py</extracomment>
        <translation>.csv, .parquet, .mat, .npz oder .h5 wählen</translation>
    </message>
    <message>
        <source>there are no such samples</source>
        <extracomment>analysis/exporting/samples.py</extracomment>
        <translation>solche Messwerte gibt es nicht</translation>
    </message>
    <message>
        <source>choose another record or span</source>
        <extracomment>analysis/exporting/samples.py</extracomment>
        <translation>einen anderen Abschnitt oder Zeitraum wählen</translation>
    </message>
    <message>
        <source>the capture does not match the fingerprint in its file, and a capture made of it would</source>
        <extracomment>analysis/exporting/samples.py</extracomment>
        <translation>die Messung passt nicht zum Fingerabdruck in ihrer Datei, und eine daraus gemachte würde passen</translation>
    </message>
    <message>
        <source>open the original, or choose .csv, .parquet, .mat or .npz</source>
        <extracomment>analysis/exporting/samples.py</extracomment>
        <translation>öffnen Sie das Original, oder wählen Sie .csv, .parquet, .mat oder .npz</translation>
    </message>
    <message>
        <source>a MAT file cannot hold so many samples</source>
        <extracomment>analysis/exporting/samples.py</extracomment>
        <translation>eine MAT-Datei fasst so viele Messwerte nicht</translation>
    </message>
    <message>
        <source>choose a span, or Parquet</source>
        <extracomment>analysis/exporting/samples.py</extracomment>
        <translation>einen Zeitraum wählen, oder Parquet</translation>
    </message>
    <message>
        <source>less than 1 %</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>weniger als 1 %</translation>
    </message>
    <message>
        <source>more than 99 %</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>mehr als 99 %</translation>
    </message>
    <message>
        <source>all the time</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>die ganze Zeit</translation>
    </message>
    <message>
        <source>{time_ms:.0f} ms</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>{time_ms:.0f} ms</translation>
    </message>
    <message>
        <source>{time_s:.1f} s</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>{time_s:.1f} s</translation>
    </message>
    <message>
        <source>{time_min:.0f} min</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>{time_min:.0f} min</translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>up to about {most}</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>bis etwa {most}</translation>
    </message>
    <message>
        <source>under 1 to over 99 %</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>unter 1 bis über 99 %</translation>
    </message>
    <message>
        <source>about {most}</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>etwa {most}</translation>
    </message>
    <message>
        <source>about {low:.0f} to {most}</source>
        <extracomment>analysis/exposure/amounts.py</extracomment>
        <translation>etwa {low:.0f} bis {most}</translation>
    </message>
    <message>
        <source>no road was chosen</source>
        <extracomment>analysis/exposure/explain.py</extracomment>
        <translation>es wurde keine Strecke gewählt</translation>
    </message>
    <message>
        <source>choose at least one</source>
        <extracomment>analysis/exposure/explain.py</extracomment>
        <translation>mindestens eine wählen</translation>
    </message>
    <message>
        <source>{duration_s:.0f} s</source>
        <extracomment>analysis/exposure/from_record.py</extracomment>
        <translation>{duration_s:.0f} s</translation>
    </message>
    <message>
        <source>Recorded, not modelled ({record}): the arm was in the band {share} of the time and came into it {visits:d} times, every return counted, with {events:d} disturbances there.</source>
        <extracomment>analysis/exposure/from_record.py</extracomment>
        <translation>Aufgezeichnet, nicht berechnet ({record}): Der Hebel war {share} der Zeit in der Zone und kam {visits:d}-mal hinein, jede Rückkehr mitgezählt, mit {events:d} Störungen dort.</translation>
    </message>
    <message>
        <source>Left out: roll and pitch, braking, a load that shifts, levelling while driving, potholes and kerbs, and the stops of the suspension.</source>
        <extracomment>analysis/exposure/picture.py</extracomment>
        <translation>Außer Betracht: Wanken und Nicken, Bremsen, verrutschende Ladung, Niveauregelung während der Fahrt, Schlaglöcher und Bordsteine und die Anschläge der Federung.</translation>
    </message>
    <message>
        <source>the band has no width</source>
        <extracomment>analysis/exposure/picture.py</extracomment>
        <translation>die Zone hat keine Breite</translation>
    </message>
    <message>
        <source>choose a band with two edges</source>
        <extracomment>analysis/exposure/picture.py</extracomment>
        <translation>eine Zone mit zwei Rändern wählen</translation>
    </message>
    <message>
        <source>the drive must last {least:g} to {most:g} minutes, got {came:g}</source>
        <extracomment>analysis/exposure/picture.py</extracomment>
        <translation>die Fahrt muss {least:g} bis {most:g} Minuten dauern, nicht {came:g}</translation>
    </message>
    <message>
        <source>enter the drive in minutes</source>
        <extracomment>analysis/exposure/picture.py</extracomment>
        <translation>die Fahrt in Minuten eingeben</translation>
    </message>
    <message>
        <source>As entered, the fault came {times} in {before_km:.3g} km before the repair. {needed_km:.3g} km without a fault, at the same height, load and surface, show it gone (right {odds:.0f} times in 100); {careful_km:.3g} km if the rate before is known from these faults alone.</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>Wie eingetragen, kam der Fehler vor der Reparatur {times} auf {before_km:.3g} km. {needed_km:.3g} km ohne Fehler, bei gleicher Höhe, Beladung und Straße, weisen nach, dass er weg ist (richtig {odds:.0f} von 100 Malen); {careful_km:.3g} km, wenn die Rate vorher nur aus diesen Fehlern bekannt ist.</translation>
    </message>
    <message>
        <source>once</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>einmal</translation>
    </message>
    <message>
        <source>{faults:d} times</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>{faults:d}-mal</translation>
    </message>
    <message>
        <source>Driven so far without a fault: {driven_km:.3g} km, still to drive {left_km:.3g} km.</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>Bisher ohne Fehler gefahren: {driven_km:.3g} km, noch zu fahren {left_km:.3g} km.</translation>
    </message>
    <message>
        <source>It was not entered over how many kilometres the fault came before the repair: how far to drive without one follows from that.</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>Es ist nicht eingetragen, auf wie viel Kilometern der Fehler vor der Reparatur kam: Daraus folgt, wie weit ohne ihn zu fahren ist.</translation>
    </message>
    <message>
        <source>Driven so far without a fault: {driven_km:.3g} km.</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>Bisher ohne Fehler gefahren: {driven_km:.3g} km.</translation>
    </message>
    <message>
        <source>no fault was counted before the repair, so there is no rate to compare with</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>vor der Reparatur wurde kein Fehler gezählt, es gibt also keine Rate zum Vergleichen</translation>
    </message>
    <message>
        <source>drive before the repair until the fault has come once</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>vor der Reparatur fahren, bis der Fehler einmal gekommen ist</translation>
    </message>
    <message>
        <source>the distance before the repair must be above 0 km, got {came:g} km</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>die Strecke vor der Reparatur muss über 0 km liegen, nicht bei {came:g} km</translation>
    </message>
    <message>
        <source>enter it in kilometres</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>sie in Kilometern eingeben</translation>
    </message>
    <message>
        <source>the confidence must lie between 0 and 1, got {came:g}</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>die Sicherheit muss zwischen 0 und 1 liegen, nicht bei {came:g}</translation>
    </message>
    <message>
        <source>choose 0.95</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>0,95 wählen</translation>
    </message>
    <message>
        <source>a drive has a negative length</source>
        <extracomment>analysis/exposure/proof.py</extracomment>
        <translation>eine Fahrt hat eine negative Länge</translation>
    </message>
    <message>
        <source>as the record states</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>wie die Aufzeichnung angibt</translation>
    </message>
    <message>
        <source>{time_s:.0f} s at {speed:g} km/h, as the record states</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>{time_s:.0f} s mit {speed:g} km/h, wie die Aufzeichnung angibt</translation>
    </message>
    <message>
        <source>{time_s:.0f} s at {speed:g} km/h, as chosen: the record states no speed</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>{time_s:.0f} s mit {speed:g} km/h, wie gewählt: Die Aufzeichnung gibt keine Geschwindigkeit an</translation>
    </message>
    <message>
        <source>not known</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>the control unit cannot judge it: {problem}</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>das Steuergerät kann sie nicht beurteilen: {problem}</translation>
    </message>
    <message>
        <source>it holds no signal</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>sie enthält kein Signal</translation>
    </message>
    <message>
        <source>a code would have been stored at {time_s:.1f} s</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>bei {time_s:.1f} s wäre ein Code gespeichert worden</translation>
    </message>
    <message>
        <source>the signal was disturbed in the band, {events:d} times</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>das Signal war in der Zone gestört, {events:d}-mal</translation>
    </message>
    <message>
        <source>it states no distance or speed, and the engine was off</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>sie gibt weder Strecke noch Geschwindigkeit an, und der Motor war aus</translation>
    </message>
    <message>
        <source>no record was taken on a road</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>keine Aufzeichnung einer Fahrt</translation>
    </message>
    <message>
        <source>{name}: does not count, {why}</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>{name}: zählt nicht, {why}</translation>
    </message>
    <message>
        <source>{name}: {km:.2f} km, {how}</source>
        <extracomment>analysis/exposure/road_test.py</extracomment>
        <translation>{name}: {km:.2f} km, {how}</translation>
    </message>
    <message>
        <source>on this road</source>
        <extracomment>analysis/exposure/stored_code.py</extracomment>
        <translation>auf dieser Straße</translation>
    </message>
    <message>
        <source>on these roads</source>
        <extracomment>analysis/exposure/stored_code.py</extracomment>
        <translation>auf diesen Straßen</translation>
    </message>
    <message>
        <source>in this record</source>
        <extracomment>analysis/exposure/stored_code.py</extracomment>
        <translation>in dieser Aufzeichnung</translation>
    </message>
    <message>
        <source>The job names fault code {codes}, yet by the rules used here none would be stored {where}: this control unit's own rules are not known, or it was stored under other conditions.</source>
        <extracomment>analysis/exposure/stored_code.py</extracomment>
        <translation>Der Auftrag nennt den Fehlercode {codes}, doch nach den hier benutzten Regeln würde {where} keiner gespeichert: Die eigenen Regeln dieses Steuergeräts sind nicht bekannt, oder er wurde unter anderen Bedingungen gespeichert.</translation>
    </message>
    <message>
        <source>The job names fault codes {codes}, yet by the rules used here none would be stored {where}: this control unit's own rules are not known, or they were stored under other conditions.</source>
        <extracomment>analysis/exposure/stored_code.py</extracomment>
        <translation>Der Auftrag nennt die Fehlercodes {codes}, doch nach den hier benutzten Regeln würde {where} keiner gespeichert: Die eigenen Regeln dieses Steuergeräts sind nicht bekannt, oder sie wurden unter anderen Bedingungen gespeichert.</translation>
    </message>
    <message>
        <source>range</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>rate of change</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Änderungsgeschwindigkeit</translation>
    </message>
    <message>
        <source>comparison with the other side</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Vergleich mit der anderen Seite</translation>
    </message>
    <message>
        <source>Parked</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Geparkt</translation>
    </message>
    <message>
        <source>Access</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Einstieg</translation>
    </message>
    <message>
        <source>Normal</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Loaded</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Beladen</translation>
    </message>
    <message>
        <source>Off-road</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Gelände</translation>
    </message>
    <message>
        <source>Corner</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>while it stood ({records})</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>im Stillstand ({records})</translation>
    </message>
    <message>
        <source>while it stood: taken as while it moved, for no record was held there</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>im Stillstand: angenommen wie in Bewegung, denn dort wurde nichts gehalten aufgezeichnet</translation>
    </message>
    <message>
        <source>What the band does to a reading was measured on {crossings:d} crossings, {measured_s:.1f} s; {still}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Was die Zone mit einem Messwert macht, wurde an {crossings:d} Überfahrten gemessen, {measured_s:.1f} s; {still}.</translation>
    </message>
    <message>
        <source>The wheel is modelled as a quarter of a middling car (Golden Car) on a random road of ISO 8608 class {classes}; roads of one class differ by a factor of 1.4 either way in how far the wheel moves.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Das Rad ist als Viertel eines mittleren Autos (Golden Car) auf einer Zufallsstraße der Klasse {classes} nach ISO 8608 berechnet; Straßen einer Klasse unterscheiden sich nach beiden Seiten um den Faktor 1,4 darin, wie weit sich das Rad bewegt.</translation>
    </message>
    <message>
        <source>The control unit is taken to read every {tick_ms:.0f} ms.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Angenommen ist, dass das Steuergerät alle {tick_ms:.0f} ms liest.</translation>
    </message>
    <message>
        <source>Heights: {source}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Höhen: {source}.</translation>
    </message>
    <message>
        <source>The band is {where}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Die Zone liegt {where}.</translation>
    </message>
    <message>
        <source>Tested was {where}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Geprüft wurde: {where}.</translation>
    </message>
    <message>
        <source>Not tested: {names}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Nicht geprüft: {names}.</translation>
    </message>
    <message>
        <source>The bad place lies {where}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Die schlechte Stelle liegt {where}.</translation>
    </message>
    <message>
        <source>This is calculated for a middling car, not measured on this one; the evidence page says what it rests on, and how sure it is.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Das ist für ein mittleres Auto gerechnet, nicht an diesem gemessen; worauf es beruht und wie sicher es ist, steht auf der Seite der Nachweise.</translation>
    </message>
    <message>
        <source>By calculation no height that the car drives at takes the sensor there.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Nach der Rechnung kommt der Sensor bei keiner Höhe, in der das Auto fährt, dorthin.</translation>
    </message>
    <message>
        <source>By calculation the sensor works there {most} of the time at {high} on a {road}, and {least} of it at {low} {there}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Nach der Rechnung arbeitet der Sensor bei {high} auf der Strecke „{road}“ {most} der Zeit dort, bei {low} {there} {least}.</translation>
    </message>
    <message>
        <source>on the same road</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>auf derselben Strecke</translation>
    </message>
    <message>
        <source>on a {road}</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>auf der Strecke „{road}“</translation>
    </message>
    <message>
        <source>Calculated: at none of the heights that it drives at does the sensor reach the band on this road.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Berechnet: In keiner der Höhen, in denen es fährt, kommt der Sensor auf dieser Strecke in die Zone.</translation>
    </message>
    <message>
        <source>Calculated: at {high} the sensor is in the band {most} of the time.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Berechnet: Bei {high} ist der Sensor {most} der Zeit in der Zone.</translation>
    </message>
    <message>
        <source>{name} height</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Höhe „{name}“</translation>
    </message>
    <message>
        <source>Calculated: at {high} the sensor is in the band {most} of the time, at {low} hardly ever.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Berechnet: Bei {high} ist der Sensor {most} der Zeit in der Zone, bei {low} kaum je.</translation>
    </message>
    <message>
        <source>Calculated: at {high} the sensor is in the band {most} of the time, at {low} {least} of it.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Berechnet: Bei {high} ist der Sensor {most} der Zeit in der Zone, bei {low} {least} davon.</translation>
    </message>
    <message>
        <source>Calculated for a middling car on a {road}, not measured on this one; the ranges reach from the smoothest to the roughest road of that kind.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Berechnet für ein mittleres Auto auf der Strecke „{road}“, nicht an diesem gemessen; die Spannen reichen von der glattesten bis zur rauesten Strecke dieser Art.</translation>
    </message>
    <message>
        <source>{share} of the time at {height}</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{share} der Zeit bei {height}</translation>
    </message>
    <message>
        <source>On a {road}, where the wheel moves {rms_mm:.1f} mm r.m.s.,</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Auf der Strecke „{road}“, auf der sich das Rad um {rms_mm:.1f} mm (Effektivwert) bewegt,</translation>
    </message>
    <message>
        <source>{on} by calculation the sensor is never in the band.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{on} ist der Sensor nach Rechnung nie in der Zone.</translation>
    </message>
    <message>
        <source>{on} by calculation the sensor is in the band {parts}</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{on} ist der Sensor nach Rechnung in der Zone: {parts}</translation>
    </message>
    <message>
        <source>{there}, and not at {heights}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{there}, und nicht bei {heights}.</translation>
    </message>
    <message>
        <source>in the band</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>in der Zone</translation>
    </message>
    <message>
        <source>outside the band</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>außerhalb der Zone</translation>
    </message>
    <message>
        <source>At {height} the vehicle stands {where}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Bei {height} steht das Fahrzeug {where}.</translation>
    </message>
    <message>
        <source>At {height} the arm does not come into the band.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Bei {height} kommt der Hebel nicht in die Zone.</translation>
    </message>
    <message>
        <source>In the band the reading never left the limits.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>In der Zone hat der Messwert die Grenzen nie verlassen.</translation>
    </message>
    <message>
        <source>In the band the reading is out of limits {share} of the time, {run} at a stretch</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>In der Zone liegt der Messwert {share} der Zeit außerhalb der Grenzen, {run} am Stück</translation>
    </message>
    <message>
        <source>{broken}: too seldom for any such rule.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{broken}: zu selten für jede solche Regel.</translation>
    </message>
    <message>
        <source>at {height}</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>bei {height}</translation>
    </message>
    <message>
        <source>{where} on a {road}</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{where}, auf der Strecke „{road}“</translation>
    </message>
    <message>
        <source>{broken}: a code would be more likely than not with a time of {hold} or less, {where}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{broken}: Ein Code wäre wahrscheinlicher als keiner bei einer Zeit von {hold} oder weniger, {where}.</translation>
    </message>
    <message>
        <source>a single reading</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>einem einzigen Messwert</translation>
    </message>
    <message>
        <source>The control unit has no rule.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Das Steuergerät hat keine Regel.</translation>
    </message>
    <message>
        <source>So the complaint can come and go with load and road.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Darum kann die Beanstandung mit Ladung und Straße kommen und gehen.</translation>
    </message>
    <message>
        <source>The calculated chance of a code within {minutes:.0f} min is below 1 % at every height.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Die berechnete Aussicht auf einen Code innerhalb von {minutes:.0f} min liegt bei jeder Höhe unter 1 %.</translation>
    </message>
    <message>
        <source>{chance} at {name} height</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{chance} bei Höhe „{name}“</translation>
    </message>
    <message>
        <source>The calculated chance of a code within {minutes:.0f} min is {parts}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Die berechnete Aussicht auf einen Code innerhalb von {minutes:.0f} min beträgt {parts}.</translation>
    </message>
    <message>
        <source>Chance of a code within {minutes:.0f} min: {chance}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Aussicht auf einen Code innerhalb von {minutes:.0f} min: {chance}.</translation>
    </message>
    <message>
        <source>At {height}: in the band {share}; the arm comes into it {per_km} times a kilometre, for {stay} on average</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Bei {height}: in der Zone {share}; der Hebel kommt {per_km}-mal je Kilometer hinein, im Mittel für {stay}</translation>
    </message>
    <message>
        <source>{share} of the time</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{share} der Zeit</translation>
    </message>
    <message>
        <source>{told}, one in ten over {long_stay}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{told}, jedes zehnte Mal über {long_stay}.</translation>
    </message>
    <message>
        <source>{value} ({over} over the roads of this class)</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{value} ({over} auf den Straßen dieser Klasse)</translation>
    </message>
    <message>
        <source>{name} height{away}</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Höhe „{name}“{away}</translation>
    </message>
    <message>
        <source> ({down_mm:.0f} mm down)</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation> ({down_mm:.0f} mm tiefer)</translation>
    </message>
    <message>
        <source> ({up_mm:.0f} mm up)</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation> ({up_mm:.0f} mm höher)</translation>
    </message>
    <message>
        <source>A control unit stores a code when the signal is below {low_v:.2f} V or above {high_v:.2f} V {patience}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Ein Steuergerät speichert einen Code, wenn das Signal unter {low_v:.2f} V oder über {high_v:.2f} V liegt, und zwar {patience}.</translation>
    </message>
    <message>
        <source>It stores one when the signal changes by more than {limit:.0f} V/s {patience}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Es speichert einen, wenn sich das Signal um mehr als {limit:.0f} V/s ändert, und zwar {patience}.</translation>
    </message>
    <message>
        <source>It stores one for both sides when they disagree by more than {tolerance_v:.2f} V {patience}.</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>Es speichert einen für beide Seiten, wenn sie um mehr als {tolerance_v:.2f} V voneinander abweichen, und zwar {patience}.</translation>
    </message>
    <message>
        <source>for {hold} without a break</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>{hold} lang ohne Unterbrechung</translation>
    </message>
    <message>
        <source>until a counter, {up:d} up for a bad reading and {down:d} down for a good one, is at {limit:d}</source>
        <extracomment>analysis/exposure/words.py</extracomment>
        <translation>bis ein Zähler, je schlechtem Wert um {up:d} hoch und je gutem um {down:d} herunter, bei {limit:d} steht</translation>
    </message>
    <message>
        <source>it holds no run of numbers</source>
        <extracomment>analysis/importing/arrays.py, analysis/importing/arrow.py</extracomment>
        <translation>sie enthält keine Zahlenfolge</translation>
    </message>
    <message>
        <source>choose the file with the recorded samples</source>
        <extracomment>analysis/importing/arrays.py, analysis/importing/arrow.py, analysis/importing/model.py</extracomment>
        <translation>die Datei mit den aufgezeichneten Messwerten wählen</translation>
    </message>
    <message>
        <source>it claims {size:,} samples, more than can be read</source>
        <extracomment>analysis/importing/arrays.py</extracomment>
        <translation>sie behauptet {size:,} Messwerte, mehr als gelesen werden können</translation>
    </message>
    <message>
        <source>save a shorter stretch</source>
        <extracomment>analysis/importing/arrays.py, analysis/importing/damage.py</extracomment>
        <translation>ein kürzeres Stück speichern</translation>
    </message>
    <message>
        <source>of another length, and left out: {names}</source>
        <extracomment>analysis/importing/arrays.py</extracomment>
        <translation>von anderer Länge und ausgelassen: {names}</translation>
    </message>
    <message>
        <source>of another group, and left out: {names}</source>
        <extracomment>analysis/importing/arrays.py</extracomment>
        <translation>aus einer anderen Gruppe und ausgelassen: {names}</translation>
    </message>
    <message>
        <source>it has {count:,} columns, and at most {most} are read</source>
        <extracomment>analysis/importing/arrow.py, analysis/importing/model.py</extracomment>
        <translation>sie hat {count:,} Spalten, und höchstens {most} werden gelesen</translation>
    </message>
    <message>
        <source>save only the channels of the sensor</source>
        <extracomment>analysis/importing/arrow.py, analysis/importing/model.py</extracomment>
        <translation>nur die Kanäle des Sensors speichern</translation>
    </message>
    <message>
        <source>{count} line of numbers above the samples was left out</source>
        <extracomment>analysis/importing/asides.py, analysis/importing/settling.py</extracomment>
        <translation>{count} Zeile mit Zahlen über den Werten wurde weggelassen</translation>
    </message>
    <message>
        <source>{count:,} lines of numbers above the samples were left out</source>
        <extracomment>analysis/importing/asides.py, analysis/importing/settling.py</extracomment>
        <translation>{count:,} Zeilen mit Zahlen über den Werten wurden weggelassen</translation>
    </message>
    <message>
        <source>the names of the columns were read as Central European; choose another encoding where they look wrong</source>
        <extracomment>analysis/importing/asides.py</extracomment>
        <translation>die Namen der Spalten wurden als mitteleuropäisch gelesen; wählen Sie eine andere Kodierung, wenn sie falsch aussehen</translation>
    </message>
    <message>
        <source>the names of the columns were read as Cyrillic; choose another encoding where they look wrong</source>
        <extracomment>analysis/importing/asides.py</extracomment>
        <translation>die Namen der Spalten wurden als kyrillisch gelesen; wählen Sie eine andere Kodierung, wenn sie falsch aussehen</translation>
    </message>
    <message>
        <source>the names of the columns were read as Turkish; choose another encoding where they look wrong</source>
        <extracomment>analysis/importing/asides.py</extracomment>
        <translation>die Namen der Spalten wurden als Türkisch gelesen; wählen Sie eine andere Kodierung, wo sie falsch aussehen</translation>
    </message>
    <message>
        <source>the names of the columns were read as Japanese; choose another encoding where they look wrong</source>
        <extracomment>analysis/importing/asides.py</extracomment>
        <translation>die Namen der Spalten wurden als Japanisch gelesen; wählen Sie eine andere Kodierung, wo sie falsch aussehen</translation>
    </message>
    <message>
        <source>a line above the samples says {line!r}: the numbers are taken as they stand; give a factor where that is not in them</source>
        <extracomment>analysis/importing/asides.py</extracomment>
        <translation>eine Zeile über den Werten sagt {line!r}: Die Zahlen gelten, wie sie dastehen; geben Sie einen Faktor an, wenn das nicht darin steckt</translation>
    </message>
    <message>
        <source>the names of the columns were read as Latin-1; choose another encoding where they look wrong</source>
        <extracomment>analysis/importing/asides.py</extracomment>
        <translation>die Namen der Spalten wurden als Latin-1 gelesen; wählen Sie eine andere Zeichenkodierung, wenn sie falsch aussehen</translation>
    </message>
    <message>
        <source>column {name} holds no plain numbers ({cell}) and was left out</source>
        <extracomment>analysis/importing/asides.py</extracomment>
        <translation>Spalte {name} enthält keine einfachen Zahlen ({cell}) und wurde weggelassen</translation>
    </message>
    <message>
        <source>microvolts</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>Mikrovolt</translation>
    </message>
    <message>
        <source>millivolts</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>Millivolt</translation>
    </message>
    <message>
        <source>column {name} has no unit and is read as {unit}</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>Spalte {name} hat keine Einheit und wird als {unit} gelesen</translation>
    </message>
    <message>
        <source>as {unit} {name} would read {volts:.3g} V: perhaps it is counts</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>als {unit} läge {name} bei {volts:.3g} V: vielleicht sind es Zählwerte</translation>
    </message>
    <message>
        <source>a factor was said, but not for {name}, which has no unit</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>ein Faktor wurde genannt, aber nicht für {name}, das keine Einheit hat</translation>
    </message>
    <message>
        <source>say the unit with {units}; of counts, how many volts 1 is with {factors}</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>nennen Sie die Einheit mit {units}; bei Zählwerten, wie viel Volt 1 ist, mit {factors}</translation>
    </message>
    <message>
        <source>a line above the samples says {line!r}, and {name} stays at {volts:.3g} V</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>eine Zeile über den Messwerten lautet {line!r}, und {name} bleibt bei {volts:.3g} V</translation>
    </message>
    <message>
        <source>say of every wire what its numbers are multiplied by, 1 where they are its volts, with {options}</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>sagen Sie von jeder Leitung, womit ihre Zahlen zu multiplizieren sind (1, wo sie schon Volt sind), mit {options}</translation>
    </message>
    <message>
        <source>{name} would read {volts:,.3g} V, which no wire of a sensor does</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>{name} läge bei {volts:,.3g} V; so viel führt keine Leitung eines Sensors</translation>
    </message>
    <message>
        <source>column {name} stays at {volts:.2f} V, which its heading does not fit</source>
        <extracomment>analysis/importing/bare_units.py</extracomment>
        <translation>Spalte {name} bleibt bei {volts:.2f} V, wozu ihre Überschrift nicht passt</translation>
    </message>
    <message>
        <source>no signal wire was recorded: what it was taken for does not show</source>
        <extracomment>analysis/importing/behaviour.py</extracomment>
        <translation>keine Signalleitung wurde aufgezeichnet: wofür sie entstand, zeigt die Aufzeichnung nicht</translation>
    </message>
    <message>
        <source>the signal moves over {moved_v:.2f} V: a sweep</source>
        <extracomment>analysis/importing/behaviour.py</extracomment>
        <translation>das Signal bewegt sich über {moved_v:.2f} V: ein Durchlauf</translation>
    </message>
    <message>
        <source>the signal moves over {moved_v:.2f} V and mostly rests at {middle_v:.2f} V: perhaps a drive</source>
        <extracomment>analysis/importing/behaviour.py</extracomment>
        <translation>das Signal bewegt sich über {moved_v:.2f} V und ruht meist bei {middle_v:.2f} V: vielleicht eine Fahrt</translation>
    </message>
    <message>
        <source>the signal rests at {middle_v:.2f} V with short spikes: perhaps shaken</source>
        <extracomment>analysis/importing/behaviour.py</extracomment>
        <translation>das Signal ruht bei {middle_v:.2f} V mit kurzen Spitzen: vielleicht wurde gerüttelt</translation>
    </message>
    <message>
        <source>the signal rests at {middle_v:.2f} V: what it was taken for does not show</source>
        <extracomment>analysis/importing/behaviour.py</extracomment>
        <translation>das Signal ruht bei {middle_v:.2f} V: wofür die Aufzeichnung entstand, zeigt sie nicht</translation>
    </message>
    <message>
        <source>the only wire stays near 0 V, at {middle_v:.3f} V: ground</source>
        <extracomment>analysis/importing/behaviour.py</extracomment>
        <translation>die einzige Leitung bleibt nahe 0 V, bei {middle_v:.3f} V: Masse</translation>
    </message>
    <message>
        <source>the only wire stays near 5 V, at {middle_v:.3f} V: reference</source>
        <extracomment>analysis/importing/behaviour.py</extracomment>
        <translation>die einzige Leitung bleibt nahe 5 V, bei {middle_v:.3f} V: Bezugsspannung</translation>
    </message>
    <message>
        <source>the only wire stays at {middle_v:.2f} V: what it was taken for does not show</source>
        <extracomment>analysis/importing/behaviour.py</extracomment>
        <translation>die einzige Leitung bleibt bei {middle_v:.2f} V: wofür die Aufzeichnung entstand, zeigt sie nicht</translation>
    </message>
    <message>
        <source>it holds Python objects, which could run a program and are not opened</source>
        <extracomment>analysis/importing/binary.py</extracomment>
        <translation>sie enthält Python-Objekte, die ein Programm ausführen könnten und nicht geöffnet werden</translation>
    </message>
    <message>
        <source>save plain arrays of numbers</source>
        <extracomment>analysis/importing/binary.py</extracomment>
        <translation>reine Zahlenfelder speichern</translation>
    </message>
    <message>
        <source>it is a spreadsheet or another office document</source>
        <extracomment>analysis/importing/binary.py</extracomment>
        <translation>es ist eine Arbeitsmappe oder ein anderes Bürodokument</translation>
    </message>
    <message>
        <source>save its sheet as CSV, with a row a sample</source>
        <extracomment>analysis/importing/binary.py</extracomment>
        <translation>speichern Sie das Blatt als CSV, mit einer Zeile je Messwert</translation>
    </message>
    <message>
        <source>it is an archive of other files</source>
        <extracomment>analysis/importing/binary.py</extracomment>
        <translation>es ist ein Archiv mit anderen Dateien</translation>
    </message>
    <message>
        <source>unpack it, and choose the recording</source>
        <extracomment>analysis/importing/binary.py</extracomment>
        <translation>entpacken Sie es, und wählen Sie die Aufnahme</translation>
    </message>
    <message>
        <source>{name} was left out: {problem}</source>
        <extracomment>analysis/importing/bring_in.py</extracomment>
        <translation>{name} wurde weggelassen: {problem}</translation>
    </message>
    <message>
        <source>{mark} cannot stand between cells</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>{mark} kann nicht zwischen Zellen stehen</translation>
    </message>
    <message>
        <source>choose a comma, a semicolon, a tab, a bar or spaces</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>Komma, Semikolon, Tabulator, senkrechten Strich oder Leerzeichen wählen</translation>
    </message>
    <message>
        <source>{mark} is no decimal mark</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>{mark} ist kein Dezimalzeichen</translation>
    </message>
    <message>
        <source>choose a point or a comma</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>Punkt oder Komma wählen</translation>
    </message>
    <message>
        <source>{mark} cannot be the thousands mark here</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>{mark} kann hier kein Tausenderzeichen sein</translation>
    </message>
    <message>
        <source>choose another, or none</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>ein anderes oder keines wählen</translation>
    </message>
    <message>
        <source>a table cannot begin after {count:,} lines</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>eine Tabelle kann nicht nach {count:,} Zeilen beginnen</translation>
    </message>
    <message>
        <source>say how many lines stand before the first sample</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>angeben, wie viele Zeilen vor dem ersten Messwert stehen</translation>
    </message>
    <message>
        <source>{encoding} is no encoding that is read here</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>{encoding} ist keine Zeichenkodierung, die hier gelesen wird</translation>
    </message>
    <message>
        <source>choose one of {encodings}</source>
        <extracomment>analysis/importing/choices.py</extracomment>
        <translation>eine von diesen wählen: {encodings}</translation>
    </message>
    <message>
        <source>{name} is the fraction of each second of {clock}: both together are the time</source>
        <extracomment>analysis/importing/clock_parts.py</extracomment>
        <translation>{name} ist der Bruchteil jeder Sekunde von {clock}: beide zusammen sind die Zeit</translation>
    </message>
    <message>
        <source>the time stands still: it is rounded to more than the sample interval</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>die Zeit steht still: sie ist gröber gerundet als der Abtastabstand</translation>
    </message>
    <message>
        <source>name the sample interval instead</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>nennen Sie stattdessen den Abtastabstand</translation>
    </message>
    <message>
        <source>the time is rounded to {tick_s:.3g} s, and {fewest:,} to {most:,} rows share one: they do not lie evenly apart, or some are missing</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>die Zeit ist auf {tick_s:.3g} s gerundet, und {fewest:,} bis {most:,} Zeilen teilen sich eine: sie liegen nicht gleichmäßig, oder einige fehlen</translation>
    </message>
    <message>
        <source>save it with finer times, or name the sample interval instead</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>speichern Sie sie mit feineren Zeiten, oder nennen Sie stattdessen den Abtastabstand</translation>
    </message>
    <message>
        <source>the file says {stated_s:.4g} s between two rows, and {fewest:,} to {most:,} rows share {tick_s:.3g} s</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>die Datei nennt {stated_s:.4g} s zwischen zwei Zeilen, und {fewest:,} bis {most:,} Zeilen teilen sich {tick_s:.3g} s</translation>
    </message>
    <message>
        <source>say which is right with --sample-interval SECONDS</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>sagen Sie mit --sample-interval SECONDS, was stimmt</translation>
    </message>
    <message>
        <source>the times are rounded to {tick_s:.3g} s and {fewest:,} to {most:,} rows share one: the rows are taken as evenly {interval_s:.6g} s apart</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>die Zeiten sind auf {tick_s:.3g} s gerundet, und {fewest:,} bis {most:,} Zeilen teilen sich eine: die Zeilen gelten als gleichmäßig {interval_s:.6g} s auseinander</translation>
    </message>
    <message>
        <source>name the sample interval instead: about {interval_s:.3g} s, since {fewest:,} to {most:,} rows share {tick_s:.3g} s</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>nennen Sie stattdessen den Abtastabstand: etwa {interval_s:.3g} s, da sich {fewest:,} bis {most:,} Zeilen {tick_s:.3g} s teilen</translation>
    </message>
    <message>
        <source>the times are rounded to more than a row: the rows are taken as {interval_s:.6g} s apart, as the file says</source>
        <extracomment>analysis/importing/coarse.py</extracomment>
        <translation>die Zeiten sind gröber als eine Zeile gerundet: die Zeilen gelten als {interval_s:.6g} s auseinander, wie die Datei sagt</translation>
    </message>
    <message>
        <source>it is damaged, or no {kind} file that can be read</source>
        <extracomment>analysis/importing/damage.py</extracomment>
        <translation>sie ist beschädigt oder keine lesbare {kind}-Datei</translation>
    </message>
    <message>
        <source>save the recording again</source>
        <extracomment>analysis/importing/damage.py</extracomment>
        <translation>die Aufzeichnung noch einmal speichern</translation>
    </message>
    <message>
        <source>it unpacks to {size:,} bytes, more than can be read</source>
        <extracomment>analysis/importing/damage.py</extracomment>
        <translation>ausgepackt hat sie {size:,} Byte, mehr als gelesen werden können</translation>
    </message>
    <message>
        <source>a cell of it is too long for a number</source>
        <extracomment>analysis/importing/delimited.py</extracomment>
        <translation>eine ihrer Zellen ist zu lang für eine Zahl</translation>
    </message>
    <message>
        <source>save the recording as a plain table</source>
        <extracomment>analysis/importing/delimited.py</extracomment>
        <translation>die Aufzeichnung als einfache Tabelle speichern</translation>
    </message>
    <message>
        <source>no two rows of numbers were found in it</source>
        <extracomment>analysis/importing/dialect.py</extracomment>
        <translation>darin wurden keine zwei Zeilen mit Zahlen gefunden</translation>
    </message>
    <message>
        <source>save it as a table with one row a sample, or say what stands between cells with --delimiter</source>
        <extracomment>analysis/importing/dialect.py</extracomment>
        <translation>als Tabelle mit einer Zeile je Messwert speichern oder mit --delimiter angeben, was zwischen den Zellen steht</translation>
    </message>
    <message>
        <source>it is neither text nor any other kind of file that can be imported</source>
        <extracomment>analysis/importing/encoding.py</extracomment>
        <translation>sie ist weder Text noch eine andere Art von Datei, die eingelesen werden kann</translation>
    </message>
    <message>
        <source>save the recording as a table with one row a sample</source>
        <extracomment>analysis/importing/encoding.py</extracomment>
        <translation>die Aufzeichnung als Tabelle mit einer Zeile je Messwert speichern</translation>
    </message>
    <message>
        <source>a line of it is longer than {most:,} characters</source>
        <extracomment>analysis/importing/encoding.py</extracomment>
        <translation>eine ihrer Zeilen ist länger als {most:,} Zeichen</translation>
    </message>
    <message>
        <source>the times start again after {full:.10g} and are taken to go on (once)</source>
        <extracomment>analysis/importing/going_on.py</extracomment>
        <translation>die Zeiten beginnen nach {full:.10g} von vorn und gelten als fortlaufend (einmal)</translation>
    </message>
    <message>
        <source>the times start again after {full:.10g} and are taken to go on ({count:,} times)</source>
        <extracomment>analysis/importing/going_on.py</extracomment>
        <translation>die Zeiten beginnen nach {full:.10g} von vorn und gelten als fortlaufend ({count:,}-mal)</translation>
    </message>
    <message>
        <source>its heading says so</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>die Überschrift sagt es</translation>
    </message>
    <message>
        <source>its unit {unit} is no voltage</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>ihre Einheit {unit} ist keine Spannung</translation>
    </message>
    <message>
        <source>it holds the least or the greatest of several samples</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>sie enthält den kleinsten oder größten von mehreren Werten</translation>
    </message>
    <message>
        <source>its heading names something else than a voltage</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>ihre Überschrift nennt etwas anderes als eine Spannung</translation>
    </message>
    <message>
        <source>most of its cells are empty</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>die meisten ihrer Zellen sind leer</translation>
    </message>
    <message>
        <source>its heading says supply: at {middle_v:.3f} V that of the sensor</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>nach ihrer Überschrift eine Versorgung: bei {middle_v:.3f} V die des Sensors</translation>
    </message>
    <message>
        <source>it holds no finite sample</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>sie enthält keinen endlichen Messwert</translation>
    </message>
    <message>
        <source>it only switches between two values</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>sie wechselt nur zwischen zwei Werten</translation>
    </message>
    <message>
        <source>it moves by {spread_v:.2f} V between the rails</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>sie bewegt sich um {spread_v:.2f} V zwischen Masse und Bezugsspannung</translation>
    </message>
    <message>
        <source>it stays near zero, at {middle_v:.3f} V</source>
        <extracomment>analysis/importing/guesses.py, analysis/importing/second_look.py</extracomment>
        <translation>sie bleibt nahe null, bei {middle_v:.3f} V</translation>
    </message>
    <message>
        <source>it stays near 5 V, at {middle_v:.3f} V</source>
        <extracomment>analysis/importing/guesses.py, analysis/importing/second_look.py</extracomment>
        <translation>sie bleibt nahe 5 V, bei {middle_v:.3f} V</translation>
    </message>
    <message>
        <source>it stays at {middle_v:.1f} V, as a battery does</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>sie bleibt bei {middle_v:.1f} V, wie eine Batterie</translation>
    </message>
    <message>
        <source>it stays at {middle_v:.2f} V, which fits no wire of a sensor</source>
        <extracomment>analysis/importing/guesses.py</extracomment>
        <translation>sie bleibt bei {middle_v:.2f} V, was zu keiner Leitung eines Sensors passt</translation>
    </message>
    <message>
        <source>a line above the samples says {line!r}: a count of {names} is read as {volts:.7g} V</source>
        <extracomment>analysis/importing/in_volts.py</extracomment>
        <translation>eine Zeile über den Messwerten sagt {line!r}: ein Zählwert von {names} wird als {volts:.7g} V gelesen</translation>
    </message>
    <message>
        <source>a line above the samples says {line!r}: a count of {names} is read as {volts:.7g} V, and 0 as {zero_v:.5g} V</source>
        <extracomment>analysis/importing/in_volts.py</extracomment>
        <translation>eine Zeile über den Messwerten sagt {line!r}: ein Zählwert von {names} wird als {volts:.7g} V gelesen, und 0 als {zero_v:.5g} V</translation>
    </message>
    <message>
        <source>{line!r} is said of {name}: 1 % is read as {volts:.6g} V</source>
        <extracomment>analysis/importing/in_volts.py</extracomment>
        <translation>von {name} heißt es {line!r}: 1 % wird als {volts:.6g} V gelesen</translation>
    </message>
    <message>
        <source>{name} is in {unit}, not in volts</source>
        <extracomment>analysis/importing/in_volts.py</extracomment>
        <translation>{name} ist in {unit} angegeben, nicht in Volt</translation>
    </message>
    <message>
        <source>say how many volts 1 is with {options}</source>
        <extracomment>analysis/importing/in_volts.py</extracomment>
        <translation>sagen Sie, wie viel Volt 1 ist, mit {options}</translation>
    </message>
    <message>
        <source>it is the fraction of each second of {clock}</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>sie ist der Bruchteil jeder Sekunde von {clock}</translation>
    </message>
    <message>
        <source>it holds times</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>sie enthält Zeiten</translation>
    </message>
    <message>
        <source>the newest row comes first in it: the rows were turned round</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>die neueste Zeile steht zuerst: die Zeilen wurden umgedreht</translation>
    </message>
    <message>
        <source>it was not chosen</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>sie wurde nicht gewählt</translation>
    </message>
    <message>
        <source>every row stands in it twice</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>jede Zeile steht zweimal darin</translation>
    </message>
    <message>
        <source>save the recording again, with each sample once</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>speichern Sie die Aufnahme neu, jeden Wert einmal</translation>
    </message>
    <message>
        <source>no column looks like a wire of the sensor; there are: {names}</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>keine Spalte sieht nach einer Leitung des Sensors aus; es gibt: {names}</translation>
    </message>
    <message>
        <source>say which is which with --channel COLUMN=ROLE</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>mit --channel SPALTE=ROLLE sagen, welche welche ist</translation>
    </message>
    <message>
        <source>{unit} is no unit of voltage or time</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>{unit} ist keine Einheit von Spannung oder Zeit</translation>
    </message>
    <message>
        <source>say V, mV, s, ms or us</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>V, mV, s, ms oder us angeben</translation>
    </message>
    <message>
        <source>a WAV file does not say how many volts full scale is</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>eine WAV-Datei sagt nicht, wie viel Volt Vollausschlag ist</translation>
    </message>
    <message>
        <source>say it with --full-scale VOLTS</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>mit --full-scale VOLT angeben</translation>
    </message>
    <message>
        <source>it was chosen</source>
        <extracomment>analysis/importing/judging.py, analysis/importing/preview.py</extracomment>
        <translation>sie wurde gewählt</translation>
    </message>
    <message>
        <source>it counts the rows</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>sie zählt die Zeilen</translation>
    </message>
    <message>
        <source>its whole numbers only go up: it counts</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>ganze Zahlen, die nur steigen: ein Zähler</translation>
    </message>
    <message>
        <source>the head says so: {line}</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>der Kopf der Datei sagt es: {line}</translation>
    </message>
    <message>
        <source>another column is that already</source>
        <extracomment>analysis/importing/judging.py</extracomment>
        <translation>eine andere Spalte ist das schon</translation>
    </message>
    <message>
        <source>XML or a web page</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>XML oder eine Webseite</translation>
    </message>
    <message>
        <source>JSON</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>JSON</translation>
    </message>
    <message>
        <source>it is {kind}, not a table</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>sie ist {kind}, keine Tabelle</translation>
    </message>
    <message>
        <source>save it as a table with one row a sample</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>als Tabelle mit einer Zeile je Messwert speichern</translation>
    </message>
    <message>
        <source>it lies on its side: each line is a channel</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>sie liegt auf der Seite: jede Zeile ist ein Kanal</translation>
    </message>
    <message>
        <source>save it with a row a sample and a column for each channel (a spreadsheet can transpose it)</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>mit einer Zeile je Messwert und einer Spalte je Kanal speichern (eine Tabellenkalkulation kann sie transponieren)</translation>
    </message>
    <message>
        <source>its rows belong to more than one channel in turn: {labels}</source>
        <extracomment>analysis/importing/layouts.py, analysis/importing/settling.py</extracomment>
        <translation>ihre Zeilen gehören abwechselnd zu mehr als einem Kanal: {labels}</translation>
    </message>
    <message>
        <source>save it with a row a sample and a column for each channel</source>
        <extracomment>analysis/importing/layouts.py, analysis/importing/settling.py</extracomment>
        <translation>mit einer Zeile je Messwert und einer Spalte je Kanal speichern</translation>
    </message>
    <message>
        <source>its comma stands between cells and inside times</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>das Komma steht zwischen den Zellen und in den Zeiten</translation>
    </message>
    <message>
        <source>save it with a semicolon or a tab between cells</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>mit Semikolon oder Tabulator zwischen den Zellen speichern</translation>
    </message>
    <message>
        <source>its comma stands between cells and inside numbers</source>
        <extracomment>analysis/importing/layouts.py</extracomment>
        <translation>ihr Komma steht zwischen Zellen und in Zahlen</translation>
    </message>
    <message>
        <source>{count:,} of its lines hold numbers and cannot be read as the others are; the first is {line!r}</source>
        <extracomment>analysis/importing/left_out.py</extracomment>
        <translation>{count:,} ihrer Zeilen enthalten Zahlen und lassen sich nicht wie die anderen lesen; die erste lautet {line!r}</translation>
    </message>
    <message>
        <source>say how it is written with --thousands, --decimal or --delimiter</source>
        <extracomment>analysis/importing/left_out.py</extracomment>
        <translation>sagen Sie mit --thousands, --decimal oder --delimiter, wie sie geschrieben ist</translation>
    </message>
    <message>
        <source>{count} line is no row of samples and was left out</source>
        <extracomment>analysis/importing/left_out.py</extracomment>
        <translation>{count} Zeile enthält keine Messwerte und wurde ausgelassen</translation>
    </message>
    <message>
        <source>{count:,} lines are no rows of samples and were left out</source>
        <extracomment>analysis/importing/left_out.py</extracomment>
        <translation>{count:,} Zeilen enthalten keine Messwerte und wurden ausgelassen</translation>
    </message>
    <message>
        <source>{count} row is cut short: what it lacks is missing</source>
        <extracomment>analysis/importing/left_out.py</extracomment>
        <translation>{count} Zeile ist abgeschnitten: was ihr fehlt, gilt als fehlend</translation>
    </message>
    <message>
        <source>{count:,} rows are cut short: what they lack is missing</source>
        <extracomment>analysis/importing/left_out.py</extracomment>
        <translation>{count:,} Zeilen sind abgeschnitten: was ihnen fehlt, gilt als fehlend</translation>
    </message>
    <message>
        <source>{count} cell is no number and counts as missing ({example})</source>
        <extracomment>analysis/importing/left_out.py</extracomment>
        <translation>{count} Zelle ist keine Zahl und gilt als fehlend ({example})</translation>
    </message>
    <message>
        <source>{count:,} cells are no numbers and count as missing (the first is {example})</source>
        <extracomment>analysis/importing/left_out.py</extracomment>
        <translation>{count:,} Zellen sind keine Zahlen und gelten als fehlend (die erste ist {example})</translation>
    </message>
    <message>
        <source>the comma in {cell} is read as a thousands mark</source>
        <extracomment>analysis/importing/marks.py</extracomment>
        <translation>das Komma in {cell} wird als Tausenderzeichen gelesen</translation>
    </message>
    <message>
        <source>the comma in {cell} is read as a decimal comma</source>
        <extracomment>analysis/importing/marks.py</extracomment>
        <translation>das Komma in {cell} wird als Dezimalkomma gelesen</translation>
    </message>
    <message>
        <source>it has no column {name}; there are: {there}</source>
        <extracomment>analysis/importing/model.py</extracomment>
        <translation>sie hat keine Spalte {name}; es gibt: {there}</translation>
    </message>
    <message>
        <source>name one of these</source>
        <extracomment>analysis/importing/model.py</extracomment>
        <translation>eine davon nennen</translation>
    </message>
    <message>
        <source>it holds no columns of numbers</source>
        <extracomment>analysis/importing/model.py</extracomment>
        <translation>sie enthält keine Spalten mit Zahlen</translation>
    </message>
    <message>
        <source>no row of numbers is left when it is read so</source>
        <extracomment>analysis/importing/needs.py</extracomment>
        <translation>so gelesen bleibt keine Zeile mit Zahlen übrig</translation>
    </message>
    <message>
        <source>choose other marks and head lines, or leave them to be found out</source>
        <extracomment>analysis/importing/needs.py</extracomment>
        <translation>wählen Sie andere Zeichen und Kopfzeilen, oder lassen Sie sie ermitteln</translation>
    </message>
    <message>
        <source>its rows would lie {interval_s:.3g} s apart</source>
        <extracomment>analysis/importing/needs.py</extracomment>
        <translation>ihre Zeilen lägen {interval_s:.3g} s auseinander</translation>
    </message>
    <message>
        <source>say the unit of its times with --unit COLUMN=UNIT, or the sample interval</source>
        <extracomment>analysis/importing/needs.py</extracomment>
        <translation>die Einheit ihrer Zeiten mit --unit SPALTE=EINHEIT angeben oder den Abstand der Messwerte</translation>
    </message>
    <message>
        <source>the unit of the times in {name} is not known</source>
        <extracomment>analysis/importing/needs.py</extracomment>
        <translation>die Einheit der Zeiten in {name} ist nicht bekannt</translation>
    </message>
    <message>
        <source>say it with --unit COLUMN=UNIT: s, ms, us or min</source>
        <extracomment>analysis/importing/needs.py</extracomment>
        <translation>sie mit --unit SPALTE=EINHEIT angeben: s, ms, us oder min</translation>
    </message>
    <message>
        <source>the times in {name} go up by {step:,.6g}, and no unit is given</source>
        <extracomment>analysis/importing/needs.py</extracomment>
        <translation>die Zeiten in {name} steigen um {step:,.6g}, und eine Einheit steht nicht dabei</translation>
    </message>
    <message>
        <source>it lies on its side, each line a channel: it was turned</source>
        <extracomment>analysis/importing/on_its_side.py</extracomment>
        <translation>sie liegt quer, jede Zeile ein Kanal: sie wurde gedreht</translation>
    </message>
    <message>
        <source>it is a Feather file of the first version, which is not read any more</source>
        <extracomment>analysis/importing/opening.py</extracomment>
        <translation>sie ist eine Feather-Datei der ersten Version, die nicht mehr gelesen wird</translation>
    </message>
    <message>
        <source>save it as Parquet, or as Feather of version 2</source>
        <extracomment>analysis/importing/opening.py</extracomment>
        <translation>als Parquet oder als Feather der Version 2 speichern</translation>
    </message>
    <message>
        <source>it is a netCDF file of a kind that is not read here (64-bit data)</source>
        <extracomment>analysis/importing/opening.py</extracomment>
        <translation>sie ist eine netCDF-Datei einer Art, die hier nicht gelesen wird (64-Bit-Daten)</translation>
    </message>
    <message>
        <source>save it as netCDF-4</source>
        <extracomment>analysis/importing/opening.py</extracomment>
        <translation>als netCDF-4 speichern</translation>
    </message>
    <message>
        <source>it is no file</source>
        <extracomment>analysis/importing/opening.py</extracomment>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>choose a file with recorded samples</source>
        <extracomment>analysis/importing/opening.py</extracomment>
        <translation>eine Datei mit aufgezeichneten Messwerten wählen</translation>
    </message>
    <message>
        <source>it holds fewer than two rows</source>
        <extracomment>analysis/importing/preview.py, analysis/importing/records.py, analysis/importing/time_base.py</extracomment>
        <translation>sie enthält weniger als zwei Zeilen</translation>
    </message>
    <message>
        <source>No table was found, and so no time.</source>
        <extracomment>analysis/importing/preview.py</extracomment>
        <translation>Es wurde keine Tabelle gefunden und damit keine Zeit.</translation>
    </message>
    <message>
        <source>No table was found.</source>
        <extracomment>analysis/importing/preview.py</extracomment>
        <translation>Es wurde keine Tabelle gefunden.</translation>
    </message>
    <message>
        <source>there is no column {names}: left aside</source>
        <extracomment>analysis/importing/preview.py</extracomment>
        <translation>es gibt keine Spalte {names}: beiseitegelassen</translation>
    </message>
    <message>
        <source>it holds the times</source>
        <extracomment>analysis/importing/preview.py</extracomment>
        <translation>sie enthält die Zeiten</translation>
    </message>
    <message>
        <source>{name} exists and is no recipe</source>
        <extracomment>analysis/importing/recipe.py</extracomment>
        <translation>{name} gibt es schon und ist kein Rezept</translation>
    </message>
    <message>
        <source>choose another name for the recipe</source>
        <extracomment>analysis/importing/recipe.py</extracomment>
        <translation>einen anderen Namen für das Rezept wählen</translation>
    </message>
    <message>
        <source>there is no such recipe</source>
        <extracomment>analysis/importing/recipe.py</extracomment>
        <translation>ein solches Rezept gibt es nicht</translation>
    </message>
    <message>
        <source>it is no recipe for tables</source>
        <extracomment>analysis/importing/recipe.py</extracomment>
        <translation>das ist kein Rezept für Tabellen</translation>
    </message>
    <message>
        <source>make one with --keep-recipe</source>
        <extracomment>analysis/importing/recipe.py</extracomment>
        <translation>eines mit --keep-recipe anlegen</translation>
    </message>
    <message>
        <source>its shape is not known</source>
        <extracomment>analysis/importing/recipes.py</extracomment>
        <translation>ihr Aufbau ist nicht bekannt</translation>
    </message>
    <message>
        <source>import it again and keep the recipe then</source>
        <extracomment>analysis/importing/recipes.py</extracomment>
        <translation>sie erneut importieren und das Rezept dann behalten</translation>
    </message>
    <message>
        <source>the folder for recipes cannot be made</source>
        <extracomment>analysis/importing/recipes.py</extracomment>
        <translation>der Ordner für Rezepte kann nicht angelegt werden</translation>
    </message>
    <message>
        <source>check the rights of your own folder</source>
        <extracomment>analysis/importing/recipes.py</extracomment>
        <translation>die Rechte des eigenen Ordners prüfen</translation>
    </message>
    <message>
        <source>the recipe cannot be removed</source>
        <extracomment>analysis/importing/recipes.py</extracomment>
        <translation>das Rezept kann nicht entfernt werden</translation>
    </message>
    <message>
        <source>the sample interval must be positive</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>der Abtastabstand muss positiv sein</translation>
    </message>
    <message>
        <source>say it in seconds</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>in Sekunden angeben</translation>
    </message>
    <message>
        <source>the rows lie up to {share:.1f} % of an interval off their even places</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>die Zeilen liegen bis zu {share:.1f} % eines Abstands neben ihrem gleichmäßigen Platz</translation>
    </message>
    <message>
        <source>the time has gaps; each stretch between them is a record of its own</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>die Zeit hat Lücken; jedes Stück dazwischen ist ein eigener Abschnitt</translation>
    </message>
    <message>
        <source>{count} lone row between gaps was left out</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>{count} einzelne Zeile zwischen Lücken wurde ausgelassen</translation>
    </message>
    <message>
        <source>{count:,} lone rows between gaps were left out</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>{count:,} einzelne Zeilen zwischen Lücken wurden ausgelassen</translation>
    </message>
    <message>
        <source>its times are not evenly spaced: rows lie up to {off:.3g} intervals off</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>ihre Zeiten sind nicht gleichmäßig: Zeilen liegen bis zu {off:.3g} Abstände daneben</translation>
    </message>
    <message>
        <source>add --resample to interpolate onto even times, or name the sample interval</source>
        <extracomment>analysis/importing/records.py, analysis/importing/time_seen.py</extracomment>
        <translation>mit --resample auf gleichmäßige Zeiten interpolieren oder den Abtastabstand angeben</translation>
    </message>
    <message>
        <source>the samples were interpolated onto even times {interval_s:.6g} s apart</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>die Messwerte wurden auf gleichmäßige Zeiten im Abstand von {interval_s:.6g} s interpoliert</translation>
    </message>
    <message>
        <source>it is too long to be resampled at once</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>sie ist zu lang, um auf einmal umgerechnet zu werden</translation>
    </message>
    <message>
        <source>save a shorter stretch of it</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>ein kürzeres Stück davon speichern</translation>
    </message>
    <message>
        <source>no channel is {roles}: where its probe sat is left aside</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>kein Kanal ist {roles}: wo dessen Spitze saß, bleibt unbeachtet</translation>
    </message>
    <message>
        <source>column {name} has samples beyond the range of the recorder</source>
        <extracomment>analysis/importing/records.py</extracomment>
        <translation>Spalte {name} hat Messwerte außerhalb des Messbereichs</translation>
    </message>
    <message>
        <source>its heading says so, but it behaves otherwise</source>
        <extracomment>analysis/importing/second_look.py</extracomment>
        <translation>die Überschrift sagt es, aber sie verhält sich anders</translation>
    </message>
    <message>
        <source>the columns {names} behave otherwise than their headings say: check which is which</source>
        <extracomment>analysis/importing/second_look.py</extracomment>
        <translation>die Spalten {names} verhalten sich anders, als ihre Überschriften sagen: Prüfen Sie, welche welche ist</translation>
    </message>
    <message>
        <source>{name} names a sensor and no wire that is known here: at {middle_v:.3f} V it is taken for the ground; check it</source>
        <extracomment>analysis/importing/second_look.py</extracomment>
        <translation>{name} nennt einen Sensor und keine Leitung, die hier bekannt ist: Mit {middle_v:.3f} V gilt sie als Masse; prüfen Sie das</translation>
    </message>
    <message>
        <source>{name} names a sensor and no wire that is known here: at {middle_v:.3f} V it is taken for the reference; check it</source>
        <extracomment>analysis/importing/second_look.py</extracomment>
        <translation>{name} nennt einen Sensor und keine Leitung, die hier bekannt ist: Mit {middle_v:.3f} V gilt sie als Bezugsspannung; prüfen Sie das</translation>
    </message>
    <message>
        <source>save each block as a file of its own, and choose them together</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>speichern Sie jeden Block als eigene Datei, und wählen Sie sie zusammen</translation>
    </message>
    <message>
        <source>its {count} blocks one below the other become a record each</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>ihre {count} untereinander stehenden Blöcke werden je ein Abschnitt</translation>
    </message>
    <message>
        <source>a heading above row {row:,} names other columns or units than the first</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>eine Überschrift über Zeile {row:,} nennt andere Spalten oder Einheiten als die erste</translation>
    </message>
    <message>
        <source>its {count} blocks one below the other differ in their times or their length</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>ihre {count} untereinander stehenden Blöcke haben verschiedene Zeiten oder sind verschieden lang</translation>
    </message>
    <message>
        <source>{count} line of numbers below the samples was left out</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>{count} Zeile mit Zahlen unter den Messwerten wurde weggelassen</translation>
    </message>
    <message>
        <source>{count:,} lines of numbers below the samples were left out</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>{count:,} Zeilen mit Zahlen unter den Messwerten wurden weggelassen</translation>
    </message>
    <message>
        <source>its {count} blocks one below the other are taken as channels: {labels}</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>ihre {count} untereinander stehenden Blöcke gelten als Kanäle: {labels}</translation>
    </message>
    <message>
        <source>its times start again at row {row:,}: it holds {count} blocks one below the other</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>ihre Zeiten beginnen bei Zeile {row:,} von vorn: sie enthält {count} Blöcke untereinander</translation>
    </message>
    <message>
        <source>it holds {count} blocks one below the other ({labels}); the second begins at row {row:,}</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>sie enthält {count} Blöcke untereinander ({labels}); der zweite beginnt in Zeile {row:,}</translation>
    </message>
    <message>
        <source>it holds {count} blocks one below the other; the second begins at row {row:,}</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>sie enthält {count} Blöcke untereinander; der zweite beginnt in Zeile {row:,}</translation>
    </message>
    <message>
        <source>say what they are with --blocks {words}</source>
        <extracomment>analysis/importing/settling.py</extracomment>
        <translation>sagen Sie mit --blocks {words}, was sie sind</translation>
    </message>
    <message>
        <source>it shows nothing by itself; in {name} the same column was found to be that</source>
        <extracomment>analysis/importing/siblings.py</extracomment>
        <translation>für sich allein zeigt sie nichts; in {name} wurde dieselbe Spalte so erkannt</translation>
    </message>
    <message>
        <source>the folder holds no files</source>
        <extracomment>analysis/importing/sources.py</extracomment>
        <translation>der Ordner enthält keine Dateien</translation>
    </message>
    <message>
        <source>there are {count:,} files, and at most {most} become one capture</source>
        <extracomment>analysis/importing/sources.py</extracomment>
        <translation>es sind {count:,} Dateien, und höchstens {most} werden eine Aufzeichnung</translation>
    </message>
    <message>
        <source>choose those of one sensor</source>
        <extracomment>analysis/importing/sources.py</extracomment>
        <translation>die eines Sensors wählen</translation>
    </message>
    <message>
        <source>a line above the samples says {line!r}, and how volts come of it is not known here</source>
        <extracomment>analysis/importing/stated_scales.py</extracomment>
        <translation>eine Zeile über den Messwerten sagt {line!r}, und wie daraus Volt werden, ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>the row {line!r} may be in the numbers already: {name} reads {raw_v:.4g} V without it and {volts:.4g} V with it</source>
        <extracomment>analysis/importing/stated_scales.py</extracomment>
        <translation>die Zeile {line!r} ist vielleicht schon in den Zahlen: {name} liest ohne sie {raw_v:.4g} V und mit ihr {volts:.4g} V</translation>
    </message>
    <message>
        <source>say of every wire what its numbers are multiplied by, and the volts to be added, as with --factor {name}=1 --offset {name}=0</source>
        <extracomment>analysis/importing/stated_scales.py</extracomment>
        <translation>für jede Leitung angeben, womit ihre Zahlen malgenommen werden und wie viel Volt dazukommen, etwa mit --factor {name}=1 --offset {name}=0</translation>
    </message>
    <message>
        <source>say of every wire what its numbers are multiplied by, as with --factor {name}=1</source>
        <extracomment>analysis/importing/stated_scales.py</extracomment>
        <translation>für jede Leitung angeben, womit ihre Zahlen malgenommen werden, etwa mit --factor {name}=1</translation>
    </message>
    <message>
        <source>the times in {name} are the numbers with what the row {line!r} says</source>
        <extracomment>analysis/importing/stated_scales.py</extracomment>
        <translation>die Zeiten in {name} sind die Zahlen, gerechnet wie die Zeile {line!r} es sagt</translation>
    </message>
    <message>
        <source>volts are the numbers times the factors of the row {factors!r}, plus the offsets of the row {offsets!r}</source>
        <extracomment>analysis/importing/stated_scales.py</extracomment>
        <translation>Volt sind die Zahlen mal den Faktoren der Zeile {factors!r}, plus den Werten der Zeile {offsets!r}</translation>
    </message>
    <message>
        <source>volts are the numbers times the factors of the row {factors!r}</source>
        <extracomment>analysis/importing/stated_scales.py</extracomment>
        <translation>Volt sind die Zahlen mal den Faktoren der Zeile {factors!r}</translation>
    </message>
    <message>
        <source>volts are the numbers plus the offsets of the row {offsets!r}</source>
        <extracomment>analysis/importing/stated_scales.py</extracomment>
        <translation>Volt sind die Zahlen plus den Werten der Zeile {offsets!r}</translation>
    </message>
    <message>
        <source>the file says {stated_s:.4g} s between two rows, and its times say {interval_s:.4g} s: the times count</source>
        <extracomment>analysis/importing/time_base.py</extracomment>
        <translation>die Datei nennt {stated_s:.4g} s zwischen zwei Zeilen, ihre Zeiten aber {interval_s:.4g} s: Die Zeiten gelten</translation>
    </message>
    <message>
        <source>the time of row {row:,} is missing</source>
        <extracomment>analysis/importing/time_base.py</extracomment>
        <translation>die Zeit der Zeile {row:,} fehlt</translation>
    </message>
    <message>
        <source>repair the table, or name the sample interval instead</source>
        <extracomment>analysis/importing/time_base.py</extracomment>
        <translation>die Tabelle berichtigen oder statt dessen den Abtastabstand angeben</translation>
    </message>
    <message>
        <source>the time runs backwards at row {row:,}</source>
        <extracomment>analysis/importing/time_base.py</extracomment>
        <translation>die Zeit läuft in Zeile {row:,} rückwärts</translation>
    </message>
    <message>
        <source>sort or split the table, or name the sample interval instead</source>
        <extracomment>analysis/importing/time_base.py</extracomment>
        <translation>die Tabelle ordnen oder teilen oder statt dessen den Abtastabstand angeben</translation>
    </message>
    <message>
        <source>the columns {names} hold the same times; {name} is used</source>
        <extracomment>analysis/importing/time_column.py</extracomment>
        <translation>die Spalten {names} enthalten dieselben Zeiten; {name} wird verwendet</translation>
    </message>
    <message>
        <source>the columns {names} agree as far as they go; the finest, {name}, is used</source>
        <extracomment>analysis/importing/time_column.py</extracomment>
        <translation>die Spalten {names} stimmen überein, so weit sie reichen; die feinste, {name}, wird verwendet</translation>
    </message>
    <message>
        <source>several columns could be the time, and they do not agree on a row's step: {there}</source>
        <extracomment>analysis/importing/time_column.py</extracomment>
        <translation>mehrere Spalten könnten die Zeit sein, und sie sind über den Schritt einer Zeile nicht einig: {there}</translation>
    </message>
    <message>
        <source>say which with --time COLUMN</source>
        <extracomment>analysis/importing/time_column.py</extracomment>
        <translation>mit --time SPALTE sagen, welche</translation>
    </message>
    <message>
        <source>the times in {name} are written in a way that is not read here</source>
        <extracomment>analysis/importing/time_column.py</extracomment>
        <translation>die Zeiten in {name} sind auf eine Art geschrieben, die hier nicht gelesen wird</translation>
    </message>
    <message>
        <source>it does not say how much time lies between two rows</source>
        <extracomment>analysis/importing/time_column.py</extracomment>
        <translation>sie sagt nicht, wie viel Zeit zwischen zwei Zeilen liegt</translation>
    </message>
    <message>
        <source>say it with --sample-interval SECONDS or --sample-rate HERTZ</source>
        <extracomment>analysis/importing/time_column.py</extracomment>
        <translation>mit --sample-interval SEKUNDEN oder --sample-rate HERTZ angeben</translation>
    </message>
    <message>
        <source>The times in {name} are not evenly spaced: rows lie up to {off:.3g} intervals off.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>Die Zeiten in {name} haben keinen gleichmäßigen Abstand: Zeilen liegen bis zu {off:.3g} Abstände daneben.</translation>
    </message>
    <message>
        <source>The times in {name} are {interval_s:.6g} s apart ({rate_hz:.6g} Hz) with {count} gap of {longest_s:.3g} s.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>Die Zeiten in {name} liegen {interval_s:.6g} s auseinander ({rate_hz:.6g} Hz), mit {count} Lücke von {longest_s:.3g} s.</translation>
    </message>
    <message>
        <source>The times in {name} are {interval_s:.6g} s apart ({rate_hz:.6g} Hz) with {count} gaps of up to {longest_s:.3g} s.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>Die Zeiten in {name} liegen {interval_s:.6g} s auseinander ({rate_hz:.6g} Hz), mit {count} Lücken von bis zu {longest_s:.3g} s.</translation>
    </message>
    <message>
        <source>The times in {name} are evenly {interval_s:.6g} s apart ({rate_hz:.6g} Hz).</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>Die Zeiten in {name} liegen gleichmäßig {interval_s:.6g} s auseinander ({rate_hz:.6g} Hz).</translation>
    </message>
    <message>
        <source>The times in {name} are {interval_s:.6g} s apart ({rate_hz:.6g} Hz), and at most {off_percent:.2g} % of that off their places.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>Die Zeiten in {name} liegen {interval_s:.6g} s auseinander ({rate_hz:.6g} Hz) und höchstens {off_percent:.2g} % davon neben ihrem Platz.</translation>
    </message>
    <message>
        <source>{sentence} Note: {restarts}.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>{sentence} Hinweis: {restarts}.</translation>
    </message>
    <message>
        <source>{sentence} Note: {against}.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>{sentence} Hinweis: {against}.</translation>
    </message>
    <message>
        <source>its times are not evenly spaced</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>ihre Zeiten haben keinen gleichmäßigen Abstand</translation>
    </message>
    <message>
        <source>How much time lies between two rows is not known.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>Wie viel Zeit zwischen zwei Zeilen liegt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The rows are {interval_s:.6g} s apart ({rate_hz:.6g} Hz), as was said.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>Die Zeilen liegen {interval_s:.6g} s auseinander ({rate_hz:.6g} Hz), wie angegeben.</translation>
    </message>
    <message>
        <source>The rows are {interval_s:.6g} s apart ({rate_hz:.6g} Hz), as the file says.</source>
        <extracomment>analysis/importing/time_seen.py</extracomment>
        <translation>Die Zeilen liegen {interval_s:.6g} s auseinander ({rate_hz:.6g} Hz), wie die Datei sagt.</translation>
    </message>
    <message>
        <source>nanoseconds</source>
        <extracomment>analysis/importing/time_units.py</extracomment>
        <translation>Nanosekunden</translation>
    </message>
    <message>
        <source>microseconds</source>
        <extracomment>analysis/importing/time_units.py</extracomment>
        <translation>Mikrosekunden</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <extracomment>analysis/importing/time_units.py</extracomment>
        <translation>Millisekunden</translation>
    </message>
    <message>
        <source>seconds</source>
        <extracomment>analysis/importing/time_units.py</extracomment>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>the times in {name} are read as {unit} since 1970</source>
        <extracomment>analysis/importing/time_units.py</extracomment>
        <translation>die Zeiten in {name} werden als {unit} seit 1970 gelesen</translation>
    </message>
    <message>
        <source>the times in {name} are read as days of a spreadsheet</source>
        <extracomment>analysis/importing/time_units.py</extracomment>
        <translation>die Zeiten in {name} werden als Tage einer Tabellenkalkulation gelesen</translation>
    </message>
    <message>
        <source>the times in {name} are read as parts of a day, as a spreadsheet counts</source>
        <extracomment>analysis/importing/time_units.py</extracomment>
        <translation>die Zeiten in {name} werden als Teile eines Tages gelesen, wie eine Tabellenkalkulation zählt</translation>
    </message>
    <message>
        <source>column {name} has no unit and is read as seconds: its rows lie {step:.3g} s apart</source>
        <extracomment>analysis/importing/time_units.py</extracomment>
        <translation>Spalte {name} hat keine Einheit und wird als Sekunden gelesen: Die Zeilen liegen {step:.3g} s auseinander</translation>
    </message>
    <message>
        <source>its sound is packed in a way that is not read here</source>
        <extracomment>analysis/importing/wav.py</extracomment>
        <translation>ihre Werte sind auf eine Art gepackt, die hier nicht gelesen wird</translation>
    </message>
    <message>
        <source>save it as plain PCM or as floats</source>
        <extracomment>analysis/importing/wav.py</extracomment>
        <translation>als einfaches PCM oder als Gleitkommazahlen speichern</translation>
    </message>
    <message>
        <source>it is a damaged WAV file</source>
        <extracomment>analysis/importing/wav.py</extracomment>
        <translation>das ist eine beschädigte WAV-Datei</translation>
    </message>
    <message>
        <source>A vehicle on air or height-adjustable suspension can drop without warning, and moving a live sensor makes it inflate or dump. Put it on stands rated for it, disable levelling by the maker's method, and only then connect and sweep.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation>Ein Fahrzeug mit Luftfederung oder Niveauregulierung kann ohne Vorwarnung absinken, und ein Sensor, der unter Spannung bewegt wird, lässt es auf- oder abpumpen. Auf dafür zugelassene Unterstellböcke stellen, die Niveauregulierung nach Herstellervorgabe abschalten und erst dann anschließen und durchfahren.</translation>
    </message>
    <message>
        <source>An electronic throttle traps fingers: sweep pedals with the engine off and the intake closed, hands out of the bore.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation>Eine elektronische Drosselklappe klemmt Finger ein: Pedale nur bei abgestelltem Motor und geschlossenem Ansaugtrakt durchfahren, Hände weg von der Drosselklappe.</translation>
    </message>
    <message>
        <source>Never probe airbag or high-voltage circuits with this procedure. Back-probe the plug; do not pierce the insulation.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation>Mit diesem Verfahren niemals an Airbag- oder Hochvoltkreisen messen. Von hinten am Stecker messen; die Isolierung nicht durchstechen.</translation>
    </message>
    <message>
        <source>After a sensor is replaced the maker's height calibration applies.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation>Nach dem Ersatz eines Sensors gilt die Höhenkalibrierung des Herstellers.</translation>
    </message>
    <message>
        <source>The vehicle maker's procedure, local codes and a licensed technician's judgement stand above this tool.</source>
        <extracomment>analysis/reports/cautions.py</extracomment>
        <translation>Die Vorgaben des Fahrzeugherstellers, die örtlichen Vorschriften und das Urteil der zugelassenen Fachkraft stehen über diesem Werkzeug.</translation>
    </message>
    <message>
        <source>pass</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>fail</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>nicht in Ordnung</translation>
    </message>
    <message>
        <source>cannot tell</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>nicht zu entscheiden</translation>
    </message>
    <message>
        <source>proved</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>nachgewiesen</translation>
    </message>
    <message>
        <source>refuted</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>widerlegt</translation>
    </message>
    <message>
        <source>not judged</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>nicht bewertet</translation>
    </message>
    <message>
        <source>no limit</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>at most {limit}</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>höchstens {limit}</translation>
    </message>
    <message>
        <source>at least {limit}</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>mindestens {limit}</translation>
    </message>
    <message>
        <source>{lower} to {upper}</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>{lower} bis {upper}</translation>
    </message>
    <message>
        <source>over {percent} %</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>über {percent} %</translation>
    </message>
    <message>
        <source>under {percent} %</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>unter {percent} %</translation>
    </message>
    <message>
        <source>within limits: {share} sure</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>innerhalb der Grenzen: zu {share} sicher</translation>
    </message>
    <message>
        <source>outside limits: {share} sure</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>außerhalb der Grenzen: zu {share} sicher</translation>
    </message>
    <message>
        <source>{title} {reading}, no limit stated: {result}.</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>{title} {reading}, keine Grenze angegeben: {result}.</translation>
    </message>
    <message>
        <source>{title} {reading}, allowed {limit}: {outcome}.</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>{title} {reading}, zulässig {limit}: {outcome}.</translation>
    </message>
    <message>
        <source>cannot tell, the uncertainty reaches across the limit</source>
        <extracomment>analysis/reports/checks.py</extracomment>
        <translation>nicht zu entscheiden, die Unsicherheit reicht über die Grenze</translation>
    </message>
    <message>
        <source>What stands against reading more into it</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Was dagegen spricht, mehr daraus zu lesen</translation>
    </message>
    <message>
        <source>Compared</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Verglichen</translation>
    </message>
    <message>
        <source>Comparison</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>{name}, in size</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>{name}, Betrag</translation>
    </message>
    <message>
        <source>not crossed</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>nicht überfahren</translation>
    </message>
    <message>
        <source>p &lt; 0.001</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>p &lt; 0,001</translation>
    </message>
    <message>
        <source>p = {p_value:.3f}</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>p = {p_value:.3f}</translation>
    </message>
    <message>
        <source>cannot be compared</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>nicht vergleichbar</translation>
    </message>
    <message>
        <source>no</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes, but worst seen: scatters</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>ja, aber Größtwert: streut</translation>
    </message>
    <message>
        <source>yes</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>ja</translation>
    </message>
    <message>
        <source>{speed:.0f} %/s</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>{speed:.0f} %/s</translation>
    </message>
    <message>
        <source>{rate_hz:.0f} samples/s</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>{rate_hz:.0f} Messwerte/s</translation>
    </message>
    <message>
        <source>shows from {floor:.1f} % up</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>zeigt ab {floor:.1f} %</translation>
    </message>
    <message>
        <source>Travel</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Weg</translation>
    </message>
    <message>
        <source>{side}, broken up</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>{side}, ausgesetzt</translation>
    </message>
    <message>
        <source>Outcome</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>Test of the counts</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Test der Anzahlen</translation>
    </message>
    <message>
        <source>Crossings are counted; the counts are tested by Fisher's exact test, two-sided.</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Überfahrten werden gezählt; die Anzahlen werden mit dem exakten Test nach Fisher, zweiseitig, geprüft.</translation>
    </message>
    <message>
        <source>Bands</source>
        <extracomment>analysis/reports/comparison_report.py, analysis/reports/findings_report.py</extracomment>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>How these bands were tested</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Wie diese Zonen geprüft wurden</translation>
    </message>
    <message>
        <source>Reading</source>
        <extracomment>analysis/reports/comparison_report.py, analysis/reports/findings_report.py, analysis/reports/marker_readings.py</extracomment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Difference</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>More than its uncertainty</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Mehr als seine Unsicherheit</translation>
    </message>
    <message>
        <source>Readings</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>not taken</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>travel counted from the other end</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>Weg vom anderen Ende gezählt</translation>
    </message>
    <message>
        <source>SHA-256 {sha256}</source>
        <extracomment>analysis/reports/comparison_report.py</extracomment>
        <translation>SHA-256 {sha256}</translation>
    </message>
    <message>
        <source>very likely</source>
        <extracomment>analysis/reports/confidence.py, analysis/reports/evidence_page.py</extracomment>
        <translation>sehr wahrscheinlich</translation>
    </message>
    <message>
        <source>likely</source>
        <extracomment>analysis/reports/confidence.py, analysis/reports/evidence_page.py</extracomment>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>more likely than not</source>
        <extracomment>analysis/reports/confidence.py, analysis/reports/evidence_page.py</extracomment>
        <translation>eher wahrscheinlich als nicht</translation>
    </message>
    <message>
        <source>possible</source>
        <extracomment>analysis/reports/confidence.py, analysis/reports/evidence_page.py</extracomment>
        <translation>möglich</translation>
    </message>
    <message>
        <source>not rated</source>
        <extracomment>analysis/reports/confidence.py, analysis/reports/evidence_page.py</extracomment>
        <translation>nicht bewertet</translation>
    </message>
    <message>
        <source>very unlikely</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation>sehr unwahrscheinlich</translation>
    </message>
    <message>
        <source>{words} ({odds} in 100)</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation>{words} ({odds} von 100)</translation>
    </message>
    <message>
        <source>Of 100 verdicts said with this confidence about {odds} proved right on simulated captures; it does not tell the possible causes apart.</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation>Von 100 Befunden mit dieser Sicherheit trafen bei simulierten Messungen etwa {odds} zu; die möglichen Ursachen unterscheidet sie nicht.</translation>
    </message>
    <message>
        <source>Of 100 verdicts said with this confidence about {odds} proved right on simulated captures.</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation>Von 100 Befunden mit dieser Sicherheit trafen bei simulierten Messungen etwa {odds} zu.</translation>
    </message>
    <message>
        <source>Of 100 bands found with this confidence about {odds} proved to be there on simulated captures.</source>
        <extracomment>analysis/reports/confidence.py</extracomment>
        <translation>Von 100 Zonen, die mit dieser Sicherheit gefunden wurden, waren bei simulierten Messungen etwa {odds} wirklich da.</translation>
    </message>
    <message>
        <source>The sensor tells the car how high it stands at this corner. It is a little arm that slides along a track; the voltage it gives should follow the arm smoothly.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Der Sensor meldet dem Fahrzeug, wie hoch es an diesem Rad steht. In ihm gleitet ein kleiner Schleifer über eine Widerstandsbahn; die Spannung, die er abgibt, soll der Bewegung gleichmäßig folgen.</translation>
    </message>
    <message>
        <source>The sensor tells the engine how far the pedal or the throttle is open. It is an arm that slides along a track; the voltage it gives should follow the arm smoothly.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Der Sensor meldet dem Motor, wie weit Pedal oder Drosselklappe geöffnet sind. In ihm gleitet ein Schleifer über eine Widerstandsbahn; die Spannung, die er abgibt, soll der Bewegung gleichmäßig folgen.</translation>
    </message>
    <message>
        <source>The sensor tells the control unit a position. It is an arm that slides along a track; the voltage it gives should follow the arm smoothly.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Der Sensor meldet dem Steuergerät eine Stellung. In ihm gleitet ein Schleifer über eine Widerstandsbahn; die Spannung, die er abgibt, soll der Bewegung gleichmäßig folgen.</translation>
    </message>
    <message>
        <source>Here it drops out at any position, as a loose contact does. A new sensor alone may not cure that.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Hier setzt sie in jeder Stellung aus, wie bei einem Wackelkontakt. Ein neuer Sensor allein behebt das möglicherweise nicht.</translation>
    </message>
    <message>
        <source>The sensor can only be as good as its supply, and that was not as it should be. A new sensor may not cure that.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Der Sensor kann nur so gut sein wie seine Versorgung, und die war nicht, wie sie sein soll. Ein neuer Sensor behebt das möglicherweise nicht.</translation>
    </message>
    <message>
        <source>The sensor can only be as good as its ground, and that was not as it should be. A new sensor may not cure that.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Der Sensor kann nur so gut sein wie seine Masse, und die war nicht, wie sie sein soll. Ein neuer Sensor behebt das möglicherweise nicht.</translation>
    </message>
    <message>
        <source>It reads beyond its normal range without breaking up. It may be telling the truth: about the height, a bent link, or a part that does not belong there.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Er meldet einen Wert außerhalb seines normalen Bereichs, ohne auszusetzen. Vielleicht stimmt das sogar: wegen der Höhe, eines verbogenen Gestänges oder eines Teils, das dort nicht hingehört.</translation>
    </message>
    <message>
        <source>What was recorded is not the sensor's own signal, so that nothing can be concluded from it.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Was aufgezeichnet wurde, ist nicht das Signal des Sensors; daraus lässt sich nichts schließen.</translation>
    </message>
    <message>
        <source>No place was found where it does not. That holds for the travel and the conditions of the test; a fault that comes and goes may have been away.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Es wurde keine Stelle gefunden, an der sie das nicht tut. Das gilt für den Weg und die Bedingungen der Prüfung; ein Fehler, der kommt und geht, kann gerade weg gewesen sein.</translation>
    </message>
    <message>
        <source>What was recorded fits more than one explanation, or leaves out what would decide it.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Was aufgezeichnet wurde, passt zu mehr als einer Erklärung oder lässt aus, was entscheiden würde.</translation>
    </message>
    <message>
        <source>The car may level itself wrongly, without warning, and the lamps may point too high. Nobody should reach under it unless it stands on stands. If it sits visibly low or leans, it should not be driven. Otherwise drive with care; the maker's instructions decide.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Das Fahrzeug kann sich ohne Vorwarnung falsch einstellen, und die Scheinwerfer können zu hoch leuchten. Niemand darf darunter greifen, solange es nicht auf Unterstellböcken steht. Wenn es sichtbar zu tief oder schief steht, sollten Sie es nicht fahren. Fahren Sie sonst mit Vorsicht; maßgeblich ist die Anleitung des Herstellers.</translation>
    </message>
    <message>
        <source>The engine may hesitate, jerk or lose power without warning. It should not be driven further than the workshop until this is cleared up; the maker's instructions decide.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Der Motor kann ohne Vorwarnung stocken, ruckeln oder Leistung verlieren. Bis das geklärt ist, sollten Sie nicht weiter als bis zur Werkstatt fahren; maßgeblich ist die Anleitung des Herstellers.</translation>
    </message>
    <message>
        <source>The system that uses this sensor may act on a wrong position. What may be driven is for the maker's instructions and the technician to say.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Das System, das diesen Sensor nutzt, kann auf eine falsche Stellung reagieren. Was gefahren werden darf, sagen Ihnen die Anleitung des Herstellers und die Werkstatt.</translation>
    </message>
    <message>
        <source>This measurement does not answer that. As long as the complaint is there, it is to be taken seriously: the technician and the maker's instructions decide.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Diese Messung beantwortet das nicht. Solange die Beanstandung besteht, ist sie ernst zu nehmen: Es entscheiden die Werkstatt und die Anleitung des Herstellers.</translation>
    </message>
    <message>
        <source>This measurement gives no reason not to. It does not answer the complaint by itself; the technician and the maker's instructions decide.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Diese Messung gibt keinen Grund, nicht zu fahren. Sie beantwortet die Beanstandung nicht allein; es entscheiden die Werkstatt und die Anleitung des Herstellers.</translation>
    </message>
    <message>
        <source>A track that breaks up does not heal. As a rule the place grows and the complaint comes more often.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Eine Bahn, die aussetzt, erholt sich nicht. In der Regel wächst die Stelle, und die Beanstandung tritt häufiger auf.</translation>
    </message>
    <message>
        <source>A fault inside the sensor does not heal; the complaint will come back.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Ein Fehler im Inneren des Sensors heilt nicht; die Beanstandung kommt wieder.</translation>
    </message>
    <message>
        <source>A bad contact comes and goes, and as a rule comes more often, above all in the wet and on bad roads.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Ein schlechter Kontakt kommt und geht und tritt in der Regel häufiger auf, vor allem bei Nässe und auf schlechten Straßen.</translation>
    </message>
    <message>
        <source>The complaint is likely to come back, and other systems on the same supply may be disturbed too.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Die Beanstandung kommt wahrscheinlich wieder, und auch andere Systeme an derselben Versorgung können gestört werden.</translation>
    </message>
    <message>
        <source>The complaint is likely to come back, and other systems on the same ground may be disturbed too.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Die Beanstandung kommt wahrscheinlich wieder, und auch andere Systeme an derselben Masse können gestört werden.</translation>
    </message>
    <message>
        <source>The system that uses this sensor may go on acting on a wrong position.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Das System, das diesen Sensor nutzt, kann weiter auf eine falsche Stellung reagieren.</translation>
    </message>
    <message>
        <source>This cannot be said before the cause is found.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Das lässt sich erst sagen, wenn die Ursache gefunden ist.</translation>
    </message>
    <message>
        <source>Nothing follows from this measurement. If the complaint comes back, it should be measured again then.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Aus dieser Messung folgt nichts. Wenn die Beanstandung wiederkommt, sollte dann noch einmal gemessen werden.</translation>
    </message>
    <message>
        <source>Replace the position sensor, calibrate it by the maker's method, and measure again in the same way.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Den Positionssensor ersetzen, nach Herstellervorgabe kalibrieren und ebenso noch einmal messen.</translation>
    </message>
    <message>
        <source>Find the bad contact in the signal wire, its plugs or the sensor's pins, repair it, and measure again.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Den schlechten Kontakt in der Signalleitung, ihren Steckern oder den Steckkontakten des Sensors suchen, instand setzen und noch einmal messen.</translation>
    </message>
    <message>
        <source>Find what disturbs the supply of the sensor, before any part is replaced, and measure again.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Suchen, was die Versorgung des Sensors stört, bevor ein Teil ersetzt wird, und noch einmal messen.</translation>
    </message>
    <message>
        <source>Find the bad ground connection, before any part is replaced, repair it, and measure again.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Die schlechte Masseverbindung suchen, bevor ein Teil ersetzt wird, sie instand setzen und noch einmal messen.</translation>
    </message>
    <message>
        <source>Measure the height, look at the linkage and check that the part is the right one, before it is replaced.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Die Höhe messen, das Gestänge ansehen und prüfen, ob das richtige Teil verbaut ist, bevor es ersetzt wird.</translation>
    </message>
    <message>
        <source>Measure again. No part should be bought on this measurement.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Noch einmal messen. Auf diese Messung hin sollte kein Teil gekauft werden.</translation>
    </message>
    <message>
        <source>No part should be replaced on this measurement. If the complaint goes on, look further.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Auf diese Messung hin sollte kein Teil ersetzt werden. Wenn die Beanstandung bleibt, weiter suchen.</translation>
    </message>
    <message>
        <source>Measure what is missing. No part should be bought on this measurement.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Messen, was fehlt. Auf diese Messung hin sollte kein Teil gekauft werden.</translation>
    </message>
    <message>
        <source>Look at the sensor's plug and pins first. If they are good, replace the position sensor, calibrate it by the maker's method, and measure again in the same way.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Zuerst Stecker und Kontakte des Sensors ansehen. Sind sie gut, den Positionssensor ersetzen, nach Herstellervorgabe kalibrieren und auf dieselbe Weise noch einmal messen.</translation>
    </message>
    <message>
        <source>Confirm it before a part is bought: measure again what page two lists as not shown, or set the sensor beside a known good one.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Vor dem Kauf eines Teils bestätigen: noch einmal messen, was Seite zwei als nicht nachgewiesen aufführt, oder den Sensor neben einen nachweislich guten stellen.</translation>
    </message>
    <message>
        <source>Wiring beyond the points that were probed, other sensors, other causes of the complaint, and whatever the system itself has suffered. Nobody opened the sensor.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Leitungen jenseits der Messpunkte, andere Sensoren, andere Ursachen der Beanstandung und Schäden am System selbst. Den Sensor hat niemand geöffnet.</translation>
    </message>
    <message>
        <source>Anything that was not measured: other sensors, wiring beyond the points that were probed, and other causes of the complaint.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Alles, was nicht gemessen wurde: andere Sensoren, Leitungen jenseits der Messpunkte und andere Ursachen der Beanstandung.</translation>
    </message>
    <message>
        <source>Here it drops out at any position, as a loose contact does, but only {when}: the contact is in the sensor or where it is plugged in, rather than along the wire.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Hier setzt sie in jeder Stellung aus, wie bei einem Wackelkontakt, aber nur, {when}: Der Kontakt liegt eher im Sensor oder an seiner Steckverbindung als in der Leitung.</translation>
    </message>
    <message>
        <source>What was recorded points to this, and does not prove it.</source>
        <extracomment>analysis/reports/consequences.py, analysis/reports/evidence_page.py</extracomment>
        <translation>Was aufgezeichnet wurde, deutet darauf hin und beweist es nicht.</translation>
    </message>
    <message>
        <source>{where} it drops out instead, {when}: the system is told a wrong position for moments.</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>{where} setzt sie stattdessen aus, {when}: Das System bekommt für Augenblicke eine falsche Stellung gemeldet.</translation>
    </message>
    <message>
        <source>At times</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>Zeitweise</translation>
    </message>
    <message>
        <source>for no reason that the arm gives</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>ohne dass die Bewegung es erklärt</translation>
    </message>
    <message>
        <source>At one place</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>An einer Stelle</translation>
    </message>
    <message>
        <source>At {count} places</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>An {count} Stellen</translation>
    </message>
    <message>
        <source>each time the arm passes</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>jedes Mal wenn der Schleifer darüberfährt</translation>
    </message>
    <message>
        <source>most times the arm passes</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>meistens, wenn der Schleifer darüberfährt</translation>
    </message>
    <message>
        <source>some of the times the arm passes</source>
        <extracomment>analysis/reports/consequences.py</extracomment>
        <translation>manchmal, wenn der Schleifer darüberfährt</translation>
    </message>
    <message>
        <source>Speaks against it: {statement}</source>
        <extracomment>analysis/reports/contrary.py</extracomment>
        <translation>Dagegen spricht: {statement}</translation>
    </message>
    <message>
        <source>{count} more stands below.</source>
        <extracomment>analysis/reports/contrary.py</extracomment>
        <translation>{count} weitere Aussage steht unten.</translation>
    </message>
    <message>
        <source>{count} more stand below.</source>
        <extracomment>analysis/reports/contrary.py</extracomment>
        <translation>{count} weitere Aussagen stehen unten.</translation>
    </message>
    <message>
        <source>The file of this measurement was changed after it was recorded, or cannot be read in full. What is said here is of the file as it is now, and is no evidence.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Die Datei dieser Messung wurde nach der Aufnahme geändert oder lässt sich nicht ganz lesen. Was hier steht, gilt für die Datei, wie sie jetzt ist, und ist kein Beleg.</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, analysis/reports/findings_report.py, app/views/report_form.py</extracomment>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Registration</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, analysis/reports/findings_report.py, app/views/report_form.py</extracomment>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>Odometer</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, app/views/report_form.py</extracomment>
        <translation>Kilometerstand</translation>
    </message>
    <message>
        <source>Job</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Measured on</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, app/views/report_form.py</extracomment>
        <translation>Gemessen am</translation>
    </message>
    <message>
        <source>Sensor</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py, analysis/reports/findings_report.py, app/views/report_form.py</extracomment>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Part</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Labour</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Calibration</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>calibrated by the maker's method</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>nach Herstellervorgabe kalibriert</translation>
    </message>
    <message>
        <source>fault codes cleared, and none came back</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Fehlercodes gelöscht, keiner ist wiedergekommen</translation>
    </message>
    <message>
        <source>heights or end positions measured</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Höhen oder Endstellungen gemessen</translation>
    </message>
    <message>
        <source>road test done</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Probefahrt gemacht</translation>
    </message>
    <message>
        <source>captured again in the same way</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>ebenso noch einmal gemessen</translation>
    </message>
    <message>
        <source>For the customer</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Für den Kunden</translation>
    </message>
    <message>
        <source>What was complained of</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Was beanstandet wurde</translation>
    </message>
    <message>
        <source>Fault codes: {codes}, and {more} more on the evidence page.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Fehlercodes: {codes} und {more} weitere auf der Nachweisseite.</translation>
    </message>
    <message>
        <source>Fault codes: {codes}</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/evidence_page.py</extracomment>
        <translation>Fehlercodes: {codes}</translation>
    </message>
    <message>
        <source>What was found</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Open points: {points}</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Offene Punkte: {points}</translation>
    </message>
    <message>
        <source>The program's confidence: {odds} in 100. Of a hundred findings with this confidence about as many are right; it is not a degree of wear.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Wie sicher sich das Programm ist: {odds} von 100. Von hundert Befunden dieser Sicherheit treffen etwa ebenso viele zu; sie ist kein Maß für den Verschleiß.</translation>
    </message>
    <message>
        <source>What it means</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Was das bedeutet</translation>
    </message>
    <message>
        <source>Can it be driven?</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Dürfen Sie damit fahren?</translation>
    </message>
    <message>
        <source>If it is left</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Wenn nichts geschieht</translation>
    </message>
    <message>
        <source>What we recommend</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Was wir empfehlen</translation>
    </message>
    <message>
        <source>What that does not include</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Was das nicht umfasst</translation>
    </message>
    <message>
        <source>Why it comes and goes</source>
        <extracomment>analysis/reports/customer_page.py, analysis/reports/findings_report.py</extracomment>
        <translation>Warum es kommt und geht</translation>
    </message>
    <message>
        <source>Notes of the technician</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Anmerkungen der Werkstatt</translation>
    </message>
    <message>
        <source>Our offer</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Unser Angebot</translation>
    </message>
    <message>
        <source>I approve the work above.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Ich beauftrage die oben genannte Arbeit.</translation>
    </message>
    <message>
        <source>I decline it.</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Ich lehne sie ab.</translation>
    </message>
    <message>
        <source>Date</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Signature of the customer</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Unterschrift des Kunden</translation>
    </message>
    <message>
        <source>Tax</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Steuer</translation>
    </message>
    <message>
        <source>Tax, {percent:g} %</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Steuer, {percent:g} %</translation>
    </message>
    <message>
        <source>Total</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Photos</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>After the repair</source>
        <extracomment>analysis/reports/customer_page.py</extracomment>
        <translation>Nach der Reparatur</translation>
    </message>
    <message>
        <source>It is not shown that the sensor's ground connection is good.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Dass die Masseverbindung des Sensors gut ist, ist nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>It is not shown that the sensor's supply is good and steady.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Dass die Versorgung des Sensors gut und stabil ist, ist nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>It is not shown that the wires keep contact when they are moved.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Dass die Leitungen Kontakt halten, wenn sie bewegt werden, ist nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>It is not ruled out that a cable which moves with the arm causes it.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Dass ein Kabel, das sich mit dem Hebel bewegt, die Ursache ist, ist nicht ausgeschlossen.</translation>
    </message>
    <message>
        <source>It is not shown that the probes sat right.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Dass die Prüfspitzen richtig saßen, ist nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>It is not shown that it is the same spot every time.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Dass es jedes Mal dieselbe Stelle ist, ist nicht nachgewiesen.</translation>
    </message>
    <message>
        <source>The position in which the arm normally rests was not tested.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Die Stellung, in der der Hebel gewöhnlich ruht, wurde nicht geprüft.</translation>
    </message>
    <message>
        <source>Very likely</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Sehr wahrscheinlich</translation>
    </message>
    <message>
        <source>Probably</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Wahrscheinlich</translation>
    </message>
    <message>
        <source>More likely than not,</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Eher wahrscheinlich als nicht</translation>
    </message>
    <message>
        <source>It is possible, but not shown, that</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Möglicherweise, aber nicht nachgewiesen,</translation>
    </message>
    <message>
        <source>{sure} the position sensor is worn: its output breaks up{place}.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>{sure} ist der Positionssensor verschlissen: Sein Signal setzt{place} aus.</translation>
    </message>
    <message>
        <source>{sure} the position sensor is faulty: its output breaks up{place}.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>{sure} ist der Positionssensor defekt: Sein Signal setzt{place} aus.</translation>
    </message>
    <message>
        <source>{sure} the fault is a bad contact in the signal wire, its plugs or the sensor's pins, not a worn track.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>{sure} liegt der Fehler in einem schlechten Kontakt der Signalleitung, ihrer Stecker oder der Steckkontakte des Sensors, nicht in einer verschlissenen Bahn.</translation>
    </message>
    <message>
        <source>{sure} the fault is in the supply that feeds the position sensor. What pulls it down has yet to be found.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>{sure} liegt der Fehler in der Versorgung, die den Positionssensor speist. Was sie herunterzieht, ist noch zu suchen.</translation>
    </message>
    <message>
        <source>{sure} the fault is in the ground connection of the position sensor. Where has yet to be found.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>{sure} liegt der Fehler in der Masseverbindung des Positionssensors. Wo genau, ist noch zu suchen.</translation>
    </message>
    <message>
        <source>{sure} the position sensor reads outside its normal range. The height and the linkage come first; then the sensor.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>{sure} liegt der Wert des Positionssensors außerhalb seines normalen Bereichs. Zuerst sind Höhe und Gestänge zu prüfen, dann der Sensor.</translation>
    </message>
    <message>
        <source>The measurement cannot be used and has to be made again. It says nothing about the vehicle yet.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Die Messung ist nicht brauchbar und muss wiederholt werden. Über das Fahrzeug sagt sie noch nichts.</translation>
    </message>
    <message>
        <source>No fault was seen in the position sensor and the wires that were measured{tested}. {sure} there is none in what was tested.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Am Positionssensor und an den gemessenen Leitungen wurde kein Fehler gefunden{tested}. {sure} ist in dem, was geprüft wurde, keiner.</translation>
    </message>
    <message>
        <source>The measurement does not show yet what is wrong. More has to be measured before a part is bought.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Die Messung zeigt noch nicht, was nicht stimmt. Bevor ein Teil gekauft wird, muss mehr gemessen werden.</translation>
    </message>
    <message>
        <source>{sure} there is a bad contact in the position sensor, at its pins or in its plug, and no worn track: the signal dropped out only {when}.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>{sure} liegt ein Wackelkontakt im Positionssensor, an seinen Kontakten oder in seinem Stecker vor und keine verschlissene Bahn: Das Signal fiel nur aus, {when}.</translation>
    </message>
    <message>
        <source>while the sensor was tapped</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>während auf den Sensor geklopft wurde</translation>
    </message>
    <message>
        <source>while the sensor was warm</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>während der Sensor warm war</translation>
    </message>
    <message>
        <source>while the sensor was cold</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>während der Sensor kalt war</translation>
    </message>
    <message>
        <source>while the sensor was wet</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>während der Sensor nass war</translation>
    </message>
    <message>
        <source>The program found a place where the sensor's output breaks up; the technician does not accept that finding. It is not shown what is wrong.</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>Das Programm hat eine Stelle gefunden, an der das Signal des Sensors aussetzt; die Werkstatt erkennt diesen Befund nicht an. Was nicht stimmt, ist damit nicht nachgewiesen.</translation>
    </message>
    <message>
        <source> at the same place of its travel (around {travel_percent:.0f} %), each of the {passes} times that the arm passed it</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation> immer an derselben Stelle seines Wegs (bei etwa {travel_percent:.0f} %), bei jeder der {passes} Überfahrten,</translation>
    </message>
    <message>
        <source> at the same place of its travel (around {travel_percent:.0f} %), {noisy} of the {passes} times that the arm passed it</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation> immer an derselben Stelle seines Wegs (bei etwa {travel_percent:.0f} %), bei {noisy} von {passes} Überfahrten,</translation>
    </message>
    <message>
        <source> and at one other place</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation> und an einer weiteren Stelle</translation>
    </message>
    <message>
        <source> and at {more} other places</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation> und an {more} weiteren Stellen</translation>
    </message>
    <message>
        <source>, and perhaps at one other place</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>, und vielleicht an einer weiteren Stelle</translation>
    </message>
    <message>
        <source>, and perhaps at {more} other places</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>, und vielleicht an {more} weiteren Stellen</translation>
    </message>
    <message>
        <source>{where}; the rest was not tested</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>{where}; der Rest wurde nicht geprüft</translation>
    </message>
    <message>
        <source>, in {first:.0f}–{last:.0f} % of its travel (with gaps)</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>, geprüft auf {first:.0f}–{last:.0f} % seines Wegs (mit Lücken)</translation>
    </message>
    <message>
        <source>, in {first:.0f}–{last:.0f} % of its travel</source>
        <extracomment>analysis/reports/customer_words.py</extracomment>
        <translation>, geprüft auf {first:.0f}–{last:.0f} % seines Wegs</translation>
    </message>
    <message>
        <source>VIN</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py, app/views/report_form.py</extracomment>
        <translation>FIN</translation>
    </message>
    <message>
        <source>Technician</source>
        <extracomment>analysis/reports/evidence_page.py, app/views/report_form.py</extracomment>
        <translation>Fachkraft</translation>
    </message>
    <message>
        <source>Mounting</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py, app/views/report_form.py</extracomment>
        <translation>Einbauort</translation>
    </message>
    <message>
        <source>Part number</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py, app/views/report_form.py</extracomment>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>Earlier repairs</source>
        <extracomment>analysis/reports/evidence_page.py, app/views/report_form.py</extracomment>
        <translation>Frühere Reparaturen</translation>
    </message>
    <message>
        <source>A fingerprint proves that the file is unchanged since the fingerprint was taken. It does not prove who took it, nor that the capture was true.</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Ein Fingerabdruck beweist, dass die Datei unverändert ist, seit er genommen wurde. Er beweist nicht, wer ihn genommen hat, noch dass die Messung echt war.</translation>
    </message>
    <message>
        <source>Not as it should be</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Nicht so, wie es sein soll</translation>
    </message>
    <message>
        <source>Proved</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Nachgewiesen</translation>
    </message>
    <message>
        <source>Within limits: how probable it is, given the reading and its uncertainty, that the true value keeps its limits. Pass takes 98 in 100 for it, fail 98 in 100 against it; anything between cannot be told. Not judged is a reading that keeps its limits, but leaves out what goes beyond them, and one that is not the wire's.</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>In den Grenzen: wie wahrscheinlich es nach Messwert und Unsicherheit ist, dass der wahre Wert seine Grenzen einhält. „In Ordnung“ verlangt 98 von 100 dafür, „nicht in Ordnung“ 98 von 100 dagegen; dazwischen lässt es sich nicht sagen. Nicht bewertet ist ein Messwert, der seine Grenzen einhält, aber auslässt, was über sie hinausgeht, und einer, der nicht von der Leitung stammt.</translation>
    </message>
    <message>
        <source>A limit that names a maker and a model is that maker's published service figure. Where it is another model than this car, it stands in for this car's own, which was not at hand.</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Eine Grenze, die Hersteller und Modell nennt, ist der veröffentlichte Servicewert dieses Herstellers. Wo es ein anderes Modell als dieses Fahrzeug ist, steht er für den eigenen Wert dieses Fahrzeugs, der nicht zur Hand war.</translation>
    </message>
    <message>
        <source>The names of the codes were written down from memory and not held against the standard: where it matters, look them up in SAE J2012 (ISO 15031-6).</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Die Namen der Codes sind aus dem Gedächtnis notiert und nicht mit der Norm verglichen: Wo es darauf ankommt, in SAE J2012 (ISO 15031-6) nachschlagen.</translation>
    </message>
    <message>
        <source>none disclosed</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>keine angegeben</translation>
    </message>
    <message>
        <source>For whoever measures this again</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Für alle, die das nachmessen</translation>
    </message>
    <message>
        <source>Evidence</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Nachweise</translation>
    </message>
    <message>
        <source>{verdict}: this measurement is {words} not usable ({odds} in 100)</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>{verdict}: Diese Messung ist {words} nicht brauchbar ({odds} von 100)</translation>
    </message>
    <message>
        <source>{verdict}: {words} at most, as something was not shown ({odds} in 100 by what was recorded)</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>{verdict}: höchstens {words}, da etwas nicht nachgewiesen wurde ({odds} von 100 nach dem, was aufgezeichnet wurde)</translation>
    </message>
    <message>
        <source>Failed, and yet not held against the sensor: {titles}. What disturbed these readings came and went in time and belongs to no place on the travel.</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Nicht in Ordnung und doch nicht dem Sensor angelastet: {titles}. Was diese Werte störte, kam und ging mit der Zeit und gehört zu keiner Stelle des Wegs.</translation>
    </message>
    <message>
        <source>The car and the job</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Fahrzeug und Auftrag</translation>
    </message>
    <message>
        <source>Fault code</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Fehlercode</translation>
    </message>
    <message>
        <source>The standard's wording (SAE J2012), from memory</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Wortlaut der Norm (SAE J2012), aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>What was shown or ruled out, and by which record</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Was nachgewiesen oder ausgeschlossen wurde, und durch welche Aufzeichnung</translation>
    </message>
    <message>
        <source>Speaks against the verdict</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Spricht gegen den Befund</translation>
    </message>
    <message>
        <source>Records</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>What was not tested, or not shown</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Was nicht geprüft oder nicht nachgewiesen wurde</translation>
    </message>
    <message>
        <source>What it was set beside</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Womit verglichen wurde</translation>
    </message>
    <message>
        <source>Capture</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation>Messung</translation>
    </message>
    <message>
        <source>Found there</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Dort gefunden</translation>
    </message>
    <message>
        <source>SHA-256 of its file</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>SHA-256 seiner Datei</translation>
    </message>
    <message>
        <source>SHA-256 of the file</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation>SHA-256 der Datei</translation>
    </message>
    <message>
        <source>Fingerprint of the content</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Fingerabdruck des Inhalts</translation>
    </message>
    <message>
        <source>Sensor profile</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation>Sensorprofil</translation>
    </message>
    <message>
        <source>Analysis version</source>
        <extracomment>analysis/reports/evidence_page.py, analysis/reports/findings_report.py</extracomment>
        <translation>Version der Auswertung</translation>
    </message>
    <message>
        <source>What this was made from</source>
        <extracomment>analysis/reports/evidence_page.py</extracomment>
        <translation>Woraus dies gemacht wurde</translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>{name}, Sensor/Schalter {letter}, Stromkreis</translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit range/performance</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>{name}, Sensor/Schalter {letter}, Stromkreis: Bereich/Verhalten</translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit low</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>{name}, Sensor/Schalter {letter}, Stromkreis: zu niedrig</translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit high</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>{name}, Sensor/Schalter {letter}, Stromkreis: zu hoch</translation>
    </message>
    <message>
        <source>{name} sensor/switch {letter} circuit intermittent</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>{name}, Sensor/Schalter {letter}, Stromkreis: zeitweise</translation>
    </message>
    <message>
        <source>Throttle/pedal position</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>Drosselklappen-/Pedalstellung</translation>
    </message>
    <message>
        <source>Sensor reference voltage {letter} circuit/open</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>Sensor-Bezugsspannung {letter}, Stromkreis/Unterbrechung</translation>
    </message>
    <message>
        <source>Sensor reference voltage {letter} circuit low</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>Sensor-Bezugsspannung {letter}, Stromkreis: zu niedrig</translation>
    </message>
    <message>
        <source>Sensor reference voltage {letter} circuit high</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>Sensor-Bezugsspannung {letter}, Stromkreis: zu hoch</translation>
    </message>
    <message>
        <source>Throttle/pedal position sensor/switch {pair} voltage correlation</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>Drosselklappen-/Pedalstellung, Sensor/Schalter {pair}, Spannungen passen nicht zueinander</translation>
    </message>
    <message>
        <source>defined by the maker</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>vom Hersteller festgelegt</translation>
    </message>
    <message>
        <source>see SAE J2012</source>
        <extracomment>analysis/reports/fault_codes.py</extracomment>
        <translation>siehe SAE J2012</translation>
    </message>
    <message>
        <source>Odometer, km</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Kilometerstand, km</translation>
    </message>
    <message>
        <source>Complaint</source>
        <extracomment>analysis/reports/findings_report.py, app/views/report_form.py</extracomment>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Fault codes</source>
        <extracomment>analysis/reports/findings_report.py, app/views/report_form.py</extracomment>
        <translation>Fehlercodes</translation>
    </message>
    <message>
        <source>Recorder</source>
        <extracomment>analysis/reports/findings_report.py, analysis/reports/how_measured.py</extracomment>
        <translation>Rekorder</translation>
    </message>
    <message>
        <source>Recorder serial</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Seriennummer des Rekorders</translation>
    </message>
    <message>
        <source>Recorder calibrated</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Rekorder kalibriert</translation>
    </message>
    <message>
        <source>What this does not say</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Was dies nicht sagt</translation>
    </message>
    <message>
        <source>What to do next</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Was als Nächstes zu tun ist</translation>
    </message>
    <message>
        <source>Taken as given</source>
        <extracomment>analysis/reports/findings_report.py, app/errands/comparing.py</extracomment>
        <translation>Als gegeben angenommen</translation>
    </message>
    <message>
        <source>Made from</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Gemacht aus</translation>
    </message>
    <message>
        <source>Before you connect or sweep</source>
        <extracomment>analysis/reports/findings_report.py, app/errands/comparing.py</extracomment>
        <translation>Vor dem Anschließen und Durchfahren</translation>
    </message>
    <message>
        <source>{kind}: {travel}, {volts} on the {track}; {confidence}; breaks up on {noisy} of {crossings}{falls}.</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>{kind}: {travel}, {volts} auf {track}; {confidence}; Aussetzer bei {noisy} von {crossings}{falls}.</translation>
    </message>
    <message>
        <source>Possible band, watch it</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Mögliche Zone, beobachten</translation>
    </message>
    <message>
        <source>Band</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Zone</translation>
    </message>
    <message>
        <source>, towards ground</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>, in Richtung Masse</translation>
    </message>
    <message>
        <source>, towards the reference</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>, in Richtung Bezugsspannung</translation>
    </message>
    <message>
        <source>, both ways</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>, in beide Richtungen</translation>
    </message>
    <message>
        <source>signal</source>
        <extracomment>analysis/reports/findings_report.py, analysis/reports/how_measured.py, analysis/reports/marker_readings.py, analysis/reports/trace_picture.py</extracomment>
        <translation>Signal</translation>
    </message>
    <message>
        <source>second signal</source>
        <extracomment>analysis/reports/findings_report.py, analysis/reports/how_measured.py, analysis/reports/marker_readings.py, analysis/reports/trace_picture.py</extracomment>
        <translation>Signal 2</translation>
    </message>
    <message>
        <source>reference</source>
        <extracomment>analysis/reports/findings_report.py, analysis/reports/how_measured.py, analysis/reports/marker_readings.py, analysis/reports/trace_picture.py</extracomment>
        <translation>Bezugsspannung</translation>
    </message>
    <message>
        <source>ground</source>
        <extracomment>analysis/reports/findings_report.py, analysis/reports/how_measured.py, analysis/reports/marker_readings.py, analysis/reports/trace_picture.py</extracomment>
        <translation>Masse</translation>
    </message>
    <message>
        <source>supply</source>
        <extracomment>analysis/reports/findings_report.py, analysis/reports/how_measured.py, analysis/reports/marker_readings.py, analysis/reports/trace_picture.py</extracomment>
        <translation>Versorgung</translation>
    </message>
    <message>
        <source>Possible causes, likeliest first: {causes}.</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Mögliche Ursachen, die wahrscheinlichste zuerst: {causes}.</translation>
    </message>
    <message>
        <source>% of travel</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>% des Wegs</translation>
    </message>
    <message>
        <source>Edges ±</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Ränder ±</translation>
    </message>
    <message>
        <source>Volts</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Volt</translation>
    </message>
    <message>
        <source>Track</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Bahn</translation>
    </message>
    <message>
        <source>Confidence</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Breaks up on</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Aussetzer bei</translation>
    </message>
    <message>
        <source>Worst</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Größter</translation>
    </message>
    <message>
        <source>{confidence}, watch</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>{confidence}, beobachten</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Statement</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Aussage</translation>
    </message>
    <message>
        <source>Chain of evidence</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Beweiskette</translation>
    </message>
    <message>
        <source>Result</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Allowed</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Zulässig</translation>
    </message>
    <message>
        <source>Within limits</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>In den Grenzen</translation>
    </message>
    <message>
        <source>Whose limit</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Wessen Grenze</translation>
    </message>
    <message>
        <source>not stated</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Checks</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Break-up below {floor} {of} cannot be seen on the {track} in this capture.</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>In dieser Messung sind Aussetzer unter {floor} {of} nicht zu sehen (Leitung: {track}).</translation>
    </message>
    <message>
        <source>No travel was tested.</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Es wurde kein Weg geprüft.</translation>
    </message>
    <message>
        <source>Travel tested</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>Geprüfter Weg</translation>
    </message>
    <message>
        <source>tested once</source>
        <extracomment>analysis/reports/findings_report.py, app/views/readout.py</extracomment>
        <translation>einmal geprüft</translation>
    </message>
    <message>
        <source>tested {count} times</source>
        <extracomment>analysis/reports/findings_report.py, app/views/readout.py</extracomment>
        <translation>{count}-mal geprüft</translation>
    </message>
    <message>
        <source>{travel}: {tested} or more everywhere</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>{travel}: überall {tested} oder öfter</translation>
    </message>
    <message>
        <source>{travel}: {tested} or more; less than {enough} times at {places}</source>
        <extracomment>analysis/reports/findings_report.py</extracomment>
        <translation>{travel}: {tested} oder öfter; weniger als {enough}-mal bei {places}</translation>
    </message>
    <message>
        <source>Serial number</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Wire</source>
        <extracomment>analysis/reports/how_measured.py, analysis/reports/marker_readings.py</extracomment>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Plug and pin</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Stecker und Pin</translation>
    </message>
    <message>
        <source>Probed at</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Against</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Gegen</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>In file</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>In Datei</translation>
    </message>
    <message>
        <source>What was done</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>State of the car</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Zustand des Fahrzeugs</translation>
    </message>
    <message>
        <source>What it showed</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Was es zeigte</translation>
    </message>
    <message>
        <source>Load</source>
        <extracomment>analysis/reports/how_measured.py, app/views/report_form.py</extracomment>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Wie gemessen wurde</translation>
    </message>
    <message>
        <source>What was done in each record</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Was in jeder Aufzeichnung getan wurde</translation>
    </message>
    <message>
        <source>not stated; assumed</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>nicht angegeben; angenommen</translation>
    </message>
    <message>
        <source>±({gain_percent:g} % + {offset_mv:g} mV), stated</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>±({gain_percent:g} % + {offset_mv:g} mV), angegeben</translation>
    </message>
    <message>
        <source>plugged in</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>angesteckt</translation>
    </message>
    <message>
        <source>unplugged</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>abgesteckt</translation>
    </message>
    <message>
        <source>ignition {value}</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Zündung {value}</translation>
    </message>
    <message>
        <source>engine {value}</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Motor {value}</translation>
    </message>
    <message>
        <source>load: {value}</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>Belastung: {value}</translation>
    </message>
    <message>
        <source>{value} °C</source>
        <extracomment>analysis/reports/how_measured.py</extracomment>
        <translation>{value} °C</translation>
    </message>
    <message>
        <source>Marker</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>Wo</translation>
    </message>
    <message>
        <source>What the technician's markers read</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>Was die Marken der Fachkraft zeigen</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty (k = 2), from the samples and from what is known of the recorder; of a drop or a rise also from how well the arm's place is known.</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>± ist die erweiterte Unsicherheit (k = 2), aus den Messwerten und aus dem, was vom Rekorder bekannt ist; bei einem Einbruch oder Anstieg auch daraus, wie gut die Stellung des Hebels bekannt ist.</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>too long to be read</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>zu lang zum Auswerten</translation>
    </message>
    <message>
        <source>drop cannot be told</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>Einbruch lässt sich nicht sagen</translation>
    </message>
    <message>
        <source>rise {size} above {belongs_v} V</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>Anstieg {size} über {belongs_v} V</translation>
    </message>
    <message>
        <source>drop {size} below {belongs_v} V</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>Einbruch {size} unter {belongs_v} V</translation>
    </message>
    <message>
        <source>without a name</source>
        <extracomment>analysis/reports/marker_readings.py, analysis/reports/subject.py</extracomment>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <source>mean {mean}, RMS {rms}, {low} to {high}, peak to peak {swing}, noise {noise}, {count} samples</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>Mittel {mean}, effektiv {rms}, {low} bis {high}, Spitze–Spitze {swing}, Rauschen {noise}, {count} Messwerte</translation>
    </message>
    <message>
        <source>at most {noise}</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>höchstens {noise}</translation>
    </message>
    <message>
        <source>breaks up on {noisy} of {passes}; {confidence}</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>Aussetzer bei {noisy} von {passes}; {confidence}</translation>
    </message>
    <message>
        <source>{record}, {time} s</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>{record}, {time} s</translation>
    </message>
    <message>
        <source>{record}, {start} to {stop} s</source>
        <extracomment>analysis/reports/marker_readings.py</extracomment>
        <translation>{record}, {start} bis {stop} s</translation>
    </message>
    <message>
        <source>{quantity} (uncertainty unknown)</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>{quantity} (Unsicherheit unbekannt)</translation>
    </message>
    <message>
        <source>{start} to {stop}</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>{start} bis {stop}</translation>
    </message>
    <message>
        <source>{stretch} % of travel</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>{stretch} % des Wegs</translation>
    </message>
    <message>
        <source>{stretch} V</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>{stretch} V</translation>
    </message>
    <message>
        <source>of the output over the whole travel</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>des Ausgangs über den ganzen Weg</translation>
    </message>
    <message>
        <source>of the applied voltage</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>der angelegten Spannung</translation>
    </message>
    <message>
        <source>of {whole_v:.2f} V</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>von {whole_v:.2f} V</translation>
    </message>
    <message>
        <source>break-up in % {of}</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>Aussetzer in % {of}</translation>
    </message>
    <message>
        <source>A crossing is one passage of the arm through the band; where it turns there, the way there and back is one.</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>Eine Überfahrt ist einmal der Weg des Hebels durch die Zone; kehrt er darin um, zählen Hin- und Rückweg als eine.</translation>
    </message>
    <message>
        <source>{count} crossing</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>{count} Überfahrt</translation>
    </message>
    <message>
        <source>{count} crossings</source>
        <extracomment>analysis/reports/quantities.py</extracomment>
        <translation>{count} Überfahrten</translation>
    </message>
    <message>
        <source>A good sensor, as modelled (not measured)</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation>Ein guter Sensor, wie berechnet (nicht gemessen)</translation>
    </message>
    <message>
        <source>This sensor</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation>Dieser Sensor</translation>
    </message>
    <message>
        <source>How far the signal breaks up, in % {of}, along the sensor's travel: flat is good. Each faint line is one stroke of the arm, the bold line the worst of them; a hatched stretch is a place where it breaks up again and again, and along a grey foot nothing was tested.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation>Wie weit das Signal aussetzt, in % {of}, über dem Weg des Sensors: Flach ist gut. Jede dünne Linie ist ein Hub des Schleifers, die dicke der schlechteste davon; eine schraffierte Strecke ist eine Stelle, an der es immer wieder aussetzt, und über einem grauen Fuß wurde nicht geprüft.</translation>
    </message>
    <message>
        <source>{first} A line that stands out on one stroke alone is not held to be wear.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation>{first} Eine Linie, die nur bei einem einzigen Hub herausragt, gilt nicht als Verschleiß.</translation>
    </message>
    <message>
        <source>{first} The grey floor is what this recorder cannot see.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation>{first} Der graue Sockel ist das, was dieser Rekorder nicht sehen kann.</translation>
    </message>
    <message>
        <source> It should stay below the dashed line.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation> Sie sollte unter der gestrichelten Linie bleiben.</translation>
    </message>
    <message>
        <source> It should stay between the dashed lines.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation> Sie sollte zwischen den gestrichelten Linien bleiben.</translation>
    </message>
    <message>
        <source> It should follow the dashed line.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation> Es sollte der gestrichelten Linie folgen.</translation>
    </message>
    <message>
        <source>The signal while the arm passes the place (hatched), {record}: it should follow the dashed line.</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation>Das Signal, während der Schleifer über die Stelle fährt (schraffiert), {record}: Es sollte der gestrichelten Linie folgen.</translation>
    </message>
    <message>
        <source>The deepest disturbance of the {wire}, {record} at {time_s:.2f} s.{should}</source>
        <extracomment>analysis/reports/report_pictures.py</extracomment>
        <translation>Die tiefste Störung ({wire}), {record} bei {time_s:.2f} s.{should}</translation>
    </message>
    <message>
        <source>without a date</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation>ohne Datum</translation>
    </message>
    <message>
        <source>The same place, measured later ({date}): no fault found</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation>Dieselbe Stelle, später gemessen ({date}): kein Fehler gefunden</translation>
    </message>
    <message>
        <source>The same place, measured later ({date})</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation>Dieselbe Stelle, später gemessen ({date})</translation>
    </message>
    <message>
        <source>The same place, measured earlier ({date})</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation>Dieselbe Stelle, früher gemessen ({date})</translation>
    </message>
    <message>
        <source>Another sensor, in which no fault was found: {name} ({date})</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation>Ein anderer Sensor, an dem kein Fehler gefunden wurde: {name} ({date})</translation>
    </message>
    <message>
        <source>Another sensor: {name} ({date})</source>
        <extracomment>analysis/reports/subject.py</extracomment>
        <translation>Ein anderer Sensor: {name} ({date})</translation>
    </message>
    <message>
        <source>accepted by the technician</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>von der Fachkraft angenommen</translation>
    </message>
    <message>
        <source>edges adjusted by the technician</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>Ränder von der Fachkraft geändert</translation>
    </message>
    <message>
        <source>dismissed by the technician</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>von der Fachkraft abgelehnt</translation>
    </message>
    <message>
        <source>Words of page one changed by the technician. The program's were: {text}</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>Von der Fachkraft geänderte Worte auf Seite eins. Die des Programms waren: {text}</translation>
    </message>
    <message>
        <source>What the technician said</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>Was die Fachkraft dazu sagt</translation>
    </message>
    <message>
        <source>Marker of the technician, {readings}</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>Marke der Fachkraft, {readings}</translation>
    </message>
    <message>
        <source>Marker of the technician: {words} ({readings})</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>Marke der Fachkraft: {words} ({readings})</translation>
    </message>
    <message>
        <source>Band at {place}, {sure}: {choice}</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>Zone bei {place}, {sure}: {choice}</translation>
    </message>
    <message>
        <source>{first}, to {place}.</source>
        <extracomment>analysis/reports/technicians_part.py</extracomment>
        <translation>{first}, auf {place}.</translation>
    </message>
    <message>
        <source>Record it once more with a probe on the signal.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Noch einmal aufzeichnen, mit einer Prüfspitze am Signal.</translation>
    </message>
    <message>
        <source>Hold the probes together once more, and state how accurate the recorder is.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Die Prüfspitzen noch einmal zusammenhalten und angeben, wie genau der Rekorder ist.</translation>
    </message>
    <message>
        <source>Record the ground, plugged in and with the ignition on, away from what disturbs it.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Die Masse aufzeichnen, gesteckt und bei eingeschalteter Zündung, fern von dem, was sie stört.</translation>
    </message>
    <message>
        <source>Record the reference, plugged in and with the ignition on, away from what disturbs it.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Die Bezugsspannung aufzeichnen, gesteckt und bei eingeschalteter Zündung, fern von dem, was sie stört.</translation>
    </message>
    <message>
        <source>Wiggle the harness with the arm at rest and a probe on the signal.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Am Kabelbaum wackeln, während der Hebel ruht, mit einer Prüfspitze am Signal.</translation>
    </message>
    <message>
        <source>Sweep past it a few more times, slowly, hands off the harness.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Noch einige Male langsam darüber fahren, Hände weg vom Kabelbaum.</translation>
    </message>
    <message>
        <source>Sweep past it in the other direction too.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Auch in der anderen Richtung darüber fahren.</translation>
    </message>
    <message>
        <source>Hold the arm still in the spot for ten seconds, hands off, and record it.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Den Hebel an der Stelle zehn Sekunden ruhig halten, Hände weg, und das aufzeichnen.</translation>
    </message>
    <message>
        <source>Sweep past it until there are six crossings or more.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Darüber fahren, bis es sechs oder mehr Überfahrten sind.</translation>
    </message>
    <message>
        <source>Hold the arm still at a few places and record both tracks.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Den Hebel an einigen Stellen ruhig halten und beide Bahnen aufzeichnen.</translation>
    </message>
    <message>
        <source>Record the car as it stands, and sweep past that height.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Das Fahrzeug aufzeichnen, wie es steht, und über diese Höhe hinweg fahren.</translation>
    </message>
    <message>
        <source>Record a second track with it, or the arm held at known positions.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Eine zweite Bahn mit aufzeichnen, oder den Hebel in bekannten Stellungen.</translation>
    </message>
    <message>
        <source>Probe the signal at the other end of its wire too.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Das Signal auch am anderen Ende seiner Leitung messen.</translation>
    </message>
    <message>
        <source>Record in finer steps: more bits, or a smaller range.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>In feineren Stufen aufzeichnen: mehr Bit oder ein kleinerer Messbereich.</translation>
    </message>
    <message>
        <source>Name the sensor's profile when its files are imported.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Beim Importieren der Dateien das Sensorprofil angeben.</translation>
    </message>
    <message>
        <source>Sweep past it more often, both cold and warm.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Öfter darüber fahren, kalt und warm.</translation>
    </message>
    <message>
        <source>Follow the signal wire to what else is connected to it.</source>
        <extracomment>analysis/reports/to_show.py</extracomment>
        <translation>Der Signalleitung folgen, bis zu dem, was sonst noch daran hängt.</translation>
    </message>
    <message>
        <source>time, s</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation>Zeit, s</translation>
    </message>
    <message>
        <source>{wire}, V</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation>{wire}, V</translation>
    </message>
    <message>
        <source>a good sensor for the same movement, modelled</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation>ein guter Sensor bei derselben Bewegung, berechnet</translation>
    </message>
    <message>
        <source>what is allowed</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation>was zulässig ist</translation>
    </message>
    <message>
        <source>measured</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>The {wire} in volts from {start:.2f} to {stop:.2f} s of {record}, where it breaks up most clearly.</source>
        <extracomment>analysis/reports/trace_picture.py</extracomment>
        <translation>{wire} in Volt von {start:.2f} bis {stop:.2f} s ({record}), wo die Aussetzer am deutlichsten sind.</translation>
    </message>
    <message>
        <source>travel, %</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation>Weg, %</translation>
    </message>
    <message>
        <source>break-up, %</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation>Aussetzer, %</translation>
    </message>
    <message>
        <source>Break-up of the sensor's output along its travel: it stands out between {start:.0f} and {stop:.0f} per cent of travel.</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation>Aussetzer des Sensorsignals über dem Weg: Sie ragen zwischen {start:.0f} und {stop:.0f} Prozent des Wegs heraus.</translation>
    </message>
    <message>
        <source>Break-up of the sensor's output along its travel: no place stands out.</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation>Aussetzer des Sensorsignals über dem Weg: Keine Stelle ragt heraus.</translation>
    </message>
    <message>
        <source>{first} Below it, on the same scale: {second}.</source>
        <extracomment>analysis/reports/track_picture.py</extracomment>
        <translation>{first} Darunter, im selben Maßstab: {second}.</translation>
    </message>
    <message>
        <source>Sensor track worn</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Widerstandsbahn verschlissen</translation>
    </message>
    <message>
        <source>Sensor output breaks up</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Sensorsignal setzt aus</translation>
    </message>
    <message>
        <source>Signal wiring faulty</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Signalleitung fehlerhaft</translation>
    </message>
    <message>
        <source>Reference voltage faulty</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Bezugsspannung fehlerhaft</translation>
    </message>
    <message>
        <source>Sensor ground faulty</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Sensormasse fehlerhaft</translation>
    </message>
    <message>
        <source>Signal out of range</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Signal außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>No fault found</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Kein Fehler gefunden</translation>
    </message>
    <message>
        <source>Not shown either way</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Nicht entschieden</translation>
    </message>
    <message>
        <source>It says how the output behaves; nobody opened the sensor. It does not say that this is the only fault, and it clears no wiring beyond the points that were probed.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es sagt, wie sich das Signal verhält; den Sensor hat niemand geöffnet. Es sagt nicht, dass dies der einzige Fehler ist, und es entlastet keine Leitung jenseits der Messpunkte.</translation>
    </message>
    <message>
        <source>It says that the output breaks up at this position, not why: nobody opened the sensor. It clears no wiring beyond the points that were probed.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es sagt, dass das Signal in dieser Stellung aussetzt, nicht warum: Den Sensor hat niemand geöffnet. Es entlastet keine Leitung jenseits der Messpunkte.</translation>
    </message>
    <message>
        <source>It does not say that the harness must be replaced: the bad contact may be a plug, a splice or the sensor's own pins. Find the place first.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es sagt nicht, dass der Kabelbaum ersetzt werden muss: Der schlechte Kontakt kann ein Stecker, ein Verbinder oder ein Steckkontakt des Sensors sein. Zuerst die Stelle suchen.</translation>
    </message>
    <message>
        <source>It proves nothing against this sensor or the control unit: whatever else hangs on the same supply can pull it down.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es beweist nichts gegen diesen Sensor oder das Steuergerät: Was sonst an derselben Versorgung hängt, kann sie herunterziehen.</translation>
    </message>
    <message>
        <source>It proves nothing against this sensor or the control unit: the ground point, a splice or what else uses it can lift it.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es beweist nichts gegen diesen Sensor oder das Steuergerät: Der Massepunkt, ein Verbinder oder was sie sonst nutzt, kann sie anheben.</translation>
    </message>
    <message>
        <source>It does not say that the sensor is bad: a vehicle at its stop, a bent link or the wrong sensor profile reads the same.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es sagt nicht, dass der Sensor schlecht ist: Ein Fahrzeug am Anschlag, ein verbogenes Gestänge oder das falsche Sensorprofil ergibt dieselben Werte.</translation>
    </message>
    <message>
        <source>It says nothing about the vehicle, neither good nor bad.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es sagt nichts über das Fahrzeug, weder Gutes noch Schlechtes.</translation>
    </message>
    <message>
        <source>It holds for the travel and the conditions that were tested, and no others. A fault that comes and goes may have been away.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es gilt für den geprüften Weg und die geprüften Bedingungen und für keine anderen. Ein Fehler, der kommt und geht, kann gerade weg gewesen sein.</translation>
    </message>
    <message>
        <source>It clears neither the sensor nor the wiring.</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Es entlastet weder den Sensor noch die Leitungen.</translation>
    </message>
    <message>
        <source>Bad contact at the sensor</source>
        <extracomment>analysis/reports/verdicts.py</extracomment>
        <translation>Wackelkontakt am Sensor</translation>
    </message>
    <message>
        <source>Sheet {page} of {pages}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation>Blatt {page} von {pages}</translation>
    </message>
    <message>
        <source>{title}, continued</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation>{title}, Fortsetzung</translation>
    </message>
    <message>
        <source>position sensor</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation>Positionssensor</translation>
    </message>
    <message>
        <source>Test report: {sensor}, {mounting}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation>Prüfbericht: {sensor}, {mounting}</translation>
    </message>
    <message>
        <source>Test report: {sensor}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation>Prüfbericht: {sensor}</translation>
    </message>
    <message>
        <source>Sample · {words}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation>Beispiel · {words}</translation>
    </message>
    <message>
        <source>{file} · SHA-256 {digest}… · report made on {today}</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation>{file} · SHA-256 {digest}… · Bericht vom {today}</translation>
    </message>
    <message>
        <source>{file} · SHA-256 {digest}…</source>
        <extracomment>analysis/reports/whole_report.py</extracomment>
        <translation>{file} · SHA-256 {digest}…</translation>
    </message>
    <message>
        <source>the review holds too many counted road records</source>
        <extracomment>analysis/review/counted_stored.py</extracomment>
        <translation>die Auswertung enthält zu viele gezählte Fahrten</translation>
    </message>
    <message>
        <source>a counted road record of the review</source>
        <extracomment>analysis/review/counted_stored.py</extracomment>
        <translation>eine gezählte Fahrt der Auswertung</translation>
    </message>
    <message>
        <source>a counted road record of the review is damaged</source>
        <extracomment>analysis/review/counted_stored.py</extracomment>
        <translation>eine gezählte Fahrt der Auswertung ist beschädigt</translation>
    </message>
    <message>
        <source>Steps, roles, probe points and conditions of {count} record: as its review says, where that differs from the file.</source>
        <extracomment>analysis/review/records.py</extracomment>
        <translation>Schritt, Rollen, Messstellen und Bedingungen von {count} Aufzeichnung: wie die Auswertung sagt, wo das von der Datei abweicht.</translation>
    </message>
    <message>
        <source>Steps, roles, probe points and conditions of {count} records: as their review says, where that differs from the file.</source>
        <extracomment>analysis/review/records.py</extracomment>
        <translation>Schritte, Rollen, Messstellen und Bedingungen von {count} Aufzeichnungen: wie die Auswertung sagt, wo das von der Datei abweicht.</translation>
    </message>
    <message>
        <source>what the review says of records is damaged</source>
        <extracomment>analysis/review/records.py</extracomment>
        <translation>was die Auswertung über Aufzeichnungen sagt, ist beschädigt</translation>
    </message>
    <message>
        <source>begin a new review; the file is kept aside</source>
        <extracomment>analysis/review/records.py, analysis/review/taken.py</extracomment>
        <translation>eine neue Auswertung beginnen; die Datei wird aufgehoben</translation>
    </message>
    <message>
        <source>the review beside this capture cannot be opened</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>die Auswertung neben dieser Messung lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>{problem}; it is left as it is, and a new one begins in memory</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>{problem}; sie bleibt, wie sie ist, und eine neue beginnt im Speicher</translation>
    </message>
    <message>
        <source>the review cannot be opened</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>die Auswertung lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>check who may read it</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>prüfen, wer sie lesen darf</translation>
    </message>
    <message>
        <source>another window or program changed the review of this capture since it was opened here</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>ein anderes Fenster oder Programm hat die Auswertung dieser Messung geändert, seit sie hier geöffnet wurde</translation>
    </message>
    <message>
        <source>take its review, or keep this one; neither is lost</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>die andere Auswertung übernehmen oder diese behalten; keine geht verloren</translation>
    </message>
    <message>
        <source>another file lies there; it is kept under another name</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>dort liegt eine andere Datei; sie wird unter einem anderen Namen aufgehoben</translation>
    </message>
    <message>
        <source>{problem}; a new one begins, and this one is kept under another name when the new one is saved</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>{problem}; eine neue beginnt, und diese wird unter anderem Namen aufgehoben, wenn die neue gespeichert wird</translation>
    </message>
    <message>
        <source>the file of the review is far too long</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>die Datei der Auswertung ist viel zu lang</translation>
    </message>
    <message>
        <source>look what it is</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>nachsehen, was sie ist</translation>
    </message>
    <message>
        <source>the review is damaged: it is no text</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>die Auswertung ist beschädigt: Sie ist kein Text</translation>
    </message>
    <message>
        <source>begin a new one</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>eine neue beginnen</translation>
    </message>
    <message>
        <source>the review beside this capture was made from another one, or the capture was changed since</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>die Auswertung neben dieser Messung stammt von einer anderen, oder die Messung wurde seither geändert</translation>
    </message>
    <message>
        <source>the review that lies there cannot be renamed</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>die Auswertung, die dort liegt, lässt sich nicht umbenennen</translation>
    </message>
    <message>
        <source>see who may write there</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>prüfen, wer dort schreiben darf</translation>
    </message>
    <message>
        <source>a thousand reviews are kept aside in this folder</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>in diesem Ordner sind tausend Auswertungen aufgehoben</translation>
    </message>
    <message>
        <source>move some of them away</source>
        <extracomment>analysis/review/sidecar.py</extracomment>
        <translation>einige davon verschieben</translation>
    </message>
    <message>
        <source>the review is nested too deeply</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>die Auswertung ist zu tief verschachtelt</translation>
    </message>
    <message>
        <source>the review is damaged at line {lineno}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>die Auswertung ist in Zeile {lineno} beschädigt</translation>
    </message>
    <message>
        <source>the review holds a number that is none</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>die Auswertung enthält eine Zahl, die keine ist</translation>
    </message>
    <message>
        <source>the review</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>die Auswertung</translation>
    </message>
    <message>
        <source>the capture of the review</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>die Messung der Auswertung</translation>
    </message>
    <message>
        <source>decision {number}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>Entscheidung {number}</translation>
    </message>
    <message>
        <source>the file is no review of Wornband's</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>die Datei ist keine Auswertung von Wornband</translation>
    </message>
    <message>
        <source>the review was written by a later version (schema {version})</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>die Auswertung wurde von einer späteren Version geschrieben (Schema {version})</translation>
    </message>
    <message>
        <source>open it with that version</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>sie mit jener Version öffnen</translation>
    </message>
    <message>
        <source>marker {number}</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>Marke {number}</translation>
    </message>
    <message>
        <source>its own</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>eine eigene</translation>
    </message>
    <message>
        <source>a track</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>eine Bahn</translation>
    </message>
    <message>
        <source>a decision</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>eine Entscheidung</translation>
    </message>
    <message>
        <source>what was found</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>was gefunden wurde</translation>
    </message>
    <message>
        <source>two edges</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>zwei Ränder</translation>
    </message>
    <message>
        <source>two edges in order</source>
        <extracomment>analysis/review/stored.py</extracomment>
        <translation>zwei Ränder in Reihenfolge</translation>
    </message>
    <message>
        <source>{where} is no object</source>
        <extracomment>analysis/review/taken.py</extracomment>
        <translation>{where} ist kein Objekt</translation>
    </message>
    <message>
        <source>{where} lacks {key!r}</source>
        <extracomment>analysis/review/taken.py</extracomment>
        <translation>{where}: {key!r} fehlt</translation>
    </message>
    <message>
        <source>at or after {first!r}</source>
        <extracomment>analysis/review/taken.py</extracomment>
        <translation>gleich oder nach {first!r}</translation>
    </message>
    <message>
        <source>a list</source>
        <extracomment>analysis/review/taken.py</extracomment>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>{key!r} of {where} is not {wanted}</source>
        <extracomment>analysis/review/taken.py</extracomment>
        <translation>{where}: {key!r} ist nicht {wanted}</translation>
    </message>
    <message>
        <source>the vehicle of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>das Fahrzeug der Auswertung</translation>
    </message>
    <message>
        <source>the vehicle of the review makes no sense: {problem}</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>das Fahrzeug der Auswertung ergibt keinen Sinn: {problem}</translation>
    </message>
    <message>
        <source>the heights of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>die Höhen der Auswertung</translation>
    </message>
    <message>
        <source>the rest heights of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>die Ruhehöhen der Auswertung</translation>
    </message>
    <message>
        <source>rising or falling</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>rising oder falling</translation>
    </message>
    <message>
        <source>two points</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>zwei Punkte</translation>
    </message>
    <message>
        <source>travel and height</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>Weg und Höhe</translation>
    </message>
    <message>
        <source>the road of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>die Straße der Auswertung</translation>
    </message>
    <message>
        <source>a road class</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>eine Straßenklasse</translation>
    </message>
    <message>
        <source>the length of a drive</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>die Dauer einer Fahrt</translation>
    </message>
    <message>
        <source>the road test of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>die Probefahrt der Auswertung</translation>
    </message>
    <message>
        <source>the rules of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>die Regeln der Auswertung</translation>
    </message>
    <message>
        <source>the range of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>der Bereich der Auswertung</translation>
    </message>
    <message>
        <source>at or above {first!r}</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>gleich oder über {first!r}</translation>
    </message>
    <message>
        <source>the rate of change of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>die Änderungsgeschwindigkeit der Auswertung</translation>
    </message>
    <message>
        <source>the comparison of the review</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>der Vergleich der Auswertung</translation>
    </message>
    <message>
        <source>a whole number</source>
        <extracomment>analysis/review/vehicle_stored.py</extracomment>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>the true position was not measured beside the output</source>
        <extracomment>analysis/signals/linearity.py</extracomment>
        <translation>die wahre Stellung wurde nicht neben dem Signal gemessen</translation>
    </message>
    <message>
        <source>fewer than two positions were visited from {start:g} to {stop:g} % of travel</source>
        <extracomment>analysis/signals/linearity.py</extracomment>
        <translation>von {start:g} bis {stop:g} % des Wegs wurden weniger als zwei Stellungen angefahren</translation>
    </message>
    <message>
        <source>nothing was visited between {start:.1f} and {stop:.1f} % of travel, more than {largest:g} %</source>
        <extracomment>analysis/signals/linearity.py</extracomment>
        <translation>zwischen {start:.1f} und {stop:.1f} % des Wegs wurde nichts angefahren, mehr als {largest:g} %</translation>
    </message>
    <message>
        <source>a calibration point</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>ein Kalibrierpunkt</translation>
    </message>
    <message>
        <source>the height of a calibration point</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>die Höhe eines Kalibrierpunkts</translation>
    </message>
    <message>
        <source>the two calibration points coincide: {first:g} % at {low:g} mm and {second:g} % at {high:g} mm</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>die beiden Kalibrierpunkte fallen zusammen: {first:g} % bei {low:g} mm und {second:g} % bei {high:g} mm</translation>
    </message>
    <message>
        <source>measure two heights that are further apart</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>zwei Höhen messen, die weiter auseinander liegen</translation>
    </message>
    <message>
        <source>the calibration points run backwards: {first:g} % at {low:g} mm, then {second:g} % at {high:g} mm, where travel is said to be {up} as the body rises</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>die Kalibrierpunkte laufen rückwärts: {first:g} % bei {low:g} mm, dann {second:g} % bei {high:g} mm, obwohl der Weg {up} sein soll, wenn sich der Aufbau hebt</translation>
    </message>
    <message>
        <source>give the smaller travel first, or change which way is up</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>den kleineren Weg zuerst angeben oder ändern, welche Richtung nach oben zeigt</translation>
    </message>
    <message>
        <source>the calibration points make {slope:.0f} mm of one % of travel</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>die Kalibrierpunkte machen aus einem % des Wegs {slope:.0f} mm</translation>
    </message>
    <message>
        <source>enter heights in millimetres and travel in per cent</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>Höhen in Millimetern und den Weg in Prozent eingeben</translation>
    </message>
    <message>
        <source>the arm's length in mm</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>die Länge des Hebels in mm</translation>
    </message>
    <message>
        <source>the arm's angle in degrees</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>der Winkel des Hebels in Grad</translation>
    </message>
    <message>
        <source>the wheel's millimetres for one of the arm</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>die Millimeter des Rads auf einen des Hebels</translation>
    </message>
    <message>
        <source>the travel with the arm level</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>der Weg bei waagrechtem Hebel</translation>
    </message>
    <message>
        <source>{what} must lie within 0 and 100 % of travel, got {came:g} %</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>{what} muss zwischen 0 und 100 % des Wegs liegen, nicht bei {came:g} %</translation>
    </message>
    <message>
        <source>enter it in per cent of travel</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>sie in Prozent des Wegs eingeben</translation>
    </message>
    <message>
        <source>{what} must lie within {least:g} and {most:g}, got {came:g}</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>{what} muss zwischen {least:g} und {most:g} liegen, nicht bei {came:g}</translation>
    </message>
    <message>
        <source>measure it again</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>noch einmal messen</translation>
    </message>
    <message>
        <source>{what} is no number</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>{what} ist keine Zahl</translation>
    </message>
    <message>
        <source>enter it in millimetres</source>
        <extracomment>analysis/vehicle/geometry.py</extracomment>
        <translation>sie in Millimetern eingeben</translation>
    </message>
    <message>
        <source>parked</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>geparkt</translation>
    </message>
    <message>
        <source>access</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>Einstieg</translation>
    </message>
    <message>
        <source>normal</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>normal</translation>
    </message>
    <message>
        <source>loaded</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>beladen</translation>
    </message>
    <message>
        <source>off-road</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>Gelände</translation>
    </message>
    <message>
        <source>corner</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>a rest height is given twice</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>eine Ruhehöhe ist zweimal angegeben</translation>
    </message>
    <message>
        <source>give each of them once</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>jede nur einmal angeben</translation>
    </message>
    <message>
        <source>{travel:.0f} % of travel</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>{travel:.0f} % des Wegs</translation>
    </message>
    <message>
        <source>a height that the arm cannot reach</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>einer Höhe, die der Hebel nicht erreicht</translation>
    </message>
    <message>
        <source>the rest height {name} lies outside the travel, at {came}</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>die Ruhehöhe {name} liegt außerhalb des Wegs, bei {came}</translation>
    </message>
    <message>
        <source>correct the height, or which way is up</source>
        <extracomment>analysis/vehicle/heights.py</extracomment>
        <translation>die Höhe berichtigen oder welche Richtung nach oben zeigt</translation>
    </message>
    <message>
        <source>the speed must lie within {least:g} and {most:g} km/h, got {came:g} km/h</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>die Geschwindigkeit muss zwischen {least:g} und {most:g} km/h liegen, nicht bei {came:g} km/h</translation>
    </message>
    <message>
        <source>enter the speed in km/h</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>die Geschwindigkeit in km/h eingeben</translation>
    </message>
    <message>
        <source>{road} at {speed_km_h:g} km/h</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>{road} bei {speed_km_h:g} km/h</translation>
    </message>
    <message>
        <source>smooth motorway</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>glatte Autobahn</translation>
    </message>
    <message>
        <source>good main road</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>gute Hauptstraße</translation>
    </message>
    <message>
        <source>worn country road</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>abgenutzte Landstraße</translation>
    </message>
    <message>
        <source>broken lane</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>aufgebrochener Weg</translation>
    </message>
    <message>
        <source>farm track</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>Feldweg</translation>
    </message>
    <message>
        <source>deep ruts</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>tiefe Spurrinnen</translation>
    </message>
    <message>
        <source>open ground</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>freies Gelände</translation>
    </message>
    <message>
        <source>boulders</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>Felsbrocken</translation>
    </message>
    <message>
        <source>there is no road class {came!r}</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>es gibt keine Straßenklasse {came!r}</translation>
    </message>
    <message>
        <source>choose one of: {letters}</source>
        <extracomment>analysis/vehicle/road.py</extracomment>
        <translation>eine davon wählen: {letters}</translation>
    </message>
    <message>
        <source>entered by the technician</source>
        <extracomment>analysis/vehicle/words.py</extracomment>
        <translation>vom Techniker eingegeben</translation>
    </message>
    <message>
        <source>{near:.0f} to {far:.0f} mm of wheel travel below the normal height</source>
        <extracomment>analysis/vehicle/words.py</extracomment>
        <translation>am Rad {near:.0f} bis {far:.0f} mm unter der Normalhöhe</translation>
    </message>
    <message>
        <source>{near:.0f} to {far:.0f} mm of wheel travel above the normal height</source>
        <extracomment>analysis/vehicle/words.py</extracomment>
        <translation>am Rad {near:.0f} bis {far:.0f} mm über der Normalhöhe</translation>
    </message>
    <message>
        <source>from {far:.0f} mm of wheel travel below the normal height to {near:.0f} mm above it</source>
        <extracomment>analysis/vehicle/words.py</extracomment>
        <translation>am Rad von {far:.0f} mm unter der Normalhöhe bis {near:.0f} mm darüber</translation>
    </message>
    <message>
        <source>the folder cannot be read</source>
        <extracomment>analysis/watching/folder.py</extracomment>
        <translation>der Ordner kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>check its name, the connection and your rights</source>
        <extracomment>analysis/watching/folder.py</extracomment>
        <translation>prüfen Sie Namen, Verbindung und Ihre Rechte</translation>
    </message>
    <message>
        <source>it was asked for, and the arm rests</source>
        <extracomment>analysis/watching/watch.py</extracomment>
        <translation>es war verlangt, und der Hebel ruht</translation>
    </message>
    <message>
        <source>{first} and {second}</source>
        <extracomment>analysis/wording.py</extracomment>
        <translation>{first} und {second}</translation>
    </message>
    <message>
        <source>{low} to {high} mm</source>
        <extracomment>app/drawing/numbers.py</extracomment>
        <translation>{low} bis {high} mm</translation>
    </message>
    <message>
        <source>The review beside it is not used: {problem}.</source>
        <extracomment>app/errands/beside.py</extracomment>
        <translation>Die Auswertung daneben wird nicht verwendet: {problem}.</translation>
    </message>
    <message>
        <source>Which sensor of which car it is: as its review says, where that differs from the file.</source>
        <extracomment>app/errands/comparing.py</extracomment>
        <translation>Welcher Sensor welches Fahrzeugs es ist: wie die Auswertung sagt, wo das von der Datei abweicht.</translation>
    </message>
    <message>
        <source>a picture cannot be written as {ending}</source>
        <extracomment>app/errands/exporting.py, app/exporting/pictures.py</extracomment>
        <translation>ein Bild kann nicht als {ending} geschrieben werden</translation>
    </message>
    <message>
        <source>choose .png or .svg</source>
        <extracomment>app/errands/exporting.py, app/exporting/pictures.py</extracomment>
        <translation>wählen Sie .png oder .svg</translation>
    </message>
    <message>
        <source>there is nothing to draw</source>
        <extracomment>app/errands/exporting.py</extracomment>
        <translation>es gibt nichts zu zeichnen</translation>
    </message>
    <message>
        <source>choose a capture with a sweep or a fault</source>
        <extracomment>app/errands/exporting.py</extracomment>
        <translation>wählen Sie eine Messung mit einer Überfahrt oder einem Fehler</translation>
    </message>
    <message>
        <source>choose .csv, .parquet, .mat or .npz</source>
        <extracomment>app/exporting/desk.py</extracomment>
        <translation>wählen Sie .csv, .parquet, .mat oder .npz</translation>
    </message>
    <message>
        <source>the picture could not be made</source>
        <extracomment>app/exporting/pictures.py, app/reporting/png.py</extracomment>
        <translation>das Bild konnte nicht erzeugt werden</translation>
    </message>
    <message>
        <source>choose .svg instead</source>
        <extracomment>app/exporting/pictures.py, app/reporting/png.py</extracomment>
        <translation>wählen Sie stattdessen .svg</translation>
    </message>
    <message>
        <source>{low:.3g}–{high:.3g} of full scale</source>
        <extracomment>app/importing/column_card.py</extracomment>
        <translation>{low:.3g}–{high:.3g} des Vollausschlags</translation>
    </message>
    <message>
        <source>{low:.6g}–{high:.6g} s</source>
        <extracomment>app/importing/column_card.py</extracomment>
        <translation>{low:.6g}–{high:.6g} s</translation>
    </message>
    <message>
        <source>{time:.9g} s</source>
        <extracomment>app/importing/rows_pane.py</extracomment>
        <translation>{time:.9g} s</translation>
    </message>
    <message>
        <source>choose what stands beside it</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Vergleich wählen</translation>
    </message>
    <message>
        <source>add photos</source>
        <extracomment>app/reporting/desk.py</extracomment>
        <translation>Fotos hinzufügen</translation>
    </message>
    <message>
        <source>the picture {name} needs Qt to be read</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>das Bild {name} kann nur mit Qt gelesen werden</translation>
    </message>
    <message>
        <source>install Qt's libraries</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>installieren Sie die Bibliotheken von Qt</translation>
    </message>
    <message>
        <source>the picture {name} is not there</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>das Bild {name} ist nicht da</translation>
    </message>
    <message>
        <source>choose it again</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>wählen Sie es noch einmal</translation>
    </message>
    <message>
        <source>the picture {name} is larger than 64 MB</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>das Bild {name} ist größer als 64 MB</translation>
    </message>
    <message>
        <source>choose a smaller one</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>wählen Sie ein kleineres</translation>
    </message>
    <message>
        <source>the picture {name} cannot be read</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>das Bild {name} kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>choose another one</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>wählen Sie ein anderes</translation>
    </message>
    <message>
        <source>choose a PNG or JPEG file</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>wählen Sie eine PNG- oder JPEG-Datei</translation>
    </message>
    <message>
        <source>the picture {name} cannot be converted</source>
        <extracomment>app/reporting/images.py</extracomment>
        <translation>das Bild {name} kann nicht umgewandelt werden</translation>
    </message>
    <message>
        <source>the review sets {name} beside it, outside the capture's folder; choose it on this PC, or put it beside the capture</source>
        <extracomment>app/reporting/making.py</extracomment>
        <translation>die Auswertung stellt {name} daneben, außerhalb des Ordners der Messung; wählen Sie die Datei auf diesem PC, oder legen Sie sie neben die Messung</translation>
    </message>
    <message>
        <source>the review names the picture {name}, outside the capture's folder</source>
        <extracomment>app/reporting/materials.py</extracomment>
        <translation>die Auswertung nennt das Bild {name} außerhalb des Ordners der Messung</translation>
    </message>
    <message>
        <source>choose it on this PC, or put it beside the capture</source>
        <extracomment>app/reporting/materials.py</extracomment>
        <translation>wählen Sie es auf diesem PC, oder legen Sie es neben die Messung</translation>
    </message>
    <message>
        <source>accept a band</source>
        <extracomment>app/review/decision_desk.py</extracomment>
        <translation>Zone annehmen</translation>
    </message>
    <message>
        <source>dismiss a band</source>
        <extracomment>app/review/decision_desk.py</extracomment>
        <translation>Zone ablehnen</translation>
    </message>
    <message>
        <source>give no answer on a band</source>
        <extracomment>app/review/decision_desk.py</extracomment>
        <translation>keine Antwort zur Zone geben</translation>
    </message>
    <message>
        <source>adjust a band</source>
        <extracomment>app/review/decision_desk.py</extracomment>
        <translation>Zone ändern</translation>
    </message>
    <message>
        <source>give a reason</source>
        <extracomment>app/review/decision_desk.py</extracomment>
        <translation>Grund angeben</translation>
    </message>
    <message>
        <source>take the other review</source>
        <extracomment>app/review/keeper.py</extracomment>
        <translation>andere Auswertung übernehmen</translation>
    </message>
    <message>
        <source>place a marker</source>
        <extracomment>app/review/marker_desk.py</extracomment>
        <translation>Marke setzen</translation>
    </message>
    <message>
        <source>place a span</source>
        <extracomment>app/review/marker_desk.py</extracomment>
        <translation>Spanne setzen</translation>
    </message>
    <message>
        <source>place a stretch of travel</source>
        <extracomment>app/review/marker_desk.py</extracomment>
        <translation>Wegstück setzen</translation>
    </message>
    <message>
        <source>move a marker</source>
        <extracomment>app/review/marker_desk.py</extracomment>
        <translation>Marke verschieben</translation>
    </message>
    <message>
        <source>rename a marker</source>
        <extracomment>app/review/marker_desk.py</extracomment>
        <translation>Marke umbenennen</translation>
    </message>
    <message>
        <source>write a note</source>
        <extracomment>app/review/marker_desk.py</extracomment>
        <translation>Notiz schreiben</translation>
    </message>
    <message>
        <source>delete a marker</source>
        <extracomment>app/review/marker_desk.py</extracomment>
        <translation>Marke löschen</translation>
    </message>
    <message>
        <source>{noisy} of {count} crossing</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>{noisy} von {count} Überfahrt</translation>
    </message>
    <message>
        <source>{noisy} of {count} crossings</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>{noisy} von {count} Überfahrten</translation>
    </message>
    <message>
        <source>give a span its own step</source>
        <extracomment>app/review/record_desk.py</extracomment>
        <translation>einer Spanne einen eigenen Schritt geben</translation>
    </message>
    <message>
        <source>accept the splitting</source>
        <extracomment>app/review/record_desk.py</extracomment>
        <translation>die Aufteilung annehmen</translation>
    </message>
    <message>
        <source>refuse the splitting</source>
        <extracomment>app/review/record_desk.py</extracomment>
        <translation>die Aufteilung ablehnen</translation>
    </message>
    <message>
        <source>edit the record</source>
        <extracomment>app/review/record_desk.py</extracomment>
        <translation>die Aufzeichnung bearbeiten</translation>
    </message>
    <message>
        <source>drop the span</source>
        <extracomment>app/review/record_desk.py</extracomment>
        <translation>die Spanne aufheben</translation>
    </message>
    <message>
        <source>auto</source>
        <extracomment>app/review/speed_box.py</extracomment>
        <translation>auto</translation>
    </message>
    <message>
        <source>auto {speed:g}×</source>
        <extracomment>app/review/speed_box.py</extracomment>
        <translation>auto {speed:g}×</translation>
    </message>
    <message>
        <source>{noisy} of {count} crossing breaks up, up to {worst:.0f} %</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Aussetzer bei {noisy} von {count} Überfahrt, bis zu {worst:.0f} %</translation>
    </message>
    <message>
        <source>{noisy} of {count} crossings break up, up to {worst:.0f} %</source>
        <extracomment>app/views/band_card.py</extracomment>
        <translation>Aussetzer bei {noisy} von {count} Überfahrten, bis zu {worst:.0f} %</translation>
    </message>
    <message>
        <source>{start_s:.2f}–{stop_s:.2f} s</source>
        <extracomment>app/views/record_form.py, app/views/records.py, app/views/split_strip.py</extracomment>
        <translation>{start_s:.2f}–{stop_s:.2f} s</translation>
    </message>
    <message>
        <source>nothing wrong in its {count} span</source>
        <extracomment>app/views/records.py</extracomment>
        <translation>nichts Auffälliges in {count} Spanne</translation>
    </message>
    <message>
        <source>nothing wrong in its {count} spans</source>
        <extracomment>app/views/records.py</extracomment>
        <translation>nichts Auffälliges in {count} Spannen</translation>
    </message>
    <message>
        <source>Job number</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>show the odds</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Sicherheit als Zahl</translation>
    </message>
    <message>
        <source>print the markers</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Marken drucken</translation>
    </message>
    <message>
        <source>change the notes</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Anmerkungen ändern</translation>
    </message>
    <message>
        <source>choose the picture</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Bild wählen</translation>
    </message>
    <message>
        <source>change the photos</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Fotos ändern</translation>
    </message>
    <message>
        <source>print the closing list</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Abschlussliste drucken</translation>
    </message>
    <message>
        <source>change {name}</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>{name} ändern</translation>
    </message>
    <message>
        <source>change the words</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Worte ändern</translation>
    </message>
    <message>
        <source>change the offer</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Angebot ändern</translation>
    </message>
    <message>
        <source>tick the closing list</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Abschlussliste abhaken</translation>
    </message>
    <message>
        <source>it is not known how travel becomes millimetres, nor where the vehicle rests</source>
        <extracomment>app/why/choices.py</extracomment>
        <translation>es ist nicht bekannt, wie aus Weg Millimeter werden und wo das Fahrzeug ruht</translation>
    </message>
    <message>
        <source>enter it under Heights</source>
        <extracomment>app/why/choices.py</extracomment>
        <translation>unter Höhen eintragen</translation>
    </message>
    <message>
        <source>change the heights</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>die Höhen ändern</translation>
    </message>
    <message>
        <source>change the control unit's rules</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>die Regeln des Steuergeräts ändern</translation>
    </message>
    <message>
        <source>change the road test</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>die Probefahrt ändern</translation>
    </message>
    <message>
        <source>change the drive</source>
        <extracomment>app/why/circle.py</extracomment>
        <translation>die Fahrt ändern</translation>
    </message>
    <message>
        <source>Three-wire position sensor whose output does not follow its feed, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-non-ratiometric.toml</extracomment>
        <translation>Positionssensor mit drei Leitungen, dessen Ausgang der Versorgung nicht folgt, 5 V</translation>
    </message>
    <message>
        <source>Three-wire position sensor, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation>Positionssensor mit drei Leitungen, 5 V</translation>
    </message>
    <message>
        <source>Infiniti QX56 2009, DTC C1806</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation>Infiniti QX56 2009, DTC C1806</translation>
    </message>
    <message>
        <source>Nissan Quest 1994, Ground Inspection</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation>Nissan Quest 1994, Ground Inspection</translation>
    </message>
    <message>
        <source>Saturn Sky 2009, DTC P2122 or P2123, Circuit/System Testing</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation>Saturn Sky 2009, DTC P2122 or P2123, Circuit/System Testing</translation>
    </message>
    <message>
        <source>Bourns, training pages, Output Smoothness: typical limit of a new track</source>
        <extracomment>analysis/diagnosis/sensor_profiles/generic-ratiometric.toml</extracomment>
        <translation>Bourns, training pages, Output Smoothness: üblicher Grenzwert einer neuen Bahn</translation>
    </message>
    <message>
        <source>Ride height, rear left, of the samples' invented car</source>
        <extracomment>analysis/diagnosis/sensor_profiles/halvorsen-tern-rear-left.toml</extracomment>
        <translation>Höhenstand hinten links, am erfundenen Auto der Beispiele</translation>
    </message>
    <message>
        <source>invented, with the samples' car</source>
        <extracomment>analysis/diagnosis/sensor_profiles/halvorsen-tern-rear-left.toml, analysis/diagnosis/sensor_profiles/halvorsen-tern-rear-right.toml</extracomment>
        <translation>erfunden, mit dem Auto der Beispiele</translation>
    </message>
    <message>
        <source>Ride height, rear right, of the samples' invented car</source>
        <extracomment>analysis/diagnosis/sensor_profiles/halvorsen-tern-rear-right.toml</extracomment>
        <translation>Höhenstand hinten rechts, am erfundenen Auto der Beispiele</translation>
    </message>
    <message>
        <source>Accelerator pedal, tracks that go opposite ways</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-inverted.toml</extracomment>
        <translation>Fahrpedal, gegenläufige Bahnen</translation>
    </message>
    <message>
        <source>track 1 falls while track 2 rises: Mazda CX-9 2009, APP sensor; volts: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-inverted.toml</extracomment>
        <translation>Bahn 1 fällt, während Bahn 2 steigt: Mazda CX-9 2009, APP sensor; Volt: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>opposite slopes between ground and 5 V: Saturn VUE 2007, DTC P2135; 200 mV for 200 ms: Honda Civic Si 2009, DTC P2135</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-inverted.toml</extracomment>
        <translation>gegenläufig zwischen Masse und 5 V: Saturn VUE 2007, DTC P2135; 200 mV für 200 ms: Honda Civic Si 2009, DTC P2135</translation>
    </message>
    <message>
        <source>the first track falls: Mazda CX-9 2009, APP sensor; volts: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-inverted.toml</extracomment>
        <translation>die erste Bahn fällt: Mazda CX-9 2009, APP sensor; Volt: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Accelerator pedal, second track a fixed step lower</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation>Fahrpedal, zweite Bahn um eine feste Stufe niedriger</translation>
    </message>
    <message>
        <source>released 1.55-1.62 V, pressed 3.49-4.09 V: Mazda6 2011, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation>losgelassen 1,55-1,62 V, getreten 3,49-4,09 V: Mazda6 2011, APP Sensor Inspection; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>released 1.01-1.07 V, pressed 2.94-3.54 V: Mazda6 2011, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation>losgelassen 1,01-1,07 V, getreten 2,94-3,54 V: Mazda6 2011, APP Sensor Inspection; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>step: Mazda6 2011, APP Sensor Inspection; 200 mV for 200 ms: Honda Civic Si 2009, DTC P2135</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation>Stufe: Mazda6 2011, APP Sensor Inspection; 200 mV für 200 ms: Honda Civic Si 2009, DTC P2135</translation>
    </message>
    <message>
        <source>Mazda6 2011, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation>Mazda6 2011, APP Sensor Inspection; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Mazda6 2011, APP Sensor Inspection</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal-offset.toml</extracomment>
        <translation>Mazda6 2011, APP Sensor Inspection</translation>
    </message>
    <message>
        <source>Accelerator pedal, second track at half the volts</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation>Fahrpedal, zweite Bahn mit halber Spannung</translation>
    </message>
    <message>
        <source>released 0.80 V, pressed 4.55 V: Mazda CX-30 2019, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation>losgelassen 0,80 V, getreten 4,55 V: Mazda CX-30 2019, APP Sensor Inspection; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>released 0.40 V, pressed 2.28 V: Mazda CX-30 2019, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation>losgelassen 0,40 V, getreten 2,28 V: Mazda CX-30 2019, APP Sensor Inspection; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>ratio: Mazda CX-30 2019, APP Sensor Inspection; 200 mV for 200 ms: Honda Civic Si 2009, DTC P2135</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation>Verhältnis: Mazda CX-30 2019, APP Sensor Inspection; 200 mV für 200 ms: Honda Civic Si 2009, DTC P2135</translation>
    </message>
    <message>
        <source>Mazda CX-30 2019, APP Sensor Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/pedal.toml</extracomment>
        <translation>Mazda CX-30 2019, APP Sensor Inspection; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Ride-height sensor, 4.5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height-4v5.toml</extracomment>
        <translation>Höhenstandssensor, 4,5 V</translation>
    </message>
    <message>
        <source>high 2.53-4.33 V, normal 2.53 V, low 0.81-2.53 V: Lexus GX 470 2007, Height Control Sensor, Inspection; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height-4v5.toml</extracomment>
        <translation>hoch 2,53-4,33 V, normal 2,53 V, tief 0,81-2,53 V: Lexus GX 470 2007, Height Control Sensor, Inspection; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Lexus GX 470 2007, Height Control Sensor, Inspection; tolerance: Saturn Sky 2009, DTC P2122 or P2123</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height-4v5.toml</extracomment>
        <translation>Lexus GX 470 2007, Height Control Sensor, Inspection; Toleranz: Saturn Sky 2009, DTC P2122 or P2123</translation>
    </message>
    <message>
        <source>Lexus GX 470 2007, Height Control Sensor, Inspection; margin: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height-4v5.toml</extracomment>
        <translation>Lexus GX 470 2007, Height Control Sensor, Inspection; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Ride-height sensor without a contact, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height-contactless.toml</extracomment>
        <translation>Berührungsloser Höhenstandssensor, 5 V</translation>
    </message>
    <message>
        <source>Ride-height sensor, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height.toml</extracomment>
        <translation>Höhenstandssensor, 5 V</translation>
    </message>
    <message>
        <source>HUMMER H2 2009, DTC C0625 or C0630 (range); rest mid-travel: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height.toml</extracomment>
        <translation>HUMMER H2 2009, DTC C0625 or C0630 (Bereich); Ruhelage in der Mitte des Wegs: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>HUMMER H2 2009, DTC C0625 or C0630</source>
        <extracomment>analysis/diagnosis/sensor_profiles/ride-height.toml</extracomment>
        <translation>HUMMER H2 2009, DTC C0625 or C0630</translation>
    </message>
    <message>
        <source>Throttle, tracks that go opposite ways</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle-opposite.toml</extracomment>
        <translation>Drosselklappe, gegenläufige Bahnen</translation>
    </message>
    <message>
        <source>opposite slopes, near 5 V when closed: Isuzu Ascender 2006, DTC P2135; volts: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle-opposite.toml</extracomment>
        <translation>gegenläufig, nahe 5 V wenn geschlossen: Isuzu Ascender 2006, DTC P2135; Volt: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>angles that differ by 5 % for 135 ms: Saturn VUE 2004, DTC P2135; opposite slopes: Saturn VUE 2007, DTC P2135</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle-opposite.toml</extracomment>
        <translation>Winkel, die 135 ms lang um 5 % abweichen: Saturn VUE 2004, DTC P2135; gegenläufig: Saturn VUE 2007, DTC P2135</translation>
    </message>
    <message>
        <source>Throttle position sensor, 5 V</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle.toml</extracomment>
        <translation>Drosselklappensensor, 5 V</translation>
    </message>
    <message>
        <source>closed 0.4-0.6 V, open up to 4.5 V: Kia Sephia 1997 and Isuzu Oasis 1996, Throttle Position Sensor; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle.toml</extracomment>
        <translation>geschlossen 0,4-0,6 V, offen bis 4,5 V: Kia Sephia 1997 und Isuzu Oasis 1996, Throttle Position Sensor; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Kia Sephia 1997, Throttle Position Sensor; margins: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle.toml</extracomment>
        <translation>Kia Sephia 1997, Throttle Position Sensor; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Kia Sephia 1997 and Isuzu Oasis 1996, Throttle Position Sensor; margin: common practice, no source</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle.toml</extracomment>
        <translation>Kia Sephia 1997 und Isuzu Oasis 1996, Throttle Position Sensor; Spielraum: übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Kia Sephia 1997, Throttle Position Sensor</source>
        <extracomment>analysis/diagnosis/sensor_profiles/throttle.toml</extracomment>
        <translation>Kia Sephia 1997, Throttle Position Sensor</translation>
    </message>
</context>
<context>
    <name>capture_form</name>
    <message>
        <source>What is said of the capture</source>
        <extracomment>app/importing/capture_form.py</extracomment>
        <translation>Was über die Messung gesagt ist</translation>
    </message>
    <message>
        <source>Title</source>
        <extracomment>app/importing/capture_form.py</extracomment>
        <translation>Titel</translation>
    </message>
    <message>
        <source>not told</source>
        <extracomment>app/importing/capture_form.py</extracomment>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>Sensor profile</source>
        <extracomment>app/importing/capture_form.py</extracomment>
        <translation>Sensorprofil</translation>
    </message>
</context>
<context>
    <name>column_card</name>
    <message>
        <source>Column {name}</source>
        <extracomment>app/importing/column_card.py</extracomment>
        <translation>Spalte {name}</translation>
    </message>
    <message>
        <source>{name}: used as</source>
        <extracomment>app/importing/column_card.py</extracomment>
        <translation>{name}: Verwendung</translation>
    </message>
    <message>
        <source>no finite sample</source>
        <extracomment>app/importing/column_card.py</extracomment>
        <translation>kein brauchbarer Messwert</translation>
    </message>
    <message>
        <source>{count} missing</source>
        <extracomment>app/importing/column_card.py</extracomment>
        <translation>{count} fehlen</translation>
    </message>
    <message>
        <source>{count} over range</source>
        <extracomment>app/importing/column_card.py</extracomment>
        <translation>{count} außerhalb des Messbereichs</translation>
    </message>
    <message>
        <source>{name}: unit</source>
        <extracomment>app/importing/wire_fields.py</extracomment>
        <translation>{name}: Einheit</translation>
    </message>
    <message>
        <source>{name}: probe</source>
        <extracomment>app/importing/wire_fields.py</extracomment>
        <translation>{name}: Messort</translation>
    </message>
    <message>
        <source>{name}: against</source>
        <extracomment>app/importing/wire_fields.py</extracomment>
        <translation>{name}: gegen</translation>
    </message>
    <message>
        <source>{name}: multiplied by</source>
        <extracomment>app/importing/wire_fields.py</extracomment>
        <translation>{name}: Faktor</translation>
    </message>
    <message>
        <source>What every sample is multiplied by: 10 for a probe that divides by ten</source>
        <extracomment>app/importing/wire_fields.py</extracomment>
        <translation>Womit jeder Messwert malgenommen wird: 10 bei einem Tastkopf, der durch zehn teilt</translation>
    </message>
    <message>
        <source>{name}: added in volts</source>
        <extracomment>app/importing/wire_fields.py</extracomment>
        <translation>{name}: dazugezählt in Volt</translation>
    </message>
    <message>
        <source>Volts that are added to every sample after that</source>
        <extracomment>app/importing/wire_fields.py</extracomment>
        <translation>Volt, die danach zu jedem Messwert dazukommen</translation>
    </message>
</context>
<context>
    <name>columns_pane</name>
    <message>
        <source>Columns</source>
        <extracomment>app/importing/columns_pane.py</extracomment>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Columns, and what each is used for</source>
        <extracomment>app/importing/columns_pane.py</extracomment>
        <translation>Spalten und wofür jede verwendet wird</translation>
    </message>
    <message>
        <source>Show the columns that are not shown yet</source>
        <extracomment>app/importing/columns_pane.py</extracomment>
        <translation>Die noch nicht gezeigten Spalten zeigen</translation>
    </message>
    <message>
        <source>The columns of the file appear here.</source>
        <extracomment>app/importing/columns_pane.py</extracomment>
        <translation>Hier erscheinen die Spalten der Datei.</translation>
    </message>
    <message>
        <source>Show {count} more columns</source>
        <extracomment>app/importing/columns_pane.py</extracomment>
        <translation>{count} weitere Spalten zeigen</translation>
    </message>
</context>
<context>
    <name>compare_heads</name>
    <message>
        <source>Each capture by itself</source>
        <extracomment>app/compare/heads.py</extracomment>
        <translation>Jede Messung für sich</translation>
    </message>
</context>
<context>
    <name>compare_summary</name>
    <message>
        <source>The second trace is moved {time} later.</source>
        <extracomment>app/compare/summary.py</extracomment>
        <translation>Der zweite Verlauf ist um {time} nach später verschoben.</translation>
    </message>
    <message>
        <source>The second trace is moved {time} earlier.</source>
        <extracomment>app/compare/summary.py</extracomment>
        <translation>Der zweite Verlauf ist um {time} nach früher verschoben.</translation>
    </message>
    <message>
        <source>Both arms first move at the same place now: the second trace went {time} later.</source>
        <extracomment>app/compare/summary.py</extracomment>
        <translation>Beide Hebel bewegen sich jetzt an derselben Stelle los: Der zweite Verlauf wurde um {time} nach später verschoben.</translation>
    </message>
    <message>
        <source>Both arms first move at the same place now: the second trace went {time} earlier.</source>
        <extracomment>app/compare/summary.py</extracomment>
        <translation>Beide Hebel bewegen sich jetzt an derselben Stelle los: Der zweite Verlauf wurde um {time} nach früher verschoben.</translation>
    </message>
</context>
<context>
    <name>dataset_list</name>
    <message>
        <source>Data sets</source>
        <extracomment>app/importing/dataset_list.py</extracomment>
        <translation>Datensätze</translation>
    </message>
    <message>
        <source>Data sets of the file</source>
        <extracomment>app/importing/dataset_list.py</extracomment>
        <translation>Datensätze der Datei</translation>
    </message>
    <message>
        <source>Which of the file's data sets become columns (Space)</source>
        <extracomment>app/importing/dataset_list.py</extracomment>
        <translation>Welche Datensätze der Datei zu Spalten werden (Leertaste)</translation>
    </message>
</context>
<context>
    <name>decisions</name>
    <message>
        <source>accepted</source>
        <extracomment>app/review/decision_words.py</extracomment>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>adjusted</source>
        <extracomment>app/review/decision_words.py</extracomment>
        <translation>geändert</translation>
    </message>
    <message>
        <source>dismissed</source>
        <extracomment>app/review/decision_words.py</extracomment>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>Accepted</source>
        <extracomment>app/review/decision_words.py</extracomment>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>You accepted this band as it was found; pressed again, you give no answer on it</source>
        <extracomment>app/review/decision_words.py</extracomment>
        <translation>Sie haben diese Zone angenommen, wie sie gefunden wurde; erneut gedrückt nehmen Sie das zurück</translation>
    </message>
    <message>
        <source>You: accepted as found</source>
        <extracomment>app/review/decision_words.py</extracomment>
        <translation>Sie: angenommen wie gefunden</translation>
    </message>
    <message>
        <source>You: adjusted to {span}</source>
        <extracomment>app/review/decision_words.py</extracomment>
        <translation>Sie: geändert auf {span}</translation>
    </message>
    <message>
        <source>You: dismissed</source>
        <extracomment>app/review/decision_words.py</extracomment>
        <translation>Sie: abgelehnt</translation>
    </message>
</context>
<context>
    <name>files_pane</name>
    <message>
        <source>Files</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Dateien</translation>
    </message>
    <message>
        <source>Files, in the order of the records</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Dateien in der Reihenfolge der Aufzeichnungen</translation>
    </message>
    <message>
        <source>What the record was taken for</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Wofür die Aufzeichnung gemacht wurde</translation>
    </message>
    <message>
        <source>Change all alike</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Alle gleich ändern</translation>
    </message>
    <message>
        <source>What is changed holds for all files with the same columns</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Was geändert wird, gilt für alle Dateien mit denselben Spalten</translation>
    </message>
    <message>
        <source>Guessed: {step}</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Vermutet: {step}</translation>
    </message>
    <message>
        <source>Add…</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Datei…</translation>
    </message>
    <message>
        <source>Add files to this capture</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Dieser Messung Dateien hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Take the chosen file off the list (Del)</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Die gewählte Datei von der Liste nehmen (Entf)</translation>
    </message>
    <message>
        <source>Move the chosen file up (Alt+Up)</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Die gewählte Datei nach oben (Alt+Auf)</translation>
    </message>
    <message>
        <source>Move the chosen file down (Alt+Down)</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Die gewählte Datei nach unten (Alt+Ab)</translation>
    </message>
    <message>
        <source>What is said of the record</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Was über die Aufzeichnung gesagt ist</translation>
    </message>
    <message>
        <source>Taken for</source>
        <extracomment>app/importing/files_pane.py</extracomment>
        <translation>Schritt</translation>
    </message>
</context>
<context>
    <name>import_page</name>
    <message>
        <source>Keep for files of this shape</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Für Dateien dieser Art merken</translation>
    </message>
    <message>
        <source>Import</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Importieren</translation>
    </message>
    <message>
        <source>looking at the file: {percent:.0f} %</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Datei wird angesehen: {percent:.0f} %</translation>
    </message>
    <message>
        <source>The first rows appear here as soon as the file has been looked at.</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Hier erscheinen die ersten Zeilen, sobald die Datei angesehen wurde.</translation>
    </message>
    <message>
        <source>How the file is read appears here.</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Hier erscheint, wie die Datei gelesen wird.</translation>
    </message>
    <message>
        <source>As last time</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Wie beim letzten Mal</translation>
    </message>
    <message>
        <source>Guess anew</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Neu vermuten</translation>
    </message>
    <message>
        <source>Leave aside what was kept, and guess from this file alone</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Das Gemerkte beiseitelassen und nur aus dieser Datei vermuten</translation>
    </message>
    <message>
        <source>How it is read</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Wie sie gelesen wird</translation>
    </message>
    <message>
        <source>The capture</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Die Messung</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Fortschritt des Imports</translation>
    </message>
    <message>
        <source>Elsewhere…</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Woanders…</translation>
    </message>
    <message>
        <source>Choose where the capture is saved</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Wählen, wo die Messung gespeichert wird</translation>
    </message>
    <message>
        <source>The next file of the same shape comes up as this one is understood</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Die nächste Datei dieser Art wird so verstanden wie diese</translation>
    </message>
    <message>
        <source>Make the capture and open it (Enter, Ctrl+Enter)</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Die Messung anlegen und öffnen (Eingabe, Strg+Eingabe)</translation>
    </message>
    <message>
        <source>Saved as</source>
        <extracomment>app/importing/page.py</extracomment>
        <translation>Gespeichert als</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>noch nicht angesehen</translation>
    </message>
    <message>
        <source>step not told</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>Schritt nicht angegeben</translation>
    </message>
    <message>
        <source>{count} rows</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>{count} Zeilen</translation>
    </message>
    <message>
        <source>{length} at {rate}</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>{length} mit {rate}</translation>
    </message>
    <message>
        <source>more than {length}</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>mehr als {length}</translation>
    </message>
    <message>
        <source>{reason} Choose {step} if that is so.</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>{reason} Wählen Sie {step}, wenn das stimmt.</translation>
    </message>
    <message>
        <source>Guessed as soon as the full scale is known.</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>Wird vermutet, sobald der Vollausschlag bekannt ist.</translation>
    </message>
    <message>
        <source>As last time.</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>Wie beim letzten Mal.</translation>
    </message>
    <message>
        <source>Guessed: {reason}</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>Vermutet: {reason}</translation>
    </message>
    <message>
        <source>Chosen by hand. Guessed was {use}: {reason}</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>Von Hand gewählt. Vermutet war {use}: {reason}</translation>
    </message>
    <message>
        <source>As last time for files of this shape (kept on {day}): press Enter to import.</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>Wie beim letzten Mal bei Dateien dieser Art (gemerkt am {day}): Die Eingabetaste importiert.</translation>
    </message>
    <message>
        <source>{count} of the files are understood as last time for files of their shape (kept on {day}).</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>{count} der Dateien werden verstanden wie beim letzten Mal bei Dateien ihrer Art (gemerkt am {day}).</translation>
    </message>
    <message>
        <source>Nothing can be saved beside the first file: choose another place.</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>Neben der ersten Datei kann nichts gespeichert werden: Wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
        <source>A file of that name exists already; choose another name.</source>
        <extracomment>app/importing/showing.py</extracomment>
        <translation>Eine Datei dieses Namens gibt es schon; wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Leave out</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>As guessed</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Wie vermutet</translation>
    </message>
    <message>
        <source>not told</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>as found</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>wie gefunden</translation>
    </message>
    <message>
        <source>As found</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Wie gefunden</translation>
    </message>
    <message>
        <source>a channel each</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>je ein Kanal</translation>
    </message>
    <message>
        <source>a record each</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>je ein Abschnitt</translation>
    </message>
    <message>
        <source>one course that goes on</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>ein fortlaufender Verlauf</translation>
    </message>
    <message>
        <source>tab</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>semicolon ;</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Semikolon ;</translation>
    </message>
    <message>
        <source>comma ,</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Komma ,</translation>
    </message>
    <message>
        <source>point .</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Punkt .</translation>
    </message>
    <message>
        <source>bar |</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Strich |</translation>
    </message>
    <message>
        <source>space</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>apostrophe '</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Apostroph '</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>keine</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Registration</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>Mounting</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Einbauort</translation>
    </message>
    <message>
        <source>Complaint</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Recorder</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Rekorder</translation>
    </message>
    <message>
        <source>Recorder's number</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>Nummer des Rekorders</translation>
    </message>
    <message>
        <source>{problem}; {action}</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>{problem}; {action}</translation>
    </message>
    <message>
        <source>say at the right how it is written, or remove the file</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>geben Sie rechts an, wie sie geschrieben ist, oder entfernen Sie die Datei</translation>
    </message>
    <message>
        <source>choose where the time comes from</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>wählen Sie, woher die Zeit kommt</translation>
    </message>
    <message>
        <source>say the unit of its times, or how far the rows lie apart</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>die Einheit ihrer Zeiten angeben oder wie weit die Zeilen auseinanderliegen</translation>
    </message>
    <message>
        <source>say how far the rows lie apart</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>geben Sie an, wie weit die Zeilen auseinanderliegen</translation>
    </message>
    <message>
        <source>let them be interpolated, or say how far the rows lie apart</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>lassen Sie umrechnen, oder geben Sie an, wie weit die Zeilen auseinanderliegen</translation>
    </message>
    <message>
        <source>say it here</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>geben Sie es hier an</translation>
    </message>
    <message>
        <source>say which column is which wire</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>geben Sie an, welche Spalte welche Leitung ist</translation>
    </message>
    <message>
        <source>say what the blocks are</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>sagen Sie, was die Blöcke sind</translation>
    </message>
    <message>
        <source>say the unit of the column, or what its numbers are multiplied by</source>
        <extracomment>app/importing/words.py</extracomment>
        <translation>nennen Sie die Einheit der Spalte, oder womit ihre Zahlen malgenommen werden</translation>
    </message>
</context>
<context>
    <name>known_good</name>
    <message>
        <source>It is kept as known good, but was not examined to the end: look at its verdict first.</source>
        <extracomment>app/compare/known_good.py</extracomment>
        <translation>Als guten Sensor gemerkt, die Messung wurde aber nicht zu Ende untersucht: Sehen Sie sich erst ihr Urteil an.</translation>
    </message>
    <message>
        <source>It is kept as known good, but its verdict is: {verdict}. Keep another one to replace it.</source>
        <extracomment>app/compare/known_good.py</extracomment>
        <translation>Als guten Sensor gemerkt, das Urteil der Messung ist aber: {verdict}. Merken Sie eine andere, so ersetzt sie diese.</translation>
    </message>
</context>
<context>
    <name>markers</name>
    <message>
        <source>from {place}</source>
        <extracomment>app/review/drawn_marks.py</extracomment>
        <translation>ab {place}</translation>
    </message>
    <message>
        <source>A stretch of travel begins at {place}: T ends it where you point, Esc cancels it.</source>
        <extracomment>app/review/drawn_marks.py</extracomment>
        <translation>Ein Wegstück beginnt bei {place}: T beendet es am Mauszeiger, Esc bricht es ab.</translation>
    </message>
    <message>
        <source>A span begins at {place}: S ends it where you point, Esc cancels it.</source>
        <extracomment>app/review/drawn_marks.py</extracomment>
        <translation>Eine Zeitspanne beginnt bei {place}: S beendet sie am Mauszeiger, Esc bricht sie ab.</translation>
    </message>
    <message>
        <source>drop {drop}</source>
        <extracomment>app/review/marker_rows.py</extracomment>
        <translation>Einbruch {drop}</translation>
    </message>
    <message>
        <source>rise {drop}</source>
        <extracomment>app/review/marker_rows.py</extracomment>
        <translation>Anstieg {drop}</translation>
    </message>
    <message>
        <source>{height} p–p</source>
        <extracomment>app/review/marker_rows.py</extracomment>
        <translation>{height} Sp–Sp</translation>
    </message>
    <message>
        <source>Mean / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Mittelwert / V</translation>
    </message>
    <message>
        <source>RMS / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Effektivwert / V</translation>
    </message>
    <message>
        <source>Minimum / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Minimum / V</translation>
    </message>
    <message>
        <source>Maximum / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Maximum / V</translation>
    </message>
    <message>
        <source>Peak to peak / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Spitze-Spitze / V</translation>
    </message>
    <message>
        <source>Noise / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Rauschen / V</translation>
    </message>
    <message>
        <source>± (k = 2) / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>± (k = 2) / V</translation>
    </message>
    <message>
        <source>Marker</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Kind</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Art</translation>
    </message>
    <message>
        <source>Record or track</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Aufzeichnung oder Bahn</translation>
    </message>
    <message>
        <source>Begins</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Ends</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Unit</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Channel</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Samples</source>
        <extracomment>app/review/marker_sheet.py, app/review/marker_words.py</extracomment>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Crossings</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Überfahrten</translation>
    </message>
    <message>
        <source>Broke up on</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Aussetzer bei</translation>
    </message>
    <message>
        <source>Worst / % {of}</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Größte / % {of}</translation>
    </message>
    <message>
        <source>Confidence</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Travel / %</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Weg / %</translation>
    </message>
    <message>
        <source>Height from / mm</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Höhe von / mm</translation>
    </message>
    <message>
        <source>Height to / mm</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Höhe bis / mm</translation>
    </message>
    <message>
        <source>Drop of the signal (negative: rise) / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Einbruch des Signals (negativ: Anstieg) / V</translation>
    </message>
    <message>
        <source>Volts from / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Spannung von / V</translation>
    </message>
    <message>
        <source>Volts to / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Spannung bis / V</translation>
    </message>
    <message>
        <source>Expect it from / % of crossings</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Zu erwarten von / % der Überfahrten</translation>
    </message>
    <message>
        <source>Expect it to / % of crossings</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Zu erwarten bis / % der Überfahrten</translation>
    </message>
    <message>
        <source>± of the drop (k = 2) / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>± des Einbruchs (k = 2) / V</translation>
    </message>
    <message>
        <source>What it should read / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Sollwert / V</translation>
    </message>
    <message>
        <source>± of what it should read (k = 2) / V</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>± des Sollwerts (k = 2) / V</translation>
    </message>
    <message>
        <source>Drop in words</source>
        <extracomment>app/review/marker_sheet.py</extracomment>
        <translation>Einbruch in Worten</translation>
    </message>
    <message>
        <source>cannot be told</source>
        <extracomment>app/review/marker_sheet.py, app/review/marker_words.py</extracomment>
        <translation>lässt sich nicht sagen</translation>
    </message>
    <message>
        <source>Point</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Span</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>Travel</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Weg</translation>
    </message>
    <message>
        <source>{place}, second signal</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>{place}, Signal 2</translation>
    </message>
    <message>
        <source>Travel, second signal</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Weg, Signal 2</translation>
    </message>
    <message>
        <source>Height: mm of wheel travel from the normal height</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Höhe: mm am Rad ab der Normalhöhe</translation>
    </message>
    <message>
        <source>A drop is told within a found band, where the arm's place is known so well that the drop is more than its uncertainty</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Ein Einbruch wird innerhalb einer gefundenen Zone angegeben, wo die Stellung des Hebels so gut bekannt ist, dass er größer als seine Unsicherheit ist</translation>
    </message>
    <message>
        <source>Drop</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Einbruch</translation>
    </message>
    <message>
        <source>Rise</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>Should read</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>Height</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>not known</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>missing</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>Reads</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Longer than {count} million samples: shorten the span to have it read.</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Länger als {count} Millionen Werte: die Spanne kürzen, damit sie abgelesen wird.</translation>
    </message>
    <message>
        <source>Mean</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>RMS</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Effektiv</translation>
    </message>
    <message>
        <source>Minimum</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>Maximum</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Peak–peak</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Sp.–Sp.</translation>
    </message>
    <message>
        <source>Noise, mV</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Rausch., mV</translation>
    </message>
    <message>
        <source>Duration</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>A band here</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Eine Zone hier</translation>
    </message>
    <message>
        <source>Expect it on</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Zu erwarten bei</translation>
    </message>
    <message>
        <source>{share} of crossings</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>{share} der Überfahrten</translation>
    </message>
    <message>
        <source>The arm never went over it: it is not rated.</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Der Hebel kam nie dorthin: nicht bewertet.</translation>
    </message>
    <message>
        <source>Of many more crossings that many would break up: 95 % interval of the share (Wilson)</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>So viele würden bei vielen weiteren Überfahrten ausfallen: 95-%-Intervall des Anteils (Wilson)</translation>
    </message>
    <message>
        <source>Breaks up on</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Aussetzer bei</translation>
    </message>
    <message>
        <source>Worst</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Größte</translation>
    </message>
    <message>
        <source>Voltage</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>± is the expanded uncertainty with k = 2, which covers about 95 % (JCGM 100)</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>± ist die erweiterte Unsicherheit mit k = 2, die etwa 95 % abdeckt (JCGM 100)</translation>
    </message>
    <message>
        <source>±: within it 95 times in 100</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>±: in 95 von 100 Fällen innerhalb</translation>
    </message>
    <message>
        <source>±: within it 95 times in 100, if the recorder is right: its accuracy is not stated</source>
        <extracomment>app/review/marker_words.py</extracomment>
        <translation>±: in 95 von 100 Fällen innerhalb, wenn der Rekorder stimmt: seine Genauigkeit ist nicht angegeben</translation>
    </message>
</context>
<context>
    <name>photo_list</name>
    <message>
        <source>Add photos…</source>
        <extracomment>app/views/photo_list.py</extracomment>
        <translation>Fotos hinzufügen…</translation>
    </message>
    <message>
        <source>Caption of {name}</source>
        <extracomment>app/views/photo_list.py</extracomment>
        <translation>Bildunterschrift von {name}</translation>
    </message>
    <message>
        <source>Caption</source>
        <extracomment>app/views/photo_list.py</extracomment>
        <translation>Bildunterschrift</translation>
    </message>
    <message>
        <source>Take out {name}</source>
        <extracomment>app/views/photo_list.py</extracomment>
        <translation>{name} herausnehmen</translation>
    </message>
    <message>
        <source>Take this photo out of the report</source>
        <extracomment>app/views/photo_list.py</extracomment>
        <translation>Dieses Foto aus dem Bericht nehmen</translation>
    </message>
</context>
<context>
    <name>picture_choice</name>
    <message>
        <source>The program's choice again</source>
        <extracomment>app/views/picture_choice.py</extracomment>
        <translation>Wieder die Wahl des Programms</translation>
    </message>
    <message>
        <source>Chosen by the program.</source>
        <extracomment>app/views/picture_choice.py</extracomment>
        <translation>Vom Programm gewählt.</translation>
    </message>
    <message>
        <source>The program shows none with this finding.</source>
        <extracomment>app/views/picture_choice.py</extracomment>
        <translation>Bei diesem Befund zeigt das Programm keines.</translation>
    </message>
    <message>
        <source>Cannot be drawn from this capture: {names}</source>
        <extracomment>app/views/picture_choice.py</extracomment>
        <translation>Aus dieser Messung nicht zu zeichnen: {names}</translation>
    </message>
    <message>
        <source>Break-up along the travel</source>
        <extracomment>app/views/picture_choice.py</extracomment>
        <translation>Aussetzer über dem Weg</translation>
    </message>
    <message>
        <source>The signal in time</source>
        <extracomment>app/views/picture_choice.py</extracomment>
        <translation>Das Signal in der Zeit</translation>
    </message>
    <message>
        <source>No picture</source>
        <extracomment>app/views/picture_choice.py</extracomment>
        <translation>Kein Bild</translation>
    </message>
</context>
<context>
    <name>reading_form</name>
    <message>
        <source>How the file is read</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Wie die Datei gelesen wird</translation>
    </message>
    <message>
        <source>Blocks of rows</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Blöcke von Zeilen</translation>
    </message>
    <message>
        <source>Lines before the first sample</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Zeilen vor dem ersten Messwert</translation>
    </message>
    <message>
        <source>Volts at full scale</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Volt bei Vollausschlag</translation>
    </message>
    <message>
        <source>Seconds between rows, or rows a second</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Sekunden zwischen den Zeilen oder Zeilen je Sekunde</translation>
    </message>
    <message>
        <source>Interpolate onto even times</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Auf gleiche Abstände umrechnen</translation>
    </message>
    <message>
        <source>not known yet</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>As found</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Wie gefunden</translation>
    </message>
    <message>
        <source>Found: {name}</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Gefunden: {name}</translation>
    </message>
    <message>
        <source>As found: {name}</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Wie gefunden: {name}</translation>
    </message>
    <message>
        <source>Column {name}</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Spalte {name}</translation>
    </message>
    <message>
        <source>Seconds between rows</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Sekunden zwischen Zeilen</translation>
    </message>
    <message>
        <source>Rows a second (Hz)</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Zeilen je Sekunde (Hz)</translation>
    </message>
    <message>
        <source>seconds</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>hertz</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Hertz</translation>
    </message>
    <message>
        <source>Between cells</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Trennzeichen</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Thousands</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Tausender</translation>
    </message>
    <message>
        <source>Encoding</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Zeichensatz</translation>
    </message>
    <message>
        <source>Head lines</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Kopfzeilen</translation>
    </message>
    <message>
        <source>volts</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Volt</translation>
    </message>
    <message>
        <source>Full scale, V</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Vollausschlag, V</translation>
    </message>
    <message>
        <source>Blocks</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Blöcke</translation>
    </message>
    <message>
        <source>Where the time comes from</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Woher die Zeit kommt</translation>
    </message>
    <message>
        <source>Samples between the rows of the file are then worked out, and the capture says so.</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Messwerte werden dann zwischen den Zeilen der Datei berechnet, und die Messung sagt das.</translation>
    </message>
    <message>
        <source>Time</source>
        <extracomment>app/importing/reading_form.py</extracomment>
        <translation>Zeit</translation>
    </message>
</context>
<context>
    <name>report_form</name>
    <message>
        <source>What was found</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>What it means</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Was das bedeutet</translation>
    </message>
    <message>
        <source>Can it be driven?</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Dürfen Sie damit fahren?</translation>
    </message>
    <message>
        <source>If it is left</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Wenn nichts geschieht</translation>
    </message>
    <message>
        <source>What we recommend</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Was wir empfehlen</translation>
    </message>
    <message>
        <source>What that does not include</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Was das nicht umfasst</translation>
    </message>
    <message>
        <source>Part</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Labour</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Calibration</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>Tax, %</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Steuer, %</translation>
    </message>
    <message>
        <source>Currency</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Calibrated by the maker's method</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Nach Herstellervorgabe kalibriert</translation>
    </message>
    <message>
        <source>Fault codes cleared</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Fehlercodes gelöscht</translation>
    </message>
    <message>
        <source>Heights or end positions measured</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Höhen oder Endstellungen gemessen</translation>
    </message>
    <message>
        <source>Road test done</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Probefahrt gemacht</translation>
    </message>
    <message>
        <source>Captured again</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Noch einmal gemessen</translation>
    </message>
    <message>
        <source>What the report says</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Was der Bericht sagt</translation>
    </message>
    <message>
        <source>Words of the paragraph</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Worte des Absatzes</translation>
    </message>
    <message>
        <source>Notes</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Anmerkungen</translation>
    </message>
    <message>
        <source>Print the list</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Liste drucken</translation>
    </message>
    <message>
        <source>Print what the markers read</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Messwerte der Marken drucken</translation>
    </message>
    <message>
        <source>The program's words again</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Wieder die Worte des Programms</translation>
    </message>
    <message>
        <source>A modelled good sensor</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Ein berechneter guter Sensor</translation>
    </message>
    <message>
        <source>The job</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Der Auftrag</translation>
    </message>
    <message>
        <source>The words on page one</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Die Worte auf Seite eins</translation>
    </message>
    <message>
        <source>Paragraph</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Absatz</translation>
    </message>
    <message>
        <source>Say the odds as a number too</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Die Sicherheit auch als Zahl nennen</translation>
    </message>
    <message>
        <source>The picture</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Das Bild</translation>
    </message>
    <message>
        <source>Set a capture beside it…</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Eine Messung danebenstellen…</translation>
    </message>
    <message>
        <source>None</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>Beside it</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Daneben</translation>
    </message>
    <message>
        <source>Photos of the car</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Fotos des Fahrzeugs</translation>
    </message>
    <message>
        <source>An offer (printed where an amount is entered)</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Ein Angebot (gedruckt, wo ein Betrag steht)</translation>
    </message>
    <message>
        <source>After the repair</source>
        <extracomment>app/views/report_form.py</extracomment>
        <translation>Nach der Reparatur</translation>
    </message>
</context>
<context>
    <name>report_page</name>
    <message>
        <source>Paper</source>
        <extracomment>app/reporting/page.py</extracomment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Language of the report</source>
        <extracomment>app/reporting/page.py</extracomment>
        <translation>Sprache des Berichts</translation>
    </message>
    <message>
        <source>What it says</source>
        <extracomment>app/reporting/page.py</extracomment>
        <translation>Was er sagt</translation>
    </message>
    <message>
        <source>As it is printed</source>
        <extracomment>app/reporting/page.py</extracomment>
        <translation>Wie er gedruckt wird</translation>
    </message>
</context>
<context>
    <name>report_preview</name>
    <message>
        <source>Preview of the report</source>
        <extracomment>app/views/report_preview.py</extracomment>
        <translation>Vorschau des Berichts</translation>
    </message>
    <message>
        <source>Sheet {page} of {pages}</source>
        <extracomment>app/views/report_preview.py</extracomment>
        <translation>Blatt {page} von {pages}</translation>
    </message>
</context>
<context>
    <name>rows_pane</name>
    <message>
        <source>missing</source>
        <extracomment>app/importing/rows_pane.py</extracomment>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>over range</source>
        <extracomment>app/importing/rows_pane.py</extracomment>
        <translation>Überlauf</translation>
    </message>
    <message>
        <source>First rows as understood</source>
        <extracomment>app/importing/rows_pane.py</extracomment>
        <translation>Erste Zeilen, wie sie verstanden werden</translation>
    </message>
</context>
<context>
    <name>trouble</name>
    <message>
        <source>{doing}: something unforeseen went wrong ({kind}: {text}).</source>
        <extracomment>app/trouble.py</extracomment>
        <translation>{doing}: Etwas Unvorhergesehenes ging schief ({kind}: {text}).</translation>
    </message>
    <message>
        <source>It was written to {file}.</source>
        <extracomment>app/trouble.py</extracomment>
        <translation>Es wurde in {file} geschrieben.</translation>
    </message>
    <message>
        <source>import it by hand, and say there how it is to be read</source>
        <extracomment>app/trouble.py</extracomment>
        <translation>von Hand importieren und dort angeben, wie zu lesen ist</translation>
    </message>
    <message>
        <source>Working in the window</source>
        <extracomment>app/trouble.py</extracomment>
        <translation>Arbeit im Fenster</translation>
    </message>
</context>
<context>
    <name>trouble_line</name>
    <message>
        <source>What is missing</source>
        <extracomment>app/importing/trouble_line.py</extracomment>
        <translation>Was fehlt</translation>
    </message>
</context>
<context>
    <name>watch_page</name>
    <message>
        <source>Choose a folder…</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Ordner wählen…</translation>
    </message>
    <message>
        <source>Stop watching</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Nicht mehr beobachten</translation>
    </message>
    <message>
        <source>Try again</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Import by hand…</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Von Hand importieren…</translation>
    </message>
    <message>
        <source>I wiggled the harness</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Ich habe am Kabelbaum gewackelt</translation>
    </message>
    <message>
        <source>Choose the folder that the recorder saves into</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Den Ordner wählen, in den der Rekorder speichert</translation>
    </message>
    <message>
        <source>Stop watching the folder, or go on</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Das Beobachten des Ordners beenden oder fortsetzen</translation>
    </message>
    <message>
        <source>Only if the harness and the plug were moved while it was recorded</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Nur wenn Kabelbaum und Stecker während der Aufnahme bewegt wurden</translation>
    </message>
    <message>
        <source>Try the files that failed once more</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Die misslungenen Dateien noch einmal versuchen</translation>
    </message>
    <message>
        <source>Say how the file is to be read; the next one of its shape is then read so</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Angeben, wie die Datei zu lesen ist; die nächste gleicher Form wird dann so gelesen</translation>
    </message>
    <message>
        <source>Which sensor is judged</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Welcher Sensor beurteilt wird</translation>
    </message>
    <message>
        <source>Sensor profile</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Sensorprofil</translation>
    </message>
    <message>
        <source>Sensor by the files</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Sensor laut Dateien</translation>
    </message>
    <message>
        <source>Go on watching</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Weiter beobachten</translation>
    </message>
    <message>
        <source>Choose a folder</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Ordner wählen</translation>
    </message>
    <message>
        <source>Choose the folder that the recorder saves into.</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Wählen Sie den Ordner, in den der Rekorder speichert.</translation>
    </message>
    <message>
        <source>Watch a folder</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Ordner beobachten</translation>
    </message>
    <message>
        <source>Watching {folder}</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Beobachtet: {folder}</translation>
    </message>
    <message>
        <source>Not watching</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Angehalten</translation>
    </message>
    <message>
        <source>What the recorder saves now is taken when you go on.</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Was der Rekorder jetzt speichert, wird genommen, sobald Sie fortfahren.</translation>
    </message>
    <message>
        <source>At rest: {names}. It counts as no wiggle test unless you say that you did it.</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>In Ruhe: {names}. Das gilt nicht als Wackelprobe, solange Sie nicht sagen, dass Sie sie gemacht haben.</translation>
    </message>
    <message>
        <source>No file has come yet; a file is taken once it has stopped growing.</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Noch keine Datei da; eine Datei wird genommen, sobald sie nicht mehr wächst.</translation>
    </message>
    <message>
        <source>Files together: {count}. Last: {name}</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>Dateien zusammen: {count}. Letzte: {name}</translation>
    </message>
    <message>
        <source>{name} has been growing for a minute: stop the recording, and it is taken.</source>
        <extracomment>app/watching/page.py</extracomment>
        <translation>{name} wächst seit einer Minute: Beenden Sie die Aufzeichnung, dann wird sie genommen.</translation>
    </message>
    <message>
        <source>Crossings of each stretch of travel; six are enough</source>
        <extracomment>app/watching/travel_bar.py</extracomment>
        <translation>Überfahrten jedes Wegabschnitts; sechs genügen</translation>
    </message>
    <message>
        <source>Travel tested</source>
        <extracomment>app/watching/travel_bar.py</extracomment>
        <translation>Geprüfter Weg</translation>
    </message>
    <message>
        <source>{low}–{high} %: beyond the stop</source>
        <extracomment>app/watching/travel_bar.py</extracomment>
        <translation>{low}–{high} %: jenseits des Anschlags</translation>
    </message>
    <message>
        <source>{low}–{high} %: {count} crossings, others too fast</source>
        <extracomment>app/watching/travel_bar.py</extracomment>
        <translation>{low}–{high} %: {count} Überfahrten, andere zu schnell</translation>
    </message>
    <message>
        <source>{low}–{high} %: {count} crossings</source>
        <extracomment>app/watching/travel_bar.py</extracomment>
        <translation>{low}–{high} %: {count} Überfahrten</translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>Signal</source>
        <extracomment>app/words.py</extracomment>
        <translation>Signal</translation>
    </message>
    <message>
        <source>Second signal</source>
        <extracomment>app/words.py</extracomment>
        <translation>Signal 2</translation>
    </message>
    <message>
        <source>Reference</source>
        <extracomment>app/words.py</extracomment>
        <translation>Bezugsspannung</translation>
    </message>
    <message>
        <source>Ground</source>
        <extracomment>app/words.py</extracomment>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Supply</source>
        <extracomment>app/words.py</extracomment>
        <translation>Versorgung</translation>
    </message>
    <message>
        <source>drop</source>
        <extracomment>app/words.py</extracomment>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>rise</source>
        <extracomment>app/words.py</extracomment>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>ringing</source>
        <extracomment>app/words.py</extracomment>
        <translation>Zittern</translation>
    </message>
    <message>
        <source>spike</source>
        <extracomment>app/words.py</extracomment>
        <translation>Spitze</translation>
    </message>
</context>
<context>
    <name>workshop_form</name>
    <message>
        <source>The workshop</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Die Werkstatt</translation>
    </message>
    <message>
        <source>Name of the workshop</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Name der Werkstatt</translation>
    </message>
    <message>
        <source>Address and telephone</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Anschrift und Telefon</translation>
    </message>
    <message>
        <source>Logo</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Logo</translation>
    </message>
    <message>
        <source>Choose…</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Address, telephone</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Anschrift, Telefon</translation>
    </message>
    <message>
        <source>Pictures ({patterns})</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Bilder ({patterns})</translation>
    </message>
    <message>
        <source>Choose a logo</source>
        <extracomment>app/views/workshop_form.py</extracomment>
        <translation>Ein Logo wählen</translation>
    </message>
</context>
</TS>
