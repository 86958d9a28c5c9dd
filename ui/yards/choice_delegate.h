// SPDX-License-Identifier: GPL-3.0-or-later
// A cell with one of several: a list opens in it, the first letters choose, Enter takes.
#pragma once

#include "ui/parts/cell_delegate.h"

#include <functional>
#include <vector>

namespace soakbook::ui {

class ChoiceDelegate : public CellDelegate {
    Q_OBJECT

public:
    struct Choice {
        QString value; ///< what the cell is given
        QString words; ///< what stands in the list
    };
    using Choices = std::function<std::vector<Choice>()>;

    ChoiceDelegate(Choices choices, QObject* parent) : CellDelegate(parent), m_choices(std::move(choices)) {}
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

private:
    Choices m_choices;
};

} // namespace soakbook::ui
