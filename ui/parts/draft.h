// SPDX-License-Identifier: GPL-3.0-or-later
// What was typed into a form and not entered: each text as it was typed, and where the form is found again.
#pragma once

#include "core/maths/quantities.h"
#include "ui/parts/intent.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <vector>

namespace soakbook::ui {

/// Which form it is, and what it is about.
struct DraftPlace {
    QString form;      ///< a short name that never changes, as "reading": small letters and underlines
    qint64 record = 0; ///< the batch, bag, yard ... the form is about; 0 for one that adds something new
    QString title;     ///< as Due names it; empty takes the title of the form
    /// Leads to the place of the form. Where the place does not open the form by itself, prefill says what does: "press",
    /// the name of a button, or "row_of", the name of a table, with "row", the row to open, or to choose before pressing.
    Intent intent;
};

/// One text, choice, tick or cell of a table.
struct DraftPart {
    enum class Kind { text, choice, tick, cell };
    Kind kind = Kind::text;
    QString where; ///< names of the widgets around it; for a cell the table's, then row and column
    QString says;  ///< the text as typed, a choice's key, "1" for a tick
    QString label; ///< what the field is called
    QString shows; ///< as a person reads it, where that is not `says`
};

struct Draft {
    DraftPlace place;
    int nth = 1; ///< counts drafts of one form and record: a second one is begun while the first still waits
    maths::Instant typed;
    std::vector<DraftPart> parts;

    /// Tells drafts of one workbook apart; stays the same when the program is started again.
    qint64 id() const;
    /// The name of its file.
    QString file_name() const;
};

/// The draft as a file holds it. `workbook` is the workbook's uid.
QByteArray draft_text(const Draft& draft, const QString& workbook);
/// Nothing where the text is damaged, strange, or of another workbook.
std::optional<Draft> read_draft(const QByteArray& text, const QString& workbook);
/// "Probe in the liquid: 51; Dial of the thermostat: 55", at most `most` characters.
QString typed_words(const Draft& draft, int most);

} // namespace soakbook::ui
