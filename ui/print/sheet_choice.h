// SPDX-License-Identifier: GPL-3.0-or-later
// Which sheet or roll the labels go on: stock sheets by dimension, a roll, or a sheet of one's own; remembered for this user.
#pragma once

#include "ui/print/label_sheet.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QSpinBox;

namespace soakbook::ui {

class SheetChoice : public QWidget {
    Q_OBJECT

public:
    explicit SheetChoice(QWidget* parent = nullptr);

    /// The sheet as it is entered, offset included; it may have a fault.
    LabelSheet sheet() const;
    /// What is wrong with it, in words, or empty.
    QString fault_words() const;
    /// Keeps the choice for the next time.
    void remember() const;

Q_SIGNALS:
    void changed();

private:
    enum Kind { roll = -1, own = -2 };
    int kind() const;
    QDoubleSpinBox* add_length(const QString& label, double value, double most, double least = 0);
    void add_whole(QSpinBox*& box, const QString& label, int value, int most);
    void recall();
    void show_fields();

    QComboBox* m_kind;
    QFormLayout* m_form;
    QDoubleSpinBox* m_page_width;
    QDoubleSpinBox* m_page_height;
    QDoubleSpinBox* m_width;
    QDoubleSpinBox* m_height;
    QSpinBox* m_columns = nullptr;
    QSpinBox* m_rows = nullptr;
    QDoubleSpinBox* m_left;
    QDoubleSpinBox* m_top;
    QDoubleSpinBox* m_pitch_x;
    QDoubleSpinBox* m_pitch_y;
    QDoubleSpinBox* m_right;
    QDoubleSpinBox* m_down;
    QComboBox* m_dots;
};

} // namespace soakbook::ui
