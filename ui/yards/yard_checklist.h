// SPDX-License-Identifier: GPL-3.0-or-later
// Yards to tick.
#pragma once

#include "core/work/hives.h"
#include "ui/parts/field.h"

#include <vector>

class QCheckBox;
class QGridLayout;
class QPushButton;

namespace soakbook::ui {

class YardChecklist : public Field {
    Q_OBJECT

public:
    struct Yard {
        work::YardId id;
        QString name;
        QString beside; ///< softly after the name
    };
    /// Where the list is empty a sentence says so, with a button that asks for the first yard.
    explicit YardChecklist(const std::vector<Yard>& yards, QWidget* parent = nullptr);
    bool is_empty() const override { return value().empty(); }
    QWidget* editor() const override;
    void clear() override { set_value({}); }
    void set_name(const QString& name) override;
    std::vector<work::YardId> value() const;
    void set_value(const std::vector<work::YardId>& yards);
    /// Other yards to choose from; none is ticked.
    void set_yards(const std::vector<Yard>& yards);

Q_SIGNALS:
    void wants_first();

private:
    QWidget* m_list;
    QGridLayout* m_grid;
    QPushButton* m_first = nullptr; ///< only while there is no yard
    std::vector<QCheckBox*> m_boxes;
    std::vector<work::YardId> m_ids;
};

} // namespace soakbook::ui
