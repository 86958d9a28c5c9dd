// SPDX-License-Identifier: GPL-3.0-or-later
// A window that says one thing about a workbook that is to be opened, and has a button for each way on.
#pragma once

#include <QDialog>
#include <QString>

#include <functional>
#include <vector>

namespace soakbook::ui {

/// One way on, as a button.
struct WayOn {
    QString words;
    QString name; ///< of the button, for whoever looks for it
    std::function<void()> go;
    bool stays = false; ///< the window stays behind what `go` opens, until that is answered
};

struct OpeningNews {
    QString title;      ///< a few words
    QStringList text;   ///< paragraphs: what is, what it means
    QString file;       ///< the path, small
    std::vector<WayOn> ways; ///< the first is the filled button
};

class OpeningWindow : public QDialog {
    Q_OBJECT

public:
    explicit OpeningWindow(const OpeningNews& news, QWidget* parent = nullptr);
    /// Closes it as answered. A button alone does not: the way on may need the window a while longer.
    void end();

Q_SIGNALS:
    /// It was closed without a button.
    void left();

protected:
    void closeEvent(QCloseEvent* event) override;
    void reject() override;

private:
    bool m_answered = false;
};

} // namespace soakbook::ui
