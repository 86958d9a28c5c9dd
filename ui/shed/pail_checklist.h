// SPDX-License-Identifier: GPL-3.0-or-later
// The pails on the shelf, to go into a mix: each whole or not at all, pails of one set together.
#pragma once

#include "core/work/pail_advice.h"
#include "core/work/store_view.h"
#include "ui/parts/desk.h"
#include "ui/parts/field.h"

#include <vector>

class QCheckBox;
class QLabel;
class QPushButton;

namespace soakbook::ui {

class PailChecklist : public Field {
    Q_OBJECT

public:
    explicit PailChecklist(Desk& desk, QWidget* parent = nullptr);
    /// No pail is chosen.
    bool is_empty() const override { return chosen().empty(); }
    QWidget* editor() const override;
    void clear() override;
    /// Whether there is any pail to show.
    bool has_pails() const { return !m_pails.empty(); }
    std::vector<work::PailId> chosen() const;
    void choose(const std::vector<work::PailId>& pails);
    /// Ticks the pails of an advice, says why, and puts behind each other one why it stays out.
    void take_advice(const work::PailAdvice& advice);
    /// Takes the words of an advice away; the ticks stay.
    void drop_advice();

Q_SIGNALS:
    /// The user asks which pails go in best.
    void advice_wanted();

protected:
    void mark_wrong(bool wrong) override;

private:
    void add_line(work::PailLine pail, QWidget* lines);
    void keep_sets_whole(std::size_t changed);

    struct Line {
        work::PailLine pail;
        QCheckBox* box;
        QLabel* reason;
    };
    Desk& m_desk;
    std::vector<Line> m_pails;
    QLabel* m_advice;
    QPushButton* m_suggest;
};

} // namespace soakbook::ui
