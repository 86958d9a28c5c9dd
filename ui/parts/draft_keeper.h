// SPDX-License-Identifier: GPL-3.0-or-later
// Keeps what a person types into one form, half a second after the key, until it is entered or given up; offers again what
// was kept before.
#pragma once

#include "ui/parts/draft.h"

#include <QObject>
#include <QPointer>

class QTimer;

namespace soakbook::ui {

class DraftOffer;
class Drafts;
class FormFrame;
class Habits;

class DraftKeeper : public QObject {
    Q_OBJECT

public:
    /// The offer stands above `fields`.
    DraftKeeper(FormFrame& form, const Habits& habits, QWidget& fields);
    ~DraftKeeper() override;

    /// Says which form it is and what it is about; offers what waits for it. The same again changes nothing.
    void set_place(const DraftPlace& place);
    /// Nothing before a place was said.
    const std::optional<DraftPlace>& place() const { return m_place; }
    /// A person typed into this field, or into a cell where there is no field.
    void note(const QWidget* field);
    /// What was typed is entered or given up: its draft goes.
    void drop();
    /// The form begins anew with what stands in it now. What was typed before waits as a draft.
    void begin_anew();
    /// Reads and writes what was typed last, while the fields are still there.
    void finish();
    /// Writes what is not written yet.
    void keep_now();

    /// Whether the form holds that draft, or offers it.
    bool has(qint64 id) const;
    /// The offer, while it stands there.
    DraftOffer* offer() const;

private:
    Drafts* drafts() const;
    void offer_next();
    void take_up();
    void throw_away();
    void watch_open_cell(QWidget* editor);
    void read_form();

    FormFrame& m_form;
    QPointer<const Habits> m_habits; ///< may go before the form, with the window
    QWidget& m_fields;
    QPointer<DraftOffer> m_offer;
    QTimer* m_read;
    QTimer* m_write;
    std::optional<DraftPlace> m_place;
    std::optional<Draft> m_draft;   ///< what the form holds that was typed
    std::optional<Draft> m_offered;
    std::vector<QPointer<const QWidget>> m_typed; ///< the fields typed into, in their turn
    bool m_cells_watched = false;
    bool m_unwritten = false;
    bool m_taking_up = false;
};

} // namespace soakbook::ui
