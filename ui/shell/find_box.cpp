// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/find_box.h"

#include "ui/parts/side_list.h"
#include "ui/parts/theme.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int most_shown = 8;

} // namespace

FindBox::FindBox(QWidget* parent) : EntryLine(parent) {
    //: Stands in the empty Find box
    setPlaceholderText(tr("Find a code: type it or scan a label"));
    //: Name of the Find box, read aloud
    setAccessibleName(tr("Find a code or a name"));
    //: The keys of the Find box, as they stand in it
    set_aside(tr("Ctrl+F"));
    setObjectName(QStringLiteral("find"));
    setMaxLength(200);
    connect(this, &QLineEdit::textEdited, this, &FindBox::look);
}

void FindBox::take_focus() {
    setFocus(Qt::ShortcutFocusReason);
    selectAll();
}

void FindBox::look() {
    m_chosen = -1;
    m_answer = m_find && !text().trimmed().isEmpty() ? m_find(text()) : FindAnswer{};
    show_answer();
}

void FindBox::show_answer() {
    if (text().trimmed().isEmpty()) {
        put_away();
        return;
    }
    if (m_panel == nullptr) {
        // Within the window and over the page: no window of its own that would take the keyboard.
        m_panel = new QFrame(window());
        m_panel->setFrameShape(QFrame::NoFrame);
        set_kind(m_panel, "popup");
        //: Read aloud: the list under the Find box
        m_list = new SideList(tr("Found"), m_panel);
        m_list->setFocusPolicy(Qt::NoFocus);
        auto* column = new QVBoxLayout(m_panel);
        column->setContentsMargins(1, 1, 1, 1);
        column->addWidget(m_list);
        connect(m_list, &QAbstractItemView::clicked, this, [this](const QModelIndex& index) { go(index.row()); });
    }
    std::vector<SideItem> items;
    for (const FindHit& hit : m_answer.hits) {
        SideItem item;
        item.id = static_cast<qint64>(items.size()) + 1;
        item.code = hit.code;
        item.head = hit.words;
        items.push_back(item);
    }
    if (items.empty()) {
        SideItem none;
        none.below = m_answer.why_none;
        items.push_back(none);
    }
    m_list->set_items(items);
    m_list->choose(0);
    place_list();
    m_panel->show();
    m_panel->raise();
    setAccessibleDescription(m_answer.hits.empty() ? m_answer.why_none : QString());
}

void FindBox::place_list() {
    if (m_panel == nullptr) {
        return;
    }
    const int lines = std::min(m_list->size(), most_shown);
    const int height = lines * m_list->sizeHintForRow(0) + 4;
    const QPoint below = mapTo(window(), QPoint(0, this->height() + 4));
    const int wanted = std::max(width(), scaled(360));
    m_panel->setGeometry(std::max(0, std::min(below.x(), window()->width() - wanted - 8)), below.y(), wanted, height);
}

void FindBox::choose(int hit) {
    if (m_answer.hits.empty()) {
        return;
    }
    m_chosen = std::clamp(hit, 0, static_cast<int>(m_answer.hits.size()) - 1);
    m_list->choose(m_chosen + 1);
}

void FindBox::go(int hit) {
    if (hit < 0 || hit >= static_cast<int>(m_answer.hits.size())) {
        return;
    }
    const std::optional<Intent> intent = m_answer.hits[static_cast<std::size_t>(hit)].intent;
    if (intent) {
        put_away();
        clear();
        Q_EMIT found(*intent);
    }
}

void FindBox::put_away() {
    if (m_panel != nullptr) {
        m_panel->hide();
    }
}

void FindBox::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        // A scanner types faster than the list is read: what was typed is looked up as it stands now.
        if (m_chosen < 0) {
            look();
        }
        go(std::max(0, m_chosen));
        return;
    case Qt::Key_Down:
        choose(m_chosen + 1);
        return;
    case Qt::Key_Up:
        choose(m_chosen - 1);
        return;
    case Qt::Key_Escape:
        clear();
        put_away();
        nextInFocusChain()->setFocus();
        return;
    default:
        EntryLine::keyPressEvent(event);
    }
}

void FindBox::focusOutEvent(QFocusEvent* event) {
    EntryLine::focusOutEvent(event);
    put_away();
}

void FindBox::resizeEvent(QResizeEvent* event) {
    EntryLine::resizeEvent(event);
    place_list();
}

} // namespace soakbook::ui
