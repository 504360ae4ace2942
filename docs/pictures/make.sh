#!/usr/bin/env bash
# Makes every picture of docs/user-guide.md anew: docs/pictures/make.sh BUILD_FOLDER (one with groundcount, groundbook and the tests).
# The demo day is played into a temporary book; the steps of a new test come from the touch test, which drives them by finger.
set -eu
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
top=$(cd "$here/../.." && pwd)
build=$(cd "${1:?usage: docs/pictures/make.sh BUILD_FOLDER}" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export XDG_DATA_HOME=$work/data XDG_RUNTIME_DIR=$work/run QT_QPA_PLATFORM=offscreen QT_QUICK_CONTROLS_STYLE=Basic
mkdir -m 700 "$work/run"

"$build/app/command/groundbook" play "$work/day.fieldbook" "$top/demo/scenario.json" --key "$work/key" >/dev/null

python3 "$top/demo/make_terrain.py" "$work/terrain.tif"
"$build/app/command/groundbook" background "$work/terrain.tif" --into "$work/day.fieldbook" >/dev/null

picture() { # NAME SIZE ARGUMENTS...
    "$build/app/groundcount" --book "$work/day.fieldbook" --at 2026-06-09T14:12:00-05:00 --size "$2" "${@:3}" --screenshot "$here/$1-$2.png"
    [[ -s $here/$1-$2.png ]]
}

for size in 360x640 412x915 1280x800; do
    picture day "$size" --place day --replay "$top/demo/walk.nmea"
    picture map "$size" --place map --replay "$top/demo/walk.nmea"
    picture lots "$size" --place lots
    picture lot "$size" --open lot:N-4
    picture hand-over "$size" --open hand-over
    picture server "$size" --open server
    picture publish "$size" --open publish
    picture receiver "$size" --open kit:receiver
    picture kit "$size" --place kit
    picture kit-books "$size" --open kit:books
    picture record "$size" --open record:26
    picture screen "$size" --open screen
    picture paper "$size" --open paper:day
    picture paper-review "$size" --open paper:review:N-4
    picture verdict-pass "$size" --open test:24
    picture verdict-fail "$size" --open test:26
done
for size in 360x640 412x915 1280x800; do
    picture map-coverage "$size" --place map --open coverage
    for sheet in review figures profile tests; do
        picture "lot-$sheet" "$size" --open "lot:N-3/$sheet"
    done
done
for sheet in counts custody gauge material rules offset background; do
    case $sheet in material) named=:P-12 ;; gauge | custody | counts) named=":Gauge 07" ;; *) named= ;; esac
    picture "kit-$sheet" 412x915 --open "kit:$sheet$named"
done
picture kit-counts 1280x800 --open kit:counts
picture kit-counts 360x640 --open kit:counts
picture place 1280x800 --open new --replay "$top/demo/walk.nmea"
for step in 2:clear 3:seat 4:count 5:dig; do
    picture "${step#*:}" 1280x800 --open "test:24/${step%:*}"
done
for theme in sun dusk; do
    "$build/app/groundcount" --book "$work/day.fieldbook" --at 2026-06-09T14:12:00-05:00 --theme "$theme" --screenshot "$here/day-$theme.png"
done

GROUNDCOUNT_SHOTS=$work/steps "$build/tests/test_page_touch_test" >"$work/touch.log" || { cat "$work/touch.log" >&2; exit 1; }
for size in 360x640 412x915; do
    for shot in 03-place:place 05-clear-too-close:clear 08-seat:seat 10-count-running:count 12-count-typed:reading 11-struck:struck 16-dig:dig 18-arithmetic:arithmetic; do
        cp "$work/steps/$size-${shot%:*}.png" "$here/${shot#*:}-$size.png"
    done
done
GROUNDCOUNT_SHOTS=$work "$build/tests/begin_job_test" >"$work/touch.log" || { cat "$work/touch.log" >&2; exit 1; }
for size in 360x640 412x915 1280x800; do
    for shot in job line lot; do
        cp "$work/kit-begin-$shot-$size.png" "$here/begin-$shot-$size.png"
    done
done
GROUNDCOUNT_SHOTS=$work "$build/tests/site_file_touch_test" >"$work/touch.log" || { cat "$work/touch.log" >&2; exit 1; }
cp "$work/site-file-412.png" "$here/site-file-412x915.png"
cp "$work/site-file-1280.png" "$here/site-file-1280x800.png"
ls "$here"/*.png | wc -l
