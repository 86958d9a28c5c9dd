// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safekeeping/entry_list.h"

#include "ui/parts/desk.h"
#include "ui/safekeeping/apart_words.h"
#include "ui/safekeeping/tick_delegate.h"

#include <QHeaderView>

namespace soakbook::ui {

namespace {
constexpr int key_role = Qt::UserRole + 20;
}

EntryList::EntryList(const QString& spoken_name, bool with_boxes, QWidget* parent) : QTreeWidget(parent), m_with_boxes(with_boxes) {
    setAccessibleName(spoken_name);
    setItemDelegate(new TickDelegate(this));
    setRootIsDecorated(false);
    setUniformRowHeights(true);
    setTabKeyNavigation(false);
    //: Headers of a list of entries: what was done, when, by whom.
    setHeaderLabels({tr("Entry"), tr("When"), tr("Who")});
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(2, QHeaderView::ResizeToContents);
    header()->setStretchLastSection(false);
    connect(this, &QTreeWidget::itemChanged, this, [this] {
        if (!m_filling)
            Q_EMIT ticks_changed();
    });
    connect(this, &QTreeWidget::currentItemChanged, this, [this] {
        if (!m_filling)
            Q_EMIT current_changed();
    });
}

void EntryList::set_entries(const Desk& desk, const std::vector<work::LoneEntry>& entries) {
    m_filling = true;
    clear();
    for (const work::LoneEntry& entry : entries) {
        auto* item = new QTreeWidgetItem(this);
        item->setData(0, key_role, entry.key);
        QString words = entry_words(entry);
        const bool can_be_ticked = m_with_boxes && entry.something_new;
        if (m_with_boxes && !entry.something_new)
            //: Behind an entry of the other copy, of which nothing is missing here; %1 is the entry.
            words = tr("%1 (stands here already)").arg(words);
        item->setText(0, words);
        item->setText(1, desk.moment(entry.at));
        item->setText(2, entry.who);
        //: Under the pointer over an entry: its words, how many records it wrote, and its reason if it has one.
        const QString tip = tr("%1: %n records", nullptr, entry.records).arg(words);
        item->setToolTip(0, entry.why.isEmpty() ? tip : QString(tip + QLatin1Char('\n') + entry.why));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | (can_be_ticked ? Qt::ItemIsUserCheckable : Qt::NoItemFlags));
        if (can_be_ticked)
            item->setCheckState(0, Qt::Checked);
    }
    if (topLevelItemCount() > 0)
        setCurrentItem(topLevelItem(0));
    m_filling = false;
    Q_EMIT ticks_changed();
    Q_EMIT current_changed();
}

std::set<qint64> EntryList::ticked() const {
    std::set<qint64> keys;
    for (int i = 0; i < topLevelItemCount(); ++i)
        if (topLevelItem(i)->data(0, Qt::CheckStateRole).isValid() && topLevelItem(i)->checkState(0) == Qt::Checked)
            keys.insert(topLevelItem(i)->data(0, key_role).toLongLong());
    return keys;
}

void EntryList::tick_all(bool ticked) {
    m_filling = true;
    for (int i = 0; i < topLevelItemCount(); ++i)
        if (topLevelItem(i)->flags().testFlag(Qt::ItemIsUserCheckable))
            topLevelItem(i)->setCheckState(0, ticked ? Qt::Checked : Qt::Unchecked);
    m_filling = false;
    Q_EMIT ticks_changed();
}

qint64 EntryList::current() const { return currentItem() ? currentItem()->data(0, key_role).toLongLong() : 0; }

void EntryList::focusInEvent(QFocusEvent* event) {
    QTreeWidget::focusInEvent(event);
    Q_EMIT current_changed();
}

void EntryList::choose(qint64 key) {
    for (int i = 0; i < topLevelItemCount(); ++i)
        if (topLevelItem(i)->data(0, key_role).toLongLong() == key)
            setCurrentItem(topLevelItem(i));
}

} // namespace soakbook::ui
