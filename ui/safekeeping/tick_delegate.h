// SPDX-License-Identifier: GPL-3.0-or-later
// Lines of a list as the tables of the house paint theirs, lower, and with a box for a tick before those that have one.
#pragma once

#include "ui/parts/cell_delegate.h"

namespace soakbook::ui {

class TickDelegate : public CellDelegate {
    Q_OBJECT

public:
    using CellDelegate::CellDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

protected:
    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option, const QModelIndex& index) override;
};

} // namespace soakbook::ui
