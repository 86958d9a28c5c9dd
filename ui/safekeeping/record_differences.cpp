// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/safekeeping/record_differences.h"

#include "ui/papers/record_words.h"
#include "ui/parts/desk.h"
#include "ui/parts/rows_model.h"
#include "ui/parts/theme.h"
#include "ui/safekeeping/apart_words.h"
#include "ui/safekeeping/tick_delegate.h"

#include <QHeaderView>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int place_role = Qt::UserRole + 20;

QString titled(const QString& kind, const QString& name) { return name.isEmpty() ? kind : QString(kind + QLatin1Char(' ') + name); }

} // namespace

RecordDifferences::RecordDifferences(QWidget* parent) : QTreeWidget(parent) {
    //: What a screen reader calls a list of records.
    setAccessibleName(tr("What the entry wrote"));
    setItemDelegate(new TickDelegate(this));
    setUniformRowHeights(true);
    setTabKeyNavigation(false);
    connect(this, &QTreeWidget::itemChanged, this, [this](QTreeWidgetItem* item) { take_tick(item); });
}

void RecordDifferences::begin(const QStringList& headers) {
    m_filling = true;
    clear();
    setColumnCount(static_cast<int>(headers.size()));
    setHeaderLabels(headers);
    header()->setStretchLastSection(true);
}

void RecordDifferences::end() {
    expandAll();
    for (int c = 0; c + 1 < columnCount(); ++c)
        header()->resizeSection(c, std::clamp(sizeHintForColumn(c) + (c == 0 ? 2 * indentation() : 0), scaled(c == 0 ? 160 : 280), scaled(420)));
    m_filling = false;
}

void RecordDifferences::show_there(const Desk& desk, const std::vector<work::RecordApart>& records) {
    //: Headers of a list of records in two copies of the workbook: the record and its parts, what stands here, what stands there.
    begin({tr("Record"), tr("Here"), tr("There")});
    m_records = records;
    for (std::size_t i = 0; i < records.size(); ++i) {
        const work::RecordApart& record = records[i];
        const bool theirs = m_theirs.count(record.key) > 0;
        auto* head = new QTreeWidgetItem(this);
        head->setText(0, titled(record_kind_words(record.key.table), record.name));
        head->setText(1, record_meets_words(record.meets, theirs));
        head->setToolTip(1, head->text(1));
        head->setData(0, type_role, static_cast<int>(CellType::strong));
        head->setData(0, place_role, static_cast<qint64>(i));
        head->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | (record.can_choose() ? Qt::ItemIsUserCheckable : Qt::NoItemFlags));
        if (record.can_choose()) {
            head->setCheckState(0, theirs ? Qt::Checked : Qt::Unchecked);
            //: Under the pointer over a box.
            head->setToolTip(0, tr("Tick it to have it say here what it says there"));
        }
        for (const work::ColumnApart& column : record.columns) {
            const auto words = [&](const std::optional<QString>& value) { return value ? value_words(column.column, *value, desk) : QString(); };
            auto* line = new QTreeWidgetItem(head, {column_words(column.column), words(column.here), words(column.there)});
            line->setToolTip(1, line->text(1));
            line->setToolTip(2, line->text(2));
        }
    }
    end();
}

void RecordDifferences::show_here(const Desk& desk, const std::vector<work::CorrectionLine>& lines) {
    //: Headers of a list of records: the record, and what was changed in it.
    begin({tr("Record"), tr("Changed")});
    m_records.clear();
    for (const work::CorrectionLine& line : lines) {
        auto* item = new QTreeWidgetItem(this, {titled(record_kind_words(line.table), line.record), correction_words(line, desk)});
        item->setToolTip(1, item->text(1));
    }
    end();
}

void RecordDifferences::take_tick(QTreeWidgetItem* item) {
    const QVariant place = item->data(0, place_role);
    if (m_filling || !place.isValid())
        return;
    const work::RecordApart& record = m_records.at(static_cast<std::size_t>(place.toLongLong()));
    const bool theirs = item->checkState(0) == Qt::Checked;
    if (theirs)
        m_theirs.insert(record.key);
    else
        m_theirs.erase(record.key);
    m_filling = true;
    item->setText(1, record_meets_words(record.meets, theirs));
    item->setToolTip(1, item->text(1));
    m_filling = false;
}

} // namespace soakbook::ui
