#!/usr/bin/env bash
# Installs what .ci/run needs where it is missing. Called by .ci/run.
set -euo pipefail
cd "$(dirname "$0")/.."

missing=()
need() { # command, Debian package
    command -v "$1" >/dev/null 2>&1 || missing+=("$2")
}
need cc gcc
# The fuzz crate builds libFuzzer.
need c++ g++
need python3 python3
# The page is tested in a browser; diagram and sheet are measured in it, with the font they ask for first.
need node nodejs
need npm npm
need chromium chromium
[ -f /usr/share/fonts/truetype/dejavu/DejaVuSans.ttf ] || missing+=(fonts-dejavu-core)
# Readers of the PDF.
need pdftotext poppler-utils
need pdftoppm poppler-utils
need parallel parallel
# Debian splits the virtual environments off; `import venv` works without them, `ensurepip` does not.
if ! python3 -c 'import venv, ensurepip' >/dev/null 2>&1; then
    missing+=(python3-venv)
fi
if ((${#missing[@]})); then
    echo "installing ${missing[*]}"
    export DEBIAN_FRONTEND=noninteractive
    apt-get update -q
    apt-get install -qy --no-install-recommends "${missing[@]}" libc6-dev
fi

pinned=$(sed -n 's/^channel = "\(.*\)"$/\1/p' rust-toolchain.toml)
if ! command -v cargo >/dev/null 2>&1; then
    echo "no cargo: install Rust $pinned from https://rustup.rs" >&2
    exit 1
fi
# rustup takes the toolchain that is pinned, and fetches it where it may; a cargo from elsewhere knows nothing of that.
if ! rustc --version | grep -qF "rustc $pinned "; then
    echo "the compiler is not Rust $pinned, which rust-toolchain.toml pins: rustup toolchain install $pinned" >&2
    exit 1
fi
for tool in fmt clippy; do
    if ! cargo "$tool" --version >/dev/null 2>&1; then
        component=$tool
        [ "$tool" = fmt ] && component=rustfmt
        rustup component add "$component"
    fi
done
cargo --version
python3 --version
