// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/drafts.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>

#include <algorithm>

namespace soakbook::ui {

namespace {

/// A draft of a form whose every field holds a million characters is smaller.
constexpr qint64 largest_draft = 200'000'000;

bool is_typed_later(const Draft& a, const Draft& b) {
    return b.typed < a.typed;
}

} // namespace

Drafts::Drafts(const QString& folder, const QString& workbook, QObject* desk)
    : QObject(desk), m_folder(folder + QLatin1Char('/') + workbook), m_workbook(workbook) {
    read_all();
}

Drafts* Drafts::of(const QObject& desk) {
    return desk.findChild<Drafts*>(QString(), Qt::FindDirectChildrenOnly);
}

void Drafts::read_all() {
    QDir folder(m_folder);
    // What a program that was killed while it wrote has left lies beside the whole one.
    for (const QString& name : folder.entryList({QStringLiteral("*.json.??????")}, QDir::Files)) {
        folder.remove(name);
    }
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files)) {
        QFile file(folder.filePath(name));
        std::optional<Draft> draft;
        if (file.size() <= largest_draft && file.open(QIODevice::ReadOnly)) {
            draft = read_draft(file.readAll(), m_workbook);
            file.close();
        }
        if (draft && draft->file_name() == name) {
            m_drafts.push_back(std::move(*draft));
            continue;
        }
        const QString aside = file.fileName() + QLatin1String(put_aside_ending);
        QFile::remove(aside);
        QFile::rename(file.fileName(), aside);
    }
    std::stable_sort(m_drafts.begin(), m_drafts.end(), is_typed_later);
}

const Draft* Drafts::find(qint64 id) const {
    const auto found = std::find_if(m_drafts.begin(), m_drafts.end(), [id](const Draft& draft) { return draft.id() == id; });
    return found == m_drafts.end() ? nullptr : &*found;
}

std::vector<Draft> Drafts::waiting(const QString& form, qint64 record) const {
    std::vector<Draft> found;
    for (const Draft& draft : m_drafts) {
        if (draft.place.form == form && draft.place.record == record && m_held.value(draft.id()).isNull()) {
            found.push_back(draft);
        }
    }
    return found;
}

int Drafts::free_number(const QString& form, qint64 record) const {
    const auto is_taken = [&](int n) {
        return std::any_of(m_drafts.begin(), m_drafts.end(), [&](const Draft& draft) {
            return draft.place.form == form && draft.place.record == record && draft.nth == n;
        });
    };
    int n = 1;
    while (is_taken(n)) {
        ++n;
    }
    return n;
}

bool Drafts::keep(const Draft& draft) {
    const qint64 id = draft.id();
    std::erase_if(m_drafts, [id](const Draft& other) { return other.id() == id; });
    m_drafts.push_back(draft);
    std::stable_sort(m_drafts.begin(), m_drafts.end(), is_typed_later);
    QDir().mkpath(m_folder);
    QSaveFile file(m_folder + QLatin1Char('/') + draft.file_name());
    const QByteArray text = draft_text(draft, m_workbook);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(text) == text.size() && file.commit();
    Q_EMIT changed();
    return written;
}

void Drafts::remove(qint64 id) {
    const Draft* draft = find(id);
    if (draft == nullptr) {
        return;
    }
    QFile::remove(m_folder + QLatin1Char('/') + draft->file_name());
    m_held.remove(id);
    std::erase_if(m_drafts, [id](const Draft& other) { return other.id() == id; });
    Q_EMIT changed();
}

void Drafts::hold(qint64 id, QObject* form) {
    m_held.insert(id, form);
}

void Drafts::let_go(qint64 id) {
    m_held.remove(id);
}

} // namespace soakbook::ui
