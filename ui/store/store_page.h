// SPDX-License-Identifier: GPL-3.0-or-later
// The place itself: the list of its three pages, and what is wished for from elsewhere.
#pragma once

#include "ui/parts/desk.h"
#include "ui/parts/place.h"

#include <vector>

class QStackedWidget;

namespace soakbook::ui {

class BagsPage;
class LotsPage;
class PailsPage;
class SideList;
class StoreSection;

class StorePage : public Place {
    Q_OBJECT

public:
    explicit StorePage(Desk& desk, QWidget* parent = nullptr);
    PlaceName place() const override { return PlaceName::store; }
    QString name() const override;
    QString title() const override;
    void open(const Intent& intent) override;
    void refresh() override;
    void take_focus() override;

private:
    enum class Section { bags = 1, pails, lots };
    void make_sections();
    void show_section(Section section);
    StoreSection* shown() const;
    void show_list();
    void open_bags(const Intent& intent);
    void open_pails(const Intent& intent);

    Desk& m_desk;
    SideList* m_list;
    QStackedWidget* m_stack;
    BagsPage* m_bags = nullptr;
    PailsPage* m_pails = nullptr;
    LotsPage* m_lots = nullptr;
};

} // namespace soakbook::ui
