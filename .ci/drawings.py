"""Drawings of known shafts, written by a general-purpose DXF library (ezdxf), read back by `spanhold draft`.

    python .ci/drawings.py target/debug/spanhold FOLDER [--fixtures tests/drawings]

Each drawing is one known shaft in one of many guises: version R12 to R2018, ASCII or binary; mm, inch or no unit; the upper
half, the lower half or both; lines, polylines or blocks with a scale; turned, mirrored; gaps of 0.01 mm; chamfers and radii;
with or without a centre line; frame, title block, hatch, other views and dimensions around it. The job that comes back must
have the very sections of the shaft, with the tolerances and threads that the dimensions name. Whatever else stands in the
drawing must be named in the notes. `--fixtures` writes a few of them, with what must come back, for the Rust tests.

The other way round, the library reads the drawings that the program makes of plans (`plan.dxf`).
"""

import csv
import json
import math
import random
import re
import subprocess
import sys
from pathlib import Path

import ezdxf
import openpyxl
from ezdxf import units as u
from ezdxf.enums import TextEntityAlignment  # noqa: F401  (the library's own check that it is whole)

VERSIONS = ["R12", "R2000", "R2004", "R2007", "R2010", "R2013", "R2018"]
SEED = 20240607

# length, front diameter, rear diameter, then what the drawing says of it: tolerance or thread.
SHAFTS = {
    "platen": [
        (22, 8, 8, "h6"), (1.5, 7.6, 7.6, None), (18, 10, 10, "M10x1"), (260, 16, 16, "h9"), (30, 16, 12, None), (45, 12, 12, "k6"),
    ],
    "spindle": [(30.5, 12, 12, "h6"), (2.25, 11.4, 11.4, None), (412.75, 20, 20, "h11"), (60, 14, 14, "[-0.05, 0]")],
    "taper": [(40, 9.5, 9.5, None), (55, 9.5, 15, None), (120, 18, 18, "h8"), (25, 15, 15, "M15x1")],
    "plain": [(180, 14, 14, "h9")],
    "stepped": [(10, 6, 6, "h7"), (20, 8, 8, None), (30, 10, 10, None), (40, 13, 13, "f7"), (30, 11, 11, None), (20, 7, 7, "g6")],
    "two_grooves": [(25, 12, 12, None), (2, 11, 11, None), (90, 15, 15, "h10"), (3, 13, 13, None), (35, 15.5, 15.5, None)],
}


def outline(shaft, chamfer, fillet):
    """Vertices (z, r, bulge to the next) of the upper half from the axis at the front to the axis at the rear."""
    points, z = [(0.0, 0.0, 0.0)], 0.0
    last = len(shaft) - 1
    for i, (length, d0, d1, _) in enumerate(shaft):
        r0, r1 = d0 / 2, d1 / 2
        before = shaft[i - 1][2] / 2 if i else 0.0
        after = shaft[i + 1][1] / 2 if i < last else 0.0
        plain = d0 == d1 and length > 8
        # A chamfer where the section stands above what is in front of it or behind, a radius where it lies below.
        c0 = chamfer if plain and before < r0 - 1.2 * chamfer else 0.0
        c1 = chamfer if plain and after < r1 - 1.2 * chamfer else 0.0
        f0 = fillet if plain and i and before > r0 + 1.2 * fillet else 0.0
        f1 = fillet if plain and i < last and after > r1 + 1.2 * fillet else 0.0
        quarter = math.tan(math.pi / 8)
        if c0:
            points += [(z, r0 - c0, 0.0), (z + c0, r0, 0.0)]
        elif f0:
            points += [(z, r0 + f0, quarter), (z + f0, r0, 0.0)]
        else:
            points += [(z, r0, 0.0)]
        z += length
        if c1:
            points += [(z - c1, r1, 0.0), (z, r1 - c1, 0.0)]
        elif f1:
            points += [(z - f1, r1, quarter), (z, r1 + f1, 0.0)]
        else:
            points += [(z, r1, 0.0)]
    points.append((z, 0.0, 0.0))
    tidy = [points[0]]
    for p in points[1:]:
        if math.dist(p[:2], tidy[-1][:2]) > 1e-9:
            tidy.append(p)
        else:
            tidy[-1] = p
    return tidy


