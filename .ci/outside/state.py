"""The machine at one moment: supports, beam, and every check of a state."""

import math

import numpy as np
from scipy.linalg import cho_solve
from beam import Beam
from cutting import finish_feed, forces, net_radial, tandem, top_rpm, travels
from job import SAME

# A taper is a row of equal slices over which the diameter changes by at most this share each, by the model.
SLICE = 0.05


def pieces(job, t, end):
    """(from, to, diameter): finished in front of the tool, bar behind it."""
    out = []
    for s in job["sections"]:
        if s["from"] >= t - 1e-9:
            break
        to, (front, rear) = min(s["to"], t), s["beam"]
        if front == rear:
            out.append((s["from"], to, front))
            continue
        count = math.ceil(abs(math.log(rear / front)) / math.log(1 + SLICE) - 1e-9)
        edges = np.linspace(s["from"], s["to"], max(count, 1) + 1)
        for i, (a, b) in enumerate(zip(edges, edges[1:])):
            if a < to - 1e-9:
                out.append((a, min(b, to), front + (rear - front) * (i + 0.5) / (len(edges) - 1)))
    start = out[-1][1] if out else 0.0
    return out + [(start, end, job["stock"])]


class State:
    """Turned length `t`, collet and nose of the counter-spindle (`None`: free), place of the headstock's nose on the
    bar. `open_nose`: the collet is open there, its sleeves stay."""

    # Nodes of a span between supports, of the front inside the counter-spindle, and elements of the whole bar at least.
    span, inside, elements = 60, 30, 70

    def __init__(self, job, t, collet, nose, head, open_nose=None):
        self.job, self.t, self.nose, self.collet, self.head = job, t, nose, collet, head
        machine = job["machine"]
        spindle, headstock = machine.get("counter_spindle"), machine["headstock"]
        springs = [(head, headstock["stiffness"] * 500), (head + headstock["hold"], headstock["stiffness"] * 500)]
        if job["bush"]:
            bush = machine["bush"]
            self.face = t + bush["gap"]
            springs += [(self.face, bush["stiffness"] * 500), (self.face + bush["land"], bush["stiffness"] * 500)]
        else:
            self.face = head
        # A centre holds the front until the shaft is turned.
        self.centred = nose is None and open_nose is None and job["centre"] and t <= job["length"] + SAME
        if self.centred:
            springs.append((0.0, spindle["centre"]["stiffness"] * 1000))
        held = nose if open_nose is None else open_nose
        self.front = nose - collet["hold"] if nose is not None else 0.0
        if nose is not None:
            springs += [(nose, spindle["stiffness"] * 500), (self.front, spindle["stiffness"] * 500)]
        if held is not None and spindle.get("sleeve"):
            place = held - collet["hold"] - spindle["sleeve"]["pitch"]
            while place >= -1e-9:
                springs.append((max(place, 0.0), spindle["sleeve"]["stiffness"] * 1000))
                place -= spindle["sleeve"]["pitch"]
        self.low = nose if nose is not None else 0.0
        # The finishing tool of a tandem stands behind, but not in front of the bar or of the nose.
        low = held if held is not None else 0.0
        self.behind = max(t - job["tandem"]["lag"], min(low, t)) if job["tandem"] and job["bush"] else t
        places = [t, self.behind, self.low] + list(np.linspace(self.low, self.face, self.span + 1))
        if nose is not None:
            places += list(np.linspace(0, self.front, self.inside + 1))
        if open_nose is not None:
            places.append(open_nose)
        self.springs, self.places, self.end = springs, places, head + headstock["hold"]
        self.longest = max(self.end / self.elements, 1e-3)
        # The sections that a stage turns here; without a stage all that are in cut.
        self.turns = None
        self._beam = None

    def at_too(self, place):
        self.places.append(place)
        return self

    @property
    def beam(self):
        if self._beam is None:
            self._beam = Beam(pieces(self.job, self.t, self.end), self.springs, self.places, self.job["material"],
                              self.longest)
        return self._beam

    @property
    def unsupported(self):
        return self.face - self.low

    def at_place(self, check, place, every):
        """The demand of a check that is the worst over places, at this place: on a beam with a node there."""
        beam = State(self.job, self.t, self.collet, self.nose, self.head).at_too(place).beam
        node = beam.node(place)
        if check in ("stiffness", "span_stiffness"):
            return 1 / beam.flexibility(node)[0] / 1000
        sag = abs(beam.sag()[node])
        if check == "sag":
            return sag
        largest = np.max(np.abs(self.beam.sag()[self.beam.within(0, self.nose)]))
        return sag * every["bore"][0] / largest

    def critical_rpm(self):
        return 60 * self.beam.omegas(1)[0] / (2 * math.pi)

    def bow(self):
        x = self.unsupported / 1000
        return self.job["bow"] * x**2 * (1 if self.spanned else 4)

    @property
    def spanned(self):
        """Whether something holds the front."""
        return self.nose is not None or self.centred

    def checks(self, rpm, critical=None):
        """Demand and limit of every check that asks for no cut."""
        job, limits, beam = self.job, self.job["limits"], self.beam
        critical = critical or self.critical_rpm()
        ratio = rpm / critical
        grown = 1 / (1 - ratio**2) if ratio < 1 else math.inf
        sag = np.abs(beam.sag())
        out = {
            "stiffness": (1 / max(beam.flexibility([beam.node(p) for p in self.cut_places()])) / 1000, limits["stiffness"]),
            "whirl": (ratio, limits["whirl"]),
            "whip": (self.bow() * grown, limits["whip"]),
        }
        if self.spanned:
            out["sag"] = (np.max(sag[beam.within(self.low, self.face)]), limits["sag"])
            softest = 1 / np.max(beam.flexibility(beam.within(self.low, self.face))) / 1000
            if not job["pair"] and (softest >= limits["span"] or not self.runs_free()):
                out["span_stiffness"] = (softest, limits["span"])
        if self.nose is not None:
            widest = max(s["largest"] for s in job["sections"] if s["from"] < self.nose - SAME)
            room = (job["machine"]["counter_spindle"]["bore"] - widest) / 2 - limits["clearance"]
            out["bore"] = (np.max(sag[beam.within(0, self.nose)]) * grown, room)
        return out

    def sections(self):
        """The sections in cut: two at a border."""
        return [s for s in self.job["sections"] if s["from"] - SAME <= self.t <= s["to"] + SAME]

    def cut_places(self):
        """Places of the tools in cut."""
        both = any(tandem(self.job, s) for s in (self.sections() if self.turns is None else self.turns))
        return [self.t, self.behind] if both else [self.t]

    def runs_free(self):
        """Whether the front could run free at the lowest speed that the job allows."""
        job = self.job
        before = [s["turned"] + 2 * sum(c[-1]) if s["kind"] in ("plain", "taper", "flats") and (c := travels(job, s))
                  else job["stock"] for s in self.sections()] or [job["stock"]]
        slowest = min(top_rpm(job, d, None) for d in before) * job["floor"]
        free = State(job | {"centre": False}, self.t, self.collet, None, self.head).checks(slowest)
        return all(share(c, *free[c]) <= 1 + 1e-3 for c in ("whirl", "whip"))

    def pick_up(self):
        """How far a free front is off the axis."""
        return abs(self.beam.sag()[self.beam.node(0.0)]) + self.bow()

    def chatter(self, section, least_real=None):
        """Utilisation of the tool nearest its limit: exact, and by the bound that holds the static flexibility to be
        all in one mode."""
        damping = self.job["limits"]["damping"]
        both, places = tandem(self.job, section), [self.t, self.behind]
        exact = [least_real or self.beam.least_real(self.t, damping)]
        exact.append(self.beam.least_real(self.behind, damping) if both else exact[0])
        bound = [self.beam.flexibility(self.beam.node(p))[0] / (4 * damping * (1 + damping)) for p in places]
        worst = (0.0, 0.0, 0.0)
        for turn, depths in enumerate(cuts := travels(self.job, section)):
            last = turn == len(cuts) - 1
            feed = finish_feed(self.job, section) if last else 0.15 if self.job["feed"] is None else self.job["feed"]
            for turn, (ap, f) in enumerate(zip(depths, forces(self.job, depths, feed))):
                if ap <= 1e-9:
                    continue
                at = turn if both else 0
                worst = max(worst, (2 * f["slope"] * exact[at], 2 * f["slope"] * bound[at], ap))
        return worst

    def tool_deflection(self, section):
        """mm at the tool under the net radial force of the finishing travel."""
        cuts = travels(self.job, section)
        if not cuts:
            return 0.0
        if tandem(self.job, section):
            rough, finish = (f["passive"] for f in forces(self.job, cuts[-1], finish_feed(self.job, section)))
            load = np.zeros(len(self.beam.k))
            load[2 * self.beam.node(self.behind)] = finish
            load[2 * self.beam.node(self.t)] += rough if self.job["tandem"]["same"] else -rough
            return cho_solve(self.beam.factor, load)[2 * self.beam.node(self.behind)]
        newtons = net_radial(self.job, cuts[-1], finish_feed(self.job, section))
        return newtons * self.beam.flexibility(self.beam.node(self.t))[0]


def share(check, demand, limit):
    if check in ("stiffness", "span_stiffness"):
        return limit / demand
    return demand / limit if limit > 0 else (math.inf if demand > 0 or limit <= 0 else 0.0)
