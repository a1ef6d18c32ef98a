"""Writes verification/cases/closing.json: cases for constants that nothing noticed when they were changed.

    python3 verification/derivations/closing-cases.py

Three sorts: a printed case whose source uses the default, with that default left out; a benchmark that stands in another
case, turned round; and a value worked out here by another route. Nothing here knows the library.
"""

import json
import math
from pathlib import Path

CASES = Path(__file__).parent.parent / "cases"
R = 6.02214076e23 * 1.380649e-23
records = []


def case(id, formula, route, inputs, expect, exact=True, kind="derivation", source=None, **rest):
    record = {"id": id, "formula": formula, "class": kind, "source": source}
    if route is not None:
        record["route"] = route
    record["inputs"] = inputs
    if exact is True:
        exact = [name for name, text in inputs.items() if isinstance(text, str) and any(c.isdigit() for c in text)]
    if exact:
        record["exact"] = exact
    record["expect"] = {name: {"value": text} if isinstance(text, str) else text for name, text in expect.items()}
    record.update(rest)
    records.append(record)


def known(id):
    for file in sorted(CASES.glob("*.json")):
        for record in json.loads(file.read_text()):
            if record["id"] == id:
                return record
    raise KeyError(id)


def without(id, new, leave, note):
    """A case of a source whose value is the default, with that input left out."""
    record = json.loads(json.dumps(known(id)))
    record["id"] = new
    for name in leave:
        del record["inputs"][name]
    if "exact" in record:
        record["exact"] = [name for name in record["exact"] if name not in leave]
    record["note"] = note
    records.append(record)


def bisect(f, low, high):
    below = f(low) < 0
    for _ in range(200):
        middle = (low + high) / 2
        if (f(middle) < 0) == below:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def simpson(f, a, b, n=20000):
    h = (b - a) / n
    return h / 3 * (f(a) + f(b) + sum((4 if i % 2 else 2) * f(a + i * h) for i in range(1, n)))


def text(value, unit="", digits=7):
    """A value with its digits, trailing zeros kept."""
    shown = f"{value:.{digits - 1}e}"
    exponent = int(shown.split("e")[1])
    plain = f"{value:.{max(0, digits - 1 - exponent)}f}" if -4 <= exponent < digits else shown
    return f"{plain} {unit}".strip()


# Printed cases whose source uses what is the default here.

Y = "The source uses Y 0.4, which is the default; it is left out here."
for id in ("WE-22a", "WE-22a-wall", "WE-22a-hoop", "WE-22a-long"):
    without(id, f"{id}-default", ["temperatureCoefficient"], Y)
without("WE-22d", "WE-22d-default", ["allowableFactor"], "The source uses 0.9, which is the default; it is left out here.")
without("CU-21", "CU-21-default", ["step"], "18 degF are 10 K, which is the default; it is left out here.")
FFS = {"key": "open-ffs-implementation", "locator": "worked example of a pipe, Annex 2C"}
TURNED = "The example turned round: the wall that its pressure needs is its wall, to the digits of the pressure. Y is left to its default."
case("WE-22a-outside", "pipe/design-thickness-outside", None,
     {"pressure": "3680.98 psi", "outsideDiameter": "3.5 in", "allowableStress": "20000 psi", "jointFactor": "1"},
     {"result": "0.300000 in"}, exact=["outsideDiameter", "allowableStress", "jointFactor"], kind="library", source=FFS, note=TURNED)
case("WE-22a-inside", "pipe/design-thickness-inside", None,
     {"pressure": "3680.98 psi", "insideDiameter": "2.9 in", "allowableStress": "20000 psi", "jointFactor": "1"},
     {"result": "0.300000 in"}, exact=["insideDiameter", "allowableStress", "jointFactor"], kind="library", source=FFS, note=TURNED)
FOLIAS = {"key": "ffs-validation-record", "locator": "hand calculation of one defect"}
case("WE-15-slot", "pipe/through-wall-slot", None,
     {"outsideDiameter": "30 in", "wallThickness": "0.375 in", "defectLength": "8 in", "flowStress": "62000 psi"},
     {"result": {"value": f"{62000 / 2.112:.0f} psi", "digits": 4}}, kind="library", source=FOLIAS,
     note="The flow stress over the printed bulging factor, 2.112: as many digits as that has.")
