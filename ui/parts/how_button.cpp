// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/how_button.h"

#include "ui/parts/habits.h"
#include "ui/parts/how_key.h"
#include "ui/parts/how_words.h"
#include "ui/parts/page_scroll.h"
#include "ui/parts/theme.h"

#include <QAccessible>
#include <QBoxLayout>
#include <QFrame>
#include <QKeyEvent>
#include <QLabel>
#include <QTextDocumentFragment>
#include <QTimer>

#include <algorithm>

namespace soakbook::ui {

namespace {

bool is_within(const QLayoutItem* item, const QWidget* widget) {
    if (item->widget() == widget) {
        return true;
    }
    const QLayout* layout = const_cast<QLayoutItem*>(item)->layout();
    for (int i = 0; layout != nullptr && i < layout->count(); ++i) {
        if (is_within(layout->itemAt(i), widget)) {
            return true;
        }
    }
    return false;
}

/// Puts `panel` under the row with `widget` in the innermost column of `layout`, if there is a column.
bool insert_under(QLayout* layout, const QWidget* widget, QWidget* panel) {
    for (int i = 0; layout != nullptr && i < layout->count(); ++i) {
        QLayoutItem* item = layout->itemAt(i);
        if (!is_within(item, widget)) {
            continue;
        }
        if (insert_under(item->layout(), widget, panel)) {
            return true;
        }
        auto* column = qobject_cast<QBoxLayout*>(layout);
        if (column == nullptr || column->direction() != QBoxLayout::TopToBottom) {
            return false;
        }
        column->insertWidget(i + 1, panel);
        return true;
    }
    return false;
}

/// The buttons that F3 means with the keyboard at `from`: the nearest ones that can be seen.
QList<HowButton*> nearest_buttons(QWidget* from) {
    for (QWidget* around = from; around != nullptr; around = around->parentWidget()) {
        QList<HowButton*> found;
        if (auto* itself = qobject_cast<HowButton*>(around)) {
            found << itself;
        }
        for (HowButton* button : around->findChildren<HowButton*>()) {
            if (button->isVisible() && button->window() == around->window()) {
                found << button;
            }
        }
        if (!found.isEmpty() || around->isWindow()) {
            return found;
        }
    }
    return {};
}

} // namespace

HowButton::HowButton(QWidget* parent)
    : QPushButton(parent), m_panel(new QFrame(parent)), m_label(make_label({}, Type::small, m_panel, true)) {
    //: Button that shows how a result was worked out
    setText(tr("How?"));
    //: What the button "How?" says while the mouse rests on it; %1 the key that does the same
    setToolTip(tr("How this is worked out (%1)").arg(QStringLiteral("F3")));
    set_kind(this, "link");
    setAutoDefault(false);
    setCheckable(true);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    set_kind(m_panel, "result");
    auto* column = new QVBoxLayout(m_panel);
    column->setContentsMargins(16, 12, 16, 12);
    column->addWidget(m_label);
    m_label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_label->installEventFilter(this);
    m_panel->hide();
    hide();
    HowKey::listen();
    connect(this, &QPushButton::toggled, this, &HowButton::show_panel);
}

HowButton::HowButton(const std::vector<work::How>& hows, const Habits& habits, QWidget* parent) : HowButton(parent) {
    set_hows(hows, habits);
}

HowButton::~HowButton() {
    // It stands in a layout of its own and would stay there without its button.
    delete m_panel.data();
}

QFrame* HowButton::panel() const {
    return m_panel;
}

void HowButton::set_hows(const std::vector<work::How>& hows, const Habits& habits, const QString& of) {
    const std::vector<HowText> texts = how_texts(hows, habits);
    QStringList names;
    for (const HowText& one : texts) {
        names << one.name;
    }
    names.removeDuplicates();
    QString text = how_html(texts);
    QString plain = how_plain(texts);
    if (!of.isEmpty() && !plain.isEmpty()) {
        text = QStringLiteral("<p style=\"margin:0 0 8px 0\">") + of.toHtmlEscaped() + QStringLiteral("</p>") + text;
        plain = of + QLatin1Char('\n') + plain;
    }
    tell(text, plain, names.join(QStringLiteral(", ")));
}

void HowButton::set_text(const QString& text) {
    tell(text, QTextDocumentFragment::fromHtml(text).toPlainText(), {});
}

bool HowButton::has_text() const {
    return !m_plain.isEmpty();
}

void HowButton::tell(const QString& text, const QString& plain, const QString& about) {
    if (!m_panel) {
        return;
    }
    m_plain = plain;
    m_about = about;
    m_label->setText(text);
    m_panel->setAccessibleName(plain);
    //: The button "How?" as it is read aloud; %1 the name of a figure
    setAccessibleName(about.isEmpty() ? this->text() : tr("How? %1").arg(about));
    if (has_text() && parentWidget() == nullptr) {
        // Shown now it would be a window; whoever lays it out shows it with the rest.
        setAttribute(Qt::WA_WState_ExplicitShowHide, false);
    } else {
        setVisible(has_text());
    }
    show_panel(isChecked());
}

void HowButton::set_open(bool open) {
    setChecked(open);
}

void HowButton::show_panel(bool open) {
    if (!m_panel) {
        return;
    }
    const bool shown = open && has_text();
    setAccessibleDescription(shown ? m_plain : QString());
    if (shown == !m_panel->isHidden()) {
        return;
    }
    if (shown) {
        place_panel();
    }
    m_panel->setVisible(shown);
    if (shown && isVisible()) {
        QAccessibleEvent opened(m_panel, QAccessible::Alert);
        QAccessible::updateAccessibility(&opened);
        // Its place is known once the page is laid out again. The figure counts for more than the end of a long panel.
        QTimer::singleShot(0, m_panel, [this, panel = m_panel.data()] {
            if (panel->isVisible()) {
                bring_into_view(panel);
                bring_into_view(this);
            }
        });
    }
}

void HowButton::place_panel() {
    const QWidget* holder = m_panel->parentWidget();
    if (holder != nullptr && holder->layout() != nullptr) {
        for (int i = 0; i < holder->layout()->count(); ++i) {
            if (is_within(holder->layout()->itemAt(i), m_panel)) {
                return;
            }
        }
    }
    const QWidget* row = this;
    for (QWidget* around = parentWidget(); around != nullptr; around = around->parentWidget()) {
        if (insert_under(around->layout(), row, m_panel)) {
            return;
        }
        if (around->isWindow()) {
            break;
        }
        row = around;
    }
    // No column anywhere: over what stands below the button.
    QWidget* around = window();
    m_panel->setParent(around);
    const QPoint below = mapTo(around, QPoint(0, height() + 4));
    const int width = std::min(scaled(480), around->width() - 16);
    m_panel->setGeometry(std::clamp(below.x(), 8, std::max(8, around->width() - width - 8)), below.y(), width,
                         m_panel->heightForWidth(width));
    m_panel->raise();
}

HowButton::Toggled HowButton::toggle_nearest(QWidget* from) {
    const QList<HowButton*> buttons = nearest_buttons(from);
    if (buttons.isEmpty()) {
        return Toggled::nothing;
    }
    if (close_nearest(from)) {
        return Toggled::closed;
    }
    // The first one last: the page scrolls to it.
    for (auto button = buttons.crbegin(); button != buttons.crend(); ++button) {
        (*button)->set_open(true);
    }
    return Toggled::opened;
}

bool HowButton::close_nearest(QWidget* from) {
    bool any = false;
    for (HowButton* button : nearest_buttons(from)) {
        any = any || button->is_open();
        button->set_open(false);
    }
    return any;
}

bool HowButton::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape && is_open()) {
            if (event->type() == QEvent::KeyPress) {
                set_open(false);
            }
            event->accept();
            return true;
        }
    }
    return QPushButton::event(event);
}

bool HowButton::eventFilter(QObject* watched, QEvent* event) {
    // The text was clicked into, to copy from it.
    if (event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape) {
            if (event->type() == QEvent::KeyPress) {
                set_open(false);
                setFocus(Qt::OtherFocusReason);
            }
            event->accept();
            return true;
        }
    }
    return QPushButton::eventFilter(watched, event);
}

} // namespace soakbook::ui
