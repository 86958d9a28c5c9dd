// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/papers/history_dialog.h"

#include "ui/papers/record_words.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
#include "ui/parts/plain_window.h"
#include "ui/parts/theme.h"

#include <QCoreApplication>
#include <QDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

struct HistoryDialogWords {
    Q_DECLARE_TR_FUNCTIONS(HistoryDialog)
};

struct HistoryRow {
    qint64 id = 0;
    work::CorrectionLine line;
};

/// "reading B7K"
QString record_words(const work::CorrectionLine& line) {
    const QString kind = record_kind_words(line.table);
    return line.record.isEmpty() ? kind : QString(kind + QLatin1Char(' ') + line.record);
}

std::vector<Column<HistoryRow>> history_columns(const Desk& desk, bool several) {
    const auto what = [&desk](const HistoryRow& row) { return correction_words(row.line, desk); };
    const auto who = [](const HistoryRow& row) {
        //: In place of a name: another program changed the workbook
        return row.line.outside ? HistoryDialogWords::tr("outside Soakbook") : row.line.who;
    };
    const auto record = [](const HistoryRow& row) { return record_words(row.line); };
    const auto why = [](const HistoryRow& row) { return row.line.why; };
    std::vector<Column<HistoryRow>> columns;
    //: Header of a column: the day and hour of a change
    columns.push_back({.header = HistoryDialogWords::tr("When"),
                       .text = [&desk](const HistoryRow& row) { return desk.moment(row.line.at); }});
    //: Header of a column: who made a change
    columns.push_back({.header = HistoryDialogWords::tr("Who"), .text = who, .tip = who});
    if (several) {
        //: Header of a column: the record that was changed, by its code or name
        columns.push_back({.header = HistoryDialogWords::tr("Record"), .text = record, .tip = record});
    }
    //: Header of a column: what was changed
    columns.push_back({.header = HistoryDialogWords::tr("What"), .text = what, .type = CellType::strong, .tip = what});
    //: Header of a column: the reason of a change
    columns.push_back({.header = HistoryDialogWords::tr("Why"), .text = why, .type = CellType::soft, .tip = why});
    return columns;
}

} // namespace

void open_history(Desk& desk, const QString& title, const std::vector<work::CorrectionLine>& lines, QWidget* parent) {
    auto* dialog = new QDialog(parent);
    QVBoxLayout* whole = lay_out_window(dialog, QStringLiteral("history_dialog"), title);
    whole->addWidget(make_label(title, Type::heading));
    //: Explains a table of changes
    whole->addWidget(
        make_soft_label(HistoryDialogWords::tr("Newest first. Nothing that stood here is ever wiped."), Type::body));
    const bool several = std::any_of(lines.begin(), lines.end(), [&lines](const work::CorrectionLine& line) { return line.record != lines.front().record; });
    auto* table = new RecordTable(several ? QStringLiteral("papers/histories") : QStringLiteral("papers/history"), title);
    table->setObjectName(QStringLiteral("history_table"));
    auto* model = new RowsModel<HistoryRow>(
        history_columns(desk, several), [](const HistoryRow& row) { return row.id; }, table);
    table->set_rows_model(model);
    table->set_start_widths(several ? std::vector<int>{116, 128, 128, 220, 130} : std::vector<int>{116, 128, 280, 150});
    table->set_stretched_column(several ? 3 : 2);
    table->setSortingEnabled(false);
    std::vector<HistoryRow> rows;
    for (const work::CorrectionLine& line : lines)
        rows.push_back({static_cast<qint64>(rows.size()) + 1, line});
    model->set_rows(std::move(rows));
    whole->addWidget(table, 1);
    auto* foot = new QHBoxLayout;
    foot->addStretch(1);
    //: Button that closes a window
    auto* close = new QPushButton(HistoryDialogWords::tr("Close"));
    close->setObjectName(QStringLiteral("history_close"));
    foot->addWidget(close);
    whole->addLayout(foot);
    QObject::connect(close, &QPushButton::clicked, dialog, &QDialog::accept);
    const QRect room = dialog->screen()->availableGeometry();
    dialog->resize(std::min(scaled(860), room.width() - 32), std::min(scaled(440), room.height() - 48));
    dialog->open();
    table->setFocus(Qt::TabFocusReason);
}

HistoryOf history_of(const Desk& desk, const QString& title, const QString& table, qint64 id) {
    return id == 0 ? HistoryOf{} : HistoryOf{title, work::records_around(desk.workbook(), {table, id}), {}};
}

void open_history(Desk& desk, const HistoryOf& of, QWidget* parent) {
    std::vector<work::CorrectionLine> lines = work::history(desk.workbook(), of.records);
    if (of.reword) {
        std::for_each(lines.begin(), lines.end(), of.reword);
    }
    // The record itself, not what was entered around it.
    const auto itself = std::find_if(lines.begin(), lines.end(), [&of](const work::CorrectionLine& line) {
        return line.table == of.records.front().table && line.row == of.records.front().id;
    });
    const QString own = itself == lines.end() ? QString() : record_words(*itself);
    //: Title of a window; %1 what it is about, such as "Bag S7K" or "Batch B12"
    open_history(desk, HistoryDialogWords::tr("History: %1").arg(of.title.isEmpty() ? own : of.title), lines, parent);
}

} // namespace soakbook::ui