case("WE-15-critical-length", "pipe/critical-through-wall-length", None,
     {"outsideDiameter": "30 in", "wallThickness": "0.375 in", "flowStress": "62000 psi",
      "pressure": text(2 * 0.375 * 62000 / (30 * 2.112), "psi")},
     {"result": "8.00 in"}, kind="library", source=FOLIAS,
     note="The printed bulging factor, 2.112, turned round: the pressure at which it is reached gives back the length.")

# Benchmarks of other cases, turned round.

case("C01-turned", "laminate/pressure-sharing-hoop", "the benchmark C01 turned round: its thickness holds its pressure",
     {"laminateThickness": "13.08536 mm", "outsideDiameter": "323.9 mm", "allowableStress": "160 MPa",
      "substrateModulus": "207000 MPa", "hoopModulus": "49000 MPa", "substratePressure": "4.939796 MPa"},
     {"result": "8.00000 MPa"})
case("C28-turned", "laminate/pressure-sharing-live", "the benchmark C28 turned round: its thickness holds its pressure",
     {"laminateThickness": "21.98758 mm", "livePressure": "2 MPa", "outsideDiameter": "323.9 mm", "allowableStress": "160 MPa",
      "remainingWall": "5 mm", "substrateModulus": "207000 MPa", "hoopModulus": "49000 MPa"},
     {"result": "8.00000 MPa"})
case("C03-turned", "laminate/pressure-yielded-hoop", "the benchmark C03 turned round: its thickness holds its pressure",
     {"laminateThickness": "5.479184 mm", "outsideDiameter": "168.3 mm", "pipeStress": "241 MPa", "remainingWall": "3.5 mm",
      "hoopModulus": "49000 MPa", "allowableStrain": "0.0025"},
     {"result": "18.0000 MPa"})
case("C20-turned", "laminate/pressure-long-term", "the benchmark C20 turned round: its thickness holds its pressure",
     {"laminateThickness": "1.635572 mm", "outsideDiameter": "219.1 mm", "longTermStrength": "120 MPa", "performanceFactor": "0.67",
      "yieldStrength": "241 MPa", "remainingWall": "4 mm"},
     {"result": "10.0000 MPa"})
C07 = {"outsideDiameter": "114.3 mm", "hoopModulus": "23800 MPa", "poissonRatio": "0.12"}
case("C07-turned", "laminate/pressure-ignored-hoop", "the benchmark C07 (matrix compliance) turned round",
     {"laminateThickness": "3.274504 mm", **C07, "allowableStrain": "0.0025", "axialForce": "101043.3 N"},
     {"result": "4.00000 MPa"})
case("C07-axial-force", "laminate/force-ignored-axial", "the benchmark C07 (matrix compliance) turned round",
     {"laminateThickness": "8.918685 mm", "pressure": "4 MPa", **C07, "axialModulus": "12000 MPa", "allowableStrain": "0.0025"},
     {"result": "101043.3 N"})
case("C07-axial-pressure", "laminate/pressure-ignored-axial", "the benchmark C07 (matrix compliance) turned round",
     {"laminateThickness": "8.918685 mm", **C07, "axialModulus": "12000 MPa", "allowableStrain": "0.0025", "externalForce": "60000 N"},
     {"result": "4.0000 MPa"})
case("C02-force", "laminate/force-sharing-axial", "the benchmark C02 turned round: its thickness carries its force",
     {"laminateThickness": "13.31880 mm", "outsideDiameter": "323.9 mm", "allowableStress": "160 MPa",
      "wrappedDiameter": "323.9 mm", "substrateModulus": "207000 MPa", "axialModulus": "23400 MPa", "remainingWall": "5 mm"},
     {"result": {"value": "1059177 N", "digits": 6}})
case("C02-pressure", "laminate/pressure-of-end-force", "the benchmark C02 turned round: its force less the outside one",
     {"axialForce": "1059177 N", "outsideDiameter": "323.9 mm", "externalForce": "400000 N"},
     {"result": "8.0000 MPa"})
