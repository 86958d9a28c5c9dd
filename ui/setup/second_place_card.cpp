// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/second_place_card.h"

#include "ui/parts/desk.h"
#include "ui/parts/flow_layout.h"
#include "ui/parts/theme.h"
#include "ui/setup/copy_keeper.h"
#include "ui/setup/second_place.h"
#include "ui/setup/state_line.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <utility>

namespace soakbook::ui {

namespace {

std::function<QString()>& folder_answer() {
    static std::function<QString()> answer;
    return answer;
}

QString ask_for_folder(QWidget* parent, const QString& title, const QString& begin) {
    if (folder_answer())
        return folder_answer()();
    QFileDialog::Options options = QFileDialog::ShowDirsOnly;
    // Without a desktop there is no dialog of the system's own.
    if (QGuiApplication::platformName() == QLatin1String("offscreen"))
        options |= QFileDialog::DontUseNativeDialog;
    return QFileDialog::getExistingDirectory(parent, title, begin, options);
}

} // namespace

void let_folder_answer(std::function<QString()> answer) { folder_answer() = std::move(answer); }

SecondPlaceCard::SecondPlaceCard(Desk& desk, QString home, CopyKeeper* keeper, QWidget* parent)
    //: Head of a card: a second folder for safe copies
    : Card(tr("A second place"), parent), m_desk(desk), m_home(std::move(home)), m_keeper(keeper), m_state(new StateLine),
      m_answer(make_soft_label({}, Type::body)), m_choose(new QPushButton), m_none(new QPushButton) {
    setObjectName(QStringLiteral("second_place"));
    //: Explains the second place for safe copies
    column()->addWidget(make_soft_label(tr("Whatever happens to this computer, theft or fire, happens to the copies on it, too. Choose a folder on a stick or on another computer: "
                                           "each good copy is put there as well, and read back."),
                                        Type::body));
    m_state->setObjectName(QStringLiteral("second_place_state"));
    column()->addWidget(m_state);
    column()->addWidget(m_answer);
    m_choose->setObjectName(QStringLiteral("second_place_choose"));
    m_none->setObjectName(QStringLiteral("second_place_none"));
    //: A button: no second place for safe copies is wanted
    m_none->setText(tr("I want none"));
    auto* buttons = new FlowLayout(8, 8);
    for (QPushButton* button : {m_choose, m_none}) {
        button->setAutoDefault(true);
        buttons->addWidget(button);
    }
    column()->addLayout(buttons);
    connect(m_choose, &QPushButton::clicked, this, &SecondPlaceCard::choose);
    connect(m_none, &QPushButton::clicked, this, &SecondPlaceCard::choose_none);
    if (m_keeper)
        connect(m_keeper, &CopyKeeper::news, this, &SecondPlaceCard::refresh);
    m_answer->hide();
    refresh();
}

void SecondPlaceCard::refresh() {
    const SecondPlace place = second_place();
    if (place.choice == SecondPlace::Choice::folder)
        //: A button; where a second place was chosen already
        m_choose->setText(tr("Choose another folder..."));
    else
        //: A button; where no second place was chosen yet
        m_choose->setText(tr("Choose a folder..."));
    m_none->setVisible(place.choice != SecondPlace::Choice::none);
    if (place.choice == SecondPlace::Choice::unsaid) {
        //: The state of the second place
        m_state->set(State::near, tr("Not chosen yet: all safe copies lie on this computer."));
        return;
    }
    if (place.choice == SecondPlace::Choice::none) {
        //: The state of the second place
        m_state->set(std::nullopt, tr("You want none: all safe copies lie on this computer. Carry one elsewhere now and then."));
        return;
    }
    const QString folder = QDir::toNativeSeparators(place.folder);
    const SecondPlaceNews news = second_place_news(work::mark_of_copies(m_desk.workbook()));
    if (m_keeper && m_keeper->stage() == CopyKeeper::Stage::carrying)
        //: The state of the second place; %1 a folder, %2 how much is done, in percent
        m_state->set(State::resting, tr("%1: a copy is being put there, %2 % done.").arg(folder).arg(m_keeper->percent()));
    else if (m_keeper && !m_keeper->second_failure().isEmpty())
        m_state->set(State::near, m_keeper->second_failure());
    else if (!news.answered)
        //: The state of the second place; %1 a folder
        m_state->set(State::near, tr("%1: nothing is there yet.").arg(folder));
    else
        //: The state of the second place; %1 a folder, %2 the number of an entry, %3 a day and time
        m_state->set(State::ready, tr("%1: holds everything up to entry %2. It was last reached on %3.")
                                       .arg(folder, m_desk.count(news.newest_entry), m_desk.moment(*news.answered)));
}

void SecondPlaceCard::choose() {
    //: Title of a window that asks for a folder
    const QString folder = ask_for_folder(window(), tr("A second place for safe copies"), second_place().folder);
    if (folder.isEmpty())
        return;
    const QString chosen = QFileInfo(folder).canonicalFilePath();
    m_answer->show();
    if (chosen.isEmpty()) {
        //: In answer to the choice of a folder; %1 is the folder
        m_answer->setText(tr("%1 is not there. Choose a folder that is.").arg(QDir::toNativeSeparators(folder)));
        return;
    }
    if (chosen == QFileInfo(m_home).canonicalFilePath()) {
        //: In answer to the choice of a folder
        m_answer->setText(tr("That is where the safe copies lie already. Choose a folder on another disk."));
        return;
    }
    m_answer->hide();
    choose_second_place(chosen, m_desk.now());
    if (m_keeper)
        m_keeper->look_at_second_place();
    refresh();
    Q_EMIT m_desk.work_done();
}

void SecondPlaceCard::choose_none() {
    m_answer->hide();
    choose_no_second_place(m_desk.now());
    if (m_keeper)
        m_keeper->look_at_second_place();
    refresh();
    m_choose->setFocus();
    Q_EMIT m_desk.work_done();
}

} // namespace soakbook::ui
