"""Every demo file and every stored plan against the schemas the program prints, by a validator from outside; and files
that are wrong in one place, which must not pass.

    schema.py SPANHOLD
"""

import copy
import glob
import json
import subprocess
import sys

import yaml
from jsonschema import Draft202012Validator


def schema(program, file):
    text = subprocess.run([program, "schema", file], check=True, capture_output=True, text=True).stdout
    found = json.loads(text)
    Draft202012Validator.check_schema(found)
    return Draft202012Validator(found)


def read(path):
    with open(path, encoding="utf-8") as f:
        return json.load(f) if path.endswith(".json") else yaml.safe_load(f)


def put(document, way, value):
    """A copy with something put at a place."""
    document = copy.deepcopy(document)
    at = document
    for key in way[:-1]:
        at = at[key]
    at[way[-1]] = value
    return document


def main():
    program = sys.argv[1]
    files = {
        "job": sorted(glob.glob("demo/*.yaml")) + ["demo/shop/dancer-arm-pin.yaml"],
        "machine": sorted(glob.glob("demo/machines/*.yaml")),
        "shop": ["demo/shop/shop.yaml"],
        "readings": sorted(glob.glob("demo/readings/*.yaml")),
        "plan": sorted(glob.glob("plans/*/plan.json")),
    }
    wrong = {
        "job": [
            (["shaft", "sections", 0, "lenght"], 5),
            (["shaft", "sections", 0, "length"], -5),
            (["shaft", "sections", 0, "length"], "20 kg"),
            (["cutting", "tools"], "both"),
            (["cutting", "vc"], "140"),
            (["limits"], {"whirl_ratio": 7}),
            (["stock"], []),
            (["shaft", "sections"], []),
        ],
        "machine": [
            (["bush", "max_bar"], 0),
            (["counter_spindle", "collets", 0, "range"], [18]),
            (["headstock"], {"nearest": 60}),
            (["colour"], "grey"),
        ],
        "shop": [
            (["machines", 0, "per_hours"], 62),
            (["bars", 0, "diameter"], -18),
            (["cutting", "vc"], 120),
            (["bars", 0], {"material": "C45"}),
        ],
        "readings": [
            (["set_ups", 0, "dial", 0, "load"], 0),
            (["set_ups", 0, "front"], None),
            (["fit"], ["tailstock"]),
            (["errors"], {"dail": 1}),
        ],
        "plan": [
            (["verdict"], "maybe"),
            (["stages", 0, "to_mm"], "89.5"),
            (["time_s"], {}),
            (["quote", "pieces_per_bar"], -1),
        ],
    }
    failed = 0
    for kind, paths in files.items():
        validator = schema(program, kind)
        assert paths, f"no {kind} files"
        for path in paths:
            for error in validator.iter_errors(read(path)):
                failed += 1
                print(f"{path}: {'/'.join(map(str, error.absolute_path))}: {error.message[:200]}")
        good = "plans/feed-roller-shaft/plan.json" if kind == "plan" else "demo/feed-roller-shaft.yaml"
        good = good if kind in ("job", "plan") else paths[0]
        for way, value in wrong[kind]:
            if validator.is_valid(put(read(good), way, value)):
                failed += 1
                print(f"{kind}: {way} as {value!r} is taken as valid")
        print(f"{kind}: {len(paths)} files, {len(wrong[kind])} wrong ones")
    # The commented files a user starts from.
    for kind, call in {"job": ["new"], "shop": ["new", "shop"]}.items():
        template = subprocess.run([program, *call], check=True, capture_output=True, text=True).stdout
        for error in schema(program, kind).iter_errors(yaml.safe_load(template)):
            failed += 1
            print(f"spanhold {' '.join(call)}: {error.message[:200]}")
    sys.exit(1 if failed else 0)


main()