def pull_in(a, b, gap):
    """The ends of a line, each drawn back by half a gap."""
    length = math.dist(a, b)
    share = gap / 2 / length if length > 4 * gap else 0.0
    return (
        (a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])),
        (b[0] + share * (a[0] - b[0]), b[1] + share * (a[1] - b[1])),
    )


def arc_of(a, b, bulge):
    """Centre, radius, start and end angle (degrees, anticlockwise) of a bulge."""
    centre, start, end, radius = ezdxf.math.bulge_to_arc(a, b, bulge)
    return (centre.x, centre.y), radius, math.degrees(start), math.degrees(end)


class Sheet:
    """One drawing of one shaft."""

    def __init__(self, shaft, how, rng):
        self.shaft, self.how, self.rng = shaft, how, rng
        self.doc = ezdxf.new(how["version"], setup=True)
        self.unit = {"mm": 1.0, "inch": 25.4, "none": 1.0}[how["unit"]]
        if how["version"] != "R12":
            self.doc.header["$INSUNITS"] = {"mm": u.MM, "inch": u.IN, "none": 0}[how["unit"]]
            self.doc.header["$MEASUREMENT"] = 0 if how["unit"] == "inch" else 1
        self.model = self.doc.modelspace()
        for name, line_type in (("CONTOUR", "CONTINUOUS"), ("MITTELLINIE", "CONTINUOUS"), ("FRAME", "CONTINUOUS"),
                                ("HATCHING", "CONTINUOUS"), ("DIMENSIONS", "CONTINUOUS"), ("AXES_BY_TYPE", "CENTER")):
            self.doc.layers.add(name, linetype=line_type)
        self.origin = (rng.uniform(20, 80), rng.uniform(60, 120))
        self.length = sum(s[0] for s in shaft)
        self.radius = max(max(s[1], s[2]) for s in shaft) / 2

    def place(self, z, r):
        """A point of the shaft on the sheet, in drawing units."""
        x, y = (self.length - z if self.how["mirrored"] else z), r
        angle = math.radians(self.how["angle"])
        x, y = x * math.cos(angle) - y * math.sin(angle), x * math.sin(angle) + y * math.cos(angle)
        at = self.how["drawn_at"] / self.unit
        return ((x + self.origin[0]) * at, (y + self.origin[1]) * at)

    def turned(self):
        """Whether an anticlockwise arc of the shaft is clockwise on the sheet."""
        return self.how["mirrored"]

    def draw(self):
        how = self.how
        sides = {"upper": [1], "lower": [-1], "both": [1, -1]}[how["half"]]
        target, place, attribs = self.model, self.place, {"layer": "CONTOUR"}
        if how["block"]:
            # In the block everything is drawn at 1/scale, from a base point of its own; the insert puts it right.
            scale, base = how["block"] / how["drawn_at"], (3.0, -2.0)
            target = self.doc.blocks.new("SHAFT", base_point=base)

            def place(z, r):  # noqa: F811
                return ((z / scale) / self.unit + base[0], (r / scale) / self.unit + base[1])

            attribs = {"layer": "0"}
        flipped = self.turned() and not how["block"]
        for side in sides:
            points = [(place(z, side * r), bulge * side * (-1 if flipped else 1)) for z, r, bulge in
                      outline(self.shaft, how["chamfer"], how["fillet"])]
            self.contour(target, points, attribs)
        if how["half"] == "both" or how["closed"]:
            # The edges one sees at every shoulder, and the axis as the last side of a half contour.
            z = 0.0
            for i, (length, *_rest) in enumerate(self.shaft[:-1]):
                z += length
                inner = min(self.shaft[i][2], self.shaft[i + 1][1]) / 2
                low = -inner if how["half"] == "both" else 0.0
                top = inner if how["half"] != "lower" else 0.0
                low = -inner if how["half"] == "lower" else low
                target.add_line(place(z, low), place(z, top), dxfattribs=attribs)
        if how["closed"] and how["half"] != "both":
            target.add_line(place(0, 0), place(self.length, 0), dxfattribs=attribs)
        if how["block"]:
            insert = self.model.add_blockref("SHAFT", self.place(0, 0), dxfattribs={
                "layer": "CONTOUR", "rotation": how["angle"] + (180 if how["mirrored"] else 0),
                "xscale": how["block"], "yscale": how["block"] * (-1 if how["mirrored"] else 1)})
            # A mirror along the axis is a half turn and a mirror across it.
            assert insert.dxf.name == "SHAFT"
        if how["centre"]:
            a, b = self.place(-5, 0), self.place(self.length + 5, 0)
            attributes = {"layer": {"layer": "MITTELLINIE", "type": "CONTOUR", "by_layer": "AXES_BY_TYPE"}[how["centre"]]}
            if how["centre"] == "type":
                attributes["linetype"] = "CENTER"
            self.model.add_line(a, b, dxfattribs=attributes)
        if how["noise"]:
            self.noise()
        if how["texts"]:
            self.texts()

    def contour(self, target, points, attribs):
        how = self.how
        if how["drawn"] == "polyline" and not how["gap"]:
            vertices = [(x, y, bulge) for (x, y), bulge in points]
            if how["version"] == "R12":
                target.add_polyline2d(vertices, format="xyb", dxfattribs=attribs)
            else:
                target.add_lwpolyline(vertices, format="xyb", dxfattribs=attribs)
            return
        order = list(zip(points, points[1:]))
        self.rng.shuffle(order)
        for ((a, bulge), (b, _)) in order:
            if bulge:
                centre, radius, start, end = arc_of(a, b, bulge)
                target.add_arc(centre, radius, start, end, dxfattribs=attribs)
            else:
                a, b = pull_in(a, b, how["gap"] / self.unit)
                if self.rng.random() < 0.5:
                    a, b = b, a
                target.add_line(a, b, dxfattribs=attribs)

    def noise(self):
        s = 1 / self.unit
        reach = self.length + self.radius + 60
        box = [(-reach * s, -reach * s), ((reach + 200) * s, -reach * s), ((reach + 200) * s, (reach + 260) * s), (-reach * s, (reach + 260) * s)]
        for a, b in zip(box, box[1:] + box[:1]):
            self.model.add_line(a, b, dxfattribs={"layer": "0"})
        # A title block on the layer of the contour, and words in it.
        x, y = (reach + 60) * s, -reach * s
        for i in range(5):
            self.model.add_line((x, y + i * 8 * s), (x + 130 * s, y + i * 8 * s), dxfattribs={"layer": "CONTOUR"})
        for i in (0, 40, 130):
            self.model.add_line((x + i * s, y), (x + i * s, y + 32 * s), dxfattribs={"layer": "CONTOUR"})
        self.model.add_text("invented works", dxfattribs={"layer": "FRAME", "insert": (x, y + 2 * s), "height": 3 * s})
        self.model.add_text("Material: X5CrNi18-10", dxfattribs={"layer": "FRAME", "insert": (x, y + 10 * s), "height": 3 * s})
        # Another view beside the shaft: a circle and its cross.
        at = self.place(self.length / 2, self.radius * 3 + 20)
        self.model.add_circle(at, self.radius * s, dxfattribs={"layer": "CONTOUR"})
        self.model.add_line((at[0] - self.radius * 1.2 * s, at[1]), (at[0] + self.radius * 1.2 * s, at[1]), dxfattribs={"layer": "MITTELLINIE"})
        self.model.add_ellipse(at, (2 * s, 0), 0.5, dxfattribs={"layer": "FRAME"}) if self.how["version"] != "R12" else None
        if self.how["version"] != "R12":
            hatch = self.model.add_hatch(dxfattribs={"layer": "HATCHING"})
            hatch.paths.add_polyline_path([self.place(2, 1), self.place(6, 1), self.place(6, 3), self.place(2, 3)], is_closed=True)

    def lengths(self):
        """Two lengths with numbers of their own: what tells the scale of a drawing that is not at 1:1."""
        z = 0.0
        for length, *_rest in self.shaft:
            if length > 15:
                self.model.add_linear_dim(
                    base=self.place(z, -self.radius - 15), p1=self.place(z, 0), p2=self.place(z + length, 0),
                    angle=self.how["angle"], text=str(length), dxfattribs={"layer": "DIMENSIONS"}).render()
            z += length

    def texts(self):
        if self.how["drawn_at"] != 1:
            self.lengths()
        z = 0.0
        sides = (1, -1) if self.how["half"] != "lower" else (-1, 1)
        for length, d0, d1, said in self.shaft:
            if said and d0 == d1:
                at = z + 0.4 * length
                shown = "<>" if self.how["drawn_at"] == 1 else str(d0)
                text = said if said.startswith("M") else f"%%c{shown} " + ("0/-0.05" if said.startswith("[") else said)
                a, b = self.place(at, -d0 / 2), self.place(at, d0 / 2)
                if self.how["texts"] == "dimension":
                    dimension = self.model.add_linear_dim(
                        base=self.place(at, 0), p1=a, p2=b, angle=self.how["angle"] + 90, text=text,
                        dxfattribs={"layer": "DIMENSIONS"})
                    dimension.render()
                else:
                    words = text.replace("<>", str(d0))
                    if self.how["texts"] == "mtext" and self.how["version"] != "R12":
                        # From R2007 on a sign of its own, not a code: UTF-8 in the file.
                        sign = "Ø" if self.how["version"] >= "R2007" else "%%c"
                        self.model.add_mtext("{\\H2.5;" + words.replace("%%c", sign) + "}", dxfattribs={
                            "layer": "DIMENSIONS", "insert": self.place(at, sides[0] * (d0 / 2 + 2))})
                    else:
                        self.model.add_text(words, dxfattribs={"layer": "DIMENSIONS", "insert": self.place(at, sides[0] * (d0 / 2 + 2)), "height": 2.5})
            z += length


