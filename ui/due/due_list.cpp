// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/due/due_list.h"

#include "ui/parts/cards.h"
#include "ui/parts/theme.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include <algorithm>

namespace soakbook::ui {

namespace {

constexpr int verb_width = 124; ///< holds the longest verb of any language there is

/// A state's shape before a sentence that says it, both in its colour; the sentence wraps.
class StateWords : public QWidget {
public:
    StateWords(State state, const QString& words) : m_state(state), m_words(words) {
        QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
        policy.setHeightForWidth(true);
        setSizePolicy(policy);
        setAccessibleName(words);
    }
    QSize sizeHint() const override { return {text_left() + metrics().horizontalAdvance(m_words) + 1, metrics().height()}; }
    QSize minimumSizeHint() const override { return {scaled(120), metrics().height()}; }
    int heightForWidth(int width) const override {
        return metrics().boundingRect(QRect(0, 0, std::max(1, width - text_left()), 10000), Qt::TextWordWrap, m_words).height();
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setFont(type_font(Type::strong));
        const QRect room = rect().adjusted(text_left(), 0, 0, 0);
        const QRect text = painter.boundingRect(room, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, m_words);
        const int line = metrics().height();
        paint_state(painter, QRectF(0, text.top() + (line - scaled(shape)) / 2.0, scaled(shape), scaled(shape)), m_state);
        painter.setPen(state_ink(m_state));
        painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, m_words);
    }

private:
    static constexpr int shape = 12;
    static int text_left() { return scaled(shape + 8); }
    static QFontMetrics metrics() { return QFontMetrics(type_font(Type::strong)); }

    State m_state;
    QString m_words;
};

} // namespace

DueList::DueList(QWidget* parent) : QWidget(parent) {
    m_layout = new QVBoxLayout(this);
    m_layout->setContentsMargins(0, 0, 0, 0);
}

void DueList::set_rows(const std::vector<work::DueRow>& rows, const Habits& habits) {
    int kept = -1;
    for (std::size_t i = 0; i < m_buttons.size(); ++i)
        if (m_buttons[i]->hasFocus())
            kept = static_cast<int>(i);
    m_buttons.clear();
    delete m_content;
    m_content = new QWidget;
    auto* groups = new QVBoxLayout(m_content);
    groups->setContentsMargins(0, 0, 0, 0);
    groups->setSpacing(scaled(12));
    std::optional<work::DueGroup> group;
    QVBoxLayout* into = nullptr;
    for (const work::DueRow& row : rows) {
        if (group != row.group) {
            group = row.group;
            auto* card = new Card(group_words(row.group));
            card->set_flush();
            into = card->column();
            into->setSpacing(0);
            groups->addWidget(card);
        }
        into->addWidget(make_rule());
        add_row(into, due_words(row, habits));
    }
    m_layout->addWidget(m_content);
    if (kept >= 0 && !m_buttons.empty())
        m_buttons[static_cast<std::size_t>(std::min(kept, size() - 1))]->setFocus();
}

void DueList::add_row(QVBoxLayout* rows, const DueWords& words) {
    auto* line = new QWidget;
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(scaled(card_padding), scaled(4), scaled(card_padding), scaled(4));
    row->setSpacing(scaled(16));
    QLabel* verb = make_label(words.verb, Type::strong);
    verb->setFixedWidth(scaled(verb_width));
    QLabel* what = make_label(words.what, Type::body, nullptr, true);
    row->addWidget(verb);
    row->addWidget(what, 3);
    if (words.state)
        row->addWidget(new StateWords(*words.state, words.when), 5);
    else
        row->addWidget(make_soft_label(words.when, Type::body), 5);
    auto* button = new QPushButton(words.button);
    //: Read aloud for a button of Due; %1 is the verb, %2 what, %3 when.
    button->setAccessibleName(tr("%1: %2, %3").arg(words.verb, words.what, words.when));
    button->setObjectName(QStringLiteral("due_%1").arg(m_buttons.size()));
    button->setAutoDefault(true);
    button->setMinimumWidth(scaled(128));
    row->addWidget(button);
    line->setMinimumHeight(scaled(row_height + 6));
    m_buttons.push_back(button);
    const Intent intent = words.leads_to;
    connect(button, &QPushButton::clicked, this, [this, intent] { Q_EMIT wishes(intent); });
    rows->addWidget(line);
}

void DueList::take_focus() {
    if (!m_buttons.empty())
        m_buttons.front()->setFocus();
}

void DueList::keyPressEvent(QKeyEvent* event) {
    const int step = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    for (int i = 0; step != 0 && i < size(); ++i)
        if (m_buttons[static_cast<std::size_t>(i)]->hasFocus()) {
            m_buttons[static_cast<std::size_t>(std::clamp(i + step, 0, size() - 1))]->setFocus();
            return;
        }
    QWidget::keyPressEvent(event);
}

} // namespace soakbook::ui