case("CU-33-turned", "cure/time-at-temperature", "an hour over the shift factor of CU-33 at 0 degC",
     {"time": "1 h", "referenceTemperature": "23 degC", "temperature": "0 degC", "activationEnergy": "55 kJ/mol",
      "minimumTemperature": "-5 degC", "mechanism": "two-part reaction"},
     {"result": {"value": text(1 / 0.152468, "h", 5)}})
for share, time in (("50", "165.324"), ("90", "496.326")):
    case(f"CU-30-turned-{share}", "cure/nth-order-conversion", "the time of CU-30 (quadrature of the rate) turned round",
         {"rateConstant": "0.004009300785 1/s", "order": "0.87", "time": f"{time} s"},
         {"result": f"0.{share}000"})
case("CU-46-turned", "cure/conversion-from-transition", "the glass transition of CU-46 turned round",
     {"uncuredTransition": "-20 degC", "fullTransition": "220 degC", "lambda": "0.5", "transition": "60 degC"},
     {"result": "0.500000"})
case("CU-46-required", "cure/required-cure-temperature", "the glass transition of CU-46, both ways",
     {"uncuredTransition": "-20 degC", "fullTransition": "220 degC", "lambda": "0.5", "targetConversion": "0.5",
      "cureTemperature": "50 degC"},
     {"targetTransition": "60.0000 degC", "requiredTemperature": "50.0000 degC", "attainableConversion": "0.500000"},
     note="The 10 K by which the transition may end above the cure temperature are chosen, and left to their default.")
case("MX-17-turned", "resin/volume-parts", "the mass ratio of MX-17 turned round",
     {"partsA": "100", "partsB": "42.1739", "densityA": "1.15 g/cm3", "densityB": "0.97 g/cm3"},
     {"result": "50.0000"})
case("MX-19-volume-default", "resin/volume-with-waste", "MX-19 (geometry of collar and patch), whose waste is the default, left out",
     {"volume": "508.339 cm3"}, {"result": {"value": "584.590 cm3"}})
case("MX-19-mass-default", "resin/mass-with-waste", "MX-19 (geometry of collar and patch), whose waste is the default, left out",
     {"volume": "508.339 cm3", "density": "1.6 g/cm3"}, {"result": {"value": "935.344 g"}})

# Other routes.

# The wall that (3a) asks for, found by its pressure: P D/(2 (S + P Y)) = 0.875 t.
D, t, S = 219.1, 8.18, 137.9
P = bisect(lambda p: p * D / (2 * (S + p * 0.4)) - 0.875 * t, 0.1, 50)
case("MAWP-by-bisection", "pipe/allowable-pressure", "bisection on equation (3a) until it asks for the wall that the mill may leave",
     {"outsideDiameter": "219.1 mm", "wallThickness": "8.18 mm", "allowableStress": "137.9 MPa", "jointFactor": "1"},
     {"result": text(P, "MPa")})

# Tresca: in the reduced section, hoop stress over its limit less axial stress over its limit is 1 at failure.
D, t, d, L, c, su, sL = 812.8, 19.1, 9.55, 200.0, 100.0, 530.9, -250.0
x = d / t
h = (1 - x) / (1 - x / math.sqrt(1 + 0.31 * L * L / (D * t)))
Ar = 1 - x * c / (math.pi * D)
H1 = bisect(lambda q: q - (h * q / 2 + sL / su) / Ar - 1, 0, 5)
case("DNV-axial", "pipe/dnv-axial-compression", "bisection on Tresca in the reduced section: hoop share less the axial share, half the hoop stress and the outside load over what section is left",
     {"outsideDiameter": "812.8 mm", "wallThickness": "19.1 mm", "defectDepth": "9.55 mm", "defectLength": "200 mm",
      "defectWidth": "100 mm", "tensileStrength": "530.9 MPa", "axialStress": "-250 MPa"},
     {"result": text(H1)})

# Principal stresses as the extremes of the normal stress over all directions.
SH, SL, St = 180.0, -60.0, 55.0


def normal(a):
    return SH * math.cos(a) ** 2 + SL * math.sin(a) ** 2 + 2 * St * math.sin(a) * math.cos(a)