def expected(sheet):
    """The sections the job must have, front first."""
    shaft, how = sheet.shaft, sheet.how
    rows = []
    for length, d0, d1, said in shaft:
        row = {"length": length}
        if d0 != d1:
            row["taper"] = [d0, d1]
        elif said and said.startswith("M") and how["texts"]:
            row["thread"] = said
        else:
            row["diameter"] = d0
        if said and not said.startswith("M") and how["texts"]:
            row["tolerance"] = said
        rows.append(row)
    for i in range(1, len(rows) - 1):
        deep = rows[i].get("diameter")
        if deep and rows[i]["length"] <= 6 and shaft[i - 1][2] > deep and shaft[i + 1][1] > deep:
            rows[i]["kind"] = "groove"
    front_is_left = not how["mirrored"]
    if how["angle"] % 360 in (180, 270):
        front_is_left = not front_is_left
    if front_is_left == how["flip"]:
        rows.reverse()
        for row in rows:
            if "taper" in row:
                row["taper"].reverse()
    return rows


def value(text):
    text = text.strip()
    if text.startswith("["):
        return [float(part) for part in text[1:-1].split(",")]
    try:
        return float(text)
    except ValueError:
        return text


def sections(job):
    rows = []
    for line in job.splitlines():
        found = re.match(r"    - \{(length: .*?)\}", line)
        if found:
            pairs = re.findall(r"(\w+): (\[[^\]]*\]|[^,\[\]]+)", found.group(1))
            rows.append({key: value(text) for key, text in pairs})
    return rows


