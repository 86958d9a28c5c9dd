// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/yards/choice_delegate.h"

#include "ui/parts/choice_box.h"

#include <QAbstractItemView>

#include <algorithm>

namespace soakbook::ui {

namespace {

/// On a list in which somebody chose; looked at and left, it chooses nothing.
constexpr const char* was_chosen = "was_chosen";

/// Knows whether a choice comes from a key: letters go on choosing until Enter takes it, a click takes at once.
class CellChoice : public ChoiceBox {
public:
    using ChoiceBox::ChoiceBox;
    bool is_typing() const { return m_typing; }

protected:
    void keyPressEvent(QKeyEvent* event) override {
        m_typing = true;
        ChoiceBox::keyPressEvent(event);
        m_typing = false;
    }

private:
    bool m_typing = false;
};

} // namespace

QWidget* ChoiceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&, const QModelIndex&) const {
    auto* box = new CellChoice(parent);
    int widest = 0;
    for (const Choice& choice : m_choices()) {
        box->addItem(choice.words, choice.value);
        widest = std::max(widest, box->fontMetrics().horizontalAdvance(choice.words));
    }
    box->view()->setMinimumWidth(widest + 48);
    auto* self = const_cast<ChoiceDelegate*>(this);
    connect(box, &QComboBox::activated, self, [self, box] {
        box->setProperty(was_chosen, true);
        if (!box->is_typing()) {
            // The keyboard that now leaves the list must not hand its choice in a second time.
            box->removeEventFilter(self);
            Q_EMIT self->commitData(box);
            Q_EMIT self->closeEditor(box);
        }
    });
    return box;
}

void ChoiceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* box = static_cast<ChoiceBox*>(editor);
    // The grid may be asked again while somebody chooses: the choice stays.
    if (box->property(was_chosen).toBool()) {
        return;
    }
    const int at = box->findData(index.data(Qt::EditRole));
    box->setCurrentIndex(at < 0 ? 0 : at);
}

void ChoiceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
    if (editor->property(was_chosen).toBool()) {
        model->setData(index, static_cast<ChoiceBox*>(editor)->currentData());
    }
}

} // namespace soakbook::ui
