// SPDX-License-Identifier: GPL-3.0-or-later
// The whole job of an invented outfit, from an empty computer to the register, told page by page. It knows the program as its user
// does, and reads what came of it with programs of others.
#pragma once

#include "hands.h"

#include "app/clock.h"

#include <QString>

#include <memory>
#include <type_traits>

namespace soakbook::app {
class Session;
}

namespace soakbook::tests {

class Story {
public:
    /// Everything is kept under `folder`, which is emptied first.
    explicit Story(const QString& folder);
    ~Story();

    // The pages, in their order; each leaves the program as the next one needs it.
    void welcome_and_a_new_workbook();
    void set_up();
    void deliveries();
    void mix();
    void heat();
    void soak();
    void weigh_and_correct();
    void bag_and_label();
    void leftovers();
    void a_yard_of_twenty();
    void strips_in();
    void an_entry_a_day_late();
    void one_undo();
    void pull_list_and_strips_out();
    void a_correction_with_its_reason();
    void the_register();

    /// The first form of the story, filled in and not yet entered.
    void fill_in_the_welcome();

    const QString& workbook() const { return m_workbook; }
    Hands& hands() { return m_hands; }
    void close();
    /// Keys and clicks of the batch, from its first form to the saved labels.
    int batch_count() const { return m_batch_count; }
    int batch_keys() const { return m_batch_keys; }

private:
    using Instant = std::invoke_result_t<app::Clock>;

    /// The wall shows "2024-02-27 18:00" from now on.
    void it_is(const QString& moment);
    /// The program was closed in between, and is opened again as people do.
    void next_day(const QString& moment);
    void start_program();
    QString ask(const QString& sql) const;
    void go(int place);
    QString file(const QString& name) const;
    void make_delivery(const QString& material, const QString& name);

    QString m_folder;
    QString m_workbook;
    std::shared_ptr<Instant> m_now;
    std::unique_ptr<app::Session> m_session;
    Hands m_hands;
    int m_batch_count = 0;
    int m_batch_keys = 0;
};

} // namespace soakbook::tests