def extreme(sign):
    best = max((sign * normal(math.pi * i / 2000), math.pi * i / 2000) for i in range(2000))[1]
    low, high = best - math.pi / 2000, best + math.pi / 2000
    for _ in range(200):
        a, b = low + 0.382 * (high - low), low + 0.618 * (high - low)
        if sign * normal(a) < sign * normal(b):
            low = a
        else:
            high = b
    return normal((low + high) / 2)


s1, s2 = extreme(1), extreme(-1)
plane = {"hoopStress": "180 MPa", "longitudinalStress": "-60 MPa", "torsionStress": "55 MPa"}
case("PLANE-tresca", "pipe/combined-tresca-stress", "extremes of the normal stress over all directions, and their difference", plane,
     {"result": text(s1 - s2, "MPa")})
case("PLANE-mises", "pipe/combined-von-mises-stress", "extremes of the normal stress over all directions, and the distortion energy of the two", plane,
     {"result": text(math.sqrt(((s1 - s2) ** 2 + s1 ** 2 + s2 ** 2) / 2), "MPa")})

# Shell theory: (12 (1 - nu^2))^(1/4) half the length over sqrt(R t).
case("SHELL-lambda", "pipe/api579-length-parameter", "shell theory, (12 (1 - nu^2))^(1/4) times half the length over sqrt(R t), nu 0.3",
     {"insideDiameter": "400 mm", "correctedWall": "4 mm", "defectLength": "40 mm"},
     {"result": text((12 * 0.91) ** 0.25 * 20 / math.sqrt(200 * 4), digits=4)})

# A steel bar that yields beside an elastic one: forces at a common strain, reached step by step.
D, ts, tl, s, Es, Ea, eps = 168.3, 3.5, 5.0, 241.0, 207000.0, 23400.0, 0.0025
stress, steps = 0.0, 100000
for _ in range(steps):
    stress = min(s, stress + Es * eps / steps)
F = math.pi * D * (stress * ts + Ea * eps * tl)
axial = {"outsideDiameter": "168.3 mm", "pipeStress": "241 MPa", "remainingWall": "3.5 mm", "axialModulus": "23400 MPa",
         "allowableStrain": "0.0025"}
EPP = "strain raised step by step in an elastic-plastic bar beside an elastic one, and the forces added"
case("EPP-axial-force", "laminate/force-yielded-axial", EPP, {"laminateThickness": "5 mm", **axial}, {"result": text(F, "N")})
case("EPP-axial-thickness", "laminate/thickness-yielded-axial", EPP, {"axialForce": text(F, "N"), **axial}, {"result": "5.00000 mm"})


# The pressure over a hole from the energy of plate, crack and shear, differentiated; at two temperatures.
def hole(gamma, E, G, d=25.0, t=6.0, nu2=0.0183456):
    def energy(d):
        a, Dp = d / 2, E * t ** 3 / (12 * (1 - nu2))
        plate = math.pi * a ** 6 / (384 * Dp)
        crack = 4 * (1 - nu2) * a ** 3 / (3 * E)
        # Mean shear p r/(2 t) over the thickness with the factor 2/3.
        shear = math.pi * a ** 4 / (16 * (2 / 3) * G * t)
        return plate + crack + shear
    step = 1e-4
    release = (energy(d + step) - energy(d - step)) / (math.pi * ((d + step) ** 2 - (d - step) ** 2) / 4)
    return math.sqrt(gamma / release)


case("HOLE-two-temperatures", "laminate/leak-temperature-factor", "pressures held over a hole at two temperatures, each from energies differentiated numerically",
     {"energyAtDesignTemperature": "200 J/m2", "energyAtTestTemperature": "250 J/m2", "modulusAtDesignTemperature": "27 GPa",
      "modulusAtTestTemperature": "30 GPa"},
     {"result": text(hole(0.2, 0.9 * 33861.48, 0.9 * 3000) / hole(0.25, 33861.48, 3000))})