def same(row, other):
    if row.keys() != other.keys():
        return False
    for key, want in row.items():
        got = other[key]
        if isinstance(want, str) and want.startswith("["):
            want = value(want)
        if isinstance(want, (int, float)) and isinstance(got, float):
            if abs(want - got) > 1e-6:
                return False
        elif isinstance(want, list):
            if any(abs(a - b) > 1e-6 for a, b in zip(want, got)):
                return False
        elif want != got:
            return False
    return True


def guises(rng):
    """Every version in both forms, and the other choices at random, so that each meets each in the end."""
    for round_ in range(6):
        for version in VERSIONS:
            for binary in (False, True):
                how = {
                    "version": version, "binary": binary,
                    "unit": rng.choice(["mm", "mm", "inch", "none"]) if version != "R12" else rng.choice(["none", "inch"]),
                    "half": rng.choice(["upper", "lower", "both", "both"]),
                    "drawn": rng.choice(["lines", "polyline"]),
                    "block": rng.choice([0, 0, 0.5, 2.0]),
                    "angle": rng.choice([0, 0, 90, 270, 180]),
                    "mirrored": rng.random() < 0.3,
                    "gap": rng.choice([0, 0, 0.01]),
                    "chamfer": rng.choice([0, 0.5, 1.0]),
                    "fillet": rng.choice([0, 0.4]),
                    "centre": rng.choice(["layer", "type", "by_layer", None]),
                    "closed": rng.random() < 0.5,
                    "noise": rng.random() < 0.6,
                    "texts": rng.choice(["dimension", "text", "mtext", None]),
                    "flip": rng.random() < 0.3,
                    "shaft": rng.choice(sorted(SHAFTS)),
                    "drawn_at": 1,
                }
                # Inches in an R12 file are the call's to name, so its scale is too.
                if how["texts"] and how["unit"] != "inch" and how["shaft"] != "plain" and not how["gap"]:
                    how["drawn_at"] = rng.choice([1, 0.5, 2])
                if how["half"] != "both" and how["centre"] is None:
                    # Half a plain cylinder without an axis is a whole thinner one to any eye.
                    if how["shaft"] == "plain":
                        how["shaft"] = "stepped"
                    # Noise on the contour's own layer leaves no telling which open lines are the shaft.
                    how["closed"] = True
                if how["shaft"] == "plain" and how["half"] == "both":
                    how["centre"] = how["centre"] or "layer"
                yield how


