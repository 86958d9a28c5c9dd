<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_GB">
<context>
    <name>AccountWords</name>
    <message>
        <source>Lost: %1</source>
        <extracomment>A part of a batch's liquid: a named loss; %1 what it was</extracomment>
        <translation>Verlust: %1</translation>
    </message>
    <message>
        <source>Lost: %1, %2</source>
        <extracomment>A part of a batch's liquid: a named loss; %1 what it was, %2 a note</extracomment>
        <translation>Verlust: %1, %2</translation>
    </message>
    <message>
        <source>Went in</source>
        <extracomment>A part of a batch's liquid: all that was weighed into the tank</extracomment>
        <translation>Hineingegeben</translation>
    </message>
    <message>
        <source>Taken up by bagged strips</source>
        <extracomment>A part of a batch's liquid</extracomment>
        <translation>Von abgepackten Streifen aufgenommen</translation>
    </message>
    <message>
        <source>Free in the bags</source>
        <extracomment>A part of a batch's liquid: liquid that lies free in bags</extracomment>
        <translation>Frei in den Beuteln</translation>
    </message>
    <message>
        <source>In pails</source>
        <extracomment>A part of a batch's liquid</extracomment>
        <translation>In Eimern</translation>
    </message>
    <message>
        <source>Not accounted for yet</source>
        <extracomment>A part of a batch's liquid, of a batch whose leftovers are not poured yet</extracomment>
        <translation>Noch nicht abgerechnet</translation>
    </message>
    <message>
        <source>Unexplained</source>
        <translation>Ungeklärt</translation>
    </message>
    <message>
        <source>acid in a strip</source>
        <translation>Säure je Streifen</translation>
    </message>
    <message>
        <source>taken up by a strip</source>
        <translation>aufgenommen je Streifen</translation>
    </message>
</context>
<context>
    <name>ApartWords</name>
    <message>
        <source>There is no file %1. Look whether it was moved, or whether the stick is plugged in.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>Es gibt keine Datei %1. Sehen Sie nach, ob sie verschoben wurde oder ob der Stick steckt.</translation>
    </message>
    <message>
        <source>%1 is not a Soakbook workbook, so there is nothing to compare.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist kein Arbeitsbuch von Soakbook, darum gibt es nichts zu vergleichen.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Soakbook. Install that version here, then compare.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 wurde mit einem neueren Soakbook geschrieben. Installieren Sie dieses hier und vergleichen Sie dann.</translation>
    </message>
    <message>
        <source>%1 cannot be read. Copy it to this computer and try again.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 lässt sich nicht lesen. Kopieren Sie es auf diesen Rechner und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>%1 is damaged. Nothing is taken over from it. What is left in it can be read in Set-up, under Workbooks.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist beschädigt. Daraus wird nichts übernommen. Unter „Einrichtung“, „Arbeitsbücher“ lässt sich lesen, was darin übrig ist.</translation>
    </message>
    <message>
        <source>%1 was rebuilt by another program. Nothing of it was run, and nothing is taken over from it.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 wurde von einem anderen Programm umgebaut. Nichts davon wurde ausgeführt, und nichts wird daraus übernommen.</translation>
    </message>
    <message>
        <source>%1 is held by another program just now. Close it there and try again.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist gerade in einem anderen Programm offen. Schließen Sie es dort und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>%1 must be copied before it can be read, and there is no room for that on this computer. Make room and try again.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 muss vor dem Lesen kopiert werden, und dafür ist auf diesem Rechner kein Platz. Schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>%1 is the workbook that is open. Choose the other copy.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist das Arbeitsbuch, das gerade offen ist. Wählen Sie die andere Kopie.</translation>
    </message>
    <message>
        <source>%1 is a workbook of its own, not a copy of this one.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist ein eigenes Arbeitsbuch, keine Kopie von diesem.</translation>
    </message>
    <message>
        <source>Both hold the same entries.</source>
        <extracomment>Two copies of the workbook were compared.</extracomment>
        <translation>Beide enthalten dieselben Einträge.</translation>
    </message>
    <message numerus="yes">
        <source>The other is older: %n entries are missing there. Nothing stands only there.</source>
        <extracomment>The other copy of the workbook is an older one.</extracomment>
        <translation>
            <numerusform>Die andere ist älter: Dort fehlt %n Eintrag. Nichts steht nur dort.</numerusform>
            <numerusform>Die andere ist älter: Dort fehlen %n Einträge. Nichts steht nur dort.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The other is newer: %n entries are missing here.</source>
        <extracomment>The other copy of the workbook is a newer one.</extracomment>
        <translation>
            <numerusform>Die andere ist neuer: Hier fehlt %n Eintrag.</numerusform>
            <numerusform>Die andere ist neuer: Hier fehlen %n Einträge.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Both were written in since they were the same: %n entries stand only here,</source>
        <extracomment>Two copies of the workbook were both written in; the second half of the sentence follows.</extracomment>
        <translation>
            <numerusform>Seit beide gleich waren, wurde in beide geschrieben: %n Eintrag steht nur hier,</numerusform>
            <numerusform>Seit beide gleich waren, wurde in beide geschrieben: %n Einträge stehen nur hier,</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n only there.</source>
        <extracomment>The second half of a sentence: so many entries stand only here, ...</extracomment>
        <translation>
            <numerusform>%n nur dort.</numerusform>
            <numerusform>%n nur dort.</numerusform>
        </translation>
    </message>
    <message>
        <source>is added here</source>
        <extracomment>What becomes of a record of the other copy.</extracomment>
        <translation>kommt hier dazu</translation>
    </message>
    <message>
        <source>will say what it says there</source>
        <extracomment>What becomes of a record of the other copy.</extracomment>
        <translation>wird so, wie es dort steht</translation>
    </message>
    <message>
        <source>stands here already</source>
        <extracomment>What becomes of a record of the other copy.</extracomment>
        <translation>steht hier schon</translation>
    </message>
    <message>
        <source>was taken back there; stays here</source>
        <extracomment>What becomes of a record of the other copy: it was taken back there.</extracomment>
        <translation>dort zurückgenommen; bleibt hier</translation>
    </message>
    <message>
        <source>taken back here: is added again</source>
        <extracomment>What becomes of a record that was taken back here and changed in the other copy.</extracomment>
        <translation>hier zurückgenommen: kommt wieder dazu</translation>
    </message>
    <message>
        <source>taken back here: stays away</source>
        <translation>hier zurückgenommen: bleibt weg</translation>
    </message>
    <message>
        <source>"%1" rests on "%2", which is left out. Take over both, or leave out both.</source>
        <extracomment>%1 and %2 are entries in words.</extracomment>
        <translation>„%1“ baut auf „%2“ auf, und das ist ausgelassen. Übernehmen Sie beides oder lassen Sie beides aus.</translation>
    </message>
    <message>
        <source>changed outside Soakbook</source>
        <extracomment>In place of an entry's name.</extracomment>
        <translation>außerhalb von Soakbook geändert</translation>
    </message>
    <message numerus="yes">
        <source>%n entries were taken over as one; undo takes them back together.</source>
        <extracomment>Entries of another copy were written into this one; %n is how many.</extracomment>
        <translation>
            <numerusform>%n Eintrag wurde übernommen; Rückgängig nimmt ihn zurück.</numerusform>
            <numerusform>%n Einträge wurden als einer übernommen; Rückgängig nimmt sie zusammen zurück.</numerusform>
        </translation>
    </message>
    <message>
        <source>There was nothing to take over: it stands here already, or stays as it is here.</source>
        <extracomment>Entries of another copy were to be written into this one.</extracomment>
        <translation>Es gab nichts zu übernehmen: Es steht schon hier oder bleibt, wie es hier ist.</translation>
    </message>
    <message>
        <source>%1 is given out twice: the one taken over is now %2. Write or print the label of %2.</source>
        <extracomment>%1 and %2 are codes of bags, pails or batches.</extracomment>
        <translation>%1 ist zweimal vergeben: Das Übernommene heißt jetzt %2. Schreiben oder drucken Sie das Etikett dafür neu.</translation>
    </message>
    <message numerus="yes">
        <source>%n records that differ stay as they are here.</source>
        <extracomment>%n records were changed in both copies.</extracomment>
        <translation>
            <numerusform>%n Aufzeichnung, die sich unterscheidet, bleibt, wie sie hier ist.</numerusform>
            <numerusform>%n Aufzeichnungen, die sich unterscheiden, bleiben, wie sie hier sind.</numerusform>
        </translation>
    </message>
    <message>
        <source>changed in both: as it is there</source>
        <extracomment>What becomes of a record that was changed in both copies.</extracomment>
        <translation>in beiden geändert: wie dort</translation>
    </message>
    <message>
        <source>changed in both: stays as it is</source>
        <translation>in beiden geändert: bleibt, wie es ist</translation>
    </message>
    <message>
        <source>same name in both: as it is there</source>
        <extracomment>What becomes of a record that was entered in both copies under the same name.</extracomment>
        <translation>gleicher Name in beiden: wie dort</translation>
    </message>
    <message>
        <source>same name in both: stays as it is</source>
        <translation>gleicher Name in beiden: bleibt, wie es ist</translation>
    </message>
</context>
<context>
    <name>BagColumns</name>
    <message>
        <source>Days</source>
        <extracomment>Header of a column: days until a bag's limit</extracomment>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Opened</source>
        <extracomment>Header of a column: the day a bag was opened</extracomment>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Opened longer ago than you allow in Set-up</source>
        <extracomment>Tool tip of the day a bag was opened</extracomment>
        <translation>Länger geöffnet, als Sie in der Einrichtung erlauben</translation>
    </message>
    <message>
        <source>Bag</source>
        <extracomment>Header of a column: the code of a bag</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>Header of a column: resting, ready, near the limit</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Strips left</source>
        <extracomment>Header of a column: strips that are left in a bag, of those that were packed</extracomment>
        <translation>Streifen übrig</translation>
    </message>
    <message>
        <source>Use by</source>
        <extracomment>Header of a column: the last day a bag may be used</extracomment>
        <translation>Verwendbar bis</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>Header of a column: where a bag stands</extracomment>
        <translation>Steht</translation>
    </message>
    <message>
        <source>Label</source>
        <extracomment>Header of a column: whether a label was printed</extracomment>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Batch</source>
        <extracomment>Header of a column: the code of a batch</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Sealed</source>
        <extracomment>Header of a column: the day a bag was sealed</extracomment>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Rests until</source>
        <extracomment>Header of a column: the day on which a bag's rest ends</extracomment>
        <translation>Ruht bis</translation>
    </message>
</context>
<context>
    <name>BagFacts</name>
    <message>
        <source>Batch</source>
        <extracomment>Name of a fact of a bag</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Kind</source>
        <extracomment>Name of a fact of a bag: what strips are in it</extracomment>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>Strips left</source>
        <extracomment>Name of a fact of a bag: strips that are left, of those that were packed
----------
Name of a fact of several bags: their strips together</extracomment>
        <translation>Streifen übrig</translation>
    </message>
    <message>
        <source>Taken out</source>
        <extracomment>Name of a fact of a bag: where the strips went that are not in it any more</extracomment>
        <translation>Entnommen</translation>
    </message>
    <message>
        <source>Acid a strip</source>
        <extracomment>Name of a fact of a bag</extracomment>
        <translation>Säure je Streifen</translation>
    </message>
    <message>
        <source>Strength</source>
        <extracomment>Name of a fact of a bag: the strength of the liquid</extracomment>
        <translation>Gehalt</translation>
    </message>
    <message>
        <source>Packed weight</source>
        <extracomment>Name of a fact of a bag: weight of what is in it, when it was sealed</extracomment>
        <translation>Füllgewicht</translation>
    </message>
    <message>
        <source>Sealed</source>
        <extracomment>Name of a fact of a bag: the day it was sealed</extracomment>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Rests until</source>
        <extracomment>Name of a fact of a bag: the day its rest ends</extracomment>
        <translation>Ruht bis</translation>
    </message>
    <message>
        <source>Use by</source>
        <extracomment>Name of a fact of a bag: the last day it may be used</extracomment>
        <translation>Verwendbar bis</translation>
    </message>
    <message>
        <source>Opened</source>
        <extracomment>Name of a fact of a bag: the day it was opened</extracomment>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Resealed</source>
        <extracomment>Name of a fact of a bag: the day it was sealed again after it was opened</extracomment>
        <translation>Wieder verschlossen</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>Name of a fact of a bag: where it stands</extracomment>
        <translation>Steht</translation>
    </message>
    <message>
        <source>Label</source>
        <extracomment>Name of a fact of a bag or pail: whether its label was printed</extracomment>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Void because</source>
        <extracomment>Name of a fact of a bag: why it does not count any more</extracomment>
        <translation>Ungültig, weil</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Name of a fact of a bag</extracomment>
        <translation>Notiz</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <extracomment>At the end of a list of codes; %n more of them</extracomment>
        <translation>
            <numerusform>und %n weiterer</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Bags</source>
        <extracomment>Name of a fact of several bags: their codes</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>By weight</source>
        <extracomment>Name of a fact of a bag: how many strips its weight speaks for</extracomment>
        <translation>Nach Gewicht</translation>
    </message>
    <message>
        <source>Hazard</source>
        <extracomment>Name of a fact of a bag: the hazard that its label states</extracomment>
        <translation>Gefahrenhinweise</translation>
    </message>
</context>
<context>
    <name>BagFactsWords</name>
    <message numerus="yes">
        <source>%n hung</source>
        <extracomment>Strips of a bag that went into hives</extracomment>
        <translation>
            <numerusform>%n eingehängt</numerusform>
            <numerusform>%n eingehängt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thrown away</source>
        <extracomment>Strips of a bag that were thrown away</extracomment>
        <translation>
            <numerusform>%n entsorgt</numerusform>
            <numerusform>%n entsorgt</numerusform>
        </translation>
    </message>
    <message>
        <source>counted anew %1</source>
        <extracomment>The count of a bag was put right; %1 a number with its sign</extracomment>
        <translation>nachgezählt %1</translation>
    </message>
</context>
<context>
    <name>BagHows</name>
    <message>
        <source>none by its strength</source>
        <extracomment>The hazard of a liquid so weak that its label states none</extracomment>
        <translation>keine bei diesem Gehalt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>The hazard that a label states; %1 "DANGER", %2 numbers of hazard statements: "H302, H318"</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>BatchItems</name>
    <message numerus="yes">
        <source>%n strips</source>
        <extracomment>How many strips a batch has soaked</extracomment>
        <translation>
            <numerusform>%n Streifen</numerusform>
            <numerusform>%n Streifen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bags</source>
        <extracomment>How many bags of a batch are filled</extracomment>
        <translation>
            <numerusform>%n Beutel</numerusform>
            <numerusform>%n Beutel</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BatchPaper</name>
    <message>
        <source>void: %1</source>
        <extracomment>The state of a batch on its sheet; %1 the reason</extracomment>
        <translation>ungültig: %1</translation>
    </message>
    <message>
        <source>closed %1</source>
        <extracomment>The state of a batch on its sheet; %1 day and time</extracomment>
        <translation>abgeschlossen %1</translation>
    </message>
    <message>
        <source>open</source>
        <extracomment>The state of a batch on its sheet</extracomment>
        <translation>offen</translation>
    </message>
    <message>
        <source>Tank</source>
        <extracomment>On the batch sheet</extracomment>
        <translation>Tank</translation>
    </message>
    <message>
        <source>Kind of strip</source>
        <extracomment>On the batch sheet</extracomment>
        <translation>Streifenart</translation>
    </message>
    <message>
        <source>Strength wanted</source>
        <extracomment>On the batch sheet</extracomment>
        <translation>Gewünschter Gehalt</translation>
    </message>
    <message>
        <source>Strength weighed in</source>
        <extracomment>On the batch sheet: not weighed in yet</extracomment>
        <translation>Eingewogener Gehalt</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>All together</source>
        <extracomment>On the batch sheet: the whole mass</extracomment>
        <translation>Alles zusammen</translation>
    </message>
    <message>
        <source>Mixed</source>
        <extracomment>On the batch sheet: when it was weighed in</extracomment>
        <translation>Gemischt</translation>
    </message>
    <message>
        <source>Tank kept under</source>
        <extracomment>On the batch sheet: the highest temperature allowed</extracomment>
        <translation>Tank bleibt unter</translation>
    </message>
    <message>
        <source>Seen clear</source>
        <extracomment>On the batch sheet: when the liquid was clear</extracomment>
        <translation>Klar gesehen</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>On the batch sheet</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>batch sheet %1</source>
        <extracomment>The name of a file; %1 the code of a batch</extracomment>
        <translation>Ansatzblatt %1</translation>
    </message>
</context>
<context>
    <name>BatchParts</name>
    <message>
        <source>yes</source>
        <extracomment>An answer on a sheet</extracomment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Mix</source>
        <extracomment>A part of the batch sheet</extracomment>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>Column of a batch sheet: what went in</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <source>Planned</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Weighed</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Pail %1, whole</source>
        <extracomment>A whole pail in a mix; %1 its code</extracomment>
        <translation>Eimer %1, ganz</translation>
    </message>
    <message>
        <source>Readings of the tank</source>
        <extracomment>A part of the batch sheet</extracomment>
        <translation>Ablesungen am Tank</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>Column of a batch sheet: day and time</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Probe</source>
        <extracomment>Column of a batch sheet: the temperature of the liquid</extracomment>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>Dial</source>
        <extracomment>Column of a batch sheet: the thermostat</extracomment>
        <translation>Regler</translation>
    </message>
    <message>
        <source>Room</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Jacket water</source>
        <extracomment>Column of a batch sheet: water in the tank's jacket</extracomment>
        <translation>Mantelwasser</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>over the ceiling</source>
        <extracomment>A reading over the ceiling, on a batch sheet</extracomment>
        <translation>über der Höchsttemperatur</translation>
    </message>
    <message>
        <source>Stirs</source>
        <extracomment>A part of the batch sheet</extracomment>
        <translation>Rühren</translation>
    </message>
    <message>
        <source>Minutes</source>
        <extracomment>Column of a batch sheet: how long it was stirred</extracomment>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Clear</source>
        <extracomment>Column of a batch sheet: whether the liquid was clear</extracomment>
        <translation>Klar</translation>
    </message>
    <message>
        <source>Outlet poured back</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Auslauf zurückgegossen</translation>
    </message>
    <message>
        <source>Soak</source>
        <extracomment>A part of the batch sheet</extracomment>
        <translation>Tränken</translation>
    </message>
    <message>
        <source>Bin</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Flooded</source>
        <extracomment>Column of a batch sheet: day and time</extracomment>
        <translation>Geflutet</translation>
    </message>
    <message>
        <source>Taken out</source>
        <extracomment>Column of a batch sheet: day and time</extracomment>
        <translation>Herausgenommen</translation>
    </message>
    <message>
        <source>Weighings</source>
        <extracomment>A part of the batch sheet</extracomment>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>Together</source>
        <extracomment>Column of a batch sheet: weight of all strips on the scale</extracomment>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Each</source>
        <extracomment>Column of a batch sheet: mean weight</extracomment>
        <translation>Je Stück</translation>
    </message>
    <message>
        <source>Acid a strip</source>
        <extracomment>Column of a batch sheet: acid in a strip</extracomment>
        <translation>Säure je Streifen</translation>
    </message>
    <message>
        <source>Corrected</source>
        <extracomment>Column of a batch sheet: the first writing said something else</extracomment>
        <translation>Berichtigt</translation>
    </message>
    <message>
        <source>Bags</source>
        <extracomment>A part of the batch sheet</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Bag</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Contents</source>
        <extracomment>Column of a batch sheet: weight of what is in a bag</extracomment>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Sealed</source>
        <extracomment>Column of a batch sheet: a day</extracomment>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Rests until</source>
        <extracomment>Column of a batch sheet: a day</extracomment>
        <translation>Ruht bis</translation>
    </message>
    <message>
        <source>Use by</source>
        <extracomment>Column of a batch sheet: a day</extracomment>
        <translation>Verwendbar bis</translation>
    </message>
    <message>
        <source>Where every kilogram went</source>
        <extracomment>A part of the batch sheet</extracomment>
        <translation>Wo jedes Kilogramm blieb</translation>
    </message>
    <message>
        <source>Where it went</source>
        <extracomment>Column of a batch sheet: what became of the liquid</extracomment>
        <translation>Wo es blieb</translation>
    </message>
    <message>
        <source>Mass</source>
        <extracomment>Column of a batch sheet</extracomment>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Went in</source>
        <extracomment>A line of a balance</extracomment>
        <translation>Hineingegeben</translation>
    </message>
    <message>
        <source>Taken up by bagged strips</source>
        <extracomment>A line of a balance</extracomment>
        <translation>Von abgepackten Streifen aufgenommen</translation>
    </message>
    <message>
        <source>Free in the bags</source>
        <extracomment>A line of a balance: liquid that lies free in bags</extracomment>
        <translation>Frei in den Beuteln</translation>
    </message>
    <message>
        <source>Pail %1</source>
        <translation>Eimer %1</translation>
    </message>
    <message>
        <source>Pail %1, gone into %2</source>
        <translation>Eimer %1, verbraucht in %2</translation>
    </message>
    <message>
        <source>Named losses</source>
        <extracomment>A line of a balance</extracomment>
        <translation>Benannte Verluste</translation>
    </message>
    <message>
        <source>Unexplained</source>
        <extracomment>A line of a balance: what nothing accounts for</extracomment>
        <translation>Ungeklärt</translation>
    </message>
</context>
<context>
    <name>ColumnWords</name>
    <message>
        <source>strips</source>
        <extracomment>What was corrected: number of strips.</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>strips packed</source>
        <extracomment>What was corrected: strips put into a bag.</extracomment>
        <translation>eingepackte Streifen</translation>
    </message>
    <message>
        <source>day hung</source>
        <extracomment>What was corrected: day strips were hung.</extracomment>
        <translation>Tag des Einhängens</translation>
    </message>
    <message>
        <source>day pulled</source>
        <extracomment>What was corrected: day strips came out.</extracomment>
        <translation>Tag des Herausnehmens</translation>
    </message>
    <message>
        <source>strips pulled</source>
        <extracomment>What was corrected: strips that came out.</extracomment>
        <translation>herausgenommene Streifen</translation>
    </message>
    <message>
        <source>strips missing</source>
        <extracomment>What was corrected: strips not found.</extracomment>
        <translation>fehlende Streifen</translation>
    </message>
    <message>
        <source>weight together</source>
        <extracomment>What was corrected: weight of all strips on the scale.</extracomment>
        <translation>Gewicht zusammen</translation>
    </message>
    <message>
        <source>weight of one strip</source>
        <extracomment>What was corrected: mean weight of a strip.
----------
What was corrected.</extracomment>
        <translation>Gewicht eines Streifens</translation>
    </message>
    <message>
        <source>net weight</source>
        <extracomment>What was corrected: weight of a bag's content.</extracomment>
        <translation>Nettogewicht</translation>
    </message>
    <message>
        <source>mass</source>
        <extracomment>What was corrected: a mass.</extracomment>
        <translation>Masse</translation>
    </message>
    <message>
        <source>acid in it</source>
        <extracomment>What was corrected: acid in a mix.</extracomment>
        <translation>Säure darin</translation>
    </message>
    <message>
        <source>day sealed</source>
        <extracomment>What was corrected: day a bag was sealed.</extracomment>
        <translation>Tag des Verschließens</translation>
    </message>
    <message>
        <source>rest until</source>
        <extracomment>What was corrected.</extracomment>
        <translation>ruht bis</translation>
    </message>
    <message>
        <source>use by</source>
        <extracomment>What was corrected.</extracomment>
        <translation>verwendbar bis</translation>
    </message>
    <message>
        <source>pull from</source>
        <extracomment>What was corrected: first day of the pull window.</extracomment>
        <translation>herausnehmen ab</translation>
    </message>
    <message>
        <source>pull by</source>
        <extracomment>What was corrected: last day of the pull window.</extracomment>
        <translation>herausnehmen bis</translation>
    </message>
    <message>
        <source>acid a strip</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Säure je Streifen</translation>
    </message>
    <message>
        <source>strength</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Gehalt</translation>
    </message>
    <message>
        <source>probe</source>
        <extracomment>What was corrected: probe in the tank.</extracomment>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>dial</source>
        <extracomment>What was corrected: thermostat dial.</extracomment>
        <translation>Regler</translation>
    </message>
    <message>
        <source>room</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>mites</source>
        <extracomment>What was corrected: number of mites.</extracomment>
        <translation>Milben</translation>
    </message>
    <message>
        <source>bees</source>
        <extracomment>What was corrected: number of bees.</extracomment>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>hour</source>
        <extracomment>What was corrected: hour at which it was done.</extracomment>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>start</source>
        <extracomment>What was corrected: hour at which a soak began.</extracomment>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>end</source>
        <extracomment>What was corrected: hour at which a soak ended.</extracomment>
        <translation>Ende</translation>
    </message>
    <message>
        <source>closed</source>
        <extracomment>What was corrected: hour at which a batch was closed.</extracomment>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>unexplained</source>
        <extracomment>What was corrected: unexplained loss of a batch.</extracomment>
        <translation>ungeklärt</translation>
    </message>
    <message>
        <source>where it stands</source>
        <extracomment>What was corrected: where a bag stands.</extracomment>
        <translation>wo er steht</translation>
    </message>
    <message>
        <source>opened</source>
        <extracomment>What was corrected.</extracomment>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>resealed</source>
        <extracomment>What was corrected.</extracomment>
        <translation>wieder verschlossen</translation>
    </message>
    <message>
        <source>label</source>
        <extracomment>What was corrected: state of a label (printed or not).</extracomment>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>note</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>name</source>
        <extracomment>What was corrected: name of a record.</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>amount</source>
        <extracomment>What was corrected: amount of a delivery.</extracomment>
        <translation>Menge</translation>
    </message>
    <message>
        <source>assay</source>
        <extracomment>What was corrected: purity of acid.</extracomment>
        <translation>Reinheit</translation>
    </message>
    <message>
        <source>made void</source>
        <extracomment>What was corrected.</extracomment>
        <translation>für ungültig erklärt</translation>
    </message>
    <message>
        <source>taken up by strips</source>
        <extracomment>What was corrected: what bagged strips took up.</extracomment>
        <translation>von Streifen aufgenommen</translation>
    </message>
    <message>
        <source>minutes of dripping</source>
        <extracomment>What was corrected: how long strips dripped before they were weighed.</extracomment>
        <translation>Minuten Abtropfen</translation>
    </message>
    <message>
        <source>mass planned</source>
        <extracomment>What was corrected.</extracomment>
        <translation>geplante Masse</translation>
    </message>
    <message>
        <source>delivery</source>
        <extracomment>What was corrected: which delivery something came from.</extracomment>
        <translation>Lieferung</translation>
    </message>
    <message>
        <source>delivery of bags</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Lieferung der Beutel</translation>
    </message>
    <message>
        <source>pail</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Eimer</translation>
    </message>
    <message>
        <source>bin</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>tank</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tank</translation>
    </message>
    <message>
        <source>kind of strip</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Streifenart</translation>
    </message>
    <message>
        <source>soak</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tränkung</translation>
    </message>
    <message>
        <source>batch</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>bag</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>hive</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>yard</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>round</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Runde</translation>
    </message>
    <message>
        <source>pour</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Abfüllung</translation>
    </message>
    <message>
        <source>weight of a dry strip</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Gewicht eines trockenen Streifens</translation>
    </message>
    <message>
        <source>target weight</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Zielgewicht</translation>
    </message>
    <message>
        <source>may be off by</source>
        <extracomment>What was corrected: how far a strip's weight may be off its target.</extracomment>
        <translation>darf abweichen um</translation>
    </message>
    <message>
        <source>liquid let in</source>
        <extracomment>What was corrected: liquid let into a bin.</extracomment>
        <translation>eingelassene Flüssigkeit</translation>
    </message>
    <message>
        <source>days of rest</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tage Ruhe</translation>
    </message>
    <message>
        <source>months to use by</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Monate bis zum Verbrauch</translation>
    </message>
    <message>
        <source>day planned</source>
        <extracomment>What was corrected.</extracomment>
        <translation>geplanter Tag</translation>
    </message>
    <message>
        <source>hour mixed</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Stunde des Mischens</translation>
    </message>
    <message>
        <source>ceiling of the tank</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Obergrenze des Tanks</translation>
    </message>
    <message>
        <source>loss that is usual</source>
        <extracomment>What was corrected.</extracomment>
        <translation>üblicher Verlust</translation>
    </message>
    <message>
        <source>material</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Material</translation>
    </message>
    <message>
        <source>from whom</source>
        <extracomment>What was corrected.</extracomment>
        <translation>von wem</translation>
    </message>
    <message>
        <source>day received</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag der Lieferung</translation>
    </message>
    <message>
        <source>one container holds</source>
        <extracomment>What was corrected.</extracomment>
        <translation>ein Gebinde fasst</translation>
    </message>
    <message>
        <source>how the content is counted</source>
        <extracomment>What was corrected.</extracomment>
        <translation>wie der Gehalt gezählt wird</translation>
    </message>
    <message>
        <source>best before</source>
        <extracomment>What was corrected.</extracomment>
        <translation>mindestens haltbar bis</translation>
    </message>
    <message>
        <source>cost</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>day finished</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag, an dem es aufgebraucht war</translation>
    </message>
    <message>
        <source>minutes of stirring</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Minuten Rühren</translation>
    </message>
    <message>
        <source>clear</source>
        <extracomment>What was corrected: whether the liquid was clear.</extracomment>
        <translation>klar</translation>
    </message>
    <message>
        <source>outlet poured back</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Auslauf zurückgegossen</translation>
    </message>
    <message>
        <source>water in the jacket seen</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Wasser im Mantel gesehen</translation>
    </message>
    <message>
        <source>oldest liquid of</source>
        <extracomment>What was corrected.</extracomment>
        <translation>älteste Flüssigkeit vom</translation>
    </message>
    <message>
        <source>times warmed</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Male erwärmt</translation>
    </message>
    <message>
        <source>day used in part</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag der teilweisen Verwendung</translation>
    </message>
    <message>
        <source>day discarded</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag der Entsorgung</translation>
    </message>
    <message>
        <source>why discarded</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Grund der Entsorgung</translation>
    </message>
    <message>
        <source>poured warm and clear</source>
        <extracomment>What was corrected.</extracomment>
        <translation>warm und klar abgefüllt</translation>
    </message>
    <message>
        <source>bin scraped</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Wanne ausgekratzt</translation>
    </message>
    <message>
        <source>kind</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Art</translation>
    </message>
    <message>
        <source>day its label was set aside</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag, an dem das Etikett vorgemerkt wurde</translation>
    </message>
    <message>
        <source>supers on</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Honigräume aufgesetzt</translation>
    </message>
    <message>
        <source>why past the limit</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Grund für die Verwendung nach der Frist</translation>
    </message>
    <message>
        <source>days without harvest</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tage ohne Ernte</translation>
    </message>
    <message>
        <source>hung by</source>
        <extracomment>What was corrected.</extracomment>
        <translation>eingehängt von</translation>
    </message>
    <message>
        <source>pulled by</source>
        <extracomment>What was corrected.</extracomment>
        <translation>herausgenommen von</translation>
    </message>
    <message>
        <source>where it is</source>
        <extracomment>What was corrected.</extracomment>
        <translation>wo er liegt</translation>
    </message>
    <message>
        <source>hives</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Völker</translation>
    </message>
    <message>
        <source>brood boxes</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Bruträume</translation>
    </message>
    <message>
        <source>frames of bees</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Waben mit Bienen</translation>
    </message>
    <message>
        <source>state</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>day of the state</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag des Zustands</translation>
    </message>
    <message>
        <source>left untreated</source>
        <extracomment>What was corrected.</extracomment>
        <translation>unbehandelt gelassen</translation>
    </message>
    <message>
        <source>day</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>days</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tage</translation>
    </message>
    <message>
        <source>counted by</source>
        <extracomment>What was corrected.</extracomment>
        <translation>gezählt von</translation>
    </message>
    <message>
        <source>reason</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>day closed</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag des Abschlusses</translation>
    </message>
    <message>
        <source>day visited</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Tag des Besuchs</translation>
    </message>
    <message>
        <source>holds</source>
        <extracomment>What was corrected.</extracomment>
        <translation>fasst</translation>
    </message>
    <message>
        <source>holds strips</source>
        <extracomment>What was corrected.</extracomment>
        <translation>fasst Streifen</translation>
    </message>
    <message>
        <source>made by</source>
        <extracomment>What was corrected.</extracomment>
        <translation>hergestellt von</translation>
    </message>
    <message>
        <source>registration number</source>
        <extracomment>What was corrected.</extracomment>
        <translation>Registriernummer</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>--write-example needs the name of a new file.</source>
        <extracomment>A command line sentence; --write-example stays as it is.</extracomment>
        <translation>--write-example braucht den Namen einer neuen Datei.</translation>
    </message>
    <message>
        <source>--tour needs the name of a folder for its pictures.</source>
        <extracomment>A command line sentence; --tour stays as it is.</extracomment>
        <translation>--tour braucht den Namen eines Ordners für die Bilder.</translation>
    </message>
    <message>
        <source>--on needs a day written like 2026-10-03.</source>
        <extracomment>A command line sentence; --on stays as it is.</extracomment>
        <translation>--on braucht einen Tag in der Form 2026-10-03.</translation>
    </message>
    <message>
        <source>Soakbook does not know "%1"; --help lists what it knows.</source>
        <extracomment>A command line sentence; %1 is what was typed, --help stays as it is.</extracomment>
        <translation>Soakbook kennt „%1“ nicht; --help zeigt, was es kennt.</translation>
    </message>
    <message>
        <source>One workbook at a time: "%1" is one too many.</source>
        <extracomment>A command line sentence; %1 is the file name that is too much.</extracomment>
        <translation>Nur ein Arbeitsbuch auf einmal: „%1“ ist eines zu viel.</translation>
    </message>
    <message>
        <source>Soakbook, the workbook for home-made varroa strips

soakbook                       opens the workbook used last, or the welcome
soakbook FILE                  opens that workbook
soakbook --example             opens a copy of the worked example
soakbook --write-example FILE  writes the worked example to a new file
soakbook --tour FOLDER [FILE]  saves pictures of every page to a folder, of the
                               example or of that workbook, and changes nothing
soakbook --verify FILE         checks that workbook, a line for each check; ends
                               with 0 sound, 1 damaged, 2 cannot be read
soakbook --safe-copy FILE TO   copies that workbook, checked, to the new file TO;
                               ends with 0 copied, 1 damaged, 2 not read or written
soakbook --on DATE             takes that day (2026-10-03) for today
soakbook --help                this text
soakbook --version             the version
</source>
        <extracomment>Shown by "soakbook --help". The words that begin with -- and SOAKBOOK stay as they are; FILE, TO, FOLDER and DATE are translated alike in both columns.</extracomment>
        <translation>Soakbook, das Arbeitsbuch für selbst gemachte Varroa-Streifen

soakbook                       öffnet das zuletzt benutzte Arbeitsbuch oder die Begrüßung
soakbook DATEI                 öffnet dieses Arbeitsbuch
soakbook --example             öffnet eine Kopie des durchgerechneten Beispiels
soakbook --write-example DATEI schreibt das Beispiel in eine neue Datei
soakbook --tour ORDNER [DATEI] speichert Bilder jeder Seite in einen Ordner, vom
                               Beispiel oder von diesem Arbeitsbuch, und ändert nichts
soakbook --verify DATEI        prüft dieses Arbeitsbuch, eine Zeile je Prüfung; endet
                               mit 0 heil, 1 beschädigt, 2 nicht lesbar
soakbook --safe-copy DATEI NACH
                               kopiert dieses Arbeitsbuch geprüft in die neue Datei NACH;
                               endet mit 0 kopiert, 1 beschädigt, 2 nicht gelesen oder geschrieben
soakbook --on TAG              nimmt diesen Tag (2026-10-03) als heute
soakbook --help                dieser Text
soakbook --version             die Version
</translation>
    </message>
    <message>
        <source>--verify needs the name of a workbook to check.</source>
        <extracomment>A command line sentence; --verify stays as it is.</extracomment>
        <translation>--verify braucht den Namen eines Arbeitsbuchs, das zu prüfen ist.</translation>
    </message>
    <message>
        <source>--safe-copy needs the name of a workbook and the name of a new file for its copy.</source>
        <extracomment>A command line sentence; --safe-copy stays as it is.</extracomment>
        <translation>--safe-copy braucht den Namen eines Arbeitsbuchs und den Namen einer neuen Datei für die Kopie.</translation>
    </message>
</context>
<context>
    <name>CopyAges</name>
    <message>
        <source>just now</source>
        <extracomment>How long ago a copy was made: within the last minute</extracomment>
        <translation>gerade eben</translation>
    </message>
    <message numerus="yes">
        <source>%n min ago</source>
        <extracomment>How long ago a copy was made, in minutes</extracomment>
        <translation>
            <numerusform>vor %n min</numerusform>
            <numerusform>vor %n min</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h ago</source>
        <extracomment>How long ago a copy was made, in hours</extracomment>
        <translation>
            <numerusform>vor %n h</numerusform>
            <numerusform>vor %n h</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CopyWords</name>
    <message>
        <source>No safe copy yet</source>
        <extracomment>In the status line</extracomment>
        <translation>Noch keine Sicherungskopie</translation>
    </message>
    <message>
        <source>Worked example</source>
        <extracomment>In the status line, in place of a workbook's name</extracomment>
        <translation>Durchgerechnetes Beispiel</translation>
    </message>
    <message>
        <source>nothing you enter here is kept</source>
        <extracomment>In the status line while the worked example is open</extracomment>
        <translation>was hier eingegeben wird, bleibt nicht erhalten</translation>
    </message>
    <message numerus="yes">
        <source>Safe copy %1, %n entry(ies) since</source>
        <extracomment>In the status line; %1 such as "14 min ago", %n the number of entries since</extracomment>
        <translation>
            <numerusform>Sicherungskopie %1, seitdem %n Eintrag</numerusform>
            <numerusform>Sicherungskopie %1, seitdem %n Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>Safe copy %1, checked</source>
        <extracomment>In the status line; %1 such as "14 min ago". Checked: the copy was read back in full, and is good.</extracomment>
        <translation>Sicherungskopie %1, geprüft</translation>
    </message>
    <message>
        <source>No safe copy could be made</source>
        <extracomment>In the status line; Set-up says why</extracomment>
        <translation>Keine Sicherungskopie möglich</translation>
    </message>
</context>
<context>
    <name>CorrectBagForm</name>
    <message>
        <source>Correct bag %1</source>
        <extracomment>Title of a form; %1 the code of a bag</extracomment>
        <translation>Beutel %1 berichtigen</translation>
    </message>
    <message>
        <source>What was wrong when the bag was filled. A label that was printed is wrong then and is printed again; rest and limit follow the day it was sealed.</source>
        <extracomment>Under the title of a form</extracomment>
        <translation>Was beim Füllen des Beutels falsch war. Ein schon gedrucktes Etikett stimmt dann nicht mehr und wird neu gedruckt; Ruhe und Frist richten sich nach dem Tag des Verschließens.</translation>
    </message>
    <message>
        <source>Strips packed</source>
        <extracomment>A field's label: strips that were put into a bag; and the unit behind the number</extracomment>
        <translation>Eingepackte Streifen</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Contents weighed</source>
        <extracomment>A field's label: the weight of what is in a bag</extracomment>
        <translation>Inhalt gewogen</translation>
    </message>
    <message>
        <source>Sealed on</source>
        <extracomment>A field's label: the day a bag was sealed</extracomment>
        <translation>Verschlossen am</translation>
    </message>
    <message>
        <source>Correct it</source>
        <extracomment>Filled button of a form that puts an entry right</extracomment>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Make bag %1 void</source>
        <extracomment>Title of a form; %1 the code of a bag</extracomment>
        <translation>Beutel %1 für ungültig erklären</translation>
    </message>
    <message>
        <source>For a burst bag, or one that was entered by mistake. It stays in the list of all bags, counts nowhere any more, and its code is never given out again.</source>
        <translation>Für einen geplatzten Beutel oder einen, der versehentlich eingetragen wurde. Er bleibt in der Liste aller Beutel, zählt nirgends mehr mit, und sein Code wird nie wieder vergeben.</translation>
    </message>
    <message>
        <source>For a spoilt label. Its code is never given out again.</source>
        <translation>Für ein verdorbenes Etikett. Sein Code wird nie wieder vergeben.</translation>
    </message>
    <message>
        <source>Make it void</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
    <message>
        <source>burst</source>
        <extracomment>A usual reason why a bag is made void</extracomment>
        <translation>geplatzt</translation>
    </message>
    <message>
        <source>entered by mistake</source>
        <extracomment>A usual reason why a bag is made void</extracomment>
        <translation>versehentlich eingetragen</translation>
    </message>
    <message>
        <source>label spoilt</source>
        <extracomment>A usual reason why a label is made void</extracomment>
        <translation>Etikett verdorben</translation>
    </message>
</context>
<context>
    <name>Corrections</name>
    <message>
        <source>Correct the strips out of %1</source>
        <extracomment>Title of a form; %1 a hive</extracomment>
        <translation>Streifen aus %1 berichtigen</translation>
    </message>
    <message>
        <source>Correct the strips in %1</source>
        <translation>Streifen in %1 berichtigen</translation>
    </message>
    <message>
        <source>What stood there before stays in the history, and the register shows that it was corrected.</source>
        <extracomment>Under the title of a form</extracomment>
        <translation>Was vorher dort stand, bleibt im Verlauf, und das Behandlungsbuch zeigt, dass es berichtigt wurde.</translation>
    </message>
    <message>
        <source>Pulled</source>
        <extracomment>Field: strips taken out, or put in</extracomment>
        <translation>Herausgenommen</translation>
    </message>
    <message>
        <source>Strips in</source>
        <translation>Streifen hinein</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Missing</source>
        <extracomment>Field: strips that were not found any more</extracomment>
        <translation>Fehlend</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Field</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Berichtigung speichern</translation>
    </message>
    <message>
        <source>Make the count of %1 void</source>
        <extracomment>Title of a form; %1 a hive</extracomment>
        <translation>Zählung von %1 für ungültig erklären</translation>
    </message>
    <message>
        <source>Make the strips in %1 void</source>
        <extracomment>Title of a form; %1 a hive</extracomment>
        <translation>Streifen in %1 für ungültig erklären</translation>
    </message>
    <message>
        <source>The count stays in the story, struck through, and no figure uses it any more.</source>
        <extracomment>Under the title of a form</extracomment>
        <translation>Die Zählung bleibt durchgestrichen in der Geschichte, und kein Wert rechnet mehr mit ihr.</translation>
    </message>
    <message>
        <source>The strips go back into the bag's count, and its pulling goes with them. The register still shows the line, struck through.</source>
        <translation>Die Streifen zählen wieder zum Beutel, und ihr Herausnehmen fällt mit weg. Das Behandlungsbuch zeigt die Zeile weiterhin, durchgestrichen.</translation>
    </message>
    <message>
        <source>Make it void</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
    <message>
        <source>Weigh strips pulled from %1</source>
        <extracomment>Title of a form; %1 a hive</extracomment>
        <translation>Streifen aus %1 wiegen</translation>
    </message>
    <message>
        <source>What is left on strips shows how much of the liquid the bees carried off.</source>
        <extracomment>Under the title of a form</extracomment>
        <translation>Was noch an den Streifen ist, zeigt, wie viel Flüssigkeit die Bienen abgetragen haben.</translation>
    </message>
    <message>
        <source>Strips on the scale</source>
        <extracomment>Field; the word at its right is "strips"</extracomment>
        <translation>Streifen auf der Waage</translation>
    </message>
    <message>
        <source>Weight of all together</source>
        <extracomment>Field: what the strips weigh together</extracomment>
        <translation>Gewicht aller zusammen</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; a strip, of which %2 is left of the liquid.</source>
        <extracomment>What follows from a form; rich text; %1 the mean weight of a strip, %2 what it still holds</extracomment>
        <translation>&lt;b&gt;%1&lt;/b&gt; je Streifen, davon sind %2 von der Flüssigkeit übrig.</translation>
    </message>
    <message>
        <source>Enter the weight</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Gewicht eintragen</translation>
    </message>
</context>
<context>
    <name>CostWords</name>
    <message>
        <source>the acid</source>
        <extracomment>A material whose cost is not known, within a sentence</extracomment>
        <translation>die Säure</translation>
    </message>
    <message>
        <source>the glycerine</source>
        <extracomment>A material whose cost is not known, within a sentence</extracomment>
        <translation>das Glycerin</translation>
    </message>
    <message>
        <source>the dry strips</source>
        <extracomment>A material whose cost is not known, within a sentence</extracomment>
        <translation>die trockenen Streifen</translation>
    </message>
    <message>
        <source>the bags</source>
        <extracomment>A material whose cost is not known, within a sentence</extracomment>
        <translation>die Beutel</translation>
    </message>
    <message>
        <source>the cost of %1</source>
        <translation>die Kosten von %1</translation>
    </message>
    <message>
        <source>which delivery %1 came from</source>
        <extracomment>A material of which no delivery was written down; %1 "the acid"</extracomment>
        <translation>die Lieferung für %1</translation>
    </message>
    <message>
        <source>What a strip costs is not known: missing is %1. A delivery takes its cost in the Store, under Deliveries.</source>
        <extracomment>Why the cost of a strip is not known; %1 what is missing, such as "the cost of GL-1048, which delivery the bags came from"</extracomment>
        <translation>Was ein Streifen kostet, ist nicht bekannt. Es fehlt: %1. Die Kosten einer Lieferung werden im Lager unter „Lieferungen“ eingetragen.</translation>
    </message>
    <message>
        <source>acid %1</source>
        <extracomment>A part of what strips cost; %1 an amount of money</extracomment>
        <translation>Säure %1</translation>
    </message>
    <message>
        <source>glycerine %1</source>
        <extracomment>A part of what strips cost; %1 an amount of money</extracomment>
        <translation>Glycerin %1</translation>
    </message>
    <message>
        <source>from pails %1</source>
        <extracomment>A part of what strips cost: liquid of older batches; %1 an amount of money</extracomment>
        <translation>aus Eimern %1</translation>
    </message>
    <message>
        <source>dry strips %1</source>
        <extracomment>A part of what strips cost; %1 an amount of money</extracomment>
        <translation>trockene Streifen %1</translation>
    </message>
    <message>
        <source>bags %1</source>
        <extracomment>A part of what strips cost; %1 an amount of money</extracomment>
        <translation>Beutel %1</translation>
    </message>
    <message>
        <source>Known: %1</source>
        <extracomment>After a sentence on what is missing; %1 parts such as "acid 31.10 · bags 3.00"</extracomment>
        <translation>Bekannt: %1</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;A strip costs %1&lt;/b&gt;: %2 for %n strips.</source>
        <extracomment>What a strip costs; %1 an amount of money, %2 that of all, %n strips</extracomment>
        <translation>
            <numerusform>&lt;b&gt;Ein Streifen kostet %1&lt;/b&gt;: %2 für %n Streifen.</numerusform>
            <numerusform>&lt;b&gt;Ein Streifen kostet %1&lt;/b&gt;: %2 für %n Streifen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Liquid worth %1 is still in work.</source>
        <extracomment>After what a strip costs, of a batch that is not closed; %1 an amount of money</extracomment>
        <translation>Flüssigkeit im Wert von %1 ist noch in Arbeit.</translation>
    </message>
</context>
<context>
    <name>CountGrid</name>
    <message>
        <source>Hive</source>
        <extracomment>Column</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>Last count</source>
        <extracomment>Column: the last mite count and its day</extracomment>
        <translation>Letzte Zählung</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a day, %2 mites on a hundred bees</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Mites</source>
        <extracomment>Column: mites counted</extracomment>
        <translation>Milben</translation>
    </message>
    <message>
        <source>Bees</source>
        <extracomment>Column: bees in the sample</extracomment>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>Days</source>
        <extracomment>Column: days that the board lay</extracomment>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Rate and 95 % interval</source>
        <extracomment>Column: mites on a hundred bees, or mites a day</extracomment>
        <translation>Befall und 95-%-Bereich</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Column</extracomment>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>CountWords</name>
    <message>
        <source>over %1</source>
        <extracomment>How sure a count by weight is; %1 is 99 %</extracomment>
        <translation>über %1</translation>
    </message>
    <message>
        <source>By weight the count cannot be told until some strips of this kind were weighed one by one.</source>
        <extracomment>Why the strips of a bag cannot be counted by their weight</extracomment>
        <translation>Nach Gewicht lässt sich die Zahl erst sagen, wenn einige Streifen dieser Sorte einzeln gewogen wurden.</translation>
    </message>
    <message>
        <source>%1 as packed, %2 sure.</source>
        <extracomment>A count by weight; %1 a number of strips, %2 how sure: "97 %" or "over 99 %"</extracomment>
        <translation>%1 wie abgepackt, zu %2 sicher.</translation>
    </message>
    <message>
        <source>%1 by weight, not %2: %3 sure. Count again.</source>
        <extracomment>A count by weight; %1 the number of strips, %2 the number packed, %3 how sure: "97 %" or "over 99 %"</extracomment>
        <translation>%1 nach Gewicht, nicht %2: zu %3 sicher. Noch einmal zählen.</translation>
    </message>
    <message>
        <source>Between %1 and %2 by weight: cannot tell.</source>
        <extracomment>A count by weight; %1 the least and %2 the most strips it can be</extracomment>
        <translation>Zwischen %1 und %2 nach Gewicht: nicht sicher zu sagen.</translation>
    </message>
    <message>
        <source>Perhaps %1 by weight, only %2 sure: cannot tell.</source>
        <extracomment>A count by weight; %1 the likeliest number of strips, %2 how sure: "72 %"</extracomment>
        <translation>Vielleicht %1 nach Gewicht, nur zu %2 sicher: nicht sicher zu sagen.</translation>
    </message>
</context>
<context>
    <name>DayForm</name>
    <message>
        <source>today</source>
        <extracomment>Stands in an empty field for a day</extracomment>
        <translation>heute</translation>
    </message>
</context>
<context>
    <name>DialWords</name>
    <message numerus="yes">
        <source>Dial less probe in this tank once it is warm: %1, from %n readings.</source>
        <extracomment>How a tank's dial stands to its probe; %1 a difference of temperatures with its sign, %n readings</extracomment>
        <translation>
            <numerusform>Regler minus Fühler in diesem Tank, sobald er warm ist: %1, aus %n Ablesung.</numerusform>
            <numerusform>Regler minus Fühler in diesem Tank, sobald er warm ist: %1, aus %n Ablesungen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Dial less probe in this tank once it is warm: %1 to %2, from %n readings.</source>
        <extracomment>How a tank's dial stands to its probe; %1 and %2 differences of temperatures with their signs, %n readings</extracomment>
        <translation>
            <numerusform>Regler minus Fühler in diesem Tank, sobald er warm ist: %1 bis %2, aus %n Ablesung.</numerusform>
            <numerusform>Regler minus Fühler in diesem Tank, sobald er warm ist: %1 bis %2, aus %n Ablesungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not higher, because of the ceiling of %1.</source>
        <extracomment>Why the dial is not set higher; %1 a temperature</extracomment>
        <translation>Nicht höher, wegen der Höchsttemperatur von %1.</translation>
    </message>
    <message>
        <source>No further than one step beyond the dials seen so far.</source>
        <extracomment>Why the dial is set no further away</extracomment>
        <translation>Nicht weiter als einen Schritt über die bisherigen Reglerstellungen hinaus.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Set the dial to %1&lt;/b&gt; for %2 in the tank.</source>
        <extracomment>The dial to set; %1 the dial, %2 the temperature wanted in the tank</extracomment>
        <translation>&lt;b&gt;Den Regler auf %1 stellen&lt;/b&gt; für %2 im Tank.</translation>
    </message>
    <message>
        <source>Expect %1 to %2 (95 %).</source>
        <translation>Zu erwarten: %1 bis %2 (95 %).</translation>
    </message>
    <message>
        <source>Expect about %1, going by a single offset.</source>
        <translation>Zu erwarten: etwa %1, nach einer einzigen Abweichung.</translation>
    </message>
    <message>
        <source>Expect %1 to %2: so few readings give a range, not a line.</source>
        <extracomment>What to expect of the dial that is advised; %1 and %2 temperatures</extracomment>
        <translation>Zu erwarten: %1 bis %2; so wenige Ablesungen ergeben einen Bereich, keine Gerade.</translation>
    </message>
    <message>
        <source>Once the tank is warm, read dial and probe together: then the dial to set stands here.</source>
        <extracomment>Why no dial is named for a tank</extracomment>
        <translation>Sobald der Tank warm ist, Regler und Fühler zusammen ablesen: Dann steht hier, wie der Regler zu stellen ist.</translation>
    </message>
    <message>
        <source>The temperatures wanted in the tank stand in Set-up; with them the dial follows.</source>
        <extracomment>Why no dial is named for a tank</extracomment>
        <translation>Die gewünschten Temperaturen im Tank stehen in der Einrichtung; aus ihnen folgt die Reglerstellung.</translation>
    </message>
    <message>
        <source>The temperature wanted is above the ceiling, so no dial is named.</source>
        <extracomment>Why no dial is named for a tank</extracomment>
        <translation>Die gewünschte Temperatur liegt über der Höchsttemperatur, darum wird keine Reglerstellung genannt.</translation>
    </message>
    <message>
        <source>No dial near those seen so far is sure to keep under the ceiling: set it low, and read often.</source>
        <extracomment>Why no dial is named for a tank</extracomment>
        <translation>Keine Reglerstellung nahe den bisherigen bleibt sicher unter der Höchsttemperatur: niedrig einstellen und oft ablesen.</translation>
    </message>
</context>
<context>
    <name>DiscardForm</name>
    <message>
        <source>past their limit</source>
        <extracomment>A usual reason why strips are thrown away</extracomment>
        <translation>Frist abgelaufen</translation>
    </message>
    <message>
        <source>mouldy</source>
        <extracomment>A usual reason why strips are thrown away</extracomment>
        <translation>schimmelig</translation>
    </message>
    <message>
        <source>torn or dropped</source>
        <extracomment>A usual reason why strips are thrown away</extracomment>
        <translation>zerrissen oder heruntergefallen</translation>
    </message>
    <message>
        <source>bag not tight</source>
        <extracomment>A usual reason why strips are thrown away: the bag let air in</extracomment>
        <translation>Beutel undicht</translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s) are left in it.</source>
        <extracomment>Under the title of a form; %n strips are left in a bag</extracomment>
        <translation>
            <numerusform>%n Streifen ist noch darin.</numerusform>
            <numerusform>%n Streifen sind noch darin.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n strip(s) of %1.</source>
        <extracomment>Under the title of a form; %1 the codes of bags, %n their strips</extracomment>
        <translation>
            <numerusform>Der %n Streifen von %1.</numerusform>
            <numerusform>Alle %n Streifen von %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing stays: the bag is &lt;b&gt;gone&lt;/b&gt; from then on.</source>
        <extracomment>What follows from a number of strips thrown away</extracomment>
        <translation>Nichts bleibt: Der Beutel ist von da an &lt;b&gt;weg&lt;/b&gt;.</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) stay in the bag.</source>
        <extracomment>What follows from a number of strips thrown away; %n strips</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen bleibt im Beutel.</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen bleiben im Beutel.</numerusform>
        </translation>
    </message>
    <message>
        <source>Discard strips of bag %1</source>
        <extracomment>Title of a form; %1 the code of a bag</extracomment>
        <translation>Streifen aus Beutel %1 entsorgen</translation>
    </message>
    <message numerus="yes">
        <source>Discard %n bag(s)</source>
        <extracomment>Title of a form; %n bags</extracomment>
        <translation>
            <numerusform>%n Beutel entsorgen</numerusform>
            <numerusform>%n Beutel entsorgen</numerusform>
        </translation>
    </message>
    <message>
        <source>Strips thrown away</source>
        <extracomment>A field's label: how many strips are thrown away; and the unit behind the number</extracomment>
        <translation>Entsorgte Streifen</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>On</source>
        <extracomment>A field's label: the day on which it was done</extracomment>
        <translation>Am</translation>
    </message>
    <message>
        <source>today</source>
        <extracomment>Stands in an empty field for a day</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>It stands in the bag's story.</source>
        <extracomment>Help under the reason why strips are thrown away</extracomment>
        <translation>Steht dann in der Geschichte des Beutels.</translation>
    </message>
    <message>
        <source>Discard</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Entsorgen</translation>
    </message>
</context>
<context>
    <name>Due</name>
    <message>
        <source>due %1</source>
        <extracomment>When something in the shed was or is due; %1 is a day and an hour.</extracomment>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>last %1</source>
        <extracomment>Since when; %1 is a day and an hour.</extracomment>
        <translation>zuletzt %1</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <extracomment>%1 is the code of a batch.</extracomment>
        <translation>Ansatz %1</translation>
    </message>
    <message>
        <source>Cool</source>
        <extracomment>A verb that begins a row of things to do: cool the tank down.</extracomment>
        <translation>Abkühlen</translation>
    </message>
    <message>
        <source>%1 in the tank: heat off, air the room, do not lean over it</source>
        <extracomment>%1 is a temperature over the limit.</extracomment>
        <translation>%1 im Tank: Heizung aus, Raum lüften, nicht darüberbeugen</translation>
    </message>
    <message>
        <source>Read again</source>
        <extracomment>A button.</extracomment>
        <translation>Neu ablesen</translation>
    </message>
    <message>
        <source>Read</source>
        <extracomment>A verb that begins a row: read the temperature. And its button.</extracomment>
        <translation>Ablesen</translation>
    </message>
    <message>
        <source>Read the tank</source>
        <translation>Tank ablesen</translation>
    </message>
    <message>
        <source>Stir</source>
        <extracomment>A verb that begins a row: stir the tank. And its button.</extracomment>
        <translation>Rühren</translation>
    </message>
    <message>
        <source>Log a stir</source>
        <translation>Rühren eintragen</translation>
    </message>
    <message>
        <source>Mix</source>
        <extracomment>A verb that begins a row, what is to be done, and its button.</extracomment>
        <translation>Mischen</translation>
    </message>
    <message>
        <source>planned: weigh the acid and the glycerine in</source>
        <translation>geplant: Säure und Glycerin einwiegen</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <extracomment>The button of that row.</extracomment>
        <translation>Einwiegen</translation>
    </message>
    <message>
        <source>Weigh</source>
        <extracomment>A verb that begins a row: weigh strips; %1 is the name of a bin. And its button.</extracomment>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>strips in %1</source>
        <translation>Streifen in %1</translation>
    </message>
    <message>
        <source>Weigh strips</source>
        <translation>Streifen wiegen</translation>
    </message>
    <message>
        <source>Bag</source>
        <extracomment>A verb that begins a row: put strips into bags.</extracomment>
        <translation>Abpacken</translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s) soaked and not bagged</source>
        <extracomment>%n strips wait for their bags.</extracomment>
        <translation>
            <numerusform>%n Streifen getränkt und nicht abgepackt</numerusform>
            <numerusform>%n Streifen getränkt und nicht abgepackt</numerusform>
        </translation>
    </message>
    <message>
        <source>Fill bags</source>
        <extracomment>A button.</extracomment>
        <translation>Beutel füllen</translation>
    </message>
    <message>
        <source>Fill</source>
        <extracomment>A verb that begins a row: fill bags whose labels are printed.</extracomment>
        <translation>Füllen</translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) without a bag</source>
        <extracomment>%n labels were given out before their bags were filled.</extracomment>
        <translation>
            <numerusform>%n Etikett ohne Beutel</numerusform>
            <numerusform>%n Etiketten ohne Beutel</numerusform>
        </translation>
    </message>
    <message>
        <source>Fill them</source>
        <extracomment>A button.</extracomment>
        <translation>Füllen</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>A verb that begins a row: finish a batch.</extracomment>
        <translation>Abschließen</translation>
    </message>
    <message>
        <source>all strips are bagged; leftovers are not settled</source>
        <extracomment>What is open in a batch.</extracomment>
        <translation>alle Streifen sind abgepackt; die Reste sind noch offen</translation>
    </message>
    <message>
        <source>Settle leftovers</source>
        <extracomment>A button.</extracomment>
        <translation>Reste erfassen</translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s)</source>
        <extracomment>%n bags of strips.</extracomment>
        <translation>
            <numerusform>%n Beutel</numerusform>
            <numerusform>%n Beutel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s)</source>
        <extracomment>%n strips.</extracomment>
        <translation>
            <numerusform>%n Streifen</numerusform>
            <numerusform>%n Streifen</numerusform>
        </translation>
    </message>
    <message>
        <source>limit between %1 and %2</source>
        <extracomment>%1 and %2 are days.</extracomment>
        <translation>Frist zwischen %1 und %2</translation>
    </message>
    <message>
        <source>limit %1</source>
        <extracomment>%1 is a day.</extracomment>
        <translation>Frist %1</translation>
    </message>
    <message>
        <source>Use</source>
        <extracomment>A verb that begins a row: use strips before their limit. And its button.
----------
A row of things to do: use opened bags; and its button.
----------
A row of things to do: use leftover pails.</extracomment>
        <translation>Aufbrauchen</translation>
    </message>
    <message>
        <source>Show the bags</source>
        <extracomment>The button of that row.</extracomment>
        <translation>Beutel zeigen</translation>
    </message>
    <message numerus="yes">
        <source>rest ends %1: %n strip(s) become ready</source>
        <extracomment>%1 is a day; %n strips become ready.</extracomment>
        <translation>
            <numerusform>Ruhe endet %1: %n Streifen wird bereit</numerusform>
            <numerusform>Ruhe endet %1: %n Streifen werden bereit</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of batch %2</source>
        <extracomment>%1 is a number of bags, %2 the code of a batch.</extracomment>
        <translation>%1 aus Ansatz %2</translation>
    </message>
    <message>
        <source>Shelve</source>
        <extracomment>A verb that begins a row: put rested bags on their shelf. And its button.</extracomment>
        <translation>Einlagern</translation>
    </message>
    <message>
        <source>Move them</source>
        <translation>Umstellen</translation>
    </message>
    <message>
        <source>past their limit since %1</source>
        <extracomment>%1 is a day.</extracomment>
        <translation>Frist abgelaufen seit %1</translation>
    </message>
    <message>
        <source>Discard</source>
        <extracomment>A verb that begins a row: throw away. And its button.</extracomment>
        <translation>Entsorgen</translation>
    </message>
    <message>
        <source>opened longer than you allow</source>
        <translation>länger geöffnet, als Sie erlauben</translation>
    </message>
    <message numerus="yes">
        <source>%n pail(s)</source>
        <extracomment>%n pails of leftover liquid.</extracomment>
        <translation>
            <numerusform>%n Eimer</numerusform>
            <numerusform>%n Eimer</numerusform>
        </translation>
    </message>
    <message>
        <source>the oldest waits since %1</source>
        <extracomment>%1 is a day.</extracomment>
        <translation>der älteste wartet seit %1</translation>
    </message>
    <message>
        <source>Show the pails</source>
        <extracomment>A button.</extracomment>
        <translation>Eimer zeigen</translation>
    </message>
    <message>
        <source>Print</source>
        <extracomment>A row of things to do: print labels again.</extracomment>
        <translation>Drucken</translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) again</source>
        <extracomment>%n labels.</extracomment>
        <translation>
            <numerusform>%n Etikett noch einmal</numerusform>
            <numerusform>%n Etiketten noch einmal</numerusform>
        </translation>
    </message>
    <message>
        <source>something on them was corrected</source>
        <extracomment>Why a label is to be printed again.</extracomment>
        <translation>etwas darauf wurde berichtigt</translation>
    </message>
    <message>
        <source>Print labels</source>
        <extracomment>A button.</extracomment>
        <translation>Etiketten drucken</translation>
    </message>
    <message>
        <source>Say</source>
        <extracomment>A row of things to do: say a figure in Set-up.</extracomment>
        <translation>Angeben</translation>
    </message>
    <message>
        <source>not said yet, so Soakbook cannot warn you by it</source>
        <extracomment>Why a figure of Set-up is asked for.</extracomment>
        <translation>noch nicht angegeben, daher kann Soakbook Sie nicht warnen</translation>
    </message>
    <message>
        <source>Set-up</source>
        <extracomment>A button.</extracomment>
        <translation>Einrichtung</translation>
    </message>
    <message>
        <source>Copy</source>
        <extracomment>A row of things to do: make a safe copy.</extracomment>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>the workbook</source>
        <extracomment>What is to be copied.</extracomment>
        <translation>das Arbeitsbuch</translation>
    </message>
    <message numerus="yes">
        <source>%n entries since the last safe copy</source>
        <extracomment>%n entries were made after the newest safe copy.</extracomment>
        <translation>
            <numerusform>%n Eintrag seit der letzten Sicherungskopie</numerusform>
            <numerusform>%n Einträge seit der letzten Sicherungskopie</numerusform>
        </translation>
    </message>
    <message>
        <source>Copy now</source>
        <extracomment>A button.</extracomment>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>Now</source>
        <extracomment>A group of things to do.</extracomment>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Today</source>
        <extracomment>A group of things to do.</extracomment>
        <translation>Heute</translation>
    </message>
    <message>
        <source>This week</source>
        <extracomment>A group of things to do.</extracomment>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>Later</source>
        <extracomment>A group of things to do.</extracomment>
        <translation>Später</translation>
    </message>
    <message numerus="yes">
        <source>%n hive(s), %1</source>
        <extracomment>%n hives; %1 is the name of a yard.</extracomment>
        <translation>
            <numerusform>%n Volk, %1</numerusform>
            <numerusform>%n Völker, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>window %1 to %2</source>
        <extracomment>The days between which strips come out; %1 and %2 are days.</extracomment>
        <translation>Zeitraum %1 bis %2</translation>
    </message>
    <message>
        <source>Pull</source>
        <extracomment>A verb that begins a row: take strips out of hives.</extracomment>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Strips out</source>
        <extracomment>A button: enter that strips came out.</extracomment>
        <translation>Streifen heraus</translation>
    </message>
    <message>
        <source>strips in since %1, latest day was %2</source>
        <translation>Streifen hinein %1, letzter Tag war %2</translation>
    </message>
    <message>
        <source>latest day was %1</source>
        <extracomment>%1 is a day.</extracomment>
        <translation>letzter Tag war %1</translation>
    </message>
    <message>
        <source>Pull list</source>
        <extracomment>A button: the list of hives to visit. The button of that row: the list of hives to visit.</extracomment>
        <translation>Herausnahmeliste</translation>
    </message>
    <message>
        <source>dead, and strips still hang there</source>
        <extracomment>What is wrong: strips hang in hives that died.</extracomment>
        <translation>tot, und es hängen noch Streifen darin</translation>
    </message>
    <message>
        <source>Count</source>
        <extracomment>A verb that begins a row: count mites.</extracomment>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>mites; strips came out %1</source>
        <extracomment>%1 is a day.</extracomment>
        <translation>Milben; Streifen heraus %1</translation>
    </message>
    <message>
        <source>Enter counts</source>
        <extracomment>A button.</extracomment>
        <translation>Zählung eintragen</translation>
    </message>
    <message>
        <source>Hang</source>
        <extracomment>A verb that begins a row: hang strips in a yard.</extracomment>
        <translation>Einhängen</translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s), planned %1</source>
        <extracomment>%n strips; %1 is the day planned.</extracomment>
        <translation>
            <numerusform>%n Streifen, geplant %1</numerusform>
            <numerusform>%n Streifen, geplant %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Strips in</source>
        <extracomment>A button: enter that strips went in.</extracomment>
        <translation>Streifen hinein</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>A verb that begins a row: start a batch. And a button.</extracomment>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>a batch for %1</source>
        <translation>einen Ansatz für %1</translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s) short on %1</source>
        <extracomment>%n strips are short; %1 is the day planned.</extracomment>
        <translation>
            <numerusform>%n Streifen zu wenig für %1</numerusform>
            <numerusform>%n Streifen zu wenig für %1</numerusform>
        </translation>
    </message>
    <message>
        <source>New batch</source>
        <translation>Neuer Ansatz</translation>
    </message>
    <message>
        <source>Choose</source>
        <extracomment>A row of things to do: choose a second place for safe copies.</extracomment>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>a second place for safe copies</source>
        <extracomment>What is to be chosen.</extracomment>
        <translation>einen zweiten Ort für Sicherungskopien</translation>
    </message>
    <message>
        <source>they all lie on this computer</source>
        <extracomment>Why it is to be chosen.</extracomment>
        <translation>alle liegen auf diesem Rechner</translation>
    </message>
    <message>
        <source>Choose, or say none</source>
        <extracomment>A button.</extracomment>
        <translation>Wählen oder verzichten</translation>
    </message>
    <message>
        <source>Connect</source>
        <extracomment>A row of things to do: put the stick in on which the second safe copies lie.</extracomment>
        <translation>Anschließen</translation>
    </message>
    <message>
        <source>no safe copy was put there since %1</source>
        <extracomment>Why a stick is to be put in; %1 is a day.</extracomment>
        <translation>seit %1 kam keine Sicherungskopie dorthin</translation>
    </message>
    <message>
        <source>Safe copies</source>
        <extracomment>A button.</extracomment>
        <translation>Sicherungskopien</translation>
    </message>
    <message>
        <source>typed %1, not entered</source>
        <extracomment>Why a form that was begun stands among the things to do; %1 is a day and a time</extracomment>
        <translation>getippt %1, nicht eingetragen</translation>
    </message>
    <message>
        <source>Go on</source>
        <extracomment>A verb that begins a row: go on with a form that was begun. And its button.</extracomment>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <source>Open the form</source>
        <translation>Formular öffnen</translation>
    </message>
    <message>
        <source>Look at</source>
        <extracomment>A verb that begins a row: look at changes that another program made.</extracomment>
        <translation>Ansehen</translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) made outside Soakbook</source>
        <extracomment>%n changes that another program made in the workbook.</extracomment>
        <translation>
            <numerusform>%n Änderung außerhalb von Soakbook</numerusform>
            <numerusform>%n Änderungen außerhalb von Soakbook</numerusform>
        </translation>
    </message>
    <message>
        <source>the newest of %1</source>
        <extracomment>%1 is a day and a time: that of the newest change another program made.</extracomment>
        <translation>die neueste vom %1</translation>
    </message>
    <message>
        <source>Show them</source>
        <extracomment>A button: shows the changes another program made.</extracomment>
        <translation>Zeigen</translation>
    </message>
</context>
<context>
    <name>Figure</name>
    <message>
        <source>the strength of the liquid</source>
        <extracomment>A figure of Set-up, within a sentence: Set-up must know ...</extracomment>
        <translation>das Ziel für den Gehalt der Flüssigkeit</translation>
    </message>
    <message>
        <source>the ceiling of the tank</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Höchsttemperatur des Tanks</translation>
    </message>
    <message>
        <source>how pails go into a mix</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Art, wie Eimer in eine Mischung kommen</translation>
    </message>
    <message>
        <source>the months within which strips are used</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Monate, in denen Streifen verwendet werden</translation>
    </message>
    <message>
        <source>the lowest temperature wanted in the tank</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die niedrigste gewünschte Temperatur im Tank</translation>
    </message>
    <message>
        <source>the highest temperature wanted in the tank</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die höchste gewünschte Temperatur im Tank</translation>
    </message>
    <message>
        <source>the longest time between two readings of the probe</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die längste Zeit zwischen zwei Ablesungen des Fühlers</translation>
    </message>
    <message>
        <source>the time from one stir to the next</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Zeit von einem Rühren zum nächsten</translation>
    </message>
    <message>
        <source>how long to go on stirring</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Dauer des Rührens</translation>
    </message>
    <message>
        <source>the lowest room temperature for soaking</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die niedrigste Raumtemperatur zum Tränken</translation>
    </message>
    <message>
        <source>the hours until the first weighing</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Stunden bis zur ersten Wägung</translation>
    </message>
    <message>
        <source>the hours from one weighing to the next</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Stunden von einer Wägung zur nächsten</translation>
    </message>
    <message>
        <source>the number of strips in one weighing</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Zahl der Streifen je Wägung</translation>
    </message>
    <message>
        <source>the days of rest after sealing</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Ruhetage nach dem Verschließen</translation>
    </message>
    <message>
        <source>what to do with strips that still rest</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Regel für Streifen, die noch ruhen</translation>
    </message>
    <message>
        <source>the days of warning before a bag reaches its limit</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Vorwarntage, bevor ein Beutel seine Frist erreicht</translation>
    </message>
    <message>
        <source>the days within which an opened bag is used</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Tage, in denen ein geöffneter Beutel aufgebraucht wird</translation>
    </message>
    <message>
        <source>the days that a pail may wait</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Tage, die ein Eimer warten darf</translation>
    </message>
    <message>
        <source>the most liquid that may be unaccounted for</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die größte Flüssigkeitsmenge, die ungeklärt bleiben darf</translation>
    </message>
    <message>
        <source>the days after which strips may come out</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Tage, nach denen Streifen heraus dürfen</translation>
    </message>
    <message>
        <source>the days by which strips must be out</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Tage, bis zu denen Streifen heraus sein müssen</translation>
    </message>
    <message>
        <source>the days of warning before strips must be out</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Vorwarntage, bevor Streifen heraus sein müssen</translation>
    </message>
    <message>
        <source>the withdrawal days</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Wartezeit in Tagen</translation>
    </message>
    <message>
        <source>the days from pulling to the mite count</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Tage vom Herausnehmen bis zur Milbenzählung</translation>
    </message>
    <message>
        <source>the mite threshold</source>
        <extracomment>A figure of Set-up, within a sentence</extracomment>
        <translation>die Milbenschwelle</translation>
    </message>
</context>
<context>
    <name>FigureFields</name>
    <message>
        <source>months</source>
        <extracomment>Unit behind a number.</extracomment>
        <translation>Monate</translation>
    </message>
    <message>
        <source>days</source>
        <extracomment>Unit behind a number.</extracomment>
        <translation>Tage</translation>
    </message>
    <message>
        <source>hours</source>
        <extracomment>Unit behind a number.</extracomment>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>minutes</source>
        <extracomment>Unit behind a number.</extracomment>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>strips</source>
        <extracomment>Unit behind a number.</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>each pail whole</source>
        <extracomment>A choice for leftover pails: each goes into a mix whole, by itself.</extracomment>
        <translation>jeder Eimer ganz</translation>
    </message>
    <message>
        <source>all pails of one pour together</source>
        <extracomment>A choice for leftover pails: stricter, all pails poured at one time go in together.</extracomment>
        <translation>alle Eimer eines Abgusses zusammen</translation>
    </message>
    <message>
        <source>not said</source>
        <extracomment>A choice: nothing said.</extracomment>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>asked about</source>
        <extracomment>A choice for strips that still rest.</extracomment>
        <translation>nachgefragt</translation>
    </message>
    <message>
        <source>refused</source>
        <extracomment>A choice for strips that still rest.</extracomment>
        <translation>abgelehnt</translation>
    </message>
</context>
<context>
    <name>FigureTexts</name>
    <message>
        <source>Strength of the liquid</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Gehalt der Flüssigkeit</translation>
    </message>
    <message>
        <source>Oxalic acid, counted as dihydrate, by mass of the finished liquid.</source>
        <translation>Oxalsäure, als Dihydrat gerechnet, nach Masse der fertigen Flüssigkeit.</translation>
    </message>
    <message>
        <source>Tank never above</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Tank nie über</translation>
    </message>
    <message>
        <source>Above it the acid starts to break down and gives off gas. A reading over it is said at once.</source>
        <translation>Darüber beginnt die Säure zu zerfallen und gibt Gas ab. Eine Ablesung darüber wird sofort gemeldet.</translation>
    </message>
    <message>
        <source>Leftovers go into a mix</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Reste kommen in eine Mischung</translation>
    </message>
    <message>
        <source>Acid settles in a pail: the upper half may be almost pure glycerine. A part of a pail is never taken.</source>
        <translation>Säure setzt sich im Eimer ab: Die obere Hälfte kann fast reines Glycerin sein. Nie wird nur ein Teil eines Eimers genommen.</translation>
    </message>
    <message>
        <source>Use strips within</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Streifen verwenden innerhalb von</translation>
    </message>
    <message>
        <source>Counted from the day a bag was sealed.</source>
        <translation>Gerechnet ab dem Tag, an dem ein Beutel verschlossen wurde.</translation>
    </message>
    <message>
        <source>Wanted in the tank, from</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Gewünscht im Tank, von</translation>
    </message>
    <message>
        <source>Where you want the probe while acid dissolves.</source>
        <translation>Wo der Fühler stehen soll, während sich Säure löst.</translation>
    </message>
    <message>
        <source>Wanted in the tank, to</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Gewünscht im Tank, bis</translation>
    </message>
    <message>
        <source>Stays under the ceiling.</source>
        <translation>Bleibt unter der Höchsttemperatur.</translation>
    </message>
    <message>
        <source>Read the tank every</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Tank ablesen alle</translation>
    </message>
    <message>
        <source>Due says when no reading was made for longer.</source>
        <translation>„Anstehend“ meldet, wenn länger nicht abgelesen wurde.</translation>
    </message>
    <message>
        <source>Stir every</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Rühren alle</translation>
    </message>
    <message>
        <source>While the liquid is not yet clear.</source>
        <translation>Solange die Flüssigkeit noch nicht klar ist.</translation>
    </message>
    <message>
        <source>Stirring takes about</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Rühren dauert etwa</translation>
    </message>
    <message>
        <source>All stirs together, until the liquid is clear.</source>
        <translation>Alles Rühren zusammen, bis die Flüssigkeit klar ist.</translation>
    </message>
    <message>
        <source>Room at least</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Raum mindestens</translation>
    </message>
    <message>
        <source>A colder room soaks slowly, and the form says so.</source>
        <translation>In einem kälteren Raum tränkt es langsam, und das Formular sagt es.</translation>
    </message>
    <message>
        <source>First weighing after</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Erste Wägung nach</translation>
    </message>
    <message>
        <source>From the start of the soak; Due reminds you.</source>
        <translation>Ab Beginn des Tränkens; „Anstehend“ erinnert Sie.</translation>
    </message>
    <message>
        <source>Then weigh every</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Danach wiegen alle</translation>
    </message>
    <message>
        <source>Until the strips are on target.</source>
        <translation>Bis die Streifen am Ziel sind.</translation>
    </message>
    <message>
        <source>Strips in one weighing</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Streifen je Wägung</translation>
    </message>
    <message>
        <source>Stands in the form already.</source>
        <translation>Steht schon im Formular.</translation>
    </message>
    <message>
        <source>Bags rest for</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Beutel ruhen</translation>
    </message>
    <message>
        <source>From sealing, while strips take up what is still wet in the bag.</source>
        <translation>Ab dem Verschließen, während die Streifen aufnehmen, was im Beutel noch nass ist.</translation>
    </message>
    <message>
        <source>Strips that still rest are</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Streifen, die noch ruhen, werden</translation>
    </message>
    <message>
        <source>When somebody wants to hang them.</source>
        <translation>Wenn jemand sie einhängen will.</translation>
    </message>
    <message>
        <source>Warn before the limit</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Warnen vor der Frist</translation>
    </message>
    <message>
        <source>Bags that near their use-by day are marked and said in Due.</source>
        <translation>Beutel kurz vor ihrer Frist werden gekennzeichnet und unter „Anstehend“ gemeldet.</translation>
    </message>
    <message>
        <source>Use an opened bag within</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Geöffneten Beutel aufbrauchen in</translation>
    </message>
    <message>
        <source>From the day it was opened.</source>
        <translation>Ab dem Tag, an dem er geöffnet wurde.</translation>
    </message>
    <message>
        <source>A pail waits at most</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Ein Eimer wartet höchstens</translation>
    </message>
    <message>
        <source>Longer is said in Due.</source>
        <translation>Länger wird unter „Anstehend“ gemeldet.</translation>
    </message>
    <message>
        <source>Unexplained loss up to</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Ungeklärter Verlust bis</translation>
    </message>
    <message>
        <source>Of what went into a batch; more is asked about when it is closed.</source>
        <translation>Von dem, was in einen Ansatz kam; bei mehr wird beim Abschließen nachgefragt.</translation>
    </message>
    <message>
        <source>Strips come out from day</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Streifen heraus ab Tag</translation>
    </message>
    <message>
        <source>Days after they were hung: the window opens.</source>
        <translation>Tage nach dem Einhängen: ab hier darf herausgenommen werden.</translation>
    </message>
    <message>
        <source>Strips are out by day</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Streifen heraus bis Tag</translation>
    </message>
    <message>
        <source>Days after they were hung: the latest day.</source>
        <translation>Tage nach dem Einhängen: der letzte Tag.</translation>
    </message>
    <message>
        <source>Warn before the latest day</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Warnen vor dem letzten Tag</translation>
    </message>
    <message>
        <source>Yards near it are marked.</source>
        <translation>Stände kurz davor werden gekennzeichnet.</translation>
    </message>
    <message>
        <source>No harvest after pulling for</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Keine Ernte nach dem Herausnehmen</translation>
    </message>
    <message>
        <source>By the label, your vet and local law; 0 only if they say so.</source>
        <translation>Nach Etikett des Mittels, Ihrem Tierarzt und dem Recht vor Ort; 0 nur, wenn es dort so steht.</translation>
    </message>
    <message>
        <source>Count mites after pulling</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Milben zählen nach dem Herausnehmen</translation>
    </message>
    <message>
        <source>Due reminds you so many days after the strips came out.</source>
        <translation>„Anstehend“ erinnert Sie so viele Tage, nachdem die Streifen heraus sind.</translation>
    </message>
    <message>
        <source>Too many mites above</source>
        <extracomment>A figure of Set-up and what it is for.</extracomment>
        <translation>Zu viele Milben über</translation>
    </message>
    <message>
        <source>Mites for each hundred bees; name where you have it from.</source>
        <translation>Milben je hundert Bienen; nennen Sie, woher Sie den Wert haben.</translation>
    </message>
</context>
<context>
    <name>FindWords</name>
    <message>
        <source>batch</source>
        <extracomment>What was found</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>bag</source>
        <extracomment>What was found; %1 a batch</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>bag of batch %1</source>
        <translation>Beutel aus Ansatz %1</translation>
    </message>
    <message>
        <source>pail</source>
        <extracomment>What was found; %1 a batch</extracomment>
        <translation>Eimer</translation>
    </message>
    <message>
        <source>pail of batch %1</source>
        <translation>Eimer aus Ansatz %1</translation>
    </message>
    <message>
        <source>hive</source>
        <extracomment>What was found; %1 a yard</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>hive in %1</source>
        <translation>Volk in %1</translation>
    </message>
    <message>
        <source>yard</source>
        <extracomment>What was found</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>round</source>
        <extracomment>What was found: a round of treatment</extracomment>
        <translation>Runde</translation>
    </message>
    <message>
        <source>lot</source>
        <extracomment>What was found: a lot of material</extracomment>
        <translation>Charge</translation>
    </message>
    <message>
        <source>given out %1, undone</source>
        <extracomment>What was found: a code whose entry was undone; %1 a day and time</extracomment>
        <translation>vergeben %1, rückgängig gemacht</translation>
    </message>
    <message>
        <source>given out and undone</source>
        <translation>vergeben und rückgängig gemacht</translation>
    </message>
    <message>
        <source>The last character does not fit this code: a slip of the pen. Read the label again.</source>
        <extracomment>In the list under Find</extracomment>
        <translation>Das letzte Zeichen passt nicht zu diesem Code: ein Schreibfehler. Lesen Sie das Etikett noch einmal.</translation>
    </message>
    <message>
        <source>This code was never given out in this workbook.</source>
        <extracomment>In the list under Find</extracomment>
        <translation>Dieser Code wurde in diesem Arbeitsbuch nie vergeben.</translation>
    </message>
    <message>
        <source>Nothing has this code or name.</source>
        <extracomment>In the list under Find</extracomment>
        <translation>Nichts hat diesen Code oder Namen.</translation>
    </message>
</context>
<context>
    <name>Hazard</name>
    <message>
        <source>DANGER</source>
        <extracomment>signal word of the UN GHS, in capitals</extracomment>
        <translation>GEFAHR</translation>
    </message>
    <message>
        <source>WARNING</source>
        <extracomment>signal word of the UN GHS, in capitals</extracomment>
        <translation>ACHTUNG</translation>
    </message>
    <message>
        <source>Harmful if swallowed.</source>
        <extracomment>UN GHS H302</extracomment>
        <translation>Gesundheitsschädlich bei Verschlucken.</translation>
    </message>
    <message>
        <source>Harmful in contact with skin.</source>
        <extracomment>UN GHS H312</extracomment>
        <translation>Gesundheitsschädlich bei Hautkontakt.</translation>
    </message>
    <message>
        <source>Causes serious eye damage.</source>
        <extracomment>UN GHS H318</extracomment>
        <translation>Verursacht schwere Augenschäden.</translation>
    </message>
    <message>
        <source>Causes serious eye irritation.</source>
        <extracomment>UN GHS H319</extracomment>
        <translation>Verursacht schwere Augenreizung.</translation>
    </message>
    <message>
        <source>Avoid breathing dust.</source>
        <extracomment>UN GHS P261, for a powder</extracomment>
        <translation>Einatmen von Staub vermeiden.</translation>
    </message>
    <message>
        <source>Wash hands thoroughly after handling.</source>
        <extracomment>UN GHS P264</extracomment>
        <translation>Nach Gebrauch Hände gründlich waschen.</translation>
    </message>
    <message>
        <source>Do not eat, drink or smoke when using this product.</source>
        <extracomment>UN GHS P270</extracomment>
        <translation>Bei Gebrauch nicht essen, trinken oder rauchen.</translation>
    </message>
    <message>
        <source>Wear acid-proof gloves and eye protection.</source>
        <extracomment>UN GHS P280, made fit for acid</extracomment>
        <translation>Säurefeste Schutzhandschuhe und Augenschutz tragen.</translation>
    </message>
    <message>
        <source>Call a poison center or doctor if you feel unwell.</source>
        <extracomment>UN GHS P301 + P312, after "If swallowed:"
----------
UN GHS P312</extracomment>
        <translation>Bei Unwohlsein GIFTINFORMATIONSZENTRUM oder Arzt anrufen.</translation>
    </message>
    <message>
        <source>Get medical help.</source>
        <extracomment>UN GHS P317</extracomment>
        <translation>Ärztliche Hilfe hinzuziehen.</translation>
    </message>
    <message>
        <source>Rinse mouth.</source>
        <extracomment>UN GHS P330</extracomment>
        <translation>Mund ausspülen.</translation>
    </message>
    <message>
        <source>Wash with plenty of water.</source>
        <extracomment>UN GHS P302 + P352, after "If on skin:"</extracomment>
        <translation>Mit viel Wasser waschen.</translation>
    </message>
    <message>
        <source>Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.</source>
        <extracomment>UN GHS P305 + P351 + P338, after "If in eyes:"</extracomment>
        <translation>Einige Minuten lang behutsam mit Wasser spülen. Eventuell vorhandene Kontaktlinsen nach Möglichkeit entfernen. Weiter spülen.</translation>
    </message>
    <message>
        <source>Immediately rinse with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.</source>
        <extracomment>UN GHS P305 + P354 + P338, after "If in eyes:"</extracomment>
        <translation>Sofort einige Minuten lang mit Wasser spülen. Eventuell vorhandene Kontaktlinsen nach Möglichkeit entfernen. Weiter spülen.</translation>
    </message>
    <message>
        <source>Immediately call a poison center or doctor.</source>
        <extracomment>UN GHS P310</extracomment>
        <translation>Sofort GIFTINFORMATIONSZENTRUM oder Arzt anrufen.</translation>
    </message>
    <message>
        <source>If eye irritation persists: Get medical advice.</source>
        <extracomment>UN GHS P337 + P313</extracomment>
        <translation>Bei anhaltender Augenreizung: Ärztlichen Rat einholen.</translation>
    </message>
    <message>
        <source>If eye irritation persists: Get medical help.</source>
        <extracomment>UN GHS P337 + P317</extracomment>
        <translation>Bei anhaltender Augenreizung: Ärztliche Hilfe hinzuziehen.</translation>
    </message>
    <message>
        <source>Take off contaminated clothing and wash it before reuse.</source>
        <extracomment>UN GHS P362 + P364</extracomment>
        <translation>Kontaminierte Kleidung ausziehen und vor erneutem Tragen waschen.</translation>
    </message>
    <message>
        <source>Store locked up.</source>
        <extracomment>UN GHS P405</extracomment>
        <translation>Unter Verschluss aufbewahren.</translation>
    </message>
    <message>
        <source>Dispose of contents and container by local rules.</source>
        <extracomment>UN GHS P501, made fit for any country</extracomment>
        <translation>Inhalt und Behälter nach den örtlichen Vorschriften entsorgen.</translation>
    </message>
    <message>
        <source>Keep airtight, away from children, food and animals.</source>
        <extracomment>on a hazard label, after the standard's precautions: where to keep it</extracomment>
        <translation>Luftdicht aufbewahren, fern von Kindern, Lebensmitteln und Tieren.</translation>
    </message>
    <message>
        <source>If in eyes:</source>
        <extracomment>bold lead on a hazard label, before what to do</extracomment>
        <translation>BEI KONTAKT MIT DEN AUGEN:</translation>
    </message>
    <message>
        <source>If on skin:</source>
        <extracomment>bold lead on a hazard label, before what to do</extracomment>
        <translation>BEI BERÜHRUNG MIT DER HAUT:</translation>
    </message>
    <message>
        <source>If swallowed:</source>
        <extracomment>bold lead on a hazard label, before what to do</extracomment>
        <translation>BEI VERSCHLUCKEN:</translation>
    </message>
</context>
<context>
    <name>History</name>
    <message>
        <source>History</source>
        <extracomment>In the menu of a row: what it said before, who changed it, when and why
----------
Quiet button: what a record said before, who changed it, when and why</extracomment>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>What it said before, who changed it, when and why (Ctrl+H)</source>
        <extracomment>Tool tip of the button "History"; Ctrl+H is a key</extracomment>
        <translation>Was vorher dastand, wer es wann und warum geändert hat (Strg+H)</translation>
    </message>
</context>
<context>
    <name>HistoryDialog</name>
    <message>
        <source>When</source>
        <extracomment>Header of a column: the day and hour of a change</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <extracomment>Header of a column: who made a change</extracomment>
        <translation>Wer</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>Header of a column: what was changed</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <source>Why</source>
        <extracomment>Header of a column: the reason of a change</extracomment>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Newest first. Nothing that stood here is ever wiped.</source>
        <extracomment>Explains a table of changes</extracomment>
        <translation>Das Neueste zuerst. Nichts, was hier stand, wird je gelöscht.</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>Button that closes a window</extracomment>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>outside Soakbook</source>
        <extracomment>In place of a name: another program changed the workbook</extracomment>
        <translation>außerhalb von Soakbook</translation>
    </message>
    <message>
        <source>Record</source>
        <extracomment>Header of a column: the record that was changed, by its code or name</extracomment>
        <translation>Betrifft</translation>
    </message>
    <message>
        <source>History: %1</source>
        <extracomment>Title of a window; %1 what it is about, such as "Bag S7K" or "Batch B12"</extracomment>
        <translation>Verlauf: %1</translation>
    </message>
</context>
<context>
    <name>HiveForm</name>
    <message>
        <source>The hive %1</source>
        <extracomment>Title of a form; %1 a hive</extracomment>
        <translation>Das Volk %1</translation>
    </message>
    <message>
        <source>Save the hive</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Volk speichern</translation>
    </message>
    <message>
        <source>Name or number</source>
        <extracomment>Field: what a hive is called</extracomment>
        <translation>Name oder Nummer</translation>
    </message>
    <message>
        <source>Hives in the row</source>
        <extracomment>Field: how many hives make a group</extracomment>
        <translation>Völker in der Reihe</translation>
    </message>
    <message>
        <source>Brood boxes</source>
        <extracomment>Field</extracomment>
        <translation>Brutzargen</translation>
    </message>
    <message>
        <source>Frames of bees</source>
        <extracomment>Field: how many frames are covered with bees</extracomment>
        <translation>Besetzte Waben</translation>
    </message>
    <message>
        <source>Honey supers on?</source>
        <extracomment>Field: whether honey supers are on</extracomment>
        <translation>Honigräume auf?</translation>
    </message>
    <message>
        <source>Left untreated on purpose?</source>
        <extracomment>Field</extracomment>
        <translation>Absichtlich unbehandelt?</translation>
    </message>
    <message>
        <source>To compare with: rounds plan no strips for it.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Zum Vergleich: Runden planen dafür keine Streifen ein.</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>Field: alive, dead or gone</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Found so on</source>
        <extracomment>Field: the day a hive was found dead or gone</extracomment>
        <translation>So vorgefunden am</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Field</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Move hives to another yard</source>
        <extracomment>Title of a form</extracomment>
        <translation>Völker an einen anderen Stand stellen</translation>
    </message>
    <message>
        <source>%1 move with the strips that hang in them. The register still says where each strip was hung.</source>
        <extracomment>Under the title of a form; %1 names of hives</extracomment>
        <translation>%1 wandern mit den Streifen, die darin hängen. Das Behandlungsbuch nennt weiterhin, wo jeder Streifen eingehängt wurde.</translation>
    </message>
    <message>
        <source>To the yard</source>
        <extracomment>Field: the yard hives go to</extracomment>
        <translation>An den Stand</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Field</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Move the hives</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Völker umstellen</translation>
    </message>
</context>
<context>
    <name>HiveGrid</name>
    <message>
        <source>on</source>
        <extracomment>Honey supers are on a hive</extracomment>
        <translation>auf</translation>
    </message>
    <message>
        <source>off</source>
        <translation>ab</translation>
    </message>
    <message>
        <source>Boxes</source>
        <extracomment>Column: brood boxes</extracomment>
        <translation>Zargen</translation>
    </message>
    <message>
        <source>Frames</source>
        <extracomment>Column: frames covered with bees</extracomment>
        <translation>Waben</translation>
    </message>
    <message>
        <source>Frames of bees; type over them at once.</source>
        <extracomment>Tool tip of the column Frames</extracomment>
        <translation>Besetzte Waben; einfach überschreiben.</translation>
    </message>
    <message>
        <source>Supers</source>
        <extracomment>Column: honey supers</extracomment>
        <translation>Honigräume</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>Column: strips that hang</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Bags</source>
        <extracomment>Column: the bags that strips come from</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Since</source>
        <extracomment>Column: the day strips were hung</extracomment>
        <translation>Seit</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Column: 1 on the day strips were hung</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Pull window</source>
        <extracomment>Column: the first and the last day to pull</extracomment>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Strips hang here whose pull windows do not meet: pull each in its own time.</source>
        <extracomment>Strips of two visits hang with days to pull that have none in common</extracomment>
        <translation>Hier hängen Streifen, deren Zeiten zum Herausnehmen sich nicht überschneiden: jeden zu seiner Zeit herausnehmen.</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>Column: how the strips hang</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>%1, windows clash</source>
        <extracomment>%1 how strips hang; their pull windows have no day in common</extracomment>
        <translation>%1, Zeiten passen nicht zusammen</translation>
    </message>
    <message>
        <source>Last count</source>
        <extracomment>Column: the last mite count</extracomment>
        <translation>Letzte Zählung</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <extracomment>A mite count: %1 a day, %2 a way to count, %3 "9 on 300 bees"</extracomment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Yard</source>
        <extracomment>Column</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Hive</source>
        <extracomment>Column</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>left untreated on purpose</source>
        <extracomment>A hive that is kept without strips to compare with</extracomment>
        <translation>absichtlich unbehandelt</translation>
    </message>
</context>
<context>
    <name>How</name>
    <message>
        <source>over %1</source>
        <extracomment>A share that is all but 100 %; %1 is a share</extracomment>
        <translation>über %1</translation>
    </message>
    <message>
        <source>%1 h</source>
        <extracomment>A time span; %1 hours</extracomment>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <extracomment>A time span; %1 hours, %2 minutes</extracomment>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <extracomment>Under a formula; %1 where it comes from, such as a journal</extracomment>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Use by</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Verwendbar bis</translation>
    </message>
    <message>
        <source>Use by = day sealed + months, on the same day of the month or its last day.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Verwendbar bis = Tag des Verschließens + Monate, am gleichen Tag des Monats oder an dessen letztem Tag.</translation>
    </message>
    <message>
        <source>W3C XML Schema Part 2, appendix E; the months are common practice or the label’s</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>W3C XML Schema Part 2, Anhang E; die Monate sind übliche Praxis oder vom Etikett des Mittels</translation>
    </message>
    <message>
        <source>%1 + %2 (months) = %3</source>
        <extracomment>A sum with its numbers: %1 the day sealed, %2 months, %3 a day</extracomment>
        <translation>%1 + %2 (Monate) = %3</translation>
    </message>
    <message>
        <source>Rest</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Ruhezeit</translation>
    </message>
    <message>
        <source>Rest until = day sealed + days of rest.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Ruht bis = Tag des Verschließens + Tage Ruhezeit.</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>%1 + %2 (days) = %3</source>
        <extracomment>A sum with its numbers: %1 the day sealed, %2 days, %3 a day</extracomment>
        <translation>%1 + %2 (Tage) = %3</translation>
    </message>
    <message>
        <source>Where the liquid went</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Wo die Flüssigkeit blieb</translation>
    </message>
    <message>
        <source>Unexplained = went in − taken up by bagged strips − free in the bags − in pails − named losses.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Ungeklärt = hineingegeben − von abgepackten Streifen aufgenommen − frei in den Beuteln − in Eimern − benannte Verluste.</translation>
    </message>
    <message>
        <source>conservation of mass; the limit is your own</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Erhaltung der Masse; die Grenze ist Ihre eigene</translation>
    </message>
    <message>
        <source>%1 − %2 − %3 − %4 − %5 = %6</source>
        <extracomment>A sum with its numbers: %1 went in, %2 in strips, %3 free in bags, %4 in pails, %5 losses, %6 unexplained</extracomment>
        <translation>%1 − %2 − %3 − %4 − %5 = %6</translation>
    </message>
    <message>
        <source>Limit: %7 of what went in</source>
        <extracomment>A sum with its numbers: %7 a share</extracomment>
        <translation>Grenze: %7 des Hineingegebenen</translation>
    </message>
    <message>
        <source>Cost of a strip</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Kosten eines Streifens</translation>
    </message>
    <message>
        <source>Cost of a strip = (acid + glycerine + carried by old liquid + dry strips + bags) ÷ strips. The cost of the liquid is shared over bags and pails by mass.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Kosten eines Streifens = (Säure + Glycerin + aus alter Flüssigkeit + trockene Streifen + Beutel) ÷ Streifen. Die Kosten der Flüssigkeit werden nach Masse auf Beutel und Eimer verteilt.</translation>
    </message>
    <message>
        <source>(%1 + %2 + %3 + %4 + %5) ÷ %6 = %7</source>
        <extracomment>A sum with its numbers: %1 acid, %2 glycerine, %3 old liquid, %4 dry strips, %5 bags, %6 strips, %7 cost</extracomment>
        <translation>(%1 + %2 + %3 + %4 + %5) ÷ %6 = %7</translation>
    </message>
    <message>
        <source>Strips in bags: %6; a cost behind them is not known yet</source>
        <extracomment>A sum with its numbers: %6 strips</extracomment>
        <translation>Streifen in Beuteln: %6; Kosten dahinter sind noch nicht bekannt</translation>
    </message>
    <message>
        <source>Limits from batch to batch</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Grenzen von Ansatz zu Ansatz</translation>
    </message>
    <message>
        <source>Limits = mean ± 3 × mean step from one batch to the next ÷ 1.128379.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Grenzen = Mittel ± 3 × mittlerer Schritt von einem Ansatz zum nächsten ÷ 1,128379.</translation>
    </message>
    <message>
        <source>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; runs of eight by the Western Electric rules</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2; Folgen von acht nach den Regeln von Western Electric</translation>
    </message>
    <message>
        <source>%1 ± 3 × %2 ÷ 1.128379: from %3 to %4</source>
        <extracomment>A sum with its numbers: %1 mean, %2 mean step, %3 and %4 the limits</extracomment>
        <translation>%1 ± 3 × %2 ÷ 1,128379: von %3 bis %4</translation>
    </message>
    <message>
        <source>Batches: %5</source>
        <extracomment>A sum with its numbers: %5 batches</extracomment>
        <translation>Ansätze: %5</translation>
    </message>
    <message>
        <source>Hazard class</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Gefahrenklasse</translation>
    </message>
    <message>
        <source>100 ÷ estimate of the mix = share of the acid in % ÷ the acid’s own estimate. H302 from 18.75 % of acid, H312 from 55 %, H318 from 3 %.</source>
        <extracomment>A formula in words</extracomment>
        <translation>100 ÷ Schätzwert der Mischung = Anteil der Säure in % ÷ Schätzwert der Säure selbst. H302 ab 18,75 % Säure, H312 ab 55 %, H318 ab 3 %.</translation>
    </message>
    <message>
        <source>UN GHS, chapters 3.1 and 3.3; by mouth 375 mg/kg (rat LD50, the stricter one), through the skin 1100 mg/kg</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>UN-GHS, Kapitel 3.1 und 3.3; über den Mund 375 mg/kg (LD50 Ratte, der strengere Wert), über die Haut 1100 mg/kg</translation>
    </message>
    <message>
        <source>Acid: %1</source>
        <extracomment>A sum with its numbers: %1 strength</extracomment>
        <translation>Säure: %1</translation>
    </message>
    <message>
        <source>By mouth: 375 mg/kg ÷ %1 = %2 mg/kg</source>
        <extracomment>A sum with its numbers: %1 strength, %2 an estimate</extracomment>
        <translation>Über den Mund: 375 mg/kg ÷ %1 = %2 mg/kg</translation>
    </message>
    <message>
        <source>Through the skin: 1100 mg/kg ÷ %1 = %3 mg/kg</source>
        <extracomment>A sum with its numbers: %1 strength, %3 an estimate</extracomment>
        <translation>Über die Haut: 1100 mg/kg ÷ %1 = %3 mg/kg</translation>
    </message>
    <message>
        <source>Acid and glycerine of a mix</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Säure und Glycerin einer Mischung</translation>
    </message>
    <message>
        <source>Acid = (total × strength − acid in the old liquid) ÷ content of the acid; glycerine = total − old liquid − acid. The strength counts the acid as dihydrate.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Säure = (Gesamtmenge × Gehalt − Säure in der alten Flüssigkeit) ÷ Reinheit der Säure; Glycerin = Gesamtmenge − alte Flüssigkeit − Säure. Der Gehalt rechnet die Säure als Dihydrat.</translation>
    </message>
    <message>
        <source>conservation of mass; molar masses 126.064 and 90.034 g/mol by the abridged atomic weights of IUPAC</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Erhaltung der Masse; molare Massen 126,064 und 90,034 g/mol nach den gekürzten Atomgewichten der IUPAC</translation>
    </message>
    <message>
        <source>Acid: %1 × %2 ÷ %3 = %4</source>
        <extracomment>A sum with its numbers: %1 total, %2 strength, %3 content of the acid, %4 acid</extracomment>
        <translation>Säure: %1 × %2 ÷ %3 = %4</translation>
    </message>
    <message>
        <source>Acid: (%1 × %2 − acid in %6 of old liquid) ÷ %3 = %4</source>
        <extracomment>A sum with its numbers: %1 total, %2 strength, %3 content of the acid, %4 acid, %6 old liquid</extracomment>
        <translation>Säure: (%1 × %2 − Säure in %6 alter Flüssigkeit) ÷ %3 = %4</translation>
    </message>
    <message>
        <source>Acid: %4, as long as the content of the acid is not said</source>
        <extracomment>A sum with its numbers: %4 acid; no lot of acid is chosen</extracomment>
        <translation>Säure: %4, solange die Reinheit der Säure nicht angegeben ist</translation>
    </message>
    <message>
        <source>Glycerine: %1 − %4 = %5</source>
        <extracomment>A sum with its numbers: %1 total, %4 acid, %5 glycerine</extracomment>
        <translation>Glycerin: %1 − %4 = %5</translation>
    </message>
    <message>
        <source>Glycerine: %1 − %6 − %4 = %5</source>
        <extracomment>A sum with its numbers: %1 total, %4 acid, %5 glycerine, %6 old liquid</extracomment>
        <translation>Glycerin: %1 − %6 − %4 = %5</translation>
    </message>
    <message>
        <source>Strength: %2 as dihydrate is %7 as anhydrous acid</source>
        <extracomment>A sum with its numbers: %2 a strength as dihydrate, %7 the same as anhydrous acid</extracomment>
        <translation>Gehalt: %2 als Dihydrat sind %7 als wasserfreie Säure</translation>
    </message>
    <message>
        <source>Correction of a mix</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Berichtigung einer Mischung</translation>
    </message>
    <message>
        <source>Strength = acid ÷ mix. Too weak: acid to add = (strength wanted × mix − acid) ÷ (content of the acid − strength wanted). Too strong: glycerine to add = acid ÷ strength wanted − mix.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Gehalt = Säure ÷ Mischung. Zu schwach: Säure dazu = (gewünschter Gehalt × Mischung − Säure) ÷ (Reinheit der Säure − gewünschter Gehalt). Zu stark: Glycerin dazu = Säure ÷ gewünschter Gehalt − Mischung.</translation>
    </message>
    <message>
        <source>conservation of mass</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Erhaltung der Masse</translation>
    </message>
    <message>
        <source>Strength: %2 ÷ %1 = %3</source>
        <extracomment>A sum with its numbers: %1 mix, %2 acid in it, %3 strength</extracomment>
        <translation>Gehalt: %2 ÷ %1 = %3</translation>
    </message>
    <message>
        <source>Acid to add: (%4 × %1 − %2) ÷ (%5 − %4) = %6</source>
        <extracomment>A sum with its numbers: %1 mix, %2 acid in it, %4 strength wanted, %5 content of the acid, %6 acid to add</extracomment>
        <translation>Säure dazu: (%4 × %1 − %2) ÷ (%5 − %4) = %6</translation>
    </message>
    <message>
        <source>Acid to add: %6</source>
        <extracomment>A sum with its numbers: %6 acid to add; its content is not known</extracomment>
        <translation>Säure dazu: %6</translation>
    </message>
    <message>
        <source>Glycerine to add: %2 ÷ %4 − %1 = %7</source>
        <extracomment>A sum with its numbers: %1 mix, %2 acid in it, %4 strength wanted, %7 glycerine to add</extracomment>
        <translation>Glycerin dazu: %2 ÷ %4 − %1 = %7</translation>
    </message>
    <message>
        <source>Level mark of glycerine</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Füllhöhe des Glycerins</translation>
    </message>
    <message>
        <source>Volume = mass ÷ density; density of glycerine in kg/m³ = 1277 − 0.654 × temperature in °C.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Volumen = Masse ÷ Dichte; Dichte von Glycerin in kg/m³ = 1277 − 0,654 × Temperatur in °C.</translation>
    </message>
    <message>
        <source>Cheng 2008, Ind. Eng. Chem. Res. 47:3285</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Cheng 2008, Ind. Eng. Chem. Res. 47:3285</translation>
    </message>
    <message>
        <source>Density at %2: %3 kg/m³</source>
        <extracomment>A sum with its numbers: %2 temperature, %3 density</extracomment>
        <translation>Dichte bei %2: %3 kg/m³</translation>
    </message>
    <message>
        <source>%1 ÷ %3 kg/m³ = %4</source>
        <extracomment>A sum with its numbers: %1 mass, %3 density, %4 volume</extracomment>
        <translation>%1 ÷ %3 kg/m³ = %4</translation>
    </message>
    <message>
        <source>Level mark of the liquid, an estimate</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Füllhöhe der Flüssigkeit, geschätzt</translation>
    </message>
    <message>
        <source>Volume = mass ÷ density; density in kg/m³ = 1 ÷ (strength ÷ 1653 + (1 − strength) ÷ density of glycerine), as if the volumes of acid and glycerine added up.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Volumen = Masse ÷ Dichte; Dichte in kg/m³ = 1 ÷ (Gehalt ÷ 1653 + (1 − Gehalt) ÷ Dichte von Glycerin), als ob sich die Volumen von Säure und Glycerin addierten.</translation>
    </message>
    <message>
        <source>an estimate, since no density of the liquid is published; density of glycerine by Cheng 2008, Ind. Eng. Chem. Res. 47:3285</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>eine Schätzung, da keine Dichte der Flüssigkeit veröffentlicht ist; Dichte von Glycerin nach Cheng 2008, Ind. Eng. Chem. Res. 47:3285</translation>
    </message>
    <message>
        <source>Density at %2 and %5: about %3 kg/m³</source>
        <extracomment>A sum with its numbers: %2 temperature, %3 density, %5 strength</extracomment>
        <translation>Dichte bei %2 und %5: etwa %3 kg/m³</translation>
    </message>
    <message>
        <source>%1 ÷ %3 kg/m³ = about %4</source>
        <extracomment>A sum with its numbers: %1 mass, %3 density, %4 volume</extracomment>
        <translation>%1 ÷ %3 kg/m³ = etwa %4</translation>
    </message>
    <message>
        <source>Which pails go in whole</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Welche Eimer ganz hineinkommen</translation>
    </message>
    <message>
        <source>Of all sets of whole pails that keep to the total and the strength, the one that uses most old liquid; among those, the oldest first, then the fewest pails. Fresh acid and glycerine make up the rest.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Von allen Zusammenstellungen ganzer Eimer, die Gesamtmenge und Gehalt einhalten, die mit der meisten alten Flüssigkeit; unter diesen zuerst die ältesten, dann die wenigsten Eimer. Frische Säure und frisches Glycerin ergänzen den Rest.</translation>
    </message>
    <message>
        <source>conservation of mass; search by branch and bound, Land &amp; Doig 1960, Econometrica 28:497</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Erhaltung der Masse; Suche durch Verzweigen und Begrenzen (branch and bound), Land &amp; Doig 1960, Econometrica 28:497</translation>
    </message>
    <message>
        <source>Pails that go in: %1 of %2</source>
        <extracomment>A sum with its numbers: %1 pails chosen, %2 pails in the store</extracomment>
        <translation>Eimer, die hineinkommen: %1 von %2</translation>
    </message>
    <message>
        <source>%3 of old liquid + %6 of acid + %7 of glycerine = %4 at %5</source>
        <extracomment>A sum with its numbers: %3 old liquid, %4 total, %5 strength, %6 acid, %7 glycerine</extracomment>
        <translation>%3 alte Flüssigkeit + %6 Säure + %7 Glycerin = %4 mit %5</translation>
    </message>
    <message>
        <source>No other set of pails does better: all were tried or ruled out.</source>
        <extracomment>A sum with its numbers: said when no better set of pails exists</extracomment>
        <translation>Keine andere Zusammenstellung von Eimern ist besser: Alle wurden geprüft oder ausgeschlossen.</translation>
    </message>
    <message>
        <source>Not every set of pails could be tried: at the most %9 more old liquid might go in.</source>
        <extracomment>A sum with its numbers: %9 an amount of old liquid</extracomment>
        <translation>Nicht jede Zusammenstellung von Eimern konnte geprüft werden: Höchstens %9 alte Flüssigkeit mehr könnten hineinkommen.</translation>
    </message>
    <message>
        <source>Strips and what is left</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Streifen und was übrig bleibt</translation>
    </message>
    <message>
        <source>Strips = liquid ÷ what one strip takes up, in whole strips; left at the most = liquid − strips × what one strip takes up.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Streifen = Flüssigkeit ÷ Aufnahme eines Streifens, in ganzen Streifen; übrig höchstens = Flüssigkeit − Streifen × Aufnahme eines Streifens.</translation>
    </message>
    <message>
        <source>Left at the most: %1 − %3 × %2 = %4</source>
        <extracomment>A sum with its numbers: %1 liquid, %2 taken up by one strip, %3 strips, %4 left</extracomment>
        <translation>Übrig höchstens: %1 − %3 × %2 = %4</translation>
    </message>
    <message>
        <source>Where to set the dial</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Wie der Regler zu stellen ist</translation>
    </message>
    <message>
        <source>Dial = temperature wanted + smallest difference of dial and probe seen, so that the tank does not get hotter than meant; highest dial = ceiling + smallest difference. Never far from a dial that was seen.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Regler = gewünschte Temperatur + kleinster beobachteter Unterschied von Regler und Fühler, damit der Tank nicht heißer wird als gewollt; höchste Reglerstellung = Höchsttemperatur + kleinster Unterschied. Nie weit weg von einer schon abgelesenen Reglerstellung.</translation>
    </message>
    <message>
        <source>Dial above probe: %3 to %4 (readings: %2)</source>
        <extracomment>A sum with its numbers: %2 readings, %3 and %4 the smallest and the largest difference</extracomment>
        <translation>Regler über Fühler: %3 bis %4 (Ablesungen: %2)</translation>
    </message>
    <message>
        <source>For %1: dial at %5</source>
        <extracomment>A sum with its numbers: %1 temperature wanted, %5 where to set the dial</extracomment>
        <translation>Für %1: Regler auf %5</translation>
    </message>
    <message>
        <source>Expected in the tank: %6 to %7</source>
        <extracomment>A sum with its numbers: %6 and %7 the ends of a range of temperature</extracomment>
        <translation>Im Tank zu erwarten: %6 bis %7</translation>
    </message>
    <message>
        <source>For the ceiling of %8: dial no higher than %9</source>
        <extracomment>A sum with its numbers: %8 the ceiling, %9 a dial</extracomment>
        <translation>Für die Höchsttemperatur von %8: Regler nicht höher als %9</translation>
    </message>
    <message>
        <source>Probe = a + b × dial, the straight line through the readings with the least squares; the range is where the next reading falls in 95 of 100 cases.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Fühler = a + b × Regler, die Gerade durch die Ablesungen nach den kleinsten Quadraten; in den Bereich fällt die nächste Ablesung in 95 von 100 Fällen.</translation>
    </message>
    <message>
        <source>NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.2</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>NIST/SEMATECH e-Handbook of Statistical Methods, 4.5.2</translation>
    </message>
    <message>
        <source>Taken up by a strip</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Aufgenommen je Streifen</translation>
    </message>
    <message>
        <source>Taken up = mean weight of a strip − its dry weight.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Aufgenommen = mittleres Gewicht eines Streifens − sein Trockengewicht.</translation>
    </message>
    <message>
        <source>%1 − %2 = %3</source>
        <extracomment>A sum with its numbers: %1 mean, %2 dry, %3 taken up</extracomment>
        <translation>%1 − %2 = %3</translation>
    </message>
    <message>
        <source>Strips weighed: %4</source>
        <extracomment>A sum with its numbers: %4 strips</extracomment>
        <translation>Gewogene Streifen: %4</translation>
    </message>
    <message>
        <source>Acid in a strip</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Säure je Streifen</translation>
    </message>
    <message>
        <source>Acid = (mean weight − dry weight) × strength, counted as dihydrate; as anhydrous acid 90.034 ÷ 126.064 of it.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Säure = (mittleres Gewicht − Trockengewicht) × Gehalt, als Dihydrat gerechnet; als wasserfreie Säure 90,034 ÷ 126,064 davon.</translation>
    </message>
    <message>
        <source>conservation of mass; molar masses by the abridged atomic weights of IUPAC</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Erhaltung der Masse; molare Massen nach den gekürzten Atomgewichten der IUPAC</translation>
    </message>
    <message>
        <source>(%1 − %2) × %3 = %4 as dihydrate</source>
        <extracomment>A sum with its numbers: %1 mean, %2 dry, %3 strength, %4 acid</extracomment>
        <translation>(%1 − %2) × %3 = %4 als Dihydrat</translation>
    </message>
    <message>
        <source>%4 × 90.034 ÷ 126.064 = %5 as anhydrous acid</source>
        <extracomment>A sum with its numbers: %4 acid as dihydrate, %5 as anhydrous acid</extracomment>
        <translation>%4 × 90,034 ÷ 126,064 = %5 als wasserfreie Säure</translation>
    </message>
    <message>
        <source>How sure the mean is</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Wie sicher das Mittel ist</translation>
    </message>
    <message>
        <source>Mean ± t × s ÷ √n: where the mean of all strips lies in 95 of 100 cases. n strips were weighed, s is the spread of single strips, t is Student’s for the degrees of freedom of s.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Mittel ± t × s ÷ √n: Dort liegt das Mittel aller Streifen in 95 von 100 Fällen. n Streifen wurden gewogen, s ist die Streuung einzelner Streifen, t der Wert nach Student zu den Freiheitsgraden von s.</translation>
    </message>
    <message>
        <source>NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.2</translation>
    </message>
    <message>
        <source>%2 ± %5 × %3 ÷ √%1: from %6 to %7</source>
        <extracomment>A sum with its numbers: %1 strips, %2 mean, %3 spread, %5 Student’s t, %6 and %7 the ends</extracomment>
        <translation>%2 ± %5 × %3 ÷ √%1: von %6 bis %7</translation>
    </message>
    <message>
        <source>Degrees of freedom: %4</source>
        <extracomment>A sum with its numbers: %4 degrees of freedom</extracomment>
        <translation>Freiheitsgrade: %4</translation>
    </message>
    <message>
        <source>Mean %2 (strips: %1); how far single strips differ is not known yet</source>
        <extracomment>A sum with its numbers: %1 strips, %2 mean</extracomment>
        <translation>Mittel %2 (Streifen: %1); wie weit einzelne Streifen auseinanderliegen, ist noch nicht bekannt</translation>
    </message>
    <message>
        <source>How many more to weigh</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Wie viele noch zu wiegen sind</translation>
    </message>
    <message>
        <source>The fewest strips whose range, mean ± t × s ÷ √n, stays on one side of the nearer limit, less those weighed already.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Die kleinste Zahl von Streifen, deren Bereich, Mittel ± t × s ÷ √n, auf einer Seite der näheren Grenze bleibt, abzüglich der schon gewogenen.</translation>
    </message>
    <message>
        <source>Mean %3 (strips: %2); good from %4 to %5</source>
        <extracomment>A sum with its numbers: %2 strips, %3 mean, %4 and %5 the limits</extracomment>
        <translation>Mittel %3 (Streifen: %2); gut von %4 bis %5</translation>
    </message>
    <message>
        <source>s = %6 (learned from strips: %7)</source>
        <extracomment>A sum with its numbers: %6 spread of single strips, %7 strips it comes from</extracomment>
        <translation>s = %6 (aus Streifen gelernt: %7)</translation>
    </message>
    <message>
        <source>More to weigh: %1</source>
        <extracomment>A sum with its numbers: %1 strips</extracomment>
        <translation>Noch zu wiegen: %1</translation>
    </message>
    <message>
        <source>Curve of the soak</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Tränkkurve</translation>
    </message>
    <message>
        <source>Weight after t hours = dry + U × (1 − e^(−k × t)). U is what a strip takes up in the end, k how fast; both by least squares, the dry weight being known.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Gewicht nach t Stunden = trocken + U × (1 − e^(−k × t)). U ist, was ein Streifen am Ende aufnimmt, k, wie schnell; beide nach den kleinsten Quadraten, das Trockengewicht ist bekannt.</translation>
    </message>
    <message>
        <source>Bates &amp; Watts 1988, Nonlinear Regression Analysis and Its Applications, ch. 2; checked against NIST StRD Misra1a</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Bates &amp; Watts 1988, Nonlinear Regression Analysis and Its Applications, Kap. 2; geprüft an NIST StRD Misra1a</translation>
    </message>
    <message>
        <source>%1 + %2 × (1 − e^(−%4 × t))</source>
        <extracomment>A sum with its numbers: %1 dry weight, %2 U, %4 k</extracomment>
        <translation>%1 + %2 × (1 − e^(−%4 × t))</translation>
    </message>
    <message>
        <source>U = %2, k = %4 an hour; standard errors %3 and %5</source>
        <extracomment>A sum with its numbers: %2 U, %3 its standard error, %4 k, %5 its standard error</extracomment>
        <translation>U = %2, k = %4 je Stunde; Standardfehler %3 und %5</translation>
    </message>
    <message>
        <source>R² = %7; the weighings lie about %8 off the curve</source>
        <extracomment>A sum with its numbers: %7 R², %8 a weight</extracomment>
        <translation>R² = %7; die Wägungen liegen etwa %8 neben der Kurve</translation>
    </message>
    <message>
        <source>Weighings: %6</source>
        <extracomment>A sum with its numbers: %6 weighings</extracomment>
        <translation>Wägungen: %6</translation>
    </message>
    <message>
        <source>Hour the target is reached</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Stunde, in der das Ziel erreicht ist</translation>
    </message>
    <message>
        <source>t = −ln(1 − (target − dry) ÷ U) ÷ k hours, from the curve of the soak; the range by the delta method with Student’s t.</source>
        <extracomment>A formula in words</extracomment>
        <translation>t = −ln(1 − (Ziel − trocken) ÷ U) ÷ k Stunden, aus der Tränkkurve; der Bereich nach der Delta-Methode mit t nach Student.</translation>
    </message>
    <message>
        <source>Bates &amp; Watts 1988, Nonlinear Regression Analysis and Its Applications, ch. 2</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Bates &amp; Watts 1988, Nonlinear Regression Analysis and Its Applications, Kap. 2</translation>
    </message>
    <message>
        <source>−ln(1 − (%1 − %2) ÷ %3) ÷ %4 = %5</source>
        <extracomment>A sum with its numbers: %1 target, %2 dry, %3 U, %4 k, %5 hours</extracomment>
        <translation>−ln(1 − (%1 − %2) ÷ %3) ÷ %4 = %5</translation>
    </message>
    <message>
        <source>From %6 to %7</source>
        <extracomment>A sum with its numbers: %6 and %7 hours</extracomment>
        <translation>Von %6 bis %7</translation>
    </message>
    <message>
        <source>Soaking in a cold room</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Tränken im kalten Raum</translation>
    </message>
    <message>
        <source>Times as long = how thick glycerine is at this room’s temperature ÷ how thick it is in the usual room.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Wievielmal so lange = Zähigkeit von Glycerin bei der Temperatur dieses Raums ÷ Zähigkeit im üblichen Raum.</translation>
    </message>
    <message>
        <source>Washburn 1921, Phys. Rev. 17:273; viscosity of glycerine by Cheng 2008, Ind. Eng. Chem. Res. 47:3285</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Washburn 1921, Phys. Rev. 17:273; Zähigkeit von Glycerin nach Cheng 2008, Ind. Eng. Chem. Res. 47:3285</translation>
    </message>
    <message>
        <source>%1 instead of %2: %3 times as long</source>
        <extracomment>A sum with its numbers: %1 temperature of the room, %2 the usual one, %3 how many times</extracomment>
        <translation>%1 statt %2: %3-mal so lange</translation>
    </message>
    <message>
        <source>Strips by weight</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Streifen nach Gewicht</translation>
    </message>
    <message>
        <source>For each number n of strips: how well n strips of the mean weight explain the net weight. Its variance is n × s² + n² × s² ÷ m, with s the spread of single strips and m the strips behind the mean; before weighing every number is held equally likely.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Für jede Zahl n von Streifen: wie gut n Streifen mit dem mittleren Gewicht das Nettogewicht erklären. Die Varianz ist n × s² + n² × s² ÷ m, mit s als Streuung einzelner Streifen und m als Zahl der Streifen hinter dem Mittel; vor dem Wiegen gilt jede Zahl als gleich wahrscheinlich.</translation>
    </message>
    <message>
        <source>Bayes’ rule; variances of weights that do not depend on each other add up</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Satz von Bayes; Varianzen voneinander unabhängiger Gewichte addieren sich</translation>
    </message>
    <message>
        <source>Net %1; mean of a strip %2 (m = %3)</source>
        <extracomment>A sum with its numbers: %1 net weight, %2 mean of a strip, %3 strips behind it</extracomment>
        <translation>Netto %1; Mittel eines Streifens %2 (m = %3)</translation>
    </message>
    <message>
        <source>s = %4 (learned from strips: %5)</source>
        <extracomment>A sum with its numbers: %4 spread of single strips, %5 strips it comes from</extracomment>
        <translation>s = %4 (aus Streifen gelernt: %5)</translation>
    </message>
    <message>
        <source>Likeliest: %6, sure to %7</source>
        <extracomment>A sum with its numbers: %6 strips, %7 a share</extracomment>
        <translation>Am wahrscheinlichsten: %6, zu %7 sicher</translation>
    </message>
    <message>
        <source>At least 95 % sure: from %8 to %9</source>
        <extracomment>A sum with its numbers: %8 and %9 strips</extracomment>
        <translation>Zu mindestens 95 % sicher: von %8 bis %9</translation>
    </message>
    <message>
        <source>How far single strips differ is not known yet, so the number cannot be told.</source>
        <extracomment>A sum with its numbers: the spread is not known</extracomment>
        <translation>Wie weit einzelne Streifen auseinanderliegen, ist noch nicht bekannt, darum lässt sich die Zahl nicht sagen.</translation>
    </message>
    <message>
        <source>Strips for a hive</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Streifen je Volk</translation>
    </message>
    <message>
        <source>Strips = strips a hive × hives, within the least and the most of the rule.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Streifen = Streifen je Volk × Völker, zwischen Mindest- und Höchstzahl der Regel.</translation>
    </message>
    <message>
        <source>your own rule; the label or the vet decides</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Ihre eigene Regel; es entscheidet das Etikett des Mittels oder der Tierarzt</translation>
    </message>
    <message>
        <source>%1 × %2 (hives) = %5</source>
        <extracomment>A sum with its numbers: %1 strips a hive, %2 hives, %5 strips</extracomment>
        <translation>%1 × %2 (Völker) = %5</translation>
    </message>
    <message>
        <source>%1 × %2 (hives), not under %3: %5</source>
        <extracomment>A sum with its numbers: %1 strips a hive, %2 hives, %5 strips, %3 the least</extracomment>
        <translation>%1 × %2 (Völker), nicht unter %3: %5</translation>
    </message>
    <message>
        <source>%1 × %2 (hives), not over %4: %5</source>
        <extracomment>A sum with its numbers: %1 strips a hive, %2 hives, %5 strips, %4 the most</extracomment>
        <translation>%1 × %2 (Völker), nicht über %4: %5</translation>
    </message>
    <message>
        <source>%1 × %2 (hives), not under %3 and not over %4: %5</source>
        <extracomment>A sum with its numbers: %1 strips a hive, %2 hives, %5 strips, %3 the least, %4 the most</extracomment>
        <translation>%1 × %2 (Völker), nicht unter %3 und nicht über %4: %5</translation>
    </message>
    <message>
        <source>Strips = strips a brood box × brood boxes, within the least and the most of the rule.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Streifen = Streifen je Brutzarge × Brutzargen, zwischen Mindest- und Höchstzahl der Regel.</translation>
    </message>
    <message>
        <source>%1 × %2 (brood boxes) = %6</source>
        <extracomment>A sum with its numbers: %1 strips a box, %2 boxes, %6 strips</extracomment>
        <translation>%1 × %2 (Brutzargen) = %6</translation>
    </message>
    <message>
        <source>%1 × %2 (brood boxes), not under %4: %6</source>
        <extracomment>A sum with its numbers: %1 strips a box, %2 boxes, %6 strips, %4 the least</extracomment>
        <translation>%1 × %2 (Brutzargen), nicht unter %4: %6</translation>
    </message>
    <message>
        <source>%1 × %2 (brood boxes), not over %5: %6</source>
        <extracomment>A sum with its numbers: %1 strips a box, %2 boxes, %6 strips, %5 the most</extracomment>
        <translation>%1 × %2 (Brutzargen), nicht über %5: %6</translation>
    </message>
    <message>
        <source>%1 × %2 (brood boxes), not under %4 and not over %5: %6</source>
        <extracomment>A sum with its numbers: %1 strips a box, %2 boxes, %6 strips, %4 the least, %5 the most</extracomment>
        <translation>%1 × %2 (Brutzargen), nicht unter %4 und nicht über %5: %6</translation>
    </message>
    <message>
        <source>The brood boxes of this hive are not written down yet.</source>
        <extracomment>A sum with its numbers: the boxes are not known</extracomment>
        <translation>Die Brutzargen dieses Volks sind noch nicht eingetragen.</translation>
    </message>
    <message>
        <source>Strips = frames of bees a hive ÷ frames for one strip, rounded up, within the least and the most of the rule; × hives.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Streifen = besetzte Waben je Volk ÷ Waben je Streifen, aufgerundet, zwischen Mindest- und Höchstzahl der Regel; × Völker.</translation>
    </message>
    <message>
        <source>(%2 ÷ %3) ÷ %1, rounded up, × %3 = %6</source>
        <extracomment>A sum with its numbers: %1 frames for one strip, %2 frames of bees in all hives, %3 hives, %6 strips</extracomment>
        <translation>(%2 ÷ %3) ÷ %1, aufgerundet, × %3 = %6</translation>
    </message>
    <message>
        <source>(%2 ÷ %3) ÷ %1, rounded up, × %3, not under %4: %6</source>
        <extracomment>A sum with its numbers: %1 frames for one strip, %2 frames of bees in all hives, %3 hives, %6 strips, %4 the least</extracomment>
        <translation>(%2 ÷ %3) ÷ %1, aufgerundet, × %3, nicht unter %4: %6</translation>
    </message>
    <message>
        <source>(%2 ÷ %3) ÷ %1, rounded up, × %3, not over %5: %6</source>
        <extracomment>A sum with its numbers: %1 frames for one strip, %2 frames of bees in all hives, %3 hives, %6 strips, %5 the most</extracomment>
        <translation>(%2 ÷ %3) ÷ %1, aufgerundet, × %3, nicht über %5: %6</translation>
    </message>
    <message>
        <source>(%2 ÷ %3) ÷ %1, rounded up, × %3, not under %4 and not over %5: %6</source>
        <extracomment>A sum with its numbers: %1 frames for one strip, %2 frames of bees in all hives, %3 hives, %6 strips, %4 the least, %5 the most</extracomment>
        <translation>(%2 ÷ %3) ÷ %1, aufgerundet, × %3, nicht unter %4 und nicht über %5: %6</translation>
    </message>
    <message>
        <source>The frames of bees of this hive are not written down yet.</source>
        <extracomment>A sum with its numbers: the frames are not known</extracomment>
        <translation>Die besetzten Waben dieses Volks sind noch nicht eingetragen.</translation>
    </message>
    <message>
        <source>Mites on a hundred bees</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Milben je hundert Bienen</translation>
    </message>
    <message>
        <source>Rate = mites ÷ bees. Its range, 95 %: (p + z² ÷ 2n ± z × √(p × (1 − p) ÷ n + z² ÷ 4n²)) ÷ (1 + z² ÷ n), with p the rate, n the bees and z = 1.96 (Wilson).</source>
        <extracomment>A formula in words</extracomment>
        <translation>Befall = Milben ÷ Bienen. Sein Bereich, 95 %: (p + z² ÷ 2n ± z × √(p × (1 − p) ÷ n + z² ÷ 4n²)) ÷ (1 + z² ÷ n), mit p dem Befall, n den Bienen und z = 1,96 (Wilson).</translation>
    </message>
    <message>
        <source>Dietemann et al. 2013, J. Apic. Res. 52(1); Newcombe 1998, Stat. Med. 17:857</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Dietemann et al. 2013, J. Apic. Res. 52(1); Newcombe 1998, Stat. Med. 17:857</translation>
    </message>
    <message>
        <source>%1 ÷ %2 = %3</source>
        <extracomment>A sum with its numbers: %1 mites, %2 bees, %3 rate</extracomment>
        <translation>%1 ÷ %2 = %3</translation>
    </message>
    <message>
        <source>From %4 to %5</source>
        <extracomment>A sum with its numbers: %4 and %5 the ends of the range</extracomment>
        <translation>Von %4 bis %5</translation>
    </message>
    <message>
        <source>Your threshold: %6</source>
        <extracomment>A sum with its numbers: %6 the user's threshold for mites on a hundred bees</extracomment>
        <translation>Ihre Schwelle: %6</translation>
    </message>
    <message>
        <source>Mites: %1; how many bees is not known</source>
        <extracomment>A sum with its numbers: %1 mites; the bees were not counted</extracomment>
        <translation>Milben: %1; wie viele Bienen, ist nicht bekannt</translation>
    </message>
    <message>
        <source>Mites a day</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Milben je Tag</translation>
    </message>
    <message>
        <source>Mites a day = mites on the board ÷ days it lay.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Milben je Tag = Milben auf der Bodeneinlage ÷ Tage, die sie lag.</translation>
    </message>
    <message>
        <source>Dietemann et al. 2013, J. Apic. Res. 52(1)</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Dietemann et al. 2013, J. Apic. Res. 52(1)</translation>
    </message>
    <message>
        <source>%1 ÷ %2 = %3 a day</source>
        <extracomment>A sum with its numbers: %1 mites, %2 days, %3 mites a day</extracomment>
        <translation>%1 ÷ %2 = %3 je Tag</translation>
    </message>
    <message>
        <source>Mites: %1; how many days is not known</source>
        <extracomment>A sum with its numbers: %1 mites; the days are not known</extracomment>
        <translation>Milben: %1; wie viele Tage, ist nicht bekannt</translation>
    </message>
    <message>
        <source>Change against untreated hives</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Veränderung gegenüber unbehandelten Völkern</translation>
    </message>
    <message>
        <source>Change = 1 − (treated after × untreated before) ÷ (treated before × untreated after).</source>
        <extracomment>A formula in words</extracomment>
        <translation>Veränderung = 1 − (behandelt nachher × unbehandelt vorher) ÷ (behandelt vorher × unbehandelt nachher).</translation>
    </message>
    <message>
        <source>Henderson &amp; Tilton 1955, J. Econ. Entomol. 48:157</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Henderson &amp; Tilton 1955, J. Econ. Entomol. 48:157</translation>
    </message>
    <message>
        <source>1 − (%2 × %3) ÷ (%1 × %4) = %5</source>
        <extracomment>A sum with its numbers: %1 and %2 treated hives before and after, %3 and %4 untreated ones, %5 the change</extracomment>
        <translation>1 − (%2 × %3) ÷ (%1 × %4) = %5</translation>
    </message>
    <message>
        <source>Treated: %1 before, %2 after</source>
        <extracomment>A sum with its numbers: %1 and %2 mites in treated hives before and after</extracomment>
        <translation>Behandelt: %1 vorher, %2 nachher</translation>
    </message>
    <message>
        <source>Untreated: %3 before, %4 after</source>
        <extracomment>A sum with its numbers: %3 and %4 mites in untreated hives before and after</extracomment>
        <translation>Unbehandelt: %3 vorher, %4 nachher</translation>
    </message>
    <message>
        <source>Change without untreated hives</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Veränderung ohne unbehandelte Völker</translation>
    </message>
    <message>
        <source>Change = (before − after) ÷ before. Without untreated hives it says how the mites changed, and not how well the treatment worked.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Veränderung = (vorher − nachher) ÷ vorher. Ohne unbehandelte Völker sagt sie, wie sich die Milben verändert haben, und nicht, wie gut die Behandlung gewirkt hat.</translation>
    </message>
    <message>
        <source>(%1 − %2) ÷ %1 = %3</source>
        <extracomment>A sum with its numbers: %1 before, %2 after, %3 the change</extracomment>
        <translation>(%1 − %2) ÷ %1 = %3</translation>
    </message>
    <message>
        <source>Before: %1; after: %2</source>
        <extracomment>A sum with its numbers: %1 before, %2 after; no change can be told</extracomment>
        <translation>Vorher: %1; nachher: %2</translation>
    </message>
    <message>
        <source>When to pull</source>
        <extracomment>The name of a figure, over how it is worked out</extracomment>
        <translation>Wann herausnehmen</translation>
    </message>
    <message>
        <source>First day = day placed + fewest days; last day = day placed + most days.</source>
        <extracomment>A formula in words</extracomment>
        <translation>Erster Tag = Tag des Einhängens + Mindestzahl der Tage; letzter Tag = Tag des Einhängens + Höchstzahl der Tage.</translation>
    </message>
    <message>
        <source>your own rule; the label decides</source>
        <extracomment>Where a formula comes from, after "Source:"</extracomment>
        <translation>Ihre eigene Regel; es entscheidet das Etikett des Mittels</translation>
    </message>
    <message>
        <source>%1 + %2 (days) = %4</source>
        <extracomment>A sum with its numbers: %1 day placed, %2 days, %4 first day</extracomment>
        <translation>%1 + %2 (Tage) = %4</translation>
    </message>
    <message>
        <source>%1 + %3 (days) = %5</source>
        <extracomment>A sum with its numbers: %1 day placed, %3 days, %5 last day</extracomment>
        <translation>%1 + %3 (Tage) = %5</translation>
    </message>
</context>
<context>
    <name>Label</name>
    <message>
        <source>Sealed</source>
        <extracomment>on a label, before a date
----------
on a label, before a line to write a date on</extracomment>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Rest until</source>
        <extracomment>on a label, before a date</extracomment>
        <translation>Ruht bis</translation>
    </message>
    <message>
        <source>Use by</source>
        <extracomment>on a label, before a date
----------
on a label, before a line to write a date on</extracomment>
        <translation>Verwendbar bis</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>on a small label: %1 is "Sealed" or "Rest until", %2 a date</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Use by %1</source>
        <extracomment>on a label; %1 is a date</extracomment>
        <translation>Verwendbar bis %1</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>on a label, before a line to write the number of strips on</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Weight</source>
        <extracomment>on a label, before a line to write on</extracomment>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>This label is too small: code, use by, signal word, pictograms and hazard statements must all be on it and readable. The least that would do is %1 x %2 mm.</source>
        <extracomment>refusal of a label size; %1 and %2 are a width and a height in mm</extracomment>
        <translation>Dieses Etikett ist zu klein: Code, Verwendbarkeit, Signalwort, Piktogramme und Gefahrenhinweise müssen alle darauf stehen und lesbar sein. Mindestens nötig sind %1 x %2 mm.</translation>
    </message>
    <message>
        <source>precautions for handling and keeping</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>Hinweise zu Umgang und Aufbewahrung</translation>
    </message>
    <message>
        <source>gloves and eye protection</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>Handschuhe und Augenschutz</translation>
    </message>
    <message>
        <source>first aid for the skin</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>Erste Hilfe bei Hautkontakt</translation>
    </message>
    <message>
        <source>first aid when swallowed</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>Erste Hilfe bei Verschlucken</translation>
    </message>
    <message>
        <source>first aid for the eyes</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>Erste Hilfe für die Augen</translation>
    </message>
    <message>
        <source>who made it</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>wer es hergestellt hat</translation>
    </message>
    <message>
        <source>which bag of how many</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>der wievielte Beutel von wie vielen</translation>
    </message>
    <message>
        <source>rest until</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>ruht bis</translation>
    </message>
    <message>
        <source>batch</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>strength</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>Gehalt</translation>
    </message>
    <message>
        <source>sealed</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>verschlossen</translation>
    </message>
    <message>
        <source>the line on own use</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>die Zeile zum Eigenbedarf</translation>
    </message>
    <message>
        <source>acid per strip</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>Säure je Streifen</translation>
    </message>
    <message>
        <source>how much is in it</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>wie viel darin ist</translation>
    </message>
    <message>
        <source>the square to scan</source>
        <extracomment>piece of a label, within a list of what was left out</extracomment>
        <translation>das Feld zum Scannen</translation>
    </message>
    <message>
        <source>Left out for want of room: %1.</source>
        <extracomment>%1 is a list such as "precautions, first aid for the skin"</extracomment>
        <translation>Aus Platzmangel weggelassen: %1.</translation>
    </message>
    <message>
        <source>Oxalic acid %1 in glycerine.</source>
        <extracomment>on a label; %1 is a strength with its per cent sign; of the dihydrate, by mass</extracomment>
        <translation>Oxalsäure %1 in Glycerin.</translation>
    </message>
    <message>
        <source>Soak liquid</source>
        <extracomment>on a pail's label: the liquid that strips are soaked in</extracomment>
        <translation>Tränkflüssigkeit</translation>
    </message>
    <message>
        <source>Soak liquid, %1</source>
        <extracomment>on a pail's label; %1 is a mass with its unit</extracomment>
        <translation>Tränkflüssigkeit, %1</translation>
    </message>
    <message>
        <source>Oxalic acid strips</source>
        <extracomment>on a bag's label when the count is still to be written in</extracomment>
        <translation>Oxalsäure-Streifen</translation>
    </message>
    <message numerus="yes">
        <source>%n oxalic acid strips</source>
        <extracomment>on a bag's label</extracomment>
        <translation>
            <numerusform>%n Oxalsäure-Streifen</numerusform>
            <numerusform>%n Oxalsäure-Streifen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 acid each</source>
        <extracomment>on a bag's label, after the number of strips; %1 is a mass with its unit, of oxalic acid dihydrate in one strip</extracomment>
        <translation>je %1 Säure</translation>
    </message>
    <message>
        <source>batch %1</source>
        <extracomment>on a label; %1 is a batch's code</extracomment>
        <translation>Ansatz %1</translation>
    </message>
    <message>
        <source>pail %1 of %2</source>
        <extracomment>on a pail's label</extracomment>
        <translation>Eimer %1 von %2</translation>
    </message>
    <message>
        <source>bag %1 of %2</source>
        <extracomment>on a bag's label</extracomment>
        <translation>Beutel %1 von %2</translation>
    </message>
    <message>
        <source>Home-made for own use, not for sale.</source>
        <extracomment>on every label</extracomment>
        <translation>Selbst hergestellt für den Eigenbedarf, nicht zum Verkauf.</translation>
    </message>
    <message>
        <source>Made by %1</source>
        <extracomment>on a label; %1 is the maker's name, place and telephone</extracomment>
        <translation>Hergestellt von %1</translation>
    </message>
</context>
<context>
    <name>LabelPrinter</name>
    <message>
        <source>Labels</source>
        <extracomment>title of a PDF file with labels</extracomment>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Test page for labels</source>
        <extracomment>title of a PDF file with one page to test a label sheet</extracomment>
        <translation>Probeseite für Etiketten</translation>
    </message>
</context>
<context>
    <name>LabelSheet</name>
    <message>
        <source>%1 x %2 mm</source>
        <extracomment>a label's width and height</extracomment>
        <translation>%1 x %2 mm</translation>
    </message>
    <message>
        <source>%1, roll</source>
        <extracomment>%1 is a size such as "62 x 100 mm"</extracomment>
        <translation>%1, Rolle</translation>
    </message>
    <message>
        <source>%1, %2 on A4</source>
        <extracomment>%1 is a label's size, %2 how many of them are on one sheet of A4 paper</extracomment>
        <translation>%1, %2 auf A4</translation>
    </message>
    <message>
        <source>%1 x %2 in, %3 on Letter</source>
        <extracomment>%1 and %2 are a label's width and height in inches, %3 how many of them are on one sheet of Letter paper</extracomment>
        <translation>%1 x %2 Zoll, %3 auf Letter</translation>
    </message>
    <message>
        <source>%1, %2 on %3 x %4 mm</source>
        <extracomment>%1 is a label's size, %2 how many are on a sheet, %3 and %4 the sheet's width and height in mm</extracomment>
        <translation>%1, %2 auf %3 x %4 mm</translation>
    </message>
    <message>
        <source>A sheet needs at least one column and one row of labels.</source>
        <extracomment>why labels cannot be printed on a sheet of these dimensions</extracomment>
        <translation>Ein Bogen braucht mindestens eine Spalte und eine Reihe Etiketten.</translation>
    </message>
    <message>
        <source>A label must be at least 10 mm wide and 10 mm high.</source>
        <extracomment>why labels cannot be printed on a sheet of these dimensions</extracomment>
        <translation>Ein Etikett muss mindestens 10 mm breit und 10 mm hoch sein.</translation>
    </message>
    <message>
        <source>The sheet is larger than two metres: check its width and height.</source>
        <extracomment>why labels cannot be printed on a sheet of these dimensions</extracomment>
        <translation>Der Bogen ist größer als zwei Meter: Breite und Höhe prüfen.</translation>
    </message>
    <message>
        <source>Labels reach over the edge of the sheet: check the margins, the steps and how many there are.</source>
        <extracomment>why labels cannot be printed on a sheet of these dimensions</extracomment>
        <translation>Etiketten ragen über den Rand des Bogens: Ränder, Abstände und Anzahl prüfen.</translation>
    </message>
    <message>
        <source>Labels lie over each other: the step from one to the next must be at least the label's size.</source>
        <extracomment>why labels cannot be printed on a sheet of these dimensions</extracomment>
        <translation>Etiketten liegen übereinander: Der Abstand von einem zum nächsten muss mindestens so groß sein wie das Etikett.</translation>
    </message>
    <message>
        <source>The offset is for what a printer is off: 20 mm at the most.</source>
        <extracomment>why labels cannot be printed on a sheet of these dimensions</extracomment>
        <translation>Der Versatz gleicht aus, was ein Drucker danebenliegt: höchstens 20 mm.</translation>
    </message>
</context>
<context>
    <name>LabelTestPage</name>
    <message>
        <source>Hold this page against a sheet of labels and a window. Measure how far the lines are off, and enter it as the offset: right and down are positive.</source>
        <extracomment>on a test page for label sheets; the person holds the print against an empty label sheet</extracomment>
        <translation>Halten Sie diese Seite mit einem Etikettenbogen gegen ein Fenster. Messen Sie, wie weit die Linien danebenliegen, und tragen Sie es als Versatz ein: nach rechts und nach unten ist positiv.</translation>
    </message>
</context>
<context>
    <name>LeftDraft</name>
    <message>
        <source>Typed on %1 and not entered. The form cannot be opened any more: what it was about is gone, closed or made void since. What was typed can be copied from here.</source>
        <extracomment>In a window that shows what was typed into a form and not entered; %1 is a day and a time</extracomment>
        <translation>Getippt am %1 und nicht eingetragen. Das Formular lässt sich nicht mehr öffnen: Worum es ging, ist inzwischen fort, abgeschlossen oder für ungültig erklärt. Was getippt wurde, lässt sich von hier kopieren.</translation>
    </message>
    <message>
        <source>What was typed</source>
        <extracomment>Read aloud: a text that was typed into a form</extracomment>
        <translation>Was getippt wurde</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <extracomment>Button: what was typed before and not entered is given up</extracomment>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Keep it</source>
        <extracomment>Button that closes a window; what was typed stays kept</extracomment>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>LotColumns</name>
    <message>
        <source>of %1</source>
        <extracomment>How large the containers of a delivery are; %1 what one holds</extracomment>
        <translation>zu %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>Containers of a delivery; %1 their number, %2 what one holds</extracomment>
        <translation>%1 zu %2</translation>
    </message>
    <message>
        <source>%1 anhydrous</source>
        <extracomment>Content of acid that is counted without its water of crystals; %1 a percentage</extracomment>
        <translation>%1 wasserfrei</translation>
    </message>
    <message>
        <source>Best before</source>
        <extracomment>Header of a column: the day until which a material keeps</extracomment>
        <translation>Haltbar bis</translation>
    </message>
    <message>
        <source>Left</source>
        <extracomment>Header of a column: what is left of a delivery</extracomment>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>finished</source>
        <extracomment>In place of what is left of a delivery that is used up</extracomment>
        <translation>aufgebraucht</translation>
    </message>
    <message>
        <source>Material</source>
        <extracomment>Header of a column: acid, glycerine, strips or bags</extracomment>
        <translation>Material</translation>
    </message>
    <message>
        <source>Lot</source>
        <extracomment>Header of a column: number or name of a delivery</extracomment>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Came</source>
        <extracomment>Header of a column: the amount that came with a delivery</extracomment>
        <translation>Geliefert</translation>
    </message>
    <message>
        <source>Containers</source>
        <extracomment>Header of a column: number and size of the containers of a delivery</extracomment>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>Content</source>
        <extracomment>Header of a column: how much acid is in the acid, as its label says</extracomment>
        <translation>Reinheit</translation>
    </message>
    <message>
        <source>Received</source>
        <extracomment>Header of a column: the day a delivery came</extracomment>
        <translation>Erhalten</translation>
    </message>
    <message>
        <source>From</source>
        <extracomment>Header of a column: who sold a delivery</extracomment>
        <translation>Von</translation>
    </message>
</context>
<context>
    <name>LotForms</name>
    <message>
        <source>weighed again</source>
        <extracomment>A usual reason why what is left of a delivery is put right</extracomment>
        <translation>neu gewogen</translation>
    </message>
    <message>
        <source>counted again</source>
        <extracomment>A usual reason why what is left of a delivery is put right</extracomment>
        <translation>neu gezählt</translation>
    </message>
    <message>
        <source>spilt</source>
        <extracomment>A usual reason why what is left of a delivery is put right</extracomment>
        <translation>verschüttet</translation>
    </message>
    <message>
        <source>used for something else</source>
        <extracomment>A usual reason why what is left of a delivery is put right</extracomment>
        <translation>für anderes verwendet</translation>
    </message>
    <message>
        <source>Weigh %1 anew</source>
        <extracomment>Title of a form; %1 the name of a delivery</extracomment>
        <translation>%1 neu wiegen</translation>
    </message>
    <message>
        <source>Count %1 anew</source>
        <translation>%1 neu zählen</translation>
    </message>
    <message>
        <source>By what was entered, %1 are left.</source>
        <extracomment>Under the title of a form; %1 an amount</extracomment>
        <translation>Nach den Einträgen sind %1 übrig.</translation>
    </message>
    <message>
        <source>Left now</source>
        <extracomment>A field's label: what is left of a delivery</extracomment>
        <translation>Jetzt übrig</translation>
    </message>
    <message>
        <source>It stands beside the difference.</source>
        <extracomment>Help under the reason why what is left of a delivery is put right</extracomment>
        <translation>Steht dann neben der Differenz.</translation>
    </message>
    <message>
        <source>Set what is left</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Rest festlegen</translation>
    </message>
    <message>
        <source>%1 is finished</source>
        <extracomment>Title of a form; %1 the name of a delivery</extracomment>
        <translation>%1 ist aufgebraucht</translation>
    </message>
    <message>
        <source>It is offered for no batch any more and stays in the list. By what was entered, %1 are left; nothing is written about them.</source>
        <extracomment>Under the title of a form; %1 an amount</extracomment>
        <translation>Sie wird für keinen Ansatz mehr angeboten und bleibt in der Liste. Nach den Einträgen sind %1 übrig; darüber wird nichts vermerkt.</translation>
    </message>
    <message>
        <source>It is finished</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Aufgebraucht</translation>
    </message>
</context>
<context>
    <name>MiteWords</name>
    <message>
        <source>%1, over your threshold</source>
        <extracomment>%1 a mite rate with its range; the whole range lies over the threshold in Set-up</extracomment>
        <translation>%1, über Ihrer Schwelle</translation>
    </message>
    <message>
        <source>%1, perhaps over your threshold</source>
        <extracomment>%1 a mite rate with its range; the range holds the threshold in Set-up</extracomment>
        <translation>%1, vielleicht über Ihrer Schwelle</translation>
    </message>
    <message>
        <source>%1, under your threshold</source>
        <extracomment>%1 a mite rate with its range; the whole range lies under the threshold in Set-up</extracomment>
        <translation>%1, unter Ihrer Schwelle</translation>
    </message>
    <message>
        <source>%1, perhaps under your threshold</source>
        <extracomment>%1 a mite rate with its range; the range holds the threshold in Set-up</extracomment>
        <translation>%1, vielleicht unter Ihrer Schwelle</translation>
    </message>
    <message>
        <source>%1 more mites</source>
        <extracomment>How mites changed; %1 a share</extracomment>
        <translation>%1 mehr Milben</translation>
    </message>
    <message>
        <source>%1 fewer mites</source>
        <extracomment>How mites changed; %1 a share</extracomment>
        <translation>%1 weniger Milben</translation>
    </message>
    <message numerus="yes">
        <source>%n treated hives</source>
        <extracomment>Hives in which mites were counted before and after a treatment</extracomment>
        <translation>
            <numerusform>%n behandelten Volk</numerusform>
            <numerusform>%n behandelten Völkern</numerusform>
        </translation>
    </message>
    <message>
        <source>By %1: %2 in %3 counted before and after. No untreated hive was counted beside them, so this is a change and says nothing of how well the strips worked.</source>
        <extracomment>What a round did to the mites; %1 a way to count, %2 "85 % fewer mites", %3 "3 treated hives"</extracomment>
        <translation>%1: %2 bei %3, vorher und nachher gezählt. Daneben wurde kein unbehandeltes Volk gezählt, darum ist das nur eine Veränderung und sagt nichts darüber, wie gut die Streifen gewirkt haben.</translation>
    </message>
    <message numerus="yes">
        <source>%n untreated hives</source>
        <extracomment>Untreated hives in which mites were counted before and after, to compare with</extracomment>
        <translation>
            <numerusform>%n unbehandelten Volk</numerusform>
            <numerusform>%n unbehandelten Völkern</numerusform>
        </translation>
    </message>
    <message>
        <source>By %1: %2 than without strips, by %3 beside %4. It shows what happened here and promises nothing.</source>
        <extracomment>What a round did to the mites; %1 a way to count, %2 "85 % fewer mites", %3 "3 treated hives", %4 "2 untreated hives"</extracomment>
        <translation>%1: %2 als ohne Streifen, bei %3 neben %4. Das zeigt, was hier geschah, und verspricht nichts.</translation>
    </message>
    <message>
        <source>How the mites changed cannot be computed: no treated hive was counted for this round both before its strips went in and after they came out.</source>
        <extracomment>Why a change of mites cannot be computed</extracomment>
        <translation>Wie sich die Milben verändert haben, lässt sich nicht berechnen: Für diese Runde wurde kein behandeltes Volk sowohl vor dem Einhängen als auch nach dem Herausnehmen der Streifen gezählt.</translation>
    </message>
    <message>
        <source>By %1: how the mites changed cannot be computed, since the untreated hives had none before or after.</source>
        <extracomment>Why a change of mites cannot be computed; %1 a way to count</extracomment>
        <translation>%1: Wie sich die Milben verändert haben, lässt sich nicht berechnen, weil die unbehandelten Völker vorher oder nachher keine hatten.</translation>
    </message>
    <message>
        <source>By %1: how the mites changed cannot be computed, since the treated hives had none before.</source>
        <extracomment>Why a change of mites cannot be computed; %1 a way to count</extracomment>
        <translation>%1: Wie sich die Milben verändert haben, lässt sich nicht berechnen, weil die behandelten Völker vorher keine hatten.</translation>
    </message>
</context>
<context>
    <name>MixResultWords</name>
    <message>
        <source>Acid %1</source>
        <extracomment>A line of a mix; %1 the mass, with whole cans in brackets</extracomment>
        <translation>Säure %1</translation>
    </message>
    <message>
        <source>Glycerine %1</source>
        <extracomment>A line of a mix; %1 the mass, with whole cans in brackets</extracomment>
        <translation>Glycerin %1</translation>
    </message>
    <message>
        <source>From pails &lt;b&gt;%1&lt;/b&gt;</source>
        <extracomment>A line of a mix; %1 the mass of all pails</extracomment>
        <translation>Aus Eimern &lt;b&gt;%1&lt;/b&gt;</translation>
    </message>
    <message>
        <source>Together &lt;b&gt;%1 at %2&lt;/b&gt;</source>
        <extracomment>The sum of a mix; %1 the mass, %2 the strength</extracomment>
        <translation>Zusammen &lt;b&gt;%1 mit %2&lt;/b&gt;</translation>
    </message>
    <message numerus="yes">
        <source>Soaks up to %n strips</source>
        <extracomment>What a mix is enough for; %n strips</extracomment>
        <translation>
            <numerusform>Tränkt bis zu %n Streifen</numerusform>
            <numerusform>Tränkt bis zu %n Streifen</numerusform>
        </translation>
    </message>
    <message>
        <source>at most %1 left</source>
        <extracomment>%1 the most liquid that can stay in the bins</extracomment>
        <translation>höchstens %1 Rest</translation>
    </message>
    <message>
        <source>room for %1 more in the tank</source>
        <extracomment>%1 a mass</extracomment>
        <translation>im Tank noch Platz für %1</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1 at %2&lt;/b&gt;, wanted %3</source>
        <extracomment>What was weighed in; %1 the mass, %2 the strength it has, %3 the strength wanted</extracomment>
        <translation>&lt;b&gt;%1 mit %2&lt;/b&gt;, gewünscht %3</translation>
    </message>
    <message>
        <source>On strength</source>
        <extracomment>A weighed mix has the strength that was wanted</extracomment>
        <translation>Gehalt stimmt</translation>
    </message>
    <message>
        <source>nothing to correct.</source>
        <extracomment>After "On strength": no correction is needed</extracomment>
        <translation>nichts zu berichtigen.</translation>
    </message>
    <message>
        <source>add %1 of the acid</source>
        <translation>%1 Säure zugeben</translation>
    </message>
    <message>
        <source>add %1 of glycerine</source>
        <extracomment>A correction of a mix; %1 a mass</extracomment>
        <translation>%1 Glycerin zugeben</translation>
    </message>
    <message>
        <source>Too weak</source>
        <translation>Zu schwach</translation>
    </message>
    <message>
        <source>Too strong</source>
        <translation>Zu stark</translation>
    </message>
    <message>
        <source>It fits into this tank.</source>
        <translation>Das passt in diesen Tank.</translation>
    </message>
    <message>
        <source>It does not fit into this tank: take some of the mix out first, or leave it as it is.</source>
        <translation>Das passt nicht in diesen Tank: zuerst etwas von der Mischung herausnehmen oder sie so lassen.</translation>
    </message>
</context>
<context>
    <name>MixWords</name>
    <message>
        <source>That saves %1 of acid and %2 of glycerine, %3 in money.</source>
        <extracomment>What leftover pails save in a mix; %1 a mass of acid, %2 of glycerine, %3 an amount of money</extracomment>
        <translation>Das spart %1 Säure und %2 Glycerin, in Geld %3.</translation>
    </message>
    <message>
        <source>That saves %1 of acid and %2 of glycerine.</source>
        <extracomment>What leftover pails save in a mix; %1 a mass of acid, %2 of glycerine</extracomment>
        <translation>Das spart %1 Säure und %2 Glycerin.</translation>
    </message>
    <message>
        <source>No other choice of whole pails uses up more.</source>
        <extracomment>Why these pails and no others</extracomment>
        <translation>Keine andere Auswahl ganzer Eimer verbraucht mehr.</translation>
    </message>
    <message>
        <source>There are too many pails to try every choice: another might use up to %1 more.</source>
        <extracomment>When there are too many pails to try every choice; %1 a mass</extracomment>
        <translation>Es sind zu viele Eimer, um jede Auswahl zu prüfen: Eine andere könnte bis zu %1 mehr verbrauchen.</translation>
    </message>
    <message>
        <source>None of these pails goes into this mix whole.</source>
        <extracomment>No leftover pail can go into this mix</extracomment>
        <translation>Keiner dieser Eimer passt ganz in diese Mischung.</translation>
    </message>
    <message>
        <source>Pails are suggested where you start from the amount to make or from the strips wanted.</source>
        <extracomment>Why no pails are suggested</extracomment>
        <translation>Eimer werden vorgeschlagen, wenn Sie von der gewünschten Menge oder den gewünschten Streifen ausgehen.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 of old liquid.</source>
        <extracomment>Which leftover pails go into a mix; %n pails, %1 their codes, %2 the liquid in them</extracomment>
        <translation>
            <numerusform>%1: %2 alte Flüssigkeit.</numerusform>
            <numerusform>%1: %2 alte Flüssigkeit.</numerusform>
        </translation>
    </message>
    <message>
        <source>stays out: one of its set is gone</source>
        <extracomment>Why a leftover pail stays out of a mix</extracomment>
        <translation>bleibt draußen: ein Eimer, der dazugehört, ist weg</translation>
    </message>
    <message>
        <source>stays out: more than the whole mix</source>
        <extracomment>Why a leftover pail stays out of a mix</extracomment>
        <translation>bleibt draußen: mehr als die ganze Mischung</translation>
    </message>
    <message>
        <source>stays out: alone too strong for this mix</source>
        <extracomment>Why a leftover pail stays out of a mix</extracomment>
        <translation>bleibt draußen: allein zu stark für diese Mischung</translation>
    </message>
    <message>
        <source>stays out: too weak, no room for the acid it needs</source>
        <extracomment>Why a leftover pail stays out of a mix</extracomment>
        <translation>bleibt draußen: zu schwach, kein Platz für die Säure, die er braucht</translation>
    </message>
    <message>
        <source>stays out: no room beside the others</source>
        <extracomment>Why a leftover pail stays out of a mix</extracomment>
        <translation>bleibt draußen: kein Platz neben den anderen</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <extracomment>A mark on a can; %1 a volume, %2 the temperature at which it holds</extracomment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>On a can with marks %1 of glycerine stand at %2.</source>
        <extracomment>A second look beside the scale; %1 a mass of glycerine, %2 marks such as "9.89 l at 20 °C"</extracomment>
        <translation>In einem Kanister mit Messstrichen stehen %1 Glycerin bei %2.</translation>
    </message>
    <message>
        <source>The whole liquid at %1: about %2, an estimate.</source>
        <extracomment>A second look beside the scale; %1 a temperature, %2 a volume</extracomment>
        <translation>Die ganze Flüssigkeit bei %1: etwa %2, geschätzt.</translation>
    </message>
    <message>
        <source>Too little to flood %1, which takes %2.</source>
        <extracomment>A mix is too small for a bin; %1 a bin, %2 the liquid that floods it</extracomment>
        <translation>Zu wenig, um %1 zu fluten: Dafür braucht es %2.</translation>
    </message>
    <message numerus="yes">
        <source>Bins like %1, side by side: %n strips, at most %2 left.</source>
        <extracomment>Strips in bins filled at the same time; %n strips, %1 a bin, %2 a mass</extracomment>
        <translation>
            <numerusform>Wannen wie %1 nebeneinander: %n Streifen, höchstens %2 Rest.</numerusform>
            <numerusform>Wannen wie %1 nebeneinander: %n Streifen, höchstens %2 Rest.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>One after another, warmed and cleared between: %n strips, at most %1 left, %2.</source>
        <extracomment>The same with one bin filled again and again; %n strips, %1 a mass, %2 "2 more days"</extracomment>
        <translation>
            <numerusform>Nacheinander, dazwischen erwärmt, bis klar: %n Streifen, höchstens %1 Rest, %2.</numerusform>
            <numerusform>Nacheinander, dazwischen erwärmt, bis klar: %n Streifen, höchstens %1 Rest, %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more days</source>
        <extracomment>How much longer it takes to fill one bin after another; %n days</extracomment>
        <translation>
            <numerusform>%n Tag mehr</numerusform>
            <numerusform>%n Tage mehr</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MixingPaper</name>
    <message numerus="yes">
        <source>%n of %1</source>
        <extracomment>Whole containers and a last part to weigh; %n containers, %1 what one holds</extracomment>
        <translation>
            <numerusform>%n zu %1</numerusform>
            <numerusform>%n zu %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 weighed out</source>
        <extracomment>A last part to weigh; %1 a mass</extracomment>
        <translation>%1 abgewogen</translation>
    </message>
    <message>
        <source>%1 by mass, as dihydrate</source>
        <extracomment>The strength of a mix on its sheet; %1 per cent</extracomment>
        <translation>%1 nach Masse, als Dihydrat</translation>
    </message>
    <message>
        <source>Pail %1, whole, scraped</source>
        <extracomment>A line of the mixing sheet; %1 the code of a pail</extracomment>
        <translation>Eimer %1, ganz, ausgeschabt</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <extracomment>A line of the mixing sheet</extracomment>
        <translation>Oxalsäure</translation>
    </message>
    <message>
        <source>Glycerine</source>
        <translation>Glycerin</translation>
    </message>
    <message>
        <source>mixing sheet %1</source>
        <extracomment>The name of a file; %1 the code of a batch</extracomment>
        <translation>Mischzettel %1</translation>
    </message>
</context>
<context>
    <name>MixingSheet</name>
    <message>
        <source>Batch</source>
        <extracomment>on the mixing sheet</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Planned for</source>
        <extracomment>on the mixing sheet: the day it is planned for</extracomment>
        <translation>Geplant für</translation>
    </message>
    <message>
        <source>Tank</source>
        <extracomment>on the mixing sheet: the tank</extracomment>
        <translation>Tank</translation>
    </message>
    <message>
        <source>Strength</source>
        <extracomment>on the mixing sheet</extracomment>
        <translation>Gehalt</translation>
    </message>
    <message>
        <source>All together</source>
        <extracomment>on the mixing sheet: the whole mass</extracomment>
        <translation>Alles zusammen</translation>
    </message>
    <message>
        <source>Level mark</source>
        <extracomment>on the mixing sheet: how high the liquid stands in the tank</extracomment>
        <translation>Füllhöhe</translation>
    </message>
    <message>
        <source>Keep under</source>
        <extracomment>on the mixing sheet: the highest temperature allowed</extracomment>
        <translation>Bleibt unter</translation>
    </message>
    <message>
        <source>Room left in the tank</source>
        <extracomment>on the mixing sheet: how much more the tank would hold</extracomment>
        <translation>Noch Platz im Tank</translation>
    </message>
    <message>
        <source>Mixed by</source>
        <extracomment>on the mixing sheet, before a line to write on</extracomment>
        <translation>Gemischt von</translation>
    </message>
    <message>
        <source>Begun on, at</source>
        <extracomment>on the mixing sheet, before a line to write on</extracomment>
        <translation>Begonnen am, um</translation>
    </message>
    <message>
        <source>Weigh in</source>
        <extracomment>heading on the mixing sheet</extracomment>
        <translation>Einwiegen</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>column on the mixing sheet: what goes in</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <source>Lot</source>
        <extracomment>column on the mixing sheet: the lot it is from</extracomment>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Planned</source>
        <extracomment>column on the mixing sheet</extracomment>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>In containers</source>
        <extracomment>column on the mixing sheet: the planned amount in whole containers and a last weighing</extracomment>
        <translation>In Gebinden</translation>
    </message>
    <message>
        <source>Weighed</source>
        <extracomment>column on the mixing sheet, to write in</extracomment>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>At</source>
        <extracomment>column on the mixing sheet, to write in: time of day</extracomment>
        <translation>Um</translation>
    </message>
    <message>
        <source>No amounts are planned yet.</source>
        <extracomment>instead of the table on a mixing sheet without amounts</extracomment>
        <translation>Noch sind keine Mengen geplant.</translation>
    </message>
    <message>
        <source>Heat and clear</source>
        <extracomment>heading on the mixing sheet</extracomment>
        <translation>Erwärmen und klären</translation>
    </message>
    <message>
        <source>Day, time</source>
        <extracomment>column to write in: day and time of day</extracomment>
        <translation>Tag, Uhrzeit</translation>
    </message>
    <message>
        <source>Probe</source>
        <extracomment>column to write in: temperature by the probe in the liquid</extracomment>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>Dial</source>
        <extracomment>column to write in: what the thermostat's dial is set to</extracomment>
        <translation>Regler</translation>
    </message>
    <message>
        <source>Room</source>
        <extracomment>column to write in: temperature of the room</extracomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Stirred</source>
        <extracomment>column to tick: the liquid was stirred</extracomment>
        <translation>Gerührt</translation>
    </message>
    <message>
        <source>Clear</source>
        <extracomment>column to tick: no crystal to be seen</extracomment>
        <translation>Klar</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>column to write in</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Mixing sheet</source>
        <extracomment>title of a printed sheet</extracomment>
        <translation>Mischzettel</translation>
    </message>
    <message>
        <source>Before</source>
        <extracomment>heading on the mixing sheet, over things to tick</extracomment>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Water seen in the jacket, then the power</source>
        <extracomment>to tick before heating</extracomment>
        <translation>Wasser im Mantel gesehen, erst dann Strom an</translation>
    </message>
    <message>
        <source>Goggles, gloves and mask on, rinsing water and eye wash beside</source>
        <extracomment>to tick before handling acid</extracomment>
        <translation>Schutzbrille, Handschuhe und Maske an, Spülwasser und Augendusche daneben</translation>
    </message>
    <message>
        <source>Scale at zero with the empty vessel, funnel tared away</source>
        <extracomment>to tick before weighing</extracomment>
        <translation>Waage mit leerem Gefäß auf null, Trichter austariert</translation>
    </message>
    <message>
        <source>Before the soak</source>
        <extracomment>heading on the mixing sheet</extracomment>
        <translation>Vor dem Tränken</translation>
    </message>
    <message>
        <source>Outlet drawn off and poured back</source>
        <extracomment>to tick: undissolved acid hides in the tank's outlet</extracomment>
        <translation>Auslauf abgelassen und zurückgegossen</translation>
    </message>
    <message>
        <source>Clear through, no crystal to be seen</source>
        <extracomment>to tick</extracomment>
        <translation>Ganz klar, kein Kristall zu sehen</translation>
    </message>
    <message>
        <source>Notes</source>
        <extracomment>heading on a printed sheet, over lines to write on</extracomment>
        <translation>Notizen</translation>
    </message>
</context>
<context>
    <name>MoveForm</name>
    <message>
        <source>Stands</source>
        <extracomment>A field's label: where bags or pails stand from now on</extracomment>
        <translation>Steht</translation>
    </message>
    <message>
        <source>A shelf, a box, a room: dark, dry and neither hot nor freezing.</source>
        <extracomment>Help under the field for a place</extracomment>
        <translation>Ein Regal, eine Kiste, ein Raum: dunkel, trocken, weder heiß noch frostig.</translation>
    </message>
    <message>
        <source>Move</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Umstellen</translation>
    </message>
    <message numerus="yes">
        <source>Move %n bag(s)</source>
        <extracomment>Title of a form</extracomment>
        <translation>
            <numerusform>%n Beutel umstellen</numerusform>
            <numerusform>%n Beutel umstellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move %n pail(s)</source>
        <extracomment>Title of a form</extracomment>
        <translation>
            <numerusform>%n Eimer umstellen</numerusform>
            <numerusform>%n Eimer umstellen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>OpenWorkbook</name>
    <message>
        <source>There is no file %1. Look whether it was moved or renamed, or whether the stick or network folder is there.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>Es gibt keine Datei %1. Sehen Sie nach, ob sie verschoben oder umbenannt wurde oder ob der Stick oder Netzwerkordner da ist.</translation>
    </message>
    <message>
        <source>%1 is not a file. Name the workbook inside it.</source>
        <extracomment>%1 is a path.</extracomment>
        <translation>%1 ist keine Datei. Nennen Sie das Arbeitsbuch darin.</translation>
    </message>
    <message>
        <source>%1 is empty: its content was lost, perhaps when it was copied. Open the newest safe copy instead.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist leer: Der Inhalt ging verloren, vielleicht beim Kopieren. Öffnen Sie stattdessen die neueste Sicherungskopie.</translation>
    </message>
    <message>
        <source>%1 is not a Soakbook workbook. Nothing in it was changed.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist kein Arbeitsbuch von Soakbook. Darin wurde nichts geändert.</translation>
    </message>
    <message>
        <source>%1 belongs to another program. Nothing in it was changed.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 gehört zu einem anderen Programm. Darin wurde nichts geändert.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Soakbook. Install that version to open it; nothing in it was changed.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 wurde mit einem neueren Soakbook geschrieben. Installieren Sie dieses, um es zu öffnen; darin wurde nichts geändert.</translation>
    </message>
    <message>
        <source>%1 cannot be read. Ask whoever looks after this computer for the right to open it, or check the disk.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 lässt sich nicht lesen. Bitten Sie den, der diesen Rechner betreut, um das Recht zum Öffnen, oder prüfen Sie den Datenträger.</translation>
    </message>
    <message>
        <source>%1 cannot be written there. Choose a folder that you may write to and that has room.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 lässt sich dort nicht schreiben. Wählen Sie einen Ordner, in den Sie schreiben dürfen und der Platz hat.</translation>
    </message>
    <message>
        <source>%1 was rebuilt by another program and is no longer sound. Open the newest safe copy instead; nothing was changed.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 wurde von einem anderen Programm umgebaut und ist nicht mehr in Ordnung. Öffnen Sie stattdessen die neueste Sicherungskopie; es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>%1 is damaged. Open the newest safe copy instead; nothing was changed.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist beschädigt. Öffnen Sie stattdessen die neueste Sicherungskopie; es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>%1 is there already, and Soakbook writes over no file. Choose another name.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 gibt es schon, und Soakbook überschreibt keine Datei. Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>%1 is held by another program just now. Close it there and try again.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist gerade in einem anderen Programm offen. Schließen Sie es dort und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>%1 must be put in order before it is opened: an older Soakbook wrote it, or another program changed how it is stored. The safe copy that comes before could not be made: nothing was changed. Make room on the disk and try again.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 muss vor dem Öffnen in Ordnung gebracht werden: Ein älteres Soakbook hat es geschrieben, oder ein anderes Programm hat geändert, wie es gespeichert ist. Die Sicherungskopie davor ließ sich nicht anlegen: Es wurde nichts geändert. Schaffen Sie Platz auf dem Datenträger und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>%1 must be put in order before it is opened: an older Soakbook wrote it, or another program changed how it is stored. That could not be done where it is; all that is in it is as it was. Copy it, and any file beside it whose name begins the same, to a folder that you may write to and that has room, and open it there.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 muss vor dem Öffnen in Ordnung gebracht werden: Ein älteres Soakbook hat es geschrieben, oder ein anderes Programm hat geändert, wie es gespeichert ist. Das ging an seinem Ort nicht; alles darin ist, wie es war. Kopieren Sie es, samt jeder Datei daneben, deren Name ebenso beginnt, in einen Ordner, in den Sie schreiben dürfen und der Platz hat, und öffnen Sie es dort.</translation>
    </message>
    <message>
        <source>Work on %1 was broken off, as when the power fails, and half of it stands in the file. Soakbook puts that right by itself, but here nothing may be written. Copy the workbook and the file beside it whose name ends in -journal to a folder that you may write to, and open it there.</source>
        <extracomment>%1 is a file's path; the file beside it has the same name with "-journal" behind it.</extracomment>
        <translation>Die Arbeit an %1 wurde abgebrochen, etwa bei einem Stromausfall, und steht nur halb in der Datei. Soakbook bringt das von selbst in Ordnung, aber hier darf nicht geschrieben werden. Kopieren Sie das Arbeitsbuch und die Datei daneben, deren Name auf -journal endet, in einen Ordner, in den Sie schreiben dürfen, und öffnen Sie es dort.</translation>
    </message>
</context>
<context>
    <name>Opening</name>
    <message>
        <source>nothing on this medium can be written.</source>
        <extracomment>After "Open only to be looked at:"</extracomment>
        <translation>Auf diesen Datenträger lässt sich nichts schreiben.</translation>
    </message>
    <message>
        <source>nothing may be written in its folder.</source>
        <extracomment>After "Open only to be looked at:"</extracomment>
        <translation>In seinen Ordner darf nichts geschrieben werden.</translation>
    </message>
    <message>
        <source>the file may only be read.</source>
        <extracomment>After "Open only to be looked at:"</extracomment>
        <translation>Die Datei darf nur gelesen werden.</translation>
    </message>
    <message>
        <source>it is open elsewhere.</source>
        <extracomment>After "Open only to be looked at:"</extracomment>
        <translation>Es ist anderswo geöffnet.</translation>
    </message>
    <message>
        <source>the file is damaged; what can still be read of it is shown.</source>
        <extracomment>After "Open only to be looked at:"</extracomment>
        <translation>Die Datei ist beschädigt; gezeigt wird, was davon noch lesbar ist.</translation>
    </message>
    <message>
        <source>a newer Soakbook wrote it.</source>
        <extracomment>After "Open only to be looked at:"</extracomment>
        <translation>Ein neueres Soakbook hat es geschrieben.</translation>
    </message>
    <message>
        <source>this is a safe copy, which stays as it is.</source>
        <extracomment>After "Open only to be looked at:"</extracomment>
        <translation>Dies ist eine Sicherungskopie; sie bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>you wished it so.</source>
        <extracomment>After "Open only to be looked at:"</extracomment>
        <translation>Sie wollten es so.</translation>
    </message>
    <message>
        <source>To make entries, copy it to a folder of this computer and open it there.</source>
        <extracomment>The way out of a workbook that can only be looked at</extracomment>
        <translation>Zum Eintragen kopieren Sie es in einen Ordner auf diesem Rechner und öffnen Sie es dort.</translation>
    </message>
    <message>
        <source>To make entries, allow writing in that folder, or keep the workbook in another one.</source>
        <extracomment>The way out of a workbook that can only be looked at</extracomment>
        <translation>Zum Eintragen erlauben Sie das Schreiben in diesem Ordner oder bewahren Sie das Arbeitsbuch in einem anderen auf.</translation>
    </message>
    <message>
        <source>To make entries, allow writing in the file.</source>
        <extracomment>The way out of a workbook that can only be looked at</extracomment>
        <translation>Zum Eintragen erlauben Sie das Schreiben in die Datei.</translation>
    </message>
    <message>
        <source>To make entries, close it there and open it here again.</source>
        <extracomment>The way out of a workbook that can only be looked at</extracomment>
        <translation>Zum Eintragen schließen Sie es dort und öffnen Sie es hier noch einmal.</translation>
    </message>
    <message>
        <source>To go on, put a safe copy in its place.</source>
        <extracomment>The way out of a workbook that can only be looked at</extracomment>
        <translation>Zum Weiterarbeiten holen Sie eine Sicherungskopie zurück.</translation>
    </message>
    <message>
        <source>To make entries, install that version.</source>
        <extracomment>The way out of a workbook that can only be looked at</extracomment>
        <translation>Zum Eintragen installieren Sie jene Version.</translation>
    </message>
    <message>
        <source>To make entries, open the workbook itself.</source>
        <extracomment>The way out of a workbook that can only be looked at</extracomment>
        <translation>Zum Eintragen öffnen Sie das Arbeitsbuch selbst.</translation>
    </message>
    <message>
        <source>To make entries, open it again.</source>
        <extracomment>The way out of a workbook that can only be looked at</extracomment>
        <translation>Zum Eintragen öffnen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>%1 has it open on the computer %2, since %3.</source>
        <extracomment>Who has a workbook open: %1 a person's name on that computer, %2 the computer's name, %3 a day and time</extracomment>
        <translation>%1 hat es am Rechner %2 geöffnet, seit %3.</translation>
    </message>
    <message>
        <source>%1 has it open on this computer, since %2.</source>
        <extracomment>Who has a workbook open: %1 a person's name on this computer, %2 a day and time</extracomment>
        <translation>%1 hat es an diesem Rechner geöffnet, seit %2.</translation>
    </message>
    <message>
        <source>It is open on this computer in another Soakbook window, since %1.</source>
        <extracomment>%1 a day and time</extracomment>
        <translation>Es ist an diesem Rechner in einem anderen Fenster von Soakbook geöffnet, seit %1.</translation>
    </message>
    <message>
        <source>The file %1 says that this workbook is open, but not where. If two make entries in one workbook, entries are lost: see that it is closed everywhere else, or look at it here without making entries.</source>
        <extracomment>%1 a file</extracomment>
        <translation>Die Datei %1 besagt, dass dieses Arbeitsbuch geöffnet ist, aber nicht, wo. Wenn zwei in ein Arbeitsbuch eintragen, gehen Einträge verloren: Sorgen Sie dafür, dass es überall sonst geschlossen ist, oder sehen Sie es hier nur an, ohne einzutragen.</translation>
    </message>
    <message>
        <source>%1 If two make entries in one workbook, entries are lost: go on there, or close it there and try again. It can be looked at here without making entries.</source>
        <extracomment>Why a workbook is not opened: %1 who has it open, a sentence</extracomment>
        <translation>%1 Wenn zwei in ein Arbeitsbuch eintragen, gehen Einträge verloren: Machen Sie dort weiter, oder schließen Sie es dort und versuchen Sie es noch einmal. Hier lässt es sich ansehen, ohne einzutragen.</translation>
    </message>
    <message>
        <source>Open only to be looked at: %1 %2</source>
        <extracomment>Above the pages of a workbook that can only be looked at: %1 why, %2 the way out; both are sentences</extracomment>
        <translation>Nur zum Ansehen geöffnet: %1 %2</translation>
    </message>
    <message>
        <source>No entry can be made, for the workbook is open only to be looked at: %1</source>
        <extracomment>Beside a button that cannot be used: %1 why, a sentence</extracomment>
        <translation>Kein Eintrag möglich, das Arbeitsbuch ist nur zum Ansehen geöffnet: %1</translation>
    </message>
    <message>
        <source>This workbook is damaged</source>
        <extracomment>Title of a window</extracomment>
        <translation>Dieses Arbeitsbuch ist beschädigt</translation>
    </message>
    <message>
        <source>This file is empty</source>
        <extracomment>Title of a window</extracomment>
        <translation>Diese Datei ist leer</translation>
    </message>
    <message>
        <source>The workbook is not there</source>
        <extracomment>Title of a window</extracomment>
        <translation>Das Arbeitsbuch ist nicht da</translation>
    </message>
    <message>
        <source>This is not a workbook</source>
        <extracomment>Title of a window</extracomment>
        <translation>Das ist kein Arbeitsbuch</translation>
    </message>
    <message>
        <source>A newer Soakbook wrote this workbook</source>
        <extracomment>Title of a window</extracomment>
        <translation>Ein neueres Soakbook hat dieses Arbeitsbuch geschrieben</translation>
    </message>
    <message>
        <source>Another program has this workbook</source>
        <extracomment>Title of a window</extracomment>
        <translation>Ein anderes Programm hält dieses Arbeitsbuch belegt</translation>
    </message>
    <message>
        <source>Work on this workbook was broken off</source>
        <extracomment>Title of a window</extracomment>
        <translation>Die Arbeit an diesem Arbeitsbuch wurde abgebrochen</translation>
    </message>
    <message>
        <source>This workbook must be put in order first</source>
        <extracomment>Title of a window</extracomment>
        <translation>Dieses Arbeitsbuch muss erst in Ordnung gebracht werden</translation>
    </message>
    <message>
        <source>The workbook could not be opened</source>
        <extracomment>Title of a window</extracomment>
        <translation>Das Arbeitsbuch ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>This is another copy of the workbook %1. That one had come to entry %2 on %3, and what stood in it then is not in this one.</source>
        <extracomment>%1 a file, %2 the number of an entry, %3 a day and time</extracomment>
        <translation>Dies ist eine andere Kopie des Arbeitsbuchs %1. Jenes war am %3 bis Eintrag %2 gekommen, und was damals darin stand, steht in diesem nicht.</translation>
    </message>
    <message>
        <source>This is not the workbook that stood here: that one had come to entry %1 on %2, and this one holds other entries in its place. It seems that entries were made in two copies.</source>
        <extracomment>%1 the number of an entry, %2 a day and time</extracomment>
        <translation>Dies ist nicht das Arbeitsbuch, das hier lag: Jenes war am %2 bis Eintrag %1 gekommen, und in diesem stehen an dessen Stelle andere Einträge. Anscheinend wurde in zwei Kopien getrennt weitergeschrieben.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) that stood here on %1 are missing: this seems to be an older copy.</source>
        <extracomment>%n entries, %1 a day and time</extracomment>
        <translation>
            <numerusform>%n Eintrag, der hier am %1 stand, fehlt: Das ist anscheinend eine ältere Kopie.</numerusform>
            <numerusform>%n Einträge, die hier am %1 standen, fehlen: Das ist anscheinend eine ältere Kopie.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is the workbook itself. Choose a safe copy of it.</source>
        <extracomment>%1 a file</extracomment>
        <translation>%1 ist das Arbeitsbuch selbst. Wählen Sie eine Sicherungskopie davon.</translation>
    </message>
    <message>
        <source>%1 is not a workbook. Nothing was changed.</source>
        <extracomment>%1 a file</extracomment>
        <translation>%1 ist kein Arbeitsbuch. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>A newer Soakbook made %1. Install that version to put it back; nothing was changed.</source>
        <extracomment>%1 a file</extracomment>
        <translation>Ein neueres Soakbook hat %1 gemacht. Installieren Sie jene Version, um die Kopie zurückzuholen; es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>%1 is a copy of another workbook. Nothing was changed.</source>
        <extracomment>%1 a file</extracomment>
        <translation>%1 ist eine Kopie eines anderen Arbeitsbuchs. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>%1 is damaged itself. Nothing was changed: take another copy.</source>
        <extracomment>%1 a file</extracomment>
        <translation>%1 ist selbst beschädigt. Es wurde nichts geändert: Nehmen Sie eine andere Kopie.</translation>
    </message>
    <message>
        <source>%1 cannot be read. Nothing was changed: see that it is there, or take another copy.</source>
        <extracomment>%1 a file</extracomment>
        <translation>%1 lässt sich nicht lesen. Es wurde nichts geändert: Sehen Sie nach, ob die Datei da ist, oder nehmen Sie eine andere Kopie.</translation>
    </message>
    <message>
        <source>Another program holds %1 or the copy. Nothing was changed: close it there and try again.</source>
        <extracomment>%1 a file</extracomment>
        <translation>Ein anderes Programm hält %1 oder die Kopie belegt. Es wurde nichts geändert: Schließen Sie es dort und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>What is in %1 now could not be kept as a copy first, so nothing was changed. Make room for safe copies and try again.</source>
        <extracomment>%1 a file</extracomment>
        <translation>Was jetzt in %1 steht, ließ sich nicht vorher als Kopie aufbewahren, darum wurde nichts geändert. Schaffen Sie Platz für Sicherungskopien und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>There is no room beside %1. Nothing was changed: make room and try again.</source>
        <extracomment>%1 a file</extracomment>
        <translation>Neben %1 ist kein Platz. Es wurde nichts geändert: Schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Nothing may be written beside %1. Nothing was changed: allow writing in that folder and try again.</source>
        <extracomment>%1 a file</extracomment>
        <translation>Neben %1 darf nichts geschrieben werden. Es wurde nichts geändert: Erlauben Sie das Schreiben in diesem Ordner und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Parts of the file do not read as they were written.</source>
        <extracomment>What is wrong with a workbook</extracomment>
        <translation>Teile der Datei lesen sich nicht so, wie sie geschrieben wurden.</translation>
    </message>
    <message>
        <source>Entry %1 is the first that is not as it was written.</source>
        <extracomment>What is wrong with a workbook; %1 the number of an entry</extracomment>
        <translation>Der erste Eintrag, der nicht so dasteht, wie er geschrieben wurde, hat die Nummer %1.</translation>
    </message>
    <message>
        <source>A record is not as the history has it: %1.</source>
        <extracomment>What is wrong with a workbook; %1 a kind of record and its number, as in: bag 17</extracomment>
        <translation>Eine Aufzeichnung ist nicht so, wie der Verlauf sie kennt: %1.</translation>
    </message>
</context>
<context>
    <name>PailColumns</name>
    <message>
        <source>Mass, %1</source>
        <extracomment>Header of a column: the mass in a pail; %1 the sign of the unit</extracomment>
        <translation>Masse, %1</translation>
    </message>
    <message>
        <source>Days</source>
        <extracomment>Header of a column: days that a pail has been waiting</extracomment>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Waits longer than you allow in Set-up</source>
        <extracomment>Tool tip of the days that a pail has been waiting</extracomment>
        <translation>Steht länger, als Sie in der Einrichtung zulassen</translation>
    </message>
    <message>
        <source>Pail</source>
        <extracomment>Header of a column: the code of a pail</extracomment>
        <translation>Eimer</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>Header of a column: whether a pail can go into a mix</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Strength</source>
        <extracomment>Header of a column: the strength of the liquid in a pail</extracomment>
        <translation>Gehalt</translation>
    </message>
    <message>
        <source>Goes in with</source>
        <extracomment>Header of a column: codes of pails that go into a mix only together with this one</extracomment>
        <translation>Nur mit</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>Header of a column: where a pail stands</extracomment>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Batch</source>
        <extracomment>Header of a column: the code of a batch</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Sealed</source>
        <extracomment>Header of a column: the day a pail was sealed</extracomment>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Oldest liquid</source>
        <extracomment>Header of a column: the day on which the oldest liquid in a pail was mixed</extracomment>
        <translation>Älteste Flüssigkeit</translation>
    </message>
    <message>
        <source>Warmed</source>
        <extracomment>Header of a column: how often the liquid in a pail was warmed</extracomment>
        <translation>Erwärmt</translation>
    </message>
    <message>
        <source>Label</source>
        <extracomment>Header of a column: whether a label was printed</extracomment>
        <translation>Etikett</translation>
    </message>
</context>
<context>
    <name>PailForms</name>
    <message>
        <source>Pail %1 was used in part</source>
        <extracomment>Title of a form; %1 the code of a pail</extracomment>
        <translation>Eimer %1 wurde teilweise verwendet</translation>
    </message>
    <message>
        <source>In a pail that stands, acid settles: what is poured off the top may be almost pure glycerine, and what stays is stronger. So the strength of the rest is unknown from then on, and it goes into no mix.</source>
        <extracomment>Under the title of a form</extracomment>
        <translation>In einem Eimer, der steht, setzt sich Säure ab: Was oben abgegossen wird, kann fast reines Glycerin sein, und was bleibt, ist stärker. Darum ist der Gehalt des Rests von da an unbekannt, und er kommt in keine Mischung.</translation>
    </message>
    <message>
        <source>Used on</source>
        <extracomment>A field's label: the day a part of a pail was used</extracomment>
        <translation>Verwendet am</translation>
    </message>
    <message>
        <source>Its strength is unknown now</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Gehalt jetzt unbekannt</translation>
    </message>
    <message>
        <source>Discard pail %1</source>
        <extracomment>Title of a form; %1 the code of a pail</extracomment>
        <translation>Eimer %1 entsorgen</translation>
    </message>
    <message>
        <source>All of it, %1.</source>
        <extracomment>Under the title of a form; %1 a mass</extracomment>
        <translation>Alles, %1.</translation>
    </message>
    <message>
        <source>On</source>
        <extracomment>A field's label: the day on which it was done</extracomment>
        <translation>Am</translation>
    </message>
    <message>
        <source>today</source>
        <extracomment>Stands in an empty field for a day</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>strength unknown</source>
        <extracomment>A usual reason why the liquid in a pail is thrown away</extracomment>
        <translation>Gehalt unbekannt</translation>
    </message>
    <message>
        <source>brown or dirty</source>
        <extracomment>A usual reason why the liquid in a pail is thrown away</extracomment>
        <translation>braun oder schmutzig</translation>
    </message>
    <message>
        <source>pail was not tight</source>
        <extracomment>A usual reason why the liquid in a pail is thrown away</extracomment>
        <translation>Eimer war nicht dicht</translation>
    </message>
    <message>
        <source>spilt</source>
        <extracomment>A usual reason why the liquid in a pail is thrown away</extracomment>
        <translation>verschüttet</translation>
    </message>
    <message>
        <source>It stands in the pail's history.</source>
        <extracomment>Help under the reason why the liquid in a pail is thrown away</extracomment>
        <translation>Steht im Verlauf des Eimers.</translation>
    </message>
    <message>
        <source>Discard</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Entsorgen</translation>
    </message>
    <message>
        <source>Correct the mass of pail %1</source>
        <extracomment>Title of a form; %1 the code of a pail</extracomment>
        <translation>Masse von Eimer %1 berichtigen</translation>
    </message>
    <message>
        <source>%1 stand on it: the net mass when it was filled. A label that was printed is printed again.</source>
        <extracomment>Under the title of a form; %1 a mass</extracomment>
        <translation>Darauf stehen %1: die Nettomasse beim Füllen. Ein schon gedrucktes Etikett wird neu gedruckt.</translation>
    </message>
    <message>
        <source>Net mass</source>
        <extracomment>A field's label: the mass in a pail</extracomment>
        <translation>Nettomasse</translation>
    </message>
    <message>
        <source>Correct it</source>
        <extracomment>Filled button of a form that puts an entry right</extracomment>
        <translation>Berichtigen</translation>
    </message>
</context>
<context>
    <name>PaperFailure</name>
    <message>
        <source>There is no room left for %1. Nothing was written; choose another place or make room.</source>
        <extracomment>%1 is a file's name with its folders</extracomment>
        <translation>Für %1 ist kein Platz mehr. Es wurde nichts geschrieben; wählen Sie einen anderen Ort oder schaffen Sie Platz.</translation>
    </message>
    <message>
        <source>%1 may not be written to. Choose another name or folder.</source>
        <extracomment>%1 is a file's name with its folders</extracomment>
        <translation>In %1 darf nicht geschrieben werden. Wählen Sie einen anderen Namen oder Ordner.</translation>
    </message>
    <message>
        <source>The folder for %1 does not exist. Choose another.</source>
        <extracomment>%1 is a file's name with its folders</extracomment>
        <translation>Den Ordner für %1 gibt es nicht. Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>The printer took no page. See whether it is switched on and has paper, or save a PDF instead.</source>
        <extracomment>the printer refused</extracomment>
        <translation>Der Drucker hat keine Seite angenommen. Sehen Sie nach, ob er eingeschaltet ist und Papier hat, oder speichern Sie stattdessen ein PDF.</translation>
    </message>
    <message>
        <source>There is nothing to print.</source>
        <extracomment>an empty list was to be printed</extracomment>
        <translation>Es gibt nichts zu drucken.</translation>
    </message>
</context>
<context>
    <name>PaperHead</name>
    <message>
        <source>Entry %1</source>
        <extracomment>At the foot of a sheet: how many entries the workbook held; %1 a number</extracomment>
        <translation>Eintrag %1</translation>
    </message>
    <message>
        <source>%1, from a workbook open only to be looked at</source>
        <extracomment>At the foot of a sheet, behind how many entries the workbook held; %1 those words</extracomment>
        <translation>%1, aus einem nur zum Ansehen geöffneten Arbeitsbuch</translation>
    </message>
    <message>
        <source>Entry %1, seal %2</source>
        <extracomment>At the foot of a sheet: how far the workbook had come; %1 the number of the newest entry, %2 the beginning of its seal</extracomment>
        <translation>Eintrag %1, Siegel %2</translation>
    </message>
    <message>
        <source>Kept on paper or in another place, this line shows later whether the entries up to it are still as they were. It shows accidents and casual edits, not the work of somebody determined, who can seal a changed workbook anew.</source>
        <extracomment>In the register, after "Entry 1234, seal 0f3a2b4c5d6e7f80": what that line is good for, and what it is not</extracomment>
        <translation>Auf Papier oder an einem anderen Ort aufbewahrt, zeigt diese Zeile später, ob die Einträge bis dahin noch so sind, wie sie waren. Sie zeigt Versehen und beiläufige Änderungen, nicht das Werk von jemandem, der es darauf anlegt: Er kann ein geändertes Arbeitsbuch neu versiegeln.</translation>
    </message>
</context>
<context>
    <name>PaperSheet</name>
    <message>
        <source>printed %1</source>
        <extracomment>at the foot of a printed sheet; %1 is a date</extracomment>
        <translation>gedruckt %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <extracomment>at the foot of a printed sheet</extracomment>
        <translation>Seite %1 von %2</translation>
    </message>
</context>
<context>
    <name>Piece</name>
    <message>
        <source>operation set up</source>
        <extracomment>A piece of work</extracomment>
        <translation>Betrieb eingerichtet</translation>
    </message>
    <message>
        <source>figures of Set-up</source>
        <extracomment>A piece of work: a figure in Set-up was said or changed</extracomment>
        <translation>Werte der Einrichtung</translation>
    </message>
    <message>
        <source>person %1</source>
        <extracomment>%1 a person</extracomment>
        <translation>Person %1</translation>
    </message>
    <message>
        <source>strip %1</source>
        <extracomment>%1 a kind of strip</extracomment>
        <translation>Streifen %1</translation>
    </message>
    <message>
        <source>vessel %1</source>
        <extracomment>%1 a tank or a bin</extracomment>
        <translation>Gefäß %1</translation>
    </message>
    <message>
        <source>delivery of lot %1</source>
        <extracomment>%1 a lot of material</extracomment>
        <translation>Lieferung von Charge %1</translation>
    </message>
    <message>
        <source>lot %1 corrected</source>
        <extracomment>%1 a lot of material</extracomment>
        <translation>Charge %1 berichtigt</translation>
    </message>
    <message>
        <source>lot %1 recounted</source>
        <extracomment>%1 a lot of material</extracomment>
        <translation>Charge %1 nachgezählt</translation>
    </message>
    <message>
        <source>lot %1 used up</source>
        <extracomment>%1 a lot of material</extracomment>
        <translation>Charge %1 aufgebraucht</translation>
    </message>
    <message>
        <source>batch %1 planned</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Ansatz %1 geplant</translation>
    </message>
    <message>
        <source>batch %1 weighed in</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Ansatz %1 eingewogen</translation>
    </message>
    <message>
        <source>batch %1 corrected</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Ansatz %1 berichtigt</translation>
    </message>
    <message>
        <source>reading of batch %1</source>
        <extracomment>%1 a batch; a reading of the temperature</extracomment>
        <translation>Ablesung, Ansatz %1</translation>
    </message>
    <message>
        <source>stir of batch %1</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Rühren, Ansatz %1</translation>
    </message>
    <message numerus="yes">
        <source>%n bin(s) of batch %1 filled</source>
        <extracomment>%n bins, %1 a batch</extracomment>
        <translation>
            <numerusform>%n Wanne von Ansatz %1 gefüllt</numerusform>
            <numerusform>%n Wannen von Ansatz %1 gefüllt</numerusform>
        </translation>
    </message>
    <message>
        <source>end of soak, batch %1</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Ende des Tränkens, Ansatz %1</translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s) of %1 weighed</source>
        <extracomment>%n strips, %1 a batch, a bag or a hive</extracomment>
        <translation>
            <numerusform>%n Streifen von %1 gewogen</numerusform>
            <numerusform>%n Streifen von %1 gewogen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s) of batch %1</source>
        <extracomment>%n bags, %1 a batch</extracomment>
        <translation>
            <numerusform>%n Beutel von Ansatz %1</numerusform>
            <numerusform>%n Beutel von Ansatz %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) for batch %1</source>
        <extracomment>%n labels, %1 a batch</extracomment>
        <translation>
            <numerusform>%n Etikett für Ansatz %1</numerusform>
            <numerusform>%n Etiketten für Ansatz %1</numerusform>
        </translation>
    </message>
    <message>
        <source>bag %1 filled</source>
        <extracomment>%1 a bag</extracomment>
        <translation>Beutel %1 gefüllt</translation>
    </message>
    <message numerus="yes">
        <source>%n pail(s) of batch %1 poured</source>
        <extracomment>%n pails, %1 a batch</extracomment>
        <translation>
            <numerusform>%n Eimer von Ansatz %1 abgegossen</numerusform>
            <numerusform>%n Eimer von Ansatz %1 abgegossen</numerusform>
        </translation>
    </message>
    <message>
        <source>loss of batch %1</source>
        <extracomment>%1 a batch; liquid that was lost and why</extracomment>
        <translation>Verlust, Ansatz %1</translation>
    </message>
    <message>
        <source>batch %1 closed</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Ansatz %1 abgeschlossen</translation>
    </message>
    <message>
        <source>batch %1 opened again</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Ansatz %1 wieder geöffnet</translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s) moved</source>
        <extracomment>%n bags</extracomment>
        <translation>
            <numerusform>%n Beutel umgestellt</numerusform>
            <numerusform>%n Beutel umgestellt</numerusform>
        </translation>
    </message>
    <message>
        <source>bag %1 opened</source>
        <extracomment>%1 a bag</extracomment>
        <translation>Beutel %1 geöffnet</translation>
    </message>
    <message>
        <source>bag %1 sealed again</source>
        <extracomment>%1 a bag</extracomment>
        <translation>Beutel %1 wieder verschlossen</translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s) of %1 thrown away</source>
        <extracomment>%n strips, %1 a bag</extracomment>
        <translation>
            <numerusform>%n Streifen von %1 entsorgt</numerusform>
            <numerusform>%n Streifen von %1 entsorgt</numerusform>
        </translation>
    </message>
    <message>
        <source>bag %1 recounted</source>
        <extracomment>%1 a bag</extracomment>
        <translation>Beutel %1 nachgezählt</translation>
    </message>
    <message numerus="yes">
        <source>%n pail(s) moved</source>
        <extracomment>%n pails</extracomment>
        <translation>
            <numerusform>%n Eimer umgestellt</numerusform>
            <numerusform>%n Eimer umgestellt</numerusform>
        </translation>
    </message>
    <message>
        <source>pail %1 used in part</source>
        <extracomment>%1 a pail</extracomment>
        <translation>Eimer %1 teilweise verwendet</translation>
    </message>
    <message>
        <source>pail %1 thrown away</source>
        <extracomment>%1 a pail</extracomment>
        <translation>Eimer %1 entsorgt</translation>
    </message>
    <message>
        <source>yard %1</source>
        <extracomment>%1 a yard</extracomment>
        <translation>Stand %1</translation>
    </message>
    <message>
        <source>calendar of %1</source>
        <extracomment>%1 a yard; a time such as a flow in its calendar</extracomment>
        <translation>Kalender von %1</translation>
    </message>
    <message numerus="yes">
        <source>%n hive(s) in %1</source>
        <extracomment>%n hives, %1 a yard</extracomment>
        <translation>
            <numerusform>%n Volk am Stand %1</numerusform>
            <numerusform>%n Völker am Stand %1</numerusform>
        </translation>
    </message>
    <message>
        <source>hive %1 changed</source>
        <extracomment>%1 a hive</extracomment>
        <translation>Volk %1 geändert</translation>
    </message>
    <message numerus="yes">
        <source>%n hive(s) moved to %1</source>
        <extracomment>%n hives, %1 the yard they went to</extracomment>
        <translation>
            <numerusform>%n Volk zum Stand %1 gebracht</numerusform>
            <numerusform>%n Völker zum Stand %1 gebracht</numerusform>
        </translation>
    </message>
    <message>
        <source>round %1 planned</source>
        <extracomment>%1 a round of treatment</extracomment>
        <translation>Runde %1 geplant</translation>
    </message>
    <message>
        <source>round %1 closed</source>
        <extracomment>%1 a round of treatment</extracomment>
        <translation>Runde %1 abgeschlossen</translation>
    </message>
    <message numerus="yes">
        <source>strips in, %n hive(s) in %1</source>
        <extracomment>%n hives, %1 a yard</extracomment>
        <translation>
            <numerusform>Streifen hinein, %n Volk am Stand %1</numerusform>
            <numerusform>Streifen hinein, %n Völker am Stand %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>strips out, %n hive(s) in %1</source>
        <extracomment>%n hives, %1 a yard</extracomment>
        <translation>
            <numerusform>Streifen heraus, %n Volk am Stand %1</numerusform>
            <numerusform>Streifen heraus, %n Völker am Stand %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>mites counted, %n hive(s) in %1</source>
        <extracomment>%n hives, %1 a yard</extracomment>
        <translation>
            <numerusform>Milben gezählt, %n Volk am Stand %1</numerusform>
            <numerusform>Milben gezählt, %n Völker am Stand %1</numerusform>
        </translation>
    </message>
    <message>
        <source>correction of %1</source>
        <extracomment>%1 a code or a name</extracomment>
        <translation>Berichtigung: %1</translation>
    </message>
    <message>
        <source>%1 made void</source>
        <extracomment>%1 a code or a name</extracomment>
        <translation>%1 für ungültig erklärt</translation>
    </message>
    <message>
        <source>print of %1</source>
        <extracomment>%1 a paper</extracomment>
        <translation>Druck: %1</translation>
    </message>
    <message>
        <source>an entry</source>
        <extracomment>A piece of work that has no better name</extracomment>
        <translation>ein Eintrag</translation>
    </message>
    <message>
        <source>taken back: %1</source>
        <extracomment>In the journal; %1 a piece of work that was undone</extracomment>
        <translation>zurückgenommen: %1</translation>
    </message>
    <message>
        <source>done again: %1</source>
        <extracomment>In the journal; %1 a piece of work that was undone and then done again</extracomment>
        <translation>wiederholt: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) printed</source>
        <extracomment>A piece of work: %n labels of bags and pails were printed</extracomment>
        <translation>
            <numerusform>%n Etikett gedruckt</numerusform>
            <numerusform>%n Etiketten gedruckt</numerusform>
        </translation>
    </message>
    <message>
        <source>mixing sheet printed</source>
        <extracomment>A piece of work</extracomment>
        <translation>Mischzettel gedruckt</translation>
    </message>
    <message>
        <source>batch sheet printed</source>
        <extracomment>A piece of work</extracomment>
        <translation>Ansatzblatt gedruckt</translation>
    </message>
    <message>
        <source>run sheet printed</source>
        <extracomment>A piece of work: the list of hives to hang strips in</extracomment>
        <translation>Laufzettel gedruckt</translation>
    </message>
    <message>
        <source>load-out printed</source>
        <extracomment>A piece of work: the list of bags to take along</extracomment>
        <translation>Ladeliste gedruckt</translation>
    </message>
    <message>
        <source>pull list printed</source>
        <extracomment>A piece of work</extracomment>
        <translation>Herausnahmeliste gedruckt</translation>
    </message>
    <message>
        <source>register printed</source>
        <extracomment>A piece of work</extracomment>
        <translation>Behandlungsbuch gedruckt</translation>
    </message>
    <message>
        <source>register saved as a table</source>
        <extracomment>A piece of work: the register as a table for a spreadsheet</extracomment>
        <translation>Behandlungsbuch als Tabelle gespeichert</translation>
    </message>
    <message>
        <source>workbook brought up to this version</source>
        <extracomment>A piece of work: a workbook of an older version was brought to the form that this version keeps</extracomment>
        <translation>Arbeitsbuch auf den Stand dieser Version gebracht</translation>
    </message>
    <message>
        <source>workbook put back to %1</source>
        <extracomment>%1 a file; the workbook was put back to an older copy of itself</extracomment>
        <translation>Arbeitsbuch auf %1 zurückgesetzt</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) taken over from %1</source>
        <extracomment>%1 a file; %n entries of another copy of the workbook were written into this one</extracomment>
        <translation>
            <numerusform>%n Eintrag aus %1 übernommen</numerusform>
            <numerusform>%n Einträge aus %1 übernommen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PrintActions</name>
    <message>
        <source>Print</source>
        <extracomment>title of the window that asks which printer</extracomment>
        <translation>Drucken</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) sent to the printer.</source>
        <extracomment>after pages went to the printer</extracomment>
        <translation>
            <numerusform>%n Seite an den Drucker geschickt.</numerusform>
            <numerusform>%n Seiten an den Drucker geschickt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <extracomment>title of a window that asks for a file's name</extracomment>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <extracomment>kind of file</extracomment>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <extracomment>after saving; %1 is a file's name</extracomment>
        <translation>Gespeichert als %1.</translation>
    </message>
</context>
<context>
    <name>Program</name>
    <message>
        <source>There is no display to show a window on. "soakbook --tour FOLDER" saves pictures of it instead.</source>
        <extracomment>Said on the command line where no window can be shown; --tour stays as it is.</extracomment>
        <translation>Es gibt keinen Bildschirm für ein Fenster. „soakbook --tour ORDNER“ speichert stattdessen Bilder davon.</translation>
    </message>
</context>
<context>
    <name>PullGrid</name>
    <message>
        <source>Yard</source>
        <extracomment>Column</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Hive</source>
        <extracomment>Column</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>hung in %1</source>
        <extracomment>%1 the yard where a hive stood when its strips were hung</extracomment>
        <translation>eingehängt am Stand %1</translation>
    </message>
    <message>
        <source>Bag</source>
        <extracomment>Column: the bag that the strips came from</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Hanging</source>
        <extracomment>Column: strips that hang</extracomment>
        <translation>Hängen</translation>
    </message>
    <message>
        <source>Since</source>
        <extracomment>Column: the day the strips were hung</extracomment>
        <translation>Seit</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Column: 1 on the day the strips were hung</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Pull window</source>
        <extracomment>Column: the first and last day to pull</extracomment>
        <translation>Herausnahme</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>Column: how the strips hang</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>hive dead, %1</source>
        <extracomment>%1 how the strips of a dead hive hang</extracomment>
        <translation>Volk tot, %1</translation>
    </message>
    <message>
        <source>Pulled</source>
        <extracomment>Column: strips taken out</extracomment>
        <translation>Heraus</translation>
    </message>
    <message>
        <source>stay in</source>
        <extracomment>In place of a number: these strips stay in the hive</extracomment>
        <translation>bleiben drin</translation>
    </message>
    <message>
        <source>Missing</source>
        <extracomment>Column: strips that were not found any more</extracomment>
        <translation>Fehlen</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Column</extracomment>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>PullPaper</name>
    <message>
        <source>not yet</source>
        <extracomment>Strips that are not to be pulled yet</extracomment>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>to pull</source>
        <extracomment>Strips that may be pulled</extracomment>
        <translation>herausnehmen</translation>
    </message>
    <message>
        <source>pull soon</source>
        <extracomment>Strips whose last day is near</extracomment>
        <translation>bald herausnehmen</translation>
    </message>
    <message>
        <source>overdue</source>
        <extracomment>Strips that hang longer than their last day</extracomment>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>All yards</source>
        <extracomment>In place of a yard's name</extracomment>
        <translation>Alle Stände</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>A hive and, where several yards are on one sheet, its yard</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>hive dead</source>
        <extracomment>The strips hang in a dead hive</extracomment>
        <translation>Volk tot</translation>
    </message>
    <message>
        <source>hung in %1</source>
        <extracomment>%1 the yard where a hive stood when its strips were hung</extracomment>
        <translation>eingehängt am Stand %1</translation>
    </message>
    <message>
        <source>pull list %1</source>
        <extracomment>The name of a file; %1 a yard</extracomment>
        <translation>Herausnahmeliste %1</translation>
    </message>
</context>
<context>
    <name>Reason</name>
    <message>
        <source>Reason</source>
        <extracomment>Label of a field</extracomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>It is kept beside what stood there before, and the register shows it.</source>
        <extracomment>Help beneath a field for a reason</extracomment>
        <translation>Er bleibt neben dem stehen, was vorher da stand, und das Behandlungsbuch zeigt ihn.</translation>
    </message>
</context>
<context>
    <name>ReasonField</name>
    <message>
        <source>Reason</source>
        <extracomment>Label of a field</extracomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <extracomment>Read aloud for a button that fills in a reason; %1 the reason</extracomment>
        <translation>Grund: %1</translation>
    </message>
    <message>
        <source>It stands beside the entry for good, with what it said before.</source>
        <extracomment>Help under the reason of a correction</extracomment>
        <translation>Er bleibt dauerhaft beim Eintrag stehen, mit dem, was vorher da stand.</translation>
    </message>
    <message>
        <source>misread</source>
        <extracomment>A usual reason of a correction</extracomment>
        <translation>falsch abgelesen</translation>
    </message>
    <message>
        <source>mistyped</source>
        <extracomment>A usual reason of a correction
----------
A usual reason why strips in or out of a hive are put right
----------
A usual reason why a name is changed</extracomment>
        <translation>vertippt</translation>
    </message>
    <message>
        <source>weighed again</source>
        <extracomment>A usual reason of a correction</extracomment>
        <translation>nochmals gewogen</translation>
    </message>
    <message>
        <source>wrong bag</source>
        <extracomment>A usual reason of a correction</extracomment>
        <translation>falscher Beutel</translation>
    </message>
    <message>
        <source>miscounted</source>
        <extracomment>A usual reason why strips in or out of a hive are put right</extracomment>
        <translation>verzählt</translation>
    </message>
    <message>
        <source>wrong hive</source>
        <extracomment>A usual reason why strips in or out of a hive are put right</extracomment>
        <translation>falsches Volk</translation>
    </message>
    <message>
        <source>wrong day</source>
        <extracomment>A usual reason why strips in or out of a hive are put right
----------
A usual reason why the day or state of a hive is put right</extracomment>
        <translation>falscher Tag</translation>
    </message>
    <message>
        <source>renumbered</source>
        <extracomment>A usual reason why a name is changed</extracomment>
        <translation>umnummeriert</translation>
    </message>
</context>
<context>
    <name>RecordKinds</name>
    <message>
        <source>operation</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>person</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Person</translation>
    </message>
    <message>
        <source>figure</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Wert</translation>
    </message>
    <message>
        <source>strip kind</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Streifenart</translation>
    </message>
    <message>
        <source>delivery</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Lieferung</translation>
    </message>
    <message>
        <source>change of a delivery</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Änderung einer Lieferung</translation>
    </message>
    <message>
        <source>tank or bin</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Gefäß</translation>
    </message>
    <message>
        <source>batch</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>weigh-in</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Einwaage</translation>
    </message>
    <message>
        <source>reading</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>stir</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Rührgang</translation>
    </message>
    <message>
        <source>soak</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Tränkung</translation>
    </message>
    <message>
        <source>weighing</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Wägung</translation>
    </message>
    <message>
        <source>bag</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>change of a bag</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Änderung eines Beutels</translation>
    </message>
    <message>
        <source>pour</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Abfüllung</translation>
    </message>
    <message>
        <source>pail</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Eimer</translation>
    </message>
    <message>
        <source>loss</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>yard</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>time of a yard</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Zeit eines Stands</translation>
    </message>
    <message>
        <source>hive</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>move of a hive</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Umsetzen eines Volks</translation>
    </message>
    <message>
        <source>round</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Runde</translation>
    </message>
    <message>
        <source>yard of a round</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Stand einer Runde</translation>
    </message>
    <message>
        <source>strips in a hive</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Streifen in einem Volk</translation>
    </message>
    <message>
        <source>mite count</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Milbenzählung</translation>
    </message>
    <message>
        <source>code given out</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>vergebener Code</translation>
    </message>
    <message>
        <source>paper shown</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>ausgegebenes Blatt</translation>
    </message>
    <message>
        <source>workbook</source>
        <extracomment>A kind of record, before its code or name</extracomment>
        <translation>Arbeitsbuch</translation>
    </message>
    <message>
        <source>strip weighed alone</source>
        <extracomment>A kind of record, before its code or name: one strip weighed alone</extracomment>
        <translation>einzeln gewogener Streifen</translation>
    </message>
</context>
<context>
    <name>RecordSheets</name>
    <message>
        <source>Batch %1</source>
        <extracomment>title of a printed sheet; %1 is a batch's code</extracomment>
        <translation>Ansatz %1</translation>
    </message>
    <message>
        <source>Nothing is written down.</source>
        <extracomment>instead of a table of a batch sheet</extracomment>
        <translation>Es ist nichts aufgeschrieben.</translation>
    </message>
    <message>
        <source>Register of treatments</source>
        <extracomment>title of a printed sheet: the register of treatments</extracomment>
        <translation>Behandlungsbuch</translation>
    </message>
    <message>
        <source>Keeper</source>
        <extracomment>on the register</extracomment>
        <translation>Tierhalter</translation>
    </message>
    <message>
        <source>Together</source>
        <extracomment>on the register</extracomment>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>In</source>
        <extracomment>column of the register: the day strips were hung</extracomment>
        <translation>Hinein am</translation>
    </message>
    <message>
        <source>Out</source>
        <extracomment>column of the register: the day strips were pulled</extracomment>
        <translation>Heraus am</translation>
    </message>
    <message>
        <source>Yard</source>
        <extracomment>column of the register</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Hives</source>
        <extracomment>column of the register: number or group, and how many colonies</extracomment>
        <translation>Völker</translation>
    </message>
    <message>
        <source>Product</source>
        <extracomment>column of the register: what was used</extracomment>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Bag</source>
        <extracomment>column of the register: a code</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Batch</source>
        <extracomment>column of the register: a code</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>column of the register: how many</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Acid, %1</source>
        <extracomment>column of the register; %1 is a unit of mass</extracomment>
        <translation>Säure, %1</translation>
    </message>
    <message>
        <source>Pulled</source>
        <extracomment>column of the register: strips pulled and missing</extracomment>
        <translation>Heraus</translation>
    </message>
    <message>
        <source>By</source>
        <extracomment>column of the register: who did it</extracomment>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>column of the register</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>No treatment falls into this range.</source>
        <extracomment>instead of the table of the register</extracomment>
        <translation>In diesen Zeitraum fällt keine Behandlung.</translation>
    </message>
    <message>
        <source>No harvest before</source>
        <extracomment>column of the register: the first day on which honey may be taken</extracomment>
        <translation>Keine Ernte vor</translation>
    </message>
</context>
<context>
    <name>RecordWords</name>
    <message>
        <source>yes</source>
        <extracomment>A value in a correction.</extracomment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>undone after it was printed</source>
        <extracomment>A record was made void; its reason stands beside it.</extracomment>
        <translation>nach dem Drucken rückgängig gemacht</translation>
    </message>
    <message>
        <source>entered</source>
        <extracomment>The first line of a record's history.</extracomment>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>taken back</source>
        <extracomment>A line of a record's history.</extracomment>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>nothing</source>
        <extracomment>What stands where nothing was said.</extracomment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1: %2, before %3</source>
        <extracomment>A correction; %1 is what was corrected, %2 what it says now, %3 what it said before.</extracomment>
        <translation>%1: %2, vorher %3</translation>
    </message>
    <message>
        <source>%1 of %2, %3 missing</source>
        <extracomment>Strips that came out; %1 and %2 are numbers of strips.</extracomment>
        <translation>%1 von %2, %3 fehlen</translation>
    </message>
    <message>
        <source>VOID: %1</source>
        <extracomment>A note on a treatment; %1 is the reason.</extracomment>
        <translation>UNGÜLTIG: %1</translation>
    </message>
    <message>
        <source>entered late, %1</source>
        <extracomment>A note on a treatment; %1 is the day it was entered.</extracomment>
        <translation>nachträglich eingetragen, %1</translation>
    </message>
    <message>
        <source>pulled after the latest day</source>
        <extracomment>A note on a treatment whose strips came out after the last day of their window.</extracomment>
        <translation>nach dem letzten Tag herausgenommen</translation>
    </message>
    <message>
        <source>strips past their limit: %1</source>
        <extracomment>A note on a treatment; %1 is the reason.</extracomment>
        <translation>Streifen über der Frist: %1</translation>
    </message>
    <message>
        <source>supers on</source>
        <extracomment>A note on a treatment.</extracomment>
        <translation>Honigraum aufgesetzt</translation>
    </message>
    <message>
        <source>corrected, %1 (%2)</source>
        <extracomment>A note on a treatment: its correction, and the reason.</extracomment>
        <translation>berichtigt, %1 (%2)</translation>
    </message>
    <message>
        <source>dead</source>
        <extracomment>State of a hive.</extracomment>
        <translation>tot</translation>
    </message>
    <message>
        <source>gone</source>
        <extracomment>State of a hive: sold or taken away.</extracomment>
        <translation>fort</translation>
    </message>
    <message>
        <source>left untreated</source>
        <extracomment>A hive left untreated on purpose.</extracomment>
        <translation>unbehandelt gelassen</translation>
    </message>
    <message>
        <source>no strips hung</source>
        <extracomment>A hive in which no strips were hung on a visit.</extracomment>
        <translation>keine Streifen eingehängt</translation>
    </message>
    <message>
        <source>made void</source>
        <translation>für ungültig erklärt</translation>
    </message>
</context>
<context>
    <name>RecountForm</name>
    <message>
        <source>Count bag %1 anew</source>
        <extracomment>Title of a form; %1 the code of a bag</extracomment>
        <translation>Beutel %1 neu zählen</translation>
    </message>
    <message numerus="yes">
        <source>By what was entered, %n strip(s) are left in it.</source>
        <extracomment>Under the title of a form; %n strips are left by what was entered</extracomment>
        <translation>
            <numerusform>Nach den Einträgen ist noch %n Streifen darin.</numerusform>
            <numerusform>Nach den Einträgen sind noch %n Streifen darin.</numerusform>
        </translation>
    </message>
    <message>
        <source>Strips counted</source>
        <extracomment>A field's label: strips counted in a bag; and the unit behind the number</extracomment>
        <translation>Gezählte Streifen</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>counted by hand</source>
        <extracomment>A usual reason why a count is put right</extracomment>
        <translation>von Hand gezählt</translation>
    </message>
    <message>
        <source>miscounted when packed</source>
        <extracomment>A usual reason why a count is put right</extracomment>
        <translation>beim Abpacken verzählt</translation>
    </message>
    <message>
        <source>hung without an entry</source>
        <extracomment>A usual reason why a count is put right</extracomment>
        <translation>ohne Eintrag eingehängt</translation>
    </message>
    <message>
        <source>It stands in the bag's story, with the difference.</source>
        <extracomment>Help under the reason why a count is put right</extracomment>
        <translation>Steht im Verlauf des Beutels, mit dem Unterschied.</translation>
    </message>
    <message>
        <source>The difference of &lt;b&gt;%1&lt;/b&gt; is written down.</source>
        <extracomment>What follows from a count; %1 a number with its sign</extracomment>
        <translation>Der Unterschied von &lt;b&gt;%1&lt;/b&gt; wird festgehalten.</translation>
    </message>
    <message>
        <source>Set the count</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Anzahl übernehmen</translation>
    </message>
    <message>
        <source>Bag %1 was opened</source>
        <extracomment>Title of a form; %1 the code of a bag</extracomment>
        <translation>Beutel %1 wurde geöffnet</translation>
    </message>
    <message>
        <source>Strips draw water from the air once a bag is open. Its days run from the first opening, also when it is sealed again.</source>
        <extracomment>Under the title of a form</extracomment>
        <translation>Streifen ziehen Wasser aus der Luft, sobald ein Beutel offen ist. Seine Tage zählen ab dem ersten Öffnen, auch wenn er wieder verschlossen wird.</translation>
    </message>
    <message>
        <source>Opened on</source>
        <extracomment>A field's label: the day a bag was opened</extracomment>
        <translation>Geöffnet am</translation>
    </message>
    <message>
        <source>Enter it</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Bag %1 was sealed again</source>
        <extracomment>Title of a form; %1 the code of a bag</extracomment>
        <translation>Beutel %1 wurde wieder verschlossen</translation>
    </message>
    <message>
        <source>Wipe the mouth clean first: a greasy seal does not hold.</source>
        <extracomment>Under the title of a form</extracomment>
        <translation>Wischen Sie zuerst die Öffnung sauber: Eine fettige Naht hält nicht.</translation>
    </message>
    <message>
        <source>Resealed on</source>
        <extracomment>A field's label: the day a bag was sealed again</extracomment>
        <translation>Wieder verschlossen am</translation>
    </message>
</context>
<context>
    <name>Refusal</name>
    <message>
        <source>This cannot be entered as it stands.</source>
        <extracomment>At the foot of a form, where no better reason is known</extracomment>
        <translation>So lässt sich das nicht eintragen.</translation>
    </message>
    <message>
        <source>Acid of %1 cannot make a liquid of %2. Lower the strength or take a purer lot.</source>
        <extracomment>%1 the content of the acid, %2 the strength wanted, both in per cent</extracomment>
        <translation>Säure mit %1 ergibt keine Flüssigkeit mit %2. Senken Sie den Gehalt oder nehmen Sie eine reinere Charge.</translation>
    </message>
    <message>
        <source>This acid is weaker than the strength wanted. Lower the strength or take a purer lot.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Säure ist schwächer als der gewünschte Gehalt. Senken Sie den Gehalt oder nehmen Sie eine reinere Charge.</translation>
    </message>
    <message>
        <source>%1 is more than the %2 this tank holds. Make less, or take another tank.</source>
        <extracomment>%1 the amount, %2 what the tank holds</extracomment>
        <translation>%1 ist mehr als die %2, die dieser Tank fasst. Machen Sie weniger oder nehmen Sie einen anderen Tank.</translation>
    </message>
    <message>
        <source>This is more than the tank holds. Make less, or take another tank.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das ist mehr, als der Tank fasst. Machen Sie weniger oder nehmen Sie einen anderen Tank.</translation>
    </message>
    <message>
        <source>Of lot %1 only %2 is left, and %3 is wanted. Add another lot, make less, or recount the lot in Store.</source>
        <extracomment>%1 a lot, %2 what is left of it, %3 what is wanted</extracomment>
        <translation>Von Charge %1 sind nur noch %2 übrig, gebraucht werden %3. Nehmen Sie eine weitere Charge dazu, machen Sie weniger oder zählen Sie die Charge im Lager nach.</translation>
    </message>
    <message>
        <source>The lot has less left than is wanted. Add another lot, make less, or recount the lot in Store.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Von der Charge ist weniger übrig, als gebraucht wird. Nehmen Sie eine weitere Charge dazu, machen Sie weniger oder zählen Sie die Charge im Lager nach.</translation>
    </message>
    <message>
        <source>Lot %1 is another material. Choose a lot of what this line is for.</source>
        <extracomment>%1 a lot</extracomment>
        <translation>Charge %1 ist ein anderes Material. Wählen Sie eine Charge von dem, was in diese Zeile gehört.</translation>
    </message>
    <message>
        <source>This lot is another material. Choose a lot of what this line is for.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Charge ist ein anderes Material. Wählen Sie eine Charge von dem, was in diese Zeile gehört.</translation>
    </message>
    <message>
        <source>Lot %1 is used up. Choose another, or recount it in Store.</source>
        <extracomment>%1 a lot</extracomment>
        <translation>Charge %1 ist aufgebraucht. Wählen Sie eine andere oder zählen Sie sie im Lager nach.</translation>
    </message>
    <message>
        <source>This lot is used up. Choose another, or recount it in Store.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Charge ist aufgebraucht. Wählen Sie eine andere oder zählen Sie sie im Lager nach.</translation>
    </message>
    <message>
        <source>The date on lot %1 was %2. Use it all the same?</source>
        <extracomment>%1 a lot, %2 its date; a question</extracomment>
        <translation>Das Datum auf Charge %1 ist vorbei (%2). Trotzdem verwenden?</translation>
    </message>
    <message>
        <source>This lot is past the date on it. Use it all the same?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das Datum auf dieser Charge ist vorbei. Trotzdem verwenden?</translation>
    </message>
    <message>
        <source>Pail %1 went whole into batch %2. Choose another pail.</source>
        <extracomment>%1 a pail, %2 a batch</extracomment>
        <translation>Eimer %1 ging ganz in Ansatz %2. Wählen Sie einen anderen Eimer.</translation>
    </message>
    <message>
        <source>This pail went into another batch. Choose another pail.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Eimer ging in einen anderen Ansatz. Wählen Sie einen anderen Eimer.</translation>
    </message>
    <message>
        <source>Pail %1 was used in part. Acid settles, so the strength of the rest is unknown and it goes into no mix.</source>
        <extracomment>%1 a pail</extracomment>
        <translation>Eimer %1 wurde teilweise verwendet. Säure setzt sich ab, darum ist der Gehalt des Rests unbekannt, und er kommt in keine Mischung.</translation>
    </message>
    <message>
        <source>This pail was used in part. Acid settles, so the strength of the rest is unknown and it goes into no mix.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Eimer wurde teilweise verwendet. Säure setzt sich ab, darum ist der Gehalt des Rests unbekannt, und er kommt in keine Mischung.</translation>
    </message>
    <message>
        <source>Pail %1 goes in whole, with all of its %2, or not at all: the acid settles, so a part of it may be almost pure glycerine. Take the whole pail, scraped out, or leave it.</source>
        <extracomment>%1 a pail, %2 the mass in it</extracomment>
        <translation>Eimer %1 kommt ganz hinein, mit allen %2, oder gar nicht: Die Säure setzt sich ab, ein Teil davon kann also fast reines Glycerin sein. Nehmen Sie den ganzen Eimer, ausgekratzt, oder lassen Sie ihn stehen.</translation>
    </message>
    <message>
        <source>A pail goes in whole or not at all: the acid settles, so a part of it may be almost pure glycerine. Take the whole pail, scraped out, or leave it.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Ein Eimer kommt ganz hinein oder gar nicht: Die Säure setzt sich ab, ein Teil davon kann also fast reines Glycerin sein. Nehmen Sie den ganzen Eimer, ausgekratzt, oder lassen Sie ihn stehen.</translation>
    </message>
    <message>
        <source>The strength of pail %1 is not known, so it goes into no mix. Choose another pail.</source>
        <extracomment>%1 a pail</extracomment>
        <translation>Der Gehalt von Eimer %1 ist nicht bekannt, darum kommt er in keine Mischung. Wählen Sie einen anderen Eimer.</translation>
    </message>
    <message>
        <source>The strength of this pail is not known, so it goes into no mix. Choose another pail.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Der Gehalt dieses Eimers ist nicht bekannt, darum kommt er in keine Mischung. Wählen Sie einen anderen Eimer.</translation>
    </message>
    <message>
        <source>These pails were poured together from a bin that was not scraped out, so acid may be in any of them. Add %1 as well, or leave them all out.</source>
        <extracomment>%1 the codes of pails</extracomment>
        <translation>Diese Eimer wurden zusammen aus einer Wanne gefüllt, die nicht ausgekratzt wurde; die Säure kann in jedem davon sein. Nehmen Sie %1 dazu oder lassen Sie alle weg.</translation>
    </message>
    <message>
        <source>These pails were poured together from a bin that was not scraped out. Add the rest of them, or leave them all out.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Eimer wurden zusammen aus einer Wanne gefüllt, die nicht ausgekratzt wurde. Nehmen Sie die übrigen dazu oder lassen Sie alle weg.</translation>
    </message>
    <message>
        <source>Pail %1 is gone: it was thrown away or its entry was made void. Choose another pail.</source>
        <extracomment>%1 a pail</extracomment>
        <translation>Eimer %1 gibt es nicht mehr: Er wurde entsorgt oder sein Eintrag für ungültig erklärt. Wählen Sie einen anderen Eimer.</translation>
    </message>
    <message>
        <source>This pail is gone: it was thrown away or its entry was made void. Choose another pail.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diesen Eimer gibt es nicht mehr: Er wurde entsorgt oder sein Eintrag für ungültig erklärt. Wählen Sie einen anderen Eimer.</translation>
    </message>
    <message>
        <source>These pails are stronger than %1, and nothing in the mix thins them. Add glycerine, or ask for the strength they have.</source>
        <extracomment>%1 a strength in per cent</extracomment>
        <translation>Diese Eimer sind stärker als %1, und nichts in der Mischung verdünnt sie. Nehmen Sie Glycerin dazu oder verlangen Sie den Gehalt, den sie haben.</translation>
    </message>
    <message>
        <source>These pails are stronger than wanted, and nothing in the mix thins them. Add glycerine, or ask for the strength they have.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Eimer sind stärker als gewünscht, und nichts in der Mischung verdünnt sie. Nehmen Sie Glycerin dazu oder verlangen Sie den Gehalt, den sie haben.</translation>
    </message>
    <message>
        <source>As weighed the liquid comes to %1 instead of %2. Were the weighings right?</source>
        <extracomment>%1 the strength that the weighings give, %2 the one planned; a question</extracomment>
        <translation>Nach den Wägungen kommt die Flüssigkeit auf %1 statt %2. Stimmen die Wägungen?</translation>
    </message>
    <message>
        <source>As weighed the liquid has another strength than planned. Were the weighings right?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Nach den Wägungen hat die Flüssigkeit einen anderen Gehalt als geplant. Stimmen die Wägungen?</translation>
    </message>
    <message>
        <source>%1 still holds batch %2. Is it empty?</source>
        <extracomment>%1 a tank, %2 a batch; a question</extracomment>
        <translation>In %1 ist noch Ansatz %2. Ist der Tank leer?</translation>
    </message>
    <message>
        <source>This tank still holds another batch. Is it empty?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>In diesem Tank ist noch ein anderer Ansatz. Ist er leer?</translation>
    </message>
    <message>
        <source>%1 is over the ceiling of %2. Turn the dial down now, stay out of the vapour and air the room: hot acid gives off gas.</source>
        <extracomment>%1 a temperature, %2 the highest allowed</extracomment>
        <translation>%1 liegt über der Höchsttemperatur von %2. Drehen Sie den Regler jetzt herunter, halten Sie sich vom Dampf fern und lüften Sie den Raum: Heiße Säure gibt Gas ab.</translation>
    </message>
    <message>
        <source>This is over the ceiling. Turn the dial down now, stay out of the vapour and air the room: hot acid gives off gas.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das liegt über der Höchsttemperatur. Drehen Sie den Regler jetzt herunter, halten Sie sich vom Dampf fern und lüften Sie den Raum: Heiße Säure gibt Gas ab.</translation>
    </message>
    <message>
        <source>%1 in the tank: is that right?</source>
        <extracomment>%1 a temperature; a question</extracomment>
        <translation>%1 im Tank: Stimmt das?</translation>
    </message>
    <message>
        <source>An odd temperature for a tank: is it right?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Eine seltsame Temperatur für einen Tank: Stimmt sie?</translation>
    </message>
    <message>
        <source>Nobody has read the probe yet. Enter one reading first, then say that the liquid is clear.</source>
        <extracomment>Beside the question whether the liquid is clear</extracomment>
        <translation>Noch hat niemand den Fühler abgelesen. Tragen Sie zuerst eine Ablesung ein, dann, dass die Flüssigkeit klar ist.</translation>
    </message>
    <message>
        <source>The liquid was not seen clear yet, so acid may still lie at the bottom. Stir until it is clear and enter that first.</source>
        <extracomment>When strips are to be soaked</extracomment>
        <translation>Die Flüssigkeit war noch nicht klar, am Boden kann also noch Säure liegen. Rühren Sie, bis sie klar ist, und tragen Sie das zuerst ein.</translation>
    </message>
    <message>
        <source>Batch %1 is closed. Open it again with a reason, then enter this.</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Ansatz %1 ist abgeschlossen. Öffnen Sie ihn mit einem Grund wieder und tragen Sie dann dies ein.</translation>
    </message>
    <message>
        <source>This batch is closed. Open it again with a reason, then enter this.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Ansatz ist abgeschlossen. Öffnen Sie ihn mit einem Grund wieder und tragen Sie dann dies ein.</translation>
    </message>
    <message>
        <source>Batch %1 is planned but not weighed in yet. Enter what went into the tank first.</source>
        <extracomment>%1 a batch</extracomment>
        <translation>Ansatz %1 ist geplant, aber noch nicht eingewogen. Tragen Sie zuerst ein, was in den Tank kam.</translation>
    </message>
    <message>
        <source>This batch is not weighed in yet. Enter what went into the tank first.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Ansatz ist noch nicht eingewogen. Tragen Sie zuerst ein, was in den Tank kam.</translation>
    </message>
    <message>
        <source>%1 is more than the %2 that can be left over. Check the weights, and take off the empty pails.</source>
        <extracomment>%1 what was poured, %2 what can be left</extracomment>
        <translation>%1 ist mehr als die %2, die übrig sein können. Prüfen Sie die Gewichte und ziehen Sie die leeren Eimer ab.</translation>
    </message>
    <message>
        <source>This is more than can be left over. Check the weights, and take off the empty pails.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das ist mehr, als übrig sein kann. Prüfen Sie die Gewichte und ziehen Sie die leeren Eimer ab.</translation>
    </message>
    <message>
        <source>%1 is not accounted for, more than the %2 that Set-up allows. Was something spilt, left in the bins, or weighed wrong?</source>
        <extracomment>%1 a mass, %2 the limit; a question</extracomment>
        <translation>%1 sind nicht nachgewiesen, mehr als die %2, die die Einrichtung zulässt. Wurde etwas verschüttet, in den Wannen gelassen oder falsch gewogen?</translation>
    </message>
    <message>
        <source>More is not accounted for than Set-up allows. Was something spilt, left in the bins, or weighed wrong?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Es ist mehr nicht nachgewiesen, als die Einrichtung zulässt. Wurde etwas verschüttet, in den Wannen gelassen oder falsch gewogen?</translation>
    </message>
    <message>
        <source>%1 strips of this batch are not bagged yet. Bag them, or enter them as thrown away, then close the batch.</source>
        <extracomment>%1 a number of strips</extracomment>
        <translation>%1 Streifen dieses Ansatzes sind noch nicht abgepackt. Packen Sie sie ab oder tragen Sie sie als entsorgt ein, dann schließen Sie den Ansatz ab.</translation>
    </message>
    <message>
        <source>Strips of this batch are not bagged yet. Bag them, or enter them as thrown away, then close the batch.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Streifen dieses Ansatzes sind noch nicht abgepackt. Packen Sie sie ab oder tragen Sie sie als entsorgt ein, dann schließen Sie den Ansatz ab.</translation>
    </message>
    <message>
        <source>This is needed.</source>
        <extracomment>Beside a field</extracomment>
        <translation>Das wird gebraucht.</translation>
    </message>
    <message>
        <source>This does not read. Write it as in the example beside the field, or leave it empty.</source>
        <extracomment>Beside a field</extracomment>
        <translation>Das ist nicht lesbar. Schreiben Sie es wie im Beispiel neben dem Feld oder lassen Sie es leer.</translation>
    </message>
    <message>
        <source>There must be more than nothing here.</source>
        <extracomment>Beside a field for an amount</extracomment>
        <translation>Hier muss mehr als nichts stehen.</translation>
    </message>
    <message>
        <source>More than %1 makes no sense here. Check the figure and its unit.</source>
        <extracomment>%1 the most that makes sense</extracomment>
        <translation>Mehr als %1 ergibt hier keinen Sinn. Prüfen Sie den Wert und seine Einheit.</translation>
    </message>
    <message>
        <source>This is too much. Check the figure and its unit.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das ist zu viel. Prüfen Sie den Wert und seine Einheit.</translation>
    </message>
    <message>
        <source>Less than %1 makes no sense here. Check the figure and its unit.</source>
        <extracomment>%1 the least that makes sense</extracomment>
        <translation>Weniger als %1 ergibt hier keinen Sinn. Prüfen Sie den Wert und seine Einheit.</translation>
    </message>
    <message>
        <source>This is too little. Check the figure and its unit.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das ist zu wenig. Prüfen Sie den Wert und seine Einheit.</translation>
    </message>
    <message>
        <source>No more than %1 letters fit here. Shorten it.</source>
        <extracomment>%1 a number of letters</extracomment>
        <translation>Hier passen höchstens %1 Buchstaben hin. Kürzen Sie.</translation>
    </message>
    <message>
        <source>This is too long. Shorten it.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das ist zu lang. Kürzen Sie.</translation>
    </message>
    <message>
        <source>There is a %1 already. Take another name.</source>
        <extracomment>%1 a name</extracomment>
        <translation>%1 gibt es schon. Nehmen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>This name is taken. Take another.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diesen Namen gibt es schon. Nehmen Sie einen anderen.</translation>
    </message>
    <message>
        <source>%1 is not there any more. Choose another.</source>
        <extracomment>%1 a code or a name</extracomment>
        <translation>%1 ist nicht mehr da. Wählen Sie etwas anderes.</translation>
    </message>
    <message>
        <source>It is not there any more. Choose another.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das ist nicht mehr da. Wählen Sie etwas anderes.</translation>
    </message>
    <message>
        <source>Say why: a correction keeps its reason beside what stood there before.</source>
        <extracomment>Beside a field for a reason</extracomment>
        <translation>Sagen Sie, warum: Eine Berichtigung behält ihren Grund neben dem, was vorher da stand.</translation>
    </message>
    <message>
        <source>Nothing was changed. Change a field, or leave with Esc.</source>
        <extracomment>At the foot of a form</extracomment>
        <translation>Es wurde nichts geändert. Ändern Sie ein Feld oder gehen Sie mit Esc hinaus.</translation>
    </message>
    <message>
        <source>This has not come yet. Take today or an earlier day.</source>
        <extracomment>Beside a field for a day or a moment</extracomment>
        <translation>Das liegt noch in der Zukunft. Nehmen Sie heute oder einen früheren Tag.</translation>
    </message>
    <message>
        <source>This is before the step that comes first, of %1. Take that day or a later one.</source>
        <extracomment>%1 a day</extracomment>
        <translation>Das liegt vor dem Schritt, der zuerst kommt (%1). Nehmen Sie diesen Tag oder einen späteren.</translation>
    </message>
    <message>
        <source>This is before the step that comes first. Take a later day.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das liegt vor dem Schritt, der zuerst kommt. Nehmen Sie einen späteren Tag.</translation>
    </message>
    <message>
        <source>%1 days ago: is the year right?</source>
        <extracomment>%1 a number of days; a question</extracomment>
        <translation>Vor %1 Tagen: Stimmt das Jahr?</translation>
    </message>
    <message>
        <source>More than a year ago: is the year right?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Vor mehr als einem Jahr: Stimmt das Jahr?</translation>
    </message>
    <message>
        <source>For this, Set-up must know %1. Say it there first.</source>
        <extracomment>%1 the name of a figure, as: the days of rest</extracomment>
        <translation>Dafür muss in der Einrichtung ein Wert stehen: %1. Tragen Sie ihn zuerst dort ein.</translation>
    </message>
    <message>
        <source>For this, a figure in Set-up is not said yet. Say it there first.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dafür fehlt noch ein Wert in der Einrichtung. Tragen Sie ihn zuerst dort ein.</translation>
    </message>
    <message>
        <source>%1 is writing in this workbook. Nothing is lost: wait until that is done, or close it there, and enter this again.</source>
        <extracomment>%1 a program or a person; the file is in use</extracomment>
        <translation>%1 schreibt gerade in diesem Arbeitsbuch. Nichts ist verloren: Warten Sie, bis das fertig ist, oder schließen Sie es dort, und tragen Sie dies noch einmal ein.</translation>
    </message>
    <message>
        <source>Another program is writing in this workbook. Nothing is lost: wait until it is done, or close it, and enter this again.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Ein anderes Programm schreibt gerade in diesem Arbeitsbuch. Nichts ist verloren: Warten Sie, bis es fertig ist, oder schließen Sie es, und tragen Sie dies noch einmal ein.</translation>
    </message>
    <message>
        <source>There is no room left where the workbook is kept, so nothing was saved. Make room and enter this again.</source>
        <extracomment>Nothing could be saved</extracomment>
        <translation>Wo das Arbeitsbuch liegt, ist kein Platz mehr, darum wurde nichts gespeichert. Schaffen Sie Platz und tragen Sie dies noch einmal ein.</translation>
    </message>
    <message>
        <source>The workbook, or the folder it is in, may only be read, so nothing was saved. Allow writing there, or keep the workbook elsewhere.</source>
        <extracomment>Nothing could be saved</extracomment>
        <translation>Das Arbeitsbuch oder sein Ordner darf nur gelesen werden, darum wurde nichts gespeichert. Erlauben Sie dort das Schreiben oder bewahren Sie das Arbeitsbuch anderswo auf.</translation>
    </message>
    <message>
        <source>There is nothing to take back: undo reaches back to when the workbook was opened.</source>
        <extracomment>Undo has nothing to take back</extracomment>
        <translation>Es gibt nichts zurückzunehmen: Rückgängig reicht bis zum Öffnen des Arbeitsbuchs.</translation>
    </message>
    <message>
        <source>%1 stands on this by now. Take that back first, or correct this where it stands.</source>
        <extracomment>%1 a code or a name; undo cannot go on</extracomment>
        <translation>Darauf baut inzwischen %1 auf. Nehmen Sie das zuerst zurück oder berichtigen Sie dies dort, wo es steht.</translation>
    </message>
    <message>
        <source>Later work stands on this by now. Take that back first, or correct this where it stands.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Darauf baut inzwischen spätere Arbeit auf. Nehmen Sie die zuerst zurück oder berichtigen Sie dies dort, wo es steht.</translation>
    </message>
    <message>
        <source>In %1 strips of batch %2 still soak. End that soak, or take another bin.</source>
        <extracomment>%1 a bin, %2 a batch</extracomment>
        <translation>In %1 werden noch Streifen von Ansatz %2 getränkt. Beenden Sie dieses Tränken oder nehmen Sie eine andere Wanne.</translation>
    </message>
    <message>
        <source>In this bin strips of another batch still soak. End that soak, or take another bin.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>In dieser Wanne werden noch Streifen eines anderen Ansatzes getränkt. Beenden Sie dieses Tränken oder nehmen Sie eine andere Wanne.</translation>
    </message>
    <message>
        <source>%1 strips in a bin for %2: will the liquid reach them all?</source>
        <extracomment>%1 a number of strips, %2 the most this bin takes; a question</extracomment>
        <translation>%1 Streifen in einer Wanne für %2: Erreicht die Flüssigkeit sie alle?</translation>
    </message>
    <message>
        <source>More strips than this bin is for: will the liquid reach them all?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Mehr Streifen, als für diese Wanne gedacht: Erreicht die Flüssigkeit sie alle?</translation>
    </message>
    <message>
        <source>%1 of liquid is left and these bins take %2. Fill fewer bins, or mix more.</source>
        <extracomment>%1 the liquid left, %2 the liquid needed</extracomment>
        <translation>Es sind noch %1 Flüssigkeit da, und diese Wannen brauchen %2. Füllen Sie weniger Wannen oder mischen Sie mehr.</translation>
    </message>
    <message>
        <source>These bins take more liquid than is left. Fill fewer bins, or mix more.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Wannen brauchen mehr Flüssigkeit, als noch da ist. Füllen Sie weniger Wannen oder mischen Sie mehr.</translation>
    </message>
    <message>
        <source>The soak in %1 has ended. Choose one that is still going on.</source>
        <extracomment>%1 a bin</extracomment>
        <translation>Das Tränken in %1 ist beendet. Wählen Sie eines, das noch läuft.</translation>
    </message>
    <message>
        <source>This soak has ended. Choose one that is still going on.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieses Tränken ist beendet. Wählen Sie eines, das noch läuft.</translation>
    </message>
    <message>
        <source>%1 a strip is less than a dry one weighs (%2). Check the number on the scale, the weight and its unit, and the tare.</source>
        <extracomment>%1 the mean weight, %2 the weight of a dry strip</extracomment>
        <translation>%1 je Streifen ist weniger, als ein trockener wiegt (%2). Prüfen Sie die Anzahl auf der Waage, das Gewicht und seine Einheit und die Tara.</translation>
    </message>
    <message>
        <source>A wet strip cannot weigh less than a dry one. Check the number on the scale, the weight and its unit, and the tare.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Ein nasser Streifen kann nicht weniger wiegen als ein trockener. Prüfen Sie die Anzahl auf der Waage, das Gewicht und seine Einheit und die Tara.</translation>
    </message>
    <message>
        <source>%1 a strip is far above the target of %2. Are the number of strips, the weight and the tare right?</source>
        <extracomment>%1 the mean weight, %2 the target; a question</extracomment>
        <translation>%1 je Streifen liegt weit über dem Ziel von %2. Stimmen Anzahl der Streifen, Gewicht und Tara?</translation>
    </message>
    <message>
        <source>This is far above the target. Are the number of strips, the weight and the tare right?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das liegt weit über dem Ziel. Stimmen Anzahl der Streifen, Gewicht und Tara?</translation>
    </message>
    <message>
        <source>There are %2 strips and not %1. Correct the number here, or the number that went into soak.</source>
        <extracomment>%1 a number of strips, %2 the most there can be</extracomment>
        <translation>Es sind %2 Streifen und nicht %1. Berichtigen Sie die Anzahl hier oder die Anzahl, die ins Tränken ging.</translation>
    </message>
    <message>
        <source>There are not so many strips. Correct the number here, or the number that went into soak.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>So viele Streifen sind es nicht. Berichtigen Sie die Anzahl hier oder die Anzahl, die ins Tränken ging.</translation>
    </message>
    <message>
        <source>These strips were never weighed, so the acid in them is not known. Bag them all the same?</source>
        <extracomment>A question before strips are bagged</extracomment>
        <translation>Diese Streifen wurden nie gewogen, darum ist die Säure darin nicht bekannt. Trotzdem abpacken?</translation>
    </message>
    <message>
        <source>At the last weighing a strip had %1, under the %2 wanted. Bag them as they are, rather than soak on?</source>
        <extracomment>%1 the mean weight, %2 the least wanted; a question</extracomment>
        <translation>Bei der letzten Wägung hatte ein Streifen %1, weniger als die gewünschten %2. So abpacken, statt weiter zu tränken?</translation>
    </message>
    <message>
        <source>At the last weighing the strips were light. Bag them as they are, rather than soak on?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Bei der letzten Wägung waren die Streifen zu leicht. So abpacken, statt weiter zu tränken?</translation>
    </message>
    <message>
        <source>Bag %1 is filled already. Take the code of an empty one.</source>
        <extracomment>%1 a bag</extracomment>
        <translation>Beutel %1 ist schon gefüllt. Nehmen Sie den Code eines leeren.</translation>
    </message>
    <message>
        <source>This bag is filled already. Take the code of an empty one.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Beutel ist schon gefüllt. Nehmen Sie den Code eines leeren.</translation>
    </message>
    <message>
        <source>Label %1 was printed ahead and has no strips behind it yet. Enter the filled bag first.</source>
        <extracomment>%1 a bag</extracomment>
        <translation>Etikett %1 wurde im Voraus gedruckt und hat noch keine Streifen. Tragen Sie zuerst den gefüllten Beutel ein.</translation>
    </message>
    <message>
        <source>This label was printed ahead and has no strips behind it yet. Enter the filled bag first.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieses Etikett wurde im Voraus gedruckt und hat noch keine Streifen. Tragen Sie zuerst den gefüllten Beutel ein.</translation>
    </message>
    <message>
        <source>%1 in the bag, where its strips should weigh about %2. Are the number and the weight right?</source>
        <extracomment>%1 the weight, %2 the weight expected; a question</extracomment>
        <translation>%1 im Beutel, seine Streifen müssten etwa %2 wiegen. Stimmen Anzahl und Gewicht?</translation>
    </message>
    <message>
        <source>The weight does not fit the number of strips. Are both right?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das Gewicht passt nicht zur Anzahl der Streifen. Stimmt beides?</translation>
    </message>
    <message>
        <source>Bag %1 has %2 strips left, and %3 are wanted. Take the rest from another bag, or recount this one in Store.</source>
        <extracomment>%1 a bag, %2 the strips left in it, %3 the strips wanted</extracomment>
        <translation>In Beutel %1 sind noch %2 Streifen, gebraucht werden %3. Nehmen Sie den Rest aus einem anderen Beutel oder zählen Sie diesen im Lager nach.</translation>
    </message>
    <message>
        <source>The bag has fewer strips left. Take the rest from another bag, or recount this one in Store.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>In dem Beutel sind weniger Streifen übrig. Nehmen Sie den Rest aus einem anderen Beutel oder zählen Sie diesen im Lager nach.</translation>
    </message>
    <message>
        <source>Bag %1 rests until %2: its strips still take up what is wet. Use it now?</source>
        <extracomment>%1 a bag, %2 a day; a question</extracomment>
        <translation>Beutel %1 ruht bis %2: Seine Streifen nehmen die Nässe noch auf. Jetzt verwenden?</translation>
    </message>
    <message>
        <source>This bag still rests: its strips still take up what is wet. Use it now?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Beutel ruht noch: Seine Streifen nehmen die Nässe noch auf. Jetzt verwenden?</translation>
    </message>
    <message>
        <source>Bag %1 rests until %2, and your rule in Set-up is to wait. Take another bag.</source>
        <extracomment>%1 a bag, %2 a day</extracomment>
        <translation>Beutel %1 ruht bis %2, und Ihre Regel in der Einrichtung heißt warten. Nehmen Sie einen anderen Beutel.</translation>
    </message>
    <message>
        <source>This bag still rests, and your rule in Set-up is to wait. Take another bag.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Beutel ruht noch, und Ihre Regel in der Einrichtung heißt warten. Nehmen Sie einen anderen Beutel.</translation>
    </message>
    <message>
        <source>Bag %1 was to be used by %2. Take another bag, or give a reason: the register will show it.</source>
        <extracomment>%1 a bag, %2 a day</extracomment>
        <translation>Beutel %1 war verwendbar bis %2. Nehmen Sie einen anderen Beutel oder nennen Sie einen Grund: Das Behandlungsbuch zeigt ihn.</translation>
    </message>
    <message>
        <source>This bag is past its use-by day. Take another bag, or give a reason: the register will show it.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Beutel ist nicht mehr verwendbar, sein Tag ist vorbei. Nehmen Sie einen anderen Beutel oder nennen Sie einen Grund: Das Behandlungsbuch zeigt ihn.</translation>
    </message>
    <message>
        <source>Bag %1 was opened on %2, longer ago than the %3 days of your rule. Use it all the same?</source>
        <extracomment>%1 a bag, %2 the day it was opened, %3 the days allowed; a question</extracomment>
        <translation>Beutel %1 wurde am %2 geöffnet, länger her als die %3 Tage Ihrer Regel. Trotzdem verwenden?</translation>
    </message>
    <message>
        <source>This bag has been open longer than your rule allows. Use it all the same?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Beutel ist länger offen, als Ihre Regel zulässt. Trotzdem verwenden?</translation>
    </message>
    <message>
        <source>Bag %1 is gone: used up, thrown away or made void. Take another bag.</source>
        <extracomment>%1 a bag</extracomment>
        <translation>Beutel %1 gibt es nicht mehr: aufgebraucht, entsorgt oder für ungültig erklärt. Nehmen Sie einen anderen Beutel.</translation>
    </message>
    <message>
        <source>This bag is gone: used up, thrown away or made void. Take another bag.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diesen Beutel gibt es nicht mehr: aufgebraucht, entsorgt oder für ungültig erklärt. Nehmen Sie einen anderen Beutel.</translation>
    </message>
    <message>
        <source>Bag %1 was sealed on %2, so nothing was taken from it before. Check the day and the bag.</source>
        <extracomment>%1 a bag, %2 a day</extracomment>
        <translation>Beutel %1 wurde am %2 verschlossen, vorher wurde also nichts entnommen. Prüfen Sie Tag und Beutel.</translation>
    </message>
    <message>
        <source>The bag was not sealed yet on that day. Check the day and the bag.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Der Beutel war an diesem Tag noch nicht verschlossen. Prüfen Sie Tag und Beutel.</translation>
    </message>
    <message>
        <source>There are honey supers on %1. The label, your vet and local rules say whether strips may hang then. Enter it all the same?</source>
        <extracomment>%1 a hive or a yard; a question</extracomment>
        <translation>Auf %1 sind Honigräume. Das Etikett des Mittels, Ihr Tierarzt und die örtlichen Vorschriften sagen, ob dann Streifen hängen dürfen. Trotzdem eintragen?</translation>
    </message>
    <message>
        <source>There are honey supers on. The label, your vet and local rules say whether strips may hang then. Enter it all the same?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Es sind Honigräume aufgesetzt. Das Etikett des Mittels, Ihr Tierarzt und die örtlichen Vorschriften sagen, ob dann Streifen hängen dürfen. Trotzdem eintragen?</translation>
    </message>
    <message>
        <source>That day is within the flow %1, from %2 to %3. Enter it all the same?</source>
        <extracomment>%1 the name of a flow, %2 and %3 days; a question</extracomment>
        <translation>Dieser Tag liegt in der Tracht %1, vom %2 bis %3. Trotzdem eintragen?</translation>
    </message>
    <message>
        <source>That day is within a flow. Enter it all the same?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Tag liegt in einer Tracht. Trotzdem eintragen?</translation>
    </message>
    <message>
        <source>This yard is not to be opened from %2 to %3 (%1). Enter it all the same?</source>
        <extracomment>%1 the name of a time, %2 and %3 days; a question</extracomment>
        <translation>Dieser Stand soll vom %2 bis %3 nicht geöffnet werden (%1). Trotzdem eintragen?</translation>
    </message>
    <message>
        <source>This yard is not to be opened on that day. Enter it all the same?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieser Stand soll an diesem Tag nicht geöffnet werden. Trotzdem eintragen?</translation>
    </message>
    <message>
        <source>Hive %1 is dead. Leave its strips at 0, or enter first that it lives.</source>
        <extracomment>%1 a hive</extracomment>
        <translation>Volk %1 ist tot. Lassen Sie seine Streifen auf 0 oder tragen Sie zuerst ein, dass es lebt.</translation>
    </message>
    <message>
        <source>This hive is dead. Leave its strips at 0, or enter first that it lives.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Dieses Volk ist tot. Lassen Sie seine Streifen auf 0 oder tragen Sie zuerst ein, dass es lebt.</translation>
    </message>
    <message>
        <source>In hive %1 hang %2 strips since %3. Hang more beside them?</source>
        <extracomment>%1 a hive, %2 a number of strips, %3 a day; a question</extracomment>
        <translation>In Volk %1 hängen %2 Streifen seit %3. Weitere dazuhängen?</translation>
    </message>
    <message>
        <source>Strips hang in this hive already. Hang more beside them?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>In diesem Volk hängen schon Streifen. Weitere dazuhängen?</translation>
    </message>
    <message>
        <source>%1 strips in this hive, where your rule says %2 to %3. Is that meant?</source>
        <extracomment>%1 a number of strips, %2 the least and %3 the most of the rule; a question</extracomment>
        <translation>%1 Streifen in diesem Volk, Ihre Regel sagt %2 bis %3. Ist das so gemeint?</translation>
    </message>
    <message>
        <source>Another number of strips than your rule says. Is that meant?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Eine andere Anzahl Streifen, als Ihre Regel sagt. Ist das so gemeint?</translation>
    </message>
    <message>
        <source>The strips of hive %1 came out on %2. To change that, correct that entry.</source>
        <extracomment>%1 a hive, %2 a day</extracomment>
        <translation>Die Streifen von Volk %1 kamen am %2 heraus. Um das zu ändern, berichtigen Sie jenen Eintrag.</translation>
    </message>
    <message>
        <source>These strips are out already. To change that, correct that entry.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Streifen sind schon heraus. Um das zu ändern, berichtigen Sie jenen Eintrag.</translation>
    </message>
    <message>
        <source>These strips went in on %1, so they did not come out before. Check the day.</source>
        <extracomment>%1 a day</extracomment>
        <translation>Diese Streifen kamen am %1 hinein, also nicht vorher heraus. Prüfen Sie den Tag.</translation>
    </message>
    <message>
        <source>These strips were not in yet on that day. Check the day.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Streifen waren an diesem Tag noch nicht eingehängt. Prüfen Sie den Tag.</translation>
    </message>
    <message>
        <source>Out and missing make %1, and %2 hang in the hive. Count again: every strip is either out or missing.</source>
        <extracomment>%1 the strips counted, %2 the strips that hang</extracomment>
        <translation>Heraus und fehlend sind zusammen %1, im Volk hängen aber %2. Zählen Sie noch einmal: Jeder Streifen ist entweder heraus oder fehlt.</translation>
    </message>
    <message>
        <source>Out and missing together are not what hangs in the hive. Count again: every strip is either out or missing.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Heraus und fehlend sind zusammen nicht das, was im Volk hängt. Zählen Sie noch einmal: Jeder Streifen ist entweder heraus oder fehlt.</translation>
    </message>
    <message>
        <source>These strips should hang until %1 at least. Were they taken out early?</source>
        <extracomment>%1 a day; a question</extracomment>
        <translation>Diese Streifen sollen mindestens bis %1 hängen. Wurden sie zu früh herausgenommen?</translation>
    </message>
    <message>
        <source>These strips should hang longer. Were they taken out early?</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Streifen sollen länger hängen. Wurden sie zu früh herausgenommen?</translation>
    </message>
    <message>
        <source>A wash counts mites in a number of bees. Say how many bees were in it.</source>
        <extracomment>Beside the number of mites in a wash</extracomment>
        <translation>Eine Auswaschprobe zählt Milben in einer Anzahl Bienen. Geben Sie an, wie viele Bienen darin waren.</translation>
    </message>
    <message>
        <source>They stand in that yard already. Choose another.</source>
        <extracomment>When hives are moved</extracomment>
        <translation>Sie stehen schon an diesem Stand. Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>%1 strips are ready and this round wants %2. Leave out hives, or wait until more are ready.</source>
        <extracomment>%1 the strips ready, %2 the strips wanted</extracomment>
        <translation>%1 Streifen sind bereit, diese Runde braucht %2. Lassen Sie Völker weg oder warten Sie, bis mehr bereit sind.</translation>
    </message>
    <message>
        <source>Fewer strips are ready than this round wants. Leave out hives, or wait until more are ready.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Es sind weniger Streifen bereit, als diese Runde braucht. Lassen Sie Völker weg oder warten Sie, bis mehr bereit sind.</translation>
    </message>
    <message>
        <source>Another program has changed the workbook. Its changes are kept, and the journal shows them: look at them, then enter this again. What was done before them can be corrected, but no longer taken back.</source>
        <extracomment>Undo cannot go on</extracomment>
        <translation>Ein anderes Programm hat das Arbeitsbuch geändert. Seine Änderungen bleiben erhalten, und das Tagebuch zeigt sie: Sehen Sie sie an und tragen Sie dies dann noch einmal ein. Was davor geschah, lässt sich berichtigen, aber nicht mehr rückgängig machen.</translation>
    </message>
    <message>
        <source>This name holds characters that cannot be seen, such as come along when text is copied. Type the name by hand.</source>
        <extracomment>Beside a field for a name</extracomment>
        <translation>In diesem Namen sind Zeichen, die man nicht sieht, wie sie beim Kopieren von Text mitkommen. Tippen Sie den Namen von Hand ein.</translation>
    </message>
    <message>
        <source>The disk failed while the workbook was written or read, so nothing was saved. Enter this again; if it fails again, keep the workbook on another disk.</source>
        <extracomment>Nothing could be saved</extracomment>
        <translation>Der Datenträger ist beim Schreiben oder Lesen des Arbeitsbuchs ausgefallen, darum wurde nichts gespeichert. Tragen Sie dies noch einmal ein; geht es wieder nicht, bewahren Sie das Arbeitsbuch auf einem anderen Datenträger auf.</translation>
    </message>
    <message>
        <source>The workbook is still being checked; entries can be made as soon as it is found sound. What you typed is kept.</source>
        <extracomment>Nothing could be saved yet</extracomment>
        <translation>Das Arbeitsbuch wird noch geprüft; Einträge sind möglich, sobald feststeht, dass es in Ordnung ist. Ihre Eingaben bleiben erhalten.</translation>
    </message>
    <message>
        <source>The workbook is open only to be looked at, so nothing was saved. Everything in it can be looked at, printed and saved as a table.</source>
        <extracomment>Nothing could be saved</extracomment>
        <translation>Das Arbeitsbuch ist nur zum Ansehen geöffnet, darum wurde nichts gespeichert. Alles darin lässt sich ansehen, drucken und als Tabelle speichern.</translation>
    </message>
    <message>
        <source>Another file was put in the place of this workbook while it was open, so nothing was saved. What you typed is kept: note it down, then open the workbook again, or a safe copy of it.</source>
        <extracomment>Nothing could be saved</extracomment>
        <translation>Während dieses Arbeitsbuch offen war, kam eine andere Datei an seine Stelle, darum wurde nichts gespeichert. Ihre Eingaben bleiben erhalten: Notieren Sie sie, und öffnen Sie dann das Arbeitsbuch noch einmal oder eine Sicherungskopie davon.</translation>
    </message>
    <message>
        <source>%1 is a workbook of its own, not a copy of this one. Open it by itself.</source>
        <extracomment>%1 a file</extracomment>
        <translation>%1 ist ein eigenes Arbeitsbuch, keine Kopie von diesem. Öffnen Sie es für sich.</translation>
    </message>
    <message>
        <source>That is a workbook of its own, not a copy of this one. Open it by itself.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Das ist ein eigenes Arbeitsbuch, keine Kopie von diesem. Öffnen Sie es für sich.</translation>
    </message>
    <message>
        <source>%1 is damaged or cannot be read. Take another copy.</source>
        <extracomment>%1 a file</extracomment>
        <translation>%1 ist beschädigt oder lässt sich nicht lesen. Nehmen Sie eine andere Kopie.</translation>
    </message>
    <message>
        <source>This copy is damaged or cannot be read. Take another one.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Diese Kopie ist beschädigt oder lässt sich nicht lesen. Nehmen Sie eine andere.</translation>
    </message>
    <message>
        <source>%1 does not fit this workbook any more, so nothing was taken over. Leave it out, or enter it here by hand.</source>
        <extracomment>%1 an entry, in words or as a code</extracomment>
        <translation>%1 passt nicht mehr in dieses Arbeitsbuch, darum wurde nichts übernommen. Lassen Sie es aus oder tragen Sie es hier von Hand ein.</translation>
    </message>
    <message>
        <source>An entry does not fit this workbook any more, so nothing was taken over. Leave it out, or enter it here by hand.</source>
        <extracomment>As before, without the facts</extracomment>
        <translation>Ein Eintrag passt nicht mehr in dieses Arbeitsbuch, darum wurde nichts übernommen. Lassen Sie ihn aus oder tragen Sie ihn hier von Hand ein.</translation>
    </message>
</context>
<context>
    <name>RegisterCsvWords</name>
    <message>
        <source>day in</source>
        <extracomment>Columns of the register as a table for a spreadsheet.</extracomment>
        <translation>hinein am</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>hive</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>hives</source>
        <translation>Völker</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>batch</source>
        <extracomment>Columns of the register as a table for a spreadsheet.</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>acid g</source>
        <extracomment>A column: mass of oxalic acid dihydrate, in grams.</extracomment>
        <translation>Säure g</translation>
    </message>
    <message>
        <source>strength %</source>
        <extracomment>Columns of the register as a table for a spreadsheet.</extracomment>
        <translation>Gehalt %</translation>
    </message>
    <message>
        <source>use by</source>
        <translation>verwendbar bis</translation>
    </message>
    <message>
        <source>pull by</source>
        <translation>herausnehmen bis</translation>
    </message>
    <message>
        <source>day out</source>
        <translation>heraus am</translation>
    </message>
    <message>
        <source>pulled</source>
        <translation>herausgenommen</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlen</translation>
    </message>
    <message>
        <source>no harvest before</source>
        <translation>keine Ernte vor</translation>
    </message>
    <message>
        <source>placed by</source>
        <translation>eingehängt von</translation>
    </message>
    <message>
        <source>pulled by</source>
        <extracomment>Columns of the register as a table for a spreadsheet.</extracomment>
        <translation>herausgenommen von</translation>
    </message>
    <message>
        <source>round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>void</source>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>entry</source>
        <extracomment>Columns of the register as a table for a spreadsheet: number of the newest entry, and the beginning of its seal.</extracomment>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>Siegel</translation>
    </message>
</context>
<context>
    <name>RegisterPaper</name>
    <message>
        <source>%1 (%2 hives)</source>
        <extracomment>A group of hives in the register; %1 is its name, %2 how many hives it is.</extracomment>
        <translation>%1 (%2 Völker)</translation>
    </message>
    <message>
        <source>oxalic acid in glycerine, %1</source>
        <extracomment>What was hung, in the register; %1 is the strength.</extracomment>
        <translation>Oxalsäure in Glycerin, %1</translation>
    </message>
    <message>
        <source>oxalic acid in glycerine</source>
        <translation>Oxalsäure in Glycerin</translation>
    </message>
    <message>
        <source>Corrections and records made void</source>
        <extracomment>Head of a table in the printed register.</extracomment>
        <translation>Berichtigungen und für ungültig erklärte Einträge</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>Columns of a table in the printed register.</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Betrifft</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Why</source>
        <extracomment>Columns of a table in the printed register.</extracomment>
        <translation>Warum</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>None.</source>
        <extracomment>Instead of an empty table in the printed register.</extracomment>
        <translation>Keine.</translation>
    </message>
    <message>
        <source>Hives found dead or gone, and hives left without strips</source>
        <extracomment>Head of a table in the printed register.</extracomment>
        <translation>Völker, die tot oder fort waren, und Völker ohne Streifen</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Columns of a table in the printed register.</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Hive</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>Yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>Columns of a table in the printed register.</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>A range of days; %1 and %2 are days.</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>from %1</source>
        <extracomment>A range of days; %1 is a day.</extracomment>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>up to %1</source>
        <extracomment>A range of days; %1 is a day.</extracomment>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>all days</source>
        <extracomment>A range of days.</extracomment>
        <translation>alle Tage</translation>
    </message>
    <message>
        <source>all yards</source>
        <extracomment>No yard is chosen.</extracomment>
        <translation>alle Stände</translation>
    </message>
    <message>
        <source>%1 treatments, %2 strips, %3 oxalic acid dihydrate</source>
        <extracomment>The sum under the register; %1 treatments, %2 strips, %3 is a mass of acid.</extracomment>
        <translation>%1 Behandlungen, %2 Streifen, %3 Oxalsäure-Dihydrat</translation>
    </message>
    <message>
        <source>register</source>
        <extracomment>Name of the file offered for the printed register.</extracomment>
        <translation>Behandlungsbuch</translation>
    </message>
    <message>
        <source>Save the register for a spreadsheet</source>
        <extracomment>Title of the window that asks for a file; and the kind of file.</extracomment>
        <translation>Behandlungsbuch als Tabelle speichern</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <extracomment>The kind of file to save in.</extracomment>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>Saved, but the workbook is held by another program and could not note it.</source>
        <extracomment>Said when the file is written but the workbook is held by another program.</extracomment>
        <translation>Gespeichert, aber ein anderes Programm hält das Arbeitsbuch belegt, darum steht es dort nicht.</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <extracomment>Said after a file was written; %1 is its name.</extracomment>
        <translation>Gespeichert: %1</translation>
    </message>
</context>
<context>
    <name>RegisterTables</name>
    <message>
        <source>void</source>
        <extracomment>State of a treatment in a table.</extracomment>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>hanging</source>
        <translation>hängen</translation>
    </message>
    <message>
        <source>In</source>
        <extracomment>A column of the register: day strips were hung; small under it stands who hung them.</extracomment>
        <translation>Hinein am</translation>
    </message>
    <message>
        <source>Yard</source>
        <extracomment>A column of a table in the register.</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Hive</source>
        <extracomment>A column of the register; small under the hive stands its yard.
----------
A column of a table in the register.</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <extracomment>A group of hives; %1 is its name, %2 how many.</extracomment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Out</source>
        <extracomment>A column of the register: the day strips came out, or how they hang; small under it stands who took them out.</extracomment>
        <translation>Heraus am</translation>
    </message>
    <message>
        <source>Pulled</source>
        <extracomment>A column of the register: how many strips came out; small under it how many were missing.</extracomment>
        <translation>Heraus</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>A column of a table in the register.</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>By</source>
        <extracomment>A column of a table of corrections: who made it.
----------
A column of a table in the register.</extracomment>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Notes</source>
        <extracomment>A column of the register.
----------
A column of a table in the register.</extracomment>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>A column of a table of corrections.
----------
A column of a table in the register.</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Record</source>
        <extracomment>A column of a table of corrections: which record.</extracomment>
        <translation>Betrifft</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>A column of a table of corrections: what was changed.
----------
A column of a table in the register.</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <source>Why</source>
        <extracomment>A column of a table of corrections: the reason.
----------
A column of a table in the register.</extracomment>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>A column of a table of hives.</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Entry</source>
        <extracomment>A column of the journal: number of the entry.</extracomment>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>Records</source>
        <extracomment>A column of the journal: how many records an entry touched.</extracomment>
        <translation>Betroffen</translation>
    </message>
    <message>
        <source>overdue</source>
        <extracomment>State of a treatment in a table: strips should be out; strips hang.</extracomment>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>by %1</source>
        <extracomment>Small under the state of a treatment: %1 is the last day for strips to come out.</extracomment>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>Strips, acid</source>
        <extracomment>A column of the register: number of strips; small under it stands their acid.</extracomment>
        <translation>Streifen, Säure</translation>
    </message>
    <message>
        <source>Bag, batch</source>
        <extracomment>A column of the register: code of the bag; small under it stands that of its batch.</extracomment>
        <translation>Beutel, Ansatz</translation>
    </message>
    <message numerus="yes">
        <source>%n missing</source>
        <extracomment>Small under the number of strips that came out.</extracomment>
        <translation>
            <numerusform>%n fehlt</numerusform>
            <numerusform>%n fehlen</numerusform>
        </translation>
    </message>
    <message>
        <source>Harvest from</source>
        <extracomment>A column of the register: the first day on which honey may be taken.</extracomment>
        <translation>Ernte ab</translation>
    </message>
    <message>
        <source>made outside Soakbook</source>
        <extracomment>In the journal: another program changed a record in the file.</extracomment>
        <translation>außerhalb von Soakbook geändert</translation>
    </message>
    <message>
        <source>outside Soakbook</source>
        <extracomment>In place of a name: another program changed the record.</extracomment>
        <translation>außerhalb von Soakbook</translation>
    </message>
</context>
<context>
    <name>RunPaper</name>
    <message>
        <source>opened</source>
        <extracomment>A bag that was opened before</extracomment>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>still resting until %1</source>
        <extracomment>A bag whose strips still rest; %1 a day</extracomment>
        <translation>ruht noch bis %1</translation>
    </message>
    <message>
        <source>untreated on purpose</source>
        <extracomment>A hive that gets no strips, to compare with</extracomment>
        <translation>absichtlich unbehandelt</translation>
    </message>
    <message numerus="yes">
        <source>%n strips hang already</source>
        <extracomment>Strips from an earlier visit</extracomment>
        <translation>
            <numerusform>%n Streifen hängt schon</numerusform>
            <numerusform>%n Streifen hängen schon</numerusform>
        </translation>
    </message>
    <message>
        <source>supers on</source>
        <extracomment>Honey supers are on the hive</extracomment>
        <translation>Honigraum aufgesetzt</translation>
    </message>
    <message>
        <source>run sheet %1</source>
        <extracomment>The name of a file; %1 a yard</extracomment>
        <translation>Laufzettel %1</translation>
    </message>
    <message>
        <source>load-out %1</source>
        <extracomment>The name of a file; %1 a round</extracomment>
        <translation>Ladeliste %1</translation>
    </message>
</context>
<context>
    <name>SafeCopies</name>
    <message>
        <source>No safe copy was made: there is no room in %1, or its disk failed. Your workbook is as it was. Make room there; Soakbook tries again by itself.</source>
        <extracomment>%1 is a folder or file.</extracomment>
        <translation>Es wurde keine Sicherungskopie gemacht: In %1 ist kein Platz, oder der Datenträger ist ausgefallen. Ihr Arbeitsbuch ist, wie es war. Schaffen Sie dort Platz; Soakbook versucht es von selbst noch einmal.</translation>
    </message>
    <message>
        <source>No safe copy was made: another program was writing the workbook. Soakbook tries again by itself.</source>
        <extracomment>Another program has the workbook open.</extracomment>
        <translation>Es wurde keine Sicherungskopie gemacht: Ein anderes Programm schrieb gerade in das Arbeitsbuch. Soakbook versucht es von selbst noch einmal.</translation>
    </message>
    <message>
        <source>No safe copy was made: when it was read back, the copy was not sound. The safe copies made before stay.</source>
        <extracomment>The copy was read back.</extracomment>
        <translation>Es wurde keine Sicherungskopie gemacht: Beim Zurücklesen war die Kopie nicht in Ordnung. Die früheren Sicherungskopien bleiben.</translation>
    </message>
    <message>
        <source>%1 is there already. Choose another name: nothing is written over it.</source>
        <extracomment>%1 is a file.</extracomment>
        <translation>%1 gibt es schon. Wählen Sie einen anderen Namen: Es wird nichts überschrieben.</translation>
    </message>
    <message>
        <source>No safe copy was made: the workbook cannot be read just now. Soakbook tries again by itself.</source>
        <extracomment>Why there is no safe copy.</extracomment>
        <translation>Es wurde keine Sicherungskopie gemacht: Das Arbeitsbuch lässt sich gerade nicht lesen. Soakbook versucht es von selbst noch einmal.</translation>
    </message>
    <message>
        <source>No safe copy was made: %1 cannot be written. See that it is there and that you may write to it; Soakbook tries again by itself.</source>
        <extracomment>%1 is a folder or file.</extracomment>
        <translation>Es wurde keine Sicherungskopie gemacht: %1 lässt sich nicht schreiben. Sehen Sie nach, ob es da ist und ob Sie dort schreiben dürfen; Soakbook versucht es von selbst noch einmal.</translation>
    </message>
    <message>
        <source>The second place %1 is full, or its disk failed. The safe copies on this computer are there.</source>
        <extracomment>%1 is a folder on a stick or another computer.</extracomment>
        <translation>Der zweite Ort %1 ist voll, oder sein Datenträger ist ausgefallen. Die Sicherungskopien auf diesem Rechner sind da.</translation>
    </message>
    <message>
        <source>What was written to the second place %1 did not read back the same: do not trust that disk, use another one.</source>
        <extracomment>%1 is a folder on a stick or another computer.</extracomment>
        <translation>Was an den zweiten Ort %1 geschrieben wurde, kam beim Zurücklesen anders heraus: Trauen Sie diesem Datenträger nicht, nehmen Sie einen anderen.</translation>
    </message>
    <message>
        <source>Nothing was carried to the second place %1 this time. Soakbook tries again by itself.</source>
        <extracomment>%1 is a folder on a stick or another computer.</extracomment>
        <translation>Diesmal kam nichts an den zweiten Ort %1. Soakbook versucht es von selbst noch einmal.</translation>
    </message>
    <message>
        <source>The second place %1 did not answer, or cannot be written. Put the stick in or connect it; Soakbook tries again by itself.</source>
        <extracomment>%1 is a folder on a stick or another computer.</extracomment>
        <translation>Der zweite Ort %1 hat nicht geantwortet, oder dort lässt sich nicht schreiben. Stecken Sie den Stick ein oder stellen Sie die Verbindung her; Soakbook versucht es von selbst noch einmal.</translation>
    </message>
</context>
<context>
    <name>SalvageTexts</name>
    <message>
        <source>how sure</source>
        <extracomment>A column of a table of records from a damaged workbook.</extracomment>
        <translation>wie sicher</translation>
    </message>
</context>
<context>
    <name>SalvageWords</name>
    <message>
        <source>There is no file %1. Look whether it was moved, or whether the stick is plugged in.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>Es gibt keine Datei %1. Sehen Sie nach, ob sie verschoben wurde oder ob der Stick steckt.</translation>
    </message>
    <message>
        <source>%1 is empty: nothing is left in it. Open the newest safe copy instead.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 ist leer: Darin ist nichts übrig. Öffnen Sie stattdessen die neueste Sicherungskopie.</translation>
    </message>
    <message>
        <source>Nothing in %1 looks like a record of Soakbook.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>Nichts in %1 sieht nach einer Aufzeichnung von Soakbook aus.</translation>
    </message>
    <message>
        <source>%1 cannot be read at all. Try the disk or stick on another computer, or open the newest safe copy.</source>
        <extracomment>%1 is a file's path.</extracomment>
        <translation>%1 lässt sich gar nicht lesen. Versuchen Sie den Datenträger oder Stick an einem anderen Rechner oder öffnen Sie die neueste Sicherungskopie.</translation>
    </message>
    <message>
        <source>The reading was stopped. Nothing was changed.</source>
        <extracomment>The user stopped the reading of a damaged file.</extracomment>
        <translation>Das Lesen wurde angehalten. Es wurde nichts geändert.</translation>
    </message>
    <message numerus="yes">
        <source>%n agree with the history</source>
        <extracomment>Records of one kind in a damaged workbook: so many say the same as the history.</extracomment>
        <translation>
            <numerusform>%n stimmt mit dem Verlauf überein</numerusform>
            <numerusform>%n stimmen mit dem Verlauf überein</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are told by the history</source>
        <extracomment>Records of one kind in a damaged workbook: so many are lost and told by the history alone.</extracomment>
        <translation>
            <numerusform>%n ist nur aus dem Verlauf bekannt</numerusform>
            <numerusform>%n sind nur aus dem Verlauf bekannt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be checked</source>
        <extracomment>Records of one kind in a damaged workbook: so many could be read, and nothing is left to hold them against.</extracomment>
        <translation>
            <numerusform>%n ließ sich nicht prüfen</numerusform>
            <numerusform>%n ließen sich nicht prüfen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>of %n more nothing is left</source>
        <extracomment>Records of one kind in a damaged workbook: of so many nothing is left.</extracomment>
        <translation>
            <numerusform>von %n weiteren ist nichts übrig</numerusform>
            <numerusform>von %n weiteren ist nichts übrig</numerusform>
        </translation>
    </message>
    <message>
        <source>There was none.</source>
        <extracomment>Records of one kind in a damaged workbook.</extracomment>
        <translation>Es gab keine.</translation>
    </message>
    <message numerus="yes">
        <source>%n records were read.</source>
        <extracomment>What was read of a damaged workbook.</extracomment>
        <translation>
            <numerusform>%n Aufzeichnung wurde gelesen.</numerusform>
            <numerusform>%n Aufzeichnungen wurden gelesen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n records nothing is left.</source>
        <extracomment>What was read of a damaged workbook; a sentence of its own.</extracomment>
        <translation>
            <numerusform>Von %n Aufzeichnung ist nichts übrig.</numerusform>
            <numerusform>Von %n Aufzeichnungen ist nichts übrig.</numerusform>
        </translation>
    </message>
    <message>
        <source>Of the history, %1 of %2 changes are left.</source>
        <extracomment>The history of a damaged workbook; %1 and %2 are numbers of changes.</extracomment>
        <translation>Vom Verlauf sind %1 von %2 Änderungen übrig.</translation>
    </message>
    <message>
        <source>number</source>
        <extracomment>Header of a column: the number by which the workbook counts a record.</extracomment>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>agrees with the history</source>
        <extracomment>How sure a record of a damaged workbook is.</extracomment>
        <translation>stimmt mit dem Verlauf überein</translation>
    </message>
    <message>
        <source>from the history</source>
        <extracomment>How sure a record of a damaged workbook is.</extracomment>
        <translation>aus dem Verlauf</translation>
    </message>
    <message>
        <source>could not be checked</source>
        <extracomment>How sure a record of a damaged workbook is.</extracomment>
        <translation>ließ sich nicht prüfen</translation>
    </message>
</context>
<context>
    <name>Scripts</name>
    <message>
        <source>%1 cannot be read, or work on it was broken off: open it once in Soakbook, which puts that right, and try again.</source>
        <extracomment>A command line sentence; %1 is a workbook's path.</extracomment>
        <translation>%1 ist nicht lesbar, oder die Arbeit daran wurde abgebrochen: Öffnen Sie es einmal in Soakbook, das bringt es in Ordnung, und versuchen Sie es dann noch einmal.</translation>
    </message>
    <message>
        <source>There is no room for %1, or its disk failed. Nothing was left there; the workbook is as it was.</source>
        <extracomment>A command line sentence; %1 is the path of a file that was to be written.</extracomment>
        <translation>Für %1 ist kein Platz, oder der Datenträger ist ausgefallen. Dort blieb nichts zurück; das Arbeitsbuch ist, wie es war.</translation>
    </message>
    <message>
        <source>%1 cannot be written. Name a new file in a folder that is there and that you may write to.</source>
        <extracomment>A command line sentence; %1 is the path of a file that was to be written.</extracomment>
        <translation>%1 kann nicht geschrieben werden. Nennen Sie eine neue Datei in einem Ordner, den es gibt und in den Sie schreiben dürfen.</translation>
    </message>
    <message>
        <source>structure</source>
        <extracomment>What is checked: the tables, indexes and triggers of a workbook.</extracomment>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>pages</source>
        <extracomment>What is checked: the pages of the file.</extracomment>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>links</source>
        <extracomment>What is checked: whether each record that another one names is there.</extracomment>
        <translation>Verweise</translation>
    </message>
    <message>
        <source>mark</source>
        <extracomment>What is checked: whether the workbook's own mark, and what was found sound before, are there.</extracomment>
        <translation>Marke</translation>
    </message>
    <message>
        <source>numbers</source>
        <extracomment>What is checked: the numbers of the entries in the history.</extracomment>
        <translation>Nummern</translation>
    </message>
    <message>
        <source>seals</source>
        <extracomment>What is checked: the seals of the history.</extracomment>
        <translation>Siegel</translation>
    </message>
    <message>
        <source>records</source>
        <extracomment>What is checked: each record against the history.</extracomment>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>entry %1 %2</source>
        <extracomment>The place of a fault; %1 is the number of an entry, %2 a record or nothing.</extracomment>
        <translation>Eintrag %1 %2</translation>
    </message>
    <message>
        <source>entry %1 of piece of work %2 %3</source>
        <extracomment>The place of a fault; %1 is the number of an entry, %2 that of a piece of work, %3 a record or nothing.</extracomment>
        <translation>Eintrag %1 der Arbeit %2 %3</translation>
    </message>
    <message>
        <source>sound    %1: %2</source>
        <extracomment>A line of a check; %1 is what was checked, %2 how many.</extracomment>
        <translation>heil       %1: %2</translation>
    </message>
    <message>
        <source>damaged  %1: %2, of them bad: %3</source>
        <extracomment>A line of a check; %1 is what was checked, %2 how many, %3 how many of them are bad.</extracomment>
        <translation>beschädigt %1: %2, davon schlecht: %3</translation>
    </message>
    <message>
        <source>damaged  %1: %2, of them bad: %3, the first: %4</source>
        <extracomment>A line of a check; %1 is what was checked, %2 how many, %3 how many of them are bad, %4 where the first one is.</extracomment>
        <translation>beschädigt %1: %2, davon schlecht: %3, zuerst: %4</translation>
    </message>
    <message>
        <source>entries: %1, of them made outside Soakbook: %2, newest seal: %3</source>
        <extracomment>Last line of a check; %1 is the number of the newest entry, %2 how many came from other programs, %3 the beginning of its seal.</extracomment>
        <translation>Einträge: %1, davon außerhalb von Soakbook: %2, neuestes Siegel: %3</translation>
    </message>
    <message>
        <source>%1 holds the workbook up to entry %2.</source>
        <extracomment>A command line sentence; %1 is the path of the copy, %2 the number of the newest entry in it.</extracomment>
        <translation>%1 enthält das Arbeitsbuch bis Eintrag %2.</translation>
    </message>
</context>
<context>
    <name>ShedCautions</name>
    <message>
        <source>Acid powder burns eyes and lungs. Wear goggles, acid-proof gloves and a particle mask (P2, FFP2, N95, or what the data sheet asks for); no draught, break lumps under cover, rinsing water within reach. The label, the safety data sheet and local rules come first.</source>
        <extracomment>Caution beside the form in which acid powder is weighed</extracomment>
        <translation>Säurepulver verätzt Augen und Lunge. Schutzbrille, säurefeste Handschuhe und Partikelmaske tragen (P2, FFP2, N95 oder was das Sicherheitsdatenblatt verlangt); keine Zugluft, Klumpen abgedeckt zerkleinern, Spülwasser in Reichweite. Etikett des Mittels, Sicherheitsdatenblatt und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>See the jacket water before you switch on, and use a residual-current breaker. Air the room, keep away what burns, never close the lid tight, and have somebody look in. Goggles and gloves at the tank. The label, the safety data sheet and local rules come first.</source>
        <extracomment>Caution beside the form in which the tank's temperature is written down</extracomment>
        <translation>Vor dem Einschalten nach dem Wasser im Mantel sehen und einen Fehlerstrom-Schutzschalter (FI) verwenden. Raum lüften, Brennbares fernhalten, den Deckel nie dicht schließen und jemanden nach Ihnen sehen lassen. Am Tank Schutzbrille und Handschuhe. Etikett des Mittels, Sicherheitsdatenblatt und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>The liquid harms eyes for good and burns skin. Goggles and acid-proof gloves, contact lenses out, rinsing water and an eye wash beside you; wash splashes off at once with plenty of water. No galvanised steel, aluminium or bare iron. The label, the safety data sheet and local rules come first.</source>
        <extracomment>Caution beside the forms in which warm liquid is handled</extracomment>
        <translation>Die Flüssigkeit schädigt die Augen bleibend und verätzt die Haut. Schutzbrille und säurefeste Handschuhe, Kontaktlinsen heraus, Spülwasser und Augendusche neben sich; Spritzer sofort mit viel Wasser abwaschen. Kein verzinkter Stahl, kein Aluminium, kein blankes Eisen. Etikett des Mittels, Sicherheitsdatenblatt und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Wet strips are as sharp as the liquid: gloves and goggles. Keep the bag's mouth clean or it will not seal. Store locked, airtight, away from food. The label, the safety data sheet and local rules come first.</source>
        <extracomment>Caution beside the form in which wet strips are bagged</extracomment>
        <translation>Nasse Streifen sind so scharf wie die Flüssigkeit: Handschuhe und Schutzbrille. Die Öffnung des Beutels sauber halten, sonst schließt er nicht. Unter Verschluss, luftdicht und fern von Lebensmitteln aufbewahren. Etikett des Mittels, Sicherheitsdatenblatt und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Pour slowly, goggles and gloves on, rinsing water beside you. Pails airtight, labelled, locked away from food; none of galvanised steel, aluminium or bare iron. If swallowed do not make sick, get help. The label, the safety data sheet and local rules come first.</source>
        <extracomment>Caution beside the form in which leftover liquid is poured into pails</extracomment>
        <translation>Langsam gießen, mit Schutzbrille und Handschuhen, Spülwasser neben sich. Eimer luftdicht, beschriftet, unter Verschluss und fern von Lebensmitteln; keine aus verzinktem Stahl, Aluminium oder blankem Eisen. Bei Verschlucken KEIN Erbrechen herbeiführen, Hilfe holen. Etikett des Mittels, Sicherheitsdatenblatt und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>%1 is over the ceiling of %2. Heat off now. Do not lean over the tank. Air the room, and leave it if the air stings. Read again in some minutes. Never cool the tank by adding water.</source>
        <extracomment>A warning; %1 the temperature read, %2 the most it should be</extracomment>
        <translation>%1 liegt über der Höchsttemperatur von %2. Heizung jetzt aus. Nicht über den Tank beugen. Raum lüften und verlassen, wenn die Luft beißt. In einigen Minuten wieder ablesen. Den Tank nie durch Zugießen von Wasser kühlen.</translation>
    </message>
</context>
<context>
    <name>ShedDraft</name>
    <message>
        <source>Batch %1: %2</source>
        <extracomment>What Due calls a form that was begun; %1 the code of a batch, %2 what the form is for, as "read the tank"</extracomment>
        <translation>Ansatz %1: %2</translation>
    </message>
</context>
<context>
    <name>ShedWords</name>
    <message>
        <source>Planned</source>
        <extracomment>State of a batch: its amounts are planned and not weighed in</extracomment>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Warming</source>
        <extracomment>State of a batch: the tank is warming, the liquid is not clear yet</extracomment>
        <translation>Erwärmen</translation>
    </message>
    <message>
        <source>Clear</source>
        <extracomment>State of a batch: the liquid was seen clear</extracomment>
        <translation>Klar</translation>
    </message>
    <message>
        <source>Soaking</source>
        <extracomment>State of a batch: strips stand in the liquid</extracomment>
        <translation>Tränken</translation>
    </message>
    <message>
        <source>To bag</source>
        <extracomment>State of a batch: strips wait to be bagged</extracomment>
        <translation>Abzupacken</translation>
    </message>
    <message>
        <source>To close</source>
        <extracomment>State of a batch: all is bagged, leftovers are open</extracomment>
        <translation>Abzuschließen</translation>
    </message>
    <message>
        <source>Resting</source>
        <extracomment>State of a closed batch of which bags still rest</extracomment>
        <translation>Ruht</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Abgeschlossen</translation>
    </message>
    <message>
        <source>Void</source>
        <extracomment>State of a batch that was made void</extracomment>
        <translation>Ungültig</translation>
    </message>
    <message>
        <source>%1 weighed out</source>
        <extracomment>Less than one container; %1 a mass to weigh out</extracomment>
        <translation>%1 abgewogen</translation>
    </message>
    <message numerus="yes">
        <source>%n sacks of %1</source>
        <extracomment>Whole containers of acid; %1 what one holds</extracomment>
        <translation>
            <numerusform>%n Sack zu %1</numerusform>
            <numerusform>%n Säcke zu %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cans of %1</source>
        <extracomment>Whole containers of glycerine; %1 what one holds</extracomment>
        <translation>
            <numerusform>%n Kanister zu %1</numerusform>
            <numerusform>%n Kanister zu %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <extracomment>%1 whole containers ("1 can of 25 kg"), %2 the mass still to weigh</extracomment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 · %2 left</source>
        <extracomment>A delivery in a list; %1 its name, %2 what is left of it</extracomment>
        <translation>%1 · noch %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>The header of a column; %1 what it shows, %2 the sign of the unit</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 min</source>
        <extracomment>A time span; %1 minutes</extracomment>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <extracomment>A time span; %1 hours</extracomment>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <extracomment>A time span; %1 hours, %2 minutes</extracomment>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1 d %2 h</source>
        <extracomment>A time span; %1 days, %2 hours</extracomment>
        <translation>%1 Tg. %2 h</translation>
    </message>
    <message>
        <source>%1 today</source>
        <extracomment>An hour of this day; %1 a time of day</extracomment>
        <translation>heute um %1</translation>
    </message>
    <message>
        <source>%1 tomorrow</source>
        <extracomment>An hour of the next day; %1 a time of day</extracomment>
        <translation>morgen um %1</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <extracomment>An hour of another day; %1 a time of day, %2 the day</extracomment>
        <translation>am %2 um %1</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <extracomment>In which time something happens; %1 and %2 hours, such as "13:00" or "02:00 tomorrow"</extracomment>
        <translation>zwischen %1 und %2</translation>
    </message>
</context>
<context>
    <name>SheetCautions</name>
    <message>
        <source>Acid powder: goggles or face shield, acid-proof gloves, particle mask (P2, FFP2, N95 or as the data sheet says), no draught.</source>
        <extracomment>caution on a printed sheet</extracomment>
        <translation>Säurepulver: Schutzbrille oder Gesichtsschutz, säurefeste Handschuhe, Partikelmaske (P2, FFP2, N95 oder nach Sicherheitsdatenblatt), keine Zugluft.</translation>
    </message>
    <message>
        <source>Heat: water in the jacket before the power goes on; room aired; never lidded tight; above the ceiling the liquid gives off gas. Then heat off, do not lean over the tank, leave the room if the air stings.</source>
        <extracomment>caution on a printed sheet</extracomment>
        <translation>Hitze: Wasser im Mantel, bevor der Strom eingeschaltet wird; Raum gelüftet; nie dicht zugedeckt; über der Höchsttemperatur gibt die Flüssigkeit Gas ab. Dann Heizung aus, nicht über den Tank beugen, Raum verlassen, wenn die Luft beißt.</translation>
    </message>
    <message>
        <source>Rinsing water and an eye wash stand beside you. Splashes are washed off at once with plenty of water. The acid's safety data sheet and local rules come first.</source>
        <extracomment>caution on a printed sheet</extracomment>
        <translation>Spülwasser und Augendusche stehen neben Ihnen. Spritzer werden sofort mit viel Wasser abgewaschen. Das Sicherheitsdatenblatt der Säure und die örtlichen Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Wet strips burn eyes and skin: acid-proof gloves and goggles, water in the car.</source>
        <extracomment>caution on a printed sheet</extracomment>
        <translation>Nasse Streifen verätzen Augen und Haut: säurefeste Handschuhe und Schutzbrille, Wasser im Auto.</translation>
    </message>
    <message>
        <source>Supers, harvest and waiting times go by the product's label, your vet and local rules. Home-made treatment is not lawful everywhere.</source>
        <extracomment>caution on a printed sheet</extracomment>
        <translation>Für Honigräume, Ernte und Wartezeiten gelten das Etikett des Mittels, Ihr Tierarzt und die örtlichen Vorschriften. Selbst gemachte Mittel sind nicht überall erlaubt.</translation>
    </message>
    <message>
        <source>Old strips still hold acid: acid-proof gloves. Not into a stove or smoker, away from stock and pets; got rid of by local rules.</source>
        <extracomment>caution on a printed sheet</extracomment>
        <translation>Alte Streifen enthalten noch Säure: säurefeste Handschuhe. Nicht in Ofen oder Smoker, fern von Vieh und Haustieren; Entsorgung nach den örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Bags travel closed and upright, apart from food and people, in a labelled box. Gloves, goggles and rinsing water come along.</source>
        <extracomment>caution on a printed sheet</extracomment>
        <translation>Beutel fahren verschlossen und aufrecht mit, getrennt von Lebensmitteln und Personen, in einer beschrifteten Kiste. Handschuhe, Schutzbrille und Spülwasser kommen mit.</translation>
    </message>
    <message>
        <source>Strips made for own use are no authorised veterinary product. Whether they may be used, and what must be written down, is for local rules and the authority to say.</source>
        <extracomment>on the printed register</extracomment>
        <translation>Für den eigenen Gebrauch gemachte Streifen sind kein zugelassenes Tierarzneimittel. Ob sie verwendet werden dürfen und was aufzuschreiben ist, bestimmen die örtlichen Vorschriften und die Behörde.</translation>
    </message>
</context>
<context>
    <name>State</name>
    <message>
        <source>resting</source>
        <extracomment>State of a bag or batch: it still has to wait until it may be used</extracomment>
        <translation>ruht</translation>
    </message>
    <message>
        <source>ready</source>
        <extracomment>State of a bag, batch or hive: it may be used, all is as it should be</extracomment>
        <translation>bereit</translation>
    </message>
    <message>
        <source>near the limit</source>
        <extracomment>State: the limit comes near</extracomment>
        <translation>nahe der Grenze</translation>
    </message>
    <message>
        <source>past</source>
        <extracomment>State: past the limit</extracomment>
        <translation>überschritten</translation>
    </message>
    <message>
        <source>gone</source>
        <extracomment>State: used up, thrown away or closed</extracomment>
        <translation>weg</translation>
    </message>
</context>
<context>
    <name>StepNames</name>
    <message>
        <source>Mix</source>
        <extracomment>The first step of a batch: acid and glycerine are weighed together</extracomment>
        <translation>Mischen</translation>
    </message>
    <message>
        <source>Heat and clear</source>
        <extracomment>The second step of a batch: the tank is warmed and stirred until the liquid is clear</extracomment>
        <translation>Erwärmen bis klar</translation>
    </message>
    <message>
        <source>Soak</source>
        <extracomment>The third step of a batch: dry strips are flooded in bins</extracomment>
        <translation>Tränken</translation>
    </message>
    <message>
        <source>Weigh</source>
        <extracomment>The fourth step of a batch: wet strips on the scale</extracomment>
        <translation>Wiegen</translation>
    </message>
    <message>
        <source>Bag</source>
        <extracomment>The fifth step of a batch: strips are sealed in bags</extracomment>
        <translation>Abpacken</translation>
    </message>
    <message>
        <source>Leftovers</source>
        <extracomment>The last step of a batch: liquid that is left goes into pails</extracomment>
        <translation>Reste</translation>
    </message>
</context>
<context>
    <name>StepSummaries</name>
    <message>
        <source>pail %1 whole (%2)</source>
        <extracomment>A pail that went into a mix; %1 its code, %2 its mass</extracomment>
        <translation>Eimer %1 ganz (%2)</translation>
    </message>
    <message>
        <source>%1 acid</source>
        <extracomment>Acid that went into a mix; %1 a mass</extracomment>
        <translation>%1 Säure</translation>
    </message>
    <message>
        <source>%1 glycerine</source>
        <extracomment>Glycerine that went into a mix; %1 a mass</extracomment>
        <translation>%1 Glycerin</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <extracomment>What a mix came to; %1 the mass, %2 the strength</extracomment>
        <translation>%1 mit %2</translation>
    </message>
    <message>
        <source>to be weighed in</source>
        <extracomment>A mix that is planned and not weighed in</extracomment>
        <translation>noch einzuwiegen</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <extracomment>The strength of a mix is not what was wanted; %1 the strength wanted</extracomment>
        <translation>gewünscht %1</translation>
    </message>
    <message>
        <source>planned and weighed agree</source>
        <extracomment>Every weight is as it was planned</extracomment>
        <translation>Plan und Wägung stimmen überein</translation>
    </message>
    <message numerus="yes">
        <source>%n stirs</source>
        <extracomment>How often a tank was stirred</extracomment>
        <translation>
            <numerusform>%n-mal gerührt</numerusform>
            <numerusform>%n-mal gerührt</numerusform>
        </translation>
    </message>
    <message>
        <source>highest %1</source>
        <extracomment>The highest temperature of a tank; %1 a temperature</extracomment>
        <translation>Höchstwert %1</translation>
    </message>
    <message>
        <source>clear at %1</source>
        <extracomment>When a tank's liquid was seen clear; %1 day and time</extracomment>
        <translation>klar am %1</translation>
    </message>
    <message>
        <source>read the tank as it warms</source>
        <extracomment>What is to be done now</extracomment>
        <translation>Tank beim Erwärmen ablesen</translation>
    </message>
    <message>
        <source>not clear yet</source>
        <extracomment>The liquid of a tank has not been seen clear</extracomment>
        <translation>noch nicht klar</translation>
    </message>
    <message>
        <source>the liquid is clear: strips can go in</source>
        <extracomment>What is to be done now</extracomment>
        <translation>die Flüssigkeit ist klar: Streifen können hinein</translation>
    </message>
    <message numerus="yes">
        <source>%n bins</source>
        <extracomment>How many bins were flooded</extracomment>
        <translation>
            <numerusform>%n Wanne</numerusform>
            <numerusform>%n Wannen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips</source>
        <extracomment>How many strips soak
----------
How many strips are in bags</extracomment>
        <translation>
            <numerusform>%n Streifen</numerusform>
            <numerusform>%n Streifen</numerusform>
        </translation>
    </message>
    <message>
        <source>since %1</source>
        <extracomment>Since when strips soak; %1 day and time</extracomment>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>room %1</source>
        <extracomment>The temperature of the room; %1 a temperature</extracomment>
        <translation>Raum %1</translation>
    </message>
    <message>
        <source>taken out, not weighed</source>
        <extracomment>Strips were taken out of a bin without a weighing</extracomment>
        <translation>herausgenommen, nicht gewogen</translation>
    </message>
    <message>
        <source>%1 in</source>
        <extracomment>Strips soak and were not weighed yet; %1 how long</extracomment>
        <translation>seit %1 darin</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>How the strips of a bin stand; %1 the bin, %2 how</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n bags</source>
        <extracomment>How many bags were filled</extracomment>
        <translation>
            <numerusform>%n Beutel</numerusform>
            <numerusform>%n Beutel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n labels wait for their bags</source>
        <extracomment>Labels whose bags are not filled yet</extracomment>
        <translation>
            <numerusform>%n Etikett wartet auf seinen Beutel</numerusform>
            <numerusform>%n Etiketten warten auf ihre Beutel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips to bag</source>
        <extracomment>Strips that are in no bag yet</extracomment>
        <translation>
            <numerusform>%n Streifen abzupacken</numerusform>
            <numerusform>%n Streifen abzupacken</numerusform>
        </translation>
    </message>
    <message>
        <source>use by %1</source>
        <extracomment>The last day bags may be used; %1 a day</extracomment>
        <translation>verwendbar bis %1</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n pails</source>
        <extracomment>Liquid in pails; %n pails, %1 a mass</extracomment>
        <translation>
            <numerusform>%1 in %n Eimer</numerusform>
            <numerusform>%1 in %n Eimern</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 unexplained</source>
        <extracomment>What nothing accounts for; %1 a mass with its sign</extracomment>
        <translation>%1 ungeklärt</translation>
    </message>
    <message>
        <source>%1 not accounted for yet</source>
        <extracomment>Liquid that can still be poured; %1 a mass</extracomment>
        <translation>%1 noch nicht nachgewiesen</translation>
    </message>
    <message>
        <source>closed %1</source>
        <extracomment>A batch was closed; %1 day and time</extracomment>
        <translation>abgeschlossen %1</translation>
    </message>
    <message>
        <source>what to make, and out of what</source>
        <extracomment>What the first step of a new batch asks for</extracomment>
        <translation>was gemacht wird, und woraus</translation>
    </message>
    <message>
        <source>waits for the amounts to be weighed in</source>
        <extracomment>What a step of a batch waits for</extracomment>
        <translation>wartet auf das Einwiegen der Mengen</translation>
    </message>
    <message>
        <source>waits for the liquid to be seen clear</source>
        <extracomment>What a step of a batch waits for</extracomment>
        <translation>wartet, bis die Flüssigkeit klar ist</translation>
    </message>
    <message>
        <source>waits for strips in a bin</source>
        <extracomment>What a step of a batch waits for</extracomment>
        <translation>wartet auf Streifen in einer Wanne</translation>
    </message>
    <message>
        <source>waits for strips that have soaked</source>
        <extracomment>What a step of a batch waits for</extracomment>
        <translation>wartet auf getränkte Streifen</translation>
    </message>
    <message>
        <source>waits for the strips to take up their share</source>
        <extracomment>What a step of a batch waits for</extracomment>
        <translation>wartet, bis die Streifen ihren Anteil aufgenommen haben</translation>
    </message>
</context>
<context>
    <name>StockMonths</name>
    <message>
        <source>later in %1</source>
        <extracomment>A second bar of the same month; %1 a month with its year</extracomment>
        <translation>später im %1</translation>
    </message>
    <message>
        <source>earlier</source>
        <extracomment>Name of a bar of the chart of stock: all months before those shown</extracomment>
        <translation>früher</translation>
    </message>
    <message>
        <source>before %1</source>
        <translation>vor %1</translation>
    </message>
</context>
<context>
    <name>StoreCautions</name>
    <message>
        <source>Keep strips, pails and acid locked, airtight and labelled, away from food and children. The label, the safety data sheet and local rules come first.</source>
        <extracomment>Caution at the foot of the pages of the Store</extracomment>
        <translation>Streifen, Eimer und Säure unter Verschluss, luftdicht und beschriftet aufbewahren, fern von Lebensmitteln und Kindern. Etikett des Mittels, Sicherheitsdatenblatt und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Used or spoilt strips are not burned and not left lying: they still hold acid. Gloves and goggles on; dispose of them as your local rules say, not with food waste and not down a drain.</source>
        <extracomment>Caution in the form in which strips are thrown away</extracomment>
        <translation>Gebrauchte oder verdorbene Streifen werden nicht verbrannt und nicht liegen gelassen: Sie enthalten noch Säure. Mit Handschuhen und Schutzbrille; nach den örtlichen Vorschriften entsorgen, nicht im Biomüll und nicht in den Abfluss.</translation>
    </message>
    <message>
        <source>The liquid burns eyes and skin: goggles and acid-proof gloves, rinsing water beside you. Dispose of it as the safety data sheet and your local rules say, not down a drain and not onto the ground.</source>
        <extracomment>Caution in the form in which the contents of a pail are thrown away</extracomment>
        <translation>Die Flüssigkeit verätzt Augen und Haut: Schutzbrille und säurefeste Handschuhe, Spülwasser neben sich. Nach Sicherheitsdatenblatt und örtlichen Vorschriften entsorgen, nicht in den Abfluss und nicht auf den Boden.</translation>
    </message>
</context>
<context>
    <name>StoreWords</name>
    <message>
        <source>no bag yet</source>
        <extracomment>State of a label that was printed before its bag was filled</extracomment>
        <translation>noch kein Beutel</translation>
    </message>
    <message>
        <source>gone</source>
        <extracomment>State of a bag without strips</extracomment>
        <translation>leer</translation>
    </message>
    <message>
        <source>void</source>
        <extracomment>State of a bag that does not count any more
----------
State of a pail that does not count any more</extracomment>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>ready</source>
        <extracomment>State of a pail: it can go into a mix</extracomment>
        <translation>bereit</translation>
    </message>
    <message>
        <source>with its set</source>
        <extracomment>State of a pail that goes into a mix only together with others</extracomment>
        <translation>nur zusammen</translation>
    </message>
    <message>
        <source>goes in no mix</source>
        <extracomment>State of a pail whose strength is not known</extracomment>
        <translation>in keine Mischung</translation>
    </message>
    <message>
        <source>planned for %1</source>
        <extracomment>State of a pail; %1 the code of the batch it is planned for</extracomment>
        <translation>geplant für %1</translation>
    </message>
    <message>
        <source>went into %1</source>
        <extracomment>State of a pail; %1 the code of the batch it went into</extracomment>
        <translation>ging in %1</translation>
    </message>
    <message>
        <source>thrown away</source>
        <extracomment>State of a pail whose contents were thrown away</extracomment>
        <translation>entsorgt</translation>
    </message>
    <message>
        <source>printed</source>
        <extracomment>The label of a bag or pail was printed</extracomment>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>print again</source>
        <extracomment>The label of a bag or pail says what is not true any more</extracomment>
        <translation>neu drucken</translation>
    </message>
    <message>
        <source>not printed</source>
        <extracomment>The label of a bag or pail</extracomment>
        <translation>nicht gedruckt</translation>
    </message>
    <message>
        <source>unknown</source>
        <extracomment>The strength of a liquid is not known</extracomment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <extracomment>A material</extracomment>
        <translation>Oxalsäure</translation>
    </message>
    <message>
        <source>Glycerine</source>
        <extracomment>A material</extracomment>
        <translation>Glycerin</translation>
    </message>
    <message>
        <source>Dry strips</source>
        <extracomment>A material</extracomment>
        <translation>Trockene Streifen</translation>
    </message>
    <message>
        <source>Bags</source>
        <extracomment>A material</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>Strips in a bag; %1 those that are left, %2 those that were packed</extracomment>
        <translation>%1 von %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) past</source>
        <extracomment>A bag's limit lies behind; %n days</extracomment>
        <translation>
            <numerusform>seit %n Tag abgelaufen</numerusform>
            <numerusform>seit %n Tagen abgelaufen</numerusform>
        </translation>
    </message>
    <message>
        <source>today is the last day</source>
        <extracomment>A bag's limit</extracomment>
        <translation>heute ist der letzte Tag</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) left</source>
        <extracomment>A bag's limit; %n days</extracomment>
        <translation>
            <numerusform>noch %n Tag</numerusform>
            <numerusform>noch %n Tage</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StripKindFields</name>
    <message>
        <source>Kind of strip</source>
        <extracomment>A field's label: what the strips are called; and its sentence of help.</extracomment>
        <translation>Streifenart</translation>
    </message>
    <message>
        <source>What you call it: material and length.</source>
        <translation>Wie Sie sie nennen: Material und Länge.</translation>
    </message>
    <message>
        <source>One dry strip weighs</source>
        <extracomment>A field's label; and its sentence of help.</extracomment>
        <translation>Ein trockener Streifen wiegt</translation>
    </message>
    <message>
        <source>Weigh fifty and divide. Card takes up damp: weigh them in the room they lie in.</source>
        <translation>Fünfzig wiegen und teilen. Karton zieht Feuchte: Wiegen Sie sie in dem Raum, in dem sie liegen.</translation>
    </message>
    <message>
        <source>One soaked strip should weigh</source>
        <extracomment>A field's label; and its sentence of help.</extracomment>
        <translation>Ein getränkter Streifen soll wiegen</translation>
    </message>
    <message>
        <source>The weight at which a strip holds as much as you want.</source>
        <translation>Das Gewicht, bei dem ein Streifen so viel hält, wie Sie wollen.</translation>
    </message>
    <message>
        <source>May be off by</source>
        <extracomment>A field's label; and its sentence of help.</extracomment>
        <translation>Darf abweichen um</translation>
    </message>
    <message>
        <source>Either side of that weight, and still right.</source>
        <translation>Nach oben und unten, und noch richtig.</translation>
    </message>
    <message>
        <source>Strips in a bag</source>
        <extracomment>A field's label; and the unit behind the number.</extracomment>
        <translation>Streifen je Beutel</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Strips for a hive</source>
        <extracomment>A section of a form; and its sentence of help.</extracomment>
        <translation>Streifen je Volk</translation>
    </message>
    <message>
        <source>Your rule, by the label, your vet and local law. A round copies it when it is planned, and every hive can be typed over.</source>
        <translation>Ihre Regel, nach dem Etikett des Mittels, Ihrem Tierarzt und den örtlichen Vorschriften. Eine Runde übernimmt sie beim Planen, und bei jedem Volk lässt sich etwas anderes eintippen.</translation>
    </message>
    <message>
        <source>Reckoned by</source>
        <extracomment>A field's label.</extracomment>
        <translation>Berechnung</translation>
    </message>
    <message>
        <source>not said</source>
        <extracomment>A choice: no rule is said.</extracomment>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>frames of bees</source>
        <extracomment>A way to reckon strips for a hive.</extracomment>
        <translation>besetzte Waben</translation>
    </message>
    <message>
        <source>brood boxes</source>
        <extracomment>A way to reckon strips for a hive.</extracomment>
        <translation>Brutzargen</translation>
    </message>
    <message>
        <source>the same for every hive</source>
        <extracomment>A way to reckon strips for a hive.</extracomment>
        <translation>für jedes Volk gleich</translation>
    </message>
    <message>
        <source>Strips for each</source>
        <extracomment>A field's label: strips for each hive or box.</extracomment>
        <translation>Streifen je Volk oder Zarge</translation>
    </message>
    <message>
        <source>One strip for so many frames of bees</source>
        <extracomment>A field's label; and its sentence of help.</extracomment>
        <translation>Ein Streifen auf so viele besetzte Waben</translation>
    </message>
    <message>
        <source>A part of a strip is rounded up to a whole one.</source>
        <translation>Ein angefangener Streifen wird auf einen ganzen aufgerundet.</translation>
    </message>
    <message>
        <source>At least</source>
        <extracomment>A field's label: least strips in a hive.</extracomment>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>At most</source>
        <extracomment>A field's label: most strips in a hive.</extracomment>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>One strip takes up %1 of liquid.</source>
        <extracomment>What one strip takes up; %1 is a weight.</extracomment>
        <translation>Ein Streifen nimmt %1 Flüssigkeit auf.</translation>
    </message>
</context>
<context>
    <name>Tour</name>
    <message>
        <source>%1 could not be written.</source>
        <extracomment>%1 is a file.</extracomment>
        <translation>%1 konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <extracomment>%1 is a folder.</extracomment>
        <translation>Der Ordner %1 lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>%1 cannot be read.</source>
        <extracomment>%1 is a file.</extracomment>
        <translation>%1 lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>%1 pictures and %2 papers are in %3</source>
        <extracomment>What the tour saved; %1 pictures, %2 PDFs, %3 a folder.</extracomment>
        <translation>%1 Bilder und %2 Papiere sind in %3</translation>
    </message>
</context>
<context>
    <name>Unreadable</name>
    <message>
        <source>Nothing is written here yet.</source>
        <extracomment>Beside a field</extracomment>
        <translation>Hier steht noch nichts.</translation>
    </message>
    <message>
        <source>This does not read. Write a figure such as 12.5, or a day such as 3 oct.</source>
        <extracomment>Beside a field for an amount, a day or a time</extracomment>
        <translation>Das ist nicht lesbar. Schreiben Sie eine Zahl wie 12,5 oder einen Tag wie 3. Okt.</translation>
    </message>
    <message>
        <source>This unit does not belong here. Leave it out, or write another.</source>
        <extracomment>Beside a field for an amount</extracomment>
        <translation>Diese Einheit gehört nicht hierher. Lassen Sie sie weg oder schreiben Sie eine andere.</translation>
    </message>
    <message>
        <source>A thousand, or a little over one? Write 1234, or 1.2340, or the unit after it.</source>
        <extracomment>Beside a field: 1.234 may be a thousand or a little more than one</extracomment>
        <translation>Tausend oder wenig mehr als eins? Schreiben Sie 1234 oder 1,2340 oder die Einheit dahinter.</translation>
    </message>
    <message>
        <source>This cannot be below zero.</source>
        <extracomment>Beside a field for an amount</extracomment>
        <translation>Das kann nicht unter null sein.</translation>
    </message>
    <message>
        <source>This is more than can be kept. Check the figure and its unit.</source>
        <extracomment>Beside a field for an amount</extracomment>
        <translation>Das ist mehr, als sich festhalten lässt. Prüfen Sie den Wert und seine Einheit.</translation>
    </message>
    <message>
        <source>This has more decimals than are kept. Leave the last ones out.</source>
        <extracomment>Beside a field for an amount</extracomment>
        <translation>Das hat mehr Nachkommastellen, als festgehalten werden. Lassen Sie die letzten weg.</translation>
    </message>
    <message>
        <source>There is no such day or time. Check the figures.</source>
        <extracomment>Beside a field for a day or a time of day</extracomment>
        <translation>Diesen Tag oder diese Uhrzeit gibt es nicht. Prüfen Sie die Zahlen.</translation>
    </message>
    <message>
        <source>This reads as two different days. Write the month as a word, or the year in full.</source>
        <extracomment>Beside a field for a day: 03/04/26 may be read two ways</extracomment>
        <translation>Das lässt sich als zwei verschiedene Tage lesen. Schreiben Sie den Monat als Wort oder das Jahr ganz aus.</translation>
    </message>
</context>
<context>
    <name>VesselFields</name>
    <message>
        <source>Tank</source>
        <extracomment>A field's label: what a tank is called.</extracomment>
        <translation>Tank</translation>
    </message>
    <message>
        <source>What you call it.</source>
        <translation>Wie Sie ihn nennen.</translation>
    </message>
    <message>
        <source>Filled with at most</source>
        <extracomment>A field's label: most liquid a tank is filled with; and its sentence of help.</extracomment>
        <translation>Füllung höchstens</translation>
    </message>
    <message>
        <source>The liquid it takes with room to stir, by weight.</source>
        <translation>Die Flüssigkeit, die er mit Platz zum Rühren fasst, nach Gewicht.</translation>
    </message>
    <message>
        <source>Bin</source>
        <extracomment>A field's label: what a bin is called.</extracomment>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>Holds dry strips</source>
        <extracomment>A field's label; and the unit behind the number.</extracomment>
        <translation>Fasst trockene Streifen</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Liquid that floods it</source>
        <extracomment>A field's label: liquid that floods a packed bin; and its sentence of help.</extracomment>
        <translation>Flüssigkeit zum Fluten</translation>
    </message>
    <message>
        <source>If you have measured it; leave it empty otherwise.</source>
        <translation>Wenn Sie sie gemessen haben; sonst leer lassen.</translation>
    </message>
</context>
<context>
    <name>VisitGrid</name>
    <message>
        <source>Hive</source>
        <extracomment>Column</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>left untreated on purpose</source>
        <extracomment>A hive that is kept without strips to compare with</extracomment>
        <translation>absichtlich unbehandelt gelassen</translation>
    </message>
    <message>
        <source>Brood boxes</source>
        <extracomment>Column: how many frames are covered with bees</extracomment>
        <translation>Brutzargen</translation>
    </message>
    <message>
        <source>Frames of bees</source>
        <translation>Besetzte Waben</translation>
    </message>
    <message>
        <source>Planned</source>
        <extracomment>Column: strips by the round's rule</extracomment>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Strips in</source>
        <extracomment>Column: strips hung on this visit</extracomment>
        <translation>Hinein</translation>
    </message>
    <message numerus="yes">
        <source>%n strips hang there already</source>
        <extracomment>%n strips hang in the hive already</extracomment>
        <translation>
            <numerusform>%n Streifen hängt dort schon</numerusform>
            <numerusform>%n Streifen hängen dort schon</numerusform>
        </translation>
    </message>
    <message>
        <source>From bag</source>
        <extracomment>Column: the bag from which strips come</extracomment>
        <translation>Aus Beutel</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>Column: alive, dead or gone</extracomment>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Column</extracomment>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>WeighWords</name>
    <message>
        <source>By its curve %1 reached %2 %3: weigh it now.</source>
        <extracomment>What the curve of a bin says; %1 the bin, %2 a weight, %3 when, such as "at about 04:10 today, between ..."</extracomment>
        <translation>%1 hat nach der Kurve %2 erreicht, %3: jetzt wiegen.</translation>
    </message>
    <message>
        <source>%1 reaches %2 %3.</source>
        <extracomment>What the curve of a bin says; %1 the bin, %2 a weight, %3 when, such as "at about 14:10 today, between ..."</extracomment>
        <translation>%1 erreicht %2 %3.</translation>
    </message>
    <message>
        <source>The least that is good, %1, comes %2.</source>
        <extracomment>After a sentence on a bin whose target has no hour; %1 a weight, %2 when, such as "at about 14:10 today, ..."</extracomment>
        <translation>Das kleinste noch gute Gewicht, %1, kommt %2.</translation>
    </message>
    <message>
        <source>%1: when it is done can be told from three weighings on, at different hours.</source>
        <extracomment>Why no hour is told for a bin; %1 the bin</extracomment>
        <translation>%1: Wann sie fertig ist, lässt sich ab drei Wägungen zu verschiedenen Stunden sagen.</translation>
    </message>
    <message>
        <source>%1 grows no heavier, so no hour can be told.</source>
        <extracomment>Why no hour is told for a bin; %1 the bin</extracomment>
        <translation>%1 wird nicht mehr schwerer, darum lässt sich keine Stunde sagen.</translation>
    </message>
    <message>
        <source>%1 still gains as fast as at first: where that ends cannot be told yet. Weigh again later.</source>
        <extracomment>Why no hour is told for a bin; %1 the bin</extracomment>
        <translation>%1 nimmt noch so schnell zu wie am Anfang: Wo das endet, lässt sich noch nicht sagen. Später noch einmal wiegen.</translation>
    </message>
    <message>
        <source>%1 was full at its first weighing: how fast it filled cannot be told.</source>
        <extracomment>Why no hour is told for a bin; %1 the bin</extracomment>
        <translation>%1 war bei der ersten Wägung schon voll: Wie schnell das ging, lässt sich nicht sagen.</translation>
    </message>
    <message>
        <source>at about %1, %2</source>
        <extracomment>When a weight is reached; %1 an hour such as "14:10 today", %2 how sure: "between 13:00 and 16:00"</extracomment>
        <translation>etwa %1, %2</translation>
    </message>
    <message>
        <source>%1: its weighings lie on no one curve, so no hour can be told.</source>
        <extracomment>Why no hour is told for a bin; %1 the bin</extracomment>
        <translation>%1: Die Wägungen liegen nicht auf einer Kurve, darum lässt sich keine Stunde sagen.</translation>
    </message>
    <message>
        <source>%1 levels off at about %2, below the %3 wanted.</source>
        <extracomment>What the curve of a bin says; %1 the bin, %2 the weight it comes to, %3 the weight wanted</extracomment>
        <translation>%1 bleibt bei etwa %2 stehen, unter den gewünschten %3.</translation>
    </message>
    <message>
        <source>%1 comes close to %2 so slowly that its hour cannot be told.</source>
        <extracomment>What the curve of a bin says; %1 the bin, %2 the weight wanted</extracomment>
        <translation>%1 nähert sich %2 so langsam, dass sich die Stunde nicht sagen lässt.</translation>
    </message>
    <message numerus="yes">
        <source>%n more would settle it at 95 %, going by the %1 that single strips of this kind lie apart.</source>
        <translation>
            <numerusform>%n weiterer würde es zu 95 % klären, nach den %1, um die einzelne Streifen dieser Art auseinanderliegen.</numerusform>
            <numerusform>%n weitere würden es zu 95 % klären, nach den %1, um die einzelne Streifen dieser Art auseinanderliegen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more would settle it at 95 %.</source>
        <extracomment>How many more strips to weigh; %n strips</extracomment>
        <translation>
            <numerusform>%n weiterer würde es zu 95 % klären.</numerusform>
            <numerusform>%n weitere würden es zu 95 % klären.</numerusform>
        </translation>
    </message>
    <message>
        <source>It lies so near the limit that no number of strips would settle it.</source>
        <extracomment>A sample whose mean lies next to a limit</extracomment>
        <translation>Es liegt so nah an der Grenze, dass keine Zahl von Streifen es klären würde.</translation>
    </message>
    <message>
        <source>How sure that is cannot be told until some strips of this kind were weighed one by one.</source>
        <extracomment>Why it is not said how sure a sample is</extracomment>
        <translation>Wie sicher das ist, lässt sich erst sagen, wenn einige Streifen dieser Art einzeln gewogen wurden.</translation>
    </message>
    <message>
        <source>The room was %1, colder than your %2: it will take longer.</source>
        <extracomment>A hint; %1 the temperature of the room, %2 the least of Set-up</extracomment>
        <translation>Der Raum hatte %1, kälter als Ihre %2: Es wird länger dauern.</translation>
    </message>
    <message>
        <source>The room was %1, colder than your %2: reckon with %3 times the hours.</source>
        <extracomment>A hint; %1 the temperature of the room, %2 the least of Set-up, %3 a number such as 1.4</extracomment>
        <translation>Der Raum hatte %1, kälter als Ihre %2: Rechnen Sie mit %3-mal so vielen Stunden.</translation>
    </message>
</context>
<context>
    <name>YardForm</name>
    <message>
        <source>The yard %1</source>
        <extracomment>Title of a form</extracomment>
        <translation>Der Stand %1</translation>
    </message>
    <message>
        <source>A new yard</source>
        <translation>Ein neuer Stand</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>Field: what a yard is called</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Where it is</source>
        <extracomment>Field: a yard's address or how to find it</extracomment>
        <translation>Wo er ist</translation>
    </message>
    <message>
        <source>The way there, for whoever visits it in your place.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Der Weg dorthin, für den, der an Ihrer Stelle hinfährt.</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Field</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Still in use?</source>
        <extracomment>Field: whether a yard is still used</extracomment>
        <translation>Noch in Gebrauch?</translation>
    </message>
    <message>
        <source>Save the yard</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Stand speichern</translation>
    </message>
    <message>
        <source>Add the yard</source>
        <translation>Stand hinzufügen</translation>
    </message>
    <message>
        <source>Take away</source>
        <extracomment>Quiet button that takes a time of a yard away</extracomment>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Times of %1</source>
        <extracomment>Title of a form; %1 a yard</extracomment>
        <translation>Zeiten von %1</translation>
    </message>
    <message>
        <source>Flows and days when this yard is not to be opened. They are looked at when a round is planned and when strips go in.</source>
        <extracomment>Under the title of a form</extracomment>
        <translation>Trachten und Tage, an denen dieser Stand nicht geöffnet werden soll. Darauf wird geachtet, wenn eine Runde geplant wird und wenn Streifen hineinkommen.</translation>
    </message>
    <message>
        <source>One more</source>
        <extracomment>Heading within a form</extracomment>
        <translation>Noch eine Zeit</translation>
    </message>
    <message>
        <source>What it is</source>
        <extracomment>Field: a flow, or days when a yard stays shut</extracomment>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>a flow</source>
        <extracomment>One of two: a time when bees bring in nectar</extracomment>
        <translation>eine Tracht</translation>
    </message>
    <message>
        <source>not to be opened</source>
        <extracomment>One of two: days when nobody opens the hives</extracomment>
        <translation>nicht zu öffnen</translation>
    </message>
    <message>
        <source>Name or reason</source>
        <extracomment>Field: the name of a flow, or why a yard stays shut</extracomment>
        <translation>Name oder Grund</translation>
    </message>
    <message>
        <source>Lime, heather; spraying next door, a show.</source>
        <extracomment>Help of a field: examples</extracomment>
        <translation>Linde, Heide; Spritzung nebenan, ein Fest.</translation>
    </message>
    <message>
        <source>First day</source>
        <extracomment>Field</extracomment>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Last day</source>
        <extracomment>Field</extracomment>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Add the time</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Zeit hinzufügen</translation>
    </message>
</context>
<context>
    <name>YardList</name>
    <message numerus="yes">
        <source>%n hives</source>
        <extracomment>Under a yard's name
----------
Under an entry</extracomment>
        <translation>
            <numerusform>%n Volk</numerusform>
            <numerusform>%n Völker</numerusform>
        </translation>
    </message>
    <message>
        <source>not in use</source>
        <extracomment>Under a yard's name: nobody keeps hives there any more</extracomment>
        <translation>nicht in Gebrauch</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <extracomment>Under a yard's name; %1 "20 hives", %2 a day</extracomment>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>All yards</source>
        <extracomment>First entry of the list of yards</extracomment>
        <translation>Alle Stände</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n strips hang</source>
        <extracomment>Under an entry; %1 "60 hives"</extracomment>
        <translation>
            <numerusform>%1, %n Streifen hängt</numerusform>
            <numerusform>%1, %n Streifen hängen</numerusform>
        </translation>
    </message>
    <message>
        <source>Rounds</source>
        <extracomment>Second entry of the list of yards</extracomment>
        <translation>Runden</translation>
    </message>
    <message>
        <source>none open</source>
        <extracomment>Under an entry</extracomment>
        <translation>keine offen</translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <translation>
            <numerusform>%n offen</numerusform>
            <numerusform>%n offen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>YardPaperWords</name>
    <message numerus="yes">
        <source>row of %n</source>
        <extracomment>A group of unnumbered hives that stand together</extracomment>
        <translation>
            <numerusform>Reihe mit %n</numerusform>
            <numerusform>Reihe mit %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>The first and the last day of a time</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>until %1</source>
        <extracomment>The last day of a time</extracomment>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <extracomment>The first day of a time</extracomment>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>%1 the name of a flow, %2 its days</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not to be opened %1 (%2)</source>
        <extracomment>Days when a yard is not to be opened; %1 the days, %2 why</extracomment>
        <translation>nicht zu öffnen %1 (%2)</translation>
    </message>
</context>
<context>
    <name>YardSheets</name>
    <message>
        <source>Bags to take</source>
        <extracomment>heading on a run sheet or load-out</extracomment>
        <translation>Mitzunehmende Beutel</translation>
    </message>
    <message>
        <source>Bag</source>
        <extracomment>column: a bag's code</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Strips in it</source>
        <extracomment>column: number of strips left in a bag</extracomment>
        <translation>Streifen darin</translation>
    </message>
    <message>
        <source>Use by</source>
        <extracomment>column: a date</extracomment>
        <translation>Verwendbar bis</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>column: where a bag stands</extracomment>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>column
----------
column to write in, with what is known in small print</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Brought back</source>
        <extracomment>column to write in: strips left in the bag when one comes back</extracomment>
        <translation>Zurückgebracht</translation>
    </message>
    <message>
        <source>No bags are set aside yet.</source>
        <extracomment>instead of the table of bags</extracomment>
        <translation>Noch keine Beutel bereitgelegt.</translation>
    </message>
    <message>
        <source>Hive</source>
        <extracomment>column on a run sheet: number of a hive, or name of a group
----------
column on a pull list: number of a hive, or name of a group</extracomment>
        <translation>Volk</translation>
    </message>
    <message>
        <source>Bees</source>
        <extracomment>column on a run sheet: frames of bees</extracomment>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>column on a run sheet: strips to hang
----------
column on a pull list: strips hanging
----------
column on a load-out: how many</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>As planned</source>
        <extracomment>column to tick: done as planned</extracomment>
        <translation>Wie geplant</translation>
    </message>
    <message>
        <source>Hung</source>
        <extracomment>column to write in: strips really hung</extracomment>
        <translation>Eingehängt</translation>
    </message>
    <message>
        <source>From bag</source>
        <extracomment>column to write in: the bag's code</extracomment>
        <translation>Aus Beutel</translation>
    </message>
    <message>
        <source>In the car</source>
        <extracomment>heading over things to tick</extracomment>
        <translation>Im Wagen</translation>
    </message>
    <message>
        <source>Acid-proof gloves and goggles, for each hand that helps</source>
        <extracomment>to tick</extracomment>
        <translation>Säurefeste Handschuhe und Schutzbrille für alle, die mithelfen</translation>
    </message>
    <message>
        <source>Water to rinse, at least ten litres</source>
        <extracomment>to tick</extracomment>
        <translation>Wasser zum Spülen, mindestens zehn Liter</translation>
    </message>
    <message>
        <source>A bag or pail with a lid for what is pulled</source>
        <extracomment>to tick</extracomment>
        <translation>Ein Beutel oder Eimer mit Deckel für herausgenommene Streifen</translation>
    </message>
    <message>
        <source>This paper and a pencil</source>
        <extracomment>to tick</extracomment>
        <translation>Dieses Blatt und ein Bleistift</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <extracomment>title of a printed sheet: a line for each hive of a yard, to hang strips by</extracomment>
        <translation>Laufzettel</translation>
    </message>
    <message>
        <source>Strips in all</source>
        <extracomment>on a run sheet: strips for all hives together
----------
on a load-out: strips for all yards together</extracomment>
        <translation>Streifen insgesamt</translation>
    </message>
    <message>
        <source>Supers and flow</source>
        <extracomment>on a run sheet: what the yard's calendar says of flows and supers</extracomment>
        <translation>Honigräume und Tracht</translation>
    </message>
    <message>
        <source>Hung by</source>
        <extracomment>on a run sheet, before a line to write on</extracomment>
        <translation>Eingehängt von</translation>
    </message>
    <message>
        <source>On</source>
        <extracomment>on a run sheet, before a line to write on
----------
on a pull list, before a line to write on</extracomment>
        <translation>Am</translation>
    </message>
    <message>
        <source>Hives</source>
        <extracomment>heading on a run sheet
----------
column on a load-out: how many</extracomment>
        <translation>Völker</translation>
    </message>
    <message>
        <source>Pull list</source>
        <extracomment>title of a printed sheet: which strips to take out of which hives</extracomment>
        <translation>Herausnahmeliste</translation>
    </message>
    <message>
        <source>Strips hanging</source>
        <extracomment>on a pull list: strips hanging in all hives together</extracomment>
        <translation>Hängende Streifen</translation>
    </message>
    <message>
        <source>Pulled by</source>
        <extracomment>on a pull list, before a line to write on</extracomment>
        <translation>Herausgenommen von</translation>
    </message>
    <message>
        <source>Since</source>
        <extracomment>column on a pull list: the day they were hung</extracomment>
        <translation>Seit</translation>
    </message>
    <message>
        <source>Pull</source>
        <extracomment>column on a pull list: from when to when they come out, and how that stands today</extracomment>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>All out</source>
        <extracomment>column to tick: all of them came out</extracomment>
        <translation>Alle heraus</translation>
    </message>
    <message>
        <source>Pulled</source>
        <extracomment>column to write in: strips pulled</extracomment>
        <translation>Herausgenommen</translation>
    </message>
    <message>
        <source>Missing</source>
        <extracomment>column to write in: strips not found</extracomment>
        <translation>Fehlend</translation>
    </message>
    <message>
        <source>No strips hang in this yard.</source>
        <extracomment>instead of the table on a pull list</extracomment>
        <translation>An diesem Stand hängen keine Streifen.</translation>
    </message>
    <message>
        <source>Weight of what was pulled, and notes</source>
        <extracomment>on a pull list, over lines to write on</extracomment>
        <translation>Gewicht der herausgenommenen Streifen und Notizen</translation>
    </message>
    <message>
        <source>Load-out</source>
        <extracomment>title of a printed sheet: what goes into the car for a round</extracomment>
        <translation>Ladeliste</translation>
    </message>
    <message>
        <source>Yards</source>
        <extracomment>heading on a load-out</extracomment>
        <translation>Stände</translation>
    </message>
    <message>
        <source>Yard</source>
        <extracomment>column on a load-out</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>column on a load-out: a date</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>No yards are on this round yet.</source>
        <extracomment>instead of the table of yards</extracomment>
        <translation>Zu dieser Runde gehören noch keine Stände.</translation>
    </message>
</context>
<context>
    <name>YardWords</name>
    <message numerus="yes">
        <source>row of %n</source>
        <extracomment>A group of unnumbered hives that stand together</extracomment>
        <translation>
            <numerusform>Reihe mit %n</numerusform>
            <numerusform>Reihe mit %n</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>The first and the last day of a time: "12 to 26 Oct"</extracomment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>until %1</source>
        <extracomment>The last day of a time</extracomment>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <extracomment>The first day of a time</extracomment>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>%1 the name of a flow, %2 two days
----------
A bag's code and how many strips come out of it</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>not to be opened %1 (%2)</source>
        <extracomment>Days when a yard is not to be opened; %1 two days, %2 why</extracomment>
        <translation>nicht zu öffnen %1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <extracomment>Mites on a hundred bees, and between which figures that lies: "3 % (1.6 to 5.6 %)"</extracomment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <extracomment>Mites fallen a day</extracomment>
        <translation>%1 je Tag</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n days</source>
        <extracomment>Mites fallen; %1 mites, %n days</extracomment>
        <translation>
            <numerusform>%1 in %n Tag</numerusform>
            <numerusform>%1 in %n Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on %2 bees</source>
        <extracomment>%1 mites, %2 bees</extracomment>
        <translation>%1 auf %2 Bienen</translation>
    </message>
    <message>
        <source>wash</source>
        <extracomment>A way to count mites: bees are washed</extracomment>
        <translation>Auswaschung</translation>
    </message>
    <message>
        <source>powder shake</source>
        <extracomment>A way to count mites: bees are shaken in powdered sugar</extracomment>
        <translation>Puderzuckerprobe</translation>
    </message>
    <message>
        <source>natural drop</source>
        <extracomment>A way to count mites: what falls on a board by itself</extracomment>
        <translation>natürlicher Milbenfall</translation>
    </message>
    <message>
        <source>hanging</source>
        <extracomment>Strips hang and are not to be pulled yet</extracomment>
        <translation>hängen</translation>
    </message>
    <message>
        <source>to pull</source>
        <extracomment>Strips hang and may be pulled</extracomment>
        <translation>herauszunehmen</translation>
    </message>
    <message>
        <source>pull soon</source>
        <extracomment>Strips hang and their last day is near</extracomment>
        <translation>bald herausnehmen</translation>
    </message>
    <message>
        <source>overdue</source>
        <extracomment>Strips hang longer than their last day</extracomment>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>A dead hive in which strips still hang: "dead, pull soon"</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>alive</source>
        <extracomment>The state of a hive</extracomment>
        <translation>lebt</translation>
    </message>
    <message>
        <source>dead</source>
        <extracomment>The state of a hive</extracomment>
        <translation>tot</translation>
    </message>
    <message>
        <source>gone</source>
        <extracomment>The state of a hive: sold, stolen, joined with another</extracomment>
        <translation>abgegangen</translation>
    </message>
    <message>
        <source>Acid-proof gloves when handling strips; keep them from eyes and mouth, and rinse splashes at once with plenty of water.</source>
        <extracomment>A caution</extracomment>
        <translation>Beim Umgang mit Streifen säurefeste Handschuhe tragen; Streifen von Augen und Mund fernhalten und Spritzer sofort mit viel Wasser abspülen.</translation>
    </message>
    <message>
        <source>Supers, harvest and withdrawal: follow the label, the vet and local rules.</source>
        <extracomment>A caution</extracomment>
        <translation>Honigräume, Ernte und Wartezeit: nach dem Etikett des Mittels, dem Tierarzt und den örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Used strips: never into a stove or smoker, away from stock and pets, by local rules.</source>
        <extracomment>A caution</extracomment>
        <translation>Gebrauchte Streifen: nie in Ofen oder Smoker, fern von Vieh und Haustieren, nach den örtlichen Vorschriften.</translation>
    </message>
</context>
<context>
    <name>soakbook::app::Session</name>
    <message>
        <source>example</source>
        <extracomment>Name of the file that holds a copy of the worked example, without its ending.</extracomment>
        <translation>beispiel</translation>
    </message>
    <message>
        <source>treatments</source>
        <extracomment>Name of the file of a new workbook, without its ending.</extracomment>
        <translation>behandlungen</translation>
    </message>
    <message>
        <source>Open a workbook</source>
        <extracomment>Title of a window that asks for a file, and the kind of file.</extracomment>
        <translation>Arbeitsbuch öffnen</translation>
    </message>
    <message>
        <source>Workbooks (*.soakbook)</source>
        <translation>Arbeitsbücher (*.soakbook)</translation>
    </message>
    <message>
        <source>That workbook is open in a window of its own, which was brought to the front.</source>
        <extracomment>Said where another workbook was asked for</extracomment>
        <translation>Dieses Arbeitsbuch ist in einem eigenen Fenster offen, das nach vorn geholt wurde.</translation>
    </message>
    <message>
        <source>A safe copy was put back</source>
        <extracomment>The reason that stands beside an entry of the history</extracomment>
        <translation>Eine Sicherungskopie wurde zurückgeholt</translation>
    </message>
    <message>
        <source>The safe copy up to entry %1 is the workbook now. What lay here before is kept among the safe copies.</source>
        <extracomment>After a safe copy was put back; %1 the number of an entry</extracomment>
        <translation>Die Sicherungskopie bis Eintrag %1 ist jetzt das Arbeitsbuch. Was vorher hier lag, wird bei den Sicherungskopien aufbewahrt.</translation>
    </message>
    <message>
        <source>Being looked through before entries are made: %1 %</source>
        <extracomment>In the status line while entries wait for a check; %1 how much of it is done, in percent</extracomment>
        <translation>Wird vor dem Eintragen geprüft: %1 %</translation>
    </message>
    <message>
        <source>Something here could not be read: the file is damaged, or its disk failed. What is shown may lack entries. Nothing was changed.</source>
        <extracomment>Under the head of a page, some of whose content is missing</extracomment>
        <translation>Etwas ließ sich hier nicht lesen: Die Datei ist beschädigt, oder ihr Datenträger ist ausgefallen. Im Gezeigten können Einträge fehlen. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Try again</source>
        <extracomment>A button</extracomment>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Choose another workbook...</source>
        <extracomment>A button</extracomment>
        <translation>Anderes Arbeitsbuch wählen...</translation>
    </message>
    <message>
        <source>This workbook is open elsewhere</source>
        <extracomment>Title of a window</extracomment>
        <translation>Dieses Arbeitsbuch ist anderswo geöffnet</translation>
    </message>
    <message>
        <source>Only look at it</source>
        <extracomment>A button</extracomment>
        <translation>Nur ansehen</translation>
    </message>
    <message>
        <source>That computer is surely off: take the workbook over...</source>
        <extracomment>A button</extracomment>
        <translation>Jener Rechner ist sicher aus: übernehmen...</translation>
    </message>
    <message>
        <source>It is surely not open any more: take it over...</source>
        <translation>Es ist sicher nicht mehr geöffnet: übernehmen...</translation>
    </message>
    <message>
        <source>Take the workbook over?</source>
        <extracomment>Title of a window</extracomment>
        <translation>Das Arbeitsbuch übernehmen?</translation>
    </message>
    <message>
        <source>Take it over only if Soakbook surely does not run on %1 any more. If it does, %2 can make no more entries there, and what is typed there and not entered yet may be lost.</source>
        <extracomment>%1 a computer's name, %2 a person's name on it</extracomment>
        <translation>Übernehmen Sie es nur, wenn Soakbook auf %1 sicher nicht mehr läuft. Läuft es doch, kann %2 dort nichts mehr eintragen, und was dort getippt und noch nicht eingetragen ist, kann verloren gehen.</translation>
    </message>
    <message>
        <source>Take it over only if Soakbook surely runs nowhere with this workbook any more.</source>
        <extracomment>Where nobody knows who has a workbook open</extracomment>
        <translation>Übernehmen Sie es nur, wenn Soakbook sicher nirgends mehr mit diesem Arbeitsbuch läuft.</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <extracomment>A button: nothing is taken over
----------
A button: nothing is put back</extracomment>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>It is not open any more: take it over</source>
        <extracomment>A button</extracomment>
        <translation>Sicher nicht mehr offen: übernehmen</translation>
    </message>
    <message>
        <source>Put the newest safe copy in its place...</source>
        <extracomment>A button</extracomment>
        <translation>Neueste Sicherungskopie zurückholen...</translation>
    </message>
    <message>
        <source>Look at the newest safe copy</source>
        <extracomment>A button</extracomment>
        <translation>Neueste Sicherungskopie ansehen</translation>
    </message>
    <message>
        <source>Read what is left...</source>
        <extracomment>A button: of a damaged workbook</extracomment>
        <translation>Lesen, was übrig ist...</translation>
    </message>
    <message>
        <source>Look at what can be read</source>
        <extracomment>A button: of a damaged workbook</extracomment>
        <translation>Lesbares ansehen</translation>
    </message>
    <message>
        <source>Put the safe copy in the workbook's place?</source>
        <extracomment>Title of a window</extracomment>
        <translation>Die Sicherungskopie an die Stelle des Arbeitsbuchs setzen?</translation>
    </message>
    <message>
        <source>The copy is checked first. What lies there now is kept among the safe copies, so that nothing is lost.</source>
        <extracomment>In a window that asks whether to put a safe copy back</extracomment>
        <translation>Die Kopie wird zuerst geprüft. Was jetzt dort liegt, wird bei den Sicherungskopien aufbewahrt, damit nichts verloren geht.</translation>
    </message>
    <message>
        <source>%1 in the place of %2</source>
        <extracomment>In a window that asks whether to put a safe copy back; %1 a file, %2 another one</extracomment>
        <translation>%1 an die Stelle von %2</translation>
    </message>
    <message>
        <source>Put it back</source>
        <extracomment>A button</extracomment>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>The safe copy was not put back</source>
        <extracomment>Title of a window</extracomment>
        <translation>Die Sicherungskopie wurde nicht zurückgeholt</translation>
    </message>
    <message>
        <source>Go on</source>
        <extracomment>A button that closes a window</extracomment>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Is this the workbook you mean?</source>
        <extracomment>Title of a window</extracomment>
        <translation>Ist das das Arbeitsbuch, das Sie meinen?</translation>
    </message>
    <message>
        <source>No entry can be made until you say whether this is the right one. Nothing was changed.</source>
        <extracomment>In a window that asks what a file is</extracomment>
        <translation>Einträge sind erst möglich, wenn Sie sagen, was es ist. Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Compare it with the newest safe copy...</source>
        <extracomment>A button</extracomment>
        <translation>Mit der neuesten Sicherungskopie vergleichen...</translation>
    </message>
    <message>
        <source>It is meant so: go on with this one</source>
        <extracomment>A button</extracomment>
        <translation>So gewollt: mit diesem weitermachen</translation>
    </message>
    <message>
        <source>It was looked through, and it is not as it was written. %1</source>
        <extracomment>In a window about a damaged workbook; %1 what is wrong, a sentence</extracomment>
        <translation>Es wurde geprüft und ist nicht so, wie es geschrieben wurde. %1</translation>
    </message>
    <message>
        <source>Nothing in the file was changed. What can still be read of it is shown, only to be looked at.</source>
        <extracomment>In a window about a damaged workbook</extracomment>
        <translation>In der Datei wurde nichts geändert. Was davon noch lesbar ist, wird gezeigt, nur zum Ansehen.</translation>
    </message>
    <message>
        <source>Go on looking</source>
        <extracomment>A button: of a damaged workbook that is shown</extracomment>
        <translation>Weiter ansehen</translation>
    </message>
    <message>
        <source>Open it for entries</source>
        <extracomment>A button beside why a workbook is open only to be looked at</extracomment>
        <translation>Zum Eintragen öffnen</translation>
    </message>
    <message>
        <source>Put it in the workbook's place...</source>
        <extracomment>A button beside the news that a safe copy is shown</extracomment>
        <translation>An die Stelle des Arbeitsbuchs setzen...</translation>
    </message>
    <message>
        <source>Back to the workbook</source>
        <extracomment>A button beside the news that a safe copy is shown</extracomment>
        <translation>Zurück zum Arbeitsbuch</translation>
    </message>
    <message>
        <source>%1 An older Soakbook wrote it: you see a copy that was brought up to date.</source>
        <extracomment>Behind why a workbook is open only to be looked at</extracomment>
        <translation>%1 Ein älteres Soakbook hat es geschrieben: Sie sehen eine Kopie, die auf den heutigen Stand gebracht wurde.</translation>
    </message>
    <message>
        <source>What now?</source>
        <extracomment>A button beside the news that entries are missing</extracomment>
        <translation>Was nun?</translation>
    </message>
    <message>
        <source>This workbook was not looked through on this computer before. That is done now, on a copy; entries can be made as soon as it is found sound. You can look at everything meanwhile.</source>
        <extracomment>Above the pages</extracomment>
        <translation>Dieses Arbeitsbuch wurde an diesem Rechner noch nie geprüft. Das geschieht jetzt, an einer Kopie; Einträge sind möglich, sobald feststeht, dass es in Ordnung ist. Ansehen können Sie inzwischen alles.</translation>
    </message>
    <message>
        <source>This workbook could not be looked through, so it is not known whether it is sound. %1</source>
        <extracomment>Above the pages; %1 why, a sentence</extracomment>
        <translation>Dieses Arbeitsbuch ließ sich nicht prüfen, darum ist nicht bekannt, ob es in Ordnung ist. %1</translation>
    </message>
    <message>
        <source>This workbook lies in a network folder. It is safer on this computer itself: when the connection breaks off, entries have to wait. Safe copies can go to the network instead; Set-up has a second place for them.</source>
        <extracomment>Said once when a workbook is opened</extracomment>
        <translation>Dieses Arbeitsbuch liegt in einem Netzwerkordner. Auf diesem Rechner selbst ist es sicherer: Wenn die Verbindung abreißt, müssen Einträge warten. Ins Netzwerk können stattdessen Sicherungskopien; die Einrichtung hat einen zweiten Ort dafür.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagCard</name>
    <message>
        <source>What happened</source>
        <extracomment>Heading of a list of what happened to a bag</extracomment>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Print labels</source>
        <extracomment>Filled button: previews the labels of the bags that are chosen</extracomment>
        <translation>Etiketten drucken</translation>
    </message>
    <message>
        <source>Move</source>
        <extracomment>Button: says where a bag stands from now on</extracomment>
        <translation>Umstellen</translation>
    </message>
    <message>
        <source>Opened</source>
        <extracomment>Button: a bag was opened</extracomment>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Resealed</source>
        <extracomment>Button: a bag that was opened is sealed again</extracomment>
        <translation>Wieder verschlossen</translation>
    </message>
    <message>
        <source>Discard strips</source>
        <extracomment>Button: throws strips away</extracomment>
        <translation>Streifen entsorgen</translation>
    </message>
    <message>
        <source>Count anew</source>
        <extracomment>Button: the strips of a bag were counted anew</extracomment>
        <translation>Nachzählen</translation>
    </message>
    <message>
        <source>Fill it</source>
        <extracomment>Button: the bag is filled in the Shed</extracomment>
        <translation>Befüllen</translation>
    </message>
    <message>
        <source>Correct</source>
        <extracomment>Button: puts right what was entered of a bag</extracomment>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Make void</source>
        <extracomment>Button: a spoilt label or a burst bag does not count any more</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
    <message>
        <source>Its batch</source>
        <extracomment>Button: shows the batch a bag was filled from</extracomment>
        <translation>Sein Ansatz</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <extracomment>Title of a window; %1 the code of a bag
----------
Heading of a card; %1 the code of a bag</extracomment>
        <translation>Beutel %1</translation>
    </message>
    <message>
        <source>No bag chosen</source>
        <extracomment>Heading of a card while no bag is chosen</extracomment>
        <translation>Kein Beutel gewählt</translation>
    </message>
    <message>
        <source>Choose a bag: all about it stands here then. Shift and Ctrl choose several.</source>
        <extracomment>In a card; its name, and what stands there while no bag is chosen</extracomment>
        <translation>Wählen Sie einen Beutel: Dann steht hier alles über ihn. Mit Umschalt und Strg wählen Sie mehrere.</translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s) chosen</source>
        <extracomment>Heading of a card; %n bags are chosen</extracomment>
        <translation>
            <numerusform>%n Beutel gewählt</numerusform>
            <numerusform>%n Beutel gewählt</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagForm</name>
    <message>
        <source>Bags</source>
        <extracomment>A unit behind a number</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Strips in each</source>
        <extracomment>A unit behind a number</extracomment>
        <translation>Streifen je Beutel</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Strips in a short last bag</source>
        <extracomment>A unit behind a number</extracomment>
        <translation>Streifen im letzten, kleineren Beutel</translation>
    </message>
    <message>
        <source>Empty: as full as the others.</source>
        <extracomment>Help under a field</extracomment>
        <translation>Leer: so voll wie die anderen.</translation>
    </message>
    <message>
        <source>Contents of a full bag weigh</source>
        <translation>Inhalt eines vollen Beutels wiegt</translation>
    </message>
    <message>
        <source>Sealed on</source>
        <extracomment>Label of a field: the day</extracomment>
        <translation>Verschlossen am</translation>
    </message>
    <message>
        <source>Bags from</source>
        <translation>Beutel aus</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>Label of a field: the place on the shelf</extracomment>
        <translation>Platz</translation>
    </message>
    <message>
        <source>today</source>
        <extracomment>Stands in an empty field</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>They are sealed</source>
        <extracomment>Button that writes filled bags down; their labels come next</extracomment>
        <translation>Sie sind verschlossen</translation>
    </message>
    <message numerus="yes">
        <source>%n strips</source>
        <extracomment>What bags hold together</extracomment>
        <translation>
            <numerusform>%n Streifen</numerusform>
            <numerusform>%n Streifen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 acid a strip</source>
        <extracomment>Acid in one strip; %1 a mass</extracomment>
        <translation>%1 Säure je Streifen</translation>
    </message>
    <message numerus="yes">
        <source>%n strips still to bag</source>
        <translation>
            <numerusform>%n Streifen noch einzutüten</numerusform>
            <numerusform>%n Streifen noch einzutüten</numerusform>
        </translation>
    </message>
    <message>
        <source>then all are bagged</source>
        <extracomment>No strip of the batch is left without a bag</extracomment>
        <translation>dann sind alle abgepackt</translation>
    </message>
    <message>
        <source>rests until %1</source>
        <extracomment>%1 a day: until then the strips take up what is still wet</extracomment>
        <translation>ruht bis %1</translation>
    </message>
    <message>
        <source>use by %1</source>
        <extracomment>%1 a day</extracomment>
        <translation>verwendbar bis %1</translation>
    </message>
    <message>
        <source>a full bag should weigh %1</source>
        <extracomment>What the contents of a full bag should weigh; %1 a mass</extracomment>
        <translation>ein voller Beutel sollte %1 wiegen</translation>
    </message>
    <message>
        <source>Not weighed</source>
        <extracomment>Bags are filled without a weighing</extracomment>
        <translation>Nicht gewogen</translation>
    </message>
    <message>
        <source>weigh some strips first, so that the label can say what is in them.</source>
        <translation>erst einige Streifen wiegen, damit das Etikett sagen kann, was darin ist.</translation>
    </message>
    <message>
        <source>Light</source>
        <extracomment>The last weighing was under the target</extracomment>
        <translation>Zu leicht</translation>
    </message>
    <message>
        <source>the last weighing was under the target.</source>
        <translation>die letzte Wägung lag unter dem Ziel.</translation>
    </message>
    <message>
        <source>Without the bag, before free liquid is poured in. Empty: not weighed.</source>
        <extracomment>Help under the weight of a bag's contents</extracomment>
        <translation>Ohne den Beutel, bevor freie Flüssigkeit eingegossen wird. Leer: nicht gewogen.</translation>
    </message>
    <message>
        <source>fill bags</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>Beutel füllen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagStep</name>
    <message>
        <source>The bags of this batch will stand here with their codes and dates. Strips that dripped off go in a stack at a time; seal, then print the labels.</source>
        <extracomment>Stands where the bags of a batch will be listed</extracomment>
        <translation>Die Beutel dieses Ansatzes stehen später hier mit Codes und Daten. Abgetropfte Streifen stapelweise einfüllen, verschließen, dann die Etiketten drucken.</translation>
    </message>
    <message>
        <source>Enter on a row puts a bag right or makes it void, with a reason.</source>
        <extracomment>Under a table whose rows can be put right</extracomment>
        <translation>Mit der Eingabetaste auf einer Zeile berichtigen Sie einen Beutel oder erklären ihn für ungültig, mit Begründung.</translation>
    </message>
    <message>
        <source>Fill bags</source>
        <extracomment>Turns to the form for filled bags</extracomment>
        <translation>Beutel füllen</translation>
    </message>
    <message>
        <source>Labels first</source>
        <extracomment>Turns to the form that gives out codes for bags to be filled later</extracomment>
        <translation>Erst Etiketten</translation>
    </message>
    <message>
        <source>Labelled bags</source>
        <extracomment>Turns to the form that fills bags whose labels were printed before</extracomment>
        <translation>Etikettierte Beutel</translation>
    </message>
    <message>
        <source>Print all labels again</source>
        <translation>Alle Etiketten neu drucken</translation>
    </message>
    <message numerus="yes">
        <source>Print %n labels</source>
        <translation>
            <numerusform>%n Etikett drucken</numerusform>
            <numerusform>%n Etiketten drucken</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagStory</name>
    <message>
        <source>What happened to this bag</source>
        <extracomment>Read aloud: the name of a list</extracomment>
        <translation>Was mit diesem Beutel geschah</translation>
    </message>
    <message>
        <source>sealed with %1 strips</source>
        <extracomment>What happened to a bag; %1 a number of strips</extracomment>
        <translation>verschlossen mit %1 Streifen</translation>
    </message>
    <message>
        <source>opened</source>
        <extracomment>What happened to a bag</extracomment>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>resealed</source>
        <extracomment>What happened to a bag</extracomment>
        <translation>wieder verschlossen</translation>
    </message>
    <message>
        <source>%1 hung: %2</source>
        <extracomment>What happened to strips of a bag; %1 their number, %2 a hive and its yard</extracomment>
        <translation>%1 eingehängt: %2</translation>
    </message>
    <message>
        <source>%1 thrown away: %2</source>
        <extracomment>What happened to strips of a bag; %1 their number, %2 the reason</extracomment>
        <translation>%1 entsorgt: %2</translation>
    </message>
    <message>
        <source>counted anew, %1: %2</source>
        <extracomment>What happened to a bag; %1 the difference with its sign, %2 the reason</extracomment>
        <translation>nachgezählt, %1: %2</translation>
    </message>
    <message>
        <source>void: %1</source>
        <extracomment>What happened to a bag and does not count any more; %1 what it said</extracomment>
        <translation>ungültig: %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagsPage</name>
    <message>
        <source>No bag yet</source>
        <extracomment>Head of an empty page
----------
Choice of which bags are shown: labels that were printed before their bags were filled</extracomment>
        <translation>Noch kein Beutel</translation>
    </message>
    <message>
        <source>Every bag of strips will stand here in order of its limit, with the days it has left, where it stands and whether its label is printed. Bags come from a batch in the Shed.</source>
        <extracomment>On an empty page</extracomment>
        <translation>Hier steht später jeder Beutel mit Streifen, geordnet nach Ablauf, mit den verbleibenden Tagen, seinem Platz und ob sein Etikett gedruckt ist. Beutel entstehen aus einem Ansatz in der Werkstatt.</translation>
    </message>
    <message>
        <source>Start a batch</source>
        <extracomment>Button on an empty page: goes to the form of a batch</extracomment>
        <translation>Ansatz beginnen</translation>
    </message>
    <message>
        <source>Bags</source>
        <extracomment>Title of a page: bags of strips</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Which bags</source>
        <extracomment>Read aloud: the choices of which bags a table shows</extracomment>
        <translation>Welche Beutel</translation>
    </message>
    <message>
        <source>In stock</source>
        <extracomment>Choice of which bags are shown: those with strips in them</extracomment>
        <translation>Vorrätig</translation>
    </message>
    <message>
        <source>Resting</source>
        <extracomment>Choice of which bags are shown</extracomment>
        <translation>Ruhend</translation>
    </message>
    <message>
        <source>Ready</source>
        <extracomment>Choice of which bags are shown</extracomment>
        <translation>Bereit</translation>
    </message>
    <message>
        <source>Near the limit</source>
        <extracomment>Choice of which bags are shown</extracomment>
        <translation>Kurz vor Ablauf</translation>
    </message>
    <message>
        <source>Past it</source>
        <extracomment>Choice of which bags are shown</extracomment>
        <translation>Abgelaufen</translation>
    </message>
    <message>
        <source>Opened</source>
        <extracomment>Choice of which bags are shown</extracomment>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Gone</source>
        <extracomment>Choice of which bags are shown</extracomment>
        <translation>Nicht mehr da</translation>
    </message>
    <message>
        <source>All</source>
        <extracomment>Choice of which bags are shown</extracomment>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Bags by limit</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Beutel nach Ablauf</translation>
    </message>
    <message>
        <source>No bag is of this kind now.</source>
        <extracomment>Stands in an empty table</extracomment>
        <translation>Zurzeit gibt es keinen solchen Beutel.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagsTable</name>
    <message>
        <source>void</source>
        <extracomment>A bag or label that was made void</extracomment>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>printed</source>
        <extracomment>A label was printed</extracomment>
        <translation>gedruckt</translation>
    </message>
    <message>
        <source>print again</source>
        <extracomment>A label was printed, and its bag corrected since</extracomment>
        <translation>neu drucken</translation>
    </message>
    <message>
        <source>to print</source>
        <extracomment>No label was printed yet</extracomment>
        <translation>zu drucken</translation>
    </message>
    <message>
        <source>Bag</source>
        <extracomment>Header of a column: the code of a bag</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>Header of a column: strips in a bag</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>not filled</source>
        <extracomment>A label whose bag is not filled yet</extracomment>
        <translation>nicht gefüllt</translation>
    </message>
    <message>
        <source>Contents</source>
        <extracomment>Header of a column: the weight of what is in a bag</extracomment>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Sealed</source>
        <extracomment>Header of a column: the day a bag was sealed</extracomment>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Rests until</source>
        <extracomment>Header of a column: the day until which a bag rests</extracomment>
        <translation>Ruht bis</translation>
    </message>
    <message>
        <source>Use by</source>
        <extracomment>Header of a column: the last day a bag may be used</extracomment>
        <translation>Verwendbar bis</translation>
    </message>
    <message>
        <source>Label</source>
        <extracomment>Header of a column: whether the label of a bag was printed</extracomment>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Bags of this batch</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Beutel dieses Ansatzes</translation>
    </message>
    <message>
        <source>Correct bag %1</source>
        <extracomment>Title of a dialog; %1 the code of a bag</extracomment>
        <translation>Beutel %1 berichtigen</translation>
    </message>
    <message numerus="yes">
        <source>%n strips stand on it. A label that was printed is printed again.</source>
        <translation>
            <numerusform>%n Streifen steht darauf. Ein schon gedrucktes Etikett wird neu gedruckt.</numerusform>
            <numerusform>%n Streifen stehen darauf. Ein schon gedrucktes Etikett wird neu gedruckt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The label is given out and the bag not filled.</source>
        <translation>Das Etikett ist vergeben und der Beutel nicht gefüllt.</translation>
    </message>
    <message>
        <source>Strips in the bag</source>
        <extracomment>Label of a field</extracomment>
        <translation>Streifen im Beutel</translation>
    </message>
    <message>
        <source>Contents weigh</source>
        <extracomment>Label of a field</extracomment>
        <translation>Inhalt wiegt</translation>
    </message>
    <message>
        <source>Sealed on</source>
        <extracomment>Label of a field</extracomment>
        <translation>Verschlossen am</translation>
    </message>
    <message>
        <source>Make it void</source>
        <extracomment>Button of a dialog: a spoilt label or a burst bag does not count any more</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BatchChart</name>
    <message>
        <source>Batch beside batch: %1</source>
        <extracomment>name of a chart; %1 is a figure, "acid in a strip"</extracomment>
        <translation>Ansatz neben Ansatz: %1</translation>
    </message>
    <message>
        <source>From the second batch of this kind of strip on, the batches stand here beside each other.</source>
        <extracomment>instead of the chart of batches</extracomment>
        <translation>Ab dem zweiten Ansatz dieser Streifenart stehen die Ansätze hier nebeneinander.</translation>
    </message>
    <message>
        <source>outside the limits</source>
        <extracomment>how a batch stands on the chart of batches</extracomment>
        <translation>außerhalb der Grenzen</translation>
    </message>
    <message>
        <source>eight in a row on one side</source>
        <extracomment>how a batch stands on the chart of batches</extracomment>
        <translation>acht in Folge auf einer Seite</translation>
    </message>
    <message>
        <source>as usual</source>
        <extracomment>how a batch stands on the chart of batches</extracomment>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>mean %1</source>
        <extracomment>names the middle line of the chart of batches; %1 is a mass</extracomment>
        <translation>Mittel %1</translation>
    </message>
    <message>
        <source>limit %1</source>
        <extracomment>names a limit of the chart of batches; %1 is a mass</extracomment>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>Batch</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>column of the table behind a chart; %1 is a figure, %2 a unit</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>column of the table behind a chart: as usual, outside the limits</extracomment>
        <translation>Lage</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BatchComparison</name>
    <message>
        <source>Acid in a strip</source>
        <extracomment>Turns a chart of batches to that figure</extracomment>
        <translation>Säure je Streifen</translation>
    </message>
    <message>
        <source>Taken up</source>
        <extracomment>Turns a chart of batches to that figure: the liquid a strip took up</extracomment>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>Beside the other batches</source>
        <extracomment>Over a chart of batches</extracomment>
        <translation>Neben den anderen Ansätzen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BatchCourse</name>
    <message>
        <source>This batch is void: %1</source>
        <extracomment>Over a batch that was made void; %1 the reason</extracomment>
        <translation>Dieser Ansatz ist ungültig: %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BeesPerStripField</name>
    <message>
        <source>frames of bees</source>
        <extracomment>At the right of a field: frames covered with bees</extracomment>
        <translation>besetzte Waben</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BinRows</name>
    <message>
        <source>Strips</source>
        <extracomment>Over a column of fields: strips in a bin</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Liquid let in, if measured</source>
        <extracomment>Over a column of fields: liquid let into a bin</extracomment>
        <translation>Eingelassene Flüssigkeit, falls gemessen</translation>
    </message>
    <message>
        <source>Strips in %1</source>
        <extracomment>Read aloud: a field; %1 the name of a bin</extracomment>
        <translation>Streifen in %1</translation>
    </message>
    <message>
        <source>Liquid let into %1</source>
        <extracomment>Read aloud: a field; %1 the name of a bin</extracomment>
        <translation>In %1 eingelassene Flüssigkeit</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::CalendarPopup</name>
    <message>
        <source>Calendar</source>
        <extracomment>Name of the month sheet, read aloud</extracomment>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Today</source>
        <extracomment>Button under a calendar</extracomment>
        <translation>Heute</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::Caution</name>
    <message>
        <source>Caution: %1</source>
        <extracomment>Read aloud before a caution</extracomment>
        <translation>Vorsicht: %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::ChartFrame</name>
    <message>
        <source>Picture</source>
        <extracomment>button under a chart: what can be done with its picture</extracomment>
        <translation>Bild</translation>
    </message>
    <message>
        <source>Copy</source>
        <extracomment>of a chart</extracomment>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Save…</source>
        <extracomment>of a chart, to a file</extracomment>
        <translation>Speichern…</translation>
    </message>
    <message>
        <source>Print…</source>
        <extracomment>of a chart, on paper</extracomment>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Chart (F2)</source>
        <extracomment>button under a chart that turns to the table behind it; F2 is a key</extracomment>
        <translation>Diagramm (F2)</translation>
    </message>
    <message>
        <source>Table (F2)</source>
        <translation>Tabelle (F2)</translation>
    </message>
    <message>
        <source>The picture is on the clipboard.</source>
        <extracomment>after copying a chart</extracomment>
        <translation>Das Bild liegt in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <extracomment>title of a window that asks for a file's name</extracomment>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <extracomment>kind of file</extracomment>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <extracomment>kind of file</extracomment>
        <translation>Zeichnung (*.svg)</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <extracomment>after saving a chart; %1 is a file's name</extracomment>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>Print the picture</source>
        <extracomment>title of the window that asks which printer</extracomment>
        <translation>Bild drucken</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::CloseForm</name>
    <message>
        <source>When all strips are bagged and what was left is in pails, the batch is closed. Its bags and pails go on by themselves; it can be opened again with a reason.</source>
        <extracomment>Over the button that closes a batch</extracomment>
        <translation>Wenn alle Streifen abgepackt sind und der Rest in Eimern ist, wird der Ansatz abgeschlossen. Seine Beutel und Eimer laufen von selbst weiter; mit Begründung lässt er sich wieder öffnen.</translation>
    </message>
    <message>
        <source>Close the batch</source>
        <extracomment>Button that closes a batch</extracomment>
        <translation>Ansatz abschließen</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; of %2 is not accounted for.</source>
        <extracomment>Before a batch is closed; %1 a mass with its sign, %2 all that went in</extracomment>
        <translation>&lt;b&gt;%1&lt;/b&gt; von %2 sind ungeklärt.</translation>
    </message>
    <message>
        <source>More than usual</source>
        <extracomment>More is unexplained than the figure of Set-up allows</extracomment>
        <translation>Mehr als üblich</translation>
    </message>
    <message>
        <source>look for a pail, a bag or a spill that was not entered.</source>
        <translation>nach einem Eimer, einem Beutel oder Verschüttetem suchen, das nicht eingetragen wurde.</translation>
    </message>
    <message numerus="yes">
        <source>%n strips were soaked and stand in no bag.</source>
        <extracomment>Before a batch is closed; %n strips</extracomment>
        <translation>
            <numerusform>%n Streifen wurde getränkt und ist in keinem Beutel.</numerusform>
            <numerusform>%n Streifen wurden getränkt und sind in keinem Beutel.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::ComparisonWindow</name>
    <message>
        <source>Compared with %1</source>
        <extracomment>Title of a window; %1 is a file's name.</extracomment>
        <translation>Verglichen mit %1</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>Button that closes a window</extracomment>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Entries that stand only here</source>
        <extracomment>What a screen reader calls a list.</extracomment>
        <translation>Einträge, die nur hier stehen</translation>
    </message>
    <message>
        <source>Entries that stand only there</source>
        <extracomment>What a screen reader calls a list.</extracomment>
        <translation>Einträge, die nur dort stehen</translation>
    </message>
    <message>
        <source>What the chosen entry wrote</source>
        <extracomment>Head of a list: what the entry that is chosen above wrote, as it stands in both copies.</extracomment>
        <translation>Was der gewählte Eintrag schrieb</translation>
    </message>
    <message>
        <source>Reason</source>
        <extracomment>Label of a field.</extracomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>It is kept with what is taken over.</source>
        <extracomment>Help beneath a field for a reason.</extracomment>
        <translation>Er wird mit dem Übernommenen aufbewahrt.</translation>
    </message>
    <message numerus="yes">
        <source>Only here: %n</source>
        <extracomment>Head of a list of entries; %n is how many.</extracomment>
        <translation>
            <numerusform>Nur hier: %n</numerusform>
            <numerusform>Nur hier: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Only there: %n</source>
        <extracomment>Head of a list of entries; %n is how many.</extracomment>
        <translation>
            <numerusform>Nur dort: %n</numerusform>
            <numerusform>Nur dort: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Take over %n entries</source>
        <extracomment>The button that writes entries of another copy into this one; %n is how many.</extracomment>
        <translation>
            <numerusform>%n Eintrag übernehmen</numerusform>
            <numerusform>%n Einträge übernehmen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::CopiesTable</name>
    <message>
        <source>second place</source>
        <extracomment>Where a safe copy lies: in the second place that the user chose</extracomment>
        <translation>zweiter Ort</translation>
    </message>
    <message>
        <source>this computer</source>
        <extracomment>Where a safe copy lies</extracomment>
        <translation>dieser Rechner</translation>
    </message>
    <message>
        <source>another history</source>
        <extracomment>In a table, of a safe copy: of a state from before an older copy was put back</extracomment>
        <translation>anderer Verlauf</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>In a table: no entries were made since that copy</extracomment>
        <translation>keine</translation>
    </message>
    <message>
        <source>Made</source>
        <extracomment>A table column: when a safe copy was made</extracomment>
        <translation>Gemacht</translation>
    </message>
    <message>
        <source>Newest entry</source>
        <extracomment>A table column: the number of the newest entry in a safe copy</extracomment>
        <translation>Neuester Eintrag</translation>
    </message>
    <message>
        <source>Entries since</source>
        <extracomment>A table column: how many entries the workbook got since that copy</extracomment>
        <translation>Einträge seitdem</translation>
    </message>
    <message>
        <source>Where</source>
        <extracomment>A table column: where a safe copy lies</extracomment>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Size</source>
        <extracomment>A table column: the size of a file</extracomment>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Safe copies of this workbook</source>
        <extracomment>Name of a table, read aloud</extracomment>
        <translation>Sicherungskopien dieses Arbeitsbuchs</translation>
    </message>
    <message>
        <source>There is no safe copy yet. The first one is made shortly after the workbook was opened.</source>
        <extracomment>Stands in an empty table</extracomment>
        <translation>Es gibt noch keine Sicherungskopie. Die erste wird kurz nach dem Öffnen des Arbeitsbuchs gemacht.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::CorrectionDialog</name>
    <message>
        <source>Why</source>
        <extracomment>Label of the reason of a correction</extracomment>
        <translation>Warum</translation>
    </message>
    <message>
        <source>It stands beside the entry for good, with what it said before.</source>
        <extracomment>Help under the reason of a correction</extracomment>
        <translation>Der Grund bleibt dauerhaft beim Eintrag stehen, mit der früheren Angabe.</translation>
    </message>
    <message>
        <source>misread</source>
        <extracomment>A reason of a correction to pick</extracomment>
        <translation>falsch abgelesen</translation>
    </message>
    <message>
        <source>mistyped</source>
        <extracomment>A reason of a correction to pick</extracomment>
        <translation>vertippt</translation>
    </message>
    <message>
        <source>weighed again</source>
        <extracomment>A reason of a correction to pick</extracomment>
        <translation>neu gewogen</translation>
    </message>
    <message>
        <source>wrong line</source>
        <extracomment>A reason of a correction to pick</extracomment>
        <translation>falsche Zeile</translation>
    </message>
    <message>
        <source>Correct it</source>
        <extracomment>Button of a dialog that puts an entry right</extracomment>
        <translation>Berichtigen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::CountPage</name>
    <message>
        <source>Mites of each hive</source>
        <extracomment>The filled button of a mite count</extracomment>
        <translation>Milben je Volk</translation>
    </message>
    <message>
        <source>Enter the count</source>
        <translation>Zählung eintragen</translation>
    </message>
    <message>
        <source>No hive stands in this yard yet. Add hives first.</source>
        <extracomment>What stands in the empty grid of a mite count</extracomment>
        <translation>An diesem Stand steht noch kein Volk. Tragen Sie zuerst Völker ein.</translation>
    </message>
    <message>
        <source>How the mites are counted</source>
        <extracomment>Field: the way mites are counted</extracomment>
        <translation>Wie die Milben gezählt werden</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Field: the day of the count</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Belongs to the round</source>
        <extracomment>Field: the round that a count stands beside, before or after</extracomment>
        <translation>Gehört zur Runde</translation>
    </message>
    <message>
        <source>no round</source>
        <extracomment>First entry of a list of rounds</extracomment>
        <translation>keine Runde</translation>
    </message>
    <message>
        <source>%1: mite count</source>
        <extracomment>Title; %1 a yard</extracomment>
        <translation>%1: Milbenzählung</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%1&lt;/b&gt; counted of &lt;b&gt;%n&lt;/b&gt; hives</source>
        <extracomment>Rich text: keep the marks around the figures; %1 hives counted of %n</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; von &lt;b&gt;%n&lt;/b&gt; Volk gezählt</numerusform>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; von &lt;b&gt;%n&lt;/b&gt; Völkern gezählt</numerusform>
        </translation>
    </message>
    <message>
        <source>your threshold %1</source>
        <extracomment>%1 the user's threshold</extracomment>
        <translation>Ihre Schwelle %1</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; over it</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; darüber</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; darüber</numerusform>
        </translation>
    </message>
    <message>
        <source>no threshold said in Set-up</source>
        <extracomment>No mite threshold stands in Set-up</extracomment>
        <translation>keine Schwelle in der Einrichtung angegeben</translation>
    </message>
    <message>
        <source>about 300 bees is common practice</source>
        <extracomment>Beside the figures of a mite count</extracomment>
        <translation>etwa 300 Bienen sind üblich</translation>
    </message>
    <message>
        <source>Count of %1</source>
        <extracomment>Heading of the grid; %1 a day</extracomment>
        <translation>Zählung vom %1</translation>
    </message>
    <message numerus="yes">
        <source>Mites counted in %n hives.</source>
        <extracomment>News after a mite count</extracomment>
        <translation>
            <numerusform>Milben in %n Volk gezählt.</numerusform>
            <numerusform>Milben in %n Völkern gezählt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a hive, %2 what is wrong there</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::DayField</name>
    <message>
        <source>Calendar (F4)</source>
        <extracomment>Tool tip of the button beside a day; F4 is a key</extracomment>
        <translation>Kalender (F4)</translation>
    </message>
    <message>
        <source>Calendar</source>
        <extracomment>Name of the button that opens a calendar, read aloud</extracomment>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>Calendar for %1</source>
        <extracomment>Read aloud; %1 is the name of a field for a day</extracomment>
        <translation>Kalender für %1</translation>
    </message>
    <message>
        <source>today</source>
        <extracomment>What stands beside a day that was typed; %1 is the day, as 3 Oct 2026</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>today, %1</source>
        <translation>heute, %1</translation>
    </message>
    <message>
        <source>yesterday</source>
        <extracomment>What stands beside a day that was typed; %1 is the day, as 3 Oct 2026</extracomment>
        <translation>gestern</translation>
    </message>
    <message>
        <source>yesterday, %1</source>
        <translation>gestern, %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::Desk</name>
    <message>
        <source>The workbook is open only to be looked at.</source>
        <extracomment>Hint on the button of a form that cannot be used</extracomment>
        <translation>Das Arbeitsbuch ist nur zum Ansehen geöffnet.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::DraftOffer</name>
    <message>
        <source>Put it back in</source>
        <extracomment>Button: what was typed before goes back into the fields of the form</extracomment>
        <translation>Wieder einsetzen</translation>
    </message>
    <message>
        <source>Typed on %1 and not entered.</source>
        <extracomment>Over a form; %1 is a day and a time, as 3 Oct 14:20</extracomment>
        <translation>Getippt am %1 und nicht eingetragen.</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <extracomment>Button: what was typed before and not entered is given up</extracomment>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>The rest is back in the form. There is no field any more for this:</source>
        <extracomment>Over a form into which something typed before was put back, all but what follows below</extracomment>
        <translation>Der Rest steht wieder im Formular. Hierfür gab es kein Feld mehr:</translation>
    </message>
    <message>
        <source>Seen</source>
        <extracomment>Button that puts a note away</extracomment>
        <translation>Gesehen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::DueList</name>
    <message>
        <source>%1: %2, %3</source>
        <extracomment>Read aloud for a button of Due; %1 is the verb, %2 what, %3 when.</extracomment>
        <translation>%1: %2, %3</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::DuePlace</name>
    <message>
        <source>Nothing is due</source>
        <extracomment>Head of an empty page.</extracomment>
        <translation>Nichts steht an.</translation>
    </message>
    <message>
        <source>Here stands what is to be done, over the whole workbook: tanks to read, strips to weigh, bags near their limit, strips to pull. It fills by itself from what you enter; a batch in the Shed is the beginning.</source>
        <extracomment>On an empty page.</extracomment>
        <translation>Hier steht, was im ganzen Arbeitsbuch zu tun ist: Tanks ablesen, Streifen wiegen, Beutel kurz vor Ablauf, Streifen herausnehmen. Die Liste füllt sich von selbst aus Ihren Einträgen; ein Ansatz in der Werkstatt ist der Anfang.</translation>
    </message>
    <message>
        <source>Start a batch</source>
        <extracomment>A button on an empty page.</extracomment>
        <translation>Ansatz beginnen</translation>
    </message>
    <message>
        <source>Due</source>
        <extracomment>A place in the navigation: what is to be done.</extracomment>
        <translation>Anstehend</translation>
    </message>
    <message>
        <source>&lt;b&gt;The year ahead&lt;/b&gt;</source>
        <extracomment>Begins the sentence over the chart of the year.</extracomment>
        <translation>&lt;b&gt;Das kommende Jahr&lt;/b&gt;</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) ready</source>
        <extracomment>In a sentence of figures; %n strips are ready.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen bereit</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen bereit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; resting</source>
        <extracomment>In a sentence of figures; %n strips still rest.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; ruht</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; ruhen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; hive(s) carry strips</source>
        <extracomment>In a sentence of figures.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Volk hat Streifen</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Völker haben Streifen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; past their pull date</source>
        <extracomment>In a sentence of figures; hives whose strips should be out.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; überfällig</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; überfällig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) near the limit</source>
        <extracomment>In a sentence of figures; strips near their use-by day.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen kurz vor Ablauf</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen kurz vor Ablauf</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) past the limit</source>
        <extracomment>In a sentence of figures; strips past their use-by day.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen abgelaufen</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen abgelaufen</numerusform>
        </translation>
    </message>
    <message>
        <source>above: strips in date, after each round; below: what rounds want</source>
        <extracomment>Explains the chart of the year at its right end.</extracomment>
        <translation>oben: verwendbare Streifen, nach jeder Runde; unten: Bedarf der Runden</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::EntryList</name>
    <message>
        <source>Entry</source>
        <extracomment>Headers of a list of entries: what was done, when, by whom.</extracomment>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>%1 (stands here already)</source>
        <extracomment>Behind an entry of the other copy, of which nothing is missing here; %1 is the entry.</extracomment>
        <translation>%1 (steht hier schon)</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n records</source>
        <extracomment>Under the pointer over an entry: its words, how many records it wrote, and its reason if it has one.</extracomment>
        <translation>
            <numerusform>%1: %n Aufzeichnung</numerusform>
            <numerusform>%1: %n Aufzeichnungen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::FiguresPage</name>
    <message>
        <source>Working figures</source>
        <extracomment>Head of a page of Set-up.
----------
Title of a window: the figures of Set-up</extracomment>
        <translation>Arbeitswerte</translation>
    </message>
    <message>
        <source>Soakbook guesses none of these: what needs a figure that is not said, asks for it. A record keeps what the figure was when it was made; changing it here changes nothing that stands.</source>
        <extracomment>Under the head of a page of Set-up.</extracomment>
        <translation>Soakbook rät keinen dieser Werte: Wo ein fehlender Wert gebraucht wird, wird nach ihm gefragt. Ein Eintrag behält den Wert, der damals galt; eine Änderung hier ändert nichts Bestehendes.</translation>
    </message>
    <message>
        <source>The four of a new workbook</source>
        <extracomment>A section of a form and the sentence under it.</extracomment>
        <translation>Die vier eines neuen Arbeitsbuchs</translation>
    </message>
    <message>
        <source>Common practice, no source. The label, the safety data sheet and local rules come first; change them to those.</source>
        <translation>Übliche Praxis, ohne Quelle. Das Etikett des Mittels, das Sicherheitsdatenblatt und örtliche Vorschriften gehen vor; passen Sie die Werte daran an.</translation>
    </message>
    <message>
        <source>Tank</source>
        <extracomment>A section of a form.</extracomment>
        <translation>Tank</translation>
    </message>
    <message>
        <source>Soaking and weighing</source>
        <extracomment>A section of a form.</extracomment>
        <translation>Tränken und Wiegen</translation>
    </message>
    <message>
        <source>Bags and pails</source>
        <extracomment>A section of a form.</extracomment>
        <translation>Beutel und Eimer</translation>
    </message>
    <message>
        <source>Yards</source>
        <extracomment>A section of a form and the sentence under it.</extracomment>
        <translation>Stände</translation>
    </message>
    <message>
        <source>How long strips hang and when honey may be taken: by the label, your vet and local law.</source>
        <translation>Wie lange Streifen hängen und wann Honig geerntet werden darf: nach dem Etikett des Mittels, Ihrem Tierarzt und dem örtlichen Recht.</translation>
    </message>
    <message>
        <source>Where they come from</source>
        <extracomment>A field's label: where the changed figures come from; and its sentence of help.</extracomment>
        <translation>Woher sie stammen</translation>
    </message>
    <message>
        <source>Kept with the figures that you change now: a label, a vet, your own trials.</source>
        <translation>Wird bei den Werten vermerkt, die Sie jetzt ändern: ein Etikett, ein Tierarzt, eigene Versuche.</translation>
    </message>
    <message>
        <source>Save</source>
        <extracomment>A button that stores the page's entries.</extracomment>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::FillForm</name>
    <message>
        <source>bags</source>
        <extracomment>A unit behind a number</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>today</source>
        <extracomment>Stands in an empty field</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>Filled now</source>
        <extracomment>Label of a field: how many of the labelled bags are filled now</extracomment>
        <translation>Jetzt gefüllt</translation>
    </message>
    <message>
        <source>Labelled bags</source>
        <translation>Etikettierte Beutel</translation>
    </message>
    <message>
        <source>A line left empty waits on with its label.</source>
        <extracomment>Under lines for labelled bags</extracomment>
        <translation>Eine leer gelassene Zeile wartet mit ihrem Etikett weiter.</translation>
    </message>
    <message>
        <source>Sealed on</source>
        <translation>Verschlossen am</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>Label of a field: the place on the shelf</extracomment>
        <translation>Platz</translation>
    </message>
    <message>
        <source>They are sealed</source>
        <extracomment>Button that writes filled bags down</extracomment>
        <translation>Sie sind verschlossen</translation>
    </message>
    <message>
        <source>fill labelled bags</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>etikettierte Beutel füllen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::FindBox</name>
    <message>
        <source>Find a code: type it or scan a label</source>
        <extracomment>Stands in the empty Find box</extracomment>
        <translation>Code suchen: eintippen oder Etikett scannen</translation>
    </message>
    <message>
        <source>Find a code or a name</source>
        <extracomment>Name of the Find box, read aloud</extracomment>
        <translation>Code oder Namen suchen</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <extracomment>The keys of the Find box, as they stand in it</extracomment>
        <translation>Strg+F</translation>
    </message>
    <message>
        <source>Found</source>
        <extracomment>Read aloud: the list under the Find box</extracomment>
        <translation>Gefunden</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::FormFrame</name>
    <message>
        <source>Cancel</source>
        <extracomment>Button that leaves a form without an entry</extracomment>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Enter it</source>
        <extracomment>The filled button of a form that has no better word</extracomment>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Another program is writing in this workbook. Trying again; what you typed is kept.</source>
        <extracomment>At the foot of a form, while it waits for a workbook that is in use</extracomment>
        <translation>Ein anderes Programm schreibt gerade in dieses Arbeitsbuch. Es wird erneut versucht; Ihre Eingaben bleiben erhalten.</translation>
    </message>
    <message>
        <source>Change it, or keep it as it is.</source>
        <extracomment>Above a button, after a question that stands beside a field</extracomment>
        <translation>Ändern Sie es oder lassen Sie es so.</translation>
    </message>
    <message>
        <source>Keep it as it is</source>
        <extracomment>Button that answers a question such as "3 kg in one strip?"</extracomment>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>The keys that answer, as they stand in the button</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <source>What was typed here is not entered yet, and goes when you leave.</source>
        <extracomment>In a form in which something was typed, after Esc or Cancel</extracomment>
        <translation>Was hier getippt wurde, ist noch nicht eingetragen und geht beim Verlassen verloren.</translation>
    </message>
    <message>
        <source>Leave the form</source>
        <extracomment>Button that leaves a form and gives up what was typed</extracomment>
        <translation>Formular verlassen</translation>
    </message>
    <message>
        <source>Esc</source>
        <extracomment>The key that leaves, as it stands in the button</extracomment>
        <translation>Esc</translation>
    </message>
    <message>
        <source>The workbook is still being looked through. Trying again; what you typed is kept.</source>
        <extracomment>At the foot of a form, while it waits for the check of a workbook that was opened</extracomment>
        <translation>Das Arbeitsbuch wird noch geprüft. Es wird erneut versucht; Ihre Eingaben bleiben erhalten.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::Frame</name>
    <message>
        <source>Entry %1</source>
        <extracomment>In the status line; %1 the number of the last entry in the workbook's history</extracomment>
        <translation>Eintrag %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::GridPage</name>
    <message>
        <source>Back</source>
        <extracomment>A button that goes back to the yard</extracomment>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>write a whole number, such as 4.</source>
        <extracomment>Beside a cell whose text does not read</extracomment>
        <translation>eine ganze Zahl eingeben, etwa 4.</translation>
    </message>
    <message>
        <source>Give up what was typed</source>
        <extracomment>Quiet button: what was typed into a grid and not entered goes</extracomment>
        <translation>Getipptes verwerfen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::HabitsPage</name>
    <message>
        <source>Reading and writing</source>
        <extracomment>Head of a page of Set-up.</extracomment>
        <translation>Lesen und Schreiben</translation>
    </message>
    <message>
        <source>These follow you, on this computer, whatever workbook is open. What you choose takes hold at once.</source>
        <extracomment>Under the head of a page of Set-up.</extracomment>
        <translation>Dies gilt für Sie an diesem Computer, gleich welches Arbeitsbuch geöffnet ist. Ihre Wahl wirkt sofort.</translation>
    </message>
    <message>
        <source>Cans, pails and batches in</source>
        <extracomment>A field's label: unit for cans, pails and batches.</extracomment>
        <translation>Kanister, Eimer und Ansätze in</translation>
    </message>
    <message>
        <source>kilograms</source>
        <extracomment>A unit.</extracomment>
        <translation>Kilogramm</translation>
    </message>
    <message>
        <source>pounds</source>
        <extracomment>A unit.</extracomment>
        <translation>Pfund (lb)</translation>
    </message>
    <message>
        <source>Strips in</source>
        <extracomment>A field's label: unit for strips.</extracomment>
        <translation>Streifen in</translation>
    </message>
    <message>
        <source>grams</source>
        <extracomment>A unit.</extracomment>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>ounces</source>
        <extracomment>A unit.</extracomment>
        <translation>Unzen</translation>
    </message>
    <message>
        <source>Temperatures in</source>
        <extracomment>A field's label.</extracomment>
        <translation>Temperaturen in</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <extracomment>A unit.</extracomment>
        <translation>Grad Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <extracomment>A unit.</extracomment>
        <translation>Grad Fahrenheit</translation>
    </message>
    <message>
        <source>Language</source>
        <extracomment>A field's label; and its sentence of help.</extracomment>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Words change when the program is opened again.</source>
        <translation>Die Texte ändern sich beim nächsten Öffnen des Programms.</translation>
    </message>
    <message>
        <source>as the system</source>
        <extracomment>A choice: as the system has it.</extracomment>
        <translation>wie im System</translation>
    </message>
    <message>
        <source>Text size</source>
        <extracomment>A field's label.</extracomment>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>%1 %</source>
        <extracomment>A text size; %1 is 100, 125 ...</extracomment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Look</source>
        <extracomment>A field's label: light or dark.</extracomment>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>light</source>
        <extracomment>A choice of look.</extracomment>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <extracomment>A choice of look.</extracomment>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Paper</source>
        <extracomment>A field's label: size of paper.</extracomment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>as usual here</source>
        <extracomment>A choice: as usual in the user's country.</extracomment>
        <translation>wie hier üblich</translation>
    </message>
    <message>
        <source>Letter</source>
        <extracomment>A size of paper.</extracomment>
        <translation>Letter</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::Head</name>
    <message>
        <source>Undo: %1</source>
        <extracomment>Button; %1 a piece of work, as "3 bags moved"</extracomment>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <extracomment>Button; %1 a piece of work, as "3 bags moved"</extracomment>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>%1 (Ctrl+Z)</source>
        <extracomment>Tool tip; %1 "Undo: 3 bags moved"</extracomment>
        <translation>%1 (Strg+Z)</translation>
    </message>
    <message>
        <source>%1 (Ctrl+Shift+Z)</source>
        <extracomment>Tool tip; %1 "Redo: 3 bags moved"</extracomment>
        <translation>%1 (Strg+Umschalt+Z)</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::HeatStep</name>
    <message>
        <source>Read the tank</source>
        <extracomment>Turns to the form for a temperature</extracomment>
        <translation>Tank ablesen</translation>
    </message>
    <message>
        <source>Stir</source>
        <extracomment>Turns to the form for a stir</extracomment>
        <translation>Rühren</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::HiveStory</name>
    <message>
        <source>What happened to this hive</source>
        <extracomment>Read aloud: the table of what happened to a hive</extracomment>
        <translation>Was mit diesem Volk geschah</translation>
    </message>
    <message>
        <source>Nothing yet. Strips in and out, counts and moves of this hive will stand here.</source>
        <extracomment>What stands in the empty story of a hive</extracomment>
        <translation>Noch nichts. Streifen hinein und heraus, Zählungen und Standwechsel dieses Volks stehen später hier.</translation>
    </message>
    <message>
        <source>Correct</source>
        <extracomment>Quiet button</extracomment>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Make void</source>
        <extracomment>Quiet button: makes an entry void</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
    <message>
        <source>Weigh pulled strips</source>
        <extracomment>Quiet button</extracomment>
        <translation>Herausgenommene Streifen wiegen</translation>
    </message>
    <message>
        <source>Strips in this hive</source>
        <extracomment>Quiet button: hangs strips in this one hive</extracomment>
        <translation>Streifen in dieses Volk</translation>
    </message>
    <message>
        <source>Edit the hive</source>
        <extracomment>Quiet button</extracomment>
        <translation>Volk bearbeiten</translation>
    </message>
    <message>
        <source>Close the story of this hive</source>
        <extracomment>Tool tip of a small cross</extracomment>
        <translation>Verlauf dieses Volks schließen</translation>
    </message>
    <message>
        <source>strips in</source>
        <extracomment>What happened to a hive</extracomment>
        <translation>Streifen hinein</translation>
    </message>
    <message>
        <source>strips out</source>
        <extracomment>What happened to a hive</extracomment>
        <translation>Streifen heraus</translation>
    </message>
    <message>
        <source>mite count</source>
        <extracomment>What happened to a hive</extracomment>
        <translation>Milbenzählung</translation>
    </message>
    <message>
        <source>moved</source>
        <extracomment>What happened to a hive</extracomment>
        <translation>umgestellt</translation>
    </message>
    <message>
        <source>dead or gone</source>
        <extracomment>What happened to a hive</extracomment>
        <translation>tot oder abgegangen</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Column</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>Column</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>Column</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Missing</source>
        <extracomment>Column: strips that were not found any more</extracomment>
        <translation>Fehlend</translation>
    </message>
    <message>
        <source>From, to, or found</source>
        <extracomment>Column: bag, yard or count</extracomment>
        <translation>Woher, wohin oder Befund</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Column</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>void</source>
        <extracomment>An entry that was made void</extracomment>
        <translation>ungültig</translation>
    </message>
    <message>
        <source>entered late</source>
        <extracomment>An entry that was made later than the day it tells of</extracomment>
        <translation>nachgetragen</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strips hang, to be pulled %1</source>
        <extracomment>Rich text; %1 the days to pull; %n strips</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen hängt, herauszunehmen %1</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen hängen, herauszunehmen %1</numerusform>
        </translation>
    </message>
    <message>
        <source>no harvest before &lt;b&gt;%1&lt;/b&gt;</source>
        <extracomment>Rich text; %1 a day</extracomment>
        <translation>keine Ernte vor &lt;b&gt;%1&lt;/b&gt;</translation>
    </message>
    <message>
        <source>left untreated on purpose</source>
        <extracomment>A hive without strips to compare with</extracomment>
        <translation>absichtlich unbehandelt</translation>
    </message>
    <message>
        <source>last count %1</source>
        <extracomment>Rich text; %1 the rate of the last mite count</extracomment>
        <translation>letzte Zählung %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::HivesForm</name>
    <message>
        <source>Hives for %1</source>
        <extracomment>Title of a form; %1 a yard</extracomment>
        <translation>Völker für %1</translation>
    </message>
    <message>
        <source>Add the hives</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Völker eintragen</translation>
    </message>
    <message>
        <source>What stands there</source>
        <extracomment>Field: numbered hives or a group</extracomment>
        <translation>Was dort steht</translation>
    </message>
    <message>
        <source>numbered hives</source>
        <extracomment>One of two</extracomment>
        <translation>nummerierte Völker</translation>
    </message>
    <message>
        <source>a row of hives without numbers</source>
        <extracomment>One of two: hives without numbers that are treated as one</extracomment>
        <translation>eine Reihe von Völkern ohne Nummern</translation>
    </message>
    <message>
        <source>Letters before the number</source>
        <extracomment>Field: the letters before a hive's number</extracomment>
        <translation>Buchstaben vor der Nummer</translation>
    </message>
    <message>
        <source>First number</source>
        <extracomment>Field: the number of the first hive</extracomment>
        <translation>Erste Nummer</translation>
    </message>
    <message>
        <source>01 gives 01, 02 … 10.</source>
        <extracomment>Help of a field</extracomment>
        <translation>01 ergibt 01, 02 … 10.</translation>
    </message>
    <message>
        <source>How many</source>
        <extracomment>Field; the words at its right are "hives"
----------
Field: how many make a group; the words at its right are "hives"</extracomment>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>hives</source>
        <translation>Völker</translation>
    </message>
    <message>
        <source>Name of the row</source>
        <extracomment>Field: what a group is called</extracomment>
        <translation>Name der Reihe</translation>
    </message>
    <message>
        <source>Brood boxes</source>
        <extracomment>Field</extracomment>
        <translation>Brutzargen</translation>
    </message>
    <message>
        <source>The dose may go by it.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Die Dosis kann sich danach richten.</translation>
    </message>
    <message>
        <source>Frames of bees</source>
        <extracomment>Field: how many frames are covered with bees</extracomment>
        <translation>Besetzte Waben</translation>
    </message>
    <message>
        <source>Frames covered with bees; the dose may go by it.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Von Bienen besetzte Waben; die Dosis kann sich danach richten.</translation>
    </message>
    <message>
        <source>in the whole row</source>
        <extracomment>At the right of a field</extracomment>
        <translation>in der ganzen Reihe</translation>
    </message>
    <message>
        <source>each</source>
        <translation>je Volk</translation>
    </message>
    <message numerus="yes">
        <source>One line for %n hives: strips and counts are kept for the whole row.</source>
        <extracomment>What follows from a form; %n hives</extracomment>
        <translation>
            <numerusform>Eine Zeile für %n Volk: Streifen und Zählungen gelten für die ganze Reihe.</numerusform>
            <numerusform>Eine Zeile für %n Völker: Streifen und Zählungen gelten für die ganze Reihe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%1&lt;/b&gt; to &lt;b&gt;%2&lt;/b&gt;, %n hives</source>
        <extracomment>What follows from a form; rich text; %1 and %2 names of hives, %n hives</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; bis &lt;b&gt;%2&lt;/b&gt;, %n Volk</numerusform>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; bis &lt;b&gt;%2&lt;/b&gt;, %n Völker</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::HowButton</name>
    <message>
        <source>How?</source>
        <extracomment>Button that shows how a result was worked out</extracomment>
        <translation>Wie?</translation>
    </message>
    <message>
        <source>How this is worked out (%1)</source>
        <extracomment>What the button "How?" says while the mouse rests on it; %1 the key that does the same</extracomment>
        <translation>Wie das berechnet ist (%1)</translation>
    </message>
    <message>
        <source>How? %1</source>
        <extracomment>The button "How?" as it is read aloud; %1 the name of a figure</extracomment>
        <translation>Wie? %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::InputsTable</name>
    <message>
        <source>What went in</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Was hineinkam</translation>
    </message>
    <message>
        <source>What</source>
        <extracomment>Header of a column: acid, glycerine or a pail</extracomment>
        <translation>Was</translation>
    </message>
    <message>
        <source>Pail %1, whole</source>
        <extracomment>A pail that goes whole into a mix; %1 its code</extracomment>
        <translation>Eimer %1, ganz</translation>
    </message>
    <message>
        <source>Planned</source>
        <extracomment>Header of a column: the mass that was planned</extracomment>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Weighed</source>
        <extracomment>Header of a column: the mass that was weighed in</extracomment>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Off plan</source>
        <extracomment>Header of a column: weighed less planned</extracomment>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>Correct %1</source>
        <extracomment>Title of a dialog; %1 the name of a delivery</extracomment>
        <translation>%1 berichtigen</translation>
    </message>
    <message>
        <source>%1 stands as weighed in.</source>
        <extracomment>What an entry says now; %1 a mass</extracomment>
        <translation>%1 steht als eingewogen da.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::KeySheet</name>
    <message>
        <source>Keys</source>
        <extracomment>Title of the sheet of keys</extracomment>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Find a code or a name, typed or scanned</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Code oder Namen suchen, eintippen oder scannen</translation>
    </message>
    <message>
        <source>Take back the last piece of work</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Den letzten Arbeitsschritt zurücknehmen</translation>
    </message>
    <message>
        <source>Do again what was taken back</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Zurückgenommenes wiederholen</translation>
    </message>
    <message>
        <source>In a form: the next field. In a table: open the row</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Im Formular: nächstes Feld. In der Tabelle: Zeile öffnen</translation>
    </message>
    <message>
        <source>In a form: the field before. In a note: a new line</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Im Formular: voriges Feld. In der Notiz: neue Zeile</translation>
    </message>
    <message>
        <source>Make the entry; answer a question with: keep it as it is</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Eintragen; eine Frage beantworten mit: so lassen</translation>
    </message>
    <message>
        <source>Leave a form; twice, when something was typed</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Formular verlassen; zweimal, wenn etwas getippt wurde</translation>
    </message>
    <message>
        <source>In a day: the calendar. In a choice: the list</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Beim Tag: der Kalender. Bei einer Auswahl: die Liste</translation>
    </message>
    <message>
        <source>Larger text, smaller text, as at first</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Schrift größer, kleiner, wie am Anfang</translation>
    </message>
    <message>
        <source>This sheet</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Dieses Blatt</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>Closes the sheet of keys</extracomment>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>How? Shows how the figures of the form or the page are worked out; again or Esc puts it away</source>
        <extracomment>Beside the keys on the sheet of keys; "How?" stands on a button beside a figure</extracomment>
        <translation>Wie? Zeigt, wie die Werte des Formulars oder der Seite berechnet sind; noch einmal oder Esc blendet es wieder aus</translation>
    </message>
    <message>
        <source>History: what the row you are on said before, who changed it, when and why</source>
        <extracomment>Beside the keys on the sheet of keys</extracomment>
        <translation>Verlauf: was bei der Zeile, auf der Sie stehen, vorher dastand, wer es wann und warum geändert hat</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LabelDialog</name>
    <message numerus="yes">
        <source>%n label(s)</source>
        <extracomment>title of a window</extracomment>
        <translation>
            <numerusform>%n Etikett</numerusform>
            <numerusform>%n Etiketten</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin at label</source>
        <extracomment>field: the number of the label on the first sheet that is printed first</extracomment>
        <translation>Beginnen bei Etikett</translation>
    </message>
    <message>
        <source>for a sheet that is used in part: type it, or click the first free label.</source>
        <extracomment>help to the field that says where to begin</extracomment>
        <translation>bei einem angebrochenen Bogen: eintippen oder das erste freie Etikett anklicken.</translation>
    </message>
    <message>
        <source>Wording of the precautions</source>
        <extracomment>field: which edition of the hazard statements</extracomment>
        <translation>Wortlaut der Gefahren- und Sicherheitshinweise</translation>
    </message>
    <message>
        <source>UN GHS, edition 9 and later</source>
        <extracomment>an edition of the UN GHS</extracomment>
        <translation>UN-GHS, ab Ausgabe 9</translation>
    </message>
    <message>
        <source>UN GHS, up to edition 8</source>
        <extracomment>an edition of the UN GHS</extracomment>
        <translation>UN-GHS, bis Ausgabe 8</translation>
    </message>
    <message>
        <source>An aid for bags of your own use. It is no legal classification; the acid's safety data sheet and local rules come first.</source>
        <extracomment>beside the preview of labels</extracomment>
        <translation>Eine Hilfe für Beutel zum eigenen Gebrauch. Dies ist keine rechtliche Einstufung; das Sicherheitsdatenblatt der Säure und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Test page</source>
        <extracomment>button with a menu: a page to try sheet and printer with</extracomment>
        <translation>Testseite</translation>
    </message>
    <message>
        <source>Print…</source>
        <extracomment>of the test page
----------
button: to a printer</extracomment>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <extracomment>of the test page
----------
button: to a file</extracomment>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>button: leaves the preview</extracomment>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>labels</source>
        <extracomment>begins the name of a file with labels</extracomment>
        <translation>etiketten</translation>
    </message>
    <message>
        <source>label test page</source>
        <extracomment>name of a file with a page to try a label sheet with</extracomment>
        <translation>etiketten-testseite</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LeftoversStep</name>
    <message>
        <source>Enter on a row puts a pail's mass right, with a reason.</source>
        <extracomment>Under a table whose rows can be put right</extracomment>
        <translation>Mit der Eingabetaste auf einer Zeile berichtigen Sie die Masse eines Eimers, mit Begründung.</translation>
    </message>
    <message>
        <source>Pail labels</source>
        <extracomment>Button</extracomment>
        <translation>Eimeretiketten</translation>
    </message>
    <message>
        <source>Open it again</source>
        <extracomment>Button: a closed batch can take entries again
----------
Button of a dialog</extracomment>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Pour</source>
        <extracomment>Turns to the form for pails</extracomment>
        <translation>Abfüllen</translation>
    </message>
    <message>
        <source>Name a loss</source>
        <extracomment>Turns to the form for a loss that has a name</extracomment>
        <translation>Verlust benennen</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>Turns to the end of a batch</extracomment>
        <translation>Abschließen</translation>
    </message>
    <message>
        <source>Open batch %1 again</source>
        <extracomment>Title of a dialog; %1 the code of a batch</extracomment>
        <translation>Ansatz %1 wieder öffnen</translation>
    </message>
    <message>
        <source>It takes entries again, and is closed again when they are made.</source>
        <extracomment>What becomes of a batch that is opened again</extracomment>
        <translation>Er nimmt wieder Einträge an und wird danach erneut abgeschlossen.</translation>
    </message>
    <message>
        <source>More than usual</source>
        <translation>Mehr als üblich</translation>
    </message>
    <message>
        <source>As usual</source>
        <translation>Wie üblich</translation>
    </message>
    <message>
        <source>up to %1 unexplained is usual here.</source>
        <extracomment>After "As usual" or "More than usual"; %1 a share of what went in</extracomment>
        <translation>bis %1 ungeklärt ist hier üblich.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LossForm</name>
    <message>
        <source>What was lost</source>
        <extracomment>Label of a choice: drips, what stays in the tank ...</extracomment>
        <translation>Was verloren ging</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Write it down</source>
        <extracomment>Button that writes a named loss down</extracomment>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>drips</source>
        <extracomment>A loss of liquid</extracomment>
        <translation>Tropfverlust</translation>
    </message>
    <message>
        <source>what stays in the tank</source>
        <extracomment>A loss of liquid</extracomment>
        <translation>Bodenrest im Tank</translation>
    </message>
    <message>
        <source>a spill</source>
        <extracomment>A loss of liquid</extracomment>
        <translation>Verschüttetes</translation>
    </message>
    <message>
        <source>something else</source>
        <extracomment>A loss of liquid</extracomment>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>name a loss</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>Verlust benennen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LossesTable</name>
    <message>
        <source>Lost</source>
        <extracomment>Header of a column: drips, a spill ...</extracomment>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>How much</source>
        <extracomment>Header of a column: a mass</extracomment>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Header of a column</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Losses named for this batch</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Benannte Verluste dieses Ansatzes</translation>
    </message>
    <message>
        <source>Make a loss void</source>
        <extracomment>Title of a dialog</extracomment>
        <translation>Verlust für ungültig erklären</translation>
    </message>
    <message>
        <source>The loss of %1 does not count any more. It stays in the history; name it again if it was written wrongly.</source>
        <extracomment>What becomes of a loss that is made void; %1 a mass</extracomment>
        <translation>Der Verlust von %1 zählt nicht mehr. Er bleibt im Verlauf; benennen Sie ihn neu, wenn er falsch aufgeschrieben war.</translation>
    </message>
    <message>
        <source>Make it void</source>
        <extracomment>Button of a dialog: the entry does not count any more</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LotField</name>
    <message>
        <source>New delivery</source>
        <extracomment>Button beside a field for a delivery: enters a new one</extracomment>
        <translation>Neue Lieferung</translation>
    </message>
    <message>
        <source>none in the store</source>
        <extracomment>Stands in a field for a delivery while the store has none</extracomment>
        <translation>keine im Lager</translation>
    </message>
    <message>
        <source>choose a delivery</source>
        <translation>Lieferung wählen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LotForm</name>
    <message>
        <source>New delivery</source>
        <extracomment>Title of a form</extracomment>
        <translation>Neue Lieferung</translation>
    </message>
    <message>
        <source>Correct a delivery</source>
        <extracomment>Title of a form that puts a delivery right</extracomment>
        <translation>Lieferung berichtigen</translation>
    </message>
    <message>
        <source>It stands beside the delivery for good, with what it said before.</source>
        <extracomment>Help under the reason of a correction</extracomment>
        <translation>Der Grund bleibt dauerhaft bei der Lieferung stehen, mit der früheren Angabe.</translation>
    </message>
    <message>
        <source>Correct it</source>
        <extracomment>Button that puts an entry right</extracomment>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Oxalic acid</source>
        <extracomment>Label of a field</extracomment>
        <translation>Oxalsäure</translation>
    </message>
    <message>
        <source>Glycerine</source>
        <extracomment>Label of a field</extracomment>
        <translation>Glycerin</translation>
    </message>
    <message>
        <source>Dry strips</source>
        <extracomment>Label of a field</extracomment>
        <translation>Trockene Streifen</translation>
    </message>
    <message>
        <source>Bags</source>
        <extracomment>Label of a field</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Material</source>
        <extracomment>Label of a field</extracomment>
        <translation>Material</translation>
    </message>
    <message>
        <source>Lot number or name</source>
        <extracomment>Label of a field</extracomment>
        <translation>Chargennummer oder Name</translation>
    </message>
    <message>
        <source>As it stands on the container.</source>
        <translation>Wie auf dem Gebinde angegeben.</translation>
    </message>
    <message>
        <source>Amount that came</source>
        <extracomment>Label of a field</extracomment>
        <translation>Gelieferte Menge</translation>
    </message>
    <message>
        <source>One container holds</source>
        <extracomment>Label of a field</extracomment>
        <translation>Ein Gebinde enthält</translation>
    </message>
    <message>
        <source>Then amounts are also said in whole containers. May stay empty.</source>
        <extracomment>Help under a field</extracomment>
        <translation>Dann werden Mengen auch in ganzen Gebinden angegeben. Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Pieces that came</source>
        <extracomment>Label of a field</extracomment>
        <translation>Gelieferte Stückzahl</translation>
    </message>
    <message>
        <source>One pack holds</source>
        <extracomment>Label of a field</extracomment>
        <translation>Eine Packung enthält</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <extracomment>Help under a field</extracomment>
        <translation>Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Content, as the label says</source>
        <extracomment>Label of a field</extracomment>
        <translation>Reinheit laut Etikett</translation>
    </message>
    <message>
        <source>By mass, such as 99.6 %.</source>
        <extracomment>Help under a field</extracomment>
        <translation>Nach Masse, etwa 99,6 %.</translation>
    </message>
    <message>
        <source>as dihydrate</source>
        <extracomment>How the acid's content is counted on its label</extracomment>
        <translation>als Dihydrat</translation>
    </message>
    <message>
        <source>as anhydrous acid</source>
        <extracomment>How the acid's content is counted on its label</extracomment>
        <translation>als wasserfreie Säure</translation>
    </message>
    <message>
        <source>Content is counted</source>
        <translation>Reinheit gerechnet</translation>
    </message>
    <message>
        <source>The label or the data sheet says it.</source>
        <translation>Steht auf dem Etikett oder im Datenblatt.</translation>
    </message>
    <message>
        <source>Kind of strip</source>
        <extracomment>Label of a field</extracomment>
        <translation>Streifenart</translation>
    </message>
    <message>
        <source>One dry strip weighs</source>
        <extracomment>Label of a field</extracomment>
        <translation>Ein trockener Streifen wiegt</translation>
    </message>
    <message>
        <source>Weighed in its own room; empty takes the weight of the kind.</source>
        <extracomment>Help under a field</extracomment>
        <translation>Im eigenen Raum gewogen; leer gilt das Gewicht der Streifenart.</translation>
    </message>
    <message>
        <source>Received on</source>
        <extracomment>Label of a field</extracomment>
        <translation>Erhalten am</translation>
    </message>
    <message>
        <source>today</source>
        <extracomment>Stands in an empty field</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>From</source>
        <extracomment>Label of a field</extracomment>
        <translation>Von</translation>
    </message>
    <message>
        <source>Who sold it. May stay empty.</source>
        <translation>Wer es verkauft hat. Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Best before</source>
        <extracomment>Label of a field</extracomment>
        <translation>Mindestens haltbar bis</translation>
    </message>
    <message>
        <source>Cost of it all</source>
        <extracomment>Label of a field</extracomment>
        <translation>Gesamtkosten</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Label of a field</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Put it in the store</source>
        <extracomment>Button that enters a delivery</extracomment>
        <translation>Ins Lager nehmen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LotsPage</name>
    <message>
        <source>No delivery yet</source>
        <extracomment>Head of an empty page</extracomment>
        <translation>Noch keine Lieferung</translation>
    </message>
    <message>
        <source>Acid, glycerine, dry strips and bags stand here by delivery, each with its lot number and what is left. Batches draw on them, so that every strip can be followed back to what it was made of.</source>
        <extracomment>On an empty page</extracomment>
        <translation>Säure, Glycerin, trockene Streifen und Beutel stehen hier nach Lieferung, jeweils mit Chargennummer und Restmenge. Ansätze entnehmen daraus, sodass sich jeder Streifen bis zu seinen Ausgangsstoffen zurückverfolgen lässt.</translation>
    </message>
    <message>
        <source>Enter a delivery</source>
        <extracomment>Button on an empty page: opens the form of a delivery</extracomment>
        <translation>Lieferung eintragen</translation>
    </message>
    <message>
        <source>Deliveries</source>
        <extracomment>Title of a page: deliveries of material</extracomment>
        <translation>Lieferungen</translation>
    </message>
    <message>
        <source>Which deliveries</source>
        <extracomment>Read aloud: the choices of which deliveries a table shows</extracomment>
        <translation>Welche Lieferungen</translation>
    </message>
    <message>
        <source>In use</source>
        <extracomment>Choice of which deliveries are shown: those not used up</extracomment>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>All</source>
        <extracomment>Choice of which deliveries are shown: finished ones too</extracomment>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Deliveries, newest first</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Lieferungen, neueste zuerst</translation>
    </message>
    <message>
        <source>Every delivery is finished.</source>
        <extracomment>Stands in an empty table</extracomment>
        <translation>Alle Lieferungen sind aufgebraucht.</translation>
    </message>
    <message>
        <source>New delivery</source>
        <extracomment>Filled button: opens the form of a delivery</extracomment>
        <translation>Neue Lieferung</translation>
    </message>
    <message>
        <source>Correct</source>
        <extracomment>Button: puts a delivery right</extracomment>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>Count anew</source>
        <extracomment>Button: what is left of a delivery was counted or weighed</extracomment>
        <translation>Nachzählen</translation>
    </message>
    <message>
        <source>Finished</source>
        <extracomment>Button: a delivery is used up</extracomment>
        <translation>Aufgebraucht</translation>
    </message>
    <message>
        <source>%1 &lt;b&gt;%2&lt;/b&gt;</source>
        <extracomment>In a sentence of figures; %1 a material, %2 how much of it is left</extracomment>
        <translation>%1 &lt;b&gt;%2&lt;/b&gt;</translation>
    </message>
    <message numerus="yes">
        <source>%n past its date</source>
        <extracomment>In a sentence of figures; %n deliveries are past their best-before day</extracomment>
        <translation>
            <numerusform>%n abgelaufen</numerusform>
            <numerusform>%n abgelaufen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::MassFlowChart</name>
    <message>
        <source>Where every kilogram went</source>
        <extracomment>name of a chart</extracomment>
        <translation>Wo jedes Kilogramm geblieben ist</translation>
    </message>
    <message>
        <source>Once the amounts are weighed in, this shows where each kilogram of the batch went.</source>
        <extracomment>instead of the chart of where a batch's liquid went</extracomment>
        <translation>Sobald die Mengen eingewogen sind, zeigt dies, wo jedes Kilogramm des Ansatzes geblieben ist.</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <extracomment>a bar of the chart: %1 is where the liquid went, %2 a mass, %3 a part in per cent</extracomment>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>Where it went</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Verbleib</translation>
    </message>
    <message>
        <source>Mass, %1</source>
        <extracomment>column of the table behind a chart; %1 is a unit</extracomment>
        <translation>Masse, %1</translation>
    </message>
    <message>
        <source>Of all, %</source>
        <extracomment>column of the table behind a chart: part of all that went in</extracomment>
        <translation>Anteil, %</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::MiteChart</name>
    <message>
        <source>Mite counts</source>
        <extracomment>name of a chart</extracomment>
        <translation>Milbenzählungen</translation>
    </message>
    <message>
        <source>Mite counts stand here, each with how sure it is, once the first was entered.</source>
        <extracomment>instead of the chart of mite counts</extracomment>
        <translation>Milbenzählungen stehen hier, jede mit ihrer Sicherheit, sobald die erste eingetragen ist.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>one count in words; %1 is a day, %2 a rate with its unit</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <extracomment>goes on from one count in words; %1 and %2 are rates</extracomment>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>over the threshold of %1</source>
        <extracomment>goes on from one count in words; %1 is a rate</extracomment>
        <translation>über der Schwelle von %1</translation>
    </message>
    <message>
        <source>wk</source>
        <extracomment>unit on an axis: weeks</extracomment>
        <translation>Wo.</translation>
    </message>
    <message>
        <source>strips in</source>
        <extracomment>names the days in the chart when strips hung in the hive</extracomment>
        <translation>Streifen hinein</translation>
    </message>
    <message>
        <source>threshold %1</source>
        <extracomment>names a line in the chart; %1 is a rate</extracomment>
        <translation>Schwelle %1</translation>
    </message>
    <message>
        <source>%1, over the threshold</source>
        <extracomment>at the highest count of the chart; %1 is a rate</extracomment>
        <translation>%1, über der Schwelle</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Rate, %1</source>
        <extracomment>column of the table behind a chart; %1 is a unit</extracomment>
        <translation>Befall, %1</translation>
    </message>
    <message>
        <source>From</source>
        <extracomment>column of the table behind a chart: the lower end of an interval</extracomment>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <extracomment>column of the table behind a chart: the upper end of an interval</extracomment>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Count</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Zählung</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::MixAddForm</name>
    <message>
        <source>Put the strength right</source>
        <extracomment>Title of a form that brings a mix to its strength</extracomment>
        <translation>Gehalt einstellen</translation>
    </message>
    <message>
        <source>Added</source>
        <extracomment>Label of a field</extracomment>
        <translation>Zugegeben</translation>
    </message>
    <message>
        <source>Acid from</source>
        <extracomment>Label of a field</extracomment>
        <translation>Säure aus</translation>
    </message>
    <message>
        <source>Glycerine from</source>
        <extracomment>Label of a field</extracomment>
        <translation>Glycerin aus</translation>
    </message>
    <message>
        <source>It is added</source>
        <extracomment>Button that writes down what was added to a mix</extracomment>
        <translation>Ist zugegeben</translation>
    </message>
    <message>
        <source>Leave it as it is</source>
        <extracomment>Button: a mix whose strength is off is used all the same</extracomment>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>put the strength right</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>Gehalt einstellen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::MixPlanForm</name>
    <message>
        <source>Start the batch</source>
        <extracomment>Button that makes a new batch from the plan and gives it its code</extracomment>
        <translation>Ansatz beginnen</translation>
    </message>
    <message>
        <source>the amount to make</source>
        <extracomment>What a new batch starts from</extracomment>
        <translation>gewünschte Menge</translation>
    </message>
    <message>
        <source>the acid at hand</source>
        <extracomment>What a new batch starts from</extracomment>
        <translation>vorhandene Säure</translation>
    </message>
    <message>
        <source>the glycerine at hand</source>
        <extracomment>What a new batch starts from</extracomment>
        <translation>vorhandenes Glycerin</translation>
    </message>
    <message>
        <source>the strips wanted</source>
        <extracomment>What a new batch starts from</extracomment>
        <translation>gewünschte Streifen</translation>
    </message>
    <message>
        <source>Start from</source>
        <extracomment>Label of a choice: the amount to make, the acid at hand ...</extracomment>
        <translation>Ausgehen von</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>How many</source>
        <extracomment>A unit behind a number of strips</extracomment>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Strength wanted</source>
        <translation>Gewünschter Gehalt</translation>
    </message>
    <message>
        <source>By mass, counted as dihydrate.</source>
        <extracomment>Help under the strength of a mix</extracomment>
        <translation>Nach Masse, als Dihydrat gerechnet.</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Tank</translation>
    </message>
    <message>
        <source>Acid from</source>
        <extracomment>Label of a field</extracomment>
        <translation>Säure aus</translation>
    </message>
    <message>
        <source>Glycerine from</source>
        <extracomment>Label of a field</extracomment>
        <translation>Glycerin aus</translation>
    </message>
    <message>
        <source>For strips of the kind</source>
        <extracomment>Label of a field</extracomment>
        <translation>Für Streifen der Art</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Label of a field</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>today</source>
        <extracomment>Stands in an empty field</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>Leftover pails that go in</source>
        <extracomment>Label of a field</extracomment>
        <translation>Eimer mit Resten, die hineinkommen</translation>
    </message>
    <message>
        <source>Each whole, scraped to the bottom: acid settles, so the upper half of a pail may be almost pure glycerine.</source>
        <extracomment>Help under the list of pails</extracomment>
        <translation>Jeder ganz, bis zum Boden ausgekratzt: Säure setzt sich ab, die obere Hälfte eines Eimers kann daher fast reines Glycerin sein.</translation>
    </message>
    <message>
        <source>%1 · holds %2</source>
        <translation>%1 · fasst %2</translation>
    </message>
    <message>
        <source>A batch needs a tank, and the workbook has none yet.</source>
        <extracomment>Over the form of a new batch, while Set-up has no tank</extracomment>
        <translation>Ein Ansatz braucht einen Tank, und das Arbeitsbuch hat noch keinen.</translation>
    </message>
    <message>
        <source>A batch needs a kind of strip, and the workbook has none yet.</source>
        <translation>Ein Ansatz braucht eine Streifenart, und das Arbeitsbuch hat noch keine.</translation>
    </message>
    <message>
        <source>Go to Set-up</source>
        <extracomment>Button that leads to Set-up</extracomment>
        <translation>Zur Einrichtung</translation>
    </message>
    <message>
        <source>Not like this</source>
        <extracomment>Over a sentence that says why a mix cannot be made like this</extracomment>
        <translation>So nicht</translation>
    </message>
    <message>
        <source>New batch</source>
        <extracomment>What Due calls the form of a new batch</extracomment>
        <translation>Neuer Ansatz</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::MixStep</name>
    <message>
        <source>Mixing sheet</source>
        <extracomment>Button: prints the planned amounts with room to write</extracomment>
        <translation>Mischzettel</translation>
    </message>
    <message>
        <source>Make it void</source>
        <extracomment>Button: a batch was not made, or must not be used
----------
Button of a dialog</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
    <message>
        <source>Enter on a row puts its weight right, with a reason.</source>
        <extracomment>Under a table whose rows can be put right</extracomment>
        <translation>Mit der Eingabetaste auf einer Zeile berichtigen Sie ihr Gewicht, mit Begründung.</translation>
    </message>
    <message>
        <source>Make batch %1 void</source>
        <extracomment>Title of a dialog; %1 the code of a batch</extracomment>
        <translation>Ansatz %1 für ungültig erklären</translation>
    </message>
    <message>
        <source>It stays in the list and in the register with its reason; nothing more can be entered. Pails that went in are free again if nothing was soaked.</source>
        <extracomment>What becomes of a batch that is made void</extracomment>
        <translation>Er bleibt mit Begründung in der Liste und im Behandlungsbuch; weitere Einträge sind nicht möglich. Verwendete Eimer sind wieder frei, wenn nichts getränkt wurde.</translation>
    </message>
    <message>
        <source>Nothing was weighed in. The batch is dropped, its pails are free again, and its code is not used a second time.</source>
        <translation>Es wurde nichts eingewogen. Der Ansatz entfällt, seine Eimer sind wieder frei, und sein Code wird kein zweites Mal vergeben.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::MixWeighForm</name>
    <message>
        <source>It is weighed in</source>
        <extracomment>Button that writes down what was weighed into the tank</extracomment>
        <translation>Ist eingewogen</translation>
    </message>
    <message>
        <source>Pail %1, whole</source>
        <extracomment>A line of a weigh-in: a whole pail; %1 its code</extracomment>
        <translation>Eimer %1, ganz</translation>
    </message>
    <message>
        <source>Each pail scraped to the bottom?</source>
        <extracomment>Label of a field</extracomment>
        <translation>Jeder Eimer bis zum Boden ausgekratzt?</translation>
    </message>
    <message>
        <source>What stays in a pail is settled acid.</source>
        <extracomment>Help under a question about emptied pails</extracomment>
        <translation>Was im Eimer bleibt, ist abgesetzte Säure.</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>Label of a field</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>By</source>
        <extracomment>Label of a field</extracomment>
        <translation>Von</translation>
    </message>
    <message>
        <source>weigh in</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>einwiegen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::Navigation</name>
    <message>
        <source>Places</source>
        <extracomment>Read aloud: the column of places at the left</extracomment>
        <translation>Bereiche</translation>
    </message>
    <message>
        <source>%1 (Ctrl+%2)</source>
        <extracomment>Tool tip of a place; %1 its name, %2 a number: the keys that go there</extracomment>
        <translation>%1 (Strg+%2)</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::NoticeBar</name>
    <message>
        <source>Put this away</source>
        <extracomment>The small cross that puts a notice away</extracomment>
        <translation>Hinweis schließen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::OperationPage</name>
    <message>
        <source>Operation</source>
        <extracomment>Head of a page of Set-up.</extracomment>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>What stands on labels, sheets and the register. Home-made treatment is not lawful everywhere: ask your authority or your vet what holds where your hives stand.</source>
        <extracomment>Under the head of a page of Set-up.</extracomment>
        <translation>Was auf Etiketten, Blättern und im Behandlungsbuch steht. Selbst hergestellte Mittel sind nicht überall erlaubt: Fragen Sie Ihre Behörde oder Ihren Tierarzt, was dort gilt, wo Ihre Völker stehen.</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>A field's label: name of the outfit; and the sentence of help under it.</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>As an inspector would look it up.</source>
        <translation>Wie eine Kontrolle ihn nachschlagen würde.</translation>
    </message>
    <message>
        <source>Made by</source>
        <extracomment>A field's label: address for labels; and the sentence of help under it.</extracomment>
        <translation>Hergestellt von</translation>
    </message>
    <message>
        <source>Address and telephone, printed on every label.</source>
        <translation>Anschrift und Telefon, auf jedes Etikett gedruckt.</translation>
    </message>
    <message>
        <source>Registration number</source>
        <extracomment>A field's label: number of the operation with the authority; and the sentence of help under it.</extracomment>
        <translation>Registriernummer</translation>
    </message>
    <message>
        <source>The number your authority gave you, if there is one.</source>
        <translation>Die Nummer von Ihrer Behörde, falls es eine gibt.</translation>
    </message>
    <message>
        <source>Save</source>
        <extracomment>A button that stores the page's entries.</extracomment>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PagePreview</name>
    <message>
        <source>Preview of the page</source>
        <extracomment>what a screen reader calls the picture of the page to be printed</extracomment>
        <translation>Vorschau der Seite</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <extracomment>under the preview</extracomment>
        <translation>Seite %1 von %2</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PailCard</name>
    <message>
        <source>Print labels</source>
        <extracomment>Filled button: previews the labels of the pails that are chosen</extracomment>
        <translation>Etiketten drucken</translation>
    </message>
    <message>
        <source>Move</source>
        <extracomment>Button: says where a pail stands from now on</extracomment>
        <translation>Umstellen</translation>
    </message>
    <message>
        <source>Used in part</source>
        <extracomment>Button: some of the liquid in a pail was used</extracomment>
        <translation>Teilweise verbraucht</translation>
    </message>
    <message>
        <source>Discard</source>
        <extracomment>Button: throws the liquid of a pail away</extracomment>
        <translation>Entsorgen</translation>
    </message>
    <message>
        <source>Correct mass</source>
        <extracomment>Button: puts the mass of a pail right</extracomment>
        <translation>Masse berichtigen</translation>
    </message>
    <message>
        <source>No pail chosen</source>
        <extracomment>Heading of a card while no pail is chosen</extracomment>
        <translation>Kein Eimer gewählt</translation>
    </message>
    <message>
        <source>Choose a pail: all about it stands here then.</source>
        <extracomment>In a card while no pail is chosen</extracomment>
        <translation>Wählen Sie einen Eimer: Dann steht hier alles über ihn.</translation>
    </message>
    <message>
        <source>Pail %1</source>
        <extracomment>Title of a window; %1 the code of a pail
----------
Heading of a card; %1 the code of a pail</extracomment>
        <translation>Eimer %1</translation>
    </message>
    <message>
        <source>Poured from</source>
        <extracomment>Name of a fact of a pail: from which batch it was poured</extracomment>
        <translation>Abgefüllt aus</translation>
    </message>
    <message>
        <source>Net mass</source>
        <extracomment>Name of a fact of a pail: the mass in it</extracomment>
        <translation>Nettomasse</translation>
    </message>
    <message>
        <source>Strength</source>
        <extracomment>Name of a fact of a pail</extracomment>
        <translation>Gehalt</translation>
    </message>
    <message>
        <source>Sealed</source>
        <extracomment>Name of a fact of a pail: the day it was sealed</extracomment>
        <translation>Verschlossen</translation>
    </message>
    <message>
        <source>Oldest liquid</source>
        <extracomment>Name of a fact of a pail: the day on which the oldest liquid in it was mixed</extracomment>
        <translation>Älteste Flüssigkeit</translation>
    </message>
    <message>
        <source>Warmed</source>
        <extracomment>Name of a fact of a pail: how often its liquid was warmed</extracomment>
        <translation>Erwärmt</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s)</source>
        <translation>
            <numerusform>%n-mal</numerusform>
            <numerusform>%n-mal</numerusform>
        </translation>
    </message>
    <message>
        <source>Waits</source>
        <extracomment>Name of a fact of a pail: how long it has been waiting; %n days</extracomment>
        <translation>Wartet</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>Goes in with</source>
        <extracomment>Name of a fact of a pail: the pails that go into a mix only together with it</extracomment>
        <translation>Nur zusammen mit</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>Name of a fact of a pail: where it stands</extracomment>
        <translation>Steht</translation>
    </message>
    <message>
        <source>Label</source>
        <extracomment>Name of a fact of a pail: whether its label was printed</extracomment>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Because</source>
        <extracomment>Name of a fact of a pail: why it was thrown away or made void</extracomment>
        <translation>Grund</translation>
    </message>
    <message>
        <source>These pails were poured together, cool or not scraped out: only all of them together have the batch's strength.</source>
        <extracomment>Explains a pail that goes into a mix only with others</extracomment>
        <translation>Diese Eimer wurden zusammen abgefüllt, kühl oder nicht ausgekratzt: Nur alle zusammen haben den Gehalt des Ansatzes.</translation>
    </message>
    <message>
        <source>Its strength is unknown, so it goes into no mix. It can only be thrown away.</source>
        <extracomment>Explains a pail of unknown strength</extracomment>
        <translation>Sein Gehalt ist unbekannt, darum kommt er in keine Mischung. Er kann nur entsorgt werden.</translation>
    </message>
    <message numerus="yes">
        <source>%n pail(s) chosen</source>
        <extracomment>Heading of a card; %n pails are chosen</extracomment>
        <translation>
            <numerusform>%n Eimer gewählt</numerusform>
            <numerusform>%n Eimer gewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>Together</source>
        <extracomment>Name of a fact of several pails: their mass together</extracomment>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Pails</source>
        <extracomment>Name of a fact of several pails: their codes</extracomment>
        <translation>Eimer</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PailChecklist</name>
    <message>
        <source>used in part, strength unknown: goes into no mix</source>
        <extracomment>Beside a pail that was used in part</extracomment>
        <translation>teilweise verbraucht, Gehalt unbekannt: kommt in keine Mischung</translation>
    </message>
    <message>
        <source>only together: %1</source>
        <extracomment>Beside a pail that goes into a mix only with others; %1 their codes</extracomment>
        <translation>nur zusammen: %1</translation>
    </message>
    <message>
        <source>since %1</source>
        <extracomment>Beside a pail; %1 the day from which its liquid dates</extracomment>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>Suggest pails</source>
        <extracomment>Button: ticks the leftover pails that go in best</extracomment>
        <translation>Eimer vorschlagen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PailsPage</name>
    <message>
        <source>No pail yet</source>
        <extracomment>Head of an empty page</extracomment>
        <translation>Noch kein Eimer</translation>
    </message>
    <message>
        <source>What is left in the bins after a soak is poured into pails while it is warm and clear. Each will stand here with its mass and strength until it goes into a mix, whole.</source>
        <extracomment>On an empty page</extracomment>
        <translation>Was nach dem Tränken in den Wannen übrig ist, wird warm und klar in Eimer abgefüllt. Jeder steht dann hier mit Masse und Gehalt, bis er ganz in eine Mischung kommt.</translation>
    </message>
    <message>
        <source>Go to the Shed</source>
        <extracomment>Button on an empty page: goes to the place where batches are made</extracomment>
        <translation>Zur Werkstatt</translation>
    </message>
    <message>
        <source>Pails</source>
        <extracomment>Title of a page: pails of leftover liquid</extracomment>
        <translation>Eimer</translation>
    </message>
    <message>
        <source>A pail goes into a mix whole, scraped to the bottom, or not at all: acid settles while it stands, and the upper half may be almost pure glycerine.</source>
        <extracomment>Explains why pails are not used in part</extracomment>
        <translation>Ein Eimer kommt ganz in eine Mischung, bis zum Boden ausgekratzt, oder gar nicht: Säure setzt sich beim Stehen ab, und die obere Hälfte kann fast reines Glycerin sein.</translation>
    </message>
    <message>
        <source>Which pails</source>
        <extracomment>Read aloud: the choices of which pails a table shows</extracomment>
        <translation>Welche Eimer</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <extracomment>Choice of which pails are shown: those whose liquid is still there</extracomment>
        <translation>Im Regal</translation>
    </message>
    <message>
        <source>All</source>
        <extracomment>Choice of which pails are shown: used and thrown away ones too</extracomment>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Pails, oldest first</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Eimer, älteste zuerst</translation>
    </message>
    <message>
        <source>No pail stands on the shelf: all are used up or thrown away.</source>
        <extracomment>Stands in an empty table</extracomment>
        <translation>Kein Eimer steht im Regal: Alle sind verbraucht oder entsorgt.</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; pail(s) on the shelf</source>
        <extracomment>In a sentence of figures; %n pails stand on the shelf</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Eimer im Regal</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Eimer im Regal</numerusform>
        </translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; together</source>
        <extracomment>In a sentence of figures; %1 the mass of all pails</extracomment>
        <translation>&lt;b&gt;%1&lt;/b&gt; zusammen</translation>
    </message>
    <message numerus="yes">
        <source>%n wait(s) too long</source>
        <extracomment>In a sentence of figures; %n pails wait longer than allowed</extracomment>
        <translation>
            <numerusform>%n wartet zu lange</numerusform>
            <numerusform>%n warten zu lange</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of unknown strength</source>
        <extracomment>In a sentence of figures; %n pails have no known strength</extracomment>
        <translation>
            <numerusform>%n mit unbekanntem Gehalt</numerusform>
            <numerusform>%n mit unbekanntem Gehalt</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PailsTable</name>
    <message>
        <source>Pail</source>
        <extracomment>Header of a column: the code of a pail</extracomment>
        <translation>Eimer</translation>
    </message>
    <message>
        <source>Contents</source>
        <extracomment>Header of a column: a mass
----------
Label of a field</extracomment>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Strength</source>
        <extracomment>Header of a column: the strength of what is in a pail</extracomment>
        <translation>Gehalt</translation>
    </message>
    <message>
        <source>unknown</source>
        <extracomment>The strength of a pail is not known</extracomment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Went into</source>
        <extracomment>Header of a column: the batch a pail went into</extracomment>
        <translation>Ging in</translation>
    </message>
    <message>
        <source>Pails of this batch</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Eimer dieses Ansatzes</translation>
    </message>
    <message>
        <source>Correct pail %1</source>
        <extracomment>Title of a dialog; %1 the code of a pail</extracomment>
        <translation>Eimer %1 berichtigen</translation>
    </message>
    <message>
        <source>%1 stand on it. A label that was printed is printed again.</source>
        <extracomment>What an entry says now; %1 a mass</extracomment>
        <translation>Eingetragen sind %1. Ein schon gedrucktes Etikett wird neu gedruckt.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PathField</name>
    <message>
        <source>Choose...</source>
        <extracomment>Button beside the field for a file: opens a window of folders.</extracomment>
        <translation>Wählen ...</translation>
    </message>
    <message>
        <source>Where the workbook is kept</source>
        <extracomment>Title of a window that asks for a file, and the kind of file.</extracomment>
        <translation>Wo das Arbeitsbuch liegt</translation>
    </message>
    <message>
        <source>Workbooks (*.soakbook)</source>
        <translation>Arbeitsbücher (*.soakbook)</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PeoplePage</name>
    <message>
        <source>People</source>
        <extracomment>Head, explanation and button of a page of Set-up.</extracomment>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Every entry is kept with the name of whoever made it. The name is chosen in the line at the foot of the window.</source>
        <translation>Jeder Eintrag trägt den Namen dessen, der ihn gemacht hat. Der Name wird in der Zeile am unteren Rand des Fensters gewählt.</translation>
    </message>
    <message>
        <source>Add a person</source>
        <extracomment>A button.</extracomment>
        <translation>Person hinzufügen</translation>
    </message>
    <message>
        <source>works here</source>
        <extracomment>Word in a table for a person who works here, and for one who has left.</extracomment>
        <translation>arbeitet hier</translation>
    </message>
    <message>
        <source>has left</source>
        <translation>ausgeschieden</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>A field's label.</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>A table column: whether a person works here.</extracomment>
        <translation>Status</translation>
    </message>
    <message>
        <source>Nobody yet. Add the names of those who work with strips.</source>
        <extracomment>Stands in an empty table.</extracomment>
        <translation>Noch niemand. Tragen Sie die Namen derer ein, die mit Streifen arbeiten.</translation>
    </message>
    <message>
        <source>Person</source>
        <extracomment>Title of a form.</extracomment>
        <translation>Person</translation>
    </message>
    <message>
        <source>Works here</source>
        <extracomment>A field's label, answered with yes or no; and its sentence of help.</extracomment>
        <translation>Arbeitet hier</translation>
    </message>
    <message>
        <source>Somebody who has left stays in the records and is no longer offered.</source>
        <translation>Wer ausgeschieden ist, bleibt in den Aufzeichnungen und wird nicht mehr angeboten.</translation>
    </message>
    <message>
        <source>Save</source>
        <extracomment>A button that stores the form.</extracomment>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PlaceForm</name>
    <message>
        <source>Strips into %1</source>
        <extracomment>Title of a form; %1 a hive</extracomment>
        <translation>Streifen in %1</translation>
    </message>
    <message>
        <source>Enter the strips</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Streifen eintragen</translation>
    </message>
    <message>
        <source>Strips in</source>
        <extracomment>Field; the word at its right is "strips"</extracomment>
        <translation>Streifen hinein</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>From bag</source>
        <extracomment>Field: the bag the strips come from</extracomment>
        <translation>Aus Beutel</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Field</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Honey supers on?</source>
        <extracomment>Field</extracomment>
        <translation>Honigräume auf?</translation>
    </message>
    <message>
        <source>Why strips past their limit</source>
        <extracomment>Field: why strips past their limit are hung</extracomment>
        <translation>Warum abgelaufene Streifen</translation>
    </message>
    <message>
        <source>The register will show the reason.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Der Grund steht dann im Behandlungsbuch.</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Field</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>The days until strips come out are not said in Set-up yet; say them there first.</source>
        <extracomment>What follows from a form</extracomment>
        <translation>Die Einrichtung sagt noch nicht, nach wie vielen Tagen die Streifen herauskommen; zuerst dort angeben.</translation>
    </message>
    <message>
        <source>To be pulled &lt;b&gt;%1&lt;/b&gt;. Without a round: it stands in the register all the same.</source>
        <extracomment>What follows from a form; rich text; %1 two days</extracomment>
        <translation>Herausnahme &lt;b&gt;%1&lt;/b&gt;. Ohne Runde: Es steht trotzdem im Behandlungsbuch.</translation>
    </message>
    <message>
        <source>nearest limit first</source>
        <extracomment>First entry of a list of bags: the work takes them in order of their limits</extracomment>
        <translation>früheste Frist zuerst</translation>
    </message>
    <message>
        <source>%1, %2 left, use by %3</source>
        <extracomment>A bag: its code, the strips left in it, its use-by day</extracomment>
        <translation>%1, noch %2, verwendbar bis %3</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PlannedMassField</name>
    <message>
        <source>planned %1</source>
        <extracomment>Beside the field for a weighed mass; %1 the mass that was planned</extracomment>
        <translation>geplant %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PourForm</name>
    <message>
        <source>Pails, contents of each</source>
        <extracomment>Label of a field</extracomment>
        <translation>Eimer, Inhalt je Eimer</translation>
    </message>
    <message>
        <source>Without the pail. Enter goes on to the next one.</source>
        <extracomment>Help under the masses of pails</extracomment>
        <translation>Ohne den Eimer selbst. Die Eingabetaste führt zum nächsten.</translation>
    </message>
    <message>
        <source>Poured warm and clear?</source>
        <translation>Warm und klar abgefüllt?</translation>
    </message>
    <message>
        <source>Before acid settles out.</source>
        <extracomment>Help under a question</extracomment>
        <translation>Bevor sich Säure absetzt.</translation>
    </message>
    <message>
        <source>Bin scraped to the bottom?</source>
        <translation>Wanne bis zum Boden ausgekratzt?</translation>
    </message>
    <message>
        <source>Poured when</source>
        <translation>Abgefüllt am</translation>
    </message>
    <message>
        <source>Stands</source>
        <extracomment>Label of a field: the place on the shelf</extracomment>
        <translation>Steht</translation>
    </message>
    <message>
        <source>They are poured</source>
        <extracomment>Button that writes filled pails down</extracomment>
        <translation>Eimer eintragen</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; in pails, of %2 not accounted for yet.</source>
        <extracomment>Live result of filled pails; %1 their mass together, %2 the liquid that nothing accounts for yet</extracomment>
        <translation>&lt;b&gt;%1&lt;/b&gt; in Eimern, von %2, deren Verbleib noch offen ist.</translation>
    </message>
    <message>
        <source>Only together</source>
        <extracomment>Pails whose strength is only known all together</extracomment>
        <translation>Nur zusammen</translation>
    </message>
    <message>
        <source>these pails go into a later mix all at once, or not at all: each alone may hold more or less acid.</source>
        <translation>diese Eimer kommen alle auf einmal in eine spätere Mischung oder gar nicht: Jeder einzelne kann mehr oder weniger Säure enthalten.</translation>
    </message>
    <message>
        <source>pour what is left</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>Rest abfüllen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PreviewPane</name>
    <message>
        <source>Page before</source>
        <extracomment>turns the preview; the name is for a screen reader</extracomment>
        <translation>Seite zurück</translation>
    </message>
    <message>
        <source>Next page</source>
        <extracomment>turns the preview; the name is for a screen reader</extracomment>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>Smaller</source>
        <extracomment>makes the preview smaller</extracomment>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Larger</source>
        <extracomment>makes the preview larger</extracomment>
        <translation>Größer</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PrimaryButton</name>
    <message>
        <source>Ctrl+Enter</source>
        <extracomment>The keys that make the entry, as they stand in the button</extracomment>
        <translation>Strg+Eingabe</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PullPage</name>
    <message>
        <source>Strips to take out</source>
        <extracomment>The filled button of strips out</extracomment>
        <translation>Herauszunehmende Streifen</translation>
    </message>
    <message>
        <source>Enter the strips out</source>
        <translation>Herausnahme eintragen</translation>
    </message>
    <message>
        <source>Pull list</source>
        <extracomment>A button that prints a sheet to take along</extracomment>
        <translation>Herausnahmeliste</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Field: the day the strips came out</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>A day gone by is an entry made late. Empty a cell under Pulled where strips stay in.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Ein vergangener Tag gilt als Nachtrag. Wo Streifen hängen bleiben, das Feld unter „Herausgenommen“ leeren.</translation>
    </message>
    <message>
        <source>No strips hang here. What you hang stands here until it is pulled.</source>
        <extracomment>What stands in the empty grid of strips out</extracomment>
        <translation>Hier hängen keine Streifen. Was Sie einhängen, steht hier, bis es herausgenommen ist.</translation>
    </message>
    <message>
        <source>%1: strips out</source>
        <extracomment>Title; %1 a yard</extracomment>
        <translation>%1: Streifen heraus</translation>
    </message>
    <message>
        <source>Strips out</source>
        <translation>Streifen heraus</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; hives carry strips</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Volk mit Streifen</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Völker mit Streifen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%1&lt;/b&gt; pulled of &lt;b&gt;%n&lt;/b&gt; hanging</source>
        <extracomment>Rich text: keep the marks around the figures; %1 strips pulled of %n hanging</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; von &lt;b&gt;%n&lt;/b&gt; hängenden Streifen herausgenommen</numerusform>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; von &lt;b&gt;%n&lt;/b&gt; hängenden Streifen herausgenommen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; missing</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; fehlt</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; fehlen</numerusform>
        </translation>
    </message>
    <message>
        <source>pull window &lt;b&gt;%1&lt;/b&gt;</source>
        <extracomment>Rich text; %1 two days</extracomment>
        <translation>Herausnahme &lt;b&gt;%1&lt;/b&gt;</translation>
    </message>
    <message>
        <source>first last day &lt;b&gt;%1&lt;/b&gt;</source>
        <extracomment>Rich text; %1 a day</extracomment>
        <translation>frühester letzter Tag &lt;b&gt;%1&lt;/b&gt;</translation>
    </message>
    <message>
        <source>Strips out on %1, all pulled unless typed over</source>
        <extracomment>Heading of the grid; %1 a day</extracomment>
        <translation>Streifen heraus, %1: alle herausgenommen, wo nichts anderes eingetippt ist</translation>
    </message>
    <message numerus="yes">
        <source>%n exceptions</source>
        <extracomment>How many rows were typed over</extracomment>
        <translation>
            <numerusform>%n Ausnahme</numerusform>
            <numerusform>%n Ausnahmen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hives: %1 strips pulled.</source>
        <extracomment>News after strips came out; %1 strips pulled</extracomment>
        <translation>
            <numerusform>%n Volk: %1 Streifen herausgenommen.</numerusform>
            <numerusform>%n Völker: %1 Streifen herausgenommen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips were missing.</source>
        <extracomment>News after strips came out</extracomment>
        <translation>
            <numerusform>%n Streifen fehlte.</numerusform>
            <numerusform>%n Streifen fehlten.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a hive, %2 what is wrong there</extracomment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::ReadingForm</name>
    <message>
        <source>Probe in the liquid</source>
        <extracomment>Label of a field: the temperature of the liquid</extracomment>
        <translation>Fühler in der Flüssigkeit</translation>
    </message>
    <message>
        <source>Dial of the thermostat</source>
        <extracomment>Label of a field: the temperature the thermostat is set to</extracomment>
        <translation>Regler des Thermostats</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>May stay empty.</source>
        <extracomment>Help under a field</extracomment>
        <translation>Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Water seen in the jacket?</source>
        <translation>Wasser im Mantel gesehen?</translation>
    </message>
    <message>
        <source>Read when</source>
        <translation>Abgelesen am</translation>
    </message>
    <message>
        <source>Write it down</source>
        <extracomment>Button that writes a temperature down</extracomment>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>No water seen</source>
        <extracomment>No water stood in the tank's jacket</extracomment>
        <translation>Kein Wasser gesehen</translation>
    </message>
    <message>
        <source>do not switch the heat on before you see it.</source>
        <extracomment>What to do when no water stands in the tank's jacket</extracomment>
        <translation>die Heizung nicht einschalten, bevor Sie es sehen.</translation>
    </message>
    <message>
        <source>Over the ceiling</source>
        <extracomment>A reading above the most that is allowed</extracomment>
        <translation>Über der Höchsttemperatur</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; in the liquid with the dial at %2; the ceiling is %3.</source>
        <extracomment>A reading of the tank; %1 the probe, %2 the dial, %3 the most allowed</extracomment>
        <translation>&lt;b&gt;%1&lt;/b&gt; in der Flüssigkeit, Regler auf %2; die Höchsttemperatur ist %3.</translation>
    </message>
    <message>
        <source>read the tank</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>Tank ablesen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::ReadingsTable</name>
    <message>
        <source>When</source>
        <extracomment>Header of a column: day and time</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>%1, entered later</source>
        <extracomment>A reading that was entered later than it was made; %1 its day and time</extracomment>
        <translation>%1, nachgetragen</translation>
    </message>
    <message>
        <source>Probe</source>
        <extracomment>Header of a column: the temperature of the liquid</extracomment>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>Dial</source>
        <extracomment>Header of a column: the temperature the thermostat is set to</extracomment>
        <translation>Regler</translation>
    </message>
    <message>
        <source>Room</source>
        <extracomment>Header of a column: the temperature of the room
----------
Label of a field</extracomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Jacket water</source>
        <extracomment>Header of a column: whether water stood in the tank's jacket</extracomment>
        <translation>Mantelwasser</translation>
    </message>
    <message>
        <source>Readings</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Correct a reading</source>
        <extracomment>Title of a dialog</extracomment>
        <translation>Ablesung berichtigen</translation>
    </message>
    <message>
        <source>%1 stands for %2.</source>
        <extracomment>What an entry says now; %1 the temperature, %2 day and time</extracomment>
        <translation>Eingetragen: %1 (%2).</translation>
    </message>
    <message>
        <source>No probe reading</source>
        <translation>Fühler nicht abgelesen</translation>
    </message>
    <message>
        <source>Probe in the liquid</source>
        <extracomment>Label of a field</extracomment>
        <translation>Fühler in der Flüssigkeit</translation>
    </message>
    <message>
        <source>Dial of the thermostat</source>
        <extracomment>Label of a field</extracomment>
        <translation>Regler des Thermostats</translation>
    </message>
    <message>
        <source>Read when</source>
        <extracomment>Label of a field</extracomment>
        <translation>Abgelesen am</translation>
    </message>
    <message>
        <source>Make it void</source>
        <extracomment>Button of a dialog: the entry does not count any more</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::RecordDifferences</name>
    <message>
        <source>What the entry wrote</source>
        <extracomment>What a screen reader calls a list of records.</extracomment>
        <translation>Was der Eintrag schrieb</translation>
    </message>
    <message>
        <source>Record</source>
        <extracomment>Headers of a list of records in two copies of the workbook: the record and its parts, what stands here, what stands there.
----------
Headers of a list of records: the record, and what was changed in it.</extracomment>
        <translation>Betrifft</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Hier</translation>
    </message>
    <message>
        <source>There</source>
        <translation>Dort</translation>
    </message>
    <message>
        <source>Tick it to have it say here what it says there</source>
        <extracomment>Under the pointer over a box.</extracomment>
        <translation>Mit Haken wird es so, wie es dort steht</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::RegisterFilterBar</name>
    <message>
        <source>From</source>
        <extracomment>A field's label: first day shown.</extracomment>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <extracomment>A field's label: last day shown.</extracomment>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Yard</source>
        <extracomment>A field's label.</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>all yards</source>
        <extracomment>A choice: no yard is singled out.</extracomment>
        <translation>alle Stände</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::RegisterPlace</name>
    <message>
        <source>Pages of the Register</source>
        <extracomment>Name of the list of the Register's pages, read aloud.</extracomment>
        <translation>Seiten des Behandlungsbuchs</translation>
    </message>
    <message>
        <source>Treatments</source>
        <extracomment>A page of the Register, and what it holds.
----------
Names of tables, read aloud, and what stands in them while they are empty.</extracomment>
        <translation>Behandlungen</translation>
    </message>
    <message>
        <source>what went where, and when</source>
        <translation>was wohin kam, und wann</translation>
    </message>
    <message>
        <source>Corrections</source>
        <extracomment>A page of the Register, and what it holds.
----------
The same.</extracomment>
        <translation>Berichtigungen</translation>
    </message>
    <message>
        <source>what it said before, and why</source>
        <translation>was vorher dastand, und warum</translation>
    </message>
    <message>
        <source>Hives without strips</source>
        <extracomment>A page of the Register, and what it holds.
----------
The same.</extracomment>
        <translation>Völker ohne Streifen</translation>
    </message>
    <message>
        <source>dead, gone, left out</source>
        <translation>tot, weg, ausgelassen</translation>
    </message>
    <message>
        <source>Journal</source>
        <extracomment>A page of the Register, and what it holds.
----------
The same.</extracomment>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>every entry, newest first</source>
        <translation>alle Einträge, neueste zuerst</translation>
    </message>
    <message>
        <source>No strips were hung in these days.</source>
        <translation>In diesen Tagen wurden keine Streifen eingehängt.</translation>
    </message>
    <message>
        <source>No hive was left without strips.</source>
        <translation>Kein Volk blieb ohne Streifen.</translation>
    </message>
    <message>
        <source>Nothing was entered yet.</source>
        <translation>Noch nichts wurde eingetragen.</translation>
    </message>
    <message>
        <source>Kept with the fields that veterinary registers usually ask for. Home-made strips are no authorised product: whether and how they may be used and recorded is for your authority to say. Records are commonly kept five years or longer.</source>
        <extracomment>Under the register: what it is, and what it is not.</extracomment>
        <translation>Geführt mit den Angaben, die tierärztliche Bestands- und Behandlungsbücher meist verlangen. Selbst gemachte Streifen sind kein zugelassenes Mittel: Ob und wie sie verwendet und aufgezeichnet werden dürfen, sagt Ihre Behörde. Aufzeichnungen werden meist fünf Jahre oder länger aufbewahrt.</translation>
    </message>
    <message>
        <source>Register</source>
        <extracomment>A place in the navigation: the record of treatments.</extracomment>
        <translation>Behandlungsbuch</translation>
    </message>
    <message>
        <source>Print or PDF</source>
        <extracomment>A button: print the register.</extracomment>
        <translation>Drucken oder PDF</translation>
    </message>
    <message>
        <source>For a spreadsheet</source>
        <extracomment>A button: save the register for a spreadsheet.</extracomment>
        <translation>Als Tabelle</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; treatment(s)</source>
        <extracomment>In a sentence of figures.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Behandlung</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Behandlungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s)</source>
        <extracomment>In a sentence of figures.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen</numerusform>
        </translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; oxalic acid dihydrate</source>
        <extracomment>In a sentence of figures; %1 is a mass.</extracomment>
        <translation>&lt;b&gt;%1&lt;/b&gt; Oxalsäure-Dihydrat</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; still hanging</source>
        <extracomment>In a sentence of figures; treatments whose strips still hang.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hängt noch</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hängen noch</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; void, still shown</source>
        <extracomment>In a sentence of figures; treatments made void.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; ungültig, weiter gezeigt</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; ungültig, weiter gezeigt</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was corrected in these days, and nothing behind these treatments.</source>
        <translation>In diesen Tagen wurde nichts berichtigt, und nichts, was hinter diesen Behandlungen steht.</translation>
    </message>
    <message>
        <source>No treatment yet</source>
        <extracomment>Head of an empty page.</extracomment>
        <translation>Noch keine Behandlung</translation>
    </message>
    <message>
        <source>Every strip hung in a hive stands here by itself: which bag and batch it came from, its acid, when it went in and came out, and who did it. Strips are hung and pulled in Yards.</source>
        <extracomment>On an empty page: what will stand there.</extracomment>
        <translation>Jeder eingehängte Streifen steht hier von selbst: aus welchem Beutel und Ansatz er kam, seine Säure, wann er hinein- und herauskam und wer es getan hat. Eingehängt und herausgenommen wird unter Stände.</translation>
    </message>
    <message>
        <source>Go to Yards</source>
        <extracomment>A button on an empty page.</extracomment>
        <translation>Zu den Ständen</translation>
    </message>
    <message>
        <source>entries &lt;b&gt;%1&lt;/b&gt; to &lt;b&gt;%2&lt;/b&gt;</source>
        <extracomment>In a sentence of figures, over the journal; %1 and %2 are numbers of entries.</extracomment>
        <translation>Einträge &lt;b&gt;%1&lt;/b&gt; bis &lt;b&gt;%2&lt;/b&gt;</translation>
    </message>
    <message>
        <source>Made outside Soakbook</source>
        <extracomment>Over the journal, to be ticked: entries of other programs alone are shown</extracomment>
        <translation>Außerhalb von Soakbook geändert</translation>
    </message>
    <message>
        <source>Another program changed these records in the file. They are kept and shown as they were found; nobody's name and no reason stand with them. Compare them with your papers, and put right what is wrong where the record stands.</source>
        <extracomment>Over the journal, while entries of other programs are shown</extracomment>
        <translation>Ein anderes Programm hat diese Aufzeichnungen in der Datei geändert. Sie werden behalten und gezeigt, wie sie vorgefunden wurden; kein Name und kein Grund steht dabei. Vergleichen Sie sie mit Ihren Papieren und berichtigen Sie, was falsch ist, dort, wo die Aufzeichnung steht.</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; change(s) made outside Soakbook</source>
        <extracomment>In a sentence of figures, over the journal: changes that another program made.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Änderung außerhalb von Soakbook</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Änderungen außerhalb von Soakbook</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <extracomment>What an entry changed: %1 the kind of record, %2 its name or code, %3 what was changed</extracomment>
        <translation>%1 %2: %3</translation>
    </message>
    <message numerus="yes">
        <source>and %n more; History shows all</source>
        <extracomment>Under some lines that say what an entry changed; %n more lines are not shown</extracomment>
        <translation>
            <numerusform>und %n weitere; „Verlauf“ zeigt alle</numerusform>
            <numerusform>und %n weitere; „Verlauf“ zeigt alle</numerusform>
        </translation>
    </message>
    <message>
        <source>the records of entry %1</source>
        <extracomment>Title of a window with the history of all records that an entry touched; %1 the number of the entry</extracomment>
        <translation>die Aufzeichnungen von Eintrag %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::ReserveForm</name>
    <message>
        <source>Labels</source>
        <extracomment>A unit behind a number</extracomment>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>A wet bag takes no label: print them first and stick them on dry bags. Strips, weight and dates are entered when the bags are filled; the label has lines to write them on.</source>
        <translation>Auf einem nassen Beutel hält kein Etikett: vorher drucken und auf trockene Beutel kleben. Streifen, Gewicht und Daten werden beim Füllen der Beutel eingetragen; das Etikett hat Zeilen dafür.</translation>
    </message>
    <message>
        <source>Give out the codes</source>
        <extracomment>Button that gives out codes for bags to be filled later</extracomment>
        <translation>Codes vergeben</translation>
    </message>
    <message>
        <source>labels first</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>erst Etiketten</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::ReservedRows</name>
    <message>
        <source>Strips</source>
        <extracomment>Over a column of fields: strips in a bag</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Contents, if weighed</source>
        <extracomment>Over a column of fields: the weight of what is in a bag</extracomment>
        <translation>Inhalt, wenn gewogen</translation>
    </message>
    <message>
        <source>Strips in %1</source>
        <extracomment>Read aloud: a field; %1 the code of a bag</extracomment>
        <translation>Streifen in %1</translation>
    </message>
    <message>
        <source>Contents of %1</source>
        <extracomment>Read aloud: a field; %1 the code of a bag</extracomment>
        <translation>Inhalt von %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::RoundForm</name>
    <message>
        <source>The round %1</source>
        <extracomment>Title of a form</extracomment>
        <translation>Die Runde %1</translation>
    </message>
    <message>
        <source>Plan a round</source>
        <translation>Runde planen</translation>
    </message>
    <message>
        <source>Save the round</source>
        <extracomment>Filled button of a form</extracomment>
        <translation>Runde speichern</translation>
    </message>
    <message>
        <source>Plan the round</source>
        <translation>Runde planen</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>Field: what a round is called</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Late summer</source>
        <extracomment>Help of a field that shows an example</extracomment>
        <translation>Spätsommer</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Field: the day a round starts</extracomment>
        <translation>Tag</translation>
    </message>
    <message numerus="yes">
        <source>%n hives</source>
        <extracomment>Beside a yard's name</extracomment>
        <translation>
            <numerusform>%n Volk</numerusform>
            <numerusform>%n Völker</numerusform>
        </translation>
    </message>
    <message>
        <source>Yards</source>
        <extracomment>Field: the yards of a round</extracomment>
        <translation>Stände</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>Field: the kind of strips
----------
Field</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Strips for each hive</source>
        <extracomment>Field: how the number of strips for a hive is found</extracomment>
        <translation>Streifen je Volk</translation>
    </message>
    <message>
        <source>The label or the vet decides. What you say here holds for this round.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Das Etikett des Mittels oder der Tierarzt entscheidet. Was Sie hier angeben, gilt für diese Runde.</translation>
    </message>
    <message>
        <source>the same for every hive</source>
        <extracomment>One of several rules</extracomment>
        <translation>gleich viele für jedes Volk</translation>
    </message>
    <message>
        <source>by brood boxes</source>
        <extracomment>One of several rules</extracomment>
        <translation>nach Brutzargen</translation>
    </message>
    <message>
        <source>by frames of bees</source>
        <extracomment>One of several rules</extracomment>
        <translation>nach besetzten Waben</translation>
    </message>
    <message>
        <source>One strip for</source>
        <extracomment>Field: frames of bees that get one strip</extracomment>
        <translation>Ein Streifen für</translation>
    </message>
    <message>
        <source>Never fewer than</source>
        <extracomment>Field; the word at its right is "strips"</extracomment>
        <translation>Nie weniger als</translation>
    </message>
    <message>
        <source>strips a hive</source>
        <translation>Streifen je Volk</translation>
    </message>
    <message>
        <source>Never more than</source>
        <extracomment>Field; the word at its right is "strips"</extracomment>
        <translation>Nie mehr als</translation>
    </message>
    <message>
        <source>Until the strips come out</source>
        <extracomment>Heading within a form</extracomment>
        <translation>Bis die Streifen herauskommen</translation>
    </message>
    <message>
        <source>Set-up does not say these days yet. What you say here holds for this round only; take it from the label.</source>
        <translation>Die Einrichtung nennt diese Tage noch nicht. Was Sie hier angeben, gilt nur für diese Runde; nehmen Sie es vom Etikett des Mittels.</translation>
    </message>
    <message>
        <source>Pull from</source>
        <extracomment>Field; the words at its right are "days after hanging"</extracomment>
        <translation>Herausnehmen ab</translation>
    </message>
    <message>
        <source>days after hanging</source>
        <translation>Tage nach dem Einhängen</translation>
    </message>
    <message>
        <source>Pull by</source>
        <extracomment>Field; the words at its right are "days after hanging"</extracomment>
        <translation>Herausnehmen bis</translation>
    </message>
    <message>
        <source>No harvest for</source>
        <extracomment>Field: days until honey may be taken; the words at its right are "days after pulling"</extracomment>
        <translation>Keine Ernte für</translation>
    </message>
    <message>
        <source>days after pulling</source>
        <translation>Tage nach dem Herausnehmen</translation>
    </message>
    <message>
        <source>The withdrawal time of the label, the vet or local rules.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Die Wartezeit nach Etikett des Mittels, Tierarzt oder örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>Field</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>strips a brood box</source>
        <extracomment>At the right of a field</extracomment>
        <translation>Streifen je Brutzarge</translation>
    </message>
    <message>
        <source>Tick the yards of this round to see how many strips it wants.</source>
        <extracomment>What to do next in a form</extracomment>
        <translation>Haken Sie die Stände dieser Runde an, um zu sehen, wie viele Streifen sie braucht.</translation>
    </message>
    <message>
        <source>Say how many strips a hive gets to see what this round wants.</source>
        <extracomment>What to do next in a form</extracomment>
        <translation>Geben Sie an, wie viele Streifen ein Volk bekommt, um zu sehen, was diese Runde braucht.</translation>
    </message>
    <message>
        <source>Say the days until the strips come out, and for how long nothing is harvested.</source>
        <extracomment>What to do next in a form</extracomment>
        <translation>Geben Sie die Tage an, bis die Streifen herauskommen, und wie lange nichts geerntet wird.</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1&lt;/b&gt; hives want &lt;b&gt;%2&lt;/b&gt; strips, to be pulled &lt;b&gt;%3&lt;/b&gt;.</source>
        <extracomment>What follows from a form; rich text; %1 hives, %2 strips, %3 two days</extracomment>
        <translation>&lt;b&gt;%1&lt;/b&gt; Völker brauchen &lt;b&gt;%2&lt;/b&gt; Streifen, Herausnahme &lt;b&gt;%3&lt;/b&gt;.</translation>
    </message>
    <message numerus="yes">
        <source>%n strips short</source>
        <extracomment>A verdict: too few strips in the store</extracomment>
        <translation>
            <numerusform>%n Streifen fehlt</numerusform>
            <numerusform>%n Streifen fehlen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 are ready and in date on that day.</source>
        <extracomment>After a verdict; %1 strips</extracomment>
        <translation>%1 sind an diesem Tag bereit und verwendbar.</translation>
    </message>
    <message>
        <source>enough in the store</source>
        <extracomment>A verdict: enough strips in the store</extracomment>
        <translation>genug im Lager</translation>
    </message>
    <message numerus="yes">
        <source>%n hives have no boxes or frames said: the rule gives them no number yet.</source>
        <extracomment>What to do next: the rule needs brood boxes or frames that were not said</extracomment>
        <translation>
            <numerusform>Bei %n Volk sind Zargen oder Waben nicht angegeben: Die Regel gibt ihm noch keine Zahl.</numerusform>
            <numerusform>Bei %n Völkern sind Zargen oder Waben nicht angegeben: Die Regel gibt ihnen noch keine Zahl.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <extracomment>A time that meets the round; %1 a yard, %2 a flow or a closed time</extracomment>
        <translation>%1: %2.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::RoundsPage</name>
    <message>
        <source>closed</source>
        <extracomment>The state of a round</extracomment>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>planned</source>
        <extracomment>The state of a round: no strip hangs yet</extracomment>
        <translation>geplant</translation>
    </message>
    <message>
        <source>all out</source>
        <translation>alle heraus</translation>
    </message>
    <message>
        <source>Round</source>
        <extracomment>Column: the name of a round</extracomment>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Column</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>Column: the kind of strips</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Yards</source>
        <extracomment>Column</extracomment>
        <translation>Stände</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <extracomment>How many yards of a round have their strips</extracomment>
        <translation>%1 von %2 fertig</translation>
    </message>
    <message>
        <source>Hives</source>
        <extracomment>Column</extracomment>
        <translation>Völker</translation>
    </message>
    <message>
        <source>Planned</source>
        <extracomment>Column: strips by the rule</extracomment>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Hanging</source>
        <extracomment>Column: strips that hang
----------
Column: strips that hang in a yard</extracomment>
        <translation>Hängen</translation>
    </message>
    <message>
        <source>Pull window</source>
        <extracomment>Column: the first and last day to pull</extracomment>
        <translation>Herausnahme</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>Column</extracomment>
        <translation>Status</translation>
    </message>
    <message>
        <source>Yard</source>
        <extracomment>Column</extracomment>
        <translation>Stand</translation>
    </message>
    <message>
        <source>This round</source>
        <extracomment>Column: whether the strips of a round are in</extracomment>
        <translation>Diese Runde</translation>
    </message>
    <message>
        <source>strips in</source>
        <extracomment>The strips of a round are in at this yard</extracomment>
        <translation>Streifen hängen</translation>
    </message>
    <message>
        <source>to be visited</source>
        <translation>steht noch aus</translation>
    </message>
    <message>
        <source>No round yet</source>
        <extracomment>An empty page: its heading</extracomment>
        <translation>Noch keine Runde</translation>
    </message>
    <message>
        <source>A round says which yards get strips, how many for each hive, and when. It tells you at once whether the store has enough, and each yard's visit then stands ready to be entered.</source>
        <extracomment>An empty page: what will stand here</extracomment>
        <translation>Eine Runde sagt, welche Stände Streifen bekommen, wie viele je Volk und wann. Sie zeigt sofort, ob das Lager reicht, und der Gang zu jedem Stand liegt dann zum Eintragen bereit.</translation>
    </message>
    <message>
        <source>Plan a round</source>
        <extracomment>The button of an empty page
----------
Filled button</extracomment>
        <translation>Runde planen</translation>
    </message>
    <message>
        <source>Rounds</source>
        <extracomment>Read aloud: the table of rounds
----------
Heading of a table</extracomment>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Yards of the round</source>
        <extracomment>Read aloud: the table of a round's yards</extracomment>
        <translation>Stände der Runde</translation>
    </message>
    <message>
        <source>Strips in</source>
        <extracomment>Button: hang strips in the chosen yard</extracomment>
        <translation>Streifen hinein</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <extracomment>Button: a sheet of paper to take along</extracomment>
        <translation>Laufzettel</translation>
    </message>
    <message>
        <source>Load-out</source>
        <extracomment>Button: a sheet of paper that says what goes into the car</extracomment>
        <translation>Ladeliste</translation>
    </message>
    <message>
        <source>Change the round</source>
        <extracomment>Quiet button</extracomment>
        <translation>Runde ändern</translation>
    </message>
    <message>
        <source>Close the round</source>
        <extracomment>Quiet button: a round that is over</extracomment>
        <translation>Runde abschließen</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; rounds open</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Runde offen</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Runden offen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strips hang</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen hängt</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen hängen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strips still to hang</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen noch einzuhängen</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen noch einzuhängen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SafeCopiesPage</name>
    <message>
        <source>Safe copies</source>
        <extracomment>Head of a page of Set-up.</extracomment>
        <translation>Sicherungskopien</translation>
    </message>
    <message>
        <source>Make a copy now</source>
        <extracomment>A button.</extracomment>
        <translation>Jetzt kopieren</translation>
    </message>
    <message>
        <source>Copied, read back in full, and good.</source>
        <extracomment>Said after a copy was made.</extracomment>
        <translation>Kopiert, ganz zurückgelesen und in Ordnung.</translation>
    </message>
    <message>
        <source>This is the example: what is entered here is not kept, and no copy is made of it. Your own workbook has its copies here.</source>
        <extracomment>In place of where safe copies are: the worked example is open</extracomment>
        <translation>Dies ist das Beispiel: Was hier eingetragen wird, bleibt nicht erhalten, und es wird keine Kopie davon gemacht. Ihr eigenes Arbeitsbuch hat hier seine Kopien.</translation>
    </message>
    <message>
        <source>%1 is a sound copy, read back in full. Its newest entry is %2, and its seal begins %3: printed beside a register, these show later whether anything was changed.</source>
        <extracomment>After a copy was made for somebody; %1 a file, %2 the number of an entry, %3 the beginning of a seal</extracomment>
        <translation>%1 ist eine heile Kopie, ganz zurückgelesen. Ihr neuester Eintrag ist %2, und ihr Siegel beginnt mit %3: Neben ein Behandlungsbuch gedruckt, zeigt beides später, ob etwas geändert wurde.</translation>
    </message>
    <message>
        <source>Send a copy...</source>
        <extracomment>A button: a copy for an inspector, an adviser, another computer.</extracomment>
        <translation>Kopie weitergeben...</translation>
    </message>
    <message>
        <source>Copies of this workbook</source>
        <extracomment>Head of a card: the list of safe copies</extracomment>
        <translation>Kopien dieses Arbeitsbuchs</translation>
    </message>
    <message>
        <source>What is different</source>
        <extracomment>A button: shows how the chosen copy differs from the workbook.</extracomment>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>Put this copy back...</source>
        <extracomment>A button: the chosen copy takes the workbook's place.</extracomment>
        <translation>Diese Kopie zurückholen...</translation>
    </message>
    <message>
        <source>They lie in %1. Soakbook makes one by itself after every twentieth entry or half an hour, and when the workbook is closed; each is read back in full before it counts. The newest twenty stay, then one of each day, week, month and year.</source>
        <extracomment>Explains safe copies; %1 is a folder. Nothing of computing.</extracomment>
        <translation>Sie liegen in %1. Soakbook macht von selbst eine nach jedem zwanzigsten Eintrag oder jeder halben Stunde und beim Schließen des Arbeitsbuchs; jede wird ganz zurückgelesen, bevor sie zählt. Die neuesten zwanzig bleiben, dann je eine für Tag, Woche, Monat und Jahr.</translation>
    </message>
    <message>
        <source>A copy is being made beside your work: %1 % of it is there.</source>
        <extracomment>The state of the safe copies; %1 in percent</extracomment>
        <translation>Neben Ihrer Arbeit entsteht eine Kopie: %1 % davon sind da.</translation>
    </message>
    <message>
        <source>The copy is being read back in full. You can go on working.</source>
        <extracomment>The state of the safe copies</extracomment>
        <translation>Die Kopie wird ganz zurückgelesen. Sie können weiterarbeiten.</translation>
    </message>
    <message>
        <source>There is no safe copy yet.</source>
        <extracomment>The state of the safe copies</extracomment>
        <translation>Es gibt noch keine Sicherungskopie.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) since the last good copy (%1).</source>
        <extracomment>The state of the safe copies; %1 such as "14 min ago", %n entries were made after it</extracomment>
        <translation>
            <numerusform>%n Eintrag seit der letzten guten Kopie (%1).</numerusform>
            <numerusform>%n Einträge seit der letzten guten Kopie (%1).</numerusform>
        </translation>
    </message>
    <message>
        <source>Everything is in a safe copy: made %1, read back in full, and good.</source>
        <extracomment>The state of the safe copies; %1 such as "14 min ago"</extracomment>
        <translation>Alles ist in einer Sicherungskopie (%1), ganz zurückgelesen und in Ordnung.</translation>
    </message>
    <message>
        <source>Choose a copy to see what is different in it, or to go back to it.</source>
        <extracomment>Beneath the list of safe copies, while none is chosen</extracomment>
        <translation>Wählen Sie eine Kopie, um zu sehen, was darin anders ist, oder um zu ihr zurückzukehren.</translation>
    </message>
    <message>
        <source>It was kept before an older copy was put back: it holds entries that do not stand in the workbook. The button "What is different" shows them.</source>
        <extracomment>Beneath the list, of the chosen copy</extracomment>
        <translation>Sie wurde aufbewahrt, bevor eine ältere Kopie zurückgeholt wurde: Sie enthält Einträge, die im Arbeitsbuch nicht stehen. „Unterschiede“ zeigt sie.</translation>
    </message>
    <message>
        <source>It holds everything that stands in the workbook.</source>
        <extracomment>Beneath the list, of the chosen copy</extracomment>
        <translation>Sie enthält alles, was im Arbeitsbuch steht.</translation>
    </message>
    <message numerus="yes">
        <source>If it is put back, %n entry(ies) made since would no longer stand in the workbook. The workbook of today is kept in this list first.</source>
        <extracomment>Beneath the list, of the chosen copy; %n entries</extracomment>
        <translation>
            <numerusform>Wird sie zurückgeholt, steht %n seitdem gemachter Eintrag nicht mehr im Arbeitsbuch. Das heutige Arbeitsbuch wird vorher in dieser Liste aufbewahrt.</numerusform>
            <numerusform>Wird sie zurückgeholt, stehen %n seitdem gemachte Einträge nicht mehr im Arbeitsbuch. Das heutige Arbeitsbuch wird vorher in dieser Liste aufbewahrt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Workbooks (*.soakbook)</source>
        <extracomment>The kind of files, in a window that asks for a file name.</extracomment>
        <translation>Arbeitsbücher (*.soakbook)</translation>
    </message>
    <message>
        <source>Send a copy</source>
        <extracomment>Title of a window that asks for a file name.</extracomment>
        <translation>Kopie weitergeben</translation>
    </message>
    <message>
        <source>The copy is read through first. Codes given out since stay given out, so that no label is ever printed twice. The workbook is closed and opened again.</source>
        <extracomment>In the form that puts a safe copy back.</extracomment>
        <translation>Die Kopie wird zuerst durchgelesen. Seitdem vergebene Codes bleiben vergeben, damit kein Etikett je zweimal gedruckt wird. Das Arbeitsbuch wird geschlossen und wieder geöffnet.</translation>
    </message>
    <message>
        <source>Put back the copy of %1</source>
        <extracomment>Title of a form; %1 a day and time.</extracomment>
        <translation>Kopie vom %1 zurückholen</translation>
    </message>
    <message>
        <source>Put it back</source>
        <extracomment>A button of a form: the chosen safe copy takes the workbook's place.</extracomment>
        <translation>Zurückholen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SalvageWindow</name>
    <message>
        <source>What is left in %1</source>
        <extracomment>Title of a window; %1 is a file's name.</extracomment>
        <translation>Was in %1 übrig ist</translation>
    </message>
    <message>
        <source>Reading what is left...</source>
        <extracomment>Shown while a damaged file is read.</extracomment>
        <translation>Es wird gelesen, was übrig ist...</translation>
    </message>
    <message>
        <source>Stop</source>
        <extracomment>Button that stops the reading of a damaged file.</extracomment>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Save all as tables...</source>
        <extracomment>Button: writes one file for each table, for a spreadsheet.</extracomment>
        <translation>Alles als Tabellen speichern...</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>Button that closes a window</extracomment>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Nothing was written to the file. The newest safe copy is the better way back: use this list for what it does not hold yet.</source>
        <extracomment>Behind what was read of a damaged workbook; two sentences.</extracomment>
        <translation>In die Datei wurde nichts geschrieben. Die neueste Sicherungskopie ist der bessere Weg zurück: Nehmen Sie diese Liste für das, was dort noch nicht steht.</translation>
    </message>
    <message>
        <source>Kinds of records</source>
        <extracomment>What a screen reader calls a list of kinds of records.</extracomment>
        <translation>Arten von Aufzeichnungen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>A line in a list: a kind of record, and how many of them were read.</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>How sure</source>
        <extracomment>Header of a column: whether a record agrees with the history.</extracomment>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>Where to save the tables</source>
        <extracomment>Title of the window that asks for a folder.</extracomment>
        <translation>Wohin mit den Tabellen</translation>
    </message>
    <message numerus="yes">
        <source>%n tables were saved.</source>
        <extracomment>Files for a spreadsheet were written; %n is how many.</extracomment>
        <translation>
            <numerusform>%n Tabelle wurde gespeichert.</numerusform>
            <numerusform>%n Tabellen wurden gespeichert.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SecondPlaceCard</name>
    <message>
        <source>A second place</source>
        <extracomment>Head of a card: a second folder for safe copies</extracomment>
        <translation>Ein zweiter Ort</translation>
    </message>
    <message>
        <source>Whatever happens to this computer, theft or fire, happens to the copies on it, too. Choose a folder on a stick or on another computer: each good copy is put there as well, and read back.</source>
        <extracomment>Explains the second place for safe copies</extracomment>
        <translation>Was diesem Rechner zustößt, trifft auch die Kopien darauf. Wählen Sie einen Ordner auf einem Stick oder einem anderen Rechner: Jede gute Kopie kommt auch dorthin und wird zurückgelesen.</translation>
    </message>
    <message>
        <source>I want none</source>
        <extracomment>A button: no second place for safe copies is wanted</extracomment>
        <translation>Ich will keinen</translation>
    </message>
    <message>
        <source>Choose another folder...</source>
        <extracomment>A button; where a second place was chosen already</extracomment>
        <translation>Anderen Ordner wählen...</translation>
    </message>
    <message>
        <source>Choose a folder...</source>
        <extracomment>A button; where no second place was chosen yet</extracomment>
        <translation>Ordner wählen...</translation>
    </message>
    <message>
        <source>Not chosen yet: all safe copies lie on this computer.</source>
        <extracomment>The state of the second place</extracomment>
        <translation>Noch nicht gewählt: Alle Sicherungskopien liegen auf diesem Rechner.</translation>
    </message>
    <message>
        <source>You want none: all safe copies lie on this computer. Carry one elsewhere now and then.</source>
        <extracomment>The state of the second place</extracomment>
        <translation>Sie wollen keinen: Alle Sicherungskopien liegen auf diesem Rechner. Bringen Sie ab und zu eine anderswohin.</translation>
    </message>
    <message>
        <source>%1: a copy is being put there, %2 % done.</source>
        <extracomment>The state of the second place; %1 a folder, %2 how much is done, in percent</extracomment>
        <translation>%1: Eine Kopie kommt gerade dorthin, %2 % sind fertig.</translation>
    </message>
    <message>
        <source>%1: nothing is there yet.</source>
        <extracomment>The state of the second place; %1 a folder</extracomment>
        <translation>%1: Dort liegt noch nichts.</translation>
    </message>
    <message>
        <source>%1: holds everything up to entry %2. It was last reached on %3.</source>
        <extracomment>The state of the second place; %1 a folder, %2 the number of an entry, %3 a day and time</extracomment>
        <translation>%1: enthält alles bis Eintrag %2. Zuletzt erreicht am %3.</translation>
    </message>
    <message>
        <source>A second place for safe copies</source>
        <extracomment>Title of a window that asks for a folder</extracomment>
        <translation>Ein zweiter Ort für Sicherungskopien</translation>
    </message>
    <message>
        <source>%1 is not there. Choose a folder that is.</source>
        <extracomment>In answer to the choice of a folder; %1 is the folder</extracomment>
        <translation>%1 gibt es nicht. Wählen Sie einen Ordner, den es gibt.</translation>
    </message>
    <message>
        <source>That is where the safe copies lie already. Choose a folder on another disk.</source>
        <extracomment>In answer to the choice of a folder</extracomment>
        <translation>Dort liegen die Sicherungskopien schon. Wählen Sie einen Ordner auf einem anderen Datenträger.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SetupPlace</name>
    <message>
        <source>Pages of Set-up</source>
        <extracomment>Name of the list of Set-up's pages, read aloud.</extracomment>
        <translation>Seiten der Einrichtung</translation>
    </message>
    <message>
        <source>Operation</source>
        <extracomment>A page of Set-up: name and address of the outfit.</extracomment>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>name and address on labels</source>
        <translation>Name und Anschrift auf Etiketten</translation>
    </message>
    <message>
        <source>People</source>
        <extracomment>A page of Set-up.</extracomment>
        <translation>Personen</translation>
    </message>
    <message>
        <source>who makes entries</source>
        <translation>wer Einträge macht</translation>
    </message>
    <message>
        <source>Strip kinds</source>
        <extracomment>A page of Set-up.</extracomment>
        <translation>Streifenarten</translation>
    </message>
    <message>
        <source>weights, strips a bag, dose</source>
        <translation>Gewichte, Streifen je Beutel, Menge je Volk</translation>
    </message>
    <message>
        <source>Tanks and bins</source>
        <extracomment>A page of Set-up.</extracomment>
        <translation>Tanks und Wannen</translation>
    </message>
    <message>
        <source>what they hold</source>
        <translation>was sie fassen</translation>
    </message>
    <message>
        <source>Working figures</source>
        <extracomment>A page of Set-up: figures and limits the user works by.</extracomment>
        <translation>Arbeitswerte</translation>
    </message>
    <message>
        <source>strength, limits, times</source>
        <translation>Gehalt, Grenzen, Zeiten</translation>
    </message>
    <message>
        <source>Reading and writing</source>
        <extracomment>A page of Set-up: units, language, look.</extracomment>
        <translation>Lesen und Schreiben</translation>
    </message>
    <message>
        <source>units, language, text size</source>
        <translation>Einheiten, Sprache, Schriftgröße</translation>
    </message>
    <message>
        <source>Safe copies</source>
        <extracomment>A page of Set-up.</extracomment>
        <translation>Sicherungskopien</translation>
    </message>
    <message>
        <source>where they are kept</source>
        <translation>wo sie liegen</translation>
    </message>
    <message>
        <source>Workbooks</source>
        <extracomment>A page of Set-up: open or make another workbook.</extracomment>
        <translation>Arbeitsbücher</translation>
    </message>
    <message>
        <source>open or make another</source>
        <translation>ein anderes öffnen oder anlegen</translation>
    </message>
    <message>
        <source>Set-up</source>
        <extracomment>A place in the navigation: how the user works.</extracomment>
        <translation>Einrichtung</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::ShedPage</name>
    <message>
        <source>Batches</source>
        <extracomment>Read aloud: the name of a list
----------
Title of a list</extracomment>
        <translation>Ansätze</translation>
    </message>
    <message>
        <source>New batch</source>
        <extracomment>Button that opens the form for a new batch
----------
Title of the page while a batch is planned</extracomment>
        <translation>Neuer Ansatz</translation>
    </message>
    <message>
        <source>No batch yet</source>
        <extracomment>Title of an empty page</extracomment>
        <translation>Noch kein Ansatz</translation>
    </message>
    <message>
        <source>Each batch will stand here as its course: mixed, warmed until it is clear, soaked, weighed, bagged, and what was left poured into pails. The amounts are worked out for you, and every step can be entered later with its true time.</source>
        <translation>Jeder Ansatz steht hier mit seinem Verlauf: gemischt, erwärmt, bis er klar ist, getränkt, gewogen, in Beutel gefüllt, und die Reste in Eimer abgefüllt. Die Mengen werden für Sie ausgerechnet, und jeder Schritt lässt sich später mit seiner wahren Zeit eintragen.</translation>
    </message>
    <message>
        <source>Start the first batch</source>
        <extracomment>Button that opens the form for a new batch</extracomment>
        <translation>Ersten Ansatz beginnen</translation>
    </message>
    <message>
        <source>Mixing sheet</source>
        <extracomment>Button in the head of the page: prints the planned amounts with room to write</extracomment>
        <translation>Mischzettel</translation>
    </message>
    <message>
        <source>Batch sheet</source>
        <extracomment>Button in the head of the page: prints all that was entered for a batch</extracomment>
        <translation>Ansatzblatt</translation>
    </message>
    <message>
        <source>Shed</source>
        <extracomment>A place of the house: where batches are made</extracomment>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <extracomment>Title of the page; %1 the code of a batch</extracomment>
        <translation>Ansatz %1</translation>
    </message>
    <message>
        <source>History</source>
        <extracomment>Button in the head of the page: what was entered for a batch and changed since, by whom and why</extracomment>
        <translation>Verlauf</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SheetChoice</name>
    <message>
        <source>Roll</source>
        <extracomment>kind of label paper, in a list</extracomment>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Another sheet</source>
        <extracomment>kind of label paper, in a list: all its dimensions are entered</extracomment>
        <translation>Anderer Bogen</translation>
    </message>
    <message>
        <source>Labels</source>
        <extracomment>field: which label sheet</extracomment>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Label width</source>
        <extracomment>field: width of a label</extracomment>
        <translation>Etikettbreite</translation>
    </message>
    <message>
        <source>Label height</source>
        <extracomment>field: height of a label</extracomment>
        <translation>Etiketthöhe</translation>
    </message>
    <message>
        <source>Sheet width</source>
        <extracomment>field: width of the sheet</extracomment>
        <translation>Bogenbreite</translation>
    </message>
    <message>
        <source>Sheet height</source>
        <extracomment>field: height of the sheet</extracomment>
        <translation>Bogenhöhe</translation>
    </message>
    <message>
        <source>Beside each other</source>
        <extracomment>field: how many labels stand beside each other</extracomment>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Under each other</source>
        <extracomment>field: how many labels stand under each other</extracomment>
        <translation>Untereinander</translation>
    </message>
    <message>
        <source>Left margin</source>
        <extracomment>field: from the left edge of the sheet to the first label</extracomment>
        <translation>Rand links</translation>
    </message>
    <message>
        <source>Top margin</source>
        <extracomment>field: from the upper edge of the sheet to the first label</extracomment>
        <translation>Rand oben</translation>
    </message>
    <message>
        <source>Step across</source>
        <extracomment>field: from the left edge of a label to that of the next</extracomment>
        <translation>Schritt quer</translation>
    </message>
    <message>
        <source>Step down</source>
        <extracomment>field: from the upper edge of a label to that of the next</extracomment>
        <translation>Schritt nach unten</translation>
    </message>
    <message>
        <source>Offset right</source>
        <extracomment>field: how far the printer is off, to the right</extracomment>
        <translation>Versatz rechts</translation>
    </message>
    <message>
        <source>Offset down</source>
        <extracomment>field: how far the printer is off, downward</extracomment>
        <translation>Versatz unten</translation>
    </message>
    <message>
        <source>%1 dots an inch</source>
        <extracomment>how fine a label printer is; %1 is a number of dots</extracomment>
        <translation>%1 Punkte je Zoll</translation>
    </message>
    <message>
        <source>Printer</source>
        <extracomment>field: how fine the label printer is</extracomment>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>mm</source>
        <extracomment>unit behind a length in a field</extracomment>
        <translation>mm</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SheetDialog</name>
    <message>
        <source>Print…</source>
        <extracomment>button: to a printer</extracomment>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <extracomment>button: to a file</extracomment>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Close</source>
        <extracomment>button: leaves the preview</extracomment>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SheetPicture</name>
    <message>
        <source>The first label to print on</source>
        <extracomment>what a screen reader calls the small picture of a sheet of labels</extracomment>
        <translation>Das erste zu bedruckende Etikett</translation>
    </message>
    <message>
        <source>Label %1 of %2</source>
        <extracomment>what a screen reader says of the small picture of a sheet of labels</extracomment>
        <translation>Etikett %1 von %2</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SoakForm</name>
    <message>
        <source>Bins</source>
        <extracomment>Label of a field</extracomment>
        <translation>Wannen</translation>
    </message>
    <message>
        <source>No bin is free. Take strips out of one, or add a bin in Set-up.</source>
        <extracomment>Under the bins of a soak, while all are taken</extracomment>
        <translation>Keine Wanne ist frei. Nehmen Sie Streifen aus einer heraus oder fügen Sie in der Einrichtung eine hinzu.</translation>
    </message>
    <message>
        <source>Strips packed on edge, flooded to a finger below the rim, weighed down under the liquid.</source>
        <translation>Streifen hochkant gepackt, bis einen Fingerbreit unter den Rand geflutet, unter die Flüssigkeit beschwert.</translation>
    </message>
    <message>
        <source>Dry strips from</source>
        <extracomment>Label of a field</extracomment>
        <translation>Trockene Streifen aus</translation>
    </message>
    <message>
        <source>Room</source>
        <extracomment>Label of a field</extracomment>
        <translation>Raum</translation>
    </message>
    <message>
        <source>A cold room soaks slowly. May stay empty.</source>
        <extracomment>Help under the temperature of the room</extracomment>
        <translation>In einem kalten Raum geht das Tränken langsam. Darf leer bleiben.</translation>
    </message>
    <message>
        <source>Flooded when</source>
        <translation>Geflutet am</translation>
    </message>
    <message>
        <source>Start the soak</source>
        <extracomment>Button that begins a soak</extracomment>
        <translation>Tränken beginnen</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n strips&lt;/b&gt; will hold &lt;b&gt;%1&lt;/b&gt; of the %2 there is.</source>
        <extracomment>What a soak takes; %n strips, %1 what they will hold, %2 the liquid there is</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n Streifen&lt;/b&gt; wird &lt;b&gt;%1&lt;/b&gt; der vorhandenen %2 aufnehmen.</numerusform>
            <numerusform>&lt;b&gt;%n Streifen&lt;/b&gt; werden &lt;b&gt;%1&lt;/b&gt; der vorhandenen %2 aufnehmen.</numerusform>
        </translation>
    </message>
    <message>
        <source>At most %1 stays for pails.</source>
        <extracomment>%1 the most liquid that can be left after a soak</extracomment>
        <translation>Höchstens %1 bleiben für Eimer.</translation>
    </message>
    <message>
        <source>The bins are flooded with %1.</source>
        <extracomment>%1 the liquid that the bins take</extracomment>
        <translation>Die Wannen werden mit %1 geflutet.</translation>
    </message>
    <message>
        <source>A cold room</source>
        <extracomment>The room is colder than the figure of Set-up</extracomment>
        <translation>Ein kalter Raum</translation>
    </message>
    <message>
        <source>the strips will take longer.</source>
        <translation>die Streifen brauchen länger.</translation>
    </message>
    <message>
        <source>strips into bins</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>Streifen in die Wannen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SoakStep</name>
    <message>
        <source>Bin</source>
        <extracomment>Header of a column</extracomment>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>Header of a column: strips in a bin</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Flooded</source>
        <extracomment>Header of a column: when the liquid was let in</extracomment>
        <translation>Geflutet</translation>
    </message>
    <message>
        <source>Taken out</source>
        <extracomment>Header of a column: when the strips were taken out</extracomment>
        <translation>Herausgenommen</translation>
    </message>
    <message>
        <source>soaks, %1 in</source>
        <extracomment>The strips of a bin are not taken out yet; %1 how long they have soaked</extracomment>
        <translation>wird getränkt, seit %1</translation>
    </message>
    <message>
        <source>The bins of this batch will stand here: how many strips, since when, and how long they have soaked. A bin that is flooded later gets its own line.</source>
        <extracomment>Stands where the bins of a batch will be listed</extracomment>
        <translation>Hier stehen dann die Wannen dieses Ansatzes: wie viele Streifen, seit wann und wie lange sie schon tränken. Eine später geflutete Wanne bekommt ihre eigene Zeile.</translation>
    </message>
    <message>
        <source>Bins</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Wannen</translation>
    </message>
    <message>
        <source>Enter on a row puts its strips or its start right, with a reason.</source>
        <extracomment>Under a table whose rows can be put right</extracomment>
        <translation>Mit der Eingabetaste auf einer Zeile berichtigen Sie ihre Streifen oder ihren Beginn, mit Grund.</translation>
    </message>
    <message>
        <source>Flood another bin</source>
        <extracomment>Title of a form: strips into another bin of a batch that soaks already</extracomment>
        <translation>Weitere Wanne fluten</translation>
    </message>
    <message>
        <source>Correct the soak in %1</source>
        <extracomment>Title of a dialog; %1 the name of a bin</extracomment>
        <translation>Tränken in %1 berichtigen</translation>
    </message>
    <message numerus="yes">
        <source>%n strips stand since %1.</source>
        <extracomment>What an entry says now; %n strips, %1 day and time</extracomment>
        <translation>
            <numerusform>Eingetragen: %n Streifen, seit %1.</numerusform>
            <numerusform>Eingetragen: %n Streifen, seit %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Strips in the bin</source>
        <translation>Streifen in der Wanne</translation>
    </message>
    <message>
        <source>Flooded when</source>
        <extracomment>Label of a field</extracomment>
        <translation>Geflutet am</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StatusLine</name>
    <message>
        <source>Entries by: nobody chosen</source>
        <extracomment>In the status line; %1 a person's name</extracomment>
        <translation>Einträge von: niemand gewählt</translation>
    </message>
    <message>
        <source>Entries by: %1</source>
        <translation>Einträge von: %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::Step</name>
    <message>
        <source>Step %1, %2. %3</source>
        <extracomment>Read aloud: the steps of a batch; %1 its number, %2 its name, %3 what stands in it</extracomment>
        <translation>Schritt %1, %2. %3</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StirForm</name>
    <message>
        <source>Stirred for</source>
        <extracomment>A unit behind a number</extracomment>
        <translation>Gerührt</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Clear, and no crystal to be seen?</source>
        <translation>Klar, und kein Kristall zu sehen?</translation>
    </message>
    <message>
        <source>Outlet drawn off and poured back?</source>
        <translation>Auslauf abgezogen und zurückgegossen?</translation>
    </message>
    <message>
        <source>Undissolved acid hides there.</source>
        <extracomment>Help under a question about the tank's outlet</extracomment>
        <translation>Dort versteckt sich ungelöste Säure.</translation>
    </message>
    <message>
        <source>Stirred when</source>
        <translation>Gerührt am</translation>
    </message>
    <message>
        <source>Write it down</source>
        <extracomment>Button that writes a stir down</extracomment>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Clear</source>
        <extracomment>The liquid is clear and the outlet was poured back</extracomment>
        <translation>Klar</translation>
    </message>
    <message>
        <source>the liquid is ready for the strips.</source>
        <translation>die Flüssigkeit ist bereit für die Streifen.</translation>
    </message>
    <message>
        <source>Not clear yet</source>
        <extracomment>The liquid is not clear yet</extracomment>
        <translation>Noch nicht klar</translation>
    </message>
    <message>
        <source>keep it warm, and stir again from below.</source>
        <translation>warm halten und noch einmal von unten rühren.</translation>
    </message>
    <message>
        <source>stir</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>rühren</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StirsTable</name>
    <message>
        <source>yes</source>
        <extracomment>An answer in a table</extracomment>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>Header of a column: day and time</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Stirred, min</source>
        <extracomment>Header of a column: how long it was stirred</extracomment>
        <translation>Gerührt, min</translation>
    </message>
    <message>
        <source>Clear</source>
        <extracomment>Header of a column: whether the liquid was clear</extracomment>
        <translation>Klar</translation>
    </message>
    <message>
        <source>Outlet poured back</source>
        <extracomment>Header of a column: whether the liquid from the outlet was poured back</extracomment>
        <translation>Auslauf zurückgegossen</translation>
    </message>
    <message>
        <source>Stirs</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Rührgänge</translation>
    </message>
    <message>
        <source>Make a stir void</source>
        <extracomment>Title of a dialog</extracomment>
        <translation>Rührgang für ungültig erklären</translation>
    </message>
    <message>
        <source>The stir of %1 does not count any more. It stays in the history; enter it again if it was written wrongly.</source>
        <extracomment>What becomes of an entry; %1 its day and time</extracomment>
        <translation>Der Rührgang (%1) zählt nicht mehr. Er bleibt im Verlauf; tragen Sie ihn neu ein, wenn er falsch aufgeschrieben war.</translation>
    </message>
    <message>
        <source>Make it void</source>
        <extracomment>Button of a dialog: the entry does not count any more</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StockBandChart</name>
    <message>
        <source>The year ahead</source>
        <extracomment>name of a chart</extracomment>
        <translation>Das kommende Jahr</translation>
    </message>
    <message>
        <source>The year ahead stands here once there are bags on the shelf or a round is planned: what is in date, and what is wanted.</source>
        <extracomment>instead of the band of the year ahead</extracomment>
        <translation>Das kommende Jahr steht hier, sobald Beutel im Regal liegen oder eine Runde geplant ist: was verwendbar ist und was gebraucht wird.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n strips in date</source>
        <extracomment>one month in words; %1 is a month with its year</extracomment>
        <translation>
            <numerusform>%1: %n Streifen verwendbar</numerusform>
            <numerusform>%1: %n Streifen verwendbar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reach their limit</source>
        <extracomment>goes on from one month in words</extracomment>
        <translation>
            <numerusform>%n läuft ab</numerusform>
            <numerusform>%n laufen ab</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n</source>
        <extracomment>goes on from one month in words; %1 is a round's name</extracomment>
        <translation>
            <numerusform>%1 braucht %n</numerusform>
            <numerusform>%1 braucht %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n short</source>
        <extracomment>goes on from what a round needs</extracomment>
        <translation>
            <numerusform>%n fehlt</numerusform>
            <numerusform>%n fehlen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 needs %2</source>
        <extracomment>beside a bar; %1 is a round's name, %2 a number of strips</extracomment>
        <translation>%1 braucht %2</translation>
    </message>
    <message>
        <source>%1 short</source>
        <extracomment>beside a bar; %1 is a number of strips</extracomment>
        <translation>%1 fehlen</translation>
    </message>
    <message>
        <source>%1
to limit</source>
        <extracomment>within a bar; %1 is a number of strips that reach their limit in that month</extracomment>
        <translation>%1
laufen ab</translation>
    </message>
    <message>
        <source>Month</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Strips in date</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Verwendbare Streifen</translation>
    </message>
    <message>
        <source>Reach their limit</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Laufen ab</translation>
    </message>
    <message>
        <source>Rounds</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Wanted</source>
        <extracomment>column of the table behind a chart: strips that rounds want</extracomment>
        <translation>Gebraucht</translation>
    </message>
    <message>
        <source>Short</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Fehlen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StockByMonthChart</name>
    <message>
        <source>Strips by month of their limit</source>
        <extracomment>name of a chart</extracomment>
        <translation>Streifen nach Monat ihrer Frist</translation>
    </message>
    <message>
        <source>Once bags are sealed, their strips stand here by the month in which they must be used.</source>
        <extracomment>instead of the chart of stock</extracomment>
        <translation>Sobald Beutel verschlossen sind, stehen ihre Streifen hier nach dem Monat, bis zu dem sie verwendet sein müssen.</translation>
    </message>
    <message>
        <source>past the limit</source>
        <extracomment>how the strips of a month stand</extracomment>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>near the limit</source>
        <extracomment>how the strips of a month stand</extracomment>
        <translation>kurz vor Ablauf</translation>
    </message>
    <message>
        <source>in date</source>
        <extracomment>how the strips of a month stand</extracomment>
        <translation>verwendbar</translation>
    </message>
    <message>
        <source>past</source>
        <extracomment>under a bar of the chart: how its strips stand</extracomment>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>near</source>
        <extracomment>under a bar of the chart: how its strips stand</extracomment>
        <translation>bald</translation>
    </message>
    <message>
        <source>%1: no strips</source>
        <extracomment>one month in words; %1 is a month with its year</extracomment>
        <translation>%1: keine Streifen</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n strips, %2</source>
        <extracomment>one bar in words; %1 is a month with its year, %2 "past the limit", "near the limit" or "in date"</extracomment>
        <translation>
            <numerusform>%1: %n Streifen, %2</numerusform>
            <numerusform>%1: %n Streifen, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Limit in</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Frist im</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Bags</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>column of the table behind a chart: in date, near the limit, past the limit</extracomment>
        <translation>Status</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StockCard</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) ready</source>
        <extracomment>In the sentence over the chart of stock; %n strips may be used</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen bereit</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen bereit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n resting</source>
        <extracomment>In the sentence over the chart of stock; %n strips still rest</extracomment>
        <translation>
            <numerusform>%n ruht</numerusform>
            <numerusform>%n ruhen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n near the limit</source>
        <extracomment>In the sentence over the chart of stock; %n strips are near their use-by day</extracomment>
        <translation>
            <numerusform>%n kurz vor Ablauf</numerusform>
            <numerusform>%n kurz vor Ablauf</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n past the limit</source>
        <extracomment>In the sentence over the chart of stock; %n strips are past their use-by day</extracomment>
        <translation>
            <numerusform>%n abgelaufen</numerusform>
            <numerusform>%n abgelaufen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <extracomment>What planned rounds need in one month; %1 a number of strips, %2 a month</extracomment>
        <translation>%1 im %2</translation>
    </message>
    <message>
        <source>By the month of the limit. No planned round wants strips.</source>
        <extracomment>Under the chart of stock, while no round is planned</extracomment>
        <translation>Nach Monat der Frist. Keine geplante Runde braucht Streifen.</translation>
    </message>
    <message>
        <source>By the month of the limit. Planned rounds want %1.</source>
        <extracomment>Under the chart of stock; %1 such as "104 in Sep, 230 in Mar"</extracomment>
        <translation>Nach Monat der Frist. Geplante Runden brauchen %1.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StorePage</name>
    <message>
        <source>Pages of the Store</source>
        <extracomment>Read aloud: the name of a list</extracomment>
        <translation>Seiten des Lagers</translation>
    </message>
    <message>
        <source>Store</source>
        <extracomment>A place of the house: bags, pails and deliveries</extracomment>
        <translation>Lager</translation>
    </message>
    <message>
        <source>none</source>
        <extracomment>In a list, under "Bags"; %n bags with strips in them
----------
In a list, under "Pails"; %1 their mass together; %n pails
----------
In a list, under "Deliveries"; %n of them are not used up</extracomment>
        <translation>keine</translation>
    </message>
    <message numerus="yes">
        <source>%n with strips</source>
        <translation>
            <numerusform>%n mit Streifen</numerusform>
            <numerusform>%n mit Streifen</numerusform>
        </translation>
    </message>
    <message>
        <source>near</source>
        <extracomment>In a list, beside "Bags": some are near their limit</extracomment>
        <translation>läuft ab</translation>
    </message>
    <message numerus="yes">
        <source>%n, together %1</source>
        <translation>
            <numerusform>%n, zusammen %1</numerusform>
            <numerusform>%n, zusammen %1</numerusform>
        </translation>
    </message>
    <message>
        <source>waiting</source>
        <extracomment>In a list, beside "Pails": some wait longer than allowed</extracomment>
        <translation>wartet</translation>
    </message>
    <message numerus="yes">
        <source>%n in use</source>
        <translation>
            <numerusform>%n in Gebrauch</numerusform>
            <numerusform>%n in Gebrauch</numerusform>
        </translation>
    </message>
    <message>
        <source>past date</source>
        <extracomment>In a list, beside "Deliveries": some are past their best-before day</extracomment>
        <translation>abgelaufen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StripKindsPage</name>
    <message>
        <source>Strip kinds</source>
        <extracomment>Head, explanation and button of a page of Set-up.</extracomment>
        <translation>Streifenarten</translation>
    </message>
    <message>
        <source>What a strip weighs dry and soaked, how many make a bag, and how many a hive gets. Batches and rounds copy these when they are made.</source>
        <translation>Was ein Streifen trocken und getränkt wiegt, wie viele in einen Beutel kommen und wie viele ein Volk bekommt. Ansätze und Runden übernehmen dies, wenn sie angelegt werden.</translation>
    </message>
    <message>
        <source>Add a strip kind</source>
        <extracomment>A button.</extracomment>
        <translation>Streifenart hinzufügen</translation>
    </message>
    <message>
        <source>Kind</source>
        <extracomment>A table column.</extracomment>
        <translation>Art</translation>
    </message>
    <message>
        <source>Dry</source>
        <extracomment>A table column: weight of a dry strip.</extracomment>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>Soaked</source>
        <extracomment>A table column: weight of a soaked strip.</extracomment>
        <translation>Getränkt</translation>
    </message>
    <message>
        <source>Off by</source>
        <extracomment>A table column: by how much a soaked strip may be off.</extracomment>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>A bag</source>
        <extracomment>A table column: strips in a bag.</extracomment>
        <translation>Je Beutel</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>A table column: whether the kind is still used.</extracomment>
        <translation>Status</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <source>put away</source>
        <translation>abgelegt</translation>
    </message>
    <message>
        <source>No strip kind yet. A batch needs one.</source>
        <extracomment>Stands in an empty table.</extracomment>
        <translation>Noch keine Streifenart. Ein Ansatz braucht eine.</translation>
    </message>
    <message>
        <source>Strip kind</source>
        <extracomment>Title of a form.</extracomment>
        <translation>Streifenart</translation>
    </message>
    <message>
        <source>In use</source>
        <extracomment>A field's label, answered with yes or no; and its sentence of help.</extracomment>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>A kind put away stays in the records and is no longer offered.</source>
        <translation>Eine abgelegte Art bleibt in den Aufzeichnungen und wird nicht mehr angeboten.</translation>
    </message>
    <message>
        <source>Save</source>
        <extracomment>A button that stores the form.</extracomment>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StripWeightChart</name>
    <message>
        <source>Weight of one strip</source>
        <extracomment>name of a chart</extracomment>
        <translation>Gewicht eines Streifens</translation>
    </message>
    <message>
        <source>The weight of the strips stands here, with the band that is wanted, once the first sample was weighed.</source>
        <extracomment>instead of the chart of strip weights</extracomment>
        <translation>Das Gewicht der Streifen steht hier, mit dem gewünschten Bereich, sobald die erste Probe gewogen ist.</translation>
    </message>
    <message>
        <source>%1, %2, %3 h in: %4 a strip</source>
        <extracomment>one weighing in words; %1 is a bin, %2 day and time, %3 a number of hours, %4 a mass</extracomment>
        <translation>%1, %2, nach %3 h: %4 je Streifen</translation>
    </message>
    <message numerus="yes">
        <source>%n weighed</source>
        <extracomment>goes on from one weighing in words</extracomment>
        <translation>
            <numerusform>%n gewogen</numerusform>
            <numerusform>%n gewogen</numerusform>
        </translation>
    </message>
    <message>
        <source>h</source>
        <extracomment>unit on an axis: hours</extracomment>
        <translation>h</translation>
    </message>
    <message>
        <source>wanted</source>
        <extracomment>names the band of weights that is wanted</extracomment>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>dry %1</source>
        <extracomment>names the first point of the chart; %1 is a mass</extracomment>
        <translation>trocken %1</translation>
    </message>
    <message>
        <source>Dry: %1 a strip</source>
        <extracomment>one point of the chart in words; %1 is a mass</extracomment>
        <translation>Trocken: %1 je Streifen</translation>
    </message>
    <message>
        <source>Bin</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Hours in</source>
        <extracomment>column of the table behind a chart: hours since the soak began</extracomment>
        <translation>Nach Stunden</translation>
    </message>
    <message>
        <source>One strip, %1</source>
        <extracomment>column of the table behind a chart; %1 is a unit</extracomment>
        <translation>Ein Streifen, %1</translation>
    </message>
    <message>
        <source>Strips weighed</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Gewogene Streifen</translation>
    </message>
    <message>
        <source>Verdict</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>%1 reaches the weight wanted %2</source>
        <extracomment>one point of the chart in words; %1 is a bin, %2 an hour with how sure it is</extracomment>
        <translation>%1 erreicht das gewünschte Gewicht %2</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::TankTemperatureChart</name>
    <message>
        <source>Temperature of the tank</source>
        <extracomment>name of a chart</extracomment>
        <translation>Temperatur des Tanks</translation>
    </message>
    <message>
        <source>The tank's temperature stands here once the probe was read for the first time.</source>
        <extracomment>instead of the chart of the tank's temperature</extracomment>
        <translation>Die Temperatur des Tanks steht hier, sobald der Fühler zum ersten Mal abgelesen ist.</translation>
    </message>
    <message>
        <source>probe %1</source>
        <extracomment>in the sentence on one reading; %1 is a temperature</extracomment>
        <translation>Fühler %1</translation>
    </message>
    <message>
        <source>dial %1</source>
        <extracomment>in the sentence on one reading; %1 is a temperature</extracomment>
        <translation>Regler %1</translation>
    </message>
    <message>
        <source>over the ceiling of %1</source>
        <extracomment>in the sentence on one reading; %1 is a temperature</extracomment>
        <translation>über der Höchsttemperatur von %1</translation>
    </message>
    <message>
        <source>stirred</source>
        <extracomment>in the sentence on one reading
----------
in the table behind a chart</extracomment>
        <translation>gerührt</translation>
    </message>
    <message>
        <source>h</source>
        <extracomment>unit on an axis: hours</extracomment>
        <translation>h</translation>
    </message>
    <message>
        <source>ceiling %1</source>
        <extracomment>names a line in the chart; %1 is a temperature</extracomment>
        <translation>Höchsttemperatur %1</translation>
    </message>
    <message>
        <source>dial</source>
        <extracomment>names a line in the chart: what the thermostat's dial is set to</extracomment>
        <translation>Regler</translation>
    </message>
    <message>
        <source>probe</source>
        <extracomment>names a line in the chart: the thermometer in the liquid</extracomment>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>%1, over the ceiling</source>
        <extracomment>at the highest point of the chart; %1 is a temperature over the ceiling</extracomment>
        <translation>%1, über der Höchsttemperatur</translation>
    </message>
    <message>
        <source>When</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Probe, %1</source>
        <extracomment>column of the table behind a chart; %1 is a unit</extracomment>
        <translation>Fühler, %1</translation>
    </message>
    <message>
        <source>Dial, %1</source>
        <extracomment>column of the table behind a chart; %1 is a unit</extracomment>
        <translation>Regler, %1</translation>
    </message>
    <message>
        <source>Note</source>
        <extracomment>column of the table behind a chart</extracomment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>over the ceiling</source>
        <extracomment>in the table behind a chart</extracomment>
        <translation>über der Höchsttemperatur</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::VesselsPage</name>
    <message>
        <source>Tanks and bins</source>
        <extracomment>Head, explanation and button of a page of Set-up.</extracomment>
        <translation>Tanks und Wannen</translation>
    </message>
    <message>
        <source>Tanks warm the liquid; strips stand packed in bins. Acid eats galvanised steel, aluminium and bare iron: see the acid's safety data sheet for what a vessel may be made of.</source>
        <translation>Tanks erwärmen die Flüssigkeit; Streifen stehen gepackt in Wannen. Säure greift verzinkten Stahl, Aluminium und blankes Eisen an: Woraus ein Gefäß sein darf, steht im Sicherheitsdatenblatt der Säure.</translation>
    </message>
    <message>
        <source>Add a bin</source>
        <extracomment>A button.</extracomment>
        <translation>Wanne hinzufügen</translation>
    </message>
    <message>
        <source>Name</source>
        <extracomment>A table column.</extracomment>
        <translation>Name</translation>
    </message>
    <message>
        <source>Kind</source>
        <extracomment>Table column and its words: what kind of vessel it is.</extracomment>
        <translation>Art</translation>
    </message>
    <message>
        <source>tank</source>
        <translation>Tank</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>Holds</source>
        <extracomment>A table column: what a vessel holds.</extracomment>
        <translation>Fasst</translation>
    </message>
    <message>
        <source>%1 strips</source>
        <extracomment>%1 is a number of strips.</extracomment>
        <translation>%1 Streifen</translation>
    </message>
    <message>
        <source>Flooded by</source>
        <extracomment>A table column: liquid that floods a bin; and the word where it was not measured.</extracomment>
        <translation>Flutmenge</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>State</source>
        <extracomment>A table column: whether the vessel is still used.</extracomment>
        <translation>Status</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>in Gebrauch</translation>
    </message>
    <message>
        <source>put away</source>
        <translation>abgelegt</translation>
    </message>
    <message>
        <source>No tank and no bin yet. A batch needs one of each.</source>
        <extracomment>Stands in an empty table.</extracomment>
        <translation>Noch kein Tank und keine Wanne. Ein Ansatz braucht je eines davon.</translation>
    </message>
    <message>
        <source>Add a tank</source>
        <extracomment>A button.</extracomment>
        <translation>Tank hinzufügen</translation>
    </message>
    <message>
        <source>Tank</source>
        <extracomment>Title of a form.</extracomment>
        <translation>Tank</translation>
    </message>
    <message>
        <source>Bin</source>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>In use</source>
        <extracomment>A field's label, answered with yes or no; and its sentence of help.</extracomment>
        <translation>In Gebrauch</translation>
    </message>
    <message>
        <source>A vessel put away stays in the records and is no longer offered.</source>
        <translation>Ein abgelegtes Gefäß bleibt in den Aufzeichnungen und wird nicht mehr angeboten.</translation>
    </message>
    <message>
        <source>Save</source>
        <extracomment>A button that stores the form.</extracomment>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::VisitPage</name>
    <message>
        <source>Hives of the visit</source>
        <extracomment>The filled button of a visit</extracomment>
        <translation>Völker des Gangs</translation>
    </message>
    <message>
        <source>Enter the visit</source>
        <translation>Gang eintragen</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <extracomment>A button that prints a sheet to take along</extracomment>
        <translation>Laufzettel</translation>
    </message>
    <message>
        <source>Round</source>
        <extracomment>Field: which of several rounds</extracomment>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Day</source>
        <extracomment>Field: the day of the visit</extracomment>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Honey supers on?</source>
        <extracomment>Field: whether honey supers are on the hives</extracomment>
        <translation>Honigräume auf?</translation>
    </message>
    <message>
        <source>Why strips past their limit</source>
        <extracomment>Field: why strips past their limit are hung</extracomment>
        <translation>Warum abgelaufene Streifen</translation>
    </message>
    <message>
        <source>A bag on this visit is past its use-by day. The register will show the reason.</source>
        <extracomment>Help of a field</extracomment>
        <translation>Ein Beutel dieses Gangs ist über sein „verwendbar bis“ hinaus. Der Grund steht dann im Behandlungsbuch.</translation>
    </message>
    <message>
        <source>nearest limit first</source>
        <extracomment>First entry of the list of bags</extracomment>
        <translation>früheste Frist zuerst</translation>
    </message>
    <message>
        <source>%1, %2 left, use by %3</source>
        <extracomment>A bag: its code, the strips left in it, its use-by day</extracomment>
        <translation>%1, noch %2, verwendbar bis %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>Title: a yard and its round
----------
%1 a hive, %2 what is wrong there</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Visit of %1, as planned unless typed over</source>
        <extracomment>Heading of the grid; %1 a day</extracomment>
        <translation>Gang, %1: wie geplant, wo nichts anderes eingetippt ist</translation>
    </message>
    <message numerus="yes">
        <source>%n exceptions</source>
        <extracomment>How many hives were typed over</extracomment>
        <translation>
            <numerusform>%n Ausnahme</numerusform>
            <numerusform>%n Ausnahmen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hives visited: %1 strips in, to be pulled %2.</source>
        <extracomment>News after a visit; %1 strips, %2 the days to pull them</extracomment>
        <translation>
            <numerusform>%n Volk besucht: %1 Streifen hinein, Herausnahme %2.</numerusform>
            <numerusform>%n Völker besucht: %1 Streifen hinein, Herausnahme %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; hives</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Volk</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Völker</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n of them in a row</source>
        <extracomment>%1 hives, %n of them unnumbered in rows</extracomment>
        <translation>
            <numerusform>%1, davon %n in Reihe</numerusform>
            <numerusform>%1, davon %n in Reihe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strips planned</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen geplant</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Streifen geplant</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, &lt;b&gt;%n&lt;/b&gt; in</source>
        <extracomment>Rich text; %1 "89 strips planned", %n strips typed instead</extracomment>
        <translation>
            <numerusform>%1, &lt;b&gt;%n&lt;/b&gt; hinein</numerusform>
            <numerusform>%1, &lt;b&gt;%n&lt;/b&gt; hinein</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 (opened, %2 left)</source>
        <extracomment>An opened bag: its code and the strips left in it</extracomment>
        <translation>%1 (geöffnet, noch %2)</translation>
    </message>
    <message>
        <source>%1 (%2 left)</source>
        <extracomment>A bag: its code and the strips left in it</extracomment>
        <translation>%1 (noch %2)</translation>
    </message>
    <message>
        <source>bags %1</source>
        <extracomment>%1 the bags used; %n more of them</extracomment>
        <translation>Beutel %1</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 und %n weiterer</numerusform>
            <numerusform>%1 und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>pull window &lt;b&gt;%1&lt;/b&gt;</source>
        <extracomment>Rich text; %1 two days</extracomment>
        <translation>Herausnahme &lt;b&gt;%1&lt;/b&gt;</translation>
    </message>
    <message numerus="yes">
        <source>%n strips short in the store</source>
        <extracomment>Strips the store does not have ready</extracomment>
        <translation>
            <numerusform>%n Streifen fehlt im Lager</numerusform>
            <numerusform>%n Streifen fehlen im Lager</numerusform>
        </translation>
    </message>
    <message>
        <source>Strips in, %1</source>
        <extracomment>What Due calls a visit that was begun; %1 a yard and its round</extracomment>
        <translation>Streifen hinein, %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::WeighForm</name>
    <message>
        <source>Out of</source>
        <extracomment>Label of a field</extracomment>
        <translation>Aus</translation>
    </message>
    <message>
        <source>Strips on the scale</source>
        <extracomment>Label of a field</extracomment>
        <translation>Streifen auf der Waage</translation>
    </message>
    <message>
        <source>Weight together</source>
        <extracomment>Label of a field</extracomment>
        <translation>Gewicht zusammen</translation>
    </message>
    <message>
        <source>One by one</source>
        <extracomment>Label of a field</extracomment>
        <translation>Einzeln</translation>
    </message>
    <message>
        <source>Dripped for</source>
        <extracomment>A unit behind a number</extracomment>
        <translation>Abgetropft</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Log the sample</source>
        <extracomment>Button that writes a weighing down</extracomment>
        <translation>Probe eintragen</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n strips · %2 in</source>
        <extracomment>A bin in a list; %1 its name, %n strips, %2 how long they have soaked</extracomment>
        <translation>
            <numerusform>%1 · %n Streifen · seit %2</numerusform>
            <numerusform>%1 · %n Streifen · seit %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Weigh them together</source>
        <extracomment>Button: strips are weighed all at once</extracomment>
        <translation>Zusammen wiegen</translation>
    </message>
    <message>
        <source>Weigh them one by one</source>
        <translation>Einzeln wiegen</translation>
    </message>
    <message>
        <source>Take %1 out</source>
        <extracomment>Button: the strips are taken out of the liquid; %1 the name of a bin</extracomment>
        <translation>%1 herausnehmen</translation>
    </message>
    <message>
        <source>%1 each, &lt;b&gt;%2 taken up&lt;/b&gt;, %3 acid a strip.</source>
        <extracomment>The live result of a weighing; %1 the mean weight, %2 the liquid taken up, %3 acid in a strip</extracomment>
        <translation>%1 je Streifen, &lt;b&gt;%2 aufgenommen&lt;/b&gt;, %3 Säure je Streifen.</translation>
    </message>
    <message>
        <source>The mean lies between %1 and %2 (95 %).</source>
        <extracomment>The range in which the mean lies; %1 and %2 weights</extracomment>
        <translation>Das Mittel liegt zwischen %1 und %2 (95 %).</translation>
    </message>
    <message>
        <source>On target</source>
        <extracomment>The strips weigh what they should; what to do now</extracomment>
        <translation>Im Ziel</translation>
    </message>
    <message>
        <source>take them out.</source>
        <translation>herausnehmen.</translation>
    </message>
    <message>
        <source>Light by %1</source>
        <extracomment>The strips weigh less than they should; %1 how much</extracomment>
        <translation>%1 zu leicht</translation>
    </message>
    <message>
        <source>soak on, and weigh again.</source>
        <extracomment>What to do with strips that are too light</extracomment>
        <translation>weiter tränken und noch einmal wiegen.</translation>
    </message>
    <message>
        <source>Heavy by %1</source>
        <extracomment>The strips weigh more than they should; %1 how much</extracomment>
        <translation>%1 zu schwer</translation>
    </message>
    <message>
        <source>let them drip on, and weigh again.</source>
        <extracomment>What to do with strips that are too heavy</extracomment>
        <translation>weiter abtropfen lassen und noch einmal wiegen.</translation>
    </message>
    <message>
        <source>Cannot tell yet</source>
        <extracomment>The spread of the strips is too wide for a verdict</extracomment>
        <translation>Noch nicht zu sagen</translation>
    </message>
    <message>
        <source>weigh more strips.</source>
        <extracomment>What to do when a sample was too small for a verdict</extracomment>
        <translation>mehr Streifen wiegen.</translation>
    </message>
    <message>
        <source>weigh strips</source>
        <extracomment>What a form is for, after the code of a batch</extracomment>
        <translation>Streifen wiegen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::WeighStep</name>
    <message>
        <source>Let the strips drip on a rack, count some out, and weigh them together or one by one.</source>
        <extracomment>Under the curve of the strips' weight, before the first weighing</extracomment>
        <translation>Streifen auf einem Gestell abtropfen lassen, einige abzählen und zusammen oder einzeln wiegen.</translation>
    </message>
    <message>
        <source>Enter on a row puts a weighing right or makes it void, with a reason.</source>
        <extracomment>Under a table whose rows can be put right</extracomment>
        <translation>Mit der Eingabetaste auf einer Zeile berichtigen Sie eine Wägung oder erklären sie für ungültig, mit Grund.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::WeighingsTable</name>
    <message>
        <source>When</source>
        <extracomment>Header of a column: day and time
----------
Label of a field</extracomment>
        <translation>Wann</translation>
    </message>
    <message>
        <source>%1, corrected</source>
        <extracomment>A weighing whose first writing said something else; %1 its day and time</extracomment>
        <translation>%1, berichtigt</translation>
    </message>
    <message>
        <source>Bin</source>
        <extracomment>Header of a column</extracomment>
        <translation>Wanne</translation>
    </message>
    <message>
        <source>After</source>
        <extracomment>Header of a column: how long the strips had soaked</extracomment>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Strips</source>
        <extracomment>Header of a column</extracomment>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Each</source>
        <extracomment>Header of a column: the mean weight of a strip</extracomment>
        <translation>Je Streifen</translation>
    </message>
    <message>
        <source>Verdict</source>
        <extracomment>Header of a column: what the weighing says</extracomment>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Weighings</source>
        <extracomment>Read aloud: the name of a table</extracomment>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>Correct a weighing</source>
        <extracomment>Title of a dialog</extracomment>
        <translation>Wägung berichtigen</translation>
    </message>
    <message numerus="yes">
        <source>%n strips of %1 stand for %2.</source>
        <extracomment>What an entry says now; %n strips, %1 their weight together, %2 day and time</extracomment>
        <translation>
            <numerusform>Eingetragen: %n Streifen mit %1 (%2).</numerusform>
            <numerusform>Eingetragen: %n Streifen mit %1 (%2).</numerusform>
        </translation>
    </message>
    <message>
        <source>Strips on the scale</source>
        <extracomment>Label of a field</extracomment>
        <translation>Streifen auf der Waage</translation>
    </message>
    <message>
        <source>Weight together</source>
        <extracomment>Label of a field</extracomment>
        <translation>Gewicht zusammen</translation>
    </message>
    <message>
        <source>Make it void</source>
        <extracomment>Button of a dialog: the entry does not count any more</extracomment>
        <translation>Für ungültig erklären</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::Welcome</name>
    <message>
        <source>Soakbook: the workbook for strips you make yourself</source>
        <extracomment>The program's name and what it is, over the welcome.</extracomment>
        <translation>Soakbook: das Arbeitsbuch für selbst gemachte Streifen</translation>
    </message>
    <message>
        <source>Mix, soak, weigh, bag, hang, pull, and the record of it all. Home-made treatment is not lawful everywhere: the product's label, the acid's safety data sheet, your authority and your vet come before anything this program says.</source>
        <extracomment>On the welcome page.</extracomment>
        <translation>Mischen, tränken, wiegen, in Beutel füllen, einhängen, herausnehmen, und alles aufgezeichnet. Selbst gemachte Behandlungsmittel sind nicht überall erlaubt: Das Etikett des Mittels, das Sicherheitsdatenblatt der Säure, Ihre Behörde und Ihr Tierarzt gehen allem vor, was dieses Programm sagt.</translation>
    </message>
    <message>
        <source>Look around first</source>
        <extracomment>Head of a card on the welcome page.</extracomment>
        <translation>Erst einmal umsehen</translation>
    </message>
    <message>
        <source>The worked example is an invented outfit with two seasons of records. It opens as a copy: try anything, nothing of yours is touched.</source>
        <extracomment>On the welcome page.</extracomment>
        <translation>Das ausgearbeitete Beispiel ist ein erfundener Betrieb mit Aufzeichnungen aus zwei Jahren. Es öffnet sich als Kopie: Probieren Sie alles aus, nichts von Ihnen wird berührt.</translation>
    </message>
    <message>
        <source>Open the example</source>
        <extracomment>A button on the welcome page.</extracomment>
        <translation>Beispiel öffnen</translation>
    </message>
    <message>
        <source>Open a workbook that is there...</source>
        <extracomment>A button on the welcome page.</extracomment>
        <translation>Vorhandenes Arbeitsbuch öffnen...</translation>
    </message>
    <message>
        <source>Make your workbook</source>
        <extracomment>Head of the form that makes a workbook.</extracomment>
        <translation>Ihr Arbeitsbuch anlegen</translation>
    </message>
    <message>
        <source>You</source>
        <extracomment>A section of a form.</extracomment>
        <translation>Sie</translation>
    </message>
    <message>
        <source>Your operation</source>
        <extracomment>A field's label: name of the outfit; and its sentence of help.</extracomment>
        <translation>Ihr Betrieb</translation>
    </message>
    <message>
        <source>As an inspector would look it up.</source>
        <translation>So, wie ein Kontrolleur ihn suchen würde.</translation>
    </message>
    <message>
        <source>Your name</source>
        <extracomment>A field's label: the first person who makes entries; and its sentence of help.</extracomment>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>Kept with every entry; more people can be added later.</source>
        <translation>Steht bei jedem Eintrag; weitere Personen können später dazukommen.</translation>
    </message>
    <message>
        <source>Made by</source>
        <extracomment>A field's label: address for labels; and its sentence of help.</extracomment>
        <translation>Hergestellt von</translation>
    </message>
    <message>
        <source>Address and telephone for labels; can follow later.</source>
        <translation>Anschrift und Telefon für Etiketten; kann später folgen.</translation>
    </message>
    <message>
        <source>The workbook is kept in</source>
        <extracomment>A field's label: file of the new workbook; and its sentence of help.</extracomment>
        <translation>Das Arbeitsbuch liegt in</translation>
    </message>
    <message>
        <source>One file. A folder on this computer is best; safe copies are made beside your other data.</source>
        <translation>Eine Datei. Am besten in einem Ordner auf diesem Rechner; Sicherungskopien werden neben Ihren übrigen Daten angelegt.</translation>
    </message>
    <message>
        <source>Your first strips</source>
        <extracomment>A section of a form and the sentence under it.</extracomment>
        <translation>Ihre ersten Streifen</translation>
    </message>
    <message>
        <source>These, the tank and the bin can be left empty and said later in Set-up.</source>
        <translation>Diese, der Tank und die Wanne können leer bleiben und später in der Einrichtung angegeben werden.</translation>
    </message>
    <message>
        <source>Your tank and your bin</source>
        <extracomment>A section of a form.</extracomment>
        <translation>Ihr Tank und Ihre Wanne</translation>
    </message>
    <message>
        <source>Four figures to begin with</source>
        <extracomment>A section of a form and the sentence under it; the four figures that a new workbook has.</extracomment>
        <translation>Vier Werte für den Anfang</translation>
    </message>
    <message>
        <source>Strength 40 % by mass, counted as dihydrate. Tank never above 60 °C: above it the acid gives off gas. Pails go into a mix whole: acid settles. Strips are used within 12 months. All four are common practice, no source; the label, the data sheet and local rules come first, and Set-up changes them.</source>
        <translation>Gehalt 40 % nach Masse, als Dihydrat gerechnet. Tank nie über 60 °C: Darüber gibt die Säure Gas ab. Eimer kommen ganz in eine Mischung: Säure setzt sich ab. Streifen werden innerhalb von 12 Monaten verwendet. Alle vier sind gängige Praxis, ohne Quelle; das Etikett des Mittels, das Datenblatt und örtliche Vorschriften gehen vor, und die Einrichtung ändert sie.</translation>
    </message>
    <message>
        <source>Make the workbook</source>
        <extracomment>The filled button of the welcome.</extracomment>
        <translation>Arbeitsbuch anlegen</translation>
    </message>
    <message>
        <source>Units</source>
        <extracomment>A field's label: units of weight and temperature; and its sentence of help.</extracomment>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>For reading and typing; any unit can be typed in any field.</source>
        <translation>Zum Lesen und Eintippen; jede Einheit kann in jedes Feld getippt werden.</translation>
    </message>
    <message>
        <source>kilograms, grams, degrees Celsius</source>
        <extracomment>A choice of units.</extracomment>
        <translation>Kilogramm, Gramm, Grad Celsius</translation>
    </message>
    <message>
        <source>pounds, ounces, degrees Fahrenheit</source>
        <extracomment>A choice of units.</extracomment>
        <translation>Pfund (lb), Unzen (oz), Grad Fahrenheit</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::WhenField</name>
    <message>
        <source>today</source>
        <extracomment>Stands in the empty field for a day</extracomment>
        <translation>heute</translation>
    </message>
    <message>
        <source>now</source>
        <extracomment>Stands in the empty field for a time of day: the present moment</extracomment>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Say the time too: the day is not today.</source>
        <extracomment>Beside a field for a moment</extracomment>
        <translation>Geben Sie auch die Uhrzeit an: Der Tag ist nicht heute.</translation>
    </message>
    <message>
        <source>%1: day</source>
        <extracomment>Read aloud; %1 is the name of a field for a moment</extracomment>
        <translation>%1: Tag</translation>
    </message>
    <message>
        <source>%1: time</source>
        <extracomment>Read aloud; %1 is the name of a field for a moment</extracomment>
        <translation>%1: Uhrzeit</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::WhoBar</name>
    <message>
        <source>Not now</source>
        <extracomment>Small cross: the question may wait</extracomment>
        <translation>Nicht jetzt</translation>
    </message>
    <message>
        <source>Who makes entries today?</source>
        <extracomment>Asked once a day, followed by one button a person</extracomment>
        <translation>Wer macht heute die Einträge?</translation>
    </message>
    <message>
        <source>Entries by %1</source>
        <extracomment>Read aloud; %1 a person's name</extracomment>
        <translation>Einträge von %1</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::WorkbooksPage</name>
    <message>
        <source>Workbooks</source>
        <extracomment>Head of a page of Set-up.</extracomment>
        <translation>Arbeitsbücher</translation>
    </message>
    <message>
        <source>Open now: %1</source>
        <extracomment>On a page of Set-up; %1 is a file.</extracomment>
        <translation>Jetzt geöffnet: %1</translation>
    </message>
    <message>
        <source>Open another workbook...</source>
        <extracomment>A button.</extracomment>
        <translation>Anderes Arbeitsbuch öffnen...</translation>
    </message>
    <message>
        <source>Make a new workbook...</source>
        <extracomment>A button.</extracomment>
        <translation>Neues Arbeitsbuch anlegen...</translation>
    </message>
    <message>
        <source>Open the worked example</source>
        <extracomment>A button.</extracomment>
        <translation>Ausgearbeitetes Beispiel öffnen</translation>
    </message>
    <message>
        <source>Copies and damaged files</source>
        <extracomment>Head of a card of Set-up: copies of the workbook that were carried elsewhere.</extracomment>
        <translation>Kopien und beschädigte Dateien</translation>
    </message>
    <message>
        <source>When a copy of this workbook was written in elsewhere: see what stands in only one of the two, and take over what is missing here.</source>
        <extracomment>Explains the button beneath.</extracomment>
        <translation>Wenn anderswo in eine Kopie dieses Arbeitsbuchs geschrieben wurde: sehen, was nur in einem von beiden steht, und übernehmen, was hier fehlt.</translation>
    </message>
    <message>
        <source>Compare with another copy...</source>
        <extracomment>A button.</extracomment>
        <translation>Mit einer anderen Kopie vergleichen...</translation>
    </message>
    <message>
        <source>The other copy of this workbook</source>
        <extracomment>Title of the window that asks for a file.</extracomment>
        <translation>Die andere Kopie dieses Arbeitsbuchs</translation>
    </message>
    <message>
        <source>When a workbook no longer opens: see what can still be read of it. The newest safe copy is the better way back.</source>
        <extracomment>Explains the button beneath.</extracomment>
        <translation>Wenn sich ein Arbeitsbuch nicht mehr öffnen lässt: sehen, was davon noch lesbar ist. Die neueste Sicherungskopie ist der bessere Weg zurück.</translation>
    </message>
    <message>
        <source>Read what is left in a damaged file...</source>
        <extracomment>A button.</extracomment>
        <translation>Lesen, was in einer beschädigten Datei übrig ist...</translation>
    </message>
    <message>
        <source>The damaged workbook</source>
        <extracomment>Title of the window that asks for a file.</extracomment>
        <translation>Das beschädigte Arbeitsbuch</translation>
    </message>
    <message>
        <source>Workbooks (*.soakbook);;All files (*)</source>
        <extracomment>The kind of files, in the window that asks for one.</extracomment>
        <translation>Arbeitsbücher (*.soakbook);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>That is the workbook that is open. What it holds stands in its pages and in the register.</source>
        <extracomment>In answer to the choice of a damaged file.</extracomment>
        <translation>Das ist das Arbeitsbuch, das gerade offen ist. Was es enthält, steht auf seinen Seiten und im Behandlungsbuch.</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::YardChecklist</name>
    <message>
        <source>%1, %2</source>
        <extracomment>A yard to tick; %1 its name, %2 what is said of it softly, such as "20 hives"</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No yard yet.</source>
        <extracomment>In place of a list of yards, before a button that adds one</extracomment>
        <translation>Noch kein Stand.</translation>
    </message>
    <message>
        <source>Add the first yard</source>
        <extracomment>Button in place of a list of yards</extracomment>
        <translation>Ersten Stand anlegen</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::YardPage</name>
    <message>
        <source>Hives of the yard</source>
        <extracomment>Read aloud: the table of hives</extracomment>
        <translation>Völker des Stands</translation>
    </message>
    <message>
        <source>Strips in</source>
        <extracomment>Button: hang strips in the hives of this yard</extracomment>
        <translation>Streifen hinein</translation>
    </message>
    <message>
        <source>Strips out</source>
        <extracomment>Button: take strips out of the hives of this yard</extracomment>
        <translation>Streifen heraus</translation>
    </message>
    <message>
        <source>Count mites</source>
        <extracomment>Button</extracomment>
        <translation>Milben zählen</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <extracomment>Button: a sheet of paper to take along</extracomment>
        <translation>Laufzettel</translation>
    </message>
    <message>
        <source>Pull list</source>
        <extracomment>Button: a sheet of paper to take along</extracomment>
        <translation>Herausnahmeliste</translation>
    </message>
    <message>
        <source>Add hives</source>
        <extracomment>Button</extracomment>
        <translation>Völker hinzufügen</translation>
    </message>
    <message>
        <source>Times of this yard</source>
        <extracomment>Button: flows and closed times</extracomment>
        <translation>Zeiten dieses Stands</translation>
    </message>
    <message>
        <source>More …</source>
        <extracomment>Button that opens a short list of further things to do</extracomment>
        <translation>Mehr …</translation>
    </message>
    <message>
        <source>Edit this yard</source>
        <extracomment>In a short list of things to do</extracomment>
        <translation>Stand bearbeiten</translation>
    </message>
    <message numerus="yes">
        <source>Move %n hives to another yard</source>
        <extracomment>In a short list of things to do</extracomment>
        <translation>
            <numerusform>%n Volk an einen anderen Stand umsetzen</numerusform>
            <numerusform>%n Völker an einen anderen Stand umsetzen</numerusform>
        </translation>
    </message>
    <message>
        <source>Edit the hive</source>
        <extracomment>In a short list of things to do</extracomment>
        <translation>Volk bearbeiten</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a hive, %2 why a text does not read</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No hive stands here yet. Add hives: twenty numbered ones are one line, a row without numbers is one too.</source>
        <extracomment>What stands in the empty table of hives</extracomment>
        <translation>Hier steht noch kein Volk. Völker hinzufügen: Zwanzig nummerierte sind eine Zeile, eine Reihe ohne Nummern auch.</translation>
    </message>
    <message>
        <source>not said</source>
        <extracomment>Nobody said whether honey supers are on</extracomment>
        <translation>nicht angegeben</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; hives</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Volk</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; Völker</numerusform>
        </translation>
    </message>
    <message>
        <source>no strips hang</source>
        <extracomment>No strips hang in a yard</extracomment>
        <translation>keine Streifen hängen</translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%1&lt;/b&gt; strips hang in %n</source>
        <extracomment>Rich text; %1 strips hang in %n hives</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; Streifen hängen in %n Volk</numerusform>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; Streifen hängen in %n Völkern</numerusform>
        </translation>
    </message>
    <message>
        <source>since %1</source>
        <extracomment>%1 a day</extracomment>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>pull window &lt;b&gt;%1&lt;/b&gt;</source>
        <extracomment>Rich text; %1 two days</extracomment>
        <translation>Herausnahme &lt;b&gt;%1&lt;/b&gt;</translation>
    </message>
    <message>
        <source>planned: %1, %2</source>
        <extracomment>A round ahead; %1 its name, %2 a day</extracomment>
        <translation>geplant: %1, %2</translation>
    </message>
    <message>
        <source>History of this yard</source>
        <extracomment>In a short list of things to do: what the record of a yard said before, who changed it, when and why</extracomment>
        <translation>Verlauf dieses Stands</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::YardsPage</name>
    <message>
        <source>No yard yet</source>
        <extracomment>An empty page: its heading</extracomment>
        <translation>Noch kein Stand</translation>
    </message>
    <message>
        <source>Your yards will stand here, with their hives and what hangs in them: since when, until when, from which bags. Start with the place where the first hives stand.</source>
        <extracomment>An empty page: what will stand here</extracomment>
        <translation>Hier stehen dann Ihre Stände mit ihren Völkern und dem, was darin hängt: seit wann, bis wann, aus welchen Beuteln. Beginnen Sie mit dem Platz, an dem die ersten Völker stehen.</translation>
    </message>
    <message>
        <source>New yard</source>
        <extracomment>The button of an empty page</extracomment>
        <translation>Neuer Stand</translation>
    </message>
    <message>
        <source>Yards and rounds</source>
        <extracomment>Read aloud: the list at the left</extracomment>
        <translation>Stände und Runden</translation>
    </message>
    <message>
        <source>Yards</source>
        <extracomment>Over the list at the left, and the button beside it
----------
A place of the house, in the navigation</extracomment>
        <translation>Stände</translation>
    </message>
    <message>
        <source>Rounds</source>
        <extracomment>Title of a page</extracomment>
        <translation>Runden</translation>
    </message>
    <message>
        <source>All yards</source>
        <extracomment>Title of a page</extracomment>
        <translation>Alle Stände</translation>
    </message>
</context>
<context>
    <name>soakbook::ui::YesNoField</name>
    <message>
        <source>Yes</source>
        <extracomment>An answer</extracomment>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <extracomment>An answer</extracomment>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Not said</source>
        <extracomment>An answer: nobody said yes or no</extracomment>
        <translation>Nicht angegeben</translation>
    </message>
</context>
</TS>
