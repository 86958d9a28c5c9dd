// SPDX-License-Identifier: GPL-3.0-or-later
// What a form has to say about the whole entry, above its buttons: a refusal, a question with its answer, a wait.
#pragma once

#include <QFrame>

class QLabel;

namespace soakbook::ui {

class PrimaryButton;

class FormNotice : public QFrame {
    Q_OBJECT

public:
    explicit FormNotice(QWidget* parent = nullptr);
    void refuse(const QString& words);
    void wait(const QString& words);
    /// Words and one button that answers; `key` stands in the button.
    void ask(const QString& words, const QString& answer, const QString& key);
    void put_away();
    QString words() const;

Q_SIGNALS:
    void answered();

private:
    void say(const QString& words, const char* kind, bool with_answer);
    QLabel* m_words;
    PrimaryButton* m_answer;
};

} // namespace soakbook::ui
