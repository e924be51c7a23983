#pragma once

namespace rampwright::ui {

class CarCanvas;

/// Puts what is drawn into the tree that screen readers walk: below the drawing stand the balance point, the
/// wheels, and everything the step in hand lets one touch, each with its name, its place in words and where
/// it is on the screen; an item is chosen by its press or focus action. Call it once for a drawing.
void make_accessible(CarCanvas& canvas);

} // namespace rampwright::ui
