// SPDX-License-Identifier: GPL-3.0-or-later
// The line at the bottom: which workbook, how its last safe copy stands, who makes entries, how many there are.
#pragma once

#include "ui/parts/state.h"

#include <QStringList>

#include <optional>

class QHBoxLayout;
class QLabel;
class QMenu;
class QPushButton;

namespace soakbook::ui {

/// What the status line says of the workbook; in words.
struct StatusFacts {
    QString workbook;
    QString safe_copy = {};             ///< "Safe copy 14 min ago, checked"; empty leaves it out
    std::optional<State> copy_state = {}; ///< a shape before it, where it is late or missing
    qint64 entries = 0;
    QString checking = {};              ///< "Being looked through: 40 %", while entries wait for it; stands in place of the copy
};

class StatusLine : public QWidget {
    Q_OBJECT

public:
    explicit StatusLine(QWidget* parent = nullptr);
    void set_facts(const StatusFacts& facts, const QString& entry_number);
    /// Who makes entries now, and who may; with nobody to choose from the words are left out.
    void set_people(const QString& who, const QStringList& people);

Q_SIGNALS:
    void who_chosen(const QString& who);

protected:
    void changeEvent(QEvent* event) override;

private:
    void settle();
    void paint_mark();
    QHBoxLayout* m_row;
    QLabel* m_workbook;
    QLabel* m_copy;
    QLabel* m_copy_mark;
    std::optional<State> m_copy_state;
    QPushButton* m_who;
    QMenu* m_menu;
    QLabel* m_entries;
};

} // namespace soakbook::ui
