// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/grid_page.h"

#include "ui/parts/cards.h"
#include "ui/parts/draft_keeper.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/how_button.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/rows_model.h"
#include "ui/parts/theme.h"
#include "ui/yards/low_table.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

namespace soakbook::ui {

GridPage::GridPage(Desk& desk, const QString& name, const QString& spoken_name, const QString& enter_words, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_scroll(new PageScroll), m_sentence(new Sentence), m_form(new FormFrame(desk)),
      m_heading(make_label({}, Type::heading, nullptr, true)), m_aside(make_soft_label({}, Type::body)), m_buttons(new FlowLayout(8, 8)),
      m_how(new HowButton), m_complaint(make_label({}, Type::body, nullptr, true)), m_table(new LowTable(QStringLiteral("yards/") + name, spoken_name, 6)),
      m_cautions(new QVBoxLayout) {
    setObjectName(name + QStringLiteral("_page"));
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_scroll);

    auto* figures = new Card;
    figures->column()->addWidget(m_sentence);
    m_scroll->column()->addWidget(figures);
    auto* card = new Card;
    card->set_flush();
    card->column()->addWidget(m_form, 1);
    m_scroll->column()->addWidget(card, 1);
    m_scroll->column()->addLayout(m_cautions);

    m_aside->setWordWrap(false);
    m_how->setObjectName(name + QStringLiteral("_how"));
    m_buttons->addWidget(m_aside);
    m_buttons->addWidget(m_how);
    //: A button that goes back to the yard
    QPushButton* away = add_button(tr("Back"), name + QStringLiteral("_back"));
    connect(away, &QPushButton::clicked, this, &GridPage::left);
    m_form->set_primary(enter_words);
    m_form->primary()->setObjectName(name + QStringLiteral("_enter"));
    lay_form();
    //: Quiet button: what was typed into a grid and not entered goes
    m_give_up = add_button(tr("Give up what was typed"), name + QStringLiteral("_give_up"));
    m_give_up->hide();
    connect(m_give_up, &QPushButton::clicked, this, [this] {
        m_form->drafts().drop();
        m_form->start_again();
        set_complaint({});
        forget_typing();
        settle_give_up();
        take_focus();
    });

    m_complaint->setObjectName(name + QStringLiteral("_complaint"));
    m_complaint->setProperty("kind", QStringLiteral("complaint"));
    m_complaint->hide();
    m_table->setObjectName(name + QStringLiteral("_grid"));
    m_table->setSelectionBehavior(QAbstractItemView::SelectItems);
    // Rows stay where they are while somebody types down a column.
    m_table->setSortingEnabled(false);

    // Esc goes back at once: what was typed stays in the grid.
    auto* back = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    back->setContext(Qt::WidgetWithChildrenShortcut);
    connect(back, &QShortcut::activated, this, &GridPage::left);
    connect(m_form, &FormFrame::edited, this, [this] {
        figure();
        show_how();
    });
    connect(m_table, &RecordTable::current_changed, this, &GridPage::show_how);
}

void GridPage::lay_form() {
    // From top to bottom: heading and buttons, what the form has to say, its fields, the grid. All are the form's own, so
    // that its keys work everywhere.
    auto* head = new QWidget;
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(card_padding, 10, card_padding, 10);
    row->setSpacing(16);
    row->addWidget(m_heading, 1);
    auto* buttons = new QWidget;
    buttons->setLayout(m_buttons);
    row->addWidget(buttons);

    auto* column = static_cast<QVBoxLayout*>(m_form->layout());
    column->setSpacing(0);
    column->removeWidget(m_form->foot());
    // The grid takes what is left of the page, not the room under the fields.
    for (int i = column->count() - 1; i >= 0; --i) {
        if (column->itemAt(i)->spacerItem() != nullptr) {
            delete column->takeAt(i);
        }
    }
    column->insertWidget(0, head);
    column->insertWidget(1, m_form->foot());
    column->addWidget(m_complaint);
    column->addWidget(m_table, 1);
    m_complaint->setContentsMargins(card_padding, 0, card_padding, 8);
    m_form->foot()->layout()->setContentsMargins(card_padding, 0, card_padding, 4);
    m_form->body()->layout()->setContentsMargins(card_padding, 0, card_padding, 12);
    m_form->body()->setMaximumWidth(scaled(720));
}

void GridPage::show_grid_refusals() {
    // The words stand under the head; the keyboard goes into the cell.
    auto* nothing = new QWidget;
    nothing->setMaximumHeight(0);
    m_form->add_widget(nothing, QStringLiteral("rows"), [this](const QString& rest, const QString& words) { place_refusal(rest, words); });
}

void GridPage::take_focus() {
    if (m_table->model() != nullptr && m_table->model()->rowCount() > 0) {
        if (!m_table->currentIndex().isValid()) {
            m_table->setCurrentIndex(m_table->model()->index(0, m_first_column));
        }
        m_table->setFocus();
    } else {
        m_form->take_focus();
    }
}

RecordTable* GridPage::table() const {
    return m_table;
}

void GridPage::set_heading(const QString& text) {
    m_heading->setText(text);
}

void GridPage::set_aside(const QString& text) {
    m_aside->setText(text);
    m_aside->setVisible(!text.isEmpty());
}

QPushButton* GridPage::add_button(const QString& words, const QString& object_name) {
    auto* button = new QPushButton(words);
    button->setObjectName(object_name);
    button->setAutoDefault(false);
    m_buttons->addWidget(button);
    m_buttons->addWidget(m_form->primary());
    return button;
}

void GridPage::set_grid(RowsModelBase* model, const std::vector<int>& widths, int stretched_column, std::vector<int> may_go) {
    m_table->set_start_widths(widths);
    m_table->set_stretched_column(stretched_column);
    m_table->set_rows_model(model);
    m_may_go = std::move(may_go);
    fit_columns();
}

void GridPage::add_caution(const QString& text) {
    m_cautions->addWidget(new Caution(text));
}

void GridPage::fit_columns() {
    m_table->set_spared_columns(m_may_go);
}

QString GridPage::number_wanted() {
    //: Beside a cell whose text does not read
    return tr("write a whole number, such as 4.");
}

void GridPage::set_complaint(const QString& words) {
    m_complaint->setText(words);
    m_complaint->setVisible(!words.isEmpty());
}

void GridPage::tell_how(const std::vector<work::How>& hows, const QString& of) {
    m_how->set_hows(hows, m_desk, of);
}

void GridPage::go_to(qint64 row_id, int column) {
    const int row = m_table->rows_model()->row_of(row_id);
    if (row >= 0) {
        m_table->setCurrentIndex(m_table->model()->index(row, column));
        m_table->scrollTo(m_table->currentIndex());
        m_table->setFocus();
    }
}

void GridPage::place_refusal(const QString& rest, const QString& words) {
    bool is_number = false;
    const int index = rest.section(QLatin1Char('/'), 0, 0).toInt(&is_number);
    if (is_number) {
        refused_at(index, rest.section(QLatin1Char('/'), 1), words);
    } else {
        set_complaint(words);
    }
}

void GridPage::settle_give_up() {
    const auto* rows = qobject_cast<const RowsModelBase*>(m_table->model());
    m_give_up->setVisible(rows != nullptr && !rows->typed_cells().empty());
}

void GridPage::note_typing() {
    // A question asked about the grid as it was is out of date. The form then says edited(), and the figures follow.
    m_form->forget_answers();
    m_form->note_cells();
    settle_give_up();
}

} // namespace soakbook::ui
