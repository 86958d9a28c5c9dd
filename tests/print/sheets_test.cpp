// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/print/example.h"
#include "tests/print/read_back.h"
#include "ui/print/mixing_sheet.h"
#include "ui/print/record_sheets.h"
#include "ui/print/sheet_pages.h"
#include "ui/print/yard_sheets.h"

#include <gtest/gtest.h>

using namespace soakbook::ui;
using namespace soakbook::ui::test;

namespace {

SheetHead head(PaperSize paper = PaperSize::a4) {
    return {QStringLiteral("marsh-end.soakbook"), QStringLiteral("Entry 1 204"), QStringLiteral("19 Nov 2026"), paper};
}

QString write(const PaperSheet& sheet, const QString& name) {
    const QString path = picture_path(name);
    EXPECT_FALSE(write_pdf(paper_of(sheet), path).has_value());
    return path;
}

RunSheet a_run(int hives) {
    RunSheet run;
    run.yard = QStringLiteral("Ford Bank");
    run.round = QStringLiteral("Late summer round");
    run.day = QStringLiteral("2 Sep 2026");
    run.total = QStringLiteral("%1").arg(hives * 4);
    run.supers = QStringLiteral("Off since 28 Aug; ivy flow from 20 Sep");
    run.bags = {{QStringLiteral("S52E"), QStringLiteral("60"), QStringLiteral("18 Nov 2026"), QStringLiteral("Shelf 2"), QString()},
                {QStringLiteral("S53X"), QStringLiteral("44"), QStringLiteral("18 Nov 2026"), QStringLiteral("Shelf 2"),
                 QStringLiteral("opened 11 Aug")}};
    for (int i = 0; i < hives; ++i) {
        run.lines.push_back({QStringLiteral("Hive %1").arg(i + 1), QString::number(8 + i % 4), QStringLiteral("4"),
                             i % 7 == 3 ? QStringLiteral("weak, look at the queen") : QString()});
    }
    return run;
}

MixingSheet a_mix() {
    MixingSheet mix;
    mix.batch = QStringLiteral("B7K");
    mix.day = QStringLiteral("24 Nov 2026");
    mix.vessel = QStringLiteral("Tank 2");
    mix.strength = QStringLiteral("42\u2009% by mass, as dihydrate");
    mix.total = QStringLiteral("30\u2009kg");
    mix.level_mark = QStringLiteral("312\u2009mm at 55\u2009°C");
    mix.ceiling = QStringLiteral("60\u2009°C");
    mix.room_left = QStringLiteral("9.5\u2009kg");
    mix.lines = {{QStringLiteral("Pail P3F, whole"), QStringLiteral("B6H"), QStringLiteral("11.4\u2009kg"), QStringLiteral("scraped to the bottom")},
                 {QStringLiteral("Glycerine"), QStringLiteral("G-11"), QStringLiteral("10.8\u2009kg"), QStringLiteral("1 can of 10 kg and 0.8 kg")},
                 {QStringLiteral("Acid"), QStringLiteral("OX-4"), QStringLiteral("7.8\u2009kg"), QStringLiteral("1 bag of 5 kg and 2.8 kg")}};
    return mix;
}

} // namespace

TEST(Sheets, a_run_sheet_of_300_hives_loses_none_and_says_its_header_on_every_page) {
    const QString path = write(sheet_of(a_run(300), head()), QStringLiteral("run-sheet-300.pdf"));
    const int pages = pages_of_pdf(path);
    EXPECT_GT(pages, 8);
    QStringList words = text_of_pdf(path).split(QLatin1Char(' '));
    for (int i = 1; i <= 300; ++i) {
        bool found = false;
        for (qsizetype w = 0; w + 1 < words.size() && !found; ++w) {
            found = words[w] == QStringLiteral("Hive") && words[w + 1] == QString::number(i);
        }
        EXPECT_TRUE(found) << "hive " << i;
    }
    for (int page = 1; page <= pages; ++page) {
        const QString text = text_of_page(path, page);
        EXPECT_TRUE(text.contains(QStringLiteral("From bag"))) << "page " << page;
        EXPECT_TRUE(text.contains(QStringLiteral("page %1 of %2").arg(page).arg(pages))) << "page " << page;
        EXPECT_TRUE(text.contains(QStringLiteral("Ford Bank"))) << "page " << page;
        EXPECT_TRUE(text.contains(QStringLiteral("marsh-end.soakbook · Entry 1 204 · printed 19 Nov 2026"))) << "page " << page;
    }
}

