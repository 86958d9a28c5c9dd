// SPDX-License-Identifier: GPL-3.0-or-later
// What a record said before: who changed it, when, and why. The same window, words and key in every place.
#pragma once

#include "core/work/record_history.h"
#include "ui/parts/desk.h"

#include <QObject>
#include <QString>

#include <functional>
#include <vector>

class QPushButton;
class QWidget;

namespace soakbook::ui {

class Place;
class RecordTable;

/// Opens a window over `parent` with these lines, newest first as they come.
void open_history(Desk& desk, const QString& title, const std::vector<work::CorrectionLine>& lines, QWidget* parent);

/// Whose history is asked for: its records, and what they are called together.
struct HistoryOf {
    QString title; ///< "Bag S7K", "Batch B12"; empty takes the kind and name of the record
    std::vector<work::RecordRef> records;
    /// Puts a line into other words before it is shown, where a column needs more than its name to be read.
    std::function<void(work::CorrectionLine& line)> reword = {};
};
/// The history of a record and of what was entered for it; none without a key. An empty title takes what kind of record it
/// is, and its name.
HistoryOf history_of(const Desk& desk, const QString& title, const QString& table, qint64 id);
/// Gives what is chosen now; no records where nothing is.
using WhoseHistory = std::function<HistoryOf()>;

/// Opens the window for it.
void open_history(Desk& desk, const HistoryOf& of, QWidget* parent);
/// The quiet button "History", the same wherever it stands. It also answers the key within `scope`.
QPushButton* make_history_button(Desk& desk, QWidget* scope, WhoseHistory whose, const QString& object_name);
/// Answers the key, where no button has room: within `scope`, for what is chosen there. The innermost scope around the
/// keyboard answers. A table has it in its own menu as well.
void give_history(Desk& desk, QWidget* scope, WhoseHistory whose);
/// Listens for the key, Ctrl+H, in a place. Once for each place.
void listen_for_history_key(Place& place);
/// Opens the history of the innermost scope around `from`, up to `outermost`; false where there is none.
bool open_history_around(QWidget* from, const QWidget* outermost);

} // namespace soakbook::ui
