// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/history_dialog.h"

#include "ui/papers/record_words.h"
#include "ui/parts/record_table.h"
#include "ui/parts/rows_model.h"
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

struct Line {
    qint64 id = 0;
    work::CorrectionLine line;
};

std::vector<Column<Line>> columns(const Desk& desk) {
    const auto what = [&desk](const Line& row) { return correction_words(row.line, desk); };
    const auto why = [](const Line& row) { return row.line.why; };
    std::vector<Column<Line>> columns;
    //: Header of a column: the day and hour of a change
    columns.push_back({.header = HistoryDialogWords::tr("When"),
                       .text = [&desk](const Line& row) { return desk.moment(row.line.at); }});
    //: Header of a column: who made a change
    columns.push_back({.header = HistoryDialogWords::tr("Who"), .text = [](const Line& row) { return row.line.who; }});
    //: Header of a column: what was changed
    columns.push_back({.header = HistoryDialogWords::tr("What"), .text = what, .type = CellType::strong, .tip = what});
    //: Header of a column: the reason of a change
    columns.push_back({.header = HistoryDialogWords::tr("Why"), .text = why, .type = CellType::soft, .tip = why});
    return columns;
}

} // namespace

void open_history(Desk& desk, const QString& title, const std::vector<work::CorrectionLine>& lines, QWidget* parent) {
    auto* dialog = new QDialog(parent);
    dialog->setObjectName(QStringLiteral("history_dialog"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowModality(Qt::WindowModal);
    dialog->setWindowTitle(title);
    set_kind(dialog, "plain_card");
    auto* whole = new QVBoxLayout(dialog);
    whole->setContentsMargins(page_margin, page_margin, page_margin, 16);
    whole->setSpacing(12);
    whole->addWidget(make_label(title, Type::heading));
    //: Explains a table of changes
    whole->addWidget(
        make_soft_label(HistoryDialogWords::tr("Newest first. Nothing that stood here is ever wiped."), Type::body));
    auto* table = new RecordTable(QStringLiteral("store/history"), title);
    table->setObjectName(QStringLiteral("history_table"));
    auto* model = new RowsModel<Line>(
        columns(desk), [](const Line& row) { return row.id; }, table);
    table->set_rows_model(model);
    table->set_start_widths({120, 84, 300, 160});
    table->set_stretched_column(2);
    table->setSortingEnabled(false);
    std::vector<Line> rows;
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

} // namespace soakbook::ui
