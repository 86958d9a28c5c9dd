// SPDX-License-Identifier: GPL-3.0-or-later
#include "story.h"

#include "app/session.h"
#include "tools.h"
#include "ui/shell/frame.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QSettings>

#include <gtest/gtest.h>

namespace soakbook::tests {

Story::Story(const QString& folder) : m_folder(folder), m_now(std::make_shared<Instant>()) {
    // A computer on which the program was never opened.
    QSettings().clear();
    QDir(folder).removeRecursively();
    QDir().mkpath(folder);
    m_workbook = file(QStringLiteral("sallow-carr.soakbook"));
    it_is(QStringLiteral("2024-02-26 10:00"));
    start_program();
}

Story::~Story() = default;

QString Story::file(const QString& name) const { return QDir(m_folder).filePath(name); }

void Story::it_is(const QString& moment) {
    QDateTime at = QDateTime::fromString(moment, QStringLiteral("yyyy-MM-dd hh:mm"));
    ASSERT_TRUE(at.isValid()) << moment.toStdString();
    at.setOffsetFromUtc(3600);
    *m_now = Instant{at.toMSecsSinceEpoch(), 60};
}

void Story::start_program() {
    m_session = std::make_unique<app::Session>([now = m_now] { return *now; }, file(QStringLiteral("safe copies")));
    const QString last = app::Session::last_workbook();
    if (last.isEmpty() || !QFileInfo::exists(last)) {
        m_session->welcome();
    } else {
        const auto opened = m_session->open(last);
        ASSERT_TRUE(opened) << opened.error().toStdString();
        m_session->frame()->resize(1440, 900);
    }
    m_hands.settle();
}

void Story::next_day(const QString& moment) {
    m_session.reset();
    it_is(moment);
    start_program();
    m_hands.click(QStringLiteral("Entries by Ida Rook"));
}

void Story::close() { m_session.reset(); }

QString Story::ask(const QString& sql) const { return ask_file(m_workbook, sql); }

void Story::go(int place) { m_hands.press(static_cast<Qt::Key>(int{Qt::Key_0} + place), Qt::ControlModifier); }

} // namespace soakbook::tests
