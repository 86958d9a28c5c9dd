<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_GB" sourcelanguage="en_GB">
<context>
    <name>ApartWords</name>
    <message numerus="yes">
        <source>The other is older: %n entries are missing there. Nothing stands only there.</source>
        <extracomment>The other copy of the workbook is an older one.</extracomment>
        <translation>
            <numerusform>The other is older: %n entry is missing there. Nothing stands there alone.</numerusform>
            <numerusform>The other is older: %n entries are missing there. Nothing stands there alone.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The other is newer: %n entries are missing here.</source>
        <extracomment>The other copy of the workbook is a newer one.</extracomment>
        <translation>
            <numerusform>The other is newer: %n entry is missing here.</numerusform>
            <numerusform>The other is newer: %n entries are missing here.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Both were written in since they were the same: %n entries stand only here,</source>
        <extracomment>Two copies of the workbook were both written in; the second half of the sentence follows.</extracomment>
        <translation>
            <numerusform>Both were written in since they were the same: %n entry stands only here,</numerusform>
            <numerusform>Both were written in since they were the same: %n entries stand only here,</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n only there.</source>
        <extracomment>The second half of a sentence: so many entries stand only here, ...</extracomment>
        <translation>
            <numerusform>%n only there.</numerusform>
            <numerusform>%n only there.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries were taken over as one; undo takes them back together.</source>
        <extracomment>Entries of another copy were written into this one; %n is how many.</extracomment>
        <translation>
            <numerusform>%n entry was taken over; undo takes it back.</numerusform>
            <numerusform>%n entries were taken over as one; undo takes them back together.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records that differ stay as they are here.</source>
        <extracomment>%n records were changed in both copies.</extracomment>
        <translation>
            <numerusform>%n record that differs stays as it is here.</numerusform>
            <numerusform>%n records that differ stay as they are here.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BagFacts</name>
    <message numerus="yes">
        <source>and %n more</source>
        <extracomment>At the end of a list of codes; %n more of them</extracomment>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BagFactsWords</name>
    <message numerus="yes">
        <source>%n hung</source>
        <extracomment>Strips of a bag that went into hives</extracomment>
        <translation>
            <numerusform>%n hung</numerusform>
            <numerusform>%n hung</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thrown away</source>
        <extracomment>Strips of a bag that were thrown away</extracomment>
        <translation>
            <numerusform>%n thrown away</numerusform>
            <numerusform>%n thrown away</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BatchItems</name>
    <message numerus="yes">
        <source>%n strips</source>
        <extracomment>How many strips a batch has soaked</extracomment>
        <translation>
            <numerusform>%n strip</numerusform>
            <numerusform>%n strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bags</source>
        <extracomment>How many bags of a batch are filled</extracomment>
        <translation>
            <numerusform>%n bag</numerusform>
            <numerusform>%n bags</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CopyAges</name>
    <message numerus="yes">
        <source>%n min ago</source>
        <extracomment>How long ago a copy was made, in minutes</extracomment>
        <translation>
            <numerusform>%n min ago</numerusform>
            <numerusform>%n min ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h ago</source>
        <extracomment>How long ago a copy was made, in hours</extracomment>
        <translation>
            <numerusform>%n h ago</numerusform>
            <numerusform>%n h ago</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CopyWords</name>
    <message numerus="yes">
        <source>Safe copy %1, %n entry(ies) since</source>
        <extracomment>In the status line; %1 such as "14 min ago", %n the number of entries since</extracomment>
        <translation>
            <numerusform>Safe copy %1, %n entry since</numerusform>
            <numerusform>Safe copy %1, %n entries since</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CostWords</name>
    <message numerus="yes">
        <source>&lt;b&gt;A strip costs %1&lt;/b&gt;: %2 for %n strips.</source>
        <extracomment>What a strip costs; %1 an amount of money, %2 that of all, %n strips</extracomment>
        <translation>
            <numerusform>&lt;b&gt;A strip costs %1&lt;/b&gt;: %2 for %n strip.</numerusform>
            <numerusform>&lt;b&gt;A strip costs %1&lt;/b&gt;: %2 for %n strips.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DialWords</name>
    <message numerus="yes">
        <source>Dial less probe in this tank once it is warm: %1, from %n readings.</source>
        <extracomment>How a tank's dial stands to its probe; %1 a difference of temperatures with its sign, %n readings</extracomment>
        <translation>
            <numerusform>Dial less probe in this tank once it is warm: %1, from %n reading.</numerusform>
            <numerusform>Dial less probe in this tank once it is warm: %1, from %n readings.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Dial less probe in this tank once it is warm: %1 to %2, from %n readings.</source>
        <extracomment>How a tank's dial stands to its probe; %1 and %2 differences of temperatures with their signs, %n readings</extracomment>
        <translation>
            <numerusform>Dial less probe in this tank once it is warm: %1 to %2, from %n reading.</numerusform>
            <numerusform>Dial less probe in this tank once it is warm: %1 to %2, from %n readings.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DiscardForm</name>
    <message numerus="yes">
        <source>%n strip(s) are left in it.</source>
        <extracomment>Under the title of a form; %n strips are left in a bag</extracomment>
        <translation>
            <numerusform>%n strip is left in it.</numerusform>
            <numerusform>%n strips are left in it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n strip(s) of %1.</source>
        <extracomment>Under the title of a form; %1 the codes of bags, %n their strips</extracomment>
        <translation>
            <numerusform>The %n strip of %1.</numerusform>
            <numerusform>All %n strips of %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) stay in the bag.</source>
        <extracomment>What follows from a number of strips thrown away; %n strips</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip stays in the bag.</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips stay in the bag.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Discard %n bag(s)</source>
        <extracomment>Title of a form; %n bags</extracomment>
        <translation>
            <numerusform>Discard %n bag</numerusform>
            <numerusform>Discard %n bags</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Due</name>
    <message numerus="yes">
        <source>%n strip(s) soaked and not bagged</source>
        <extracomment>%n strips wait for their bags.</extracomment>
        <translation>
            <numerusform>%n strip soaked and not bagged</numerusform>
            <numerusform>%n strips soaked and not bagged</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) without a bag</source>
        <extracomment>%n labels were given out before their bags were filled.</extracomment>
        <translation>
            <numerusform>%n label without a bag</numerusform>
            <numerusform>%n labels without a bag</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s)</source>
        <extracomment>%n bags of strips.</extracomment>
        <translation>
            <numerusform>%n bag</numerusform>
            <numerusform>%n bags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s)</source>
        <extracomment>%n strips.</extracomment>
        <translation>
            <numerusform>%n strip</numerusform>
            <numerusform>%n strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>rest ends %1: %n strip(s) become ready</source>
        <extracomment>%1 is a day; %n strips become ready.</extracomment>
        <translation>
            <numerusform>rest ends %1: %n strip becomes ready</numerusform>
            <numerusform>rest ends %1: %n strips become ready</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pail(s)</source>
        <extracomment>%n pails of leftover liquid.</extracomment>
        <translation>
            <numerusform>%n pail</numerusform>
            <numerusform>%n pails</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) again</source>
        <extracomment>%n labels.</extracomment>
        <translation>
            <numerusform>%n label again</numerusform>
            <numerusform>%n labels again</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries since the last safe copy</source>
        <extracomment>%n entries were made after the newest safe copy.</extracomment>
        <translation>
            <numerusform>%n entry since the last safe copy</numerusform>
            <numerusform>%n entries since the last safe copy</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hive(s), %1</source>
        <extracomment>%n hives; %1 is the name of a yard.</extracomment>
        <translation>
            <numerusform>%n hive, %1</numerusform>
            <numerusform>%n hives, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s), planned %1</source>
        <extracomment>%n strips; %1 is the day planned.</extracomment>
        <translation>
            <numerusform>%n strip, planned %1</numerusform>
            <numerusform>%n strips, planned %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s) short on %1</source>
        <extracomment>%n strips are short; %1 is the day planned.</extracomment>
        <translation>
            <numerusform>%n strip short on %1</numerusform>
            <numerusform>%n strips short on %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) made outside Soakbook</source>
        <extracomment>%n changes that another program made in the workbook.</extracomment>
        <translation>
            <numerusform>%n change made outside Soakbook</numerusform>
            <numerusform>%n changes made outside Soakbook</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Label</name>
    <message numerus="yes">
        <source>%n oxalic acid strips</source>
        <extracomment>on a bag's label</extracomment>
        <translation>
            <numerusform>%n oxalic acid strip</numerusform>
            <numerusform>%n oxalic acid strips</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MiteWords</name>
    <message numerus="yes">
        <source>%n treated hives</source>
        <extracomment>Hives in which mites were counted before and after a treatment</extracomment>
        <translation>
            <numerusform>%n treated hive</numerusform>
            <numerusform>%n treated hives</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n untreated hives</source>
        <extracomment>Untreated hives in which mites were counted before and after, to compare with</extracomment>
        <translation>
            <numerusform>%n untreated hive</numerusform>
            <numerusform>%n untreated hives</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MixResultWords</name>
    <message numerus="yes">
        <source>Soaks up to %n strips</source>
        <extracomment>What a mix is enough for; %n strips</extracomment>
        <translation>
            <numerusform>Soaks up to %n strip</numerusform>
            <numerusform>Soaks up to %n strips</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MixWords</name>
    <message numerus="yes">
        <source>%1: %2 of old liquid.</source>
        <extracomment>Which leftover pails go into a mix; %n pails, %1 their codes, %2 the liquid in them</extracomment>
        <translation>
            <numerusform>%1: %2 of old liquid.</numerusform>
            <numerusform>%1: %2 of old liquid.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Bins like %1, side by side: %n strips, at most %2 left.</source>
        <extracomment>Strips in bins filled at the same time; %n strips, %1 a bin, %2 a mass</extracomment>
        <translation>
            <numerusform>Bins like %1, side by side: %n strip, at most %2 left.</numerusform>
            <numerusform>Bins like %1, side by side: %n strips, at most %2 left.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>One after another, warmed and cleared between: %n strips, at most %1 left, %2.</source>
        <extracomment>The same with one bin filled again and again; %n strips, %1 a mass, %2 "2 more days"</extracomment>
        <translation>
            <numerusform>One after another, warmed and cleared between: %n strip, at most %1 left, %2.</numerusform>
            <numerusform>One after another, warmed and cleared between: %n strips, at most %1 left, %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more days</source>
        <extracomment>How much longer it takes to fill one bin after another; %n days</extracomment>
        <translation>
            <numerusform>%n more day</numerusform>
            <numerusform>%n more days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MixingPaper</name>
    <message numerus="yes">
        <source>%n of %1</source>
        <extracomment>Whole containers and a last part to weigh; %n containers, %1 what one holds</extracomment>
        <translation>
            <numerusform>%n of %1</numerusform>
            <numerusform>%n of %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MoveForm</name>
    <message numerus="yes">
        <source>Move %n bag(s)</source>
        <extracomment>Title of a form</extracomment>
        <translation>
            <numerusform>Move %n bag</numerusform>
            <numerusform>Move %n bags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move %n pail(s)</source>
        <extracomment>Title of a form</extracomment>
        <translation>
            <numerusform>Move %n pail</numerusform>
            <numerusform>Move %n pails</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Opening</name>
    <message numerus="yes">
        <source>%n entry(ies) that stood here on %1 are missing: this seems to be an older copy.</source>
        <extracomment>%n entries, %1 a day and time</extracomment>
        <translation>
            <numerusform>%n entry that stood here on %1 is missing: this seems to be an older copy.</numerusform>
            <numerusform>%n entries that stood here on %1 are missing: this seems to be an older copy.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Piece</name>
    <message numerus="yes">
        <source>%n bin(s) of batch %1 filled</source>
        <extracomment>%n bins, %1 a batch</extracomment>
        <translation>
            <numerusform>%n bin of batch %1 filled</numerusform>
            <numerusform>%n bins of batch %1 filled</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s) of %1 weighed</source>
        <extracomment>%n strips, %1 a batch, a bag or a hive</extracomment>
        <translation>
            <numerusform>%n strip of %1 weighed</numerusform>
            <numerusform>%n strips of %1 weighed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s) of batch %1</source>
        <extracomment>%n bags, %1 a batch</extracomment>
        <translation>
            <numerusform>%n bag of batch %1</numerusform>
            <numerusform>%n bags of batch %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) for batch %1</source>
        <extracomment>%n labels, %1 a batch</extracomment>
        <translation>
            <numerusform>%n label for batch %1</numerusform>
            <numerusform>%n labels for batch %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pail(s) of batch %1 poured</source>
        <extracomment>%n pails, %1 a batch</extracomment>
        <translation>
            <numerusform>%n pail of batch %1 poured</numerusform>
            <numerusform>%n pails of batch %1 poured</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s) moved</source>
        <extracomment>%n bags</extracomment>
        <translation>
            <numerusform>%n bag moved</numerusform>
            <numerusform>%n bags moved</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s) of %1 thrown away</source>
        <extracomment>%n strips, %1 a bag</extracomment>
        <translation>
            <numerusform>%n strip of %1 thrown away</numerusform>
            <numerusform>%n strips of %1 thrown away</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pail(s) moved</source>
        <extracomment>%n pails</extracomment>
        <translation>
            <numerusform>%n pail moved</numerusform>
            <numerusform>%n pails moved</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hive(s) in %1</source>
        <extracomment>%n hives, %1 a yard</extracomment>
        <translation>
            <numerusform>%n hive in %1</numerusform>
            <numerusform>%n hives in %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hive(s) moved to %1</source>
        <extracomment>%n hives, %1 the yard they went to</extracomment>
        <translation>
            <numerusform>%n hive moved to %1</numerusform>
            <numerusform>%n hives moved to %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>strips in, %n hive(s) in %1</source>
        <extracomment>%n hives, %1 a yard</extracomment>
        <translation>
            <numerusform>strips in, %n hive in %1</numerusform>
            <numerusform>strips in, %n hives in %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>strips out, %n hive(s) in %1</source>
        <extracomment>%n hives, %1 a yard</extracomment>
        <translation>
            <numerusform>strips out, %n hive in %1</numerusform>
            <numerusform>strips out, %n hives in %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>mites counted, %n hive(s) in %1</source>
        <extracomment>%n hives, %1 a yard</extracomment>
        <translation>
            <numerusform>mites counted, %n hive in %1</numerusform>
            <numerusform>mites counted, %n hives in %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) printed</source>
        <extracomment>A piece of work: %n labels of bags and pails were printed</extracomment>
        <translation>
            <numerusform>%n label printed</numerusform>
            <numerusform>%n labels printed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) taken over from %1</source>
        <extracomment>%1 a file; %n entries of another copy of the workbook were written into this one</extracomment>
        <translation>
            <numerusform>%n entry taken over from %1</numerusform>
            <numerusform>%n entries taken over from %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PrintActions</name>
    <message numerus="yes">
        <source>%n page(s) sent to the printer.</source>
        <extracomment>after pages went to the printer</extracomment>
        <translation>
            <numerusform>%n page sent to the printer.</numerusform>
            <numerusform>%n pages sent to the printer.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RecountForm</name>
    <message numerus="yes">
        <source>By what was entered, %n strip(s) are left in it.</source>
        <extracomment>Under the title of a form; %n strips are left by what was entered</extracomment>
        <translation>
            <numerusform>By what was entered, %n strip is left in it.</numerusform>
            <numerusform>By what was entered, %n strips are left in it.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RegisterTables</name>
    <message numerus="yes">
        <source>%n missing</source>
        <extracomment>Small under the number of strips that came out.</extracomment>
        <translation>
            <numerusform>%n missing</numerusform>
            <numerusform>%n missing</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RunPaper</name>
    <message numerus="yes">
        <source>%n strips hang already</source>
        <extracomment>Strips from an earlier visit</extracomment>
        <translation>
            <numerusform>%n strip hangs already</numerusform>
            <numerusform>%n strips hang already</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SalvageWords</name>
    <message numerus="yes">
        <source>%n agree with the history</source>
        <extracomment>Records of one kind in a damaged workbook: so many say the same as the history.</extracomment>
        <translation>
            <numerusform>%n agrees with the history</numerusform>
            <numerusform>%n agree with the history</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n are told by the history</source>
        <extracomment>Records of one kind in a damaged workbook: so many are lost and told by the history alone.</extracomment>
        <translation>
            <numerusform>%n is told by the history</numerusform>
            <numerusform>%n are told by the history</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n could not be checked</source>
        <extracomment>Records of one kind in a damaged workbook: so many could be read, and nothing is left to hold them against.</extracomment>
        <translation>
            <numerusform>%n could not be checked</numerusform>
            <numerusform>%n could not be checked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>of %n more nothing is left</source>
        <extracomment>Records of one kind in a damaged workbook: of so many nothing is left.</extracomment>
        <translation>
            <numerusform>of %n more nothing is left</numerusform>
            <numerusform>of %n more nothing is left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n records were read.</source>
        <extracomment>What was read of a damaged workbook.</extracomment>
        <translation>
            <numerusform>%n record was read.</numerusform>
            <numerusform>%n records were read.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n records nothing is left.</source>
        <extracomment>What was read of a damaged workbook; a sentence of its own.</extracomment>
        <translation>
            <numerusform>Of %n record nothing is left.</numerusform>
            <numerusform>Of %n records nothing is left.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ShedWords</name>
    <message numerus="yes">
        <source>%n sacks of %1</source>
        <extracomment>Whole containers of acid; %1 what one holds</extracomment>
        <translation>
            <numerusform>%n sack of %1</numerusform>
            <numerusform>%n sacks of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cans of %1</source>
        <extracomment>Whole containers of glycerine; %1 what one holds</extracomment>
        <translation>
            <numerusform>%n can of %1</numerusform>
            <numerusform>%n cans of %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StepSummaries</name>
    <message numerus="yes">
        <source>%n stirs</source>
        <extracomment>How often a tank was stirred</extracomment>
        <translation>
            <numerusform>%n stir</numerusform>
            <numerusform>%n stirs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bins</source>
        <extracomment>How many bins were flooded</extracomment>
        <translation>
            <numerusform>%n bin</numerusform>
            <numerusform>%n bins</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips</source>
        <extracomment>How many strips soak
