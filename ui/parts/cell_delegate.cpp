// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/cell_delegate.h"

#include "ui/parts/rows_model.h"
#include "ui/parts/theme.h"

#include <QLineEdit>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

Type type_of(const QModelIndex& index) {
    switch (static_cast<CellType>(index.data(type_role).toInt())) {
    case CellType::strong:
        return Type::strong;
    case CellType::code:
        return Type::code;
    case CellType::note:
        return Type::small;
    case CellType::plain:
    case CellType::soft:
        break;
    }
    return Type::body;
}

bool is_soft(const QModelIndex& index) {
    const auto type = static_cast<CellType>(index.data(type_role).toInt());
    return type == CellType::soft || type == CellType::note;
}

bool is_note(const QModelIndex& index) {
    return static_cast<CellType>(index.data(type_role).toInt()) == CellType::note;
}

/// The text over two lines; what is longer is cut at the end of the second.
void paint_note(QPainter& painter, const QRect& room, const QString& text) {
    QTextLayout layout(text, painter.font());
    layout.beginLayout();
    QTextLine first = layout.createLine();
    first.setLineWidth(room.width());
    layout.endLayout();
    const QFontMetrics metrics = painter.fontMetrics();
    const QString above = text.left(first.textLength()).trimmed();
    const QString below = metrics.elidedText(text.mid(first.textLength()).trimmed(), Qt::ElideRight, room.width());
    const int lines = below.isEmpty() ? 1 : 2;
    QRect line(room.left(), room.center().y() - lines * metrics.lineSpacing() / 2, room.width(), metrics.lineSpacing());
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, above);
    painter.drawText(line.translated(0, metrics.lineSpacing()), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, below);
}

int side_padding() {
    return scaled(12);
}

} // namespace

void CellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Colours& c = colours();
    painter->save();
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    const QVariant background = index.data(Qt::BackgroundRole);
    painter->fillRect(option.rect, chosen || background.isValid() ? c.accent_wash : c.card);
    painter->fillRect(QRect(option.rect.left(), option.rect.bottom(), option.rect.width(), 1), c.line);
    QRect room = option.rect.adjusted(side_padding(), 0, -side_padding(), -1);
    const auto align = Qt::Alignment(index.data(Qt::TextAlignmentRole).toInt());
    const QString text = index.data(Qt::DisplayRole).toString();
    const QString below = index.data(below_role).toString();
    if (!below.isEmpty()) {
        // The two lines stand together in the middle.
        painter->setFont(type_font(Type::small));
        const int lower = painter->fontMetrics().lineSpacing();
        const int upper = QFontMetrics(type_font(Type::body)).lineSpacing();
        const int top = room.center().y() - (upper + lower) / 2;
        painter->setPen(c.soft_ink);
        painter->drawText(QRect(room.left(), top + upper, room.width(), lower), static_cast<int>(align | Qt::AlignVCenter) | Qt::TextSingleLine,
                          painter->fontMetrics().elidedText(below, Qt::ElideRight, room.width()));
        room = QRect(room.left(), top, room.width(), upper);
    }
    const QVariant state = index.data(state_role);
    if (is_note(index)) {
        painter->setFont(type_font(Type::small));
        painter->setPen(c.soft_ink);
        paint_note(*painter, room, text);
    } else if (state.isValid()) {
        paint_state_and_word(*painter, room, static_cast<State>(state.toInt()), text, align);
    } else {
        painter->setFont(type_font(type_of(index)));
        painter->setPen(is_soft(index) || !option.state.testFlag(QStyle::State_Enabled) ? c.soft_ink : c.ink);
        painter->drawText(room, static_cast<int>(align | Qt::AlignVCenter) | Qt::TextSingleLine,
                          painter->fontMetrics().elidedText(text, Qt::ElideRight, room.width()));
    }
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen(c.accent, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(option.rect.adjusted(1, 1, -1, -2));
    }
    painter->restore();
}

QSize CellDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    const QString text = index.data(Qt::DisplayRole).toString();
    const int width = index.data(state_role).isValid()
                          ? width_of_state_and_word(text)
                          : QFontMetrics(type_font(type_of(index))).horizontalAdvance(text);
    if (is_note(index)) {
        // Over two lines, with a word's room for where they break.
        return {width / 2 + 5 * side_padding(), scaled(row_height)};
    }
    const QString below = index.data(below_role).toString();
    const int lower = below.isEmpty() ? 0 : QFontMetrics(type_font(Type::small)).horizontalAdvance(below);
    return {std::max(width, lower) + 2 * side_padding() + 2, scaled(row_height)};
}

QWidget* CellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
    if (auto* line = qobject_cast<QLineEdit*>(editor)) {
        line->setAlignment(Qt::Alignment(index.data(Qt::TextAlignmentRole).toInt()));
        const QString column = index.model()->headerData(index.column(), Qt::Horizontal).toString();
        const QString spoken = index.siblingAtColumn(0).data().toString() + QStringLiteral(": ") + column;
        line->setAccessibleName(spoken);
    }
    return editor;
}

void CellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    // The table may be asked again while somebody types: the text stays.
    const auto* line = qobject_cast<QLineEdit*>(editor);
    if (line == nullptr || !line->isModified()) {
        QStyledItemDelegate::setEditorData(editor, index);
    }
}

void CellDelegate::setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const {
    const auto* line = qobject_cast<QLineEdit*>(editor);
    if (line == nullptr) {
        QStyledItemDelegate::setModelData(editor, model, index);
    } else if (line->isModified()) {
        set_flag(editor, "wrong", !model->setData(index, line->text(), Qt::EditRole));
    }
}

} // namespace soakbook::ui
