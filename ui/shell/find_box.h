// SPDX-License-Identifier: GPL-3.0-or-later
// Find: takes a code or a name, typed or scanned from a label, and goes there. What fits is listed while it is typed; Enter
// takes the first, or the one that Down and Up have chosen.
#pragma once

#include "ui/parts/entry_line.h"
#include "ui/parts/intent.h"

#include <QFrame>

#include <functional>
#include <optional>
#include <vector>

namespace soakbook::ui {

class SideList;

/// Something found, and where it leads. Without an intent it is only said, as a code that was given out and undone.
struct FindHit {
    QString code;
    QString words;
    std::optional<Intent> intent;
};

/// What was found for a text, or why nothing was.
struct FindAnswer {
    std::vector<FindHit> hits;
    QString why_none;
};

using Find = std::function<FindAnswer(const QString& text)>;

class FindBox : public EntryLine {
    Q_OBJECT

public:
    explicit FindBox(QWidget* parent = nullptr);
    void set_find(Find find) { m_find = std::move(find); }
    void take_focus();

Q_SIGNALS:
    void found(const soakbook::ui::Intent& intent);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void look();
    void show_answer();
    void place_list();
    void choose(int hit);
    void go(int hit);
    void put_away();

    Find m_find;
    FindAnswer m_answer;
    QFrame* m_panel = nullptr;
    SideList* m_list = nullptr;
    int m_chosen = -1;
};

} // namespace soakbook::ui
