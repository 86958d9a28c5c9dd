// SPDX-License-Identifier: GPL-3.0-or-later
// A row of masses that grows: strips one by one on the scale, pails one after another. Enter goes on to the next line; on
// the empty last line it leaves for the next field.
#pragma once

#include "core/maths/quantities.h"
#include "ui/parts/field.h"
#include "ui/parts/quantity_field.h"

#include <vector>

class QGridLayout;

namespace soakbook::ui {

class MassRows : public Field {
    Q_OBJECT

public:
    /// `object_name` names the editors: "pour_pail_1", "pour_pail_2" and so on.
    MassRows(const Habits& habits, MassSize size, const QString& object_name, QWidget* parent = nullptr);
    bool is_empty() const override;
    QString problem() const override;
    /// The first line that is empty.
    QWidget* editor() const override;
    void clear() override;
    void set_name(const QString& name) override;

    /// The masses typed, in their order; lines left empty between them are passed over.
    std::vector<maths::Mass> values() const;
    /// The n-th mass typed is what the next complaint is about.
    void point_at(int n);
    void take_focus() override;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void mark_wrong(bool wrong) override;

private:
    MassField* add_line();
    void grow();
    /// To whatever comes after the last line.
    void leave();

    const Habits& m_habits;
    MassSize m_size;
    QString m_object_name;
    QString m_name;
    QGridLayout* m_grid;
    std::vector<MassField*> m_lines;
    MassField* m_pointed = nullptr;
};

} // namespace soakbook::ui
