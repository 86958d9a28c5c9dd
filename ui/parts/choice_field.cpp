// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/choice_field.h"

#include "ui/parts/choice_box.h"
#include "ui/parts/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QStandardItemModel>

namespace soakbook::ui {

ChoiceField::ChoiceField(QWidget* parent) : Field(parent), m_combo(new ChoiceBox(this)) {
    row()->addWidget(m_combo, 1);
    watch(m_combo);
    // Filling the list must not choose its first entry, and only the user's choice is an edit.
    m_combo->setCurrentIndex(-1);
    connect(m_combo, &QComboBox::activated, this, &ChoiceField::note_edit);
}

QWidget* ChoiceField::editor() const {
    return m_combo;
}

void ChoiceField::clear() {
    set_value({});
}

void ChoiceField::set_name(const QString& name) {
    m_combo->setAccessibleName(name);
}

void ChoiceField::put(const Choice& choice) {
    m_combo->addItem(choice.text, choice.id);
    if (!choice.can_be_chosen) {
        auto* items = qobject_cast<QStandardItemModel*>(m_combo->model());
        QStandardItem* item = items->item(m_combo->count() - 1);
        item->setEnabled(false);
        item->setToolTip(choice.why_not);
    }
}

void ChoiceField::add(const QString& text, const QVariant& id) {
    const int chosen = m_combo->currentIndex();
    put({id, text});
    m_combo->setCurrentIndex(chosen);
}

void ChoiceField::set_choices(const std::vector<Choice>& choices) {
    const QVariant chosen = value();
    const QString none = m_has_none ? m_combo->itemText(0) : QString();
    m_combo->clear();
    if (m_has_none) {
        m_combo->addItem(none);
    }
    for (const Choice& choice : choices) {
        put(choice);
    }
    set_value(chosen);
}

void ChoiceField::set_placeholder(const QString& text) {
    m_combo->setPlaceholderText(text);
}

void ChoiceField::set_none_text(const QString& text) {
    if (m_has_none) {
        m_combo->setItemText(0, text);
        return;
    }
    const bool chosen = value().isValid();
    m_combo->insertItem(0, text);
    m_has_none = true;
    if (!chosen) {
        m_combo->setCurrentIndex(0);
    }
}

int ChoiceField::size() const {
    return m_combo->count() - (m_has_none ? 1 : 0);
}

QVariant ChoiceField::value() const {
    return m_combo->currentData();
}

QString ChoiceField::text() const {
    return m_combo->currentText();
}

void ChoiceField::set_value(const QVariant& id) {
    const int at = id.isValid() ? m_combo->findData(id) : -1;
    m_combo->setCurrentIndex(at < 0 && m_has_none ? 0 : at);
    set_complaint({});
}

bool ChoiceField::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_combo && event->type() == QEvent::Wheel) {
        event->ignore();
        return true;
    }
    return Field::eventFilter(watched, event);
}

void ChoiceField::mark_wrong(bool wrong) {
    set_flag(m_combo, "wrong", wrong);
}

} // namespace soakbook::ui
