// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_filter_bar.h"

#include "core/work/hives.h"
#include "ui/parts/choice_field.h"
#include "ui/parts/day_field.h"
#include "ui/parts/desk.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QLabel>

namespace soakbook::ui {

namespace {
QVBoxLayout* with_label(const QString& words, Field* field) {
    auto* column = new QVBoxLayout;
    column->setSpacing(scaled(4));
    column->addWidget(make_soft_label(words, Type::small, nullptr, false));
    column->addWidget(field);
    field->set_name(words);
    return column;
}
} // namespace

RegisterFilterBar::RegisterFilterBar(Desk& desk) : m_desk(desk), m_from(new DayField(desk)), m_to(new DayField(desk)), m_yard(new ChoiceField) {
    m_from->setObjectName(QStringLiteral("register_from"));
    m_to->setObjectName(QStringLiteral("register_to"));
    m_yard->setObjectName(QStringLiteral("register_yard"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(scaled(16));
    //: A field's label: first day shown.
    row->addLayout(with_label(tr("From"), m_from), 2);
    //: A field's label: last day shown.
    row->addLayout(with_label(tr("To"), m_to), 2);
    //: A field's label.
    row->addLayout(with_label(tr("Yard"), m_yard), 3);
    row->addStretch(3);
    // The year is what inspectors ask for.
    const std::chrono::year_month_day today{desk.today()};
    m_from->set_value(maths::day(static_cast<int>(today.year()) - 1, 1, 1));
    m_to->set_value(desk.today());
    for (Field* field : {static_cast<Field*>(m_from), static_cast<Field*>(m_to), static_cast<Field*>(m_yard)})
        connect(field, &Field::edited, this, [this] {
            if (m_from->problem().isEmpty() && m_to->problem().isEmpty())
                Q_EMIT changed();
        });
    refresh();
}

void RegisterFilterBar::refresh() {
    const QVariant chosen = m_yard->value();
    //: A choice: no yard is singled out.
    std::vector<ChoiceField::Choice> choices{{QVariant::fromValue<qint64>(0), tr("all yards")}};
    for (const work::YardEntry& yard : work::yards(m_desk.workbook(), true))
        choices.push_back({QVariant::fromValue<qint64>(yard.id.value), yard.name});
    m_yard->set_choices(choices);
    m_yard->set_value(chosen.isValid() ? chosen : QVariant::fromValue<qint64>(0));
}

work::RegisterFilter RegisterFilterBar::filter() const {
    work::RegisterFilter filter;
    filter.from = m_from->value();
    filter.to = m_to->value();
    filter.yard = {m_yard->id()};
    filter.batch = m_batch;
    return filter;
}

} // namespace soakbook::ui
