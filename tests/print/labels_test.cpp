// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/print/example.h"
#include "tests/print/read_back.h"
#include "ui/print/label_paint.h"
#include "ui/print/label_printer.h"

#include <QImage>

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>

using namespace soakbook;
using namespace soakbook::ui;
using namespace soakbook::ui::test;

namespace {

constexpr double least_area = 100; // mm2: 1 cm2 for each pictogram (UN GHS practice, as the labels' own law asks)

QString print_labels(const std::vector<LabelContent>& labels, const LabelSheet& sheet, int start, const QString& name,
                     const LabelStyle& style = english()) {
    const auto run = set_labels(labels, sheet, start, style);
    if (!run) {
        ADD_FAILURE() << "a label was refused: " << qPrintable(too_small_words(run.error().why, style.locale));
        return {};
    }
    const QString path = picture_path(name);
    const auto failure = write_pdf(paper_of(std::make_shared<LabelRun>(*run)), path);
    EXPECT_FALSE(failure.has_value());
    return path;
}

QString all_words_of(const LabelLayout& label) {
    QString all;
    for (const PlacedText& text : label.texts) {
        all += text.text.words() + QLatin1Char(' ');
    }
    return plain(all);
}

bool left_out(const LabelLayout& label, LabelPiece piece) {
    return std::find(label.left_out.begin(), label.left_out.end(), piece) != label.left_out.end();
}

// Everything printed lies on the label, no line is wider than its room, no two pieces lie over each other.
void expect_sound(const LabelLayout& label) {
    const QRectF page = QRectF(QPointF(), label.size).adjusted(-0.01, -0.01, 0.01, 0.01);
    std::vector<QRectF> ink;
    for (const PlacedText& placed : label.texts) {
        for (int i = 0; i < placed.text.line_count(); ++i) {
            const QRectF line = placed.text.line_ink(i).translated(placed.at);
            EXPECT_TRUE(page.contains(line)) << qPrintable(placed.text.words()) << " line " << i;
            ink.push_back(line);
        }
    }
    for (const PlacedPictogram& placed : label.pictograms) {
        EXPECT_TRUE(page.contains(placed.square));
        EXPECT_GE(diamond_area(placed.square.width()), least_area);
        ink.push_back(placed.square);
    }
    if (label.square) {
        EXPECT_TRUE(page.contains(label.square->box().adjusted(0.05, 0.05, -0.05, -0.05)));
        EXPECT_GE(label.square->module, 0.4); // ISO/IEC 18004 asks 4 light modules around; 0.4 mm is common practice
        const double quiet = (label.square->box().width() - label.square->square.side() * label.square->module) / 2;
        EXPECT_NEAR(quiet, 4 * label.square->module, 1e-9);
        ink.push_back(label.square->box());
    }
    for (std::size_t a = 0; a < ink.size(); ++a) {
        for (std::size_t b = a + 1; b < ink.size(); ++b) {
            const QRectF both = ink[a].intersected(ink[b]);
            EXPECT_FALSE(both.width() > 0.05 && both.height() > 0.05)
                << "pieces " << a << " and " << b << " lie over each other by " << both.width() << " x " << both.height() << " mm";
        }
    }
}

void expect_minimum(const LabelLayout& label, const LabelContent& content, const LabelStyle& style) {
    const QString words = all_words_of(label);
    const maths::Hazard& hazard = content.hazard(style.statements);
    EXPECT_TRUE(words.contains(content.code));
    EXPECT_TRUE(words.contains(QStringLiteral("Use by")));
    EXPECT_TRUE(words.contains(signal_word(hazard.word)));
    EXPECT_TRUE(words.contains(hazard_statements(hazard)));
    EXPECT_EQ(label.pictograms.size(), hazard.pictograms.size());
}

} // namespace

TEST(Labels, a_bag_at_42_percent_says_danger_with_two_pictograms) {
    const LabelContent bag = a_bag();
    // Handbook of the trade, section 12: 30-50 %: Danger, H302 + H318, GHS05 and GHS07 (UN GHS).
    const auto label = lay_out_label(bag, {101.6, 60}, english());
    ASSERT_TRUE(label);
    const QString words = all_words_of(*label);
    EXPECT_TRUE(words.contains(QStringLiteral("DANGER")));
    EXPECT_TRUE(words.contains(QStringLiteral("Harmful if swallowed.")));
    EXPECT_TRUE(words.contains(QStringLiteral("Causes serious eye damage.")));
    EXPECT_TRUE(words.contains(QStringLiteral("own use, not for sale")));
    EXPECT_EQ(label->pictograms.size(), 2U);
    EXPECT_TRUE(label->left_out.empty()) << qPrintable(left_out_words(label->left_out));
    expect_sound(*label);
}

