// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/second_start.h"

#include "app/file_place.h"
#include "app/lock.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QLocalServer>
#include <QLocalSocket>
#include <QStandardPaths>
#include <QThread>

namespace soakbook::app {

namespace {

constexpr int patience_ms = 10'000; ///< whoever is there may be busy with its first page
constexpr int knocking_ms = 5000;
constexpr unsigned long between_knocks_ms = 100;
const QByteArray please = "show the window\n";
const QByteArray shown = "shown\n";

/// The name under which the start that has this file open listens; the user's own, since another's window is not theirs.
QString door_of(const QString& file) {
    const QString identity = identity_of(file);
    if (identity.isEmpty())
        return {};
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation);
    return QDir(folder.isEmpty() ? QDir::tempPath() : folder).filePath(QStringLiteral("soakbook-") + identity);
}

/// Asks once; false where nobody answers.
bool knock(const QString& door) {
    QLocalSocket socket;
    socket.connectToServer(door);
    if (!socket.waitForConnected(patience_ms))
        return false;
    socket.write(please);
    if (!socket.waitForBytesWritten(patience_ms) || !socket.waitForReadyRead(patience_ms))
        return false;
    return socket.readAll().contains(shown.trimmed());
}

} // namespace

SecondStart::SecondStart(QObject* parent) : QObject(parent), m_server(new QLocalServer(this)) {
    m_server->setSocketOptions(QLocalServer::UserAccessOption);
    connect(m_server, &QLocalServer::newConnection, this, [this] {
        while (QLocalSocket* caller = m_server->nextPendingConnection()) {
            connect(caller, &QLocalSocket::disconnected, caller, &QObject::deleteLater);
            const auto answer = [this, caller] {
                if (!caller->readAll().contains(please.trimmed()))
                    return;
                caller->write(shown);
                caller->flush();
                Q_EMIT asked();
            };
            connect(caller, &QLocalSocket::readyRead, this, answer);
            answer();
        }
    });
}

SecondStart::~SecondStart() = default;

bool SecondStart::listen(const QString& file) {
    stop();
    const QString door = door_of(file);
    if (door.isEmpty())
        return false;
    QLocalServer::removeServer(door);
    return m_server->listen(door);
}

void SecondStart::stop() {
    if (m_server->isListening())
        m_server->close();
}

bool SecondStart::raise_first(const QString& file) {
    const QString door = door_of(file);
    if (door.isEmpty())
        return false;
    QElapsedTimer tried;
    tried.start();
    while (!knock(door)) {
        // One that is just starting has the lock and does not listen yet.
        const auto holder = Lock::holder_of(file);
        const bool comes = holder && holder->process != QCoreApplication::applicationPid() && holder->user == Holder::here(holder->since).user &&
                           is_alive(*holder, true) == Alive::yes;
        if (!comes || tried.hasExpired(knocking_ms))
            return false;
        QThread::msleep(between_knocks_ms);
    }
    return true;
}
} // namespace soakbook::app
