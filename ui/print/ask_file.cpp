// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/ask_file.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QRegularExpression>
#include <QSettings>
#include <QStandardPaths>

#include <utility>

namespace soakbook::ui {

namespace {

FileAnswer& answer_instead() {
    static FileAnswer answer;
    return answer;
}

QString folder_key() { return QStringLiteral("print/folder"); }

QString last_folder() {
    const QString folder = QSettings().value(folder_key()).toString();
    return !folder.isEmpty() && QDir(folder).exists() ? folder : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

QString ending_of(const QString& kind) {
    static const QRegularExpression pattern(QStringLiteral("\\*\\.(\\w+)"));
    return pattern.match(kind).captured(1);
}

} // namespace

void let_answer(FileAnswer answer) { answer_instead() = std::move(answer); }

QString ask_file_to_write(QWidget* parent, const FileQuestion& question) {
    if (answer_instead()) {
        return answer_instead()(question);
    }
    QFileDialog dialog(parent, question.title, last_folder());
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setFileMode(QFileDialog::AnyFile);
    dialog.setNameFilters(question.kinds);
    dialog.setDefaultSuffix(ending_of(question.kinds.value(0)));
    dialog.selectFile(question.suggested);
    // Without a desktop there is no dialog of the system's own.
    dialog.setOption(QFileDialog::DontUseNativeDialog, QGuiApplication::platformName() == QLatin1String("offscreen"));
    QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, [&](const QString& kind) { dialog.setDefaultSuffix(ending_of(kind)); });
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) {
        return {};
    }
    const QString path = dialog.selectedFiles().constFirst();
    QSettings().setValue(folder_key(), QFileInfo(path).absolutePath());
    return path;
}

QString plain_file_name(const QString& words, const QString& ending) {
    QString name = words.normalized(QString::NormalizationForm_D);
    static const QRegularExpression marks(QStringLiteral("\\p{Mn}"));
    static const QRegularExpression others(QStringLiteral("[^A-Za-z0-9]+"));
    name.remove(marks).replace(others, QStringLiteral("-"));
    while (name.startsWith(QLatin1Char('-'))) {
        name.remove(0, 1);
    }
    while (name.endsWith(QLatin1Char('-'))) {
        name.chop(1);
    }
    return (name.isEmpty() ? QStringLiteral("soakbook") : name.toLower()) + QLatin1Char('.') + ending;
}

} // namespace soakbook::ui
