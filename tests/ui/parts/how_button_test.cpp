// SPDX-License-Identifier: GPL-3.0-or-later
// "How?" beside a figure and in a form: by mouse, by key, read aloud, and without a cut text.
#include "core/work/facts.h"
#include "core/work/how.h"
#include "tests/ui/parts/fixed_clock.h"
#include "tests/ui/parts/gallery.h"
#include "ui/parts/cards.h"
#include "ui/parts/form.h"
#include "ui/parts/how_button.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/theme.h"

#include <QApplication>
#include <QDir>
#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QImage>
#include <QLabel>
#include <QPointer>
#include <QShortcut>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

namespace soakbook::ui {
namespace {

using work::How;
using work::HowKind;

std::vector<How> acid_and_rate() {
    return {{HowKind::acid_in_strip,
             {work::fact(maths::grams(33.9)), work::fact(maths::grams(11)), work::fact(maths::percent(40)),
              work::fact(maths::grams(9.16)), work::fact(maths::grams(6.542))}},
            {HowKind::mite_rate,
             {work::fact(15), work::fact(148), work::fact(maths::Fraction{101'351}), work::fact(maths::Fraction{62'386}),
              work::fact(maths::Fraction{160'487})}}};
}

/// A page: a card with a figure and its "How?" in a row, and a form.
class HowButtons : public testing::Test {
protected:
    HowButtons() : habits(fixed_clock) {
        auto* whole = new QHBoxLayout(&window);
        auto* page = new PageScroll;
        whole->addWidget(page);
        card = new Card(QStringLiteral("Mites"));
        row = new QHBoxLayout;
        row->addWidget(make_label(QStringLiteral("10.1 % of bees carry a mite"), Type::body));
        how = new HowButton(acid_and_rate(), habits);
        row->addWidget(how);
        row->addStretch(1);
        card->column()->addLayout(row);
        below = make_label(QStringLiteral("Counted on 3 Oct"), Type::small);
        card->column()->addWidget(below);
        page->column()->addWidget(card);
        form = new FormFrame(habits, QStringLiteral("Weigh a sample"));
        weight = form->add(QStringLiteral("Weight"), new MassField(habits, MassSize::small), QStringLiteral("weight"));
        form->result()->set_text(QStringLiteral("9.16 g acid a strip"));
        form->result()->set_how({acid_and_rate().front()}, habits);
        form->set_primary(QStringLiteral("Log it"));
        page->column()->addWidget(form);
        page->column()->addStretch(1);
        window.resize(900, 700);
        window.show();
        QApplication::setActiveWindow(&window);
        QTest::qWait(20);
        form_how = form->result()->findChild<HowButton*>();
    }
    ~HowButtons() override { apply_theme(*qApp, Look::light, 100); }

    static void key(Qt::Key which) { QTest::keyClick(QApplication::focusWidget(), which); }

    Habits habits;
    QWidget window;
    Card* card;
    QHBoxLayout* row;
    HowButton* how;
    QLabel* below;
    FormFrame* form;
    MassField* weight;
    HowButton* form_how = nullptr;
};

TEST_F(HowButtons, a_click_opens_the_panel_under_the_row_of_the_figure) {
    ASSERT_TRUE(how->isVisible());
    EXPECT_FALSE(how->panel()->isVisible());
    const int before = below->mapTo(card, QPoint()).y();
    QTest::mouseClick(how, Qt::LeftButton);
    QTest::qWait(20);
    ASSERT_TRUE(how->panel()->isVisible());
    EXPECT_FALSE(how->panel()->isWindow());
    EXPECT_EQ(how->panel()->parentWidget(), card);
    EXPECT_GE(how->panel()->y(), how->mapTo(card, QPoint(0, how->height())).y());
    EXPECT_GT(below->mapTo(card, QPoint()).y(), before) << "nothing is covered";
    EXPECT_TRUE(how->panel()->findChild<QLabel*>()->text().contains(QStringLiteral("9.16")));
    QTest::mouseClick(how, Qt::LeftButton);
    EXPECT_FALSE(how->panel()->isVisible());
    QTest::mouseClick(how, Qt::LeftButton);
    EXPECT_EQ(card->findChildren<QFrame*>(QString(), Qt::FindDirectChildrenOnly).count(how->panel()), 1);
    EXPECT_TRUE(how->panel()->isVisible());
}

TEST_F(HowButtons, the_key_opens_and_closes_the_how_of_the_form_one_types_in) {
    weight->take_focus();
    QWidget* typed_in = QApplication::focusWidget();
    key(Qt::Key_F3);
    EXPECT_TRUE(form_how->panel()->isVisible());
    EXPECT_FALSE(how->is_open()) << "that of another card stays as it is";
    EXPECT_EQ(QApplication::focusWidget(), typed_in) << "one types on";
    key(Qt::Key_F3);
    EXPECT_FALSE(form_how->panel()->isVisible());
}

TEST_F(HowButtons, esc_after_the_key_closes_the_panel_and_not_the_form) {
    QSignalSpy left(form, &FormFrame::cancelled);
    weight->take_focus();
    key(Qt::Key_F3);
    ASSERT_TRUE(form_how->is_open());
    key(Qt::Key_Escape);
    EXPECT_FALSE(form_how->is_open());
    EXPECT_EQ(left.count(), 0);
    key(Qt::Key_F3);
    key(Qt::Key_1);
    key(Qt::Key_Escape);
    EXPECT_TRUE(form_how->is_open()) << "after other typing Esc is the form's again";
}

TEST_F(HowButtons, without_a_form_around_the_key_asks_the_whole_page) {
    window.setFocusPolicy(Qt::StrongFocus);
    window.setFocus();
    key(Qt::Key_F3);
    EXPECT_TRUE(how->is_open());
    EXPECT_TRUE(form_how->is_open());
    key(Qt::Key_F3);
    EXPECT_FALSE(how->is_open());
    EXPECT_FALSE(form_how->is_open());
}

TEST_F(HowButtons, a_figure_stays_in_sight_when_its_panel_opens) {
    window.resize(900, 240);
    QTest::qWait(20);
    how->setFocus();
    key(Qt::Key_F3);
    QTest::qWait(40);
    ASSERT_TRUE(how->is_open());
    ASSERT_GT(how->panel()->height(), 200) << "higher than the page";
    const QRect seen(how->mapTo(&window, QPoint()), how->size());
    EXPECT_TRUE(window.rect().contains(seen)) << seen.y();
    EXPECT_EQ(how->visibleRegion().boundingRect().size(), how->size());
}

TEST_F(HowButtons, by_keyboard_alone_and_esc_goes_no_further_than_the_panel) {
    QShortcut page_back(QKeySequence(Qt::Key_Escape), &window);
    QSignalSpy went_back(&page_back, &QShortcut::activated);
    EXPECT_NE(how->focusPolicy() & Qt::TabFocus, 0);
    how->setFocus(Qt::TabFocusReason);
    key(Qt::Key_Space);
    EXPECT_TRUE(how->is_open());
    key(Qt::Key_Escape);
    EXPECT_FALSE(how->is_open());
    EXPECT_EQ(went_back.count(), 0);
    key(Qt::Key_Escape);
    EXPECT_EQ(went_back.count(), 1) << "with nothing open Esc is the page's";
}

TEST_F(HowButtons, what_the_panel_says_is_read_aloud) {
    EXPECT_TRUE(how->accessibleName().contains(QStringLiteral("Acid in a strip"))) << how->accessibleName().toStdString();
    EXPECT_TRUE(how->accessibleDescription().isEmpty());
    how->set_open(true);
    EXPECT_EQ(how->accessibleDescription(), how->plain_text());
    EXPECT_EQ(how->panel()->accessibleName(), how->plain_text());
    EXPECT_TRUE(how->plain_text().contains(QStringLiteral("Newcombe")));
    EXPECT_FALSE(how->plain_text().contains(QLatin1Char('<')));
}

TEST_F(HowButtons, a_figure_that_goes_takes_its_how_along) {
    how->set_open(true);
    how->set_hows({}, habits);
    EXPECT_FALSE(how->isVisible());
    EXPECT_FALSE(how->panel()->isVisible());
    how->set_hows(acid_and_rate(), habits);
    EXPECT_TRUE(how->panel()->isVisible()) << "it comes back as it was left";
    QPointer<QFrame> panel = how->panel();
    delete how;
    EXPECT_TRUE(panel.isNull());
    form->result()->clear();
    EXPECT_FALSE(form_how->isVisible());
}

TEST_F(HowButtons, a_card_still_takes_words_of_its_own) {
    form->result()->set_how(QStringLiteral("Mean of 10 strips less the dry weight."));
    weight->take_focus();
    key(Qt::Key_F3);
    EXPECT_EQ(form_how->panel()->findChild<QLabel*>()->text(), QStringLiteral("Mean of 10 strips less the dry weight."));
}

TEST_F(HowButtons, in_a_grid_or_without_a_parent_it_is_never_a_window) {
    auto* grid_card = new Card;
    auto* grid = new QGridLayout;
    auto* loose = new HowButton(acid_and_rate(), habits);
    EXPECT_FALSE(loose->isVisible());
    grid->addWidget(make_label(QStringLiteral("9.16 g"), Type::body), 0, 0);
    grid->addWidget(loose, 0, 1);
    grid_card->column()->addLayout(grid);
    card->column()->addWidget(grid_card);
    QTest::qWait(20);
    ASSERT_TRUE(loose->isVisible());
    loose->set_open(true);
    EXPECT_EQ(loose->panel()->parentWidget(), grid_card);
    EXPECT_FALSE(loose->panel()->isWindow());
}

TEST_F(HowButtons, nothing_is_cut_off_light_and_dark_at_100_to_200_per_cent) {
    how->set_open(true);
    form_how->set_open(true);
    const QString folder = qEnvironmentVariable("SOAKBOOK_PICTURES");
    for (const Look look : {Look::light, Look::dark}) {
        for (const int large : {100, 150, 200}) {
            apply_theme(*qApp, look, large);
            QTest::qWait(40);
            EXPECT_TRUE(clipped_texts(&window).isEmpty()) << large << ": " << clipped_texts(&window).join(QLatin1Char('|')).toStdString();
            // Painted in ink on the panel's own paper.
            const QImage panel = how->panel()->grab().toImage();
            EXPECT_EQ(panel.pixelColor(panel.width() / 2, 3), colours(look).paper);
            double strongest = 1.0;
            for (int y = 0; y < panel.height(); ++y) {
                for (int x = 0; x < panel.width() / 2; ++x) {
                    strongest = std::max(strongest, contrast(panel.pixelColor(x, y), colours(look).paper));
                }
            }
            EXPECT_GE(strongest, 4.5) << "WCAG 2.1, success criterion 1.4.3";
            if (!folder.isEmpty()) {
                QDir().mkpath(folder);
                EXPECT_TRUE(window.grab().save(QStringLiteral("%1/how-%2-%3.png")
                                                   .arg(folder, look == Look::dark ? QStringLiteral("dark") : QStringLiteral("light"))
                                                   .arg(large)));
            }
        }
    }
}

} // namespace
} // namespace soakbook::ui
