// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/verified.h"

#include "core/book/workbook.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include <algorithm>

namespace soakbook::book {

namespace {

/// Places that are remembered of one workbook; the one seen longest ago is forgotten first.
constexpr std::size_t most_places = 16;

const QString places_key = QStringLiteral("places");
const QString place_key = QStringLiteral("place");
const QString verified_key = QStringLiteral("verified");
const QString seen_key = QStringLiteral("seen");
const QString entry_key = QStringLiteral("entry");
const QString hash_key = QStringLiteral("hash");
const QString at_key = QStringLiteral("at_ms");
const QString offset_key = QStringLiteral("offset_minutes");

QJsonObject to_json(const SealThen& then) {
    return {{entry_key, then.seal.last_seq},
            {hash_key, QString::fromLatin1(then.seal.hash.toHex())},
            {at_key, static_cast<qint64>(then.at.utc_ms)},
            {offset_key, then.at.offset_minutes}};
}

std::optional<SealThen> seal_then(const QJsonValue& value) {
    const QJsonObject object = value.toObject();
    SealThen then;
    then.seal.last_seq = object[entry_key].toInteger(-1);
    const QByteArray digits = object[hash_key].toString().toLatin1();
    then.seal.hash = QByteArray::fromHex(digits);
    then.at.utc_ms = object[at_key].toInteger(-1);
    then.at.offset_minutes = object[offset_key].toInt();
    const bool whole = then.seal.last_seq >= 0 && then.seal.hash.size() == 32 && then.seal.hash.toHex() == digits && then.at.utc_ms >= 0;
    return whole ? std::optional<SealThen>(then) : std::nullopt;
}

std::optional<Remembered> remembered(const QJsonValue& value) {
    const QJsonObject object = value.toObject();
    const auto seen = seal_then(object[seen_key]);
    if (!seen || object[place_key].toString().isEmpty())
        return std::nullopt;
    return Remembered{object[place_key].toString(), seal_then(object[verified_key]), *seen};
}

} // namespace

QString VerifiedBefore::file_of(const QByteArray& uid) const {
    return QDir(m_folder).filePath(QString::fromLatin1(uid.toHex()) + QStringLiteral(".json"));
}

std::vector<Remembered> VerifiedBefore::of(const QByteArray& uid) const {
    QFile file(file_of(uid));
    if (uid.isEmpty() || !file.open(QIODevice::ReadOnly))
        return {};
    std::vector<Remembered> places;
    for (const QJsonValue value : QJsonDocument::fromJson(file.readAll()).object()[places_key].toArray())
        if (auto place = remembered(value))
            places.push_back(std::move(*place));
    return places;
}

std::optional<Remembered> VerifiedBefore::at(const QByteArray& uid, const QString& place) const {
    const auto places = of(uid);
    const auto found = std::find_if(places.begin(), places.end(), [&](const Remembered& r) { return r.place == place; });
    return found == places.end() ? std::nullopt : std::optional<Remembered>(*found);
}

QByteArray VerifiedBefore::uid_at(const QString& place) const {
    QByteArray newest;
    qint64 at_ms = -1;
    for (const QString& name : QDir(m_folder).entryList({QStringLiteral("*.json")}, QDir::Files)) {
        const QByteArray uid = QByteArray::fromHex(name.section(QLatin1Char('.'), 0, 0).toLatin1());
        const auto there = at(uid, place);
        if (there && there->seen.at.utc_ms > at_ms) {
            at_ms = there->seen.at.utc_ms;
            newest = uid;
        }
    }
    return newest;
}

bool VerifiedBefore::write(const QByteArray& uid, const std::vector<Remembered>& places) const {
    QJsonArray all;
    for (std::size_t i = 0; i < std::min(places.size(), most_places); ++i) {
        QJsonObject place{{place_key, places[i].place}, {seen_key, to_json(places[i].seen)}};
        if (places[i].verified)
            place[verified_key] = to_json(*places[i].verified);
        all.append(place);
    }
    if (!QDir().mkpath(m_folder))
        return false;
    QSaveFile file(file_of(uid));
    const QByteArray text = QJsonDocument(QJsonObject{{places_key, all}}).toJson();
    return file.open(QIODevice::WriteOnly) && file.write(text) == text.size() && file.commit();
}

template <class F> bool VerifiedBefore::change(const QByteArray& uid, const QString& place, F&& f) const {
    if (uid.isEmpty() || place.isEmpty())
        return false;
    auto places = of(uid);
    auto found = std::find_if(places.begin(), places.end(), [&](const Remembered& r) { return r.place == place; });
    if (found == places.end())
        found = places.insert(places.begin(), Remembered{place, {}, {}});
    std::rotate(places.begin(), found, std::next(found));
    f(places.front());
    return write(uid, places);
}

bool VerifiedBefore::note_verified(const VerifiedUntil& until, const QString& place, const maths::Instant& at) const {
    return change(until.uid, place, [&](Remembered& r) {
        r.verified = SealThen{until.seal, at};
        // Work may have gone on while the copy was checked.
        if (r.seen.seal.last_seq <= until.seal.last_seq)
            r.seen = {until.seal, at};
    });
}

bool VerifiedBefore::note_seen(const QByteArray& uid, const Seal& seal, const QString& place, const maths::Instant& at) const {
    return change(uid, place, [&](Remembered& r) { r.seen = {seal, at}; });
}

bool VerifiedBefore::forget_verified(const QByteArray& uid, const QString& place) const {
    return !at(uid, place) || change(uid, place, [](Remembered& r) { r.verified.reset(); });
}

Seal newest_seal_of(const Workbook& workbook) { return newest_seal(workbook.db()); }
bool stands_in(const Workbook& workbook, const Seal& seal) { return holds_seal(workbook.db(), seal); }

} // namespace soakbook::book