# A daily swing, by quadrature with many points and the crossing found by bisection.
def swing(mean, amplitude, since, period, E, ref, minimum, until):
    def T(clock):
        return mean - amplitude / 2 * math.cos(2 * math.pi * (clock + since) / period)

    marks, steps = [0.0], 2000
    for i in range(steps):
        a, b = until * i / steps, until * (i + 1) / steps
        if (T(a) - minimum) * (T(b) - minimum) < 0:
            marks.append(bisect(lambda c: T(c) - minimum, a, b))
    marks.append(until)
    gained = cold = 0.0
    for a, b in zip(marks, marks[1:]):
        if T((a + b) / 2) < minimum:
            cold += b - a
        else:
            gained += simpson(lambda c: math.exp(E / R * (1 / ref - 1 / T(c))), a, b, 2000)
    return gained, cold


DAY = 86400.0
weather = {"meanTemperature": "15 degC", "swing": "12 K", "sinceColdest": "3 h", "referenceTemperature": "20 degC",
           "minimumTemperature": "12 degC", "mechanism": "two-part reaction"}
course = (288.15, 12.0, 3 * 3600.0, DAY)
gained, cold = swing(*course, 50e3, 293.15, 285.15, 30 * 3600.0)
case("SWING-equivalent", "cure/equivalent-time-swing", "Simpson with thousands of points between crossings of the minimum found by bisection",
     {**weather, "duration": "30 h", "activationEnergy": "50 kJ/mol"},
     {"equivalentTime": text(gained / 3600, "h"), "uncreditedTime": text(cold / 3600, "h")})
waits = {E: bisect(lambda w: swing(*course, E, 293.15, 285.15, w)[0] - 10 * 3600, 3600.0, 80 * 3600.0) for E in (40e3, 50e3, 60e3)}
case("SWING-wait", "cure/cure-wait-over-swing", "bisection on the quadrature of SWING-equivalent for each of the three default energies",
     {**weather, "requiredTime": "10 h"},
     {"wait": text(max(waits.values()) / 3600, "h"), "shortest": text(min(waits.values()) / 3600, "h"),
      "governingEnergy": f"{max(waits, key=waits.get) / 1e3:.1f} kJ/mol"})

k1, k2 = 1e-4, 2e-3
low, high = 0.0, 1.0
for _ in range(200):
    a, b = low + 0.382 * (high - low), low + 0.618 * (high - low)
    if (k1 + k2 * a) * (1 - a) < (k1 + k2 * b) * (1 - b):
        low = a
    else:
        high = b
case("CU-36-peak", "cure/kamal-peak", "greatest rate found by golden section", {"firstRate": "0.0001 1/s", "secondRate": "0.002 1/s"},
     {"result": text(round((low + high) / 2, 7), digits=6)})
T0, T1, lam, a = 253.15, 493.15, 0.5, 0.6
case("VENDITTI", "cure/logarithmic-transition", "mean of the logarithms, weighted with what is left and lambda times what is cured",
     {"uncuredTransition": "253.15 K", "fullTransition": "493.15 K", "lambda": "0.5", "conversion": "0.6"},
     {"result": text(math.exp(((1 - a) * math.log(T0) + lam * a * math.log(T1)) / (1 - a + lam * a)), "K")})

# Work of a gas that expands without heat, pressure times volume summed up.
p1, pa, k = 2.1e6, 101325.0, 1.4
v2 = (p1 / pa) ** (1 / k)
case("GAS-expansion", "acceptance/gas-energy-isentropic", "work of expansion by quadrature of p dV, heat capacity ratio 1.4 left to its default",
     {"pressure": "2.1 MPa", "volume": "1 m3", "atmosphere": "101325 Pa"},
     {"result": text(simpson(lambda v: p1 * v ** -k, 1, v2) / 1e6, "MJ")})


# A blocked line: the pressure at which liquid and pipe have the same strain of volume, the pipe held along its axis.
def mismatch(p, dT=4.0, beta=2.1e-4, B=2.2e9, D=219.1, t=8.18, E=207e9, nu=0.3, alpha=1.17e-5):
    hoop = p * D / (2 * t)
    along = nu * hoop - E * alpha * dT
    return 2 * ((hoop - nu * along) / E + alpha * dT) - (beta * dT - p / B)