TEST(Labels, every_stock_sheet_carries_a_bag_a_pail_and_a_reserved_bag) {
    for (const LabelSheet& sheet : stock_sheets()) {
        for (const LabelContent& content : {a_bag(), a_pail(), a_reserved_bag()}) {
            SCOPED_TRACE(qPrintable(sheet_name(sheet) + QLatin1Char(' ') + content.code));
            const auto label = lay_out_label(content, sheet.label, english());
            ASSERT_TRUE(label) << qPrintable(too_small_words(label.error(), QLocale()));
            expect_sound(*label);
            EXPECT_GE(label->plan.body_points, least_body_points);
            EXPECT_TRUE(label->square.has_value());
            if (content.kind == LabelKind::bag) {
                expect_minimum(*label, content, english());
            }
        }
    }
}

TEST(Labels, precautions_are_the_first_to_go_and_the_minimum_never_goes) {
    const LabelContent bag = a_bag();
    bool precautions_gone_alone = false;
    std::size_t most_left_out = 0;
    for (double height = 70; height >= 20; height -= 1) {
        const auto label = lay_out_label(bag, {63.5, height}, english());
        if (!label) {
            break;
        }
        SCOPED_TRACE(height);
        expect_sound(*label);
        expect_minimum(*label, bag, english());
        if (!label->left_out.empty()) {
            EXPECT_TRUE(left_out(*label, LabelPiece::handling));
            precautions_gone_alone |= label->left_out.size() == 1;
        }
        if (left_out(*label, LabelPiece::first_aid_eyes)) {
            EXPECT_TRUE(left_out(*label, LabelPiece::handling));
        }
        if (left_out(*label, LabelPiece::square)) {
            EXPECT_TRUE(left_out(*label, LabelPiece::first_aid_eyes) && left_out(*label, LabelPiece::handling));
        }
        EXPECT_GE(label->left_out.size() + 3, most_left_out);
        most_left_out = std::max(most_left_out, label->left_out.size());
        const QString words = all_words_of(*label);
        EXPECT_EQ(words.contains(plain(handling_words(bag.hazard_from_rev_9))), !left_out(*label, LabelPiece::handling));
        EXPECT_EQ(words.contains(QStringLiteral("Made by")), !left_out(*label, LabelPiece::maker));
    }
    EXPECT_TRUE(precautions_gone_alone);
    EXPECT_GT(most_left_out, 5U);
}

TEST(Labels, a_size_too_small_for_the_minimum_is_refused_with_one_that_would_do) {
    const LabelContent bag = a_bag();
    for (const QSizeF size : {QSizeF(38, 21.2), QSizeF(20, 20), QSizeF(48.5, 16.9), QSizeF(14, 100)}) {
        const auto label = lay_out_label(bag, size, english());
        ASSERT_FALSE(label) << size.width() << " x " << size.height();
        const QSizeF least = label.error().least;
        EXPECT_GE(least.width() + 0.01, size.width());
        EXPECT_GE(least.height() + 0.01, size.height());
        const auto larger = lay_out_label(bag, least, english());
        ASSERT_TRUE(larger) << least.width() << " x " << least.height();
        expect_sound(*larger);
        const QString words = too_small_words(label.error(), QLocale(QLocale::English));
        EXPECT_TRUE(words.contains(QStringLiteral("too small")));
        EXPECT_TRUE(words.contains(QString::number(least.width())));
    }
}

TEST(Labels, weak_liquid_carries_a_weaker_label) {
    // UN GHS chapter 3.3: 1 to 3 % H319 (irritation), from 3 % H318 (damage).
    const auto weak = lay_out_label(a_bag(1, 2), {101.6, 60}, english());
    ASSERT_TRUE(weak);
    EXPECT_TRUE(all_words_of(*weak).contains(QStringLiteral("WARNING Oxalic acid 2 % in glycerine. Causes serious eye irritation.")));
    EXPECT_EQ(weak->pictograms.size(), 1U);
    const auto none = lay_out_label(a_bag(1, 0.5), {101.6, 60}, english());
    ASSERT_TRUE(none);
    EXPECT_TRUE(none->pictograms.empty());
    expect_sound(*none);
}

