// SPDX-License-Identifier: GPL-3.0-or-later
// The compiled translations, :/i18n/soakbook_LANGUAGE.qm.
#pragma once

#include <QStringList>

namespace soakbook::translations {

/// Languages that the program can speak, as two-letter codes, "en" first.
QStringList languages();
/// The resource path of a language's texts, such as ":/i18n/soakbook_de.qm"; empty for a language that is not there.
QString file_of(const QString& language);

} // namespace soakbook::translations