case("BLOCKED-line", "acceptance/blocked-line-pressure-change", "bisection on the strains of volume of liquid and pipe, with Hooke's law for a pipe that is held along its axis",
     {"temperatureChange": "4 K", "liquidExpansion": "0.00021 1/K", "outsideDiameter": "219.1 mm", "wallThickness": "8.18 mm"},
     {"result": text(bisect(mismatch, 0, 1e9) / 1e6, "MPa")})

# Water vapour as an ideal gas, with the molar mass of water.
e = 0.57 * 611.2 * math.exp(17.62 * 20 / (243.12 + 20))
case("VAPOUR-density", "site/absolute-humidity", "ideal gas with the molar mass of water, 18.01528 g/mol",
     {"temperature": "20 degC", "humidity": "57 %"}, {"result": text(e * 18.01528 / (R * 293.15), "g/m3", 3)})


def dew(T, RH):
    g = math.log(RH) + 17.62 * T / (243.12 + T)
    return 243.12 * g / (17.62 - g)


grid = [dew(20 + 0.5 * i / 20, 0.8 + 0.03 * j / 20) for i in range(-20, 21) for j in range(-20, 21)]
case("DEW-band", "site/dew-point-band", "highest and lowest of a grid over the errors, which are left to their defaults",
     {"temperature": "20 degC", "humidity": "80 %"},
     {"highest": text(max(grid), "degC"), "nominal": text(dew(20, 0.8), "degC"), "lowest": text(min(grid), "degC")})

# Tension at the end of half a ring: the pressure on it, added up across the cut.
q, D, w = 0.8, 168.3, 25.0
case("RING-tension", "seal/tension-from-contact-pressure", "quadrature of the pressure on half a ring across the cut",
     {"pressure": "0.8 MPa", "diameter": "168.3 mm", "bandWidth": "25 mm"},
     {"result": text(simpson(lambda a: q * w * D / 2 * math.sin(a), 0, math.pi) / 2, "N")})

# Sheets laid side by side, one after the other, until the length is covered.
case("SHEETS-exact", "wrap/sheets-side-by-side", "sheets laid one after the other: 300 + 275 + 275 mm",
     {"axialLength": "850 mm", "sheetWidth": "300 mm"}, {"result": "3"},
     note="The side lap of 25 mm is left to its default; a wider one would need a fourth sheet.")


# Three sheets, each wound circle by circle, with the final lap of 150 mm.
wound = sum(math.pi * (168.3 + (2 * k - 1) * 0.8) for k in range(1, 9)) + 150
case("SHEETS-plan", "wrap/sheet-plan", "circles of rising diameter added up, and sheets laid one after the other",
     {"outsideDiameter": "168.3 mm", "plyThickness": "0.8 mm", "plies": "8", "axialLength": "850 mm", "sheetWidth": "300 mm"},
     {"sheets": "3", "lengthOfEach": text(wound, "mm"), "totalLength": text(3 * wound, "mm"), "finalDiameter": text(168.3 + 16 * 0.8, "mm")},
     exact=["outsideDiameter", "plyThickness", "axialLength", "sheetWidth"], note="Side lap 25 mm and final lap 150 mm are left to their defaults.")


# The heat that a cylinder can just lose: theta'' + theta'/r = -exp(theta), from the axis outwards; the greatest r^2 at
# which theta comes back to that of the surface, over all temperatures of the axis.
def critical_cylinder():
    def surface(top):
        # theta = 0 at the surface; at the axis theta = top and the slope is 0.
        r, u, v, h = 1e-6, top, 0.0, 2e-4

        def rate(r, u, v):
            return v, -math.exp(u) - v / r

        while u > 0:
            a = rate(r, u, v)
            b = rate(r + h / 2, u + h / 2 * a[0], v + h / 2 * a[1])
            c = rate(r + h / 2, u + h / 2 * b[0], v + h / 2 * b[1])
            d = rate(r + h, u + h * c[0], v + h * c[1])
            before = (r, u)
            u, v, r = u + h / 6 * (a[0] + 2 * b[0] + 2 * c[0] + d[0]), v + h / 6 * (a[1] + 2 * b[1] + 2 * c[1] + d[1]), r + h
        return (before[0] + h * before[1] / (before[1] - u)) ** 2

    low, high = 0.5, 3.0
    for _ in range(40):
        a, b = low + 0.382 * (high - low), low + 0.618 * (high - low)
        if surface(a) < surface(b):
            low = a
        else:
            high = b
    return surface((low + high) / 2)


