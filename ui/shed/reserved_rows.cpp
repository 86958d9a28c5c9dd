// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/reserved_rows.h"

#include "ui/parts/quantity_field.h"
#include "ui/parts/theme.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>

namespace soakbook::ui {

ReservedRows::ReservedRows(Desk& desk, const std::vector<work::BatchBag>& bags, QWidget* parent) : Field(parent) {
    auto* grid = new QGridLayout;
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(scaled(8));
    grid->setVerticalSpacing(scaled(8));
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(2, 1);
    //: Over a column of fields: strips in a bag
    grid->addWidget(make_soft_label(tr("Strips"), Type::small, this), 0, 1);
    //: Over a column of fields: the weight of what is in a bag
    grid->addWidget(make_soft_label(tr("Contents, if weighed"), Type::small, this), 0, 2);
    row()->addLayout(grid, 1);
    for (const work::BatchBag& bag : bags) {
        const int n = size() + 1;
        const Row added{bag.id, new CountField(desk, {}, this), new MassField(desk, MassSize::large, this)};
        added.strips->setObjectName(QStringLiteral("fill_strips_%1").arg(n));
        added.net->setObjectName(QStringLiteral("fill_net_%1").arg(n));
        //: Read aloud: a field; %1 the code of a bag
        added.strips->set_name(tr("Strips in %1").arg(bag.code));
        //: Read aloud: a field; %1 the code of a bag
        added.net->set_name(tr("Contents of %1").arg(bag.code));
        grid->addWidget(make_label(bag.code, Type::code, this), n, 0);
        grid->addWidget(added.strips, n, 1, Qt::AlignTop);
        grid->addWidget(added.net, n, 2, Qt::AlignTop);
        connect(added.strips, &Field::edited, this, &ReservedRows::note_edit);
        connect(added.net, &Field::edited, this, &ReservedRows::note_edit);
        m_rows.push_back(added);
    }
}

bool ReservedRows::is_filled(const Row& row) { return !row.strips->is_empty() || !row.net->is_empty(); }

bool ReservedRows::is_empty() const { return std::none_of(m_rows.begin(), m_rows.end(), is_filled); }

QString ReservedRows::problem() const {
    for (const Row& row : m_rows) {
        if (!row.strips->problem().isEmpty())
            return row.strips->problem();
        if (!row.net->problem().isEmpty())
            return row.net->problem();
    }
    return {};
}

QWidget* ReservedRows::editor() const {
    return m_rows.empty() ? const_cast<ReservedRows*>(this) : m_rows.front().strips->editor();
}

void ReservedRows::clear() {
    for (const Row& row : m_rows) {
        row.strips->clear();
        row.net->clear();
    }
}

void ReservedRows::set_strips(int row, std::optional<int> strips) {
    m_rows.at(static_cast<std::size_t>(row)).strips->set_value(strips ? std::optional<qint64>(*strips) : std::nullopt);
}

std::vector<work::FillReserved::Row> ReservedRows::rows() const {
    std::vector<work::FillReserved::Row> rows;
    for (const Row& row : m_rows) {
        if (!is_filled(row))
            continue;
        work::FillReserved::Row filled{row.bag, std::nullopt, row.net->value()};
        if (const auto n = row.strips->value())
            filled.strips = static_cast<int>(*n);
        rows.push_back(filled);
    }
    return rows;
}

void ReservedRows::say_beside(const std::function<QString(maths::Mass net, int strips)>& words) {
    for (const Row& row : m_rows) {
        const auto net = row.net->value();
        const auto strips = row.strips->value();
        row.net->set_help(net && strips ? words(*net, static_cast<int>(*strips)) : QString());
    }
}

void ReservedRows::complain_at(const QString& path, const QString& words) {
    int n = path.section(QLatin1Char('/'), 0, 0).toInt();
    const bool net = path.endsWith(QLatin1String("net"));
    for (const Row& row : m_rows) {
        if (is_filled(row) && n-- == 0) {
            Field* field = net ? static_cast<Field*>(row.net) : row.strips;
            field->set_complaint(words);
            field->take_focus();
            return;
        }
    }
    set_complaint(words);
}

void ReservedRows::mark_wrong(bool) {}

} // namespace soakbook::ui
