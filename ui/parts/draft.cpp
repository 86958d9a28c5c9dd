// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/draft.h"

#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>

#include <array>
#include <limits>
#include <utility>

namespace soakbook::ui {

namespace {

constexpr int draft_version = 1;
constexpr int most_drafts_of_a_form = 1000;

constexpr std::array place_keys{
    std::pair{PlaceName::due, "due"},     std::pair{PlaceName::shed, "shed"},          std::pair{PlaceName::store, "store"},
    std::pair{PlaceName::yards, "yards"}, std::pair{PlaceName::register_, "register"}, std::pair{PlaceName::setup, "setup"}};
constexpr std::array kind_keys{std::pair{DraftPart::Kind::text, "text"}, std::pair{DraftPart::Kind::choice, "choice"},
                               std::pair{DraftPart::Kind::tick, "tick"}, std::pair{DraftPart::Kind::cell, "cell"}};

template <class Keys, class Value> QString key_of(const Keys& keys, Value value) {
    for (const auto& [known, key] : keys) {
        if (known == value) {
            return QLatin1String(key);
        }
    }
    return {};
}

template <class Keys> auto value_of(const Keys& keys, const QString& wanted) {
    std::optional<decltype(keys.front().first)> found;
    for (const auto& [value, key] : keys) {
        if (wanted == QLatin1String(key)) {
            found = value;
        }
    }
    return found;
}

/// Half a pair of UTF-16 does not live in UTF-8: such a text is written as its numbers.
QJsonValue exact(const QString& text) {
    if (QString::fromUtf8(text.toUtf8()) == text) {
        return text;
    }
    QJsonArray units;
    for (const QChar unit : text) {
        units.append(int{unit.unicode()});
    }
    return units;
}

QString exact_text(const QJsonValue& value) {
    if (!value.isArray()) {
        return value.toString();
    }
    QString text;
    for (const QJsonValue unit : value.toArray()) {
        text.append(QChar(static_cast<char16_t>(unit.toInt())));
    }
    return text;
}

QJsonObject intent_object(const Intent& intent) {
    QJsonArray ids;
    for (const qint64 id : intent.ids) {
        ids.append(id);
    }
    return {{QStringLiteral("place"), key_of(place_keys, intent.place)},
            {QStringLiteral("task"), intent.task},
            {QStringLiteral("ids"), ids},
            {QStringLiteral("prefill"), QJsonObject::fromVariantMap(intent.prefill)}};
}

std::optional<Intent> read_intent(const QJsonObject& object) {
    const auto place = value_of(place_keys, object.value(QStringLiteral("place")).toString());
    if (!place) {
        return std::nullopt;
    }
    Intent intent{*place, object.value(QStringLiteral("task")).toString(), {}, object.value(QStringLiteral("prefill")).toObject().toVariantMap()};
    for (const QJsonValue id : object.value(QStringLiteral("ids")).toArray()) {
        intent.ids.push_back(id.toInteger());
    }
    return intent;
}

} // namespace

QString Draft::file_name() const {
    return QStringLiteral("%1 %2 %3.json").arg(place.form).arg(place.record).arg(nth);
}

qint64 Draft::id() const {
    const QByteArray hash = QCryptographicHash::hash(file_name().toUtf8(), QCryptographicHash::Sha256);
    qint64 id = 0;
    for (int i = 0; i < 7; ++i) { // JSON and QVariant carry 53 bits safely, and more than one draft is rare
        id = id * 256 + static_cast<unsigned char>(hash.at(i));
    }
    return id >> 4;
}

QByteArray draft_text(const Draft& draft, const QString& workbook) {
    QJsonArray parts;
    for (const DraftPart& part : draft.parts) {
        QJsonObject object{{QStringLiteral("kind"), key_of(kind_keys, part.kind)},
                           {QStringLiteral("where"), part.where},
                           {QStringLiteral("says"), exact(part.says)}};
        if (!part.label.isEmpty()) {
            object.insert(QStringLiteral("label"), part.label);
        }
        if (!part.shows.isEmpty()) {
            object.insert(QStringLiteral("shows"), part.shows);
        }
        parts.append(object);
    }
    const QJsonObject whole{{QStringLiteral("soakbook_draft"), draft_version},
                            {QStringLiteral("workbook"), workbook},
                            {QStringLiteral("form"), draft.place.form},
                            {QStringLiteral("record"), draft.place.record},
                            {QStringLiteral("nth"), draft.nth},
                            {QStringLiteral("title"), draft.place.title},
                            {QStringLiteral("intent"), intent_object(draft.place.intent)},
                            {QStringLiteral("typed_ms"), static_cast<qint64>(draft.typed.utc_ms)},
                            {QStringLiteral("offset_minutes"), draft.typed.offset_minutes},
                            {QStringLiteral("parts"), parts}};
    return QJsonDocument(whole).toJson();
}

std::optional<Draft> read_draft(const QByteArray& text, const QString& workbook) {
    const QJsonObject whole = QJsonDocument::fromJson(text).object();
    static const QRegularExpression name(QStringLiteral("^[a-z0-9_]{1,60}$"));
    Draft draft;
    draft.place.form = whole.value(QStringLiteral("form")).toString();
    const auto intent = read_intent(whole.value(QStringLiteral("intent")).toObject());
    if (whole.value(QStringLiteral("soakbook_draft")).toInt() != draft_version || whole.value(QStringLiteral("workbook")).toString() != workbook ||
        !name.match(draft.place.form).hasMatch() || !intent || !whole.value(QStringLiteral("parts")).isArray()) {
        return std::nullopt;
    }
    draft.place.record = whole.value(QStringLiteral("record")).toInteger();
    draft.place.title = whole.value(QStringLiteral("title")).toString();
    draft.place.intent = *intent;
    draft.nth = whole.value(QStringLiteral("nth")).toInt();
    draft.typed.utc_ms = whole.value(QStringLiteral("typed_ms")).toInteger();
    draft.typed.offset_minutes = whole.value(QStringLiteral("offset_minutes")).toInt();
    constexpr qint64 end_of_calendar_ms = 253'402'300'800'000; // the year 10000
    if (draft.nth < 1 || draft.nth > most_drafts_of_a_form || draft.typed.utc_ms <= 0 || draft.typed.utc_ms >= end_of_calendar_ms ||
        draft.typed.offset_minutes < -24 * 60 || draft.typed.offset_minutes > 24 * 60) {
        return std::nullopt;
    }
    for (const QJsonValue value : whole.value(QStringLiteral("parts")).toArray()) {
        const QJsonObject object = value.toObject();
        const auto kind = value_of(kind_keys, object.value(QStringLiteral("kind")).toString());
        if (!kind) {
            return std::nullopt;
        }
        draft.parts.push_back({*kind, object.value(QStringLiteral("where")).toString(), exact_text(object.value(QStringLiteral("says"))),
                               object.value(QStringLiteral("label")).toString(), object.value(QStringLiteral("shows")).toString()});
    }
    if (draft.parts.empty()) {
        return std::nullopt;
    }
    return draft;
}

QString typed_words(const Draft& draft, int most) {
    QStringList words;
    for (const DraftPart& part : draft.parts) {
        const QString said = (part.kind == DraftPart::Kind::tick || !part.shows.isEmpty() ? part.shows : part.says).left(most).simplified();
        if (!said.isEmpty()) {
            words << (part.label.isEmpty() ? said : QString(part.label + QStringLiteral(": ") + said));
        }
    }
    const QString all = words.join(QStringLiteral("; "));
    return all.size() > most ? QString(all.left(most) + QChar(0x2026)) : all;
}

} // namespace soakbook::ui