def write(path, how, seed):
    sheet = Sheet(SHAFTS[how["shaft"]], how, random.Random(seed))
    sheet.draw()
    sheet.doc.saveas(path, fmt="bin" if how["binary"] else "asc")
    return sheet


def call(program, path, how):
    args = [program, "draft", str(path)]
    if how["flip"]:
        args.append("--flip")
    if how["unit"] == "inch" and how["version"] == "R12":
        args += ["--units", "inch"]
    return subprocess.run(args, capture_output=True, text=True, check=False)


def check(program, path, how, seed):
    sheet = write(path, how, seed)
    done = call(program, path, how)
    if done.returncode != 0:
        return f"status {done.returncode}: {done.stderr.strip()}"
    want, got = expected(sheet), sections(done.stdout)
    if len(want) != len(got) or not all(same(a, b) for a, b in zip(want, got)):
        return f"wanted {want}\n    got    {got}\n{done.stderr}"
    told = done.stderr
    missing = []
    if how["noise"]:
        for word in ("CIRCLE", "LINE on layer `0`", "invented works"):
            if word not in told:
                missing.append(word)
        if how["version"] != "R12":
            missing += [word for word in ("HATCH", "ELLIPSE") if word not in told]
        if "material: X5CrNi18-10" not in done.stdout:
            missing.append("the material")
    if how["chamfer"] and "chamfer" not in done.stdout:
        missing.append("chamfer")
    return f"nothing is said of {missing}\n{told}" if missing else None


FIXTURES = {
    "r12-half-gaps": dict(version="R12", binary=False, unit="none", half="upper", drawn="lines", block=0, angle=0, mirrored=False,
                          gap=0.01, chamfer=1.0, fillet=0.4, centre="layer", closed=False, noise=False, texts="text", flip=False, drawn_at=1, shaft="platen"),
    "r12-binary-both": dict(version="R12", binary=True, unit="none", half="both", drawn="polyline", block=0, angle=0, mirrored=False,
                            gap=0, chamfer=0, fillet=0, centre=None, closed=False, noise=False, texts=None, flip=False, drawn_at=1, shaft="stepped"),
    "r2000-inch-upright": dict(version="R2000", binary=False, unit="inch", half="both", drawn="lines", block=0, angle=90, mirrored=False,
                               gap=0, chamfer=0.5, fillet=0, centre="type", closed=False, noise=False, texts="dimension", flip=False, drawn_at=1, shaft="spindle"),
    "r2007-binary-block": dict(version="R2007", binary=True, unit="mm", half="both", drawn="polyline", block=2.0, angle=0, mirrored=True,
                               gap=0, chamfer=0, fillet=0.4, centre="by_layer", closed=False, noise=False, texts="mtext", flip=True, drawn_at=1, shaft="taper"),
    "r2018-noise": dict(version="R2018", binary=False, unit="mm", half="lower", drawn="lines", block=0, angle=0, mirrored=False,
                        gap=0.01, chamfer=0.5, fillet=0.4, centre="layer", closed=True, noise=True, texts="mtext", flip=False, drawn_at=1, shaft="two_grooves"),
}