TEST(Sheets, a_note_longer_than_a_page_goes_on_overleaf) {
    PullList pull;
    pull.yard = QStringLiteral("Ford Bank");
    QString novel;
    for (int i = 0; i < 1500; ++i) {
        novel += QStringLiteral("word%1 ").arg(i);
    }
    pull.lines = {{QStringLiteral("Hive 1"), QStringLiteral("4"), QStringLiteral("S52E"), QStringLiteral("1 Sep"), QStringLiteral("12 Oct to 26 Oct"), QStringLiteral("open"), novel},
                  {QStringLiteral("Hive 2"), QStringLiteral("4"), QStringLiteral("S52E"), QStringLiteral("1 Sep"), QStringLiteral("12 Oct to 26 Oct"), QStringLiteral("open"), QString()}};
    const QString path = write(sheet_of(pull, head()), QStringLiteral("pull-long-note.pdf"));
    const QStringList words = text_of_pdf(path).split(QLatin1Char(' '));
    for (int i = 0; i < 1500; ++i) {
        EXPECT_TRUE(words.contains(QStringLiteral("word%1").arg(i))) << i;
    }
    EXPECT_TRUE(words.join(QLatin1Char(' ')).contains(QStringLiteral("Hive 2")));
}

TEST(Sheets, every_cell_lies_inside_its_column_and_on_the_page) {
    RegisterSheet book;
    book.range = QStringLiteral("1 Jan 2026 to 31 Dec 2026, all yards");
    book.acid_unit = QStringLiteral("g");
    book.keeper = QStringLiteral("Marsh End Bees, Low Lane 4, Netherby");
    book.total = QStringLiteral("60 treatments, 240 strips, 1.7 kg acid");
    for (int i = 0; i < 60; ++i) {
        book.lines.push_back({QStringLiteral("2 Sep 2026"), i % 5 == 0 ? QString() : QStringLiteral("20 Oct 2026"), QStringLiteral("Ford Bank"),
                              QStringLiteral("Hive %1").arg(i + 1), QStringLiteral("Oxalic acid strip, 42\u2009%"), QStringLiteral("S52E"),
                              QStringLiteral("B6H"), QStringLiteral("4"), QStringLiteral("28.4"), QStringLiteral("4 of 4"),
                              QStringLiteral("none entered"), QStringLiteral("Ida"),
                              i == 7 ? QStringLiteral("made void: wrong hive, see hive 9") : QString(), i == 7});
    }
    for (const PaperSize paper : {PaperSize::a4, PaperSize::letter}) {
        const PaperSheet sheet = sheet_of(book, head(paper));
        const SheetPages pages = set_pages(sheet);
        const QRectF room = QRectF(QPointF(), pages.page).marginsRemoved(sheet.page.margins).adjusted(-0.1, -0.1, 0.1, 0.1);
        for (const SheetPageInk& page : pages.pages) {
            for (const SetLines& set : page.texts) {
                for (int line = set.first; line < set.end; ++line) {
                    QRectF ink = set.text.line_ink(line).translated(set.at);
                    ink.translate(0, -set.text.line_top(set.first));
                    EXPECT_TRUE(room.contains(ink)) << qPrintable(set.text.words());
                    for (const SetRule& rule : page.rules) {
                        const bool upright = rule.line.dx() == 0;
                        const bool through = upright && rule.line.x1() > ink.left() + 0.1 && rule.line.x1() < ink.right() - 0.1 &&
                                             rule.line.y1() < ink.center().y() && rule.line.y2() > ink.center().y();
                        EXPECT_FALSE(through) << "a line of the table runs through: " << qPrintable(set.text.words());
                    }
                }
            }
        }
    }
    const QString path = write(sheet_of(book, head()), QStringLiteral("register.pdf"));
    EXPECT_NEAR(page_size_mm(path).width(), 297, 0.2);
    const QString text = text_of_pdf(path);
    for (const char* words : {"Register of treatments", "No harvest before", "Hive 60", "no authorised veterinary product", "made void"}) {
        EXPECT_TRUE(text.contains(QLatin1String(words))) << words;
    }
    write(sheet_of(book, head(PaperSize::letter)), QStringLiteral("register-letter.pdf"));
}

TEST(Sheets, the_mixing_sheet_has_the_amounts_the_cautions_and_room_to_write) {
    const PaperSheet sheet = sheet_of(a_mix(), head());
    const QString path = write(sheet, QStringLiteral("mixing-sheet.pdf"));
    EXPECT_EQ(pages_of_pdf(path), 1);
    const QString text = text_of_pdf(path);
    for (const char* words : {"Mixing sheet", "B7K", "7.8 kg", "1 can of 10 kg and 0.8 kg", "Pail P3F, whole", "Weighed", "Probe", "60 °C",
                              "acid-proof gloves", "safety data sheet", "Clear"}) {
        EXPECT_TRUE(text.contains(QLatin1String(words)) || text.contains(QString::fromUtf8(words))) << words;
    }
    std::size_t boxes = 0;
    for (const SheetPageInk& page : set_pages(sheet).pages) {
        boxes += page.boxes.size();
    }
    EXPECT_EQ(boxes, 3U + 3U + 2U + 14U); // before, weighing, before the soak, stirred and clear
}