TEST(Labels, the_two_editions_of_the_statements_are_never_mixed) {
    LabelStyle style = english();
    style.statements = maths::StatementSet::up_to_rev_8;
    const auto older = lay_out_label(a_bag(), {101.6, 67.7}, style);
    style.statements = maths::StatementSet::from_rev_9;
    const auto newer = lay_out_label(a_bag(), {101.6, 67.7}, style);
    ASSERT_TRUE(older && newer);
    EXPECT_TRUE(all_words_of(*older).contains(QStringLiteral("poison center")));
    EXPECT_FALSE(all_words_of(*older).contains(QStringLiteral("Get medical help")));
    EXPECT_TRUE(all_words_of(*newer).contains(QStringLiteral("Get medical help")));
    EXPECT_FALSE(all_words_of(*newer).contains(QStringLiteral("poison center")));
}

TEST(Labels, a_reserved_label_has_lines_for_count_weight_sealed_and_use_by) {
    for (const QSizeF size : {QSizeF(63.5, 38.1), QSizeF(99.1, 67.7)}) {
        const auto label = lay_out_label(a_reserved_bag(), size, english());
        ASSERT_TRUE(label);
        expect_sound(*label);
        EXPECT_EQ(label->write_lines.size(), 4U);
        const QString words = all_words_of(*label);
        for (const char* name : {"Strips", "Weight", "Sealed", "Use by"}) {
            EXPECT_TRUE(words.contains(QLatin1String(name))) << name;
        }
        for (const QLineF& line : label->write_lines) {
            EXPECT_GE(line.length(), 12) << "too short for a pen";
        }
    }
}

TEST(Labels, long_makers_and_long_words_are_broken_and_never_cut_off) {
    LabelContent bag = a_bag();
    bag.maker = {QStringLiteral("Bienenzuchtgenossenschaftsverwaltungsgemeinschaft Niedermoosbrunnenheim-Oberlindenthalerhof"),
                 QStringLiteral("Wanderbienenstandortverzeichnisstrasse 117, 00000 Donaudampfschifffahrtsgesellschaftshausen")};
    for (const QSizeF size : {QSizeF(99.1, 67.7), QSizeF(63.5, 60), QSizeF(40, 120)}) {
        SCOPED_TRACE(size.width());
        const auto label = lay_out_label(bag, size, english());
        ASSERT_TRUE(label);
        expect_sound(*label);
        QString words = all_words_of(*label);
        if (!left_out(*label, LabelPiece::maker)) {
            EXPECT_TRUE(words.contains(QStringLiteral("Donaudampfschifffahrtsgesellschaftshausen")));
        }
    }
}

TEST(Labels, rolls_of_any_shape_come_out_sound) {
    for (const QSizeF size : {QSizeF(62, 100), QSizeF(50, 80), QSizeF(100, 50), QSizeF(102, 152), QSizeF(36, 90), QSizeF(150, 40), QSizeF(210, 148)}) {
        for (const LabelContent& content : {a_bag(), a_pail(), a_reserved_bag()}) {
            SCOPED_TRACE(qPrintable(QStringLiteral("%1 x %2 %3").arg(size.width()).arg(size.height()).arg(content.code)));
            const auto label = lay_out_label(content, size, english());
            if (label) {
                expect_sound(*label);
                QImage picture(qRound(size.width() * 10), qRound(size.height() * 10), QImage::Format_RGB32);
                picture.fill(Qt::white);
                QPainter painter(&picture);
                painter.setRenderHint(QPainter::Antialiasing);
                painter.scale(10, 10);
                paint_label(painter, *label, {});
                painter.end();
                picture.save(picture_path(QStringLiteral("roll-%1x%2-%3.png").arg(size.width()).arg(size.height()).arg(content.code)));
            } else {
                EXPECT_TRUE(content.reserved) << qPrintable(too_small_words(label.error(), QLocale()));
            }
        }
    }
}

TEST(Labels, two_hundred_labels_are_read_back_text_and_square_alike) {
    const std::vector<LabelContent> labels = bags(200);
    const QString path = print_labels(labels, stock_sheets()[0], 0, QStringLiteral("labels-21.pdf"));
    EXPECT_EQ(pages_of_pdf(path), 10); // 200 on sheets of 21
    EXPECT_NEAR(page_size_mm(path).width(), 210, 0.2);
    EXPECT_NEAR(page_size_mm(path).height(), 297, 0.2);
    const QString text = text_of_pdf(path);
    QStringList codes = codes_in_pdf(path);
    codes.removeDuplicates();
    EXPECT_EQ(codes.size(), 200);
    for (const LabelContent& label : labels) {
        EXPECT_TRUE(text.contains(label.code)) << qPrintable(label.code);
        EXPECT_TRUE(codes.contains(label.code)) << qPrintable(label.code);
    }
    EXPECT_EQ(text.count(QStringLiteral("DANGER")), 200);
    EXPECT_EQ(text.count(QStringLiteral("Use by 18 Nov 2027")), 200);
    EXPECT_EQ(text.count(QStringLiteral("60 oxalic acid strips · 7.1 g acid each")), 200);
}

