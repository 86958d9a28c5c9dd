// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/draft_parts.h"

#include "ui/parts/field.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QHash>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace soakbook::ui {

namespace {

/// A widget that holds something typed or chosen, under a name that is the same when the form is opened again.
struct Editor {
    QWidget* widget;
    QString where;
};

bool is_inside_another_editor(const QWidget* widget, const QWidget& form) {
    for (const QWidget* above = widget->parentWidget(); above != nullptr && above != &form; above = above->parentWidget()) {
        if (qobject_cast<const QAbstractItemView*>(above) != nullptr || qobject_cast<const QComboBox*>(above) != nullptr ||
            qobject_cast<const QAbstractSpinBox*>(above) != nullptr || above->isWindow()) {
            return true;
        }
    }
    return false;
}

bool holds_something(const QWidget* widget) {
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    return qobject_cast<const QLineEdit*>(widget) != nullptr || qobject_cast<const QPlainTextEdit*>(widget) != nullptr ||
           qobject_cast<const QComboBox*>(widget) != nullptr || (button != nullptr && button->isCheckable());
}

QString path_to(const QWidget* widget, const QWidget& form) {
    QStringList path{QString::fromLatin1(widget->metaObject()->className()).section(QStringLiteral("::"), -1)};
    for (const QWidget* part = widget; part != nullptr && part != &form; part = part->parentWidget()) {
        if (!part->objectName().isEmpty() && !part->objectName().startsWith(QLatin1String("qt_"))) {
            path.prepend(part->objectName());
        }
    }
    return path.join(QLatin1Char('/'));
}

std::vector<Editor> editors_in(const QWidget& form) {
    std::vector<Editor> editors;
    QHash<QString, int> seen;
    for (QWidget* widget : form.findChildren<QWidget*>()) {
        if (!holds_something(widget) || is_inside_another_editor(widget, form)) {
            continue;
        }
        const QString path = path_to(widget, form);
        editors.push_back({widget, QStringLiteral("%1/%2").arg(path).arg(++seen[path])});
    }
    return editors;
}

QString label_of(const QWidget* widget) {
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    const QString spoken = widget->accessibleName();
    return spoken.isEmpty() && button != nullptr ? button->text() : spoken;
}

DraftPart part_of(const Editor& editor) {
    DraftPart part;
    part.where = editor.where;
    part.label = label_of(editor.widget);
    if (const auto* line = qobject_cast<const QLineEdit*>(editor.widget)) {
        part.says = line->text();
    } else if (const auto* note = qobject_cast<const QPlainTextEdit*>(editor.widget)) {
        part.says = note->toPlainText();
    } else if (const auto* list = qobject_cast<const QComboBox*>(editor.widget)) {
        part.kind = DraftPart::Kind::choice;
        part.says = list->currentData().toString();
        part.shows = list->currentText();
    } else {
        const auto* button = qobject_cast<const QAbstractButton*>(editor.widget);
        part.kind = DraftPart::Kind::tick;
        part.says = button->isChecked() ? QStringLiteral("1") : QString();
        part.shows = button->isChecked() ? button->text() : QString();
        // "Clear now: yes", not "Clear now: yes: yes".
        part.label = part.label.section(QStringLiteral(": "), 0, 0) == part.shows ? QString() : part.label.section(QStringLiteral(": "), 0, 0);
    }
    return part;
}

bool put_into(QWidget& widget, const DraftPart& part) {
    if (auto* line = qobject_cast<QLineEdit*>(&widget)) {
        if (line->text() != part.says) {
            line->setText(part.says);
            Q_EMIT line->textEdited(part.says);
        }
    } else if (auto* note = qobject_cast<QPlainTextEdit*>(&widget)) {
        if (note->toPlainText() != part.says) {
            note->setPlainText(part.says);
        }
    } else if (auto* list = qobject_cast<QComboBox*>(&widget)) {
        int at = part.says.isEmpty() ? -1 : 0;
        while (at >= 0 && at < list->count() && list->itemData(at).toString() != part.says) {
            ++at;
        }
        if (at >= list->count()) {
            return false;
        }
        // An empty key is the entry that means none, where the list has one.
        at = at < 0 && list->count() > 0 && !list->itemData(0).isValid() ? 0 : at;
        if (list->currentIndex() != at) {
            list->setCurrentIndex(at);
            Q_EMIT list->activated(at);
        }
    } else if (auto* button = qobject_cast<QAbstractButton*>(&widget)) {
        const bool wanted = !part.says.isEmpty();
        // One of several is left by choosing another.
        if (button->isChecked() != wanted && (wanted || button->group() == nullptr)) {
            button->click();
        }
    }
    return true;
}

/// Nothing where the table has no rows of ours, or none any more.
RowsModelBase* rows_of(const RecordTable& table) {
    return qobject_cast<RowsModelBase*>(table.model());
}

QString cell_path(const RecordTable& table, qint64 row, int column) {
    return QStringLiteral("%1/%2/%3").arg(table.objectName()).arg(row).arg(column);
}

QString cell_label(const RecordTable& table, qint64 row, int column) {
    const int line = rows_of(table)->row_of(row);
    const QString head = table.model()->headerData(column, Qt::Horizontal).toString();
    const QString first = line < 0 ? QString() : table.model()->index(line, 0).data().toString();
    return first.isEmpty() ? head : QString(first + QStringLiteral(", ") + head);
}

void add_cells(std::vector<DraftPart>& parts, const RecordTable& table) {
    if (rows_of(table) == nullptr) {
        return;
    }
    std::vector<TypedCell> cells = rows_of(table)->typed_cells();
    // What is being typed into an open cell is typed too.
    const auto* open = qobject_cast<const QLineEdit*>(QApplication::focusWidget());
    if (open != nullptr && table.isAncestorOf(open) && table.currentIndex().isValid() && open->isModified()) {
        cells.push_back({table.current_id(), table.currentIndex().column(), open->text()});
    }
    for (const TypedCell& cell : cells) {
        const QString where = cell_path(table, cell.row, cell.column);
        std::erase_if(parts, [&where](const DraftPart& part) { return part.where == where; });
        parts.push_back({DraftPart::Kind::cell, where, cell.text, cell_label(table, cell.row, cell.column), {}});
    }
}

bool put_cell(QWidget& form, const DraftPart& part) {
    const QString table_name = part.where.section(QLatin1Char('/'), 0, -3);
    const qint64 row = part.where.section(QLatin1Char('/'), -2, -2).toLongLong();
    const int column = part.where.section(QLatin1Char('/'), -1).toInt();
    for (RecordTable* table : form.findChildren<RecordTable*>()) {
        if (table->objectName() == table_name && rows_of(*table) != nullptr && rows_of(*table)->row_of(row) >= 0) {
            const QModelIndex cell = rows_of(*table)->index(rows_of(*table)->row_of(row), column);
            return rows_of(*table)->setData(cell, part.says, Qt::EditRole);
        }
    }
    return false;
}

bool put_part(QWidget& form, const DraftPart& part) {
    if (part.kind == DraftPart::Kind::cell) {
        return put_cell(form, part);
    }
    for (const Editor& editor : editors_in(form)) {
        if (editor.where == part.where) {
            return part_of(editor).kind == part.kind && put_into(*editor.widget, part);
        }
    }
    return part.says.isEmpty();
}

} // namespace

std::vector<DraftPart> read_parts(const QWidget& form, const std::vector<const QWidget*>& fields) {
    std::vector<DraftPart> parts;
    const std::vector<Editor> editors = editors_in(form);
    for (const QWidget* field : fields) {
        for (const Editor& editor : editors) {
            if (field == editor.widget || field->isAncestorOf(editor.widget)) {
                parts.push_back(part_of(editor));
            }
        }
    }
    for (const RecordTable* table : form.findChildren<RecordTable*>()) {
        add_cells(parts, *table);
    }
    return parts;
}

std::vector<DraftPart> put_parts(QWidget& form, const std::vector<DraftPart>& parts) {
    for (const DraftPart& part : parts) {
        put_part(form, part);
    }
    // What one field brought along may have changed another after its turn.
    std::vector<DraftPart> left;
    for (const DraftPart& part : parts) {
        if (!put_part(form, part)) {
            left.push_back(part);
        }
    }
    return left;
}

} // namespace soakbook::ui
