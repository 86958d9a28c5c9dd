// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safekeeping/salvage_window.h"

#include "ui/papers/record_words.h"
#include "ui/parts/habits.h"
#include "ui/parts/refusal_words.h"
#include "ui/parts/plain_window.h"
#include "ui/parts/theme.h"
#include "ui/safekeeping/salvage_words.h"
#include "ui/safekeeping/tick_delegate.h"

#include <QAbstractTableModel>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QProgressDialog>
#include <QPushButton>
#include <QScreen>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace soakbook::ui {

namespace {

// Asks for a row when it is looked at: a table may hold a million.
class LeftRowsModel : public QAbstractTableModel {
public:
    LeftRowsModel(const work::WhatIsLeft& left, std::size_t table, const Habits& habits, const QString& sure_header, QObject* parent)
        : QAbstractTableModel(parent), m_left(left), m_table(table), m_habits(habits), m_sure_header(sure_header) {}

    int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : static_cast<int>(about().rows); }
    int columnCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : static_cast<int>(about().columns.size()) + 1; }
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override {
        if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
            return {};
        return section == 0 ? m_sure_header : left_column_words(about().columns.value(section - 1));
    }
    QVariant data(const QModelIndex& index, int role) const override {
        if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::ToolTipRole))
            return {};
        if (index.row() != m_kept_row) {
            m_kept = m_left.row(m_table, index.row());
            m_kept_row = index.row();
        }
        if (index.column() == 0)
            return how_sure_words(m_kept.sure);
        const auto& cell = m_kept.cells.at(static_cast<std::size_t>(index.column() - 1));
        if (!cell)
            return {};
        const QString& column = about().columns.at(index.column() - 1);
        return value_words(column, m_left.spoken(m_table, index.column() - 1, *cell), m_habits);
    }

private:
    const work::LeftTable& about() const { return m_left.tables()[m_table]; }

    const work::WhatIsLeft& m_left;
    std::size_t m_table;
    const Habits& m_habits;
    QString m_sure_header;
    mutable int m_kept_row = -1;
    mutable work::LeftRow m_kept;
};

} // namespace

SalvageWindow::SalvageWindow(const QString& path, const Habits& habits, QWidget* parent) : QDialog(parent), m_habits(habits) {
    //: Title of a window; %1 is a file's name.
    const QString title = tr("What is left in %1").arg(QFileInfo(path).fileName());
    QVBoxLayout* column = lay_out_window(this, QStringLiteral("salvage_window"), title);
    column->addWidget(make_label(title, Type::heading));
    m_sentence = make_label({}, Type::body, nullptr, true);
    m_sentence->setObjectName(QStringLiteral("salvage_sentence"));
    column->addWidget(m_sentence);

    //: Shown while a damaged file is read.
    QProgressDialog progress(tr("Reading what is left..."),
                             //: Button that stops the reading of a damaged file.
                             tr("Stop"), 0, 100, parent);
    progress.setWindowModality(Qt::WindowModal);
    auto read = work::WhatIsLeft::read(path, [&progress](int done) {
        progress.setValue(std::min(done, 99));
        return !progress.wasCanceled();
    });
    progress.reset();
    if (read) {
        m_left = std::move(*read);
        build();
    } else {
        m_sentence->setText(not_salvaged_words(read.error(), path));
        column->addStretch(1);
    }
    auto* foot = new QHBoxLayout;
    if (m_left) {
        //: Button: writes one file for each table, for a spreadsheet.
        auto* save = new QPushButton(tr("Save all as tables..."));
        save->setObjectName(QStringLiteral("salvage_save"));
        connect(save, &QPushButton::clicked, this, [this] { ask_where(); });
        foot->addWidget(save);
    }
    foot->addStretch(1);
    //: Button that closes a window
    m_close = new QPushButton(tr("Close"));
    m_close->setObjectName(QStringLiteral("salvage_close"));
    connect(m_close, &QPushButton::clicked, this, &QDialog::reject);
    foot->addWidget(m_close);
    column->addLayout(foot);
    const QRect room = screen()->availableGeometry();
    resize(std::min(scaled(1040), room.width() - 32), m_left ? std::min(scaled(640), room.height() - 48) : sizeHint().height());
    if (m_tables)
        m_tables->setFocus(Qt::TabFocusReason);
    else
        m_close->setFocus(Qt::TabFocusReason);
}

