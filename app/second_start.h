// SPDX-License-Identifier: GPL-3.0-or-later
// One window a workbook: a second start on the same file, whatever path leads there, raises the window of the first.
#pragma once

#include <QObject>
#include <QString>

class QLocalServer;

namespace soakbook::app {

class SecondStart : public QObject {
    Q_OBJECT

public:
    explicit SecondStart(QObject* parent = nullptr);
    ~SecondStart() override;
    /// Waits for other starts on that file, in place of what was waited for before. Whoever holds the file's lock may call
    /// it: what a start that died left behind is taken away.
    bool listen(const QString& file);
    void stop();

    /// Asks the start that has that file open to show its window; false where there is none that answers.
    static bool raise_first(const QString& file);

Q_SIGNALS:
    /// Another start was asked for the same file.
    void asked();

private:
    QLocalServer* m_server;
};

} // namespace soakbook::app
