// SPDX-License-Identifier: GPL-3.0-or-later
// The list at the left of a page: two lines an entry, with its state at the right.
#pragma once

#include "ui/parts/state.h"

#include <QListView>

#include <optional>
#include <vector>

namespace soakbook::ui {

/// One entry of a side list.
struct SideItem {
    qint64 id = 0;
    QString code = {};  ///< set in the code type before the head; may be empty
    QString head = {};
    QString below = {}; ///< the second line, softly; may be empty
    std::optional<State> state = {};
    QString state_word = {}; ///< empty takes the state's own
};

class SideModel;

class SideList : public QListView {
    Q_OBJECT

public:
    explicit SideList(const QString& spoken_name, QWidget* parent = nullptr);
    /// Shows these; what was chosen stays chosen if it is still there, and chosen() stays silent then.
    void set_items(std::vector<SideItem> items);
    qint64 current_id() const;
    /// Chooses without emitting chosen(). An id that is not there chooses nothing.
    void choose(qint64 id);
    int size() const;

Q_SIGNALS:
    /// Another entry has the keyboard or was clicked.
    void chosen(qint64 id);
    /// Enter: go into the page.
    void entered_page(qint64 id);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    SideModel* m_items;
    bool m_quiet = false;
};

} // namespace soakbook::ui
