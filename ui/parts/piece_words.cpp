// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/piece_words.h"

#include <QCoreApplication>
#include <QtGlobal>

#include <array>

namespace soakbook::ui {

namespace {

struct PieceText {
    const char* key;
    const char* text; ///< %1 is the subject, %n the count
};

// The comments say to the translator what %1 and %n stand for. They follow "Undo:" in a button.
constexpr std::array texts{
    //: A piece of work
    PieceText{"set_up", QT_TRANSLATE_NOOP("Piece", "operation set up")},
    //: A piece of work: a workbook of an older version was brought to the form that this version keeps
    PieceText{"brought_up", QT_TRANSLATE_NOOP("Piece", "workbook brought up to this version")},
    //: A piece of work: a figure in Set-up was said or changed
    PieceText{"figure", QT_TRANSLATE_NOOP("Piece", "figures of Set-up")},
    //: %1 a person
    PieceText{"person", QT_TRANSLATE_NOOP("Piece", "person %1")},
    //: %1 a kind of strip
    PieceText{"strip_kind", QT_TRANSLATE_NOOP("Piece", "strip %1")},
    //: %1 a tank or a bin
    PieceText{"vessel", QT_TRANSLATE_NOOP("Piece", "vessel %1")},
    //: %1 a lot of material
    PieceText{"lot", QT_TRANSLATE_NOOP("Piece", "delivery of lot %1")},
    //: %1 a lot of material
    PieceText{"lot_corrected", QT_TRANSLATE_NOOP("Piece", "lot %1 corrected")},
    //: %1 a lot of material
    PieceText{"lot_recounted", QT_TRANSLATE_NOOP("Piece", "lot %1 recounted")},
    //: %1 a lot of material
    PieceText{"lot_finished", QT_TRANSLATE_NOOP("Piece", "lot %1 used up")},
    //: %1 a batch
    PieceText{"mix_planned", QT_TRANSLATE_NOOP("Piece", "batch %1 planned")},
    //: %1 a batch
    PieceText{"mix_weighed", QT_TRANSLATE_NOOP("Piece", "batch %1 weighed in")},
    //: %1 a batch
    PieceText{"mix_corrected", QT_TRANSLATE_NOOP("Piece", "batch %1 corrected")},
    //: %1 a batch; a reading of the temperature
    PieceText{"reading", QT_TRANSLATE_NOOP("Piece", "reading of batch %1")},
    //: %1 a batch
    PieceText{"stir", QT_TRANSLATE_NOOP("Piece", "stir of batch %1")},
    //: %n bins, %1 a batch
    PieceText{"soak", QT_TRANSLATE_N_NOOP("Piece", "%n bin(s) of batch %1 filled")},
    //: %1 a batch
    PieceText{"soak_ended", QT_TRANSLATE_NOOP("Piece", "end of soak, batch %1")},
    //: %n strips, %1 a batch, a bag or a hive
    PieceText{"weighing", QT_TRANSLATE_N_NOOP("Piece", "%n strip(s) of %1 weighed")},
    //: %n bags, %1 a batch
    PieceText{"bags_filled", QT_TRANSLATE_N_NOOP("Piece", "%n bag(s) of batch %1")},
    //: %n labels, %1 a batch
    PieceText{"labels_reserved", QT_TRANSLATE_N_NOOP("Piece", "%n label(s) for batch %1")},
    //: %1 a bag
    PieceText{"label_filled", QT_TRANSLATE_NOOP("Piece", "bag %1 filled")},
    //: %n pails, %1 a batch
    PieceText{"poured", QT_TRANSLATE_N_NOOP("Piece", "%n pail(s) of batch %1 poured")},
    //: %1 a batch; liquid that was lost and why
    PieceText{"loss", QT_TRANSLATE_NOOP("Piece", "loss of batch %1")},
    //: %1 a batch
    PieceText{"batch_closed", QT_TRANSLATE_NOOP("Piece", "batch %1 closed")},
    //: %1 a batch
    PieceText{"batch_reopened", QT_TRANSLATE_NOOP("Piece", "batch %1 opened again")},
    //: %n bags
    PieceText{"bags_moved", QT_TRANSLATE_N_NOOP("Piece", "%n bag(s) moved")},
    //: %1 a bag
    PieceText{"bag_opened", QT_TRANSLATE_NOOP("Piece", "bag %1 opened")},
    //: %1 a bag
    PieceText{"bag_resealed", QT_TRANSLATE_NOOP("Piece", "bag %1 sealed again")},
    //: %n strips, %1 a bag
    PieceText{"strips_discarded", QT_TRANSLATE_N_NOOP("Piece", "%n strip(s) of %1 thrown away")},
    //: %1 a bag
    PieceText{"bag_recounted", QT_TRANSLATE_NOOP("Piece", "bag %1 recounted")},
    //: %n pails
    PieceText{"pails_moved", QT_TRANSLATE_N_NOOP("Piece", "%n pail(s) moved")},
    //: %1 a pail
    PieceText{"pail_used_in_part", QT_TRANSLATE_NOOP("Piece", "pail %1 used in part")},
    //: %1 a pail
    PieceText{"pail_discarded", QT_TRANSLATE_NOOP("Piece", "pail %1 thrown away")},
    //: %1 a yard
    PieceText{"yard", QT_TRANSLATE_NOOP("Piece", "yard %1")},
    //: %1 a yard; a time such as a flow in its calendar
    PieceText{"yard_time", QT_TRANSLATE_NOOP("Piece", "calendar of %1")},
    //: %n hives, %1 a yard
    PieceText{"hives", QT_TRANSLATE_N_NOOP("Piece", "%n hive(s) in %1")},
    //: %1 a hive
    PieceText{"hive_changed", QT_TRANSLATE_NOOP("Piece", "hive %1 changed")},
    //: %n hives, %1 the yard they went to
    PieceText{"hives_moved", QT_TRANSLATE_N_NOOP("Piece", "%n hive(s) moved to %1")},
    //: %1 a round of treatment
    PieceText{"round_planned", QT_TRANSLATE_NOOP("Piece", "round %1 planned")},
    //: %1 a round of treatment
    PieceText{"round_closed", QT_TRANSLATE_NOOP("Piece", "round %1 closed")},
    //: %n hives, %1 a yard
    PieceText{"strips_in", QT_TRANSLATE_N_NOOP("Piece", "strips in, %n hive(s) in %1")},
    //: %n hives, %1 a yard
    PieceText{"strips_out", QT_TRANSLATE_N_NOOP("Piece", "strips out, %n hive(s) in %1")},
    //: %n hives, %1 a yard
    PieceText{"mites_counted", QT_TRANSLATE_N_NOOP("Piece", "mites counted, %n hive(s) in %1")},
    //: %1 a code or a name
    PieceText{"corrected", QT_TRANSLATE_NOOP("Piece", "correction of %1")},
    //: %1 a code or a name
    PieceText{"made_void", QT_TRANSLATE_NOOP("Piece", "%1 made void")},
    //: %1 a paper
    PieceText{"printed", QT_TRANSLATE_NOOP("Piece", "print of %1")},
    //: %1 a file; the workbook was put back to an older copy of itself
    PieceText{"restored", QT_TRANSLATE_NOOP("Piece", "workbook put back to %1")},
    //: %1 a file; %n entries of another copy of the workbook were written into this one
    PieceText{"taken_over", QT_TRANSLATE_N_NOOP("Piece", "%n entry(ies) taken over from %1")},
};

// Papers by the name that the store keeps; %n is the count of what stands on them.
constexpr std::array papers{
    //: A piece of work: %n labels of bags and pails were printed
    PieceText{"label", QT_TRANSLATE_N_NOOP("Piece", "%n label(s) printed")},
    //: A piece of work
    PieceText{"mixing sheet", QT_TRANSLATE_NOOP("Piece", "mixing sheet printed")},
    //: A piece of work
    PieceText{"batch sheet", QT_TRANSLATE_NOOP("Piece", "batch sheet printed")},
    //: A piece of work: the list of hives to hang strips in
    PieceText{"run sheet", QT_TRANSLATE_NOOP("Piece", "run sheet printed")},
    //: A piece of work: the list of bags to take along
    PieceText{"load-out", QT_TRANSLATE_NOOP("Piece", "load-out printed")},
    //: A piece of work
    PieceText{"pull list", QT_TRANSLATE_NOOP("Piece", "pull list printed")},
    //: A piece of work
    PieceText{"register", QT_TRANSLATE_NOOP("Piece", "register printed")},
    //: A piece of work: the register as a table for a spreadsheet
    PieceText{"register csv", QT_TRANSLATE_NOOP("Piece", "register saved as a table")},
};

template <std::size_t count> const PieceText* found(const std::array<PieceText, count>& among, const QString& key) {
    for (const PieceText& text : among) {
        if (key == QLatin1String(text.key)) {
            return &text;
        }
    }
    return nullptr;
}

const PieceText* text_of(const QString& key) {
    return found(texts, key);
}

} // namespace

bool has_piece_words(const QString& key) {
    return text_of(key) != nullptr;
}

QString piece_words(const book::Piece& piece) {
    // Taking back and doing again are pieces of work too; their key is that of the first, after a word of the history's.
    const auto of_what = [&piece](const QString& prefix) {
        book::Piece what = piece;
        what.key = piece.key.mid(prefix.size());
        return piece_words(what);
    };
    if (const auto prefix = QStringLiteral("undo:"); piece.key.startsWith(prefix)) {
        //: In the journal; %1 a piece of work that was undone
        return QCoreApplication::translate("Piece", "taken back: %1").arg(of_what(prefix));
    }
    if (const auto prefix = QStringLiteral("redo:"); piece.key.startsWith(prefix)) {
        //: In the journal; %1 a piece of work that was undone and then done again
        return QCoreApplication::translate("Piece", "done again: %1").arg(of_what(prefix));
    }
    const PieceText* paper = piece.key == QLatin1String("printed") ? found(papers, piece.subject) : nullptr;
    const PieceText* text = paper != nullptr ? paper : text_of(piece.key);
    if (text == nullptr) {
        //: A piece of work that has no better name
        return QCoreApplication::translate("Piece", "an entry");
    }
    QString words = QCoreApplication::translate("Piece", text->text, nullptr, piece.count);
    return words.replace(QStringLiteral("%1"), piece.subject).simplified();
}

} // namespace soakbook::ui