delta = 300e3 * 1500 * 1e-5 * 55e3 * 0.05 ** 2 / (0.3 * R * 298.15 ** 2)
case("RUNAWAY-cylinder", "resin/runaway-parameter", "heat conduction in a cylinder marched from the axis, the greatest heat for which a steady state exists",
     {"heatOfReaction": "300 kJ/kg", "density": "1500 kg/m3", "rateConstant": "0.00001 1/s", "activationEnergy": "55 kJ/mol",
      "size": "50 mm", "thermalConductivity": "0.3 W/(m K)", "temperature": "298.15 K", "shape": "cylinder"},
     {"result": text(delta / critical_cylinder(), digits=5)})

# What the trade takes when nobody says otherwise.
case("WASTE-tape", "wrap/rolls", None, {"length": "35.1 m", "rollLength": "10 m"}, {"lengthWithWaste": "38.61 m", "rolls": "4"},
     kind="practice", note="10 per cent of waste.")
case("WEIGHING-5-per-cent", "resin/least-weighed-mass", None, {"resolution": "1 g"}, {"result": "40.00 g"}, kind="practice",
     note="Twice the resolution may be 5 per cent of the mass.")

# A closed thick cylinder between anchors, by marching the displacement.
def anchored(ri, ro, pi, po, nu):
    def rate(u, v, r):
        return v, u / r ** 2 - v / r

    def march(u, v, to, n=4000):
        r, h = ri, (to - ri) / n
        for _ in range(n):
            a = rate(u, v, r)
            b = rate(u + h / 2 * a[0], v + h / 2 * a[1], r + h / 2)
            c = rate(u + h / 2 * b[0], v + h / 2 * b[1], r + h / 2)
            d = rate(u + h * c[0], v + h * c[1], r + h)
            u, v, r = u + h / 6 * (a[0] + 2 * b[0] + 2 * c[0] + d[0]), v + h / 6 * (a[1] + 2 * b[1] + 2 * c[1] + d[1]), r + h
        return u, v

    def stresses(u, v, r):
        f = 1 / ((1 + nu) * (1 - 2 * nu))
        return f * ((1 - nu) * v + nu * u / r), f * ((1 - nu) * u / r + nu * v)

    starts = [(ri, 0.0), (0.0, 1.0)]
    inner = [stresses(u, v, ri)[0] for u, v in starts]
    outer = [stresses(*march(u, v, ro), ro)[0] for u, v in starts]
    det = inner[0] * outer[1] - inner[1] * outer[0]
    p, q = (-pi * outer[1] + po * inner[1]) / det, (-po * inner[0] + pi * outer[0]) / det
    radial, hoop = stresses(p * ri, q, ri)
    return nu * (radial + hoop), hoop


case("WE-23b-anchored", "mechanics/thick-cylinder-axial-stress", "radial equilibrium marched through the wall, Poisson's ratio 0.3 left to its default",
     {"internalPressure": "20 MPa", "externalPressure": "5 MPa", "innerRadius": "30 mm", "outerRadius": "50 mm", "ends": "restrained"},
     {"result": text(anchored(30.0, 50.0, 20.0, 5.0, 0.3)[0], "MPa")})

# The coefficient of a thick wall after the loss of an allowance: what brings the bore stress into the wall equation.
D, d, c, p = 100.0, 60.0, 2.0, 10.0
bore = anchored(d / 2 + c, D / 2, p, 0.0, 0.3)[1]
case("LOST-allowance", "pipe/thick-wall-coefficient", "radial equilibrium marched through the wall that is left, and the wall equation solved for Y",
     {"insideDiameter": "60 mm", "outsideDiameter": "100 mm", "allowance": "2 mm"},
     {"result": text(D / (D - d - 2 * c) - bore / p)})

(CASES / "closing.json").write_text(json.dumps(records, indent=2) + "\n")
print(len(records), "cases")
