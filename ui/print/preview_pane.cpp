// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/preview_pane.h"

#include "ui/parts/theme.h"

#include <QBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace soakbook::ui {

PreviewPane::PreviewPane(QWidget* parent)
    : QWidget(parent), m_preview(new PagePreview(this)), m_page(make_soft_label(QString(), Type::small, this, false)), m_bar(new QWidget(this)) {
    auto* row = new QHBoxLayout(m_bar);
    row->setContentsMargins(scaled(12), scaled(6), scaled(12), scaled(6));
    row->setSpacing(scaled(6));
    //: turns the preview; the name is for a screen reader
    QToolButton* back = add_button(QStringLiteral("‹"), tr("Page before"));
    //: turns the preview; the name is for a screen reader
    QToolButton* on = add_button(QStringLiteral("›"), tr("Next page"));
    //: makes the preview smaller
    QToolButton* smaller = add_button(QStringLiteral("−"), tr("Smaller"));
    //: makes the preview larger
    QToolButton* larger = add_button(QStringLiteral("+"), tr("Larger"));
    row->addWidget(back);
    row->addWidget(m_page);
    row->addWidget(on);
    row->addStretch(1);
    row->addWidget(smaller);
    row->addWidget(larger);
    connect(back, &QToolButton::clicked, this, [this] { m_preview->go_to(m_preview->page() - 1); });
    connect(on, &QToolButton::clicked, this, [this] { m_preview->go_to(m_preview->page() + 1); });
    connect(smaller, &QToolButton::clicked, this, [this] { m_preview->set_zoom(m_preview->zoom() / 1.5); });
    connect(larger, &QToolButton::clicked, this, [this] { m_preview->set_zoom(m_preview->zoom() * 1.5); });
    connect(m_preview, &PagePreview::turned, this, [this, back, on](const QString& words) {
        m_page->setText(words);
        m_bar->setVisible(m_preview->pages() > 0);
        back->setEnabled(m_preview->page() > 0);
        on->setEnabled(m_preview->page() + 1 < m_preview->pages());
    });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_preview, 1);
    column->addWidget(m_bar);
}

QToolButton* PreviewPane::add_button(const QString& words, const QString& name) {
    auto* button = new QToolButton(m_bar);
    button->setText(words);
    button->setAccessibleName(name);
    button->setToolTip(name);
    set_kind(button, "quiet");
    return button;
}

} // namespace soakbook::ui
