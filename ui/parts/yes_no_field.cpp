// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/choice_field.h"
#include "ui/parts/theme.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>

namespace soakbook::ui {

namespace {

constexpr int way_no = 0;
constexpr int way_yes = 1;
constexpr int way_not_said = 2;

} // namespace

YesNoField::YesNoField(Ways ways, QWidget* parent) : Field(parent), m_group(new QButtonGroup(this)) {
    row()->setSpacing(0);
    //: An answer
    add_way(tr("Yes"), way_yes, "first");
    //: An answer
    add_way(tr("No"), way_no, ways == Ways::two ? "last" : "middle");
    if (ways == Ways::three) {
        //: An answer: nobody said yes or no
        add_way(tr("Not said"), way_not_said, "last")->setChecked(true);
    }
    row()->addStretch(1);
    connect(m_group, &QButtonGroup::idClicked, this, &YesNoField::note_edit);
}

QPushButton* YesNoField::add_way(const QString& words, int id, const char* place) {
    auto* button = new QPushButton(words, this);
    button->setCheckable(true);
    button->setAutoDefault(false);
    button->setProperty("place", QLatin1String(place));
    set_kind(button, "segment");
    m_group->addButton(button, id);
    row()->addWidget(button);
    button->installEventFilter(this);
    return button;
}

QWidget* YesNoField::editor() const {
    QAbstractButton* checked = m_group->checkedButton();
    return checked != nullptr ? checked : m_group->button(way_yes);
}

void YesNoField::clear() {
    set_value(std::nullopt);
}

void YesNoField::set_name(const QString& name) {
    for (QAbstractButton* button : m_group->buttons()) {
        const QString spoken = name + QStringLiteral(": ") + button->text();
        button->setAccessibleName(spoken);
    }
}

std::optional<bool> YesNoField::value() const {
    switch (m_group->checkedId()) {
    case way_yes:
        return true;
    case way_no:
        return false;
    default:
        return std::nullopt;
    }
}

void YesNoField::set_value(std::optional<bool> value) {
    QAbstractButton* wanted = m_group->button(!value ? way_not_said : *value ? way_yes : way_no);
    if (wanted != nullptr) {
        wanted->setChecked(true);
    } else if (QAbstractButton* checked = m_group->checkedButton()) {
        m_group->setExclusive(false);
        checked->setChecked(false);
        m_group->setExclusive(true);
    }
    set_complaint({});
}

bool YesNoField::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const QString typed = static_cast<QKeyEvent*>(event)->text();
        for (QAbstractButton* button : m_group->buttons()) {
            // "No" and "Not said" begin alike: the first of them is meant.
            if (!typed.isEmpty() && typed.at(0).isLetter() && button->text().startsWith(typed, Qt::CaseInsensitive)) {
                button->setFocus(Qt::OtherFocusReason);
                button->click();
                return true;
            }
        }
    }
    return Field::eventFilter(watched, event);
}

} // namespace soakbook::ui
