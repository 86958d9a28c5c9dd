// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/bin_rows.h"

#include "core/work/shed_view.h"
#include "ui/parts/quantity_field.h"
#include "ui/parts/theme.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>

#include <algorithm>
#include <set>

namespace soakbook::ui {

std::vector<work::VesselEntry> free_bins(const Desk& desk) {
    std::set<work::VesselId> taken;
    for (const work::BatchLine& line : work::batches(desk.workbook(), desk.today())) {
        if (line.state == work::BatchState::closed || line.strips == 0)
            continue;
        const auto batch = work::batch_view(desk.workbook(), line.id, desk.today());
        for (const work::SoakLine& soak : batch->soaks) {
            if (!soak.ended)
                taken.insert(soak.bin);
        }
    }
    std::vector<work::VesselEntry> bins = work::vessels(desk.workbook());
    std::erase_if(bins, [&taken](const work::VesselEntry& vessel) { return vessel.is_tank || taken.contains(vessel.id); });
    return bins;
}

BinRows::BinRows(Desk& desk, const std::vector<work::VesselEntry>& bins, QWidget* parent) : Field(parent) {
    auto* grid = new QGridLayout;
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(scaled(8));
    grid->setVerticalSpacing(scaled(8));
    grid->setColumnStretch(0, 2);
    grid->setColumnStretch(1, 3);
    grid->setColumnStretch(2, 3);
    //: Over a column of fields: strips in a bin
    grid->addWidget(make_soft_label(tr("Strips"), Type::small, this), 0, 1);
    //: Over a column of fields: liquid let into a bin
    grid->addWidget(make_soft_label(tr("Liquid let in, if measured"), Type::small, this), 0, 2);
    row()->addLayout(grid, 1);
    for (const work::VesselEntry& bin : bins)
        add_row(desk, *grid, bin);
}

void BinRows::add_row(Desk& desk, QGridLayout& grid, const work::VesselEntry& bin) {
    const int n = size() + 1;
    Row added{bin.id, new QCheckBox(bin.name, this), new CountField(desk, {}, this),
              new MassField(desk, MassSize::large, this)};
    added.box->setObjectName(QStringLiteral("soak_bin_%1").arg(n));
    added.strips->setObjectName(QStringLiteral("soak_strips_%1").arg(n));
    added.flood->setObjectName(QStringLiteral("soak_flood_%1").arg(n));
    added.strips->set_value(bin.strips_held);
    //: Read aloud: a field; %1 the name of a bin
    added.strips->set_name(tr("Strips in %1").arg(bin.name));
    //: Read aloud: a field; %1 the name of a bin
    added.flood->set_name(tr("Liquid let into %1").arg(bin.name));
    grid.addWidget(added.box, n, 0);
    grid.addWidget(added.strips, n, 1, Qt::AlignTop);
    grid.addWidget(added.flood, n, 2, Qt::AlignTop);
    const std::size_t at = m_rows.size();
    m_rows.push_back(added);
    connect(added.box, &QCheckBox::clicked, this, [this, at](bool chosen) {
        set_chosen(static_cast<int>(at), chosen);
        note_edit();
    });
    connect(added.strips, &Field::edited, this, &BinRows::note_edit);
    connect(added.flood, &Field::edited, this, &BinRows::note_edit);
    set_chosen(static_cast<int>(at), false);
}

void BinRows::set_chosen(int row, bool chosen) {
    const Row& changed = m_rows.at(static_cast<std::size_t>(row));
    changed.box->setChecked(chosen);
    changed.strips->setEnabled(chosen);
    changed.flood->setEnabled(chosen);
}

bool BinRows::is_empty() const {
    return std::none_of(m_rows.begin(), m_rows.end(), [](const Row& row) { return row.box->isChecked(); });
}

QString BinRows::problem() const {
    for (const Row& row : m_rows) {
        if (row.box->isChecked() && !row.strips->problem().isEmpty())
            return row.strips->problem();
        if (row.box->isChecked() && !row.flood->problem().isEmpty())
            return row.flood->problem();
    }
    return {};
}

QWidget* BinRows::editor() const {
    if (m_rows.empty())
        return const_cast<BinRows*>(this);
    const auto first = std::find_if(m_rows.begin(), m_rows.end(), [](const Row& row) { return row.box->isChecked(); });
    return first == m_rows.end() ? static_cast<QWidget*>(m_rows.front().box) : first->strips->editor();
}

void BinRows::clear() {
    for (int i = 0; i < size(); ++i) {
        set_chosen(i, false);
        m_rows[static_cast<std::size_t>(i)].flood->clear();
    }
}

std::vector<work::SoakEntry::Bin> BinRows::bins() const {
    std::vector<work::SoakEntry::Bin> bins;
    for (const Row& row : m_rows) {
        if (!row.box->isChecked())
            continue;
        work::SoakEntry::Bin bin{row.bin, std::nullopt, row.flood->value()};
        if (const auto strips = row.strips->value())
            bin.strips = static_cast<int>(*strips);
        bins.push_back(bin);
    }
    return bins;
}

void BinRows::complain_at(const QString& path, const QString& words) {
    int n = path.section(QLatin1Char('/'), 0, 0).toInt();
    const bool flood = path.endsWith(QLatin1String("flood"));
    for (const Row& row : m_rows) {
        if (row.box->isChecked() && n-- == 0) {
            Field* field = flood ? static_cast<Field*>(row.flood) : row.strips;
            field->set_complaint(words);
            field->take_focus();
            return;
        }
    }
    set_complaint(words);
}

void BinRows::mark_wrong(bool) {}

} // namespace soakbook::ui
