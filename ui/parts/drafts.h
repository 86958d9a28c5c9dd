// SPDX-License-Identifier: GPL-3.0-or-later
// The drafts of one workbook, a file each in a folder of this user, so that they are there again after a power cut. They
// belong to a desk: whoever has the desk finds them.
#pragma once

#include "ui/parts/draft.h"

#include <QHash>
#include <QObject>
#include <QPointer>

namespace soakbook::ui {

class Drafts : public QObject {
    Q_OBJECT

public:
    /// `folder` holds the drafts of all workbooks of this user, a folder each; `workbook` is this one's uid. What cannot be
    /// read there is put aside, and nothing is said of it.
    Drafts(const QString& folder, const QString& workbook, QObject* desk);
    /// Those of a desk; nothing where none are kept, as for the worked example.
    static Drafts* of(const QObject& desk);

    /// All of them, the one typed last first.
    const std::vector<Draft>& all() const { return m_drafts; }
    const Draft* find(qint64 id) const;
    /// Those of a form and record that no open form holds, the one typed last first.
    std::vector<Draft> waiting(const QString& form, qint64 record) const;
    /// The smallest number that no draft of the form and record has.
    int free_number(const QString& form, qint64 record) const;

    /// Writes it, in place of the one with its number. False where the disk does not take it; it is remembered all the same.
    bool keep(const Draft& draft);
    void remove(qint64 id);
    /// An open form holds the text of this draft: it is not offered in another.
    void hold(qint64 id, QObject* form);
    void let_go(qint64 id);

    static constexpr const char* put_aside_ending = ".put-aside";

Q_SIGNALS:
    /// One came, changed or went.
    void changed();

private:
    void read_all();

    QString m_folder;
    QString m_workbook;
    std::vector<Draft> m_drafts;
    QHash<qint64, QPointer<QObject>> m_held;
};

} // namespace soakbook::ui
