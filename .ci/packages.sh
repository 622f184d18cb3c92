# The packages of Debian 12 that Ladlework needs, in one place, and how they are installed.
# Sourced by ./run and ./check.
# shellcheck shell=bash disable=SC2034

# To build and open the program.
build_packages=(
    cmake ninja-build g++ ccache pkg-config
    qt6-base-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools
    libqt6sql6-sqlite libqt6svg6 libsqlite3-dev libexpected-dev libboost-dev
    coinor-libcbc-dev libical-dev libqpdf-dev
    fonts-dejavu-core tzdata
)

# What ./check needs beside them.
check_packages=(
    git clang-format clang-tidy libgtest-dev libgmock-dev
    libglpk-dev poppler-utils qpdf sqlite3 python3 python3-icalendar xvfb xauth binutils
)

# What ./check bench needs beside them.
bench_packages=(libbenchmark-dev)

# The same for people on another system.
needs_in_words="Ladlework needs, with the headers and CMake files of each:
    CMake 3.25, Ninja 1.10, a C++20 compiler (GCC 12 or newer)
    Qt 6.4: Core, Gui, Widgets, Sql with its SQLite driver, PrintSupport, Svg, LinguistTools
    SQLite 3.40, tl::expected 1.0, Boost 1.74 (headers only),
    CBC 2.10 with Cgl and OsiClp, libical 3.0, qpdf 11, any TrueType font, the time zone database
and for ./check also:
    clang-format 14, clang-tidy 14, GoogleTest and GoogleMock 1.12, Qt 6.4 Test,
    GLPK 5.0, the icalendar module of Python, poppler-utils, qpdf, the sqlite3 shell, Python 3.11, Xvfb, git, binutils"

# True on Debian 12 or newer (testing and unstable have no version).
is_debian_12_or_newer() {
    [[ -r /etc/os-release ]] || return 1
    local id version
    # shellcheck source=/dev/null
    id=$(. /etc/os-release && printf '%s' "${ID:-}")
    # shellcheck source=/dev/null
    version=$(. /etc/os-release && printf '%s' "${VERSION_ID:-12}")
    [[ $id == debian && ${version%%.*} -ge 12 ]]
}

# missing_packages NAME...: prints the names that are not installed. Asks dpkg only, so that a
# second run touches no network.
missing_packages() {
    local installed name
    installed=$(dpkg-query -W -f='${db:Status-Status} ${Package}\n' "$@" 2>/dev/null || true)
    for name in "$@"; do
        grep -qxF "installed $name" <<<"$installed" || printf '%s\n' "$name"
    done
}

# as_root COMMAND...: runs it as root, through sudo when it must.
as_root() {
    if [[ $(id -u) -eq 0 ]]; then
        env DEBIAN_FRONTEND=noninteractive "$@"
    else
        sudo env DEBIAN_FRONTEND=noninteractive "$@"
    fi
}

# install_packages DRY_RUN NAME...: installs what is missing, and says so. DRY_RUN (yes or no)
# only says what would be installed.
install_packages() {
    local dry_run=$1 missing
    shift
    mapfile -t missing < <(missing_packages "$@")
    if [[ ${#missing[@]} -eq 0 ]]; then
        echo "All $# packages are installed."
        return 0
    fi
    if [[ $dry_run == yes ]]; then
        echo "Would install with apt-get: ${missing[*]}"
        return 0
    fi
    if [[ $(id -u) -ne 0 ]] && ! command -v sudo >/dev/null; then
        echo "These packages are missing, and there is no sudo to install them with." >&2
        echo "Run this as root, then start again:" >&2
        echo "    apt-get install --no-install-recommends ${missing[*]}" >&2
        return 1
    fi
    echo "Installing with apt-get: ${missing[*]}"
    as_root apt-get update -qq || echo "The package lists could not be renewed; trying the old ones." >&2
    as_root apt-get install -y -qq --no-install-recommends "${missing[@]}"
}

# require_tools NAME...: names what is not found; fails when anything is missing.
require_tools() {
    local name status=0
    for name in "$@"; do
        if ! command -v "$name" >/dev/null; then
            echo "Not found: $name" >&2
            status=1
        fi
    done
    return "$status"
}

# prepare_system DRY_RUN TOOL... -- PACKAGE...: on Debian installs the packages; elsewhere says
# what is needed and goes on when the tools are there.
prepare_system() {
    local dry_run=$1 tools=()
    shift
    while [[ $1 != -- ]]; do
        tools+=("$1")
        shift
    done
    shift
    if is_debian_12_or_newer; then
        install_packages "$dry_run" "$@"
        return
    fi
    echo "This is not Debian 12 or newer, so nothing is installed for you."
    echo "$needs_in_words"
    require_tools "${tools[@]}" || return 1
    echo "The tools are there; going on with what this system has."
}

# configure PRESET OPTION...: configures with ccache when it is there.
configure() {
    local preset=$1 launcher=
    shift
    if command -v ccache >/dev/null; then
        launcher=ccache
        CCACHE_BASEDIR=$(pwd -P)
        export CCACHE_BASEDIR CCACHE_NOHASHDIR=1
        # What ccache asks for to keep objects made with precompiled headers.
        export CCACHE_SLOPPINESS=pch_defines,time_macros
    fi
    cmake --preset "$preset" "-DCMAKE_CXX_COMPILER_LAUNCHER=$launcher" "$@"
}

# processors: how many jobs to run at a time.
processors() {
    nproc 2>/dev/null || getconf _NPROCESSORS_ONLN 2>/dev/null || echo 2
}
