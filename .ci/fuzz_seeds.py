"""Seeds for the fuzz targets, from the demo: jobs with their machine in them and few stations, so that planning one is quick.

    python3 .ci/fuzz_seeds.py FOLDER
"""

import json
import pathlib
import re
import sys

demo = pathlib.Path("demo")
out = pathlib.Path(sys.argv[1])


def put(target, name, content):
    folder = out / target
    folder.mkdir(parents=True, exist_ok=True)
    if isinstance(content, str):
        content = content.encode()
    (folder / name).write_bytes(content)


def lean(text):
    """Without remarks and empty lines: they only lengthen what is changed at random."""
    lines = (re.sub(r"\s+#.*$", "", line) for line in text.splitlines())
    return "\n".join(line for line in lines if line.strip() and not line.startswith("#")) + "\n"


def machine_of(folder, text):
    named = re.search(r"^machine: (\S+\.yaml)$", text, re.M)
    file = named and folder / named[1]
    return (named, lean(file.read_text())) if file and file.is_file() else None


def inlined(folder, text):
    found = machine_of(folder, text)
    if not found:
        return text
    named, machine = found
    inner = "".join(f"  {line}\n" for line in machine.splitlines())
    return text[: named.start()] + "machine:\n" + inner.rstrip("\n") + text[named.end() :]


def coarse(text):
    """Few stations."""
    text = re.sub(r"^planning: .*\n", "", text, flags=re.M)
    return text + "planning: {station_pitch: 20}\n"


SMALL = """shaft:
  material: C45
  sections: [{length: 30, diameter: 7.5, tolerance: h7}, {length: 2, diameter: 6, kind: groove}, {length: 35, diameter: 8.6}]
  features: [{cross_hole: 1.5, at: 60}, {centre_hole: A1, end: front}]
stock: {diameter: 9, bar_length: 3000}
machine:
  bush: {max_bar: 12, land: 12, gap: 0.5, stiffness: 60}
  headstock: {nearest: 32, stroke: 66, hold: 15, stiffness: 30, max_rpm: 12000, regrip_s: 4}
  counter_spindle:
    {nearest: 3, farthest: 90, bore: 14, bore_depth: 200, stiffness: 30, max_rpm: 12000, hand_over_s: 3, collets: [
      {name: A, range: [8.4, 8.7], hold: 8, passes: 8.8, clamp_force: 9000}]}
  cross_tool_reach: 10
  part_off: {width: 1, time_s: 4}
cutting: {vc: 60, feed: 0.05, ap_max: 0.8}
limits: {stiffness_min: 0.01, sag: 0.01}
planning: {station_pitch: 16}
"""

put("job", "small.yaml", SMALL)
for file in sorted(demo.glob("*.yaml")):
    # With the stations they have they are read and not planned: too large for many a second.
    put("job", file.name, inlined(demo, lean(file.read_text())))
for file in sorted(pathlib.Path("tests/cases").glob("*.yaml")):
    put("job", f"case-{file.name}", inlined(file.parent, file.read_text()))
put("job", "template.yaml", lean(pathlib.Path("src/input/template.yaml").read_text()))
for file in sorted((demo / "machines").glob("*.yaml")):
    put("machine", file.name, lean(file.read_text()))
machine = SMALL[SMALL.index("machine:\n") : SMALL.index("cutting:")]
put("machine", "small.yaml", machine.removeprefix("machine:\n").replace("\n  ", "\n").lstrip())
for file in sorted((demo / "readings").glob("*.yaml")):
    put("readings", file.name, inlined(file.parent, lean(file.read_text())))
for file in sorted(pathlib.Path("plans").glob("*/plan.json")):
    put("plan", f"{file.parent.name}.json", json.dumps(json.loads(file.read_text()), separators=(",", ":")))
for file in sorted(pathlib.Path("tests/drawings").glob("*.dxf")):
    put("drawing", file.name, file.read_bytes())
put("drawing", "platen-shaft.dxf", (demo / "platen-shaft.dxf").read_bytes())
for file in sorted(pathlib.Path("tests/drawings").glob("sections.*")):
    put("table", file.name, file.read_bytes())
put("table", "all.csv", "length;diameter;tolerance;thread;kind;ra;grip\n20;6;h9;;;1.6;no\n12,5;;;M8x1;;;\n2;5;;;groove;;\n")
sections = re.search(r"  sections: .*\n  features: .*\n", SMALL)[0]
tiny = SMALL.replace(sections, "  sections: [{length: 20, diameter: 8.6}]\n").replace("station_pitch: 16", "station_pitch: 100")
texts = {"job": {"name": "job.yaml", "text": tiny}}
mid = coarse(lean((demo / "metering-spindle.yaml").read_text()))
pair = {
    "job": {"name": "job.yaml", "text": mid},
    "machine": {"name": machine_of(demo, mid)[0][1], "text": machine_of(demo, mid)[1]},
}
edits = [
    {"edit": "set", "way": ["stock", "diameter"], "value": "10"},
    {"edit": "insert", "way": ["shaft", "sections"], "index": 1, "item": "{length: 3, diameter: 7}"},
    {"edit": "remove", "way": ["shaft", "features"], "index": 0},
    {"edit": "swap", "way": ["shaft", "sections"], "index": 0, "with": 2},
]
for name, path, body in [
    ("plan", "/plan", texts),
    ("pair", "/at", {"texts": pair, "turned_mm": 40}),
    ("changes", "/changes", texts),
    ("sheet", "/export/sheet", texts),
    ("xlsx", "/export/xlsx", texts),
    ("edit", "/edit", {"text": {"name": "job.yaml", "text": SMALL}, "edits": edits}),
    ("at", "/at", {"texts": texts, "turned_mm": 18, "grip_mm": 12, "rpm": 900}),
    ("prove", "/prove", {"texts": texts, "what": "grip", "number": 2, "to_mm": 12}),
    ("regrip", "/prove", {"texts": texts, "what": "regrip", "number": 0, "to_mm": 12}),
]:
    put("page", name, f"{path}\n{json.dumps(body)}")