TEST(Sheets, the_papers_for_a_yard_say_what_they_must) {
    PullList pull;
    pull.yard = QStringLiteral("Ford Bank");
    pull.day = QStringLiteral("14 Oct 2026");
    pull.total = QStringLiteral("48");
    for (int i = 0; i < 12; ++i) {
        pull.lines.push_back({QStringLiteral("Hive %1").arg(i + 1), QStringLiteral("4"), QStringLiteral("S52E"), QStringLiteral("2 Sep"),
                              QStringLiteral("12 Oct to 26 Oct"), i == 2 ? QStringLiteral("past") : QStringLiteral("open"), QString()});
    }
    const QString pulled = text_of_pdf(write(sheet_of(pull, head()), QStringLiteral("pull-list.pdf")));
    for (const char* words : {"Pull list", "Missing", "12 Oct to 26 Oct, past", "Not into a stove or smoker"}) {
        EXPECT_TRUE(pulled.contains(QLatin1String(words))) << words;
    }
    LoadOut load;
    load.round = QStringLiteral("Late summer round");
    load.day = QStringLiteral("2 Sep 2026");
    load.total = QStringLiteral("104");
    load.bags = a_run(1).bags;
    load.yards = {{QStringLiteral("Ford Bank"), QStringLiteral("14"), QStringLiteral("56"), QStringLiteral("2 Sep"), QString()},
                  {QStringLiteral("Quarry Top"), QStringLiteral("12"), QStringLiteral("48"), QStringLiteral("3 Sep"), QStringLiteral("key at the farm")}};
    const QString loaded = text_of_pdf(write(sheet_of(load, head()), QStringLiteral("load-out.pdf")));
    for (const char* words : {"Load-out", "S53X", "opened 11 Aug", "Quarry Top", "key at the farm"}) {
        EXPECT_TRUE(loaded.contains(QLatin1String(words))) << words;
    }
    const QString run = text_of_pdf(write(sheet_of(a_run(14), head()), QStringLiteral("run-sheet.pdf")));
    for (const char* words : {"Run sheet", "Hung", "weak, look at the queen", "not lawful everywhere", "ivy flow from 20 Sep"}) {
        EXPECT_TRUE(run.contains(QLatin1String(words))) << words;
    }
}

TEST(Sheets, a_batch_sheet_shows_each_part_of_its_course) {
    BatchSheet batch;
    batch.batch = QStringLiteral("B6H");
    batch.state = QStringLiteral("closed 20 Nov 2026");
    batch.facts = {{QStringLiteral("Strength"), QStringLiteral("42\u2009%")}, {QStringLiteral("Mixed"), QStringLiteral("11 Nov 2026")},
                   {QStringLiteral("Total"), QStringLiteral("30\u2009kg")}, {QStringLiteral("Strips"), QStringLiteral("540")}};
    SheetTable inputs;
    inputs.columns = {{QStringLiteral("What"), 2}, {QStringLiteral("Planned, kg"), 1, ColumnKind::number}, {QStringLiteral("Weighed, kg"), 1, ColumnKind::number}};
    inputs.rows = {{{QStringLiteral("Acid"), QStringLiteral("12.6"), QStringLiteral("12.58")}},
                   {{QStringLiteral("Glycerine"), QStringLiteral("17.4"), QStringLiteral("17.41")}},
                   {{QStringLiteral("Together"), QStringLiteral("30"), QStringLiteral("29.99")}, false, true}};
    batch.parts = {{QStringLiteral("Mix"), QStringLiteral("planned and weighed agree"), inputs},
                   {QStringLiteral("Leftovers"), QStringLiteral("11.4 kg in pail P3F, 0.3 kg unexplained"), {}},
                   {QStringLiteral("Changes"), QString(), {QString(), {{QStringLiteral("When"), 1}, {QStringLiteral("What"), 3}}, {}, 6, {}}}};
    const QString text = text_of_pdf(write(sheet_of(batch, head()), QStringLiteral("batch-sheet.pdf")));
    for (const char* words : {"Batch B6H", "closed 20 Nov 2026", "planned and weighed agree", "29.99", "0.3 kg unexplained", "Nothing is written down."}) {
        EXPECT_TRUE(text.contains(QLatin1String(words))) << words;
    }
}
