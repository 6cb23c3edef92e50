# shellcheck shell=bash disable=SC2034
# Sourced by the commands that build: what Debian 12 must have, installed where it is missing.

build_packages=(g++ cmake ninja-build libeigen3-dev libboost-dev libcli11-dev libhdf5-dev
    libtomlplusplus-dev libfmt-dev nlohmann-json3-dev libmuparser-dev libtbb-dev
    libnlopt-dev libjs-dygraphs)
test_packages=(doctest-dev clang-format-14 netcdf-bin python3-h5py python3-xarray python3-netcdf4
    librsvg2-bin openmpi-bin libopenmpi-dev gnuplot-nox)
# What computes the references of validation/simulators; only validation/run --with-simulators asks.
simulator_packages=(python3-numpy python3-scipy libsundials-dev ngspice calculix-ccx)
# What opens the report page; only validation/run --with-browser asks.
browser_packages=(chromium python3-websocket)

# install_missing PACKAGE...: says what it installs, is silent when nothing is missing.
install_missing() {
    local missing=() package as_root=()
    for package in "$@"; do
        [ "$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null)" = installed ] ||
            missing+=("$package")
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    if [ "$(id -u)" != 0 ]; then
        command -v sudo >/dev/null || {
            echo "missing: ${missing[*]} (install them as root, or install sudo)" >&2
            return 1
        }
        as_root=(sudo)
    fi
    echo "installing with apt: ${missing[*]}"
    quietly "${as_root[@]}" apt-get -q update || return 1
    quietly "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
        apt-get -q -y --no-install-recommends install "${missing[@]}"
}

# quietly COMMAND...: its output is shown only when it fails.
quietly() {
    local log status=0
    log=$(mktemp)
    "$@" >"$log" 2>&1 </dev/null || status=$?
    [ $status = 0 ] || {
        echo "failed: $*" >&2
        tail -n 60 "$log" >&2
    }
    rm -f "$log"
    return $status
}
