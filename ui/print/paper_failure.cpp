// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_failure.h"

#include <QCoreApplication>

namespace soakbook::ui {

namespace {

struct PaperFailureWords {
    Q_DECLARE_TR_FUNCTIONS(PaperFailure)
};

} // namespace

QString paper_failure_words(const PaperFailure& failure) {
    switch (failure.fault) {
    case PaperFault::no_space:
        //: %1 is a file's name with its folders
        return PaperFailureWords::tr(
                   "There is no room left for %1. Nothing was written; choose another place or make room.")
            .arg(failure.path);
    case PaperFault::read_only:
        //: %1 is a file's name with its folders
        return PaperFailureWords::tr("%1 may not be written to. Choose another name or folder.").arg(failure.path);
    case PaperFault::no_such_folder:
        //: %1 is a file's name with its folders
        return PaperFailureWords::tr("The folder for %1 does not exist. Choose another.").arg(failure.path);
    case PaperFault::printer:
        //: the printer refused
        return PaperFailureWords::tr(
            "The printer took no page. See whether it is switched on and has paper, or save a PDF instead.");
    case PaperFault::nothing:
        //: an empty list was to be printed
        return PaperFailureWords::tr("There is nothing to print.");
    }
    return {};
}

} // namespace soakbook::ui
