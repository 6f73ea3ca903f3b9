"""A stepped round bar on springs as Timoshenko elements: deflections, frequencies, the receptance at a place.

Written apart from the Rust code: shape functions that are exact for loads at nodes, mass integrated by Gauss points,
dense matrices. Units: mm, N, t, s. Deflection positive downwards.
"""

import numpy as np
from scipy.linalg import cho_factor, cho_solve, eigh

GRAVITY = 9810.0
# Four Gauss points integrate a polynomial of degree seven exactly; the mass needs six.
POINTS, WEIGHTS = np.polynomial.legendre.leggauss(4)


def element(length, diameter, material):
    """Stiffness, mass and the load of its own weight of one element; unknowns: deflection and slope at both ends."""
    area, inertia = np.pi * diameter**2 / 4, np.pi * diameter**4 / 64
    nu = material["poisson"]
    shear = 6 * (1 + nu) / (7 + 6 * nu) * area * material["e"] / (2 * (1 + nu))
    bend = material["e"] * inertia
    phi = 12 * bend / (shear * length**2)
    l2 = length**2
    stiffness = bend / ((1 + phi) * length**3) * np.array([
        [12, 6 * length, -12, 6 * length],
        [6 * length, (4 + phi) * l2, -6 * length, (2 - phi) * l2],
        [-12, -6 * length, 12, -6 * length],
        [6 * length, (2 - phi) * l2, -6 * length, (4 + phi) * l2],
    ])
    mass, weight = np.zeros((4, 4)), np.zeros(4)
    for point, share in zip(POINTS, WEIGHTS):
        x = (1 + point) / 2
        down = np.array([
            1 - 3 * x**2 + 2 * x**3 + phi * (1 - x),
            length * (x - 2 * x**2 + x**3 + phi * (x - x**2) / 2),
            3 * x**2 - 2 * x**3 + phi * x,
            length * (-(x**2) + x**3 - phi * (x - x**2) / 2),
        ]) / (1 + phi)
        turn = np.array([
            6 * (x**2 - x) / length,
            1 - 4 * x + 3 * x**2 + phi * (1 - x),
            6 * (x - x**2) / length,
            3 * x**2 - 2 * x + phi * x,
        ]) / (1 + phi)
        part = share / 2 * length * material["rho"]
        mass += part * (area * np.outer(down, down) + inertia * np.outer(turn, turn))
        weight += part * area * GRAVITY * down
    return stiffness, mass, weight


class Beam:
    """`pieces`: (from, to, diameter); `springs`: (place, N/mm); `places`: where a node must be."""

    def __init__(self, pieces, springs, places, material, longest):
        end = pieces[-1][1]
        fixed = sorted({round(x, 9) for x in [p for piece in pieces for p in piece[:2]]
                        + [s[0] for s in springs] + list(places) if -1e-9 <= x <= end + 1e-9})
        nodes = [fixed[0]]
        for here in fixed[1:]:
            if here - nodes[-1] < 1e-7:
                continue
            step = nodes[-1], int(np.ceil((here - nodes[-1]) / longest - 1e-9)) or 1
            nodes += [step[0] + (here - step[0]) * i / step[1] for i in range(1, step[1] + 1)]
        self.x = np.array(nodes)
        size = 2 * len(nodes)
        self.k, self.m, self.load = np.zeros((size, size)), np.zeros((size, size)), np.zeros(size)
        edges = np.array([p[1] for p in pieces])
        kept = {}
        for i in range(len(nodes) - 1):
            length = nodes[i + 1] - nodes[i]
            which = min(int(np.searchsorted(edges, (nodes[i] + nodes[i + 1]) / 2)), len(pieces) - 1)
            key = (round(length, 9), pieces[which][2])
            if key not in kept:
                kept[key] = element(length, pieces[which][2], material)
            stiffness, mass, weight = kept[key]
            at = slice(2 * i, 2 * i + 4)
            self.k[at, at] += stiffness
            self.m[at, at] += mass
            self.load[at] += weight
        for place, rate in springs:
            i = 2 * self.node(place)
            self.k[i, i] += rate
        self.factor = cho_factor(self.k)

    def node(self, place):
        return int(np.argmin(np.abs(self.x - place)))

    def within(self, low, high):
        return np.flatnonzero((self.x >= low - 1e-6) & (self.x <= high + 1e-6))

    def sag(self):
        return cho_solve(self.factor, self.load)[::2]

    def flexibility(self, nodes):
        """mm/N at each of the nodes under a force at that same node."""
        nodes = np.atleast_1d(nodes)
        force = np.zeros((len(self.k), len(nodes)))
        force[2 * nodes, np.arange(len(nodes))] = 1.0
        return cho_solve(self.factor, force)[2 * nodes, np.arange(len(nodes))]

    def omegas(self, count):
        return np.sqrt(eigh(self.k, self.m, eigvals_only=True, subset_by_index=[0, count - 1]))

    def least_real(self, place, damping):
        """The most negative real part of the receptance at a place, as a positive number, mm/N: all modes of the
        mesh, each with the same damping ratio, scanned over frequency."""
        squared, shapes = eigh(self.k, self.m)
        weight = shapes[2 * self.node(place)] ** 2
        known = weight > 1e-9 * np.max(weight)
        omega, weight = np.sqrt(squared[known]), weight[known]

        def real(w):
            d = omega[:, None] ** 2 - w**2
            return np.sum(weight[:, None] * d / (d**2 + (2 * damping * omega[:, None] * w) ** 2), axis=0)

        # Each mode is worst at w sqrt(1 + 2z); the sum is worst near one of those.
        near = omega * np.sqrt(1 + 2 * damping)
        worst = near[np.argsort(real(near))[:3]]
        grid = (worst[:, None] * np.linspace(1 - 3 * damping, 1 + 3 * damping, 301)).ravel()
        return -np.min(real(grid))
