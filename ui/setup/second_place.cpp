// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/setup/second_place.h"

#include <QSettings>

namespace soakbook::ui {

namespace {

const QString folder_key = QStringLiteral("copies/second_place");
const QString none_key = QStringLiteral("copies/no_second_place");
const QString chosen_key = QStringLiteral("copies/second_place_chosen");

QString key_of(const QString& mark, const char* what) { return QStringLiteral("copies/") + mark + QLatin1Char('/') + QLatin1String(what); }

// An instant is written as its milliseconds and the wall's offset.
std::optional<maths::Instant> stored_instant(const QString& key) {
    const QString text = QSettings().value(key).toString();
    bool ms_good = false;
    bool offset_good = false;
    const qint64 ms = text.section(QLatin1Char(' '), 0, 0).toLongLong(&ms_good);
    const int offset = text.section(QLatin1Char(' '), 1).toInt(&offset_good);
    return ms_good && offset_good ? std::optional<maths::Instant>{{ms, offset}} : std::nullopt;
}

void store_instant(const QString& key, const maths::Instant& at) {
    QSettings().setValue(key, QString(QString::number(at.utc_ms) + QLatin1Char(' ') + QString::number(at.offset_minutes)));
}

} // namespace

SecondPlace second_place() {
    const QSettings settings;
    SecondPlace place;
    place.folder = settings.value(folder_key).toString();
    place.choice = !place.folder.isEmpty()                  ? SecondPlace::Choice::folder
                   : settings.value(none_key, false).toBool() ? SecondPlace::Choice::none
                                                              : SecondPlace::Choice::unsaid;
    place.chosen = stored_instant(chosen_key);
    return place;
}

void choose_second_place(const QString& folder, const maths::Instant& now) {
    QSettings settings;
    settings.setValue(folder_key, folder);
    settings.remove(none_key);
    store_instant(chosen_key, now);
    // What another place held says nothing of this one.
    settings.beginGroup(QStringLiteral("copies"));
    for (const QString& mark : settings.childGroups())
        for (const char* what : {"second_entry", "second_answered"})
            settings.remove(mark + QLatin1Char('/') + QLatin1String(what));
}

void choose_no_second_place(const maths::Instant& now) {
    QSettings settings;
    settings.remove(folder_key);
    settings.setValue(none_key, true);
    store_instant(chosen_key, now);
}

SecondPlaceNews second_place_news(const QString& mark) {
    return {QSettings().value(key_of(mark, "second_entry"), 0).toLongLong(), stored_instant(key_of(mark, "second_answered"))};
}

void note_second_place(const QString& mark, const SecondPlaceNews& news) {
    QSettings().setValue(key_of(mark, "second_entry"), news.newest_entry);
    if (news.answered)
        store_instant(key_of(mark, "second_answered"), *news.answered);
}

std::optional<maths::Instant> checked_whole(const QString& mark) { return stored_instant(key_of(mark, "checked_whole")); }

void note_checked_whole(const QString& mark, const maths::Instant& at) { store_instant(key_of(mark, "checked_whole"), at); }

} // namespace soakbook::ui
