// SPDX-License-Identifier: GPL-3.0-or-later
// The places at the left, each with its icon; Ctrl and a number goes there.
#pragma once

#include "ui/parts/place.h"

#include <QWidget>

#include <vector>

class QButtonGroup;
class QHBoxLayout;
class QVBoxLayout;

namespace soakbook::ui {

class Navigation : public QWidget {
    Q_OBJECT

public:
    explicit Navigation(QWidget* parent = nullptr);
    void add(PlaceName place, const QString& name);
    /// Marks where the user is; went_to() stays silent.
    void mark(PlaceName place);

Q_SIGNALS:
    void went_to(soakbook::ui::PlaceName place);

protected:
    void changeEvent(QEvent* event) override;

private:
    void settle();
    QButtonGroup* m_group;
    QVBoxLayout* m_column;
    QHBoxLayout* m_head = nullptr;
};

/// The icon of a place.
QString icon_name(PlaceName place);

} // namespace soakbook::ui