def fixtures(folder):
    folder.mkdir(parents=True, exist_ok=True)
    listed = {}
    for name, how in FIXTURES.items():
        sheet = write(folder / f"{name}.dxf", how, SEED)
        listed[name] = {"args": (["--flip"] if how["flip"] else []), "sections": expected(sheet)}
    workbook(folder / "sections.xlsx")
    (folder / "expected.json").write_text(json.dumps(listed, indent=1) + "\n")


def workbook(path):
    """The list of sections that `tests/drawings/sections.csv` has too, as a workbook, written by openpyxl."""
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "shaft"
    for row in csv.reader((path.parent / "sections.csv").open(encoding="utf-8"), delimiter=";"):
        # A spreadsheet has numbers, not the texts of a CSV file.
        sheet.append([float(cell.replace(",", ".")) if re.fullmatch(r"[0-9.,]+", cell) else cell or None for cell in row])
    book.create_sheet("notes").append(["invented"])
    book.save(path)


def drawn(program, job, folder):
    """What is wrong with the drawing of a job's plan; None: nothing."""
    subprocess.run([program, "plan", str(job), "--out", str(folder)], check=False, capture_output=True)
    plan = json.loads((folder / "plan.json").read_text(encoding="utf-8"))
    doc = ezdxf.readfile(folder / "plan.dxf")
    if doc.audit().errors:
        return f"errors: {[e.message for e in doc.audit().errors][:3]}"
    (contour,) = doc.modelspace().query('POLYLINE[layer=="CONTOUR"]')
    points = [(v.dxf.location.x, v.dxf.location.y) for v in contour.vertices]
    sections = plan["shaft"]["sections"]
    upper = [p for s in sections for p in [(s["from_mm"], s["front_diameter_mm"] / 2), (s["to_mm"], s["rear_diameter_mm"] / 2)]]
    for x, y in upper:
        for r in (y, -y):
            if min(math.hypot(x - a, r - b) for a, b in points) > 1e-6:
                return f"({x}, {r}) is no corner of the contour"
    if len(points) > 2 * len(upper) or not contour.is_closed:
        return f"{len(points)} corners for {len(sections)} sections"
    texts = [t.plain_text() for t in doc.modelspace().query("TEXT")]
    for at in plan["hand_overs_mm"]:
        if not any(t.startswith("H") and t.split()[-1] == f"{at:.2f}".rstrip("0").rstrip(".") for t in texts):
            return f"no text for the hand-over at {at}: {texts}"
    grips = doc.modelspace().query('POLYLINE[layer=="GRIPS"]')
    if len(grips) != 2 * sum(s["grip"] is not None for s in plan["stages"]):
        return f"{len(grips)} jaws"
    return None


def main():
    program, folder = sys.argv[1], Path(sys.argv[2])
    if "--fixtures" in sys.argv:
        fixtures(Path(sys.argv[sys.argv.index("--fixtures") + 1]))
        return
    folder.mkdir(parents=True, exist_ok=True)
    rng, failed, count = random.Random(SEED), 0, 0
    for count, how in enumerate(guises(rng), 1):
        path = folder / f"{count:03}.dxf"
        fault = check(program, path, how, SEED + count)
        if fault:
            failed += 1
            print(f"{path}: {how}\n    {fault}")
    print(f"{count - failed} of {count} drawings came back as their shafts")
    plans = sorted(Path("demo").glob("*.yaml"))
    for job in plans:
        fault = drawn(program, job, folder / job.stem)
        if fault:
            failed += 1
            print(f"{job}: {fault}")
    print(f"{len(plans)} drawings of plans read")
    if failed or count < 80 or len(plans) < 5:
        sys.exit(1)


main()
