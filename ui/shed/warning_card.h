// SPDX-License-Identifier: GPL-3.0-or-later
// A warning that cannot be overlooked: the square of what is past its limit, and what to do at once.
#pragma once

#include <QFrame>

class QLabel;

namespace soakbook::ui {

class WarningCard : public QFrame {
    Q_OBJECT

public:
    explicit WarningCard(QWidget* parent = nullptr);
    void set_text(const QString& text);
    QString text() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QLabel* m_text;
};

} // namespace soakbook::ui
