// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/setup_place.h"

#include "ui/parts/desk.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/side_list.h"
#include "ui/setup/figures_page.h"
#include "ui/setup/habits_page.h"
#include "ui/setup/operation_page.h"
#include "ui/setup/people_page.h"
#include "ui/setup/safe_copies_page.h"
#include "ui/setup/strip_kinds_page.h"
#include "ui/setup/vessels_page.h"
#include "ui/setup/workbooks_page.h"

#include <QStackedWidget>
#include <QVBoxLayout>

#include <array>

namespace soakbook::ui {

namespace {

/// The pages in the order of the list; the id in the list is the place here plus one.
constexpr std::array pages{"operation", "people", "strip_kinds", "vessels", "figures", "habits", "safe_copies", "workbooks"};

class SetupPlace : public Place {
    Q_OBJECT

public:
    SetupPlace(Desk& desk, const WorkbookDoors& doors) {
        //: Name of the list of Set-up's pages, read aloud.
        m_list = new SideList(tr("Pages of Set-up"));
        m_list->setObjectName(QStringLiteral("setup_pages"));
        m_list->set_items({
            {1, {},
             //: A page of Set-up: name and address of the outfit.
             tr("Operation"), tr("name and address on labels"), {}, {}},
            {2, {},
             //: A page of Set-up.
             tr("People"), tr("who makes entries"), {}, {}},
            {3, {},
             //: A page of Set-up.
             tr("Strip kinds"), tr("weights, strips a bag, dose"), {}, {}},
            {4, {},
             //: A page of Set-up.
             tr("Tanks and bins"), tr("what they hold"), {}, {}},
            {5, {},
             //: A page of Set-up: figures and limits the user works by.
             tr("Working figures"), tr("strength, limits, times"), {}, {}},
            {6, {},
             //: A page of Set-up: units, language, look.
             tr("Reading and writing"), tr("units, language, text size"), {}, {}},
            {7, {},
             //: A page of Set-up.
             tr("Safe copies"), tr("where they are kept"), {}, {}},
            {8, {},
             //: A page of Set-up: open or make another workbook.
             tr("Workbooks"), tr("open or make another"), {}, {}},
        });
        m_stack = new QStackedWidget;
        m_figures = new FiguresPage(desk);
        m_stack->addWidget(new OperationPage(desk));
        m_stack->addWidget(new PeoplePage(desk));
        m_stack->addWidget(new StripKindsPage(desk));
        m_stack->addWidget(new VesselsPage(desk));
        m_stack->addWidget(m_figures);
        m_stack->addWidget(new HabitsPage(desk));
        m_stack->addWidget(new SafeCopiesPage(desk, doors));
        m_stack->addWidget(new WorkbooksPage(desk, doors));
        auto* layout = new QVBoxLayout(this);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(new SplitPage(name(), {}, m_list, m_stack));
        m_list->choose(1);
        connect(m_list, &SideList::chosen, this, [this](qint64 id) { show_page(static_cast<int>(id) - 1); });
        connect(m_list, &SideList::entered_page, this, [this] { take_page_focus(); });
        // A page that stands open keeps what is typed: the workbook is asked again only when the page is shown.
    }

    PlaceName place() const override { return PlaceName::setup; }
    //: A place in the navigation: how the user works.
    QString name() const override { return tr("Set-up"); }
    void open(const Intent& intent) override {
        const QString wanted = intent.task == QStringLiteral("figure") ? QStringLiteral("figures") : intent.task;
        for (std::size_t i = 0; i < pages.size(); ++i)
            if (wanted == QLatin1String(pages[i])) {
                m_list->choose(static_cast<qint64>(i) + 1);
                show_page(static_cast<int>(i));
                take_page_focus();
            }
        if (intent.task == QStringLiteral("figure"))
            m_figures->go_to(intent.prefill.value(QStringLiteral("key")).toString());
    }
    void refresh() override {
        if (auto* page = qobject_cast<SetupPage*>(m_stack->currentWidget()))
            page->refresh();
    }
    void take_focus() override { m_list->setFocus(); }

private:
    void show_page(int index) {
        m_stack->setCurrentIndex(index);
        refresh();
    }
    void take_page_focus() {
        if (auto* page = qobject_cast<SetupPage*>(m_stack->currentWidget()))
            page->take_focus();
    }

    SideList* m_list;
    QStackedWidget* m_stack;
    FiguresPage* m_figures;
};

} // namespace

Place* make_setup_place(Desk& desk, const WorkbookDoors& doors) { return new SetupPlace(desk, doors); }

} // namespace soakbook::ui

#include "setup_place.moc"
