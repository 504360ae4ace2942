#!/bin/sh
# Renders the gallery: render.sh BUILD_DIR OUTPUT_DIR
set -eu
build=$1
mkdir -p "$2"
GROUNDCOUNT_GALLERY=$(cd "$2" && pwd) QT_QPA_PLATFORM=offscreen QT_QUICK_CONTROLS_STYLE=Basic exec "$(find "$build" -name gallery_test -type f | head -n 1)"
