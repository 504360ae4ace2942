#pragma once

namespace groundcount::device {

/// The program brings its own letters; of the system it needs only what they lack, other scripts. Where the system's fonts come through fontconfig its
/// folders of fonts are enough, and how letters are drawn is the same on every device: slight hinting, grey edges. What else the system says about
/// fonts, some forty files that every program reads anew, is left alone (docs/decisions/0016). Call once, before the first letter; elsewhere it does nothing.
void keepSystemFontsSimple();

}  // namespace groundcount::device
