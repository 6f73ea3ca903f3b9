"""Rows of the ledger `tests/README.md` that come from outside of `cargo test`.

A script keeps its rows in a file of `tests/ledger`; what it finds must be what that file says, else it is stale.
`SPANHOLD_BLESS=1` writes the file anew; then `SPANHOLD_BLESS=1 cargo test --test published` puts it into the ledger.

Deviations are told rounded up to one digit, so that another processor's last bits do not make a row stale.
"""

import math
import os
import pathlib

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "tests" / "ledger"
BLESS = "SPANHOLD_BLESS"
# Below this a share is rounding, which differs from processor to processor.
SMALLEST = 1e-6


def at_most(share, smallest=SMALLEST):
    """A share in percent, rounded up to one digit; what is no number stays visible."""
    if not math.isfinite(share):
        return str(share)
    if share < smallest:
        return f"< {100 * smallest:g} %"
    power = math.floor(math.log10(100 * share))
    digit = math.ceil(100 * share / 10.0**power - 1e-9)
    return f"up to {digit * 10.0**power:.{max(0, -power)}f} %"


def row(what, source, standing, reference, ours, deviation, allowed):
    return f"| {what} | {source} | {standing} | {reference} | {ours} | {deviation} | {allowed} |"


def keep(name, rows):
    """True when the kept rows are these."""
    path, text = FOLDER / name, "".join(line + "\n" for line in rows)
    if os.environ.get(BLESS):
        path.write_text(text, encoding="utf-8")
        return True
    kept = path.read_text(encoding="utf-8") if path.exists() else ""
    if kept == text:
        return True
    print(f"tests/ledger/{name} is stale; renew it with {BLESS}=1, then the ledger, and read the difference.")
    for here, there in zip(text.splitlines() + [""], kept.splitlines() + [""]):
        if here != there:
            print(f"  found: {here}\n  kept:  {there}")
    return False
