#include "device/system_fonts.h"

#ifdef GROUNDCOUNT_FONTCONFIG
#include <fontconfig/fontconfig.h>

namespace groundcount::device {
namespace {

// The folders of the XDG base directories and the older ones; caches where fontconfig itself keeps them. The generic names are for a dialog that a desktop
// brings into the program.
constexpr char kRules[] = R"(<?xml version="1.0"?>
<fontconfig>
<dir>/usr/share/fonts</dir>
<dir>/usr/local/share/fonts</dir>
<dir prefix="xdg">fonts</dir>
<dir>~/.fonts</dir>
<cachedir>/var/cache/fontconfig</cachedir>
<cachedir prefix="xdg">fontconfig</cachedir>
<match target="pattern">
<edit name="hintstyle" mode="append"><const>hintslight</const></edit>
</match>
<alias><family>sans-serif</family><prefer><family>Noto Sans</family><family>DejaVu Sans</family><family>Liberation Sans</family></prefer></alias>
<alias><family>Sans</family><prefer><family>Noto Sans</family><family>DejaVu Sans</family><family>Liberation Sans</family></prefer></alias>
<alias><family>monospace</family><prefer><family>Noto Sans Mono</family><family>DejaVu Sans Mono</family><family>Liberation Mono</family></prefer></alias>
</fontconfig>
)";

}  // namespace

void keepSystemFontsSimple()
{
    FcConfig* rules = FcConfigCreate();
    if (!rules)
        return;
    // What cannot be read leaves the system's own rules in force.
    if (FcConfigParseAndLoadFromMemory(rules, reinterpret_cast<const FcChar8*>(kRules), FcTrue) && FcConfigBuildFonts(rules))
        FcConfigSetCurrent(rules);
    FcConfigDestroy(rules);
}

}  // namespace groundcount::device
#else
namespace groundcount::device {

void keepSystemFontsSimple() {}

}  // namespace groundcount::device
#endif
