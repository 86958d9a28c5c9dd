// SPDX-License-Identifier: GPL-3.0-or-later
// The preview with what turns and enlarges it.
#pragma once

#include "ui/print/page_preview.h"

#include <QWidget>

class QLabel;
class QToolButton;

namespace soakbook::ui {

class PreviewPane : public QWidget {
    Q_OBJECT

public:
    explicit PreviewPane(QWidget* parent = nullptr);
    PagePreview* preview() const { return m_preview; }

private:
    QToolButton* add_button(const QString& words, const QString& name);
    PagePreview* m_preview;
    QLabel* m_page;
    QWidget* m_bar;
};

} // namespace soakbook::ui
