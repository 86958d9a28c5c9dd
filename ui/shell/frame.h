// SPDX-License-Identifier: GPL-3.0-or-later
// The window: places at the left, head and page at the right, the status line below. It knows a place only as Place.
#pragma once

#include "ui/parts/place.h"
#include "ui/shell/find_box.h"
#include "ui/shell/status_line.h"

#include <QWidget>

#include <functional>
#include <set>
#include <vector>

class QBoxLayout;
class QStackedWidget;

namespace soakbook::ui {

class Desk;
class Head;
class Navigation;
class NoticeBar;
struct WayOn;
class WhoBar;

class Frame : public QWidget {
    Q_OBJECT

public:
    /// The places in the order of the navigation; the frame becomes their parent and shows the first.
    Frame(Desk& desk, std::vector<Place*> places, QWidget* parent = nullptr);

    // What the frame asks of others, each a function so that it knows nobody.
    void set_find(Find find);
    void set_status(std::function<StatusFacts()> status);
    /// The names of those who may make entries.
    void set_people(std::function<QStringList()> people);

    /// Goes to a place and opens what is wished for there.
    void go(const Intent& intent);
    void go_to(PlaceName place);
    Place* current_place() const;
    /// Says under the head what is so as long as this window is open, with a button for each way on; empty words end it.
    void set_banner(const QString& words, const std::vector<WayOn>& ways = {});
    /// Says something under the head until it is put away.
    void say(const QString& words);
    /// Asks everything again: the current page, undo, status, people.
    void refresh();
    /// Asks the status and the people again.
    void refresh_status();

    /// Where the window stood last time; off for tests and pictures.
    void restore_place();

Q_SIGNALS:
    /// The window was closed by the user.
    void closed();

protected:
    void showEvent(QShowEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void add_place(Place* place);
    void add_keys();
    void show_place(Place* place);
    void take_title();
    void refresh_undo();
    void undo();
    void redo();
    void ask_who();
    void show_keys();
    void change_text(int percent);
    void wear_preferences();

    Desk& m_desk;
    std::vector<Place*> m_places;
    std::set<Place*> m_stale;
    Navigation* m_navigation;
    Head* m_head;
    NoticeBar* m_notice;
    NoticeBar* m_banner = nullptr;
    QBoxLayout* m_bars;
    WhoBar* m_who_bar;
    QStackedWidget* m_pages;
    StatusLine* m_status_line;
    std::function<StatusFacts()> m_status;
    std::function<QStringList()> m_people;
    bool m_place_remembered = false;
};

} // namespace soakbook::ui