TEST(Labels, every_text_that_was_set_is_in_the_file) {
    for (std::size_t i = 0; i < stock_sheets().size(); ++i) {
        const LabelSheet sheet = stock_sheets()[i];
        for (const LabelContent& content : {a_bag(), a_pail(), a_reserved_bag()}) {
            const QString path = print_labels({content}, sheet, 0, QStringLiteral("one-%1-%2.pdf").arg(i).arg(content.code));
            const auto label = lay_out_label(content, sheet.label, english());
            ASSERT_TRUE(label);
            // A word that ends a line with its hyphen is read back without it.
            const QString text = text_of_pdf(path).remove(QLatin1Char('-'));
            for (const PlacedText& placed : label->texts) {
                for (const QString& word : plain(placed.text.words()).remove(QLatin1Char('-')).split(QLatin1Char(' '))) {
                    EXPECT_TRUE(text.contains(word)) << qPrintable(word);
                }
            }
            EXPECT_EQ(codes_in_pdf(path), QStringList{content.code});
        }
    }
}

TEST(Labels, printing_starts_at_the_label_that_is_named) {
    // 21 on a sheet, from label 20 on: two on the first sheet, one on the second.
    const QString path = print_labels(bags(3), stock_sheets()[0], 19, QStringLiteral("start-20.pdf"));
    EXPECT_EQ(pages_of_pdf(path), 2);
    EXPECT_TRUE(text_of_page(path, 1).contains(QStringLiteral("S100X")));
    EXPECT_TRUE(text_of_page(path, 1).contains(QStringLiteral("S101X")));
    EXPECT_TRUE(text_of_page(path, 2).contains(QStringLiteral("S102X")));
    const QImage page = picture_of_page(path, 1, 72).convertToFormat(QImage::Format_Grayscale8);
    ASSERT_FALSE(page.isNull());
    // The 19 labels before stay white: nothing dark above the last row, nor in its first column.
    const auto any_ink = [&](QRectF mm) {
        const QRectF dots(mm.topLeft() * (72 / 25.4), mm.size() * (72 / 25.4));
        for (int y = qRound(dots.top()); y < qRound(dots.bottom()); ++y) {
            for (int x = qRound(dots.left()); x < qRound(dots.right()); ++x) {
                if (qGray(page.pixel(x, y)) < 200) {
                    return true;
                }
            }
        }
        return false;
    };
    EXPECT_FALSE(any_ink({0, 0, 209, 15.15 + 6 * 38.1 - 0.5}));
    EXPECT_FALSE(any_ink({0, 15.15 + 6 * 38.1, 72, 38}));
    EXPECT_TRUE(any_ink({73.3, 15.15 + 6 * 38.1, 63, 38}));
}

TEST(Labels, a_printer_of_few_dots_gets_whole_dots) {
    LabelSheet roll = roll_label({62, 60});
    roll.dots_per_inch = 203;
    const auto run = set_labels({a_bag()}, roll, 0, english());
    ASSERT_TRUE(run);
    ASSERT_TRUE(run->labels[0].square);
    const double dots = run->labels[0].square->module * 203 / 25.4;
    EXPECT_NEAR(dots, std::round(dots), 1e-9);
    const QString path = print_labels({a_bag()}, roll, 0, QStringLiteral("roll-203.pdf"));
    EXPECT_NEAR(page_size_mm(path).width(), 62, 0.2);
    EXPECT_EQ(codes_in_pdf(path, 203), QStringList{a_bag().code});
}

TEST(Labels, a_thousand_labels_are_set_alike_from_the_first_one_on) {
    const std::vector<LabelContent> labels = bags(1000);
    const auto run = set_labels(labels, stock_sheets()[0], 0, english());
    ASSERT_TRUE(run);
    EXPECT_EQ(run->pages(), 48); // 1000 / 21, rounded up
    for (const LabelLayout& label : run->labels) {
        EXPECT_EQ(label.plan.kept, run->labels.front().plan.kept);
    }
}

TEST(Labels, nowhere_is_it_called_a_legal_classification) {
    const QString text = text_of_pdf(print_labels({a_bag()}, roll_label({150, 100}), 0, QStringLiteral("large.pdf")));
    EXPECT_TRUE(text.contains(QStringLiteral("DANGER")));
    EXPECT_FALSE(text.contains(QStringLiteral("classification"), Qt::CaseInsensitive));
    EXPECT_FALSE(text.contains(QStringLiteral("compliant"), Qt::CaseInsensitive));
}
