// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/fact_grid.h"

#include "ui/parts/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int wide_enough_for_two = 560;

QWidget* value_widget(const CardFact& fact) {
    if (fact.state)
        return new StateMark(*fact.state, fact.value);
    QLabel* value = make_label(fact.value, fact.is_code ? Type::code : Type::body, nullptr, true);
    value->setTextFormat(Qt::PlainText);
    return value;
}

} // namespace

FactGrid::FactGrid(QWidget* parent) : QWidget(parent), m_whole(new QVBoxLayout(this)) {
    m_whole->setContentsMargins(0, 0, 0, 0);
}

void FactGrid::set_facts(const std::vector<CardFact>& facts) {
    m_facts.clear();
    for (const CardFact& fact : facts) {
        if (!fact.value.isEmpty())
            m_facts.push_back(fact);
    }
    lay_out();
}

int FactGrid::columns() const {
    return width() >= scaled(wide_enough_for_two) ? 2 : 1;
}

void FactGrid::lay_out() {
    m_columns = columns();
    if (m_grid != nullptr) {
        // Not at once: whoever changes the look is going through all widgets just then.
        m_grid->hide();
        m_grid->deleteLater();
        m_whole->removeWidget(m_grid);
    }
    m_grid = new QWidget;
    auto* grid = new QGridLayout(m_grid);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(scaled(12));
    grid->setVerticalSpacing(scaled(4));
    const int lines = (static_cast<int>(m_facts.size()) + m_columns - 1) / m_columns;
    for (int i = 0; i < static_cast<int>(m_facts.size()); ++i) {
        const CardFact& fact = m_facts[static_cast<std::size_t>(i)];
        const int column = lines > 0 ? 2 * (i / lines) : 0;
        QLabel* name = make_soft_label(fact.name, Type::body, nullptr, false);
        grid->addWidget(name, i % lines, column, Qt::AlignTop);
        grid->addWidget(value_widget(fact), i % lines, column + 1,
                        fact.state ? Qt::AlignLeft | Qt::AlignTop : Qt::AlignTop);
        grid->setColumnStretch(column + 1, 1);
    }
    m_whole->addWidget(m_grid);
}

void FactGrid::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (columns() != m_columns)
        lay_out();
}

} // namespace soakbook::ui