----------
How many strips are in bags</extracomment>
        <translation>
            <numerusform>%n strip</numerusform>
            <numerusform>%n strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bags</source>
        <extracomment>How many bags were filled</extracomment>
        <translation>
            <numerusform>%n bag</numerusform>
            <numerusform>%n bags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n labels wait for their bags</source>
        <extracomment>Labels whose bags are not filled yet</extracomment>
        <translation>
            <numerusform>%n label waits for its bag</numerusform>
            <numerusform>%n labels wait for their bags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips to bag</source>
        <extracomment>Strips that are in no bag yet</extracomment>
        <translation>
            <numerusform>%n strip to bag</numerusform>
            <numerusform>%n strips to bag</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n pails</source>
        <extracomment>Liquid in pails; %n pails, %1 a mass</extracomment>
        <translation>
            <numerusform>%1 in %n pail</numerusform>
            <numerusform>%1 in %n pails</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoreWords</name>
    <message numerus="yes">
        <source>%n day(s) past</source>
        <extracomment>A bag's limit lies behind; %n days</extracomment>
        <translation>
            <numerusform>%n day past</numerusform>
            <numerusform>%n days past</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) left</source>
        <extracomment>A bag's limit; %n days</extracomment>
        <translation>
            <numerusform>%n day left</numerusform>
            <numerusform>%n days left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>VisitGrid</name>
    <message numerus="yes">
        <source>%n strips hang there already</source>
        <extracomment>%n strips hang in the hive already</extracomment>
        <translation>
            <numerusform>%n strip hangs there already</numerusform>
            <numerusform>%n strips hang there already</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WeighWords</name>
    <message numerus="yes">
        <source>%n more would settle it at 95 %, going by the %1 that single strips of this kind lie apart.</source>
        <translation>
            <numerusform>%n more would settle it at 95 %, going by the %1 that single strips of this kind lie apart.</numerusform>
            <numerusform>%n more would settle it at 95 %, going by the %1 that single strips of this kind lie apart.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more would settle it at 95 %.</source>
        <extracomment>How many more strips to weigh; %n strips</extracomment>
        <translation>
            <numerusform>%n more would settle it at 95 %.</numerusform>
            <numerusform>%n more would settle it at 95 %.</numerusform>
        </translation>
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
            <numerusform>%n hive</numerusform>
            <numerusform>%n hives</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n strips hang</source>
        <extracomment>Under an entry; %1 "60 hives"</extracomment>
        <translation>
            <numerusform>%1, %n strip hangs</numerusform>
            <numerusform>%1, %n strips hang</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <translation>
            <numerusform>%n open</numerusform>
            <numerusform>%n open</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>YardPaperWords</name>
    <message numerus="yes">
        <source>row of %n</source>
        <extracomment>A group of unnumbered hives that stand together</extracomment>
        <translation>
            <numerusform>row of %n</numerusform>
            <numerusform>row of %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>YardWords</name>
    <message numerus="yes">
        <source>row of %n</source>
        <extracomment>A group of unnumbered hives that stand together</extracomment>
        <translation>
            <numerusform>row of %n</numerusform>
            <numerusform>row of %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n days</source>
        <extracomment>Mites fallen; %1 mites, %n days</extracomment>
        <translation>
            <numerusform>%1 in %n day</numerusform>
            <numerusform>%1 in %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagCard</name>
    <message numerus="yes">
        <source>%n bag(s) chosen</source>
        <extracomment>Heading of a card; %n bags are chosen</extracomment>
        <translation>
            <numerusform>%n bag chosen</numerusform>
            <numerusform>%n bags chosen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagForm</name>
    <message numerus="yes">
        <source>%n strips</source>
        <extracomment>What bags hold together</extracomment>
        <translation>
            <numerusform>%n strip</numerusform>
            <numerusform>%n strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips still to bag</source>
        <translation>
            <numerusform>%n strip still to bag</numerusform>
            <numerusform>%n strips still to bag</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagStep</name>
    <message numerus="yes">
        <source>Print %n labels</source>
        <translation>
            <numerusform>Print %n label</numerusform>
            <numerusform>Print %n labels</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::BagsTable</name>
    <message numerus="yes">
        <source>%n strips stand on it. A label that was printed is printed again.</source>
        <translation>
            <numerusform>%n strip stands on it. A label that was printed is printed again.</numerusform>
            <numerusform>%n strips stand on it. A label that was printed is printed again.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::CloseForm</name>
    <message numerus="yes">
        <source>%n strips were soaked and stand in no bag.</source>
        <extracomment>Before a batch is closed; %n strips</extracomment>
        <translation>
            <numerusform>%n strip was soaked and stands in no bag.</numerusform>
            <numerusform>%n strips were soaked and stand in no bag.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::ComparisonWindow</name>
    <message numerus="yes">
        <source>Only here: %n</source>
        <extracomment>Head of a list of entries; %n is how many.</extracomment>
        <translation>
            <numerusform>Only here: %n</numerusform>
            <numerusform>Only here: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Only there: %n</source>
        <extracomment>Head of a list of entries; %n is how many.</extracomment>
        <translation>
            <numerusform>Only there: %n</numerusform>
            <numerusform>Only there: %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Take over %n entries</source>
        <extracomment>The button that writes entries of another copy into this one; %n is how many.</extracomment>
        <translation>
            <numerusform>Take over %n entry</numerusform>
            <numerusform>Take over %n entries</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::CountPage</name>
    <message numerus="yes">
        <source>&lt;b&gt;%1&lt;/b&gt; counted of &lt;b&gt;%n&lt;/b&gt; hives</source>
        <extracomment>Rich text: keep the marks around the figures; %1 hives counted of %n</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; counted of &lt;b&gt;%n&lt;/b&gt; hive</numerusform>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; counted of &lt;b&gt;%n&lt;/b&gt; hives</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; over it</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; over it</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; over it</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Mites counted in %n hives.</source>
        <extracomment>News after a mite count</extracomment>
        <translation>
            <numerusform>Mites counted in %n hive.</numerusform>
            <numerusform>Mites counted in %n hives.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::DuePlace</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) ready</source>
        <extracomment>In a sentence of figures; %n strips are ready.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip ready</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips ready</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; resting</source>
        <extracomment>In a sentence of figures; %n strips still rest.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; resting</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; resting</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; hive(s) carry strips</source>
        <extracomment>In a sentence of figures.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hive carries strips</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hives carry strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; past their pull date</source>
        <extracomment>In a sentence of figures; hives whose strips should be out.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; past its pull date</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; past their pull date</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) near the limit</source>
        <extracomment>In a sentence of figures; strips near their use-by day.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip near the limit</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips near the limit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) past the limit</source>
        <extracomment>In a sentence of figures; strips past their use-by day.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip past the limit</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips past the limit</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::EntryList</name>
    <message numerus="yes">
        <source>%1: %n records</source>
        <extracomment>Under the pointer over an entry: its words, how many records it wrote, and its reason if it has one.</extracomment>
        <translation>
            <numerusform>%1: %n record</numerusform>
            <numerusform>%1: %n records</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::HiveStory</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strips hang, to be pulled %1</source>
        <extracomment>Rich text; %1 the days to pull; %n strips</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip hangs, to be pulled %1</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips hang, to be pulled %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::HivesForm</name>
    <message numerus="yes">
        <source>One line for %n hives: strips and counts are kept for the whole row.</source>
        <extracomment>What follows from a form; %n hives</extracomment>
        <translation>
            <numerusform>One line for %n hive: strips and counts are kept for the whole row.</numerusform>
            <numerusform>One line for %n hives: strips and counts are kept for the whole row.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%1&lt;/b&gt; to &lt;b&gt;%2&lt;/b&gt;, %n hives</source>
        <extracomment>What follows from a form; rich text; %1 and %2 names of hives, %n hives</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; to &lt;b&gt;%2&lt;/b&gt;, %n hive</numerusform>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; to &lt;b&gt;%2&lt;/b&gt;, %n hives</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LabelDialog</name>
    <message numerus="yes">
        <source>%n label(s)</source>
        <extracomment>title of a window</extracomment>
        <translation>
            <numerusform>%n label</numerusform>
            <numerusform>%n labels</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::LotsPage</name>
    <message numerus="yes">
        <source>%n past its date</source>
        <extracomment>In a sentence of figures; %n deliveries are past their best-before day</extracomment>
        <translation>
            <numerusform>%n past its date</numerusform>
            <numerusform>%n past their dates</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PailCard</name>
    <message numerus="yes">
        <source>%n time(s)</source>
        <translation>
            <numerusform>%n time</numerusform>
            <numerusform>%n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pail(s) chosen</source>
        <extracomment>Heading of a card; %n pails are chosen</extracomment>
        <translation>
            <numerusform>%n pail chosen</numerusform>
            <numerusform>%n pails chosen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PailsPage</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; pail(s) on the shelf</source>
        <extracomment>In a sentence of figures; %n pails stand on the shelf</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; pail on the shelf</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; pails on the shelf</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wait(s) too long</source>
        <extracomment>In a sentence of figures; %n pails wait longer than allowed</extracomment>
        <translation>
            <numerusform>%n waits too long</numerusform>
            <numerusform>%n wait too long</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of unknown strength</source>
        <extracomment>In a sentence of figures; %n pails have no known strength</extracomment>
        <translation>
            <numerusform>%n of unknown strength</numerusform>
            <numerusform>%n of unknown strength</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::PullPage</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; hives carry strips</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hive carries strips</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hives carry strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%1&lt;/b&gt; pulled of &lt;b&gt;%n&lt;/b&gt; hanging</source>
        <extracomment>Rich text: keep the marks around the figures; %1 strips pulled of %n hanging</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; pulled of &lt;b&gt;%n&lt;/b&gt; hanging</numerusform>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; pulled of &lt;b&gt;%n&lt;/b&gt; hanging</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; missing</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; missing</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; missing</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n exceptions</source>
        <extracomment>How many rows were typed over</extracomment>
        <translation>
            <numerusform>%n exception</numerusform>
            <numerusform>%n exceptions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hives: %1 strips pulled.</source>
        <extracomment>News after strips came out; %1 strips pulled</extracomment>
        <translation>
            <numerusform>%n hive: %1 strips pulled.</numerusform>
            <numerusform>%n hives: %1 strips pulled.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips were missing.</source>
        <extracomment>News after strips came out</extracomment>
        <translation>
            <numerusform>%n strip was missing.</numerusform>
            <numerusform>%n strips were missing.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::RegisterPlace</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; treatment(s)</source>
        <extracomment>In a sentence of figures.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; treatment</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; treatments</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s)</source>
        <extracomment>In a sentence of figures.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; still hanging</source>
        <extracomment>In a sentence of figures; treatments whose strips still hang.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; still hanging</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; still hanging</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; void, still shown</source>
        <extracomment>In a sentence of figures; treatments made void.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; void, still shown</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; void, still shown</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; change(s) made outside Soakbook</source>
        <extracomment>In a sentence of figures, over the journal: changes that another program made.</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; change made outside Soakbook</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; changes made outside Soakbook</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more; History shows all</source>
        <extracomment>Under some lines that say what an entry changed; %n more lines are not shown</extracomment>
        <translation>
            <numerusform>and %n more; History shows all</numerusform>
            <numerusform>and %n more; History shows all</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::RoundForm</name>
    <message numerus="yes">
        <source>%n hives</source>
        <extracomment>Beside a yard's name</extracomment>
        <translation>
            <numerusform>%n hive</numerusform>
            <numerusform>%n hives</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips short</source>
        <extracomment>A verdict: too few strips in the store</extracomment>
        <translation>
            <numerusform>%n strip short</numerusform>
            <numerusform>%n strips short</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hives have no boxes or frames said: the rule gives them no number yet.</source>
        <extracomment>What to do next: the rule needs brood boxes or frames that were not said</extracomment>
        <translation>
            <numerusform>%n hive has no boxes or frames said: the rule gives it no number yet.</numerusform>
            <numerusform>%n hives have no boxes or frames said: the rule gives them no number yet.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::RoundsPage</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; rounds open</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; round open</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; rounds open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strips hang</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip hangs</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips hang</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strips still to hang</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip still to hang</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips still to hang</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SafeCopiesPage</name>
    <message numerus="yes">
        <source>%n entry(ies) since the last good copy (%1).</source>
        <extracomment>The state of the safe copies; %1 such as "14 min ago", %n entries were made after it</extracomment>
        <translation>
            <numerusform>%n entry since the last good copy, which was made %1.</numerusform>
            <numerusform>%n entries since the last good copy, which was made %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>If it is put back, %n entry(ies) made since would no longer stand in the workbook. The workbook of today is kept in this list first.</source>
        <extracomment>Beneath the list, of the chosen copy; %n entries</extracomment>
        <translation>
            <numerusform>If it is put back, %n entry made since would no longer stand in the workbook. The workbook of today is kept in this list first.</numerusform>
            <numerusform>If it is put back, %n entries made since would no longer stand in the workbook. The workbook of today is kept in this list first.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SalvageWindow</name>
    <message numerus="yes">
        <source>%n tables were saved.</source>
        <extracomment>Files for a spreadsheet were written; %n is how many.</extracomment>
        <translation>
            <numerusform>%n table was saved.</numerusform>
            <numerusform>%n tables were saved.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SoakForm</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n strips&lt;/b&gt; will hold &lt;b&gt;%1&lt;/b&gt; of the %2 there is.</source>
        <extracomment>What a soak takes; %n strips, %1 what they will hold, %2 the liquid there is</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n strip&lt;/b&gt; will hold &lt;b&gt;%1&lt;/b&gt; of the %2 there is.</numerusform>
            <numerusform>&lt;b&gt;%n strips&lt;/b&gt; will hold &lt;b&gt;%1&lt;/b&gt; of the %2 there is.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::SoakStep</name>
    <message numerus="yes">
        <source>%n strips stand since %1.</source>
        <extracomment>What an entry says now; %n strips, %1 day and time</extracomment>
        <translation>
            <numerusform>%n strip stands since %1.</numerusform>
            <numerusform>%n strips stand since %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StockBandChart</name>
    <message numerus="yes">
        <source>%1: %n strips in date</source>
        <extracomment>one month in words; %1 is a month with its year</extracomment>
        <translation>
            <numerusform>%1: %n strip in date</numerusform>
            <numerusform>%1: %n strips in date</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reach their limit</source>
        <extracomment>goes on from one month in words</extracomment>
        <translation>
            <numerusform>%n reaches its limit</numerusform>
            <numerusform>%n reach their limit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 needs %n</source>
        <extracomment>goes on from one month in words; %1 is a round's name</extracomment>
        <translation>
            <numerusform>%1 needs %n</numerusform>
            <numerusform>%1 needs %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n short</source>
        <extracomment>goes on from what a round needs</extracomment>
        <translation>
            <numerusform>%n short</numerusform>
            <numerusform>%n short</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StockByMonthChart</name>
    <message numerus="yes">
        <source>%1: %n strips, %2</source>
        <extracomment>one bar in words; %1 is a month with its year, %2 "past the limit", "near the limit" or "in date"</extracomment>
        <translation>
            <numerusform>%1: %n strip, %2</numerusform>
            <numerusform>%1: %n strips, %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StockCard</name>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strip(s) ready</source>
        <extracomment>In the sentence over the chart of stock; %n strips may be used</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip ready</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips ready</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n resting</source>
        <extracomment>In the sentence over the chart of stock; %n strips still rest</extracomment>
        <translation>
            <numerusform>%n resting</numerusform>
            <numerusform>%n resting</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n near the limit</source>
        <extracomment>In the sentence over the chart of stock; %n strips are near their use-by day</extracomment>
        <translation>
            <numerusform>%n near the limit</numerusform>
            <numerusform>%n near the limit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n past the limit</source>
        <extracomment>In the sentence over the chart of stock; %n strips are past their use-by day</extracomment>
        <translation>
            <numerusform>%n past the limit</numerusform>
            <numerusform>%n past the limit</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StorePage</name>
    <message numerus="yes">
        <source>%n with strips</source>
        <translation>
            <numerusform>%n with strips</numerusform>
            <numerusform>%n with strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n, together %1</source>
        <translation>
            <numerusform>%n, together %1</numerusform>
            <numerusform>%n, together %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in use</source>
        <translation>
            <numerusform>%n in use</numerusform>
            <numerusform>%n in use</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::StripWeightChart</name>
    <message numerus="yes">
        <source>%n weighed</source>
        <extracomment>goes on from one weighing in words</extracomment>
        <translation>
            <numerusform>%n weighed</numerusform>
            <numerusform>%n weighed</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::VisitPage</name>
    <message numerus="yes">
        <source>%n exceptions</source>
        <extracomment>How many hives were typed over</extracomment>
        <translation>
            <numerusform>%n exception</numerusform>
            <numerusform>%n exceptions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hives visited: %1 strips in, to be pulled %2.</source>
        <extracomment>News after a visit; %1 strips, %2 the days to pull them</extracomment>
        <translation>
            <numerusform>%n hive visited: %1 strips in, to be pulled %2.</numerusform>
            <numerusform>%n hives visited: %1 strips in, to be pulled %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; hives</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hive</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hives</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n of them in a row</source>
        <extracomment>%1 hives, %n of them unnumbered in rows</extracomment>
        <translation>
            <numerusform>%1, %n of them in a row</numerusform>
            <numerusform>%1, %n of them in rows</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; strips planned</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strip planned</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; strips planned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, &lt;b&gt;%n&lt;/b&gt; in</source>
        <extracomment>Rich text; %1 "89 strips planned", %n strips typed instead</extracomment>
        <translation>
            <numerusform>%1, &lt;b&gt;%n&lt;/b&gt; in</numerusform>
            <numerusform>%1, &lt;b&gt;%n&lt;/b&gt; in</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strips short in the store</source>
        <extracomment>Strips the store does not have ready</extracomment>
        <translation>
            <numerusform>%n strip short in the store</numerusform>
            <numerusform>%n strips short in the store</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::WeighForm</name>
    <message numerus="yes">
        <source>%1 · %n strips · %2 in</source>
        <extracomment>A bin in a list; %1 its name, %n strips, %2 how long they have soaked</extracomment>
        <translation>
            <numerusform>%1 · %n strip · %2 in</numerusform>
            <numerusform>%1 · %n strips · %2 in</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::WeighingsTable</name>
    <message numerus="yes">
        <source>%n strips of %1 stand for %2.</source>
        <extracomment>What an entry says now; %n strips, %1 their weight together, %2 day and time</extracomment>
        <translation>
            <numerusform>%n strip of %1 stands for %2.</numerusform>
            <numerusform>%n strips of %1 stand for %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>soakbook::ui::YardPage</name>
    <message numerus="yes">
        <source>Move %n hives to another yard</source>
        <extracomment>In a short list of things to do</extracomment>
        <translation>
            <numerusform>Move %n hive to another yard</numerusform>
            <numerusform>Move %n hives to another yard</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%n&lt;/b&gt; hives</source>
        <extracomment>Rich text: keep the marks around the figure</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hive</numerusform>
            <numerusform>&lt;b&gt;%n&lt;/b&gt; hives</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>&lt;b&gt;%1&lt;/b&gt; strips hang in %n</source>
        <extracomment>Rich text; %1 strips hang in %n hives</extracomment>
        <translation>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; strips hang in %n</numerusform>
            <numerusform>&lt;b&gt;%1&lt;/b&gt; strips hang in %n</numerusform>
        </translation>
    </message>
</context>
</TS>
