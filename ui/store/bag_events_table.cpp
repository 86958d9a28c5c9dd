// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/store/bag_events_table.h"

#include "ui/store/store_words.h"

namespace soakbook::ui {

BagEventsTable::BagEventsTable(Desk& desk, QWidget* parent)
    //: Read aloud: the name of a table
    : RecordTable(QStringLiteral("store/bag_events"), tr("What happened to this bag"), parent), m_desk(desk),
      m_rows(new RowsModel<Line>(columns(), [](const Line& line) { return line.id; }, this)) {
    setObjectName(QStringLiteral("bag_events"));
    set_rows_model(m_rows);
    set_start_widths({74, 100, 66});
    set_stretched_column(1);
    setSortingEnabled(false);
    //: Stands in a table of what happened to a bag
    set_empty_text(tr("Nothing yet: the label waits for its bag."));
}

QString BagEventsTable::what(const work::BagEvent& event) {
    using Kind = work::BagEvent::Kind;
    QString words;
    switch (event.kind) {
    case Kind::sealed:
        //: What happened to a bag
        return tr("sealed");
    case Kind::opened:
        //: What happened to a bag
        return tr("opened");
    case Kind::resealed:
        //: What happened to a bag
        return tr("resealed");
    case Kind::placed:
        //: What happened to strips of a bag; %1 a hive and its yard
        words = tr("hung, %1").arg(event.where);
        break;
    case Kind::discarded:
        //: What happened to strips of a bag
        words = tr("thrown away");
        break;
    case Kind::recounted:
        //: What happened to a bag
        words = tr("counted anew");
        break;
    }
    return event.reason.isEmpty() ? words : QString(words + QStringLiteral(": ") + event.reason);
}

std::vector<Column<BagEventsTable::Line>> BagEventsTable::columns() const {
    std::vector<Column<Line>> columns;
    //: Header of a column
    columns.push_back({.header = tr("Day"),
                       .text = [this](const Line& line) { return m_desk.day_short(line.event.on); },
                       .tip = [this](const Line& line) { return m_desk.day(line.event.on); }});
    //: Header of a column: what happened to a bag
    columns.push_back({.header = tr("What"),
                       .text = [](const Line& line) { return what(line.event); },
                       .state = [](const Line& line) { return line.event.made_void ? std::optional(ui::State::gone) : std::nullopt; },
                       .tip = [](const Line& line) {
                           //: Tool tip of an entry that does not count any more; %1 what it says
                           return line.event.made_void ? tr("%1 (made void)").arg(what(line.event)) : what(line.event);
                       }});
    //: Header of a column: strips that came or went, with a sign
    columns.push_back({.header = tr("Strips"),
                       .text = [this](const Line& line) {
                           return line.event.strips == 0 || line.event.made_void ? QString() : with_sign(m_desk, line.event.strips);
                       },
                       .align = Qt::AlignRight,
                       .type = CellType::strong});
    return columns;
}

void BagEventsTable::show_bag(work::BagId bag) {
    std::vector<Line> lines;
    for (work::BagEvent& event : work::bag_events(m_desk.workbook(), bag))
        lines.push_back({static_cast<qint64>(lines.size()) + 1, std::move(event)});
    m_rows->set_rows(std::move(lines));
}

} // namespace soakbook::ui
