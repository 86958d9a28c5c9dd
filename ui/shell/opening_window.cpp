// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/opening_window.h"

#include "ui/parts/flow_layout.h"
#include "ui/parts/theme.h"

#include <QCloseEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

OpeningWindow::OpeningWindow(const OpeningNews& news, QWidget* parent) : QDialog(parent) {
    setAttribute(Qt::WA_DeleteOnClose);
    setObjectName(QStringLiteral("opening"));
    setWindowTitle(QStringLiteral("Soakbook"));
    setAccessibleName(news.title);
    setAccessibleDescription(news.text.join(QLatin1Char(' ')));
    set_kind(this, "plain_card");
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(page_margin, page_margin, page_margin, page_margin);
    column->setSpacing(scaled(12));
    column->addWidget(make_label(news.title, Type::heading, this, true));
    for (const QString& paragraph : news.text) {
        column->addWidget(make_label(paragraph, Type::body, this, true));
    }
    if (!news.file.isEmpty()) {
        QLabel* file = make_soft_label(news.file, Type::small, this);
        file->setTextInteractionFlags(Qt::TextSelectableByMouse);
        column->addWidget(file);
    }
    column->addStretch(1);
    column->addSpacing(scaled(4));
    auto* ways = new FlowLayout(8, 8);
    for (const WayOn& way : news.ways) {
        auto* button = new QPushButton(way.words, this);
        button->setObjectName(way.name);
        const bool first = &way == &news.ways.front();
        if (first) {
            set_kind(button, "primary");
        }
        button->setDefault(first);
        connect(button, &QPushButton::clicked, this, way.go);
        ways->addWidget(button);
    }
    column->addLayout(ways);
    const int width = scaled(640);
    setMinimumWidth(width);
    resize(width, heightForWidth(width) > 0 ? heightForWidth(width) : sizeHint().height());
}

void OpeningWindow::end() {
    m_answered = true;
    close();
}

void OpeningWindow::closeEvent(QCloseEvent* event) {
    // Whoever hears of it may show a window: this one is not to be the last.
    if (!m_answered) {
        m_answered = true;
        Q_EMIT left();
    }
    QDialog::closeEvent(event);
}

// Esc closes it as its cross does.
void OpeningWindow::reject() {
    close();
}

} // namespace soakbook::ui