SalvageWindow::~SalvageWindow() = default;

void SalvageWindow::build() {
    auto* column = static_cast<QVBoxLayout*>(layout());
    //: Behind what was read of a damaged workbook; two sentences.
    m_sentence->setText(left_words(*m_left) + QLatin1Char(' ') + tr("Nothing was written to the file. The newest safe copy is the better way back: "
                                                                    "use this list for what it does not hold yet."));
    auto* beside = new QHBoxLayout;
    beside->setSpacing(16);
    m_tables = new QListWidget;
    m_tables->setObjectName(QStringLiteral("salvage_tables"));
    //: What a screen reader calls a list of kinds of records.
    m_tables->setAccessibleName(tr("Kinds of records"));
    m_tables->setItemDelegate(new TickDelegate(m_tables));
    m_tables->setUniformItemSizes(true);
    for (std::size_t t = 0; t < m_left->tables().size(); ++t) {
        const work::LeftTable& table = m_left->tables()[t];
        if (table.rows == 0 && table.lost == 0)
            continue;
        m_shown.push_back(t);
        //: A line in a list: a kind of record, and how many of them were read.
        new QListWidgetItem(tr("%1: %2").arg(record_kind_words(table.name)).arg(table.rows), m_tables);
    }
    m_tables->setFixedWidth(std::max(scaled(200), m_tables->sizeHintForColumn(0) + scaled(32)));
    beside->addWidget(m_tables);
    auto* right = new QVBoxLayout;
    m_counts = make_soft_label({}, Type::body);
    m_counts->setObjectName(QStringLiteral("salvage_counts"));
    right->addWidget(m_counts);
    m_rows = new QTableView;
    m_rows->setObjectName(QStringLiteral("salvage_rows"));
    m_rows->setTabKeyNavigation(false);
    m_rows->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_rows->setItemDelegate(new TickDelegate(m_rows));
    m_rows->setShowGrid(false);
    m_rows->verticalHeader()->hide();
    m_rows->verticalHeader()->setDefaultSectionSize(scaled(32));
    m_rows->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_rows->horizontalHeader()->setStretchLastSection(true);
    right->addWidget(m_rows, 1);
    beside->addLayout(right, 1);
    column->addLayout(beside, 1);
    m_answer = make_label({}, Type::body, nullptr, true);
    m_answer->setObjectName(QStringLiteral("salvage_answer"));
    m_answer->hide();
    column->addWidget(m_answer);
    connect(m_tables, &QListWidget::currentRowChanged, this, [this](int line) { show_table(line); });
    m_tables->setCurrentRow(0);
}

void SalvageWindow::show_table(int line) {
    if (line < 0 || line >= static_cast<int>(m_shown.size()))
        return;
    const std::size_t table = m_shown[static_cast<std::size_t>(line)];
    m_counts->setText(left_table_words(m_left->tables()[table]));
    QAbstractItemModel* before = m_rows->model();
    //: Header of a column: whether a record agrees with the history.
    m_rows->setModel(new LeftRowsModel(*m_left, table, m_habits, tr("How sure"), m_rows));
    delete before;
    m_rows->horizontalHeader()->setResizeContentsPrecision(50);
    m_rows->resizeColumnsToContents();
    for (int c = 0; c < m_rows->model()->columnCount(); ++c)
        m_rows->setColumnWidth(c, std::min(m_rows->columnWidth(c), scaled(320)));
}

void SalvageWindow::ask_where() {
    //: Title of the window that asks for a folder.
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Where to save the tables"));
    if (!folder.isEmpty())
        save_into(folder);
}

void SalvageWindow::save_into(const QString& folder) {
    const auto saved = work::save_as_tables(*m_left, folder, table_wording(m_habits));
    //: Files for a spreadsheet were written; %n is how many.
    m_answer->setText(saved ? tr("%n tables were saved.", nullptr, *saved) : refusal_words(saved.error(), m_habits));
    m_answer->show();
}

void open_salvage(const QString& path, const Habits& habits, QWidget* parent) { (new SalvageWindow(path, habits, parent))->open(); }

} // namespace soakbook::ui
