// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/tour.h"

#include "app/session.h"
#include "app/tour_stops.h"
#include "ui/parts/desk.h"
#include "ui/parts/theme.h"
#include "ui/setup/welcome.h"
#include "ui/shell/frame.h"

#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QPainter>
#include <QTemporaryDir>

namespace soakbook::app {

namespace {

constexpr QSize picture_size{1440, 900};

/// Lets folds end and queued refreshes run.
void settle() {
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < 160)
        QApplication::processEvents(QEventLoop::AllEvents, 20);
    // No event loop runs here that would take away what was to be deleted later.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

std::vector<QDialog*> open_dialogs() {
    std::vector<QDialog*> dialogs;
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* dialog = qobject_cast<QDialog*>(widget); dialog && dialog->isVisible())
            dialogs.push_back(dialog);
    return dialogs;
}

/// The window, with an open dialog before its middle, as it would be seen.
QPixmap picture_of(QWidget& window) {
    QPixmap picture = window.grab();
    for (QDialog* dialog : open_dialogs()) {
        QPainter painter(&picture);
        painter.fillRect(picture.rect(), QColor(0, 0, 0, 60));
        const QPixmap front = dialog->grab();
        painter.drawPixmap((picture.width() - front.width()) / 2, (picture.height() - front.height()) / 2, front);
    }
    return picture;
}

void close_dialogs() {
    for (QDialog* dialog : open_dialogs())
        dialog->done(QDialog::Rejected);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

struct Count {
    int pictures = 0;
    int papers = 0;
};

tl::expected<void, QString> save(const QPixmap& picture, const QString& path, Count& count) {
    if (!picture.save(path))
        //: %1 is a file.
        return tl::unexpected(QCoreApplication::translate("Tour", "%1 could not be written.").arg(QDir::toNativeSeparators(path)));
    ++count.pictures;
    return {};
}

tl::expected<void, QString> walk(Session& session, const QDir& folder, const QString& look, Count& count) {
    ui::Frame& frame = *session.frame();
    frame.resize(picture_size);
    frame.show();
    int number = 0;
    for (const TourStop& stop : tour_stops(*session.desk())) {
        frame.go(stop.intent);
        settle();
        const QString name = QStringLiteral("%1-%2-%3.png").arg(++number, 2, 10, QLatin1Char('0')).arg(stop.name, look);
        if (auto saved = save(picture_of(frame), folder.filePath(name), count); !saved)
            return saved;
        close_dialogs();
    }
    frame.hide();
    return {};
}

tl::expected<void, QString> show_welcome(const Clock& clock, const QDir& folder, const QString& look, Count& count) {
    Session session(clock, folder.path(), false);
    session.welcome();
    session.welcome_page()->resize(picture_size);
    session.welcome_page()->show();
    settle();
    return save(session.welcome_page()->grab(), folder.filePath(QStringLiteral("00-welcome-%1.png").arg(look)), count);
}

} // namespace

tl::expected<QString, QString> tour(const QString& folder_name, const QString& file, const Clock& clock) {
    const QDir folder(folder_name);
    if (!folder.mkpath(QStringLiteral(".")))
        //: %1 is a folder.
        return tl::unexpected(QCoreApplication::translate("Tour", "The folder %1 cannot be made.").arg(QDir::toNativeSeparators(folder_name)));
    QTemporaryDir aside;
    Count count;
    Session session(clock, aside.filePath(QStringLiteral("copies")), false);
    if (file.isEmpty()) {
        if (auto opened = session.open_example(); !opened)
            return tl::unexpected(opened.error());
    } else {
        const QString copy = aside.filePath(QStringLiteral("tour.soakbook"));
        if (!QFile::copy(file, copy))
            //: %1 is a file.
            return tl::unexpected(QCoreApplication::translate("Tour", "%1 cannot be read.").arg(QDir::toNativeSeparators(file)));
        if (auto opened = session.open(copy); !opened)
            return tl::unexpected(opened.error());
    }
    auto* application = qobject_cast<QApplication*>(QCoreApplication::instance());
    for (const ui::Look look : {ui::Look::light, ui::Look::dark}) {
        const QString word = look == ui::Look::light ? QStringLiteral("light") : QStringLiteral("dark");
        ui::apply_theme(*application, look, session.desk()->preferences().text_percent);
        if (auto shown = show_welcome(clock, folder, word, count); !shown)
            return tl::unexpected(shown.error());
        if (auto walked = walk(session, folder, word, count); !walked)
            return tl::unexpected(walked.error());
    }
    for (const TourPaper& paper : tour_papers(*session.desk())) {
        const QString path = folder.filePath(paper.name + QStringLiteral(".pdf"));
        if (!paper.save(path))
            //: %1 is a file.
            return tl::unexpected(QCoreApplication::translate("Tour", "%1 could not be written.").arg(QDir::toNativeSeparators(path)));
        ++count.papers;
    }
    //: What the tour saved; %1 pictures, %2 PDFs, %3 a folder.
    return QCoreApplication::translate("Tour", "%1 pictures and %2 papers are in %3").arg(count.pictures).arg(count.papers).arg(QDir::toNativeSeparators(folder.absolutePath()));
}

} // namespace soakbook::app
