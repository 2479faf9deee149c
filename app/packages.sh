# The Debian packages that Panside needs, in one place; sourced by app/run and tests/run.
# On another system look for the same libraries under its own names.

buildTools=(
    g++ cmake ninja-build mold qt6-base-dev-tools qt6-tools-dev-tools qt6-l10n-tools
    python3-minimal libpython3-stdlib cmark-gfm librsvg2-bin
)
buildLibraries=( # of the machine that runs it
    qt6-base-dev qt6-multimedia-dev qt6-serialport-dev qt6-serialbus-dev qt6-tools-dev
    libgl-dev libegl-dev libxcb1-dev
    libsqlite3-dev libsqlitecpp-dev libfmt-dev libtomlplusplus-dev libxlsxwriter-dev libqrencode-dev
)
buildPackages=(
    "${buildTools[@]}" "${buildLibraries[@]}"
    libcli11-dev nlohmann-json3-dev libeigen3-dev qt6-translations-l10n # the same for all machines
)
packagePackages=(dpkg-dev file lintian desktop-file-utils) # to make a .deb, besides
benchPackages=(qt6-charts-dev libqt6opengl6-dev) # a peer of the board's chart
testPackages=(
    libgtest-dev libgmock-dev librapidcheck-dev libbenchmark-dev
    clang libclang-rt-dev clang-format clang-tidy
    desktop-file-utils appstream shared-mime-info libglib2.0-bin man-db groff-base bash-completion
    python3-iapws python3-pymodbus python3-serial-asyncio mbpoll socat
    xvfb xauth xdotool zbar-tools
)

# counting LOG COMMAND...: COMMAND, with what it says in LOG. On a terminal one line counts how far it is: the steps that
# ninja tells, or the packages that apt-get sets up.
counting() {
    local log=$1 status=0 line done=0 all=0
    shift
    if [ ! -t 2 ]; then
        "$@" >"$log" 2>&1
        return
    fi
    "$@" 2>&1 | tee "$log" | while IFS= read -r line; do
        if [[ $line =~ ^\[[0-9]+/[0-9]+\] ]]; then
            printf '\r%s ' "${BASH_REMATCH[0]}" >&2
        elif [[ $line =~ ([0-9]+)\ newly\ installed ]]; then
            all=${BASH_REMATCH[1]}
        elif [[ $line == 'Setting up '* ]]; then
            printf '\r[%d/%d] ' $((++done)) "$all" >&2
        fi
    done || status=$?
    printf '\r\033[K' >&2
    return $status
}

# Installs what is missing of the packages named, asking nothing where nothing is missing.
need() {
    local missing=() package
    for package in "$@"; do
        # Of a package that is here for two machines `dpkg -s` says nothing without its machine's name.
        dpkg-query -W -f '${db:Status-Status}\n' "$package" 2>/dev/null | grep -qx installed || missing+=("$package")
    done
    [ ${#missing[@]} -eq 0 ] && return
    local asRoot=()
    if [ "$(id -u)" -ne 0 ]; then
        if ! command -v sudo >/dev/null; then
            echo "Panside needs packages that are missing here. As root, run:" >&2
            echo "    apt-get install --no-install-recommends ${missing[*]}" >&2
            exit 3
        fi
        asRoot=(sudo)
    fi
    echo "Installing: ${missing[*]}"
    local log
    log=$(mktemp)
    "${asRoot[@]}" apt-get update -q >/dev/null &&
        counting "$log" "${asRoot[@]}" env LC_ALL=C DEBIAN_FRONTEND=noninteractive \
            apt-get install -y --no-install-recommends "${missing[@]}" || {
        grep '^E: ' "$log" >&2 || true
        echo "The packages could not be installed. Install them yourself, then run this again:" >&2
        echo "    apt-get install --no-install-recommends ${missing[*]}" >&2
        exit 3
    }
    rm -f "$log"
}

# The same for a build for another machine: its libraries and its compiler besides.
needFor() {
    if ! dpkg --print-foreign-architectures | grep -qx "$1"; then
        local asRoot=()
        [ "$(id -u)" -eq 0 ] || asRoot=(sudo)
        "${asRoot[@]}" dpkg --add-architecture "$1" && "${asRoot[@]}" apt-get update -q >/dev/null
    fi
    need "${buildPackages[@]}" "crossbuild-essential-$1" "${buildLibraries[@]/%/:$1}"
}

# configure NAME [CMake options]: a build tree under .build, told to CMake once and again when the options change.
configure() {
    local name=$1
    shift
    mkdir -p ".build/$name"
    [ -f ".build/$name/build.ninja" ] && [ "$(cat ".build/$name/options" 2>/dev/null)" = "$*" ] && return
    local extra=()
    command -v mold >/dev/null && extra+=(-DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=mold)
    command -v ccache >/dev/null && extra+=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
    cmake -S . -B ".build/$name" -G Ninja "${extra[@]}" "$@" >".build/$name/configure.log" || {
        cat ".build/$name/configure.log" >&2
        exit 3
    }
    echo "$*" >".build/$name/options"
}

# build NAME [what ninja takes]: what it says is kept in the tree's build.log, and its end shown if it fails.
build() {
    local tree=.build/$1
    shift
    counting "$tree/build.log" ninja -C "$tree" "$@" || {
        tail -n 80 "$tree/build.log" >&2
        return 3
    }
}

# Under the sanitizers, by clang: in half of g++'s time, and ready for clang's fuzzer. The core alone unless told.
configureSanitized() { # configureSanitized NAME [CMake options]
    local name=$1
    shift
    configure "$name" -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=16 \
        -DCMAKE_BUILD_TYPE=RelWithDebInfo "-DCMAKE_CXX_FLAGS_RELWITHDEBINFO=-O1 -g1 -DNDEBUG" -DPANSIDE_SANITIZE=ON \
        -DPANSIDE_UI=OFF "$@"
}
