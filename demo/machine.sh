# Sourced by demo/run and tests/run: makes the machine ready and times the parts.
# shellcheck shell=bash

# A clone in any folder finds what another clone of this machine has compiled.
export CCACHE_BASEDIR=$here CCACHE_NOHASHDIR=1

# part WHAT COMMAND...: runs a command and prints how long it took.
part() {
    local what=$1 began=$SECONDS status=0
    shift
    printf '== %s\n' "$what"
    "$@" || status=$?
    printf -- '-- %s: %d s\n' "$what" "$((SECONDS - began))"
    return "$status"
}

# wanted LIST...: the packages of the lists, one a line.
wanted() {
    sed -e 's/#.*//' -e 's/[[:space:]]//g' -e '/^$/d' "$@" | sort -u
}

# missing LIST...: those of them that are not installed.
missing() {
    local package
    for package in $(wanted "$@"); do
        if [[ $(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null) != installed ]]; then
            echo "$package"
        fi
    done
}

# ready LIST...: installs what is missing on Debian 12; elsewhere names it and stops.
ready() {
    local id='' version='' absent as=()
    if [[ -r /etc/os-release ]]; then
        id=$(. /etc/os-release && echo "${ID:-}")
        version=$(. /etc/os-release && echo "${VERSION_ID:-}")
    fi
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        echo "This system (${id:-unknown} $version) has no apt-get. Needed are Debian 12's packages, or what they hold:" >&2
        wanted "$@" >&2
        return 1
    fi
    absent=$(missing "$@")
    if [[ -z $absent ]]; then
        echo "Every package needed is installed."
        return 0
    fi
    if [[ $id != debian || $version != 12 ]]; then
        echo "This system is ${id:-unknown} $version, not Debian 12, so nothing is installed. Missing here:" >&2
        echo "$absent" >&2
        return 1
    fi
    if [[ $(id -u) -ne 0 ]]; then
        if ! command -v sudo >/dev/null; then
            echo "These packages are missing, and neither root nor sudo is at hand to install them:" >&2
            echo "$absent" >&2
            return 1
        fi
        as=(sudo)
    fi
    echo "Installing:" $absent
    "${as[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq update
    # shellcheck disable=SC2086
    "${as[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qq -y --no-install-recommends install $absent
}
