// SPDX-License-Identifier: GPL-3.0-or-later
// Asks under which name a file is to be written. The one place that opens a file dialog for prints and pictures.
#pragma once

#include <QString>
#include <QStringList>

#include <functional>

class QWidget;

namespace soakbook::ui {

struct FileQuestion {
    QString title;
    QString suggested;   ///< a name without folder, with its ending
    QStringList kinds;   ///< filters such as "PDF (*.pdf)"; the first is the usual one
};

/// The chosen name with its ending, or an empty text when the person thinks better of it. The folder used last is offered.
QString ask_file_to_write(QWidget* parent, const FileQuestion& question);

/// Something else answers from now on, such as a test; an empty function gives the dialog back its place.
using FileAnswer = std::function<QString(const FileQuestion& question)>;
void let_answer(FileAnswer answer);

/// A name that every file system takes: letters, figures and hyphens.
QString plain_file_name(const QString& words, const QString& ending);

} // namespace soakbook::ui
