// SPDX-License-Identifier: GPL-3.0-or-later
// The bins that are free: which are filled, with how many strips, and how much liquid was let in.
#pragma once

#include "core/work/setup.h"
#include "core/work/soak.h"
#include "ui/parts/desk.h"
#include "ui/parts/field.h"

#include <vector>

class QCheckBox;
class QGridLayout;

namespace soakbook::ui {

class CountField;
class MassField;

class BinRows : public Field {
    Q_OBJECT

public:
    /// Editors are named soak_bin_1, soak_strips_1, soak_flood_1 and so on.
    BinRows(Desk& desk, const std::vector<work::VesselEntry>& bins, QWidget* parent = nullptr);
    /// No bin is chosen.
    bool is_empty() const override;
    QString problem() const override;
    QWidget* editor() const override;
    void clear() override;

    int size() const { return static_cast<int>(m_rows.size()); }
    void set_chosen(int row, bool chosen);
    /// The chosen bins, in their order.
    std::vector<work::SoakEntry::Bin> bins() const;
    /// Puts words beside "0/strips": the part of the n-th chosen bin.
    void complain_at(const QString& path, const QString& words);

protected:
    void mark_wrong(bool wrong) override;

private:
    struct Row {
        work::VesselId bin;
        QCheckBox* box;
        CountField* strips;
        MassField* flood;
    };
    void add_row(Desk& desk, QGridLayout& grid, const work::VesselEntry& bin);

    std::vector<Row> m_rows;
};

/// Bins of Set-up in which nothing soaks now.
std::vector<work::VesselEntry> free_bins(const Desk& desk);

} // namespace soakbook::ui
