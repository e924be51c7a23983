#pragma once

#include "sheet/ink.hpp"

class QPrinter;

namespace rampwright::ui {

/// Sets a printer to the sheet's paper, upright, whole page, at true size: nothing is fitted to margins.
void set_up_printer(QPrinter& printer, const paper::Sheet& sheet);

/// Paints the pages that the printer's range asks for. @return whether the printer took them.
bool print_sheet(QPrinter& printer, const paper::Sheet& sheet);

} // namespace rampwright::ui
