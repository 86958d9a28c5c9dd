// SPDX-License-Identifier: GPL-3.0-or-later
// What is known of one thing: names at the left, values beside them, in two columns where there is room.
#pragma once

#include "ui/parts/state.h"

#include <QWidget>

#include <optional>
#include <vector>

class QVBoxLayout;

namespace soakbook::ui {

struct CardFact {
    QString name;
    QString value;
    std::optional<State> state = {}; ///< its shape before the value
    bool is_code = false;
};

class FactGrid : public QWidget {
    Q_OBJECT

public:
    explicit FactGrid(QWidget* parent = nullptr);
    /// Facts without a value are left out.
    void set_facts(const std::vector<CardFact>& facts);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void lay_out();
    int columns() const;

    QVBoxLayout* m_whole;
    QWidget* m_grid = nullptr;
    std::vector<CardFact> m_facts;
    int m_columns = 1;
};

} // namespace soakbook::ui
