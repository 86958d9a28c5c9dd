#!/bin/bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The test of the tests: takes one guard of the workbook away at a time, builds, and shows which tests turned red.
#
#   tests/faults/guards.sh             all guards
#   tests/faults/guards.sh NAME...     those whose name holds one of the words
#   tests/faults/guards.sh --list      their names
#
# Works on a copy of the sources in build/guards and leaves the sources themselves alone. A guard is a change to one file,
# written as a Perl expression over the whole text; one that does not fit any more is an error, so that the list stays true
# to the sources. Ends with 1 when a guard can be taken away and every test stays green, or when one does not fit.
set -euo pipefail
{ # read whole before it runs, so that it may be edited meanwhile
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
work=$root/build/guards
copy=$work/source
tree=$work/tree
export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen CCACHE_BASEDIR=$copy

names=() files=() changes=() programs=() filters=()
guard() { # name, file, change, test program, tests that are to turn red
    names+=("$1") files+=("$2") changes+=("$3") programs+=("$4") filters+=("$5")
}

# --- the connection
guard "synchronous EXTRA" core/book/connection.cpp \
    's/\{"synchronous", "EXTRA", "3"\}/{"synchronous", "FULL", "2"}/' \
    faults 'PowerCut.*'
guard "synchronous at all" core/book/connection.cpp \
    's/\{"synchronous", "EXTRA", "3"\}/{"synchronous", "OFF", "0"}/' \
    faults 'PowerCut.*'
guard "journal on the disk" core/book/connection.cpp \
    's/for \(const Setting& s : settings\) \{/run(db, QStringLiteral("PRAGMA journal_mode=MEMORY"));\n        $&/' \
    faults 'Killed.at_each*:PowerCut.*'
guard "cell_size_check" core/book/connection.cpp \
    's/\{"cell_size_check", "ON", "1"\}/{"cell_size_check", "OFF", "0"}/' \
    book 'Opening.the_settings*'
guard "busy_timeout 0" core/book/connection.cpp \
    's/\{"busy_timeout", "0", "0"\}/{"busy_timeout", "60000", "60000"}/' \
    faults 'Others.a_lock_held*:Others.a_lock_that*'
guard "recursive_triggers" core/book/connection.cpp \
    's/\{"recursive_triggers", "ON", "1"\}/{"recursive_triggers", "OFF", "0"}/' \
    book 'Opening.the_settings*'
guard "foreign_keys" core/book/connection.cpp \
    's/\{"foreign_keys", "ON", "1"\}/{"foreign_keys", "OFF", "0"}/' \
    book 'Opening.the_settings*'
guard "trusted_schema off" core/book/connection.cpp \
    's/\{"trusted_schema", "OFF", "0"\}/{"trusted_schema", "ON", "1"}/' \
    book 'Opening.the_settings*'
guard "defensive mode" core/book/connection.cpp \
    's/sqlite3_db_config\(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr\);//' \
    faults 'StrangeText.of_SQL*'

# --- the history and its seals
guard "history: no overwriting" core/book/schema/0001_control.sql \
    's/CREATE TRIGGER change_not_replaced.*?END;//s' \
    book 'Laws.nine_the_history*'
guard "history: no changing" core/book/schema/0001_control.sql \
    's/CREATE TRIGGER change_kept.*?END;//s' \
    book 'Laws.nine_the_history*'
guard "history: no shortening" core/book/schema/0001_control.sql \
    's/CREATE TRIGGER change_not_removed.*?END;//s' \
    book 'Laws.nine_the_history*'
guard "records: no overwriting" core/book/history_triggers.cpp \
    's/WHEN EXISTS \(SELECT 1 FROM %1 WHERE id = NEW.id\)/WHEN 0/' \
    book 'Laws.nine_a_record*'
guard "records: what was shown stays" core/book/history_triggers.cpp \
    's/\(SELECT 1 FROM shown WHERE tbl = .%1. AND row_id = OLD.id\)/(SELECT 1 FROM shown WHERE 0)/' \
    book 'Laws.seven*'
guard "seals: no changing" core/book/schema/0002_seals.sql \
    's/CREATE TRIGGER seal_kept.*?END;//s' \
    book 'Seals.are_neither*'
guard "seals: in order" core/book/schema/0002_seals.sql \
    's/CREATE TRIGGER seal_in_order.*?END;//s' \
    book 'Seals.are_neither*'
guard "now_doing is emptied" core/book/writing.cpp \
    's/run\(db\(\), QStringLiteral\("DELETE FROM now_doing"\)\);//' \
    book 'Seals.*:History.*'
guard "each piece is sealed" core/book/writing.cpp \
    's/const std::optional<Seal> seal = seal_changes\(db\(\)\);/const std::optional<Seal> seal;/' \
    book 'Seals.*'
guard "a name changes by its case too" core/book/history_triggers.cpp \
    's/ COLLATE BINARY//' \
    book 'History.holds_a_name*'
guard "texts the history holds whole" core/book/record_io.cpp \
    's/throw LawBroken\(SQLITE_CONSTRAINT, [^;]*;/(void)table;/' \
    faults 'StrangeText.*'

# --- one piece of work
guard "the seal after a failed COMMIT" core/book/writing.cpp \
    's/is_down = own && newest_seal\(db\(\)\) == \*own;/is_down = false \&\& own;/' \
    faults 'Pieces/FailingDisk.*/0'
guard "work that is down is not refused" core/book/writing.cpp \
    's/\} catch \(const StoreError&\) \{\n(\s+\/\/ A page)/} catch (const Busy\&) {\n$1/' \
    faults 'WorkThatIsDown.*'
guard "rollback of what failed" core/book/writing.cpp \
    's/QSqlQuery\(db\(\)\)\.exec\(QStringLiteral\("ROLLBACK"\)\);/(void)db();/g' \
    faults 'WorkThatFailed.*'
guard "what was read is forgotten" core/book/outside_watch.cpp \
    's/if \(stamp\(\) != m_stamp\)\n/if (false)\n/' \
    faults 'Others.a_copy_edited_apart*'
guard "changes of others are told" core/book/writing.cpp \
    's/(void Writing::mind_others\(\) \{\n)/$1    if (m_kind == Kind::work)\n        return;\n/' \
    faults 'Others.what_another*:Others.a_copy_edited_apart*'
guard "undo minds others" core/book/undo_stack.cpp \
    's/if \(m_workbook\.changed_outside\(\)\)/if (false)/' \
    book 'Undo.is_refused_after*'

# --- opening
guard "schema compare" core/book/workbook.cpp \
    's/if \(structure_of\(m_db\) != known_structure\(version\)\)/if (false)/' \
    faults 'StrangeFile.*'
guard "a file cut to nothing" core/book/file_header.cpp \
    's/if \(head.isEmpty\(\)\)/if (false)/; s/if \(head.size\(\) < 100 \|\|/if (!head.isEmpty() \&\& /; s/(const auto version = qFrom)/if (head.isEmpty()) return std::nullopt;\n    $1/' \
    book 'Opening.a_file_cut_to_nothing*'
guard "another program's store" core/book/file_header.cpp \
    's/if \(application != application_id\)/if (false \&\& application != 0)/' \
    book 'Opening.another*'
guard "a newer version" core/book/file_header.cpp \
    's/if \(version > schema_version\)/if (false)/' \
    book 'Opening.a_workbook_of_a_newer*'
guard "a new workbook overwrites nothing" core/book/workbook.cpp \
    's/if \(QFileInfo::exists\(path\)\)\n(\s+)return tl::unexpected\(NotOpened::exists_already\)/if (false)\n$1return tl::unexpected(NotOpened::exists_already)/' \
    book 'Opening.a_new_workbook_never*'

# --- the check
guard "every seal is compared" core/book/verify_history.cpp \
    's/link\.seal != said \|\|/(link.seal != said \&\& result.looked_at % 2 == 0) ||/' \
    book 'Verifier.*'
guard "every record is compared" core/book/verify_history.cpp \
    's/WHERE c\.after IS NOT \(CASE/WHERE 0 AND c.after IS NOT (CASE/' \
    book 'Verifier.*'
guard "numbers without a gap" core/book/verify_history.cpp \
    's/if \(entries\.number\(0\) != expected\)/if (false)/' \
    book 'Verifier.*'
guard "counters" core/book/verify_history.cpp \
    's/    check_counters\(db, result\);//; s/void check_counters/[[maybe_unused]] void check_counters/' \
    book 'Verifier.*'
guard "what was verified before is there" core/book/verify.cpp \
    's/r\.bad = 1;\n(\s+)r\.first = Entry\{m_from/r.bad = 0;\n$1r.first = Entry{m_from/' \
    faults 'Others.an_older_copy*'

# --- safe copies
guard "a copy is checked" core/book/safe_copy_steps.cpp \
    's/if \(!verdict\.sound\(\)\)\n/if (false)\n/' \
    faults 'CopyOfDamaged.*'
guard "a copy gets its name last" core/book/safe_copy_steps.cpp \
    's/ being copied\.soakbook\.part/ 1.soakbook/' \
    faults 'Killed.while_it_makes_safe_copies*'
guard "a restored copy is checked" core/book/restore.cpp \
    's/if \(!verdict\.sound\(\)\)\n/if (false)\n/; s/if \(!now\.sound\(\) \|\|/if (/' \
    copies 'Restoring.is_refused_for_a_copy_that_is_not_sound*'
guard "restoring keeps what was there" core/book/restore.cpp \
    's/if \(lies_there\(request\.file\)\) \{/if (false \&\& lies_there(request.file)) {/' \
    copies 'Restoring.puts*'
guard "restoring another workbook's copy" core/book/restore.cpp \
    's/present\.uid != restored\.uid\)/present.uid != restored.uid \&\& false)/' \
    copies 'Restoring.is_refused_for_a_copy_of_another*'
guard "twenty newest copies stay" core/book/copy_rotation.cpp \
    's/constexpr std::size_t newest_kept = 20;/constexpr std::size_t newest_kept = 3;/' \
    faults 'RestoreKilled.in_the_middle_of_rotation*'

# --- numbers and names
guard "grouping is refused" core/exchange/number_text.cpp \
    's/if \(!sure && may_be_a_thousand\(digits\.front\(\), digits\.back\(\)\)\)/if (false \&\& !sure \&\& may_be_a_thousand(digits.front(), digits.back()))/' \
    exchange 'Quantities.a_mark_before*'
guard "groups of three are refused" core/exchange/number_text.cpp \
    's/if \(!one_decimal_mark\) \{/if (!one_decimal_mark \&\& !is_grouped(*runs)) {/' \
    exchange 'Quantities.*'

if [ "${1-}" = --list ]; then
    printf '%s\n' "${names[@]}"
    exit 0
fi

chosen=()
for i in "${!names[@]}"; do
    take=$([ "$#" -eq 0 ] && echo yes || true)
    for word in "$@"; do
        [[ ${names[i]} != *"$word"* ]] || take=yes
    done
    [ -z "$take" ] || chosen+=("$i")
done
[ "${#chosen[@]}" -gt 0 ] || { echo "no guard is called so; --list names them" >&2; exit 2; }

# A copy of the sources; files that are the same keep their time, so that a second run builds little.
mkdir -p "$copy"
fresh=$work/fresh
rm -rf "$fresh"
mkdir -p "$fresh"
tar -C "$root" --exclude=./build --exclude=./.git -cf - . | tar -C "$fresh" -xf -
(cd "$copy" && find . -type f -print0) | while IFS= read -r -d '' file; do
    [ -e "$fresh/$file" ] || rm -f "$copy/$file"
done
(cd "$fresh" && find . -type f -print0) | while IFS= read -r -d '' file; do
    cmp -s "$fresh/$file" "$copy/$file" || { mkdir -p "$copy/$(dirname "$file")"; cp "$fresh/$file" "$copy/$file"; }
done

# One object a source, so that a change compiles one file.
if [ ! -f "$tree/build.ninja" ]; then
    cmake -S "$copy" -B "$tree" -G Ninja -DCMAKE_BUILD_TYPE=Release -DCMAKE_UNITY_BUILD=OFF >"$work/cmake.log" 2>&1 || { cat "$work/cmake.log" >&2; exit 1; }
fi
build() { cmake --build "$tree" --target test_book test_copies test_faults test_exchange >"$work/build.log" 2>&1; }
# Prints the tests that failed; a program that does not end well without naming one is said to have broken off.
red() { # program, filter
    local status=0
    timeout 300 "$(find "$tree/tests" -name "test_$1" -type f)" --gtest_filter="$2" --gtest_brief=1 >"$work/run.log" 2>&1 || status=$?
    grep -q '^\[==========\] 0 tests' "$work/run.log" && { echo "(no such test)"; return; }
    local failed
    failed=$(sed -n 's/^\[  FAILED  \] \([A-Za-z0-9_/]*\.[A-Za-z0-9_/]*\)\( (.*\)\?\(, where.*\)\?$/\1/p' "$work/run.log" | sort -u | head -3 | paste -sd' ')
    [ -z "$failed" ] && [ "$status" -ne 0 ] && failed="(broke off: $status)"
    echo "$failed"
}

echo "building without a change"
build || { tail -40 "$work/build.log" >&2; exit 1; }
declare -A green=()
for i in "${chosen[@]}"; do
    key="${programs[i]} ${filters[i]}"
    [ -z "${green[$key]-}" ] || continue
    before=$(red "${programs[i]}" "${filters[i]}")
    [ -z "$before" ] || { echo "with every guard in place: ${filters[i]}: $before" >&2; exit 1; }
    green[$key]=yes
done

left_green=0
printf '%-36s | %s\n' "taken away" "turned red"
printf '%-36s-+-%s\n' "------------------------------------" "----------"
for i in "${chosen[@]}"; do
    file=$copy/${files[i]}
    perl -0pi -e "${changes[i]}" "$file"
    if cmp -s "$fresh/${files[i]}" "$file"; then
        said="DOES NOT FIT ANY MORE"
        left_green=1
    elif ! build; then
        said="DOES NOT BUILD: $(grep -m1 ' error: ' "$work/build.log" || true)"
        left_green=1
    else
        said=$(red "${programs[i]}" "${filters[i]}")
        [ -n "$said" ] || { said="NOTHING"; left_green=1; }
    fi
    printf '%-36s | %s\n' "${names[i]}" "$said"
    cp "$fresh/${files[i]}" "$file"
done
build || true
exit "$left_green"
}
