// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/tour_stops.h"

#include "core/work/round.h"
#include "core/work/shed_view.h"
#include "core/work/store_view.h"
#include "ui/papers/bag_labels.h"
#include "ui/papers/batch_papers.h"
#include "ui/papers/pail_labels.h"
#include "ui/papers/paper_head.h"
#include "ui/papers/pull_sheet.h"
#include "ui/papers/register_paper.h"
#include "ui/papers/run_sheet.h"
#include "ui/print/label_printer.h"
#include "ui/print/sheet_pages.h"

namespace soakbook::app {

namespace {

bool save_sheet(const ui::PaperSheet& sheet, const QString& path) { return !ui::write_pdf(ui::paper_of(sheet), path); }

bool save_labels(const std::vector<ui::LabelContent>& labels, const ui::LabelSheet& sheet, const QLocale& locale, const QString& path) {
    const auto run = ui::set_labels(labels, sheet, 0, ui::LabelStyle{locale, maths::StatementSet::from_rev_9, 300, {}});
    return run && !ui::write_pdf(ui::paper_of(std::make_shared<const ui::LabelRun>(*run)), path);
}

} // namespace

std::vector<TourPaper> tour_papers(const ui::Desk& desk) {
    const book::Workbook& book = desk.workbook();
    std::vector<TourPaper> papers;
    std::vector<work::BagId> bags;
    for (const work::BagLine& bag : work::bags(book, desk.today(), work::BagFilter::in_stock))
        if (bags.size() < 24)
            bags.push_back(bag.id);
    if (!bags.empty()) {
        std::size_t number = 0;
        for (const ui::LabelSheet& sheet : ui::stock_sheets()) {
            const QString name = QStringLiteral("labels-%1").arg(++number);
            papers.push_back({name, [&desk, bags, sheet](const QString& path) { return save_labels(ui::bag_labels(desk, bags), sheet, desk.locale(), path); }});
        }
    }
    std::vector<work::PailId> pails;
    for (const work::PailLine& pail : work::pails(book, desk.today()))
        pails.push_back(pail.id);
    if (!pails.empty())
        papers.push_back({QStringLiteral("pail-labels"), [&desk, pails](const QString& path) {
                              return save_labels(ui::pail_labels(desk, pails), ui::stock_sheets().at(1), desk.locale(), path);
                          }});
    const ui::SheetHead head = ui::paper_head(desk);
    bool mixing = false;
    bool batch_done = false;
    for (const work::BatchLine& line : work::batches(book, desk.today())) {
        if (!mixing) {
            mixing = true;
            papers.push_back({QStringLiteral("mixing-sheet"), [&desk, head, id = line.id](const QString& path) {
                                  const auto sheet = ui::mixing_sheet(desk, id);
                                  return sheet && save_sheet(ui::sheet_of(*sheet, head), path);
                              }});
        }
        if (!batch_done && line.bags > 0) {
            batch_done = true;
            papers.push_back({QStringLiteral("batch-sheet"), [&desk, head, id = line.id](const QString& path) {
                                  const auto sheet = ui::batch_sheet(desk, id);
                                  return sheet && save_sheet(ui::sheet_of(*sheet, head), path);
                              }});
        }
    }
    for (const work::RoundLine& round : work::rounds(book)) {
        papers.push_back({QStringLiteral("run-sheet"), [&desk, head, round = round.id, yard = round.yards.empty() ? work::YardId{} : round.yards.back().first](const QString& path) {
                              const auto sheet = ui::run_sheet(desk, round, yard);
                              return !sheet || save_sheet(ui::sheet_of(*sheet, head), path);
                          }});
        break;
    }
    papers.push_back({QStringLiteral("pull-list"), [&desk, head](const QString& path) { return save_sheet(ui::sheet_of(ui::pull_list(desk, {}), head), path); }});
    papers.push_back({QStringLiteral("register"), [&desk](const QString& path) { return save_sheet(ui::register_sheet(desk, {}), path); }});
    return papers;
}

} // namespace soakbook::app
