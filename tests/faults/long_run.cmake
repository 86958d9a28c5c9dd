# SPDX-License-Identifier: GPL-3.0-or-later
# The counts of a night take a night.
if(DEFINED ENV{SOAKBOOK_LONG})
    set_tests_properties(${test_faults_TESTS} ${test_faults_at_work_TESTS} PROPERTIES TIMEOUT 36000)
endif()
