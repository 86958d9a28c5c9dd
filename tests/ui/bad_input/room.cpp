// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/bad_input/room.h"

#include <QApplication>
#include <QCryptographicHash>
#include <QDialog>
#include <QFile>
#include <QVBoxLayout>

#include <sqlite3.h>

#include <algorithm>
#include <stdexcept>

namespace soakbook::tests {

namespace {

/// The file as another program reads it, past all code of the house.
class RawFile {
public:
    explicit RawFile(const QString& path) {
        if (sqlite3_open_v2(path.toUtf8().constData(), &m_file, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK)
            throw std::runtime_error("the file does not open");
    }
    ~RawFile() { sqlite3_close(m_file); }
    RawFile(const RawFile&) = delete;
    RawFile& operator=(const RawFile&) = delete;

    void run(const QByteArray& sql) const {
        if (sqlite3_exec(m_file, sql.constData(), nullptr, nullptr, nullptr) != SQLITE_OK)
            throw std::runtime_error(sqlite3_errmsg(m_file));
    }
    /// Calls `cell` with each cell of each table: its type and its bytes.
    template <class Cell> void read_all(Cell cell) const {
        for (const QByteArray& table : tables()) {
            sqlite3_stmt* rows = nullptr;
            sqlite3_prepare_v2(m_file, QByteArray("SELECT * FROM \"" + table + '"').constData(), -1, &rows, nullptr);
            while (sqlite3_step(rows) == SQLITE_ROW) {
                for (int i = 0; i < sqlite3_column_count(rows); ++i) {
                    const int type = sqlite3_column_type(rows, i);
                    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(rows, i));
                    cell(type, QByteArray(bytes, sqlite3_column_bytes(rows, i)));
                }
            }
            sqlite3_finalize(rows);
        }
    }

private:
    std::vector<QByteArray> tables() const {
        std::vector<QByteArray> names;
        sqlite3_stmt* rows = nullptr;
        sqlite3_prepare_v2(m_file, "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name", -1, &rows, nullptr);
        while (sqlite3_step(rows) == SQLITE_ROW)
            names.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(rows, 0)));
        sqlite3_finalize(rows);
        return names;
    }
    sqlite3* m_file = nullptr;
};

} // namespace

FullHouse& full_house() {
    static FullHouse house;
    return house;
}

Room::Room(const QString& language) : m_path(m_folder.filePath(QStringLiteral("room.soakbook"))) {
    RawFile(full_house().path()).run("VACUUM INTO '" + m_path.toUtf8() + "'");
    auto opened = book::Workbook::open(m_path);
    if (!opened)
        throw std::runtime_error("the copy does not open");
    m_workbook = std::move(*opened);
    m_desk = std::make_unique<ui::Desk>(book(), [] { return moment(FullHouse::today, 12); });
    m_desk->set_who(QStringLiteral("Ada"));
    ui::Preferences preferences;
    preferences.language = language;
    m_desk->set_preferences(preferences);
    m_window = std::make_unique<QWidget>();
    (new QVBoxLayout(m_window.get()))->setContentsMargins(0, 0, 0, 0);
    m_window->resize(1292, 810);
    m_window->show();
    QApplication::setActiveWindow(m_window.get());
}

Room::~Room() { clear(); }

work::BatchView Room::view(work::BatchId batch) { return *work::batch_view(book(), batch, m_desk->today()); }

void Room::put(QWidget* widget) {
    m_window->layout()->addWidget(widget);
    widget->show();
    settle();
}

QDialog* Room::dialog() const {
    for (QDialog* found : m_window->findChildren<QDialog*>()) {
        if (found->isVisible())
            return found;
    }
    return nullptr;
}

void Room::clear() {
    for (QDialog* dialog : m_window->findChildren<QDialog*>())
        delete dialog;
    for (QWidget* child : m_window->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
        delete child;
    settle();
}

void Room::settle() const {
    for (int i = 0; i < 3; ++i) {
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    QDialog* above = dialog();
    QWidget* active = above != nullptr ? static_cast<QWidget*>(above) : m_window.get();
    if (QApplication::activeWindow() != active) {
        QApplication::setActiveWindow(active);
        QApplication::processEvents();
    }
}

QStringList Room::files() const {
    QStringList paths{m_path};
    if (QFile::exists(new_path()))
        paths << new_path();
    return paths;
}

QByteArray Room::digest() const {
    QCryptographicHash hash(QCryptographicHash::Sha1);
    for (const QString& path : files()) {
        RawFile(path).read_all([&hash](int type, const QByteArray& bytes) {
            const QByteArray head = QByteArray::number(type) + ' ' + QByteArray::number(bytes.size()) + ' ';
            hash.addData(head);
            hash.addData(bytes);
        });
    }
    return hash.result();
}

int Room::cells_that_say(const QString& text) const {
    int found = 0;
    for (const QString& path : files()) {
        RawFile(path).read_all([&found, wanted = text.toUtf8()](int type, const QByteArray& bytes) {
            if (type == SQLITE_TEXT && bytes.startsWith(wanted)) {
                const QByteArray rest = bytes.mid(wanted.size());
                found += std::all_of(rest.begin(), rest.end(), [](char c) { return c >= '0' && c <= '9'; }) ? 1 : 0;
            }
        });
    }
    return found;
}

} // namespace soakbook::tests
