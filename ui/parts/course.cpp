// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/course.h"

#include "ui/parts/theme.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPropertyAnimation>
#include <QPushButton>
#include <QVBoxLayout>

namespace soakbook::ui {

namespace {

constexpr int circle_side = 25;
constexpr int circle_column = 40;
constexpr int gap_below = 10;
constexpr int no_limit = QWIDGETSIZE_MAX;

/// A button that is as tall as the words laid out in it.
class StepHead : public QPushButton {
public:
    using QPushButton::QPushButton;
    QSize sizeHint() const override { return layout()->totalSizeHint(); }
    QSize minimumSizeHint() const override { return layout()->totalMinimumSize(); }
    bool hasHeightForWidth() const override { return layout()->hasHeightForWidth(); }
    int heightForWidth(int width) const override { return layout()->totalHeightForWidth(width); }
};

} // namespace

Step::Step(int number, const QString& name, QWidget* parent)
    : QWidget(parent), m_number(number), m_name(name), m_card(new QFrame(this)), m_head(new StepHead(m_card)),
      m_title(make_label(name, Type::heading, m_head)), m_summary(make_soft_label({}, Type::body, m_head)),
      m_fold(new QWidget(m_card)), m_fold_column(new QVBoxLayout(m_fold)),
      m_motion(new QPropertyAnimation(m_fold, "maximumHeight", this)) {
    set_kind(m_card, "card");
    set_kind(m_head, "step");
    m_head->setAutoDefault(false);
    QSizePolicy tall(QSizePolicy::Expanding, QSizePolicy::Minimum);
    tall.setHeightForWidth(true);
    m_head->setSizePolicy(tall);
    auto* row = new QHBoxLayout(m_head);
    row->setSpacing(16);
    row->addWidget(m_title, 0, Qt::AlignTop);
    row->addWidget(m_summary, 1);
    for (QLabel* label : {m_title, m_summary}) {
        label->setAttribute(Qt::WA_TransparentForMouseEvents);
    }
    m_fold_column->setContentsMargins(card_padding, 0, card_padding, card_padding);
    m_fold->hide();
    auto* card = new QVBoxLayout(m_card);
    card->setContentsMargins(1, 1, 1, 1);
    card->setSpacing(0);
    card->addWidget(m_head);
    card->addWidget(m_fold);
    auto* whole = new QHBoxLayout(this);
    whole->setSpacing(0);
    whole->addWidget(m_card, 1);
    settle_margins();
    // Not Maximum: that would hold a narrow step to the height its body has where it is wide.
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    connect(m_head, &QPushButton::clicked, this, [this] { set_open(!m_open); });
    connect(m_motion, &QPropertyAnimation::finished, this, [this] {
        m_fold->setMaximumHeight(no_limit);
        m_fold->setVisible(m_open);
    });
    name_aloud();
}

void Step::settle_margins() {
    layout()->setContentsMargins(scaled(circle_column), 0, 0, gap_below);
    m_head->layout()->setContentsMargins(card_padding, scaled(11), card_padding, scaled(11));
    m_title->setMinimumWidth(scaled(130));
    const int line = QFontMetrics(type_font(Type::heading)).height();
    m_head->setMinimumHeight(line + 2 * scaled(11));
}

void Step::name_aloud() {
    //: Read aloud: the steps of a batch; %1 its number, %2 its name, %3 what stands in it
    m_head->setAccessibleName(tr("Step %1, %2. %3").arg(m_number).arg(m_name, m_summary->text()));
}

void Step::set_summary(const QString& text) {
    m_summary->setText(text);
    name_aloud();
}

void Step::set_stage(Stage stage) {
    m_stage = stage;
    update();
}

void Step::set_body(QWidget* body) {
    delete m_body;
    m_body = body;
    if (body != nullptr) {
        m_fold_column->addWidget(body);
        body->show();
    } else {
        set_open(false, true);
    }
    m_head->setEnabled(body != nullptr);
}

void Step::set_open(bool open, bool at_once) {
    if (open == m_open || (open && m_body == nullptr)) {
        return;
    }
    m_open = open;
    const int time = at_once || !isVisible() ? 0 : fold_time(this);
    m_motion->stop();
    if (time == 0) {
        m_fold->setMaximumHeight(no_limit);
        m_fold->setVisible(open);
    } else {
        const int full = m_fold->hasHeightForWidth() ? m_fold->heightForWidth(m_card->width()) : m_fold->sizeHint().height();
        m_motion->setDuration(time);
        m_motion->setStartValue(open ? 0 : m_fold->height());
        m_motion->setEndValue(open ? full : 0);
        m_fold->setMaximumHeight(open ? 0 : m_fold->height());
        m_fold->show();
        m_motion->start();
    }
    Q_EMIT open_changed(open);
}

int Step::circle_middle() const {
    return 1 + scaled(11) + QFontMetrics(type_font(Type::heading)).height() / 2;
}

void Step::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const double side = scaled(circle_side);
    const double x = scaled(circle_column - 28) + side / 2 - scaled(12);
    const double y = circle_middle();
    painter.setPen(QPen(c.line, 2));
    painter.drawLine(QPointF(x, m_first ? y : 0), QPointF(x, m_last ? y : height()));
    const bool filled = m_stage != Stage::to_come;
    painter.setPen(QPen(c.accent, 2));
    painter.setBrush(filled ? c.accent : c.paper);
    const QRectF circle(x - side / 2 + 1, y - side / 2 + 1, side - 2, side - 2);
    painter.drawEllipse(circle);
    painter.setFont(type_font(Type::small_strong));
    painter.setPen(filled ? c.accent_ink : c.accent);
    painter.drawText(circle, Qt::AlignCenter, QString::number(m_number));
}

void Step::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        settle_margins();
    }
}

StepCourse::StepCourse(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(0);
    m_column->addStretch(1);
}

Step* StepCourse::add_step(const QString& name) {
    auto* step = new Step(static_cast<int>(m_steps.size()) + 1, name, this);
    step->m_first = m_steps.empty();
    if (!m_steps.empty()) {
        m_steps.back()->m_last = false;
    }
    m_column->insertWidget(m_column->count() - 1, step);
    m_steps.push_back(step);
    return step;
}

} // namespace soakbook::ui
