// SPDX-License-Identifier: GPL-3.0-or-later
// Bags whose labels are there already: a line each, for strips and weight. A line left empty waits on.
#pragma once

#include "core/work/bag.h"
#include "core/work/shed_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/field.h"

#include <functional>
#include <vector>

class QGridLayout;

namespace soakbook::ui {

class CountField;
class MassField;

class ReservedRows : public Field {
    Q_OBJECT

public:
    /// Editors are named fill_strips_1, fill_net_1 and so on.
    ReservedRows(Desk& desk, const std::vector<work::BatchBag>& bags, QWidget* parent = nullptr);
    /// No line says how many strips.
    bool is_empty() const override;
    QString problem() const override;
    QWidget* editor() const override;
    void clear() override;

    int size() const { return static_cast<int>(m_rows.size()); }
    void set_strips(int row, std::optional<int> strips);
    /// The lines that are filled in.
    std::vector<work::FillReserved::Row> rows() const;
    /// Says under each weight what `words` makes of it and of the strips counted; nothing under a line without both.
    void say_beside(const std::function<QString(maths::Mass net, int strips)>& words);
    /// Puts words beside "0/strips" of the filled lines.
    void complain_at(const QString& path, const QString& words);

protected:
    void mark_wrong(bool wrong) override;

private:
    struct Row {
        work::BagId bag;
        CountField* strips;
        MassField* net;
    };
    static bool is_filled(const Row& row);

    std::vector<Row> m_rows;
};

} // namespace soakbook::ui
